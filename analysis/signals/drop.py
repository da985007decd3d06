"""How far one reading of the signal lies below what belongs to the arm's place, with its uncertainty.

What belongs there is the travel turned back into volts by the ground and the reference that made it travel,
``E = G + (R - G) T / 100``. So it is in truth a reading of the signal wire too, taken where the contact held
and carried across: the steady errors of ground and reference cancel, and the drop ``E - S`` is a difference
of two readings of one channel.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel
from analysis.signals.measurement import Reading
from analysis.signals.uncertainty import (
    combined,
    propagated,
    resolution_uncertainty,
    standard_uncertainty,
)


@dataclass(frozen=True, slots=True)
class Level:
    """What a wire read about a moment, and the standard deviation of its samples there, in volts."""

    value_v: float
    spread_v: float = 0.0


@dataclass(frozen=True, slots=True)
class Feed:
    """Ground and reference about a moment, that turn travel into volts.

    Parameters
    ----------
    ground, reference : Level
        Against the recorder's return.
    fixed_v : float or None
        Signal volts above ground that the whole travel stands for, where the output does not go with the
        feed; None for a ratiometric sensor.
    """

    ground: Level
    reference: Level
    fixed_v: float | None = None

    @property
    def whole_travel_v(self) -> float:
        """Signal volts above ground that the whole travel stands for."""
        return self.reference.value_v - self.ground.value_v if self.fixed_v is None else self.fixed_v

    def signal(self, travel_percent: float) -> Level:
        """What a sound contact at this place reads, and its standard uncertainty by the feed alone."""
        share = travel_percent / 100.0
        slopes = (1.0 - share, share) if self.fixed_v is None else (1.0, 0.0)
        spread = (self.ground.spread_v, self.reference.spread_v)
        value_v = self.ground.value_v + share * self.whole_travel_v
        return Level(value_v, propagated(slopes, np.diag(np.square(spread))))


@dataclass(frozen=True, slots=True)
class Drop:
    """How far a reading lies below what belongs there.

    Parameters
    ----------
    drop : Reading
        In volts; negative where it lies above.
    belongs : Reading
        What a sound contact would have read there.
    """

    drop: Reading
    belongs: Reading

    @property
    def told(self) -> bool:
        """Whether it is more than its expanded uncertainty, so that there is a drop, or a rise, at all."""
        return abs(self.drop.value) >= self.drop.expanded_uncertainty


def drop_below(
    channel: Channel,
    read_v: float,
    *,
    travel_percent: float,
    travel_u_percent: float,
    feed: Feed,
    noise_v: float,
) -> Drop:
    """Reckon how far one sample lies below what belongs to the arm's place.

    Parameters
    ----------
    channel : Channel
        Of the signal; its resolution and, where stated, gain and offset errors.
    read_v : float
        The sample, in volts.
    travel_percent, travel_u_percent : float
        Where the arm was and its standard uncertainty, in % of travel; it comes from what the same channel
        read elsewhere.
    feed : Feed
        By which that was made travel.
    noise_v : float
        Standard deviation of one sample, in volts.

    Returns
    -------
    Drop

    Notes
    -----
    JCGM 100:2008, 5.1.2 for the inputs of their own (travel times volts a travel, feed, noise, both
    roundings), 5.2.2 for gain and offset error, which both readings share in full: what is left of them is
    the gain error of the difference.
    """
    belongs = feed.signal(travel_percent)
    place_v = combined(feed.whole_travel_v / 100.0 * travel_u_percent, belongs.spread_v)
    rounding_v = resolution_uncertainty(channel.step_v)
    levels_v = np.array([belongs.value_v, read_v])
    shared = _shared_errors(channel, levels_v)
    drop_b, belongs_b = (propagated(slopes, shared) for slopes in ((1.0, -1.0), (1.0, 0.0)))
    gain_known = channel.gain_error is not None
    known = gain_known and channel.offset_error_v is not None
    return Drop(
        Reading(
            belongs.value_v - read_v,
            combined(place_v, noise_v),
            combined(sqrt(2.0) * rounding_v, drop_b),
            gain_known,
        ),
        Reading(belongs.value_v, place_v, combined(rounding_v, belongs_b), known),
    )


def _shared_errors(channel: Channel, levels_v: NDArray[np.float64]) -> NDArray[np.float64]:
    """Covariance of readings of one channel by its gain and offset error, shape (n, n)."""
    gain_u, offset_u_v = (
        standard_uncertainty(limit or 0.0, distribution="rectangular")
        for limit in (channel.gain_error, channel.offset_error_v)
    )
    return np.asarray(gain_u**2 * np.outer(levels_v, levels_v) + offset_u_v**2)
