"""A drive, simulated: suspension travel in units of its own r.m.s., so that one drive serves every road.

The road's velocity is white at every class and speed, so only the amplitude of the travel changes with them,
never its course. The sampled state is exact for any rate: between samples the state moves by the matrix
exponential, and takes up a random part with the covariance that the stationary state asks for
(``Q = P - A P Aᵀ``), so that no sample is nearer to the truth than another.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from scipy.linalg import expm
from scipy.signal import lfilter, ss2tf

from analysis.vehicle.geometry import Floats
from analysis.vehicle.quarter_car import GOLDEN_CAR, QuarterCar

SECONDS, RATE_HZ = 1_800.0, 200.0
"""Half an hour, twenty samples to a wheel's hop; both are long and fine enough for shares within 2 %."""

_SEED = 8608


@lru_cache(maxsize=2)
def unit_drive(
    car: QuarterCar = GOLDEN_CAR, seconds: float = SECONDS, rate_hz: float = RATE_HZ, seed: int = _SEED
) -> Floats:
    """Suspension travel over time, in units of its r.m.s.; the same arguments give the same drive.

    Parameters
    ----------
    car : QuarterCar
        Which car.
    seconds, rate_hz : float
        Length, and samples a second.
    seed : int
        Of the random road.

    Returns
    -------
    ndarray, shape (seconds * rate_hz,)
        Read-only, for it is shared.
    """
    travel = simulate_travel(np.random.default_rng(seed), round(seconds * rate_hz), rate_hz, car=car)
    travel.flags.writeable = False
    return travel


def simulate_travel(
    rng: np.random.Generator, count: int, rate_hz: float, *, car: QuarterCar = GOLDEN_CAR
) -> Floats:
    """A stationary course of the suspension travel, in units of its r.m.s., shape (count,)."""
    transition = expm(car.system / rate_hz)
    stationary = car.covariance(1.0)
    taken_up = stationary - transition @ stationary @ transition.T
    noise = _root(taken_up) @ rng.standard_normal((4, count))
    if count:
        noise[:, 0] = _root(stationary) @ rng.standard_normal(4)
    driven, denominator = np.zeros(count), np.ones(1)
    for place in range(4):
        numerator, denominator = ss2tf(transition, np.eye(4), np.eye(4)[:1], np.zeros((1, 4)), input=place)
        # The state takes up the random part of a step at the step's end: advanced by one sample.
        for lag, weight in enumerate(numerator[0][1:]):
            driven[lag:] += weight * noise[place, : count - lag]
    travel = lfilter([1.0], denominator, driven)  # one denominator for all four: filtered once
    return np.asarray(travel / np.sqrt(stationary[0, 0]), dtype=np.float64)


def _root(covariance: Floats) -> Floats:
    """A matrix whose square is the covariance; rounding may leave it a hair below zero."""
    values, vectors = np.linalg.eigh(covariance)
    return np.asarray(vectors * np.sqrt(np.clip(values, 0.0, None)), dtype=np.float64)
