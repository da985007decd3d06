"""A trend in a series, held against scipy's Kendall and against readings without one."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.stats import kendalltau, norm

from analysis.signals.trend import Trend, trend


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize("levels", [3, 8, 1000])
def test_tau_and_probability_are_scipys_with_and_without_ties(seed: int, levels: int) -> None:
    rng = np.random.default_rng(seed)
    readings = rng.integers(0, levels, 14) - 0.1 * levels * seed / 14.0 * np.arange(14).round()
    reference = kendalltau(np.arange(14), readings, method="asymptotic")
    made = trend(readings)
    assert made.tau == pytest.approx(reference.statistic, abs=1e-12)
    assert made.p_value == pytest.approx(reference.pvalue, rel=1e-9)


def test_reversing_the_order_turns_the_sign_and_keeps_the_probability() -> None:
    readings = np.random.default_rng(4).normal(size=11)
    one, other = trend(readings), trend(readings[::-1])
    assert one.tau == pytest.approx(-other.tau)
    assert one.p_value == pytest.approx(other.p_value)


def test_no_trend_is_claimed_of_too_little_or_of_what_is_all_alike() -> None:
    assert trend([]) == trend([3.0, 1.0]) == trend([2.0] * 9) == Trend(0.0, 1.0)
    assert trend([np.nan, 1.0, 2.0]) == Trend(0.0, 1.0)


def test_without_a_trend_one_in_twenty_is_called_one_by_chance() -> None:
    rng = np.random.default_rng(8)
    found = np.mean([trend(rng.normal(size=12)).p_value < 0.05 for _ in range(2000)])
    assert found == pytest.approx(0.05, abs=0.015)


def test_groups_are_compared_within_themselves_only_and_their_scores_add_up() -> None:
    rng = np.random.default_rng(5)
    slow, fast = rng.normal(10.0, 1.0, 9), rng.normal(2.0, 1.0, 9)
    together = np.concatenate([slow, fast])
    groups = ["a"] * 9 + ["b"] * 9
    assert trend(together).p_value < 0.01
    assert trend(together, groups).p_value > 0.05
    # Twice the same group: twice the score, twice the variance.
    one, two = trend(slow), trend(np.concatenate([slow, slow]), groups)
    assert two.tau == pytest.approx(one.tau)
    assert norm.isf(two.p_value / 2) == pytest.approx(np.sqrt(2.0) * norm.isf(one.p_value / 2))
