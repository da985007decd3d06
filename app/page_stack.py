"""Pages of which one is shown; only that one says how large the window must be."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QStackedWidget, QWidget


class PageStack(QStackedWidget):
    """A stack whose wide pages do not keep the window wide while another page is shown.

    Qt's own asks for room for the widest of all pages, so that at 200 % scaling Review was cut off by the
    edge of the screen for the sake of a page that nobody looked at.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.currentChanged.connect(self._ask_for_room)

    def minimumSizeHint(self) -> QSize:
        """What the shown page needs at least."""
        page = self.currentWidget()
        return page.minimumSizeHint() if page is not None else super().minimumSizeHint()

    def _ask_for_room(self) -> None:
        self.updateGeometry()
