"""Shares, calibration and ranking against published tables, scipy, statsmodels and scikit-learn."""

from __future__ import annotations

from collections.abc import Callable
from math import exp, log

import numpy as np
import pytest
from scipy.stats import betabinom, binom, binomtest, fisher_exact
from sklearn.calibration import _SigmoidCalibration, calibration_curve
from sklearn.linear_model import LogisticRegression
from sklearn.metrics import average_precision_score, brier_score_loss
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

from analysis.intervals import Interval
from analysis.signals.calibration import (
    average_precision,
    brier_score,
    expected_calibration_error,
    fit_logistic,
    reliability_table,
)
from analysis.signals.proportions import (
    clopper_pearson_interval,
    fisher_exact_p,
    jeffreys_interval,
    log_bayes_factor,
    log_beta_binomial,
    log_binomial,
    newcombe_difference,
    wilson_interval,
)

# Newcombe, Statistics in Medicine 17 (1998) 857-872, Table I, methods 3 (score) and 5 (exact).
_NEWCOMBE = [
    (81, 263, 0.2553, 0.3662, 0.2527, 0.3676),
    (15, 148, 0.0624, 0.1605, 0.0578, 0.1617),
    (0, 20, 0.0000, 0.1611, 0.0000, 0.1684),
    (1, 29, 0.0061, 0.1718, 0.0009, 0.1776),
]


@pytest.mark.parametrize(("count", "total", "low", "high", "exact_low", "exact_high"), _NEWCOMBE)
def test_intervals_are_those_of_newcombes_table(
    count: int, total: int, low: float, high: float, exact_low: float, exact_high: float
) -> None:
    score, exact = wilson_interval(count, total), clopper_pearson_interval(count, total)
    assert (score.start, score.stop) == pytest.approx((low, high), abs=5e-5)
    assert (exact.start, exact.stop) == pytest.approx((exact_low, exact_high), abs=5e-5)


@pytest.mark.parametrize(("count", "total"), [(3, 10), (0, 10), (10, 10), (20, 100), (1, 1)])
def test_wilson_and_clopper_pearson_agree_with_scipy(count: int, total: int) -> None:
    theirs = binomtest(count, total)
    for ours, other in (
        (wilson_interval(count, total), theirs.proportion_ci(method="wilson")),
        (clopper_pearson_interval(count, total), theirs.proportion_ci(method="exact")),
    ):
        assert (ours.start, ours.stop) == pytest.approx((other.low, other.high), abs=1e-12)


@pytest.mark.parametrize(("count", "total"), [(100, 200), (3, 10), (1, 29)])
def test_jeffreys_agrees_with_statsmodels(count: int, total: int) -> None:
    ours = jeffreys_interval(count, total, level=0.9)
    assert (ours.start, ours.stop) == pytest.approx(
        proportion_confint(count, total, alpha=0.1, method="jeffreys"), abs=1e-12
    )


def test_intervals_of_100_in_200_are_those_of_r() -> None:
    # statsmodels `stats/tests/test_proportion.py`, values from R DescTools.
    for interval, expected in (
        (wilson_interval, (0.4313609, 0.5686391)),
        (clopper_pearson_interval, (0.4286584, 0.5713416)),
        (jeffreys_interval, (0.4311217, 0.5688783)),
    ):
        found = interval(100, 200)
        assert (found.start, found.stop) == pytest.approx(expected, abs=5e-8)


def test_difference_of_shares_is_newcombes() -> None:
    # 7/34 - 1/34: 0.019 ... 0.34 (Fagerland et al. 2015, in statsmodels' own tests).
    found = newcombe_difference(7, 34, 1, 34)
    assert (found.start, found.stop) == pytest.approx((0.019, 0.34), abs=5e-3)
    theirs = confint_proportions_2indep(7, 34, 1, 34, method="newcomb", compare="diff")  # type: ignore[no-untyped-call]
    assert (found.start, found.stop) == pytest.approx(theirs, abs=1e-12)


@pytest.mark.parametrize(("total", "upper"), [(10, 0.25887), (100, 0.02951)])
def test_no_dropout_in_n_does_not_mean_a_share_of_nothing(total: int, upper: float) -> None:
    # One-sided 95 %: 1 - 0.05**(1/n) (closed form).
    assert clopper_pearson_interval(0, total, level=0.90).stop == pytest.approx(upper, abs=5e-6)


def _coverage(interval: Callable[[int, int], Interval], total: int, share: float) -> float:
    """Exact probability that the interval holds the share: every count, no random numbers."""
    held = [interval(count, total) for count in range(total + 1)]
    inside = np.array([item.start <= share <= item.stop for item in held])
    return float(np.sum(binom.pmf(np.arange(total + 1), total, share)[inside]))


@pytest.mark.parametrize(
    ("total", "share", "score", "exact"),
    [
        (100, 0.106, 0.951, 0.967),
        (100, 0.107, 0.949, 0.967),
        (17, 0.5, 0.951, 0.951),
        (40, 0.5, 0.962, 0.962),
        (592, 0.005, 0.969, 0.989),
    ],
)
def test_coverage_is_that_of_brown_cai_and_dasgupta(
    total: int, share: float, score: float, exact: float
) -> None:
    # Statist. Sci. 16 (2001) 101-133 (from memory, recomputed).
    assert _coverage(wilson_interval, total, share) == pytest.approx(score, abs=1e-3)
    assert _coverage(clopper_pearson_interval, total, share) == pytest.approx(exact, abs=1e-3)


