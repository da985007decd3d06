"""Whether two signals are two corners of one axle, recorded together: else their difference says nothing."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from analysis.captures.known_words import known_word
from analysis.captures.model import Record, Role, Step
from analysis.comparison.positions import Position, same_mounting, two_cars
from analysis.wording import Wording, say

CLOCKS_APART_S = 30.0
"""Two recorders that ran together may state starts that lie so far apart (common practice, no source)."""

_MOVED_TOGETHER = ("suspension", "road")
"""What moves both arms of an axle, as a record states it under ``moved``."""


@dataclass(frozen=True, slots=True)
class Taken:
    """One of two signals, and what is stated of how it was taken.

    Parameters
    ----------
    record : Record
    track : Role
    position : Position
    recorder : str
        Serial number; empty where it is not stated.
    two_tracks : bool
        Whether its sensor has two tracks, so that both signals of a record are of one arm.
    """

    record: Record
    track: Role
    position: Position
    recorder: str = ""
    two_tracks: bool = False


def why_not_together(one: Taken, two: Taken) -> Wording | None:
    """Why two signals cannot be set against each other over time as two corners of an axle.

    Parameters
    ----------
    one, two : Taken

    Returns
    -------
    Wording or None
        What is wrong and what to choose; None where nothing stands against it.
    """
    reason = _one_place(one, two) or _moved_alone(one) or _moved_alone(two)
    return reason if reason is not None or one.record is two.record else _at_other_times(one, two)


def _one_place(one: Taken, two: Taken) -> Wording | None:
    own = one.record is two.record
    if own and one.track is two.track:
        return say("Both sides show the same signal. Choose the other corner on one side.")
    if same_mounting(one.position, two.position):
        mounting = known_word(one.position.mounting)
        return say(
            "Both are of one corner, {mounting}. Two corners of an axle are needed, recorded together.",
            mounting=mounting,
        )
    if own and one.two_tracks:
        return say("Both signals are tracks of one sensor. Two corners of an axle are needed.")
    if own:
        return None
    if two_cars(one.position, two.position):
        return say("They are of two cars. Two corners of one axle are needed, recorded together.")
    if not (one.position.mounting and two.position.mounting):
        return say(
            "Where each sensor is mounted is not stated. Two corners of an axle are needed, recorded"
            " together."
        )
    return None


def _moved_alone(taken: Taken) -> Wording | None:
    record = taken.record
    moved = str(record.attributes.get("moved", "")).strip()
    if moved in _MOVED_TOGETHER or (not moved and record.step in (Step.ROAD, None)):
        return None
    if moved == "by hand" or record.step is Step.SWEEP:
        return say(
            "The arm was moved by hand ({label}), not both corners together. Choose a record with the step"
            " Road on both sides.",
            label=record.label or record.name,
        )
    if record.step is Step.ROAD:
        return None
    return say(
        "Nothing moved both corners ({label}). Choose a record with the step Road on both sides.",
        label=record.label or record.name,
    )


def _at_other_times(one: Taken, two: Taken) -> Wording | None:
    starts = [_started(item.record) for item in (one, two)]
    if starts[0] is None or starts[1] is None:
        return say(
            "When they were recorded is not stated on both sides. Two corners can be set against each other"
            " only where they were recorded together."
        )
    if (starts[0].tzinfo is None) is not (starts[1].tzinfo is None):
        starts = [item.replace(tzinfo=None) for item in starts if item is not None]
    first, second = (item for item in starts if item is not None)
    same_recorder = one.recorder != "" and one.recorder == two.recorder
    slack = timedelta(seconds=0.0 if same_recorder else CLOCKS_APART_S)
    ends = [
        start + timedelta(seconds=item.record.duration_s) for start, item in ((first, one), (second, two))
    ]
    if max(first, second) < min(ends) + slack:
        return None
    return say(
        "They were recorded one after the other, at {one} and at {two}: the corners did not move together.",
        one=_clock(first, second),
        two=_clock(second, first),
    )


def _started(record: Record) -> datetime | None:
    try:
        return datetime.fromisoformat(str(record.attributes.get("started", "")).strip())
    except ValueError:
        return None


def _clock(moment: datetime, other: datetime) -> str:
    """The time of day, with the day where the two are of different days."""
    return moment.strftime("%H:%M:%S" if moment.date() == other.date() else "%Y-%m-%d %H:%M:%S")
