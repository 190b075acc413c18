"""Two sets of pairs against each other: steps, the same meals, with activity and without.

A difference of mean rises is clear only beyond the wider of two 95 % limits: what the strips
alone could do (`scatter.means_limit`), and what this person's days do anyway (Student's t
on the pooled spread within the two sets).
"""

import math
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise
from statistics import fmean

from bot.entries import Step
from bot.glucose.foods import meal_key
from bot.glucose.pairs import Pair, Status
from bot.glucose.scatter import mean_rise_limit, means_limit, rise_limit
from bot.glucose.week import StepFigures, rise_of
from bot.record import Record

#: Below two pairs on each side a difference is a hint, whatever its size.
FEWEST_EACH = 2

#: More pairs than this are not asked of anybody to settle one question (project rule).
MOST_MORE = 14


class Verdict(StrEnum):
    """What may be said of a difference."""

    CLEAR = "clear"
    NOT_CLEAR_YET = "not_clear_yet"


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """Mean rises of two sets and their difference (`other` minus `one`), in mg/dL.

    `day_limit` is None where the sets are too small to have a spread. `more_pairs` tells how many
    more on the other side would make this difference clear if it stays as it is; None if it is
    clear already, if fourteen would not do, or if the first side has a single pair.
    """

    one: tuple[Pair, ...]
    other: tuple[Pair, ...]
    mean_one: float
    mean_other: float
    difference: float
    meter_limit: float
    day_limit: float | None
    verdict: Verdict
    more_pairs: int | None

    @property
    def limit(self) -> float:
        """The wider of the two limits."""
        return max(self.meter_limit, self.day_limit or 0.0)

    @property
    def beyond_meter_scatter(self) -> bool:
        """More than the meter alone could do; says nothing of the person's own days."""
        return abs(self.difference) > self.meter_limit


@dataclass(frozen=True, slots=True, kw_only=True)
class StepComparison:
    """A step against an earlier one: over all pairs, and over the meals eaten under both."""

    earlier: Step
    later: Step
    all_meals: Comparison
    same_meals: Comparison | None


def compare(one: Sequence[Pair], other: Sequence[Pair]) -> Comparison | None:
    """Compare the rises of complete pairs; None if either side has none."""
    first, second = _counting(one), _counting(other)
    if not first or not second:
        return None
    rises = [[rise_of(pair) for pair in side] for side in (first, second)]
    difference = fmean(rises[1]) - fmean(rises[0])
    meter = means_limit(_values(first), _values(second))
    spread = _pooled_sd(rises)
    days = None if spread is None else _day_limit(spread, len(first), len(second))
    enough = min(len(first), len(second)) >= FEWEST_EACH and days is not None
    clear = enough and abs(difference) > max(meter, days or 0.0)
    return Comparison(
        one=first,
        other=second,
        mean_one=fmean(rises[0]),
        mean_other=fmean(rises[1]),
        difference=difference,
        meter_limit=meter,
        day_limit=days,
        verdict=Verdict.CLEAR if clear else Verdict.NOT_CLEAR_YET,
        more_pairs=None if clear else _more_pairs(first, second, difference, spread),
    )


def compare_steps(figures: Sequence[StepFigures]) -> tuple[StepComparison, ...]:
    """Each step that has pairs against the step with pairs before it."""
    tested = [figure for figure in figures if figure.pairs]
    found: list[StepComparison] = []
    for earlier, later in pairwise(tested):
        over_all = compare(earlier.pairs, later.pairs)
        if over_all is not None:
            same = compare(*same_meals(earlier.pairs, later.pairs))
            found.append(
                StepComparison(
                    earlier=earlier.step, later=later.step, all_meals=over_all, same_meals=same
                )
            )
    return tuple(found)


