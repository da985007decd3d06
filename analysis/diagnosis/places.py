"""Where on the travel the output breaks up more than chance in time would have it.

Two explanations compete for every stretch of travel. *Place*: the track is bad there, so most crossings of
it show a break-up. *Time*: something opens whenever it likes, so a crossing shows one only as often as the
time it spends there allows. Crossings are counted, not samples, and a crossing counts once: a hand that
dwells on the spot, or a burst of openings, weighs no more than a passage.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.place_agreement import agreement
from analysis.diagnosis.place_edges import WIDEST_PERCENT, edge_gain, find_edges, telling_rows
from analysis.diagnosis.place_signs import (
    FOOTHOLD,
    NEIGHBOURHOOD_PERCENT,
    ONSETS,
    RANK_SIGN,
    UNREST_SIGN,
    WIDTHS_PERCENT,
    Left,
    or_none,
    telling_unrest,
    turns_of,
)
from analysis.intervals import Interval
from analysis.signals.cutting import RAIL_PERCENT
from analysis.signals.facts import TrackSurvey
from analysis.signals.roughness import BIN_PERCENT

MOST_PLACES = 4
"""Places looked for on one track; a track that breaks up in more has no good part to compare with."""

EDGES_MAY_COST = 0.7
"""Share of the log odds that better edges may cost: they are found on all visits, the odds on crossings."""

SOLID = 0.6
"""Share of the visits to the bins of a stretch that are noisy, from which on it breaks up all through."""

SOLID_GAIN = 20.0
"""Log likelihood by which such edges explain the visits better than the core alone does."""

LEAST_ODDS = -4.0
"""Places with log odds below this are not worth listing."""

SIDE_BY_SIDE_PERCENT = 1.0
"""Places no further apart than this are one."""

CERTAIN = 4.0
"""Log odds from which a piece beside another one is part of the spot."""

MOST_CROSSINGS = 600
"""Crossings among which places are looked for; all of them are counted once one is found."""


SELDOM_PER_S = 0.05
"""Disturbances come this often at least, wherever the arm is: three a minute."""

MOST_CONTRAST = 5.0
"""A hundred and fifty times as often: more says no more."""

_SAME = 0.5
"""Share of the joint travel from which two stretches are one with different edges."""


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
    begun : ndarray of int, shape (n_crossings,)
        The crossing of the survey with which that visit began for which each stands: itself, unless the arm
        turned there.
    inside_per_s, elsewhere_per_s : float
        Disturbances a second in this place, and outside all places.
    """

    travel: Interval
    start_uncertainty_percent: float
    stop_uncertainty_percent: float
    log_odds: float
    crossed: NDArray[np.bool_]
    noisy: NDArray[np.bool_]
    begun: NDArray[np.intp]
    inside_per_s: float
    elsewhere_per_s: float

    @property
    def contrast(self) -> float:
        """Logarithm of how many times more often it breaks up here than elsewhere, 0 to `MOST_CONTRAST`.

        Crossings by the hundred make the odds of any place great where the whole signal breaks up, here a
        little more; a bad spot stands out.
        """
        often = self.inside_per_s / (self.elsewhere_per_s + SELDOM_PER_S)
        return float(np.clip(np.log(max(often, 1.0)), 0.0, MOST_CONTRAST))


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
    left = Left.of(_some_crossings(survey) if len(survey.crossings) > MOST_CROSSINGS else survey)
    turns, explained = turns_of(survey), np.zeros(len(survey.edges_percent) - 1, dtype=np.bool_)
    found: list[Place] = []
    while len(found) < MOST_PLACES and left.anything():
        core = _best_stretch(left)
        if core.log_odds < LEAST_ODDS:
            break
        refined, slack = _refined(left, core)
        place = _place(survey, turns, explained, refined, slack, left)
        place = _with_agreement(survey, place, refined)
        # A stretch that reaches beyond the track is where the signal of an open contact sinks to.
        if place.travel.start >= RAIL_PERCENT and place.travel.stop <= 100.0 - RAIL_PERCENT:
            found.append(place)
        # What lies in or beside the place is explained; the next one is looked for in the rest.
        span = slice(max(min(refined.first, core.first) - 2, 0), max(refined.last, core.last) + 2)
        explained[span] = True
        left = left.without(span)
    return tuple(sorted(_merged(found), key=lambda place: -place.log_odds))


