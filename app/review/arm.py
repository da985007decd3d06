"""The arm on its track: dragged by hand, or running through the record by the clock."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
from PySide6.QtCore import QObject, QTimer, Signal

from analysis.diagnosis.findings import ArmPath, TrackSurvey
from analysis.intervals import Interval
from app.review.focus import Focus, whole
from app.review.playback import SPEEDS, Playback, own_speed

_FRAME_MS = 16


class Arm(QObject):
    """Moves the focus's moment, by hand or by the clock.

    Signals
    -------
    running_changed(running), speed_changed(), repeat_changed(repeat)
    """

    running_changed = Signal(bool)
    speed_changed = Signal()
    repeat_changed = Signal(bool)

    def __init__(
        self, focus: Focus, clock: Callable[[], float] = time.monotonic, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._focus = focus
        self._clock = clock
        self._survey: TrackSurvey | None = None
        self._run = Playback(Interval(0.0, 0.0), 0.0)
        self._speed: float | None = None
        self._repeat = False
        self._onward = False
        self._timer = QTimer(self)
        self._timer.setInterval(_FRAME_MS)
        self._timer.timeout.connect(self.advance)
        focus.record_changed.connect(self.rest)
        focus.target_changed.connect(self.speed_changed)

    @property
    def running(self) -> bool:
        """Whether it runs."""
        return self._run.running

    @property
    def speed(self) -> float:
        """Seconds of the record a second: of the run, or of the one that would begin now."""
        return self._run.speed if self.running else self._speed_for(self._focus.passage)

    @property
    def own_pace(self) -> bool:
        """Whether no speed was chosen: each crossing takes one at which it can be watched."""
        return self._speed is None

    @property
    def repeat(self) -> bool:
        """Whether a crossing that ends begins again."""
        return self._repeat

    def follow(self, survey: TrackSurvey | None) -> None:
        """Move along this track from now on."""
        self._survey = survey

    def travel(self, moment_s: float | None) -> float | None:
        """Where the arm is at a moment of the shown record, or None where that is unknown."""
        record = self._focus.record
        if self._survey is None or record is None or moment_s is None:
            return None
        return self._survey.whereabouts(record.name, moment_s)

    def drag_to(self, travel_percent: float) -> None:
        """Move to a place on the track, at the passage nearest in time, and show that; a run stops."""
        self.rest()
        path = self._path()
        if path is not None:
            near_s = self._focus.moment_s
            self._focus.follow(
                moment_of(path, travel_percent, self._focus.window.start if near_s is None else near_s)
            )

    def toggle(self) -> None:
        """Run, or rest; a crossing that is singled out is run through, and one that was stopped goes on."""
        passage, focus = self._focus.passage, self._focus
        if self.running:
            self.rest()
        elif passage is None:
            self.run()
        elif (
            self._run.span == focus.window and self._run.interrupted and focus.moment_s == self._run.moment_s
        ):
            self._start(self._run.started(self._clock()))
        else:
            self._run_through(passage, onward=False, remember=True)

    def run(self) -> None:
        """Run from where the arm is through the rest of the record; nothing happens without a record."""
        record = self._focus.record
        if record is None or not len(record):
            return
        now_s, moment_s = self._clock(), self._focus.moment_s
        span = whole(record)
        window = self._focus.window
        if moment_s is None or not window.contains(moment_s):
            moment_s = window.start
        self._start(Playback(span, moment_s, speed=self._speed_for(None)).started(now_s))

    def run_crossing(self, onward: bool = False) -> None:
        """Run through the crossing that is singled out, or the nearest one, from before it to after it.

        Parameters
        ----------
        onward : bool
            Go on with the next crossing at its end, until the last of the chosen band or of all.
        """
        stop = self._focus.nearest_stop()
        if stop is not None:
            self._run_through(stop, onward, remember=True)

    def choose(self, passage: int) -> None:
        """Single out a crossing; an arm that runs goes on with it."""
        if self.running:
            self._run_through(passage, self._onward, remember=True)
        else:
            self._focus.choose_passage(passage)

    def step(self, by: int) -> None:
        """Single out the next (1) or previous (-1) crossing; an arm that runs goes on with it."""
        running, onward = self.running, self._onward
        self._focus.step(by)
        if running and self._focus.passage is not None:
            self._run_through(self._focus.passage, onward, remember=False)

    def set_repeat(self, repeat: bool) -> None:
        """Begin a crossing again at its end, from now on, or not."""
        if repeat == self._repeat:
            return
        self._repeat = repeat
        if self.running and self._run.span != self._whole():
            self._run = self._run.repeating(repeat, self._clock())
        self.repeat_changed.emit(repeat)

    def rest(self) -> None:
        """Stop where it is."""
        self._onward = False
        if self.running:
            shown_s = self._focus.moment_s
            self._run = replace(self._run, moment_s=shown_s or self._run.span.start, since_s=None)
            self._timer.stop()
            self.running_changed.emit(False)
            self.speed_changed.emit()

    def set_speed(self, speed: float | None) -> None:
        """Go on at another speed, one of `SPEEDS`; None: let each crossing take its own."""
        if speed != self._speed:
            whole_record = self._run.span == self._whole()
            self._speed = speed
            now_speed = self._speed_for(None if whole_record else self._focus.passage)
            self._run = self._run.at_speed(now_speed, self._clock())
            self.speed_changed.emit()

    def nudge(self, by: float) -> None:
        """Move by a share of the shown window, at least by one sample; a run stops."""
        self.rest()
        record, window, moment_s = self._focus.record, self._focus.window, self._focus.moment_s
        if record is None or not len(record):
            return
        step_s = max(abs(by) * window.length, record.sample_interval_s) * (1 if by > 0 else -1)
        limits = whole(record)
        last_s = limits.stop - record.sample_interval_s
        wanted_s = (window.start if moment_s is None else moment_s) + step_s
        self._focus.follow(min(max(wanted_s, limits.start), last_s))

    def change_speed(self, by: int) -> None:
        """Take the next faster (1) or slower (-1) speed."""
        place = SPEEDS.index(self.speed) + by
        self.set_speed(SPEEDS[min(max(place, 0), len(SPEEDS) - 1)])

    def advance(self) -> None:
        """Move to where the clock says; called by the timer."""
        now_s = self._clock()
        moment_s = self._run.moment_at(now_s)
        self._focus.follow(moment_s)
        if not self._run.finished(now_s):
            return
        stops, passage = self._focus.stops, self._focus.passage
        after = stops[stops.index(passage) + 1 :] if passage in stops else []
        if self._onward and after:
            self._run_through(after[0], onward=True, remember=False)
        else:
            self.rest()

    def _start(self, run: Playback) -> None:
        self._run = run
        self._timer.start()
        self.running_changed.emit(True)
        self.speed_changed.emit()

    def _run_through(self, passage: int, onward: bool, remember: bool) -> None:
        self._focus.choose_passage(passage, remember)  # which rests the arm where it goes to another record
        span, now_s = self._focus.window, self._clock()
        speed = self._speed_for(passage)
        self._start(Playback(span, span.start, speed=speed, repeat=self._repeat).started(now_s))
        self._onward = onward
        self._focus.follow(span.start)

    def _speed_for(self, passage: int | None) -> float:
        """What was chosen; else what lets a crossing be watched, and the rest of a record runs as it was."""
        if self._speed is not None:
            return self._speed
        return 1.0 if passage is None else own_speed(self._focus.stretch_of(passage).length)

    def _whole(self) -> Interval | None:
        record = self._focus.record
        return whole(record) if record is not None else None

    def _path(self) -> ArmPath | None:
        record = self._focus.record
        return self._survey.path(record.name) if self._survey is not None and record is not None else None


def moment_of(path: ArmPath, travel_percent: float, near_s: float) -> float:
    """When the arm was at a place, as near as possible to a moment.

    Parameters
    ----------
    path : ArmPath
        At least one node.
    travel_percent : float
        The place; where the arm never was there, its nearest place counts.
    near_s : float
        Of several times, the one nearest to this is taken.
    """
    low, high = float(path.travel_percent.min()), float(path.travel_percent.max())
    offset = path.travel_percent - min(max(travel_percent, low), high)
    turns = np.flatnonzero((offset[:-1] <= 0) != (offset[1:] <= 0))
    if not turns.size:
        nearest = np.flatnonzero(np.abs(offset) == np.abs(offset).min())
        times_s = path.time_s[nearest]
    else:
        share = offset[turns] / (offset[turns] - offset[turns + 1])
        times_s = path.time_s[turns] + share * (path.time_s[turns + 1] - path.time_s[turns])
    return float(times_s[np.argmin(np.abs(times_s - near_s))])
