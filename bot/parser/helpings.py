"""How much of it? Numbers, units and shares of food, before a dish and behind it."""

# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import dataclass
from functools import cache

from bot.parser.food import LEFT_OUT, Dish
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Page, Pattern, Span, pattern
from bot.parser.pieces import MOST_PIECES, UP_TO, bracketed, counted, range_to
from bot.parser.vocabulary.eating import HOW_FULL


@dataclass(frozen=True, slots=True)
class _Amounts:
    certain: Pattern
    full: Pattern  # `2 calabashfuls`
    share: Pattern
    fraction: Pattern
    times: Pattern


@cache
def _amounts(language: str) -> _Amounts:
    units = either(gathered(language, "amounts"))
    number = r"\d+(?:\.\d+)?"
    many = rf"{number}(?: ?(?:-|to|or|x|/|y|o) {number})?(?: 1 / [2-4]| ½)?"
    how_full = rf"(?:{either(HOW_FULL)} )?"
    return _Amounts(
        certain=pattern(f"{many} {how_full}{units}"),
        full=pattern(rf"{many} {how_full}[a-z]{{3,}}ful(?:l|s|ls)?"),
        share=pattern(rf"{number} %|99(?= (?:flake|with (?:a )?flake|ice cream|cones?))"),
        fraction=pattern(r"(?:\d{1,2} )?[1-9] / (?:[2-9]|1[0-6])|\d{1,2} [½¼¾⅓⅔]|[½¼¾⅓⅔]"),
        times=pattern(
            r"x \d{1,2}|\d{1,2} (?:x|of (?:them|those|these)|de (?:esos|esas|ellos|ellas))"
        ),
    )


def amounts(
    page: Page,
    language: str,
    dishes: list[Dish],
    own_small: float,
    busy: set[int],
    *,
    answer: bool = False,
) -> set[int]:
    """Give the tokens of amounts of food. A whole number below `own_small`, or a count before the
    plural of a food, is one when food or an unknown word follows; in an `answer` to what is eaten,
    any small count behind a food or an unknown word, too."""
    found: set[int] = set()
    if not page.numbers and not page.holds(_PARTS):
        return found
    patterns = _amounts(language)
    starts = {dish.start: dish for dish in dishes}
    fuls = (patterns.full,) if "ful" in page.line else ()
    for sought in (patterns.certain, *fuls, patterns.share, patterns.fraction, patterns.times):
        for span in page.find(sought):
            of_the_dish = span.end - 1 in starts and page.tokens[span.end - 1].word.endswith("ed")
            if of_the_dish:
                continue  # `142 fried rice`: how it was cooked counts nothing
            if busy.isdisjoint(range(span.start, span.end)):  # `142 square dancing`
                found.update(range(_begun(page, span), span.end))
    decimals = any(
        page.tokens[at].word.replace(".", "").isdigit()
        and page.free(at)
        and ("." in page.tokens[at].word or page.words(at + 1, at + 2) in _NAMED_VALUE)
        for at in page.numbers
    )
    for index in page.numbers:
        if bracketed(page, index, starts):
            found.add(index)
        if index in found or not page.free(index):
            continue
        if counted(page, index, starts, own_small, language, answer=answer, decimals=decimals):
            found.update(range_to(page, index))
    return found


#: Parts of a whole that are written without a digit.
_PARTS = frozenset("½¼¾⅓⅔")
#: Right behind a number they make a value of it: `6 before`.
_NAMED_VALUE = (["before"], ["after"], ["antes"], ["despues"])
#: The later number of a range is at most so many times the earlier one.
_RANGE = 5
#: From here on people tell a range in round numbers.
_ROUGH = 50
_SIZES = frozenset({"little", "tiny", "wee", "small", "mini", "big", "large", "pequeno", "poco"})
#: From here on, parts of a cup other than quarters are no amount.
_HELPINGS = 2
#: So many of anything nobody eats.
_NO_HELPINGS = 60
#: So many and a half of one thing are no amount.
_MANY = 4
_WEIGHED = frozenset(
    "% percent calorie calories cal cals kcal kj "
    "g gm gms gr gram grams gramo gramos kg ml mls cl dl l lt litre litres liter liters litro oz "
    "ounce ounces onza onzas lb lbs pound pounds".split()
)


