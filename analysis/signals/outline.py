"""One record's travel, cut into smooth pieces: what is quiet, and what noise may do."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.signals.cells import CellSeries
from analysis.signals.cutting import FASTEST_PERCENT_PER_S, sinks_to_a_rail
from analysis.signals.held import LEAST_PERCENT, without_held
from analysis.signals.leaps import Leaps, find_leaps
from analysis.signals.noise import UsualLevel, usual_level
from analysis.signals.pieces import Cut
from analysis.signals.smoothing import median_of_five
from analysis.signals.thinning import thinned

MOST_GROWN = 4.0
"""Noise that grows tenfold along the travel, evenly in its logarithm, is three times as strong at the end
as in the middle; what is stronger yet is a bad spot at the end."""

MIDWAY = 0.2
"""A motion stands midway between its neighbours, to this share of their distance."""

PASSED_SHARE = 0.65
"""A motion as fast as the neighbours say passes half of their distance within a cell, give or take."""


@dataclass(frozen=True, slots=True)
class Outline:
    """One record's travel, cut into smooth pieces, before it is decided which of them are true.

    Parameters
    ----------
    cells : CellSeries
        Travel in %, shape (n_cells,).
    cut : Cut
        The pieces.
    quiet : ndarray of bool, shape (n_cells,)
        Cells without a disturbance inside.
    tolerance : ndarray, shape (n_cells,)
        What noise and the recorder's step may add to a move, in %.
    noise : UsualLevel
        Usual noise of a cell along the travel, in %.
    leaps : Leaps or None
        Samples that the recorder lost without a word; None where it seems to have lost none.
    """

    cells: CellSeries
    cut: Cut
    quiet: NDArray[np.bool_]
    tolerance: NDArray[np.float32]
    noise: UsualLevel
    record: str
    start_s: float
    cell_s: float
    step_percent: float
    leaps: Leaps | None = None

    @property
    def course(self) -> NDArray[np.float32] | np.float32:
        """What the recorder's leaps add to the travel so far, in %."""
        return np.float32(0.0) if self.leaps is None else self.leaps.course()

    @property
    def smooth(self) -> NDArray[np.float32]:
        """Mean travel of each cell without the recorder's leaps, in %: so the motion goes on smoothly."""
        return self.cells.mean if self.leaps is None else self.cells.mean - self.leaps.course()


def outline(
    cells: CellSeries,
    *,
    record: str,
    start_s: float,
    cell_s: float,
    step_percent: float,
    most_noise_percent: float = float("inf"),
) -> Outline | None:
    """Cut one record's travel into smooth pieces.

    Parameters
    ----------
    cells : CellSeries
        Travel in %, shape (n_cells,).
    record : str
        Name of the record.
    start_s, cell_s : float
        Time of the first cell's beginning and length of a cell, in seconds.
    step_percent : float
        The recorder's step in % of travel; 0 where unknown.
    most_noise_percent : float
        Noise of a cell can be no more than this, as other records show.

    Returns
    -------
    Outline or None
        None where fewer than four cells hold a sample: nothing can be followed.
    """
    cells = without_held(cells, cell_s)
    if int(np.isfinite(cells.mean).sum()) < 4:
        return None
    noise = _noise(cells.mean, step_percent).no_more_than(most_noise_percent)
    tolerance = np.float32(6.0) * noise.at(_filled(cells.mean)) + np.float32(1.2 * step_percent)
    quiet = _quiet(cells, tolerance, cell_s)
    leaps = find_leaps(cells.mean, quiet, tolerance, cell_s)
    if leaps is not None:
        cells, quiet = cells.blanked(leaps.lost), quiet & ~leaps.lost
    cut = Cut.of(cells.mean, quiet, tolerance, cell_s, None if leaps is None else leaps.gone_so_far())
    return Outline(cells, cut, quiet, tolerance, noise, record, start_s, cell_s, step_percent, leaps)


def _noise(mean: NDArray[np.float32], step_percent: float) -> UsualLevel:
    """Usual noise of a cell along the travel: median absolute second difference, scaled to one sigma.

    The second difference of a straight motion vanishes; of white noise its standard deviation is sqrt(6)
    times that of the noise, and the median absolute value 0.6745 of that.
    """
    bend = thinned(np.abs(mean[2:] - 2.0 * mean[1:-1] + mean[:-2]))
    known = np.isfinite(bend)
    scaled = np.asarray(bend[known] / np.float32(np.sqrt(6.0) * 0.6745), dtype=np.float32)
    least = max(LEAST_PERCENT, step_percent / np.sqrt(12.0) * 0.5)
    return usual_level(thinned(mean[1:-1])[known], scaled, least=least, grown=MOST_GROWN)


def _filled(travel: NDArray[np.float32]) -> NDArray[np.float32]:
    return np.nan_to_num(travel, nan=50.0)


def _quiet(cells: CellSeries, tolerance: NDArray[np.float32], cell_s: float) -> NDArray[np.bool_]:
    """Cells whose samples stay together as noise and motion allow."""
    spread = cells.spread
    known = np.isfinite(spread)
    some, shown = thinned(spread), thinned(known)
    usual = usual_level(thinned(cells.mean)[shown], some[shown], least=LEAST_PERCENT, grown=MOST_GROWN)
    allowed = 2.5 * usual.at(_filled(cells.mean)) + 0.5 * tolerance
    moved = np.float32(FASTEST_PERCENT_PER_S * cell_s)
    together = spread <= allowed + (
        moved if sinks_to_a_rail(cells.mean) else np.maximum(moved, _passed(cells.mean))
    )
    # A cell or two that stand apart from both neighbours are a spike; a steady motion is its own median.
    filled = _filled(cells.mean)
    lone = np.abs(filled - median_of_five(filled)) > tolerance
    return np.asarray(known & together & ~lone)


def _passed(mean: NDArray[np.float32]) -> NDArray[np.float32]:
    """How far a motion as fast as the neighbours say goes within each cell; an edge inside goes further."""
    passed = np.zeros_like(mean)
    apart = np.abs(mean[2:] - mean[:-2])
    midway = np.abs(mean[1:-1] - np.float32(0.5) * (mean[2:] + mean[:-2])) < np.float32(MIDWAY) * apart
    passed[1:-1] = np.where(midway, np.float32(PASSED_SHARE) * apart, np.float32(0.0))
    return np.nan_to_num(passed)
