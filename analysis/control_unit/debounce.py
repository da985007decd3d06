"""How long a fault must show before a control unit stores it: a continuous timer, or an up/down counter.

A control unit reads its input again and again, one reading a `tick_s`, and each reading either breaks a
rule or keeps it. The functions here take that row of readings and say how far the fault had ripened after
each one, from 0 to 1, and at which readings it was stored. Once stored, the fault counts again only after
the debounce has fallen back to nothing.

Sources: continuous timers stand in service information ("for more than 500 milliseconds": HUMMER H2 2009,
DTC C0625 or C0630). The up/down counter is the fault detection counter of ISO 14229-1, a signed byte that
means "failed" at +127 (from memory and from public descriptions; the standard itself was not read).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.errors import ControlUnitError
from analysis.wording import say

Flags = NDArray[np.bool_]
Floats = NDArray[np.float64]

FAILED_AT = 127
"""Count at which the fault detection counter of ISO 14229-1 says "failed"."""

_LONGEST_S = 3_600.0
_SAME_TIME = 1e-9  # of a reading: sums of decimal fractions miss by less


@dataclass(frozen=True, slots=True)
class ContinuousTimer:
    """The fault is stored once it has lasted without a break.

    Parameters
    ----------
    hold_s : float
        From the first reading that breaks the rule; 0 stores at once.

    Raises
    ------
    ControlUnitError
        Where `hold_s` is negative or longer than an hour.
    """

    hold_s: float

    def __post_init__(self) -> None:
        if not 0.0 <= self.hold_s <= _LONGEST_S:
            raise ControlUnitError(
                say(
                    "the time before the code sets must lie within 0 and {most_s:g} s, got {came_s:g} s",
                    most_s=_LONGEST_S,
                    came_s=self.hold_s,
                ),
                say("enter it in seconds"),
            )


@dataclass(frozen=True, slots=True)
class UpDownCounter:
    """The fault is stored once bad readings have outweighed good ones.

    Parameters
    ----------
    up, down : int
        Counts that a bad reading adds and that a good one takes away; the count never falls below 0.
    limit : int
        Count at which the fault is stored.

    Raises
    ------
    ControlUnitError
        Where `up` or `limit` is not positive, or `down` is negative.
    """

    up: int = 2
    down: int = 1
    limit: int = FAILED_AT

    def __post_init__(self) -> None:
        if self.up < 1 or self.limit < 1 or self.down < 0:
            raise ControlUnitError(
                say(
                    "a fault counter must count up by 1 or more, down by 0 or more, to a limit of 1 or more;"
                    " got {up}, {down} and {limit}",
                    up=self.up,
                    down=self.down,
                    limit=self.limit,
                ),
                say("correct the counter"),
            )


Debounce = ContinuousTimer | UpDownCounter


def ripeness(failed: Flags, debounce: Debounce, *, tick_s: float) -> Floats:
    """How far a fault had ripened after each reading.

    Parameters
    ----------
    failed : ndarray of bool, shape (n,)
        Whether each reading broke the rule.
    debounce : ContinuousTimer or UpDownCounter
        How long it must show.
    tick_s : float
        Seconds between readings.

    Returns
    -------
    ndarray, shape (n,)
        0 for nothing, 1 for stored; empty for no readings. A timer of 0 s is ripe at every bad reading.
    """
    if isinstance(debounce, ContinuousTimer):
        lasted_s = tick_s * (_run_so_far(failed) - 1.0)
        if debounce.hold_s == 0.0:
            return failed.astype(np.float64)
        share = np.where(failed, lasted_s / debounce.hold_s, 0.0)
        return np.asarray(np.clip(share + _SAME_TIME * (share > 0.0), 0.0, 1.0), dtype=np.float64)
    return np.asarray(_counted(failed, debounce) / debounce.limit, dtype=np.float64)


def stored_at(ripe: Floats) -> NDArray[np.intp]:
    """Readings at which the fault was stored: where it becomes ripe, and again after it has healed wholly.

    Parameters
    ----------
    ripe : ndarray, shape (n,)
        Of `ripeness`.

    Returns
    -------
    ndarray of int
        Indices, ascending; empty where it never ripened.
    """
    reached = np.flatnonzero(ripe >= 1.0)
    if reached.size == 0:
        return reached
    healed = np.cumsum(ripe <= 0.0)[reached]
    first = np.concatenate(([True], np.diff(healed) > 0))
    return reached[first]


def _run_so_far(failed: Flags) -> Floats:
    """Bad readings in a row up to and with each reading; 0 at a good one."""
    index = np.arange(1, failed.shape[0] + 1, dtype=np.float64)
    last_good = np.maximum.accumulate(np.where(failed, 0.0, index)) if failed.size else index
    return np.asarray(index - last_good, dtype=np.float64)


def _counted(failed: Flags, counter: UpDownCounter) -> Floats:
    """The count after each reading, between 0 and the limit.

    Held at 0 alone it would be the walk above its least value so far. The limit holds it too, so the
    stretches from one reaching of the limit to the next fall to 0 are walked one after the other.
    """
    steps = np.where(failed, float(counter.up), -float(counter.down))
    count = np.empty(steps.shape[0])
    start, level = 0, 0.0
    while start < steps.shape[0]:
        start, level = _walked(steps, count, start, level, counter.limit)
    return count


_STRETCH = 16_384


def _walked(steps: Floats, count: Floats, start: int, level: float, limit: int) -> tuple[int, float]:
    """Fill in one stretch, to the limit or along it; give back where the next begins, and the level there."""
    if level >= limit:  # at the limit: it stays there until the first good reading
        falls = np.flatnonzero(steps[start : start + _STRETCH] < 0.0)
        stop = start + (int(falls[0]) if falls.size else min(_STRETCH, steps.shape[0] - start))
        count[start:stop] = limit
        if falls.size:
            level = max(limit + steps[stop], 0.0)
            count[stop] = level
            stop += 1
        return max(stop, start + 1), level
    walk = level + np.cumsum(steps[start : start + _STRETCH])
    walk -= np.minimum(np.minimum.accumulate(walk), 0.0)
    over = np.flatnonzero(walk >= limit)
    stop = int(over[0]) + 1 if over.size else walk.shape[0]
    count[start : start + stop] = np.minimum(walk[:stop], limit)
    return start + stop, float(count[start + stop - 1])
