"""What the disturbances belong to: a place, the harness, ground, reference, the measurement, or nothing.

Each explanation gets features that it alone predicts, physical quantities brought to a scale on which more
says more, but never without bound. A multinomial logistic model (`analysis.diagnosis.confidence`) weighs
them against each other; it has few weights, and they are fitted on simulated captures that no reported
figure uses.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.measurement_check import Problem
from analysis.diagnosis.places import Place
from analysis.diagnosis.stillness import left_alone
from analysis.diagnosis.strays import LASTING_S, share, strays_of, substance
from analysis.diagnosis.studies import Studies
from analysis.signals.facts import TrackSurvey
from analysis.signals.steadiness import Steadiness
from analysis.signals.thinning import thinned

NARROW_PERCENT = 8.0
"""Less travel than this is not a test of a sensor: half of what a wheel moves on a smooth road."""

MOST_LOG = 3.0
"""Counts beyond nineteen say no more, and `MOST_DOSE` the same for 150 volt-milliseconds."""

MOST_DOSE = 5.0

PLAIN_DOSE = 1.5
"""Logarithm of the volt-milliseconds from which on a wire's own record shows it bad; plainly at twice."""

STANDS_OUT = 2.0
"""Contrast from which a place stands out: it breaks up seven times as often as the rest..."""

OFTEN = 1.3
"""...and the less vague the more crossings of it break up, from three in ten on."""

PLAINLY_AT_REST = 3.0
"""Plain openings while the arm was left alone, from which on a harness is shown to break up."""

MOST_ODDS = 12.0
"""Log odds beyond this say no more: one in 160,000."""


@dataclass(frozen=True, slots=True)
class Features:
    """What each explanation predicts, one number each; see `Features.of`.

    Parameters
    ----------
    measurement : float
        Strength of the plainest measurement problem, 0 to 1.
    reference_level, ground_level : float
        How far the worst slow level lies beyond its limit, in units of 50 mV, -2 to 6.
    reference_dips, ground_lifts : float
        Logarithm of volts times milliseconds of lasting disturbances that this wire has alone.
    place : float
        Log odds of the most certain place, clipped.
    place_beyond : float
        How far those odds lie beyond the clip, in units of 20, 0 to 2.
    place_share : float
        Share of the crossings of that place that broke up, fading out where its odds are even.
    place_noisy : float
        Logarithm of how many did, fading out likewise.
    vague : float
        How little that place stands out from the rest, 0 to 1, fading out likewise: see `_vague`.
    gathered : float
        Share of the weight of all disturbances that lies in places; 0 where one crossing only was noisy.
    elsewhere : float
        Logarithm of the weight of disturbances of the signal alone outside all places.
    elsewhere_deep : float
        How deep the deepest of them went, in tenths of the feed, 2 at most.
    at_rest : float
        Logarithm of the weight of disturbances while the arm was left alone.
    out_of_range : float
        Logarithm of the seconds spent resting beyond the valid range.
    slow : float
        How far the sampling rate lies below 250 S/s, in octaves.
    few : float
        How few strokes there are: 2 for none, 0 from six on; 0 where it plainly broke up at rest.
    rest_untested : float
        How far the rest height lies outside the travel tested, in units of 5 % of travel, 0 to 3.
    unexplained_once : float
        1 where the most certain place was noisy on one crossing only, else 0; 0 where it plainly broke up at
        rest.
    narrow : float
        1 where no travel was tested, 0 from `NARROW_PERCENT` on.
    """

    measurement: float
    reference_level: float
    reference_dips: float
    ground_level: float
    ground_lifts: float
    place: float
    place_beyond: float
    place_share: float
    place_noisy: float
    vague: float
    gathered: float
    elsewhere: float
    elsewhere_deep: float
    at_rest: float
    out_of_range: float
    slow: float
    few: float
    rest_untested: float
    unexplained_once: float
    narrow: float

    @classmethod
    def names(cls) -> tuple[str, ...]:
        """Names in the order of `vector`."""
        return tuple(item.name for item in fields(cls))

    @property
    def vector(self) -> NDArray[np.float64]:
        """Values, shape (n_features,)."""
        return np.array([getattr(self, name) for name in self.names()], dtype=np.float64)


