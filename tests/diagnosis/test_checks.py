"""Readings at the edges of service limits, through the door, each with its uncertainty."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Findings, Result, State, VerdictCode
from analysis.diagnosis.judging import level_uncertainty
from analysis.intervals import Interval
from analysis.reports.checks import check_sentence
from tests.diagnosis.examples import RATE_HZ, Meter, Wires, channel, record, standing, sweep, visit, worn
from tests.signals.examples import rest

FINE = Meter(noise_v=0.0005, step_v=0.001, gain_error=0.0005, offset_error_v=0.001)
COARSE = Meter(gain_error=0.005, offset_error_v=0.01)


def _check(found: Findings, code: str) -> Check:
    (made,) = (item for item in found.checks if item.code == code)
    return made


def _state(found: Findings, code: str) -> State:
    (made,) = (item for item in found.evidence if item.code == code)
    return made.state


# 4.8 to 5.2 V: Saturn Sky 2009, DTC P2122 or P2123, Circuit/System Testing.
@pytest.mark.parametrize(
    ("reference_v", "result", "state"),
    [
        (4.79, Result.FAIL, State.REFUTED),
        (4.81, Result.PASS, State.PROVED),
        (5.00, Result.PASS, State.PROVED),
        (5.19, Result.PASS, State.PROVED),
        (5.21, Result.FAIL, State.REFUTED),
    ],
)
def test_a_reference_at_the_edge_of_its_limits_is_told_by_a_fine_recorder(
    reference_v: float, result: Result, state: State
) -> None:
    found = examine(visit(travel=sweep(2), wires=Wires(reference_v=reference_v), meter=FINE))
    made = _check(found, "reference_level")
    assert made.value == pytest.approx(reference_v, abs=0.002)
    assert (made.lower_limit, made.upper_limit, made.unit) == (4.8, 5.2, "V")
    assert made.expanded_uncertainty < 0.01
    assert made.result is result
    assert _state(found, "reference_good") is state


# 0.1 V: Nissan Quest 1994, Ground Inspection.
@pytest.mark.parametrize(
    ("ground_v", "result", "state"),
    [(0.09, Result.PASS, State.PROVED), (0.11, Result.FAIL, State.REFUTED)],
)
def test_a_ground_at_the_edge_of_its_limit_is_told_by_a_fine_recorder(
    ground_v: float, result: Result, state: State
) -> None:
    found = examine(visit(travel=sweep(2), wires=Wires(ground_v=ground_v), meter=FINE))
    made = _check(found, "ground_drop")
    assert made.value == pytest.approx(ground_v, abs=0.002)
    assert made.result is result
    assert _state(found, "ground_good") is state


@pytest.mark.parametrize(
    ("wires", "code", "statement"),
    [
        (Wires(reference_v=4.79), "reference_level", "reference_good"),
        (Wires(reference_v=4.81), "reference_level", "reference_good"),
        (Wires(reference_v=5.19), "reference_level", "reference_good"),
        (Wires(reference_v=5.21), "reference_level", "reference_good"),
        (Wires(ground_v=0.095), "ground_drop", "ground_good"),
        (Wires(ground_v=0.105), "ground_drop", "ground_good"),
    ],
)
def test_a_coarse_recorder_cannot_tell_and_says_so(wires: Wires, code: str, statement: str) -> None:
    found = examine(visit(travel=sweep(2), wires=wires, meter=COARSE))
    made = _check(found, code)
    limits = [limit for limit in (made.lower_limit, made.upper_limit) if limit is not None]
    assert min(abs(made.value - limit) for limit in limits) < made.expanded_uncertainty
    assert made.result is Result.CANNOT_TELL
    assert _state(found, statement) is State.NOT_SHOWN


def test_the_uncertainty_of_a_level_is_the_gums_sum_of_its_parts() -> None:
    # Rectangular parts (JCGM 100, 4.3.7 and F.2.2.1) of half-widths 5, 10 and 4 mV, k = 2.
    made = channel(Role.REFERENCE, np.full(10, 5.0), meter=Meter(0.0, 0.01, 0.002, 0.004))
    expected = 2.0 * np.sqrt((0.005**2 + 0.010**2 + 0.004**2) / 3.0)
    assert level_uncertainty(made, 5.0) == pytest.approx(expected, rel=1e-12)
    repeated = level_uncertainty(made, 5.0, spread_v=0.003)
    assert repeated == pytest.approx(2.0 * np.hypot(expected / 2.0, 0.003), rel=1e-12)


def test_an_unknown_accuracy_is_not_worse_than_a_stated_one_but_never_nought_in_counts() -> None:
    unknown = channel(Role.REFERENCE, np.full(10, 5.0), meter=Meter(0.0, 0.01, None, None))
    stated = channel(Role.REFERENCE, np.full(10, 5.0), meter=Meter(0.0, 0.01, 0.002, 0.004))
    assert 0.0 < level_uncertainty(unknown, 5.0) < level_uncertainty(stated, 5.0)


def test_the_worst_record_is_the_one_that_a_ground_is_judged_by() -> None:
    still = list(standing())
    still[2] = record("003", Step.WIGGLE, rest(50.0, 2.0, RATE_HZ), wires=Wires(ground_v=0.25))
    made = _check(examine(make_capture([*still, record("004", Step.SWEEP, sweep(2))])), "ground_drop")
    assert made.record == "003"
    assert made.value == pytest.approx(0.25, abs=0.01)
    assert made.result is Result.FAIL


def test_readings_with_the_sensor_unplugged_are_not_held_against_the_wires() -> None:
    loose = record(
        "009", Step.UNPLUGGED, rest(99.0, 2.0, RATE_HZ), wires=Wires(reference_v=5.6, ground_v=0.4)
    )
    found = examine(visit(travel=sweep(2), extra=[loose]))
    assert _check(found, "reference_level").result is Result.PASS
    assert _check(found, "ground_drop").result is Result.PASS


def _jumping(lasting_s: float) -> Capture:
    path = sweep(2)
    reference_v = np.full(len(path), 5.0)
    reference_v[1500 : 1500 + max(1, round(lasting_s * RATE_HZ))] = 4.5
    still = standing()
    return make_capture([*still, record("004", Step.SWEEP, path, wires=Wires(reference_v=reference_v))])


def test_a_reference_that_moves_is_not_steady_however_good_its_level() -> None:
    found = examine(_jumping(0.05))
    assert _check(found, "reference_level").result is Result.PASS
    made = _check(found, "reference_steadiness")
    assert made.value == pytest.approx(0.5, abs=0.02)
    assert made.result is Result.FAIL
    assert _state(found, "reference_good") is State.REFUTED


def test_a_spike_on_the_reference_is_interference_and_no_unsteadiness() -> None:
    assert _check(examine(_jumping(0.0005)), "reference_steadiness").result is Result.PASS


@pytest.mark.parametrize(("rate_hz", "result"), [(200.0, Result.FAIL), (500.0, Result.PASS)])
def test_a_slow_recorder_is_told_to_be_slow(rate_hz: float, result: Result) -> None:
    path = sweep(2, seconds=4.0)[:: round(RATE_HZ / rate_hz)]
    made = make_record("001", 1.0 / rate_hz, [channel(Role.SIGNAL, path / 20.0)], step=Step.SWEEP)
    found = examine(make_capture([made]))
    assert _check(found, "sample_rate").result is result
    said = any("Record faster" in sentence for sentence in found.advice)
    assert said is (result is Result.FAIL)


def _two_tracks(second_v: Sequence[float]) -> Findings:
    path = sweep(4, low=18.0)
    first = path / 20.0
    roles = {Role.SIGNAL: first, Role.SECOND_SIGNAL: np.asarray(second_v), Role.REFERENCE: first * 0 + 5.0}
    channels = [
        make_channel(role, np.rint(volts / 0.001).astype(np.int16), Scaling(0.001))
        for role, volts in roles.items()
    ]
    captured = make_record("001", 1.0 / RATE_HZ, channels, step=Step.SWEEP)
    return examine(make_capture([captured], attributes={"profile": "pedal"}))


# Second track at half the first: Mazda CX-30 2019; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135.
@pytest.mark.parametrize(
    ("apart_v", "lasting_s", "state"),
    [
        (0.0, 9.0, State.PROVED),
        (0.19, 9.0, State.PROVED),
        (0.21, 9.0, State.REFUTED),
        (0.4, 0.05, State.PROVED),
    ],
)
def test_two_tracks_agree_within_their_tolerance_and_its_time(
    apart_v: float, lasting_s: float, state: State
) -> None:
    second_v = sweep(4, low=18.0) / 40.0
    second_v[2000 : 2000 + round(lasting_s * RATE_HZ)] += apart_v
    found = _two_tracks(second_v.tolist())
    assert _state(found, "tracks_agree") is state
    # What a control unit stores a fault for cannot be "no fault found".
    assert (found.verdict.code is VerdictCode.NO_FAULT_FOUND) is (state is State.PROVED)
    if state is State.REFUTED:
        assert found.verdict.code is VerdictCode.INCONCLUSIVE
        assert found.verdict.summary.startswith("The two tracks disagree")
        assert any("which of them does not fit" in sentence for sentence in found.advice)


def test_the_level_of_the_signal_names_the_drops_that_it_leaves_out() -> None:
    path = sweep(8)
    whole = record("004", Step.SWEEP, path)
    torn = record("004", Step.SWEEP, path, opened=worn(path, Interval(42.0, 48.0), seed=4))
    sound, broken = (
        _check(
            examine(make_capture([*standing(), swept], attributes={"profile": "ride-height"})), "signal_range"
        )
        for swept in (whole, torn)
    )
    assert sound.value == pytest.approx(broken.value, abs=0.05)  # it is the level outside the drops
    assert "while it follows the arm" in broken.title
    assert sound.note == ""
    assert "breaks away from the arm, down to 0.0" in broken.note  # an open contact goes to ground
    assert broken.note in check_sentence(broken)
