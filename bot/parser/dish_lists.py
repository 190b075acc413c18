"""A list of dishes: what belongs to it, and how it is said back."""

# ruff: noqa: PLR0917 - a finding needs all of them
# ruff: noqa: SIM905 - word sets read best as one string

from bot.parser import meals
from bot.parser.findings import Findings
from bot.parser.food import LEFT_OUT, amount_words
from bot.parser.misspelt import is_strange, known_words
from bot.parser.page import Page


def text_of(page: Page, spans: list[tuple[int, int]]) -> str:
    """Neighbouring spans with what stands between them, others with a space."""
    if not spans:
        return ""
    parts = [spans[0]]
    for start, end in spans[1:]:
        last = _closed(page, *parts[-1])
        counted = page.words(last, last + 3)
        if last == parts[-1][1] and counted[::2] == ["(", ")"] and counted[1].isdigit():
            last += 3  # `tacos (4) and beans`
        if meals.listed(page, last, start) or page.words(last, start) == ["("]:
            parts[-1] = (parts[-1][0], end)
        else:
            parts.append((start, end))
    told = ""
    for start, end in parts:
        comma = told and page.words(start - 1, start) == [","] and page.free(start - 1)
        told += (", " if comma else " ") + page.text(start, _closed(page, start, end))
    return told.strip(" .,;:!?-")


def _closed(page: Page, start: int, end: int) -> int:
    """Where a span ends with the bracket that closes it."""
    behind = page.words(end, end + 3)
    if behind[::2] == ["(", ")"] and page.free(end + 1):
        counted = behind[1].isdigit() and len(behind[1]) == 1
        return end + 3 if counted or behind[1].isalpha() else end  # `doughboys (2)`
    if behind[:1] != [")"]:
        return end
    words = page.words(start, end)
    return end + 1 if words.count("(") > words.count(")") else end


def how_much(
    page: Page, language: str, found: Findings, spans: list[tuple[int, int]], start: int, end: int
) -> bool:
    """`pizza, 2 slices`: right behind a plate nothing but its amount."""
    between = [word for _, word in page.find_words(spans[-1][1], start)]
    if between not in ([","], ["("], ["-"]):
        return False  # `kottu from the shop, half a packet`: the shop is claimed
    words = page.words(start, end)
    if words[0] in _JUST and words[1:] in (["1"], ["one"], ["2"], ["3"]):
        return True  # `acarajé, just one`
    amounts = amount_words(language)
    return any(word in amounts or word in _SHARES for word in words) and all(
        start + at in found.amounts or word in amounts or word in _SHARES or word in _HOW_BIG
        for at, word in enumerate(words)
    )


_JUST = frozenset({"just", "only", "solo"})
_SHARES = frozenset("quarter third half thirds tray pan pot pie".split())
_HOW_BIG = frozenset(
    "a an of it the and only just about around maybe size sized deep heaped level flat full "
    "regular normal standard one two smallish biggish largish medium wee good un una unos unas "
    "solo como dos tres".split()
)

_LONGEST_DISH = 5
#: Behind `no`: what a dish may come without, and nothing that is eaten alone.
_PARTS = [
    [word]
    for word in "sauce mayo dressing topping toppings syrup skin crust extras sides ice salt "
    "seasoning spread filling sprinkles".split()
]
_WITHIN_A_DISH = frozenset("with and of in on the a an some de del con y en la el al".split())


def _of_no_day(words: list[str], language: str) -> bool:
    """Whether no word is one of everyday talk, but for those of amounts."""
    everyday = meals.everyday(language) - _HOW_BIG - amount_words(language) - {"many"}
    told = everyday.isdisjoint(words) and words[0] != "it"
    return told and all(word.isalpha() or word in _FEW for word in words)


_FEW = frozenset("123456789")


def goes_on(
    page: Page,
    language: str,
    found: Findings,
    spans: list[tuple[int, int]],
    start: int,
    end: int,
    *,
    answer: bool,
) -> tuple[int, int] | None:
    """A list that begins with food is food to its end: what it comes without (`tea, no sugar`),
    or a dish that nobody has listed (`rice + inun-unan`), right behind a mark; in an `answer` to
    what is eaten any few words that are no everyday ones (`boudin, one link`)."""
    marks = page.words(spans[-1][1], start)
    if not marks or not set(marks) <= {",", "+", "&", "and", "y", "/"}:
        return None
    closed = end - start < _LONGEST_DISH and page.words(end, end + 1) in ([], [","], ["."])
    if answer and closed and _of_no_day(page.words(start, end), language):
        return start, end
    dishes = {at for dish in found.dishes for at in range(dish.start, dish.end)}
    if page.tokens[start].word in LEFT_OUT:
        begun = start + 1
        if end - begun > _LONGEST_DISH or begun not in dishes | {begun - 1, end - 1}:
            return None
        part = page.words(begun, end)[-1:] in _PARTS
        return (start, end) if part or dishes & set(range(begun, end)) else None
    known = known_words(language)
    first, last = meals.trimmed(page, start, end, language, dishes, found.amounts, led=False)
    words = [(at, page.tokens[at].word) for at in range(first, last)]
    inside = dishes & set(range(first, last))
    if inside and not meals.spoken_of(page, start, end, language, dishes):
        known = meals.everyday(language)  # `lemon leaf tea`
    strange = {at for at, word in words if at not in dishes and is_strange(word, known)}
    busy = {at for doing in found.doings for at in range(doing.start, doing.end)}
    fits = all(
        at in strange | dishes | found.amounts
        or word in amount_words(language) | _WITHIN_A_DISH
        or word == "-"
        or (word in LEFT_OUT and at + 1 in dishes)
        for at, word in words
    )
    if not strange or not fits or len(words) > _LONGEST_DISH or busy & set(range(first, last)):
        return None
    return first, last
