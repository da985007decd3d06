"""From a place on the travel to a band that a technician can point at."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.confidence import Calibration, band_confidence
from analysis.diagnosis.findings import Band, BandBasis, CrossingTime, Direction
from analysis.diagnosis.places import Place
from analysis.intervals import Interval
from analysis.signals.facts import Crossing, TrackSurvey
from analysis.signals.roughness import BIN_PERCENT

LEAST_LISTED = 0.05
"""A place less certain than this is not listed."""

ONE_SIDED = 3.0
"""The signal falls to one side where it goes this many times further that way."""


def make_band(survey: TrackSurvey, place: Place, basis: BandBasis, weights: Calibration) -> Band:
    """Describe a place as a band.

    Parameters
    ----------
    survey : TrackSurvey
        Of the track that it lies on.
    place : Place
    basis : BandBasis
        Of the whole capture, with all places that were found.
    weights : Calibration

    Returns
    -------
    Band
    """
    crossings = _crossing_times(survey, place)
    others = [spot for spot in basis.spots if spot.track is survey.role]
    return Band(
        travel=place.travel,
        volts=in_volts(place.travel, basis),
        start_uncertainty_percent=place.start_uncertainty_percent,
        stop_uncertainty_percent=place.stop_uncertainty_percent,
        confidence=band_confidence(place, survey, basis, weights, others=others),
        passes=len(crossings),
        noisy_passes=sum(item.noisy for item in crossings),
        output_smoothness_percent=max((item.breakup_percent for item in crossings), default=0.0),
        falls_towards=_falls_towards(basis, survey, place),
        record=_clearest_record(crossings),
        crossings=crossings,
        track=survey.role,
    )


def in_volts(travel: Interval, basis: BandBasis) -> Interval:
    """A stretch of travel (% of travel) as signal volts against sensor ground."""
    return Interval(travel.start * basis.feed_v / 100.0, travel.stop * basis.feed_v / 100.0)


def reconciled(bands: tuple[Band, ...], worn: float) -> tuple[Band, ...]:
    """Bands, surest first, whose surest takes up what the capture as a whole says.

    "A track is worn" and "there is a band here" are weighed by two models on one evidence; where the first is
    surer than the second, the surest band gets the mean of both.
    """
    if not bands or not worn > bands[0].confidence:
        return bands
    return (replace(bands[0], confidence=0.5 * (bands[0].confidence + worn)), *bands[1:])


def _inside(survey: TrackSurvey, travel: Interval) -> NDArray[np.bool_]:
    """Which bins a band touches: its edges lie half way into the outermost."""
    edges = survey.edges_percent
    return np.asarray((edges[1:] > travel.start) & (edges[:-1] < travel.stop))


def _crossing_times(survey: TrackSurvey, place: Place) -> tuple[CrossingTime, ...]:
    """Each visit with when it was and how far it broke up, on the way there and on the way back."""
    told = survey.breakup_percent[:, _inside(survey, place.travel)]
    worst = np.nan_to_num(told).max(axis=1)
    quiet = np.isfinite(told).any(axis=1) & (worst == 0.0)
    crossed = np.flatnonzero(place.crossed)
    rows = [slice(first, last + 1) for first, last in zip(place.begun[crossed], crossed, strict=True)]
    loudest = [int(own.stop - 1 - np.argmax(worst[own][::-1])) for own in rows]
    shown = [_until_quiet(quiet, own, row) for own, row in zip(rows, loudest, strict=True)]
    visits = [
        Interval(survey.crossings[own.start].time.start, survey.crossings[own.stop - 1].time.stop)
        for own in shown
    ]
    strokes = [survey.crossings[row] for row in loudest]
    straight = _times_within(survey, strokes, visits, place.travel)
    # An arm that turned may have got no further than into the outermost bins: what broke up there is it too.
    turned = _times_within(survey, strokes, visits, place.travel.widened(0.5 * BIN_PERCENT))
    times = [
        there if own.stop - own.start == 1 else both
        for own, there, both in zip(shown, straight, turned, strict=True)
    ]
    columns = (crossed, place.noisy[crossed], worst[loudest])
    return tuple(
        CrossingTime(record=survey.crossings[index].record, time=time, noisy=noisy, breakup_percent=breakup)
        for time, index, noisy, breakup in zip(times, *(item.tolist() for item in columns), strict=True)
    )


def _until_quiet(quiet: NDArray[np.bool_], rows: slice, loudest: int) -> slice:
    """Of a visit, the strokes in a row around its loudest, up to one that was quiet.

    One of which nothing is told, since the signal was gone all the while, is none.
    """
    first = last = loudest
    while first > rows.start and not quiet[first - 1]:
        first -= 1
    while last + 1 < rows.stop and not quiet[last + 1]:
        last += 1
    return slice(first, last + 1)


def _times_within(
    survey: TrackSurvey, crossings: Sequence[Crossing], visits: Sequence[Interval], travel: Interval
) -> list[Interval]:
    """When each visit was within the band: from its first node inside to its last."""
    times = list(visits)
    for record in dict.fromkeys(item.record for item in crossings):
        path = survey.path(record)
        if path is None:
            continue
        place = path.travel_percent
        nodes = np.flatnonzero((place >= travel.start) & (place < travel.stop))
        own = [index for index, item in enumerate(crossings) if item.record == record]
        # Nodes of a crossing: from the one at its beginning to the one at its end.
        begun = np.searchsorted(path.time_s, [times[index].start for index in own])
        ended = np.searchsorted(path.time_s, [times[index].stop for index in own])
        firsts, lasts = np.searchsorted(nodes, begun), np.searchsorted(nodes, ended, side="right") - 1
        inside = lasts >= firsts
        within = (path.time_s[nodes[item[inside]]].tolist() for item in (firsts, lasts))
        times_inside = map(Interval, *within)
        for index, met in zip(own, inside.tolist(), strict=True):
            if met:
                times[index] = next(times_inside)
            else:
                middle = _nearest_time(crossings[index], travel)
                times[index] = Interval(middle, middle)
    return times


def _nearest_time(crossing: Crossing, travel: Interval) -> float:
    """Time at which a steady stroke would have met the middle of the band."""
    share = (travel.centre - crossing.travel.start) / max(crossing.travel.length, 1e-9)
    share = min(max(share, 0.0), 1.0)
    if crossing.direction is Direction.DOWN:
        share = 1.0 - share
    return crossing.time.start + share * crossing.time.length


def _clearest_record(crossings: tuple[CrossingTime, ...]) -> str:
    best = max(crossings, key=lambda item: item.breakup_percent, default=None)
    return best.record if best is not None else ""


def _falls_towards(basis: BandBasis, survey: TrackSurvey, place: Place) -> str:
    where, above, below = basis.pushes.get(survey.role, np.empty((0, 3))).T
    near = place.travel.widened(1.0)
    beside = (where >= near.start) & (where < near.stop)
    up, down = float(above[beside].sum()), float(below[beside].sum())
    if down > ONE_SIDED * up:
        return "ground"
    return "reference" if up > ONE_SIDED * down else "both"
