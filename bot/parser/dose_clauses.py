"""Where does what is said of a medicine begin and end, and a value begin behind it?"""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.doses import MOMENTS, is_odd
from bot.parser.languages import gathered, glucose
from bot.parser.page import Page, Span


def first_named(page: Page, start: int, here: list[Span]) -> int:
    """Where the first that is named begins, with how many of it: `must we take 2 metformin?`."""
    first = min(span.start for span in here)
    return first - (first > start and page.tokens[first - 1].word.isdigit())


def asked_until(page: Page, language: str, begin: int, end: int, here: list[Span]) -> int:
    """Where a question ends and a value is told: `can i skip my insulin, sugar is 88`."""
    last = max((span.end for span in here if span.start < end), default=begin)
    for at in range(max(last, begin), end):
        behind = page.words(at, end)
        valued = any(word[0].isdigit() for word in behind[:_SOON])
        if behind[0] == "," and valued and behind[1] not in _GOES_ON:
            return at
        first = at - (page.words(at - 1, at) in (["my"], ["mi"]))
        named = behind[0] in glucose(language) and page.words(first - 1, first) not in SUPPOSING
        if named and valued and first >= last:
            return first
        told = told_at(page, language, at, last)
        if told is not None:
            return told
        # No dose: `4 units now 4 after dinner` and `now 10 or wait` are asked about as a whole.
        if behind[0][0].isdigit() and is_odd(behind[0]) and _is_value(page, language, at):
            if not MOMENTS.isdisjoint(behind[1:2]):
                return at  # `should i take more insulin 243 after dinner`
            supposed = any(page.words(i, i + 1) in SUPPOSING for i in range(last, at))
            if len(behind) == 1 and float(behind[0]) >= _SURELY and not supposed:
                return at  # `can I have more insulin 14.2`
    return end


#: A bare number at the end is a value from here on: `take victoza 1.8` is a dose.
_SURELY = 3
#: A value follows the word for it within so many tokens.
_SOON = 5
#: Behind one of these a value is told, and no dose; some words may stand between.
_ITS = frozenset(
    "because cos cuz bc porque its im am is got says said reads shows been esta estoy tengo marca "
    "dice".split()
)
_BEFORE_IT = frozenset("at now only just still around about like up down en ya ahora".split())
_OF_IT = frozenset(
    "it i me meter just ive has it has he she hes shes the my mi el because as cos".split()
)
_GOES_ON = frozenset({"or", "and", "if", "when", "o", "y", "si", "cuando"})
SUPPOSING = (["if"], ["when"], ["si"], ["cuando"], ["for"], ["until"])


def told_at(page: Page, language: str, at: int, last: int) -> int | None:
    """Where the words begin that tell a value (`more metformin? its 12.4`, `i'm at 54`), if the
    number at a place is told so and not only supposed (`if its 280`)."""
    if not page.tokens[at].word[0].isdigit() or not _is_value(page, language, at, led=True):
        return None
    start = at - 1
    while start > last and page.tokens[start].word in _BEFORE_IT:
        start -= 1
    if start < last or page.tokens[start].word not in _ITS:
        return None
    while start > last and page.tokens[start - 1].word in _OF_IT:
        start -= 1
    before = page.words(start - 1, start)
    meant = before in (["have"], ["should"]) and page.tokens[start].word == "been"
    return None if meant or before in SUPPOSING else start


def until_mark(page: Page, language: str, start: int, told: int, end: int) -> int:
    """Where the clause ends that holds the mistake, or a value begins behind what tells it
    (`took my insulin twice 64 and shaky`)."""
    for index in range(start, end):
        word = page.tokens[index].word
        numbered = index >= told and word[0].isdigit()
        if numbered and (begun := told_at(page, language, index, told)) is not None:
            return begun
        if word == "," or (numbered and _is_value(page, language, index)):
            return index
    return end


def _is_value(page: Page, language: str, index: int, *, led: bool = False) -> bool:
    """Whether a number behind a mistake can be no dose and no time; `led` says that words which
    tell a value are before it."""
    before, behind = page.words(index - 1, index), page.words(index + 1, index + 2)
    counting = before[0] in _COUNTING and not led
    told = counting or not _counts(language).isdisjoint(behind)
    word = page.tokens[index].word
    number = float(word) if word.replace(".", "").isdigit() else 0  # `7up`
    no_hour = number > _HOURS or "." in word  # `twice, at 8 and now at 10`
    if no_hour and before == ["at"] and page.words(index - 2, index - 1)[:1] in _STANDING:
        told = False  # `took it twice and now im at 81`
    return not told and number >= _LEAST


_STANDING = (["im"], ["am"], ["now"], ["its"], ["is"], ["sugar"])
_COUNTING = frozenset(
    """
    of to than only be been at not instead the by took x no solo de a las
    """.split()
)


@cache
def _counts(language: str) -> frozenset[str]:
    """What a dose or a time is counted in."""
    fields = ("doses", "minutes", "hours")
    return frozenset(word for field in fields for word in gathered(language, field)) | _CLOCK


_CLOCK = frozenset({"am", "pm", "x", "times", "veces", "ml", "left", "more", "oclock"})
_HOURS = 24
#: No value is lower, in either unit.
_LEAST = 1.1
