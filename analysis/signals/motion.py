"""The arm's most plausible true path through a record, and what departs from it.

The path is the maximum a posteriori estimate of a smooth motion, one that changes its acceleration as
little as the evidence allows (the minimum-jerk principle of hand motion, Flash and Hogan 1985), given the
pieces of signal that can be true. Where the contact is open the signal does not tell where the arm is; the
path then bridges the gap, and says how unsure it is.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import solveh_banded

from analysis.signals.cells import CellSeries
from analysis.signals.facts import ArmPath
from analysis.signals.noise import UsualLevel, usual_level
from analysis.signals.pieces import FASTEST_PERCENT_PER_S, cut_at_edges, truthful_chain

NODE_S = 0.002
"""Spacing of the path's nodes."""

FOLLOWED_HZ = 50.0
"""Motion slower than this is followed: a hand stays below some 15 Hz, a wheel hops at some 10 to 15 Hz, an
arm that knocks on its stop rings faster; a bad contact lives above (common practice, no source)."""

LEAST_PERCENT = 0.01
"""Noise below this is not told apart from none: half a millivolt on a 5 V feed."""


@dataclass(frozen=True, slots=True)
class Motion:
    """The path of one record and the signal's departure from it.

    Parameters
    ----------
    path : ArmPath
        One node every two milliseconds or a cell, whichever is longer.
    travel_percent : ndarray, shape (n_cells,)
        The path at the middle of each cell, in %.
    above, below : ndarray, shape (n_cells,)
        How far the cell reaches above and below the path, in % of the feed, motion within the cell taken
        off; never negative, NaN where the cell is missing.
    truthful : ndarray of bool, shape (n_cells,)
        Cells from which the path was reckoned.
    noise : UsualLevel
        Usual move between neighbouring cells along the travel, in %.
    """

    path: ArmPath
    travel_percent: NDArray[np.float32]
    above: NDArray[np.float32]
    below: NDArray[np.float32]
    truthful: NDArray[np.bool_]
    noise: UsualLevel

    @property
    def departure(self) -> NDArray[np.float32]:
        """The larger of `above` and `below`, shape (n_cells,)."""
        return np.fmax(self.above, self.below)


def follow(
    cells: CellSeries, *, record: str, start_s: float, cell_s: float, step_percent: float
) -> Motion | None:
    """Estimate the path of the arm through one record.

    Parameters
    ----------
    cells : CellSeries
        Travel in %, shape (n_cells,).
    record : str
        Name of the record.
    start_s, cell_s : float
        Time of the first cell's beginning and length of a cell, in seconds.
    step_percent : float
        The recorder's step in % of travel; 0 where unknown.

    Returns
    -------
    Motion or None
        None where fewer than four cells hold a sample: nothing can be followed.
    """
    if int(np.isfinite(cells.mean).sum()) < 4:
        return None
    noise = _noise(cells.mean, step_percent)
    tolerance = np.float32(6.0) * noise.at(_filled(cells.mean)) + np.float32(1.2 * step_percent)
    quiet = _quiet(cells, tolerance, cell_s)
    pieces = cut_at_edges(cells.mean, quiet, tolerance, cell_s)
    chain = truthful_chain(cells.mean, pieces, float(np.median(tolerance)), cell_s)
    truthful = np.zeros(len(cells.mean), dtype=np.bool_)
    for index in chain:
        truthful[pieces.first[index] : pieces.last[index] + 1] = True
    truthful &= quiet
    per_node = max(1, round(NODE_S / cell_s))
    nodes, known_s = _smooth(cells.mean, truthful, tolerance, per_node, cell_s)
    return _departures(cells, nodes, known_s, truthful, noise, record, start_s, cell_s, per_node)


def _noise(mean: NDArray[np.float32], step_percent: float) -> UsualLevel:
    """Usual noise of a cell along the travel: median absolute second difference, scaled to one sigma.

    The second difference of a straight motion vanishes; of white noise its standard deviation is sqrt(6)
    times that of the noise, and the median absolute value 0.6745 of that.
    """
    bend = np.abs(mean[2:] - 2.0 * mean[1:-1] + mean[:-2])
    known = np.isfinite(bend)
    scaled = bend[known] / np.float32(np.sqrt(6.0) * 0.6745)
    least = max(LEAST_PERCENT, step_percent / np.sqrt(12.0) * 0.5)
    return usual_level(mean[1:-1][known], scaled, least=least)


def _filled(travel: NDArray[np.float32]) -> NDArray[np.float32]:
    return np.nan_to_num(travel, nan=50.0)


