"""The arm's most plausible true path through a record, and what departs from it.

The path is the maximum a posteriori estimate of a smooth motion, one that changes its acceleration as
little as the evidence allows (the minimum-jerk principle of hand motion, Flash and Hogan 1985), given the
pieces of signal that can be true. Where the contact is open the signal does not tell where the arm is; the
path then bridges the gap, and says how unsure it is.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import PchipInterpolator
from scipy.ndimage import maximum_filter1d

from analysis.signals.cutting import HARDEST_PERCENT_PER_S2, KINK_S
from analysis.signals.ends import SPARED_S
from analysis.signals.facts import ArmPath
from analysis.signals.leaps import Leaps
from analysis.signals.noise import UsualLevel
from analysis.signals.open_level import place_at_rest
from analysis.signals.outline import Outline
from analysis.signals.pieces import truthful_chain
from analysis.signals.smoothing import smoothest_course
from analysis.signals.thinning import thinned

NODE_S = 0.002
"""Spacing of the path's nodes."""

FOLLOWED_HZ = 100.0
"""Truthful motion slower than this is followed: a hand stays below some 15 Hz, a wheel hops at some 10 to
15 Hz, an arm that knocks on its stop rings at some tens (common practice, no source)."""

FINE_STEP_PERCENT = 0.4
"""A recorder with larger steps draws stairs; a path that followed them would follow break-up as well."""

COARSE_HZ = 40.0
"""Motion below this is followed however coarse the steps: a wheel hops at 10 to 15 Hz."""

BRIDGE_S = 0.016
"""Span whose mean is a pier of the bridge over a gap."""

BRIDGE_WEIGHT = 0.02
"""Weight of the bridge beside that of a node whose cells are all truthful."""

ANCHOR_S = 0.010
"""A stretch of truthful signal this long says by itself where the arm was."""

LEAST_ANCHORED = 0.5
"""Share of the truthful signal that must lie in such stretches, or all of it is taken as it is."""

MOST_FOLLOWED_PERCENT_PER_S2 = 60_000.0
"""A wheel that hops 10 % of travel to either side at 12 Hz; what is harder yet is a knock."""

CORNER_SHARE = 0.3
"""Share of a bend that the path rounds off, in the worst case."""

MOST_AT_REST_PERCENT = 3.0  # an arm that is left alone, or held, moves less
GENTLE_PERCENT_PER_S2 = 1500.0
"""How hard an arm may be thought to have swerved in a gap, and `MOST_BENT_PERCENT` how far."""