def place_at(survey: TrackSurvey, travel: Interval, spots: Sequence[tuple[Interval, float]] = ()) -> Place:
    """A stretch of travel that somebody named, judged as those are that are looked for.

    Parameters
    ----------
    survey : TrackSurvey
        Of one track, with the counts of its disturbances.
    travel : Interval
        In % of travel, inside the survey; at least the bin in its middle is taken.
    spots : sequence of (Interval, float)
        Places that were found on this track, with their log odds. One that shares at least half of the
        joint travel is this stretch with other edges, and lends its odds; surer ones elsewhere explain what
        they show, as they do for each other.

    Returns
    -------
    Place
        With log odds of minus infinity where the stretch shows nothing that chance does not.
    """
    first, last = _bins(survey, travel)
    same = [odds for found, odds in spots if same_stretch(found, travel)]
    left = Left.of(_some_crossings(survey) if len(survey.crossings) > MOST_CROSSINGS else survey)
    explained = np.zeros(len(survey.edges_percent) - 1, dtype=np.bool_)
    stretch = _stretch_at(left, first, last)
    for found, odds in sorted(spots, key=lambda item: -item[1]):
        if odds <= max(stretch.log_odds, *same, -np.inf) or found.overlap(travel) > 0.0:
            continue
        low, high = _bins(survey, found)
        # What lies in or beside the place is explained, but nothing of this stretch.
        below = slice(max(low - 2, 0), min(high + 2, first))
        span = below if low < first else slice(max(low - 2, last), high + 2)
        explained[span] = True
        left = left.without(span)
        stretch = _stretch_at(left, first, last)
    place = _place(survey, turns_of(survey), explained, stretch, (0.0, 0.0), left)
    place = _with_agreement(survey, place, stretch)
    return replace(place, log_odds=max(place.log_odds, *same, -np.inf))


def same_stretch(one: Interval, other: Interval) -> bool:
    """Whether two stretches share at least half of their joint travel, or are the same."""
    joint = max(one.stop, other.stop) - min(one.start, other.start)
    return one == other or one.overlap(other) >= _SAME * joint > 0.0


def _bins(survey: TrackSurvey, travel: Interval) -> tuple[int, int]:
    """Bins ``[first, last)`` that a stretch touches; at least one, inside the survey."""
    bins, start = len(survey.edges_percent) - 1, float(survey.edges_percent[0])
    width = float(survey.edges_percent[1]) - start
    # A millionth of a bin against rounding: an edge that lies on a bin's edge does not reach into the next.
    first = int(np.floor((travel.start - start) / width + 1e-6))
    last = int(np.ceil((travel.stop - start) / width - 1e-6))
    first = min(max(first, 0), bins - 1)
    return first, min(max(last, first + 1), bins)


def _stretch_at(left: Left, first: int, last: int) -> _Stretch:
    """A given stretch with its odds by the plainest sign, a little beyond its edges allowed for."""
    near = (max(first - 2, 0), min(last + 2, left.noisy.shape[1]))
    tried = [
        (float(odds[low]), sign)
        for low, high in ((first, last), near)
        for sign, odds in enumerate(left.odds(high - low))
        # By rank a tenth of the crossings are high anywhere: it counts where it speaks for a bad spot.
        if sign != RANK_SIGN or odds[low] > 0.0
    ]
    odds, sign = max(tried, key=lambda item: item[0])
    return _Stretch(first, last, odds, sign)


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
            begun=np.minimum(last.begun, place.begun),
        )
    return merged


@dataclass(frozen=True, slots=True)
class _Stretch:
    """Bins ``[first, last)``, the log odds of place against time there, and the sign that gave them."""

    first: int
    last: int
    log_odds: float
    sign: int = 0


def _best_stretch(left: Left) -> _Stretch:
    """The stretch that place explains best, by whichever sign."""
    bins = left.noisy.shape[1]
    best = _Stretch(0, 0, -np.inf)
    for width in sorted({min(max(1, round(item / BIN_PERCENT)), bins) for item in WIDTHS_PERCENT}):
        for sign, odds in enumerate(left.odds(width)):
            index = int(np.argmax(odds))
            if odds[index] > best.log_odds:
                best = _Stretch(index, index + width, float(odds[index]), sign)
    return best


def _refined(left: Left, core: _Stretch) -> tuple[_Stretch, tuple[float, float]]:
    """The stretch with its edges found, unless it is then explained worse, and the slack of the edges."""
    noisy = left.noisy
    if core.sign == RANK_SIGN:
        noisy = left.high()
    elif core.sign == UNREST_SIGN:
        with np.errstate(invalid="ignore", divide="ignore"):
            share = left.restless_s / left.survey.dwell_s
        noisy = np.where(np.isnan(noisy) | np.isnan(share), np.nan, share >= left.unrest)
    rows = telling_rows(noisy, core.first, core.last)
    first, last, slack = find_edges(rows, core.first, core.last)
    near_first, near_last = max(first - 2, 0), min(last + 2, noisy.shape[1])
    log_odds = float(left.odds(near_last - near_first)[core.sign][near_first])
    cheap = log_odds >= core.log_odds - max(1.0, EDGES_MAY_COST * core.log_odds)
    sure = core.log_odds >= CERTAIN and log_odds >= 0.0
    if cheap or sure or _solid(rows, (first, last), (core.first, core.last)):
        return _Stretch(first, last, max(log_odds, core.log_odds), core.sign), slack
    half = 0.25 * (core.last - core.first)
    return core, (half, half)


