"""Whether a wire that should be steady is: how ground, reference and supply leave their own course."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import median_filter

from analysis.signals.cells import CellSeries
from analysis.signals.smoothing import middle_of_five
from analysis.signals.thinning import thinned

COURSE_BLOCK_S = 0.05
"""The slow course is a running median over `COURSE_BLOCKS` medians of blocks of this length: a dip shorter
than half a second stands out from it, the sag of a battery does not."""

COURSE_BLOCKS = 21

MOST_V = 0.2
"""Departures beyond this are disturbances however often they come: a contact may chatter all the time."""

LEAST_V = 0.005
"""Departures below 5 mV, a thousandth of the feed, matter to no reading (output smoothness limit of a new
track, 0.1 % of the applied voltage: Bourns, "Output Smoothness")."""

LEAST_CAP_V = 0.02
"""Beyond a step of the recorder and this, the calmer part of a record decides what is a disturbance."""


@dataclass(frozen=True, slots=True)
class SlowCourse:
    """The slow course of a channel, straight lines between the middles of blocks.

    Parameters
    ----------
    blocks_v : ndarray, shape (n_blocks,)
        At the middle of each block, in volts; at least one.
    block : int
        Cells a block.
    cells : int
        Cells of the record.
    """

    blocks_v: NDArray[np.float32]
    block: int
    cells: int

    @property
    def volts(self) -> NDArray[np.float32]:
        """The course at each cell, shape (n_cells,); level before the first middle and after the last."""
        blocks_v, first = self.blocks_v.astype(np.float64), -(-self.block // 2)
        slope = np.diff(blocks_v) / self.block
        along = np.arange(first, first + self.block) - 0.5 * self.block
        between = along[:, None] * slope  # the short axis first: half the time
        between += blocks_v[:-1]
        course = np.empty(self.cells, np.float32)
        last = first + between.size
        course[:first], course[last:] = blocks_v[0], blocks_v[-1]
        course[first:last].reshape(-1, self.block)[:] = between.T
        return course


@dataclass(frozen=True, slots=True)
class Steadiness:
    """Departure of one channel from its own slow course.

    Parameters
    ----------
    course : SlowCourse
        Kept by blocks, a hundredth of the room.
    above_v, below_v : ndarray, shape (n_cells,)
        How far each cell reaches above and below it, in volts; 0 where the cell is missing.
    threshold_v : float
        Departures beyond this are disturbances, not noise.
    noise_v : float
        Half the usual spread of a cell about its course.
    """

    course: SlowCourse
    above_v: NDArray[np.float32]
    below_v: NDArray[np.float32]
    threshold_v: float
    noise_v: float

    @property
    def course_v(self) -> NDArray[np.float32]:
        """The slow course in volts, shape (n_cells,)."""
        return self.course.volts

    @property
    def departure_v(self) -> NDArray[np.float32]:
        """The larger of `above_v` and `below_v`, shape (n_cells,)."""
        return np.maximum(self.above_v, self.below_v)

    @property
    def disturbed(self) -> NDArray[np.bool_]:
        """Cells beyond the threshold, shape (n_cells,)."""
        return self.departure_v > self.threshold_v


def steadiness(cells: CellSeries, *, cell_s: float, step_v: float) -> Steadiness:
    """Measure how steady a channel is.

    Parameters
    ----------
    cells : CellSeries
        Volts, shape (n_cells,), at least one cell.
    cell_s : float
        Length of a cell in seconds.
    step_v : float
        The recorder's step in volts; 0 where unknown.

    Returns
    -------
    Steadiness
    """
    slow = _slow_course(cells.mean, max(1, round(COURSE_BLOCK_S / cell_s)))
    course = slow.volts
    above = np.nan_to_num(np.maximum(cells.maximum - course, np.float32(0.0)))
    below = np.nan_to_num(np.maximum(course - cells.minimum, np.float32(0.0)))
    worst = np.maximum(above, below)
    threshold, usual = extreme_level(worst)
    # A wire that is disturbed for a fifth of the time or more bends the upper quantile, hardly the lower two.
    lower, _ = extreme_level(worst, quantiles=(0.3, 0.6))
    threshold = min(threshold, max(2.0 * lower, step_v + LEAST_CAP_V))
    threshold = min(max(threshold + 0.6 * step_v, LEAST_V), MOST_V + step_v)
    return Steadiness(slow, above, below, threshold, usual)


def extreme_level(
    departures: NDArray[np.float32],
    *,
    quantiles: tuple[float, float] = (0.5, 0.9),
    among: int | None = None,
) -> tuple[float, float]:
    """Level that noise alone would exceed in one of ten such records, and the median.

    Extrapolated from two quantiles, which disturbances of a smaller share of the record hardly move, as the
    tail of a normal distribution: the quantile of exceedance p is taken as ``a + b * sqrt(2 ln(1/p))``.

    Parameters
    ----------
    departures : ndarray, shape (n,)
        Non-negative, finite; may be empty.
    quantiles : pair of float
        The two to extrapolate from, ascending.
    among : int or None
        Length of the series of which `departures` is a part; None where it is all of it.

    Returns
    -------
    tuple of float
        In the unit of `departures`; (0.0, 0.0) for none.
    """
    if not len(departures):
        return 0.0, 0.0
    low, high = quantiles
    shown = np.quantile(thinned(departures), [0.5, low, high])
    middle, at_low, at_high = (float(value) for value in shown)
    reach_low, reach_high = np.sqrt(-2.0 * np.log([1.0 - low, 1.0 - high]))
    reach = np.sqrt(2.0 * np.log(10.0 * (among or len(departures))))
    growth = (at_high - at_low) / (reach_high - reach_low)
    return float(at_high + growth * max(reach - reach_high, 0.0)), middle


def _slow_course(mean: NDArray[np.float32], block: int) -> SlowCourse:
    known = np.isfinite(mean)
    if not known.any():
        return SlowCourse(np.zeros(1, np.float32), block, len(mean))
    filled = mean if known.all() else _bridge(mean, known)
    whole = len(filled) // block
    if whole < 3:
        return SlowCourse(np.full(1, np.median(filled), np.float32), block, len(mean))
    blocks, middle = filled[: whole * block].reshape(whole, block), block // 2
    odd = block % 2 == 1  # half the time: the median of an even number is a mean of two
    if block == 5:
        medians = middle_of_five(*blocks.T)
    else:
        medians = np.partition(blocks, middle, axis=1)[:, middle] if odd else np.median(blocks, axis=1)
    smooth = median_filter(medians, size=min(COURSE_BLOCKS, whole), mode="nearest")
    return SlowCourse(smooth, block, len(mean))


def _bridge(mean: NDArray[np.float32], known: NDArray[np.bool_]) -> NDArray[np.float32]:
    every = np.arange(len(mean))
    return np.interp(every, every[known], mean[known]).astype(np.float32)
