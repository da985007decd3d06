"""What may show that a stretch of travel is bad: five signs, counted on visits, for all stretches at once."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any, TypeVar

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

from analysis.diagnosis.place_odds import place_against_share, place_against_time, rate_outside, share_outside
from analysis.diagnosis.place_ranks import HIGH, cells_expected, place_against_rank, rates_outside
from analysis.signals.facts import Direction, TrackSurvey
from analysis.signals.roughness import BIN_PERCENT

ONSETS = ("onsets", "lasting", "deep")
"""Counts of a survey that are signs of a bad spot..."""

UNREST_SIGN, RANK_SIGN = len(ONSETS), len(ONSETS) + 1
"""...the time spent restless is the fourth, and how far crossings depart, by rank, the fifth."""

WIDTHS_PERCENT = (0.75, 1.25, 2.0, 3.0, 4.5, 6.5, 9.0, 12.0)
"""Widths of the stretches that are tried: the bands looked for are 0.8 to 12 % of travel wide."""

UNREST = 0.3
"""Share of the time in a stretch that must be restless for the crossing to count as restless there."""

MORE_THAN_USUAL = 1.5
"""Unrest that is usual along the travel must be exceeded by this factor."""

TIMES_RESTLESS = 2.0
"""A bad spot is restless for this many times the share of the time that the rest is."""

NEIGHBOURHOOD_PERCENT = 2.0
"""An arm that turns round within this of a stretch has not left it."""

FOOTHOLD = 0.5
"""A crossing counts where it visited at least this share of a stretch."""

Kind = TypeVar("Kind", bound=np.generic)


@dataclass(frozen=True, slots=True)
class Sign:
    """One sign of a break-up, counted in each bin of each crossing, and sums over the bins before each.

    Parameters
    ----------
    counts : ndarray, shape (n_crossings, n_bins)
    before : ndarray, shape (n_crossings, n_bins + 1)
    total : ndarray, shape (n_bins,)
        Counts of all crossings.
    bins_before : ndarray, shape (n_bins + 1,)
        Bins with a count on any crossing.
    """

    counts: NDArray[np.floating[Any]]
    before: NDArray[np.float32]
    total: NDArray[np.float64]
    bins_before: NDArray[np.float64]

    @classmethod
    def of(cls, counts: NDArray[np.floating[Any]]) -> Sign:
        """Of the counts of a survey."""
        some = np.asarray(counts.any(axis=0))
        return cls(counts, _counted(counts), counts.sum(axis=0, dtype=np.float64), _cumulative(some))

    def without(self, span: slice) -> Sign:
        """With nothing in these bins."""
        return Sign.of(_emptied(self.counts, span, 0.0))


@dataclass(frozen=True, slots=True)
class Left:
    """What no place explains yet, and the five signs that are weighed.

    A disturbance that begins is one sign. Where the whole travel is full of lone spikes, only those that
    last, or those that go deep, say something. Where the recorder hardly shows the break-up, no single cell
    stands out, but many restless ones together do, or that the furthest of each crossing lies there.
    """

    survey: TrackSurvey
    onsets: tuple[Sign, ...]
    restless_s: NDArray[np.float64]
    shaken: NDArray[np.float64]
    noisy: NDArray[np.float64]
    visited: NDArray[np.float32]
    dwell: NDArray[np.float64]
    unexplained_s: NDArray[np.float64]
    unrest: float
    turns: NDArray[np.float64]
    level: NDArray[np.int8]
    levels_s: NDArray[np.float64]

    @classmethod
    def of(cls, survey: TrackSurvey) -> Left:
        """Everything that a survey shows."""
        seen = ~np.isnan(survey.breakup_percent)
        restless_s = or_none(survey.restless_s, seen)
        return cls(
            survey=survey,
            onsets=tuple(Sign.of(or_none(getattr(survey, name), seen)) for name in ONSETS),
            restless_s=restless_s,
            shaken=_cumulative(restless_s),
            noisy=np.where(seen, np.nan_to_num(survey.breakup_percent) > 0, np.nan),
            visited=_counted(seen),
            dwell=_cumulative(survey.dwell_s),
            unexplained_s=survey.dwell_s.sum(axis=0, dtype=np.float64),
            unrest=telling_unrest(survey),
            turns=turns_of(survey),
            level=survey.worst_level,
            levels_s=survey.levels_s,
        )

    def anything(self) -> bool:
        """Whether anything is left to explain."""
        return bool(self.onsets[0].counts.any() or self.restless_s.any())

    def without(self, span: slice) -> Left:
        """With these bins explained."""
        restless_s = _emptied(self.restless_s, span, 0.0)
        return replace(
            self,
            onsets=tuple(sign.without(span) for sign in self.onsets),
            restless_s=restless_s,
            shaken=_cumulative(restless_s),
            noisy=_emptied(self.noisy, span, np.nan),
            unexplained_s=_emptied(self.unexplained_s[None], span, 0.0)[0],
            level=_emptied(self.level, span, -1),
            levels_s=_emptied(self.levels_s.T, span, 0.0).T,
        )

    def rates(self, width: int) -> NDArray[np.float64]:
        """Cells a second outside each stretch that reach each level, shape (n_stretches, n_levels)."""
        return rates_outside(self.levels_s, self.unexplained_s, self.survey.cell_s, width)

    def high(self) -> NDArray[np.float64]:
        """Where each crossing departed further than it would elsewhere: 1, 0, or NaN for no visit."""
        dwell_s = np.maximum(np.diff(self.dwell, axis=1), self.survey.cell_s)
        expected = cells_expected(self.level, self.rates(1), dwell_s)
        return np.where(np.isnan(self.noisy), np.nan, expected < HIGH)

    def high_within(self, first: int, last: int) -> NDArray[np.bool_]:
        """Crossings that departed further somewhere in bins ``[first, last)`` than they would elsewhere."""
        level = self.level[:, first:last].max(axis=1, keepdims=True)
        dwell_s = np.maximum(self.dwell[:, [last]] - self.dwell[:, [first]], self.survey.cell_s)
        rates = self.rates(last - first)[[first]]
        return np.asarray(cells_expected(level, rates, dwell_s)[:, 0] < HIGH)

    def odds(self, width: int) -> list[NDArray[np.float64]]:
        """Log odds by each sign of every stretch of `width` bins, what trying so many buys taken off."""
        bins = self.noisy.shape[1]
        trials = np.log((RANK_SIGN + 1) * len(WIDTHS_PERCENT) * max(bins / width, 1.0))
        stretches = Stretches.of(self, width)
        signs = [stretches.by_onsets(item) for item in self.onsets]
        return [sign - trials for sign in (*signs, stretches.by_unrest(self.shaken), stretches.by_rank(self))]


@dataclass(frozen=True, slots=True)
class Stretches:
    """All stretches of `width` bins, as arrays of shape (n_crossings, n_stretches).

    Parameters
    ----------
    visited : ndarray of bool
        Crossings that visited enough of a stretch to count there.
    visitors : ndarray of int, shape (n_stretches,)
        Visits with such a crossing.
    dwell_s : ndarray
        Seconds that each crossing spent in each.
    unexplained_s : ndarray, shape (n_bins,)
        Seconds that all crossings spent in each bin that no place explains.
    unrest : float
        Share of the time that must be restless; see `telling_unrest`.
    """

    width: int
    visits: Visits
    visited: NDArray[np.bool_]
    visitors: NDArray[np.int64]
    dwell_s: NDArray[np.float64]
    unexplained_s: NDArray[np.float64]
    unrest: float

    @classmethod
    def of(cls, left: Left, width: int) -> Stretches:
        """Stretches that begin at every bin."""
        starts_percent = left.survey.edges_percent[: left.noisy.shape[1] - width + 1]
        visits = Visits.of(left.turns, starts_percent, width)
        visited = _windows(left.visited, width) >= FOOTHOLD * width
        # A stretch that is explained for the most part says nothing more, neither for a place nor against it.
        visited &= _windows(_cumulative(left.unexplained_s > 0.0), width) >= FOOTHOLD * width
        dwell_s = _windows(left.dwell, width)
        return cls(width, visits, visited, visits.counted(visited), dwell_s, left.unexplained_s, left.unrest)

    def by_onsets(self, sign: Sign) -> NDArray[np.float64]:
        """Log odds of every stretch by the disturbances that begin; minus infinity where none does."""
        odds = np.full(self.visited.shape[1], -np.inf)
        some = np.flatnonzero(_windows(sign.bins_before, self.width))
        if not len(some):
            return odds
        inside = sign.before[:, some + self.width] - sign.before[:, some]
        visits = self.visits.at(some)
        crossed = visits.joined(self.visited[:, some] | (inside > 0)) > 0
        events = visits.joined(inside)
        outside = rate_outside(sign.total, self.unexplained_s, self.width)[some]
        by_time = place_against_time(crossed, events, self._fair_dwell_s(visits, some), outside)
        # The better of the two explanations that need no place: at any time, or on any stretch alike.
        crossings, hits = self.visitors.copy(), np.zeros(len(odds), dtype=np.int64)
        crossings[some], hits[some] = crossed.sum(axis=0), ((events > 0) & crossed).sum(axis=0)
        odds[some] = np.minimum(by_time, place_against_share(crossings, hits, self.width)[some])
        return odds

    def _fair_dwell_s(self, visits: Visits, some: NDArray[np.int64]) -> NDArray[np.float64]:
        """Seconds that each visit spent in some stretches; of one too short to count, those of a usual one.

        A visit that hardly touches a stretch counts only where something began: that it was short is no sign
        that this was no accident.
        """
        dwell_s, full = visits.joined(self.dwell_s[:, some]), visits.joined(self.visited[:, some]) > 0
        usual = (dwell_s * full).sum(axis=0) / np.maximum(full.sum(axis=0), 1)
        return np.where(full, dwell_s, np.maximum(dwell_s, usual))

    def by_rank(self, left: Left) -> NDArray[np.float64]:
        """Log odds of every stretch by how far crossings depart there; minus infinity where unranked."""
        if not left.level.size:
            return np.full(self.visited.shape[1], -np.inf)
        level = sliding_window_view(left.level, self.width, axis=1).max(axis=2)
        dwell_s = np.maximum(self.dwell_s, left.survey.cell_s)
        expected = cells_expected(level, left.rates(self.width), dwell_s)
        return place_against_rank(*self.visits.furthest(self.visited, expected))

    def by_unrest(self, shaken: NDArray[np.float64]) -> NDArray[np.float64]:
        """Log odds of every stretch by the share of the time that was restless."""
        counted = self.visited & (self.dwell_s > 0.003)
        inside_s = _windows(shaken, self.width)
        noisy = counted & (inside_s >= self.unrest * self.dwell_s)
        odds = place_against_share(self.visits.counted(counted), self.visits.counted(noisy), self.width)
        # The longer a visit, the likelier it is restless for its share: what is so everywhere is no place.
        outside = share_outside(np.diff(shaken.sum(axis=0)), self.unexplained_s, self.width)
        inside = inside_s.sum(axis=0) / np.maximum(self.dwell_s.sum(axis=0), 1e-3)
        return np.asarray(np.where(inside > TIMES_RESTLESS * outside, odds, -np.inf))


@dataclass(frozen=True, slots=True)
class Visits:
    """Crossings between which the arm did not leave the neighbourhood of a stretch, joined.

    A hand that rests in the spot trembles to and fro over it; that is one visit, not twenty crossings.

    Parameters
    ----------
    goes_on : ndarray of bool, shape (n_crossings, n_stretches)
        Whether a crossing belongs to the visit of the one before.
    """

    goes_on: NDArray[np.bool_]

    @classmethod
    def of(cls, turns: NDArray[np.float64], starts_percent: NDArray[np.float64], width: int) -> Visits:
        """Visits of all stretches of `width` bins that begin at `starts_percent`."""
        low = starts_percent - NEIGHBOURHOOD_PERCENT
        high = starts_percent + width * BIN_PERCENT + NEIGHBOURHOOD_PERCENT
        goes_on = (turns[:, None] >= low) & (turns[:, None] <= high)
        goes_on[:1] = False
        return cls(goes_on)

    def at(self, stretches: NDArray[np.int64]) -> Visits:
        """Visits of these stretches only."""
        return Visits(self.goes_on[:, stretches])

    def joined(self, values: NDArray[Any]) -> NDArray[np.float64]:
        """Sums over the crossings of each visit, same shape; rows without a visit are 0."""
        total = values.astype(np.float64)
        joining = np.flatnonzero(self.goes_on.any(axis=0))
        if len(joining):
            row = np.cumsum(~self.goes_on[:, joining], axis=0) - 1
            flat = row * len(joining) + np.arange(len(joining))
            sums = np.bincount(flat.ravel(), total[:, joining].ravel(), minlength=flat.size)
            total[:, joining] = sums.reshape(flat.shape)
        return total

    def furthest(
        self, counted: NDArray[np.bool_], expected: NDArray[np.float64]
    ) -> tuple[NDArray[np.bool_], NDArray[np.float64]]:
        """Each visit once: the least expected of its crossings, times as many as there are to choose from."""
        if not self.goes_on.any():
            return counted, expected
        counted, expected = counted.copy(), np.where(counted, expected, np.inf)
        many = counted.astype(np.float64)
        for row in range(len(counted) - 1, 0, -1):
            on = self.goes_on[row]
            expected[row - 1, on] = np.minimum(expected[row - 1, on], expected[row, on])
            many[row - 1, on] += many[row, on]
            counted[row - 1, on] |= counted[row, on]
            counted[row, on] = False
        return counted, expected * np.maximum(many, 1.0)

    def counted(self, marks: NDArray[np.bool_]) -> NDArray[np.int64]:
        """Number of visits of each stretch that are marked on any crossing, shape (n_stretches,)."""
        counts = np.asarray(marks.sum(axis=0), dtype=np.int64)
        joining = np.flatnonzero(self.goes_on.any(axis=0) & (counts > 0))
        if len(joining):
            counts[joining] = (self.at(joining).joined(marks[:, joining]) > 0).sum(axis=0)
        return counts


def _emptied(matrix: NDArray[Kind], span: slice, value: float) -> NDArray[Kind]:
    emptied = matrix.copy()
    emptied[:, span] = value
    return emptied


def telling_unrest(survey: TrackSurvey) -> float:
    """Share of the time in a stretch that must be restless for the crossing to count as restless there.

    A signal that is restless everywhere, now and then, tells nothing until it is more so.
    """
    dwell_s = survey.dwell_s.sum(axis=0, dtype=np.float64)
    restless_s = or_none(survey.restless_s, survey.breakup_percent).sum(axis=0, dtype=np.float64)
    visited = dwell_s > 0.0
    usual = float(np.median(restless_s[visited] / dwell_s[visited])) if visited.any() else 0.0
    return max(UNREST, MORE_THAN_USUAL * usual)


def or_none(counts: NDArray[Kind], like: NDArray[Any]) -> NDArray[Kind]:
    """A survey's counts; noughts where the survey was made without them."""
    return counts if counts.shape == like.shape else np.zeros(like.shape, counts.dtype)


