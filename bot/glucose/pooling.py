"""Expected rises from few and noisy tests: partial pooling, by Bayes' rule and without sampling.

The rise in one test of meal j is

    rise = base + sum of the effects of its kinds of food    what kinds have in common
         + what is special about this meal                   normal, spread `between_meals`
         + how this day differed                             normal, spread `day_to_day`
         + the error of two strips                           normal, known: scatter.sd

so a meal with few tests leans on what its kinds of food did elsewhere, and one with many stands
on its own. Base and effects have a normal prior. The two spreads are not known either: every
pair of a grid is weighed by how well it explains the rises, and the answers are averaged.

All sizes are in mg/dL. With the spreads given this is the mixed model that statsmodels fits;
the tests compare the two.
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import NormalDist

from bot.entries import FoodKind
from bot.glucose.linear import Matrix, Vector, cholesky, dot, inverse, log_determinant, solve

#: The intervals hold the truth nine times in ten.
COVERAGE = 0.90

#: A spread that explains the rises this much worse than all together is left out.
NEGLIGIBLE = 1e-5


@dataclass(frozen=True, slots=True)
class Normal:
    """A normal prior: mean and standard deviation in mg/dL."""

    mean: float
    sd: float


#: The rise of a meal apart from what its kinds of food add.
BASE = Normal(12, 15)

#: What a kind of food adds to the rise two hours after the first bite. The directions are what
#: diabetes education teaches (starch and sweet drinks raise most, vegetables, protein and fat
#: hardly; plate method, ADA and state extension services); the sizes are ours, no source, and
#: wide on purpose.
EFFECTS: Mapping[FoodKind, Normal] = {
    FoodKind.STARCH: Normal(32, 20),
    FoodKind.SWEET_DRINK: Normal(38, 22),
    FoodKind.SWEET_FOOD: Normal(28, 22),
    FoodKind.FRUIT: Normal(18, 18),
    FoodKind.MIXED_DISH: Normal(24, 20),
    FoodKind.DAIRY: Normal(6, 15),
    FoodKind.PROTEIN: Normal(0, 12),
    FoodKind.VEGETABLE: Normal(-2, 12),
    FoodKind.FAT: Normal(0, 12),
    FoodKind.UNKNOWN: Normal(20, 25),
}


@dataclass(frozen=True, slots=True)
class Spreads:
    """Standard deviations: the same meal on other days, and a meal against its kinds of food."""

    day_to_day: float
    between_meals: float


#: Spreads that are tried, with how likely each is before any test: log-normal around 18 and 12,
#: no source (nobody has published them for two-hour fingersticks at home).
_DAYS = (5.0, 8.0, 12.0, 16.0, 21.0, 28.0, 38.0, 52.0)
_MEALS = (3.0, 6.0, 10.0, 14.0, 20.0, 28.0, 40.0)
_LIKELY = Spreads(day_to_day=18, between_meals=12)
_LOG_SD = 0.55


@dataclass(frozen=True, slots=True)
class Measured:
    """One test's rise and the variance of the error of its two strips."""

    rise: float
    meter_variance: float


@dataclass(frozen=True, slots=True)
class Group:
    """A meal: its kinds of food and its tests (none for a meal never tested)."""

    kinds: frozenset[FoodKind]
    tests: tuple[Measured, ...]


@dataclass(frozen=True, slots=True)
class Estimate:
    """An expected rise, its standard deviation and its 90 % interval."""

    rise: float
    sd: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class _Conditional:
    """What the rises say of base, effects and meals if these were the spreads."""

    spreads: Spreads
    log_likelihood: float
    effects: Vector
    covariance: Matrix
    shares: Vector  # how far each meal stands on its own tests, 0 to 1
    means: Vector  # of each meal's own tests

    def of_mean(self, rows: Sequence[Vector], weights: Mapping[int, float]) -> NormalDist:
        """The distribution of a weighted mean of the meals' expected rises."""
        mean, variance = 0.0, 0.0
        common = [0.0] * len(self.effects)
        between = self.spreads.between_meals**2
        for index, weight in weights.items():
            share = self.shares[index]
            by_kinds = dot(rows[index], self.effects)
            mean += weight * ((1 - share) * by_kinds + share * self.means[index])
            variance += weight**2 * between * (1 - share)
            common = [
                known + weight * (1 - share) * one
                for known, one in zip(common, rows[index], strict=True)
            ]
        variance += dot(common, [dot(row, common) for row in self.covariance])
        return NormalDist(mean, math.sqrt(variance))


