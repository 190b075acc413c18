"""The slope equals scipy.stats.theilslopes, and the published worked examples."""

import math
import warnings

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import theilslopes

from bot.glucose.trend import trend

points = st.lists(
    st.tuples(
        st.integers(0, 40).map(lambda hours: hours / 8),
        st.one_of(st.integers(60, 300).map(float), st.integers(30, 160).map(lambda v: v * 1.80156)),
    ),
    min_size=6,
    max_size=30,
)


@given(points)
def test_it_equals_scipy(given_points: list[tuple[float, float]]) -> None:
    days = [day for day, _ in given_points]
    values = [value for _, value in given_points]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)  # scipy's own, on ties alone
        expected = theilslopes(values, days)
    ours = trend(given_points)
    if ours is None:
        assert math.isnan(expected.low_slope)
        return
    assert ours.mg_dl_per_day == pytest.approx(expected.slope)
    assert ours.low == pytest.approx(expected.low_slope)
    assert ours.high == pytest.approx(expected.high_slope)
    assert ours.clear is bool(ours.low > 0 or ours.high < 0)


def test_one_wild_value_does_not_bend_it() -> None:
    """USGS, Statistical Methods in Water Resources, chapter 10: slope 1, interval 1 to 3.5."""
    found = trend(list(zip(range(1, 8), (1.0, 2, 3, 4, 5, 16, 7), strict=True)))
    assert found is not None
    assert (found.mg_dl_per_day, found.low, found.high) == (1.0, 1.0, 3.5)
    assert found.clear


def test_the_constructed_week_has_no_trend() -> None:
    """Invented week of seven pairs; slope -1.5, 95 % -6.25 to 3.33, computed with SciPy."""
    rises = (56.0, 67, 44, 45, 41, 42, 55)
    found = trend(list(zip(range(1, 8), rises, strict=True)))
    assert found is not None
    assert found.mg_dl_per_day == -1.5
    assert (found.low, round(found.high, 2)) == (-6.25, 3.33)
    assert not found.clear


def test_silent_below_six_points_and_where_time_stands_still() -> None:
    assert trend([(float(day), 100.0 + day) for day in range(5)]) is None
    assert trend([(1.0, 100.0 + value) for value in range(8)]) is None


def test_the_order_of_the_points_makes_no_difference() -> None:
    given_points = [(day / 3, 150 + (day * 37) % 23) for day in range(12)]
    shuffled = given_points[7:] + given_points[:7][::-1]
    assert trend(shuffled) == trend(given_points)
