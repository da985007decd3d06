"""The picture: the band and how the wheel moves about each height, on one axis of millimetres."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from analysis.exposure.amounts import about_words
from analysis.exposure.picture import Exposure, RestExposure
from analysis.exposure.words import REST_TITLES, may_come
from analysis.intervals import Interval
from analysis.vehicle.heights import RestKind
from app.drawing.spoken import Drawn
from app.drawing.theme import LIGHT, Palette
from app.language import said

LEAST_WIDTH_PX = 460
"""Narrower than this the rows would run into each other."""

_NAME_PX, _NUMBER_PX, _HEAD_PX, _FOOT_PX = 116, 206, 38, 40
_USUAL_ROW_PX, _ROOMY_ROW_PX, _LEAST_ROW_PX = 46, 34, 29
_POINTS = 241
_STEPS_MM = (5.0, 10.0, 20.0, 50.0, 100.0)
_REACH = 3.5  # r.m.s. beyond which a distribution is flat


@dataclass(frozen=True, slots=True)
class _Row:
    """One height, ready to be drawn."""

    item: RestExposure
    box: QRectF
    curve: QPolygonF
    inside: QPolygonF
    at: QPointF


class ExposurePicture(Drawn, QWidget):
    """A row for each height of the vehicle; the band runs through all of them.

    Signals
    -------
    rest_chosen(RestKind)
        A row was clicked, or reached with the arrow keys.
    """

    rest_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Band and wheel travel at each height"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumWidth(LEAST_WIDTH_PX)
        self._palette = LIGHT
        self._exposure: Exposure | None = None
        self._chosen = RestKind.NORMAL
        self._span = Interval(-1.0, 1.0)
        self._rows: tuple[_Row, ...] = ()

    def sizeHint(self) -> QSize:
        """Wide enough for a distribution, with room for six rows."""
        return QSize(640, _HEAD_PX + _FOOT_PX + 6 * _USUAL_ROW_PX)

    def minimumSizeHint(self) -> QSize:
        """Room for the rows that there are."""
        rows = len(self._exposure.rests) if self._exposure is not None else 4
        return QSize(LEAST_WIDTH_PX, _HEAD_PX + _FOOT_PX + rows * _LEAST_ROW_PX)

    def show_exposure(self, exposure: Exposure | None, chosen: RestKind) -> None:
        """Show a picture, or none, with one height singled out."""
        self._exposure, self._chosen = exposure, chosen
        self._lay_out()
        self.updateGeometry()
        self.update()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self.update()

    @property
    def rows(self) -> tuple[RestKind, ...]:
        """The heights that are drawn, from the top."""
        return tuple(row.item.rest.kind for row in self._rows)

    def row_centre(self, kind: RestKind) -> QPointF:
        """Where a height's row is."""
        return next(row.box.center() for row in self._rows if row.item.rest.kind is kind)

    # -- hand --------------------------------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose the row under the pointer."""
        for row in self._rows:
            if row.box.top() <= event.position().y() < row.box.bottom():
                self.rest_chosen.emit(row.item.rest.kind)
                return

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and down choose the next row."""
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()))
        kinds = self.rows
        if step is None or not kinds:
            super().keyPressEvent(event)
            return
        place = kinds.index(self._chosen) if self._chosen in kinds else 0
        self.rest_chosen.emit(kinds[min(max(place + step, 0), len(kinds) - 1)])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay out for the new size."""
        super().resizeEvent(event)
        self._lay_out()

    # -- geometry ----------------------------------------------------------------------------

    def _plot(self) -> QRectF:
        width = max(self.width() - _NAME_PX - _NUMBER_PX, 50)
        return QRectF(_NAME_PX, _HEAD_PX, width, max(self.height() - _HEAD_PX - _FOOT_PX, 50))

    def _x(self, height_mm: float) -> float:
        plot = self._plot()
        return plot.left() + (height_mm - self._span.start) / self._span.length * plot.width()

    def _lay_out(self) -> None:
        exposure = self._exposure
        if exposure is None:
            self._rows = ()
            return
        self._span = _reach_mm(exposure)
        plot = self._plot()
        high = plot.height() / len(exposure.rests)
        peak = max((1.0 / item.rms_mm for item in exposure.rests if item.rms_mm > 0.0), default=1.0)
        self._rows = tuple(
            self._row(exposure, item, QRectF(0, plot.top() + place * high, self.width(), high), peak)
            for place, item in enumerate(exposure.rests)
        )

    def _row(self, exposure: Exposure, item: RestExposure, box: QRectF, peak: float) -> _Row:
        at = QPointF(self._x(item.rest.height_mm), box.bottom() - 6)
        if item.rms_mm <= 0.0:
            return _Row(item, box, QPolygonF(), QPolygonF(), at)
        reach = _REACH * item.rms_mm
        height_mm = np.linspace(item.rest.height_mm - reach, item.rest.height_mm + reach, _POINTS)
        inside_mm = height_mm[(height_mm >= exposure.band_mm.start) & (height_mm <= exposure.band_mm.stop)]
        tall = (box.height() - 14) / (peak / np.sqrt(2.0 * np.pi))
        return _Row(
            item,
            box,
            self._curve(exposure, item, height_mm, box, tall),
            self._curve(exposure, item, inside_mm, box, tall) if inside_mm.size else QPolygonF(),
            at,
        )

    def _curve(
        self,
        exposure: Exposure,
        item: RestExposure,
        height_mm: np.ndarray[tuple[int, ...], np.dtype[np.float64]],
        box: QRectF,
        tall: float,
    ) -> QPolygonF:
        foot = box.bottom() - 6
        density = exposure.density_per_mm(item, height_mm)
        points = [QPointF(self._x(float(height_mm[0])), foot)]
        points += [
            QPointF(self._x(float(x)), foot - tall * float(y))
            for x, y in zip(height_mm, density, strict=True)
        ]
        return QPolygonF([*points, QPointF(self._x(float(height_mm[-1])), foot)])

    # -- paint -------------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint what was laid out."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._exposure is None:
            return
        for row in self._rows:
            if row.item.rest.kind is self._chosen:
                painter.fillRect(row.box, self._palette.shade("choice", 0.09))
        self._paint_band(painter, self._exposure.band_mm)
        self._paint_scales(painter, self._exposure)
        painter.setClipRect(QRectF(0, _HEAD_PX, self.width(), self._plot().height()))
        for row in self._rows:
            self._paint_row(painter, row)
        painter.setClipping(False)
        if self.hasFocus():
            self._paint_focus(painter)

    def _paint_focus(self, painter: QPainter) -> None:
        """Round the row that the arrow keys move from."""
        chosen = [row.box for row in self._rows if row.item.rest.kind is self._chosen]
        painter.setPen(QPen(QColor(self._palette.choice), 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for box in chosen or [QRectF(self.rect())]:
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)

    def _paint_band(self, painter: QPainter, band_mm: Interval) -> None:
        plot = self._plot()
        left, right = self._x(band_mm.start), self._x(band_mm.stop)
        box = QRectF(left, plot.top(), max(right - left, 2.0), plot.height())
        painter.fillRect(box, self._palette.shade("band", 0.13))
        painter.fillRect(box, QBrush(self._palette.shade("band", 0.30), Qt.BrushStyle.BDiagPattern))
        painter.setPen(QPen(self._palette.shade("band", 0.9), 1))
        painter.drawLine(box.topLeft(), box.bottomLeft())
        painter.drawLine(box.topRight(), box.bottomRight())
        painter.setPen(QColor(self._palette.ink))
        label = QRectF(box.center().x() - 60, 2, 120, 16)
        painter.drawText(label, Qt.AlignmentFlag.AlignCenter, self.tr("band"))

    def _paint_scales(self, painter: QPainter, exposure: Exposure) -> None:
        plot, quiet = self._plot(), QColor(self._palette.quiet)
        foot = plot.bottom()
        painter.setPen(QPen(QColor(self._palette.line), 1))
        painter.drawLine(QPointF(plot.left(), foot), QPointF(plot.right(), foot))
        step = next(
            (item for item in _STEPS_MM if self._span.length / item * 46 <= plot.width()), _STEPS_MM[-1]
        )
        first = np.ceil(self._span.start / step)
        for place in np.arange(first, np.floor(self._span.stop / step) + 1):
            x = self._x(float(place * step))
            painter.setPen(QPen(QColor(self._palette.line), 1))
            painter.drawLine(QPointF(x, foot), QPointF(x, foot + 4))
            painter.setPen(quiet)
            text = f"{place * step + 0.0:.0f}".replace("-", "\N{MINUS SIGN}")  # no "-0"
            painter.drawText(QRectF(x - 30, foot + 4, 60, 15), Qt.AlignmentFlag.AlignCenter, text)
            percent = exposure.heights.travel_percent(float(place * step))
            if 0.0 <= percent <= 100.0:
                painter.drawText(QRectF(x - 30, 20, 60, 15), Qt.AlignmentFlag.AlignCenter, f"{percent:.0f}")
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        painter.setPen(quiet)
        painter.drawText(QRectF(0, 20, _NAME_PX - 8, 15), right, self.tr("% of travel"))
        about = self.tr("mm of wheel travel from the normal height, up to the right")
        room = QRectF(plot.left(), foot + 20, plot.width(), 16)
        if painter.fontMetrics().horizontalAdvance(about) > room.width():
            room = QRectF(0, foot + 20, self.width(), 16)
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter, about)
        head = QRectF(plot.right() + 10, 20, _NUMBER_PX - 12, 15)
        painter.drawText(head, Qt.AlignmentFlag.AlignLeft, self.tr("in the band · code"))

    def _paint_row(self, painter: QPainter, row: _Row) -> None:
        palette, item = self._palette, row.item
        foot, plot = row.at.y(), self._plot()
        painter.setPen(QPen(QColor(palette.line), 1))
        painter.drawLine(QPointF(plot.left(), foot), QPointF(plot.right(), foot))
        if item.rms_mm > 0.0:
            painter.setPen(QPen(QColor(palette.choice), 1.4))
            painter.setBrush(palette.shade("choice", 0.22))
            painter.drawPolygon(row.curve)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(palette.shade("band", 0.62))
            painter.drawPolygon(row.inside)
        painter.setPen(QPen(QColor(palette.ink), 2))
        painter.drawLine(row.at, QPointF(row.at.x(), row.box.top() + (row.box.height() * 0.55)))
        self._write_row(painter, row)

    def _write_row(self, painter: QPainter, row: _Row) -> None:
        item, chosen = row.item, row.item.rest.kind is self._chosen
        font = painter.font()
        font.setBold(chosen)
        painter.setFont(font)
        painter.setPen(QColor(self._palette.ink))
        high = self._room_for_words(row)
        name = QRectF(10, row.box.top(), _NAME_PX - 18, high)
        height = f"{item.rest.height_mm:+.0f} mm".replace("-", "\N{MINUS SIGN}").replace("+0 mm", "0 mm")
        self._write_pair(painter, name, said(REST_TITLES[item.rest.kind]), height)
        numbers = QRectF(self._plot().right() + 10, row.box.top(), _NUMBER_PX - 14, high)
        self._write_pair(painter, numbers, *self._numbers(item))
        font.setBold(False)
        painter.setFont(font)

    def _room_for_words(self, row: _Row) -> float:
        """In a low row two lines need all of its height."""
        return row.box.height() - (6 if row.box.height() >= _ROOMY_ROW_PX else 0)

    def _write_pair(self, painter: QPainter, room: QRectF, first: str, second: str) -> None:
        """Two lines at the foot of a row, the second quieter; the first alone where that is empty."""
        at = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom
        painter.setPen(QColor(self._palette.ink))
        painter.drawText(room, at, f"{first}\n " if second else first)
        painter.setPen(QColor(self._palette.quiet))
        painter.drawText(room, at, second)

    def _numbers(self, item: RestExposure) -> tuple[str, str]:
        if item.rest.standing and item.visits.share == 0.0:
            return self.tr("stands outside"), ""
        if not may_come(item):
            return self.tr("not in it"), ""
        where = self.tr("stands in it") if item.rest.standing else said(about_words(item.share_over_class))
        if item.chance_over_class.stop <= 0.0:
            return where, self.tr("no code")
        return where, self.tr("code: {chance}").format(chance=said(about_words(item.chance_over_class)))


def _reach_mm(exposure: Exposure) -> Interval:
    """What the axis shows: every rest height with its movement, and the band, within the travel."""
    lows = [exposure.band_mm.start, *(item.rest.height_mm - 3.0 * item.rms_mm for item in exposure.rests)]
    highs = [exposure.band_mm.stop, *(item.rest.height_mm + 3.0 * item.rms_mm for item in exposure.rests)]
    ends = exposure.heights.height_mm([0.0, 100.0])
    low, high = max(min(lows) - 5.0, float(ends.min())), min(max(highs) + 5.0, float(ends.max()))
    return Interval(low, max(high, low + 10.0))