def weigh(studies: Studies, problems: Sequence[Problem], places: Sequence[tuple[Role, Place]]) -> Features:
    """Bring what was seen to the scales on which the explanations are compared.

    Parameters
    ----------
    studies : Studies
    problems : sequence of Problem
        From the measurement check.
    places : sequence of (Role, Place)
        Of all tracks, most certain first.

    Returns
    -------
    Features
    """
    best = places[0][1] if places else None
    reference, dips = _wire(studies, Role.REFERENCE)
    ground, lifts = _wire(studies, Role.GROUND)
    strays = strays_of(studies, places).without(told_by_feed(studies, lifts, dips))
    noisy = int(best.noisy.sum()) if best is not None else 0
    # What breaks up while nobody moves the arm needs no further stroke to show what it is.
    unshown = 1.0 - share(strays.resting / PLAINLY_AT_REST)
    # How many crossings broke up says something only where the place is more than chance.
    trusted = float(np.clip(best.log_odds / 4.0, 0.0, 1.0)) if best is not None else 0.0
    return Features(
        measurement=max((item.strength for item in problems), default=0.0),
        reference_level=reference,
        reference_dips=dips,
        ground_level=ground,
        ground_lifts=lifts,
        place=float(np.clip(best.log_odds, -4.0, MOST_ODDS)) if best is not None else -4.0,
        place_beyond=float(np.clip((best.log_odds - MOST_ODDS) / 20.0, 0.0, 2.0))
        if best is not None
        else 0.0,
        place_share=trusted * noisy / max(int(best.crossed.sum()), 1) if best is not None else 0.0,
        place_noisy=trusted * min(float(np.log1p(noisy)), MOST_LOG),
        vague=trusted * _vague(best) if best is not None else 0.0,
        gathered=strays.gathered if noisy > 1 else 0.0,
        elsewhere=min(float(np.log1p(strays.moving)), MOST_LOG),
        elsewhere_deep=min(strays.deepest_percent / 10.0, 2.0),
        at_rest=min(float(np.log1p(strays.resting)), MOST_LOG),
        out_of_range=min(float(np.log1p(_seconds_out_of_range(studies))), MOST_LOG),
        slow=_octaves_too_slow(studies),
        few=unshown * _few(studies),
        rest_untested=_rest_untested(studies),
        unexplained_once=unshown * float(noisy == 1 and best is not None and best.log_odds > -2.0),
        narrow=_narrow(studies),
    )


def _vague(place: Place) -> float:
    """How little a place stands out, 0 to 1: it breaks up hardly more often than the rest, on some crossings.

    A wire of high resistance makes the whole signal restless, more so where the signal is far from the pull's
    level; many crossings make sure of the difference, but not of a bad spot.
    """
    often = int(place.noisy.sum()) / max(int(place.crossed.sum()), 1)
    return share(1.0 - place.contrast / STANDS_OUT) * share(OFTEN - often)


def impossible(studies: Studies) -> frozenset[VerdictCode]:
    """Explanations that a capture cannot show, since it never probed the wire."""
    unwatched = {Role.REFERENCE: VerdictCode.REFERENCE_FAULT, Role.GROUND: VerdictCode.GROUND_FAULT}
    return frozenset(code for role, code in unwatched.items() if role not in studies.feed_measured)


def _wire(studies: Studies, role: Role) -> tuple[float, float]:
    """Level beyond the limit in units of 50 mV, and logarithm of the lasting volt-milliseconds."""
    other = Role.GROUND if role is Role.REFERENCE else Role.REFERENCE
    beyond, dose = -2.0, 0.0
    for item in studies.with_channel(role):
        if item.record.step is Step.UNPLUGGED:
            continue
        beyond = max(beyond, _beyond(item.steady[role], studies, role))
        dose += _dose(item.steady[role], item.steady.get(other), item.cells.cell_s)
    return float(np.clip(beyond, -2.0, 6.0)), min(float(np.log1p(dose)), MOST_DOSE)


def _beyond(steady: Steadiness, studies: Studies, role: Role) -> float:
    low, high = (float(value) for value in np.percentile(thinned(steady.course_v), [5, 95]))
    limit = studies.profile.limit("reference_level" if role is Role.REFERENCE else "ground_drop")
    if limit is None:
        return -2.0
    above = (high - limit.upper) / 0.05 if limit.upper is not None else -2.0
    below = (limit.lower - low) / 0.05 if limit.lower is not None else -2.0
    return max(above, below)


