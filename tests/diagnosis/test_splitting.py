"""A record of one probe that went from wire to wire is split into what it was held to."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import ArraySource, Record, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.splitting import split_by_wire
from analysis.intervals import Interval
from analysis.signals.cells import Feed, reduce_record
from tests.diagnosis.examples import RATE_HZ, channel, sweep, worn
from tests.signals.examples import Floats

BAND = Interval(42.0, 48.0)
FILL = -32_768


def _air(seconds: float) -> Floats:
    """A probe in the air: hum of 50 Hz, some tens of millivolts."""
    time = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    return np.asarray(0.06 * np.sin(2 * np.pi * 50.0 * time))


def _held(volts: float, seconds: float) -> Floats:
    return np.full(round(seconds * RATE_HZ), volts)


def _signal(*, bad: bool) -> Floats:
    path = sweep(6)
    return path / 100.0 * 5.0 * (1.0 - (worn(path, BAND) if bad else 0.0))


def _record(*volts: Floats) -> Record:
    return make_record("001", 1.0 / RATE_HZ, [channel(Role.SIGNAL, np.concatenate(volts))])


def _wire_to_wire(*, bad: bool = False, reference_v: float = 5.0, ground_v: float = 0.012) -> Record:
    return _record(
        _air(0.6), _held(ground_v, 1.5), _air(0.5), _held(reference_v, 1.5), _air(0.5), _signal(bad=bad)
    )


def _split(record: Record) -> tuple[Record, ...]:
    cells = reduce_record(record, Feed())
    return split_by_wire(record, cells.volts[Role.SIGNAL], cells.cell_s)


def test_air_ground_reference_and_sweep_are_told_apart() -> None:
    spans = _split(_wire_to_wire())
    assert [(item.step, item.channels[0].role) for item in spans] == [
        (Step.GROUND, Role.GROUND),
        (Step.REFERENCE, Role.REFERENCE),
        (Step.SWEEP, Role.SIGNAL),
    ]
    ground, reference, swept = spans
    assert np.median(ground.channels[0].volts()) == pytest.approx(0.012, abs=0.01)
    assert np.abs(reference.channels[0].volts() - 5.0).max() < 0.02
    assert 2.6 <= reference.first_sample_s < reference.first_sample_s + reference.duration_s <= 4.1
    assert swept.first_sample_s == pytest.approx(4.6, abs=0.25)
    assert len(swept) >= len(_signal(bad=False)) - 0.3 * RATE_HZ


@pytest.mark.parametrize("hum_v", [0.03, 0.045, 0.06, 0.09])
def test_the_air_before_and_after_the_ground_is_left_out_of_its_span(hum_v: float) -> None:
    """A faint hum swings about nought, as near it as the ground is: it is still no wire."""
    hum = hum_v / 0.06
    record = _record(
        hum * _air(0.8), _held(0.012, 1.5), hum * _air(0.6), _held(5.0, 1.5), _air(0.5), _signal(bad=False)
    )
    ground = _split(record)[0]
    assert ground.step is Step.GROUND
    assert 0.8 <= ground.first_sample_s < ground.first_sample_s + ground.duration_s <= 2.3
    assert ground.duration_s >= 0.9
    assert np.ptp(ground.channels[0].volts()) < 0.03


def test_spans_follow_each_other_and_keep_the_records_name() -> None:
    spans = _split(_wire_to_wire())
    assert {item.name for item in spans} == {"001"}
    ends = [item.first_sample_s + item.duration_s for item in spans]
    assert all(end <= other.first_sample_s for end, other in zip(ends[:-1], spans[1:], strict=True))


@pytest.mark.parametrize(
    "volts",
    [
        (_signal(bad=False),),
        (_signal(bad=True),),
        (_held(5.0, 3.0),),
        (_held(0.01, 2.0), _signal(bad=False)),
        (_air(2.0),),
    ],
)
def test_a_record_that_begins_on_no_feed_is_left_whole(volts: tuple[Floats, ...]) -> None:
    record = _record(*volts)
    assert _split(record) == (record,)


def test_without_a_ground_the_feed_and_the_sweep_remain() -> None:
    spans = _split(_record(_air(0.5), _held(5.0, 1.5), _air(0.5), _signal(bad=False)))
    assert [item.step for item in spans] == [Step.REFERENCE, Step.SWEEP]


@pytest.mark.parametrize("reference_v", [4.8, 5.0, 5.2])
def test_the_travel_is_reckoned_from_the_feed_that_was_probed(reference_v: float) -> None:
    record = _record(
        _air(0.5),
        _held(0.01, 1.5),
        _air(0.5),
        _held(reference_v, 1.5),
        _air(0.5),
        _signal(bad=True) * reference_v / 5.0,
    )
    found = examine(make_capture([record]))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.bands[0].travel.start == pytest.approx(BAND.start, abs=1.0)
    assert found.bands[0].travel.stop == pytest.approx(BAND.stop, abs=1.0)


def test_the_findings_say_that_the_feed_was_not_watched_during_the_sweep() -> None:
    evidence = {item.code: item for item in examine(make_capture([_wire_to_wire(bad=True)])).evidence}
    for code in ("ground_good", "reference_good"):
        assert evidence[code].state.value == "proved"
        assert "not watched during the sweep" in evidence[code].text


def test_a_lifted_ground_is_read_from_its_span() -> None:
    found = examine(make_capture([_wire_to_wire(ground_v=0.5)]))
    assert found.verdict.code is VerdictCode.GROUND_FAULT
    (drop,) = (item for item in found.checks if item.code == "ground_drop")
    assert drop.value == pytest.approx(0.5, abs=0.01)


@pytest.mark.parametrize("open_s", [0.002, 0.01, 0.03])
def test_an_arm_at_rest_whose_contact_opens_is_no_feed(open_s: float) -> None:
    """A rest high on the track, left by openings and a stroke, is still the signal."""
    rest = _held(4.2, 1.0)
    for first in (0.3, 0.7, 0.95):
        start = round(first * RATE_HZ)
        rest[start : start + max(1, round(open_s * RATE_HZ))] = 0.0
    assert len(_split(_record(rest, _signal(bad=True)))) == 1


@pytest.mark.parametrize("seconds", [4.0, 10.0, 30.0])
def test_a_slow_sweep_is_no_plateau(seconds: float) -> None:
    """Stretches that creep look steady for a twentieth of a second; openings then look like a probe moved."""
    slow = np.linspace(0.5, 4.5, round(seconds * RATE_HZ))
    bad = (slow > 2.0) & (slow < 2.2) & (np.arange(len(slow)) // 8 % 2 == 0)
    assert len(_split(_record(np.where(bad, 5.0, slow), _signal(bad=True)))) == 1


def test_the_air_after_the_sweep_is_no_slip() -> None:
    record = _record(_held(0.012, 1.5), _air(0.5), _held(5.0, 1.5), _air(0.5), _signal(bad=True), _air(0.8))
    found = examine(make_capture([record]))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    swept = _split(record)[-1]
    assert swept.duration_s == pytest.approx(len(sweep(6)) / RATE_HZ, abs=0.3)


def test_a_probe_that_slips_off_early_is_told() -> None:
    half = _signal(bad=False)[: round(3.0 * RATE_HZ)]
    record = _record(_held(0.012, 1.5), _air(0.5), _held(5.0, 1.5), _air(0.5), half, _air(6.0))
    assert examine(make_capture([record])).verdict.code is VerdictCode.MEASUREMENT_PROBLEM


def test_a_clock_gap_while_a_wire_is_held_does_not_hide_the_wire() -> None:
    whole = _wire_to_wire()
    (probe,) = whole.channels
    assert isinstance(probe.source, ArraySource)
    counts = np.array(probe.source.samples)
    counts[round(3.4 * RATE_HZ) :][: round(0.05 * RATE_HZ)] = FILL
    gappy = replace(probe, source=ArraySource(counts), scaling=replace(probe.scaling, fill_value=float(FILL)))
    spans = _split(replace(whole, channels=(gappy,)))
    assert [item.channels[0].role for item in spans] == [Role.GROUND, Role.REFERENCE, Role.SIGNAL]


@pytest.mark.parametrize("late_s", [0.000, 0.011, 0.024, 0.037, 0.049])
def test_putting_the_probe_on_is_no_part_of_the_signal(late_s: float) -> None:
    before = [_air(0.6), _held(0.012, 1.5), _air(0.5), _held(5.0, 1.5), _air(0.5 + late_s)]
    bounced = np.resize([0.0, 2.0], round(0.02 * RATE_HZ))
    touched_s = sum(len(item) for item in before) / RATE_HZ
    swept = _split(_record(*before, bounced, _held(0.5, 0.5), _signal(bad=False)))[-1]
    assert touched_s + 0.02 <= swept.first_sample_s <= touched_s + 0.2