def _begun(page: Page, span: Span) -> int:
    """Where an amount begins: a number before it that cannot be of it is a value of its own
    (`6.8 - 100 g rice`, `193 1/2 plate`, `14.7 pieces of toast`)."""
    words = page.words(span.start, span.end)
    first = words[0]
    if not first.replace(".", "").isdigit():
        return span.start
    if words[1:2] == ["y"] and words[2][0].isdigit():
        return span.start + 2  # `164 y 100 g de arroz`
    if len(words) > 2 and words[1] in UP_TO and words[2].replace(".", "").isdigit():
        low, upto = float(first), float(words[2])
        rough = low < _ROUGH or low % 5 == upto % 5 == 0  # `164 - 250 ml juice` is no range
        return span.start if rough and low < upto <= _RANGE * low else span.start + 2
    if words[1:3] == ["1", "/"] or words[1:2] in (["½"], ["half"], ["media"], ["medio"]):
        return span.start if first.isdigit() and int(first) <= MOST_PIECES else span.start + 1
    behind = page.words(span.end, span.end + 1)
    sized = words[-1] in _SIZES and not (behind and behind[0].isalpha() and page.free(span.end))
    if sized or (words[-1] in _SIZES and not (first.isdigit() and int(first) <= MOST_PIECES)):
        return span.start + 1  # `71 little shaky`
    counted = len(words) > 1 and _WEIGHED.isdisjoint(words)
    one = words[1:2] == ["glass"] or words[-1][-1:] != "s"
    if counted and float(first) >= _NO_HELPINGS and one:
        return span.start + 1  # `142 bottle of milk`
    single = float(first) >= _MANY and not float(first).is_integer() and words[1][-1:] != "s"
    if counted and single:
        return span.start + 1  # `10.5 bottle of water`
    if counted and float(first) >= _HELPINGS and not (float(first) * 4).is_integer():
        return span.start + 1
    return span.start


_HELD_IN = frozenset(
    "can cans bowl bowls plate plates cup cups glass glasses mug mugs bottle slice slices packet "
    "tin spoon spoons tbsp portion portions serving servings helping helpings handful scoop scoops "
    "pint pints ladle ladles carton spoonful spoonfuls plateful bowlful slab wedge taza plato "
    "vaso".split()
)


def held(page: Page, start: int, end: int, language: str) -> bool:
    """`half a can of frobble`: what comes in a vessel and has no other meaning is eaten."""
    words = page.words(start, end)
    for at in range(start + 1, end - 1):
        if page.tokens[at].word in {"of", "de"} and page.tokens[at - 1].word in _HELD_IN:
            known = no_slips(language)
            behind = words[at + 1 - start :]
            return len(behind) <= _MOST and all(is_strange(word, known) for word in behind)
    return False


_MOST = 3


def without(page: Page, dishes: list[Dish], strange: list[int], last: int) -> bool:
    """`kota no chips`: what comes without food is food."""
    return any(
        page.tokens[dish.start - 1].word in LEFT_OUT and dish.end <= last
        for dish in dishes
        if dish.start - 2 in {*strange, *(each.end - 1 for each in dishes)}
    )


def left_off(page: Page, index: int, food_at: set[int]) -> bool:
    """`fish without the batter`: a word for what a food right before it comes without."""
    at = index - 1
    while at > 0 and page.tokens[at].word in {"the", "any", "my", "el", "la"}:
        at -= 1
    return page.tokens[at].word in LEFT_OUT and at - 1 in food_at


def begun_before(page: Page, start: int, begun: int, language: str) -> int:
    """Where a dish begins that is named by a strange word and what it comes without."""
    if begun - 2 < start or page.tokens[begun - 1].word not in LEFT_OUT:
        return begun
    dish = page.tokens[begun - 2].word
    return begun - 2 if dish.isalpha() and dish not in no_slips(language) else begun
