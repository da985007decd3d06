"""Fit the calibration and print the figures: ``python -m analysis.simulation.calibrate``.

One part of the corpus fits the weights, another, of other seeds, makes the figures; no single case of the
second is ever looked at. See `analysis.simulation.figures` for the tables.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.special import logsumexp

import analysis
from analysis.captures.model import Role
from analysis.diagnosis.confidence import band_features
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.hypotheses import Features, weigh
from analysis.diagnosis.measurement_check import find_problems
from analysis.diagnosis.places import Place
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.rests import places_of
from analysis.diagnosis.studies import Studies, study
from analysis.intervals import Interval
from analysis.signals.calibration import fit_logistic
from analysis.simulation.corpus import PHYSICS, case
from analysis.simulation.scoring import band_outcomes, family
from analysis.simulation.truth import Truth

FITTED_SEEDS = (101, 102, 103)
"""Seeds that the weights are fitted on; `analysis.simulation.figures` uses others."""

RIDGE = 1.0
"""Penalty of the squared weights of standardised features: keeps separable explanations finite."""

LEAST_SPREAD = 0.25
"""A feature that hardly varies among the examples has taught nothing: it may not weigh without bound."""

TARGET = Path(__file__).parents[1] / "diagnosis" / "calibration.json"


@dataclass(frozen=True, slots=True)
class Example:
    """One simulated capture as the models see it.

    Parameters
    ----------
    features : Features
        Of the capture.
    bands : tuple of (Role, Interval, ndarray)
        Track, travel and band features of each place.
    truth : Truth
    """

    features: Features
    bands: tuple[tuple[Role, Interval, NDArray[np.float64]], ...]
    truth: Truth


def example(request: tuple[int, int, str]) -> Example:
    """Simulate and study one case; `request` is (seed, index, physics)."""
    made = case(*request)
    studies = study(made.capture, load_profile(made.capture.text("profile") or None))
    places = places_of(studies)
    features = weigh(studies, find_problems(studies), places)
    bands = tuple(
        (role, place.travel, _features_of(role, place, places, studies, features)) for role, place in places
    )
    return Example(features, bands, made.truth)


SUPPORTS: Mapping[VerdictCode, str] = {
    VerdictCode.WORN_TRACK: "+place +place_beyond +place_share +place_noisy -vague +gathered "
    "-elsewhere -at_rest -reference_level -ground_level -reference_dips -ground_lifts",
    VerdictCode.SIGNAL_WIRING: "+elsewhere +elsewhere_deep +at_rest "
    "-place -place_beyond -place_share +vague -gathered",
    VerdictCode.REFERENCE_FAULT: "+reference_level +reference_dips -ground_lifts",
    VerdictCode.GROUND_FAULT: "+ground_level +ground_lifts -reference_dips",
    VerdictCode.OUT_OF_RANGE: "+out_of_range -elsewhere -place",
    VerdictCode.INCONCLUSIVE: "+slow +few +rest_untested +narrow +unexplained_once +elsewhere_deep",
    VerdictCode.NO_FAULT_FOUND: "",
}
"""What speaks for (+) and against (-) each explanation; nothing else has a weight."""

BAND_SIGNS = (1, 1, 1, 1, -1, 1, 1, 0, -1, -1, -1, -1, 1, -1, -1, -1)
"""Signs of the band features, in the order of `band_features`; 0 leaves a sign free."""


def _features_of(
    role: Role, place: Place, places: Sequence[tuple[Role, Place]], studies: Studies, features: Features
) -> NDArray[np.float64]:
    others = [other for track, other in places if track is role]
    return band_features(place, studies.tracks[role], features, others=others)


def fit_verdicts(examples: Sequence[Example]) -> tuple[tuple[VerdictCode, ...], NDArray[np.float64]]:
    """Multinomial logistic regression with a ridge, each weight of the sign that physics gives it.

    Returns
    -------
    verdicts : tuple of VerdictCode
    weights : ndarray, shape (n_verdicts, n_features + 1)
        For features as they are, the intercept last.
    """
    examples = [item for item in examples if item.truth.code is not VerdictCode.MEASUREMENT_PROBLEM]
    matrix = np.array([item.features.vector for item in examples])
    codes = [family(item.truth.code) for item in examples]
    verdicts = tuple(SUPPORTS)
    target = np.array([verdicts.index(code) for code in codes])
    bounds: list[tuple[float | None, float | None]] = []
    for code in verdicts:
        bounds += [_bound(name, SUPPORTS[code].split()) for name in Features.names()]
        bounds.append((None, None))
    return verdicts, _softmax_fit(matrix, target, bounds)


def _bound(name: str, signs: Sequence[str]) -> tuple[float | None, float | None]:
    if f"+{name}" in signs:
        return 0.0, None
    return (None, 0.0) if f"-{name}" in signs else (0.0, 0.0)


def _softmax_fit(
    matrix: NDArray[np.float64],
    target: NDArray[np.int64],
    bounds: Sequence[tuple[float | None, float | None]],
) -> NDArray[np.float64]:
    """Weights of shape (n_classes, n_features + 1), within bounds given class by class, intercept last."""
    spread = np.maximum(matrix.std(axis=0), LEAST_SPREAD)
    design = np.column_stack([matrix / spread, np.ones(len(matrix))])
    classes = len(bounds) // design.shape[1]

    def loss(flat: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        weights = flat.reshape(classes, -1)
        scores = design @ weights.T
        logs = scores - logsumexp(scores, axis=1, keepdims=True)
        penalty = 0.5 * RIDGE * float((weights[:, :-1] ** 2).sum())
        miss = np.exp(logs)
        miss[np.arange(len(target)), target] -= 1.0
        gradient = miss.T @ design
        gradient[:, :-1] += RIDGE * weights[:, :-1]
        return float(-logs[np.arange(len(target)), target].sum()) + penalty, gradient.ravel()

    solved = minimize(
        loss, np.zeros(len(bounds)), jac=True, method="L-BFGS-B", bounds=bounds, options={"maxiter": 5000}
    )
    standard = solved.x.reshape(classes, -1)
    return np.asarray(np.column_stack([standard[:, :-1] / spread, standard[:, -1]]))


def fit_measurement(examples: Sequence[Example]) -> NDArray[np.float64]:
    """Logistic regression of "no measurement" on the plainest problem, shape (2,), the intercept last."""
    strengths = np.array([item.features.measurement for item in examples])
    outcomes = np.array([item.truth.code is VerdictCode.MEASUREMENT_PROBLEM for item in examples])
    fit = fit_logistic(strengths, outcomes, ridge=0.01)
    return np.array([*fit.weights, fit.intercept])


def fit_bands(examples: Sequence[Example]) -> NDArray[np.float64]:
    """Logistic regression of "there is a band here", shape (n_band_features + 1,), the intercept last."""
    rows, outcomes = [], []
    for item in examples:
        true_bands = band_outcomes([(role, travel) for role, travel, _ in item.bands], item.truth)
        for (_, _, features), outcome in zip(item.bands, true_bands, strict=True):
            if outcome is not None:
                rows.append(features)
                outcomes.append(outcome)
    signs = {1: (0.0, None), -1: (None, 0.0), 0: (None, None)}
    own: list[tuple[float | None, float | None]] = [*(signs[sign] for sign in BAND_SIGNS), (None, None)]
    fixed: list[tuple[float | None, float | None]] = [(0.0, 0.0)] * len(own)
    weights = _softmax_fit(np.array(rows), np.array(outcomes, dtype=np.int64), [*fixed, *own])
    return np.asarray(weights[1])


def main() -> None:
    """Fit and write ``calibration.json``."""
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("--count", type=int, default=400, help="cases of each physics and seed")
    parser.add_argument("--jobs", type=int, default=2)
    chosen = parser.parse_args()
    requests = [
        (seed, i, physics) for seed in FITTED_SEEDS for physics in PHYSICS for i in range(chosen.count)
    ]
    with ProcessPoolExecutor(chosen.jobs) as pool:
        examples = list(pool.map(example, requests, chunksize=16))
    store(examples)
    print(f"{TARGET.name}: {len(examples)} captures, {sum(len(item.bands) for item in examples)} places")


def store(examples: Sequence[Example]) -> None:
    """Fit all weights and write ``calibration.json``."""
    verdicts, weights = fit_verdicts(examples)
    stored = {
        "origin": {
            "command": f"python -m analysis.simulation.calibrate --count {_count(examples)}",
            "analysis_version": analysis.__version__,
            "seeds": list(FITTED_SEEDS),
            "physics": list(PHYSICS),
            "cases": len(examples),
        },
        "features": list(Features.names()),
        "verdicts": [code.value for code in verdicts],
        "verdict_weights": [[round(float(value), 5) for value in row] for row in weights],
        "measurement_weights": [round(float(value), 5) for value in fit_measurement(examples)],
        "band_weights": [round(float(value), 5) for value in fit_bands(examples)],
    }
    TARGET.write_text(json.dumps(stored, indent=1) + "\n", encoding="utf-8")


def _count(examples: Sequence[Example]) -> int:
    return len(examples) // (len(FITTED_SEEDS) * len(PHYSICS))


if __name__ == "__main__":
    main()
