"""The calibration: no weight without bound, whatever the examples happened to hold."""

from __future__ import annotations

import numpy as np

from analysis.diagnosis.confidence import calibration
from analysis.diagnosis.hypotheses import Features
from analysis.simulation.calibrate import _softmax_fit

MOST_WEIGHT = 20.0
"""A unit of a feature that multiplies the odds by more than e to the twentieth is no evidence but a rule."""


def test_no_stored_weight_is_without_bound() -> None:
    stored = calibration()
    assert stored.verdict_weights.shape == (len(stored.verdicts), len(Features.names()) + 1)
    assert np.abs(stored.verdict_weights).max() < MOST_WEIGHT


def test_a_feature_that_one_example_hardly_shows_is_not_learnt_by_heart() -> None:
    rng = np.random.default_rng(4)
    matrix = np.column_stack([rng.normal(size=400), np.zeros(400)])
    target = (matrix[:, 0] + 0.5 * rng.normal(size=400) > 0.0).astype(np.int64)
    odd = int(np.flatnonzero(target == 1)[0])
    matrix[odd, 1] = 0.001
    free: list[tuple[float | None, float | None]] = [(None, None)] * 3
    weights = _softmax_fit(matrix, target, [(0.0, 0.0), (0.0, 0.0), (None, None), *free])
    assert np.abs(weights[:, :-1]).max() < MOST_WEIGHT
    assert weights[1, 0] > 1.0
