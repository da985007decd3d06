"""Extremes of neighbouring stretches, against `numpy.ufunc.reduceat`, which defines them."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from analysis.captures.stretches import Stretches


@settings(max_examples=200, deadline=None)
@given(
    count=st.integers(1, 900),
    blocks_a_column=st.floats(1.0, 80.0),
    floating=st.booleans(),
    odd_first=st.integers(0, 3),
    seed=st.integers(0, 2**32 - 1),
)
def test_they_are_what_numpy_gives_one_by_one(
    count: int, blocks_a_column: float, floating: bool, odd_first: int, seed: int
) -> None:
    rng = np.random.default_rng(seed)
    begins = np.floor(np.arange(count) * blocks_a_column).astype(np.int64)
    begins[1:] += odd_first  # a picture begins within a block
    size = int(begins[-1]) + int(rng.integers(1, 90))
    values = rng.integers(-2000, 2000, size).astype(np.int16)
    if floating:
        values = np.where(rng.random(size) < 0.3, np.nan, values.astype(np.float64))
    stretches = Stretches.of(begins)
    for extreme in (np.fmin, np.fmax):
        np.testing.assert_array_equal(
            stretches.extremes(values, extreme), extreme.reduceat(values, begins), strict=True
        )


@pytest.mark.parametrize(("blocks_a_column", "reach"), [(1.0, 1), (3.9, 2), (4.0, 4), (31.5, 16), (64.0, 0)])
def test_a_column_is_two_looks_that_overlap_where_that_is_quicker(blocks_a_column: float, reach: int) -> None:
    begins = np.floor(np.arange(1500) * blocks_a_column).astype(np.int64)
    assert Stretches.of(begins).reach == reach


def test_columns_of_very_unlike_width_are_taken_one_by_one() -> None:
    begins = np.arange(1500, dtype=np.int64) * 4
    begins[700:] += 9
    assert Stretches.of(begins).reach == 0
