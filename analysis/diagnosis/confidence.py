"""From features to probabilities that mean what they say.

The weights stand in ``calibration.json``, written by ``python -m analysis.simulation.calibrate`` from
simulated captures; the reliability of the result is reported on other captures than those.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Protocol

import numpy as np
from numpy.typing import NDArray
from scipy.special import expit, softmax

from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.hypotheses import MOST_ODDS, Features
from analysis.diagnosis.places import Place
from analysis.intervals import Interval
from analysis.signals.facts import TrackSurvey

ASTRAY_PERCENT = 8.0
"""How far from a bad spot the path may be led astray by what the open contact shows."""

TEMPERED = 0.995
"""No finding is surer than this: what the model leaves out happens more often than once in two hundred."""


class Circumstances(Protocol):
    """What is asked of the whole capture where one band is judged: `Features`, or a `BandBasis`."""

    @property
    def measurement(self) -> float:
        """Strength of the plainest measurement problem."""

    @property
    def reference_dips(self) -> float:
        """Weight of the disturbances that the reference has alone."""

    @property
    def ground_lifts(self) -> float:
        """Weight of the disturbances that the ground has alone."""

    @property
    def reference_level(self) -> float:
        """How far the reference lies beyond its limit; negative where it keeps it."""

    @property
    def at_rest(self) -> float:
        """Weight of the disturbances outside all places while the arm was left alone."""

    @property
    def gathered(self) -> float:
        """Share of the weight of all disturbances that lies in places."""

    @property
    def slow(self) -> float:
        """How far the sampling rate lies below what shows a break-up, in octaves."""


class Spot(Protocol):
    """Another place of the track: a `Place`, or a `FoundSpot`."""

    @property
    def travel(self) -> Interval:
        """Edges in % of travel."""

    @property
    def log_odds(self) -> float:
        """Of place against time."""


@dataclass(frozen=True, slots=True)
class Calibration:
    """Weights of the two logistic models.

    Parameters
    ----------
    origin : mapping of str to object
        Corpus, seeds and version that they were fitted on.
    verdicts : tuple of VerdictCode
        Explanations that are weighed; `WORN_TRACK` stands for any place-locked fault of the sensor.
    verdict_weights : ndarray, shape (n_verdicts, n_features + 1)
        Weight of each feature and, last, the intercept.
    measurement_weights : ndarray, shape (2,)
        Weight of the plainest measurement problem, and the intercept.
    band_weights : ndarray, shape (n_band_features + 1,)
        The same for "there is a band here".
    """

    origin: Mapping[str, object]
    verdicts: tuple[VerdictCode, ...]
    verdict_weights: NDArray[np.float64]
    measurement_weights: NDArray[np.float64]
    band_weights: NDArray[np.float64]


@cache
def calibration() -> Calibration:
    """The calibration that ships with this version."""
    text = resources.files("analysis.diagnosis").joinpath("calibration.json").read_text("utf-8")
    stored = json.loads(text)
    if tuple(stored["features"]) != Features.names():
        raise RuntimeError("calibration.json was fitted on other features; run analysis.simulation.calibrate")
    return Calibration(
        origin=stored["origin"],
        verdicts=tuple(VerdictCode(code) for code in stored["verdicts"]),
        verdict_weights=np.array(stored["verdict_weights"], dtype=np.float64),
        measurement_weights=np.array(stored["measurement_weights"], dtype=np.float64),
        band_weights=np.array(stored["band_weights"], dtype=np.float64),
    )


def verdict_probabilities(
    features: Features, weights: Calibration, *, impossible: frozenset[VerdictCode] = frozenset()
) -> dict[VerdictCode, float]:
    """Probability of each explanation.

    A measurement problem comes first, since it outranks every fault of the vehicle: what a probe in the air
    shows is evidence of nothing else. The others share what is left.

    Parameters
    ----------
    features : Features
    weights : Calibration
    impossible : frozenset of VerdictCode
        Explanations that this capture cannot show, since the wire was never probed.

    Returns
    -------
    dict of VerdictCode to float
        Adds up to 1.
    """
    unmeasured = float(expit(weights.measurement_weights @ np.array([features.measurement, 1.0])))
    scores = weights.verdict_weights @ np.append(features.vector, 1.0)
    scores = np.where([code in impossible for code in weights.verdicts], -np.inf, scores)
    shares = softmax(scores) * (1.0 - unmeasured)
    every = dict(zip(weights.verdicts, shares.tolist(), strict=True))
    every[VerdictCode.MEASUREMENT_PROBLEM] = unmeasured
    return {code: TEMPERED * share + (1.0 - TEMPERED) / len(every) for code, share in every.items()}


def band_features(
    place: Place, survey: TrackSurvey, features: Circumstances, *, others: Sequence[Spot] = ()
) -> NDArray[np.float64]:
    """What speaks for and against one band, shape (n_band_features,).

    Parameters
    ----------
    place : Place
    survey : TrackSurvey
        Of the track that it lies on.
    others : sequence of Spot
        All places of that track: beside a surer one the path may have been led astray.
    features : Circumstances
        Of the whole capture: on a capture that was not measured properly there is no band.
    """
    noisy, crossed = int(place.noisy.sum()), max(int(place.crossed.sum()), 1)
    return np.array(
        [
            float(np.clip(place.log_odds, -4.0, MOST_ODDS)),
            float(np.clip((place.log_odds - MOST_ODDS) / 20.0, 0.0, 2.0)),
            noisy / crossed,
            float(np.log1p(noisy)),
            float(np.log1p(place.elsewhere_per_s)),
            place.contrast,
            _depth(place, survey),
            float(np.log(place.travel.length)),
            features.measurement,
            max(features.reference_dips, features.ground_lifts),
            max(features.reference_level, 0.0),
            # A harness that opens while the arm rests may also be stretched at one place of the travel.
            features.at_rest,
            features.gathered,
            features.slow,
            float(place.travel.start < 1.0 or place.travel.stop > 99.0),
            float(any(_beside(place, other) for other in others)),
        ]
    )


def _beside(place: Place, other: Spot) -> bool:
    apart = max(other.travel.start - place.travel.stop, place.travel.start - other.travel.stop)
    return other.log_odds > place.log_odds and apart < ASTRAY_PERCENT


def band_confidence(
    place: Place,
    survey: TrackSurvey,
    features: Circumstances,
    weights: Calibration,
    *,
    others: Sequence[Spot] = (),
) -> float:
    """Probability that the band is there."""
    score = weights.band_weights @ np.append(band_features(place, survey, features, others=others), 1.0)
    return float(TEMPERED * expit(score) + 0.5 * (1.0 - TEMPERED))


def _depth(place: Place, survey: TrackSurvey) -> float:
    """Logarithm of the median excess of the noisy crossings over the floor, 0 to 4."""
    inside = (survey.edges_percent[:-1] >= place.travel.start) & (
        survey.edges_percent[:-1] < place.travel.stop
    )
    rows = np.nan_to_num(survey.breakup_percent[place.noisy][:, inside])
    if rows.size == 0 or survey.floor_percent <= 0.0:
        return 0.0
    return float(np.clip(np.log1p(np.median(rows.max(axis=1)) / survey.floor_percent), 0.0, 4.0))
