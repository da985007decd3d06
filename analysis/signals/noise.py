"""How restless a quantity usually is, as a smooth function of the travel.

Recorded position signals are often noisier at one end of the travel than at the other. That is no worn
band: it grows smoothly over the whole travel, where a band has a beginning and an end. So what counts as
usual is a straight line in the logarithm, fitted robustly to the whole travel, which a band of a tenth of
the travel cannot bend.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import theilslopes

BIN_PERCENT = 4.0
"""Width of the stretches of travel over which a median is taken: a fifth of them may be worn."""

LEAST_CELLS = 40
"""Cells that a stretch needs before its median counts."""


@dataclass(frozen=True, slots=True)
class UsualLevel:
    """``exp(log_level + slope * (travel - centre))``, held constant outside the fitted travel.

    Parameters
    ----------
    log_level, slope, centre : float
        Of the natural logarithm over the travel in %.
    low_percent, high_percent : float
        The travel that it was fitted to.
    """

    log_level: float
    slope: float
    centre: float
    low_percent: float
    high_percent: float

    def at(self, travel_percent: ArrayLike) -> NDArray[np.float32]:
        """Usual level at each position, same shape and the unit of the fitted values."""
        inside = np.clip(np.asarray(travel_percent, np.float32), self.low_percent, self.high_percent)
        return np.exp(
            np.float32(self.log_level) + np.float32(self.slope) * (inside - np.float32(self.centre))
        )


def usual_level(
    travel_percent: NDArray[np.float32], values: NDArray[np.float32], *, least: float, quantile: float = 0.5
) -> UsualLevel:
    """Fit the usual level of `values` along the travel.

    Parameters
    ----------
    travel_percent, values : ndarray, shape (n,)
        Position and a non-negative quantity; both finite. May be empty.
    least : float
        Level below which nothing can be told, in the unit of `values`; positive.
    quantile : float
        Of the values in a stretch of travel; the median by default.

    Returns
    -------
    UsualLevel
        Constant where fewer than four stretches of travel were visited. The slope is Theil and Sen's
        (Sen 1968), the median of all pairwise slopes.
    """
    centres, levels = _stretch_quantiles(travel_percent, values, quantile)
    if not len(levels):
        level = float(np.quantile(values, quantile)) if len(values) else least
        return UsualLevel(float(np.log(max(level, least))), 0.0, 50.0, 0.0, 100.0)
    logs = np.log(np.maximum(levels, least))
    slope = float(theilslopes(logs, centres)[0]) if len(levels) >= 4 else 0.0
    centre = float(np.median(centres))
    level = float(np.median(logs - slope * (centres - centre)))
    return UsualLevel(level, slope, centre, float(centres.min()), float(centres.max()))


def _stretch_quantiles(
    travel: NDArray[np.float32], values: NDArray[np.float32], quantile: float
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    stretch = np.floor(travel / BIN_PERCENT).astype(np.int64)
    order = np.argsort(stretch, kind="stable")
    numbers, firsts = np.unique(stretch[order], return_index=True)
    groups = np.split(values[order], firsts[1:])
    kept = [
        ((number + 0.5) * BIN_PERCENT, float(np.quantile(group, quantile)))
        for number, group in zip(numbers, groups, strict=True)
        if len(group) >= LEAST_CELLS
    ]
    centres = np.array([item[0] for item in kept])
    return centres, np.array([item[1] for item in kept])
