"""Step against step and meal against meal, with the published example and SciPy."""

from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from bot.entries import Step
from bot.glucose.pairs import Pair, pairs
from bot.glucose.week import week
from bot.programme.compare import (
    Verdict,
    by_activity,
    compare,
    compare_steps,
    same_meals,
    student_limit,
)
from tests.glucose.story import Story, activity, at, pair_events

#: Invented week (reference, section 10): before and after of seven days.
WEEK = ((112, 168), (124, 191), (105, 149), (131, 176), (98, 139), (118, 160), (127, 182))


def told(rows: list[tuple[int, int]], first: int = 0, text: str = "rice") -> tuple[Pair, ...]:
    story = Story()
    for day, (before, after) in enumerate(rows, start=first):
        story.tell(*pair_events(day, before, after, text))
    return pairs(story.record)


def rises(*values: int, before: int = 110) -> tuple[Pair, ...]:
    return told([(before, before + value) for value in values])


def test_the_split_of_the_constructed_week_is_inside_meter_scatter() -> None:
    """{1,2,7} v {3,4,5,6}: 59.33 v 43.00, difference 16.33, meter limit 23.79."""
    every = told(list(WEEK))
    found = compare([every[day] for day in (0, 1, 6)], [every[day] for day in (2, 3, 4, 5)])
    assert found is not None
    assert [round(mean, 2) for mean in (found.mean_one, found.mean_other)] == [59.33, 43.00]
    assert round(found.difference, 2) == -16.33
    assert round(found.meter_limit, 2) == 23.79
    assert not found.beyond_meter_scatter
    assert found.verdict is Verdict.NOT_CLEAR_YET


@given(
    st.lists(st.integers(0, 90), min_size=2, max_size=8),
    st.lists(st.integers(0, 90), min_size=2, max_size=8),
)
def test_the_limit_by_own_days_is_that_of_the_t_test(one: list[int], other: list[int]) -> None:
    """`scipy.stats.ttest_ind` with equal variances: half the width of its 95 % interval."""
    found = compare(rises(*one), rises(*other))
    assert found is not None
    assert found.day_limit is not None
    if len({*one}) > 1 and len({*other}) > 1:  # scipy warns of precision otherwise
        interval = stats.ttest_ind(other, one).confidence_interval(0.95)
        assert found.difference == pytest.approx(fmean(other) - fmean(one))
        assert found.day_limit == pytest.approx((interval.high - interval.low) / 2, rel=2e-4)


def test_student_limits_equal_scipy() -> None:
    for freedom in range(1, 200):
        assert student_limit(freedom) == pytest.approx(stats.t.ppf(0.975, freedom), abs=2e-4)
    with pytest.raises(ValueError, match="degree of freedom"):
        student_limit(0)


def test_clear_needs_both_limits() -> None:
    steady = compare(rises(70, 74, 72, 71), rises(30, 33, 28, 31))
    assert steady is not None
    assert steady.verdict is Verdict.CLEAR
    assert steady.more_pairs is None
    restless = compare(rises(20, 120, 60, 84), rises(5, 80, -10, 45))
    assert restless is not None
    assert restless.beyond_meter_scatter
    assert restless.day_limit is not None
    assert restless.limit == restless.day_limit > abs(restless.difference)
    assert restless.verdict is Verdict.NOT_CLEAR_YET


def test_one_pair_on_a_side_is_never_clear() -> None:
    found = compare(rises(90), rises(10))
    assert found is not None
    assert found.beyond_meter_scatter
    assert (found.verdict, found.day_limit, found.more_pairs) == (
        Verdict.NOT_CLEAR_YET,
        None,
        None,
    )


def test_how_many_more_pairs_would_tell() -> None:
    """With so many more of the same kind the difference is clear, with one fewer it is not."""
    one, other = (60, 66, 63, 57, 64, 62), [41, 44]
    found = compare(rises(*one), rises(*other))
    assert found is not None
    assert found.verdict is Verdict.NOT_CLEAR_YET
    assert found.more_pairs is not None
    assert found.more_pairs > 1
    for more, verdict in (
        (found.more_pairs - 1, Verdict.NOT_CLEAR_YET),
        (found.more_pairs, Verdict.CLEAR),
    ):
        further = compare(rises(*one), rises(*other, *[41 if k % 2 else 44 for k in range(more)]))
        assert further is not None
        assert further.verdict is verdict


def test_no_number_of_pairs_is_promised_where_fourteen_would_not_do() -> None:
    found = compare(rises(50, 60, 40), rises(48, 58, 41))
    assert found is not None
    assert found.more_pairs is None


def test_nothing_to_compare() -> None:
    assert compare(rises(40, 50), ()) is None


def test_only_complete_pairs_are_compared() -> None:
    every = told([(110, 160), (65, 150), (112, 158)])
    found = compare(every, every)
    assert found is not None
    assert len(found.one) == 2


def test_each_step_is_compared_with_the_one_before_over_all_and_over_the_same_meals() -> None:
    story = Story()
    for day, (after, text) in enumerate(
        [(190, "rice"), (194, "rice"), (150, "eggs"), (152, "eggs"), (188, "rice")]
    ):
        story.tell(*pair_events(day, 110, after, text))
    story.takes(Step.LIGHTER_MEAL, at("10:00", 5))
    for day, (after, text) in enumerate([(151, "rice"), (150, "rice"), (140, "soup")], start=5):
        story.tell(*pair_events(day, 110, after, text))
    story.takes(Step.MEASURED_PLATE, at("20:00", 9))
    figures = week(story.record, start=at("00:00"), end=at("18:00", 13)).steps
    (found,) = compare_steps(figures)
    assert (found.earlier, found.later) == (Step.AS_USUAL, Step.LIGHTER_MEAL)
    assert len(found.all_meals.one) == 5
    assert found.same_meals is not None
    assert [pair.rise for pair in found.same_meals.one] == [84, 78]  # the latest two of three
    assert [pair.rise for pair in found.same_meals.other] == [41, 40]
    assert found.same_meals.verdict is Verdict.CLEAR


def test_no_meal_in_common() -> None:
    assert same_meals(told([(110, 150)], text="rice"), told([(110, 150)], text="eggs")) == ((), ())


def test_with_activity_and_without() -> None:
    story = Story()
    for day in range(4):
        story.tell(*pair_events(day, 110, 170 - 30 * (day % 2)))
    story.tell(activity("walk", at("12:40", 1), 20)).tell(activity("walk", at("14:00", 3), 20))
    story.tell(activity("walk", at("12:00", 0), 20)).tell(activity("walk", at("14:01", 2), 20))
    record = story.record
    still, moved = by_activity(record, pairs(record))
    assert [pair.rise for pair in still] == [60, 60]
    assert [pair.rise for pair in moved] == [30, 30]
