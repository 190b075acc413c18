"""Where does what is said of a medicine begin and end, and a value begin behind it?"""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.doses import MOMENTS, is_odd
from bot.parser.languages import gathered
from bot.parser.page import Page, Span


def first_named(page: Page, start: int, here: list[Span]) -> int:
    """Where the first that is named begins, with how many of it: `must we take 2 metformin?`."""
    first = min(span.start for span in here)
    return first - (first > start and page.tokens[first - 1].word.isdigit())


def asked_until(page: Page, language: str, begin: int, end: int, here: list[Span]) -> int:
    """Where a question ends and a value is told: `can i skip my insulin, sugar is 88`."""
    last = max((span.end for span in here if span.start < end), default=begin)
    glucose = gathered(language, "glucose")
    for at in range(max(last, begin), end):
        behind = page.words(at, end)
        valued = any(word[0].isdigit() for word in behind[:_SOON])
        if behind[0] == "," and valued and behind[1] not in _GOES_ON:
            return at
        first = at - (page.words(at - 1, at) in (["my"], ["mi"]))
        named = behind[0] in glucose and page.words(first - 1, first) not in _SUPPOSING
        if named and valued and first >= last:
            return first
        # No dose: `4 units now 4 after dinner` and `now 10 or wait` are asked about as a whole.
        if behind[0][0].isdigit() and is_odd(behind[0]) and _is_value(page, language, at):
            supposed = page.words(at - 2, at - 1) in _SUPPOSING
            if page.words(at - 1, at)[0] in _ITS and not supposed:  # `more metformin? its 12.4`
                return at - 1
            if not MOMENTS.isdisjoint(behind[1:2]):
                return at  # `should i take more insulin 243 after dinner`
    return end


#: A value follows the word for it within so many tokens.
_SOON = 5
_ITS = frozenset({"its", "im", "esta"})
_GOES_ON = frozenset({"or", "and", "if", "when", "o", "y", "si", "cuando"})
_SUPPOSING = (["if"], ["when"], ["si"], ["cuando"], ["for"], ["because"], ["until"])


def until_mark(page: Page, language: str, start: int, told: int, end: int) -> int:
    """Where the clause ends that holds the mistake, or a value begins behind what tells it
    (`took my insulin twice 64 and shaky`)."""
    for index in range(start, end):
        word = page.tokens[index].word
        numbered = index >= told and word[0].isdigit()
        if word == "," or (numbered and _is_value(page, language, index)):
            return index
    return end


def _is_value(page: Page, language: str, index: int) -> bool:
    """Whether a number behind a mistake can be no dose and no time."""
    before, behind = page.words(index - 1, index), page.words(index + 1, index + 2)
    told = before[0] in _COUNTING or not _counts(language).isdisjoint(behind)
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


_CLOCK = frozenset({"am", "pm", "x", "times", "veces", "ml"})
_HOURS = 24
#: No value is lower, in either unit.
_LEAST = 1.1
