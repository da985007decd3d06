"""How often a moving wheel visits a band, in closed form.

The height of the body over a wheel moves about its rest height with a Gaussian distribution, for the quarter
car is linear and its road Gaussian. The share of time in the band is then a difference of two values of the
normal distribution, and each edge is crossed each way ``ν(a) = ν(0) exp(-a² / 2σ²)`` times a second (Rice,
Mathematical Analysis of Random Noise, 1944/45). The mean stay is the share divided by the visits. How the
stays spread about their mean has no closed form; `analysis.exposure.stays` counts them in a simulated drive.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from scipy.special import ndtr

from analysis.intervals import Interval


@dataclass(frozen=True, slots=True)
class Visits:
    """How a band is visited.

    Parameters
    ----------
    share : float
        Of the time that the height is in the band, 0 to 1.
    per_s : float
        Visits a second: entries from either side.
    """

    share: float
    per_s: float

    @property
    def mean_stay_s(self) -> float:
        """Mean length of a visit; infinite where the height never leaves, NaN where it never comes."""
        if self.per_s > 0.0:
            return self.share / self.per_s
        return math.inf if self.share > 0.0 else math.nan

    def per_km(self, speed_m_s: float) -> float:
        """Visits a kilometre at a speed."""
        return self.per_s * 1e3 / speed_m_s


def visits(band_mm: Interval, rest_mm: float, rms_mm: float, crossings_per_s: float) -> Visits:
    """Share of time and visits.

    Parameters
    ----------
    band_mm : Interval
        Heights of the band's edges.
    rest_mm : float
        Height that the movement goes about.
    rms_mm : float
        Of the movement; 0 for a vehicle that stands.
    crossings_per_s : float
        How often the height passes its rest upwards, a second.

    Returns
    -------
    Visits
        For a vehicle that stands the share is 0 or 1, and nothing is entered.
    """
    if rms_mm <= 0.0:
        return Visits(float(band_mm.contains(rest_mm)), 0.0)
    low, high = (band_mm.start - rest_mm) / rms_mm, (band_mm.stop - rest_mm) / rms_mm
    if low > 0.0:  # mirrored: the lower tail keeps its digits where the upper one rounds to nothing
        low, high = -high, -low
    share = float(ndtr(high) - ndtr(low))
    rates = sum(math.exp(-0.5 * edge**2) for edge in (low, high))
    return Visits(share, crossings_per_s * rates)


def chance_within(per_s: float, minutes: float) -> float:
    """Chance of one event or more, where events come at random with this rate (Poisson)."""
    return -math.expm1(-per_s * 60.0 * minutes)
