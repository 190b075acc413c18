"""Whatever was said before, a grave thing is said first, in the same turn, and tested again.

The rule is the project's (contract of cautions): below 54 mg/dL or LO, and any emergency
symptom. Levels: ADA Standards of Care 2026, section 6.
"""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.messages import Kind
from tests.planning.living import Life, person

TALK = st.sampled_from(
    [
        "118, rice and beans",
        "154",
        "62",
        "310",
        "HI",
        "lunch now",
        "juice",
        "walked 20 min",
        "going for a walk",
        "sorry 126",
        "that was after",
        "undo",
        "stop",
        "pause",
        "resume",
        "erase",
        "skip",
        "hello",
        "feeling shaky",
        "7.2",
        "next step",
        "summary",
        "I'm pregnant",
    ]
)
VERY_LOW = st.sampled_from(["52", "LO", "21 mg/dL", "53 before lunch", "2.9 mmol", "41, rice"])
EMERGENCY = st.sampled_from(
    ["I passed out", "chest pain", "she had a seizure", "cannot breathe", "118 and slurred speech"]
)
GAPS = st.integers(1, 700)


def lived(talk: list[tuple[int, str]], gap: int, last: str) -> tuple[Life, datetime, int]:
    """A life up to one grave message: the life, when it came, how much was said before it."""
    at = datetime(2026, 3, 2, 6, 0, tzinfo=UTC)
    life = Life(person(at, main_meal=None))
    for minutes, text in talk:
        at += timedelta(minutes=minutes)
        life.says(at, text)
    at += timedelta(minutes=gap)
    life.until(at, including=False)
    before = len(life.said)
    life.says(at, last)
    return life, at, before


@given(st.lists(st.tuples(GAPS, TALK), max_size=8), GAPS, VERY_LOW)
def test_a_very_low_value_is_cautioned_first_and_tested_again(
    talk: list[tuple[int, str]], gap: int, grave: str
) -> None:
    life, at, before = lived(talk, gap, grave)
    first = life.said[before][1]
    assert first.kind is Kind.CAUTION
    assert first.about in ("very_low", "emergency")
    levels = {one.about for _, one in life.said[before:] if one.kind is Kind.CAUTION}
    assert "very_low" in levels
    if any(text == "stop" for _, text in talk):
        return  # the caution itself says when to test; whoever stopped is not prompted
    life.until(at + timedelta(minutes=40))
    rechecks = [when for when, one in life.prompts() if one.about == "recheck" and when > at]
    assert rechecks[0] <= at + timedelta(minutes=15)


@given(st.lists(st.tuples(GAPS, TALK), max_size=8), GAPS, EMERGENCY)
def test_an_emergency_symptom_is_said_first_with_whom_to_call(
    talk: list[tuple[int, str]], gap: int, grave: str
) -> None:
    life, _, before = lived(talk, gap, grave)
    first = life.said[before][1]
    assert (first.kind, first.about) == (Kind.CAUTION, "emergency")
    assert first.text.startswith("Call ")


@pytest.mark.parametrize("minutes_late", [0, 59, 61, 600, 1400])
def test_a_very_low_value_told_late_is_cautioned_all_the_same(minutes_late: int) -> None:
    at = datetime(2026, 3, 3, 12, 0, tzinfo=UTC)
    life = Life(person(at - timedelta(days=1)))
    taken = at - timedelta(minutes=minutes_late)
    local = taken + timedelta(hours=2)  # the participant's clock, Johannesburg
    life.says(at, f"it was 49 at {local:%H:%M}" if minutes_late else "49")
    kinds = [(one.kind, one.about) for _, one in life.said if one.kind is Kind.CAUTION]
    assert kinds[0] == (Kind.CAUTION, "very_low")
