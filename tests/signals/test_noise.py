"""The usual level along the travel: smooth growth is followed, a band is not."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import ArrayLike, NDArray

from analysis.signals.noise import usual_level

TRAVEL = np.random.default_rng(1).uniform(5.0, 95.0, 40_000).astype(np.float32)


def _values(level: ArrayLike, seed: int = 2) -> NDArray[np.float32]:
    rng = np.random.default_rng(seed)
    size = np.abs(rng.normal(0.0, 1.0, len(TRAVEL))) * np.asarray(level) / 0.6745
    return np.asarray(size, dtype=np.float32)


def test_a_level_that_is_the_same_everywhere_is_found() -> None:
    found = usual_level(TRAVEL, _values(0.2), least=0.01)
    np.testing.assert_allclose(found.at([10.0, 50.0, 90.0]), 0.2, rtol=0.05)


def test_noise_that_grows_along_the_travel_is_followed() -> None:
    # Its logarithm is a parabola, which is just what is fitted.
    truth = 0.05 * np.exp(0.02 * TRAVEL)
    found = usual_level(TRAVEL, _values(truth), least=0.01)
    places = np.array([10.0, 30.0, 50.0, 70.0, 90.0])
    np.testing.assert_allclose(found.at(places), 0.05 * np.exp(0.02 * places), rtol=0.06)


@pytest.mark.parametrize("start", [8.0, 45.0, 82.0])
def test_a_worn_tenth_of_the_travel_does_not_bend_it(start: float) -> None:
    inside = (start <= TRAVEL) & (start + 9.0 > TRAVEL)
    bent = usual_level(TRAVEL, _values(np.where(inside, 5.0, 0.1)), least=0.01)
    assert bent.at([start + 4.5])[0] < 0.25  # fifty times more in the band; a fair fit stays at 0.1
    assert bent.at([50.0 if start != 45.0 else 20.0])[0] == pytest.approx(0.1, rel=0.15)


def test_twice_the_values_are_twice_the_level() -> None:
    values = _values(0.05 + TRAVEL / 500.0)
    one, two = (usual_level(TRAVEL, factor * values, least=1e-6) for factor in (1.0, 2.0))
    np.testing.assert_allclose(two.at([20.0, 50.0, 80.0]), 2.0 * one.at([20.0, 50.0, 80.0]), rtol=1e-3)


def test_beyond_the_fitted_travel_the_level_is_held() -> None:
    found = usual_level(TRAVEL, _values(0.05 * np.exp(0.02 * TRAVEL)), least=0.01)
    ends = found.at([found.low_percent, found.high_percent])
    np.testing.assert_array_equal(found.at([-30.0, 130.0]), ends)
    assert found.low_percent < found.centre < found.high_percent


def test_with_little_travel_or_nothing_one_level_stands_for_all() -> None:
    few = usual_level(TRAVEL[:30], np.full(30, 0.3, np.float32), least=0.01)
    np.testing.assert_allclose(few.at([0.0, 50.0, 100.0]), 0.3, rtol=1e-5)
    nothing = usual_level(TRAVEL[:0], TRAVEL[:0], least=0.02)
    np.testing.assert_allclose(nothing.at([0.0, 50.0, 100.0]), 0.02, rtol=1e-5)


def test_no_level_lies_below_the_least_that_can_be_told() -> None:
    assert usual_level(TRAVEL, np.zeros_like(TRAVEL), least=0.05).at([50.0])[0] == pytest.approx(0.05)


def test_a_higher_quantile_is_a_higher_level() -> None:
    values = _values(0.1)
    middle, high = (usual_level(TRAVEL, values, least=0.001, quantile=q).at([50.0])[0] for q in (0.5, 0.9))
    # Of |N(0, 1)| the quantiles 0.5 and 0.9 are 0.6745 and 1.6449 (normal tables).
    assert high / middle == pytest.approx(1.6449 / 0.6745, rel=0.05)
