"""Which strokes of the arm a stretch of time of a record belongs to."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from analysis.intervals import Interval
from analysis.signals.facts import Crossing


class Strokes:
    """The strokes of a survey, looked up by record and time.

    Parameters
    ----------
    crossings : sequence of Crossing
        As in a survey: of each record in order of time, and none over another.
    """

    def __init__(self, crossings: Sequence[Crossing]) -> None:
        rows: dict[str, list[int]] = {}
        for row, item in enumerate(crossings):
            rows.setdefault(item.record, []).append(row)
        self._rows = {record: np.array(own) for record, own in rows.items()}
        self._starts = np.array([item.time.start for item in crossings])
        self._stops = np.array([item.time.stop for item in crossings])

    def within(self, record: str, time: Interval) -> NDArray[np.int64]:
        """Indices of the strokes of a record that share time with a stretch of it, in order; may be empty."""
        own = self._rows.get(record)
        if own is None:
            return np.empty(0, dtype=np.int64)
        first = int(np.searchsorted(self._stops[own], time.start, side="right"))
        last = int(np.searchsorted(self._starts[own], time.stop, side="left"))
        return np.asarray(own[first:last], dtype=np.int64)
