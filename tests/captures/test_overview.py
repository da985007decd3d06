from __future__ import annotations

import time
from dataclasses import replace
from pathlib import Path
from typing import Any

import h5py
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from analysis.captures import layout
from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Channel, Role, Scaling
from analysis.captures.overview import compute_overview, envelope, with_overviews
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.errors import Cancelled

NO_FILL = Scaling(0.001, 0.1)


def channel_of(samples: NDArray[Any], scaling: Scaling = NO_FILL) -> Channel:
    plain = make_channel(Role.SIGNAL, samples, scaling)
    return replace(plain, overview=compute_overview(plain))


def noise(size: int, seed: int = 3) -> NDArray[np.int16]:
    return np.random.default_rng(seed).integers(-30_000, 30_000, size).astype(np.int16)


@pytest.mark.parametrize("scaling", [NO_FILL, Scaling(-0.001, 5.0), Scaling(0.001, fill_value=7)])
def test_each_level_holds_the_extremes_of_its_blocks(scaling: Scaling) -> None:
    raw = noise(100_001)
    raw[::3] = 7
    for level in channel_of(raw, scaling).overview:
        for index in (0, len(level.minimum) // 2, len(level.minimum) - 1):
            block = raw[index * level.block : (index + 1) * level.block]
            block = block[~scaling.missing(block)]
            assert level.minimum[index] == block.min()
            assert level.maximum[index] == block.max()
        assert len(level.minimum) == -(-len(raw) // level.block)


def test_levels_begin_at_256_samples_and_grow_by_16() -> None:
    assert [item.block for item in channel_of(noise(300_000)).overview] == [256, 4096, 65536]


@settings(max_examples=80, deadline=None)
@given(
    start=st.integers(0, 199_999),
    length=st.integers(1, 200_000),
    columns=st.integers(1, 900),
    negative=st.booleans(),
)
def test_no_extreme_is_lost_and_none_is_invented(
    start: int, length: int, columns: int, negative: bool
) -> None:
    channel = channel_of(noise(200_000), Scaling(-0.001 if negative else 0.001, 0.1))
    stop = min(start + length, 200_000)
    drawn = envelope(channel, start, stop, columns)
    voltage_v = channel.volts()
    level = max(item.block for item in channel.overview)
    assert drawn.edges[0] == start
    assert drawn.edges[-1] == stop
    assert len(drawn.minimum_v) == min(columns, stop - start)
    assert drawn.minimum_v.min() <= voltage_v[start:stop].min()
    assert drawn.maximum_v.max() >= voltage_v[start:stop].max()
    for column in (0, len(drawn.minimum_v) // 2, len(drawn.minimum_v) - 1):
        first, last = drawn.edges[column], drawn.edges[column + 1]
        wide = voltage_v[max(first - level, 0) : last + level]
        assert wide.min() <= drawn.minimum_v[column]
        assert drawn.maximum_v[column] <= wide.max()


def test_below_256_samples_a_column_the_envelope_is_exact() -> None:
    channel = channel_of(noise(200_000))
    drawn = envelope(channel, 1_000, 101_000, 400)
    columns = channel.volts(1_000, 101_000).reshape(400, 250)
    np.testing.assert_array_equal(drawn.minimum_v, columns.min(axis=1))
    np.testing.assert_array_equal(drawn.maximum_v, columns.max(axis=1))


@pytest.mark.parametrize("samples_a_column", [257, 300, 700, 1023, 1024, 3000])
def test_a_column_of_blocks_holds_what_lies_within_and_nothing_from_half_a_block_beyond(
    samples_a_column: int,
) -> None:
    channel, count = channel_of(noise(2_000_000)), 500
    start = 123_457
    drawn = envelope(channel, start, start + count * samples_a_column, count)
    voltage_v = channel.volts()
    for column in range(1, count - 1):
        first, last = drawn.edges[column], drawn.edges[column + 1]
        within, beyond = voltage_v[first + 128 : last - 128], voltage_v[first - 128 : last + 128]
        if within.size:
            assert drawn.minimum_v[column] <= within.min()
            assert drawn.maximum_v[column] >= within.max()
        assert drawn.minimum_v[column] >= beyond.min()
        assert drawn.maximum_v[column] <= beyond.max()


@pytest.mark.parametrize("samples_a_column", [40, 257, 700, 1023, 5000])
def test_a_spike_of_one_sample_is_drawn_in_one_column(samples_a_column: int) -> None:
    rng = np.random.default_rng(8)
    raw = np.zeros(3_000_000, dtype=np.int16)
    raw[rng.choice(np.arange(1_000, 2_999_000, 20_000), 40, replace=False) + rng.integers(0, 256, 40)] = 5000
    channel = channel_of(raw)
    for start in rng.integers(0, 200_000, 20).tolist():
        stop = min(start + 500 * samples_a_column, len(raw))
        count = (stop - start) // samples_a_column
        spikes = np.flatnonzero(raw[start + 256 : stop - 256])
        drawn = envelope(channel, start, stop, count)
        inner = drawn.maximum_v[max(256 // samples_a_column + 1, 1) : -max(256 // samples_a_column + 1, 1)]
        assert abs(int((inner > 5.0).sum()) - len(spikes)) <= 2


def test_one_spike_of_one_sample_shows_at_every_zoom() -> None:
    raw = np.zeros(3_000_000, dtype=np.int16)
    raw[1_234_567] = 5000
    channel = channel_of(raw)
    for width in (100, 10_000, 1_000_000, 2_900_000):
        drawn = envelope(channel, 1_234_567 - width // 3, 1_234_567 + width // 3, 50)
        assert drawn.maximum_v.max() == pytest.approx(5.1)


def test_missing_samples_leave_a_gap_and_touch_no_extreme() -> None:
    raw = noise(400_000)
    raw[100_000:300_000] = -32768
    channel = channel_of(raw, Scaling(0.001, fill_value=-32768))
    for count in (40, 1000):
        drawn = envelope(channel, 0, 400_000, count)
        centre = drawn.minimum_v[count * 2 // 5 : count * 3 // 5]
        assert np.isnan(centre).all()
        assert np.nanmin(drawn.minimum_v) > -31.0
    real = raw.astype(np.float32)
    real[100_000:300_000] = np.nan
    drawn = envelope(channel_of(real, Scaling()), 0, 400_000, 40)
    assert np.isnan(drawn.maximum_v).sum() in (18, 19, 20)


def test_fewer_samples_than_columns_give_one_column_a_sample() -> None:
    drawn = envelope(channel_of(noise(1000)), 10, 15, 100)
    assert drawn.edges.tolist() == [10, 11, 12, 13, 14, 15]


def test_an_empty_stretch_gives_no_column() -> None:
    drawn = envelope(channel_of(noise(1000)), 1000, 2000, 100)
    assert len(drawn.minimum_v) == len(drawn.maximum_v) == 0


def test_no_columns_are_refused_with_the_rule() -> None:
    with pytest.raises(ValueError, match="columns must be positive, got 0"):
        envelope(channel_of(noise(1000)), 0, 10, 0)


def test_what_is_stored_is_what_is_computed(tmp_path: Path) -> None:
    raw = noise(300_000)
    raw[5:500] = -32768
    scaling = Scaling(0.001, fill_value=-32768)
    write_capture(make_capture([make_record("001", 1e-4, {Role.SIGNAL: (raw, scaling)})]), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        stored = opened.capture.records[0].channels[0].overview
    for found, meant in zip(stored, channel_of(raw, scaling).overview, strict=True):
        assert found.block == meant.block
        np.testing.assert_array_equal(found.minimum, meant.minimum)
        np.testing.assert_array_equal(found.maximum, meant.maximum)


@pytest.mark.parametrize("harm", ["block", "length", "type"])
def test_a_stored_overview_that_does_not_fit_is_computed_anew(tmp_path: Path, harm: str) -> None:
    capture = make_capture([make_record("001", 1e-4, {Role.SIGNAL: (noise(100_000), NO_FILL)})])
    write_capture(capture, tmp_path / "a.h5")
    with h5py.File(tmp_path / "a.h5", "a") as file:
        levels = file["records/001/overview/signal"]
        if harm == "block":
            levels["0"].attrs["block"] = 0
        else:
            del levels["0"]
            levels["0"] = np.zeros((5, 2), dtype="i2") if harm == "length" else np.zeros((391, 2))
            levels["0"].attrs["block"] = 256
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].channels[0].overview == ()
        again = opened.completed().capture
    assert again.records[0].channels[0].overview[0].block == 256
    assert len(again.sha256) == 64


def test_overviews_are_computed_where_they_are_lacking_and_nowhere_else() -> None:
    long, short = noise(layout.OVERVIEW_MIN_SAMPLES), noise(100)
    capture = make_capture(
        [
            make_record("001", 1.0, {Role.SIGNAL: (long, NO_FILL), Role.GROUND: (long, NO_FILL)}),
            make_record("002", 1.0, {Role.SIGNAL: (short, NO_FILL)}),
        ]
    )
    heard: list[float] = []
    complete = with_overviews(capture, heard.append)
    assert [bool(item.overview) for item in complete.records[0].channels] == [True, True]
    assert complete.records[1].channels[0].overview == ()
    assert heard == sorted(heard)
    assert heard[-1] == 1.0
    assert with_overviews(complete) is complete


def test_computing_an_overview_can_be_cancelled() -> None:
    def stop(done: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        compute_overview(make_channel(Role.SIGNAL, noise(100_000)), stop)


def test_drawing_takes_no_longer_for_a_hundred_times_the_samples() -> None:
    def seconds(size: int) -> float:
        channel = channel_of(np.tile(noise(100_000), size // 100_000))
        times = []
        for _ in range(7):
            begin = time.perf_counter()
            envelope(channel, size // 10, size - size // 10, 1000)
            times.append(time.perf_counter() - begin)
        return min(times)

    assert seconds(20_000_000) < 5.0 * seconds(2_000_000) + 0.002
