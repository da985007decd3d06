"""A plot area that says what the hand meant along x, and changes nothing by itself."""

from __future__ import annotations

from typing import Any

import pyqtgraph as pg
from PySide6.QtCore import Qt, Signal

from analysis.intervals import Interval

_NOTCH = 120.0  # one notch of a wheel, in eighths of a degree (Qt's unit)
_ZOOM_PER_NOTCH = 0.8


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
    """

    zoomed = Signal(float, float)
    panned = Signal(float)
    spanned = Signal(object, bool)
    pressed = Signal(float, bool)

    def __init__(self) -> None:
        super().__init__(enableMenu=False, defaultPadding=0.0)
        self.setMouseEnabled(False, False)
        self._last_x: float | None = None

    def wheelEvent(self, ev: Any, axis: int | None = None) -> None:
        """Zoom upright, move sideways."""
        sideways = ev.orientation() == Qt.Orientation.Horizontal
        if sideways or ev.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.panned.emit(-0.1 * ev.delta() / _NOTCH)
        else:
            at = self.mapSceneToView(ev.scenePos()).x()
            self.zoomed.emit(_ZOOM_PER_NOTCH ** (ev.delta() / _NOTCH), at)
        ev.accept()

    def mouseDragEvent(self, ev: Any, axis: int | None = None) -> None:
        """Left: choose a stretch. Middle, or left with Shift: move."""
        left = ev.button() == Qt.MouseButton.LeftButton
        moving = ev.button() == Qt.MouseButton.MiddleButton or (
            left and ev.modifiers() & Qt.KeyboardModifier.ShiftModifier
        )
        if moving:
            ev.accept()
            step_px = ev.pos().x() - ev.lastPos().x()
            self.panned.emit(-step_px / max(self.width(), 1.0))
        elif left:
            ev.accept()
            ends = sorted([self.mapToView(ev.buttonDownPos()).x(), self.mapToView(ev.pos()).x()])
            self.spanned.emit(Interval(ends[0], ends[1]), ev.isFinish())
        else:
            ev.ignore()

    def mouseClickEvent(self, ev: Any) -> None:
        """Click and double click with the left button."""
        if ev.button() == Qt.MouseButton.LeftButton:
            ev.accept()
            self.pressed.emit(self.mapToView(ev.pos()).x(), bool(ev.double()))
