"""What an arm at rest says of a place: in the bad spot the reading wanders by itself.

A hold in the spot, hands off, is the plainest proof that the track is bad there and not the harness; the
likelihoods of what it showed are added to those of the crossings.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from scipy.special import logsumexp

from analysis.captures.model import Role, Step
from analysis.diagnosis.place_odds import RATE_MIXTURE
from analysis.diagnosis.places import Place, find_places
from analysis.diagnosis.stillness import left_alone
from analysis.diagnosis.strays import substance
from analysis.diagnosis.studies import Studies, Study

BESIDE_PERCENT = 0.5
"""An arm this close to a place rests in it: the rest's own place is known to half a per cent."""

LEAST_SUBSTANCE = 0.2
"""A disturbance of less is next to nothing."""

SHOWING_PER_S = (0.3, 1.0, 3.0, 10.0, 30.0)
"""How often a bad spot may open while the arm rests in it; each as likely as the others..."""

CALM_SHARE = 0.3
"""...or not at all: the wiper may sit well by chance."""

LEAST_RATE_PER_S = 0.02
"""Disturbances come this often at least, wherever the arm is: one a minute."""

ODDS_LIMITS = (-1.0, 4.0)
"""A rest says no more than this: the wiper sits in one spot, and what it says is one thing said once."""


def places_of(studies: Studies) -> list[tuple[Role, Place]]:
    """All places of all tracks, most certain first, with what rests in them add to their odds.

    Parameters
    ----------
    studies : Studies

    Returns
    -------
    list of (Role, Place)
        Empty where nothing breaks up place-locked.
    """
    found = [
        (role, replace(place, log_odds=place.log_odds + rest_odds(place, role, studies.every)))
        for role, survey in studies.tracks.items()
        for place in find_places(survey)
    ]
    return sorted(found, key=lambda item: -item[1].log_odds)


def rest_odds(place: Place, role: Role, studies: Sequence[Study]) -> float:
    """Log likelihood ratio of "bad here" against "bad now and then" by records of an arm that rested there.

    Parameters
    ----------
    place : Place
        On the track `role`.
    role : Role
    studies : sequence of Study
        All records. Those in which the harness was wiggled say nothing of a place.

    Returns
    -------
    float
        0 where no record rests there.
    """
    count, seconds, others, others_s = 0, 0.0, 0, 0.0
    for item in studies:
        if role not in item.surveys or not _rests(item):
            continue
        survey = item.surveys[role]
        at = float(np.median(survey.motion.travel_percent))
        shown = sum(substance(event, item, role) > LEAST_SUBSTANCE for event in item.disturbances(role))
        if place.travel.widened(BESIDE_PERCENT).contains(at):
            count, seconds = count + shown, seconds + item.record.duration_s
        else:
            others, others_s = others + shown, others_s + item.record.duration_s
    if not seconds:
        return 0.0
    usual = max(place.elsewhere_per_s, others / others_s if others_s else 0.0, LEAST_RATE_PER_S)
    anytime = [
        np.log(weight) + _log_poisson(count, times * usual * seconds) for times, weight in RATE_MIXTURE
    ]
    here = [
        np.log((1.0 - CALM_SHARE) / len(SHOWING_PER_S)) + _log_poisson(count, rate * seconds)
        for rate in SHOWING_PER_S
    ]
    here.append(np.log(CALM_SHARE) + _log_poisson(count, usual * seconds))
    return float(np.clip(logsumexp(here) - logsumexp(anytime), *ODDS_LIMITS))


def _rests(item: Study) -> bool:
    still = left_alone(item.record) and item.record.step not in (Step.WIGGLE, Step.UNPLUGGED)
    return still or (item.record.step is None and not item.swept)


def _log_poisson(count: int, expected: float) -> float:
    """Log probability of `count` events, its factorial left out: it stands on both sides."""
    return float(count * np.log(expected) - expected)
