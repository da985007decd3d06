"""Readings that several wires make together carry the uncertainty of all of them, through the door."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Channel, Record, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Findings, Result
from tests.diagnosis.examples import RATE_HZ, Wires, record, standing, sweep, visit
from tests.signals.examples import Floats, noise, rest

STEP_V, GAIN, OFFSET_V = 0.001, 0.004, 0.006
"""A recorder whose stated errors outweigh its steps."""

RECT = sqrt(3.0)
HEIGHT = {"profile": "ride-height"}


def _check(found: Findings, code: str) -> Check:
    return next(item for item in found.checks if item.code == code)


def _channel(role: Role, volts: Floats) -> Channel:
    read = volts + noise(len(volts), 0.0005, len(role.value))
    counts = np.rint(read / STEP_V).astype(np.int16)
    return make_channel(role, counts, Scaling(STEP_V), gain_error=GAIN, offset_error_v=OFFSET_V)


def _record(name: str, step: Step, volts: dict[Role, Floats]) -> Record:
    return make_record(name, 1.0 / RATE_HZ, [_channel(*item) for item in volts.items()], step=step)


def _rounding() -> float:
    return STEP_V / sqrt(12.0)


def _three_wires(path: Floats) -> dict[Role, Floats]:
    return {Role.SIGNAL: path / 20.0, Role.REFERENCE: path * 0 + 5.0, Role.GROUND: path * 0 + 0.01}


def test_a_signal_against_ground_has_the_uncertainty_of_both_wires() -> None:
    swept = _record("001", Step.SWEEP, _three_wires(sweep(2)))
    made = _check(examine(make_capture([swept], attributes=HEIGHT)), "signal_range")
    # JCGM 100, eq. 10, of: two roundings, two offsets, the gain at the signal's level (the ground has none).
    level_v = made.value
    gain_u = GAIN * level_v / RECT
    expected = 2.0 * np.sqrt(2.0 * _rounding() ** 2 + 2.0 * (OFFSET_V / RECT) ** 2 + gain_u**2)
    assert made.expanded_uncertainty == pytest.approx(expected, rel=0.005)


def test_one_probe_moved_from_wire_to_wire_has_one_offset_which_cancels() -> None:
    still = rest(50.0, 2.0, RATE_HZ)
    capture = make_capture(
        [
            _record("001", Step.GROUND, {Role.GROUND: still * 0 + 0.01}),
            _record("002", Step.REFERENCE, {Role.REFERENCE: still * 0 + 5.0}),
            _record("003", Step.SWEEP, {Role.SIGNAL: sweep(2) / 20.0}),
        ],
        attributes=HEIGHT,
    )
    made = _check(examine(capture), "signal_range")
    expected = 2.0 * np.hypot(sqrt(2.0) * _rounding(), GAIN * made.value / RECT)
    assert made.expanded_uncertainty == pytest.approx(expected, rel=0.01)


def test_without_a_recorded_ground_only_the_signal_counts() -> None:
    swept = _record("001", Step.SWEEP, {Role.SIGNAL: sweep(2) / 20.0})
    made = _check(examine(make_capture([swept], attributes=HEIGHT)), "signal_range")
    expected = 2.0 * np.sqrt(_rounding() ** 2 + (OFFSET_V / RECT) ** 2 + (GAIN * made.value / RECT) ** 2)
    assert made.expanded_uncertainty == pytest.approx(expected, rel=0.005)


def _pedal(second_v: Floats, path: Floats) -> Capture:
    volts = {
        Role.SIGNAL: path / 20.0,
        Role.SECOND_SIGNAL: second_v,
        Role.REFERENCE: path * 0 + 5.0,
        Role.GROUND: path * 0,
    }
    return make_capture([_record("001", Step.SWEEP, volts)], attributes={"profile": "pedal"})


def test_two_tracks_apart_have_the_uncertainty_of_both() -> None:
    path = sweep(4, low=18.0)
    second_v = path / 40.0
    second_v[2000:3000] += 0.15  # half a second
    made = _check(examine(_pedal(second_v, path)), "track_agreement")
    assert made.value == pytest.approx(0.15, abs=0.002)
    # gap = second - 0.5 first - 0.5 ground (2:1 pair: Mazda CX-30 2019, APP sensor inspection); errors of
    # inputs that nobody states to be common: not correlated is the worse case for a difference.
    at = int(np.argmax(np.abs(np.convolve(second_v - path / 40.0, np.ones(400), "valid"))))
    second, first = float(second_v[at : at + 400].mean()), float(path[at : at + 400].mean() / 20.0)
    weights = np.array([1.0, 0.5, 0.5])
    parts = [
        weights * _rounding(),
        weights * OFFSET_V / RECT,
        np.array([second, 0.5 * first]) * GAIN / RECT,
    ]
    expected = 2.0 * np.sqrt(sum(float((part**2).sum()) for part in parts))
    # Where in that half second the stretch of 0.2 s lies is chance.
    assert made.expanded_uncertainty == pytest.approx(expected, rel=0.15)
    alone = 2.0 * np.sqrt(_rounding() ** 2 + (OFFSET_V**2 + (GAIN * 0.15) ** 2) / 3.0)
    assert made.expanded_uncertainty > 1.3 * alone


def test_tracks_that_are_apart_by_less_than_both_are_unsure_of_cannot_be_told() -> None:
    path = sweep(4, low=18.0)
    second_v = path / 40.0
    second_v[2000:3000] += 0.205
    made = _check(examine(_pedal(second_v, path)), "track_agreement")
    assert made.result is Result.CANNOT_TELL
    assert made.conformance is not None
    assert 0.0228 < made.conformance < 0.5


def _throttle(ground_v: float = 0.0) -> Findings:
    path = sweep(6, low=10.0, high=80.0)
    volts = {Role.SIGNAL: path / 20.0, Role.REFERENCE: path * 0 + 5.0, Role.GROUND: path * 0 + ground_v}
    return examine(make_capture([_record("001", Step.SWEEP, volts)], attributes={"profile": "throttle"}))


def test_a_span_does_not_count_the_offset_of_its_probe_and_ends_do() -> None:
    found = _throttle()
    low, high, span = (_check(found, code) for code in ("low_end", "high_end", "signal_span"))
    # The limit goes with the feed, so the reference's own errors count by the share of the feed.
    share = span.value / 5.0
    expected = 2.0 * np.sqrt(
        (2.0 + 2.0 * share**2) * _rounding() ** 2
        + 2.0 * (share * OFFSET_V / RECT) ** 2
        + (span.value * GAIN / RECT) ** 2
        + (share * 5.0 * GAIN / RECT) ** 2
    )
    assert span.expanded_uncertainty == pytest.approx(expected, rel=0.03)
    assert low.expanded_uncertainty > 2.0 * OFFSET_V / RECT
    assert high.expanded_uncertainty > low.expanded_uncertainty


def test_a_steady_wire_that_was_watched_beside_another_has_the_uncertainty_of_what_was_taken_away() -> None:
    path = sweep(2)
    hum = 0.03 * np.sin(2.0 * np.pi * 50.0 * np.arange(len(path)) / RATE_HZ)
    quiet = examine(make_capture([*standing(), record("004", Step.SWEEP, path)]))
    humming = examine(make_capture([record("004", Step.SWEEP, path, wires=Wires(common_v=hum))]))
    alone, beside = (_check(found, "reference_steadiness") for found in (quiet, humming))
    assert beside.result is Result.PASS  # what both do together is no fault of either
    assert beside.expanded_uncertainty > alone.expanded_uncertainty


def test_a_signal_at_rest_is_read_twice_and_its_rounding_counts_twice() -> None:
    found = examine(visit(travel=sweep(2)))
    made = _check(found, "rest_variation")
    step_v = 20.0 / 4096
    expected = 2.0 * np.hypot(step_v / sqrt(6.0), 0.001 * made.value / RECT)  # JCGM 100, F.2.2.1, twice
    assert made.expanded_uncertainty == pytest.approx(expected, rel=0.01)
