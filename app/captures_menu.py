"""The menu of the last captures and of the samples that came along."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QWidget

from app import resources
from app.drawing.plain import plain_tip
from app.settings import Settings

_FIRST_SAMPLE = "W1041-rear-left-height.h5"
"""The sample that shows a worn band most plainly."""


class CapturesMenu(QMenu):
    """Filled whenever it is about to show.

    Signals
    -------
    chosen(Path)
        A capture to open.
    """

    chosen = Signal(object)

    def __init__(self, settings: Settings, parent: QWidget) -> None:
        super().__init__(parent)
        self.setTitle(self.tr("Last captures"))
        self.setToolTipsVisible(True)
        self._settings = settings
        self.aboutToShow.connect(self.fill)

    def fill(self) -> None:
        """List what there is now."""
        self.clear()
        samples = resources.sample_captures()
        for path in self._settings.recent:
            if path not in samples:  # these stand below, once
                self._add(path, path.name)
        if samples:
            if not self.isEmpty():
                self.addSeparator()
            self.addAction(self.tr("Samples")).setEnabled(False)
        for path in samples:
            self._add(path, path.stem.replace("-", " "))
        if self.isEmpty():
            self.addAction(self.tr("None yet: open a capture")).setEnabled(False)

    def _add(self, path: Path, text: str) -> None:
        action = self.addAction(text, partial(self.chosen.emit, path))
        action.setToolTip(plain_tip(str(path)))


def first_sample() -> Path | None:
    """The sample to start with, or None where none came along."""
    samples = resources.sample_captures()
    plain = [path for path in samples if path.name == _FIRST_SAMPLE]
    return next(iter([*plain, *samples]), None)
