"""A suspension on a road: the arm moves because the car drives.

The road is ISO 8608 with waviness 2: its displacement spectrum is ``Gd(n0)·(n/n0)⁻²``, n0 = 0.1 cycle/m, so
that at speed V the vertical velocity under the wheel is white with the one-sided density
``G_v = (2π n0)²·Gd(n0)·V``. The car is a quarter car with the ratios of the Golden Car (Sayers 1995, as
read in published implementations): k_s/m_s 63.3, k_t/m_s 653, c_s/m_s 6.0, m_u/m_s 0.15. Its suspension
travel has the closed-form rms ``sqrt(G_v (m_s + m_u) / (4 c))`` and crosses its mean upwards
``sqrt(k_t / (m_s + m_u)) / 2π`` = 3.79 times a second.
"""

from __future__ import annotations

import numpy as np
from scipy.signal import cont2discrete, lfilter, ss2tf

from analysis.intervals import Interval
from analysis.simulation.circuit import Floats
from analysis.simulation.hand import NODE_HZ
from analysis.vehicle.quarter_car import GOLDEN_CAR
from analysis.vehicle.road import road_of


def system_matrix() -> Floats:
    """Golden Car, state (suspension travel, body velocity, tyre deflection, wheel velocity), shape (4, 4)."""
    return GOLDEN_CAR.system


def velocity_density(road_class: str, speed_km_h: float) -> float:
    """One-sided density of the vertical velocity under the wheel, in m²/s²/Hz."""
    return road_of(road_class, speed_km_h).velocity_density_m2_s2_hz


def road_velocity(rng: np.random.Generator, count: int, road_class: str, speed_km_h: float) -> Floats:
    """Vertical velocity under the wheel in m/s, white, sampled at `NODE_HZ`, shape (count,)."""
    density = velocity_density(road_class, speed_km_h)
    return np.asarray(rng.standard_normal(count) * np.sqrt(density * NODE_HZ / 2.0), dtype=np.float64)


def suspension_travel_m(
    rng: np.random.Generator,
    seconds: float,
    road_class: str = "C",
    speed_km_h: float = 80.0,
    *,
    potholes_per_s: float = 0.0,
) -> Floats:
    """Suspension travel in metres about its mean, sampled at `NODE_HZ`, shape (n,)."""
    lead = int(4.0 * NODE_HZ)  # the car's start from rest is left out
    velocity = road_velocity(rng, int(seconds * NODE_HZ) + lead, road_class, speed_km_h)
    _add_potholes(velocity, rng, potholes_per_s, speed_km_h)
    discrete = cont2discrete(
        (system_matrix(), GOLDEN_CAR.road_input, np.eye(4)[:1], np.zeros((1, 1))), 1.0 / NODE_HZ
    )
    numerator, denominator = ss2tf(*discrete[:4])
    return np.asarray(lfilter(numerator[0], denominator, velocity), dtype=np.float64)[lead:]


def _add_potholes(velocity: Floats, rng: np.random.Generator, per_s: float, speed_km_h: float) -> None:
    """Holes and kerbs of 10-50 mm, 0.3-1 m long, each edge rounded by 0.1 m of tyre (common practice)."""
    edge = max(round(0.1 / (speed_km_h / 3.6) * NODE_HZ), 1)
    for _ in range(rng.poisson(per_s * velocity.shape[0] / NODE_HZ)):
        length = round(rng.uniform(0.3, 1.0) / (speed_km_h / 3.6) * NODE_HZ)
        begin = int(rng.integers(0, max(velocity.shape[0] - length - edge, 1)))
        rise = rng.choice([-1.0, 1.0]) * rng.uniform(0.01, 0.05) / edge * NODE_HZ
        velocity[begin : begin + edge] += rise
        velocity[begin + length : begin + length + edge] -= rise


def road_path(
    rng: np.random.Generator,
    seconds: float,
    stops: Interval,
    rest_percent: float,
    *,
    road_class: str = "C",
    speed_km_h: float = 60.0,
    percent_per_m: float = 500.0,
    potholes_per_s: float = 0.0,
) -> Floats:
    """The arm's path in % of travel while driving, with slow pitch and roll; shape (n,)."""
    travel = percent_per_m * suspension_travel_m(
        rng, seconds, road_class, speed_km_h, potholes_per_s=potholes_per_s
    )
    time = np.arange(travel.shape[0]) / NODE_HZ
    slow = 3.0 * np.sin(2.0 * np.pi * rng.uniform(0.03, 0.15) * time + rng.uniform(0, 6.28))
    return np.clip(rest_percent + travel + slow, stops.start, stops.stop)
