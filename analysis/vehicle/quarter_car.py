"""A quarter of a car on a road: body, wheel, spring, damper and tyre, as a linear system.

The state is (suspension travel, body velocity, tyre deflection, wheel velocity) and the input the vertical
velocity of the road, in SI units; masses are shares of the body's. The ratios of the Golden Car stand for a
middling passenger car (Sayers 1995, as read in published implementations): k_s/m_s 63.3, k_t/m_s 653,
c_s/m_s 6.0, m_u/m_s 0.15.

With white road velocity of one-sided density G the suspension travel has, in closed form, the variance
``G (m_s + m_u) / (4 c_s)`` and its rate ``G k_t / (4 c_s)``, so it crosses its mean upwards
``sqrt(k_t / (m_s + m_u)) / 2π`` times a second (Rice), whatever road, speed, spring and damper are.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.linalg import solve_continuous_lyapunov

from analysis.vehicle.geometry import Floats


@dataclass(frozen=True, slots=True)
class QuarterCar:
    """Ratios to the body's mass.

    Parameters
    ----------
    spring, tyre : float
        Stiffness in 1/s².
    damper : float
        In 1/s.
    wheel : float
        Mass.
    """

    spring: float = 63.3
    tyre: float = 653.0
    damper: float = 6.0
    wheel: float = 0.15

    @property
    def system(self) -> Floats:
        """System matrix, shape (4, 4)."""
        return np.array(
            [
                [0.0, 1.0, 0.0, -1.0],
                [-self.spring, -self.damper, 0.0, self.damper],
                [0.0, 0.0, 0.0, 1.0],
                [
                    self.spring / self.wheel,
                    self.damper / self.wheel,
                    -self.tyre / self.wheel,
                    -self.damper / self.wheel,
                ],
            ]
        )

    @property
    def road_input(self) -> Floats:
        """How the road's velocity enters, shape (4, 1): it takes from the tyre's deflection."""
        return np.array([[0.0], [0.0], [-1.0], [0.0]])

    def covariance(self, velocity_density_m2_s2_hz: float) -> Floats:
        """Covariance of the state on a road, shape (4, 4), from the Lyapunov equation.

        Parameters
        ----------
        velocity_density_m2_s2_hz : float
            One-sided; white noise of one-sided density G has the intensity G / 2.
        """
        intensity = 0.5 * velocity_density_m2_s2_hz * self.road_input @ self.road_input.T
        return np.asarray(solve_continuous_lyapunov(self.system, -intensity), dtype=np.float64)

    def travel_rms_m(self, velocity_density_m2_s2_hz: float) -> float:
        """Suspension travel about its mean, r.m.s., in closed form."""
        return math.sqrt(velocity_density_m2_s2_hz * (1.0 + self.wheel) / (4.0 * self.damper))

    def rate_rms_m_s(self, velocity_density_m2_s2_hz: float) -> float:
        """Rate of the suspension travel, r.m.s., in closed form."""
        return math.sqrt(velocity_density_m2_s2_hz * self.tyre / (4.0 * self.damper))

    @property
    def up_crossings_per_s(self) -> float:
        """How often the suspension travel crosses its mean upwards (Rice), on any road."""
        return math.sqrt(self.tyre / (1.0 + self.wheel)) / (2.0 * math.pi)


GOLDEN_CAR = QuarterCar()
