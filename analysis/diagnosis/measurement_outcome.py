"""What every test of the measurement says, and what they read alike."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.diagnosis.studies import Study
from analysis.signals.cells import CellSeries
from analysis.signals.thinning import thinned

Outcome = tuple[float, str, str]
"""Strength from 0 to 1, what is wrong, and what to do about it."""

NOTHING: Outcome = (0.0, "", "")


def signal_v(item: Study) -> NDArray[np.float32] | None:
    """Mean signal of each cell that holds one; None where there is none."""
    series = item.cells.volts.get(Role.SIGNAL)
    if series is None:
        return None
    known = known_v(series)
    return known if len(known) else None


def known_v(series: CellSeries) -> NDArray[np.float32]:
    """Means of cells that hold a sample; a fair part of a long series."""
    mean = thinned(series.mean)
    return mean[np.isfinite(mean)]


def ramp(value: float, low: float, high: float) -> float:
    """0 at `low`, 1 at `high`, straight in between."""
    return float(np.clip((value - low) / (high - low), 0.0, 1.0))
