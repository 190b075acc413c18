"""What participants read because of their educator: short, plain, and to be understood."""

import pytest

from bot.words.language import ENGLISH
from tests.words.reading_level import grade

SAY, WISHES = ENGLISH.educator, ENGLISH.wishes
FOR_PARTICIPANTS = {
    "left": SAY.left,
    "no_educator": SAY.no_educator,
    "goals": SAY.goals_changed_note,
    "limits": SAY.limits_changed_note,
    "released": WISHES.released_note,
    "fewer_released": WISHES.fewer_released_note,
    "fast_set": WISHES.fast_set_note,
    "fast_ended": WISHES.fast_ended_note,
    "fast_asked": WISHES.fast_asked,
    "fast_ask": WISHES.fast_ask,
    "fast_stands": WISHES.fast_stands,
    "discreet_begins": WISHES.discreet_begins,
    "discreet_ends": WISHES.discreet_ends,
    "waking": WISHES.waking,
    "fewer_asked": ENGLISH.programme.fewer_asked,
    "offer_asked": ENGLISH.programme.offer_asked,
    "plan": SAY.plan_note,
    "note": SAY.note,
}


@pytest.mark.parametrize("name", FOR_PARTICIPANTS)
def test_reading_level_is_grade_6_or_lower(name: str) -> None:
    """By the Flesch-Kincaid grade of textstat."""
    filled = FOR_PARTICIPANTS[name].format(
        goals="80 to 130 before, below 180 after.",
        limit_low=75,
        limit_high=220,
        unit="mg/dL",
        step="lighter meal",
        until="2026-03-16",
        first="2026-03-10",
        last="2026-03-19",
        rhythm="once a week",
        within=5,
        of=6,
        text="See you on Monday.",
    )
    assert grade(filled) <= 6


def test_a_note_says_that_nobody_watches_and_that_it_cannot_be_answered() -> None:
    assert "Nobody watches this chat day and night" in SAY.note
    assert "cannot pass on an answer" in SAY.note
