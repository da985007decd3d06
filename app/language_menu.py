"""The menu in which the window's language is chosen."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from app.colours_menu import MENU_GONE_MS
from app.language import SYSTEM
from app.settings import Settings
from app.translations.catalogue import TONGUES


class LanguageMenu(QMenu):
    """As the desktop, or one of the languages under the name that it gives itself.

    Signals
    -------
    chosen(setting)
        Another language than the present one, as `Settings.language` keeps it.
    """

    chosen = Signal(str)

    def __init__(self, settings: Settings, parent: QWidget) -> None:
        super().__init__(parent)
        # Whoever cannot read the window finds it by its English name too.
        title = self.tr("Language")
        self.setTitle(title if title == "Language" else f"{title} (Language)")
        self._settings = settings
        self._group = QActionGroup(self)
        self._add(SYSTEM, self.tr("As the desktop"))
        for code, tongue in TONGUES.items():
            self._add(code, tongue.name)

    def _add(self, setting: str, text: str) -> None:
        action = QAction(text, self._group)
        action.setCheckable(True)
        action.setChecked(setting == self._settings.language)
        action.triggered.connect(lambda _checked=False: self._choose(setting))
        self.aboutToShow.connect(lambda: action.setChecked(setting == self._settings.language))
        self.addAction(action)

    def _choose(self, setting: str) -> None:
        if setting != self._settings.language:
            self._settings.language = setting
            QTimer.singleShot(MENU_GONE_MS, self, lambda: self.chosen.emit(setting))
