"""A sensor may be swept while it is tapped, warm, cold or wet; the record says so, or its samples do."""

from __future__ import annotations

import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Record, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, State, VerdictCode
from analysis.diagnosis.stillness import CONDITIONS, MOVED, left_alone
from analysis.intervals import Interval
from tests.diagnosis.examples import record, standing, sweep, worn

BAND = Interval(42.0, 48.0)
STEPS = sorted(CONDITIONS)
CODES = {
    Step.TAP: "tapping_quiet",
    Step.HEAT: "warm_quiet",
    Step.COLD: "cold_quiet",
    Step.WET: "wet_quiet",
}


def _swept(step: Step, *, worn_too: bool, moved: str = "") -> Findings:
    path = sweep(8)
    opened = worn(path, BAND, seed=3) if worn_too else None
    attributes = {"moved": moved} if moved else None
    made = record("005", step, path, opened=opened, seed=8, attributes=attributes)
    return examine(make_capture([*standing(), record("004", Step.SWEEP, sweep(6), seed=7), made]))


@pytest.mark.parametrize("step", STEPS)
def test_a_sweep_under_a_condition_counts_its_crossings_and_shows_its_band(step: Step) -> None:
    found = _swept(step, worn_too=True, moved="by hand")
    assert found.verdict.code is VerdictCode.WORN_TRACK
    band = max(found.bands, key=lambda item: item.confidence)
    assert band.travel.start == pytest.approx(BAND.start, abs=0.75)
    assert band.travel.stop == pytest.approx(BAND.stop, abs=0.75)
    assert band.noisy_passes == 8  # those of the warm or tapped sweep; the other one is sound
    assert next(item for item in found.evidence if item.code == CODES[step]).state is State.REFUTED


@pytest.mark.parametrize("step", STEPS)
@pytest.mark.parametrize("moved", ["", "by hand"])
def test_an_arm_that_was_swept_is_not_held_against_the_limits_of_one_at_rest(step: Step, moved: str) -> None:
    found = _swept(step, worn_too=False, moved=moved)
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    at_rest = [item.record for item in found.checks if item.code == "rest_variation"]
    assert at_rest == ["001", "002", "003"]


@pytest.mark.parametrize("step", STEPS)
def test_an_arm_that_rests_under_a_condition_is_held_against_them(step: Step) -> None:
    still = make_record("005", 0.0005, standing()[2].channels, step=step)
    found = examine(make_capture([*standing(), record("004", Step.SWEEP, sweep(6), seed=7), still]))
    assert [item.record for item in found.checks if item.code == "rest_variation"][-1] == "005"


def _of(step: Step | None, moved: str) -> Record:
    return make_record("001", 0.001, standing()[0].channels, step=step, attributes={"moved": moved})


def test_only_a_record_under_a_condition_is_believed_that_it_moved() -> None:
    for moved in MOVED:
        assert not any(left_alone(_of(step, moved)) for step in (*CONDITIONS, Step.SWEEP, Step.ROAD, None))
        assert all(left_alone(_of(step, moved)) for step in (Step.WIGGLE, Step.HOLD, Step.GROUND))
    assert all(left_alone(_of(step, "no")) for step in CONDITIONS)
