"""Uncertainty and decisions against the worked examples of the guides.

Where a check says "from memory", the inputs were remembered and not seen in a source; the arithmetic
reproduces the published result.
"""

from __future__ import annotations

from collections.abc import Callable
from math import sqrt

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.integrate import quad
from scipy.stats import norm

from analysis.diagnosis.conformance import decide, probability_of_conformance
from analysis.diagnosis.findings import Result
from analysis.signals.uncertainty import (
    covariance_matrix,
    coverage_factor,
    coverage_half_width,
    effective_degrees_of_freedom,
    propagated,
    resolution_uncertainty,
    sensitivities,
    standard_uncertainty,
    travel_percent_uncertainty,
)

# JCGM 100:2008, H.2: means, standard uncertainties, correlations of V, I, phase, as in a public test file.
_VALUES = np.array([4.9990, 19.6610e-3, 1.04446])
_SPREADS = np.array([0.0032, 0.0095e-3, 0.00075])
_CORRELATION = np.array([[1.0, -0.36, 0.86], [-0.36, 1.0, -0.65], [0.86, -0.65, 1.0]])
_Quantity = Callable[[NDArray[np.float64]], float]
_IMPEDANCES: dict[str, tuple[_Quantity, float, float, float]] = {
    "R": (lambda q: q[0] / q[1] * np.cos(q[2]), 127.732, 0.071, 0.195),
    "X": (lambda q: q[0] / q[1] * np.sin(q[2]), 219.847, 0.295, 0.201),
    "Z": (lambda q: q[0] / q[1], 254.260, 0.236, 0.204),
}


@pytest.mark.parametrize("name", _IMPEDANCES)
def test_gum_h2_needs_the_covariance(name: str) -> None:
    function, value, spread, without_covariance = _IMPEDANCES[name]
    slope = sensitivities(function, _VALUES, _SPREADS)
    assert function(_VALUES) == pytest.approx(value, abs=0.03)
    # 3 %: the inputs are printed to two digits, and 1 - r**2 of the ratio rides on them.
    assert propagated(slope, covariance_matrix(_SPREADS, _CORRELATION)) == pytest.approx(spread, rel=0.03)
    assert propagated(slope, np.diag(_SPREADS**2)) == pytest.approx(without_covariance, rel=0.03)


