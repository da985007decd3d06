"""One instruction, as large as its room allows."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.watching.distance import ARC_MINUTES, LEAST_ARC_MINUTES, font_px

_AS_BROKEN = int(Qt.AlignmentFlag.AlignCenter)
_WRAP = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignCenter)
_STEP_PX = 4
_LARGEST_PX, _SMALLEST_PX = 190, 18


class FarLine(QWidget):
    """A few words that are read from three metres: two lines at most, wrapped, as large as they fit."""

    def __init__(self) -> None:
        super().__init__()
        self._text, self._ink, self._ground = "", QColor(), QColor()
        self._shown, self._flags = "", _AS_BROKEN
        self._font = QFont(self.font())
        self._font.setBold(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def text(self) -> str:
        """What is shown."""
        return self._text

    @property
    def lines(self) -> list[str]:
        """The same as it is broken."""
        return self._shown.split("\n")

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
            painter.drawText(self._room(), self._flags, self._shown)
        finally:
            painter.end()

    def _room(self) -> QRect:
        return self.rect().adjusted(16, 4, -16, -4)

    def _fit(self) -> None:
        """As large as it fits, in one line or two; wrapped anywhere only where it would be too small."""
        sizes = {shown: self._fitting(shown, _AS_BROKEN) for shown in broken(self._text)}
        self._shown, self._flags = max(sizes, key=lambda shown: sizes[shown]), _AS_BROKEN
        if sizes[self._shown] < font_px(LEAST_ARC_MINUTES, self.screen().physicalDotsPerInch()):
            self._shown, self._flags = self._text, _WRAP
        self._font.setPixelSize(self._fitting(self._shown, self._flags))
        self.update()

    def _fitting(self, shown: str, flags: int) -> int:
        """The largest size at which words fit."""
        room, font = self._room(), QFont(self._font)
        for size in range(_LARGEST_PX, _SMALLEST_PX, -_STEP_PX):
            font.setPixelSize(size)
            need = QFontMetrics(font).boundingRect(room, flags, shown)
            if need.width() <= room.width() and need.height() <= room.height():
                return size
        return _SMALLEST_PX


def broken(text: str) -> list[str]:
    """A line as it is, and in two lines wherever sense allows a break.

    Parameters
    ----------
    text : str
        A few words.

    Returns
    -------
    list of str
        At least one. What follows a colon begins a line; a number stays with what it counts.
    """
    head, colon, tail = text.partition(": ")
    if colon:
        return [text, f"{head}:\n{tail}"]
    places = [place for place in range(1, len(text)) if text[place] == " "]
    free = [place for place in places if not text[place - 1].isdigit() and text[place + 1 :][:1] != "%"]
    return [text, *(f"{text[:place]}\n{text[place + 1 :]}" for place in free)]
