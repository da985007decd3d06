"""The verdict in letters as large as its line has room for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QFontMetricsF, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy

POINTS = (21.0, 19.0, 17.0, 15.0, 13.0)


class Headline(QLabel):
    """One line where it fits, else several; no word is ever cut.

    Parameters
    ----------
    text : str
        Plain text.
    colour : str
        As a style sheet has it.
    points : tuple of float
        Sizes of letters to choose from, the largest first.
    """

    def __init__(self, text: str, colour: str, points: tuple[float, ...] = POINTS) -> None:
        super().__init__(text)
        self._sizes = points
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self._colour = colour
        self._points = 0.0
        self._take(points[0])

    def show_colour(self, colour: str) -> None:
        """Say it in another colour."""
        if colour != self._colour:
            self._colour = colour
            self._dress()

    def use_sizes(self, points: tuple[float, ...]) -> None:
        """Choose from other sizes of letters, the largest first."""
        if points != self._sizes:
            self._sizes = points
            self._fit()

    def setText(self, text: str) -> None:  # noqa: N802 - Qt's own name
        """Say something else, in the largest letters that it has room for."""
        super().setText(text)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Take the largest letters that this width has room for."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        fitting = (points for points in self._sizes if self._width_px(points) <= self.width())
        self._take(next(fitting, self._sizes[-1]))

    def _width_px(self, points: float) -> float:
        font = QFont(self.font())
        font.setPointSizeF(points)
        font.setWeight(QFont.Weight.Bold)
        return QFontMetricsF(font).horizontalAdvance(self.text()) + 2.0

    def _take(self, points: float) -> None:
        if points != self._points:
            self._points = points
            self._dress()
            # Other letters need another height; the layout that is at work just now would keep the old one.
            self.updateGeometry()

    def _dress(self) -> None:
        self.setStyleSheet(f"font-size: {self._points:g}pt; font-weight: 700; color: {self._colour};")