MOST_BENT_PERCENT = 1.5


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
    guided : ndarray of bool, shape (n_cells,), or None
        Cells in which another track of the sensor told where the arm was; None where none did.
    leaps : Leaps or None
        Samples that the recorder lost without a word; None where it seems to have lost none.
    """

    path: ArmPath
    travel_percent: NDArray[np.float32]
    above: NDArray[np.float32]
    below: NDArray[np.float32]
    truthful: NDArray[np.bool_]
    noise: UsualLevel
    guided: NDArray[np.bool_] | None = None
    leaps: Leaps | None = None

    @property
    def known(self) -> NDArray[np.bool_]:
        """Cells in which something told where the arm was, shape (n_cells,)."""
        return self.truthful if self.guided is None else self.truthful | self.guided

    @property
    def departure(self) -> NDArray[np.float32]:
        """The larger of `above` and `below`, shape (n_cells,)."""
        return np.fmax(self.above, self.below)


def follow(drawn: Outline, *, open_level: float | None = None, resting: bool = False) -> Motion:
    """Estimate the path of the arm through one record.

    Parameters
    ----------
    drawn : Outline
        Of that record.
    open_level : float or None
        Travel in % at which the signal stands while the contact is open, where that is known.
    resting : bool
        Whether the arm was left alone: a signal that is open most of the time then still has one place.

    Returns
    -------
    Motion
    """
    chosen = truthful_chain(drawn.cut, open_level=open_level).chosen
    spared = max(1, round(SPARED_S / drawn.cell_s))
    truthful = drawn.cut.pieces.cells(chosen, spared, len(drawn.quiet)) & drawn.quiet
    per_node = max(1, round(NODE_S / drawn.cell_s))
    truthful = _agreeing(drawn, truthful, per_node)
    rest = None
    if resting and not _tells(drawn, truthful):
        rest = place_at_rest(drawn.cells, drawn.tolerance, drawn.step_percent, open_level)
    if rest is not None:
        truthful = drawn.quiet & (np.abs(drawn.cells.mean - np.float32(rest)) < drawn.tolerance)
        nodes = rest - _at_nodes(drawn, -(-len(truthful) // per_node), per_node)
        return _departures(drawn, nodes, np.zeros(len(nodes)), truthful, per_node)
    nodes, lone_s = _smooth(drawn, truthful, per_node)
    return _departures(drawn, nodes, lone_s, truthful, per_node)


def _tells(drawn: Outline, truthful: NDArray[np.bool_]) -> bool:
    """Whether the truthful part of a record at rest is most of it, and of one mind."""
    if truthful.sum() < LEAST_ANCHORED * np.isfinite(drawn.cells.mean).sum():
        return False
    return float(np.ptp(np.quantile(drawn.cells.mean[truthful], [0.05, 0.95]))) < MOST_AT_REST_PERCENT


def guided_by(drawn: Outline, truthful: NDArray[np.bool_], elsewhere_percent: NDArray[np.float32]) -> Motion:
    """Estimate the path again where another track of the sensor tells what this one does not.

    Parameters
    ----------
    drawn : Outline
        Of that record.
    truthful : ndarray of bool, shape (n_cells,)
        Cells of this track that are believed.
    elsewhere_percent : ndarray, shape (n_cells,)
        This track's travel in % as the other one tells it; NaN where it has nothing to add.

    Returns
    -------
    Motion
    """
    told = np.isfinite(elsewhere_percent)
    mean = np.where(told, elsewhere_percent - drawn.course, drawn.smooth)
    per_node = max(1, round(NODE_S / drawn.cell_s))
    nodes, lone_s = _smooth(drawn, truthful | told, per_node, mean=mean)
    return replace(_departures(drawn, nodes, lone_s, truthful, per_node), guided=told)


def _agreeing(drawn: Outline, truthful: NDArray[np.bool_], per_node: int) -> NDArray[np.bool_]:
    """Drop the fragments that do not lie where the longer stretches say the arm was.

    In a bad spot the contact closes badly for some milliseconds at a time; what it shows then may be
    anything, and each fragment alone looks like a possible motion.
    """
    anchors = _long_runs(truthful, max(3, round(ANCHOR_S / drawn.cell_s)))
    if anchors.sum() == truthful.sum() or anchors.sum() < LEAST_ANCHORED * truthful.sum():
        return truthful
    nodes, lone_s = _smooth(drawn, anchors, per_node, rounds=0)
    loose = np.flatnonzero(truthful & ~anchors)
    where = (loose + 0.5) / per_node - 0.5
    every = np.arange(len(nodes))
    away = np.abs(drawn.smooth[loose] - np.interp(where, every, nodes))
    bent = np.minimum(0.5 * GENTLE_PERCENT_PER_S2 * np.interp(where, every, lone_s) ** 2, MOST_BENT_PERCENT)
    anchors[loose] = np.nan_to_num(away, nan=np.inf) <= drawn.tolerance[loose] + bent
    return anchors


def _long_runs(marks: NDArray[np.bool_], least: int) -> NDArray[np.bool_]:
    """Marks in runs of at least `least` cells; a gap of two cells does not end a run."""
    padded = np.concatenate([[False], marks, [False]])
    edges = np.flatnonzero(padded[1:] != padded[:-1]).reshape(-1, 2)
    if not len(edges):
        return marks
    apart = np.flatnonzero(edges[1:, 0] - edges[:-1, 1] > 2) + 1
    firsts = edges[np.concatenate([[0], apart]), 0]
    lasts = edges[np.concatenate([apart - 1, [len(edges) - 1]]), 1]
    kept = lasts - firsts >= least
    steps = np.zeros(len(marks) + 1, dtype=np.int64)
    np.add.at(steps, firsts[kept], 1)
    np.add.at(steps, lasts[kept], -1)
    return np.asarray(marks & (np.cumsum(steps[:-1]) > 0))


def _smooth(
    drawn: Outline,
    truthful: NDArray[np.bool_],
    per_node: int,
    *,
    mean: NDArray[np.float32] | None = None,
    rounds: int = 2,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Nodes of the path in %, and how long ago or ahead the nearest truthful cell of each is, in s.

    Both `mean` and the nodes are without the recorder's leaps. In `rounds` more solutions what strays from
    the path weighs less.
    """
    mean = drawn.smooth if mean is None else mean
    hz = _followed_hz(drawn.step_percent)
    seen = truthful if truthful.any() else np.isfinite(mean)
    count = _per_node(seen.astype(np.float32), per_node)
    total = _per_node(np.where(seen, mean, np.float32(0.0)), per_node)
    node_s, gaps = per_node * drawn.cell_s, np.flatnonzero(count == 0.0)
    level = _bridged(count, total, gaps, node_s)
    share = np.maximum(count / per_node, BRIDGE_WEIGHT)
    nodes = _minimum_jerk(level, share, node_s, hz)
    for _ in range(rounds):
        doubt = nodes - level
        doubt /= float(np.median(thinned(drawn.tolerance)))
        doubt *= doubt
        doubt += 1.0
        nodes = _minimum_jerk(level, np.divide(share, doubt, out=doubt), node_s, hz)
    return nodes, _lone_nodes(count, gaps) * node_s


