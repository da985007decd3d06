"""How restless a quantity usually is, as a smooth function of the travel.

Recorded position signals are often noisier at one end of the travel than at the other. That is no worn
band: it grows smoothly over the whole travel, where a band has a beginning and an end. So what counts as
usual is a parabola in the logarithm, fitted to the whole travel by least absolute deviations, which a band
of a tenth of the travel cannot bend.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from analysis.signals.thinning import thinned

BIN_PERCENT = 4.0
"""Width of the stretches of travel over which a median is taken: a fifth of them may be worn."""

LEAST_CELLS = 40
"""Cells that a stretch needs before its median counts."""


@dataclass(frozen=True, slots=True)
class UsualLevel:
    """``exp(c0 + c1 u + c2 u^2)`` with ``u = (travel - 50) / 50``, held constant outside the fitted travel.

    Parameters
    ----------
    coefficients : tuple of float
        c0, c1 and c2 of the natural logarithm.
    low_percent, high_percent : float
        The travel that it was fitted to.
    least, most : float
        The lowest and the highest level that was met: the parabola is cut off there.
    """

    coefficients: tuple[float, float, float]
    low_percent: float = 0.0
    high_percent: float = 100.0
    least: float = 0.0
    most: float = float("inf")

    def typical(self) -> float:
        """Median over the fitted travel."""
        return float(np.median(self.at(np.linspace(self.low_percent, self.high_percent, 21))))

    def no_more_than(self, most: float) -> UsualLevel:
        """The same, cut off at `most`."""
        return replace(self, least=min(self.least, most), most=min(self.most, most))

    @property
    def centre(self) -> float:
        """Middle of the fitted travel, in %."""
        return 0.5 * (self.low_percent + self.high_percent)

    def at(self, travel_percent: ArrayLike) -> NDArray[np.float32]:
        """Usual level at each position, same shape and the unit of the fitted values."""
        inside = np.clip(np.asarray(travel_percent, np.float32), self.low_percent, self.high_percent)
        place = (inside - np.float32(50.0)) / np.float32(50.0)
        level, slope, bend = (np.float32(value) for value in self.coefficients)
        fitted = np.exp(level + place * (slope + place * bend))
        return np.asarray(np.clip(fitted, self.least, self.most), dtype=np.float32)


def usual_level(
    travel_percent: NDArray[np.float32],
    values: NDArray[np.float32],
    *,
    least: float,
    quantile: float = 0.5,
    grown: float = float("inf"),
) -> UsualLevel:
    """Fit the usual level of `values` along the travel.

    Parameters
    ----------
    travel_percent, values : ndarray, shape (n,)
        Position and a non-negative quantity; both finite. May be empty; of long ones a part is looked at.
    least : float
        Level below which nothing can be told, in the unit of `values`; positive.
    quantile : float
        Of the values in a stretch of travel; the median by default.
    grown : float
        How many times the middle of all stretches the level may reach.

    Returns
    -------
    UsualLevel
        Constant where fewer than six stretches of travel were visited.
    """
    travel_percent, values = thinned(travel_percent), thinned(values)
    centres, levels = _stretch_quantiles(travel_percent, values, quantile)
    if len(levels) < 6:
        level = float(np.quantile(values, quantile)) if len(values) else least
        return UsualLevel((float(np.log(max(level, least))), 0.0, 0.0))
    logs = np.log(np.maximum(levels, least))
    fitted = _least_absolute_parabola((centres - 50.0) / 50.0, logs)
    span = float(centres.min()), float(centres.max())
    most = min(float(levels.max()), grown * float(np.median(levels)))
    return UsualLevel(fitted, *span, max(float(levels.min()), least), max(most, least))


def _least_absolute_parabola(
    place: NDArray[np.float64], logs: NDArray[np.float64]
) -> tuple[float, float, float]:
    """Coefficients of least absolute deviations, by reweighted least squares (Schlossmacher 1973)."""
    design = np.vander(place, 3, increasing=True)
    weight = np.ones(len(logs))
    fitted = np.zeros(3)
    for _ in range(12):
        root = np.sqrt(weight)
        fitted[:] = np.linalg.lstsq(design * root[:, None], logs * root, rcond=None)[0]
        weight = 1.0 / np.maximum(np.abs(logs - design @ fitted), 0.02)
    return float(fitted[0]), float(fitted[1]), float(fitted[2])


def _stretch_quantiles(
    travel: NDArray[np.float32], values: NDArray[np.float32], quantile: float
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    stretch = np.floor(travel / BIN_PERCENT).astype(np.int64)
    order = np.argsort(stretch, kind="stable")
    numbers, firsts = np.unique(stretch[order], return_index=True)
    groups = np.split(values[order], firsts[1:]) if len(firsts) else []
    kept = [
        ((number + 0.5) * BIN_PERCENT, float(np.quantile(group, quantile)))
        for number, group in zip(numbers, groups, strict=True)
        if len(group) >= LEAST_CELLS
    ]
    centres = np.array([item[0] for item in kept])
    return centres, np.array([item[1] for item in kept])
