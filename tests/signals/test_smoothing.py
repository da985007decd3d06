"""The smoothest course through weighted levels, as a whole and in windows."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.ndimage import median_filter
from scipy.sparse import csc_array, diags_array
from scipy.sparse.linalg import spsolve

from analysis.signals.smoothing import LONG_NODES, median_of_five, smoothest_course

PENALTY = 0.378

Floats = NDArray[np.float64]


def _by_sparse_matrices(level: Floats, weight: Floats) -> Floats:
    """The same minimum from scipy's sparse solver."""
    size = len(level)
    third = diags_array([-1.0, 3.0, -3.0, 1.0], offsets=[0, 1, 2, 3], shape=(size - 3, size))
    matrix = csc_array(diags_array(weight) + PENALTY * (third.T @ third))
    return np.asarray(spsolve(matrix, weight * level))


def _levels(size: int, *, seed: int = 3) -> tuple[Floats, Floats]:
    """A stroke every 300 nodes with noise, and weights with bridges of nine nodes."""
    rng = np.random.default_rng(seed)
    level = 50.0 + 40.0 * np.sin(2.0 * np.pi * np.arange(size) / 300.0) + rng.normal(0.0, 0.1, size)
    weight = rng.uniform(0.5, 1.0, size)
    weight[np.arange(size) % 150 < 9] = 0.02
    return level, weight


@pytest.mark.parametrize("size", [4, 5, 6, 7, 50, 3000, LONG_NODES + 1, 3 * LONG_NODES + 17])
def test_the_course_is_that_of_a_sparse_solver(size: int) -> None:
    level, weight = _levels(size)
    course = smoothest_course(level, weight, penalty=PENALTY)
    np.testing.assert_allclose(course, _by_sparse_matrices(level, weight), atol=1e-9)


@pytest.mark.parametrize("size", [0, 1, 3])
def test_fewer_than_four_nodes_stay_where_they_are(size: int) -> None:
    level = np.arange(size, dtype=np.float64)
    np.testing.assert_array_equal(smoothest_course(level, np.ones(size), penalty=PENALTY), level)


@pytest.mark.parametrize("least", [1e-4, 1e-8, 1e-10])
def test_a_long_stretch_of_next_to_no_weight_is_solved_as_well(least: float) -> None:
    """There the overlap of the windows is too short, and a longer one or the whole must do."""
    level, weight = _levels(2 * LONG_NODES)
    weight[40_000:48_000] = least
    course = smoothest_course(level, weight, penalty=PENALTY)
    expected = _by_sparse_matrices(level, weight)
    outside = np.r_[0:39_900, 48_100 : len(level)]
    np.testing.assert_allclose(course[outside], expected[outside], atol=1e-7)


def test_a_parabola_is_its_own_smoothest_course_however_long() -> None:
    place = np.linspace(-1.0, 1.0, 2 * LONG_NODES)
    parabola = 3.0 + 2.0 * place - 5.0 * place**2
    course = smoothest_course(parabola, np.full(len(place), 0.3), penalty=PENALTY)
    np.testing.assert_allclose(course, parabola, atol=1e-9)


def test_the_gain_at_the_corner_is_a_half() -> None:
    """``1 / (1 + penalty (2 sin(pi f h))^6)`` (Eilers, A perfect smoother, Anal. Chem. 75 (2003))."""
    per_node = 0.1
    penalty = (2.0 * np.sin(np.pi * per_node)) ** -6
    wave = np.sin(2.0 * np.pi * per_node * np.arange(2000))
    course = smoothest_course(wave, np.ones(2000), penalty=penalty)
    np.testing.assert_allclose(course[500:-500], 0.5 * wave[500:-500], atol=1e-9)


@pytest.mark.parametrize("size", [1, 2, 3, 4, 5, 6, 1000])
def test_the_median_of_five_is_that_of_scipy(size: int) -> None:
    rng = np.random.default_rng(size)
    for values in (rng.normal(size=size), rng.integers(0, 3, size)):
        single = values.astype(np.float32)
        expected = median_filter(single, size=5, mode="nearest")
        np.testing.assert_array_equal(median_of_five(single), expected)