def _lone_nodes(count: NDArray[np.float64], gaps: NDArray[np.int64]) -> NDArray[np.float64]:
    """Geometric mean of the distances to the nearest seen node before and after; 0 where one is seen."""
    seen = np.concatenate([[-1], np.flatnonzero(count), [len(count)]])
    after = np.searchsorted(seen, gaps)
    lone = np.zeros(len(count))
    lone[gaps] = np.sqrt((gaps - seen[after - 1]).astype(np.float64) * (seen[after] - gaps))
    return lone


def _bridged(
    count: NDArray[np.float64], total: NDArray[np.float64], gaps: NDArray[np.int64], node_s: float
) -> NDArray[np.float64]:
    """Mean of the truthful cells of each node; where there is none, a bridge that never overshoots.

    The bridge is the monotone cubic of Fritsch and Carlson (1980) through means of `BRIDGE_S`, long enough
    that noise does not give it a slope. A hand that is lost in mid-stroke comes out on the other side; it
    does not swing.
    """
    level = total / np.maximum(count, 1.0)
    if not len(gaps):
        return level
    pier = max(1, round(BRIDGE_S / node_s))
    weight = _pier_sums(count, pier)
    kept = weight > 0
    place = _pier_sums(total, pier)[kept] / weight[kept]
    when = _pier_sums(np.arange(len(count)) * count, pier)[kept] / weight[kept]
    if len(place) < 2:
        return np.where(count > 0, level, place[0])
    # Two piers on either side of a gap settle its bridge; the others are left alone.
    beside = np.searchsorted(when, gaps)[:, None] + np.arange(-2, 2)
    near = np.zeros(len(when), dtype=np.bool_)
    near[np.clip(beside, 0, len(when) - 1)] = True
    bridge = PchipInterpolator(when[near], place[near], extrapolate=False)(gaps)
    bridge = np.where(gaps < when[0], place[0], np.where(gaps > when[-1], place[-1], bridge))
    level[gaps] = bridge
    return level


