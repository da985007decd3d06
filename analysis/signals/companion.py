"""Two tracks on one arm: where one is lost, the other still tells where the arm is.

The tracks of a pedal go together by a fixed ratio and offset, or opposite ways. How they do is read from the
capture itself, wherever both tell the truth, so that neither a wrong profile nor a loaded track misleads.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.stats import theilslopes

from analysis.signals.motion import Motion, guided_by
from analysis.signals.outline import Outline
from analysis.signals.thinning import thinned

LEAST_SPAN_PERCENT = 5.0
"""Travel that both tracks must have gone together before one may speak for the other."""

LEAST_BINS = 8
"""Places, `LEAST_SPAN_PERCENT` at least from first to last, from which the relation is read."""

RELATED_PERCENT = 1.5
"""Tracks that stand further apart than this at most places do not follow one another: 1 % is the
independent linearity of one conductive plastic track (Bourns 6657 data sheet), so sqrt(2) of two."""

LEAST_RELATED = 0.6
"""Share of the places at which they must keep within that."""

STEEPEST = 6.0
"""A track that moves six times less than the other would speak for it with six times its noise."""

APART_TIMES = 4.0
"""Beyond noise, two tracks that stand this many times further apart than they usually do cannot both be
right: one of normal deviations in some 16,000."""

LEAST_APART_PERCENT = 0.5
"""...and by this much at least: what a cubic leaves of a linearity of 1 %."""

BEND_ROUNDS = 6

SIGMA_OF_MEDIAN = 1.4826
"""Standard deviation of a normal distribution over its median absolute deviation (R, help page of `mad`)."""

SETTLED_S = 0.016
"""Span whose mean is the local difference of the two tracks."""


@dataclass(frozen=True, slots=True)
class Relation:
    """How one track goes with the other: a straight line and a gentle bend, read off at places.

    Parameters
    ----------
    factor : float
        Of the straight line, ``first = factor * second + offset_percent``; negative for tracks that go
        opposite ways.
    offset_percent : float
        In % of the feed.
    second_percent, bend_percent : ndarray, shape (n_places,)
        Travel of the second track, ascending, and how far the first stands from the line there, in %: the
        tracks are linear within limits, and loaded each in its own way.
    apart_percent : float
        How far the first usually stands from line and bend, one sigma, in %.
    """

    factor: float
    offset_percent: float
    second_percent: NDArray[np.float64]
    bend_percent: NDArray[np.float64]
    apart_percent: float

    def first_from(self, second_percent: NDArray[np.float32]) -> NDArray[np.float32]:
        """What the first track should read, same shape, in %."""
        bend = np.interp(second_percent, self.second_percent, self.bend_percent)
        return np.asarray(second_percent * self.factor + self.offset_percent + bend, dtype=np.float32)

    def inverted(self) -> Relation:
        """The same relation with the tracks exchanged."""
        first = self.second_percent * self.factor + self.offset_percent + self.bend_percent
        order = np.argsort(first)
        return Relation(
            1.0 / self.factor,
            -self.offset_percent / self.factor,
            first[order],
            -self.bend_percent[order] / self.factor,
            self.apart_percent / abs(self.factor),
        )


@dataclass(frozen=True, slots=True)
class Traced:
    """One track of one record: its outline, and its motion as it tells it alone."""

    drawn: Outline
    motion: Motion


Pair = tuple[Traced, Traced]


def relation_of(pairs: Sequence[Pair]) -> Relation | None:
    """Read from the records how the first track goes with the second.

    Parameters
    ----------
    pairs : sequence of (Traced, Traced)
        First and second track of each record in which the arm moved; may be empty.

    Returns
    -------
    Relation or None
        None where they went too little together, or do not follow one another.

    Notes
    -----
    The median slope of Theil (1950) and Sen (1968) over places, not samples: an arm that dwells in a bad
    spot counts no more there than elsewhere.
    """
    first, second = _both_truthful(pairs)
    places = np.round(2.0 * second).astype(np.int64)  # half a per cent of travel each
    kept = np.unique(places)
    if len(kept) < LEAST_BINS or 0.5 * float(kept[-1] - kept[0]) < LEAST_SPAN_PERCENT:
        return None
    order = np.argsort(places, kind="stable")
    cuts = np.searchsorted(places[order], kept[1:])

    def at_places(values: NDArray[np.float32]) -> NDArray[np.float64]:
        return np.array([np.median(part) for part in np.split(values[order], cuts)])

    along, across = at_places(first), at_places(second)
    slope = float(theilslopes(along, across).slope)
    if not 1.0 / STEEPEST <= abs(slope) <= STEEPEST:
        return None
    offset = float(np.median(along - slope * across))
    away = along - (slope * across + offset)
    near = RELATED_PERCENT * max(1.0, abs(slope))
    if float(np.mean(np.abs(away) <= near)) < LEAST_RELATED:
        return None
    bend = _gentle(across, away, near)
    straight = Relation(slope, offset, across, bend, 0.0)
    apart = at_places(np.abs(first - straight.first_from(second)))
    return replace(straight, apart_percent=SIGMA_OF_MEDIAN * float(np.median(apart)))


def _gentle(place: NDArray[np.float64], away: NDArray[np.float64], near: float) -> NDArray[np.float64]:
    """A cubic through what is left beside a straight line, which a bad spot does not bend; shape (n,).

    The error of a loaded potentiometer is a cubic to first order, ``k x^2 (1 - x)`` (Todd, The Potentiometer
    Handbook, 1975, from memory). What strays far weighs little (Cauchy weights).
    """
    scaled = np.interp(place, [place[0], place[-1]], [-1.0, 1.0])
    terms = np.vander(scaled, 4)
    bend = np.zeros(len(place))
    for _ in range(BEND_ROUNDS):
        weight = 1.0 / (1.0 + ((away - bend) / (0.5 * near)) ** 2)
        bend = terms @ np.linalg.lstsq(terms * weight[:, None], away * weight, rcond=None)[0]
    return np.asarray(np.clip(bend, -near, near))


def _both_truthful(pairs: Sequence[Pair]) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
    """Readings of both tracks wherever both tell the truth, shape (n,) each."""
    first, second = [np.empty(0, np.float32)], [np.empty(0, np.float32)]
    for one, other in pairs:
        both = thinned(one.motion.truthful) & thinned(other.motion.truthful)
        first.append(thinned(one.drawn.cells.mean)[both])
        second.append(thinned(other.drawn.cells.mean)[both])
    return np.concatenate(first), np.concatenate(second)


def steadier_is_second(pairs: Sequence[Pair]) -> bool:
    """Whether the second track tells the truth for more of the time than the first."""
    first = sum(int(one.motion.truthful.sum()) for one, _ in pairs)
    return sum(int(other.motion.truthful.sum()) for _, other in pairs) > first


def helped(own: Traced, other: Traced, relation: Relation, *, other_is_steadier: bool) -> Motion:
    """Follow a track again with what the other track says where this one is lost.

    Parameters
    ----------
    own, other : Traced
        Of one record, cell for cell.
    relation : Relation
        Gives `own` from `other`.
    other_is_steadier : bool
        Whether the other one is believed where both claim to tell the truth and cannot.

    Returns
    -------
    Motion
        As it was where the other track has nothing to add.
    """
    said = relation.first_from(other.drawn.cells.mean)
    truthful, theirs = own.motion.truthful, other.motion.truthful
    # The usual noise of the record: where a track is bad, its local noise would excuse anything.
    noise = np.median(thinned(own.drawn.tolerance)) + abs(relation.factor) * np.median(
        thinned(other.drawn.tolerance)
    )
    allowed = np.float32(noise + max(APART_TIMES * relation.apart_percent, LEAST_APART_PERCENT))
    against = truthful & theirs & (np.abs(own.drawn.cells.mean - said) > allowed)
    if other_is_steadier:
        truthful = truthful & ~against
    theirs = theirs & ~against if not other_is_steadier else theirs
    told = theirs & ~truthful
    if not told.any() or not (truthful & theirs).any():
        return own.motion
    apart = _local_difference(own.drawn.cells.mean - said, truthful & theirs, own.drawn.cell_s)
    return guided_by(own.drawn, truthful, np.where(told, said + apart, np.float32(np.nan)))


def _local_difference(
    difference: NDArray[np.float32], both: NDArray[np.bool_], cell_s: float
) -> NDArray[np.float32]:
    """How far the tracks stand apart about each cell, in %: means of `SETTLED_S`, straight in between.

    Tracks are not quite linear; without this the path would jump where one takes over from the other.
    """
    per_group = max(1, round(SETTLED_S / cell_s))
    cells = np.flatnonzero(both)
    group = cells // per_group
    count = np.bincount(group)
    kept = count > 0
    when = np.bincount(group, cells)[kept] / count[kept]
    mean = np.bincount(group, difference[cells])[kept] / count[kept]
    return np.asarray(np.interp(np.arange(len(difference)), when, mean), dtype=np.float32)
