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
from analysis.signals.cutting import RAIL_PERCENT
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

LEAST_ORIGINS_PERCENT = 1.0
"""Least spread of the places that an open level is jumped to from."""

NEAR_RAIL_PERCENT = 25.0
"""A pull resistor of up to a third of the probe's load pulls an open signal this near to a rail."""

MOST_BEYOND = 0.15
"""Share of the jumps to an open level near a rail that may come from between the two: the signal of an open
contact sinks to its level and no further, and few arms stand beyond it."""

USUAL_WIDTH_PERCENT = 0.25
"""Half the width of the stretch of travel in which an arm at rest is looked for."""

LEAST_USUAL = 0.2
"""Share of its time that a disturbed signal at rest spends at the arm's place."""

EDGE_SHARE = 0.04
"""Share of the readings of a wandering signal that noise or interference may throw beyond its edge."""

LEAST_LOPSIDED = 0.2
"""Lop-sidedness of the readings, 0 for none and 1 at most, from which on one side is an edge."""

LEAST_GAIN = 0.01
"""Share of the signal that such a level must explain more than what else is known does."""


def find_open_level(cuts: Sequence[Cut]) -> float | None:
    """Level at which the signal stands while the contact is open.

    Parameters
    ----------
    cuts : sequence of Cut
        All records of one track in which the arm moved; may be empty.

    Returns
    -------
    float or None
        Travel in %; None where neither the flat pieces that no motion explains agree on one, nor any that is
        jumped to from several places explains more of the signal.
    """
    origin, level = _all_jumps(cuts)
    reach = max((cut.tolerance_percent for cut in cuts), default=0.0)
    agreed = _agreed_level(cuts)
    if agreed is not None and not _is_last(agreed, origin[np.abs(level - agreed) < 2.0 * reach], reach):
        agreed = None
    levels = [*_at_rails(cuts), *_candidates(origin, level, 2.0 * reach)]
    if not levels:
        return agreed
    if sum(len(cut.pieces) for cut in cuts) > MOST_PIECES:
        levels = levels[:1]
    known = sum(_explained_s(cut, agreed) for cut in cuts)
    explained = [sum(_explained_s(cut, level) for cut in cuts) for level in levels]
    best = int(np.argmax(explained))
    return levels[best] if explained[best] > (1.0 + LEAST_GAIN) * known else agreed


def _agreed_level(cuts: Sequence[Cut]) -> float | None:
    """Level of most of the flat pieces that no motion explains, where three agree."""
    levels, times, reach = [], [], 0.0
    for cut in cuts:
        left_out = cut.flat & ~_knocked(cut)
        left_out[truthful_chain(cut, open_level=None).chosen] = False
        levels.append(cut.level[left_out])
        times.append((cut.ends.stop_s - cut.ends.start_s)[left_out])
        reach = max(reach, cut.tolerance_percent)
    level, time_s = np.concatenate([[], *levels]), np.concatenate([[], *times])
    if len(level) < LEAST_VISITS:
        return None
    order = np.argsort(level)
    reached = np.cumsum(time_s[order])
    median = float(level[order][np.searchsorted(reached, 0.5 * reached[-1])])
    near = np.abs(level - median) < reach
    agree = near.sum() >= LEAST_VISITS and time_s[near].sum() >= 0.5 * time_s.sum()
    return median if agree else None


def place_at_rest(
    cells: CellSeries, tolerance: NDArray[np.float32], step_percent: float, open_level: float | None
) -> float | None:
    """Where an arm at rest stands, by `rest_place` where the open level is known, else by `usual_place`.

    Where neither tells, `edge_place` does, or nothing.
    """
    known = (
        usual_place(cells, step_percent) if open_level is None else rest_place(cells, tolerance, open_level)
    )
    return edge_place(cells) if known is None else known


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


def usual_place(cells: CellSeries, step_percent: float) -> float | None:
    """Where an arm at rest stands whose signal is disturbed much of the time: the level it comes back to.

    Parameters
    ----------
    cells : CellSeries
        Travel in % of a record in which the arm rested, shape (n_cells,).
    step_percent : float
        The recorder's step in % of travel; 0 where unknown.

    Returns
    -------
    float or None
        Travel in %; None where the signal comes back to no level.
    """
    level = np.sort(cells.mean[np.isfinite(cells.mean)])
    width = 2.0 * max(step_percent, USUAL_WIDTH_PERCENT)
    until = np.searchsorted(level, level + width, side="right")
    count = until - np.arange(len(level))
    if not len(level) or count.max() < LEAST_USUAL * len(level):
        return None
    first = int(np.argmax(count))
    return float(np.median(level[first : until[first]]))


