"""Which stretches of the signal tell where the arm is.

The signal is cut into pieces at every edge that no arm could make: an arm's motion is smooth at the scale
of a millisecond, a contact that opens is not. A piece tells the truth where it continues another one as an
arm would move; a piece that is entered and left by edges, such as the pull level while the contact is
open, does not. The chain of pieces that explains most time with the fewest impossible moves is found by
dynamic programming (Bellman 1957).
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from analysis.signals.cutting import (
    BRIDGED_S,
    FASTEST_PERCENT_PER_S,
    RAIL_PERCENT,
    SINKING_S,
    Pieces,
    bridged_over,
    cut_at_edges,
)
from analysis.signals.ends import Ends
from analysis.signals.thinning import thinned

IMPOSSIBLE_S = 1.0
"""An impossible move costs as much as leaving this much signal unexplained."""

LOOK_BACK = 48
"""Earlier pieces among which the predecessor is looked for: a chatter of two dozen openings."""

BLOCK_PIECES = 512
"""Pieces whose moves are judged at a time: the arrays of a block stay in the processor's cache."""

SUNK = 0.5
"""What is sinking to a level has come this much nearer to it."""

LOOKS = 8
"""Parts of a piece at whose ends it is looked at to see whether it goes anywhere."""

STANDING = 0.75
"""Share of those looks at which a piece that goes nowhere is where it stands."""


@dataclass(frozen=True, slots=True)
class Chain:
    """Pieces that together are one arm's motion.

    Parameters
    ----------
    chosen : ndarray of int, shape (n_chosen,)
        Indices into the pieces, ascending.
    score_s : float
        Seconds of signal that it explains, what its impossible moves cost taken off.
    """

    chosen: NDArray[np.int64]
    score_s: float


@dataclass(frozen=True, slots=True)
class Cut:
    """One record's pieces with what is needed to choose among them.

    Parameters
    ----------
    pieces : Pieces
    ends : Ends
        Time, place and speed at both ends of each piece.
    worth : ndarray, shape (n_pieces,)
        Seconds that each piece explains.
    level : ndarray, shape (n_pieces,)
        Where each piece stands, in % of travel.
    flat : ndarray of bool, shape (n_pieces,)
        Pieces that go nowhere.
    tolerance_percent : float
        Typical effect of noise and of the recorder's step on a move.
    strain : ndarray, shape (n_pieces, LOOK_BACK)
        How impossible the move to each piece from each of the `LOOK_BACK` before it is, the nearest last.
    """

    pieces: Pieces
    ends: Ends
    worth: NDArray[np.float64]
    level: NDArray[np.float64]
    flat: NDArray[np.bool_]
    tolerance_percent: float
    strain: NDArray[np.float64]
    _chains: dict[float | None, Chain] = field(default_factory=dict, init=False, repr=False, compare=False)
    """By open level: one and the same is asked for to find that level, and to follow the arm."""

    @classmethod
    def of(
        cls,
        travel: NDArray[np.float32],
        quiet: NDArray[np.bool_],
        tolerance: NDArray[np.float32],
        cell_s: float,
        gone_s: NDArray[np.float64] | None = None,
    ) -> Cut:
        """Cut a signal; see `cut_at_edges`, and `Ends.of` for `gone_s`."""
        bridged = bridged_over(travel, quiet)
        pieces = cut_at_edges(travel, quiet, tolerance, cell_s, bridged)
        typical = float(np.median(thinned(tolerance)))
        ends = Ends.of(bridged, pieces, cell_s, np.isnan(travel), gone_s)
        level, flat = _standing(bridged, ends, typical)
        return cls(
            pieces, ends, _worth(bridged, pieces, cell_s), level, flat, typical, _strains(ends, typical)
        )


