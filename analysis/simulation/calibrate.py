"""Fit the calibration and print the figures: ``python -m analysis.simulation.calibrate``.

One part of the corpus fits the weights, another, of other seeds, makes the figures; no single case of the
second is ever looked at. See `analysis.simulation.figures` for the tables.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.special import logsumexp

import analysis
from analysis.captures.model import Role
from analysis.diagnosis.confidence import band_features, on_any_track
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.hypotheses import Features, weigh
from analysis.diagnosis.measurement_check import find_problems
from analysis.diagnosis.places import find_places
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.studies import study
from analysis.intervals import Interval
from analysis.signals.calibration import fit_logistic
from analysis.simulation.corpus import PHYSICS, case
from analysis.simulation.scoring import band_outcomes, family
from analysis.simulation.truth import Truth

FITTED_SEEDS = (101, 102)
"""Seeds that the weights are fitted on; `analysis.simulation.figures` uses others."""

RIDGE = 0.05
"""Penalty of the squared weights of standardised features: keeps separable explanations finite."""

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
    places = on_any_track({role: find_places(survey) for role, survey in studies.tracks.items()})
    features = weigh(studies, find_problems(studies), places)
    bands = tuple(
        (role, place.travel, band_features(place, studies.tracks[role], features)) for role, place in places
    )
    return Example(features, bands, made.truth)


def fit_verdicts(examples: Sequence[Example]) -> tuple[tuple[VerdictCode, ...], NDArray[np.float64]]:
    """Multinomial logistic regression with a ridge, on standardised features.

    Returns
    -------
    verdicts : tuple of VerdictCode
    weights : ndarray, shape (n_verdicts, n_features + 1)
        For features as they are, the intercept last.
    """
    examples = [item for item in examples if item.truth.code is not VerdictCode.MEASUREMENT_PROBLEM]
    matrix = np.array([item.features.vector for item in examples])
    codes = [family(item.truth.code) for item in examples]
    verdicts = tuple(code for code in VerdictCode if code in codes)
    target = np.array([verdicts.index(code) for code in codes])
    middle, spread = matrix.mean(axis=0), np.where(matrix.std(axis=0) > 0, matrix.std(axis=0), 1.0)
    design = np.column_stack([(matrix - middle) / spread, np.ones(len(matrix))])

    def loss(flat: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        weights = flat.reshape(len(verdicts), -1)
        scores = design @ weights.T
        logs = scores - logsumexp(scores, axis=1, keepdims=True)
        penalty = 0.5 * RIDGE * float((weights[:, :-1] ** 2).sum())
        miss = np.exp(logs)
        miss[np.arange(len(target)), target] -= 1.0
        gradient = miss.T @ design
        gradient[:, :-1] += RIDGE * weights[:, :-1]
        return float(-logs[np.arange(len(target)), target].sum()) + penalty, gradient.ravel()

    start = np.zeros(len(verdicts) * design.shape[1])
    solved = minimize(loss, start, jac=True, method="L-BFGS-B", options={"maxiter": 5000})
    standard = solved.x.reshape(len(verdicts), -1)
    weights = standard[:, :-1] / spread
    return verdicts, np.column_stack([weights, standard[:, -1] - weights @ middle])


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
    fit = fit_logistic(np.array(rows), np.array(outcomes), ridge=0.1)
    return np.array([*fit.weights, fit.intercept])


def main() -> None:
    """Fit and write ``calibration.json``."""
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("--count", type=int, default=1200, help="cases of each physics and seed")
    parser.add_argument("--jobs", type=int, default=2)
    chosen = parser.parse_args()
    requests = [
        (seed, i, physics) for seed in FITTED_SEEDS for physics in PHYSICS for i in range(chosen.count)
    ]
    with ProcessPoolExecutor(chosen.jobs) as pool:
        examples = list(pool.map(example, requests, chunksize=16))
    verdicts, weights = fit_verdicts(examples)
    stored = {
        "origin": {
            "command": "python -m analysis.simulation.calibrate",
            "analysis_version": analysis.__version__,
            "seeds": list(FITTED_SEEDS),
            "physics": list(PHYSICS),
            "cases": len(requests),
        },
        "features": list(Features.names()),
        "verdicts": [code.value for code in verdicts],
        "verdict_weights": [[round(float(value), 5) for value in row] for row in weights],
        "measurement_weights": [round(float(value), 5) for value in fit_measurement(examples)],
        "band_weights": [round(float(value), 5) for value in fit_bands(examples)],
    }
    TARGET.write_text(json.dumps(stored, indent=1) + "\n", encoding="utf-8")
    print(f"{TARGET.name}: {len(examples)} captures, {sum(len(item.bands) for item in examples)} places")


if __name__ == "__main__":
    main()
