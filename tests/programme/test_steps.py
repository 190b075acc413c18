"""Which step is in force, and when the next is offered."""

import pytest

from bot.entries import Moment, Step
from bot.glucose.pairs import pairs
from bot.programme.steps import Offer, calm, next_step, offer, step_at
from bot.units import Unit
from tests.glucose.story import Story, at, pair_events, person, reading


def offered(story: Story, clock: str = "20:00", day: int = 5) -> Offer | None:
    return offer(story.record, pairs(story.record), at(clock, day))


def paired(days: int, story: Story | None = None, first: int = 0) -> Story:
    story = story or Story()
    for day in range(first, first + days):
        story.tell(*pair_events(day, 115, 160))
    return story


def test_the_steps_follow_each_other() -> None:
    assert [next_step(step) for step in Step] == [
        Step.LIGHTER_MEAL,
        Step.MEASURED_PLATE,
        Step.MOVE_AFTER,
        None,
    ]


def test_as_usual_is_in_force_from_joining_and_then_the_last_one_taken() -> None:
    story = Story().takes(Step.LIGHTER_MEAL, at("13:00")).takes(Step.AS_USUAL, at("09:00", 2))
    record = story.record
    assert step_at(record, at("12:59")) is Step.AS_USUAL
    assert step_at(record, at("13:00")) is Step.LIGHTER_MEAL
    assert step_at(record, at("10:00", 2)) is Step.AS_USUAL


def test_the_next_step_is_ready_after_three_complete_pairs() -> None:
    story = Story(participant=person(may_go_low=False, ketone_risk=False))
    assert offered(paired(2, story)) == Offer(
        step=Step.LIGHTER_MEAL, pairs=2, missing=1, needs_release=False, held_back=False
    )
    found = offered(paired(1, story, first=2))
    assert found is not None
    assert found.ready


def test_only_pairs_under_the_step_in_force_count() -> None:
    story = paired(3).takes(Step.LIGHTER_MEAL, at("10:00", 3))
    found = offered(paired(2, story, first=3))
    assert found is not None
    assert (found.step, found.pairs, found.missing) == (Step.MEASURED_PLATE, 2, 1)


@pytest.mark.parametrize(
    ("may_go_low", "ketone_risk", "release"),
    [
        (False, False, False),
        (True, False, True),
        (False, True, True),
        (None, False, True),
        (False, None, True),
    ],
)
def test_the_educator_releases_steps_where_lows_or_ketones_are_possible_or_unknown(
    may_go_low: bool | None, ketone_risk: bool | None, release: bool
) -> None:
    who = person(may_go_low=may_go_low, ketone_risk=ketone_risk)
    found = offered(Story(participant=who))
    assert found is not None
    assert found.needs_release is release


def test_nothing_follows_the_last_step() -> None:
    assert offered(Story().takes(Step.MOVE_AFTER, at("10:00"))) is None


@pytest.mark.parametrize(
    ("value", "unit", "still"),
    [
        (69, Unit.MG_DL, False),
        (70, Unit.MG_DL, True),
        (299, Unit.MG_DL, True),
        (300, Unit.MG_DL, False),
        (16.7, Unit.MMOL_L, False),
        ("HI", Unit.MG_DL, False),
        ("LO", Unit.MG_DL, False),
    ],
)
def test_a_low_or_300_holds_suggestions_back_for_a_week(
    value: float | str, unit: Unit, still: bool
) -> None:
    record = Story().tell(reading(value, at("12:00"), Moment.RECHECK, unit)).record
    assert calm(record, at("12:00", 7)) is still
    assert calm(record, at("12:01", 7))
    assert calm(record, at("11:59"))
