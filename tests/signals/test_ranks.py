"""Departures as levels: shares of the floor, the worst of each place, and how many cells reach each."""

from __future__ import annotations

import numpy as np

from analysis.signals.ranks import LEVELS, level_counts, levels_of, worst_levels


def test_a_level_is_the_highest_share_of_the_floor_that_is_reached() -> None:
    shares = np.array([0.0, 0.3, LEVELS[0] * 1.01, LEVELS[4] * 1.01, LEVELS[-1] * 9.0, np.nan], np.float32)
    for floor in (0.2, 3.0):
        level = levels_of(shares * np.float32(floor), np.full(6, floor, np.float32))
        np.testing.assert_array_equal(level, [-1, -1, 0, 4, len(LEVELS) - 1, -1])


def test_levels_rise_from_below_the_floor_to_far_above_it() -> None:
    assert list(LEVELS) == sorted(LEVELS)
    assert LEVELS[0] < 0.5 < 1.0 < 5.0 < LEVELS[-1]


def test_the_worst_of_each_place_and_the_cells_at_each_level() -> None:
    level = np.array([-1, 3, 2, 3, 7, -1], np.int8)
    place = np.array([0, 0, 1, 1, 1, 2])
    np.testing.assert_array_equal(worst_levels(level, place, 4), [3, 7, -1, -1])
    counts = level_counts(level, place, 4)
    assert counts.shape == (4, len(LEVELS))
    assert counts.sum() == 4
    assert (counts[0, 3], counts[1, 2], counts[1, 3], counts[1, 7]) == (1, 1, 1, 1)
