"""The chain of evidence, the verdict that may not outrun it, and the advice."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.advice import NEXT_STEP, give_advice
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, State, Statement, Verdict, VerdictCode
from analysis.diagnosis.measurement_check import Problem
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.seen import Seen
from analysis.diagnosis.studies import study
from analysis.diagnosis.verdict import CAUSES, give_verdict
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, Meter, bursts, record, standing, sweep, visit, worn
from tests.signals.examples import Floats, rest

BAND = Interval(42.0, 48.0)


def _state(found: Findings, code: str) -> State | None:
    return next((item.state for item in found.evidence if item.code == code), None)


def _text(found: Findings, code: str) -> str:
    return next(item.text for item in found.evidence if item.code == code)


def _with(*more: Record, opened: Floats | None = None, wiggled: Floats | None = None) -> Capture:
    path = sweep(8)
    gone = worn(path, BAND, seed=4) if opened is None else opened
    return make_capture(
        [*standing(wiggled=wiggled), record("004", Step.SWEEP, path, opened=gone, seed=5), *more]
    )


def _held(place: float, *, loose: bool) -> Record:
    still = rest(place, 4.0, RATE_HZ)
    opened = bursts(len(still), per_s=5.0, lasting_s=0.004, seed=8) if loose else None
    return record("008", Step.HOLD, still, opened=opened, seed=8)


def test_a_harness_that_stays_quiet_when_wiggled_is_proved_quiet() -> None:
    assert _state(examine(_with()), "wiring_quiet") is State.PROVED


def test_a_harness_that_opens_when_wiggled_is_refuted() -> None:
    found = examine(_with(wiggled=bursts(4000, per_s=5.0, seed=9), opened=np.zeros(len(sweep(8)))))
    assert _state(found, "wiring_quiet") is State.REFUTED


def test_a_harness_that_nobody_wiggled_is_not_shown_and_the_advice_is_to_wiggle_it() -> None:
    found = examine(make_capture([record("001", Step.SWEEP, sweep(6))]))
    assert _state(found, "wiring_quiet") is State.NOT_SHOWN
    assert any(sentence.startswith("Wiggle the harness") for sentence in found.advice)


def test_a_band_on_every_crossing_is_proved_place_locked_in_both_directions() -> None:
    found = examine(_with())
    assert _state(found, "place_locked") is State.PROVED
    assert _state(found, "both_directions") is State.PROVED
    assert _state(found, "quiet_elsewhere") is State.PROVED
    assert "8 of 8 crossings" in _text(found, "place_locked")


def test_a_band_that_shows_on_the_way_up_only_is_not_shown_in_both_directions() -> None:
    path = sweep(12)
    upward = np.gradient(path) > 0
    opened = worn(path, BAND, seed=4) * upward
    found = examine(make_capture([*standing(), record("004", Step.SWEEP, path, opened=opened)]))
    assert found.bands[0].noisy_passes == 6
    assert _state(found, "both_directions") is State.NOT_SHOWN


def test_a_sound_track_has_no_statement_on_bands() -> None:
    found = examine(visit())
    for code in ("place_locked", "both_directions", "not_the_loom", "improved_by_moving"):
        assert _state(found, code) is None


def test_only_a_hold_in_the_spot_rules_out_the_loom() -> None:
    without, quiet, elsewhere, loose = (
        examine(_with(*held))
        for held in ((), (_held(45.0, loose=False),), (_held(70.0, loose=True),), (_held(45.0, loose=True),))
    )
    assert [_state(item, "not_the_loom") for item in (without, quiet, elsewhere)] == [State.NOT_SHOWN] * 3
    assert _state(loose, "not_the_loom") is State.PROVED
    assert any("Hold the arm still at 45 %" in sentence for sentence in without.advice)
    assert not any("Hold the arm still" in sentence for sentence in loose.advice)


def test_dirt_that_the_sweep_wiped_away_is_said_to_be_not_cured() -> None:
    path = sweep(12)
    opened = worn(path, BAND, seed=4)
    opened[len(path) // 2 :] = 0.0
    wiped = make_capture([*standing(), record("004", Step.SWEEP, path, opened=opened)])
    found = examine(wiped)
    assert _state(found, "improved_by_moving") is State.PROVED
    assert "not cured" in _text(found, "improved_by_moving")
    assert _state(examine(_with()), "improved_by_moving") is None


@pytest.mark.parametrize(
    ("low", "high", "place", "state"),
    [(10.0, 90.0, 50.0, State.PROVED), (10.0, 25.0, 50.0, State.REFUTED), (60.0, 90.0, 40.0, State.REFUTED)],
)
def test_the_rest_height_is_tested_where_the_sweep_went_past_it(
    low: float, high: float, place: float, state: State
) -> None:
    found = examine(visit(travel=sweep(6, low=low, high=high), standing_place=place))
    assert _state(found, "rest_height_tested") is state


def test_no_fault_found_is_refused_where_the_rest_height_was_not_tested() -> None:
    found = examine(visit(travel=sweep(6, low=10.0, high=25.0)))
    assert found.verdict.code is VerdictCode.INCONCLUSIVE
    assert "Sweep through the height at which the car stands." in found.advice


def test_where_nobody_recorded_the_arm_at_rest_that_is_said() -> None:
    found = examine(make_capture([record("001", Step.SWEEP, sweep(6))]))
    assert _state(found, "rest_height_tested") is State.NOT_SHOWN


def _probed(*points: str) -> Capture:
    records = []
    for name, point in zip(("004", "005"), points, strict=False):
        made = record(name, Step.SWEEP, sweep(4))
        told = tuple(replace(item, attributes={"probe_point": point}) for item in made.channels)
        records.append(replace(made, channels=told))
    return make_capture([*standing(), *records])


@pytest.mark.parametrize(
    ("points", "state"),
    [
        (("sensor end",), State.NOT_SHOWN),
        (("control-unit end",), State.NOT_SHOWN),
        (("sensor end", "control-unit end"), State.PROVED),
    ],
)
def test_a_wire_is_cleared_only_where_both_its_ends_were_probed(
    points: tuple[str, ...], state: State
) -> None:
    assert _state(examine(_probed(*points)), "far_end_probed") is state


def test_a_recorder_whose_step_is_larger_than_the_limit_cannot_prove_a_track_as_new() -> None:
    # 8 bits over ±10 V: 78 mV a step, 1.6 % of the reference; a new track stays within 0.1 % (Bourns).
    found = examine(visit(meter=Meter(step_v=20.0 / 256)))
    assert _state(found, "recorder_floor") is State.NOT_SHOWN
    assert "cannot prove a track as new" in _text(found, "recorder_floor")
    floors = [item.floor_percent for item in found.surveys]
    assert max(floors) > 1.5


@pytest.mark.parametrize(
    ("profile", "share", "track"),
    [
        ("generic-ratiometric", "% of the reference", True),
        ("ride-height-contactless", "% of the reference", False),
        ("generic-non-ratiometric", "% of 5.0 V", False),
    ],
)
@pytest.mark.parametrize("meter", [Meter(step_v=20.0 / 256), Meter(noise_v=2e-4, step_v=5e-4)])
def test_the_floor_is_said_in_what_the_output_goes_with_and_of_a_track_only_where_there_is_one(
    profile: str, share: str, track: bool, meter: Meter
) -> None:
    path = sweep(4, low=20.0, high=60.0)
    found = examine(visit(travel=path, meter=meter, attributes={"profile": profile}))
    text, proved = _text(found, "recorder_floor"), _state(found, "recorder_floor") is State.PROVED
    assert share in text
    assert ("a new track stays within 0.1 %" in text) is track
    assert ("cannot prove a track as new" in text) is (track and not proved)
    assert proved is (meter.step_v < 0.001)


def test_a_recorder_that_is_too_coarse_for_a_steady_wire_is_told_to_use_a_smaller_range() -> None:
    # 8 bits over ±20 V: of two roundings of 156 mV nobody can tell a move of 100 mV (JCGM 100, F.2.2.1).
    coarse = examine(visit(meter=Meter(step_v=40.0 / 256)))
    for name, wire in (("ground_good", "ground"), ("reference_good", "reference")):
        assert _state(coarse, name) is State.NOT_SHOWN
        assert any(f"Record the {wire} once more in a smaller range" in line for line in coarse.advice)
    assert "too coarse" in _text(coarse, "ground_good")
    fine = examine(visit())
    assert _state(fine, "ground_good") is State.PROVED
    assert not any("smaller range" in line for line in fine.advice)


def test_every_record_of_a_statement_is_one_of_the_captures() -> None:
    capture = _with(_held(45.0, loose=True))
    names = {item.name for item in capture.records}
    for statement in examine(capture).evidence:
        assert set(statement.records) <= names
        assert statement.text.endswith(".")


# -- the verdict, given its evidence --------------------------------------------------------------


def _seen(capture: Capture | None = None, *problems: Problem) -> Seen:
    studies = study(capture or visit(travel=sweep(4)), load_profile())
    return Seen(studies, problems, (), (), ())


SURE = {VerdictCode.NO_FAULT_FOUND: 0.9, VerdictCode.INCONCLUSIVE: 0.1}


@pytest.mark.parametrize(
    "code", ["rest_height_tested", "ground_good", "reference_good", "measured_properly", "tracks_agree"]
)
def test_no_fault_is_never_found_against_a_refuted_statement(code: str) -> None:
    kept = (Statement(code, State.PROVED, (), "."),)
    assert give_verdict(_seen(), SURE, kept).code is VerdictCode.NO_FAULT_FOUND
    against = (Statement(code, State.REFUTED, (), "."),)
    assert give_verdict(_seen(), SURE, against).code is VerdictCode.INCONCLUSIVE


def test_no_fault_found_says_what_was_tested() -> None:
    summary = give_verdict(_seen(), SURE, ()).summary
    assert summary == "No fault was seen in 10–90 % of travel, 4 strokes."


def test_a_worn_track_needs_a_band_to_point_at() -> None:
    made = give_verdict(_seen(), {VerdictCode.WORN_TRACK: 0.8, VerdictCode.NO_FAULT_FOUND: 0.2}, ())
    assert made.code is VerdictCode.INCONCLUSIVE


def test_a_measurement_problem_says_which() -> None:
    problem = Problem("deaf", "004", 0.9, "the signal does not change", "check the plug")
    shares = {VerdictCode.MEASUREMENT_PROBLEM: 1.0}
    seen = _seen(None, problem)
    made = give_verdict(seen, shares, ())
    assert "the signal does not change" in made.summary
    assert give_advice(seen, made, ()) == ("Record 004: check the plug.",)


@pytest.mark.parametrize("code", NEXT_STEP)
def test_the_trades_next_step_comes_last_and_once(code: VerdictCode) -> None:
    advice = give_advice(_seen(), Verdict(code, 0.9, "."), ())
    assert advice.count(NEXT_STEP[code]) == 1
    assert advice[-1] == NEXT_STEP[code]


@pytest.mark.parametrize(
    "code", sorted(set(CAUSES) - {VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT})
)
def test_a_fault_comes_with_what_may_lie_behind_it(code: VerdictCode) -> None:
    made = give_verdict(_seen(), {code: 0.9, VerdictCode.INCONCLUSIVE: 0.1}, ())
    assert made.code is code
    assert made.possible_causes == CAUSES[code]
    assert "replace the loom" not in " ".join((*CAUSES[code], *NEXT_STEP.values())).lower()


# -- the advice says what to capture next ---------------------------------------------------------

ASKED: dict[str, tuple[Callable[[], Capture], str]] = {
    "no sweep": (lambda: make_capture(standing()), "Sweep the arm slowly through its whole travel"),
    "few crossings": (
        lambda: make_capture([record("001", Step.SWEEP, sweep(1), opened=worn(sweep(1), BAND))]),
        "more times, slowly, hands off the harness.",
    ),
    "no ground": (
        lambda: make_capture([record("001", Step.SWEEP, sweep(6), roles=(Role.SIGNAL, Role.REFERENCE))]),
        "Record the ground with the sensor plugged in",
    ),
    "no reference": (
        lambda: make_capture([record("001", Step.SWEEP, sweep(6), roles=(Role.SIGNAL, Role.GROUND))]),
        "Record the reference with the sensor plugged in",
    ),
}


@pytest.mark.parametrize("name", ASKED)
def test_the_advice_asks_for_what_is_missing(name: str) -> None:
    capture, expected = ASKED[name]
    advice = examine(capture()).advice
    assert any(expected in sentence for sentence in advice)
    assert len(set(advice)) == len(advice)


def test_a_whole_visit_is_asked_for_nothing_that_it_holds() -> None:
    advice = examine(visit()).advice
    for expected in ("Sweep the arm", "Record the ground", "Record the reference", "Wiggle"):
        assert not any(sentence.startswith(expected) for sentence in advice)
