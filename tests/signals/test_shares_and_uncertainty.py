from __future__ import annotations

from math import isnan

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.diagnosis.conformance import decide, probability_of_conformance
from analysis.diagnosis.findings import Result
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
    jeffreys_interval,
    log_bayes_factor,
    log_binomial,
    newcombe_difference,
    wilson_interval,
)
from analysis.signals.uncertainty import (
    combined,
    covariance_matrix,
    coverage_factor,
    coverage_half_width,
    effective_degrees_of_freedom,
    expanded,
    propagated,
    sensitivities,
    standard_uncertainty,
    travel_percent_uncertainty,
)

_INTERVALS = (wilson_interval, clopper_pearson_interval, jeffreys_interval)


@given(st.integers(0, 60), st.integers(0, 60))
def test_an_interval_of_a_share_holds_the_share_and_mirrors(count: int, rest: int) -> None:
    total = count + rest
    for interval in _INTERVALS:
        found, mirrored = interval(count, total), interval(rest, total)
        assert 0.0 <= found.start <= (count / total if total else 0.5) <= found.stop <= 1.0
        assert (1 - mirrored.stop, 1 - mirrored.start) == pytest.approx((found.start, found.stop), abs=1e-9)


def test_more_crossings_narrow_the_interval() -> None:
    for interval in _INTERVALS:
        lengths = [interval(3 * k, 4 * k).length for k in (1, 2, 5, 20)]
        assert lengths == sorted(lengths, reverse=True)


def test_nothing_counted_leaves_the_share_open() -> None:
    for interval in (wilson_interval, clopper_pearson_interval):
        assert interval(0, 0) == Interval(0.0, 1.0)


def test_counts_that_do_not_fit_are_refused() -> None:
    with pytest.raises(ValueError, match="got 4 of 3"):
        wilson_interval(4, 3)
    with pytest.raises(ValueError, match="totals must be positive"):
        newcombe_difference(0, 0, 1, 2)


def test_a_difference_of_shares_changes_sign_with_its_order() -> None:
    there, back = newcombe_difference(9, 9, 1, 12), newcombe_difference(1, 12, 9, 9)
    assert (there.start, there.stop) == pytest.approx((-back.stop, -back.start))
    assert there.start > 0.0


def test_each_noisy_crossing_makes_a_high_share_likelier_and_one_spike_is_no_band() -> None:
    factors = [log_bayes_factor(count, 9, background_share=0.05) for count in range(10)]
    assert factors == sorted(factors)
    assert factors[1] < 0.0
    assert factors[9] > 20.0
    assert log_bayes_factor(0, 0, background_share=0.05) == 0.0


def test_an_impossible_count_has_no_likelihood() -> None:
    assert log_binomial(1, 2, share=0.0) == float("-inf")
    assert log_binomial(0, 2, share=0.0) == 0.0


def test_scores_of_no_case_are_unknown_and_not_perfect() -> None:
    assert isnan(brier_score([], []))
    assert isnan(expected_calibration_error([], []))
    assert isnan(average_precision([0.3], [False]))
    assert [row.count for row in reliability_table([], [], bins=4)] == [0] * 4


def test_a_certain_and_right_forecast_is_perfect_and_a_certain_and_wrong_one_the_worst() -> None:
    assert brier_score([1.0, 0.0], [True, False]) == 0.0
    assert brier_score([0.0, 1.0], [True, False]) == 1.0
    assert expected_calibration_error([1.0, 0.0], [True, False]) == 0.0
    assert expected_calibration_error([0.0, 1.0], [True, False]) == 1.0


def test_bands_that_were_not_found_lower_the_average_precision() -> None:
    scores, truth = [0.9, 0.8, 0.1], [True, True, False]
    assert average_precision(scores, truth) == 1.0
    assert average_precision(scores, truth, positives=4) == 0.5
    with pytest.raises(ValueError, match="got 1 and 2"):
        average_precision(scores, truth, positives=1)


def test_average_precision_depends_on_the_order_alone() -> None:
    rng = np.random.default_rng(12)
    scores, truth = rng.uniform(size=200), rng.uniform(size=200) < 0.3
    assert average_precision(np.exp(5 * scores), truth) == pytest.approx(average_precision(scores, truth))


def test_a_fitted_curve_meets_the_share_of_its_cases() -> None:
    rng = np.random.default_rng(13)
    score = rng.normal(size=500)
    truth = rng.uniform(size=500) < 0.3
    fit = fit_logistic(score, truth)
    assert float(fit.probability(score).mean()) == pytest.approx(float(truth.mean()), abs=1e-5)


