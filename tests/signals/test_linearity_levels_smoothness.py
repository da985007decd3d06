from __future__ import annotations

import numpy as np
import pytest

from analysis.intervals import Interval
from analysis.signals.levels import (
    StateLevels,
    crossing_instants,
    is_regular_two_level,
    is_two_level,
    state_levels,
    transitions,
)
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

_POSITION = np.linspace(0.0, 100.0, 1001)


def _bowed() -> np.ndarray:
    return _POSITION + 0.8 * np.sin(0.05 * _POSITION) + 0.1 * np.cos(0.9 * _POSITION)


def test_gain_scales_every_kind_of_linearity_and_offset_leaves_three_alone() -> None:
    for linearity in (independent_linearity, zero_based_linearity, terminal_based_linearity):
        plain = linearity(_POSITION, _bowed()).deviation_percent
        assert linearity(_POSITION, 0.7 * _bowed() + 9.0).deviation_percent == pytest.approx(
            0.7 * plain, rel=1e-5
        )


def test_absolute_linearity_counts_an_offset() -> None:
    assert absolute_linearity(_POSITION, _POSITION + 1.5).deviation_percent == pytest.approx(1.5)
    assert absolute_linearity(_POSITION, _POSITION + 1.5, intercept_percent=1.5).deviation_percent < 1e-9


def test_linearity_does_not_mind_the_order_of_the_sweep_or_missing_samples() -> None:
    shuffled = np.random.default_rng(2).permutation(_POSITION.size)
    output = _bowed()
    plain = independent_linearity(_POSITION, output)
    assert independent_linearity(_POSITION[shuffled], output[shuffled]) == plain
    holed = output.copy()
    holed[500] = np.nan
    assert independent_linearity(_POSITION, holed).deviation_percent == pytest.approx(
        plain.deviation_percent, abs=1e-3
    )


def test_no_other_line_does_better_than_the_independent_one() -> None:
    best = independent_linearity(_POSITION, _bowed())
    rng = np.random.default_rng(3)
    for slope, intercept in zip(rng.normal(1, 0.01, 200), rng.normal(0, 0.5, 200), strict=True):
        other = float(np.max(np.abs(_bowed() - slope * _POSITION - intercept)))
        assert other >= best.deviation_percent - 1e-6


def test_linearity_is_judged_over_the_span_that_is_asked_for() -> None:
    middle = (_POSITION >= 10) & (_POSITION <= 90)
    assert "between 0.0 and 10.0" not in why_refused(_POSITION[middle], position_known=True)
    partly = _POSITION[(_POSITION >= 20) & (_POSITION <= 90)]
    assert "between 0.0 and 20.0 %" in why_refused(partly, position_known=True)
    assert why_refused(partly, position_known=True, span=Interval(15, 95)) == ""


def test_linearity_without_a_position_reference_is_refused() -> None:
    assert "position was not measured" in why_refused(_POSITION, position_known=False)
    assert "fewer than two" in why_refused([], position_known=True)
    with pytest.raises(ValueError, match="one shape"):
        independent_linearity([1.0, 2.0], [1.0])


def test_directions_that_share_no_travel_have_no_hysteresis_to_state() -> None:
    assert hysteresis([0, 10], [0, 10], [20, 30], [20, 30]) is None
    assert hysteresis([], [], [20, 30], [20, 30]) is None


def test_hysteresis_does_not_depend_on_which_direction_is_called_up() -> None:
    up, down = _bowed(), _bowed() + 0.3
    there = hysteresis(_POSITION, up, _POSITION[::-1], down[::-1])
    back = hysteresis(_POSITION, down, _POSITION[::-1], up[::-1])
    assert there is not None
    assert there == back
    assert there.largest_percent == pytest.approx(0.3)


def test_a_load_to_ground_only_ever_lowers_the_output_and_leaves_the_ends() -> None:
    share = np.linspace(0, 1, 101)
    loaded = loaded_ratio(share, load_ratio=0.5)
    assert (loaded <= share).all()
    assert loaded[0] == 0.0
    assert loaded[-1] == 1.0
    assert (np.diff(unloaded_position(share, load_ratio=0.5)) > 0).all()


