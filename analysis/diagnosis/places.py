"""Where on the travel the output breaks up more than chance in time would have it.

Two explanations compete for every stretch of travel. *Place*: the track is bad there, so most crossings of
it show a break-up. *Time*: something opens whenever it likes, so a crossing shows one only as often as the
time it spends there allows. Crossings are counted, not samples, and a crossing counts once: a hand that
dwells on the spot, or a burst of openings, weighs no more than a passage.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.place_edges import WIDEST_PERCENT, find_edges, telling_rows
from analysis.diagnosis.place_odds import place_against_share, place_against_time
from analysis.intervals import Interval
from analysis.signals.facts import Direction, TrackSurvey
from analysis.signals.roughness import BIN_PERCENT

WIDTHS_PERCENT = (0.75, 1.25, 2.0, 3.0, 4.5, 6.5, 9.0, 12.0)
"""Widths of the stretches that are tried: the bands looked for are 0.8 to 12 % of travel wide."""

MOST_PLACES = 4
"""Places looked for on one track; a track that breaks up in more has no good part to compare with."""

EDGES_MAY_COST = 0.7
"""Share of the log odds that better edges may cost: they are found on all visits, the odds on crossings."""

LEAST_ODDS = -4.0
"""Places with log odds below this are not worth listing."""

BURST_PERCENT = 2.0
"""Disturbances closer together on one crossing are one burst: chatter says no more than an opening."""

UNREST = 0.3
"""Share of the time in a stretch that must be restless for the crossing to count as restless there."""

SIDE_BY_SIDE_PERCENT = 1.0
"""Places no further apart than this are one."""

CERTAIN = 4.0
"""Log odds from which a piece beside another one is part of the spot."""

MOST_CROSSINGS = 600
"""Crossings among which places are looked for; all of them are counted once one is found."""

NEIGHBOURHOOD_PERCENT = 2.0
"""An arm that turns round within this of a stretch has not left it."""

FOOTHOLD = 0.5
"""A crossing counts where it visited at least this share of a stretch."""


@dataclass(frozen=True, slots=True)
class Place:
    """A stretch of travel that breaks up place-locked, with the odds that it does.

    Parameters
    ----------
    travel : Interval
        Edges in % of travel.
    start_uncertainty_percent, stop_uncertainty_percent : float
        Expanded uncertainty (k = 2) of each edge, in % of travel.
    log_odds : float
        Natural logarithm of the odds of place against time, what trying many stretches buys taken off.
    crossed, noisy : ndarray of bool, shape (n_crossings,)
        Crossings of the survey that count here, and those that broke up.
    elsewhere_per_s : float
        Disturbances a second outside the places.
    """

    travel: Interval
    start_uncertainty_percent: float
    stop_uncertainty_percent: float
    log_odds: float
    crossed: NDArray[np.bool_]
    noisy: NDArray[np.bool_]
    elsewhere_per_s: float


def find_places(survey: TrackSurvey) -> tuple[Place, ...]:
    """Find the stretches of travel that break up place-locked, most certain first.

    Parameters
    ----------
    survey : TrackSurvey
        Of one track; may hold no crossing.

    Returns
    -------
    tuple of Place
        At most `MOST_PLACES`, disjoint.
    """
    whole = _Left.of(survey)
    left = _Left.of(_some_crossings(survey)) if len(survey.crossings) > MOST_CROSSINGS else whole
    found: list[Place] = []
    while len(found) < MOST_PLACES and left.anything():
        core = _best_stretch(left)
        if core.log_odds < LEAST_ODDS:
            break
        refined, slack = _refined(left, core)
        found.append(_place(whole, refined, slack))
        # What lies in or beside the place is explained; the next one is looked for in the rest.
        for sheet in {id(left): left, id(whole): whole}.values():
            sheet.explain(max(min(refined.first, core.first) - 2, 0), max(refined.last, core.last) + 2)
    return tuple(sorted(_merged(found), key=lambda place: -place.log_odds))


def _some_crossings(survey: TrackSurvey) -> TrackSurvey:
    """Every nth crossing of a long survey: hundreds show a place as surely as thousands, and sooner."""
    kept = np.arange(0, len(survey.crossings), -(-len(survey.crossings) // MOST_CROSSINGS))
    matrices = ("breakup_percent", "dwell_s", "onsets", "lasting", "deep", "restless_s")
    rows = {name: getattr(survey, name)[kept] for name in matrices if len(getattr(survey, name))}
    return replace(survey, crossings=tuple(survey.crossings[index] for index in kept), **rows)


def _merged(found: list[Place]) -> list[Place]:
    """Places with those joined that lie side by side: one spot that was found in pieces.

    What is no more than likely beside a certain one is its blurred edge, and goes.
    """
    merged: list[Place] = []
    for place in sorted(found, key=lambda item: item.travel.start):
        last = merged[-1] if merged else None
        if last is None or place.travel.start - last.travel.stop > SIDE_BY_SIDE_PERCENT:
            merged.append(place)
            continue
        surer, other = (last, place) if last.log_odds >= place.log_odds else (place, last)
        if other.log_odds < CERTAIN or place.travel.stop - last.travel.start > WIDEST_PERCENT:
            merged[-1] = surer
            continue
        merged[-1] = replace(
            surer,
            travel=Interval(last.travel.start, max(last.travel.stop, place.travel.stop)),
            start_uncertainty_percent=last.start_uncertainty_percent,
            stop_uncertainty_percent=place.stop_uncertainty_percent,
            crossed=last.crossed | place.crossed,
            noisy=last.noisy | place.noisy,
        )
    return merged


@dataclass(frozen=True, slots=True)
class _Stretch:
    """Bins ``[first, last)``, the log odds of place against time there, and the sign that gave them."""

    first: int
    last: int
    log_odds: float
    sign: int = 0


@dataclass(frozen=True, slots=True)
class _Left:
    """What no place explains yet, and the four signs that are weighed.

    A disturbance that begins is one sign. Where the whole travel is full of lone spikes, only those that
    last, or those that go deep, say something. Where the recorder hardly shows the break-up, no single cell
    stands out, but many restless ones together do.
    """

    survey: TrackSurvey
    onsets: tuple[NDArray[np.float64], ...]
    restless_s: NDArray[np.float64]
    noisy: NDArray[np.float64]
    visited: NDArray[np.float64]
    dwell: NDArray[np.float64]
    turns: NDArray[np.float64]

    @classmethod
    def of(cls, survey: TrackSurvey) -> _Left:
        seen = ~np.isnan(survey.breakup_percent)
        return cls(
            survey=survey,
            onsets=tuple(_or_none(item, seen) for item in (survey.onsets, survey.lasting, survey.deep)),
            restless_s=_or_none(survey.restless_s, seen),
            noisy=np.where(seen, np.nan_to_num(survey.breakup_percent) > 0, np.nan),
            visited=_cumulative(seen),
            dwell=_cumulative(survey.dwell_s),
            turns=_turns(survey),
        )

    def anything(self) -> bool:
        """Whether anything is left to explain."""
        return bool(self.onsets[0].any() or self.restless_s.any())

    def explain(self, first: int, last: int) -> None:
        """Take bins ``[first, last)`` as explained."""
        for matrix in (*self.onsets, self.restless_s):
            matrix[:, first:last] = 0.0
        self.noisy[:, first:last] = np.nan

    def odds(self, width: int) -> list[NDArray[np.float64]]:
        """Log odds by each sign of every stretch of `width` bins, what trying so many buys taken off."""
        bins = self.noisy.shape[1]
        trials = np.log((len(self.onsets) + 1) * len(WIDTHS_PERCENT) * max(bins / width, 1.0))
        visits = _Visits.of(self.turns, self.survey.edges_percent[: bins - width + 1], width)
        signs = [self._by_onsets(item, width, visits) for item in self.onsets]
        return [sign - trials for sign in (*signs, self._by_unrest(width, visits))]

    def _by_onsets(self, onsets: NDArray[np.float64], width: int, visits: _Visits) -> NDArray[np.float64]:
        inside = _windows(_cumulative(onsets), width)
        counted = (_windows(self.visited, width) >= FOOTHOLD * width) | (inside > 0)
        apart = _cumulative(_bursts(onsets))
        outside = apart[:, -1].sum() - _windows(apart, width).sum(axis=0)
        crossed, events = visits.joined(counted) > 0, visits.joined(inside)
        by_time = place_against_time(
            crossed,
            events,
            visits.joined(_windows(self.dwell, width)),
            outside,
            float(self.survey.dwell_s.sum()),
        )
        # The better of the two explanations that need no place: at any time, or on any stretch alike.
        return np.minimum(by_time, place_against_share(crossed, events > 0, width))

    def _by_unrest(self, width: int, visits: _Visits) -> NDArray[np.float64]:
        dwell = _windows(self.dwell, width)
        shaken = _windows(_cumulative(self.restless_s), width)
        counted = (_windows(self.visited, width) >= FOOTHOLD * width) & (dwell > 0.003)
        noisy = counted & (shaken >= UNREST * dwell)
        return place_against_share(visits.joined(counted) > 0, visits.joined(noisy) > 0, width)


@dataclass(frozen=True, slots=True)
class _Visits:
    """Crossings between which the arm did not leave the neighbourhood of a stretch, joined.

    A hand that rests in the spot trembles to and fro over it; that is one visit, not twenty crossings.

    Parameters
    ----------
    flat : ndarray of int, shape (n_crossings, n_stretches)
        Position, in a matrix of the same shape, of the visit that each crossing belongs to.
    """

    flat: NDArray[np.int64]

    @classmethod
    def of(cls, turns: NDArray[np.float64], starts_percent: NDArray[np.float64], width: int) -> _Visits:
        """Visits of all stretches of `width` bins that begin at `starts_percent`."""
        low = starts_percent - NEIGHBOURHOOD_PERCENT
        high = starts_percent + width * BIN_PERCENT + NEIGHBOURHOOD_PERCENT
        same = (turns[:, None] >= low) & (turns[:, None] <= high)
        same[:1] = False
        visit = np.cumsum(~same, axis=0) - 1
        return cls(visit * len(starts_percent) + np.arange(len(starts_percent)))

    def joined(self, values: NDArray[np.float64] | NDArray[np.bool_]) -> NDArray[np.float64]:
        """Sums over the crossings of each visit, same shape; rows without a visit are 0."""
        total = np.bincount(self.flat.ravel(), values.ravel().astype(np.float64), minlength=self.flat.size)
        return np.asarray(total.reshape(self.flat.shape), dtype=np.float64)


def _or_none(counts: NDArray[np.float64], like: NDArray[np.bool_]) -> NDArray[np.float64]:
    """A copy of a survey's counts; noughts where the survey was made without them."""
    return counts.copy() if counts.shape == like.shape else np.zeros(like.shape)


