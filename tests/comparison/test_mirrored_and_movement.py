"""A sensor mounted the other way round on the same axis, and two records laid on each other by a movement."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.comparison.mirrored import mirrored_findings, mirrored_survey
from analysis.comparison.movement import first_departure_s, first_movement_s
from tests.comparison.examples import BAND, side
from tests.signals.examples import noise, path_of, rest, stroke


def test_mirroring_twice_gives_the_findings_again() -> None:
    found = side(BAND).findings
    again = mirrored_findings(mirrored_findings(found))
    assert again.bands == found.bands
    assert again.coverage == found.coverage
    assert again.events == found.events
    for one, two in zip(again.surveys, found.surveys, strict=True):
        np.testing.assert_array_equal(one.edges_percent, two.edges_percent)
        np.testing.assert_array_equal(one.breakup_percent, two.breakup_percent)
        assert [item.direction for item in one.crossings] == [item.direction for item in two.crossings]
        ends = np.array([(item.travel.start, item.travel.stop) for item in two.crossings])
        np.testing.assert_allclose([(item.travel.start, item.travel.stop) for item in one.crossings], ends)


def test_mirroring_moves_every_bin_to_the_other_end_with_what_it_holds() -> None:
    survey = side(BAND).findings.surveys[0]
    turned = mirrored_survey(survey)
    assert np.all(np.diff(turned.edges_percent) > 0)
    np.testing.assert_allclose(turned.edges_percent, 100.0 - survey.edges_percent[::-1])
    np.testing.assert_array_equal(turned.breakup_percent[:, -1], survey.breakup_percent[:, 0])
    assert [item.direction for item in turned.crossings] != [item.direction for item in survey.crossings]
    middle_s = survey.paths[0].time_s[len(survey.paths[0].time_s) // 3]
    assert turned.paths[0].at(middle_s) == pytest.approx(100.0 - survey.paths[0].at(middle_s))


def test_what_falls_to_ground_falls_to_the_reference_when_mirrored() -> None:
    found = side(BAND).findings
    assert found.bands[0].falls_towards == "ground"
    assert mirrored_findings(found).bands[0].falls_towards == "reference"


@pytest.mark.parametrize("pause_s", [0.4, 1.0, 2.5])
def test_the_first_movement_is_found_where_the_hand_began(pause_s: float) -> None:
    travel = np.concatenate([rest(30.0, pause_s, 500.0), stroke(30.0, 80.0, 1.0, 500.0)])
    found = first_movement_s(path_of(travel, node_s=0.002))
    assert found is not None
    # A minimum-jerk stroke of 50 % in 1 s has covered 1 % when 10 u^3 = 0.02: u = 0.126 (a little more).
    assert found == pytest.approx(pause_s + 0.135, abs=0.01)


def test_the_same_movement_begun_later_is_found_later_by_just_that_much() -> None:
    strokes = stroke(30.0, 80.0, 1.0, 500.0)
    early, late = (
        first_movement_s(path_of(np.concatenate([rest(30.0, pause_s, 500.0), strokes])))
        for pause_s in (0.5, 1.73)
    )
    assert early is not None
    assert late is not None
    assert late - early == pytest.approx(1.23, abs=0.002)


def test_tremor_and_noise_are_no_movement() -> None:
    travel = rest(50.0, 5.0, 500.0) + noise(2500, 0.15, 3)
    assert first_movement_s(path_of(travel)) is None
    rough = replace(path_of(travel + noise(2500, 2.0, 4)), uncertainty_percent=np.full(2500, 2.0))
    assert first_movement_s(rough) is None


def test_a_mirrored_arm_moves_at_the_same_moment() -> None:
    travel = np.concatenate([rest(30.0, 0.5, 500.0), stroke(30.0, 80.0, 1.0, 500.0)])
    assert first_movement_s(path_of(travel)) == pytest.approx(first_movement_s(path_of(100.0 - travel)))


def test_a_series_without_a_value_never_moves() -> None:
    time_s = np.arange(5) / 10.0
    assert first_departure_s(time_s, np.full(5, np.nan), least=1.0) is None
    assert first_departure_s(np.empty(0), np.empty(0), least=1.0) is None
    assert first_movement_s(path_of(np.empty(0))) is None
