"""Where a recorder went on as if no time had passed, having lost samples without a word.

Some recorders leave lost samples out, so that the signal leaps; others repeat the last one until they are
back, so that it stands and then leaps. A leap of this kind goes on along the motion, which is as fast after
it as before: in the time that was lost the arm would have got there. A contact that fails leaps out and back,
so every other of its leaps goes against the motion.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.signals.cutting import USUAL_PERCENT_PER_S2

SIDE_S = 0.020
"""The motion is looked at for this long on either side of a leap, and must be smooth there."""

LEAST_SIDE_CELLS = 8

LEAST_QUIET = 0.8
"""Share of a side that must be without a disturbance."""

MOST_LOST_S = 0.060
"""A leap tells of no more lost than this: an arm may have turned in more."""

LEAST_PERCENT_PER_S = 15.0
"""A slower arm does not tell which way a leap should have gone."""

STANDS_OUT = 1.5
"""Tolerances by which a move between neighbours stands out from those beside it."""

MOST_TOLERANCE_PERCENT = 2.0
"""A signal so noisy, or a recorder so coarse, hides the leaps among its edges."""

MOST_AGAINST = 0.34
"""Share of the leaps between long smooth stretches that may go against the motion: beyond this all of them
are a contact's."""

MOST_EDGES = 200
"""A record with more edges than this is no record of an arm with a few samples lost."""

SPARED_CELLS = 2
"""Cells on either side of a leap that tell of the leap, and not of the track."""

REPEATED_CELLS = 8
"""So many equal readings before a leap may be one reading repeated..."""

MOST_CHANCE = 1e-6
"""...if chance would hardly make them, where neighbours read alike as often as they do in this record."""


@dataclass(frozen=True, slots=True)
class Leaps:
    """Samples that a recorder lost without a word.

    Parameters
    ----------
    cell : ndarray of int, shape (n_leaps,)
        First cell after each leap.
    height_percent : ndarray, shape (n_leaps,)
        How far the signal leapt, in % of travel.
    gone_s : ndarray, shape (n_leaps,)
        Time that was lost at each leap and is not in the record, in seconds; 0 where a reading was repeated
        instead.
    lost : ndarray of bool, shape (n_cells,)
        Cells that tell nothing: beside a leap, or repeated before one.
    """

    cell: NDArray[np.int64]
    height_percent: NDArray[np.float64]
    gone_s: NDArray[np.float64]
    lost: NDArray[np.bool_]

    def course(self) -> NDArray[np.float32]:
        """Sum of the leaps so far, in % of travel, shape (n_cells,): taken off, the motion goes on smoothly."""
        return self._so_far(np.where(self.gone_s > 0.0, self.height_percent, 0.0)).astype(np.float32)

    def gone_so_far(self) -> NDArray[np.float64]:
        """Time lost so far that is not in the record, in seconds, shape (n_cells,)."""
        return self._so_far(self.gone_s)

    def _so_far(self, amounts: NDArray[np.float64]) -> NDArray[np.float64]:
        return np.cumsum(np.bincount(self.cell, amounts, minlength=len(self.lost)))


@dataclass(frozen=True, slots=True)
class _Side:
    """The motion on one side of an edge: place and speed at the edge."""

    place: float
    speed: float


