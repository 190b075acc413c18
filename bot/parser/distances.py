"""Counts and distances with no activity beside them: which were covered by themselves?"""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import replace
from functools import cache

from bot.parser.activity import Measure
from bot.parser.durations import NUMBER
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page

#: Behind a distance or an activity they say that it is over.
OVER = frozenset(
    "done finished completed over complete terminado terminada hecho listo lista".split()
)
_COVERED = frozenset("did done completed finished managed clocked hice hicimos complete".split())
_OWN = frozenset("my a the another about around almost nearly over just mi mis unos casi".split())
_FAR = frozenset("km kms kilometer kilometers kilometre kilometres mile miles k".split())
_BORDERS = frozenset(", . ; ! - + then and now y".split())


@cache
def _counted(language: str) -> re.Pattern[str]:
    steps = either(gathered(language, "steps"))
    return re.compile(rf"(?:.* )?{NUMBER} (?:.* )?{steps}|{steps} .*{NUMBER}")


def _steps(page: Page, measure: Measure, language: str) -> bool:
    """Whether a count is one of steps or the like: an activity by itself."""
    words = " ".join(page.words(measure.start, measure.end))
    return _counted(language).fullmatch(words) is not None


def alone(page: Page, language: str, measures: list[Measure]) -> list[Measure]:
    """Claim what no activity has taken. Steps are an activity by themselves, and are given back;
    so is a distance that can only have been covered."""
    given = []
    for measure in _together(page, language, measures):
        if measure.minutes is not None or page.any_taken(measure.start, measure.end):
            continue
        page.claim(measure.start, measure.end)
        if _steps(page, measure, language) or _covered(page, measure):
            given.append(measure)
    return given


def _covered(page: Page, measure: Measure) -> bool:
    """`did 3 miles`, `5k done`, `3 km, 121 now`."""
    if page.tokens[measure.end - 1].word not in _FAR:
        return False
    before = page.words(max(measure.start - 4, 0), measure.start)
    behind = page.words(measure.end, measure.end + 1)
    while before and before[-1] in _OWN:
        before.pop()
    if before[-1:] and before[-1] in _COVERED:
        return True
    if behind and behind[0] in _COVERED | OVER:
        return True
    parted = not before or before[-1] in _BORDERS
    return parted and (not behind or behind[0] in _BORDERS)


def _together(page: Page, language: str, measures: list[Measure]) -> list[Measure]:
    """`50 squats and 20 push ups` is one activity."""
    together: list[Measure] = []
    for measure in measures:
        last = together[-1] if together else None
        if (
            last is not None
            and set(page.words(last.end, measure.start)) <= {",", "and", "y", "+", "&"}
            and all(m.minutes is None and _steps(page, m, language) for m in (last, measure))
        ):
            together[-1] = replace(last, end=measure.end)
        else:
            together.append(measure)
    return together
