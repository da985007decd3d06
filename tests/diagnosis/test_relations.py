"""What must not change when a capture changes in ways that say nothing of the track."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import settings as rules
from hypothesis import strategies as st

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Band, Findings, VerdictCode
from analysis.intervals import Interval
from tests.diagnosis.examples import (
    RATE_HZ,
    STEP_V,
    Meter,
    Wires,
    channel,
    record,
    standing,
    sweep,
    visit,
    worn,
)
from tests.signals.examples import Floats

BAND = Interval(42.0, 48.0)
FEW = rules(max_examples=6)
FINE = Meter(step_v=0.0005, noise_v=0.002)


def _main(found: Findings) -> Band:
    return max(found.bands, key=lambda band: band.confidence)


def _same_band(found: Findings, travel: Interval = BAND, *, within: float = 0.75) -> None:
    assert found.verdict.code is VerdictCode.WORN_TRACK
    band = _main(found)
    assert band.travel.start == pytest.approx(travel.start, abs=within)
    assert band.travel.stop == pytest.approx(travel.stop, abs=within)


def _changed(capture: Capture, change: Callable[[Floats], Floats]) -> Capture:
    """The same capture with the volts of every channel changed, in counts of the same recorder."""

    def of_channel(item: Channel) -> Channel:
        counts = np.clip(np.rint(change(item.volts()) / item.step_v), -32767, 32767).astype(np.int16)
        scaling = replace(item.scaling, valid_min=-32768.0, valid_max=32767.0)
        return replace(item, source=ArraySource(counts), scaling=scaling)

    def of_record(item: Record) -> Record:
        return replace(item, channels=tuple(of_channel(made) for made in item.channels))

    return make_capture([of_record(item) for item in capture.records])


@given(start=st.floats(15.0, 78.0), width=st.floats(1.5, 9.0))
@rules(max_examples=8)
def test_a_band_is_found_wherever_it_lies_and_however_wide_it_is(start: float, width: float) -> None:
    _same_band(examine(visit(bands=[Interval(start, start + width)])), Interval(start, start + width))


@given(reference_v=st.floats(4.82, 5.18))
@FEW
def test_the_band_does_not_move_with_the_feed(reference_v: float) -> None:
    found = examine(visit(bands=[BAND], wires=Wires(reference_v=reference_v)))
    _same_band(found)
    volts = _main(found).volts
    assert volts.start == pytest.approx(_main(found).travel.start / 100.0 * (reference_v - 0.012), abs=0.01)


def test_a_feed_of_four_and_a_half_volts_leaves_travel_and_bands_alone() -> None:
    usual = visit(bands=[BAND], meter=FINE)
    low = _changed(usual, lambda volts: 0.9 * volts)
    one, other = examine(usual), examine(low)
    assert _main(other).travel.start == pytest.approx(_main(one).travel.start, abs=0.25)
    assert _main(other).travel.stop == pytest.approx(_main(one).travel.stop, abs=0.25)
    smooth = [_main(found).output_smoothness_percent for found in (one, other)]
    assert smooth[1] == pytest.approx(smooth[0], rel=0.02)  # a share of the applied voltage (Bourns)


def test_a_worn_track_on_a_low_reference_is_called_by_one_of_its_two_faults() -> None:
    found = examine(visit(bands=[BAND], wires=Wires(reference_v=4.5)))
    assert found.verdict.code in (VerdictCode.REFERENCE_FAULT, VerdictCode.WORN_TRACK)
    assert found.verdict.confidence >= 0.5


@given(offset_v=st.floats(-0.06, 0.06))
@FEW
def test_an_offset_on_all_channels_moves_no_band(offset_v: float) -> None:
    _same_band(examine(visit(bands=[BAND], wires=Wires(common_v=offset_v))))


def _backwards(capture: Capture) -> Capture:
    def of_channel(item: Channel) -> Channel:
        return replace(item, source=ArraySource(item.source.read(0, len(item))[::-1].copy()))

    return make_capture(
        [
            replace(item, channels=tuple(of_channel(made) for made in item.channels))
            for item in capture.records
        ]
    )


@given(start=st.floats(20.0, 70.0), width=st.floats(2.0, 8.0))
@FEW
def test_time_run_backwards_shows_the_same_band(start: float, width: float) -> None:
    capture = visit(bands=[Interval(start, start + width)])
    one, other = examine(capture), examine(_backwards(capture))
    assert other.verdict.code is one.verdict.code
    assert _main(other).travel.start == pytest.approx(_main(one).travel.start, abs=0.5)
    assert _main(other).travel.stop == pytest.approx(_main(one).travel.stop, abs=0.5)
    # Chatter at an edge may make one stroke look like three, or leave one out, the other way round in time.
    assert abs(_main(other).passes - _main(one).passes) <= 2
    assert abs(_main(other).noisy_passes - _main(one).noisy_passes) <= 2


@given(start=st.floats(15.0, 70.0), width=st.floats(2.0, 8.0))
@FEW
def test_a_mirrored_mounting_shows_the_mirrored_band(start: float, width: float) -> None:
    # The other side of an axle: reference and ground change places on the track, so 100 - x is read for x.
    path = sweep(8)
    opened = worn(path, Interval(start, start + width), seed=3)
    one, other = (
        make_capture([*standing(), record("004", Step.SWEEP, turned, opened=opened, seed=6)])
        for turned in (path, 100.0 - path)
    )
    _same_band(examine(one), Interval(start, start + width))
    _same_band(examine(other), Interval(100.0 - start - width, 100.0 - start))


@pytest.mark.parametrize("rate_hz", [1_000.0, 2_000.0, 5_000.0, 20_000.0])
def test_the_sampling_rate_moves_no_band(rate_hz: float) -> None:
    # The chatter stands still in time, whoever samples it: openings of two milliseconds.
    fine = sweep(8)
    opened = worn(fine, BAND, seed=3)
    time_s = np.arange(round(len(fine) / RATE_HZ * rate_hz)) / rate_hz
    index = np.minimum((time_s * RATE_HZ).astype(int), len(fine) - 1)
    travel = np.interp(time_s, np.arange(len(fine)) / RATE_HZ, fine)
    volts = {
        Role.SIGNAL: travel / 20.0 * (1.0 - opened[index]),
        Role.REFERENCE: np.full(len(time_s), 5.0),
        Role.GROUND: np.full(len(time_s), 0.01),
    }
    made = make_record(
        "004", 1.0 / rate_hz, [channel(role, item) for role, item in volts.items()], step=Step.SWEEP
    )
    _same_band(examine(make_capture([made])))


def test_more_noise_never_lowers_the_floor_and_never_raises_the_confidence_of_a_sound_track() -> None:
    floors = []
    for noise_v in (0.0005, 0.002, 0.008, 0.03):
        found = examine(visit(travel=sweep(6), meter=Meter(noise_v=noise_v)))
        floors.append(found.surveys[0].floor_percent)
        assert found.verdict.code is not VerdictCode.WORN_TRACK
    assert floors == sorted(floors)


def test_a_second_record_of_the_same_track_keeps_the_band_and_adds_its_crossings() -> None:
    path = sweep(6)
    first, second = (
        record(name, Step.SWEEP, path, opened=worn(path, BAND, seed=seed), seed=seed)
        for name, seed in (("004", 1), ("005", 2))
    )
    alone = examine(make_capture([*standing(), first]))
    both = examine(make_capture([*standing(), first, second]))
    _same_band(alone)
    _same_band(both)
    assert _main(both).passes == 2 * _main(alone).passes == 12
    assert _main(both).confidence >= _main(alone).confidence - 0.01


def test_two_records_joined_into_one_show_the_same_band() -> None:
    path = sweep(6)
    apart = [
        record(name, Step.SWEEP, path, opened=worn(path, BAND, seed=seed), seed=seed)
        for name, seed in (("004", 1), ("005", 2))
    ]

    def joined(index: int) -> Channel:
        one, other = (item.channels[index] for item in apart)
        raw = np.concatenate([one.source.read(0, len(one)), other.source.read(0, len(other))])
        return replace(one, source=ArraySource(raw))

    whole = replace(apart[0], channels=tuple(joined(index) for index in range(3)))
    one, other = (examine(make_capture([*standing(), *items])) for items in (apart, [whole]))
    assert _main(other).travel.start == pytest.approx(_main(one).travel.start, abs=0.5)
    assert _main(other).travel.stop == pytest.approx(_main(one).travel.stop, abs=0.5)
    assert _main(other).passes == _main(one).passes


def test_the_order_of_the_channels_in_the_file_changes_nothing() -> None:
    capture = visit(bands=[BAND])
    turned = replace(
        capture,
        records=tuple(replace(item, channels=item.channels[::-1]) for item in capture.records),
    )
    assert examine(turned).bands == examine(capture).bands


def test_the_names_of_the_records_change_nothing_but_names() -> None:
    capture = visit(bands=[BAND])
    renamed = replace(capture, records=tuple(replace(item, name=f"9{item.name}") for item in capture.records))
    one, other = examine(capture), examine(renamed)
    assert [band.travel for band in other.bands] == [band.travel for band in one.bands]
    assert other.verdict == one.verdict


@pytest.mark.parametrize("seed", range(4))
def test_a_sound_track_has_no_likely_band_whatever_the_noise_draws(seed: int) -> None:
    path = sweep(8, seconds=0.8)
    found = examine(make_capture([*standing(), record("004", Step.SWEEP, path, seed=100 + seed)]))
    assert all(band.confidence < 0.5 for band in found.bands)
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND


def test_isolated_spikes_anywhere_are_no_band() -> None:
    path = sweep(8)
    made = record("004", Step.SWEEP, path)
    rng = np.random.default_rng(4)
    raw = made.channel(Role.SIGNAL)
    assert raw is not None
    counts = raw.source.read(0, len(raw)).copy()
    counts[rng.integers(0, len(counts), 12)] += np.int16(0.3 / STEP_V)
    hit = replace(raw, source=ArraySource(counts))
    spiked = replace(made, channels=tuple(hit if item is raw else item for item in made.channels))
    found = examine(make_capture([*standing(), spiked]))
    assert all(band.confidence < 0.5 for band in found.bands)
    assert found.verdict.code is not VerdictCode.WORN_TRACK
