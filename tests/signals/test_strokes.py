"""Strokes of the arm, looked up by record and time."""

from __future__ import annotations

from analysis.intervals import Interval
from analysis.signals.facts import Crossing, Direction
from analysis.signals.strokes import Strokes


def _stroke(record: str, second: int) -> Crossing:
    way = Direction.UP if second % 2 == 0 else Direction.DOWN
    return Crossing(record, way, Interval(float(second), second + 1.0), Interval(10.0, 80.0))


def test_strokes_are_found_by_record_and_time_and_a_touch_is_none() -> None:
    strokes = Strokes([_stroke("001", 0), _stroke("001", 1), _stroke("002", 0), _stroke("001", 2)])
    assert strokes.within("001", Interval(0.5, 1.5)).tolist() == [0, 1]
    assert strokes.within("001", Interval(1.0, 2.0)).tolist() == [1]
    assert strokes.within("001", Interval(2.5, 2.5)).tolist() == [3]
    assert strokes.within("002", Interval(0.0, 3.0)).tolist() == [2]
    assert strokes.within("003", Interval(0.0, 3.0)).size == 0


def test_without_strokes_none_is_found() -> None:
    assert Strokes(()).within("001", Interval(0.0, 1.0)).size == 0
