"""The week's figures: the constructed week, its bounds, ranks, steps and cautions."""

from datetime import UTC, datetime, time
from itertools import islice
from zoneinfo import ZoneInfo

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.entries import FoodKind, Moment, Step
from bot.glucose.week import Week, digest_instants, same_text, week, week_of
from bot.localtime import fixed
from bot.messages import Kind
from bot.participants import Participant
from bot.record import Retracted, Spoke
from bot.units import Unit, in_unit
from tests.glucose.story import Story, activity, at, meal, pair_events, person, reading

#: Invented week of seven pairs (reference, section 10), with its figures worked out apart.
BEFORE = (112, 124, 105, 131, 98, 118, 127)
AFTER = (168, 191, 149, 176, 139, 160, 182)
MEALS = ("rice", "pasta", "soup", "bread", "salad", "beans", "rice")


def constructed() -> Story:
    story = Story()
    for day, (before, after, text) in enumerate(zip(BEFORE, AFTER, MEALS, strict=True)):
        story.tell(*pair_events(day, before, after, text))
    return story


def whole(story: Story) -> Week:
    return week(story.record, start=at("00:00"), end=at("18:00", 6))


def texts(of_week: Week) -> tuple[list[str], list[str]]:
    return (
        [pair.meal.entry.text for pair in of_week.largest_rises],
        [pair.meal.entry.text for pair in of_week.smallest_rises],
    )


def test_the_constructed_week() -> None:
    found = whole(constructed())
    assert len(found.readings) == 14
    assert len(found.complete) == len(found.pairs) == 7
    assert found.before_in_goal == (6, 7)
    assert found.after_in_goal == (5, 7)
    both = sum(bool(pair.before_in_goal and pair.after_in_goal) for pair in found.complete)
    assert both == 4
    assert found.median_rise == 45
    assert (found.lowest, found.highest) == (98, 191)
    step = found.steps[0]
    assert (step.step, len(step.pairs), step.mean_rise) == (Step.AS_USUAL, 7, 50.0)


def test_the_medians_equal_pandas() -> None:
    frame = pd.DataFrame({"before": BEFORE, "after": AFTER})
    frame["rise"] = frame["after"] - frame["before"]
    found = whole(constructed())
    expected = frame.median()
    assert found.median_before == expected["before"]
    assert found.median_after == expected["after"]
    assert found.median_rise == expected["rise"]


def test_its_numbers_show_in_mmol_as_published() -> None:
    shown = [
        (str(in_unit(b, Unit.MMOL_L)), str(in_unit(a, Unit.MMOL_L)))
        for b, a in zip(BEFORE, AFTER, strict=True)
    ]
    assert shown == [
        ("6.2", "9.3"),
        ("6.9", "10.6"),
        ("5.8", "8.3"),
        ("7.3", "9.8"),
        ("5.4", "7.7"),
        ("6.5", "8.9"),
        ("7.0", "10.1"),
    ]


def test_a_high_before_explains_a_high_after() -> None:
    """Educator's example: 245 after comes from 225 (rise 20) or from 130 (rise 115)."""
    story = Story().tell(*pair_events(0, 225, 245)).tell(*pair_events(1, 130, 245))
    assert [pair.rise for pair in whole(story).complete] == [20, 115]


def test_meals_are_ranked_by_single_rises_and_named_once() -> None:
    largest, smallest = texts(whole(constructed()))
    assert largest == ["pasta", "rice", "bread"]  # 67, 56 (and 55), 45
    assert smallest == ["salad", "beans", "soup"]  # 41, 42, 44


def test_a_text_in_both_ranks_stays_among_the_largest() -> None:
    story = Story().tell(*pair_events(0, 100, 190, "Rice  and beans"))
    story.tell(*pair_events(1, 100, 110, "rice and beans")).tell(*pair_events(2, 100, 120, "eggs"))
    assert texts(whole(story)) == (["Rice  and beans", "eggs"], [])


def test_case_and_spaces_make_no_other_meal() -> None:
    noted = Story().tell(meal(" Rice  AND beans", at("12:00"))).record.meals[0]
    assert same_text(noted) == "rice and beans"


