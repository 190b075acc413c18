"""Pooling against statsmodels, against published shrinkage figures, and against known truth."""

import math

import numpy as np
import pandas as pd
import pytest
import statsmodels.api as sm
from hypothesis import given
from hypothesis import strategies as st

from bot.entries import FoodKind
from bot.glucose.linear import cholesky, inverse, log_determinant, solve
from bot.glucose.pooling import BASE, EFFECTS, Group, Measured, Normal, Spreads, pool
from tests.glucose.simulated import PAIRS, score, simulate

FLAT = Normal(0, 1e4)


def exact(rises: tuple[float, ...], kinds: tuple[FoodKind, ...] = ()) -> Group:
    """A group whose tests have no meter error."""
    return Group(frozenset(kinds), tuple(Measured(rise, 0.0) for rise in rises))


def test_given_spreads_it_is_the_weighted_ridge_of_statsmodels() -> None:
    """The posterior is a weighted least squares fit with a pseudo-observation for every prior."""
    starch, fruit, protein = FoodKind.STARCH, FoodKind.FRUIT, FoodKind.PROTEIN
    groups = [
        Group(frozenset({starch}), (Measured(52, 90), Measured(61, 120))),
        Group(frozenset({starch, protein}), (Measured(30, 100),)),
        Group(frozenset({fruit}), (Measured(22, 80), Measured(8, 95), Measured(35, 110))),
        Group(frozenset({fruit, protein}), ()),
    ]
    spreads = Spreads(day_to_day=15, between_meals=9)
    kinds = sorted({starch, fruit, protein})
    priors = [BASE, *(EFFECTS[kind] for kind in kinds)]
    rows, values, weights = [], [], []
    for index, group in enumerate(groups):
        own = [1.0, *(float(kind in group.kinds) for kind in kinds)]
        special = [float(index == other) for other in range(len(groups))]
        for test in group.tests:
            rows.append(own + special)
            values.append(test.rise)
            weights.append(1 / (test.meter_variance + 15**2))
        rows.append([0.0] * len(own) + special)
        values.append(0.0)
        weights.append(1 / 9**2)
    for index, prior in enumerate(priors):
        rows.append([float(index == other) for other in range(len(priors) + len(groups))])
        values.append(prior.mean)
        weights.append(1 / prior.sd**2)
    fitted = sm.WLS(np.array(values), np.array(rows), weights=np.array(weights)).fit()
    pooled = pool(groups, spreads=spreads)
    for index, group in enumerate(groups):
        pick = np.array(
            [1.0, *(float(kind in group.kinds) for kind in kinds)]
            + [float(index == other) for other in range(len(groups))]
        )
        estimate = pooled.expected({index: 1.0})
        assert estimate.rise == pytest.approx(float(pick @ fitted.params))
        variance = float(pick @ fitted.normalized_cov_params @ pick)
        assert estimate.sd == pytest.approx(math.sqrt(variance))


def test_it_gives_the_predictions_of_statsmodels_mixedlm() -> None:
    """Same variances, flat prior, no meter error: the random effects of `MixedLM` (REML)."""
    chance = np.random.default_rng(11)
    meals = np.repeat(np.arange(9), [2, 3, 4, 5, 6, 7, 8, 3, 2])
    rises = 45 + chance.normal(0, 14, 9)[meals] + chance.normal(0, 17, meals.size)
    frame = pd.DataFrame({"meal": meals, "rise": rises})
    model = sm.MixedLM.from_formula("rise ~ 1", groups="meal", data=frame).fit()
    spreads = Spreads(
        day_to_day=math.sqrt(model.scale), between_meals=math.sqrt(float(model.cov_re.iloc[0, 0]))
    )
    groups = [exact(tuple(rises[meals == meal])) for meal in range(9)]
    pooled = pool(groups, base=FLAT, effects={}, spreads=spreads)
    for meal in range(9):
        expected = model.fe_params["Intercept"] + float(model.random_effects[meal].iloc[0])
        assert pooled.expected({meal: 1.0}).rise == pytest.approx(expected, rel=1e-4)


