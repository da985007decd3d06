from __future__ import annotations

from math import isnan, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.captures.model import ArraySource, Channel, Role, Scaling
from analysis.signals.measurement import read_samples, read_span
from analysis.signals.statistics import (
    autocorrelation,
    lag_one_autocorrelation,
    mean,
    mean_uncertainty,
    noise_about_course,
    smallest_step,
    standard_deviation,
)


def _noisy(count: int = 4000, deviation_v: float = 0.004, seed: int = 3) -> np.ndarray:
    return 2.5 + deviation_v * np.random.default_rng(seed).normal(size=count)


@given(st.floats(0.01, 100.0), st.floats(-1e7, 1e7))
def test_gain_scales_and_offset_shifts_what_is_read(gain: float, offset_v: float) -> None:
    plain = read_samples(_noisy(400), sample_interval_s=1e-3)
    moved = read_samples(gain * _noisy(400) + offset_v, sample_interval_s=1e-3)
    rounding = 4e-9 * max(abs(offset_v), 1.0)
    assert moved.mean_v.value == pytest.approx(gain * plain.mean_v.value + offset_v, abs=rounding)
    assert moved.peak_to_peak_v.value == pytest.approx(gain * plain.peak_to_peak_v.value, abs=rounding)
    assert moved.noise_v.value == pytest.approx(gain * plain.noise_v.value, abs=rounding)


def test_time_reversed_reads_the_same() -> None:
    forwards = read_samples(_noisy(), sample_interval_s=1e-3)
    backwards = read_samples(_noisy()[::-1], sample_interval_s=1e-3)
    assert backwards.noise_v.value == pytest.approx(forwards.noise_v.value, rel=1e-9)
    assert backwards.mean_v.standard_uncertainty == pytest.approx(
        forwards.mean_v.standard_uncertainty, rel=1e-9
    )


def test_more_noise_never_reads_as_less() -> None:
    base = _noisy(deviation_v=0.001, seed=1)
    extra = np.random.default_rng(2).normal(size=base.size)
    read = [
        read_samples(base + amount_v * extra, sample_interval_s=1e-4).noise_v.value
        for amount_v in (0.0, 0.001, 0.002, 0.01, 0.1)
    ]
    assert read == sorted(read)


def test_noise_is_the_deviation_that_was_put_in_whatever_slow_course_lies_under_it() -> None:
    time_s = np.arange(20_000) * 1e-4
    noise_v = 0.005 * np.random.default_rng(5).normal(size=time_s.size)
    course_v = 2.5 + 1.8 * np.sin(2 * np.pi * 0.5 * time_s)
    reading = read_samples(course_v + noise_v, sample_interval_s=1e-4)
    assert reading.noise_v.value == pytest.approx(0.005, rel=0.02)
    assert not reading.resolution_limited
    assert abs(reading.noise_v.value - 0.005) < 3 * reading.noise_v.standard_uncertainty


def test_missing_samples_are_left_out_and_counted() -> None:
    samples_v = _noisy()
    holed_v = samples_v.copy()
    holed_v[::7] = np.nan
    reading = read_samples(holed_v, sample_interval_s=1e-3)
    assert reading.missing == np.isnan(holed_v).sum()
    assert reading.count + reading.missing == samples_v.size
    assert reading.duration_s == pytest.approx(4.0)
    assert reading.mean_v.value == pytest.approx(float(np.nanmean(holed_v)), rel=1e-14)
    assert reading.noise_v.value == pytest.approx(0.004, rel=0.05)


def test_unknown_accuracy_is_said_and_not_taken_for_perfect() -> None:
    unknown = read_samples(_noisy(), sample_interval_s=1e-3, gain_error=0.01)
    assert not unknown.mean_v.accuracy_known
    assert unknown.peak_to_peak_v.accuracy_known  # an offset does not matter to a difference
    known = read_samples(_noisy(), sample_interval_s=1e-3, gain_error=0.01, offset_error_v=0.0)
    assert known.mean_v.accuracy_known


def test_an_offset_error_widens_the_level_and_not_the_difference() -> None:
    without = read_samples(_noisy(), sample_interval_s=1e-3, gain_error=0.0, offset_error_v=0.0)
    offset = read_samples(_noisy(), sample_interval_s=1e-3, gain_error=0.0, offset_error_v=0.05)
    assert offset.mean_v.type_b == pytest.approx(0.05 / sqrt(3), rel=1e-6)
    assert offset.peak_to_peak_v.type_b == without.peak_to_peak_v.type_b
    assert offset.noise_v.type_b == 0.0


def test_a_stated_uncertainty_of_the_mean_is_met_by_repeated_records() -> None:
    rng = np.random.default_rng(11)
    smoothing = np.ones(10) / 10
    errors, stated = [], []
    for _ in range(200):
        samples = np.convolve(rng.normal(size=1009), smoothing, mode="valid")
        errors.append(mean(samples))
        stated.append(mean_uncertainty(samples).standard_uncertainty)
    assert float(np.std(errors)) == pytest.approx(float(np.mean(stated)), rel=0.15)


