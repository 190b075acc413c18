"""What a meter alone could do: 95 % limits of a difference between readings.

ISO 15197:2013 asks that 95 % of a meter's results lie within 15 mg/dL below 100 mg/dL and
within 15 % from there. Taking the error as unbiased, normal and independent between strips,
the limit of a sum or difference of readings is the root of the sum of their squared limits.
Day-to-day changes of the body come on top and are not in these limits.
"""

import math
from collections.abc import Sequence

#: ISO 15197:2013: 15 mg/dL below 100 mg/dL, 15 % from 100 (tables 1 and 3 of PMC4525642).
ISO_FLAT_LIMIT = 15.0
ISO_SHARE = 0.15
ISO_BEND = 100.0

#: A 95 % limit in standard deviations of a normal error.
LIMIT_IN_SD = 1.96

#: Before and after value of one pair, in mg/dL.
BeforeAfter = tuple[float, float]


def limit(mg_dl: float) -> float:
    """The 95 % limit of one reading's error, in mg/dL."""
    return ISO_FLAT_LIMIT if mg_dl < ISO_BEND else ISO_SHARE * mg_dl


def sd(mg_dl: float) -> float:
    """The standard deviation of one reading's error, in mg/dL."""
    return limit(mg_dl) / LIMIT_IN_SD


def difference_limit(first: float, second: float) -> float:
    """The 95 % limit of the difference between two readings (case 1)."""
    return math.hypot(limit(first), limit(second))


def rise_limit(before: float, after: float) -> float:
    """The 95 % limit of one rise or of one activity's change (case 2)."""
    return difference_limit(before, after)


def rises_limit(one: BeforeAfter, other: BeforeAfter) -> float:
    """The 95 % limit of the difference between two rises (case 3)."""
    return math.hypot(rise_limit(*one), rise_limit(*other))


def mean_rise_limit(pairs: Sequence[BeforeAfter]) -> float:
    """The 95 % limit of a mean of rises (case 4). Raises ValueError without pairs."""
    if not pairs:
        raise ValueError("a mean needs at least one pair")
    return math.hypot(*(rise_limit(*pair) for pair in pairs)) / len(pairs)


def means_limit(some: Sequence[BeforeAfter], others: Sequence[BeforeAfter]) -> float:
    """The 95 % limit of the difference between two mean rises (case 4)."""
    return math.hypot(mean_rise_limit(some), mean_rise_limit(others))