def turns_of(survey: TrackSurvey) -> NDArray[np.float64]:
    """Where each crossing began, in % of travel; NaN where the one before is of another record."""
    begun = [
        crossing.travel.start if crossing.direction is Direction.UP else crossing.travel.stop
        for crossing in survey.crossings
    ]
    pairs = pairwise(survey.crossings)
    # A crossing goes on where the one before turned round, unless that one is of another record or left out.
    follows = [False, *(one.record == two.record and one.time.stop == two.time.start for one, two in pairs)]
    return np.where(follows, begun, np.nan) if begun else np.empty(0)


def _cumulative(values: NDArray[Any]) -> NDArray[np.float64]:
    """Sums of what is before each bin, and of all, along the last axis."""
    sums = np.zeros((*values.shape[:-1], values.shape[-1] + 1))
    np.cumsum(values, axis=-1, dtype=np.float64, out=sums[..., 1:])
    return sums


def _counted(values: NDArray[Any]) -> NDArray[np.float32]:
    """The same of counts and marks, which are whole numbers: exact in half the room."""
    sums = np.zeros((*values.shape[:-1], values.shape[-1] + 1), dtype=np.float32)
    np.cumsum(values, axis=-1, dtype=np.float32, out=sums[..., 1:])
    return sums


def _windows(cumulative: NDArray[Kind], width: int) -> NDArray[Kind]:
    return np.asarray(np.subtract(cumulative[..., width:], cumulative[..., :-width]))
