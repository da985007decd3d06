"""Whether the evidence is complete: relations, and the sample captures."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from analysis.captures.model import Capture, Step
from analysis.captures.reading import open_capture
from analysis.diagnosis.enough import NOTHING_YET, Evidence, Task, evidence_of
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import State
from analysis.diagnosis.profiles import profile_for

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"


def _judged(capture: Capture) -> Evidence:
    return evidence_of(capture, examine(capture), profile_for(capture, None))


@cache
def _of(file: str, *steps: Step, at_most: int = 99) -> Evidence:
    """Of a sample, with the first records of these steps alone where any are named."""
    with open_capture(SAMPLES / file) as opened:
        kept = [item for item in opened.capture.records if not steps or item.step in steps]
        return _judged(replace(opened.capture, records=tuple(kept[:at_most])))


def test_before_the_first_sweep_nothing_is_enough() -> None:
    assert not NOTHING_YET.enough
    assert NOTHING_YET.next.task is Task.SWEEP


@pytest.mark.parametrize(
    "file", ["W1041-rear-left-height.h5", "W1083-pedal.h5", "W1063-rear-right-height.h5"]
)
def test_a_whole_visit_with_every_step_is_enough(file: str) -> None:
    found = _of(file)
    assert found.enough
    assert found.next.line == "ENOUGH"


def test_where_the_arm_did_not_go_is_not_done() -> None:
    found = _of("W1072-front-left-height-new-sensor.h5")
    assert [item.line for item in found.missing] == ["Go to the ends", "60–100 % not done"]


def test_sweeps_alone_ask_for_the_other_wires_or_a_hold() -> None:
    found = _of("W1041-rear-left-height.h5", Step.SWEEP)
    assert not found.enough
    assert found.next.task in (Task.HOLD, Task.RECORD)


def test_more_records_of_the_same_visit_never_take_crossings_away() -> None:
    few = _of("W1041-rear-right-height.h5", Step.SWEEP, at_most=1)
    more = _of("W1041-rear-right-height.h5", Step.SWEEP)
    pairs = zip(few.stretches, more.stretches, strict=True)
    assert all(after.crossings >= before.crossings for before, after in pairs)


def test_too_few_crossings_are_not_enough_and_the_count_says_how_many_are_missing() -> None:
    with open_capture(SAMPLES / "W1041-rear-right-height.h5") as opened:
        findings = examine(opened.capture)
        profile = profile_for(opened.capture, None)
        survey = findings.surveys[0]
        few = replace(
            survey,
            crossings=survey.crossings[:4],
            breakup_percent=survey.breakup_percent[:4],
            dwell_s=survey.dwell_s[:4],
        )
        found = evidence_of(opened.capture, replace(findings, surveys=(few,)), profile)
        whole = evidence_of(opened.capture, findings, profile)
    assert whole.enough
    assert not found.enough
    assert any(item.task in (Task.CROSSINGS, Task.STRETCH) for item in found.missing)


def test_crossings_that_leave_too_few_samples_ask_for_slower_ones() -> None:
    with open_capture(SAMPLES / "W1041-rear-right-height.h5") as opened:
        findings = examine(opened.capture)
        survey = findings.surveys[0]
        fast = replace(findings, surveys=(replace(survey, dwell_s=survey.dwell_s / 1000.0),))
        found = evidence_of(opened.capture, fast, profile_for(opened.capture, None))
    assert found.next.task is Task.SLOWER
    assert found.next.line == "Slower"


@pytest.mark.parametrize("file", sorted(item.name for item in SAMPLES.glob("*.h5")))
def test_no_sample_is_told_to_go_slower_for_its_break_up(file: str) -> None:
    assert Task.SLOWER not in [item.task for item in _of(file).missing]


def test_no_second_hold_is_asked_for_once_one_was_quiet() -> None:
    with open_capture(SAMPLES / "W1041-rear-left-height.h5") as opened:
        kept = [item for item in opened.capture.records if item.step is not Step.HOLD]
        capture = replace(opened.capture, records=tuple(kept))
        findings, profile = examine(capture), profile_for(capture, None)
        unheld = evidence_of(capture, findings, profile)
        quiet = tuple(
            replace(item, state=State.NOT_SHOWN, records=(kept[-1].name,))
            if item.code == "not_the_loom"
            else item
            for item in findings.evidence
        )
        held = evidence_of(capture, replace(findings, evidence=quiet), profile)
    assert any(item.task is Task.HOLD for item in unheld.missing)
    assert not any(item.task is Task.HOLD for item in held.missing)
