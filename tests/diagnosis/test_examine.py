"""The door: every verdict can be reached, bad input is refused in one sentence, nothing is left to chance."""

from __future__ import annotations

import json
from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
from functools import partial

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.serialise import findings_object
from analysis.errors import Cancelled, CaptureError, ProfileError, WornbandError
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, Wires, bursts, record, sweep, visit, worn
from tests.signals.examples import Floats, rest

BAND = Interval(42.0, 48.0)


def _once() -> Capture:
    path = sweep(1)
    return make_capture([record("001", Step.SWEEP, path, opened=worn(path, BAND))])


def _at_its_end() -> Capture:
    return visit(
        attributes={"profile": "ride-height"},
        travel=sweep(6, low=1.5, high=60.0),
        standing_place=1.5,
        extra=[record("009", Step.HOLD, rest(1.5, 3.0, RATE_HZ))],
    )


def _unplugged() -> Capture:
    still = record("001", Step.SWEEP, sweep(4), attributes={"plugged": 0})
    return make_capture([still])


REACHED: dict[VerdictCode, Callable[[], Capture]] = {
    VerdictCode.WORN_TRACK: lambda: visit(bands=[BAND]),
    VerdictCode.SENSOR_OUTPUT_FAULT: lambda: visit(
        bands=[BAND], attributes={"profile": "ride-height-contactless"}
    ),
    VerdictCode.SIGNAL_WIRING: lambda: visit(opened=bursts(len(sweep(6)), seed=3)),
    VerdictCode.REFERENCE_FAULT: lambda: visit(wires=Wires(reference_v=4.3)),
    VerdictCode.GROUND_FAULT: lambda: visit(wires=Wires(ground_v=0.4)),
    VerdictCode.OUT_OF_RANGE: _at_its_end,
    VerdictCode.MEASUREMENT_PROBLEM: _unplugged,
    VerdictCode.NO_FAULT_FOUND: visit,
    VerdictCode.INCONCLUSIVE: _once,
}


def test_every_verdict_has_its_capture() -> None:
    assert set(REACHED) == set(VerdictCode)


@pytest.mark.parametrize("code", VerdictCode)
def test_every_verdict_is_reached(code: VerdictCode) -> None:
    found = examine(REACHED[code]())
    assert found.verdict.code is code
    assert 0.5 <= found.verdict.confidence <= 1.0
    assert found.verdict.summary.endswith(".")


@pytest.mark.parametrize("code", VerdictCode)
def test_findings_are_the_same_every_time_and_can_be_written_as_json(code: VerdictCode) -> None:
    one, other = (json.dumps(findings_object(examine(REACHED[code]())), allow_nan=False) for _ in range(2))
    assert one == other
    assert json.loads(one)["verdict"]["code"] == code.value


def test_a_dip_of_the_reference_for_a_fifth_of_the_time_is_never_called_sound() -> None:
    path = sweep(6)
    reference_v = np.full(len(path), 5.0)
    for first in range(1000, len(path), 2500):
        reference_v[first : first + 500] = 4.0
    still = visit().records[:3]
    swept = record("004", Step.SWEEP, path, wires=Wires(reference_v=reference_v))
    found = examine(make_capture([*still, swept]))
    assert found.verdict.code is VerdictCode.REFERENCE_FAULT


# -- bad input ------------------------------------------------------------------------------------


def _signal(
    samples: NDArray[np.float64],
    *,
    interval_s: float = 0.0005,
    step: Step | None = None,
    name: str = "001",
) -> Capture:
    return make_capture([make_record(name, interval_s, {Role.SIGNAL: (samples, Scaling())}, step=step)])


def _only(role: Role | None, size: int = 100) -> Capture:
    made = make_channel(role, np.full(size, 2.5), name="a")
    return make_capture([make_record("001", 0.001, [made])])


REFUSED: dict[str, Capture] = {
    "no records": make_capture([]),
    "no channel": make_capture([make_record("001", 0.001, [])]),
    "no role": _only(None),
    "no signal": _only(Role.REFERENCE),
    "no samples": _signal(np.empty(0)),
    "one sample": _signal(np.array([2.5])),
}


@pytest.mark.parametrize("name", REFUSED)
def test_a_capture_without_a_signal_is_refused_in_one_sentence(name: str) -> None:
    with pytest.raises(CaptureError, match="no record holds a signal channel") as refusal:
        examine(REFUSED[name])
    assert refusal.value.action


def _ramp(size: int) -> Floats:
    return np.linspace(0.5, 4.5, size)


def _holed(every: int) -> Floats:
    samples = np.full(5000, np.nan)
    samples[::every] = sweep(3)[:5000:every] / 20.0
    return samples


def _clipped() -> Capture:
    counts = np.full(4000, 2047, np.int16)
    made = make_channel(Role.SIGNAL, counts, Scaling(0.005, valid_min=-2048.0, valid_max=2047.0))
    return make_capture([make_record("001", 0.0005, [made], step=Step.SWEEP)])


def _lost(role: Role) -> Capture:
    path = sweep(2)
    made = record("001", Step.SWEEP, path)
    gone = make_channel(role, np.full(len(path), np.nan))
    kept = [gone if item.role is role else item for item in made.channels]
    return make_capture([replace(made, channels=tuple(kept))])


