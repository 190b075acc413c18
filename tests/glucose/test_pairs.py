"""Pairing by the contract's sentences, one case a sentence. Times: 2 March 2026, UTC."""

from datetime import timedelta, timezone

import pytest

from bot.entries import FoodKind, Moment, Treatment
from bot.glucose.pairs import Pair, Status, pairs
from bot.units import Unit
from tests.glucose.story import Story, at, meal, person, reading

BEFORE, AFTER, RECHECK = Moment.BEFORE_MEAL, Moment.AFTER_MEAL, Moment.RECHECK


def only(story: Story) -> Pair:
    """The one pair of a story with one meal."""
    (pair,) = pairs(story.record)
    return pair


def of_meal(text: str, story: Story) -> Pair:
    return next(pair for pair in pairs(story.record) if pair.meal.entry.text == text)


def rice(clock: str = "12:00") -> Story:
    return Story().tell(reading(118, at(clock), BEFORE), meal("rice", at(clock)))


def test_a_pair_is_complete_with_a_reading_before_and_one_two_hours_after() -> None:
    pair = only(rice().tell(reading(160, at("14:00"), AFTER)))
    assert pair.status is Status.COMPLETE
    assert pair.rise == 42
    assert pair.after_minutes == 120
    assert (pair.before_in_goal, pair.after_in_goal) == (True, True)


def test_every_meal_has_a_pair_while_it_is_open() -> None:
    pair = only(rice())
    assert pair.status is Status.NO_AFTER
    assert pair.before is not None
    assert pair.rise is pair.after is pair.after_minutes is pair.after_in_goal is None


@pytest.mark.parametrize(
    ("clock", "counts"),
    [
        ("10:59:59", False),
        ("11:00", True),
        ("12:10", True),
        ("12:10:01", False),
    ],
)
def test_a_before_reading_counts_from_60_minutes_before_to_10_after(
    clock: str, counts: bool
) -> None:
    story = Story().tell(meal("rice", at("12:00"))).tell(reading(118, at(clock)))
    assert (only(story).before is not None) is counts


@pytest.mark.parametrize("moment", list(Moment))
def test_a_before_reading_is_not_stated_to_be_something_else(moment: Moment) -> None:
    story = Story().tell(meal("rice", at("12:00"))).tell(reading(118, at("11:50"), moment))
    counts = moment in {Moment.BEFORE_MEAL, Moment.FASTING, Moment.UNSTATED}
    assert (only(story).before is not None) is counts


@pytest.mark.parametrize("moment", list(Moment))
def test_an_after_reading_is_not_stated_to_be_something_else(moment: Moment) -> None:
    story = rice().tell(reading(160, at("14:00"), moment))
    counts = moment in {Moment.AFTER_MEAL, Moment.AFTER_ACTIVITY, Moment.UNSTATED}
    assert (only(story).after is not None) is counts


def test_a_stated_before_beats_a_nearer_one_and_the_nearest_wins_among_equals() -> None:
    story = Story().tell(meal("rice", at("12:00")))
    story.tell(reading(101, at("11:30"), BEFORE)).tell(reading(102, at("11:40"), BEFORE))
    story.tell(reading(103, at("11:59")))
    before = only(story).before
    assert before is not None
    assert before.entry.value == 102


def test_a_stated_after_beats_a_nearer_one_and_the_nearest_to_120_wins_among_equals() -> None:
    story = rice().tell(reading(151, at("14:00")))
    story.tell(reading(152, at("13:35"), AFTER)).tell(reading(153, at("14:20"), AFTER))
    after = only(story).after
    assert after is not None
    assert after.entry.value == 153


@pytest.mark.parametrize(
    ("clock", "status", "minutes"),
    [
        ("12:59:59", Status.NO_AFTER, None),
        ("13:00", Status.OFF_TIME, 60),
        ("13:29:59", Status.OFF_TIME, 90),
        ("13:30", Status.COMPLETE, 90),
        ("13:59:30", Status.COMPLETE, 120),
        ("13:59:29", Status.COMPLETE, 119),
        ("14:30", Status.COMPLETE, 150),
        ("14:30:01", Status.OFF_TIME, 150),
        ("15:00", Status.OFF_TIME, 180),
        ("15:00:01", Status.NO_AFTER, None),
    ],
)
def test_the_after_reading_has_its_time(clock: str, status: Status, minutes: int | None) -> None:
    pair = only(rice().tell(reading(160, at(clock), AFTER)))
    assert (pair.status, pair.after_minutes) == (status, minutes)


def test_a_reading_in_time_beats_a_stated_one_that_is_off_time() -> None:
    story = rice().tell(reading(190, at("13:20"), AFTER)).tell(reading(160, at("14:25")))
    assert only(story).after_minutes == 145


