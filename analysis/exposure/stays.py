"""Stays in the band, and the readings that a control unit takes of them.

Where a stay and the contact are known, a continuous timer has a closed form. The contact is a chain of two
states, broken a share p of the time and for `mean_run_s` at a stretch, so one broken reading follows another
with the chance ``q = p + (1 - p) exp(-tick / ((1 - p) mean_run))``. In a stay of n readings a run of m begins
at the first reading with the chance p, or at any later one with p (1 - q), and lasts with ``q^(m - 1)``: the
expected number of runs of m or more is ``p q^(m - 1) (1 + (n - m)(1 - q))``. An up/down counter carries over
from stay to stay and has none; it is walked through a simulated drive.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from analysis.control_unit.debounce import ContinuousTimer, Debounce, Flags, Floats, UpDownCounter
from analysis.exposure.contact import Contact
from analysis.intervals import Interval

Counts = NDArray[np.int64]

_ALMOST_NEVER = 1e-12
_STRETCH = 2_048
_SEED = 14229


def inside(drive: Floats, band_mm: Interval, rest_mm: float, rms_mm: float) -> Flags:
    """Where a drive, in units of its r.m.s., is in the band, same shape."""
    low, high = (band_mm.start - rest_mm) / rms_mm, (band_mm.stop - rest_mm) / rms_mm
    found: Flags = np.logical_and(drive >= low, drive < high)
    return found


def run_lengths(flags: Flags) -> Counts:
    """Lengths of the runs of true, in order; empty where there is none."""
    edges = np.flatnonzero(np.diff(flags, prepend=False, append=False))
    return np.asarray(edges[1::2] - edges[::2], dtype=np.int64)


def readings_at(flags: Flags, rate_hz: float, tick_s: float) -> Flags:
    """What a control unit that reads every `tick_s` sees of samples at `rate_hz`."""
    count = int(flags.shape[0] / rate_hz / tick_s)
    picked = np.rint(np.arange(count) * (tick_s * rate_hz)).astype(np.int64)
    return np.asarray(flags[np.minimum(picked, flags.shape[0] - 1)], dtype=np.bool_)


def codes_per_s(seen: Flags, contact: Contact, debounce: Debounce, tick_s: float) -> float:
    """How often a fault is stored while a control unit reads, expected over the contact.

    Parameters
    ----------
    seen : ndarray of bool, shape (n,)
        Readings that were taken in the band.
    contact : Contact
        How the band breaks the rule.
    debounce : ContinuousTimer or UpDownCounter
        Of the rule.
    tick_s : float
        Seconds between readings.

    Returns
    -------
    float
        Times a second; 0 for no readings.
    """
    if seen.shape[0] == 0 or contact.share <= 0.0:
        return 0.0
    if isinstance(debounce, ContinuousTimer):
        needed = readings_needed(debounce.hold_s, tick_s)
        runs = expected_runs(run_lengths(seen), needed, contact, tick_s)
        return runs / (float(seen.shape[0]) * tick_s)
    broken = seen & broken_readings(np.random.default_rng(_SEED), seen.shape[0], contact, tick_s)
    return storings(broken, debounce) / (float(seen.shape[0]) * tick_s)


def readings_needed(hold_s: float, tick_s: float) -> int:
    """Broken readings in a row that a continuous timer asks for: the first, and as many as fill its time."""
    return math.ceil(hold_s / tick_s - 1e-9) + 1


def stays_broken(contact: Contact, tick_s: float) -> float:
    """Chance that a broken reading is followed by another."""
    if contact.share >= 1.0:
        return 1.0
    rate = tick_s / ((1.0 - contact.share) * contact.mean_run_s) if contact.mean_run_s > 0.0 else math.inf
    return contact.share + (1.0 - contact.share) * math.exp(-rate)


def expected_runs(stays: Counts, needed: int, contact: Contact, tick_s: float) -> float:
    """Expected number of runs of `needed` broken readings or more, over stays of so many readings each."""
    long = stays[stays >= needed].astype(np.float64)
    if long.size == 0 or contact.share <= 0.0:
        return 0.0
    follows = stays_broken(contact, tick_s)
    lasting = contact.share * follows ** (needed - 1)
    return float(lasting * (long.size + (long - needed).sum() * (1.0 - follows)))


def broken_readings(rng: np.random.Generator, count: int, contact: Contact, tick_s: float) -> Flags:
    """Readings of the contact as a chain of two states, shape (count,), true where it is broken."""
    if contact.share >= 1.0:
        return np.ones(count, dtype=np.bool_)
    follows = stays_broken(contact, tick_s)
    mean_broken = 1.0 / max(1.0 - follows, _ALMOST_NEVER)
    mean_sound = mean_broken * (1.0 - contact.share) / contact.share
    pairs = int(1.2 * count / (mean_broken + mean_sound)) + 20
    while True:
        broken = rng.geometric(1.0 / mean_broken, pairs)
        sound = rng.geometric(min(1.0 / mean_sound, 1.0), pairs)
        ends = np.cumsum(np.column_stack([broken, sound]).ravel())
        if ends[-1] >= count:
            break
        pairs *= 2
    state = np.searchsorted(ends, np.arange(count), side="right") % 2 == 0
    return np.roll(state, int(rng.integers(count)) if count else 0)


def storings(broken: Flags, counter: UpDownCounter) -> int:
    """How often a counter reaches its limit, begun anew after each time."""
    steps = np.where(broken, float(counter.up), -float(counter.down))
    start, level, stored = 0, 0.0, 0
    while start < steps.shape[0]:
        walk = level + np.cumsum(steps[start : start + _STRETCH])
        walk -= np.minimum(np.minimum.accumulate(walk), 0.0)
        over = np.flatnonzero(walk >= counter.limit)
        stored += int(over.size > 0)
        level = 0.0 if over.size else float(walk[-1])
        start += int(over[0]) + 1 if over.size else walk.shape[0]
    return stored
