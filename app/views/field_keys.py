"""The keys that end typing in a field which a key stepped into, and the keyboard's way back."""

from __future__ import annotations

from collections.abc import Sequence

import shiboken6
from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget


class FieldKeys(QObject):
    """Escape of some fields, and where the keyboard was before one of them was stepped into.

    Escape is the window's own key too: there it lets go of what is chosen. Whoever types means the field.

    Parameters
    ----------
    fields : sequence of QWidget
        They belong together: going from one to another is no leaving.
    otherwise : QWidget
        Who has the keyboard next where nobody had it before, or where that one cannot take it any more.

    Signals
    -------
    given_up()
        Escape was pressed in one of them.
    """

    given_up = Signal()

    def __init__(self, fields: Sequence[QWidget], otherwise: QWidget) -> None:
        super().__init__(otherwise)
        self._fields, self._otherwise = tuple(fields), otherwise
        self._before: QWidget | None = None
        for field in self._fields:
            field.installEventFilter(self)

    def step_into(self, field: QWidget) -> None:
        """Give a field the keyboard, and remember who had it."""
        now = QApplication.focusWidget()
        if now not in self._fields:
            self._before = now
        field.setFocus()

    def give_back(self) -> None:
        """Give the keyboard back."""
        before, self._before = self._before, None
        if before is not None and shiboken6.isValid(before) and before.isVisible() and before.isEnabled():
            before.setFocus()
        else:
            self._otherwise.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Keep Escape from the window."""
        if isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape:
            if event.type() == QEvent.Type.ShortcutOverride:
                event.accept()
                return True
            if event.type() == QEvent.Type.KeyPress:
                self.given_up.emit()
                return True
        return super().eventFilter(watched, event)
