"""Where the signal is cut into pieces: at every edge and every corner that no arm could make.

An arm's motion is smooth at the scale of a millisecond, however fast it is; a contact that opens is not.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import maximum_filter1d

from analysis.signals.thinning import thinned

FASTEST_PERCENT_PER_S = 1200.0
"""Full stroke in a twelfth of a second: faster than a hand or a wheel moves the arm (common practice)."""

HARDEST_PERCENT_PER_S2 = 12_000.0
"""Peak acceleration of a minimum-jerk stroke over 80 % of travel in 0.2 s, 5.77 d/T^2 (Flash, Hogan 1985)."""

USUAL_PERCENT_PER_S2 = 3000.0
"""Peak acceleration of a minimum-jerk stroke over 80 % of travel in 0.4 s."""

BRIDGED_S = 0.003
"""Quiet cells no further apart than this may belong to one piece."""

MOST_PIECES = 20_000
"""The longest pieces are kept where there are more, so that a ruined record costs no more than seconds."""

KINK_S = 0.004
"""Span on either side of a cell over which a sudden change of speed is looked for."""

SWIFT_S = 0.0015
"""Span before and after a move over which a motion as fast as it is looked for."""

MOST_GATHERED = 0.5
"""Share of its speed that a motion gathers or loses within `SWIFT_S`."""

RAIL_PERCENT = 1.5
"""No track is wired to stop this near to ground or reference (limits of signal range: 5 to 95 %)."""

SINKING_S = 0.05
"""A filter has let the signal sink to the open level within this: five time constants of 10 ms."""

SLOWS = 1.5
"""An arm that comes to rest within `SINKING_S` went this much further in as long a time before."""

LEAST_STUCK_S = 0.006
"""An output that stands for so long sticks..."""

LONGEST_STUCK_S = 0.1
"""...and one that stands for longer may be an arm that rests. A leap that has another within this time is a
contact's."""

STUCK_SLOPE_S = 0.010
"""Span over which the motion before and after is read..."""

MOST_OFF = 2.0
"""...which brings the arm as far as the leap, give or take this factor."""

LOOKS = 4
"""So often it is looked at on its way within each of the two..."""

STRAIGHT = 1.2
"""...and goes hardly further from look to look than from end to end."""

SEEN_AT_RAIL = 0.001
"""Share of the time that a signal is seen there now and then, and not by a spike."""

LEAST_SWERVE = 0.6
"""Share of its bend that a smooth motion of up to some 20 Hz still has `KINK_S` before and after."""


MOST_SUDDEN = 0.16
"""Share of its bend over `KINK_S` that a smooth motion shows over a quarter of that: midway between the
quarter of a corner and the sixteenth of a steady swerve."""


@dataclass(frozen=True, slots=True)
class Pieces:
    """Smooth stretches of one signal, as arrays of shape (n_pieces,).

    Parameters
    ----------
    first, last : ndarray of int
        First and last cell of each, both included.
    """

    first: NDArray[np.int64]
    last: NDArray[np.int64]

    def cells(self, chosen: NDArray[np.int64], spared: int, total: int) -> NDArray[np.bool_]:
        """Cells of the chosen pieces, shape (total,); at a gap, `spared` cells of a long piece go."""
        first, last = self.first[chosen], self.last[chosen]
        spare = np.where(last - first >= 4 * spared, spared, 0)
        apart = first[1:] - last[:-1] > 1
        marks = np.zeros(total + 1, dtype=np.int64)
        np.add.at(marks, first + np.where(np.concatenate([first[:1] > 0, apart]), spare, 0), 1)
        np.add.at(marks, last + 1 - np.where(np.concatenate([apart, last[-1:] < total - 1]), spare, 0), -1)
        return np.asarray(np.cumsum(marks[:-1]) > 0)

    def __len__(self) -> int:
        """Number of pieces."""
        return len(self.first)