def _quiet(cells: CellSeries, tolerance: NDArray[np.float32], cell_s: float) -> NDArray[np.bool_]:
    """Cells whose samples stay together as noise and motion allow."""
    spread = cells.spread
    known = np.isfinite(spread)
    usual = usual_level(cells.mean[known], spread[known], least=LEAST_PERCENT)
    allowed = 2.5 * usual.at(_filled(cells.mean)) + 0.5 * tolerance
    return known & (spread <= allowed + np.float32(FASTEST_PERCENT_PER_S * cell_s))


def _smooth(
    mean: NDArray[np.float32],
    truthful: NDArray[np.bool_],
    tolerance: NDArray[np.float32],
    per_node: int,
    cell_s: float,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Nodes of the path in %, and how long ago or ahead the nearest truthful cell of each is, in s."""
    weight = truthful.astype(np.float32)
    value = np.where(truthful, mean, np.float32(0.0))
    count, total = _per_node(weight, per_node), _per_node(value, per_node)
    seen = np.flatnonzero(count)
    if not len(seen):
        count, total = (
            _per_node(np.isfinite(mean).astype(np.float32), per_node),
            _per_node(_filled(mean), per_node),
        )
        seen = np.flatnonzero(count)
    every = np.arange(len(count))
    level = np.interp(every, seen, total[seen] / count[seen])
    share = count / per_node
    nodes = _minimum_jerk(level, share, per_node * cell_s)
    for _ in range(2):
        stray = np.abs(nodes - level) / float(np.median(tolerance))
        nodes = _minimum_jerk(level, share / (1.0 + stray**2), per_node * cell_s)
    before = np.maximum.accumulate(np.where(count > 0, every, -1))
    after = np.minimum.accumulate(np.where(count > 0, every, len(every) * 2)[::-1])[::-1]
    lone = np.sqrt(np.maximum(every - before, 0.0) * np.maximum(np.minimum(after, len(every)) - every, 0.0))
    return nodes, lone * per_node * cell_s


def _per_node(values: NDArray[np.float32], per_node: int) -> NDArray[np.float64]:
    return np.add.reduceat(values, np.arange(0, len(values), per_node), dtype=np.float64)


def _minimum_jerk(
    level: NDArray[np.float64], weight: NDArray[np.float64], node_s: float
) -> NDArray[np.float64]:
    """Minimise ``sum w (x - level)^2 + penalty * sum (third difference of x)^2``.

    The penalty puts the half-way frequency of the equivalent low-pass at `FOLLOWED_HZ` (Whittaker 1923;
    Eilers 2003): the gain is ``1 / (1 + penalty * (2 sin(pi f h))^6)``.
    """
    size = len(level)
    if size < 4:
        return level
    corner = min(FOLLOWED_HZ, 0.2 / node_s)
    penalty = (2.0 * np.sin(np.pi * corner * node_s)) ** -6
    held = np.maximum(weight, 1e-6)  # a thread to the straight line keeps long gaps from swinging
    bands = _third_difference_bands(size) * penalty
    bands[3] += held
    return np.asarray(solveh_banded(bands, held * level, overwrite_ab=True, check_finite=False))


def _third_difference_bands(size: int) -> NDArray[np.float64]:
    """Upper bands of D'D for the third difference D, shape (4, size), as `solveh_banded` wants them."""
    bands = np.zeros((4, size))
    coefficients = (-1.0, 3.0, -3.0, 1.0)
    for row, left in enumerate(coefficients):
        for column in range(row, 4):
            right = coefficients[column]
            bands[3 - (column - row), column : size - 3 + column] += left * right
    return bands


def _departures(
    cells: CellSeries,
    nodes: NDArray[np.float64],
    known_s: NDArray[np.float64],
    truthful: NDArray[np.bool_],
    noise: UsualLevel,
    record: str,
    start_s: float,
    cell_s: float,
    per_node: int,
) -> Motion:
    node_s = per_node * cell_s
    times = start_s + node_s * (np.arange(len(nodes)) + 0.5)
    position = np.interp(start_s + cell_s * (np.arange(len(cells.mean)) + 0.5), times, nodes).astype(
        np.float32
    )
    inside = np.abs(np.gradient(position)) * np.float32(0.5) if len(position) > 1 else np.zeros(1, np.float32)
    # Standard uncertainty: the noise of one node, and in a gap what a hard change of speed could have done.
    unsure = np.minimum(0.02 * 12_000.0 * known_s**2, 20.0)
    return Motion(
        path=ArmPath(record, times, nodes, np.hypot(noise.at(nodes), unsure)),
        travel_percent=position,
        above=np.maximum(cells.maximum - position - inside, np.float32(0.0)),
        below=np.maximum(position - cells.minimum - inside, np.float32(0.0)),
        truthful=truthful,
        noise=noise,
    )