def test_blocks_do_not_change_what_a_long_span_says() -> None:
    samples = np.convolve(np.random.default_rng(4).normal(size=40_049), np.ones(50) / 50, mode="valid")
    assert mean_uncertainty(samples).inflation == pytest.approx(sqrt(50), rel=0.15)


def test_rms_of_a_sine_about_zero_is_its_amplitude_over_root_two() -> None:
    time_s = np.arange(10_000) * 1e-4
    reading = read_samples(3.0 * np.sin(2 * np.pi * 5 * time_s), sample_interval_s=1e-4)
    assert reading.rms_v.value == pytest.approx(3.0 / sqrt(2), rel=1e-9)


def test_an_offset_error_matters_to_the_rms_of_a_level_and_not_of_hum() -> None:
    time_s = np.arange(10_000) * 1e-4
    accuracy = {"sample_interval_s": 1e-4, "step_v": 1e-6, "gain_error": 0.0, "offset_error_v": 0.05}
    hum = read_samples(np.sin(2 * np.pi * 50 * time_s), **accuracy)
    level = read_samples(np.full(100, -2.5), **accuracy)
    assert hum.rms_v.type_b < 1e-5
    assert level.rms_v.type_b == pytest.approx(0.05 / sqrt(3), rel=1e-6)


def test_the_stated_uncertainty_of_the_rms_is_met_by_repeated_records() -> None:
    rng = np.random.default_rng(21)
    read = [read_samples(0.3 + rng.normal(size=400), sample_interval_s=1e-3).rms_v for _ in range(300)]
    spread = float(np.std([item.value for item in read]))
    assert spread == pytest.approx(float(np.mean([item.type_a for item in read])), rel=0.15)


def test_a_peak_to_peak_value_is_rounded_twice() -> None:
    reading = read_samples([0.0, 0.02, 0.0, 0.02], sample_interval_s=1e-3, step_v=0.02)
    assert reading.peak_to_peak_v.standard_uncertainty == pytest.approx(sqrt(2) * 0.02 / sqrt(12))
    assert reading.maximum_v.standard_uncertainty == pytest.approx(0.02 / sqrt(12))


def test_a_channel_is_read_with_its_own_step_and_stated_errors() -> None:
    counts = np.array([0, 100, 200, 100, 0, 100, 200, 100, 0, -9999], dtype=np.int16)
    scaling = Scaling(scale_factor=0.01, fill_value=-9999)
    channel = Channel("a", Role.SIGNAL, ArraySource(counts), scaling, gain_error=0.03, offset_error_v=0.02)
    reading = read_span(channel, sample_interval_s=0.001)
    assert reading.missing == 1
    assert reading.maximum_v.value == pytest.approx(2.0)
    expected = sqrt((0.01 / sqrt(12)) ** 2 + (2 * 0.03) ** 2 / 3 + 0.02**2 / 3)
    assert reading.maximum_v.standard_uncertainty == pytest.approx(expected)
    assert reading.maximum_v.expanded_uncertainty == pytest.approx(2 * expected)
    assert read_span(channel, sample_interval_s=0.001, start=1, stop=4).count == 3


def test_one_sample_reads_as_itself_and_promises_no_noise_figure() -> None:
    reading = read_samples([1.25], sample_interval_s=0.1, step_v=0.02)
    assert reading.mean_v.value == 1.25
    assert reading.resolution_limited
    assert reading.mean_v.standard_uncertainty == pytest.approx(0.02 / sqrt(12))


def test_a_constant_of_unknown_resolution_has_unknown_noise() -> None:
    reading = read_samples(np.full(100, 2.4999), sample_interval_s=0.1)
    assert reading.resolution_limited
    assert isnan(reading.noise_v.value)


def test_a_step_that_the_file_does_not_state_is_found_in_the_samples() -> None:
    assert smallest_step(np.round(_noisy() / 0.0049) * 0.0049) == pytest.approx(0.0049)
    assert smallest_step([2.5, 2.5]) == 0.0


def test_nothing_to_read_is_refused_with_the_reason() -> None:
    with pytest.raises(ValueError, match="got 3 missing"):
        read_samples([np.nan] * 3, sample_interval_s=0.1)
    with pytest.raises(ValueError, match="sample_interval_s must be positive"):
        read_samples([1.0], sample_interval_s=0.0)
    with pytest.raises(ValueError, match="one-dimensional"):
        autocorrelation(np.empty(0), most_lags=1)


def test_statistics_of_too_little_say_so() -> None:
    assert isnan(mean([]))
    assert isnan(standard_deviation([1.0]))
    assert mean_uncertainty([1.0]).standard_uncertainty == float("inf")
    assert lag_one_autocorrelation([4.0]) == 0.0
    assert noise_about_course([1.0, 2.0], sample_interval_s=1.0).degrees_of_freedom == 0.0
