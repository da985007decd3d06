"""A small mark in one of the palette's tones, which it takes anew with another palette."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel

from app.drawing import icons
from app.drawing.theme import Palette

_PX = 15


class ToneMark(QLabel):
    """A tinted icon that stands for itself.

    Parameters
    ----------
    mark : str
        Name of the icon.
    tone : str
        Name of the colour in a palette.
    palette : Palette
    """

    def __init__(self, mark: str, tone: str, palette: Palette) -> None:
        super().__init__()
        self._mark, self._tone = mark, tone
        self.apply_palette(palette)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.setPixmap(icons.pixmap(self._mark, getattr(palette, self._tone), _PX))
