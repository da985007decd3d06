"""A window of its own, never larger than the screen that it opens on."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QWidget

_FRAME_PX = 40  # the title bar that the desktop adds


def fit_screen(window: QWidget, width: int, height: int) -> None:
    """Give a window this size, or less where the screen is smaller: 200 % scaling halves it."""
    screen = window.screen().availableSize()
    window.resize(QSize(width, height).boundedTo(screen - QSize(0, _FRAME_PX)))
