"""The smoothest course through weighted levels: Whittaker's method with a penalty on the third difference.

``sum w (x - level)^2 + penalty * sum (third difference of x)^2`` is least where a system of equations with
seven diagonals holds (Whittaker 1923; Eilers 2003). What is far away does not matter to a node: its share
dies away within some dozens of nodes. So a long course is cut into windows that overlap, and all of them are
solved side by side, which takes half the time; where the seams do not fit, it is solved as a whole.
"""

from __future__ import annotations

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray
from scipy.linalg import solveh_banded

Floats = NDArray[np.float64]

COEFFICIENTS = (-1.0, 3.0, -3.0, 1.0)
"""Of the third difference."""

LONG_NODES = 1 << 16
"""Courses longer than this are solved in windows, more than two minutes of nodes of 2 ms."""

WINDOW_NODES = 1024
"""Nodes that a window is kept for."""

OVERLAP_NODES = (96, 384)
"""Nodes beyond them on either side: at a weight of a fiftieth, the lowest of a bridge, the share of what lies
96 nodes away is below 1e-12; where outliers weigh less still, the longer overlap is tried."""

SIDE_BY_SIDE = 1024
"""Windows solved together: their arrays take some 40 MB."""

MOST_AMISS = 1e-9
"""The equations beside a seam must hold to this, in units of the level."""


def smoothest_course(level: Floats, weight: Floats, *, penalty: float) -> Floats:
    """Minimise ``sum weight (x - level)^2 + penalty * sum (third difference of x)^2``.

    Parameters
    ----------
    level, weight : ndarray, shape (n,)
        The weights are positive.
    penalty : float
        Positive; for even weights of 1 the gain is ``1 / (1 + penalty * (2 sin(pi f h))^6)`` at a frequency
        f and a spacing h.

    Returns
    -------
    ndarray, shape (n,)
        The level itself where there are fewer than four nodes.
    """
    if len(level) < len(COEFFICIENTS):
        return level
    relative = weight / penalty
    if len(level) > LONG_NODES:
        for overlap in OVERLAP_NODES:
            course = _in_windows(level, relative, overlap)
            if _amiss(course, level, relative, overlap) <= MOST_AMISS:
                return course
    bands = penalty_bands(len(level))
    bands[3] += relative
    return np.asarray(solveh_banded(bands, relative * level, overwrite_ab=True, check_finite=False))


def penalty_bands(size: int) -> Floats:
    """Upper bands of D'D for the third difference D, shape (4, size), as `solveh_banded` wants them."""
    bands = np.zeros((4, size))
    for row, left in enumerate(COEFFICIENTS):
        for column in range(row, 4):
            right = COEFFICIENTS[column]
            bands[3 - (column - row), column : size - 3 + column] += left * right
    return bands


