"""Fields of a form that say what was entered once the hand leaves them, not at every letter."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QCheckBox, QLineEdit, QPlainTextEdit, QSizePolicy, QWidget

_LINES_PX = 19


def tick_box(text: str = "") -> QCheckBox:
    """A box as wide as its words, so that its ring is about what can be clicked."""
    box = QCheckBox(text)
    box.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    return box


class LineField(QLineEdit):
    """One line.

    Signals
    -------
    entered(text)
        Another text than the one that was shown.
    """

    entered = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._shown = ""
        self.editingFinished.connect(self._commit)

    def show_text(self, text: str) -> None:
        """Show a text, unless the hand is at work here on the same one."""
        if text != self._shown or not self.hasFocus():
            self._shown = text
            if self.text() != text:
                self.setText(text)

    def _commit(self) -> None:
        if self.text() != self._shown:
            self._shown = self.text()
            self.entered.emit(self._shown)


class TextField(QPlainTextEdit):
    """Several lines; the rest as in `LineField`."""

    entered = Signal(str)

    def __init__(self, name: str, lines: int = 3, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setFixedHeight(_LINES_PX * lines + 12)
        self._shown = ""

    def show_text(self, text: str) -> None:
        """Show a text, unless the hand is at work here on the same one."""
        if text != self._shown or not self.hasFocus():
            self._shown = text
            if self.toPlainText() != text:
                self.setPlainText(text)

    def commit(self) -> None:
        """Say what was entered, as if the hand had left."""
        if self.toPlainText() != self._shown:
            self._shown = self.toPlainText()
            self.entered.emit(self._shown)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Commit at the end of the gesture."""
        super().focusOutEvent(event)
        self.commit()