PLACED = (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT, VerdictCode.OUT_OF_RANGE)
POOR: dict[str, Callable[[], Capture]] = {
    **{f"{size} samples": partial(_signal, _ramp(size)) for size in (2, 3, 4, 5, 9, 40)},
    "all missing": lambda: _signal(np.full(5000, np.nan)),
    "all over-range": _clipped,
    "all alike": lambda: _signal(np.full(5000, 2.5)),
    "nought": lambda: _signal(np.zeros(5000)),
    "infinite": lambda: _signal(np.where(np.arange(5000) % 50 == 7, np.inf, 2.5)),
    "enormous": lambda: _signal(np.full(5000, 1e30)),
    "every second sample": lambda: _signal(_holed(2), step=Step.SWEEP),
    "every third sample": lambda: _signal(_holed(3), step=Step.SWEEP),
    "every hundredth sample": lambda: _signal(_holed(100), step=Step.SWEEP),
    "five scattered samples": lambda: _signal(_holed(1000), step=Step.SWEEP),
    "one sample in ten seconds": lambda: _signal(_ramp(50), interval_s=10.0),
    "a thousand million samples a second": lambda: _signal(_ramp(5000), interval_s=1e-9),
    "no reference reading": lambda: _lost(Role.REFERENCE),
    "no ground reading": lambda: _lost(Role.GROUND),
    "no signal reading": lambda: _lost(Role.SIGNAL),
    "reference and ground swapped": lambda: visit(wires=Wires(reference_v=0.0, ground_v=5.0)),
    "no feed": lambda: visit(wires=Wires(reference_v=2.0, ground_v=2.0)),
    "unplugged only": lambda: make_capture([record("001", Step.UNPLUGGED, rest(99.0, 2.0, RATE_HZ))]),
    "second signal only": lambda: _only(Role.SECOND_SIGNAL, 5000),
    "an empty record beside": lambda: make_capture(
        [
            *_signal(sweep(4) / 20.0).records,
            make_record("002", 0.001, {Role.SIGNAL: (np.empty(0), Scaling())}),
        ]
    ),
    "pure noise": lambda: _signal(np.random.default_rng(3).uniform(0.0, 5.0, 8000), step=Step.SWEEP),
}


@pytest.mark.parametrize("name", POOR)
def test_poor_input_gets_findings_or_one_sentence_and_never_a_traceback(name: str) -> None:
    # Warnings are errors in this suite: nothing is divided by nought on the way either.
    with suppress(WornbandError):
        found = examine(POOR[name]())
        json.dumps(findings_object(found), allow_nan=False)
        assert found.verdict.code not in PLACED


@pytest.mark.parametrize(
    "name", ["all missing", "all over-range", "nought", "no signal reading", "no feed", "unplugged only"]
)
def test_what_shows_nothing_of_the_sensor_never_clears_or_condemns_it(name: str) -> None:
    code = examine(POOR[name]()).verdict.code
    assert code not in (VerdictCode.NO_FAULT_FOUND, VerdictCode.WORN_TRACK, VerdictCode.SIGNAL_WIRING)


# -- progress and stopping ------------------------------------------------------------------------


def test_progress_rises_from_0_to_1() -> None:
    heard: list[float] = []
    examine(visit(bands=[BAND]), tick=heard.append)
    assert heard == sorted(heard)
    assert heard[0] >= 0.0
    assert heard[-1] == 1.0
    assert len(heard) > 5


@pytest.mark.parametrize("at", [1, 2, 4, 7])
def test_a_stop_at_any_tick_ends_the_work(at: int) -> None:
    calls = 0

    def stop(done: float) -> None:
        nonlocal calls
        calls += 1
        if calls == at:
            raise Cancelled

    with pytest.raises(Cancelled):
        examine(visit(), tick=stop)
    assert calls == at


# -- profiles and provenance ----------------------------------------------------------------------


def _assumed(found: Findings) -> bool:
    return any(item.code == "profile_assumed" for item in found.evidence)


def test_the_profile_that_the_capture_names_is_taken_and_can_be_overruled() -> None:
    capture = visit(attributes={"profile": "ride-height"})
    assert examine(capture).profile == "ride-height"
    assert not _assumed(examine(capture))
    assert examine(capture, profile="throttle").profile == "throttle"
    chosen = load_profile("pedal")
    assert examine(capture, profile=chosen).profile == chosen.id


@pytest.mark.parametrize("attributes", [None, {"profile": "somebody's own"}])
def test_without_a_known_profile_one_is_assumed_and_that_is_said(attributes: dict[str, str] | None) -> None:
    found = examine(visit(attributes=attributes))
    assert found.profile == "generic-ratiometric"
    assert _assumed(found)


def test_an_unknown_profile_asked_for_by_name_is_refused() -> None:
    with pytest.raises(ProfileError):
        examine(visit(), profile="nonesuch")


def test_findings_say_what_they_were_made_from() -> None:
    capture = visit()
    found = examine(capture)
    assert found.capture_id == capture.capture_id
    assert found.analysis_version
    assert (found.path, found.sha256) == ("", "")
    assert [item.record for item in found.record_outcomes] == [item.name for item in capture.records]


def test_examining_leaves_the_capture_as_it_was() -> None:
    capture = visit(bands=[BAND])
    before = [item.volts().copy() for made in capture.records for item in made.channels]
    examine(capture)
    after = [item.volts() for made in capture.records for item in made.channels]
    assert all(np.array_equal(one, other) for one, other in zip(before, after, strict=True))
