"""The resistive track and its contact.

The wiper rides on a film whose resistance grows exponentially with its thickness (Holm, Electric
Contacts, 1967, on films; from memory). Where the track is worn the thickness becomes a rough field, so
that the contact resistance of a worn band is ``R₀·10^(6·e)`` (or fewer decades), ``e`` being the part
above zero of

    e = shape(x) · (bias + 1.2·u),

with `shape` the band's outline along the travel, `bias` its severity, and `u` a standardised Gaussian
made of four parts: grain **fixed to the track**, which comes back at the same place on every crossing;
a part new on **each crossing** (the fingers of the wiper land a little differently); a **slow** part in
time, that lets the reading wander at rest; and **chatter** of a fraction of a millisecond. The events
follow: so many for each millimetre of travel, so a slow crossing has longer ones, not more.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter1d
from scipy.signal import lfilter

from analysis.intervals import Interval
from analysis.simulation.circuit import Floats

CELLS = 16_384  # grain cells along the electrical travel: 0.006 % each, finer than any grain below
STOPS = Interval(9.0, 91.0)  # a ride-height arm uses some 0.5-4.5 V (common practice, no source)
DECADES = 6.0  # from a sound contact (some 100 Ω) to an open one (100 MΩ)


@dataclass(frozen=True, slots=True)
class WornBand:
    """A stretch of travel where the contact breaks up.

    Parameters
    ----------
    travel : Interval
        Edges in % of electrical travel: where the outline stands at one half.
    severity : float
        0 barely (a tenth of the grain opens), 1 open nearly everywhere.
    soft_percent : float
        Length of travel over which the outline rises; 0 for a hard edge.
    grain_percent : float
        Correlation length of the grain, in % of travel.
    fixed, crossing, slow, chatter : float
        Shares of the variance of the four parts; they are normalised.
    slow_s, chatter_s : float
        Correlation times of the parts in time.
    wiped : float
        Share of the dirt that each crossing removes; 0 for wear.
    decades : float
        How far the resistance can rise: 6 is an open contact, 3 some 100 kΩ, which only dents the voltage.
    lean_percent : float
        How far the tip of the wiper lags behind, in the direction of motion.
    """

    travel: Interval
    severity: float = 0.6
    soft_percent: float = 0.0
    grain_percent: float = 0.08
    fixed: float = 0.5
    crossing: float = 0.2
    slow: float = 0.15
    chatter: float = 0.15
    slow_s: float = 0.15
    chatter_s: float = 0.0004
    wiped: float = 0.0
    decades: float = DECADES
    lean_percent: float = 0.0

    def outline(self, travel_percent: Floats) -> Floats:
        """The outline at some places, 0..1."""
        if self.soft_percent <= 0.0:
            inside = (travel_percent >= self.travel.start) & (travel_percent < self.travel.stop)
            return inside.astype(np.float64)
        rise = _ramp((travel_percent - self.travel.start) / self.soft_percent)
        return rise * _ramp((self.travel.stop - travel_percent) / self.soft_percent)

    @property
    def reach(self) -> Interval:
        """Where the outline is not zero."""
        return self.travel.widened(0.5 * self.soft_percent)


@dataclass(frozen=True, slots=True)
class Sensor:
    """A potentiometer and the arm's stops.

    Parameters
    ----------
    track_ohm, wiper_ohm : float
        Total resistance, and that of a sound contact.
    stops : Interval
        Mechanical stops in % of electrical travel.
    rest_percent : float
        Where the arm stands in the vehicle.
    bands : tuple of WornBand
        May be empty.
    smoothness_percent : float
        Fine grain of a sound track in % of the applied voltage, peak (limit of a new conductive plastic
        track: 0.1 %, Bourns training page "Output Smoothness").
    """

    track_ohm: float = 5_000.0
    wiper_ohm: float = 100.0
    stops: Interval = STOPS
    rest_percent: float = 50.0
    bands: tuple[WornBand, ...] = ()
    smoothness_percent: float = 0.03


@dataclass(frozen=True, slots=True)
class TrackGrain:
    """One track's own grain, drawn once and kept for the whole capture."""

    fine: Floats
    fixed: tuple[Floats, ...]
    crossing: tuple[Floats, ...]

    @staticmethod
    def drawn(sensor: Sensor, rng: np.random.Generator) -> TrackGrain:
        """Draw the grain of a track.

        Parameters
        ----------
        sensor : Sensor
            One pair of fields is drawn for each of its bands.
        rng : Generator
            Source of chance.
        """
        fine = gaussian_field(rng, 0.05) * sensor.smoothness_percent / 3.0
        fixed = tuple(gaussian_field(rng, band.grain_percent) for band in sensor.bands)
        crossing = tuple(gaussian_field(rng, band.grain_percent) for band in sensor.bands)
        return TrackGrain(fine, fixed, crossing)


