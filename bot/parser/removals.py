"""Does the message take back what was said before? `undo`, `ignore that, wrong button`."""

# ruff: noqa: E501 - patterns, one a line

import re
from functools import cache

from bot.parser.concepts import combination, segments, words_of
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, as_written

#: Longer messages are told about in their parts.
LONGEST = 14


@cache
def _removal(language: str) -> Pattern:
    return as_written(
        rf"(?:(?:please|sorry|oops|no|nah|nope|nae|naw|oh|ok|okay|hey|hi|well|so|por favor|perdon) (?:, )?)*{either(gathered(language, 'removal'))}(?: please| por favor| thanks| one| message| entry| soz| sry| sorry)*"
    )


#: `scratch that last 1`
_LAST_ONE = re.compile(r"\b(last|that|this|previous) 1$")
#: `delete my number` is about the telephone.
_PHONE = re.compile(r"\b(?:my|mi|this|phone) (?:phone )?(?:number|numero|phone|telefono)$")
#: `undo undo`
_TWICE = re.compile(r"\b([a-z]+)(?: \1)+\b")


def may_take_back(page: Page, language: str) -> bool:
    """Whether a word stands there without which nothing is taken back."""
    meant = page.holds(words_of(language, _TAKING_BACK))
    return meant or _removal(language).may_stand_in(page.held)


def takes_back(page: Page, language: str) -> bool:
    """Whether a message is nothing but a removal."""
    if len(page.tokens) > LONGEST or not may_take_back(page, language):
        return False
    words = page.said().replace(" ,", "").replace(" .", "").replace(" !", "")
    if _removal(language).may_stand_in(page.held):
        once = _TWICE.sub(r"\1", _LAST_ONE.sub(r"\1 one", words))
        if _removal(language).along.fullmatch(once) is not None:
            return True
    told = segments(page, 0, len(page.tokens), language)
    if not told or _PHONE.search(words):
        return False
    said = [segment.tags for segment in told]
    return any(each.fits(said) for each in _TAKEN_BACK)


_TAKING_BACK = frozenset({"take_back"})
_TAKEN_BACK = (
    combination("take_back just_said", "slip"),
    combination("slip just_said take_back"),
    combination("wrong_sent take_back", "just_said slip"),
)
