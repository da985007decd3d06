"""Uncertainty of a result that several readings make together: a difference of wires, a share, a span.

The stated gain and offset errors of one input are the same in all its readings, and cancel or add up with
them. Of two inputs of one recorder nobody states how much of their errors is shared; then the worse of "all"
and "nothing" is taken, which bounds whatever lies between.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel
from analysis.signals.uncertainty import (
    combined,
    expanded,
    propagated,
    resolution_uncertainty,
    standard_uncertainty,
)


@dataclass(frozen=True, slots=True)
class Share:
    """One reading that goes into a result.

    Parameters
    ----------
    channel : Channel
        Gives the step and, where stated, gain and offset errors (rectangular, JCGM 100, 4.3.7); what is not
        stated is left out.
    level_v : float
        What was read, in volts.
    sensitivity : float
        Change of the result with this reading.
    source : str
        Which input of the recorder made it: readings of one source have one gain and one offset error.
    spread_v : float
        Standard uncertainty of its own, as of repeated levels, in volts.
    """

    channel: Channel
    level_v: float
    sensitivity: float
    source: str = ""
    spread_v: float = 0.0

    @property
    def own_u_v(self) -> float:
        """Standard uncertainty that no other reading shares: resolution and spread."""
        return combined(resolution_uncertainty(self.channel.step_v), self.spread_v)

    @property
    def gain_u_v(self) -> float:
        """Standard uncertainty by the gain error, in volts; signed as the level is."""
        u = standard_uncertainty(self.channel.gain_error or 0.0, distribution="rectangular")
        return self.level_v * u

    @property
    def offset_u_v(self) -> float:
        """Standard uncertainty by the offset error, in volts."""
        return standard_uncertainty(self.channel.offset_error_v or 0.0, distribution="rectangular")


def result_uncertainty(shares: Sequence[Share]) -> float:
    """Expanded uncertainty (k = 2) of a result, in its unit.

    Parameters
    ----------
    shares : sequence of Share
        Empty for an exact result, which gives 0.

    Returns
    -------
    float
        The larger of those with the errors of different sources fully correlated and not at all.

    Notes
    -----
    JCGM 100:2008, eq. 13, with 5.2.4 for errors that a common instrument makes. The variance is linear in an
    unknown coefficient of correlation, so the larger end bounds it.
    """
    if not shares:
        return 0.0
    slope = np.array([item.sensitivity for item in shares])
    own = np.diag([item.own_u_v**2 for item in shares])
    gain = np.array([item.gain_u_v for item in shares])
    offset_v = np.array([item.offset_u_v for item in shares])
    stated = np.outer(gain, gain) + np.outer(offset_v, offset_v)
    ends = (_correlation(shares, between=between) for between in (0.0, 1.0))
    return expanded(max(propagated(slope, own + stated * coefficients) for coefficients in ends))


def _correlation(shares: Sequence[Share], *, between: float) -> NDArray[np.float64]:
    """Coefficients of the stated errors, shape (n, n): 1 within a source, `between` otherwise."""
    sources = np.array([item.source for item in shares])
    return np.where(sources[:, None] == sources[None, :], 1.0, between)
