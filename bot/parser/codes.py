"""Which numbers are part of a code? Glued to letters, they are no glucose."""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache
from itertools import pairwise

from bot.parser.languages import gathered, lexica
from bot.parser.moments import meal_names
from bot.parser.page import Page, Span, pattern


@cache
def _may_be_glued(language: str) -> frozenset[str]:
    """Words that people write a value right behind (`bg142`, `pre142`)."""
    fields = ("glucose", "before", "after", "meter", "eating", "at")
    named = {word for field in fields for word in gathered(language, field)}
    named.update(meal_names(language))
    for lexicon in lexica(language):
        named.update(word for words in lexicon.moments.values() for word in words)
    return frozenset(named) | _GLUED


_GLUED = frozenset(
    "was is its am now and then ate had for x to of with i im got at reads says so about around "
    "es son tuve salio fue y antes despues con mg mmol ok".split()
)


def find(page: Page, language: str) -> list[Span]:
    """Codes: a number right behind letters that name no reading (`BA142`), one in the brackets of
    a call (`range(142)`), and roads and models (`I-80`, `F-150`)."""
    glued = (at and page.tokens[at - 1].end == page.tokens[at].start for at in page.numbers)
    if not any(glued):
        return []
    may = _may_be_glued(language)
    found = [span for span in page.find(_CODE) if page.tokens[span.start].word not in may]
    for span in page.find(_LETTERED):
        letters = page.tokens[span.start].word
        if letters == "i" or letters not in may:
            found.append(span)
    return [span for span in found if in_one_piece(page, span)]


def in_one_piece(page: Page, span: Span) -> bool:
    """Whether it was written without a space."""
    parts = page.tokens[span.start : span.end]
    return all(one.end == other.start for one, other in pairwise(parts))


_CODE = pattern(r"[a-z]+ (?:\( )?\d+(?:\.\d+)?(?: \))?")
_LETTERED = pattern(r"[a-z]{1,2} - \d{1,3}")
