"""The edge to pyqtgraph, which ships no types: what the rest of the window calls is typed here."""

from __future__ import annotations

from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QNativeGestureEvent, QPainterPath, QResizeEvent, QTransform
from PySide6.QtWidgets import QGraphicsGridLayout, QGraphicsItem, QGraphicsView, QWidget

from app.drawing.axes import QuietAxis
from app.drawing.gestures import GestureBox
from app.drawing.spoken import Drawn

_PINCH = Qt.NativeGestureType.ZoomNativeGesture


def path_of(x: NDArray[np.float64], y: NDArray[np.float64], joined: NDArray[np.int32]) -> QPainterPath:
    """Lines from point to point, made at once: adding thousands one by one takes a second.

    Parameters
    ----------
    x, y : ndarray, shape (n_points,)
        Finite.
    joined : ndarray of int32, shape (n_points,)
        Whether each point is joined to the next one.
    """
    return QPainterPath(pg.arrayToQPath(x, y, connect=joined, finiteCheck=False))


class Drawing(pg.GraphicsObject):
    """Base of everything that we draw into a plot ourselves."""

    def __init__(self) -> None:
        pg.GraphicsObject.__init__(self)

    def shown_rect(self) -> QRectF:
        """What the plot shows, in the plot's units; empty before the item is in a plot."""
        item: pg.GraphicsObject = self
        return QRectF(item.viewRect() or QRectF())

    def pixel_ratio(self) -> float:
        """Device pixels a logical pixel: 2 at 200 % scaling."""
        view = self._view()
        return view.devicePixelRatioF() if view is not None else 1.0

    def to_pixels(self) -> QTransform:
        """From the plot's units to logical pixels of the canvas that it is seen in, as `paint` gets it."""
        view = self._view()
        return self.sceneTransform() * view.viewportTransform() if view is not None else QTransform()

    def _view(self) -> QGraphicsView | None:
        item: pg.GraphicsObject = self
        view: QGraphicsView | None = item.getViewWidget()  # kept at hand; Qt makes a list of them each time
        return view

    def plot_box(self) -> GestureBox | None:
        """The plot area that the item is in."""
        item: pg.GraphicsObject = self
        box = item.getViewBox()
        return box if isinstance(box, GestureBox) else None


class UprightLine(pg.InfiniteLine):
    """A thin upright line across a plot."""

    def __init__(self) -> None:
        pg.InfiniteLine.__init__(self, angle=90, movable=False)

    def recolour(self, colour: QColor) -> None:
        """Draw in another colour."""
        line: pg.InfiniteLine = self
        line.setPen(pg.mkPen(colour, width=1))

    def show_at(self, x: float | None) -> None:
        """Stand there, or nowhere."""
        line: pg.InfiniteLine = self
        line.setVisible(x is not None)
        if x is not None:
            line.setValue(x)


class LevelLine(pg.InfiniteLine):
    """A thin dashed level across a plot."""

    def __init__(self) -> None:
        pg.InfiniteLine.__init__(self, angle=0, movable=False)

    def recolour(self, colour: QColor) -> None:
        """Draw in another colour."""
        line: pg.InfiniteLine = self
        line.setPen(pg.mkPen(colour, width=1, style=Qt.PenStyle.DashLine))

    def show_at(self, y: float) -> None:
        """Stand at that height."""
        line: pg.InfiniteLine = self
        line.setValue(y)


class _Plot(pg.GraphicsWidget):
    """A plot area with an axis at its left and one below it, and room for names above.

    pyqtgraph's own plot makes two axes more, which follow every frame unseen, and a menu with forty controls:
    ten milliseconds each, at the start and for every record (measured).
    """

    def __init__(self, box: GestureBox, left: QuietAxis, bottom: QuietAxis) -> None:
        pg.GraphicsWidget.__init__(self)
        self._bottom: Any = bottom
        self._grid = QGraphicsGridLayout(self)
        self._grid.setContentsMargins(1, 1, 1, 1)
        self._grid.setSpacing(0)
        self._grid.setRowStretchFactor(1, 1)
        self._grid.setColumnStretchFactor(1, 1)
        places: tuple[tuple[Any, int, int], ...] = ((left, 1, 0), (box, 1, 1), (bottom, 2, 1))
        for item, row, column in places:
            self._grid.addItem(item, row, column)
        for axis in (left, bottom):
            axis.join(box)

    def set_head(self, head_px: float) -> None:
        """Leave so much room for names."""
        self._grid.setRowFixedHeight(0, head_px)

    def show_with_axis(self, shown: bool) -> None:
        """Show or hide it, and its lower axis, which would ask for room even then."""
        self.setVisible(shown)  # first: an axis takes no height while what it lies in is hidden
        if shown:
            self._bottom.show()
        else:
            self._bottom.hide()


