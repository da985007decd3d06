"""A row that can be pressed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QEnterEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QLabel, QSizePolicy, QStyle, QStyleOption, QWidget

from app.drawing.numbers import unbroken


class PressRow(QAbstractButton):
    """A row that can be pressed with the mouse; Enter opens it, as pressing it twice does.

    A button to a screen reader, which can press it too. Space is left to the window: it lets the arm run.

    Parameters
    ----------
    name : str
        For a screen reader.
    opens : bool
        Whether there is something to open; else Enter presses.

    Signals
    -------
    opened()
        Pressed twice; `clicked` tells that it was pressed.
    """

    opened = Signal()

    def __init__(self, name: str, parent: QWidget | None = None, *, opens: bool = True) -> None:
        super().__init__(parent)
        self._opens = opens
        self.setAccessibleName(name)
        self.setProperty("row", True)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        # Its lines wrap; a button's own policy would keep it as wide as the longest of them.
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        """What stands in it says."""
        layout = self.layout()
        return layout.sizeHint() if layout is not None else super().sizeHint()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Pressed twice."""
        super().mouseDoubleClickEvent(event)
        if self._opens:
            self.opened.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens, as a double click does, where there is something to open."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self._opens:
                self.opened.emit()
            else:
                self.click()
        else:
            super().keyPressEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Show that it can be pressed."""
        self._underline(True)

    def leaveEvent(self, event: QEvent) -> None:
        """Look at rest again."""
        self._underline(False)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the frame that the style sheet gives it; with the keyboard on it, it has a ring."""
        look = QStyleOption()
        look.initFrom(self)
        painter = QPainter(self)
        try:
            self.style().drawPrimitive(QStyle.PrimitiveElement.PE_Widget, look, painter, self)
        finally:
            painter.end()

    def _underline(self, on: bool) -> None:
        for label in self.findChildren(QLabel, "pressText"):
            font = label.font()
            font.setUnderline(on)
            label.setFont(font)


class TextLine(QLabel):
    """A line of plain text that wraps to whatever width there is, and never between a number and its unit."""

    def __init__(self, text: str) -> None:
        super().__init__(unbroken(text))
        self._said = text
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)

    def text(self) -> str:
        """As it was said."""
        return self._said

    def setText(self, text: str) -> None:  # noqa: N802 - Qt's own name
        """Say something else."""
        self._said = text
        super().setText(unbroken(text))


def text_line(text: str, look: str = "", quiet: bool = False) -> TextLine:
    """A line of plain text that wraps, perhaps quiet or with a look.

    Parameters
    ----------
    text : str
    look : str
        ``"strong"``, ``"large"``, ``"place"``, ``"small"`` or ``"title"``, as the window's style sheet has
        them: a sheet of its own for each line would hold the window when they all change.
    quiet : bool
    """
    label = TextLine(text)
    label.setProperty("quiet", quiet)
    if look:
        label.setProperty("look", look)
    return label
