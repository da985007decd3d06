"""Where a recorder went on as if no time had passed, having lost samples without a word.

Some recorders leave lost samples out, so that the signal leaps; others repeat the last one until they are
back, so that it stands and then leaps. Such a leap lies between two long smooth stretches of motion, and in
the time that was lost an arm would have got from the one to the other. A contact that fails leaps out and
back, so every other of its leaps goes against the motion, and hardly ever is all of its record smooth.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.stats import binom

from analysis.signals.cutting import USUAL_PERCENT_PER_S2
from analysis.signals.ends import UNSEEN_PERCENT_PER_S2
from analysis.signals.thinning import thinned

SIDE_S = 0.020
"""The motion is looked at for this long on either side of a leap, and must be smooth there."""

LEAST_SIDE_CELLS = 8

LEAST_QUIET = 0.8
"""Share of a side that must be without a disturbance."""

MOST_LOST_S = 0.100
"""A leap tells of no more lost than this, and of less where the arm may have turned in it."""

MOST_TURNED_S = 0.060

MOST_GATHERED_PERCENT_PER_S = 350.0
"""Speed that an arm gathers at most in the time that was lost."""

LEAST_PERCENT_PER_S = 15.0
"""A slower arm does not tell which way a leap should have gone."""

MOST_PERCENT_PER_S = 500.0
"""An arm that is faster than this on either side of a leap was not merely lost from sight."""

STANDS_OUT = 1.5
"""Tolerances by which a move between neighbours stands out from those beside it."""

SMALL_SHARE = 0.1

MOST_TOLERANCE_PERCENT = 2.0
"""A signal so noisy, or a recorder so coarse, hides the leaps among its edges."""

MOST_AGAINST = 0.34
"""Share of the leaps between long smooth stretches that no arm could have made: beyond this all of them are
a contact's."""

MOST_EDGES = 200
"""A record with more edges than this is no record of an arm with a few samples lost."""

BLOCK_CELLS = 1 << 16

HALO_CELLS = 64
"""Cells beside a block that are looked at with it: a move stands out from those beside it."""

LEAST_CALM = 0.999
"""Share of a record that is calm where nothing but the recorder's leaps disturbs it..."""

MOST_ALONE = 12
"""...and so many leaps at most, `ALONE_S` apart: then the arm may have turned in the time that was lost."""

ALONE_S = 0.15

SPARED_CELLS = 2
"""Cells on either side of a leap that tell of the leap, and not of the track."""

MOST_BETWEEN = 3
"""Cells from the last one before a leap to the first one after it: it may lie within a cell."""

REPEATED_CELLS = 8
"""So many equal readings before a leap may be one reading repeated..."""

MOST_CHANCE = 1e-6
"""...if chance would hardly make them, where neighbours read alike as often as they do in this record."""


LEAST_AT_A_PLACE = 3
"""So many leaps at one place of the travel are the sensor's own..."""

MOST_BY_CHANCE = 0.01
"""...where chance would hardly gather as many."""


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
        """Sum of the leaps so far, in % of travel, shape (n_cells,): without it the motion goes on smoothly.

        Where a reading was repeated the time is in the record, and nothing is taken off.
        """
        return self._so_far(np.where(self.gone_s > 0.0, self.height_percent, 0.0)).astype(np.float32)

    def gone_so_far(self) -> NDArray[np.float64]:
        """Time lost so far that is not in the record, in seconds, shape (n_cells,)."""
        return self._so_far(self.gone_s)

    def _so_far(self, amounts: NDArray[np.float64]) -> NDArray[np.float64]:
        return np.cumsum(np.bincount(self.cell, amounts, minlength=len(self.lost)))


@dataclass(frozen=True, slots=True)
class _Trace:
    """One record's cells, as `find_leaps` has them."""

    travel: NDArray[np.float32]
    quiet: NDArray[np.bool_]
    tolerance: NDArray[np.float32]
    cell_s: float