def same_meals(
    one: Sequence[Pair], other: Sequence[Pair]
) -> tuple[tuple[Pair, ...], tuple[Pair, ...]]:
    """The pairs of meals that stand on both sides, each meal as often on one as on the other.

    Of a meal tested more often on one side the latest are taken, so that no mix of dishes can
    look like an effect.
    """
    sides = [_by_meal(side) for side in (one, other)]
    taken: tuple[list[Pair], list[Pair]] = ([], [])
    for key in sides[0]:
        count = min(len(sides[0][key]), len(sides[1].get(key, [])))
        for side, chosen in zip(sides, taken, strict=True):
            chosen.extend(side[key][-count:] if count else [])
    return tuple(taken[0]), tuple(taken[1])


def by_activity(record: Record, every: Sequence[Pair]) -> tuple[tuple[Pair, ...], tuple[Pair, ...]]:
    """Complete pairs without and with an activity between the first bite and the after reading."""
    ends = sorted(noted.entry.ended_at.timestamp() for noted in record.activities)
    still: list[Pair] = []
    moved: list[Pair] = []
    for pair in _counting(every):
        start = pair.started_at.timestamp()
        next_end = bisect_right(ends, start)
        until = start + 60 * (pair.after_minutes or 0)
        (moved if next_end < len(ends) and ends[next_end] <= until else still).append(pair)
    return tuple(still), tuple(moved)


def student_limit(freedom: int) -> float:
    """The 97.5 % quantile of Student's t, to three decimals.

    Table up to ten degrees of freedom, then the Cornish-Fisher expansion (Abramowitz and
    Stegun, Handbook of Mathematical Functions, 26.7.5).
    """
    if freedom < 1:
        raise ValueError("a spread needs at least one degree of freedom")
    if freedom <= len(_STUDENT):
        return _STUDENT[freedom - 1]
    z = 1.959964
    return (
        z
        + (z**3 + z) / (4 * freedom)
        + (5 * z**5 + 16 * z**3 + 3 * z) / (96 * freedom**2)
        + (3 * z**7 + 19 * z**5 + 17 * z**3 - 15 * z) / (384 * freedom**3)
    )


_STUDENT = (12.7062, 4.3027, 3.1824, 2.7764, 2.5706, 2.4469, 2.3646, 2.3060, 2.2622, 2.2281)


def _counting(side: Sequence[Pair]) -> tuple[Pair, ...]:
    return tuple(pair for pair in side if pair.status is Status.COMPLETE and not pair.unconfirmed)


def _by_meal(side: Sequence[Pair]) -> dict[str, list[Pair]]:
    meals: dict[str, list[Pair]] = defaultdict(list)
    for pair in sorted(_counting(side), key=lambda one: one.started_at.timestamp()):
        if meal_key(pair.meal.entry):
            meals[meal_key(pair.meal.entry)].append(pair)
    return meals


def _values(side: Sequence[Pair]) -> list[tuple[float, float]]:
    return [pair.values for pair in side if pair.values is not None]


def _pooled_sd(sides: Sequence[Sequence[float]]) -> float | None:
    """The spread of single rises within the sides; None without a degree of freedom."""
    freedom = sum(len(side) - 1 for side in sides)
    if not freedom:
        return None
    squares = sum((rise - fmean(side)) ** 2 for side in sides for rise in side)
    return math.sqrt(squares / freedom)


def _day_limit(spread: float, n_one: int, n_other: int) -> float:
    return student_limit(n_one + n_other - 2) * spread * math.sqrt(1 / n_one + 1 / n_other)


def _more_pairs(
    first: Sequence[Pair], second: Sequence[Pair], difference: float, spread: float | None
) -> int | None:
    """The fewest further pairs on the other side after which this difference would be clear."""
    if spread is None or len(first) < FEWEST_EACH:
        return None
    held = mean_rise_limit(_values(first))
    typical = math.sqrt(fmean(rise_limit(*values) ** 2 for values in _values(second)))
    for more in range(1, MOST_MORE + 1):
        count = len(second) + more
        meter = math.hypot(held, typical / math.sqrt(count))
        if count >= FEWEST_EACH and abs(difference) > max(
            meter, _day_limit(spread, len(first), count)
        ):
            return more
    return None