def test_an_empty_week_has_no_figures() -> None:
    found = whole(Story())
    assert found.readings == found.pairs == found.largest_rises == found.effects == ()
    assert found.before_in_goal == found.after_in_goal == (0, 0)
    assert found.median_before is found.lowest is found.highest is found.trend is None
    assert [(step.step, step.mean_rise) for step in found.steps] == [(Step.AS_USUAL, None)]


def test_off_scale_and_doubtful_readings_are_counted_but_never_summed() -> None:
    story = Story().tell(*pair_events(0, 110, 150)).tell(*pair_events(1, 110, "HI"))
    story.tell(reading(400, at("08:00", 2))).tell(reading(120, at("08:10", 2), Moment.RECHECK))
    found = whole(story)
    assert len(found.readings) == 6
    assert (found.lowest, found.highest) == (110, 150)
    assert len(found.complete) == 1
    assert (found.median_after, found.steps[0].mean_rise) == (150, 40)
    assert found.has_very_high
    assert not found.has_low


def test_a_pair_belongs_to_the_week_of_its_after_reading() -> None:
    story = Story().tell(*pair_events(6, 110, 150, "late", "17:00"))
    early = week(story.record, start=at("00:00"), end=at("18:00", 6))
    late = week(story.record, start=at("18:00", 6), end=at("18:00", 13))
    assert [len(early.readings), len(early.pairs), len(early.steps[0].pairs)] == [1, 0, 0]
    assert [len(late.readings), len(late.pairs), len(late.steps[0].pairs)] == [1, 1, 1]


def test_a_week_is_from_its_start_to_before_its_end() -> None:
    story = Story().tell(reading(101, at("18:00"))).tell(reading(102, at("18:00", 7)))
    found = week(story.record, start=at("18:00"), end=at("18:00", 7))
    assert [one.noted.entry.value for one in found.readings] == [101]
    assert (str(found.from_date), str(found.to_date)) == ("2026-03-03", "2026-03-09")


def test_a_pair_belongs_to_the_step_in_force_at_its_meal() -> None:
    story = Story().tell(*pair_events(0, 110, 170)).takes(Step.AS_USUAL, at("15:00"))
    story.takes(Step.LIGHTER_MEAL, at("13:00", 1)).tell(*pair_events(1, 110, 150))
    story.tell(*pair_events(2, 110, 140)).takes(Step.MEASURED_PLATE, at("09:00", 3))
    figures = [(one.step, one.rises, one.mean_rise) for one in whole(story).steps]
    assert figures == [
        (Step.AS_USUAL, (60, 40), 50),
        (Step.LIGHTER_MEAL, (30,), 30),
        (Step.MEASURED_PLATE, (), None),
    ]


def test_a_step_taken_after_the_digest_is_not_in_it() -> None:
    story = Story().takes(Step.LIGHTER_MEAL, at("18:00", 6))
    assert [one.step for one in whole(story).steps] == [Step.AS_USUAL]


def test_cautions_are_every_one_of_the_week_in_order() -> None:
    story = Story()
    for level, clock in (("low", "09:00"), ("very_high", "12:00"), ("low", "13:00")):
        spoke = Spoke(kind=Kind.CAUTION, about=level, key=level + clock)
        story.tell(spoke, said_at=at(clock))
    story.tell(Spoke(kind=Kind.REPLY, about=None, key="r"), said_at=at("14:00"))
    story.tell(Spoke(kind=Kind.CAUTION, about="high", key="late"), said_at=at("18:00", 6))
    assert whole(story).cautions == ("low", "very_high", "low")


def test_effects_of_the_week() -> None:
    story = Story().tell(reading(180, at("12:00")))
    story.tell(activity("garden", at("12:30"), 20), reading(140, at("12:35")))
    assert [effect.change for effect in whole(story).effects] == [-40]


@pytest.mark.parametrize(
    ("value", "unit", "low", "very_high"),
    [
        (69, Unit.MG_DL, True, False),
        (70, Unit.MG_DL, False, False),
        (299, Unit.MG_DL, False, False),
        (300, Unit.MG_DL, False, True),
        (3.8, Unit.MMOL_L, True, False),
        (16.6, Unit.MMOL_L, False, False),
        (16.7, Unit.MMOL_L, False, True),
        ("LO", Unit.MG_DL, True, False),
        ("HI", Unit.MG_DL, False, True),
    ],
)
def test_a_week_knows_its_lows_and_very_highs(
    value: float | str, unit: Unit, low: bool, very_high: bool
) -> None:
    found = whole(Story().tell(reading(value, at("12:00"), unit=unit)))
    assert (found.has_low, found.has_very_high) == (low, very_high)


