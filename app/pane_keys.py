"""The keyboard on every page: from pane to pane, and what it is on is in sight."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QPushButton, QScrollArea, QToolButton, QWidget

from app.views.pane import Pane
from app.views.tab_order import pane_beside, stops

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
            application.focusChanged.connect(self._stay_in_pane)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Enter presses the button that has the keyboard: not all desktops let it, and Space is the arm's."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            pressed = QApplication.focusWidget()
            enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat()
            if (
                enter
                and isinstance(pressed, QPushButton | QToolButton)
                and self._window.isAncestorOf(pressed)
            ):
                pressed.click()
                return True
        return super().eventFilter(watched, event)

    def _stay_in_pane(self, before: QWidget | None, now: QWidget | None) -> None:
        """Qt goes on to the next control where the one with the keyboard is hidden, and may come to Undo."""
        pane = before
        while pane is not None and not isinstance(pane, Pane):
            pane = pane.parentWidget()
        if before is None or now is None or pane is None or before.isVisible() or not pane.isVisible():
            return
        own = [stop for stop in stops(pane) if stop.isVisible() and stop.isEnabled()]
        if own and not pane.isAncestorOf(now):
            own[0].setFocus(Qt.FocusReason.OtherFocusReason)

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
        focused = QApplication.focusWidget()  # not asked of the window, as in `app.views.tab_order`
        start = focused if focused is not None and self._window.isAncestorOf(focused) else self._window
        found = pane_beside(start, self._window, Pane, back=back)
        if found is not None:
            reason = Qt.FocusReason.BacktabFocusReason if back else Qt.FocusReason.TabFocusReason
            found.setFocus(reason)
