"""When a band was crossed: of a visit in which the arm turned, all of the time that it broke up."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.diagnosis.bands import _crossing_times
from analysis.diagnosis.places import Place
from analysis.intervals import Interval
from analysis.signals.facts import ArmPath, Crossing, Direction, TrackSurvey

BAND = Interval(42.0, 48.0)
EDGES = np.arange(10.0, 90.1, 0.25)


def _survey(down: float) -> TrackSurvey:
    """Up to 46 % and down again, a second each; the way up broke up by 30 %, and so much the way down."""
    time_s = np.arange(0.0, 2.001, 0.002)
    place = np.interp(time_s, [0.0, 1.0, 2.0], [10.0, 46.0, 10.0])
    travel = Interval(10.0, 46.0)
    strokes = (
        Crossing("001", Direction.UP, Interval(0.0, 1.0), travel),
        Crossing("001", Direction.DOWN, Interval(1.0, 2.0), travel),
    )
    visited = EDGES[1:] <= travel.stop
    inside = visited & (EDGES[1:] > BAND.start)
    rows = [np.where(inside, level, np.where(visited, 0.0, np.nan)) for level in (30.0, down)]
    paths = (ArmPath("001", time_s, place, np.full(time_s.shape, 0.05)),)
    return TrackSurvey(Role.SIGNAL, EDGES, strokes, np.array(rows), 0.2, paths)


def _visit() -> Place:
    marks = np.array([False, True])
    return Place(BAND, 0.1, 0.1, 9.0, marks, marks.copy(), np.array([0, 0]), 1.0, 0.0)


# 36 % in a second, 4 % of them inside, each way.
@pytest.mark.parametrize(
    ("down", "until_s"),
    [
        (20.0, 1.0 + 4.0 / 36.0),
        (float("nan"), 1.0 + 4.0 / 36.0),  # the signal was gone all the way back: nothing is told of it
        (0.0, 1.0),
    ],
)
def test_a_crossing_lasts_as_long_as_its_visit_was_not_quiet(down: float, until_s: float) -> None:
    (crossing,) = _crossing_times(_survey(down), _visit())
    assert crossing.time.start == pytest.approx(32.0 / 36.0, abs=0.004)
    assert crossing.time.stop == pytest.approx(until_s, abs=0.004)
    assert crossing.breakup_percent == 30.0