def test_smoothness_scales_with_the_residual_and_ignores_an_offset_and_the_order_in_time() -> None:
    residual = np.random.default_rng(8).normal(size=_POSITION.size)
    plain = output_smoothness(_POSITION, residual)
    scaled = output_smoothness(_POSITION[::-1], 3.0 * residual[::-1] + 7.0)
    np.testing.assert_allclose(scaled.variation_percent, 3.0 * plain.variation_percent, rtol=1e-12)


def test_smoothness_is_a_function_of_travel_and_not_of_speed() -> None:
    # The same track, swept eight times slower: MIL-PRF-39023 tests at 4 rpm, its sheet /10 at 0.5 rpm.
    residual = np.sin(_POSITION)
    slow = output_smoothness(np.repeat(_POSITION, 8), np.repeat(residual, 8))
    np.testing.assert_array_equal(
        slow.variation_percent, output_smoothness(_POSITION, residual).variation_percent
    )


def test_a_defect_anywhere_is_caught_whole_by_one_window_if_it_is_half_an_increment_wide() -> None:
    travel = np.linspace(0.0, 100.0, 20_001)
    for start in np.arange(40.0, 41.0, 0.05):
        residual = np.where((travel >= start) & (travel < start + 0.45), 0.4, 0.0)
        residual = np.where((travel >= start + 0.2) & (travel < start + 0.45), -0.6, residual)
        assert output_smoothness(travel, residual).worst_percent == pytest.approx(1.0)


def test_travel_that_was_not_visited_has_no_smoothness() -> None:
    found = output_smoothness([10.1, 10.2, 50.0, np.nan], [0.0, 0.3, 9.0, 9.0])
    visited = found.centres_percent[np.isfinite(found.variation_percent)]
    np.testing.assert_allclose(visited, [10.0, 10.5])
    assert found.worst_percent == pytest.approx(0.3)
    assert np.isnan(output_smoothness([], []).worst_percent)


def test_smoothness_refuses_what_does_not_fit() -> None:
    with pytest.raises(ValueError, match="one shape"):
        output_smoothness([1.0], [1.0, 2.0])
    with pytest.raises(ValueError, match="increment_percent must be positive"):
        output_smoothness([1.0], [1.0], increment_percent=0.0)


def test_an_offset_moves_both_states_and_not_the_amplitude() -> None:
    square = np.tile([0.2, 0.2, 4.8, 4.8], 50)
    plain, moved = state_levels(square), state_levels(square + 0.1)
    assert plain is not None
    assert moved is not None
    assert moved.low_v == pytest.approx(plain.low_v + 0.1)
    assert moved.amplitude_v == pytest.approx(plain.amplitude_v)


def test_a_constant_has_no_two_states() -> None:
    assert state_levels([2.5, 2.5, np.nan]) is None
    assert state_levels([]) is None


def test_a_falling_transition_mirrors_a_rising_one_and_a_runt_is_none() -> None:
    time_s = np.arange(7.0)
    levels = StateLevels(0.0, 1.0)
    found = transitions(time_s, [0.0, 0.0, 1.0, 1.0, 0.0, 0.5, 0.0], levels)
    assert [item.rising for item in found] == [True, False]
    assert found[0].duration_s == pytest.approx(0.8)
    assert found[1].duration_s == pytest.approx(0.8)


def test_a_missing_sample_breaks_the_waveform() -> None:
    instants, _ = crossing_instants([0.0, 1.0, 2.0], [0.0, np.nan, 1.0], level_v=0.5)
    assert instants.size == 0


def test_a_transition_across_a_missing_sample_has_no_duration_to_state() -> None:
    levels = StateLevels(0.0, 1.0)
    assert transitions(np.arange(5.0), [0.0, 0.5, np.nan, 0.5, 1.0], levels) == ()
    assert transitions(np.arange(5.0), [0.5, 0.0, np.nan, 1.0, 0.5], levels) == ()
    assert len(transitions(np.arange(5.0), [0.0, 0.5, 0.5, 0.5, 1.0], levels)) == 1


