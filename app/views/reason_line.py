"""The line for a reason: while nothing is typed into it, undo and redo are the review's."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit


class ReasonLine(QLineEdit):
    """A line that lets the keys of undo and redo go to the window where it has nothing of its own to undo.

    A field keeps these keys for what is typed in it. This one is stepped into by itself after a decision:
    there they would be swallowed just when the decision is to be undone.
    """

    def event(self, event: QEvent) -> bool:
        """Leave the keys to the window's actions where the line has no use for them."""
        if (
            isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.ShortcutOverride
            and self._unused(event)
        ):
            event.ignore()
            return False
        return super().event(event)

    def _unused(self, event: QKeyEvent) -> bool:
        if event.matches(QKeySequence.StandardKey.Undo):
            return not self.isUndoAvailable()
        return event.matches(QKeySequence.StandardKey.Redo) and not self.isRedoAvailable()