def cut_at_edges(
    travel: NDArray[np.float32],
    quiet: NDArray[np.bool_],
    tolerance: NDArray[np.float32],
    cell_s: float,
    bridged: NDArray[np.float32] | None = None,
) -> Pieces:
    """Cut a signal into pieces at every move that no arm could make.

    Parameters
    ----------
    travel : ndarray, shape (n_cells,)
        Mean travel of each cell in %.
    quiet : ndarray of bool, shape (n_cells,)
        Cells without a disturbance inside; the others belong to no piece.
    tolerance : ndarray, shape (n_cells,)
        What noise and the recorder's step may add to a move, in %.
    cell_s : float
        Length of a cell in seconds.
    bridged : ndarray, shape (n_cells,), or None
        The travel as `bridged_over` gives it, where that is at hand.

    Returns
    -------
    Pieces
        In order of time; none where no cell is quiet.
    """
    cells = np.flatnonzero(quiet)
    if not len(cells):
        return Pieces(cells, cells)
    gap_s = np.diff(cells) * cell_s
    moved = np.abs(np.diff(travel[cells]))
    reach = tolerance[cells[1:]] + FASTEST_PERCENT_PER_S * gap_s
    cut = moved > reach
    swift = not sinks_to_a_rail(travel)
    if swift:
        cut &= ~_swift(travel[cells], cut, max(2, round(SWIFT_S / cell_s)))
    cut |= _stuck(travel[cells], cut, tolerance[cells], cell_s)
    cut |= gap_s > max(BRIDGED_S, 1.5 * cell_s)
    if swift:
        bridged = bridged_over(travel, quiet) if bridged is None else bridged
        cut |= _kinks(bridged, tolerance, cell_s, swerving=True)[cells[1:]]
    else:
        cut |= _kinks(travel, tolerance, cell_s, swerving=False)[cells[1:]]
        cut |= _sinkings(travel[cells], cell_s)
    first = cells[np.concatenate([[True], cut])]
    last = cells[np.concatenate([cut, [True]])]
    if len(first) > MOST_PIECES:
        kept = np.sort(np.argpartition(last - first, -MOST_PIECES)[-MOST_PIECES:])
        first, last = first[kept], last[kept]
    return Pieces(first, last)


def sinks_to_a_rail(travel: NDArray[np.float32]) -> bool:
    """Whether the signal is seen at ground or at the reference, where no arm can be.

    An open contact lets it sink there, through a filter as smoothly as an arm moves: then what is faster than
    a hand is no motion.
    """
    some = thinned(travel)
    return float(np.mean((some < RAIL_PERCENT) | (some > 100.0 - RAIL_PERCENT))) > SEEN_AT_RAIL


def _sinkings(travel: NDArray[np.float32], cell_s: float) -> NDArray[np.bool_]:
    """Where the signal may have begun to sink to a rail, reaches it, leaves it, and may have come back.

    Through a filter it does so as smoothly as an arm moves, but faster than an arm comes to rest there; shape
    (n_cells - 1,), for the moves between cells.
    """
    span, last = max(1, round(SINKING_S / cell_s)), len(travel) - 1
    there = (travel < RAIL_PERCENT) | (travel > 100.0 - RAIL_PERCENT)
    least = 0.5 * USUAL_PERCENT_PER_S2 * (span * cell_s) ** 2
    at = np.flatnonzero(there[1:] != there[:-1])
    # From the last cell outside a rail to where the sinking began, or from the first to where it ended.
    begun = np.where(there[at + 1], np.maximum(at - span, 0), np.minimum(at + 1 + span, last))
    fast = np.abs(travel[begun] - travel[at]) > least
    fast &= ~_slowing(travel, at, there[at + 1], span)
    cut = np.zeros(last, dtype=np.bool_)
    cut[at[fast]] = True
    cut[np.minimum(begun[fast], last - 1)] = True
    return cut


def _stuck(
    travel: NDArray[np.float32], edges: NDArray[np.bool_], tolerance: NDArray[np.float32], cell_s: float
) -> NDArray[np.bool_]:
    """Where an output begins to stick before it leaps on the way that it went, or stands after it leapt.

    The motion before and after tells where the arm was; the stand between them does not, and is a piece of
    its own. The arm went on meanwhile: the leap is as far as it got. Shape (n_cells - 1,), for the moves
    between cells.
    """
    cut = np.zeros_like(edges)
    at = np.flatnonzero(edges)
    apart = np.diff(at, prepend=-len(travel), append=2 * len(travel)) * cell_s
    at = at[np.minimum(apart[:-1], apart[1:]) > LONGEST_STUCK_S]
    if not len(at):
        return cut
    leapt, last, lag = travel[at + 1] - travel[at], len(travel) - 1, max(2, round(STUCK_SLOPE_S / cell_s))
    for way, stand, other in ((-1, at, at + 1), (1, at + 1, at)):
        begun = _left(travel, stand, way, tolerance[stand], round(LONGEST_STUCK_S / cell_s))
        far = np.clip(begun + way * lag, 0, last)
        beside = np.clip(other - way * lag, 0, last)
        speed = way * (travel[far] - travel[begun]), -way * (travel[beside] - travel[other])
        stood = np.abs(begun - stand)
        usual = 0.5 * (speed[0] + speed[1]) / lag * stood
        onward = (speed[0] * leapt > 0.0) & (speed[1] * leapt > 0.0) & (stood * cell_s >= LEAST_STUCK_S)
        got_there = (np.abs(leapt) < MOST_OFF * np.abs(usual)) & (np.abs(usual) < MOST_OFF * np.abs(leapt))
        found = begun[onward & got_there]
        cut[np.clip(found if way < 0 else found - 1, 0, last - 1)] = True
    return cut