@pytest.mark.parametrize("name", _IMPEDANCES)
def test_gum_h2_from_its_five_observations(name: str) -> None:
    # Table H.2: V as in a public test file, I and phase from memory; they give the printed means and u.
    observations = np.array(
        [
            [5.007, 4.994, 5.005, 4.990, 4.999],
            [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3],
            [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
        ]
    )
    function, value, spread, _ = _IMPEDANCES[name]
    means = observations.mean(axis=1)
    covariance = np.cov(observations) / 5
    slope = sensitivities(function, means, np.sqrt(np.diag(covariance)))
    assert function(means) == pytest.approx(value, abs=6e-4)
    assert propagated(slope, covariance) == pytest.approx(spread, abs=6e-4)


def test_travel_is_a_ratio_like_that_of_h2_and_a_shared_gain_error_cancels_in_it() -> None:
    readings = {"signal_v": 2.5, "ground_v": 0.01, "reference_v": 5.0, "independent_u_v": (1e-3, 1e-3, 1e-3)}
    own = travel_percent_uncertainty(**readings)  # type: ignore[arg-type]
    shared = travel_percent_uncertainty(**readings, gain_error=0.02, offset_error_v=0.05)  # type: ignore[arg-type]
    apart = travel_percent_uncertainty(
        **readings,  # type: ignore[arg-type]
        gain_error=0.02,
        offset_error_v=0.05,
        correlation=0.0,
    )
    assert shared == pytest.approx(own, rel=1e-9)
    assert apart > 10 * shared


def test_travel_uncertainty_is_that_of_simulated_recorders() -> None:
    # The Monte Carlo method of JCGM 101, seeded, is the reference here.
    rng = np.random.default_rng(101)
    count = 200_000
    true_v = np.array([3.2, 0.05, 4.9])
    common = 0.6
    shared = rng.normal(size=(2, count, 1))
    own = rng.normal(size=(2, count, 3))
    mixed = sqrt(common) * shared + sqrt(1 - common) * own
    gain, offset_v = 0.01 / sqrt(3) * mixed[0], 0.02 / sqrt(3) * mixed[1]
    read_v = true_v * (1 + gain) + offset_v + 0.003 * rng.normal(size=(count, 3))
    travel = 100 * (read_v[:, 0] - read_v[:, 1]) / (read_v[:, 2] - read_v[:, 1])
    stated = travel_percent_uncertainty(
        signal_v=3.2,
        ground_v=0.05,
        reference_v=4.9,
        independent_u_v=(0.003, 0.003, 0.003),
        gain_error=0.01,
        offset_error_v=0.02,
        correlation=common,
    )
    assert stated == pytest.approx(float(travel.std()), rel=0.01)


def test_gum_h5_day_means_give_f_and_the_uncertainty_between_days() -> None:
    # JCGM 100 Table H.9 (microvolt digits above 10 V), five repeats a day; F printed from unrounded data.
    days = np.array([172, 116, 13, 144, 106, 31, 60, 125, 163, 41], dtype=np.float64)
    within = sqrt(float(np.mean(np.square([60, 77, 111, 101, 67, 93, 80, 73, 88, 86]))))
    between = float(np.std(days, ddof=1))
    assert between == pytest.approx(57, abs=0.5)
    assert within == pytest.approx(85, abs=0.5)
    assert 5 * between**2 / within**2 == pytest.approx(2.25, abs=0.02)
    assert standard_uncertainty(2 * between, distribution="normal") / sqrt(10) == pytest.approx(18, abs=0.5)


def test_gum_h1_truncates_the_degrees_of_freedom_before_the_t_table() -> None:
    # JCGM 100 H.1.6 and G.4.1: nu_eff 16.7 -> 16, t95 2.12, t99 2.92. Components 25, 9.7, 2.9, 16.6 nm with
    # 18, 25.6, 50 and 2 degrees of freedom: from memory; they give u_c = 32 nm.
    components = (25.0, 9.7, 2.9, 16.6)
    freedom = effective_degrees_of_freedom(components, (18.0, 25.6, 50.0, 2.0))
    assert sqrt(sum(part**2 for part in components)) == pytest.approx(32, abs=0.5)
    assert 16.0 < freedom < 17.0
    assert coverage_factor(freedom) == pytest.approx(2.12, abs=0.005)
    assert coverage_factor(freedom, level=0.99) == pytest.approx(2.92, abs=0.005)
    assert coverage_factor(16.7) == coverage_factor(16.0) != coverage_factor(17.0)
    assert coverage_factor(float("inf")) == pytest.approx(1.959964, abs=1e-6)


def test_four_rectangular_parts_make_the_interval_of_jcgm_101() -> None:
    # JCGM 101 9.2: +-3.88; exactly sqrt 3 (4 - 2 * 0.6**(1/4)). Four normal parts: +-3.92.
    exact = sqrt(3.0) * (4.0 - 2.0 * 0.6**0.25)
    assert coverage_half_width(rectangular_half_widths=[sqrt(3.0)] * 4) == pytest.approx(exact, rel=1e-9)
    assert exact == pytest.approx(3.879407, abs=1e-6)
    assert coverage_half_width(normal_u=2.0) == pytest.approx(3.92, abs=0.005)


def test_one_rectangular_part_covers_0_95_of_itself() -> None:
    # Closed form; EA-4/02 S9 (from memory) calls it k = 1.65 where one rectangular part dominates.
    assert coverage_half_width(rectangular_half_widths=[0.05]) == pytest.approx(0.95 * 0.05)
    assert 0.95 * sqrt(3.0) == pytest.approx(1.65, abs=0.005)


def test_mixed_parts_cover_what_a_simulation_covers() -> None:
    rng = np.random.default_rng(7)
    widths = [1.0, 2.0, 0.5]
    total = rng.normal(size=1_000_000) + sum(rng.uniform(-width, width, 1_000_000) for width in widths)
    exact = coverage_half_width(normal_u=1.0, rectangular_half_widths=widths)
    assert exact == pytest.approx(float(np.quantile(np.abs(total), 0.95)), rel=0.003)


@pytest.mark.parametrize(
    ("distribution", "divisor"),
    [("rectangular", sqrt(3)), ("triangular", sqrt(6)), ("u-shaped", sqrt(2)), ("normal", 2.0)],
)
def test_half_widths_turn_into_standard_uncertainties(distribution: str, divisor: float) -> None:
    # JCGM 100, 4.3.3, 4.3.7, 4.3.9, H.1.3.4.
    assert standard_uncertainty(0.3, distribution=distribution) == pytest.approx(0.3 / divisor)


def test_resolution_is_0_29_of_a_step() -> None:
    # JCGM 100, F.2.2.1 writes 0.29.
    assert resolution_uncertainty(1.0) == pytest.approx(0.288675, abs=1e-6)


@pytest.mark.parametrize(
    ("value", "spread", "limits", "probability"),
    [
        (-5.47, 0.05, {"upper": -5.40}, 0.92),  # breakdown voltage of a diode
        (509.7, 8.6, {"lower": 490.0}, 0.99),  # burst pressure
    ],
)
def test_probability_of_conformance_is_that_of_jcgm_106_clause_7(
    value: float, spread: float, limits: dict[str, float], probability: float
) -> None:
    # From memory; z = 1.40 and 2.29.
    assert probability_of_conformance(value, spread, **limits) == pytest.approx(probability, abs=0.005)


def _global_risks(
    *, process: tuple[float, float], limits: tuple[float, float], accepted: tuple[float, float], spread: float
) -> tuple[float, float]:
    """Consumer's and producer's risk: a good or bad true value, and a reading on the wrong side."""
    prior = norm(*process)
    reach = [process[0] - 9 * process[1], *limits, process[0] + 9 * process[1]]

    def is_accepted(true: float) -> float:
        # By symmetry of the normal distribution this is the chance that a reading of `true` is accepted.
        return probability_of_conformance(true, spread, lower=accepted[0], upper=accepted[1])

    bad = [(reach[0], reach[1]), (reach[2], reach[3])]
    consumer = sum(quad(lambda x: prior.pdf(x) * is_accepted(x), *side, limit=200)[0] for side in bad)
    producer = quad(lambda x: prior.pdf(x) * (1 - is_accepted(x)), reach[1], reach[2], limit=400)[0]
    return consumer, producer


def test_global_risks_are_those_of_the_precision_resistors_of_jcgm_106() -> None:
    # JCGM 106 clause 9: inputs seen in a public script, results from memory and recomputed.
    process, limits = (1500.0, 0.12), (1499.8, 1500.2)
    inside = _global_risks(process=process, limits=limits, accepted=(1499.82, 1500.18), spread=0.04)
    assert inside == pytest.approx((0.00988, 0.0690), abs=5e-5)
    at_limits = _global_risks(process=process, limits=limits, accepted=limits, spread=0.04)
    assert at_limits == pytest.approx((0.0189, 0.0372), abs=5e-5)


@pytest.mark.parametrize(
    ("limit_sd", "ratio", "guard", "accepted_wrongly", "rejected_wrongly"),
    [(2.0, 4.0, 1.0, 0.008, 0.015), (2.5, 4.0, 1.0, 0.0025, None), (2.0, 2.0, 0.91, 0.008, 0.066)],
)
def test_global_risks_are_deavers(
    limit_sd: float, ratio: float, guard: float, accepted_wrongly: float, rejected_wrongly: float | None
) -> None:
    # Deaver's tables as checked in sandialabs/suncal, `test/test_risk.py`; ratio = limit over expanded u.
    limits = (-limit_sd, limit_sd)
    accepted = (-guard * limit_sd, guard * limit_sd)
    risks = _global_risks(process=(0.0, 1.0), limits=limits, accepted=accepted, spread=limit_sd / ratio / 2)
    assert risks[0] == pytest.approx(accepted_wrongly, abs=5e-4)
    if rejected_wrongly is not None:
        assert risks[1] == pytest.approx(rejected_wrongly, abs=5e-4)


def test_process_risk_is_the_share_outside_the_limits() -> None:
    # sandialabs/suncal, `test/test_risk.py`: N(10, 0.4) and N(10.5, 0.4) against 9 to 11.
    assert 1 - probability_of_conformance(10.0, 0.4, lower=9, upper=11) == pytest.approx(0.01242, abs=5e-6)
    assert 1 - probability_of_conformance(10.5, 0.4, lower=9, upper=11) == pytest.approx(0.10574, abs=2e-5)


@pytest.mark.parametrize(
    ("guard_in_u", "risk"), [(3.0, 1e-9), (1.5, 0.00135), (1.0, 0.02275), (0.83, 0.04846), (0.0, 0.5)]
)
def test_risk_at_the_edge_of_a_guard_band_is_that_of_ilac_g8(guard_in_u: float, risk: float) -> None:
    # ILAC-G8:09/2019 Table 1 (from memory): < 1 ppm, < 0.16 %, < 2.5 %, < 5 %, < 50 %.
    reading, spread = 5.2 - guard_in_u * 0.02, 0.01
    assert 1 - probability_of_conformance(reading, spread, upper=5.2) == pytest.approx(risk, abs=2e-5)


@pytest.mark.parametrize(
    ("error", "expected"),
    [
        (0.0017, Result.PASS),
        (0.0025, Result.CANNOT_TELL),
        (0.0035, Result.CANNOT_TELL),
        (0.0045, Result.FAIL),
    ],
)
def test_a_published_four_zone_rule_is_kept(error: float, expected: Result) -> None:
    # A calibration laboratory quoting ILAC-G8: limits +-0.003, U = 0.0010.
    assert decide(error, 0.0010, lower=-0.003, upper=0.003) is expected
    assert decide(-error, 0.0010, lower=-0.003, upper=0.003) is expected
