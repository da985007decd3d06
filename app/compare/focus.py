"""Which stretches of time the two traces of Compare show: on one clock, or each on its own."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Record
from analysis.intervals import Interval
from app.review.focus import LEAST_SAMPLES, clipped, whole
from app.review.view_history import View, ViewHistory

Pair = tuple[Interval, Interval]
_NOTHING = Interval(0.0, 1.0)


class CompareFocus(QObject):
    """The one place that knows which time is shown; the traces emit what the hand meant, and follow.

    While the time is linked, a moment of the first trace and the moment `offset_s` later of the second lie
    over each other. Let go, each trace moves alone; linked again, they go on as they then stand.

    Signals
    -------
    windows_changed(), linked_changed(), moment_changed()
    """

    windows_changed = Signal()
    linked_changed = Signal()
    moment_changed = Signal()

    def __init__(self, clock: Callable[[], float] = time.monotonic, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._clock = clock
        self._records: tuple[Record | None, Record | None] = (None, None)
        self._windows: Pair = (_NOTHING, _NOTHING)
        self._linked = True
        self._offset_s = 0.0
        self._moment: tuple[int, float] | None = None
        self._history = ViewHistory()

    @property
    def windows(self) -> Pair:
        """The stretch of each record that is shown, in its own seconds."""
        return self._windows

    @property
    def linked(self) -> bool:
        """Whether both move together."""
        return self._linked

    @property
    def offset_s(self) -> float:
        """Seconds that the second record's clock is ahead of the first's."""
        return self._offset_s

    @property
    def shift_s(self) -> float:
        """Seconds by which the second trace was moved to later, from where both begin over each other."""
        starts = [item.first_sample_s if item is not None else 0.0 for item in self._records]
        return starts[1] - starts[0] - self._offset_s

    @property
    def moments(self) -> tuple[float | None, float | None]:
        """What is pointed at in each trace; both where the time is linked."""
        if self._moment is None:
            return None, None
        side, moment_s = self._moment
        both = [moment_s, moment_s]
        both[1 - side] += self._offset_s if side == 0 else -self._offset_s
        if self._linked:
            return both[0], both[1]
        return (moment_s, None) if side == 0 else (None, moment_s)

    @property
    def pointed(self) -> tuple[int, float] | None:
        """The side that is pointed at, and the moment."""
        return self._moment

    @property
    def history(self) -> ViewHistory:
        """Earlier and later views."""
        return self._history

    def take(self, first: Record | None, second: Record | None) -> None:
        """Look at two other records, as wholes, their beginnings over each other."""
        if first is self._records[0] and second is self._records[1]:
            return  # by identity: records of equal name and length may hold other samples
        self._records, self._history, self._moment = (first, second), ViewHistory(), None
        starts = [item.first_sample_s if item is not None else 0.0 for item in (first, second)]
        self._offset_s = starts[1] - starts[0]
        self.show_whole()
        self.moment_changed.emit()

    def swapped(self) -> None:
        """Let the sides change places, and keep what is shown."""
        self._records = (self._records[1], self._records[0])
        self._windows = (self._windows[1], self._windows[0])
        self._offset_s = -self._offset_s
        self._history, self._moment = ViewHistory(), None
        self.windows_changed.emit()
        self.moment_changed.emit()

    def show_window(self, side: int, window: Interval) -> None:
        """Show a stretch of one side's time, and the same of the other's where they are linked."""
        if self._records[side] is None:
            return
        if self._linked:
            start_s = window.start if side == 0 else window.start - self._offset_s
            self._go(self._pair(self._limited(Interval(start_s, start_s + window.length))))
            return
        windows = list(self._windows)
        record = self._records[side]
        windows[side] = clipped(window, record) if record is not None else window
        self._go((windows[0], windows[1]))

    def show_whole(self) -> None:
        """Show both records as wholes."""
        if self._linked:
            self._go(self._pair(self._limits()))
        else:
            self._go((_whole(self._records[0]), _whole(self._records[1])))

    def zoom(self, factor: float, side: int | None = None, at_s: float | None = None) -> None:
        """Show `factor` times as much time, keeping `at_s` in place; of both sides where none is named."""
        for place in (0, 1) if side is None and not self._linked else (side or 0,):
            window = self._windows[place]
            fixed_s = window.centre if at_s is None else at_s
            start_s, stop_s = (fixed_s + factor * (end - fixed_s) for end in (window.start, window.stop))
            self.show_window(place, Interval(start_s, stop_s))

    def pan(self, share: float, side: int | None = None) -> None:
        """Move one side, or both, by a share of the window; to later time where it is positive."""
        for place in (0, 1) if side is None and not self._linked else (side or 0,):
            window = self._windows[place]
            step_s = share * window.length
            self.show_window(place, Interval(window.start + step_s, window.stop + step_s))

    def link(self, linked: bool) -> None:
        """Move both together from now on, as they stand, or each alone."""
        if linked == self._linked:
            return
        self._linked = linked
        if linked:
            self.align(self._windows[1].start - self._windows[0].start)
        self.linked_changed.emit()

    def align(self, offset_s: float) -> None:
        """Lay a moment of the first record over the one that is `offset_s` later in the second."""
        self._offset_s = offset_s
        self._linked = True
        self._history = ViewHistory()
        self._go(self._pair(self._limited(self._windows[0])))
        self.linked_changed.emit()

    def nudge(self, share: float) -> None:
        """Shift the second trace under the first by a share of the window; to later where it is positive."""
        self.align(self._offset_s - share * self._windows[0].length)

    def back(self) -> None:
        """Show the view before this one."""
        self._follow(self._history.back())

    def forward(self) -> None:
        """Show the view after this one, where we went back."""
        self._follow(self._history.forward())

    def point(self, side: int, moment_s: float | None) -> None:
        """Point at a moment of one side, or at none."""
        moment = (side, moment_s) if moment_s is not None else None
        if moment != self._moment:
            self._moment = moment
            self.moment_changed.emit()

    def _limits(self) -> Interval:
        """On the first record's clock: from the earlier beginning to the later end."""
        spans = []
        for record, shift_s in zip(self._records, (0.0, self._offset_s), strict=True):
            if record is not None:
                own = whole(record)
                spans.append(Interval(own.start - shift_s, own.stop - shift_s))
        if not spans:
            return _NOTHING
        return Interval(min(item.start for item in spans), max(item.stop for item in spans))

    def _limited(self, window: Interval) -> Interval:
        limits = self._limits()
        least_s = LEAST_SAMPLES * max(
            (item.sample_interval_s for item in self._records if item is not None), default=0.0
        )
        length_s = min(max(window.length, least_s), limits.length)
        start_s = window.start if length_s == window.length else window.centre - 0.5 * length_s
        start_s = min(max(start_s, limits.start), limits.stop - length_s)
        return Interval(start_s, start_s + length_s)

    def _pair(self, window: Interval) -> Pair:
        return window, Interval(window.start + self._offset_s, window.stop + self._offset_s)

    def _go(self, windows: Pair, remember: bool = True) -> None:
        if remember:
            names = " ".join(item.name if item is not None else "-" for item in self._records)
            self._history = self._history.visited(View(names, *windows), self._clock())
        self._windows = windows
        self.windows_changed.emit()

    def _follow(self, history: ViewHistory) -> None:
        view = history.present
        if view is not None and view.second is not None and history is not self._history:
            self._history = history
            self._go((view.window, view.second), remember=False)


def _whole(record: Record | None) -> Interval:
    return whole(record) if record is not None else _NOTHING
