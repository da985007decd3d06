"""Windows never larger than the screen that they open on, the title bar counted."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QWidget

_FRAME_PX = 40  # the title bar that the desktop adds


def fit_screen(window: QWidget, width: int, height: int) -> None:
    """Give a window this size, or less where the screen is smaller: 200 % scaling halves it."""
    screen = window.screen().availableSize()
    window.resize(QSize(width, height).boundedTo(screen - QSize(0, _FRAME_PX)))


def keep_on_screen(window: QWidget) -> None:
    """Make a window smaller where the screen has no room for it and its title bar."""
    if not (window.isMaximized() or window.isFullScreen()):
        fit_screen(window, window.width(), window.height())
