"""What stands on an axis: a marker, or a stretch that has a beginning and no end yet."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Role
from analysis.intervals import Interval
from analysis.review.model import Marker, place_of
from app.drawing.mark_item import Mark
from app.drawing.numbers import percent, seconds


def _tr(text: str) -> str:
    return QCoreApplication.translate("markers", text)


@dataclass(frozen=True, slots=True)
class Begun:
    """Where something to be marked begins.

    Parameters
    ----------
    of : str or Role
        The record whose time it is of, or the track whose travel.
    at : float
        In seconds, or in % of travel.
    """

    of: str | Role
    at: float

    @property
    def _place(self) -> str:
        return percent(self.at, 1) if isinstance(self.of, Role) else seconds(self.at, 1e-3)

    def mark(self, here: float) -> Mark:
        """The stretch from the beginning to where the hand is, which cannot be gripped yet."""
        label = _tr("from {place}").format(place=self._place)
        return Mark("", min(self.at, here), max(self.at, here), label, fixed=True)

    def words(self) -> str:
        """What was begun, and how to go on."""
        if isinstance(self.of, Role):
            text = _tr("A stretch of travel begins at {place}: T ends it where you point, Esc cancels it.")
        else:
            text = _tr("A span begins at {place}: S ends it where you point, Esc cancels it.")
        return text.format(place=self._place)


def mark_of(marker: Marker, chosen: str | None) -> Mark:
    """A marker as it is drawn, firm where it is the chosen one."""
    place = place_of(marker)
    start, stop = (place.start, place.stop) if isinstance(place, Interval) else (place, None)
    return Mark(marker.marker_id, start, stop, marker.label, marker.marker_id == chosen)
