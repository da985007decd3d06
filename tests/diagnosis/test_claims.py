"""What a verdict may claim and what it must say instead, each on a capture made by hand."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, Result, State, VerdictCode
from analysis.intervals import Interval
from tests.diagnosis.examples import (
    RATE_HZ,
    THREE,
    Meter,
    Wires,
    channel,
    record,
    standing,
    sweep,
    visit,
    worn,
)
from tests.signals.examples import Floats, noise, rest

BAND = Interval(40.0, 44.0)
ONE = (Role.SIGNAL,)


def _state(found: Findings, code: str) -> State | None:
    return next((item.state for item in found.evidence if item.code == code), None)


def _text(found: Findings, code: str) -> str:
    return next(item.text for item in found.evidence if item.code == code)


def _record(volts: dict[Role, Floats], *, rate_hz: float = RATE_HZ) -> Record:
    channels = [channel(role, item, seed=index) for index, (role, item) in enumerate(volts.items())]
    return make_record("001", 1.0 / rate_hz, channels, step=Step.SWEEP)


# -- one probe ------------------------------------------------------------------------------------


def _one_probe() -> Capture:
    still = rest(50.0, 2.0, RATE_HZ)
    sweeps = [sweep(8, seconds=1.5), sweep(8, seconds=0.6)]
    hold = rest(42.0, 4.0, RATE_HZ)
    return make_capture(
        [
            record("001", Step.GROUND, still, roles=(Role.GROUND,)),
            record("002", Step.REFERENCE, still, roles=(Role.REFERENCE,)),
            record("003", Step.WIGGLE, still, roles=ONE),
            *(
                record(f"00{4 + n}", Step.SWEEP, path, roles=ONE, opened=worn(path, BAND, seed=5 + n), seed=n)
                for n, path in enumerate(sweeps)
            ),
            record("006", Step.HOLD, hold, roles=ONE, opened=worn(hold, BAND, seed=9)),
        ]
    )


def test_one_probe_moved_from_wire_to_wire_proves_a_worn_track_and_says_what_it_did_not_watch() -> None:
    found = examine(_one_probe())
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.verdict.confidence > 0.95
    for code in ("place_locked", "both_directions", "not_the_loom", "wiring_quiet"):
        assert _state(found, code) is State.PROVED
    for code in ("ground_good", "reference_good"):
        assert "was not watched during the sweep" in _text(found, code)


# -- no fault found -------------------------------------------------------------------------------


@pytest.mark.parametrize(("rate_hz", "cleared"), [(50.0, False), (100.0, False), (500.0, True)])
def test_no_fault_found_is_refused_where_the_sampling_is_too_slow(rate_hz: float, cleared: bool) -> None:
    path = sweep(8)[:: round(RATE_HZ / rate_hz)]
    volts = {Role.SIGNAL: path / 20.0, Role.REFERENCE: path * 0 + 5.0, Role.GROUND: path * 0 + 0.01}
    found = examine(make_capture([_record(volts, rate_hz=rate_hz)]))
    assert (found.verdict.code is VerdictCode.NO_FAULT_FOUND) is cleared
    assert (_state(found, "sampled_fast_enough") is State.REFUTED) is not cleared
    if not cleared:
        assert found.verdict.code is VerdictCode.INCONCLUSIVE
        assert any("Record faster" in line for line in found.advice)


def test_no_fault_found_is_refused_where_a_required_track_is_missing_and_that_is_surely_so() -> None:
    path = sweep(6, low=18.0)
    found = examine(visit(travel=path, standing_place=18.0, attributes={"profile": "pedal"}))
    assert _state(found, "all_tracks_recorded") is State.REFUTED
    assert found.verdict.code is VerdictCode.INCONCLUSIVE
    # A sound sensor of which half was not recorded is rightly left open: nothing else is likely here.
    assert found.verdict.confidence > 0.9
    assert "Record the second track in the same sweeps." in found.advice


def test_two_tracks_that_read_the_same_where_one_should_read_half_are_no_sound_pair() -> None:
    # Shorted together: tracks too equal. 2 to 1: Mazda CX-30 2019, APP sensor inspection.
    path = sweep(6, low=18.0)
    volts = {
        Role.SIGNAL: path / 20.0,
        Role.SECOND_SIGNAL: path / 20.0,
        Role.REFERENCE: path * 0 + 5.0,
        Role.GROUND: path * 0 + 0.01,
    }
    found = examine(make_capture([_record(volts)], attributes={"profile": "pedal"}))
    assert next(item for item in found.checks if item.code == "track_agreement").result is Result.FAIL
    assert found.verdict.code is VerdictCode.INCONCLUSIVE
    assert found.verdict.summary.startswith("The two tracks disagree")


# -- what is no fault -----------------------------------------------------------------------------


def test_a_track_of_narrow_range_that_saturates_is_not_broken() -> None:
    # Throttle of two ranges, the narrow one at 4.8-5.0 V when open: Mazda RX-7 1994, specifications.
    path = np.minimum(sweep(8, low=15.0, high=130.0), 97.0)
    found = examine(visit(travel=path, standing_place=20.0))
    assert found.verdict.code in (VerdictCode.NO_FAULT_FOUND, VerdictCode.OUT_OF_RANGE)
    assert not [band for band in found.bands if band.confidence >= 0.1]


@pytest.mark.parametrize(("depth_v", "code"), [(0.005, "no_fault_found"), (0.025, "worn_track")])
def test_grain_of_5_mv_at_one_place_is_what_a_new_track_may_have(depth_v: float, code: str) -> None:
    # 0.1 % of the applied voltage: Bourns, training pages, "Output Smoothness"; five times that is not.
    fine = Meter(noise_v=3e-4, step_v=5e-4)
    path = sweep(8)
    grain = np.random.default_rng(0).choice([0.0, 100.0 * depth_v / 5.0], len(path))
    travel = path - np.where((path >= 50.0) & (path < 51.0), grain, 0.0)
    swept = record("004", Step.SWEEP, travel, meter=fine)
    assert examine(make_capture([*standing(meter=fine), swept])).verdict.code.value == code


def test_stops_that_leave_2_percent_at_either_end_are_no_fault_of_ground_or_reference() -> None:
    # End resistance of up to 2 % of the total: MIL-PRF-39035E, 3.11.2.
    found = examine(visit(travel=sweep(10, low=2.0, high=98.0, seconds=0.6, pause_s=0.05)))
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    assert all(_state(found, code) is State.PROVED for code in ("ground_good", "reference_good"))


# -- interference and wrong wires -----------------------------------------------------------------


def _sparked(every: int, size_v: float = 0.5) -> tuple[Findings, int]:
    path = sweep(6)
    common_v = noise(len(path), 0.001)
    common_v[every::every] += size_v
    swept = record("004", Step.SWEEP, path, wires=Wires(common_v=common_v))
    return examine(make_capture([*standing(), swept])), len(common_v[every::every])


def test_interference_on_all_probes_is_taken_out_and_reported() -> None:
    found, count = _sparked(997)
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    text = _text(found, "interference")
    said = int(text.split()[1])
    assert 0.8 * count <= said <= count
    assert "0.5" in text
    assert not [event for event in found.events if event.roles == (Role.SIGNAL,) and abs(event.depth_v) > 0.1]


def test_without_interference_none_is_reported() -> None:
    assert _state(examine(visit(travel=sweep(2))), "interference") is None
    lifting = np.zeros(len(sweep(4)))
    lifting[2000:2400] = 0.6  # 0.2 s on ground alone: a bad contact
    swept = record("004", Step.SWEEP, sweep(4), wires=Wires(ground_v=0.012 + lifting))
    assert _state(examine(make_capture([*standing(), swept])), "interference") is None


@pytest.mark.parametrize(
    ("moving", "high", "words"),
    [
        (Role.REFERENCE, Role.SIGNAL, "a probe is on the wrong wire"),
        (Role.GROUND, Role.REFERENCE, "a probe is on the wrong wire"),
        (Role.SIGNAL, Role.GROUND, "their probes are exchanged"),
    ],
)
def test_probes_on_the_wrong_wires_are_told_by_what_they_read(moving: Role, high: Role, words: str) -> None:
    path = sweep(6)
    volts = dict.fromkeys(THREE, path * 0 + 0.012)
    volts[moving], volts[high] = path / 20.0, path * 0 + 5.0
    found = examine(make_capture([_record(volts)]))
    assert found.verdict.code is VerdictCode.MEASUREMENT_PROBLEM
    assert words in found.verdict.summary


def test_a_quick_look_is_no_sweep_and_no_measurement_of_a_wire() -> None:
    check = record("001", Step.CHECK, rest(50.0, 2.0, RATE_HZ))
    found = examine(make_capture([check, record("002", Step.SWEEP, sweep(8), seed=3)]))
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    assert [item.record for item in found.record_outcomes] == ["001", "002"]
    assert all(item.passes == 8 for item in found.coverage if Interval(20.0, 80.0).overlap(item.travel) > 0.5)
    assert _state(found, "rest_height_tested") is State.PROVED  # it shows where the arm rests