def test_hum_of_a_probe_in_the_air_is_no_two_level_signal() -> None:
    time_s = np.arange(0.0, 1.0, 1e-4)
    assert not is_two_level(2.0 * np.sin(2 * np.pi * 50 * time_s), sample_interval_s=1e-4)


def _duty_cycle(time_s: np.ndarray, frequency_hz: float, duty: np.ndarray | float) -> np.ndarray:
    return np.where((time_s * frequency_hz) % 1.0 < duty, 4.9, 0.1)


def test_a_duty_cycle_signal_is_told_whatever_its_duty() -> None:
    time_s = np.arange(0.0, 1.0, 1e-4)
    rng = np.random.default_rng(6)
    for duty in (0.1, 0.5, 0.9, 0.2 + 0.6 * time_s):
        signal = _duty_cycle(time_s, 200.0, duty) + 0.02 * rng.normal(size=time_s.size)
        assert is_two_level(signal, sample_interval_s=1e-4)


def test_a_swept_potentiometer_is_no_two_level_signal_even_with_a_worn_spot() -> None:
    time_s = np.arange(0.0, 4.0, 1e-3)
    swept = 2.5 + 2.0 * np.sin(2 * np.pi * 0.5 * time_s)
    assert not is_two_level(swept, sample_interval_s=1e-3)
    worn = np.where((np.abs(swept - 2.5) < 0.3) & (np.arange(time_s.size) % 3 == 0), 0.0, swept)
    assert not is_two_level(worn, sample_interval_s=1e-3)


def test_a_broken_wire_that_drops_out_while_the_arm_rests_is_no_two_level_signal() -> None:
    held = np.full(5000, 2.5)
    for start in (100, 300, 900, 910, 1500, 2200, 2230, 3000, 4000, 4400):
        held[start : start + 30] = 0.0
    assert not is_two_level(held, sample_interval_s=1e-3)


@pytest.mark.parametrize("frequency_hz", [1.0, 3.0, 8.0])
def test_a_slow_duty_cycle_is_told_by_its_even_period(frequency_hz: float) -> None:
    time_s = np.arange(0.0, 10.0, 1e-3)
    rng = np.random.default_rng(6)
    for duty in (0.1, 0.5, 0.9, 0.2 + 0.06 * time_s):
        signal = _duty_cycle(time_s, frequency_hz, duty) + 0.02 * rng.normal(size=time_s.size)
        assert is_regular_two_level(signal, sample_interval_s=1e-3)
        signal[::7] = np.nan
        assert is_regular_two_level(signal, sample_interval_s=1e-3)


def test_a_wire_that_goes_open_and_shut_unevenly_is_no_clock() -> None:
    rng = np.random.default_rng(7)
    lengths = rng.integers(300, 700, 24)  # as even as a hand that wiggles a loom once a second
    held = np.repeat(np.where(np.arange(24) % 2, 0.0, 2.5), lengths)
    assert not is_regular_two_level(held, sample_interval_s=1e-3)


def test_even_strokes_of_a_machine_between_two_stops_are_no_two_levels() -> None:
    time_s = np.arange(0.0, 12.0, 1e-3)
    swept = np.clip(2.5 + 4.0 * np.sin(2 * np.pi * 0.8 * time_s), 0.5, 4.5)  # two thirds of its time at them
    assert not is_regular_two_level(swept, sample_interval_s=1e-3)


def test_too_few_periods_are_no_clock() -> None:
    time_s = np.arange(0.0, 4.0, 1e-3)
    assert not is_regular_two_level(_duty_cycle(time_s, 1.0, 0.5), sample_interval_s=1e-3)
    assert not is_regular_two_level([], sample_interval_s=1e-3)
    assert not is_regular_two_level(np.full(100, np.nan), sample_interval_s=1e-3)


def test_too_little_to_tell_is_not_called_two_level() -> None:
    assert not is_two_level([], sample_interval_s=1e-3)
    assert not is_two_level([0.0, 5.0] * 3, sample_interval_s=1e-3)
    assert not is_two_level([2.50, 2.52] * 100, sample_interval_s=1e-3)  # a toggling last digit
