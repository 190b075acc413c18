"""When are words of no list surely a dish? Where everything else of the message is about a meal."""

# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_left
from collections.abc import Container
from itertools import islice, takewhile

from bot.entries import Moment
from bot.parser.findings import Findings
from bot.parser.food import amount_words
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Page

_LONGEST = 6
_WITHIN = frozenset("with and an of in on one the a an w n no x de del con y en la el al".split())


def surely_food(page: Page, language: str, found: Findings, start: int, end: int) -> bool:
    """Whether a run of nothing but strange words is eaten: a meal is named right behind it
    (`khash for breakfast`), or a reading is said to be before the meal and the words are counted
    or several (`2 bajra rotla and ringan, 6.7 before`)."""
    if end - start > _LONGEST or found.skip is not None or found.doings:
        return False
    named = any(lead.is_name and not lead.strong and lead.start == end for lead in found.leads)
    before = any(cue.moment is Moment.BEFORE_MEAL for cue in found.cues)
    if not named and not (before and found.values):
        return False
    known = no_slips(language)
    words = [(at, page.tokens[at].word) for at in range(start, end)]
    counted = any(at in found.amounts or word == "one" for at, word in words)
    strange = sum(_names_nothing(word, known) for _, word in words)
    first = bisect_left(found.dishes, start, key=lambda dish: dish.start)
    here = takewhile(lambda dish: dish.start < end, islice(found.dishes, first, None))
    dishes = {at for dish in here for at in range(dish.start, dish.end)}
    fits = all(
        at in found.amounts | dishes
        or word in _WITHIN | amount_words(language)
        or word not in known
        for at, word in words
    )
    return bool(strange) and fits and (named or counted or strange > 1)


_OPENING = 3


def opens_a_list(page: Page, language: str, start: int, end: int) -> bool:
    """`vat, dal ar ilish mach`: words that no list holds in front of the list's first comma."""
    known = no_slips(language)
    words = page.words(start, end)
    listed = page.words(end, end + 1) == [","]
    return listed and len(words) <= _OPENING and all(_names_nothing(word, known) for word in words)


def _names_nothing(word: str, known: Container[str]) -> bool:
    """Whether no list holds the word, nor one of the thing (`meetings`)."""
    return is_strange(word, known) and word.removesuffix("s") not in known
