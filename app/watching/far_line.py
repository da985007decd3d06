"""One instruction, as large as its room allows."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.watching.distance import ARC_MINUTES, LEAST_ARC_MINUTES, font_px

_WRAP = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignCenter
_STEP_PX = 4
_LARGEST_PX = 190


class FarLine(QWidget):
    """A few words that are read from three metres: two lines at most, wrapped, as large as they fit."""

    def __init__(self) -> None:
        super().__init__()
        self._text, self._ink, self._ground = "", QColor(), QColor()
        self._font = QFont(self.font())
        self._font.setBold(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def text(self) -> str:
        """What is shown."""
        return self._text

    @property
    def font_px(self) -> int:
        """Pixel size of what is shown."""
        return self._font.pixelSize()

    def show_text(self, text: str, ink: str, ground: str) -> None:
        """Show words in a colour on another."""
        self._text, self._ink, self._ground = text, QColor(ink), QColor(ground)
        self.setAccessibleName(text)
        self._fit()

    def minimumSizeHint(self) -> QSize:
        """Room for one line that can still be read."""
        return QSize(300, round(1.2 * font_px(LEAST_ARC_MINUTES, self.screen().physicalDotsPerInch())))

    def sizeHint(self) -> QSize:
        """Room for two lines of comfortable size."""
        return QSize(900, round(2.6 * font_px(ARC_MINUTES, self.screen().physicalDotsPerInch())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the words to the new room."""
        super().resizeEvent(event)
        self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the words."""
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), self._ground)
            painter.setFont(self._font)
            painter.setPen(self._ink)
            painter.drawText(self._room(), int(_WRAP), self._text)
        finally:
            painter.end()

    def _room(self) -> QRect:
        return self.rect().adjusted(16, 4, -16, -4)

    def _fit(self) -> None:
        room = self._room()
        for size in range(_LARGEST_PX, 16, -_STEP_PX):
            self._font.setPixelSize(size)
            need = QFontMetrics(self._font).boundingRect(room, int(_WRAP), self._text)
            if need.width() <= room.width() and need.height() <= room.height():
                break
        self.update()
