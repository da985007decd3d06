"""The door, on captures whose truth is known and on the worn ride-height sample."""

from __future__ import annotations

from pathlib import Path

import pytest

from analysis.captures.model import Capture
from analysis.captures.reading import open_capture
from analysis.control_unit.rules import RuleKind
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.diagnosis.profiles import load_profile
from analysis.exposure.amounts import about_words
from analysis.exposure.explain import Explanation, explain, likeliest_band, unit_for
from analysis.exposure.from_record import road_records

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"


def _explained(name: str, profile_id: str) -> tuple[Capture, Findings, SensorProfile, Explanation | None]:
    profile = load_profile(profile_id)
    with open_capture(SAMPLES / name) as opened:
        findings = examine(opened.capture)
        return opened.capture, findings, profile, explain(opened.capture, findings, profile)


@pytest.fixture(scope="module")
def worn() -> Explanation:
    """The worn rear left sensor of the samples' car."""
    _, findings, _, found = _explained("W1041-rear-left-height.h5", "halvorsen-tern-rear-left")
    assert findings.profile == "halvorsen-tern-rear-left"
    assert found is not None
    return found


def test_the_worn_sample_says_at_which_heights_and_on_which_roads_the_band_is_visited(
    worn: Explanation,
) -> None:
    said = worn.paragraph
    assert "mm of wheel travel below the normal height" in said
    for road in ("smooth motorway at 110 km/h", "worn country road at 70 km/h", "broken lane at 40 km/h"):
        assert f"On a {road}" in said
    assert "loaded height (13 mm down)" in said
    assert "chance of a code within 30 min" in said
    assert "Golden Car" in said
    assert "ISO 8608 class A, C, D" in said
    assert "Left out:" in said


def test_the_band_of_the_worn_sample_lies_where_it_was_made(worn: Explanation) -> None:
    # 42.6-48.9 % of travel, 127 mm of arm turned 90 degrees, normal at 52.5 %: -19.8 to -7.2 mm.
    edges = worn.heights.height_mm([42.6, 48.9])
    assert worn.exposures[0].band_mm.start == pytest.approx(float(edges[0]), abs=1.0)
    assert worn.exposures[0].band_mm.stop == pytest.approx(float(edges[1]), abs=1.0)


def test_what_the_band_does_is_measured_on_its_own_crossings_and_hold(worn: Explanation) -> None:
    moving, standing = worn.contact.of(RuleKind.RANGE), worn.contact.of(RuleKind.RANGE, standing=True)
    assert worn.contact.crossings == 18
    assert worn.contact.held == ("006",)
    assert 0.1 < moving.share < 0.3
    assert 0.001 < moving.mean_run_s < 0.1
    assert standing.share == 0.0  # held in the band it sags, but never to a quarter of a volt
    assert standing.measured_s == pytest.approx(6.0)


def test_the_road_record_tells_what_it_saw(worn: Explanation) -> None:
    (record,) = worn.records
    assert record.record == "007"
    assert 0.05 < record.share < 0.3
    assert record.visits >= 8
    assert record.events > 0
    # It is no second count of the crossings, which Records and Evidence give by that name (8 here).
    assert f"came into it {record.visits} times, every return counted" in record.words
    assert "crossing" not in record.words


def test_the_new_sensor_has_no_band_to_explain_and_nothing_comes_of_its_visits() -> None:
    capture, findings, profile, found = _explained(
        "W1041-rear-left-height-new-sensor.h5", "halvorsen-tern-rear-left"
    )
    assert found is None
    assert likeliest_band(findings) is None
    _, before, _, _ = _explained("W1041-rear-left-height.h5", "halvorsen-tern-rear-left")
    band = likeliest_band(before)
    assert band is not None
    records = road_records(capture, findings, band, profile.heights)
    assert [item.events for item in records] == [0]
    assert records[0].visits > 0  # it was there, and nothing came of it


def test_a_profile_without_heights_explains_nothing() -> None:
    _, findings, profile, found = _explained("W1041-rear-left-height.h5", "ride-height")
    assert profile.heights is None
    assert likeliest_band(findings) is not None
    assert found is None


def test_a_single_track_is_compared_with_the_other_side_and_a_double_one_with_its_second() -> None:
    single = unit_for(load_profile("ride-height")).comparison_rule
    double = unit_for(load_profile("pedal")).comparison_rule
    assert single is not None
    assert double is not None
    assert single.tolerance_v == 1.0
    assert double.source != single.source


def test_the_customer_reads_when_it_comes_and_that_it_is_calculated(worn: Explanation) -> None:
    driven = [item for one in worn.exposures for item in one.rests if not item.rest.standing]
    most = max(driven, key=lambda item: item.visits.share)
    assert f"{about_words(most.share_over_class)} of the time at loaded height (13 mm down)" in worn.brief
    assert "up to about 5 % of it at normal height" in worn.brief
    assert "come and go with load and road" in worn.brief
    assert "calculated for a middling car, not measured on this one" in worn.brief
    assert worn.brief.count(". ") == 3
