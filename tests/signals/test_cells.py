"""Cells keep what samples say: spikes, gaps, and the ratio to the feed."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import settings as rules
from hypothesis import strategies as st

from analysis.captures.memory import make_record
from analysis.captures.model import Record, Role, Scaling
from analysis.errors import Cancelled
from analysis.signals import cells as cells_module
from analysis.signals.cells import Feed, RecordCells, reduce_record, samples_per_cell
from tests.signals.examples import noise, record_of, strokes

FAST_HZ = 20_000.0  # ten samples a cell
THREE = (Role.SIGNAL, Role.REFERENCE, Role.GROUND)


def _counts(size: int, *, at: dict[int, int] | None = None, scaling: Scaling | None = None) -> Record:
    raw = np.full(size, 1000, dtype=np.int16)
    for index, value in (at or {}).items():
        raw[index] = value
    return make_record("001", 1.0 / FAST_HZ, {Role.SIGNAL: (raw, scaling or Scaling(0.0025))})


@given(where=st.integers(0, 4999), volts=st.floats(-5.0, 10.0))
@rules(max_examples=40)
def test_a_spike_of_one_sample_stands_in_the_extremes_of_its_cell_and_of_no_other(
    where: int, volts: float
) -> None:
    samples = np.full(5000, 2.5)
    samples[where] = volts
    made = reduce_record(make_record("001", 1.0 / FAST_HZ, {Role.SIGNAL: (samples, Scaling())}), Feed())
    series, cell = made.volts[Role.SIGNAL], where // made.samples_per_cell
    kept = series.minimum[cell] if volts < 2.5 else series.maximum[cell]
    assert kept == np.float32(volts)
    others = np.delete(np.arange(len(made)), cell)
    assert np.all(series.spread[others] == 0.0)
    assert np.all(series.mean[others] == np.float32(2.5))


def test_mean_and_extremes_are_those_of_the_samples() -> None:
    samples = 2.5 + noise(4_000, 0.4)
    series = reduce_record(
        make_record("001", 1.0 / FAST_HZ, {Role.SIGNAL: (samples, Scaling())}), Feed()
    ).volts[Role.SIGNAL]
    rows = samples.reshape(-1, 10)
    np.testing.assert_allclose(series.mean, rows.mean(axis=1), rtol=1e-5)
    np.testing.assert_array_equal(series.minimum, rows.min(axis=1).astype(np.float32))
    np.testing.assert_array_equal(series.maximum, rows.max(axis=1).astype(np.float32))


def _three_noisy() -> Record:
    travel = strokes(2, rate_hz=FAST_HZ)
    volts = noise(len(travel), 0.003, seed=1)
    return record_of(travel, reference_v=5.0 + volts, ground_v=0.01 + 0.3 * volts, rate_hz=FAST_HZ)


@pytest.mark.parametrize("block", [1, 37, 1000, 5_000, 1 << 20])
def test_the_length_of_a_block_changes_no_cell(block: int, monkeypatch: pytest.MonkeyPatch) -> None:
    # All blocks prefer the same way of reckoning here, since the noise stands on every probe alike.
    record = _three_noisy()
    usual = reduce_record(record, Feed())
    monkeypatch.setattr(cells_module, "BLOCK_SAMPLES", block)
    other = reduce_record(record, Feed())
    for role in THREE:
        np.testing.assert_allclose(other.volts[role].mean, usual.volts[role].mean, rtol=1e-6)
        np.testing.assert_array_equal(other.volts[role].maximum, usual.volts[role].maximum)
    tolerance = 0.2 if block < 100 else 1e-4  # a block of one cell cannot tell which way is quieter
    difference = np.abs(other.travel[Role.SIGNAL].mean - usual.travel[Role.SIGNAL].mean)
    assert difference.max() <= tolerance


def test_missing_samples_are_left_out_and_counted() -> None:
    scaling = Scaling(0.0025, fill_value=-32768.0)
    record = _counts(1000, at={**dict.fromkeys(range(100, 110), -32768), 205: -32768}, scaling=scaling)
    made = reduce_record(record, Feed())
    series = made.volts[Role.SIGNAL]
    assert np.isnan(series.mean[10])
    assert np.isnan(series.minimum[10])
    assert np.isfinite(np.delete(series.mean, 10)).all()
    assert series.mean[20] == pytest.approx(2.5)  # one sample of the ten is gone, the others stand
    assert made.missing[Role.SIGNAL] == pytest.approx(11 / 1000)
    assert made.over_range[Role.SIGNAL] == 0.0


def test_nan_in_a_float_channel_is_missing_too() -> None:
    samples = np.full(1000, 2.5)
    samples[:500] = np.nan
    made = reduce_record(make_record("001", 1.0 / FAST_HZ, {Role.SIGNAL: (samples, Scaling())}), Feed())
    assert made.missing[Role.SIGNAL] == 0.5
    assert np.isnan(made.volts[Role.SIGNAL].mean[:50]).all()
    assert np.all(made.volts[Role.SIGNAL].mean[50:] == np.float32(2.5))


def test_samples_beyond_the_range_are_counted_and_kept_as_they_read() -> None:
    scaling = Scaling(0.0025, valid_min=-2000.0, valid_max=2000.0)
    made = reduce_record(_counts(1000, at={3: 2000, 4: 2100, 900: -2000}, scaling=scaling), Feed())
    assert made.over_range[Role.SIGNAL] == pytest.approx(3 / 1000)
    assert made.missing[Role.SIGNAL] == 0.0
    assert made.volts[Role.SIGNAL].maximum[0] == pytest.approx(2100 * 0.0025)


def test_counts_become_the_volts_that_the_scaling_says() -> None:
    scaling = Scaling(0.005, add_offset=-1.25)
    made = reduce_record(_counts(100, scaling=scaling), Feed())
    np.testing.assert_allclose(made.volts[Role.SIGNAL].mean, 1000 * 0.005 - 1.25, rtol=1e-6)
    assert made.step_percent[Role.SIGNAL] == pytest.approx(0.1)  # 5 mV of 5 V


def test_what_stands_on_all_probes_alike_is_gone_from_the_travel() -> None:
    travel = strokes(2, rate_hz=FAST_HZ)
    size = len(travel)
    ripple = 0.2 * np.sin(2 * np.pi * 300.0 * np.arange(size) / FAST_HZ)
    record = record_of(travel, reference_v=5.0 + ripple, ground_v=0.1 + ripple, rate_hz=FAST_HZ)
    series = reduce_record(record, Feed()).travel[Role.SIGNAL]
    assert np.abs(series.mean - travel[: 10 * len(series.mean)].reshape(-1, 10).mean(axis=1)).max() < 0.01
    alone = reduce_record(record_of(travel + 4.0 * ripple / 0.2, rate_hz=FAST_HZ), Feed())
    assert alone.travel[Role.SIGNAL].spread.max() > 1.0  # the same ripple on the signal alone stays


def test_what_stands_on_all_probes_within_a_cell_leaves_its_extremes_too() -> None:
    travel = strokes(2, rate_hz=FAST_HZ)
    ripple = 0.2 * np.sin(2 * np.pi * 7_000.0 * np.arange(len(travel)) / FAST_HZ)
    record = record_of(travel, reference_v=5.0 + ripple, ground_v=0.1 + ripple, rate_hz=FAST_HZ)
    spread = reduce_record(record, Feed()).travel[Role.SIGNAL].spread
    assert spread.max() < 0.15  # a brisk stroke moves by 0.08 % within a cell; the ripple would be 8 %


def test_noise_of_the_other_probes_is_kept_out_of_the_travel() -> None:
    travel = strokes(2, rate_hz=FAST_HZ)
    clean = reduce_record(record_of(travel, reference_v=5.0, ground_v=0.0, rate_hz=FAST_HZ), Feed())
    record = record_of(travel, rate_hz=FAST_HZ)
    size = len(travel)
    channels = {
        Role.SIGNAL: (record.channels[0].volts(), Scaling()),
        Role.REFERENCE: (5.0 + noise(size, 0.05, seed=3), Scaling()),
        Role.GROUND: (noise(size, 0.05, seed=4), Scaling()),
    }
    noisy = reduce_record(make_record("001", 1.0 / FAST_HZ, channels), Feed())
    spread = float(np.median(noisy.travel[Role.SIGNAL].spread))
    assert spread < float(np.median(clean.travel[Role.SIGNAL].spread)) + 0.2


@pytest.mark.parametrize(("reference_v", "ground_v"), [(5.0, 0.0), (4.5, 0.0), (5.1, 0.3), (3.3, -0.1)])
def test_travel_is_the_share_of_the_feed_whatever_the_feed_is(reference_v: float, ground_v: float) -> None:
    travel = strokes(1)
    made = reduce_record(record_of(travel, reference_v=reference_v, ground_v=ground_v), Feed())
    np.testing.assert_allclose(made.travel[Role.SIGNAL].mean, travel, atol=1e-3)


def test_a_feed_from_other_records_stands_in_for_one_that_was_not_watched() -> None:
    travel = strokes(1)
    watched = reduce_record(record_of(travel, reference_v=4.6, ground_v=0.1), Feed())
    signal = record_of(travel, reference_v=4.6, ground_v=0.1).channel(Role.SIGNAL)
    assert signal is not None
    alone = reduce_record(make_record("001", 0.0005, [signal]), Feed(4.6, 0.1))
    np.testing.assert_allclose(alone.travel[Role.SIGNAL].mean, watched.travel[Role.SIGNAL].mean, atol=1e-3)


@pytest.mark.parametrize("rate_hz", [2_000.0, FAST_HZ])
def test_travel_of_an_output_that_does_not_follow_its_feed_is_a_share_of_fixed_volts(rate_hz: float) -> None:
    size = 4_000
    reference_v = np.full(size, 5.0)
    reference_v[1_000:1_200] = 4.0
    volts = {Role.SIGNAL: np.full(size, 2.6), Role.REFERENCE: reference_v, Role.GROUND: np.full(size, 0.1)}
    record = make_record("001", 1.0 / rate_hz, {role: (item, Scaling()) for role, item in volts.items()})
    fixed = reduce_record(record, Feed(fixed_v=5.0)).travel[Role.SIGNAL]
    np.testing.assert_allclose(fixed.minimum, 50.0, rtol=1e-6)
    np.testing.assert_allclose(fixed.maximum, 50.0, rtol=1e-6)
    share = reduce_record(record, Feed()).travel[Role.SIGNAL]
    assert share.maximum.max() == pytest.approx(100.0 * 2.5 / 3.9, rel=1e-6)
    assert Feed(4.9, 0.1).whole_travel_v == pytest.approx(4.8)
    assert Feed(4.9, 0.1, fixed_v=5.0).whole_travel_v == 5.0


def test_no_travel_is_reckoned_from_a_feed_that_is_not_there() -> None:
    made = reduce_record(record_of(strokes(1), reference_v=0.4, ground_v=0.0), Feed())
    assert np.isnan(made.travel[Role.SIGNAL].mean).all()
    assert np.isfinite(made.volts[Role.SIGNAL].mean).all()


def test_a_record_without_a_signal_has_volts_and_no_travel() -> None:
    record = make_record("001", 0.001, {Role.GROUND: (np.full(50, 0.02), Scaling())})
    made = reduce_record(record, Feed())
    assert made.travel == {}
    assert set(made.volts) == {Role.GROUND}


@pytest.mark.parametrize("size", [1, 9, 10, 11, 4097])
def test_every_sample_has_a_cell_and_the_last_cell_repeats_the_last_sample(size: int) -> None:
    samples = np.arange(size, dtype=np.float64) / 100.0
    made = reduce_record(make_record("001", 1.0 / FAST_HZ, {Role.SIGNAL: (samples, Scaling())}), Feed())
    assert len(made) == -(-size // made.samples_per_cell)
    assert made.volts[Role.SIGNAL].maximum[-1] == np.float32(samples[-1])
    assert made.volts[Role.SIGNAL].minimum[-1] == np.float32(samples[(len(made) - 1) * made.samples_per_cell])


@pytest.mark.parametrize(
    ("rate_hz", "seconds", "cell_s"),
    [(500.0, 10.0, 0.002), (2_000.0, 10.0, 0.0005), (50_000.0, 10.0, 0.0005), (10_000.0, 7200.0, 0.01)],
)
def test_a_cell_is_half_a_millisecond_or_a_sample_and_longer_in_long_records(
    rate_hz: float, seconds: float, cell_s: float
) -> None:
    raw = np.lib.stride_tricks.as_strided(np.zeros(1, np.int16), (int(seconds * rate_hz),), (0,))
    record = make_record("001", 1.0 / rate_hz, {Role.SIGNAL: (raw, Scaling())})
    assert samples_per_cell(record) / rate_hz == pytest.approx(cell_s)


def test_time_of_a_cell_is_its_middle_in_the_records_own_time() -> None:
    record = make_record("001", 0.0005, {Role.SIGNAL: (np.zeros(4), Scaling())}, first_sample_s=2.0)
    np.testing.assert_allclose(
        reduce_record(record, Feed()).time_s, [2.00025, 2.00075, 2.00125, 2.00175], rtol=1e-12
    )


def _long() -> Record:
    return make_record("001", 0.0005, {Role.SIGNAL: (np.zeros(200_000), Scaling())})


def test_progress_rises_to_one() -> None:
    heard: list[float] = []
    reduce_record(_long(), Feed(), tick=heard.append)
    assert heard == sorted(heard)
    assert heard[-1] == 1.0
    assert len(heard) >= 3


def test_a_stop_ends_the_pass_at_once() -> None:
    calls = 0

    def stop(done: float) -> None:
        nonlocal calls
        calls += 1
        raise Cancelled

    with pytest.raises(Cancelled):
        reduce_record(_long(), Feed(), tick=stop)
    assert calls == 1


def test_the_share_of_the_feed_is_the_same_in_counts_and_in_volts() -> None:
    record = record_of(strokes(1), reference_v=5.0, ground_v=0.0)
    channels = {
        item.role: (np.rint(item.volts() / 0.0005).astype(np.int16), Scaling(0.0005))
        for item in record.channels
        if item.role is not None
    }
    in_counts: RecordCells = reduce_record(make_record("001", 0.0005, channels), Feed())
    in_volts = reduce_record(record, Feed())
    np.testing.assert_allclose(
        in_counts.travel[Role.SIGNAL].mean, in_volts.travel[Role.SIGNAL].mean, atol=0.011
    )
    assert in_volts.step_percent[Role.SIGNAL] == 0.0  # the step of float samples is unknown
