"""Loading, linearity, smoothness and waveform arithmetic against published figures and closed forms."""

from __future__ import annotations

from math import log

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.optimize import minimize_scalar
from scipy.special import ndtr

from analysis.signals.levels import StateLevels, crossing_instants, state_levels, transitions
from analysis.signals.linearity import (
    absolute_linearity,
    hysteresis,
    independent_linearity,
    terminal_based_linearity,
    why_refused,
    zero_based_linearity,
)
from analysis.signals.loading import loaded_ratio, unloaded_position
from analysis.signals.smoothness import output_smoothness

_POSITION = np.linspace(0.0, 100.0, 2001)
_SHARE = _POSITION / 100.0


# Load over track resistance, largest error in % and where: exact maxima, computed once and kept.
@pytest.mark.parametrize(
    ("load_over_track", "largest_percent", "at"),
    [
        (1, 12.1585, 0.68889),
        (2, 6.6726, 0.67836),
        (5, 2.8373, 0.67150),
        (10, 1.44933, 0.66911),
        (20, 0.732608, 0.66789),
        (100, 0.147820, 0.66691),
    ],
)
def test_largest_loading_error_is_the_exact_one(
    load_over_track: float, largest_percent: float, at: float
) -> None:
    def error(position: float) -> float:
        return float(position - loaded_ratio(position, load_ratio=1 / load_over_track))

    found = minimize_scalar(lambda x: -error(x), bounds=(0.0, 1.0), method="bounded", options={"xatol": 1e-9})
    assert 100 * error(found.x) == pytest.approx(largest_percent, rel=1e-5, abs=5e-5)
    assert found.x == pytest.approx(at, abs=1e-5)


def test_a_light_load_errs_by_4_27ths_of_the_ratio_at_two_thirds() -> None:
    # Todd, The Potentiometer Handbook (Bourns 1975; from memory), 4/27 = 0.148148.
    ratio = 1e-6
    assert (2 / 3 - float(loaded_ratio(2 / 3, load_ratio=ratio))) / ratio == pytest.approx(4 / 27, rel=1e-5)


@pytest.mark.parametrize(("load_over_track", "percent"), [(10, 1.2195), (100, 0.12469)])
def test_loading_at_mid_travel(load_over_track: float, percent: float) -> None:
    # Closed form: k/4 / (1 + k/4) / 2.
    assert 100 * (0.5 - float(loaded_ratio(0.5, load_ratio=1 / load_over_track))) == pytest.approx(
        percent, rel=5e-5
    )


@pytest.mark.parametrize("ratio", [0.0, 1e-3, 0.1, 1.0, 10.0, 1e3])
def test_loading_is_undone_to_1e_12(ratio: float) -> None:
    np.testing.assert_allclose(
        unloaded_position(loaded_ratio(_SHARE, load_ratio=ratio), load_ratio=ratio), _SHARE, atol=1e-12
    )


def _output(name: str) -> NDArray[np.float64]:
    x = _SHARE
    shapes = {
        "A": x - 0.01 * np.sin(2 * np.pi * x),
        "B": x - 0.1 * x**2 * (1 - x),
        "C": x + 0.04 * (x**2 - x),
    }
    return np.asarray(100.0 * shapes[name])


# Closed forms, or minimax by linear programming on 20,001 points; Bourns, glossary, for the definitions.
@pytest.mark.parametrize(
    ("name", "terminal", "zero", "independent"),
    [("A", 1.0, None, 0.6825), ("B", 1.4815, 0.9017, 0.7407), ("C", 1.0, None, 0.5)],
)
def test_linearity_of_worked_cases(
    name: str, terminal: float, zero: float | None, independent: float
) -> None:
    output = _output(name)
    assert terminal_based_linearity(_POSITION, output).deviation_percent == pytest.approx(terminal, abs=1e-4)
    assert independent_linearity(_POSITION, output).deviation_percent == pytest.approx(independent, abs=1e-4)
    if zero is not None:
        assert zero_based_linearity(_POSITION, output).deviation_percent == pytest.approx(zero, abs=1e-4)


def test_independent_linearity_is_minimax_and_not_least_squares() -> None:
    output = _output("A")
    line = independent_linearity(_POSITION, output)
    assert line.slope == pytest.approx(1.01365, abs=1e-4)
    assert line.intercept_percent == pytest.approx(-0.682, abs=1e-3)
    slope, intercept = np.polyfit(_POSITION, output, 1)
    squares = float(np.max(np.abs(output - slope * _POSITION - intercept)))
    assert squares == pytest.approx(0.9549, abs=2e-3)
    assert line.deviation_percent < squares


@pytest.mark.parametrize("name", ["A", "B", "C"])
def test_a_freer_line_never_fits_worse(name: str) -> None:
    output = _output(name)
    independent = independent_linearity(_POSITION, output).deviation_percent
    zero = zero_based_linearity(_POSITION, output).deviation_percent
    terminal = terminal_based_linearity(_POSITION, output).deviation_percent
    absolute = absolute_linearity(_POSITION, output).deviation_percent
    assert independent <= zero + 1e-9 <= terminal + 2e-9
    assert terminal == pytest.approx(absolute)  # these three run through both corners