def find_leaps(
    travel: NDArray[np.float32],
    quiet: NDArray[np.bool_],
    tolerance: NDArray[np.float32],
    cell_s: float,
) -> Leaps | None:
    """Find the leaps of a recorder that lost samples without a word.

    Parameters
    ----------
    travel : ndarray, shape (n_cells,)
        Mean travel of each cell in %.
    quiet : ndarray of bool, shape (n_cells,)
        Cells without a disturbance inside.
    tolerance : ndarray, shape (n_cells,)
        What noise and the recorder's step may add to a move, in %.
    cell_s : float
        Length of a cell in seconds.

    Returns
    -------
    Leaps or None
        None where there is none, or where too many edges go against the motion.
    """
    cells = np.flatnonzero(quiet)
    found: list[tuple[int, int, float, float]] = []
    against = 0
    alike = float(np.mean(np.diff(travel[cells]) == 0.0)) if len(cells) > 1 else 0.0
    for at in _edges(travel[cells], tolerance[cells]):
        until, since = int(cells[at]), int(cells[at + 1])
        repeated = _repeated(travel, until, alike)
        before = _side(travel, quiet, tolerance, until - repeated, -1, cell_s)
        after = _side(travel, quiet, tolerance, since, 1, cell_s)
        if before is None or after is None or since - until > SPARED_CELLS:
            continue
        moved, least = after.place - before.place, STANDS_OUT * float(tolerance[until])
        if abs(moved) < least:
            continue
        gone_s = 0.0 if repeated else _gone_s(before, after, float(tolerance[until]))
        if gone_s is None or (repeated and abs(before.place - float(travel[until])) > least):
            against += 1
        else:
            found.append((until - repeated, since, moved, gone_s))
    if not found or against > MOST_AGAINST * (against + len(found)):
        return None
    lost = np.zeros(len(travel), dtype=np.bool_)
    for until, since, _, _ in found:
        lost[max(until + 1 - SPARED_CELLS, 0) : since + SPARED_CELLS] = True
    _, cell, height, gone = zip(*found, strict=True)
    return Leaps(np.array(cell), np.array(height), np.array(gone), lost)


def _edges(places: NDArray[np.float32], tolerance: NDArray[np.float32]) -> NDArray[np.int64]:
    """Moves between neighbours that stand out from the moves beside them; none where there are many."""
    moves = np.diff(places)
    if len(moves) < 3:
        return np.empty(0, dtype=np.int64)
    apart = np.abs(moves[1:-1] - np.float32(0.5) * (moves[:-2] + moves[2:]))
    out = (apart > np.float32(STANDS_OUT) * tolerance[1:-2]) & (tolerance[1:-2] < MOST_TOLERANCE_PERCENT)
    at = np.flatnonzero(out) + 1
    # The moves beside a leap stand out as well, by half of it.
    at = at[np.abs(moves[at]) > np.maximum(np.abs(moves[at - 1]), np.abs(moves[at + 1]))]
    return at if len(at) <= MOST_EDGES else at[:0]


def _repeated(travel: NDArray[np.float32], until: int, alike: float) -> int:
    """How many cells before `until` read just as it does, where that is too many for chance; else 0.

    `alike` is the share of all neighbours in the record that read alike.
    """
    count = 0
    while until - count > 0 and travel[until - count - 1] == travel[until]:
        count += 1
    return count if count >= REPEATED_CELLS and alike**count < MOST_CHANCE else 0


def _side(
    travel: NDArray[np.float32],
    quiet: NDArray[np.bool_],
    tolerance: NDArray[np.float32],
    edge: int,
    way: int,
    cell_s: float,
) -> _Side | None:
    """The motion from an edge on, `way` -1 or 1; None where it is not smooth for `SIDE_S`."""
    width = max(LEAST_SIDE_CELLS, round(SIDE_S / cell_s))
    cells = edge + way * np.arange(width)
    if cells.min() < 0 or cells.max() >= len(travel):
        return None
    kept = cells[quiet[cells]]
    if len(kept) < LEAST_QUIET * width:
        return None
    when = (kept - edge) / width
    parabola = np.polynomial.polynomial.polyfit(when, travel[kept].astype(np.float64), 2)
    off = np.abs(travel[kept] - np.polynomial.polynomial.polyval(when, parabola))
    if float(off.max()) > STANDS_OUT * float(np.median(tolerance[kept])):
        return None
    return _Side(float(parabola[0]), float(parabola[1]) / (width * cell_s))


def _gone_s(before: _Side, after: _Side, tolerance: float) -> float | None:
    """Time in which an arm would have got from the one side to the other, in s; None where it would not."""
    moved, speed = after.place - before.place, 0.5 * (before.speed + after.speed)
    if moved * np.sign(speed) <= 0.0 or abs(speed) < LEAST_PERCENT_PER_S:
        return None
    gone_s = moved / speed
    gathered = abs(after.speed - before.speed)
    if gone_s > MOST_LOST_S or gathered > 2.0 * USUAL_PERCENT_PER_S2 * gone_s + 0.5 * tolerance / SIDE_S:
        return None
    return gone_s
