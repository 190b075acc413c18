"""The slope of values over time that one wild value cannot bend.

Theil-Sen estimator: the median of the slopes of all pairs of points, with the interval of Sen
(1968): Estimates of the regression coefficient based on Kendall's tau, J Am Stat Assoc 63,
1379-1389. Ties in either axis narrow the interval as in `scipy.stats.theilslopes`, which
gives the same figures.
"""

import math
from collections import Counter
from collections.abc import Hashable, Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations
from statistics import NormalDist, median

#: Below six pairs no rank test can call anything a trend (smallest two-sided p is 0.06).
FEWEST_POINTS = 6

CONFIDENCE = 0.95

#: A point: time in days (from any origin) and glucose in mg/dL.
Point = tuple[float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Trend:
    """A slope in mg/dL a day with its 95 % interval; `clear` if the interval excludes zero."""

    mg_dl_per_day: float
    low: float
    high: float
    clear: bool


def trend(points: Sequence[Point]) -> Trend | None:
    """The slope through (days, mg/dL) points; None below six or where no slope exists."""
    if len(points) < FEWEST_POINTS:
        return None
    slopes = _slopes(points)
    low, high = _interval(points, slopes)
    if low is None or high is None:
        return None
    return Trend(mg_dl_per_day=median(slopes), low=low, high=high, clear=low > 0 or high < 0)


def _slopes(points: Sequence[Point]) -> list[float]:
    """Slopes between all pairs of points at different times, in order of size."""
    return sorted(
        (y2 - y1) / (x2 - x1) for (x1, y1), (x2, y2) in combinations(sorted(points), 2) if x2 > x1
    )


def _interval(
    points: Sequence[Point], slopes: Sequence[float]
) -> tuple[float | None, float | None]:
    variance = (
        _spread(len(points)) - _ties(x for x, _ in points) - _ties(y for _, y in points)
    ) / 18
    if not slopes or variance < 0:
        return None, None
    reach = NormalDist().inv_cdf((1 + CONFIDENCE) / 2) * math.sqrt(variance)
    last = len(slopes) - 1
    upper = min(round((len(slopes) + reach) / 2), last)
    lower = max(round((len(slopes) - reach) / 2) - 1, 0)
    return slopes[lower], slopes[upper]


def _spread(count: int) -> int:
    return count * (count - 1) * (2 * count + 5)


def _ties(values: Iterable[Hashable]) -> int:
    return sum(_spread(count) for count in Counter(values).values())
