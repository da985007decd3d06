"""A column of times: is it even, and if not, where and by how much."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import SampleSource
from analysis.errors import ImportingError
from analysis.importing.coarse import coarse
from analysis.progress import Tick, ignore
from analysis.wording import Wording, say

_AT_ONCE = 512 * 1024
_EVEN = 0.1
"""Share of an interval that a sample may lie off its place and still count as evenly spaced (ours)."""

_SAME = 0.01  # of an interval: what is stated may be rounded
_GAP = 1.5
"""Intervals between two samples from which one is missing between them."""

_FLOAT = 8.0 * float(np.finfo(np.float64).eps)  # what two subtractions and a division may lose
_ON_GRID = 1e-4  # of an interval
_NONE = np.empty(0, dtype=np.int64)
_MOST_PIECES = 200
_LEAST_A_PIECE = 6  # rows on the average: where gaps come closer, the rows were kept as they came


@dataclass(frozen=True, slots=True)
class TimeBase:
    """What a column of times says.

    Parameters
    ----------
    first_s, interval_s : float
        Time of the first row, and the interval that fits all rows.
    off_intervals : float
        How far the worst row lies off its place, in intervals; the rounding of the times is in it.
    even : bool
        Whether the rows may be taken as evenly spaced.
    cuts : ndarray of int64
        Rows that come after a gap, where the pieces between them are even on their own.
    note : Wording or None
        How the interval was found, where the times alone do not say it.
    """

    first_s: float
    interval_s: float
    off_intervals: float
    even: bool
    cuts: NDArray[np.int64]
    note: Wording | None = None


def time_base(
    source: SampleSource, factor: float, tick: Tick = ignore, *, stated_s: float | None = None
) -> TimeBase:
    """Look at a column of times.

    Parameters
    ----------
    source : SampleSource
        The times, as the file has them.
    factor : float
        Seconds of one of its units.
    tick : Tick
        Progress.
    stated_s : float, optional
        Seconds between rows as the file states them: used where its times are rounded to more.

    Raises
    ------
    ImportingError
        Where a time is missing or earlier than the one before, or rounded to more than can be made up for.
    """
    size = len(source)
    if size < 2:
        raise ImportingError(say("it holds fewer than two rows"), say("record the sensor again"))
    first, last = (float(source.read(place, place + 1)[0]) * factor for place in (0, size - 1))
    usual, repeated = _checked_steps(source, factor, tick)
    shared = coarse(source, factor, stated_s) if repeated else None
    if shared is not None:
        return TimeBase(shared.first_s, shared.interval_s, 0.0, True, _NONE, shared.note)
    rounding_s, furthest_s = _rounding_s(source, factor), max(abs(first), abs(last))
    interval = _round_interval((last - first) / (size - 1), size, rounding_s, furthest_s)
    cuts = _gaps(source, factor, usual)
    off = _worst_offset(source, factor, first, interval)
    even = off <= max(_EVEN, 1.01 * rounding_s / interval)
    if not even and len(cuts) and abs(usual / interval - 1.0) > _SAME / size:
        interval = _round_interval(usual, size, rounding_s, furthest_s)  # rows are missing: the others lie so
    if not even and len(cuts) and len(cuts) < _MOST_PIECES and _LEAST_A_PIECE * len(cuts) <= size:
        return TimeBase(first, _round_interval(usual, size, rounding_s, furthest_s), off, False, cuts)
    return TimeBase(first, interval, off, even, _NONE)


def contradiction(stated_s: float | None, interval_s: float) -> Wording | None:
    """What is said where a file states another interval than its times have; None where they agree.

    Parameters
    ----------
    stated_s : float or None
        As the file states it beside its rows.
    interval_s : float
        Of its times.
    """
    if stated_s is None or abs(stated_s - interval_s) <= _SAME * interval_s:
        return None
    return say(
        "the file says {stated_s:.4g} s between two rows, and its times say {interval_s:.4g} s: the times"
        " count",
        stated_s=stated_s,
        interval_s=interval_s,
    )


def is_believable(interval_s: float) -> bool:
    """Whether a recorder that watches the wires of a sensor may take its samples so far apart.

    Outside of 10 ns to a minute the times were read in a wrong unit. Ours; the fastest recorders there are
    take a sample every few nanoseconds, for some microseconds, and no sensor of a vehicle needs that.
    """
    return 1e-8 <= interval_s <= 60.0


def _steps(source: SampleSource, factor: float) -> Iterator[tuple[int, NDArray[np.float64]]]:
    for start in range(0, len(source) - 1, _AT_ONCE):
        times = source.read(start, min(start + _AT_ONCE + 1, len(source))).astype(np.float64)
        yield start, np.diff(times) * factor


def _checked_steps(source: SampleSource, factor: float, tick: Tick) -> tuple[float, int]:
    """The usual step, and how many are nought, as in a rounded column; none may lead backwards."""
    middles, repeated = [], 0
    for start, steps in _steps(source, factor):
        if np.isnan(steps).any():
            raise ImportingError(
                say("the time of row {row:,} is missing", row=start + int(np.argmax(np.isnan(steps))) + 2),
                say("repair the table, or name the sample interval instead"),
            )
        if (steps < 0).any():
            raise ImportingError(
                say("the time runs backwards at row {row:,}", row=start + int(np.argmax(steps < 0)) + 2),
                say("sort or split the table, or name the sample interval instead"),
            )
        repeated += len(steps) - int(np.count_nonzero(steps))
        middles.append(float(np.median(steps)))
        tick(start / len(source))
    return float(np.median(middles)), repeated


def _rounding_s(source: SampleSource, factor: float) -> float:
    """The step that the times are rounded to, in seconds, as far as the first rows show it."""
    return rounding(source.read(0, 20_000).astype(np.float64)) * factor


def rounding(times: NDArray[np.float64]) -> float:
    """The decimal that times are rounded to, in their own unit; 0 where they are not.

    Parameters
    ----------
    times : ndarray, shape (n_times,)
        Some of them.
    """
    for digits in range(13):
        scaled = times * 10.0**digits
        if np.all(np.abs(scaled - np.round(scaled)) <= 1e-9 * np.maximum(np.abs(scaled), 1.0)):
            return float(10.0**-digits)
    return 0.0


def _gaps(source: SampleSource, factor: float, usual: float) -> NDArray[np.int64]:
    limit = _GAP * usual
    if not _on_grid(source, factor, usual):
        limit += 2.0 * _rounding_s(source, factor)
    found = [np.flatnonzero(steps > limit) + start + 1 for start, steps in _steps(source, factor)]
    return np.concatenate(found).astype(np.int64)


def _on_grid(source: SampleSource, factor: float, usual: float) -> bool:
    """Whether every step is a whole number of usual ones: then the times are not rounded to less."""
    if not usual > 0.0:
        return False
    for _, steps in _steps(source, factor):
        shares = steps / usual
        if float(np.abs(shares - np.round(shares)).max()) > _ON_GRID:
            return False
    return True


def _worst_offset(source: SampleSource, factor: float, first: float, interval: float) -> float:
    worst = 0.0
    for start in range(0, len(source), _AT_ONCE):
        times = source.read(start, start + _AT_ONCE).astype(np.float64) * factor
        places = first + interval * np.arange(start, start + len(times), dtype=np.float64)
        worst = max(worst, float(np.abs(times - places).max()) / interval)
    return worst


def _round_interval(interval: float, size: int, rounding_s: float, furthest_s: float) -> float:
    """The shortest decimal, of the interval or of the rate, that the times allow.

    Of as many digits first one within what the times are rounded to, so that 1/44100 s stays what it was to
    the last bit; else one within a thousandth of an interval over the whole record, for added-up times.
    """
    loose = 1e-3 * interval / size
    exact = _FLOAT * (interval + furthest_s / max(size - 1, 1))
    tight = min(loose, max(rounding_s / max(size - 1, 1), exact))
    for digits in range(3, 13):
        short = float(f"{interval:.{digits}g}")
        by_rate = 1.0 / float(f"{1.0 / interval:.{digits}g}")
        for allowed in (tight, loose):
            for found in (short, by_rate):
                if abs(found - interval) <= allowed:
                    return found
    return interval
