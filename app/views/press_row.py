"""A row that can be pressed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QEnterEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QWidget


class PressRow(QFrame):
    """A row that can be pressed with the mouse, Enter or Space.

    Signals
    -------
    pressed(), opened()
        Pressed once; pressed twice.
    """

    pressed = Signal()
    opened = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Pressed, where the button is let go above the row."""
        if self.rect().contains(event.position().toPoint()):
            self.pressed.emit()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Pressed twice."""
        self.opened.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens, as a double click does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.opened.emit()
        else:
            super().keyPressEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Show that it can be pressed."""
        self._underline(True)

    def leaveEvent(self, event: QEvent) -> None:
        """Look at rest again."""
        self._underline(False)

    def _underline(self, on: bool) -> None:
        for label in self.findChildren(QLabel, "pressText"):
            font = label.font()
            font.setUnderline(on)
            label.setFont(font)


def text_line(text: str, style: str = "", quiet: bool = False) -> QLabel:
    """A line of plain text that wraps to whatever width there is."""
    label = QLabel(text)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setProperty("quiet", quiet)
    if style:
        label.setStyleSheet(style)
    return label
