"""One sentence about what is wrong, at the place that it concerns."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget


class TroubleLine(QLabel):
    """Hidden as long as nothing is wrong; plain text that wraps."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.setProperty("trouble", True)
        self.setAccessibleName(QCoreApplication.translate("trouble_line", "What is missing"))
        self.hide()

    def show_sentence(self, sentence: str) -> None:
        """Show a sentence; nothing for an empty one."""
        self.setText(sentence)
        self.setAccessibleDescription(sentence)
        self.setVisible(bool(sentence))

    @property
    def sentence(self) -> str:
        """What is shown; empty while nothing is wrong."""
        return "" if self.isHidden() else self.text()
