"""Simulated participants whose true rises are known, to judge the pooling by.

Run `PYTHONPATH=. .venv/bin/python tests/glucose/simulated.py` for the table in docs/sums.md. The
truth is not drawn from the prior of the pooling: effects are uniform over ranges of their own,
each person has spreads of their own, and readings are rounded as a meter shows them.
"""

# ruff: noqa: T201, S311  (a table on standard output; chance for a simulation, not for secrets)

import math
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from random import Random
from statistics import fmean

from bot.entries import FoodKind
from bot.glucose.pooling import Estimate, Group, Measured, pool
from bot.glucose.scatter import sd

PAIRS = (3, 5, 7, 10, 14)

#: The true effects of kinds of food: from, to, in mg/dL.
TRUE_EFFECTS = {
    FoodKind.STARCH: (10, 60),
    FoodKind.SWEET_DRINK: (10, 70),
    FoodKind.SWEET_FOOD: (0, 60),
    FoodKind.FRUIT: (-5, 45),
    FoodKind.MIXED_DISH: (0, 50),
    FoodKind.DAIRY: (-10, 25),
    FoodKind.PROTEIN: (-15, 15),
    FoodKind.VEGETABLE: (-20, 10),
    FoodKind.FAT: (-12, 12),
}


@dataclass(frozen=True, slots=True)
class Judged:
    """One figure against the truth: an estimate, the plain mean of the tests, the true rise."""

    estimate: Estimate
    raw: float
    truth: float

    @property
    def covered(self) -> bool:
        return self.estimate.low <= self.truth <= self.estimate.high


@dataclass(frozen=True, slots=True)
class Score:
    """Coverage of the 90 % intervals, and root mean squared errors in mg/dL."""

    figures: int
    coverage: float
    error: float
    raw_error: float


def score(judged: list[Judged]) -> Score:
    return Score(
        figures=len(judged),
        coverage=fmean(one.covered for one in judged),
        error=math.sqrt(fmean((one.estimate.rise - one.truth) ** 2 for one in judged)),
        raw_error=math.sqrt(fmean((one.raw - one.truth) ** 2 for one in judged)),
    )


def simulate(pairs: int, participants: int, seed: int) -> tuple[list[Judged], list[Judged]]:
    """Repeated meals, and kinds of food tested twice or more, of that many participants."""
    chance = Random(seed)
    meals: list[Judged] = []
    kinds: list[Judged] = []
    for _ in range(participants):
        truths, groups = _participant(chance, pairs)
        pooled = pool(groups)
        for shares in ({index: 1.0} for index in range(len(groups))):
            meals += _judged(shares, truths, groups, pooled.expected(shares))
        for shares in _by_kind(groups):
            kinds += _judged(shares, truths, groups, pooled.expected(shares))
    return meals, kinds


def _participant(chance: Random, pairs: int) -> tuple[list[float], list[Group]]:
    effects = {kind: chance.uniform(*ends) for kind, ends in TRUE_EFFECTS.items()}
    base = chance.uniform(-10, 35)
    day_to_day, between_meals = chance.uniform(8, 32), chance.uniform(4, 24)
    count = max(1, min(6, round(pairs / chance.uniform(1.5, 3.5))))
    kinds = [frozenset(chance.sample(list(effects), chance.randint(1, 3))) for _ in range(count)]
    truths = [
        base + sum(effects[kind] for kind in sorted(own)) + chance.gauss(0, between_meals)
        for own in kinds
    ]
    tests: list[list[Measured]] = [[] for _ in kinds]
    for number in range(pairs):
        index = number if number < count else chance.randrange(count)
        tests[index].append(_test(chance, truths[index] + chance.gauss(0, day_to_day)))
    groups = [Group(own, tuple(told)) for own, told in zip(kinds, tests, strict=True)]
    return truths, groups


def _test(chance: Random, rise: float) -> Measured:
    before = chance.gauss(120, 20)
    after = max(before + rise, 60)
    first = round(before + chance.gauss(0, sd(before)))
    second = round(after + chance.gauss(0, sd(after)))
    return Measured(rise=second - first, meter_variance=sd(first) ** 2 + sd(second) ** 2)


def _by_kind(groups: list[Group]) -> Iterator[dict[int, float]]:
    for kind in sorted({kind for group in groups for kind in group.kinds}):
        counts = {i: len(group.tests) for i, group in enumerate(groups) if kind in group.kinds}
        total = sum(counts.values())
        yield {index: n / total for index, n in counts.items()}


def _judged(
    shares: dict[int, float], truths: list[float], groups: list[Group], estimate: Estimate
) -> list[Judged]:
    rises = [test.rise for index in shares for test in groups[index].tests]
    if len(rises) < 2:
        return []
    truth = sum(share * truths[index] for index, share in shares.items())
    return [Judged(estimate=estimate, raw=fmean(rises), truth=truth)]


def main() -> None:
    participants = int(sys.argv[1]) if len(sys.argv) > 1 else 400
    print("| pairs | figures | coverage | error | error of plain means |\n|---|---|---|---|---|")
    for pairs in PAIRS:
        for name, judged in zip(
            ("meals", "kinds"), simulate(pairs, participants, seed=pairs), strict=True
        ):
            one = score(judged)
            print(
                f"| {pairs} | {one.figures} {name} | {one.coverage:.1%} "
                f"| {one.error:.1f} | {one.raw_error:.1f} |"
            )


if __name__ == "__main__":
    main()
