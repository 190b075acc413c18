"""Meter scatter against the tables of the published derivation.

Limits of one reading: ISO 15197:2013 (PMC4525642, tables 1 and 3). The tables of differences
are worked out from them under independent normal errors and were computed apart from this code.
"""

import math

import numpy as np
import pytest

from bot.glucose.scatter import difference_limit, limit, means_limit, rise_limit, rises_limit, sd


@pytest.mark.parametrize(
    ("mg_dl", "iso"), [(60, 15), (75, 15), (99.9, 15), (100, 15), (200, 30), (300, 45)]
)
def test_one_reading_has_the_limits_of_iso_15197_2013(mg_dl: float, iso: float) -> None:
    assert limit(mg_dl) == pytest.approx(iso)


def test_a_true_60_may_read_45_to_75() -> None:
    """Published worked case: abstract on meters' performance in the low range."""
    assert (60 - limit(60), 60 + limit(60)) == (45, 75)


@pytest.mark.parametrize(
    ("first", "second", "expected", "whole"),
    [
        (90, 99, 21.21, 22),
        (100, 100, 21.21, 22),
        (110, 110, 23.33, 24),
        (120, 120, 25.46, 26),
        (130, 130, 27.58, 28),
        (110, 170, 30.37, 31),
        (120, 180, 32.45, 33),
        (150, 150, 31.82, 32),
        (180, 180, 38.18, 39),
        (200, 200, 42.43, 43),
        (250, 250, 53.03, 54),
    ],
)
def test_a_difference(first: float, second: float, expected: float, whole: int) -> None:
    assert round(difference_limit(first, second), 2) == expected
    assert rise_limit(first, second) == difference_limit(second, first)
    assert math.floor(difference_limit(first, second)) + 1 == whole


@pytest.mark.parametrize(
    ("before", "after", "expected"),
    [
        (90, 95, 30.00),
        (90, 140, 36.50),
        (100, 150, 38.24),
        (110, 170, 42.95),
        (120, 180, 45.89),
        (150, 220, 56.48),
    ],
)
def test_two_rises(before: float, after: float, expected: float) -> None:
    assert round(rises_limit((before, after), (before, after)), 2) == expected


@pytest.mark.parametrize(
    ("count", "expected"),
    [(1, 45.89), (2, 32.45), (3, 26.50), (4, 22.95), (5, 20.52), (7, 17.35)],
)
def test_two_means_of_rises(count: int, expected: float) -> None:
    pairs = [(120.0, 180.0)] * count
    assert round(means_limit(pairs, pairs), 2) == expected


def test_two_means_need_pairs() -> None:
    with pytest.raises(ValueError, match="at least one pair"):
        means_limit([], [(120, 180)])


def test_simulated_meters_stay_within_the_limit_95_times_in_100() -> None:
    """A second, independent way to the same figure: 200,000 simulated rises."""
    random = np.random.default_rng(5)
    befores = 120 + sd(120) * random.standard_normal(200_000)
    afters = 180 + sd(180) * random.standard_normal(200_000)
    inside = np.abs(afters - befores - 60) <= rise_limit(120, 180)
    assert inside.mean() == pytest.approx(0.95, abs=0.003)