@dataclass(frozen=True, slots=True)
class _Edge:
    """A move between two smooth stretches: its cells, and place (%) and speed (%/s) on either side of it.

    Both sides are drawn on to the middle of the move, but from a reading that was repeated.
    """

    until: int
    since: int
    repeated: int
    before: tuple[float, float]
    after: tuple[float, float]
    tolerance: float

    @property
    def moved(self) -> float:
        """How far the signal leapt, in %."""
        return self.after[0] - self.before[0]

    def gone_s(self, held: float, *, may_turn: bool) -> float | None:
        """Time that was left out of the record, in seconds; None where no arm would have made the leap.

        `held` is the reading before the edge: a reading that is repeated was reached by a motion.
        """
        if self.repeated:
            return 0.0 if abs(self.before[0] - held) <= STANDS_OUT * self.tolerance else None
        onward_s = self._onward_s()
        return self._turned_s() if onward_s is None and may_turn else onward_s

    def _onward_s(self) -> float | None:
        """Time in which an arm that goes on as it did gets there; None where it does not."""
        speed, gathered = 0.5 * (self.before[1] + self.after[1]), abs(self.after[1] - self.before[1])
        if abs(speed) < LEAST_PERCENT_PER_S or not 0.0 < self.moved / speed < MOST_LOST_S:
            return None
        gone_s = self.moved / speed
        most = min(2.0 * USUAL_PERCENT_PER_S2 * gone_s, MOST_GATHERED_PERCENT_PER_S)
        return gone_s if gathered <= most + 0.5 * self.tolerance / SIDE_S else None

    def _turned_s(self) -> float | None:
        """Least time in which a wheel that hops gets there; None where it does not."""
        speeds = np.abs([self.before[1], self.after[1]])
        if speeds.min() < 0.5 * LEAST_PERCENT_PER_S or speeds.max() > MOST_PERCENT_PER_S:
            return None
        gone_s = np.arange(1, round(MOST_TURNED_S * 1e3)) * 1e-3
        off = np.abs(self.moved - 0.5 * (self.before[1] + self.after[1]) * gone_s)
        could = np.flatnonzero(off < 0.25 * UNSEEN_PERCENT_PER_S2 * gone_s**2)
        return float(gone_s[could[0]]) if len(could) else None


