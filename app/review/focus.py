"""What the technician is looking at: record, stretch of time, moment, band and crossing."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Capture, Record
from analysis.diagnosis.findings import Band, Findings
from analysis.intervals import Interval
from app.review.deepest import deepest_s
from app.review.passages import Passage, passage_at, passages, same_band, same_passage
from app.review.view_history import View, ViewHistory

_LEAST_MARGIN_PERCENT = 3.0
LEAST_SAMPLES = 8
"""No zoom shows fewer samples than this: there is nothing more to see."""


@dataclass(frozen=True, slots=True)
class Kept:
    """What was looked at: the views, the moment, the chosen band and passage."""

    history: ViewHistory
    moment_s: float | None
    band: int | None
    passage: int | None


class Focus(QObject):
    """The one place that knows what is shown; views emit what the user meant, and follow its signals.

    Signals
    -------
    record_changed(), window_changed(), travel_changed()
        Another record, another stretch of time, another stretch of the track.
    moment_changed(), target_changed()
        Another moment pointed at, another band or passage.
    """

    record_changed = Signal()
    window_changed = Signal()
    travel_changed = Signal()
    moment_changed = Signal()
    target_changed = Signal()

    def __init__(self, clock: Callable[[], float] = time.monotonic, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._clock = clock
        self._capture: Capture | None = None
        self._record: Record | None = None
        self._window = Interval(0.0, 0.0)
        self._travel: Interval | None = None
        self._moment_s: float | None = None
        self._findings: Findings | None = None
        self._passages: tuple[Passage, ...] = ()
        self._bands: tuple[Band, ...] = ()
        self._band: int | None = None
        self._passage: int | None = None
        self._history = ViewHistory()
        self._settled = False

    @property
    def record(self) -> Record | None:
        """The record that is shown."""
        return self._record

    @property
    def window(self) -> Interval:
        """The stretch of time that is shown, in seconds."""
        return self._window

    @property
    def travel(self) -> Interval | None:
        """The stretch of the track that is shown, in % of travel; None for the whole of it."""
        return self._travel

    @property
    def moment_s(self) -> float | None:
        """The moment that is pointed at, or where the arm is in a run."""
        return self._moment_s

    @property
    def band(self) -> int | None:
        """Index of the chosen band."""
        return self._band

    @property
    def passages(self) -> tuple[Passage, ...]:
        """Everything that can be stepped to."""
        return self._passages

    @property
    def passage(self) -> int | None:
        """Index of the passage that is singled out."""
        return self._passage

    @property
    def history(self) -> ViewHistory:
        """Earlier and later views."""
        return self._history

    def start(self, capture: Capture | None) -> None:
        """Look at another capture: its longest sweep, or else its first record, as a whole."""
        self._capture, self._history = capture, ViewHistory()
        self._findings, self._passages, self._bands, self._moment_s = None, (), (), None
        self._band, self._passage = None, None
        self._record, self._settled, self._travel = None, False, None
        if capture is not None and capture.records:
            sweeps = [item for item in capture.records if item.step == "sweep"]
            self.show_record(max(sweeps or capture.records[:1], key=len).name)
        else:
            self.record_changed.emit()
        self.travel_changed.emit()
        self.target_changed.emit()

    def renew(self, capture: Capture) -> None:
        """Look at the same stretch of the same capture, of whose records something else is said now."""
        self._capture = capture
        if self._record is not None:
            self._record = capture.record(self._record.name)
            self._settled = True
            self.record_changed.emit()
            self.window_changed.emit()

    def learn(self, findings: Findings) -> None:
        """Take what can be stepped to; go to the record with the likeliest band, or the deepest event."""
        band, passage = self._band, self._passages[self._passage] if self._passage is not None else None
        before = self._bands[band] if band is not None and band < len(self._bands) else None
        self._findings, self._passages, self._bands = findings, passages(findings), findings.bands
        # Examined again: what was chosen stays chosen where it is still there, and nobody is led away.
        self._band = same_band(before, findings.bands) if before is not None else None
        self._passage = same_passage(passage, self._passages) if passage is not None else None
        untouched = len(self._history.views) <= 1 and not self._settled
        events = [item for item in self._passages if item.band is None]
        if untouched:
            self._history = ViewHistory()
        if untouched and events:
            self.show_record(max(events, key=lambda item: abs(item.depth_v)).record)
        elif untouched and findings.bands:
            self.show_record(max(findings.bands, key=lambda band: band.confidence).record)
        self.target_changed.emit()

    def settle(self) -> None:
        """Say that something was done with what is shown: findings lead nobody away from it."""
        self._settled = True

    def show_record(self, name: str) -> None:
        """Show a record as a whole; a crossing that is singled out in another one is so no more."""
        if self._capture is None:
            return
        left = self._passage is not None and self._passages[self._passage].record != name
        if left:
            self._passage = None
        self._go(self._view(name, whole(self._capture.record(name))), remember=True)
        if left:
            self.target_changed.emit()

    def show_window(self, window: Interval) -> None:
        """Show a stretch of the present record, clipped to it and never finer than a few samples."""
        if self._record is not None:
            self._go(self._view(self._record.name, clipped(window, self._record)), remember=True)

    def show_travel(self, travel: Interval | None) -> None:
        """Show a stretch of the track, in % of travel, or the whole of it."""
        if self._record is not None:
            view = self._view(self._record.name, self._window)
            self._go(replace(view, travel=travel), remember=True)

    def show_whole(self) -> None:
        """Show the whole record and the whole track."""
        if self._record is not None:
            view = self._view(self._record.name, whole(self._record))
            self._go(replace(view, travel=None), remember=True)

    def keep(self) -> Kept:
        """What is looked at, to be looked at again by another focus on the same capture."""
        return Kept(self._history, self._moment_s, self._band, self._passage)

    def look_again(self, kept: Kept) -> None:
        """Look at what another focus looked at, and step back from there as it would."""
        view = kept.history.present
        if (
            self._capture is None
            or view is None
            or all(item.name != view.record for item in self._capture.records)
        ):
            return
        self._history, self._settled = kept.history, True
        self._go(view, remember=False)
        self._band = kept.band if kept.band is not None and kept.band < len(self._bands) else None
        known = kept.passage is not None and kept.passage < len(self._passages)
        self._passage = kept.passage if known else None
        self.point(kept.moment_s)
        self.target_changed.emit()

    def zoom(self, factor: float, at_s: float | None = None) -> None:
        """Show `factor` times as much time, keeping `at_s` (the middle by default) where it is."""
        window = self._window
        at_s = window.centre if at_s is None else at_s
        self.show_window(
            Interval(at_s - factor * (at_s - window.start), at_s + factor * (window.stop - at_s))
        )

    def pan(self, share: float) -> None:
        """Move by a share of the window, to the right where it is positive."""
        if self._record is None:
            return
        limits, step_s = whole(self._record), share * self._window.length
        step_s = min(max(step_s, limits.start - self._window.start), limits.stop - self._window.stop)
        self.show_window(Interval(self._window.start + step_s, self._window.stop + step_s))

    def back(self) -> None:
        """Show the view before this one."""
        self._follow(self._history.back())

    def forward(self) -> None:
        """Show the view after this one, where we went back."""
        self._follow(self._history.forward())

    def point(self, moment_s: float | None) -> None:
        """Point at a moment, or at none."""
        if moment_s != self._moment_s:
            self._moment_s = moment_s
            self.moment_changed.emit()

    def follow(self, moment_s: float) -> None:
        """Point at a moment and keep it in view, turning the page where it leaves; history stays as it is."""
        window = self._window
        # At its very end a run through what is shown is through, and nobody is led to the next page.
        if self._record is not None and not window.start <= moment_s <= window.stop:
            start_s = moment_s - 0.02 * window.length
            page = clipped(Interval(start_s, start_s + window.length), self._record)
            if page != window:
                self._go(self._view(self._record.name, page), remember=False)
        self.point(moment_s)

    def choose_band(self, band: int | None) -> None:
        """Choose a band, so that every crossing of it lights up."""
        self._band, self._passage = band, None
        self.target_changed.emit()

    def choose_passage(self, index: int, remember: bool = True, *, travel: Interval | None = None) -> None:
        """Single out a passage and zoom to it.

        Parameters
        ----------
        index : int
            Among the passages.
        remember : bool
            Whether it is a view to come back to.
        travel : Interval or None
            What the sensor track shows from now on, in % of travel; None for what it shows.
        """
        passage = self._passages[index]
        self._passage, self._band = index, passage.band
        view = self._view(passage.record, self.stretch_of(index))
        self._go(replace(view, travel=travel or view.travel), remember)
        self.point(self._clearest_s(passage))
        self.target_changed.emit()

    def stretch_of(self, index: int) -> Interval:
        """What is shown of its record where a passage is singled out: that, with a little on either side."""
        passage, capture = self._passages[index], self._capture
        around = passage.time.widened(max(0.6 * passage.time.length, 0.05))
        return clipped(around, capture.record(passage.record)) if capture is not None else around

    def _clearest_s(self, passage: Passage) -> float:
        """Where a crossing breaks up most; the middle of an event."""
        if passage.band is None or self._findings is None or self._record is None:
            return passage.time.centre
        return deepest_s(self._findings, self._record, passage.band, passage.time)

    def carry_to(self, record: str, span: Interval) -> None:
        """Single out the passage at this time, or none, instead of one that is; the view stays."""
        if self._passage is None:
            return
        found = passage_at(self._passages, record, span, self._passages[self._passage].band)
        if found != self._passage:
            self._passage = found
            self._band = self._passages[found].band if found is not None else self._band
            self.target_changed.emit()

    def open_band(self, band: int) -> None:
        """Choose a band, zoom the track to it, and time to its clearest crossing.

        That is the one with the most break-up, for a long one proves nothing.
        """
        span = self._bands[band].travel
        travel = span.widened(max(1.5 * span.length, _LEAST_MARGIN_PERCENT))
        own = [i for i, item in enumerate(self._passages) if item.band == band]
        if own:
            self.choose_passage(max(own, key=lambda i: self._passages[i].breakup_percent), travel=travel)
        else:
            self.choose_band(band)
            self.show_travel(travel)

    @property
    def stops(self) -> list[int]:
        """Indices of what is stepped to: the passages of the chosen band, or all."""
        return [i for i, item in enumerate(self._passages) if self._band is None or item.band == self._band]

    def nearest_stop(self) -> int | None:
        """The passage that is singled out; else the one at the arm, or the next after it; else the first."""
        if self._passage is not None:
            return self._passage
        stops, moment_s, name = self.stops, self._moment_s, self._record.name if self._record else ""
        if moment_s is None:
            moment_s = self._window.start
        ahead = [i for i in stops if self._passages[i].end >= (name, moment_s)]
        return next(iter(ahead or stops), None)

    def step(self, by: int) -> None:
        """Single out the next (1) or previous (-1) passage of the chosen band, or of all."""
        stops = self.stops
        if not stops:
            return
        if self._passage in stops:
            self.choose_passage(stops[(stops.index(self._passage) + by) % len(stops)])
        else:
            self.choose_passage(self._nearest_to_view(stops, by))

    def _nearest_to_view(self, stops: list[int], by: int) -> int:
        """The first of these that is in view or after it; going back, the last in view or before it."""
        name = self._record.name if self._record is not None else ""
        start, stop = (name, self._window.start), (name, self._window.stop)
        every = [(i, self._passages[i]) for i in stops]
        if by > 0:
            return next((i for i, item in every if item.end > start), stops[0])
        behind = (i for i, item in reversed(every) if (item.record, item.time.start) < stop)
        return next(behind, stops[-1])

    def step_record(self, by: int) -> None:
        """Show the next (1) or previous (-1) record."""
        if self._capture is None or self._record is None:
            return
        names = [item.name for item in self._capture.records]
        self.show_record(names[(names.index(self._record.name) + by) % len(names)])

    def _follow(self, history: ViewHistory) -> None:
        view = history.present
        if view is not None and history is not self._history:
            self._history = history
            self._go(view, remember=False)
            self._single_out_again(view)

    def _single_out_again(self, view: View) -> None:
        """What was singled out in an earlier view is so again, as far as it is still there."""
        own = [i for i, item in enumerate(self._passages) if item.record == view.record]
        then = view.singled_out
        found = [i for i in own if then is not None and self._passages[i].time.overlap(then) > 0.0]
        self._passage = next(iter(found), None)
        if self._passage is not None:
            self._band = self._passages[self._passage].band
            self.point(self._passages[self._passage].time.centre)
        self.target_changed.emit()

    def _view(self, record: str, window: Interval) -> View:
        """That record and window, with the stretch of the track and the crossing that are shown."""
        passage = self._passages[self._passage] if self._passage is not None else None
        own = passage.time if passage is not None and passage.record == record else None
        return View(record, window, travel=self._travel, singled_out=own)

    def _go(self, view: View, remember: bool) -> None:
        if self._capture is None:
            return
        if remember:
            self._history = self._history.visited(view, self._clock())
        moved = self._record is None or self._record.name != view.record
        if moved:
            self._record = self._capture.record(view.record)
            self._moment_s = view.window.start
        self._window = view.window
        turned, self._travel = view.travel != self._travel, view.travel
        if moved:
            self.record_changed.emit()
        self.window_changed.emit()
        if turned:
            self.travel_changed.emit()
        if moved:
            self.moment_changed.emit()


def whole(record: Record) -> Interval:
    """The time of a record from its first sample to one interval past its last."""
    return Interval(
        record.first_sample_s, record.first_sample_s + max(record.duration_s, record.sample_interval_s)
    )


def clipped(window: Interval, record: Record) -> Interval:
    """A window moved inside a record, no longer than it and no shorter than a few samples."""
    limits = whole(record)
    length_s = min(max(window.length, LEAST_SAMPLES * record.sample_interval_s), limits.length)
    start_s = window.start if length_s == window.length else window.centre - 0.5 * length_s
    start_s = min(max(start_s, limits.start), limits.stop - length_s)
    return Interval(start_s, start_s + length_s)
