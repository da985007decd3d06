"""A fair part of a long series: what is usual shows in a hundred thousand cells as surely as in a million."""

from __future__ import annotations

from typing import TypeVar

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

MOST_CELLS = 1 << 17
"""Cells kept, more than a minute of the shortest: the rank of a quantile is then sure to a part in 400."""

STRETCH_CELLS = 512
"""Cells in a row that are kept together: single ones at even distances could keep step with mains hum."""

Kind = TypeVar("Kind", bound=np.generic)


def thinned(values: NDArray[Kind]) -> NDArray[Kind]:
    """Stretches spread evenly over a series, `MOST_CELLS` in all; the series itself where it is no longer.

    For quantiles of the whole only: a thinned series has jumps where stretches meet.

    Parameters
    ----------
    values : ndarray, shape (n,)
        May be empty. Series of one length are thinned alike.

    Returns
    -------
    ndarray, shape (min(n, `MOST_CELLS`),)
        In order; a copy where something was left out.
    """
    if len(values) <= MOST_CELLS:
        return values
    stretches = MOST_CELLS // STRETCH_CELLS
    firsts = np.linspace(0, len(values) - STRETCH_CELLS, stretches).astype(np.int64)
    return sliding_window_view(values, STRETCH_CELLS)[firsts].reshape(-1)
