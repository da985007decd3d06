"""Overview: the whole record, with the shown window to drag."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QEvent, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractSlider, QSizePolicy, QWidget

from analysis.captures.model import Channel, Record, Role
from analysis.errors import CaptureError
from analysis.intervals import Interval, union
from app.drawing.axes import LEFT_AXIS_PX
from app.drawing.band_item import Stretch
from app.drawing.curves import draws_curves
from app.drawing.envelopes import columns, extent_v
from app.drawing.gestures import NOTCH, ZOOM_PER_NOTCH
from app.drawing.numbers import duration
from app.drawing.theme import LIGHT, Palette

_HIGH_PX, _LOW_PX = 54, 34
_GRIP_PX = 6.0
_JOIN_PX = 3.0
_STEPS = 1000
_KEYS = {
    Qt.Key.Key_Left: (-0.25, 1.0),
    Qt.Key.Key_Right: (0.25, 1.0),
    Qt.Key.Key_Home: (-1e9, 1.0),
    Qt.Key.Key_End: (1e9, 1.0),
    Qt.Key.Key_Up: (0.0, 0.5),
    Qt.Key.Key_Down: (0.0, 2.0),
}
"""How far each key moves the window, in lengths of it, and how many times as long it makes it."""


def _key(event: QKeyEvent) -> Qt.Key | None:
    """The key, where it is one that moves the window and comes alone."""
    plain = event.modifiers() in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier)
    return next((key for key in _KEYS if plain and event.key() == key), None)


class OverviewView(QAbstractSlider):
    """The whole record as one silhouette; the shown window lies on it as a clear pane.

    For a screen reader it is a slider: its value is where the window begins, in thousandths of the record. By
    keys the window goes left and right, to either end, and grows and shrinks.

    Signals
    -------
    window_wanted(Interval)
        The window was dragged, resized at an edge, or drawn anew.
    zoomed(factor, at_s)
        The wheel was turned: show `factor` times as much, keeping `at_s` in place.
    """

    window_wanted = Signal(object)
    zoomed = Signal(float, float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Overview of the whole record"))
        self.setToolTip(
            self.tr("The whole record. Drag the clear window, or its edges; drag elsewhere for a new one.")
        )
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setOrientation(Qt.Orientation.Horizontal)
        self.setRange(0, _STEPS)
        self.valueChanged.connect(self._slide)
        self._palette = LIGHT
        self._record: Record | None = None
        self._window = Interval(0.0, 1.0)
        self._stretches: tuple[Stretch, ...] = ()
        self._moment_s: float | None = None
        self._silhouette: QPixmap | None = None
        self._shades: list[tuple[QRectF, QColor]] = []
        self._grip: tuple[str, float, Interval] | None = None
        self._low = False

    def sizeHint(self) -> QSize:
        """Wide, and one finger high; on a low screen half of that."""
        return QSize(600, _LOW_PX if self._low else _HIGH_PX)

    def show_low(self, low: bool) -> None:
        """Take less height, so that the record itself has room."""
        if low != self._low:
            self._low = low
            self.updateGeometry()

    def show_record(self, record: Record | None) -> None:
        """Show another record, or none."""
        self._record, self._silhouette, self._shades = record, None, []
        self.update()

    def show_window(self, window: Interval) -> None:
        """Lay the clear pane over this stretch."""
        self._window = window
        limits = self._limits()
        with QSignalBlocker(self):
            self.setValue(round(_STEPS * (window.start - limits.start) / limits.length))
        self._say_window()
        self.update()

    @property
    def stretches(self) -> tuple[Stretch, ...]:
        """What is shaded."""
        return self._stretches

    def show_stretches(self, stretches: tuple[Stretch, ...]) -> None:
        """Mark these stretches of time."""
        self._stretches, self._shades = stretches, []
        self.update()

    def show_moment(self, moment_s: float | None) -> None:
        """Mark a moment, or none."""
        self._moment_s = moment_s
        self.update()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette, self._silhouette, self._shades = palette, None, []
        self.update()

    def x_of(self, time_s: float) -> float:
        """Pixel of a time."""
        limits, area = self._limits(), self._area()
        return area.left() + area.width() * (time_s - limits.start) / limits.length

    def time_at(self, x: float) -> float:
        """Time of a pixel."""
        limits, area = self._limits(), self._area()
        return limits.start + limits.length * (x - area.left()) / area.width()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Draw silhouette and stretches anew at the next paint."""
        self._silhouette, self._shades = None, []
        super().resizeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Silhouette, marked stretches, and the shown window as a clear pane."""
        painter = QPainter(self)
        try:
            area = self._area()
            painter.setPen(QPen(QColor(self._palette.line), 1))
            painter.setBrush(QColor(self._palette.paper))
            if self.hasFocus():
                painter.setPen(QPen(QColor(self._palette.choice), 2))
            painter.drawRoundedRect(area.adjusted(-5, 1, 5, -1), 5, 5)
            self._paint_name(painter)
            if self._record is None or not len(self._record):
                return
            if draws_curves(painter):
                self._draw_channels(painter)
            else:
                self._silhouette = self._silhouette or self._draw_silhouette()
                painter.drawPixmap(0, 0, self._silhouette)
            self._paint_stretches(painter, area)
            self._paint_window(painter, area)
            if self._moment_s is not None:
                painter.setPen(QPen(QColor(self._palette.ink), 1))
                x = self.x_of(self._moment_s)
                painter.drawLine(QPointF(x, area.top() + 2), QPointF(x, area.bottom() - 2))
        finally:
            painter.end()

    def event(self, event: QEvent) -> bool:
        """Take the keys that move the window before the window's own shortcuts do."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _key(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left and right move the window, Home and End bring it to an end, up and down resize it."""
        key = _key(event)
        if self._record is None or not key:
            super().keyPressEvent(event)
            return
        limits, window = self._limits(), self._window
        move, scale = _KEYS[key]
        length = min(window.length * scale, limits.length)
        start = window.centre - 0.5 * length + move * length
        start = min(max(start, limits.start), limits.stop - length)
        self.window_wanted.emit(Interval(start, start + length))

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom as the wheel does over Trace, at the pointer where it is over the window."""
        notches = event.angleDelta().y() / NOTCH
        if self._record is not None and notches:
            shown = self._window
            at_s = min(max(self.time_at(event.position().x()), shown.start), shown.stop)
            self.zoomed.emit(ZOOM_PER_NOTCH**notches, at_s)
        event.accept()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show that the keys go here."""
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show that they no longer do."""
        super().focusOutEvent(event)
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the window, of an edge, or begin a new one."""
        if self._record is not None and event.button() == Qt.MouseButton.LeftButton:
            x = event.position().x()
            self._grip = (self._part_at(x), self.time_at(x), self._window)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag what is held."""
        x = event.position().x()
        if self._grip is None:
            part = self._part_at(x) if self._record is not None else "new"
            shapes = {"start": Qt.CursorShape.SizeHorCursor, "stop": Qt.CursorShape.SizeHorCursor}
            self.setCursor(
                shapes.get(
                    part, Qt.CursorShape.OpenHandCursor if part == "move" else Qt.CursorShape.CrossCursor
                )
            )
            return
        part, from_s, window = self._grip
        now_s = self.time_at(x)
        if part == "move":
            step_s = now_s - from_s
            limits = self._limits()
            step_s = min(max(step_s, limits.start - window.start), limits.stop - window.stop)
            wanted = Interval(window.start + step_s, window.stop + step_s)
        else:
            fixed_s = {"start": window.stop, "stop": window.start}.get(part, from_s)
            wanted = Interval(min(now_s, fixed_s), max(now_s, fixed_s))
        if wanted.length > 0:
            self.window_wanted.emit(wanted)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go; a mere click brings the window there."""
        if self._grip is not None:
            part, from_s, window = self._grip
            self._grip = None
            if part == "new" and abs(self.x_of(from_s) - event.position().x()) < 3:
                half_s = 0.5 * window.length
                self.window_wanted.emit(Interval(from_s - half_s, from_s + half_s))

    def _part_at(self, x: float) -> str:
        left, right = self.x_of(self._window.start), self.x_of(self._window.stop)
        if abs(x - left) <= _GRIP_PX and x < 0.5 * (left + right):
            return "start"
        if abs(x - right) <= _GRIP_PX:
            return "stop"
        covers_all = self._window.length >= 0.999 * self._limits().length
        return "move" if left < x < right and not covers_all else "new"

    def _limits(self) -> Interval:
        record = self._record
        if record is None or not len(record):
            return Interval(0.0, 1.0)
        return Interval(record.first_sample_s, record.first_sample_s + record.duration_s)

    def _area(self) -> QRectF:
        # The same left and right margins as Trace, so that the two stand in line.
        return QRectF(LEFT_AXIS_PX + 12, 0, max(self.width() - LEFT_AXIS_PX - 28, 10), self.height())

    def _channels(self, record: Record) -> list[Channel]:
        tracks = [item for item in record.channels if item.role in (Role.SIGNAL, Role.SECOND_SIGNAL)]
        return tracks or list(record.channels[:1])

    def _draw_silhouette(self) -> QPixmap:
        ratio = self.devicePixelRatioF()
        picture = QPixmap(round(self.width() * ratio), round(self.height() * ratio))
        picture.setDevicePixelRatio(ratio)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._draw_channels(painter)
        finally:
            painter.end()
        return picture

    def _draw_channels(self, painter: QPainter) -> None:
        if self._record is None:
            return
        painter.save()
        try:
            for channel in self._channels(self._record):
                self._draw_channel(painter, channel)
        except CaptureError:
            pass  # Trace reads the same samples and says so in the window; saying it twice helps nobody
        finally:
            painter.restore()

    def _draw_channel(self, painter: QPainter, channel: Channel) -> None:
        area = self._area().adjusted(0, 5, 0, -5)
        low_v, high_v = extent_v(channel)
        extremes = columns(channel, 0, len(channel), max(round(area.width()), 1))
        valid = np.isfinite(extremes.low_v)
        if not valid.any():
            return
        x = area.left() + area.width() * (extremes.index[valid] + 0.5) / len(channel)
        scale = area.height() / (high_v - low_v)
        top = area.bottom() - (extremes.high_v[valid] - low_v) * scale - 0.6
        bottom = area.bottom() - (extremes.low_v[valid] - low_v) * scale + 0.6
        outline = [QPointF(a, b) for a, b in zip(x, top, strict=True)]
        outline += [QPointF(a, b) for a, b in zip(x[::-1], bottom[::-1], strict=True)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._palette.role(channel.role))
        painter.drawPolygon(QPolygonF(outline))

    def _slide(self, place: int) -> None:
        """Somebody set the value: a screen reader does so."""
        limits = self._limits()
        start = limits.start + limits.length * place / _STEPS
        start = min(start, limits.stop - self._window.length)
        self.window_wanted.emit(Interval(start, start + self._window.length))

    def _say_window(self) -> None:
        shown, record = self._window, self._limits()
        text = self.tr("{start} to {stop} of {length}")
        self.setAccessibleDescription(
            text.format(
                start=duration(shown.start - record.start),
                stop=duration(shown.stop - record.start),
                length=duration(record.length),
            )
            if self._record is not None
            else ""
        )

    def _paint_name(self, painter: QPainter) -> None:
        painter.setPen(QColor(self._palette.quiet))
        box = QRectF(0, 0, LEFT_AXIS_PX + 2, self.height())
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight | Qt.TextFlag.TextWordWrap
        font = painter.font()
        font.setPointSizeF(8.0)
        painter.setFont(font)
        painter.drawText(box, flags, self.tr("Whole record"))

    def _paint_stretches(self, painter: QPainter, area: QRectF) -> None:
        self._shades = self._shades or self._laid_out(area)
        for box, colour in self._shades:
            painter.fillRect(box, colour)

    def _laid_out(self, area: QRectF) -> list[tuple[QRectF, QColor]]:
        """Where the stretches lie and what they are filled with; those that would touch each other as one."""
        second_px, shades = area.width() / self._limits().length, []
        for (pale, strong), opacity in (((True, False), 0.12), ((False, False), 0.25), ((False, True), 0.5)):
            spans = [item.span for item in self._stretches if (item.pale, item.strong) == (pale, strong)]
            for span in union(spans, gap=_JOIN_PX / second_px):
                left, right = self.x_of(span.start), self.x_of(span.stop)
                box = QRectF(left, area.top() + 1, max(right - left, 2.0), area.height() - 2)
                shades.append((box, self._palette.shade("band", opacity)))
        return shades

    def _paint_window(self, painter: QPainter, area: QRectF) -> None:
        left, right = self.x_of(self._window.start), self.x_of(self._window.stop)
        veil = self._palette.shade("desk", 0.5 if self._palette.dark else 0.72)
        inner = area.adjusted(0, 1, 0, -1)
        painter.fillRect(QRectF(inner.left(), inner.top(), max(left - inner.left(), 0), inner.height()), veil)
        painter.fillRect(QRectF(right, inner.top(), max(inner.right() - right, 0), inner.height()), veil)
        if self._window.length < 0.999 * self._limits().length:
            painter.setPen(QPen(QColor(self._palette.choice), 1.5))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(left, inner.top(), max(right - left, 2.0), inner.height()), 3, 3)