def test_surprising_values_wait_with_their_goal_and_trend() -> None:
    story = constructed().tell(reading(70, at("13:30", 5)))  # half of what follows at 14:00
    found = whole(story)
    assert len(found.complete) == 7
    assert found.after_in_goal == (4, 6)
    assert found.median_rise == 45
    without = Story()
    for day, (before, after) in enumerate(zip(BEFORE, AFTER, strict=True)):
        if day != 5:
            without.tell(*pair_events(day, before, after))
    assert found.trend is not None
    assert found.trend == whole(without).trend


def test_a_meal_begun_as_the_step_is_taken_belongs_to_it() -> None:
    story = Story().takes(Step.LIGHTER_MEAL, at("12:00")).tell(*pair_events(0, 110, 150))
    assert [len(one.pairs) for one in whole(story).steps] == [0, 1]


def zoned(zone: str, joined: str, **changes: object) -> Participant:
    return person(zone=zone, joined_at=fixed(datetime.fromisoformat(joined), zone), **changes)


def test_digests_follow_the_local_clock_across_its_changes() -> None:
    """US clocks go forward on 8 March and back on 1 November 2026 (IANA tz database)."""
    who = zoned("America/New_York", "2026-03-02T09:00:00-05:00")
    first, second = islice(digest_instants(who, who.joined_at), 2)
    assert [first.isoformat(), second.isoformat()] == [
        "2026-03-08T18:00:00-04:00",
        "2026-03-15T18:00:00-04:00",
    ]
    start, end, from_date, to_date = week_of(who, first)
    assert (start, end) == (who.joined_at, first)
    assert (str(from_date), str(to_date)) == ("2026-03-02", "2026-03-08")
    start, _, _, _ = week_of(who, second)
    assert start == first
    autumn = datetime(2026, 11, 1, 18, tzinfo=ZoneInfo("America/New_York"))
    start, end, _, _ = week_of(who, autumn)
    assert (end.timestamp() - start.timestamp()) / 3600 == 169


def test_a_skipped_digest_time_is_the_first_valid_minute_after_it() -> None:
    who = zoned("America/New_York", "2026-03-02T09:00:00-05:00", digest_at=time(2, 30))
    first = next(digest_instants(who, who.joined_at))
    assert first.isoformat() == "2026-03-08T03:00:00-04:00"


def test_a_digest_is_strictly_later() -> None:
    who = person()
    sunday = datetime(2026, 3, 8, 18, tzinfo=UTC)
    assert next(digest_instants(who, sunday)).isoformat() == "2026-03-15T18:00:00+00:00"


values = st.integers(60, 240)


@given(st.lists(st.tuples(values, values), min_size=1, max_size=7), st.data())
def test_a_removed_pair_leaves_no_trace(rows: list[tuple[int, int]], data: st.DataObject) -> None:
    gone = data.draw(st.integers(0, len(rows) - 1))
    full, short = Story(), Story()
    for day, (before, after) in enumerate(rows):
        events = pair_events(day, before, after, f"meal {day}", "12:00", FoodKind.STARCH)
        full.tell(*events)
        if day != gone:
            short.tell(*events)
    full.tell(Retracted(ids=tuple(3 * gone + one for one in (1, 2, 3))))
    assert figures(whole(full)) == figures(whole(short))


def figures(of_week: Week) -> tuple[object, ...]:
    """All numbers of a week, without the ids of what they came from."""
    return (
        len(of_week.readings),
        len(of_week.pairs),
        of_week.before_in_goal,
        of_week.after_in_goal,
        of_week.median_before,
        of_week.median_after,
        of_week.median_rise,
        of_week.lowest,
        of_week.highest,
        of_week.trend,
        texts(of_week),
        of_week.has_low,
        of_week.has_very_high,
        [(step.step, step.rises) for step in of_week.steps],
    )