def edge_place(cells: CellSeries) -> float | None:
    """Where an arm at rest stands whose signal wanders all the time: at the edge that it never goes beyond.

    An open contact lets the signal drift towards one rail and no further than the arm's place the other way.

    Parameters
    ----------
    cells : CellSeries
        Travel in % of a record in which the arm rested, shape (n_cells,).

    Returns
    -------
    float or None
        Travel in %; None where the signal wanders to both sides alike.
    """
    level = cells.mean[np.isfinite(cells.mean)]
    if not len(level):
        return None
    low, middle, high = (float(value) for value in np.quantile(level, [EDGE_SHARE, 0.5, 1.0 - EDGE_SHARE]))
    lopsided = (high + low - 2.0 * middle) / max(high - low, 1e-6)
    if abs(lopsided) < LEAST_LOPSIDED:
        return None
    return low if lopsided > 0.0 else high


def _explained_s(cut: Cut, level: float | None) -> float:
    """Seconds explained by a motion and a contact that opens to a level, or by a motion alone."""
    score_s = truthful_chain(cut, open_level=level).score_s
    if level is None:
        return score_s
    open_s = (cut.ends.end_s - cut.ends.begin_s + cut.ends.cell_s)[parked(cut, level)]
    return score_s + OPEN_WORTH * float(open_s.sum())


def _at_rails(cuts: Sequence[Cut]) -> list[float]:
    """Where flat pieces stand beyond either end of any track, as no arm can, if they do."""
    level = np.concatenate([[], *(cut.level[cut.flat] for cut in cuts)])
    beyond = (level[level < RAIL_PERCENT], level[level > 100.0 - RAIL_PERCENT])
    return [float(np.median(side)) for side in beyond if len(side) >= LEAST_VISITS]


def _all_jumps(cuts: Sequence[Cut]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """`_jumps` of all records."""
    jumps = [_jumps(cut) for cut in cuts]
    origin, level = (np.concatenate([[], *(pair[side] for pair in jumps)]) for side in (0, 1))
    return origin, level


def _is_last(level: float, origin: NDArray[np.float64], reach: float) -> bool:
    """Whether hardly any jump to a level near a rail came from between the two."""
    if abs(level - 50.0) <= 50.0 - NEAR_RAIL_PERCENT or not len(origin):
        return True
    return float((np.sign(level - 50.0) * (origin - level) > reach).mean()) < MOST_BEYOND


def _candidates(origin: NDArray[np.float64], level: NDArray[np.float64], reach: float) -> list[float]:
    """Levels that the signal jumps to from several places and stands at, most visited first."""
    order = np.argsort(level)
    origin, level = origin[order], level[order]
    levels: list[float] = []
    while len(levels) < MOST_LEVELS and len(level) >= LEAST_VISITS:
        until = np.searchsorted(level, level + reach, side="right")
        first = int(np.argmax(until - np.arange(len(level))))
        visits = slice(first, int(until[first]))
        if visits.stop - first < LEAST_VISITS:
            break
        middle = float(np.median(level[visits]))
        # An arm that rests is jumped to from the open level alone, the open level from wherever the arm is.
        several = np.ptp(np.quantile(origin[visits], [0.1, 0.9])) > max(reach, LEAST_ORIGINS_PERCENT)
        near_rail = abs(middle - 50.0) > 50.0 - NEAR_RAIL_PERCENT
        if several and near_rail and _is_last(middle, origin[visits], 0.5 * reach):
            levels.append(middle)
        kept = np.abs(level - middle) > reach
        origin, level = origin[kept], level[kept]
    return levels


def _jumps(cut: Cut) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Where the signal was before each jump to a flat piece, and the level of that piece."""
    to = np.flatnonzero(cut.flat[1:] & ~_knocked(cut)[1:]) + 1
    to = to[np.abs(cut.ends.begin[to] - cut.ends.end[to - 1]) > 2.0 * cut.tolerance_percent]
    return cut.ends.end[to - 1], cut.level[to]


def _knocked(cut: Cut) -> NDArray[np.bool_]:
    """Pieces at which an arm that was thrown against its stop arrived, shape (n_pieces,).

    There the signal stands as flat as at an open level; but it moved there.
    """
    every, knocked = np.arange(len(cut.pieces)), np.zeros(len(cut.pieces), dtype=np.bool_)
    for back in (1, 2):
        knocked[back:] |= cut.ends.knocks(every[:-back], every[back:], cut.tolerance_percent)
    return knocked & cut.ends.at_stop(cut.ends.begin)
