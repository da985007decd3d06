"""Which stretches of the signal tell where the arm is.

The signal is cut into pieces at every edge that no arm could make: an arm's motion is smooth at the scale
of a millisecond, a contact that opens is not. A piece tells the truth where it continues another one as an
arm would move; a piece that is entered and left by edges, such as the pull level while the contact is
open, does not. The chain of pieces that explains most time with the fewest impossible moves is found by
dynamic programming (Bellman 1957).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import maximum_filter1d

from analysis.signals.thinning import thinned

FASTEST_PERCENT_PER_S = 1200.0
"""Full stroke in a twelfth of a second: faster than a hand or a wheel moves the arm (common practice)."""

USUAL_PERCENT_PER_S = 250.0
"""A brisk stroke by hand, 80 % of travel in a third of a second (common practice, no source)."""

USUAL_PERCENT_PER_S2 = 3000.0
"""Peak acceleration of a minimum-jerk stroke over 80 % of travel in 0.4 s."""

HARDEST_PERCENT_PER_S2 = 12_000.0
"""Peak acceleration of a minimum-jerk stroke over 80 % of travel in 0.2 s, 5.77 d/T^2 (Flash, Hogan 1985)."""

HARDEST_KNOCK_PERCENT_PER_S = 600.0
"""Largest change of speed at once: an arm that arrives at 300 % of travel a second and bounces off."""

KNOCKED_S = 0.010
STOP_PERCENT = 1.5
RAIL_PERCENT = 1.5

HARD_KINK = 0.03
"""Strain of a harder change of speed between two long smooth pieces: a wheel in a pothole may do it."""

BRIDGED_S = 0.003
"""Quiet cells no further apart than this may belong to one piece."""

IMPOSSIBLE_S = 1.0
"""An impossible move costs as much as leaving this much signal unexplained."""

LOOK_BACK = 48
"""Earlier pieces among which the predecessor is looked for: a chatter of two dozen openings."""

BLOCK_PIECES = 512
"""Pieces whose moves are judged at a time: the arrays of a block stay in the processor's cache."""

MOST_PIECES = 20_000
"""The longest pieces are kept where there are more, so that a ruined record costs no more than seconds."""

KINK_S = 0.004
"""Span on either side of a cell over which a sudden change of speed is looked for."""

SWIFT_S = 0.0015
MOST_GATHERED = 0.5
"""Share of its speed that a motion gathers or loses within `KINK_S`."""

LEAST_SWERVE = 0.6
"""Share of its bend that a smooth motion of up to some 20 Hz still has `KINK_S` before and after."""

SINKING_S = 0.05
"""A filter has let the signal sink to the open level within this: five time constants of 10 ms."""

SLOPE_S = 0.012
"""Span near a piece's end over which its speed is read."""

SPARED_S = 0.004
"""What is spared at a piece's end, where the contact may be failing already."""


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
    travel: NDArray[np.float32], quiet: NDArray[np.bool_], tolerance: NDArray[np.float32], cell_s: float
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
    cut = (moved > reach) & ~_swift(travel[cells], moved > reach, max(2, round(SWIFT_S / cell_s)))
    cut |= gap_s > max(BRIDGED_S, 1.5 * cell_s)
    cut |= _kinks(_bridged_over(travel, quiet), tolerance, cell_s)[cells[1:]]
    first = cells[np.concatenate([[True], cut])]
    last = cells[np.concatenate([cut, [True]])]
    if len(first) > MOST_PIECES:
        kept = np.sort(np.argpartition(last - first, -MOST_PIECES)[-MOST_PIECES:])
        first, last = first[kept], last[kept]
    return Pieces(first, last)


def _swift(
    travel: NDArray[np.float32], fast: NDArray[np.bool_], lag: int
) -> NDArray[np.bool_]:
    """Which of the fast moves between neighbours are a motion: as fast before and after as in the move.

    A wheel that falls into a hole moves its arm faster than a hand can, but it gathers speed on its way; a contact
    that opens does not.
    """
    swift = np.zeros_like(fast)
    at = np.flatnonzero(fast)
    at = at[(at >= lag) & (at + 1 + lag < len(travel))]
    move = travel[at + 1] - travel[at]
    before, after = (travel[at] - travel[at - lag]) / lag, (travel[at + 1 + lag] - travel[at + 1]) / lag
    least = MOST_GATHERED * np.abs(move)
    swift[at] = (np.abs(move - before) < least) & (np.abs(after - move) < least)
    return swift


def _kinks(travel: NDArray[np.float32], tolerance: NDArray[np.float32], cell_s: float) -> NDArray[np.bool_]:
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
    return _sharp(turn, kinks, lag)


