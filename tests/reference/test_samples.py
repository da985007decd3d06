"""Means, deviations, autocorrelation and noise against figures from outside the project."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest
from statsmodels.tsa.stattools import acf

from analysis.signals.measurement import read_samples
from analysis.signals.statistics import (
    MAD_CONSISTENCY,
    autocorrelation,
    lag_one_autocorrelation,
    mean,
    mean_uncertainty,
    median_absolute_deviation,
    standard_deviation,
)
from tests.reference.nist import CERTIFIED, dataset
from tests.reference.zhang import SECOND_SERIES

# Volts a code and its rounding noise in millivolts for 0-5 V (closed form: 5 / 2**n and that over sqrt 12).
_CODES_MV = [(8, 19.531, 5.638), (10, 4.883, 1.4095), (12, 1.2207, 0.35239), (16, 0.0763, 0.02202)]


@pytest.mark.parametrize("name", CERTIFIED)
def test_mean_deviation_and_lag_one_meet_the_certified_values_of_nist_strd(name: str) -> None:
    certified, samples = CERTIFIED[name], dataset(name)
    assert mean(samples) == pytest.approx(certified.mean, rel=1e-15)
    assert standard_deviation(samples) == pytest.approx(certified.deviation, rel=certified.tolerance)
    assert lag_one_autocorrelation(samples) == pytest.approx(certified.lag_one, rel=certified.tolerance)


def test_autocorrelation_of_lew_is_the_one_that_the_nist_handbook_prints() -> None:
    # NIST/SEMATECH e-Handbook 1.3.5.12, two decimals; its rounding is loose at some lags (0.006, not 0.005).
    printed = [1.00, -0.31, -0.74, 0.77, 0.21, -0.90, 0.38, 0.63, -0.77, -0.12, 0.82]
    np.testing.assert_allclose(autocorrelation(dataset("Lew"), most_lags=10), printed, atol=0.006)


@pytest.mark.parametrize("name", ["Lew", "Mavro", "Michelso"])
def test_autocorrelation_agrees_with_statsmodels(name: str) -> None:
    samples = dataset(name)
    np.testing.assert_allclose(
        autocorrelation(samples, most_lags=20), acf(samples, nlags=20, fft=False), atol=1e-13
    )


def test_uncertainty_of_an_autocorrelated_mean_is_zhangs() -> None:
    # Zhang, Metrologia 43 (2006): n_c 17, u 0.0067, ratio 2.8; tolerances for figures read off a plot.
    found = mean_uncertainty(SECOND_SERIES)
    assert found.cut_lag == 17
    assert found.standard_uncertainty == pytest.approx(0.0067, abs=0.0001)
    assert found.inflation == pytest.approx(2.8, abs=0.05)


def test_uncertainty_of_a_mean_follows_the_closed_form_of_a_first_order_process() -> None:
    # AR(1) with coefficient a: var(mean) -> s**2 / n (1 + a) / (1 - a) (closed form).
    rng = np.random.default_rng(17)
    coefficient, count = 0.8, 20_000
    shocks = rng.normal(size=count)
    series = np.empty(count)
    series[0] = shocks[0] / sqrt(1 - coefficient**2)
    for index in range(1, count):
        series[index] = coefficient * series[index - 1] + shocks[index]
    expected = sqrt((1 + coefficient) / (1 - coefficient))
    assert mean_uncertainty(series).inflation == pytest.approx(expected, rel=0.1)


def test_mad_has_the_constant_and_the_worked_example_of_r() -> None:
    # R help page `mad`: 1.4826; the raw MAD of 1..9 and of 1..8, 100 is 2 both times.
    assert pytest.approx(1.482602218505602, rel=1e-12) == MAD_CONSISTENCY
    assert median_absolute_deviation(range(1, 10)) == pytest.approx(2 * 1.482602218505602)
    assert median_absolute_deviation([*range(1, 9), 100]) == pytest.approx(2 * 1.482602218505602)


@pytest.mark.parametrize(("bits", "code_mv", "rounding_mv"), _CODES_MV)
def test_noise_of_a_noiseless_ramp_is_the_rounding_noise_of_the_converter(
    bits: int, code_mv: float, rounding_mv: float
) -> None:
    # LSB / sqrt 12: IEEE 1057 and 1241 (from memory), closed form. Codes fast enough to fill each stretch.
    step_v = 5.0 / 2**bits
    ramp_v = np.round(np.linspace(0.0, 5.0, 2**bits * 23) / step_v) * step_v
    reading = read_samples(ramp_v, sample_interval_s=1e-4, step_v=step_v, course_s=0.0230)
    assert step_v * 1e3 == pytest.approx(code_mv, rel=5e-4)
    assert reading.resolution_limited
    assert reading.noise_v.value * 1e3 == pytest.approx(rounding_mv, rel=0.02)


def test_a_flat_record_is_limited_by_its_resolution_and_never_free_of_noise() -> None:
    # First principles: the rounding error of a constant is a constant, not noise of LSB / sqrt 12.
    reading = read_samples(np.full(500, 2.5), sample_interval_s=1e-3, step_v=5 / 256)
    assert reading.resolution_limited
    assert reading.noise_v.value == pytest.approx(5 / 256 / sqrt(12))
    assert reading.mean_v.standard_uncertainty == pytest.approx(5 / 256 / (2 * sqrt(3)))


def test_ten_millivolts_a_code_are_an_uncertainty_of_2_887_mv() -> None:
    # JCGM 100, F.2.2.1 (from memory): step / (2 sqrt 3) = 0.288675 step.
    reading = read_samples(np.full(9, 1.0), sample_interval_s=1e-3, step_v=0.010)
    assert reading.mean_v.standard_uncertainty * 1e3 == pytest.approx(2.887, abs=5e-4)


def test_stated_accuracy_gives_the_uncertainty_of_the_gums_voltmeter() -> None:
    # JCGM 100, 4.3.7 example 2 and 5.1.5 (from memory): 14e-6 of reading + 2e-6 of the 1 V range added up to
    # a = 15 uV, u = 8.7 uV; with 12 uV of type A, 15 uV. Two bounds given apart are two parts: 7.76 uV.
    values = np.full(4, 0.928571)
    reading = read_samples(
        values, sample_interval_s=1.0, step_v=0.0, gain_error=15e-6 / 0.928571, offset_error_v=0.0
    )
    assert reading.mean_v.type_b == pytest.approx(8.7e-6, abs=0.05e-6)
    apart = read_samples(values, sample_interval_s=1.0, gain_error=14e-6, offset_error_v=2e-6)
    assert apart.mean_v.type_b == pytest.approx(sqrt((14e-6 * 0.928571) ** 2 + 2e-6**2) / sqrt(3))


def test_a_bench_meters_specification_at_5_v_is_150_uv_and_86_6_uv_standard() -> None:
    # A bench multimeter's manual, 10 V range: 0.0020 % of reading + 0.0005 % of range, taken as one bound.
    reading = read_samples([5.0, 5.0], sample_interval_s=1.0, gain_error=150e-6 / 5.0, offset_error_v=0.0)
    assert reading.mean_v.standard_uncertainty == pytest.approx(86.6e-6, abs=0.05e-6)
