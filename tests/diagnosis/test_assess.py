from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.diagnosis.assess import assess
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
WORN = ("W1041-rear-left-height.h5", "W1072-front-left-height.h5", "W1083-pedal.h5")


def _findings(name: str) -> Findings:
    with open_capture(SAMPLES / name) as opened:
        return examine(opened.completed().capture)


@pytest.fixture(scope="module")
def worn() -> Findings:
    return _findings(WORN[0])


@pytest.mark.parametrize("name", WORN)
def test_the_stretch_of_a_found_band_is_judged_as_that_band_is(name: str) -> None:
    findings = _findings(name)
    found = findings.bands[0]
    own = assess(findings, found.track, found.travel)
    assert own is not None
    same = replace(
        own,
        start_uncertainty_percent=found.start_uncertainty_percent,
        stop_uncertainty_percent=found.stop_uncertainty_percent,
    )
    assert same == found


def test_edges_a_little_off_change_the_confidence_a_little(worn: Findings) -> None:
    found = worn.bands[0]
    for by_percent in (-1.0, 1.0, 1.5):
        near = assess(worn, found.track, found.travel.widened(by_percent))
        assert near is not None
        assert near.confidence == pytest.approx(found.confidence, abs=0.03)
        # At the very edge a crossing may break up just outside.
        assert abs(near.noisy_passes - found.noisy_passes) <= 1


def test_a_clean_stretch_of_a_worn_track_is_hardly_a_band(worn: Findings) -> None:
    for travel in (Interval(20.0, 24.0), Interval(60.0, 66.0)):
        clean = assess(worn, Role.SIGNAL, travel)
        assert clean is not None
        assert clean.confidence < 0.1
        assert (clean.noisy_passes, clean.travel) == (0, travel)
        assert clean.passes > 5


def test_no_stretch_of_a_sound_sensor_is_likely_a_band() -> None:
    sound = _findings("W1041-rear-left-height-new-sensor.h5")
    for start in np.arange(10.0, 88.0, 6.5):
        own = assess(sound, Role.SIGNAL, Interval(float(start), float(start) + 5.0))
        assert own is not None
        assert own.confidence < 0.1


def test_travel_that_no_crossing_visited_is_not_rated(worn: Findings) -> None:
    for travel in (Interval(120.0, 130.0), Interval(-40.0, -30.0)):
        beyond = assess(worn, Role.SIGNAL, travel)
        assert beyond is not None
        assert np.isnan(beyond.confidence)
        assert beyond.passes == 0


def test_a_track_that_was_not_surveyed_is_not_judged(worn: Findings) -> None:
    assert assess(worn, Role.SECOND_SIGNAL, Interval(40.0, 50.0)) is None


def test_a_stretch_narrower_than_a_bin_is_judged_by_the_bin_in_its_middle(worn: Findings) -> None:
    narrow = assess(worn, Role.SIGNAL, Interval(45.0, 45.02))
    assert narrow is not None
    assert narrow.noisy_passes > 10
    assert narrow.travel == Interval(45.0, 45.02)


def test_findings_without_their_basis_are_counted_and_not_rated(worn: Findings) -> None:
    found = worn.bands[0]
    own = assess(replace(worn, basis=None), found.track, found.travel)
    assert own is not None
    assert np.isnan(own.confidence)
    assert own.noisy_passes == found.noisy_passes