def _left(
    travel: NDArray[np.float32],
    stand: NDArray[np.int64],
    way: int,
    tolerance: NDArray[np.float32],
    most: int,
) -> NDArray[np.int64]:
    """First cell, from each cell on, that is away from where that cell stands; the cell itself for none."""
    begun = stand.copy()
    for lag in range(1, most + 1):
        there = np.clip(stand + way * lag, 0, len(travel) - 1)
        away = np.abs(travel[there] - travel[stand]) > tolerance
        begun = np.where((begun == stand) & away, there, begun)
    return begun


def _slowing(
    travel: NDArray[np.float32], at: NDArray[np.int64], arrives: NDArray[np.bool_], span: int
) -> NDArray[np.bool_]:
    """Which of the moves to a rail or from it, each at a cell, are an arm's that slows down to its stop.

    It was faster before, and comes to rest there without a bend; what sinks through a filter began to sink
    all at once.
    """
    step = np.where(arrives, -span, span)[:, None]
    looks = np.clip(at[:, None] + step * np.linspace(0.0, 2.0, 2 * LOOKS + 1), 0, len(travel) - 1)
    places = travel[looks.astype(np.int64)]
    close, before = (np.abs(places[:, last] - places[:, last - LOOKS]) for last in (LOOKS, 2 * LOOKS))
    # A contact that chatters goes to and fro on the way.
    straight = np.abs(np.diff(places, axis=1)).sum(axis=1) < STRAIGHT * (close + before)
    return np.asarray((before > SLOWS * close) & straight)


def _swift(travel: NDArray[np.float32], fast: NDArray[np.bool_], lag: int) -> NDArray[np.bool_]:
    """Which of the fast moves between neighbours are a motion: as fast before and after as in the move.

    A wheel that falls into a hole moves its arm faster than a hand can, but it gathers speed on its way; a
    contact that opens does not.
    """
    swift = np.zeros_like(fast)
    at = np.flatnonzero(fast)
    at = at[(at >= lag) & (at + 1 + lag < len(travel))]
    move = travel[at + 1] - travel[at]
    before, after = (travel[at] - travel[at - lag]) / lag, (travel[at + 1 + lag] - travel[at + 1]) / lag
    least = MOST_GATHERED * np.abs(move)
    swift[at] = (np.abs(move - before) < least) & (np.abs(after - move) < least)
    return swift


def _kinks(
    travel: NDArray[np.float32], tolerance: NDArray[np.float32], cell_s: float, *, swerving: bool
) -> NDArray[np.bool_]:
    """Cells where the speed changes faster than an arm's can.

    A contact that opens into a filter capacitor with no pull resistor leaves no edge, only a kink, from which
    the signal decays smoothly.
    """
    lag = max(1, round(KINK_S / cell_s))
    turn = np.zeros(len(travel), np.float32)
    if len(travel) > 2 * lag:
        turn[lag:-lag] = travel[2 * lag :] - 2.0 * travel[lag:-lag] + travel[: -2 * lag]
        np.nan_to_num(turn, copy=False)
    bend = np.abs(turn)
    least = 1.5 * tolerance + np.float32(1.5 * HARDEST_PERCENT_PER_S2 * (lag * cell_s) ** 2)
    kinks = (bend > least) & (bend >= maximum_filter1d(bend, 2 * lag + 1))
    return _sharp(travel, turn, kinks, lag) if swerving else np.asarray(kinks)


def _sharp(
    travel: NDArray[np.float32], turn: NDArray[np.float32], kinks: NDArray[np.bool_], lag: int
) -> NDArray[np.bool_]:
    """The kinks that are corners: a hard but smooth swerve bends as much beside its middle.

    Over a quarter of the span a corner bends a quarter as much, a swerve far less: it takes its time.
    """
    at = np.flatnonzero(kinks)
    at = at[(at >= lag) & (at + lag < len(turn))]
    beside = 0.5 * (turn[at - lag] + turn[at + lag]) * np.sign(turn[at])
    smooth = beside > LEAST_SWERVE * np.abs(turn[at])
    short = lag // 4
    if short and len(at):
        sudden = np.zeros_like(turn)
        sudden[short:-short] = np.abs(travel[2 * short :] - 2.0 * travel[short:-short] + travel[: -2 * short])
        np.nan_to_num(sudden, copy=False, nan=np.inf)
        smooth |= maximum_filter1d(sudden, 2 * lag + 1)[at] < MOST_SUDDEN * np.abs(turn[at])
    kinks[at[smooth]] = False
    return kinks


def bridged_over(travel: NDArray[np.float32], quiet: NDArray[np.bool_]) -> NDArray[np.float32]:
    """Travel with straight lines over the cells that are not quiet: a piece may hold one or two of them."""
    cells = np.flatnonzero(quiet)
    if not len(cells):
        return travel
    gone = np.flatnonzero(~quiet)
    bridged = travel.copy()
    bridged[gone] = np.interp(gone, cells, travel[cells])
    return bridged
