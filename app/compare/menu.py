"""Where the capture of one side of Compare is chosen."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QWidget

from app.captures_menu import CapturesMenu
from app.drawing.plain import plain_tip
from app.settings import Settings


class SideMenu(QMenu):
    """The capture in Review, the known good one, a file, one of the last captures, or a sample.

    Signals
    -------
    review_chosen(), good_chosen(), file_wanted(), chosen(Path)
    """

    review_chosen = Signal()
    good_chosen = Signal()
    file_wanted = Signal()
    chosen = Signal(object)

    def __init__(self, settings: Settings, good: Callable[[], Path | None], parent: QWidget) -> None:
        super().__init__(parent)
        self._good = good
        self._of_review = self.addAction(self.tr("The capture in Review"))
        self._of_review.triggered.connect(self.review_chosen)
        self._known = self.addAction(self.tr("The known good one"))
        self._known.triggered.connect(self.good_chosen)
        self.addAction(self.tr("Open…")).triggered.connect(self.file_wanted)
        captures = CapturesMenu(settings, parent)
        captures.chosen.connect(self.chosen)
        self.addMenu(captures)
        self.aboutToShow.connect(self.refresh)

    def refresh(self) -> None:
        """Offer the known good one only where there is one."""
        path = self._good()
        self._known.setEnabled(path is not None)
        self._known.setToolTip(plain_tip(str(path or "")))
