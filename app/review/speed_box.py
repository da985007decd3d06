"""How fast the arm runs: a speed of one's own, or whatever lets each crossing be watched."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtWidgets import QComboBox, QWidget

from analysis.wording import say
from app.language import said
from app.review.playback import SPEEDS


class SpeedBox(QComboBox):
    """A list of speeds, the first of which is none: it says which one the arm takes by itself.

    Signals
    -------
    wanted(speed)
        One of `SPEEDS` was chosen, or None for the arm's own.
    """

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._room: QSize | None = None
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.addItem("")
        self.addItems([said(say("{speed:g}×", speed=speed)) for speed in SPEEDS])
        self.setToolTip(
            self.tr("How fast the arm runs (, and .); auto lets a brief crossing last about three seconds")
        )
        self.setAccessibleName(self.tr("Speed of the arm"))
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.show_speed(1.0, own_pace=True)
        self.activated.connect(lambda place: self.wanted.emit(SPEEDS[place - 1] if place else None))

    def show_speed(self, speed: float, own_pace: bool) -> None:
        """Show the arm's speed, and whether it takes that by itself."""
        if own_pace:
            self.setItemText(0, _own(speed))
        else:
            self.setItemText(0, said(say("auto")))
        self.setCurrentIndex(0 if own_pace else 1 + SPEEDS.index(speed))

    def changeEvent(self, event: QEvent) -> None:
        """Other letters need another width."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._room = None

    def sizeHint(self) -> QSize:
        """As wide as the widest text that can stand there: nothing beside it moves as the arm runs."""
        if self._room is None:
            width = self.fontMetrics().horizontalAdvance
            widest = max(width(_own(speed)) for speed in SPEEDS)
            now = max(width(self.itemText(place)) for place in range(self.count()))
            self._room = super().sizeHint() + QSize(widest - now, 0)
        return self._room


def _own(speed: float) -> str:
    return said(say("auto {speed:g}×", speed=speed))
