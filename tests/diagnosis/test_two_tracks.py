"""Two tracks on one arm, from the simulated wires to the band: the second helps to find the first's place."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, State, VerdictCode
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.bench import simulate
from analysis.simulation.circuit import Circuit
from analysis.simulation.families import PEDALS
from analysis.simulation.recorder import Recorder
from analysis.simulation.scenario import RecordPlan, Scenario, SecondTrack
from analysis.simulation.track import Sensor, WornBand

STYLE = hand.HandStyle(stroke_s=1.5)
FOUR = (Role.SIGNAL, Role.SECOND_SIGNAL, Role.REFERENCE, Role.GROUND)
BANDS = (Interval(33.0, 38.0), Interval(45.0, 54.0), Interval(26.3, 35.3))
"""Open nearly all over; one for each kind of pedal."""


def _visit(which: int, *, worn: bool = True) -> Scenario:
    """A pedal whose first track is open in a band, and an arm that hovers in it."""
    profile, stops, rest, slope, offset = PEDALS[which]
    rng = np.random.default_rng((which, 5))
    band = BANDS[which]
    bands = (WornBand(band, severity=0.95),) if worn else ()
    sensor = Sensor(5000.0, 100.0, stops, rest, bands)
    low, high = sorted(100.0 * offset + slope * place for place in (stops.start, stops.stop))
    hover = hand.joined(
        hand.sweep(rng, stops, 2, STYLE),
        hand.to_and_fro(rng, band.centre, 1.5 * band.length, 12, STYLE, stops),
        hand.sweep(rng, stops, 2, STYLE),
    )
    plans = (
        RecordPlan(Step.WIGGLE, hand.hold(rng, rest, 2.0, None, stops), FOUR),
        RecordPlan(Step.SWEEP, hand.sweep(rng, stops, 3, STYLE), FOUR),
        RecordPlan(Step.SWEEP, hover, FOUR),
    )
    return Scenario(
        sensor,
        Circuit(pull_ohm=200e3, pull_up=bool(which % 2)),
        Recorder(rate_hz=2_000.0, noise_v=0.003),
        plans,
        VerdictCode.WORN_TRACK if worn else VerdictCode.NO_FAULT_FOUND,
        second=SecondTrack(Sensor(5000.0, 100.0, Interval(low, high), 50.0), slope, offset),
        attributes={"profile": profile},
    )


def _alone(capture: Capture) -> Capture:
    """The same capture without its second track."""
    return replace(
        capture,
        records=tuple(
            replace(
                record,
                channels=tuple(item for item in record.channels if item.role is not Role.SECOND_SIGNAL),
            )
            for record in capture.records
        ),
    )


@cache
def _found(which: int, seed: int, *, both: bool) -> Findings:
    capture, _ = simulate(_visit(which), (which, seed))
    return examine(capture if both else _alone(capture))


def _edge_error(found: Findings, band: Interval) -> float:
    """Mean error of both edges, with 10 % for each further band that is not there."""
    sure = [item for item in found.bands if item.confidence >= 0.5 and item.track is Role.SIGNAL]
    met = [item for item in sure if item.travel.overlap(band) > 0.0]
    if not met:
        return 100.0
    best = max(met, key=lambda item: item.travel.overlap(band))
    edges = abs(best.travel.start - band.start) + abs(best.travel.stop - band.stop)
    return 0.5 * edges + 10.0 * (len(sure) - 1)


SEEDS = (0, 1, 2)


@pytest.mark.parametrize("which", range(3), ids=[pedal[0] for pedal in PEDALS])
def test_a_band_that_the_arm_hovers_in_is_met_within_one_per_cent_with_the_second_track(which: int) -> None:
    for seed in SEEDS:
        found = _found(which, seed, both=True)
        assert found.verdict.code is VerdictCode.WORN_TRACK
        assert _edge_error(found, BANDS[which]) < 1.0


@pytest.mark.parametrize("both", [False, True], ids=["one track", "two tracks"])
def test_an_arm_that_hovers_is_met_within_half_a_per_cent_with_one_track_or_two(both: bool) -> None:
    errors = [
        _edge_error(_found(which, seed, both=both), BANDS[which]) for which in range(3) for seed in SEEDS
    ]
    assert max(errors) < 0.5


@pytest.mark.parametrize("which", range(3), ids=[pedal[0] for pedal in PEDALS])
def test_the_evidence_says_where_the_place_was_read_from(which: int) -> None:
    (said,) = (
        item for item in _found(which, 0, both=True).evidence if item.code == "position_from_other_track"
    )
    assert said.state is State.PROVED
    assert said.text.startswith("Where the first track was lost")
    assert set(said.records) <= {"002", "003"}
    assert all(item.code != "position_from_other_track" for item in _found(which, 0, both=False).evidence)


@pytest.mark.parametrize("which", range(3), ids=[pedal[0] for pedal in PEDALS])
def test_two_sound_tracks_are_found_sound(which: int) -> None:
    capture, _ = simulate(_visit(which, worn=False), (which, 7))
    found = examine(capture)
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    assert not [item for item in found.bands if item.confidence >= 0.5]
    assert all(item.code != "position_from_other_track" for item in found.evidence)


def test_two_sensors_of_one_axle_do_not_speak_for_one_another() -> None:
    capture, _ = simulate(_visit(1), (1, 0))
    places = {Role.SIGNAL: "rear left", Role.SECOND_SIGNAL: "rear right"}
    told = replace(
        capture,
        records=tuple(
            replace(
                record,
                channels=tuple(
                    replace(item, attributes={"mounting": places[item.role]}) if item.role in places else item
                    for item in record.channels
                ),
            )
            for record in capture.records
        ),
    )
    found = examine(told)
    assert all(item.code != "position_from_other_track" for item in found.evidence)
    assert all(item.code != "independent_linearity" for item in found.checks)
    assert [item.travel for item in found.bands] == [item.travel for item in examine(_alone(capture)).bands]
