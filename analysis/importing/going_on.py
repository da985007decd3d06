"""Times that start again at nought: counters of so many bits, milliseconds, a clock at midnight."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.importing.spool import SpooledColumn
from analysis.wording import Wording, plural

_ROUNDS = (2.0**16, 2.0**24, 2.0**32, 1e3, 1e4, 6e4, 1e5, 1e6, 1e9)
"""Where counters start again, in their own unit. Common practice, no source."""

_CLOCKS_S = (60.0, 3600.0, 43_200.0, 86_400.0)
_AT_ONCE = 512 * 1024


@dataclass(frozen=True, slots=True)
class GoingOn:
    """Times that start again, as times that go on.

    Parameters
    ----------
    source : SpooledColumn
        The times as they are.
    places : ndarray of int64
        Rows at which they start again, counted in `source`.
    round : float
        What is added at each, in the unit of the times.
    first : int
        Row of `source` that is the first here.
    size : int
        Number of rows.
    """

    source: SpooledColumn
    places: NDArray[np.int64]
    round: float
    first: int
    size: int

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the times."""
        return np.dtype(np.float64)

    def __len__(self) -> int:
        """Number of rows."""
        return self.size

    def read(self, start: int, stop: int) -> NDArray[np.float64]:
        """Times of rows ``[start, stop)``, clipped at the ends."""
        start, stop = max(start, 0) + self.first, min(stop, self.size) + self.first
        times = self.source.read(start, stop).astype(np.float64)
        rows = np.arange(start, start + len(times))
        return times + self.round * np.searchsorted(self.places, rows, side="right")

    def part(self, start: int, stop: int) -> GoingOn:
        """A stretch of the same times."""
        return GoingOn(self.source, self.places, self.round, self.first + start, stop - start)


def going_on(source: SpooledColumn, factor: float) -> tuple[SpooledColumn | GoingOn, Wording | None]:
    """Times with the starts over taken out, where each of them is a known one.

    Parameters
    ----------
    source : SpooledColumn
        The times, as the file has them.
    factor : float
        Seconds of one of their units.

    Returns
    -------
    (SpooledColumn or GoingOn, Wording or None)
        The times as they are, and nothing to say, where they do not start again, or run backwards otherwise.
    """
    places, falls, usual = _falls(source)
    if not len(places) or not usual > 0.0:
        return source, None
    for full in (*_ROUNDS, *(clock / factor for clock in _CLOCKS_S)):
        fits = np.abs(falls + full - usual) <= 0.5 * usual + 1e-9 * full
        if fits.all() and _within(source, places, full):
            note = plural(
                "the times start again after {full:.10g} and are taken to go on (once)",
                "the times start again after {full:.10g} and are taken to go on ({count:,} times)",
                full=full,
                count=len(places),
            )
            return GoingOn(source, places, full, 0, len(source)), note
    return source, None


def _falls(source: SpooledColumn) -> tuple[NDArray[np.int64], NDArray[np.float64], float]:
    """Rows that come before the row above them, by how much, and the usual step."""
    places, falls, middles = [], [], []
    for start in range(0, len(source) - 1, _AT_ONCE):
        steps = np.diff(source.read(start, start + _AT_ONCE + 1).astype(np.float64))
        at = np.flatnonzero(steps < 0)
        places.append(at + start + 1)
        falls.append(steps[at])
        middles.append(float(np.median(steps)))
    if not middles:
        return np.empty(0, dtype=np.int64), np.empty(0), 0.0
    return np.concatenate(places).astype(np.int64), np.concatenate(falls), float(np.median(middles))


def _within(source: SpooledColumn, places: NDArray[np.int64], full: float) -> bool:
    """Whether no time beside a start over is negative, or reaches a full round."""
    beside = [source.read(int(place) - 1, int(place) + 1) for place in places[:1000]]
    return all(float(after) >= 0.0 and float(before) < full for before, after in beside)
