"""The road test counted off against road records, by hand and on the samples."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from analysis.captures.model import Capture, Step
from analysis.captures.reading import open_capture
from analysis.control_unit.debounce import ContinuousTimer
from analysis.control_unit.rules import ControlUnit
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profiles import load_profile
from analysis.exposure.explain import likeliest_band, unit_for
from analysis.exposure.proof import proof
from analysis.exposure.road_test import CountedRecord, counted_records, total_km

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
PROFILE = load_profile("halvorsen-tern-rear-left")
UNIT = unit_for(PROFILE)
Case = tuple[Capture, Findings]


def _examined(name: str) -> Case:
    with open_capture(SAMPLES / name) as opened:
        return opened.capture, examine(opened.capture)


@pytest.fixture(scope="module")
def before() -> Findings:
    return _examined("W1041-rear-left-height.h5")[1]


def counted(
    name: str,
    before: Findings,
    *,
    unit: ControlUnit = UNIT,
    chosen_km_h: float | None = 60.0,
    words: dict[str, str | float] | None = None,
) -> CountedRecord:
    """The road record of a sample, with other words on it."""
    with open_capture(SAMPLES / name) as opened:
        capture = opened.capture
        findings = examine(capture)
        records = tuple(
            replace(item, attributes={**item.attributes, **(words or {})}) if item.step is Step.ROAD else item
            for item in capture.records
        )
        (found,) = counted_records(
            replace(capture, records=records),
            findings,
            PROFILE,
            unit,
            band=likeliest_band(before),
            speed_km_h=chosen_km_h,
        )
        return found


NEW, WORN = "W1041-rear-left-height-new-sensor.h5", "W1041-rear-left-height.h5"


def test_a_distance_that_the_record_states_is_taken_and_said(before: Findings) -> None:
    found = counted(NEW, before, words={"distance_km": 4.2, "speed_km_h": 90.0})
    assert found.counted_km == 4.2
    assert found.how == "as the record states"


def test_a_speed_that_the_record_states_is_taken_times_its_length(before: Findings) -> None:
    found = counted(NEW, before, words={"speed_km_h": "72"})
    assert found.counted_km == pytest.approx(72.0 * 16.5 / 3_600.0, abs=0.01)
    assert "72 km/h, as the record states" in found.words


def test_where_it_states_neither_the_chosen_speed_is_taken_and_said(before: Findings) -> None:
    found = counted(NEW, before, words={"engine": "running"})
    assert found.counted_km == pytest.approx(60.0 * 16.5 / 3_600.0, abs=0.01)
    assert "as chosen: the record states no speed" in found.words
    assert counted(NEW, before, chosen_km_h=None, words={"engine": "running"}).counted_km == 0.0


def test_a_car_that_was_bounced_with_the_engine_off_was_not_driven(before: Findings) -> None:
    found = counted(NEW, before)
    assert found.counted_km == 0.0
    assert "does not count, it states no distance or speed, and the engine was off" in found.words


@pytest.mark.parametrize("said", ["fast", "", "inf", "nan", -5.0])
def test_a_speed_that_is_none_counts_as_not_stated(before: Findings, said: str | float) -> None:
    assert counted(NEW, before, words={"speed_km_h": said}).counted_km == 0.0


def test_a_record_in_which_the_band_still_breaks_up_does_not_count(before: Findings) -> None:
    found = counted(WORN, before, words={"distance_km": 4.2})
    assert found.counted_km == 0.0
    assert "disturbed in the band" in found.words


def test_a_record_in_which_a_code_would_be_stored_does_not_count_and_says_when(before: Findings) -> None:
    assert UNIT.range_rule is not None
    hasty = replace(UNIT, range_rule=replace(UNIT.range_rule, debounce=ContinuousTimer(0.0)))
    found = counted(WORN, before, unit=hasty, words={"distance_km": 4.2})
    assert found.counted_km == 0.0
    assert "a code would have been stored at " in found.words


def test_a_control_unit_that_reads_faster_than_the_record_judges_nothing(before: Findings) -> None:
    with open_capture(SAMPLES / NEW) as opened:
        capture = opened.capture
        findings = examine(capture)
        (road,) = (item for item in capture.records if item.step is Step.ROAD)
        slowed = replace(capture, records=(replace(road, sample_interval_s=0.1),))
        (found,) = counted_records(slowed, findings, PROFILE, UNIT, speed_km_h=60.0)
    assert found.counted_km == 0.0
    assert "cannot judge it" in found.words


def test_what_was_counted_shortens_the_road_test(before: Findings) -> None:
    found = counted(NEW, before, words={"distance_km": 5.0})
    left_km = proof(1, 6.0, driven_km=(total_km([found, found]),)).left_km
    assert left_km == pytest.approx(17.97 - 10.0, abs=0.01)