def gaussian_field(rng: np.random.Generator, length_percent: float) -> Floats:
    """A standardised Gaussian field along the travel, shape (CELLS,), of that correlation length."""
    noise = rng.standard_normal(CELLS)
    field = gaussian_filter1d(noise, max(length_percent / 100.0 * CELLS, 0.1), mode="wrap")
    return np.asarray((field - field.mean()) / field.std(), dtype=np.float64)


def cell_of(travel_percent: Floats) -> NDArray[np.int32]:
    """Grain cell under the wiper, same shape as `travel_percent`."""
    return np.clip((travel_percent * (CELLS / 100.0)).astype(np.int32), 0, CELLS - 1)


def film_ohm(
    band: WornBand,
    fixed_grain: Floats,
    crossing_grain: Floats,
    travel_percent: Floats,
    interval_s: float,
    crossings_before: int,
    rng: np.random.Generator,
) -> tuple[NDArray[np.intp], Floats, int]:
    """Contact resistance that a worn band adds along a path.

    Parameters
    ----------
    band : WornBand
        Which band.
    fixed_grain, crossing_grain : ndarray, shape (CELLS,)
        Fields of this track.
    travel_percent : ndarray, shape (n,)
        The wiper's path.
    interval_s : float
        Seconds between its points.
    crossings_before : int
        Crossings in earlier records, for dirt that wears off.

    Returns
    -------
    where : ndarray of int
        Points inside the band's reach.
    ohm : ndarray
        Added resistance at those points.
    crossings : int
        `crossings_before` plus the visits of this path.
    """
    reach = band.reach
    where = np.flatnonzero((travel_percent >= reach.start) & (travel_percent < reach.stop))
    if where.size == 0:
        return where, np.zeros(0), crossings_before
    place = travel_percent[where]
    visit = _visits(where, place, interval_s)
    field = _field(band, fixed_grain, crossing_grain, place, visit, interval_s, rng)
    bias = -1.3 + 4.0 * band.severity
    dirt = (1.0 - band.wiped) ** (crossings_before + visit)
    exponent = np.clip(band.outline(place) * dirt * (bias + 1.2 * field) - 0.3 * (1.0 - dirt), 0.0, 1.0)
    ohm = 100.0 * (10.0 ** (band.decades * exponent) - 1.0)
    return where, ohm, crossings_before + int(visit[-1]) + 1


def _field(
    band: WornBand,
    fixed_grain: Floats,
    crossing_grain: Floats,
    place: Floats,
    visit: NDArray[np.intp],
    interval_s: float,
    rng: np.random.Generator,
) -> Floats:
    """The standardised field `u` along a path inside the band."""
    cell = cell_of(place)
    offsets = rng.integers(0, CELLS, int(visit[-1]) + 1)
    weight = np.sqrt(np.array([band.fixed, band.crossing, band.slow, band.chatter]))
    weight = weight / np.sqrt((weight**2).sum())
    field = weight[0] * fixed_grain[cell]
    if band.crossing > 0.0:
        field = field + weight[1] * crossing_grain[(cell + offsets[visit]) % CELLS]
    if band.slow > 0.0:
        field = field + weight[2] * coloured(rng, place.size, band.slow_s, interval_s)
    if band.chatter > 0.0:
        field = field + weight[3] * coloured(rng, place.size, band.chatter_s, interval_s)
    return np.asarray(field, dtype=np.float64)


def coloured(rng: np.random.Generator, count: int, correlation_s: float, interval_s: float) -> Floats:
    """Standard Gaussian noise with an exponential correlation (Ornstein-Uhlenbeck), shape (count,)."""
    keep = float(np.exp(-interval_s / correlation_s))
    noise = rng.standard_normal(count) * np.sqrt(1.0 - keep**2)
    if count:
        noise[0] = rng.standard_normal()
    return np.asarray(lfilter([1.0], [1.0, -keep], noise), dtype=np.float64)


def _visits(where: NDArray[np.intp], place: Floats, interval_s: float) -> NDArray[np.intp]:
    """Number of the visit at each point in the band: a new one on entering and on each real reversal."""
    entered = np.diff(where, prepend=where[0]) > max(0.02 / interval_s, 1.0)
    block = max(int(0.05 / interval_s), 1)  # a reversal within 50 ms is tremor
    entry = np.cumsum(entered)[::block]
    heading = np.sign(np.diff(place[::block], prepend=place[0])) * (np.diff(entry, prepend=entry[0]) == 0)
    moving = np.flatnonzero(heading)
    turned_back = (heading[moving][1:] != heading[moving][:-1]) & (np.diff(entry[moving]) == 0)
    turned = np.zeros(place.size, dtype=np.bool_)
    turned[moving[1:][turned_back] * block] = True
    return np.asarray(np.cumsum(entered | turned), dtype=np.intp)


def _ramp(share: Floats) -> Floats:
    """A raised-cosine rise, one half at 0, complete at ±0.5."""
    return np.asarray(0.5 + 0.5 * np.sin(np.pi * np.clip(share, -0.5, 0.5)), dtype=np.float64)