def _dose(steady: Steadiness, other: Steadiness | None, cell_s: float) -> float:
    """Volts times milliseconds of what this wire did alone, one way, for longer than interference lasts.

    A bad contact lifts a ground or drops a feed; interference goes both ways.
    """
    alone = steady.departure_v - (other.departure_v if other is not None else np.float32(0.0))
    marks = (alone > max(steady.threshold_v, 0.04)) & steady.disturbed
    edges = np.flatnonzero(np.diff(marks.astype(np.int8), prepend=0, append=0)).reshape(-1, 2)
    length = edges[:, 1] - edges[:, 0]
    # Between the first and the last sample it lasted; a lone sample has no length.
    kept = edges[((length - 1) * cell_s >= LASTING_S) & (length > 1)]
    if not len(kept):
        return 0.0
    signed = np.where(marks, np.where(steady.above_v >= steady.below_v, alone, -alone), 0.0)
    total = np.concatenate([[0.0], np.cumsum(signed, dtype=np.float64)])
    return abs(float((total[kept[:, 1]] - total[kept[:, 0]]).sum())) * cell_s * 1e3


def told_by_feed(studies: Studies, lifts: float, dips: float) -> float:
    """Share of the signal's disturbances that a bad ground or feed tells, if neither was watched beside it.

    A ground that lifts takes the signal up with it, a reference that dips takes it down; an open wire goes to
    one level.

    Parameters
    ----------
    studies : Studies
    lifts, dips : float
        Logarithms of the volt-milliseconds that ground and reference did in records of their own.

    Returns
    -------
    float
        0 where ground or reference was recorded together with the signal, or nothing speaks for them.
    """
    signals = [item for item in studies.every if Role.SIGNAL in item.surveys]
    if any(role in item.cells.volts for item in signals for role in (Role.GROUND, Role.REFERENCE)):
        return 0.0
    rows = [
        (float(np.sign(event.depth)), substance(event, item, Role.SIGNAL))
        for item in signals
        for event in item.disturbances(Role.SIGNAL)
    ]
    total = sum(weight for _, weight in rows)
    if total <= 0.0:
        return 0.0
    up = sum(weight for sign, weight in rows if sign > 0) / total
    by_ground = share((up - 0.6) / 0.25) * share((lifts - PLAIN_DOSE) / PLAIN_DOSE)
    by_reference = share((1.0 - up - 0.6) / 0.25) * share((dips - PLAIN_DOSE) / PLAIN_DOSE)
    return max(by_ground, by_reference)


def _seconds_out_of_range(studies: Studies) -> float:
    """Seconds that the arm rested beyond the valid range of the track, in records at rest or all."""
    seconds = 0.0
    for item in studies.every:
        survey, track = item.surveys.get(Role.SIGNAL), studies.profile.tracks.get(Role.SIGNAL)
        if survey is None or track is None or item.record.step is Step.UNPLUGGED:
            continue
        low, high = (
            100.0 * value / studies.profile.supply_v for value in (track.valid_v.start, track.valid_v.stop)
        )
        place = survey.motion.travel_percent
        outside = ((place < low) | (place > high)) & survey.motion.truthful
        seconds += float(outside.sum()) * item.cells.cell_s
    return seconds


def _octaves_too_slow(studies: Studies) -> float:
    rates = [1.0 / item.record.sample_interval_s for item in studies.every if item.surveys]
    return float(max(0.0, np.log2(250.0 / max(rates)))) if rates else 0.0


def rest_travel(studies: Studies) -> float | None:
    """Where the arm stood while it was left alone, in % of travel; None where no record shows it."""
    places = [
        float(np.median(item.surveys[Role.SIGNAL].motion.travel_percent))
        for item in studies.every
        if left_alone(item.record)
        and item.record.step not in (Step.HOLD, Step.UNPLUGGED)
        and Role.SIGNAL in item.surveys
    ]
    return float(np.median(places)) if places else None


def _few(studies: Studies) -> float:
    strokes = max((len(item.crossings) for item in studies.tracks.values()), default=0)
    return float(max(0.0, 2.0 - np.log1p(strokes)))


def _narrow(studies: Studies) -> float:
    spans = [
        max(item.travel.stop for item in survey.crossings)
        - min(item.travel.start for item in survey.crossings)
        for survey in studies.tracks.values()
        if survey.crossings
    ]
    return float(np.clip(1.0 - max(spans, default=0.0) / NARROW_PERCENT, 0.0, 1.0))


def _rest_untested(studies: Studies) -> float:
    survey: TrackSurvey | None = studies.tracks.get(Role.SIGNAL)
    rest = rest_travel(studies)
    if survey is None or not survey.crossings:
        return 0.0
    low = min(item.travel.start for item in survey.crossings)
    high = max(item.travel.stop for item in survey.crossings)
    if rest is None:
        rest = 50.0  # a ride-height signal rests mid-travel (common practice, no source)
        low, high = low - 10.0, high + 10.0
    return float(np.clip(max(low - rest, rest - high) / 5.0, 0.0, 3.0))
