"""A plot area that says what the hand meant along x, and changes nothing by itself."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pyqtgraph as pg
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtWidgets import QGraphicsItem

from analysis.intervals import Interval

NOTCH = 120.0  # one notch of a wheel, in eighths of a degree (Qt's unit)
ZOOM_PER_NOTCH = 0.8


class GestureBox(pg.ViewBox):
    """A view box whose mouse is read out as intentions along x.

    Signals
    -------
    zoomed(factor, at)
        Wheel at the pointer: show `factor` times as much, keeping `at` in place.
    panned(share)
        Dragged with the middle button or Shift, or a sideways wheel: move by a share of the view.
    spanned(interval, finished)
        Dragged with the left button over an interval.
    pressed(at, twice)
        Clicked, once or twice.
    marked(interval, finished)
        Dragged with the left button and Ctrl over an interval.
    gripped(what, start, at, finished)
        Something that `grip` found was dragged from one place to another.
    asked(at, QPoint)
        Clicked with the right button, at this point of the screen.
    resized()
        The plot has another size.
    """

    zoomed = Signal(float, float)
    panned = Signal(float)
    spanned = Signal(object, bool)
    pressed = Signal(float, bool)
    marked = Signal(object, bool)
    gripped = Signal(object, float, float, bool)
    asked = Signal(float, object)
    resized = Signal()

    def __init__(self) -> None:
        pg.ViewBox.__init__(self, enableMenu=False, defaultPadding=0.0)
        self._base: pg.ViewBox = self
        pg.ViewBox.setMouseEnabled(self, False, False)
        self.grip: Callable[[QPointF], object | None] = lambda _scene_point: None
        self.claim: Callable[[QPointF], bool] = lambda _scene_point: False
        self._held: object | None = None
        self._marking = False
        self._base.sigResized.connect(lambda _box: self.resized.emit())

    def show_x(self, span: Interval) -> None:
        """Show this stretch of x."""
        self._base.setXRange(span.start, span.stop, padding=0.0)

    def show_y(self, low: float, high: float) -> None:
        """Show this stretch of y."""
        self._base.setYRange(low, high, padding=0.0)

    def shown(self) -> tuple[Interval, Interval]:
        """The stretches of x and y that are shown."""
        (left, right), (bottom, top) = self._base.viewRange()
        return Interval(left, right), Interval(bottom, top)

    def size_px(self) -> tuple[float, float]:
        """Width and height in pixels, at least one each."""
        area = self.rect()
        return max(area.width(), 1.0), max(area.height(), 1.0)

    def x_at(self, scene_point: QPointF) -> float:
        """The x under a point of the scene."""
        return float(self._base.mapSceneToView(scene_point).x())

    def to_scene(self, x: float, y: float) -> QPointF:
        """Where a place lies in the scene."""
        return QPointF(self._base.mapViewToScene(QPointF(x, y)))

    def covers(self, scene_point: QPointF) -> bool:
        """Whether a point of the scene lies in the plot area."""
        return self.sceneBoundingRect().contains(scene_point)

    def hold(self, *items: QGraphicsItem) -> None:
        """Draw these in the plot."""
        for item in items:
            self._base.addItem(item, ignoreBounds=True)

    def drop(self, *items: QGraphicsItem) -> None:
        """Draw these no longer."""
        for item in items:
            self._base.removeItem(item)

    def wheelEvent(self, ev: Any, axis: int | None = None) -> None:
        """Zoom upright, move sideways."""
        sideways = ev.orientation() == Qt.Orientation.Horizontal
        if sideways or ev.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.panned.emit(-0.1 * ev.delta() / NOTCH)
        else:
            self.zoomed.emit(ZOOM_PER_NOTCH ** (ev.delta() / NOTCH), self.x_at(ev.scenePos()))
        ev.accept()

    def mouseDragEvent(self, ev: Any, axis: int | None = None) -> None:
        """Left: what can be gripped, or a stretch; with Ctrl mark. Middle, or left with Shift: move."""
        left = ev.button() == Qt.MouseButton.LeftButton
        moving = ev.button() == Qt.MouseButton.MiddleButton or (
            left and ev.modifiers() & Qt.KeyboardModifier.ShiftModifier
        )
        if moving:
            ev.accept()
            step_px = ev.pos().x() - ev.lastPos().x()
            self.panned.emit(-step_px / self.size_px()[0])
        elif left:
            ev.accept()
            if ev.isStart():
                # Ctrl marks, whatever lies under the hand; letting it go on the way changes nothing.
                self._marking = bool(ev.modifiers() & Qt.KeyboardModifier.ControlModifier)
                self._held = None if self._marking else self.grip(ev.buttonDownScenePos())
            start, at = self._x_in(ev.buttonDownPos()), self._x_in(ev.pos())
            span = Interval(min(start, at), max(start, at))
            if self._held is not None:
                self.gripped.emit(self._held, start, at, ev.isFinish())
            elif self._marking:
                self.marked.emit(span, ev.isFinish())
            else:
                self.spanned.emit(span, ev.isFinish())
        else:
            ev.ignore()

    def mouseClickEvent(self, ev: Any) -> None:
        """Click and double click with the left button, unless `claim` takes it; ask with the right one."""
        if ev.button() == Qt.MouseButton.LeftButton:
            ev.accept()
            if not self.claim(ev.scenePos()):
                self.pressed.emit(self._x_in(ev.pos()), bool(ev.double()))
        elif ev.button() == Qt.MouseButton.RightButton:
            ev.accept()
            self.asked.emit(self._x_in(ev.pos()), ev.screenPos().toPoint())

    def _x_in(self, point: QPointF) -> float:
        return float(self._base.mapToView(point).x())
