"""The time of a source as a preview tells it: from a column, with its gaps and unevenness, or stated."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from analysis.errors import ImportingError
from analysis.importing.going_on import GoingOn, going_on
from analysis.importing.judging import Judged
from analysis.importing.needs import Need, Problem, unbelievable
from analysis.importing.seen import TimeSeen, TimeSource
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.time_base import TimeBase, contradiction, is_believable, time_base
from analysis.importing.wishes import Wishes
from analysis.wording import plural, say

_NOT_WORTH_SAYING = 1e-3  # of an interval: the rounding of the numbers


def time_seen(spool: Spool, seen: Judged, wishes: Wishes) -> tuple[TimeSeen, tuple[Problem, ...]]:
    """Where the time of the rows comes from, whether it is even, and what has to be said of it first.

    Parameters
    ----------
    spool : Spool
        Filled, at least with the beginning.
    seen : Judged
        Its columns.
    wishes : Wishes
        What is decided.
    """
    place = seen.time_place
    if place is None:
        return _stated_time(wishes, spool.table.interval_s), ()
    name, factor = seen.columns[place].name, seen.factors[place]
    source, restarts = going_on(_of_the_first(spool, place), factor)
    try:
        base = time_base(source, factor, stated_s=spool.table.interval_s)
    except ImportingError as error:
        found = TimeSeen(TimeSource.COLUMN, error.sentence, place, None, even=False)
        return found, (Problem(Need.TIME_COLUMN, error.problem, error.action),)
    gaps = len(base.cuts)
    longest_s = max((_step_s(source, int(cut), factor) for cut in base.cuts), default=0.0)
    even = base.even or (gaps > 0 and _pieces_even(source, base, factor))
    said = {"name": name, "interval_s": base.interval_s, "rate_hz": 1.0 / base.interval_s}
    if base.note is not None:
        sentence = say("{note}.", note=base.note)
    elif not even:
        sentence = say(
            "The times in {name} are not evenly spaced: rows lie up to {off:.3g} intervals off.",
            **said,
            off=base.off_intervals,
        )
    elif gaps:
        sentence = plural(
            "The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz) with {count} gap of"
            " {longest_s:.3g} s.",
            "The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz) with {count} gaps of"
            " up to {longest_s:.3g} s.",
            count=gaps,
            longest_s=longest_s,
            **said,
        )
    elif base.off_intervals < _NOT_WORTH_SAYING:
        sentence = say("The times in {name} are evenly {interval_s:.6g} s apart ({rate_hz:.6g} Hz).", **said)
    else:
        sentence = say(
            "The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), and at most"
            " {off_percent:.2g} % of that off their places.",
            **said,
            off_percent=100.0 * base.off_intervals,
        )
    if restarts is not None:
        sentence = say("{sentence} Note: {restarts}.", sentence=sentence, restarts=restarts)
    against = contradiction(spool.table.interval_s, base.interval_s)
    if against is not None:
        sentence = say("{sentence} Note: {against}.", sentence=sentence, against=against)
    found = TimeSeen(
        TimeSource.COLUMN, sentence, place, base.interval_s, even, base.off_intervals, gaps, longest_s
    )
    uneven = Problem(
        Need.RESAMPLE,
        say("its times are not evenly spaced"),
        say("add --resample to interpolate onto even times, or name the sample interval"),
    )
    if not is_believable(base.interval_s):
        return found, (unbelievable(base.interval_s),)
    return found, () if even or wishes.resample else (uneven,)


def _of_the_first(spool: Spool, place: int) -> SpooledColumn:
    """The times; of several blocks those of the first."""
    times = spool.columns[place].scaled(spool.table.columns[place].scaling)
    return times.part(*spool.spans[0]) if spool.spans else times


def _stated_time(wishes: Wishes, in_file_s: float | None) -> TimeSeen:
    interval_s = wishes.interval_s if wishes.interval_s is not None else in_file_s
    if interval_s is None:
        return TimeSeen(
            TimeSource.UNKNOWN, say("How much time lies between two rows is not known."), even=False
        )
    said = {"interval_s": interval_s, "rate_hz": 1.0 / interval_s}
    if wishes.interval_s is not None:
        sentence = say("The rows are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), as was said.", **said)
        return TimeSeen(TimeSource.STATED, sentence, None, interval_s)
    sentence = say("The rows are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), as the file says.", **said)
    return TimeSeen(TimeSource.IN_FILE, sentence, None, interval_s)


def _step_s(source: SpooledColumn | GoingOn, row: int, factor: float) -> float:
    before, after = source.read(row - 1, row + 1).astype(np.float64)
    return float(after - before) * factor


def _pieces_even(source: SpooledColumn | GoingOn, base: TimeBase, factor: float) -> bool:
    edges = [0, *(int(cut) for cut in base.cuts), len(source)]
    pieces = [source.part(start, stop) for start, stop in pairwise(edges) if stop - start >= 2]
    return bool(pieces) and all(time_base(piece, factor).even for piece in pieces)