def test_a_reading_serves_one_before_and_one_after_and_earlier_meals_choose_first() -> None:
    story = Story().tell(meal("bread", at("10:00")))
    story.tell(reading(140, at("12:00"))).tell(meal("rice", at("12:05")), meal("soup", at("12:09")))
    bread, first, second = pairs(story.record)
    assert bread.after is first.before is not None
    assert second.before is None


def test_water_takes_no_reading_away_from_a_plate() -> None:
    story = Story().tell(meal("water", at("11:55"), FoodKind.FREE_DRINK))
    story.tell(reading(118, at("12:00"), BEFORE), meal("rice", at("12:00")))
    story.tell(reading(160, at("14:00"), AFTER))
    assert of_meal("rice", story).status is Status.COMPLETE
    assert of_meal("water", story).status is Status.NO_AFTER


def test_another_meal_before_the_after_reading_is_eating_again() -> None:
    story = rice().tell(meal("apple", at("13:00"), FoodKind.FRUIT))
    story.tell(reading(160, at("14:00"), AFTER))
    assert of_meal("rice", story).status is Status.ATE_AGAIN


@pytest.mark.parametrize(
    ("kind", "status"),
    [
        (FoodKind.FREE_DRINK, Status.COMPLETE),
        (FoodKind.SWEET_DRINK, Status.ATE_AGAIN),
        (FoodKind.UNKNOWN, Status.ATE_AGAIN),
    ],
)
def test_a_drink_is_eating_again_unless_known_to_be_free_of_sugar(
    kind: FoodKind, status: Status
) -> None:
    story = rice().tell(meal("tea", at("13:00"), kind)).tell(reading(160, at("14:00"), AFTER))
    assert of_meal("rice", story).status is status


def test_food_told_with_the_after_reading_is_the_next_meal() -> None:
    story = rice().tell(reading(160, at("14:00"), AFTER), meal("apple", at("14:00")))
    assert of_meal("rice", story).status is Status.COMPLETE


def test_sugar_against_a_low_makes_the_pair_ate_again() -> None:
    story = rice().tell(reading(62, at("13:00")))
    story.tell(Treatment(text="juice", taken_at=at("13:05")))
    story.tell(reading(150, at("14:00"), AFTER))
    assert only(story).status is Status.ATE_AGAIN


@pytest.mark.parametrize(
    ("clock", "status"),
    [("09:59", Status.COMPLETE), ("10:00", Status.AROUND_LOW), ("12:00", Status.AROUND_LOW)],
)
def test_a_low_within_the_two_hours_before_the_start(clock: str, status: Status) -> None:
    story = rice().tell(reading(69, at(clock), RECHECK)).tell(reading(160, at("14:00"), AFTER))
    assert only(story).status is status


@pytest.mark.parametrize(
    ("value", "unit", "status"),
    [
        (69, Unit.MG_DL, Status.AROUND_LOW),
        (70, Unit.MG_DL, Status.COMPLETE),
        (3.8, Unit.MMOL_L, Status.AROUND_LOW),
        (3.9, Unit.MMOL_L, Status.COMPLETE),
        ("LO", Unit.MG_DL, Status.AROUND_LOW),
        ("HI", Unit.MG_DL, Status.OFF_SCALE),
    ],
)
def test_lows_and_off_scale_readings_keep_their_place(
    value: float | str, unit: Unit, status: Status
) -> None:
    pair = only(rice().tell(reading(value, at("14:00"), AFTER, unit)))
    assert pair.status is status
    assert pair.after is not None
    assert (pair.rise is None) is isinstance(value, str)
    assert (pair.after_in_goal is None) is isinstance(value, str)


def test_the_first_status_that_fits_is_given() -> None:
    story = Story().tell(meal("rice", at("12:00"))).tell(meal("cake", at("12:30")))
    story.tell(reading("LO", at("15:00"), AFTER))
    assert of_meal("rice", story).status is Status.ATE_AGAIN
    off = Story().tell(meal("rice", at("12:00"))).tell(reading("HI", at("15:00"), AFTER))
    assert only(off).status is Status.OFF_TIME
    lone = Story().tell(meal("rice", at("12:00"))).tell(reading(150, at("14:00"), AFTER))
    assert only(lone).status is Status.NO_BEFORE


@pytest.mark.parametrize(
    ("value", "unit", "within"),
    [
        (79, Unit.MG_DL, False),
        (80, Unit.MG_DL, True),
        (130, Unit.MG_DL, True),
        (131, Unit.MG_DL, False),
        (4.3, Unit.MMOL_L, False),
        (4.4, Unit.MMOL_L, True),
        (7.2, Unit.MMOL_L, True),
        (7.3, Unit.MMOL_L, False),
    ],
)
def test_the_goal_before_has_both_ends(value: float, unit: Unit, within: bool) -> None:
    """ADA Standards of Care 2026, section 6, table 6.3: 80-130 mg/dL (4.4-7.2 mmol/L)."""
    story = Story().tell(reading(value, at("12:00"), BEFORE, unit), meal("rice", at("12:00")))
    assert only(story).before_in_goal is within


