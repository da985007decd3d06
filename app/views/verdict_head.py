"""The verdict and how sure it is: above everything that scrolls, so that it is always in sight."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout

from app.drawing.plain import plain_tip
from app.drawing.theme import Palette
from app.views.headline import POINTS, Headline
from app.views.tall_enough import TallEnough

_NARROW_PX = 300
_NARROW_POINTS = (*POINTS, 12.0, 11.5)  # one line more of what it stands on
_SURE_POINTS = (12.0, 11.0, 10.0)


class VerdictHead(TallEnough):
    """Two lines, or more where a verdict is long; never cut, and never scrolled away."""

    def __init__(self) -> None:
        super().__init__()
        self.headline = Headline("", "")
        self.how_sure = Headline("", "", points=_SURE_POINTS)
        self._tone = "ink"
        layout = QVBoxLayout(self)
        layout.setContentsMargins(3, 0, 3, 2)  # as what scrolls below it
        layout.setSpacing(2)
        layout.addWidget(self.headline)
        layout.addWidget(self.how_sure)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a small screen a verdict takes smaller letters before it takes another line."""
        super().resizeEvent(event)
        self.headline.use_sizes(_NARROW_POINTS if self.width() < _NARROW_PX else POINTS)

    def show_verdict(self, title: str, how_sure: str, tip: str, tone: str, palette: Palette) -> None:
        """Show a verdict in the colour of its tone; how sure it is in ink, or nothing for an empty text.

        `tip` says what that is a measure of.
        """
        self._tone = tone
        self.apply_palette(palette)
        self.headline.setText(title)
        self.how_sure.setText(how_sure)
        self.how_sure.setVisible(bool(how_sure))
        for line in (self.headline, self.how_sure):
            line.setToolTip(plain_tip(tip))
        # Their names are what they say.
        self.headline.setAccessibleDescription(". ".join(filter(None, (self.tr("Verdict"), tip))))
        self.how_sure.setAccessibleDescription(tip)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.headline.show_colour(getattr(palette, self._tone))
        self.how_sure.show_colour(palette.ink)
