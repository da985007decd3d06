"""The keyboard on every page: from pane to pane, and what it is on is in sight."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QApplication, QScrollArea, QWidget

from app.views.pane import Pane
from app.views.tab_order import pane_beside

if TYPE_CHECKING:
    from app.main_window import Window

_MARGIN_PX = 8


class PaneKeys(QObject):
    """Tab goes through every control; these keys go to the first one of the next pane.

    Parameters
    ----------
    window : Window
        With its actions and pages made.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        window.actions_by_name.connect(
            {"next_pane": lambda: self._go(back=False), "previous_pane": lambda: self._go(back=True)}
        )

        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._keep_in_sight)

    def _keep_in_sight(self, _before: QWidget | None, now: QWidget | None) -> None:
        """Scroll to what Tab came to: Qt does so only on the way inside a scrolled area, not into it."""
        if now is None or QApplication.mouseButtons() != Qt.MouseButton.NoButton:
            return  # nothing moves away under a click
        holder = now.parentWidget()
        while holder is not None:
            if isinstance(holder, QScrollArea):
                holder.ensureWidgetVisible(now, 0, _MARGIN_PX)
            holder = holder.parentWidget()

    def _go(self, *, back: bool) -> None:
        start = self._window.focusWidget() or self._window
        found = pane_beside(start, self._window, Pane, back=back)
        if found is not None:
            reason = Qt.FocusReason.BacktabFocusReason if back else Qt.FocusReason.TabFocusReason
            found.setFocus(reason)