@pytest.mark.parametrize(
    ("value", "unit", "within"),
    [
        (69, Unit.MG_DL, False),
        (70, Unit.MG_DL, True),
        (179, Unit.MG_DL, True),
        (180, Unit.MG_DL, False),
        (3.8, Unit.MMOL_L, False),
        (3.9, Unit.MMOL_L, True),
        (9.9, Unit.MMOL_L, True),
        (10.0, Unit.MMOL_L, False),
    ],
)
def test_the_goal_after_excludes_its_upper_end(value: float, unit: Unit, within: bool) -> None:
    """ADA Standards of Care 2026, section 6, table 6.3: below 180 mg/dL (10.0 mmol/L)."""
    assert only(rice().tell(reading(value, at("14:00"), AFTER, unit))).after_in_goal is within


def test_nothing_is_judged_in_pregnancy() -> None:
    story = Story(participant=person(pregnant=True))
    story.tell(reading(118, at("12:00"), BEFORE), meal("rice", at("12:00")))
    pair = only(story.tell(reading(160, at("14:00"), AFTER)))
    assert (pair.status, pair.rise) == (Status.COMPLETE, 42)
    assert pair.before_in_goal is pair.after_in_goal is None


def test_the_washed_repeat_takes_the_place_of_a_doubtful_high() -> None:
    story = rice().tell(reading(270, at("14:29"), AFTER)).tell(reading(165, at("14:40"), RECHECK))
    pair = only(story)
    assert pair.after is not None
    assert (pair.after.entry.value, pair.after_minutes) == (165, 160)
    assert pair.status is Status.COMPLETE


def test_a_doubtful_before_gives_its_place_to_the_repeat() -> None:
    story = Story().tell(reading(260, at("12:00"), BEFORE), meal("mango", at("12:00")))
    story.tell(reading(124, at("12:15"), RECHECK)).tell(reading(150, at("14:00"), AFTER))
    pair = only(story)
    assert pair.rise == 26
    assert pair.before_in_goal is True


def test_a_high_that_is_as_high_again_stands() -> None:
    story = rice().tell(reading(270, at("14:00"), AFTER)).tell(reading(266, at("14:10"), RECHECK))
    assert only(story).rise == 152


def test_a_meal_without_a_known_start_has_no_pair() -> None:
    story = Story().tell(meal("rice", None), reading(171, at("14:00"), AFTER))
    assert pairs(story.record) == ()


def test_two_hours_are_elapsed_hours_whatever_the_offset() -> None:
    later = at("14:00").astimezone(timezone(timedelta(hours=2)))
    assert only(rice().tell(reading(160, later, AFTER))).after_minutes == 120


def test_a_repeat_may_also_be_placed_by_its_own_instant() -> None:
    early = Story().tell(reading(260, at("10:50"))).tell(reading(120, at("11:05")))
    assert only(early.tell(meal("rice", at("12:00")))).before is not None
    late = rice().tell(reading(270, at("14:59"), AFTER)).tell(reading(150, at("15:05"), RECHECK))
    assert (only(late).status, only(late).after_minutes) == (Status.OFF_TIME, 185)


def test_of_two_as_near_the_earlier_is_taken() -> None:
    story = Story().tell(meal("rice", at("12:00")))
    story.tell(reading(105, at("12:05"))).tell(reading(101, at("11:55")))
    before = only(story).before
    assert before is not None
    assert before.entry.value == 101


def test_of_two_at_one_instant_the_one_told_first_is_taken_in_whatever_order_they_arrive() -> None:
    first = (reading(105, at("11:55")), at("12:10"))
    second = (reading(101, at("11:55")), at("12:20"))
    for told in ((first, second), (second, first)):
        story = Story().tell(meal("rice", at("12:00")))
        for body, said_at in told:
            story.tell(body, said_at=said_at)
        before = only(story).before
        assert before is not None
        assert before.entry.value == 105


def test_a_surprising_reading_keeps_its_place_and_is_not_judged() -> None:
    story = Story().tell(reading(50, at("11:40"), AFTER))
    story.tell(reading(118, at("12:00"), BEFORE), meal("rice", at("12:00")))
    pair = only(story.tell(reading(160, at("14:00"), AFTER)))
    assert pair.unconfirmed
    assert (pair.rise, pair.before_in_goal, pair.after_in_goal) == (42, None, True)
