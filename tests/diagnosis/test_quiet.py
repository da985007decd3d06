"""What is said of quiet records: no more than they show, though they show no bad contact."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, Result, State

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
MOVING = {"W1063-rear-right-height.h5": Role.GROUND, "W1068-throttle.h5": Role.REFERENCE}
"""Samples of which a wire moves in every record."""


@cache
def _found(file: str) -> Findings:
    with open_capture(SAMPLES / file) as opened:
        return examine(opened.capture)


def _text(findings: Findings, code: str) -> str:
    return next(item.text for item in findings.evidence if item.code == code)


@pytest.mark.parametrize("file", MOVING)
def test_no_record_in_which_ground_or_reference_plainly_moves_is_called_steady_or_clean(file: str) -> None:
    role = MOVING[file]
    with open_capture(SAMPLES / file) as opened:
        for outcome in examine(opened.capture).record_outcomes:
            record = next(item for item in opened.capture.records if item.name == outcome.record)
            channel = record.channel(role)
            assert channel is not None
            reach_v = float(np.ptp(np.percentile(channel.volts(0, len(record)), [1.0, 99.0])))
            if reach_v > 0.2:  # twice what is allowed
                assert outcome.result is Result.FAIL, outcome
                assert outcome.text.startswith(f"{role.value} "), outcome


@pytest.mark.parametrize("file", MOVING)
def test_a_level_that_is_not_kept_is_told_as_one_that_comes_and_goes(file: str) -> None:
    findings, role = _found(file), MOVING[file]
    assert _text(findings, f"{role.value}_good").endswith(" at times.")
    assert any(item.text.endswith(" at times") for item in findings.record_outcomes)


@pytest.mark.parametrize("file", MOVING)
def test_a_signal_that_goes_with_a_moving_wire_is_not_called_undisturbed(file: str) -> None:
    named = {Role.GROUND: "the sensor ground", Role.REFERENCE: "the reference"}[MOVING[file]]
    for code in ("wiring_quiet", "quiet_elsewhere"):
        assert named in _text(_found(file), code)


def _plotted_percent(findings: Findings) -> float:
    """Largest break-up that the sensor track shows further than 2 % of travel from the sure bands."""
    survey = findings.surveys[0]
    middle = 0.5 * (survey.edges_percent[1:] + survey.edges_percent[:-1])
    away = np.ones(len(middle), dtype=np.bool_)
    for band in findings.bands:
        if band.confidence >= 0.5:
            away &= (middle < band.travel.start - 2.0) | (middle > band.travel.stop + 2.0)
    return float(np.nan_to_num(survey.breakup_percent[:, away]).max())


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.h5")), ids=lambda path: path.name)
def test_without_a_break_is_said_only_where_the_sensor_track_shows_none(path: Path) -> None:
    findings = _found(path.name)
    text = next((item.text for item in findings.evidence if item.code == "quiet_elsewhere"), "")
    if text.endswith("follows the arm without a break.") and "But for" not in text:
        assert _plotted_percent(findings) <= findings.surveys[0].floor_percent
    if not findings.bands:
        assert "band" not in text


def test_brief_disturbances_are_told_with_their_size_beside_the_tick() -> None:
    findings = _found("W1072-front-left-height-new-sensor.h5")
    (statement,) = [item for item in findings.evidence if item.code == "quiet_elsewhere"]
    assert statement.state is State.PROVED
    assert f"{_plotted_percent(findings):.0f} %" in statement.text
    assert findings.record_outcomes[3].text == "7 strokes, disturbed briefly at most"
    assert findings.record_outcomes[4].text == "7 strokes, clean"


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.h5")), ids=lambda path: path.name)
def test_wiggling_that_changes_the_signal_beyond_its_limit_is_not_said_to_leave_it_undisturbed(
    path: Path,
) -> None:
    findings = _found(path.name)
    text = _text(findings, "wiring_quiet")
    wiggled = next(item.records for item in findings.evidence if item.code == "wiring_quiet")
    failed = [
        item
        for item in findings.checks
        if item.code == "rest_variation" and item.record in wiggled and item.result is Result.FAIL
    ]
    assert (text == "Wiggling the harness does not disturb the signal.") is not bool(failed)


def test_where_half_of_the_travel_was_visited_and_no_fault_found_the_rest_is_asked_for() -> None:
    asked = "Sweep to both stops of the arm; only 10–57 % was visited."
    assert asked in _found("W1072-front-left-height-new-sensor.h5").advice
    summary = _found("W1072-front-left-height-new-sensor.h5").verdict.summary
    assert summary == (
        "No fault was seen in 10–57 % of travel, 14 strokes; the rest of the travel was not visited."
    )
    assert "not visited" not in _found("W1041-rear-right-height.h5").verdict.summary
    assert not any("both stops" in item for item in _found("W1041-rear-right-height.h5").advice)


def test_of_a_record_with_a_band_the_band_is_told_rather_than_that_the_tracks_differ_there() -> None:
    outcomes = {item.record: item.text for item in _found("W1083-pedal.h5").record_outcomes}
    assert outcomes["004"] == "breaks up in the band on 6 crossings"


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.h5")), ids=lambda path: path.stem)
@pytest.mark.parametrize("role", [Role.GROUND, Role.REFERENCE])
def test_the_list_of_records_ticks_no_wire_of_which_the_evidence_cannot_tell(path: Path, role: Role) -> None:
    with open_capture(path) as opened:
        findings, records = examine(opened.capture), opened.capture.records
    (stated,) = [item for item in findings.evidence if item.code == f"{role.value}_good"]
    (own,) = [item for item in records if item.step is not None and item.step.value == role.value]
    (line,) = [item for item in findings.record_outcomes if item.record == own.name]
    if stated.state is State.PROVED:
        assert line.result is Result.PASS
        assert line.text.endswith(", steady")
    if stated.state is State.NOT_SHOWN:
        assert line.result is Result.CANNOT_TELL
        assert line.text == "5.00 V, not shown to hold still"


def test_a_wire_of_which_the_evidence_cannot_tell_is_among_the_samples() -> None:
    stated = [item for item in _found("W1080-rear-left-height.h5").evidence if item.code == "reference_good"]
    assert [item.state for item in stated] == [State.NOT_SHOWN]