def _turns(survey: TrackSurvey) -> NDArray[np.float64]:
    """Where each crossing began, in % of travel; NaN where the one before is of another record."""
    begun = [
        crossing.travel.start if crossing.direction is Direction.UP else crossing.travel.stop
        for crossing in survey.crossings
    ]
    pairs = pairwise(survey.crossings)
    # A crossing goes on where the one before turned round, unless that one is of another record or left out.
    follows = [False, *(one.record == two.record and one.time.stop == two.time.start for one, two in pairs)]
    return np.where(follows, begun, np.nan) if begun else np.empty(0)


def _bursts(onsets: NDArray[np.float64]) -> NDArray[np.float64]:
    """Onsets, those of one burst counted once: the next one of a crossing is `BURST_PERCENT` further on."""
    apart, begun = round(BURST_PERCENT / BIN_PERCENT), np.full(len(onsets), -(10**6))
    kept = np.zeros_like(onsets)
    for column in np.flatnonzero(onsets.any(axis=0)):
        new = (onsets[:, column] > 0) & (column - begun >= apart)
        kept[new, column] = 1.0
        begun[new] = column
    return kept


def _best_stretch(left: _Left) -> _Stretch:
    """The stretch that place explains best, by whichever sign."""
    bins = left.noisy.shape[1]
    best = _Stretch(0, 0, -np.inf)
    for width in sorted({min(max(1, round(item / BIN_PERCENT)), bins) for item in WIDTHS_PERCENT}):
        for sign, odds in enumerate(left.odds(width)):
            index = int(np.argmax(odds))
            if odds[index] > best.log_odds:
                best = _Stretch(index, index + width, float(odds[index]), sign)
    return best