def _in_windows(level: Floats, weight: Floats, overlap: int) -> Floats:
    """Solve in windows; each is kept from `overlap` nodes behind its beginning, the first from its first."""
    size = WINDOW_NODES + 2 * overlap
    starts = np.append(np.arange(0, len(level) - size, WINDOW_NODES), len(level) - size)
    course = np.empty(len(level))
    for group in np.array_split(starts, -(-len(starts) // SIDE_BY_SIDE)):
        solved = _side_by_side(level, weight, group, size)
        for start, column in zip(group.tolist(), solved.T, strict=True):
            first = overlap if start else 0
            course[start + first : start + size] = column[first:]  # the next one overwrites the end
    return course


def _side_by_side(level: Floats, weight: Floats, starts: NDArray[np.int64], size: int) -> Floats:
    """Solve windows by L D L' (Golub, Van Loan, Matrix Computations, 4.3), shape (size, n_windows).

    Row i of the arrays is row i - 3 of all systems: what is before the first is nought. `near` and `far`, the
    first two lower diagonals of L, take turns in the rows of `lower`: ``lower[2 * i]`` is near of row i, and
    ``lower[2 * i - 1]`` is far of it, so that what is multiplied together lies together. The third diagonal
    is minus `inverse`, the reciprocal pivots, since the outermost diagonal of the matrix is minus one.
    """
    _, second, first, middle = penalty_bands(size).tolist()
    inverse, solved = (np.zeros((size + 6, len(starts))) for _ in range(2))
    lower = np.zeros((2 * (size + 6), len(starts)))
    inverse[3:-3] = sliding_window_view(weight, size)[starts].T
    solved[3:-3] = sliding_window_view(level, size)[starts].T
    solved *= inverse
    pair, products = np.empty((2, len(starts))), np.empty((2, len(starts)))
    outer = np.stack([second, first], axis=1)[..., None]
    add, subtract, multiply = np.add, np.subtract, np.multiply
    (pivot_far, pivot_near), (by_far, by_near), scratch = pair, products, products[0]
    for row in range(3, size + 3):
        pivot, right, both = inverse[row], solved[row], lower[2 * row - 1 : 2 * row + 1]
        add(lower[2 * row - 4 : 2 * row - 2], outer[row - 3], pair)
        multiply(pivot_far, lower[2 * row - 2], scratch)
        subtract(pivot_near, scratch, pivot_near)
        multiply(pair, inverse[row - 2 : row], both)
        add(pivot, middle[row - 3], pivot)
        subtract(pivot, inverse[row - 3], pivot)
        multiply(pair, both, products)
        subtract(pivot, by_near, pivot)
        subtract(pivot, by_far, pivot)
        np.reciprocal(pivot, out=pivot)
        add(right, solved[row - 3], right)
        multiply(pair, solved[row - 2 : row], products)
        subtract(right, by_near, right)
        subtract(right, by_far, right)
        multiply(right, pivot, right)
    by_near, by_far = products
    for row in range(size + 2, 2, -1):
        right = solved[row]
        multiply(lower[2 * row + 2 : 2 * row + 4], solved[row + 1 : row + 3], products)
        subtract(right, by_near, right)
        subtract(right, by_far, right)
        multiply(inverse[row], solved[row + 3], scratch)
        add(right, scratch, right)
    return solved[3:-3]


def _amiss(course: Floats, level: Floats, weight: Floats, overlap: int) -> float:
    """How far the equations of the three nodes on either side of each seam are from holding."""
    size = WINDOW_NODES + 2 * overlap
    seams = np.append(np.arange(0, len(level) - size, WINDOW_NODES)[1:], len(level) - size) + overlap
    nodes = seams[:, None] + np.arange(-3, 3)
    bent = np.zeros(nodes.shape)
    for offset, coefficient in enumerate((-1.0, 6.0, -15.0, 20.0, -15.0, 6.0, -1.0)):
        bent += coefficient * course[nodes + offset - 3]
    return float(np.abs(weight[nodes] * (course[nodes] - level[nodes]) + bent).max())


def median_of_five(values: NDArray[np.float32]) -> NDArray[np.float32]:
    """Running median of each value and two on either side; the ends are repeated.

    Parameters
    ----------
    values : ndarray, shape (n,)
        At least one, none of them NaN.

    Returns
    -------
    ndarray, shape (n,)
    """
    padded = np.concatenate([values[:1], values[:1], values, values[-1:], values[-1:]])
    return middle_of_five(*(padded[shift : shift + len(values)] for shift in range(5)))


def middle_of_five(
    one: NDArray[np.float32],
    two: NDArray[np.float32],
    three: NDArray[np.float32],
    four: NDArray[np.float32],
    five: NDArray[np.float32],
) -> NDArray[np.float32]:
    """Median of five series, place by place, same shape; none of them holds NaN."""
    # Of two pairs neither the lower of the lows nor the higher of the highs is the median of all five.
    low = np.maximum(np.minimum(one, two), np.minimum(three, four))
    high = np.minimum(np.maximum(one, two), np.maximum(three, four))
    return np.asarray(np.maximum(np.minimum(low, high), np.minimum(np.maximum(low, high), five)))