@dataclass(frozen=True, slots=True)
class Pooled:
    """What is known of the expected rises of all groups."""

    rows: tuple[Vector, ...]
    conditionals: tuple[_Conditional, ...]
    weights: tuple[float, ...]

    def expected(self, meals: Mapping[int, float]) -> Estimate:
        """The expected rise of one group, or the mean of several by weights that add up to 1."""
        parts = [one.of_mean(self.rows, meals) for one in self.conditionals]
        mean = sum(w * part.mean for w, part in zip(self.weights, parts, strict=True))
        variance = sum(
            w * (part.variance + (part.mean - mean) ** 2)
            for w, part in zip(self.weights, parts, strict=True)
        )
        tail = (1 - COVERAGE) / 2
        return Estimate(
            rise=mean,
            sd=math.sqrt(variance),
            low=self._quantile(parts, tail),
            high=self._quantile(parts, 1 - tail),
        )

    @property
    def day_to_day(self) -> float:
        """The likely spread of one meal from day to day."""
        return sum(
            weight * one.spreads.day_to_day
            for weight, one in zip(self.weights, self.conditionals, strict=True)
        )

    def _quantile(self, parts: Sequence[NormalDist], share: float) -> float:
        """Where the mixture of normals has this share below: by halving."""
        low = min(part.inv_cdf(share) for part in parts)
        high = max(part.inv_cdf(share) for part in parts)
        while high - low > 1e-3:
            middle = (low + high) / 2
            below = sum(w * p.cdf(middle) for w, p in zip(self.weights, parts, strict=True))
            low, high = (middle, high) if below < share else (low, middle)
        return (low + high) / 2


def pool(
    groups: Sequence[Group],
    *,
    base: Normal = BASE,
    effects: Mapping[FoodKind, Normal] = EFFECTS,
    spreads: Spreads | None = None,
) -> Pooled:
    """Weigh prior and tests against each other; `spreads` fixes what is otherwise averaged over."""
    kinds = sorted({kind for group in groups for kind in group.kinds if kind in effects})
    prior = [base, *(effects[kind] for kind in kinds)]
    rows = tuple([1.0, *(float(kind in group.kinds) for kind in kinds)] for group in groups)
    tried = [spreads] if spreads else [Spreads(d, m) for d in _DAYS for m in _MEALS]
    found = [_given(one, groups, rows, prior) for one in tried]
    scores = [one.log_likelihood + _log_prior(one.spreads) for one in found]
    best = max(scores)
    kept = [
        (one, math.exp(score - best))
        for one, score in zip(found, scores, strict=True)
        if math.exp(score - best) > NEGLIGIBLE
    ]
    total = sum(weight for _, weight in kept)
    return Pooled(
        rows=rows,
        conditionals=tuple(one for one, _ in kept),
        weights=tuple(weight / total for _, weight in kept),
    )


def _log_prior(spreads: Spreads) -> float:
    """Log-normal in both; the grids are even enough in the logarithm to need no widths."""
    return sum(
        -((math.log(own / likely) / _LOG_SD) ** 2) / 2
        for own, likely in (
            (spreads.day_to_day, _LIKELY.day_to_day),
            (spreads.between_meals, _LIKELY.between_meals),
        )
    )


def _given(
    spreads: Spreads, groups: Sequence[Group], rows: Sequence[Vector], prior: Sequence[Normal]
) -> _Conditional:
    """The exact posterior for these spreads, and how likely the rises are under them."""
    between = spreads.between_meals**2
    precision = [
        [1 / one.sd**2 if i == j else 0.0 for j in range(len(prior))] for i, one in enumerate(prior)
    ]
    right = [one.mean / one.sd**2 for one in prior]
    log_likelihood = sum(math.log(1 / one.sd**2) - (one.mean / one.sd) ** 2 for one in prior)
    shares, means = [], []
    for group, row in zip(groups, rows, strict=True):
        if not group.tests:
            shares.append(0.0)
            means.append(0.0)
            continue
        weights = [1 / (test.meter_variance + spreads.day_to_day**2) for test in group.tests]
        own = sum(weights)
        mean = sum(w * test.rise for w, test in zip(weights, group.tests, strict=True)) / own
        variance = 1 / own + between
        for i, x in enumerate(row):
            right[i] += x * mean / variance
            for j, y in enumerate(row):
                precision[i][j] += x * y / variance
        log_likelihood += (
            sum(math.log(w) for w in weights)
            - math.log(own)
            - math.log(variance)
            - mean**2 / variance
            - sum(w * (t.rise - mean) ** 2 for w, t in zip(weights, group.tests, strict=True))
        )
        shares.append(between * own / (1 + between * own))
        means.append(mean)
    lower = cholesky(precision)
    found = solve(lower, right)
    log_likelihood += dot(found, right) - log_determinant(lower)
    return _Conditional(
        spreads=spreads,
        log_likelihood=log_likelihood / 2,
        effects=found,
        covariance=inverse(lower),
        shares=shares,
        means=means,
    )
