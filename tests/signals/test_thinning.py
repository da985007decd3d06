"""A part of a long series tells what is usual in the whole."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.stats import norm

from analysis.signals.thinning import MOST_CELLS, thinned


@pytest.mark.parametrize("count", [0, 1, 511, MOST_CELLS])
def test_a_series_that_is_short_enough_stays_as_it_is(count: int) -> None:
    values = np.arange(count)
    assert thinned(values) is values


@pytest.mark.parametrize("count", [MOST_CELLS + 1, 3 * MOST_CELLS + 17, 20 * MOST_CELLS])
def test_a_longer_one_is_cut_down_from_its_first_to_its_last_value(count: int) -> None:
    kept = thinned(np.arange(count))
    assert len(kept) == MOST_CELLS
    assert (kept[0], kept[-1]) == (0, count - 1)
    assert np.all(np.diff(kept) > -512)


def test_series_of_one_length_are_thinned_alike() -> None:
    values = np.random.default_rng(1).normal(size=5 * MOST_CELLS).astype(np.float32)
    np.testing.assert_array_equal(thinned(values > 0), thinned(values) > 0)


def test_quantiles_of_the_part_are_those_of_the_distribution() -> None:
    """Against the quantile function of the normal distribution in scipy."""
    values = np.random.default_rng(2).normal(size=8 * MOST_CELLS)
    shares = np.array([0.05, 0.5, 0.9, 0.97])
    found = np.quantile(thinned(values), shares)
    # Four standard deviations of the rank, sqrt(p (1 - p) / n).
    slack = 4.0 * np.sqrt(shares * (1.0 - shares) / MOST_CELLS)
    assert np.all(np.abs(norm.cdf(found) - shares) < slack)


def test_hum_that_keeps_step_with_the_cells_is_seen_in_all_its_phases() -> None:
    values = np.sin(2.0 * np.pi * np.arange(8 * MOST_CELLS) / 8.0)
    assert np.std(thinned(values)) == pytest.approx(np.std(values), rel=1e-3)


def test_what_happens_in_an_eighth_of_the_time_takes_an_eighth_of_the_part() -> None:
    marks = np.zeros(16 * MOST_CELLS, dtype=np.bool_)
    marks[5 * MOST_CELLS : 7 * MOST_CELLS] = True
    assert thinned(marks).mean() == pytest.approx(0.125, abs=0.005)