def _refined(left: _Left, core: _Stretch) -> tuple[_Stretch, tuple[float, float]]:
    """The stretch with its edges found, unless it is then explained worse, and the slack of the edges."""
    noisy = left.noisy
    if core.sign == len(left.onsets):
        with np.errstate(invalid="ignore", divide="ignore"):
            share = left.restless_s / left.survey.dwell_s
        noisy = np.where(np.isnan(noisy) | np.isnan(share), np.nan, share >= UNREST)
    first, last, slack = find_edges(telling_rows(noisy, core.first, core.last), core.first, core.last)
    near_first, near_last = max(first - 2, 0), min(last + 2, noisy.shape[1])
    log_odds = float(left.odds(near_last - near_first)[core.sign][near_first])
    if log_odds >= core.log_odds - max(1.0, EDGES_MAY_COST * core.log_odds):
        return _Stretch(first, last, max(log_odds, core.log_odds), core.sign), slack
    half = 0.25 * (core.last - core.first)
    return core, (half, half)


def _cumulative(values: NDArray[np.float64] | NDArray[np.bool_]) -> NDArray[np.float64]:
    return np.concatenate([np.zeros((len(values), 1)), np.cumsum(values, axis=1, dtype=np.float64)], axis=1)


def _windows(cumulative: NDArray[np.float64], width: int) -> NDArray[np.float64]:
    return cumulative[:, width:] - cumulative[:, :-width]


