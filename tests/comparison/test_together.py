"""Two signals are two corners over one time only where they were recorded together."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_record
from analysis.captures.model import Record, Role, Scaling, Step
from analysis.comparison.positions import Position
from analysis.comparison.together import CLOCKS_APART_S, Taken, why_not_together

RATE_HZ, SECONDS = 100.0, 20.0
LEFT, RIGHT = Position("rear left"), Position("rear right")


def _record(step: Step | None, started: str = "", moved: str = "") -> Record:
    channels = {
        role: (np.zeros(round(RATE_HZ * SECONDS)), Scaling()) for role in (Role.SIGNAL, Role.SECOND_SIGNAL)
    }
    made = make_record("007", 1.0 / RATE_HZ, channels)
    told = {key: value for key, value in (("started", started), ("moved", moved)) if value}
    return replace(made, step=step, label="round the block", attributes=told)


def _apart(first: str, second: str, recorder: str = "") -> str:
    one = Taken(_record(Step.ROAD, first), Role.SIGNAL, LEFT, recorder)
    return str(why_not_together(one, Taken(_record(Step.ROAD, second), Role.SIGNAL, RIGHT, recorder)) or "")


@pytest.mark.parametrize("step", [Step.ROAD, None])
def test_two_signals_of_one_drive_are_two_corners(step: Step | None) -> None:
    drive = _record(step)
    one, two = Taken(drive, Role.SIGNAL, LEFT), Taken(drive, Role.SECOND_SIGNAL, RIGHT)
    assert why_not_together(one, two) is None
    unstated = Position()
    assert why_not_together(replace(one, position=unstated), replace(two, position=unstated)) is None


def test_two_tracks_of_one_sensor_and_one_signal_twice_are_not() -> None:
    drive, nowhere = _record(Step.ROAD), Position()
    pair = [Taken(drive, role, nowhere, two_tracks=True) for role in (Role.SIGNAL, Role.SECOND_SIGNAL)]
    assert "tracks of one sensor" in str(why_not_together(pair[0], pair[1]))
    assert "the same signal" in str(why_not_together(pair[0], pair[0]))


def test_one_corner_twice_is_not() -> None:
    one = Taken(_record(Step.ROAD), Role.SIGNAL, LEFT)
    again = Taken(_record(Step.ROAD), Role.SIGNAL, Position("Rear Left"))
    assert str(why_not_together(one, again)).startswith("Both are of one corner, rear left.")


@pytest.mark.parametrize(
    ("step", "moved", "reason"),
    [
        (Step.SWEEP, "", "moved by hand (round the block)"),
        (Step.SWEEP, "by hand", "moved by hand"),
        (Step.ROAD, "by hand", "moved by hand"),
        (Step.SWEEP, "suspension", ""),
        (Step.ROAD, "road", ""),
        (Step.HOLD, "", "Nothing moved both corners"),
        (Step.WIGGLE, "harness", "Nothing moved both corners"),
    ],
)
def test_what_moved_the_arms_decides(step: Step, moved: str, reason: str) -> None:
    record = _record(step, moved=moved)
    said = why_not_together(Taken(record, Role.SIGNAL, LEFT), Taken(record, Role.SECOND_SIGNAL, RIGHT))
    assert reason in str(said or "")
    assert (said is None) is (reason == "")


def test_two_records_must_overlap_in_time() -> None:
    # 20 s each: from 09:15:00 to 09:15:20.
    assert _apart("2026-05-11T09:15:00+02:00", "2026-05-11T09:15:19+02:00") == ""
    assert _apart("2026-05-11T09:15:00+02:00", "2026-05-11T07:15:05+00:00") == ""
    assert _apart("2026-05-11T09:15:00", "2026-05-11T09:15:05+02:00") == ""
    assert "at 09:15:00 and at 09:45:37" in _apart("2026-05-11T09:15:00+02:00", "2026-05-11T09:45:37+02:00")
    assert "at 2026-05-11 09:15:00" in _apart("2026-05-11T09:15:00+02:00", "2026-05-12T09:15:00+02:00")


def test_clocks_of_two_recorders_may_differ_and_that_of_one_may_not() -> None:
    late = f"2026-05-11T09:15:{SECONDS + CLOCKS_APART_S - 1.0:02.0f}"
    assert _apart("2026-05-11T09:15:00", late) == ""
    assert "one after the other" in _apart("2026-05-11T09:15:00", late, recorder="L4-00871")
    assert "one after the other" in _apart("2026-05-11T09:15:00", "2026-05-11T09:15:51")


@pytest.mark.parametrize("started", ["", "yesterday"])
def test_without_the_time_of_both_nothing_is_said(started: str) -> None:
    assert _apart("2026-05-11T09:15:00", started).startswith("When they were recorded is not stated")


def test_without_a_mounting_or_of_two_cars_nothing_is_said() -> None:
    record = _record(Step.ROAD, "2026-05-11T09:15:00")
    again = replace(record, name="008")
    one = Taken(record, Role.SIGNAL, replace(LEFT, registration="A 1"))
    two = Taken(again, Role.SIGNAL, replace(RIGHT, registration="A 1"))
    assert why_not_together(one, two) is None
    assert "two cars" in str(why_not_together(one, replace(two, position=replace(RIGHT, registration="B 2"))))
    assert "is not stated" in str(why_not_together(one, replace(two, position=Position())))
