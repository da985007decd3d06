"""A button for an action: it says to a screen reader what the action is called now."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QAction, QActionEvent
from PySide6.QtWidgets import QToolButton


class ActionButton(QToolButton):
    """A button that keeps its width while its action is called now this, now that.

    Parameters
    ----------
    action : QAction
    names : tuple of str
        What else the action may be called.
    """

    def __init__(self, action: QAction, names: tuple[str, ...] = ()) -> None:
        super().__init__()
        self._names = names
        self.setDefaultAction(action)
        self._say(action)

    def actionEvent(self, event: QActionEvent) -> None:
        """Say what the action is called from now on."""
        super().actionEvent(event)
        if event.type() == QActionEvent.Type.ActionChanged:
            self._say(event.action())

    def sizeHint(self) -> QSize:
        """Room for the longest of its names."""
        hint, letters = super().sizeHint(), self.fontMetrics()
        widest = max(map(letters.horizontalAdvance, (self.text(), *self._names)))
        return hint + QSize(widest - letters.horizontalAdvance(self.text()), 0)

    def _say(self, action: QAction) -> None:
        self.setAccessibleName(action.text())
        self.setAccessibleDescription(action.toolTip())
