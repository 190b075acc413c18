"""Doubtful and surprising readings: the contract's high ladder and its rule of half and twice."""

import pytest

from bot.entries import FoodKind, Moment, Treatment
from bot.glucose.readings import Settled, settled, surprising
from bot.participants import Limits
from bot.record import Record
from bot.units import Unit
from tests.glucose.story import Story, at, meal, person, reading


def by_value(record: Record) -> dict[float | None, Settled]:
    return {one.noted.entry.value: one for one in settled(record)}


def doubtful_values(story: Story) -> set[float | None]:
    return {one.noted.entry.value for one in settled(story.record) if one.doubtful}


@pytest.mark.parametrize(
    ("value", "again", "clock", "overruled"),
    [
        (250, 249, "12:30", True),
        (250, 249, "12:30:01", False),
        (249, 120, "12:10", False),
        (310, 250, "12:10", False),
        ("HI", 180, "12:10", True),
        (260, "LO", "12:10", True),
        (260, "HI", "12:10", False),
    ],
)
def test_a_reading_below_high_within_half_an_hour_overrules(
    value: float | str, again: float | str, clock: str, overruled: bool
) -> None:
    story = Story().tell(reading(value, at("12:00"))).tell(reading(again, at(clock)))
    first, second = settled(story.record)
    assert (first.doubtful, second.doubtful) == (overruled, False)


def test_the_high_limit_is_compared_in_the_unit_as_typed() -> None:
    """13.9 mmol/L is the published partner of 250 mg/dL (it is 250.4)."""
    for value, overruled in ((13.9, True), (13.8, False)):
        story = Story().tell(reading(value, at("12:00"), unit=Unit.MMOL_L))
        story.tell(reading(9.0, at("12:10"), unit=Unit.MMOL_L))
        assert settled(story.record)[0].doubtful is overruled


def test_a_care_team_may_lower_the_high_limit() -> None:
    story = Story(participant=person(limits=Limits(high=200)))
    story.tell(reading(210, at("12:00"))).tell(reading(150, at("12:10")))
    assert doubtful_values(story) == {210}


def test_the_repeat_has_the_moment_and_instant_of_the_first() -> None:
    story = Story().tell(reading(260, at("12:00"), Moment.BEFORE_MEAL))
    story.tell(reading(120, at("12:10"), Moment.RECHECK))
    repeat = by_value(story.record)[120]
    assert (repeat.moment, repeat.at) == (Moment.BEFORE_MEAL, at("12:00"))
    assert repeat.noted.entry.taken_at == at("12:10")


def test_a_repeat_that_says_what_it_is_for_keeps_that_when_the_first_did_not() -> None:
    story = (
        Story().tell(reading(260, at("12:00"))).tell(reading(120, at("12:10"), Moment.AFTER_MEAL))
    )
    assert by_value(story.record)[120].moment is Moment.AFTER_MEAL


def test_highs_in_a_row_are_overruled_together_and_only_one_reading_is_the_repeat() -> None:
    story = Story().tell(reading(270, at("12:00"), Moment.AFTER_MEAL))
    story.tell(reading(265, at("12:10"), Moment.RECHECK))
    story.tell(reading(150, at("12:20"), Moment.RECHECK))
    story.tell(reading(148, at("12:25"), Moment.RECHECK))
    known = by_value(story.record)
    assert doubtful_values(story) == {270, 265}
    assert (known[150].moment, known[150].at) == (Moment.AFTER_MEAL, at("12:00"))
    assert known[148].moment is Moment.RECHECK


def test_a_reading_of_unknown_instant_overrules_nothing() -> None:
    story = Story().tell(reading(260, at("12:00"))).tell(reading(120, None), said_at=at("12:10"))
    first, second = settled(story.record)
    assert not first.doubtful
    assert second.at is None


def surprises(story: Story) -> list[float | None]:
    record = story.record
    return [noted.entry.value for noted in record.readings if surprising(record, noted)]


@pytest.mark.parametrize(
    ("last", "value", "clock", "odd"),
    [
        (160, 79, "12:59", True),
        (160, 80, "12:59", False),
        (100, 201, "13:00", True),
        (100, 201, "13:00:01", False),
        (100, 200, "13:00", False),
        (120, "HI", "12:20", False),
        (120, "LO", "12:20", False),
        ("LO", 95, "12:20", False),
    ],
)
def test_half_or_twice_within_an_hour_is_surprising(
    last: float | str, value: float | str, clock: str, odd: bool
) -> None:
    story = Story().tell(reading(last, at("12:00"))).tell(reading(value, at(clock)))
    assert bool(surprises(story)) is odd


def test_exact_halves_are_exact_in_mmol_too() -> None:
    story = Story().tell(reading(7.2, at("12:00"), unit=Unit.MMOL_L))
    story.tell(reading(3.6, at("12:30"), unit=Unit.MMOL_L))
    assert surprises(story) == []


def test_food_told_between_explains_it_and_water_does_not() -> None:
    for kind, odd in ((FoodKind.STARCH, False), (FoodKind.FREE_DRINK, True)):
        story = Story().tell(reading(100, at("12:00"))).tell(meal("some", at("12:05"), kind))
        story.tell(reading(210, at("12:55")))
        assert (surprises(story) == [210]) is odd


def test_food_told_with_the_second_reading_explains_nothing() -> None:
    story = Story().tell(reading(100, at("12:00")))
    story.tell(reading(210, at("12:30")), meal("rice", at("12:30")))
    assert surprises(story) == [210]


def test_a_next_reading_near_it_confirms() -> None:
    story = Story().tell(reading(100, at("12:00"))).tell(reading(210, at("12:20")))
    assert by_value(story.record)[210].unconfirmed
    story.tell(reading(205, at("12:30")))
    assert by_value(story.record)[210].surprising
    assert not any(one.unconfirmed for one in settled(story.record))


def test_a_next_reading_near_the_one_before_overrules_and_is_no_surprise_itself() -> None:
    story = Story().tell(reading(100, at("12:00"))).tell(reading(210, at("12:20")))
    story.tell(reading(102, at("12:30")))
    assert surprises(story) == [210]
    assert by_value(story.record)[210].unconfirmed


def test_a_doubtful_high_is_no_yardstick() -> None:
    story = Story().tell(reading(300, at("12:00"))).tell(reading(120, at("12:10")))
    assert surprises(story) == []


def test_a_recheck_of_a_reading_of_no_stated_moment_is_placed_like_that_one() -> None:
    story = Story().tell(reading(260, at("12:00")))
    story.tell(reading(120, at("12:10"), Moment.RECHECK))
    assert by_value(story.record)[120].moment is Moment.UNSTATED


def test_two_surprises_in_a_row_are_judged_by_what_stood_before_both() -> None:
    story = Story().tell(reading(160, at("12:00"))).tell(reading(75, at("12:10")))
    story.tell(reading(35, at("12:20"))).tell(reading(155, at("12:30")))
    assert surprises(story) == [75, 35]


def test_sugar_told_against_a_low_explains_a_rise() -> None:
    story = Story().tell(reading(55, at("12:00")))
    story.tell(Treatment(text="juice", taken_at=at("12:02"))).tell(reading(115, at("12:17")))
    assert surprises(story) == []
