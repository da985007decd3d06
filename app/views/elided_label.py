"""A label that shortens its text with an ellipsis instead of pushing others away; the tip has all of it."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.drawing.plain import plain_tip

_LEAST_LETTERS = 8


class ElidedLabel(QLabel):
    """One line of plain text that gives way.

    Parameters
    ----------
    parent : QWidget or None
        What it lies in.
    mode : Qt.TextElideMode
        Where it is shortened; in the middle for a path, whose end tells most.
    """

    def __init__(
        self, parent: QWidget | None = None, *, mode: Qt.TextElideMode = Qt.TextElideMode.ElideRight
    ) -> None:
        super().__init__(parent)
        self._mode = mode
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def setText(self, text: str) -> None:  # noqa: N802 - Qt's own name
        """Show a text, and all of it in the tip."""
        super().setText(text)
        self.setToolTip(plain_tip(text))

    def shown_text(self) -> str:
        """What of the text there is room for."""
        return self.fontMetrics().elidedText(self.text(), self._mode, self.contentsRect().width())

    def minimumSizeHint(self) -> QSize:
        """A few letters, and no more than the text needs."""
        needed = super().minimumSizeHint()
        return QSize(min(60, self.fontMetrics().horizontalAdvance(self.text())), needed.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint what fits."""
        painter = QPainter(self)
        try:
            box = self.contentsRect()
            text = self.shown_text()
            if len(text) < min(_LEAST_LETTERS, len(self.text())):
                return  # a stump of a word says nothing; the tip has all of it
            painter.setPen(self.palette().color(self.foregroundRole()))
            painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
        finally:
            painter.end()