def _solid(rows: NDArray[np.float64], whole: tuple[int, int], core: tuple[int, int]) -> bool:
    """Whether a stretch breaks up all through on nearly every visit, and not in its core alone.

    The odds count a crossing once, so the longer a stretch takes to cross, the less a break-up in it says;
    that it began and ended at the same places each time, they do not know.
    """
    inside = rows[:, slice(*whole)]
    solid = float(np.nanmean(inside)) >= SOLID if np.isfinite(inside).any() else False
    return solid and edge_gain(rows, whole, core) >= SOLID_GAIN


def _place(
    survey: TrackSurvey,
    turns: NDArray[np.float64],
    explained: NDArray[np.bool_],
    stretch: _Stretch,
    slack: tuple[float, float],
    left: Left,
) -> Place:
    edges, first, last = survey.edges_percent, stretch.first, stretch.last
    visited = (~np.isnan(survey.breakup_percent[:, first:last])).sum(axis=1)
    dwell_s = survey.dwell_s[:, first:last].sum(axis=1)
    noisy = np.nan_to_num(survey.breakup_percent[:, first:last]).max(axis=1) > 0
    if stretch.sign == UNREST_SIGN:
        shaken = or_none(survey.restless_s, survey.breakup_percent)[:, first:last]
        restless_s = np.where(explained[first:last], 0.0, shaken).sum(axis=1)
        noisy |= (visited > 0) & (restless_s >= telling_unrest(survey) * dwell_s)
    if stretch.sign == RANK_SIGN:
        noisy |= left.high_within(first, last)
    crossed = (visited >= FOOTHOLD * (last - first)) | noisy
    crossed, noisy, begun = _joined(edges, turns, stretch, crossed, noisy)
    onsets = _onsets(survey, stretch) if stretch.sign != RANK_SIGN else np.nan_to_num(left.high())
    free = ~explained
    free[first:last] = False
    # Summed by bins first: to pick the bins out would copy most of the table.
    outside_s = max(float(survey.dwell_s.sum(axis=0)[free].sum()), 1e-3)
    inside_s = max(float(survey.dwell_s[:, first:last].sum()), 1e-3)
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
        begun=begun,
        inside_per_s=float(onsets[:, first:last].sum(dtype=np.float64)) / inside_s,
        elsewhere_per_s=float(onsets.sum(axis=0, dtype=np.float64)[free].sum()) / outside_s,
    )


def _onsets(survey: TrackSurvey, stretch: _Stretch) -> NDArray[np.floating[Any]]:
    """Disturbances that began in each bin of each crossing, of the kind that the stretch was found by."""
    counts = getattr(survey, ONSETS[min(stretch.sign, len(ONSETS) - 1)])
    return or_none(counts, survey.breakup_percent)


def _with_agreement(survey: TrackSurvey, place: Place, stretch: _Stretch) -> Place:
    """A place whose odds know where each crossing began and ended to break up, if half of them did so.

    Of a few crossings among many some agree by chance: stretches are looked for where they do.
    """
    if 2 * int(place.noisy.sum()) < int(place.crossed.sum()):
        return place
    # Not visited is NaN, and not greater; the marks are copied, which take an eighth of the room.
    broken = (survey.breakup_percent > 0.0)[place.noisy]
    return replace(place, log_odds=place.log_odds + agreement(broken, stretch.first, stretch.last))


def _joined(
    edges: NDArray[np.float64],
    turns: NDArray[np.float64],
    stretch: _Stretch,
    crossed: NDArray[np.bool_],
    noisy: NDArray[np.bool_],
) -> tuple[NDArray[np.bool_], NDArray[np.bool_], NDArray[np.intp]]:
    """Crossings with the visits joined: the last of each visit stands for it; and with which each began."""
    low = edges[stretch.first] - NEIGHBOURHOOD_PERCENT
    high = edges[stretch.last] + NEIGHBOURHOOD_PERCENT
    crossed, noisy, begun = crossed.copy(), noisy.copy(), np.arange(len(crossed))
    for row in np.flatnonzero((turns >= low) & (turns <= high)):
        crossed[row] |= crossed[row - 1]
        noisy[row] |= noisy[row - 1]
        if crossed[row - 1]:
            begun[row] = begun[row - 1]
        crossed[row - 1] = noisy[row - 1] = False
    return crossed, noisy, begun
