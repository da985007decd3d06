"""Was it measured at all: each problem is found on a capture that has it, and on none that has not."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import State, VerdictCode
from analysis.diagnosis.measurement_check import Problem, find_problems
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.seen import PLAIN
from analysis.diagnosis.studies import study
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, THREE, Meter, Wires, bursts, channel, record, sweep, visit
from tests.signals.examples import Floats, noise, rest

SINGLE = (Role.SIGNAL,)


def _problems(capture: Capture) -> tuple[Problem, ...]:
    return find_problems(study(capture, load_profile(capture.text("profile") or None)))


def _plain(capture: Capture) -> set[str]:
    return {item.code for item in _problems(capture) if item.strength >= PLAIN}


def _signal_only(volts: Floats, step: Step | None = Step.SWEEP, **attributes: str | float) -> Capture:
    made = make_record("001", 1.0 / RATE_HZ, [channel(Role.SIGNAL, volts)], step=step, attributes=attributes)
    return make_capture([made])


def _volts() -> Floats:
    return np.asarray(sweep(6) / 20.0)


def _hum(seconds: float, size_v: float = 0.08) -> Floats:
    time = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    return np.asarray(size_v * np.sin(2 * np.pi * 50.0 * time))


def _no_samples() -> Capture:
    counts = np.rint(_volts() / 0.005).astype(np.int16)
    counts[: int(0.95 * len(counts))] = -32768
    made = make_channel(Role.SIGNAL, counts, Scaling(0.005, fill_value=-32768.0))
    return make_capture([make_record("001", 1.0 / RATE_HZ, [made], step=Step.SWEEP)])


def _over_range() -> Capture:
    counts = np.clip(np.rint(_volts() / 0.005), -500, 500).astype(np.int16)  # 2.5 V at most
    made = make_channel(Role.SIGNAL, counts, Scaling(0.005, valid_min=-500.0, valid_max=500.0))
    return make_capture([make_record("001", 1.0 / RATE_HZ, [made], step=Step.SWEEP)])


def _ac_coupled() -> Capture:
    volts, kept = _volts(), float(np.exp(-1.0 / (RATE_HZ * 0.3)))
    out = np.empty_like(volts)
    out[0] = 0.0
    for index in range(1, len(volts)):
        out[index] = kept * (out[index - 1] + volts[index] - volts[index - 1])
    return _signal_only(out)


def _duty_cycle(hertz: float = 200.0, strokes: int = 6) -> Capture:
    path = sweep(strokes)
    phase = (np.arange(len(path)) / RATE_HZ * hertz) % 1.0
    return _signal_only(np.where(phase < 0.13 + 0.7 * path / 100.0, 5.0, 0.05))


@pytest.mark.parametrize("hertz", [1.0, 3.0, 20.0, 60.0])
def test_a_two_level_signal_is_refused_however_slow_it_is(hertz: float) -> None:
    found = examine(_duty_cycle(hertz, strokes=12))
    assert found.verdict.code is VerdictCode.MEASUREMENT_PROBLEM
    assert "two levels only" in found.verdict.summary


def _loose_return() -> Capture:
    path = sweep(6)
    shift = np.zeros(len(path))
    for first in range(1000, len(path), 2500):
        shift[first : first + 500] = 0.8
    return make_capture([record("001", Step.SWEEP, path, wires=Wires(common_v=shift))])


MADE: dict[str, Callable[[], Capture]] = {
    "no_samples": _no_samples,
    "over_range": _over_range,
    "leads_swapped": lambda: _signal_only(-_volts()),
    "ac_coupling": _ac_coupled,
    "attenuation": lambda: _signal_only(0.1 * _volts()),
    "deaf": lambda: _signal_only(rest(50.0, 5.0, RATE_HZ) / 20.0),
    "unplugged": lambda: _signal_only(_volts(), plugged=0),
    "asleep": lambda: visit(wires=Wires(reference_v=0.02, ground_v=0.0)),
    "in_the_air": lambda: _signal_only(_hum(8.0)),
    "slipped_off": lambda: _signal_only(np.concatenate([_volts(), _hum(3.0)])),
    "poor_return": _loose_return,
    "two_level": _duty_cycle,
}


@pytest.mark.parametrize("code", MADE)
def test_a_problem_is_found_on_a_capture_that_has_it_and_outranks_every_fault(code: str) -> None:
    capture = MADE[code]()
    assert code in _plain(capture)
    found = examine(capture)
    assert found.verdict.code is VerdictCode.MEASUREMENT_PROBLEM
    assert found.evidence[0].code == "measured_properly"
    assert found.evidence[0].state is State.REFUTED
    assert found.verdict.summary.startswith("This capture cannot be judged: ")
    assert found.advice


def _wide() -> Capture:
    return make_capture([record("001", Step.SWEEP, sweep(6), roles=SINGLE, meter=Meter(step_v=0.039))])


SOUND: dict[str, Callable[[], Capture]] = {
    "a whole visit": visit,
    "one channel": lambda: make_capture([record("001", Step.SWEEP, sweep(6), roles=SINGLE)]),
    "no step told": lambda: make_capture([record("001", None, sweep(6))]),
    "eight bits": _wide,
    "a sweep from stop to stop": lambda: visit(travel=sweep(6, low=1.0, high=99.0)),
    "a worn track": lambda: visit(bands=[Interval(42.0, 48.0)]),
    "a wire that opens": lambda: visit(opened=bursts(len(sweep(6)), seed=3)),
    "a lifted ground": lambda: visit(wires=Wires(ground_v=0.3)),
    "a low reference": lambda: visit(wires=Wires(reference_v=4.4)),
    "a feed of 3.3 V": lambda: make_capture(
        [record("001", Step.SWEEP, sweep(6), wires=Wires(reference_v=3.3), roles=THREE)]
    ),
    "sparks on all probes": lambda: make_capture(
        [record("001", Step.SWEEP, sweep(6), wires=Wires(common_v=_sparks()))]
    ),
}


def _sparks() -> Floats:
    sparks = noise(len(sweep(6)), 0.001)
    sparks[::997] += 0.5
    return sparks


@pytest.mark.parametrize("name", [pytest.param(name, id=name.replace(" ", "-")) for name in SOUND])
def test_no_problem_is_held_against_a_capture_that_was_measured_properly(name: str) -> None:
    capture = SOUND[name]()
    assert _plain(capture) == set()
    assert examine(capture).verdict.code is not VerdictCode.MEASUREMENT_PROBLEM


def test_a_reading_ten_times_too_large_is_a_wrong_attenuation_too() -> None:
    counts = np.rint(_volts() / 0.005).astype(np.int16)
    made = make_channel(Role.SIGNAL, counts, Scaling(0.05))
    assert "attenuation" in _plain(make_capture([make_record("001", 1.0 / RATE_HZ, [made], step=Step.SWEEP)]))


def test_the_battery_on_a_supply_channel_is_no_wrong_attenuation() -> None:
    path = sweep(4)
    made = [channel(Role.SIGNAL, path / 20.0), channel(Role.SUPPLY, np.full(len(path), 9.6))]
    capture = make_capture([make_record("001", 1.0 / RATE_HZ, made, step=Step.SWEEP)])
    assert "attenuation" not in _plain(capture)


def test_the_slip_is_told_with_its_time() -> None:
    (problem,) = (item for item in _problems(MADE["slipped_off"]()) if item.code == "slipped_off")
    assert f"{len(_volts()) / RATE_HZ:.1f} s" in problem.text


def test_an_arm_that_was_not_said_to_move_may_stand_still() -> None:
    assert "deaf" not in _plain(_signal_only(rest(50.0, 5.0, RATE_HZ) / 20.0, Step.HOLD))
    assert "deaf" not in _plain(_signal_only(rest(50.0, 5.0, RATE_HZ) / 20.0, None))


def test_the_unplugged_step_is_no_problem_of_measurement() -> None:
    capture = visit(extra=[record("009", Step.UNPLUGGED, rest(99.0, 2.0, RATE_HZ))])
    assert _plain(capture) == set()


def test_problems_come_plainest_first() -> None:
    strengths = [item.strength for item in _problems(_signal_only(0.1 * _volts(), plugged=0))]
    assert strengths == sorted(strengths, reverse=True)
    assert len(strengths) >= 2
    assert all(0.0 < item <= 1.0 for item in strengths)


def test_a_probe_that_slips_off_a_recorder_of_coarse_steps_is_missed_though_no_hum_is_seen() -> None:
    counts = np.rint(np.concatenate([_volts() + 0.5, rest(0.0, 4.0, RATE_HZ)]) / 0.04).astype(np.int16)
    made = make_channel(Role.SIGNAL, counts, Scaling(0.04))
    capture = make_capture([make_record("001", 1.0 / RATE_HZ, [made], step=Step.SWEEP)])
    assert "slipped_off" in _plain(capture)
    (problem,) = (item for item in _problems(capture) if item.code == "slipped_off")
    assert "hums" not in problem.text  # nobody saw it hum: it may be an open wire as well
    assert "wire is open" in problem.text


def test_an_arm_that_comes_to_rest_near_ground_did_not_slip() -> None:
    counts = np.rint(np.concatenate([sweep(6, low=2.0) / 20.0, rest(0.1, 4.0, RATE_HZ)]) / 0.04)
    made = make_channel(Role.SIGNAL, counts.astype(np.int16), Scaling(0.04))
    assert not _plain(make_capture([make_record("001", 1.0 / RATE_HZ, [made], step=Step.SWEEP)]))


@pytest.mark.parametrize(
    ("role", "level_v", "limits"), [(Role.GROUND, 0.0, (0.0, None)), (Role.REFERENCE, 5.0, (None, 1000.0))]
)
def test_a_good_wire_at_the_end_of_the_recorders_range_is_no_lost_signal(
    role: Role, level_v: float, limits: tuple[float | None, float | None]
) -> None:
    path = sweep(6)
    counts = np.full(len(path), round(level_v / 0.005), dtype=np.int16)
    scaling = Scaling(0.005, valid_min=limits[0], valid_max=limits[1])
    made = [channel(Role.SIGNAL, path / 20.0), make_channel(role, counts, scaling)]
    assert _plain(make_capture([make_record("001", 1.0 / RATE_HZ, made, step=Step.SWEEP)])) == set()


def _asleep_sweep() -> Capture:
    """Module asleep: all three wires at nought while the arm is swept."""
    volts = {Role.SIGNAL: 0.02, Role.REFERENCE: 0.02, Role.GROUND: 0.01}
    channels = [channel(role, np.full(12_000, level), seed=9) for role, level in volts.items()]
    return make_capture([make_record("001", 1.0 / RATE_HZ, channels, step=Step.SWEEP)])


def _exchanged() -> Capture:
    """Signal and reference probe on one another's wire."""
    volts = {Role.SIGNAL: np.full(len(_volts()), 5.0), Role.REFERENCE: _volts(), Role.GROUND: 0.0 * _volts()}
    channels = [channel(role, level, seed=9) for role, level in volts.items()]
    return make_capture([make_record("001", 1.0 / RATE_HZ, channels, step=Step.SWEEP)])


@pytest.mark.parametrize(
    ("made", "words", "action"),
    [
        (lambda: _signal_only(_hum(8.0, 0.3)), "hung in the air", "put the probe back"),
        (
            lambda: _signal_only(np.concatenate([_volts(), _hum(6.0, 0.3)])),
            "slipped off at",
            "put the probe back",
        ),
        (_ac_coupled, "falls back", "set the input to DC"),
        (_asleep_sweep, "no feed", "switch the ignition on"),
        (_exchanged, "a probe is on the wrong wire", "which wire each probe touches"),
    ],
)
def test_of_problems_that_show_alike_the_one_is_told_that_explains_the_others(
    made: Callable[[], Capture], words: str, action: str
) -> None:
    found = examine(made())
    assert found.verdict.code is VerdictCode.MEASUREMENT_PROBLEM
    assert words in found.verdict.summary
    assert action in found.advice[0]
