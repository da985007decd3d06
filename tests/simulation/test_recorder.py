"""The recorder: quantisation, noise, clipping, gaps, skew."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.simulation.recorder import FILL, Recorder, digitised, gaps, sampled, with_gaps

QUIET = Recorder(noise_v=0.0)


@pytest.mark.parametrize("bits", [8, 10, 12, 16])
def test_quantisation_leaves_the_ideal_rms_error(bits: int) -> None:
    # LSB/√12 = 0.288675 LSB (IEEE 1057/1241, from memory)
    recorder = replace(QUIET, bits=bits, range_v=6.0)
    ramp = np.linspace(0.013, 4.987, 200_003)
    counts = digitised(ramp, recorder, np.random.default_rng(0))
    error = recorder.scaling.volts(counts) - ramp
    assert error.std() == pytest.approx(0.288675 * recorder.step_v, rel=0.01)
    assert np.abs(error).max() <= 0.5 * recorder.step_v * (1.0 + 1e-9)


def test_noise_and_quantisation_together_are_the_stated_floor() -> None:
    recorder = replace(QUIET, bits=12, noise_v=0.003, noise_growth=2.0)
    volts = recorder.scaling.volts(digitised(np.full(100_000, 2.5), recorder, np.random.default_rng(1)))
    assert volts.std() == pytest.approx(recorder.floor_v, rel=0.02)


def test_noise_that_grows_is_larger_at_five_volts_than_at_none() -> None:
    recorder = replace(QUIET, bits=16, noise_v=0.004, noise_growth=3.0)
    rng = np.random.default_rng(2)
    low = recorder.scaling.volts(digitised(np.zeros(50_000), recorder, rng)).std()
    high = recorder.scaling.volts(digitised(np.full(50_000, 5.0), recorder, rng)).std()
    assert high / low == pytest.approx(4.0, rel=0.03)


def test_two_interleaved_converters_differ_in_every_other_sample() -> None:
    recorder = replace(QUIET, bits=16, interleave_v=0.02)
    volts = recorder.scaling.volts(digitised(np.full(1_000, 2.0), recorder, np.random.default_rng(3)))
    assert volts[1::2].mean() - volts[::2].mean() == pytest.approx(0.02, abs=recorder.step_v)


def test_beyond_the_range_counts_stand_at_the_limit_and_are_marked_over_range() -> None:
    for bits in (8, 16):
        recorder = replace(QUIET, bits=bits, range_v=2.0)
        counts = digitised(np.array([-9.0, 0.0, 9.0]), recorder, np.random.default_rng(4))
        assert recorder.scaling.over_range(counts).tolist() == [True, False, True]
        assert not recorder.scaling.missing(counts).any()


def test_single_wrong_samples_are_as_many_as_told_and_stand_alone() -> None:
    recorder = replace(QUIET, rate_hz=1_000.0, bits=16, spikes_per_s=5.0, spike_v=2.0)
    volts = recorder.scaling.volts(digitised(np.full(100_000, 2.5), recorder, np.random.default_rng(5)))
    wrong = np.flatnonzero(np.abs(volts - 2.5) > 0.1)
    assert wrong.size == pytest.approx(500, rel=0.2)
    assert np.mean(np.diff(wrong) == 1) < 0.05


def test_gaps_are_runs_and_a_recorder_without_them_misses_nothing() -> None:
    recorder = replace(QUIET, gaps_per_s=1.0)
    missing = gaps(200_000, recorder, np.random.default_rng(6))
    assert 2 < np.count_nonzero(np.diff(missing.astype(int)) == 1) < 50
    assert not gaps(1_000, QUIET, np.random.default_rng(6)).any()
    assert recorder.scaling.missing(np.array([FILL, 0], dtype=np.int16)).tolist() == [True, False]


def test_a_multiplexer_reads_the_third_channel_later() -> None:
    inner = np.arange(120.0)
    recorder = replace(QUIET, skew=0.25)
    assert sampled(inner, 12, recorder, 0).tolist() == inner[::12].tolist()
    assert sampled(inner, 12, recorder, 2)[:9].tolist() == (inner[::12] + 6.0)[:9].tolist()


def test_a_point_sampler_misses_the_pulse_that_an_averaging_one_sees_small() -> None:
    inner = np.zeros(160)
    inner[33] = 1.0
    assert sampled(inner, 16, QUIET, 0).max() == 0.0
    assert sampled(inner, 16, replace(QUIET, averaging=True), 0).max() == pytest.approx(1.0 / 16.0)


def test_an_input_filter_starts_settled() -> None:
    recorder = replace(QUIET, corner_hz=500.0)
    assert sampled(np.full(100, 3.3), 1, recorder, 0) == pytest.approx(np.full(100, 3.3))


def test_a_gap_is_marked_held_or_left_out() -> None:
    counts = np.arange(10, dtype=np.int16)
    lost = np.zeros(10, dtype=np.bool_)
    lost[4:7] = True
    assert with_gaps(counts, lost, QUIET).tolist() == [0, 1, 2, 3, FILL, FILL, FILL, 7, 8, 9]
    assert with_gaps(counts, lost, replace(QUIET, gap_kind="held")).tolist() == [0, 1, 2, 3, 3, 3, 3, 7, 8, 9]
    assert with_gaps(counts, lost, replace(QUIET, gap_kind="spliced")).tolist() == [0, 1, 2, 3, 7, 8, 9]
    assert with_gaps(counts, np.zeros(10, dtype=np.bool_), QUIET) is counts
