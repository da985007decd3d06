"""How well stated probabilities hold, and the logistic fit that makes them hold."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.optimize import minimize
from scipy.special import expit


@dataclass(frozen=True, slots=True)
class ReliabilityRow:
    """One line of a reliability table.

    Parameters
    ----------
    lower, upper : float
        Stated probabilities of this line; the lower end belongs to it, in the last line both do.
    count : int
        Cases.
    mean_stated, share_true : float
        What was said on average, and how often it was so; NaN for no case.
    """

    lower: float
    upper: float
    count: int
    mean_stated: float
    share_true: float


def brier_score(stated: ArrayLike, truth: ArrayLike) -> float:
    """Mean squared difference of stated probability and outcome (Brier, Mon. Weather Rev. 78 (1950) 1-3).

    Parameters
    ----------
    stated : array_like, shape (n,)
        Probabilities.
    truth : array_like of bool, shape (n,)
        Outcomes.

    Returns
    -------
    float
        0 to 1, lower is better; NaN for no case.

    Raises
    ------
    ValueError
        Where the shapes differ.
    """
    probability, outcome = _cases(stated, truth)
    return float(np.mean((probability - outcome) ** 2)) if probability.size else float("nan")


def reliability_table(stated: ArrayLike, truth: ArrayLike, *, bins: int = 10) -> tuple[ReliabilityRow, ...]:
    """Stated probabilities against what came true, in `bins` lines of equal width.

    Parameters as in `brier_score`; empty lines are kept, so that the table always has the same shape.
    """
    probability, outcome = _cases(stated, truth)
    place = np.minimum((probability * bins).astype(np.intp), bins - 1)
    rows = []
    for index in range(bins):
        inside = place == index
        count = int(inside.sum())
        said = float(probability[inside].mean()) if count else float("nan")
        true = float(outcome[inside].mean()) if count else float("nan")
        rows.append(ReliabilityRow(index / bins, (index + 1) / bins, count, said, true))
    return tuple(rows)


def expected_calibration_error(stated: ArrayLike, truth: ArrayLike, *, bins: int = 10) -> float:
    """Gap between stated and true share, averaged over the cases of the reliability table; NaN for no case.

    Naeini, Cooper & Hauskrecht, Obtaining well calibrated probabilities using Bayesian binning, AAAI 2015.
    """
    rows = [row for row in reliability_table(stated, truth, bins=bins) if row.count]
    total = sum(row.count for row in rows)
    if total == 0:
        return float("nan")
    return sum(row.count * abs(row.mean_stated - row.share_true) for row in rows) / total


def average_precision(scores: ArrayLike, truth: ArrayLike, *, positives: int | None = None) -> float:
    """Area under precision over recall, as steps: ``sum (R_n - R_{n-1}) P_n``; equal scores count at once.

    Parameters
    ----------
    scores : array_like, shape (n,)
        Higher is surer.
    truth : array_like of bool, shape (n,)
        Whether what was found is there.
    positives : int or None
        How many there are, those that were not found included; None for those in `truth`.

    Returns
    -------
    float
        0 to 1; NaN where there is nothing to find.

    Raises
    ------
    ValueError
        Where the shapes differ or more was found than there is.
    """
    score, outcome = _cases(scores, truth)
    total = int(outcome.sum()) if positives is None else positives
    if total < outcome.sum():
        raise ValueError(f"positives must not be fewer than were found, got {total} and {int(outcome.sum())}")
    if total == 0:
        return float("nan")
    order = np.argsort(-score, kind="stable")
    found = np.cumsum(outcome[order])
    last_of_ties = np.append(np.diff(score[order]) != 0, True) if score.size else np.zeros(0, dtype=np.bool_)
    hits, listed = found[last_of_ties], np.flatnonzero(last_of_ties) + 1
    return float(np.sum(np.diff(hits, prepend=0.0) / total * hits / listed))


@dataclass(frozen=True, slots=True)
class LogisticFit:
    """A logistic curve: probability = 1 / (1 + exp(-(intercept + weights . features)))."""

    weights: tuple[float, ...]
    intercept: float

    def probability(self, features: ArrayLike) -> NDArray[np.float64]:
        """Probabilities, shape (n,), of features of shape (n, m); shape (n,) stands for one feature."""
        matrix = _columns(features)
        return np.asarray(expit(matrix @ np.array(self.weights) + self.intercept))


def fit_logistic(
    features: ArrayLike, truth: ArrayLike, *, ridge: float = 0.0, smoothed_targets: bool = False
) -> LogisticFit:
    """Fit a logistic curve by maximum likelihood.

    Parameters
    ----------
    features : array_like, shape (n,) or (n, m)
        One column a feature; a log score rather than a probability.
    truth : array_like of bool, shape (n,)
        Outcomes.
    ridge : float
        Penalty ``ridge / 2 * sum weights**2``; a separable set needs one, or `smoothed_targets`.
    smoothed_targets : bool
        Aim at ``(N+ + 1) / (N+ + 2)`` and ``1 / (N- + 2)`` in place of 1 and 0.

    Returns
    -------
    LogisticFit

    Raises
    ------
    ValueError
        Where the shapes differ, or only one outcome occurs.

    Notes
    -----
    Platt, Probabilistic outputs for support vector machines, 1999, whose targets `smoothed_targets` takes.
    """
    matrix = _columns(features)
    outcome = np.asarray(truth, dtype=np.float64)
    if outcome.shape != (matrix.shape[0],):
        raise ValueError(f"truth must have shape {(matrix.shape[0],)}, got {outcome.shape}")
    positives, negatives = float(outcome.sum()), float((1.0 - outcome).sum())
    if min(positives, negatives) == 0.0:
        raise ValueError(f"truth must hold both outcomes, got {positives:.0f} true and {negatives:.0f} false")
    if smoothed_targets:
        outcome = np.where(outcome > 0.5, (positives + 1) / (positives + 2), 1 / (negatives + 2))
    middle, spread = matrix.mean(axis=0), matrix.std(axis=0)
    scale = np.where(spread > 0.0, spread, 1.0)
    solved = minimize(
        _logistic_loss,
        np.zeros(matrix.shape[1] + 1),
        args=((matrix - middle) / scale, outcome, ridge / scale**2),
        jac=True,
        method="BFGS",
        options={"gtol": 1e-9 * outcome.size},
    )
    weights = solved.x[:-1] / scale
    return LogisticFit(tuple(float(item) for item in weights), float(solved.x[-1] - weights @ middle))


def _logistic_loss(
    guess: NDArray[np.float64],
    matrix: NDArray[np.float64],
    target: NDArray[np.float64],
    ridge: NDArray[np.float64],
) -> tuple[float, NDArray[np.float64]]:
    """Negative log likelihood with its gradient; the intercept comes last and is not penalised."""
    score = matrix @ guess[:-1] + guess[-1]
    loss = float(np.sum(np.logaddexp(0.0, score) - target * score) + 0.5 * np.sum(ridge * guess[:-1] ** 2))
    residual = expit(score) - target
    gradient = np.append(matrix.T @ residual + ridge * guess[:-1], residual.sum())
    return loss, gradient


def _columns(features: ArrayLike) -> NDArray[np.float64]:
    """Features as shape (n, m)."""
    matrix = np.asarray(features, dtype=np.float64)
    return matrix[:, None] if matrix.ndim == 1 else matrix


def _cases(stated: ArrayLike, truth: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Both as float64, of one shape."""
    first = np.asarray(stated, dtype=np.float64)
    second = np.asarray(truth, dtype=np.float64)
    if first.shape != second.shape or first.ndim != 1:
        raise ValueError(f"both must have one shape (n,), got {first.shape} and {second.shape}")
    return first, second
