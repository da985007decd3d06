"""One sentence about what is wrong, at the place that it concerns."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget


class TroubleLine(QLabel):
    """Hidden as long as nothing is wrong; plain text that wraps."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.setProperty("trouble", True)
        self.setAccessibleDescription(QCoreApplication.translate("trouble_line", "What is missing"))
        self.hide()

    def show_sentence(self, sentence: str) -> None:
        """Show a sentence; nothing for an empty one."""
        self.setText(sentence)
        self._take_height()
        self.setVisible(bool(sentence))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Ask for the height of the lines at this width."""
        super().resizeEvent(event)
        self._take_height()

    def _take_height(self) -> None:
        """Of a form's rows that wrap, Qt gives each a share of what all of them need."""
        self.setMinimumHeight(max(self.heightForWidth(self.width()), 0))

    @property
    def sentence(self) -> str:
        """What is shown; empty while nothing is wrong."""
        return "" if self.isHidden() else self.text()
