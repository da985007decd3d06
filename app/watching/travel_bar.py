"""The travel tested so far: ten stretches, each filled by the crossings that it has."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QRect, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from analysis.diagnosis.advice import ENOUGH_CROSSINGS
from analysis.diagnosis.enough import NOTHING_YET, Stretch
from app.drawing.theme import LIGHT, Palette
from app.watching.distance import LEAST_ARC_MINUTES, font_px

_GAP_PX = 6


def _tr(text: str) -> str:
    return QCoreApplication.translate("watch_page", text)


class TravelBar(QWidget):
    """Draws each stretch of travel with the number of its crossings; done ones are full."""

    def __init__(self) -> None:
        super().__init__()
        self._stretches, self._palette = NOTHING_YET.stretches, LIGHT
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setToolTip(_tr("Crossings of each stretch of travel; six are enough"))
        self.show_stretches(NOTHING_YET.stretches)

    def show_stretches(self, stretches: tuple[Stretch, ...]) -> None:
        """Show how often each stretch was crossed."""
        self._stretches = stretches
        self.setAccessibleName(_tr("Travel tested"))
        self.setAccessibleDescription("; ".join(said_of(item) for item in stretches))
        self.update()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self.update()

    def minimumSizeHint(self) -> QSize:
        """Room for numbers that can be read from afar."""
        number_px = self._number_px()
        return QSize(600, round(1.6 * number_px))

    def sizeHint(self) -> QSize:
        """Room for them with some space."""
        return QSize(1200, round(2.6 * self._number_px()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the stretches."""
        painter = QPainter(self)
        try:
            for place, stretch in enumerate(self._stretches):
                self._paint_one(painter, self._box(place), stretch)
        finally:
            painter.end()

    def _number_px(self) -> int:
        return font_px(LEAST_ARC_MINUTES, self.screen().physicalDotsPerInch())

    def _box(self, place: int) -> QRect:
        count = max(len(self._stretches), 1)
        left, right = self.width() * place // count, self.width() * (place + 1) // count
        return QRect(left, 0, right - left - _GAP_PX, self.height())

    def _paint_one(self, painter: QPainter, box: QRect, stretch: Stretch) -> None:
        p = self._palette
        label_px = min(round(0.45 * self._number_px()), box.width() // 5)
        cell = box.adjusted(0, 0, 0, -round(1.35 * label_px))
        painter.fillRect(cell, QColor(p.raised))
        share = min(stretch.crossings / ENOUGH_CROSSINGS, 1.0)
        filled = QRect(cell)
        filled.setTop(cell.bottom() + 1 - round(share * cell.height()))
        painter.fillRect(filled, p.shade("good" if stretch.done else "unsure", 0.45))
        if stretch.beyond:
            painter.fillRect(cell, QColor(p.desk))
            painter.fillRect(cell, QBrush(QColor(p.faint), Qt.BrushStyle.BDiagPattern))
        painter.setPen(QColor(p.line if stretch.done else p.bad))
        painter.drawRect(cell.adjusted(0, 0, -1, -1))
        self._write(painter, cell, "–" if stretch.beyond else str(stretch.crossings), self._number_px(), True)
        under = QRect(box.left(), cell.bottom() + 2, box.width(), box.bottom() - cell.bottom())
        self._write(
            painter, under, f"{stretch.travel.start:.0f}–{stretch.travel.stop:.0f} %", label_px, False
        )

    def _write(self, painter: QPainter, box: QRect, text: str, size_px: int, bold: bool) -> None:
        font = QFont(self.font())
        font.setPixelSize(max(min(size_px, box.height()), 8))
        font.setBold(bold)
        painter.setFont(font)
        painter.setPen(QColor(self._palette.ink))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def said_of(stretch: Stretch) -> str:
    """A stretch and its crossings in words, for who cannot see the bar."""
    place = {"low": round(stretch.travel.start), "high": round(stretch.travel.stop)}
    if stretch.beyond:
        return _tr("{low}–{high} %: beyond the stop").format(**place)
    if stretch.too_fast > stretch.crossings:
        return _tr("{low}–{high} %: {count} crossings, others too fast").format(
            count=stretch.crossings, **place
        )
    return _tr("{low}–{high} %: {count} crossings").format(count=stretch.crossings, **place)
