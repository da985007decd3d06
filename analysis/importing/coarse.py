"""Times that are rounded to more than a row: how many rows share each, and what interval that makes."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import SampleSource
from analysis.errors import ImportingError
from analysis.importing.spool import blocks_of
from analysis.wording import Wording, say

_LEAST_CHANGES = 4  # three whole times between them
_LEAST_SHARED = 0.1  # of the rows that have the time of the row before
_OFF_ROWS = (
    2.5  # that the changes may lie off an even course: one by rounding, the rest by a hurried recorder
)
_SURE = 2e-3  # of an interval: as well as that the rows must say it where nothing is stated


@dataclass(frozen=True, slots=True)
class Coarse:
    """What rounded times say of the interval.

    Parameters
    ----------
    first_s, interval_s : float
        Time of the first row, and seconds between rows.
    note : Wording
        How that was found.
    """

    first_s: float
    interval_s: float
    note: Wording


@dataclass(frozen=True, slots=True)
class _Counted:
    """Rows between the first and the last change of the time, and how evenly the changes lie."""

    first_s: float
    interval_s: float
    share: float  # of the interval that it may be off
    off_rows: float
    fewest: int
    most: int
    tick_s: float


def coarse(source: SampleSource, factor: float, stated_s: float | None) -> Coarse | None:
    """The interval of rows that share their times; None where hardly any do.

    Parameters
    ----------
    source : SampleSource
        The times, none of them earlier than the one before.
    factor : float
        Seconds of one of their units.
    stated_s : float or None
        Seconds between rows as the file states them beside its rows.

    Raises
    ------
    ImportingError
        Where the rows do not say it well enough, or something else than is stated.
    """
    rows, times_s, shared = _changes(source, factor)
    if shared < _LEAST_SHARED * len(source):
        return None
    if len(rows) < _LEAST_CHANGES:
        if stated_s is not None and _fits_few(len(source), times_s, stated_s):
            first_s = float(times_s[0] - rows[0] * stated_s) if len(rows) else 0.0
            return Coarse(first_s, stated_s, _by_statement(stated_s))
        raise ImportingError(
            say("the time stands still: it is rounded to more than the sample interval"),
            say("name the sample interval instead"),
        )
    counted = _count(rows, times_s)
    said = {"fewest": counted.fewest, "most": counted.most, "tick_s": counted.tick_s}
    if counted.off_rows > _OFF_ROWS:
        raise ImportingError(
            say(
                "the time is rounded to {tick_s:.3g} s, and {fewest:,} to {most:,} rows share one: they do"
                " not lie evenly apart, or some are missing",
                **said,
            ),
            say("save it with finer times, or name the sample interval instead"),
        )
    if stated_s is not None:
        if abs(stated_s / counted.interval_s - 1.0) <= 3.0 * counted.share:
            return Coarse(_first_s(rows, times_s, stated_s), stated_s, _by_statement(stated_s))
        raise ImportingError(
            say(
                "the file says {stated_s:.4g} s between two rows, and {fewest:,} to {most:,} rows share"
                " {tick_s:.3g} s",
                stated_s=stated_s,
                **said,
            ),
            say("say which is right with --sample-interval SECONDS"),
        )
    alike = counted.fewest == counted.most
    if alike or counted.share <= _SURE:
        found_s = counted.tick_s / counted.most if alike else _plain(counted)
        note = say(
            "the times are rounded to {tick_s:.3g} s and {fewest:,} to {most:,} rows share one: the rows are"
            " taken as evenly {interval_s:.6g} s apart",
            interval_s=found_s,
            **said,
        )
        return Coarse(_first_s(rows, times_s, found_s), found_s, note)
    raise ImportingError(
        say("the time stands still: it is rounded to more than the sample interval"),
        say(
            "name the sample interval instead: about {interval_s:.3g} s, since {fewest:,} to {most:,} rows"
            " share {tick_s:.3g} s",
            interval_s=_plain(counted),
            **said,
        ),
    )


def _changes(source: SampleSource, factor: float) -> tuple[NDArray[np.int64], NDArray[np.float64], int]:
    """Rows with another time than the row before, their times, and how many rows have the same."""
    places, moments, before = [], [], 0
    for block in blocks_of(source, overlap=1):
        at = np.flatnonzero(np.diff(block) > 0.0) + 1
        places.append(at + before)
        moments.append(block[at] * factor)
        before += len(block) - 1
    rows = np.concatenate(places).astype(np.int64)
    return rows, np.concatenate(moments), len(source) - 1 - len(rows)


def _count(rows: NDArray[np.int64], times_s: NDArray[np.float64]) -> _Counted:
    between = int(rows[-1] - rows[0])
    interval_s = float(times_s[-1] - times_s[0]) / between
    off_s = (times_s - times_s[0]) - interval_s * (rows - rows[0])
    each = np.diff(rows)
    return _Counted(
        float(times_s[0] - rows[0] * interval_s),
        interval_s,
        1.0 / between,
        float(np.ptp(off_s)) / interval_s,
        int(each.min()),
        int(each.max()),
        float(np.median(np.diff(times_s))),
    )


def _fits_few(size: int, times_s: NDArray[np.float64], stated_s: float) -> bool:
    """Whether the stated interval can be true, where the time changes too seldom to count by."""
    return len(times_s) < 2 or size * stated_s > float(times_s[-1] - times_s[0])


def _first_s(rows: NDArray[np.int64], times_s: NDArray[np.float64], interval_s: float) -> float:
    return float(times_s[0] - rows[0] * interval_s)


def _by_statement(stated_s: float) -> Wording:
    return say(
        "the times are rounded to more than a row: the rows are taken as {interval_s:.6g} s apart, as the"
        " file says",
        interval_s=stated_s,
    )


def _plain(counted: _Counted) -> float:
    """The shortest decimal, of the interval or of the rate, that the rows allow."""
    for digits in range(1, 13):
        short = float(f"{counted.interval_s:.{digits}g}")
        by_rate = 1.0 / float(f"{1.0 / counted.interval_s:.{digits}g}")
        for found in (short, by_rate):
            if abs(found / counted.interval_s - 1.0) <= counted.share:
                return found
    return counted.interval_s