def test_linearity_is_refused_where_the_steps_exceed_10_percent_of_travel() -> None:
    # MIL-PRF-39002C, 4.6.8: continuous, or steps of at most 10 % of the electrical travel.
    tenths = np.linspace(0.0, 100.0, 11)
    assert why_refused(tenths, position_known=True) == ""
    wider = np.delete(tenths, 4)
    assert "between 30.0 and 50.0 %" in why_refused(wider, position_known=True)
    with pytest.raises(ValueError, match=r"between 30\.0 and 50\.0 %"):
        independent_linearity(wider, wider)


def test_backlash_of_a_half_percent_grade_shows_as_hysteresis() -> None:
    # A-A-52176 Table VII: 1.0 % linearity allows 0.5 degrees of backlash; on 340 degrees 0.147 % of travel.
    lost = 100 * 0.5 / 340
    play = hysteresis(_POSITION, _POSITION - lost / 2, _POSITION[::-1], _POSITION[::-1] + lost / 2)
    assert play is not None
    assert play.largest_percent == pytest.approx(0.147, abs=5e-4)
    assert play.median_percent == pytest.approx(play.largest_percent)


def test_a_new_track_at_its_typical_smoothness_limit_reads_0_1_percent_which_is_5_mv() -> None:
    # Bourns, training pages "Output Smoothness": typical 0.1 % of the applied voltage, so 5 mV of 5 V.
    residual_mv = np.where((_POSITION > 50.0) & (_POSITION < 50.2), 5.0, 0.0)
    found = output_smoothness(_POSITION, residual_mv / 5000.0 * 100.0)
    assert found.worst_percent == pytest.approx(0.1)
    lit = found.centres_percent[found.variation_percent > 0.05]
    np.testing.assert_allclose(lit, [50.0, 50.5])  # two windows that overlap by half (Novotechnik 7.2)


@pytest.mark.parametrize("bits", [8, 12])
def test_a_coarse_recorder_cannot_show_0_1_percent(bits: int) -> None:
    # One code of 8 bits over 5 V is 0.39 %, one of 12 bits over +-20 V 0.195 % (closed form).
    step_v = {8: 5.0 / 256, 12: 40.0 / 4096}[bits]
    ideal_v = 5.0 * _SHARE
    residual = (np.round(ideal_v / step_v) * step_v - ideal_v) / 5.0 * 100.0
    assert output_smoothness(_POSITION, residual).worst_percent > 0.1


def test_reference_levels_of_a_published_clock_signal() -> None:
    # MathWorks documentation, "Extract features of a clock signal": 0.0138 V and 5.1848 V.
    levels = StateLevels(0.0138, 5.1848)
    assert levels.reference_v(0.1) == pytest.approx(0.5309, abs=5e-5)
    assert levels.reference_v(0.9) == pytest.approx(4.6677, abs=5e-5)


def test_state_levels_are_modes_that_a_short_overshoot_does_not_move() -> None:
    # IEEE 181 histogram method; one bin is 1 % of the peak-to-peak value.
    rng = np.random.default_rng(181)
    voltage = np.tile(np.repeat([0.5, 4.5], 100), 20) + 0.01 * rng.normal(size=4000)
    voltage[100:3000:200] += 0.6
    levels = state_levels(voltage)
    assert levels is not None
    assert levels.low_v == pytest.approx(0.5, abs=0.05)
    assert levels.high_v == pytest.approx(4.5, abs=0.05)


def _one_duration(time_s: NDArray[np.float64], voltage_v: NDArray[np.float64]) -> float:
    found = transitions(time_s, voltage_v, StateLevels(0.0, 1.0))
    assert len(found) == 1
    return found[0].duration_s


def test_transition_duration_of_an_rc_is_ln_9_time_constants() -> None:
    # Closed form, 2.19722 tau; 20 samples a time constant, within 0.1 %.
    time_s = np.arange(0.0, 12.0, 1 / 20)
    assert log(9) == pytest.approx(2.19722, abs=5e-6)
    assert _one_duration(time_s, 1 - np.exp(-time_s)) == pytest.approx(log(9), rel=1e-3)


def test_transition_duration_of_a_gaussian_edge_is_2_5631_sigma() -> None:
    time_s = np.arange(-6.0, 6.0, 1 / 40)
    assert _one_duration(time_s, ndtr(time_s)) == pytest.approx(2.56310, rel=1e-3)


def test_transition_duration_of_a_ramp_is_0_8_of_it_however_coarse_the_samples() -> None:
    time_s = np.array([-1.0, 0.0, 0.37, 1.0, 2.0])
    assert _one_duration(time_s, np.clip(time_s, 0.0, 1.0)) == pytest.approx(0.8, abs=1e-12)
    instants, rising = crossing_instants(time_s, np.clip(time_s, 0.0, 1.0), level_v=0.25)
    assert instants == pytest.approx([0.25], abs=1e-12)
    assert rising.all()