@pytest.mark.parametrize("total", [2, 4, 6, 9, 12])
def test_the_exact_interval_never_covers_too_little_at_the_crossings_of_a_sweep(total: int) -> None:
    for share in np.linspace(0.02, 0.98, 49):
        assert _coverage(clopper_pearson_interval, total, float(share)) >= 0.95
        assert _coverage(wilson_interval, total, float(share)) >= 0.82  # its known dip next to 0 and 1


def test_fishers_test_agrees_with_scipy() -> None:
    assert fisher_exact_p(9, 9, 1, 9) == pytest.approx(fisher_exact(np.array([[9, 0], [1, 8]])).pvalue)
    assert fisher_exact_p(3, 4, 1, 4) == pytest.approx(0.4857, abs=5e-5)  # Fisher's tea: 34 / 70 two-sided


def test_marginal_likelihoods_agree_with_scipy() -> None:
    assert log_beta_binomial(4, 9, alpha=2.5, beta=0.7) == pytest.approx(betabinom.logpmf(4, 9, 2.5, 0.7))
    assert log_binomial(4, 9, share=0.07) == pytest.approx(binom.logpmf(4, 9, 0.07))
    assert log_bayes_factor(4, 9, background_share=0.07, high_alpha=2.5, high_beta=0.7) == pytest.approx(
        betabinom.logpmf(4, 9, 2.5, 0.7) - binom.logpmf(4, 9, 0.07)
    )


def test_a_uniform_share_makes_every_count_equally_likely() -> None:
    # Bayes 1763: the beta-binomial of Beta(1, 1) is 1 / (n + 1) whatever the count.
    assert [log_beta_binomial(count, 9, alpha=1, beta=1) for count in range(10)] == pytest.approx(
        [-log(10)] * 10
    )


def _forecast(count: int = 500) -> tuple[np.ndarray, np.ndarray]:
    rng = np.random.default_rng(1950)
    stated = np.round(rng.uniform(size=count), 2)
    return stated, rng.uniform(size=count) < stated**1.5


def test_brier_score_and_average_precision_agree_with_scikit_learn_ties_included() -> None:
    stated, truth = _forecast()
    assert brier_score(stated, truth) == pytest.approx(brier_score_loss(truth, stated), rel=1e-12)
    assert average_precision(stated, truth) == pytest.approx(
        average_precision_score(truth, stated), rel=1e-12
    )


def test_reliability_table_agrees_with_scikit_learn() -> None:
    stated, truth = _forecast()
    stated = stated + 0.0051  # off the edges, which belong to different bins there
    rows = [row for row in reliability_table(np.minimum(stated, 1.0), truth, bins=10) if row.count]
    shares, means = calibration_curve(truth, np.minimum(stated, 1.0), n_bins=10)
    assert [row.share_true for row in rows] == pytest.approx(list(shares))
    assert [row.mean_stated for row in rows] == pytest.approx(list(means))


def test_calibration_error_of_a_worked_case() -> None:
    # By hand: two of four at 0.9 are true (gap 0.4), one of one at 0.1 (gap 0.9): (4 * 0.4 + 0.9) / 5.
    stated, truth = [0.9, 0.9, 0.9, 0.9, 0.1], [True, True, False, False, True]
    assert expected_calibration_error(stated, truth) == pytest.approx(0.5)


def test_logistic_fit_agrees_with_scikit_learn() -> None:
    rng = np.random.default_rng(1999)
    features = rng.normal(size=(400, 3)) * [1.0, 20.0, 0.01] + [0.0, 100.0, 1.0]
    truth = rng.uniform(size=400) < 1 / (1 + np.exp(-(features[:, 0] + 0.05 * (features[:, 1] - 100))))
    ours = fit_logistic(features, truth, ridge=0.5)
    model = LogisticRegression(C=2.0, tol=1e-10, solver="newton-cholesky")  # type: ignore[no-untyped-call]
    theirs = model.fit(features, truth)
    assert ours.weights == pytest.approx(tuple(theirs.coef_[0]), rel=1e-4)
    np.testing.assert_allclose(ours.probability(features), theirs.predict_proba(features)[:, 1], atol=1e-5)


def test_platts_targets_agree_with_scikit_learn() -> None:
    # Its internal sigmoid fit is 1 / (1 + exp(a x + b)) with Platt's targets.
    rng = np.random.default_rng(5)
    score = rng.normal(size=200)
    truth = rng.uniform(size=200) < 1 / (1 + np.exp(-2 * score + 0.5))
    ours = fit_logistic(score, truth, smoothed_targets=True)
    theirs = _SigmoidCalibration().fit(score, truth)  # type: ignore[no-untyped-call]
    assert ours.weights[0] == pytest.approx(-theirs.a_, rel=1e-3)
    assert ours.intercept == pytest.approx(-theirs.b_, rel=1e-3, abs=1e-3)


def test_platts_targets_for_separable_scores_are_the_published_fractions() -> None:
    # Platt 1999: with one score a class the fit meets (N+ + 1) / (N+ + 2) and 1 / (N- + 2).
    fit = fit_logistic([0.0] * 4 + [1.0] * 8, [False] * 4 + [True] * 8, smoothed_targets=True)
    assert fit.probability([1.0])[0] == pytest.approx(9 / 10, abs=1e-6)
    assert fit.probability([0.0])[0] == pytest.approx(1 / 6, abs=1e-6)
    assert 1 / (1 + exp(-fit.intercept)) == pytest.approx(1 / 6, abs=1e-6)
