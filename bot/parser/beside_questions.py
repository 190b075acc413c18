"""Where does a question about food end, and a value begin? `can i have juice im at 54`."""

from functools import cache

from bot.parser.dose_clauses import SUPPOSING, told_at
from bot.parser.doses import MOMENTS
from bot.parser.food import amount_words
from bot.parser.languages import glucose
from bot.parser.page import Page
from bot.parser.phrases import spelled

#: Bare, from here on, a whole number at the end counts no food (common practice, no source).
_NO_COUNT = 40
_GLUED = frozenset({"mg", "mgs", "mmol", "mmols", "mgdl"})


@cache
def named(language: str) -> frozenset[str]:
    """The first words of what a reading is called."""
    return frozenset(spelled(word)[0] for word in glucose(language))


def told_from(page: Page, language: str, last: int, end: int, food_at: set[int]) -> int:
    """Where in a question the words begin that tell a value, behind `last`, where what is asked
    about ends; `end` where nothing is told. What is only supposed stays asked (`if im at 54`)."""
    for at in page.numbers:
        if not last <= at < end or at in food_at or at + 1 in food_at:
            continue
        behind = page.tokens[at + 1].word if at + 1 < end else ""
        if behind in amount_words(language) and behind not in _GLUED:
            continue
        names = [i for i in range(last, at) if page.tokens[i].word in named(language)]
        if names:
            first = names[0] - (page.words(names[0] - 1, names[0]) in (["my"], ["mi"]))
            supposed = page.words(first - 1, first) in SUPPOSING
            return end if supposed else first
        if (led := told_at(page, language, at, last)) is not None:
            return led
        if page.words(at - 1, at) in SUPPOSING or page.tokens[at - 1].word in {"at", "of", "to"}:
            continue
        if behind in MOMENTS or behind in _GLUED or (at + 1 == end and _is_bare(page, at)):
            return at
    return end


def _is_bare(page: Page, at: int) -> bool:
    """Whether a number at the end of a sentence can be no count of what is asked about."""
    word = page.tokens[at].word
    if not word.replace(".", "").isdigit():
        return False
    return "." in word or float(word) >= _NO_COUNT or page.words(at - 1, at) == [","]