class Canvas(Drawn, pg.GraphicsLayoutWidget):
    """Plots below each other, whose mouse is read out as intentions.

    Signals
    -------
    hovered(QPointF or None)
        Where the pointer is in the scene; None once it has left.
    pinched(factor, QPointF)
        Two fingers on a pad: show `factor` times as much, keeping that point of the scene in place.
    resized()
        It has another size; whatever it lies in hears of that before it is so.
    """

    hovered = Signal(object)

    pinched = Signal(float, object)

    resized = Signal()

    def __init__(self, name: str, spacing: int = 3) -> None:
        pg.GraphicsLayoutWidget.__init__(self)
        self._ci: Any = self.ci
        self._ci.setContentsMargins(0, 0, 6, 0)
        self._ci.setSpacing(spacing)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.viewport().installEventFilter(self)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Tell it when the plots are laid out."""
        pg.GraphicsLayoutWidget.resizeEvent(self, event)
        self.resized.emit()

    @property
    def sheet(self) -> QWidget:
        """The widget that gets the mouse."""
        return self.viewport()

    def add_plot(
        self, row: int, box: GestureBox, left: QuietAxis, bottom: QuietAxis, head_px: float = 0.0
    ) -> QGraphicsItem:
        """Put a plot into a row, with room for names above it; back comes the whole, axes included."""
        plot = _Plot(box, left, bottom)
        plot.set_head(head_px)
        self._ci.addItem(plot, row=row, col=0)
        return plot

    def set_head(self, whole: QGraphicsItem, head_px: float) -> None:
        """Leave so much room for names above a plot."""
        if isinstance(whole, _Plot):
            whole.set_head(head_px)

    def show_plot(self, whole: QGraphicsItem, shown: bool) -> None:
        """Show a plot, or leave its row to the others: its axis would ask for room even then."""
        if isinstance(whole, _Plot):
            whole.show_with_axis(shown)

    def prepare(self) -> None:
        """Work out what moved before it is painted: pyqtgraph would do so while painting, and paint twice."""
        scene: Any = self.scene()
        scene.prepareForPaint()

    def clear_plots(self) -> None:
        """Take every plot out."""
        self._ci.clear()

    def stretch_row(self, row: int, share: int) -> None:
        """Share of the free height that a row takes."""
        self._ci.layout.setRowStretchFactor(row, share)

    def fix_row(self, row: int, height: float) -> None:
        """Height of a row in pixels."""
        self._ci.layout.setRowFixedHeight(row, height)

    def paint_ground(self, colour: str) -> None:
        """Set the ground's colour."""
        widget: pg.GraphicsLayoutWidget = self
        widget.setBackground(colour)

    def sheet_point(self, box: GestureBox, x: float, y: float) -> QPointF:
        """Where a place of a plot lies on the sheet."""
        return QPointF(self.mapFromScene(box.to_scene(x, y)))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Say where the pointer is, when it has left, and when two fingers pinch."""
        if event.type() == QEvent.Type.Leave:
            self.hovered.emit(None)
        elif isinstance(event, QMouseEvent) and event.type() == QEvent.Type.MouseMove:
            # Not the scene's own signal: it skips what comes sooner than 10 ms, and so the last place too.
            self.hovered.emit(QPointF(self.mapToScene(event.position().toPoint())))
        elif isinstance(event, QNativeGestureEvent) and event.gestureType() == _PINCH:
            scene_point = QPointF(self.mapToScene(event.position().toPoint()))
            self.pinched.emit(1.0 / max(1.0 + event.value(), 0.1), scene_point)
            return True
        return super().eventFilter(watched, event)
