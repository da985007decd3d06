"""The menu in which the window's colours are chosen."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QWidget


class ColoursMenu(QMenu):
    """As the desktop, light, or dark.

    Signals
    -------
    chosen(setting)
        As `Settings.colours` keeps it.
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setTitle(self.tr("Colours"))
        choices = {"system": self.tr("As the desktop"), "light": self.tr("Light"), "dark": self.tr("Dark")}
        for name, text in choices.items():
            action = self.addAction(text)
            action.triggered.connect(lambda _checked=False, name=name: self.chosen.emit(name))