def _sharp(turn: NDArray[np.float32], kinks: NDArray[np.bool_], lag: int) -> NDArray[np.bool_]:
    """The kinks that are corners: a hard but smooth swerve bends as much beside its middle."""
    at = np.flatnonzero(kinks)
    at = at[(at >= lag) & (at + lag < len(turn))]
    beside = 0.5 * (turn[at - lag] + turn[at + lag]) * np.sign(turn[at])
    swerve = at[beside > LEAST_SWERVE * np.abs(turn[at])]
    kinks[swerve] = False
    return kinks


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
    tolerance_percent : float
        Typical effect of noise and of the recorder's step on a move.
    strain : ndarray, shape (n_pieces, LOOK_BACK)
        How impossible the move to each piece from each of the `LOOK_BACK` before it is, the nearest last.
    """

    pieces: Pieces
    ends: Ends
    worth: NDArray[np.float64]
    tolerance_percent: float
    strain: NDArray[np.float64]

    @property
    def level(self) -> NDArray[np.float64]:
        """Where each piece stands, in % of travel, shape (n_pieces,)."""
        return 0.5 * (self.ends.start + self.ends.stop)

    @property
    def flat(self) -> NDArray[np.bool_]:
        """Pieces that go nowhere, shape (n_pieces,)."""
        return np.asarray(np.abs(self.ends.stop - self.ends.start) < self.tolerance_percent)

    @classmethod
    def of(
        cls,
        travel: NDArray[np.float32],
        quiet: NDArray[np.bool_],
        tolerance: NDArray[np.float32],
        cell_s: float,
    ) -> Cut:
        """Cut a signal; see `cut_at_edges`."""
        pieces = cut_at_edges(travel, quiet, tolerance, cell_s)
        bridged = _bridged_over(travel, quiet)
        ends, typical = Ends.of(bridged, pieces, cell_s), float(np.median(thinned(tolerance)))
        return cls(pieces, ends, _worth(bridged, pieces, cell_s), typical, _strains(ends, typical))


def _bridged_over(travel: NDArray[np.float32], quiet: NDArray[np.bool_]) -> NDArray[np.float32]:
    """Travel with straight lines over the cells that are not quiet: a piece may hold one or two of them."""
    cells = np.flatnonzero(quiet)
    if not len(cells):
        return travel
    gone = np.flatnonzero(~quiet)
    bridged = travel.copy()
    bridged[gone] = np.interp(gone, cells, travel[cells])
    return bridged


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
    worth = cut.worth
    if open_level is not None:
        worth = np.where(parked(cut, open_level), -worth, worth)
    if len(cut.pieces) <= 1:
        return Chain(np.arange(len(cut.pieces)), float(worth.sum()))
    score = worth.copy()
    before = np.full(len(worth), -1)
    cost = IMPOSSIBLE_S * cut.strain
    for index in range(1, len(worth)):
        low = max(0, index - LOOK_BACK)
        gain = score[low:index] - cost[index, low - index :]
        best = gain.argmax()
        if gain[best] > 0.0:
            score[index] = worth[index] + gain[best]
            before[index] = low + best
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
    touching = (ends.begin_s[1:] - ends.end_s[:-1] < max(BRIDGED_S, 1.5 * ends.cell_s)) & (
        np.abs(ends.begin[1:] - ends.end[:-1]) < cut.tolerance_percent + FASTEST_PERCENT_PER_S * BRIDGED_S
    )
    brief = ends.end_s - ends.begin_s < SINKING_S
    beside = np.zeros(len(there), dtype=np.bool_)
    beside[:-1] |= there[1:] & touching & brief[:-1]
    beside[1:] |= there[:-1] & touching & brief[1:]
    return np.asarray(there | beside)


def _worth(travel: NDArray[np.float32], pieces: Pieces, cell_s: float) -> NDArray[np.float64]:
    """Seconds explained by each piece; a piece beyond the ends of the track explains next to nothing."""
    seconds = (pieces.last - pieces.first + 1) * cell_s
    middle = travel[(pieces.first + pieces.last) // 2]
    return np.where((middle < 1.0) | (middle > 99.0), 0.05 * seconds, seconds)


@dataclass(frozen=True, slots=True)
class Ends:
    """Time, place and speed at both ends of each piece."""

    start_s: NDArray[np.float64]
    stop_s: NDArray[np.float64]
    start: NDArray[np.float64]
    stop: NDArray[np.float64]
    start_speed: NDArray[np.float64]
    stop_speed: NDArray[np.float64]
    certain: NDArray[np.bool_]
    begin_s: NDArray[np.float64]
    end_s: NDArray[np.float64]
    begin: NDArray[np.float64]
    end: NDArray[np.float64]
    first_speed: NDArray[np.float64]
    last_speed: NDArray[np.float64]
    cell_s: float

    @classmethod
    def of(cls, travel: NDArray[np.float32], pieces: Pieces, cell_s: float) -> Ends:
        """Read the ends of each piece, a little inside: a contact often fails gently at first."""
        first, last = pieces.first, pieces.last
        length = last - first
        spare = np.minimum(max(1, round(SPARED_S / cell_s)), length // 4)
        width = np.maximum(np.minimum(max(1, round(SLOPE_S / cell_s)), length - 2 * spare), 0)
        near = max(1, round(KINK_S / cell_s))
        place = travel.astype(np.float64)
        head, tail = first + spare, last - spare
        span_s = np.maximum(width, 1) * cell_s
        return cls(
            start_s=head * cell_s,
            stop_s=tail * cell_s,
            start=place[head],
            stop=place[tail],
            start_speed=(place[head + width] - place[head]) / span_s,
            stop_speed=(place[tail] - place[tail - width]) / span_s,
            certain=width * cell_s >= 0.5 * SLOPE_S,
            begin_s=first.astype(np.float64) * cell_s,
            end_s=last.astype(np.float64) * cell_s,
            begin=place[first],
            end=place[last],
            first_speed=(place[np.minimum(first + near, last)] - place[first]) / (near * cell_s),
            last_speed=(place[last] - place[np.maximum(last - near, first)]) / (near * cell_s),
            cell_s=cell_s,
        )

    def strain(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> NDArray[np.float64]:
        """How impossible the moves from pieces `earlier` to pieces `later` are, 0 to 1 each.

        Indices of shapes that broadcast; the strain has the shape that they broadcast to.
        """
        gap_s = self.start_s[later] - self.stop_s[earlier]
        moved = self.start[later] - self.stop[earlier]
        known = self.certain[earlier] & self.certain[later]
        speed = np.where(known, 0.5 * (self.stop_speed[earlier] + self.start_speed[later]), 0.0)
        bend = 0.25 * USUAL_PERCENT_PER_S2 * gap_s**2
        allowed = tolerance_percent + np.minimum(bend, np.where(known, 40.0, 60.0))
        allowed += np.where(known, 60.0, USUAL_PERCENT_PER_S) * np.minimum(gap_s, 0.015)
        # Within what is allowed a move costs nothing: a short true piece is not left out for its noise.
        beyond = np.maximum(np.abs(moved - speed * gap_s) / allowed - 1.0, 0.0)
        strain = np.minimum(1.0, (0.5 * beyond) ** 2)
        touching, soft = self._touching(earlier, later, tolerance_percent)
        strain = np.where(touching & known, np.minimum(strain, HARD_KINK), strain)
        return np.where(touching & soft, 0.0, strain)

    def _touching(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
        """Pieces that go on without a gap or a jump, and those that do so as an arm can.

        An arm that knocks on its stop changes speed at once, by no more than `HARDEST_KNOCK_PERCENT_PER_S`.
        """
        gap_s = self.begin_s[later] - self.end_s[earlier]
        after, before = self.first_speed[later], self.last_speed[earlier]
        moved = np.abs(self.begin[later] - self.end[earlier] - 0.5 * (after + before) * gap_s)
        close = moved < tolerance_percent + FASTEST_PERCENT_PER_S * gap_s
        swift = np.where(after * before > 0.0, MOST_GATHERED * np.minimum(np.abs(after), np.abs(before)), 0.0)
        knock = np.maximum(HARDEST_KNOCK_PERCENT_PER_S + tolerance_percent / KINK_S, swift)
        soft = (np.abs(after - before) < knock) | self._at_stop(self.begin[later])
        return np.asarray((gap_s < max(0.0015, 1.5 * self.cell_s)) & close), np.asarray(soft)

    def _at_stop(self, place: NDArray[np.float64]) -> NDArray[np.bool_]:
        """Places as far to one side as any long piece goes, short of the rails: there an arm is stopped at once."""
        long = self.end_s - self.begin_s > KNOCKED_S
        ends = np.concatenate([self.begin[long], self.end[long]])
        inside = ends[(ends > RAIL_PERCENT) & (ends < 100.0 - RAIL_PERCENT)]
        if not len(inside):
            return np.zeros(place.shape, dtype=np.bool_)
        return np.asarray((np.abs(place - inside.min()) < STOP_PERCENT) | (np.abs(place - inside.max()) < STOP_PERCENT))