def _place(left: _Left, stretch: _Stretch, slack: tuple[float, float]) -> Place:
    survey, first, last = left.survey, stretch.first, stretch.last
    edges, onsets = survey.edges_percent, left.onsets[min(stretch.sign, len(left.onsets) - 1)]
    visited = (~np.isnan(survey.breakup_percent[:, first:last])).sum(axis=1)
    dwell_s = survey.dwell_s[:, first:last].sum(axis=1)
    noisy = np.nan_to_num(survey.breakup_percent[:, first:last]).max(axis=1) > 0
    if stretch.sign == len(left.onsets):
        noisy |= (visited > 0) & (left.restless_s[:, first:last].sum(axis=1) >= UNREST * dwell_s)
    crossed = (visited >= FOOTHOLD * (last - first)) | noisy
    crossed, noisy = _joined(left, stretch, crossed, noisy)
    outside_s = max(float(survey.dwell_s.sum() - dwell_s.sum()), 1e-3)
    return Place(
        # The break-up begins somewhere within the outermost bin: half way, for want of better knowledge.
        travel=Interval(float(edges[first]), float(edges[last])).widened(
            -0.5 * BIN_PERCENT if last - first > 1 else 0.0
        ),
        start_uncertainty_percent=BIN_PERCENT * (slack[0] + 0.5),
        stop_uncertainty_percent=BIN_PERCENT * (slack[1] + 0.5),
        log_odds=stretch.log_odds,
        crossed=crossed,
        noisy=noisy,
        elsewhere_per_s=float(_bursts(onsets).sum() - _bursts(onsets)[:, first:last].sum()) / outside_s,
    )


def _joined(
    left: _Left, stretch: _Stretch, crossed: NDArray[np.bool_], noisy: NDArray[np.bool_]
) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Crossings with the visits joined: the last of each visit stands for it."""
    low = left.survey.edges_percent[stretch.first] - NEIGHBOURHOOD_PERCENT
    high = left.survey.edges_percent[stretch.last] + NEIGHBOURHOOD_PERCENT
    crossed, noisy = crossed.copy(), noisy.copy()
    for row in np.flatnonzero((left.turns >= low) & (left.turns <= high)):
        crossed[row] |= crossed[row - 1]
        noisy[row] |= noisy[row - 1]
        crossed[row - 1] = noisy[row - 1] = False
    return crossed, noisy