def _standing(
    travel: NDArray[np.float32], ends: Ends, tolerance_percent: float
) -> tuple[NDArray[np.float64], NDArray[np.bool_]]:
    """Where each piece stands, in % of travel, and whether it goes nowhere.

    A piece that ends where it began may have been to the end of travel between, so it is looked at on its
    way; one that stands but for a spike stands.
    """
    first, last = (np.rint(when / ends.cell_s).astype(np.int64) for when in (ends.start_s, ends.stop_s))
    looks = np.stack([travel[first + (last - first) * part // LOOKS] for part in range(LOOKS + 1)])
    level = np.median(looks, axis=0).astype(np.float64)
    standing = np.abs(looks - level) < 0.5 * tolerance_percent
    return level, np.asarray(standing.mean(axis=0) >= STANDING)


def _strains(ends: Ends, tolerance_percent: float) -> NDArray[np.float64]:
    """`Ends.strain` of each piece after each of the `LOOK_BACK` before it; infinite where there is none."""
    count = len(ends.start)
    strains = np.full((count, LOOK_BACK), np.inf)
    for start in range(0, count, BLOCK_PIECES):
        later = np.arange(start, min(start + BLOCK_PIECES, count))[:, None]
        earlier = later + np.arange(-LOOK_BACK, 0)
        strain = ends.strain(np.maximum(earlier, 0), later, tolerance_percent)
        strains[start : start + BLOCK_PIECES] = np.where(earlier >= 0, strain, np.inf)
    return strains


def truthful_chain(cut: Cut, *, open_level: float | None) -> Chain:
    """Choose the pieces that together are one arm's motion.

    Parameters
    ----------
    cut : Cut
        Of one record; may hold no piece.
    open_level : float or None
        Travel in % at which the signal stands while the contact is open, where that is known: a flat piece
        there counts against a chain.

    Returns
    -------
    Chain
    """
    if open_level not in cut._chains:
        cut._chains[open_level] = _best_chain(cut, open_level)
    return cut._chains[open_level]


def _best_chain(cut: Cut, open_level: float | None) -> Chain:
    """`truthful_chain`, found anew."""
    worth = cut.worth
    if open_level is not None:
        worth = np.where(parked(cut, open_level), -worth, worth)
    if len(cut.pieces) <= 1:
        return Chain(np.arange(len(cut.pieces)), float(worth.sum()))
    # Before the first piece there is nothing to come from: the strain of that is infinite.
    padded = np.concatenate([np.zeros(LOOK_BACK), worth])
    score, before = padded[LOOK_BACK:], np.full(len(worth), -1)
    cost = IMPOSSIBLE_S * cut.strain
    for index in range(1, len(worth)):
        gain = padded[index : index + LOOK_BACK] - cost[index]
        best = gain.argmax()
        if gain[best] > 0.0:
            score[index] = worth[index] + gain[best]
            before[index] = index - LOOK_BACK + best
    chain = [int(np.argmax(score))]
    while before[chain[-1]] >= 0:
        chain.append(int(before[chain[-1]]))
    return Chain(np.array(chain[::-1]), float(score.max()))


def parked(cut: Cut, level: float) -> NDArray[np.bool_]:
    """Flat pieces at a level, and brief ones that run into it or out of it, shape (n_pieces,).

    Through a filter the signal sinks to the open level, and comes back from it, as smoothly as an arm moves.
    """
    ends = cut.ends
    there = cut.flat & (np.abs(cut.level - level) < cut.tolerance_percent)
    if level < RAIL_PERCENT:
        there |= cut.level < RAIL_PERCENT
    elif level > 100.0 - RAIL_PERCENT:
        there |= cut.level > 100.0 - RAIL_PERCENT
    touching = (ends.begin_s[1:] - ends.end_s[:-1] < max(BRIDGED_S, 1.5 * ends.cell_s)) & (
        np.abs(ends.begin[1:] - ends.end[:-1]) < cut.tolerance_percent + FASTEST_PERCENT_PER_S * BRIDGED_S
    )
    brief = ends.end_s - ends.begin_s < SINKING_S
    there |= brief & _sinking(cut, level)
    beside = np.zeros(len(there), dtype=np.bool_)
    beside[:-1] |= there[1:] & touching & brief[:-1]
    beside[1:] |= there[:-1] & touching & brief[1:]
    return np.asarray(there | beside)


def _sinking(cut: Cut, level: float) -> NDArray[np.bool_]:
    """Pieces that come a good deal nearer to a level, or leave it: so does a filter, within its time."""
    begin, end = np.abs(cut.ends.begin - level), np.abs(cut.ends.end - level)
    moved = np.abs(cut.ends.end - cut.ends.begin) > cut.tolerance_percent
    return np.asarray(moved & (np.minimum(begin, end) < SUNK * np.maximum(begin, end)))


def _worth(travel: NDArray[np.float32], pieces: Pieces, cell_s: float) -> NDArray[np.float64]:
    """Seconds explained by each piece; a piece beyond the ends of the track explains next to nothing."""
    seconds = (pieces.last - pieces.first + 1) * cell_s
    middle = travel[(pieces.first + pieces.last) // 2]
    return np.where((middle < 1.0) | (middle > 99.0), 0.05 * seconds, seconds)