def _pier_sums(values: NDArray[np.float64], pier: int) -> NDArray[np.float64]:
    """Sums of every `pier` nodes, the last of what is left: few at a time are sooner added side by side."""
    sums = values[::pier].copy()
    for shift in range(1, pier):
        beside = values[shift::pier]
        sums[: len(beside)] += beside
    return sums


def _per_node(values: NDArray[np.float32], per_node: int) -> NDArray[np.float64]:
    if per_node == 1:
        return values.astype(np.float64)
    return np.add.reduceat(values, np.arange(0, len(values), per_node), dtype=np.float64)


def _followed_hz(step_percent: float) -> float:
    """Motion up to this frequency is followed: less of it where the recorder's steps are coarse."""
    return max(FOLLOWED_HZ * min(1.0, FINE_STEP_PERCENT / max(step_percent, 1e-9)), COARSE_HZ)


def _minimum_jerk(
    level: NDArray[np.float64], weight: NDArray[np.float64], node_s: float, followed_hz: float
) -> NDArray[np.float64]:
    """The smoothest course, with the half-way frequency of the equivalent low-pass at `followed_hz`."""
    corner = min(followed_hz, 0.2 / node_s)
    return smoothest_course(level, weight, penalty=(2.0 * np.sin(np.pi * corner * node_s)) ** -6)


def _at_nodes(drawn: Outline, count: int, per_node: int) -> NDArray[np.float64]:
    """What the recorder's leaps add to the travel at each of `count` nodes, in %."""
    cells = len(drawn.cells.mean)
    middles = np.minimum(np.arange(count) * per_node + per_node // 2, cells - 1)
    return np.broadcast_to(drawn.course, cells)[middles].astype(np.float64)


def _departures(
    drawn: Outline,
    nodes: NDArray[np.float64],
    lone_s: NDArray[np.float64],
    truthful: NDArray[np.bool_],
    per_node: int,
) -> Motion:
    node_s, count = per_node * drawn.cell_s, len(drawn.cells.mean)
    times = drawn.start_s + node_s * (np.arange(len(nodes), dtype=np.float64) + 0.5)
    middles = drawn.start_s + drawn.cell_s * (np.arange(count) + 0.5)
    position = (nodes if per_node == 1 else np.interp(middles, times, nodes)).astype(np.float32)
    inside = np.abs(np.gradient(position)) * np.float32(0.5) if count > 1 else np.zeros(1, np.float32)
    rounded = _rounded_off(nodes, node_s)
    inside += (rounded if per_node == 1 else np.interp(middles, times, rounded)).astype(np.float32)
    if drawn.leaps is not None:
        position, nodes = position + drawn.course, nodes + _at_nodes(drawn, len(nodes), per_node)
    # Standard uncertainty: the noise of one node, and in a gap what a hard change of speed could have done.
    unsure = np.minimum(0.02 * HARDEST_PERCENT_PER_S2 * lone_s**2, 20.0)
    return Motion(
        path=ArmPath(drawn.record, times, nodes, np.hypot(drawn.noise.at(nodes), unsure)),
        travel_percent=position,
        above=np.maximum(drawn.cells.maximum - position - inside, np.float32(0.0)),
        below=np.maximum(position - drawn.cells.minimum - inside, np.float32(0.0)),
        truthful=truthful,
        noise=drawn.noise,
        leaps=drawn.leaps,
    )


def _rounded_off(nodes: NDArray[np.float64], node_s: float) -> NDArray[np.float64]:
    """How far the path may cut the corner of a knock, in % at each node; 0 where a hand could swerve so."""
    lag = max(1, round(KINK_S / node_s))
    off = np.zeros(len(nodes))
    if len(nodes) <= 2 * lag:
        return off
    bend = np.abs(nodes[2 * lag :] - 2.0 * nodes[lag:-lag] + nodes[: -2 * lag])
    off[lag:-lag] = CORNER_SHARE * np.maximum(bend - MOST_FOLLOWED_PERCENT_PER_S2 * (lag * node_s) ** 2, 0.0)
    return maximum_filter1d(off, 4 * lag + 1)
