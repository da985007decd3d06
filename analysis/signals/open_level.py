"""At which level the signal stands while the contact is open.

An open contact leaves the signal to the pull resistor, the filter and the probe, which settle at one level
wherever the arm is. Where an arm rests in a bad spot, the signal may stand at that level most of the time,
and then looks like an arm that rests there. Which it was shows when the arm moves on: the explanation that
accounts for most of the signal's time is taken.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from analysis.signals.cells import CellSeries
from analysis.signals.pieces import Cut, parked, truthful_chain

LEAST_VISITS = 3
"""A level that the signal jumps to and from fewer times may be anything."""

MOST_LEVELS = 3
"""Levels that are tried."""

MOST_PIECES = 8_000
"""Records with more pieces than this together are tried with one level only."""

OPEN_WORTH = 0.98
"""What a second at the open level explains beside a second of motion: of two explanations the simpler."""

FURTHEST = 0.8
"""The fifth of the closings that go furthest from the open level reach the arm's place..."""

LEAST_SHUT_CELLS = 5
"""...where there are as many as this."""

LEAST_GAIN_S = 0.01
"""Seconds that a level must explain more than no level does."""


def find_open_level(cuts: Sequence[Cut]) -> float | None:
    """Level at which the signal stands while the contact is open.

    Parameters
    ----------
    cuts : sequence of Cut
        All records of one track; may be empty.

    Returns
    -------
    float or None
        Travel in %; None where no level explains more of the signal than the arm's motion alone.
    """
    levels = _candidates(cuts)
    if not levels:
        return None
    if sum(len(cut.pieces) for cut in cuts) > MOST_PIECES:
        levels = levels[:1]
    without = sum(truthful_chain(cut, open_level=None).score_s for cut in cuts)
    explained = [sum(_explained_s(cut, level) for cut in cuts) for level in levels]
    best = int(np.argmax(explained))
    return levels[best] if explained[best] > without + LEAST_GAIN_S else None


def rest_place(cells: CellSeries, tolerance: NDArray[np.float32], open_level: float) -> float | None:
    """Where an arm at rest stands whose contact is open most of the time.

    Through a filter the signal reaches the arm's place only now and then: what goes furthest from the open
    level tells.

    Parameters
    ----------
    cells : CellSeries
        Travel in % of a record in which the arm rested, shape (n_cells,).
    tolerance : ndarray, shape (n_cells,)
        What noise and the recorder's step may add to a move, in %.
    open_level : float
        Travel in % at which the signal stands while the contact is open.

    Returns
    -------
    float or None
        Travel in %; None where the contact hardly ever closes.
    """
    known = np.isfinite(cells.mean)
    above, below = cells.maximum[known] - open_level, open_level - cells.minimum[known]
    reach = np.where(above > below, cells.maximum[known], cells.minimum[known])
    away = np.maximum(above, below)
    shut = away > 3.0 * tolerance[known]
    if shut.sum() < LEAST_SHUT_CELLS:
        return None
    return float(np.median(reach[shut & (away >= np.quantile(away[shut], FURTHEST))]))


def _explained_s(cut: Cut, level: float) -> float:
    """Seconds explained by a motion and a contact that opens to a level."""
    open_s = (cut.ends.end_s - cut.ends.begin_s + cut.ends.cell_s)[parked(cut, level)]
    return truthful_chain(cut, open_level=level).score_s + OPEN_WORTH * float(open_s.sum())


def _candidates(cuts: Sequence[Cut]) -> list[float]:
    """Levels at which flat pieces stand that are reached by jumps, most visited first."""
    found = [cut.level[_jumped_to(cut)] for cut in cuts]
    level = np.sort(np.concatenate([[], *found]))
    reach = max((cut.tolerance_percent for cut in cuts), default=0.0)
    levels: list[float] = []
    while len(levels) < MOST_LEVELS and len(level) >= LEAST_VISITS:
        until = np.searchsorted(level, level + 2.0 * reach, side="right")
        count = until - np.arange(len(level))
        first = int(np.argmax(count))
        if count[first] < LEAST_VISITS:
            break
        levels.append(float(np.median(level[first : until[first]])))
        level = level[np.abs(level - levels[-1]) > 2.0 * reach]
    return levels


def _jumped_to(cut: Cut) -> NDArray[np.bool_]:
    """Flat pieces that are reached by a jump, shape (n_pieces,)."""
    if len(cut.pieces) < 2:
        return np.zeros(len(cut.pieces), dtype=np.bool_)
    jump = np.abs(cut.ends.begin[1:] - cut.ends.end[:-1]) > 2.0 * cut.tolerance_percent
    return np.asarray(cut.flat & np.concatenate([[False], jump]))
