"""The one place where drawing asks a channel for its extremes, column by column."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel
from analysis.captures.overview import envelope


@dataclass(frozen=True, slots=True)
class Columns:
    """Extremes of consecutive stretches of samples.

    Parameters
    ----------
    index : ndarray, shape (n,)
        Sample index of the middle of each column.
    low_v, high_v : ndarray, shape (n,)
        Extremes in volts; NaN where a column holds no valid sample. Equal where each column is one sample.
    single : bool
        Whether every column is exactly one sample, with room between them, so that a line may join them.
    """

    index: NDArray[np.float64]
    low_v: NDArray[np.float64]
    high_v: NDArray[np.float64]
    single: bool


def columns(channel: Channel, start: int, stop: int, count: int) -> Columns:
    """At most `count` columns of the samples ``[start, stop)``, clipped to the channel.

    The empty stretch gives empty columns. Raises `CaptureError` where the file is damaged or gone.
    """
    start, stop = max(start, 0), min(stop, len(channel))
    size = max(stop - start, 0)
    if size <= count // 2:
        voltage_v = channel.volts(start, start + size)
        return Columns(np.arange(start, start + size, dtype=np.float64), voltage_v, voltage_v, True)
    drawn = envelope(channel, start, stop, count)
    return Columns(_middles(start, stop, drawn.minimum_v.size), drawn.minimum_v, drawn.maximum_v, False)


@lru_cache(maxsize=8)
def _middles(start: int, stop: int, count: int) -> NDArray[np.float64]:
    """Evenly spaced, although the edges are whole samples: uneven strokes would leave pixels bare.

    Alike for the channels of one record, so worked out once.
    """
    middles = start - 0.5 + (np.arange(count, dtype=np.float64) + 0.5) * ((stop - start) / count)
    middles.setflags(write=False)
    return middles


def extent_v(channel: Channel, *, least_v: float = 0.1, margin: float = 0.08) -> tuple[float, float]:
    """Volts from the bottom to the top of a lane that shows the whole channel.

    Parameters
    ----------
    channel : Channel
        May be empty or hold no valid sample; then 0 to 1 V.
    least_v : float
        A steady channel is not blown up beyond this range: 1 mV of noise should look like 1 mV.
    margin : float
        Share of the range left free at each end.
    """
    extremes = columns(channel, 0, len(channel), 1024)
    seen = np.concatenate([extremes.low_v, extremes.high_v])
    seen = seen[np.isfinite(seen)]
    if not seen.size:
        return 0.0, 1.0
    low_v, high_v = float(seen.min()), float(seen.max())
    spare_v = max(least_v - (high_v - low_v), 0.0) / 2 + margin * max(high_v - low_v, least_v)
    return low_v - spare_v, high_v + spare_v