def find_leaps(
    travel: NDArray[np.float32], quiet: NDArray[np.bool_], tolerance: NDArray[np.float32], cell_s: float
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
        None where there is none, or where too many edges are such as no arm could have made.
    """
    if not quiet.any() or np.median(thinned(tolerance)) > MOST_TOLERANCE_PERCENT:
        return None
    trace = _Trace(travel, quiet, tolerance, cell_s)
    moves = _edges(trace)
    if not moves:
        return None
    alike = float(np.mean(np.diff(thinned(travel)) == 0.0))
    edges = [_edge(trace, until, since, alike) for until, since in moves]
    between_s = np.diff([-len(travel), *(until for until, _ in moves), 2 * len(travel)]) * cell_s
    apart_s = np.minimum(between_s[:-1], between_s[1:])
    calm = bool(np.count_nonzero(quiet) > LEAST_CALM * len(quiet)) and len(moves) <= MOST_ALONE
    calm = calm and None not in edges
    may_turn = calm and bool((between_s[1:-1] > ALONE_S).all())
    leapt = [
        (edge, edge.gone_s(float(travel[edge.until]), may_turn=may_turn) if alone else None)
        for edge, alone in zip(edges, apart_s > 2.0 * SIDE_S, strict=True)
        if edge is not None and abs(edge.moved) > STANDS_OUT * edge.tolerance
    ]
    made = [(edge, gone_s) for edge, gone_s in leapt if gone_s is not None]
    made = _anywhere(made, travel)
    if not made or len(leapt) - len(made) > MOST_AGAINST * len(leapt):
        return None
    return _marked(made, len(travel))


def _anywhere(made: list[tuple[_Edge, float]], travel: NDArray[np.float32]) -> list[tuple[_Edge, float]]:
    """The leaps without those that come back at one place: a recorder does not know where the arm is.

    An output that sticks does, and leaps there on every stroke. That so many of the others lie across the
    middle of one is a binomial chance, if each lies anywhere on the travel.
    """
    if len(made) < LEAST_AT_A_PLACE:
        return made
    ends = np.sort([(edge.before[0], edge.after[0]) for edge, _ in made], axis=1)
    ends += np.array([-1.0, 1.0]) * np.array([edge.tolerance for edge, _ in made])[:, None]
    middle = ends.mean(axis=1)
    across = (ends[:, 0] <= middle[:, None]) & (middle[:, None] <= ends[:, 1])
    low, high = np.nanpercentile(thinned(travel), [1.0, 99.0])
    usual = min(float(np.diff(ends).mean()) / max(float(high - low), 1e-6), 1.0)
    others = across.sum(axis=1) - 1
    chance = len(made) * binom.sf(others - 1, len(made) - 1, usual)
    at = int(np.argmin(chance))
    if others[at] + 1 < LEAST_AT_A_PLACE or chance[at] > MOST_BY_CHANCE:
        return made
    return [item for item, there in zip(made, across[at], strict=True) if not there]


def _marked(made: list[tuple[_Edge, float]], count: int) -> Leaps:
    """The leaps with the cells that tell nothing, of `count` cells."""
    lost = np.zeros(count, dtype=np.bool_)
    for edge, _ in made:
        lost[max(edge.until - edge.repeated + 1 - SPARED_CELLS, 0) : edge.since + SPARED_CELLS] = True
    return Leaps(
        cell=np.array([edge.since for edge, _ in made]),
        height_percent=np.array([edge.moved for edge, _ in made]),
        gone_s=np.array([gone_s for _, gone_s in made]),
        lost=lost,
    )


def _edges(trace: _Trace) -> list[tuple[int, int]]:
    """Cells before and after each move that stands out from those beside it; none where there are many.

    A block at a time, so that a long record takes up no more room than a short one.
    """
    found: list[tuple[int, int]] = []
    for start in range(0, len(trace.travel), BLOCK_CELLS):
        first, stop = max(start - HALO_CELLS, 0), start + BLOCK_CELLS
        cells = np.flatnonzero(trace.quiet[first : stop + HALO_CELLS]) + first
        at = _standing_out(trace.travel[cells], trace.tolerance[cells], np.diff(cells).astype(np.float32))
        at = at[(cells[at] >= start) & (cells[at] < stop)]
        found += zip(cells[at].tolist(), cells[at + 1].tolist(), strict=True)
        if len(found) > MOST_EDGES:
            return []
    return found


def _standing_out(
    places: NDArray[np.float32], tolerance: NDArray[np.float32], steps: NDArray[np.float32]
) -> NDArray[np.int64]:
    """Which of the moves between neighbours, `steps` cells apart, stand out from those beside them."""
    moves = np.diff(places)
    if len(moves) < 3:
        return np.empty(0, dtype=np.int64)
    speeds = moves / steps
    apart = np.abs(moves[1:-1] - np.float32(0.5) * steps[1:-1] * (speeds[:-2] + speeds[2:]))
    at = np.flatnonzero(apart > np.float32(STANDS_OUT) * tolerance[1:-2]) + 1
    # The moves beside a leap stand out as well, by half of it.
    return at[np.abs(moves[at]) > np.maximum(np.abs(moves[at - 1]), np.abs(moves[at + 1]))]


def _edge(trace: _Trace, until: int, since: int, alike: float) -> _Edge | None:
    """The move from one cell to another; None where it does not lie between two smooth stretches."""
    if since - until > MOST_BETWEEN:
        return None
    repeated = _repeated(trace.travel, until, alike)
    leapt = float(abs(trace.travel[since] - trace.travel[until]))
    before, after = _side(trace, until - repeated, -1, leapt), _side(trace, since, 1, leapt)
    if before is None or after is None:
        return None
    half_s = 0.5 * (since - until) * trace.cell_s
    met = before[0] + before[1] * half_s * (repeated == 0), after[0] - after[1] * half_s
    return _Edge(
        until, since, repeated, (met[0], before[1]), (met[1], after[1]), float(trace.tolerance[until])
    )


def _repeated(travel: NDArray[np.float32], until: int, alike: float) -> int:
    """How many cells before `until` read just as it does, where that is too many for chance; else 0.

    `alike` is the share of all neighbours in the record that read alike.
    """
    count = 0
    while until - count > 0 and travel[until - count - 1] == travel[until]:
        count += 1
    return count if count >= REPEATED_CELLS and alike**count < MOST_CHANCE else 0


def _side(trace: _Trace, edge: int, way: int, leapt: float) -> tuple[float, float] | None:
    """Place and speed at an edge by the motion from it on, `way` -1 or 1; None where that is not smooth.

    It is smooth where it strays no more than by its noise, or by a small share of what was `leapt`.

    By a parabola, which a wheel's hop at 12 Hz leaves by less than 3 % of its height within `SIDE_S`.
    """
    width = max(LEAST_SIDE_CELLS, round(SIDE_S / trace.cell_s))
    cells = edge + way * np.arange(width)
    if cells.min() < 0 or cells.max() >= len(trace.travel):
        return None
    kept = cells[trace.quiet[cells]]
    if len(kept) < LEAST_QUIET * width:
        return None
    when, places = (kept - edge) / width, trace.travel[kept].astype(np.float64)
    parabola = np.polynomial.polynomial.polyfit(when, places, 2)
    off = np.abs(places - np.polynomial.polynomial.polyval(when, parabola))
    if float(off.max()) > max(STANDS_OUT * float(np.median(trace.tolerance[kept])), SMALL_SHARE * leapt):
        return None
    return float(parabola[0]), float(parabola[1]) / (width * trace.cell_s)
