"""Marks over some plots with one axis: drawn in each, chosen, dragged and placed by hand."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, QPointF, Qt, Signal
from PySide6.QtGui import QColor

from analysis.intervals import Interval
from app.drawing.gestures import GestureBox
from app.drawing.mark_item import Mark, MarkItem
from app.drawing.theme import Palette

_REACH_PX = 5.0
_PLATE_PX = 22.0

Heights = Callable[[float], tuple[float, ...]]
Place = float | Interval


@dataclass(frozen=True, slots=True)
class _Grip:
    """What was taken hold of: a mark, and its start, its stop, or the whole of it."""

    mark: Mark
    part: str


class MarkLayer(QObject):
    """The marks of a view.

    Signals
    -------
    chosen(mark_id)
        A mark was clicked.
    moved(mark_id, place)
        A mark, or an edge of it, was dragged to a place: a float, or an `Interval`.
    spanned(Interval)
        A stretch was drawn with Ctrl held.
    """

    chosen = Signal(str)
    moved = Signal(str, object)
    spanned = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.snap_point: Callable[[float], float] = lambda at: at
        self.foot_px = 0.0  # room that labels leave below them, set before the plots are added
        self.snap_span: Callable[[Interval], Interval] = lambda span: span
        self._plots: list[tuple[GestureBox, MarkItem, Heights]] = []
        self._marks: tuple[Mark, ...] = ()
        self._preview: Mark | None = None

    @property
    def marks(self) -> tuple[Mark, ...]:
        """What is drawn, a drag under way left out."""
        return self._marks

    def clear(self) -> None:
        """Forget the plots, which are gone."""
        self._plots.clear()

    def add_plot(self, box: GestureBox, heights: Heights = lambda _at: (), *, labels: bool = True) -> None:
        """Draw in this plot too; `heights` gives the values of the samples under a point."""
        item = MarkItem(labels, self.foot_px)
        box.hold(item)
        box.grip = lambda point: self._grip(box, item, point)
        box.claim = lambda point: self._claim(item, point)
        box.gripped.connect(self._drag)
        box.marked.connect(self._draw)
        self._plots.append((box, item, heights))

    def show_marks(self, marks: tuple[Mark, ...]) -> None:
        """Draw these marks."""
        self._marks = marks
        self._show()

    def recolour(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        for _, item, _ in self._plots:
            item.band_colour = QColor(palette.band)
            item.recolour(QColor(palette.choice), QColor(palette.ink), QColor(palette.paper))

    def press(self, at: float) -> bool:
        """Choose the mark at a place, where there is one."""
        for box, _, _ in self._plots[:1]:
            reach = _REACH_PX * box.shown()[0].length / box.size_px()[0]
            near = [(distance, mark) for mark in self._marks if (distance := _distance(mark, at)) <= reach]
            if near:
                self.chosen.emit(min(near, key=lambda item: item[0])[1].mark_id)
                return True
        return False

    def hover(self, position: QPointF | None) -> None:
        """Show what can be gripped."""
        for box, item, _ in self._plots:
            here = position if position is not None and box.covers(position) else None
            if here is not None and self._grip(box, item, here) is not None:
                box.setCursor(Qt.CursorShape.SizeHorCursor)
            else:
                box.unsetCursor()

    def _claim(self, item: MarkItem, position: QPointF) -> bool:
        """Choose the mark whose label was clicked."""
        mark = item.labelled_at(position)
        if mark is None or mark.fixed:
            return False
        self.chosen.emit(mark.mark_id)
        return True

    def _grip(self, box: GestureBox, item: MarkItem, position: QPointF) -> _Grip | None:
        """A mark by its label, or the edge or point within reach, the chosen one's first; or by its foot."""
        named = item.labelled_at(position)
        if named is not None and not named.fixed:
            return _Grip(named, "whole")
        at = box.x_at(position)
        reach = _REACH_PX * box.shown()[0].length / box.size_px()[0]
        marks = sorted((item for item in self._marks if not item.fixed), key=lambda item: not item.chosen)
        for mark in marks:
            for part, edge in (("start", mark.start), ("stop", mark.stop)):
                if edge is not None and abs(edge - at) <= reach:
                    return _Grip(mark, part)
        low = box.sceneBoundingRect().bottom() - position.y() <= _PLATE_PX
        inside = [item for item in marks if item.stop is not None and item.start <= at <= item.stop]
        return _Grip(inside[0], "whole") if low and inside and not inside[0].quiet else None

    def _drag(self, grip: _Grip, start: float, at: float, finished: bool) -> None:
        mark = self._dragged(grip, at - start)
        self._preview = None if finished else mark
        if finished and mark != grip.mark:
            place = mark.start if mark.stop is None else Interval(mark.start, mark.stop)
            self.moved.emit(mark.mark_id, place)
        self._show()

    def _dragged(self, grip: _Grip, by: float) -> Mark:
        mark = grip.mark
        if mark.stop is None:
            return replace(mark, start=self.snap_point(mark.start + by))
        ends = sorted(
            (
                mark.start + (by if grip.part in ("start", "whole") else 0.0),
                mark.stop + (by if grip.part in ("stop", "whole") else 0.0),
            )
        )
        span = self.snap_span(Interval(ends[0], ends[1]))
        return replace(mark, start=span.start, stop=span.stop)

    def _draw(self, span: Interval, finished: bool) -> None:
        span = self.snap_span(span)
        self._preview = None if finished else Mark("", span.start, span.stop, chosen=True)
        self._show()
        if finished and span.length > 0:
            self.spanned.emit(span)

    def _show(self) -> None:
        marks = self._marks
        if self._preview is not None:
            marks = (*(item for item in marks if item.mark_id != self._preview.mark_id), self._preview)
        marks = tuple(sorted(marks, key=lambda mark: mark.chosen))  # the chosen one over all others
        for _, item, heights in self._plots:
            item.show_marks(tuple((mark, heights(mark.start) if mark.stop is None else ()) for mark in marks))


def _distance(mark: Mark, at: float) -> float:
    edges = [mark.start] if mark.stop is None else [mark.start, mark.stop]
    return min(abs(edge - at) for edge in edges)