@pytest.mark.parametrize(("count", "mean", "shrunk"), [(3, 59.33, 55.86), (4, 43.0, 45.15)])
def test_it_shrinks_like_the_worked_example(count: int, mean: float, shrunk: float) -> None:
    """Known variances: m 50, sigma 20, tau 15; B = n / (n + sigma^2 / tau^2)."""
    pooled = pool(
        [exact((mean,) * count)], base=Normal(50, 1e-4), effects={}, spreads=Spreads(20, 15)
    )
    assert round(pooled.expected({0: 1.0}).rise, 2) == shrunk


def test_averaging_over_spreads_is_bayes_rule() -> None:
    """Two tests of one meal: a numerical integral over a fine grid, worked out apart."""
    rises = (20.0, 60.0)
    pooled = pool([exact(rises)], effects={})
    truths = np.linspace(-120, 220, 2001)
    density = np.zeros_like(truths)
    for day in (5.0, 8.0, 12.0, 16.0, 21.0, 28.0, 38.0, 52.0):
        for meal in (3.0, 6.0, 10.0, 14.0, 20.0, 28.0, 40.0):
            likely = math.exp(
                -((math.log(day / 18) / 0.55) ** 2 + (math.log(meal / 12) / 0.55) ** 2) / 2
            )
            spread = math.hypot(BASE.sd, meal)
            prior = np.exp(-(((truths - BASE.mean) / spread) ** 2) / 2) / spread
            seen = np.prod([np.exp(-(((r - truths) / day) ** 2) / 2) / day for r in rises], axis=0)
            density += likely * prior * seen
    density /= density.sum()
    estimate = pooled.expected({0: 1.0})
    below = np.cumsum(density)
    assert estimate.rise == pytest.approx(float(truths @ density), abs=0.05)
    assert estimate.low == pytest.approx(float(np.interp(0.05, below, truths)), abs=0.3)
    assert estimate.high == pytest.approx(float(np.interp(0.95, below, truths)), abs=0.3)


def test_before_any_test_starch_and_sweet_drinks_are_expected_to_raise_most() -> None:
    means = {kind: normal.mean for kind, normal in EFFECTS.items()}
    top = sorted(means, key=lambda kind: means[kind])[-2:]
    assert set(top) == {FoodKind.STARCH, FoodKind.SWEET_DRINK}


def test_more_tests_narrow_the_interval() -> None:
    widths = []
    for count in (1, 3, 9, 27):
        estimate = pool([exact((40.0, 44.0, 36.0) * count)]).expected({0: 1.0})
        widths.append(estimate.high - estimate.low)
    assert widths == sorted(widths, reverse=True)


@pytest.mark.slow
def test_intervals_hold_the_truth_and_errors_are_smaller_than_plain_means() -> None:
    """Simulated participants with known truth, 3 to 14 pairs each."""
    every = []
    for pairs in PAIRS:
        meals, kinds = simulate(pairs, participants=60, seed=100 + pairs)
        assert score(meals).error < score(meals).raw_error
        assert score(kinds).error < score(kinds).raw_error
        every += [meals, kinds]
    for name in (0, 1):
        found = score([one for judged in every[name::2] for one in judged])
        assert 0.85 <= found.coverage <= 0.95


@given(
    st.lists(st.lists(st.floats(-3, 3), min_size=4, max_size=4), min_size=4, max_size=4),
    st.lists(st.floats(-5, 5), min_size=4, max_size=4),
)
def test_linear_algebra_equals_numpy(rows: list[list[float]], right: list[float]) -> None:
    matrix = np.array(rows) @ np.array(rows).T + np.eye(4)
    lower = cholesky(matrix.tolist())
    assert np.allclose(lower[3], np.linalg.cholesky(matrix)[3])
    assert np.allclose(inverse(lower), np.linalg.inv(matrix))
    assert np.allclose(solve(lower, right), np.linalg.solve(matrix, np.array(right)))
    assert log_determinant(lower) == pytest.approx(np.linalg.slogdet(matrix)[1])


def test_no_triangle_for_what_is_not_positive_definite() -> None:
    with pytest.raises(ValueError, match="positive definite"):
        cholesky([[1.0, 2.0], [2.0, 1.0]])