def test_a_fit_does_not_mind_the_unit_of_its_feature() -> None:
    rng = np.random.default_rng(14)
    score = rng.normal(size=300)
    truth = rng.uniform(size=300) < 1 / (1 + np.exp(-score))
    volts, millivolts = fit_logistic(score, truth), fit_logistic(1000 * score, truth)
    assert volts.weights[0] == pytest.approx(1000 * millivolts.weights[0], rel=1e-4)


def test_a_fit_to_one_outcome_is_refused() -> None:
    with pytest.raises(ValueError, match="both outcomes, got 2 true and 0 false"):
        fit_logistic([0.1, 0.2], [True, True])
    with pytest.raises(ValueError, match="must have shape"):
        fit_logistic([0.1, 0.2], [True])


def test_unknown_distributions_and_negative_widths_are_refused() -> None:
    with pytest.raises(ValueError, match="got 'gaussian'"):
        standard_uncertainty(1.0, distribution="gaussian")
    with pytest.raises(ValueError, match="must not be negative"):
        standard_uncertainty(-1.0, distribution="normal")


_VOLTS = st.just(0.0) | st.floats(1e-9, 10.0)


@given(st.lists(_VOLTS, min_size=1, max_size=8), _VOLTS)
def test_a_coverage_interval_lies_inside_what_can_occur(half_widths: list[float], normal_u: float) -> None:
    half = coverage_half_width(normal_u=normal_u, rectangular_half_widths=half_widths)
    spread = combined(normal_u, *(width / 3**0.5 for width in half_widths))
    assert half <= 2.0 * spread * (1 + 1e-9)  # 1.96 for a normal sum is the most
    assert half <= sum(half_widths) + 1.96 * normal_u + 1e-9
    assert half >= 1.64 * spread * (1 - 1e-6)  # 0.95 sqrt 3 for a rectangular one is the least


def test_uncorrelated_components_add_in_squares() -> None:
    assert combined(3.0, 4.0) == 5.0
    assert combined() == 0.0
    assert expanded(0.5) == 1.0
    assert propagated([1.0, 1.0], np.diag([9.0, 16.0])) == 5.0
    assert propagated([1.0, -1.0], covariance_matrix([2.0, 2.0], [[1, 1], [1, 1]])) == 0.0


def test_an_input_known_exactly_adds_nothing() -> None:
    assert sensitivities(lambda q: float(q[0] * q[1]), [2.0, 3.0], [0.1, 0.0]) == pytest.approx([3.0, 0.0])


def test_what_does_not_fit_is_refused() -> None:
    with pytest.raises(ValueError, match="correlation must have shape"):
        covariance_matrix([1.0, 2.0], [[1.0]])
    with pytest.raises(ValueError, match="at least 1"):
        coverage_factor(0.5)
    same = {"signal_v": 1.0, "ground_v": 2.0, "reference_v": 2.0, "independent_u_v": (0.0, 0.0, 0.0)}
    with pytest.raises(ValueError, match="must differ"):
        travel_percent_uncertainty(**same)  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="correlation must lie"):
        travel_percent_uncertainty(**{**same, "reference_v": 5.0}, correlation=2.0)  # type: ignore[arg-type]


def test_exactly_known_components_leave_the_degrees_of_freedom_infinite() -> None:
    assert effective_degrees_of_freedom([1.0, 2.0], [float("inf")] * 2) == float("inf")


def test_a_reading_in_the_middle_conforms_and_half_of_the_readings_on_a_limit_do() -> None:
    assert probability_of_conformance(5.0, 0.01, lower=4.8, upper=5.2) == pytest.approx(1.0)
    assert probability_of_conformance(5.2, 0.01, lower=4.8, upper=5.2) == pytest.approx(0.5)
    assert probability_of_conformance(5.2, 0.0, upper=5.2) == 1.0
    assert probability_of_conformance(5.21, 0.0, upper=5.2) == 0.0
    assert probability_of_conformance(99.0, 1.0) == 1.0


@given(st.floats(4.0, 6.0), st.floats(0.0, 0.5))
def test_a_wider_uncertainty_never_turns_doubt_into_an_answer(
    value: float, expanded_uncertainty: float
) -> None:
    narrow = decide(value, expanded_uncertainty, lower=4.8, upper=5.2)
    wide = decide(value, expanded_uncertainty + 0.05, lower=4.8, upper=5.2)
    assert wide in (narrow, Result.CANNOT_TELL)


def test_a_reading_that_is_missing_cannot_be_told() -> None:
    assert decide(float("nan"), 0.1, upper=5.2) is Result.CANNOT_TELL
