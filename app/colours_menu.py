"""The menu in which the window's colours are chosen."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from app.settings import Settings

MENU_GONE_MS = 30
"""Long enough for a closed menu to be off the screen before work keeps the window from painting."""


class ColoursMenu(QMenu):
    """As the desktop, light, or dark.

    Signals
    -------
    chosen(setting)
        As `Settings.colours` keeps it.
    """

    chosen = Signal(str)

    def __init__(self, settings: Settings, parent: QWidget) -> None:
        super().__init__(parent)
        self._group = QActionGroup(self)
        self.setTitle(self.tr("Colours"))
        choices = {"system": self.tr("As the desktop"), "light": self.tr("Light"), "dark": self.tr("Dark")}
        for name, text in choices.items():
            action = QAction(text, self._group)
            action.setCheckable(True)
            action.setChecked(name == settings.colours)
            action.triggered.connect(lambda _checked=False, name=name: self._choose(name))
            self.addAction(action)

    def _choose(self, name: str) -> None:
        QTimer.singleShot(MENU_GONE_MS, self, lambda: self.chosen.emit(name))
