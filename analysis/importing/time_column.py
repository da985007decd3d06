"""Which column holds the times: by its heading; of several that agree the finest; else the one that rises."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.importing.guesses import is_counter, is_time, rises
from analysis.importing.model import Column, Table, clock_places
from analysis.importing.needs import Need, Problem
from analysis.importing.time_base import rounding
from analysis.importing.time_units import time_unit
from analysis.wording import Wording, say

_RUN = 2500  # samples of a look that lie side by side, from the first on
_SAME_CLOCK = 1e-3  # of the record: two clocks of one recorder hardly drift further apart
_SAME_MOMENT = 0.1  # of an interval


@dataclass(frozen=True, slots=True)
class TimeColumn:
    """The column of times, or why there is none.

    Parameters
    ----------
    place : int or None
        Of the column; None where there is none.
    problem : Problem or None
        What has to be said first.
    note : Wording or None
        How it was chosen among several.
    """

    place: int | None = None
    problem: Problem | None = None
    note: Wording | None = None


def time_column(
    columns: Sequence[Column],
    looks: Sequence[NDArray[np.float64]],
    table: Table,
    *,
    taken: frozenset[int] = frozenset(),
    stated: bool = False,
) -> TimeColumn:
    """Find the column of times.

    Parameters
    ----------
    columns : sequence of Column
        Of the table.
    looks : sequence of ndarray, shape (n_look,)
        The same rows of each, from eight places between beginning and end.
    table : Table
        That they belong to.
    taken : frozenset of int
        Columns that were said to be wires.
    stated : bool
        Whether somebody said how far the rows lie apart.
    """
    if stated:
        return TimeColumn()
    clocks = clock_places(table)
    free = [place for place in range(len(columns)) if place not in taken]
    named = [place for place in free if is_time(columns[place].words, columns[place].unit)]
    named = named or [place for place in free if place in clocks]
    if len(named) > 1:
        return _among(named, columns, looks, clocks)
    if named:
        return TimeColumn(named[0])
    if table.interval_s is not None:
        return TimeColumn()
    rising = [place for place in free if _may_be_time(columns[place], looks[place])]
    if rising and (len(rising) == 1 or rising[0] == free[0]):
        return TimeColumn(rising[0])  # a slow sweep may rise evenly too; the time comes before it
    return TimeColumn(problem=_no_interval(_unread_times(table)))


def _may_be_time(column: Column, look: NDArray[np.float64]) -> bool:
    run = look[:_RUN]
    forward = run if not len(run) or run[-1] >= run[0] else run[::-1]  # the newest row may come first
    return rises(forward) and not is_counter(column.words, look[:99])


def _among(
    named: Sequence[int],
    columns: Sequence[Column],
    looks: Sequence[NDArray[np.float64]],
    clocks: frozenset[int],
) -> TimeColumn:
    """Of several columns of times the finest, where they agree as far as they go."""
    going = [place for place in named if _goes_on(looks[place])] or list(named)
    if len(going) == 1:
        return TimeColumn(going[0])
    courses = [_Course(place, columns[place], looks[place], place in clocks) for place in going]
    sure = [item for item in courses if not item.doubtful] or courses
    finest = min(sure, key=lambda item: item.rounding_s)
    names = ", ".join(item.name for item in courses)
    if all(finest.agrees(item) for item in sure):
        equal = all(item.rounding_s == finest.rounding_s for item in courses)
        note = (
            say("the columns {names} hold the same times; {name} is used", names=names, name=finest.name)
            if equal
            else say(
                "the columns {names} agree as far as they go; the finest, {name}, is used",
                names=names,
                name=finest.name,
            )
        )
        return TimeColumn(finest.place, note=note)
    there = ", ".join(f"{item.name} ({item.step_s:.3g} s)" for item in courses)
    problem = Problem(
        Need.TIME_COLUMN,
        say("several columns could be the time, and they do not agree on a row's step: {there}", there=there),
        say("say which with --time COLUMN"),
    )
    return TimeColumn(problem=problem)


def _goes_on(look: NDArray[np.float64]) -> bool:
    """Whether a column has a number in every row, and not always the same: a date beside its time of day."""
    return bool(np.isfinite(look).all()) and bool((look != look[0]).any())


class _Course:
    """How a column of times goes, in seconds."""

    def __init__(self, place: int, column: Column, look: NDArray[np.float64], clock: bool) -> None:
        unit = time_unit(column, look, clock=clock)
        self.place, self.name, self.heading, self.doubtful = place, column.name, column.words, unit.doubtful
        self.time_s = look * unit.factor
        self.rounding_s = rounding(look) * unit.factor
        run = self.time_s[:_RUN]
        self.step_s = abs(float(run[-1] - run[0])) / (len(run) - 1)

    def agrees(self, other: _Course) -> bool:
        """Whether the other says the same as far as it goes; under one heading from the same moment on."""
        off_s = np.abs((self.time_s - self.time_s[0]) - (other.time_s - other.time_s[0]))
        allowed_s = 1.01 * max(self.rounding_s, other.rounding_s) + _SAME_CLOCK * float(np.ptp(self.time_s))
        if self.heading == other.heading:
            off_s = np.abs(self.time_s - other.time_s)
            allowed_s = _SAME_MOMENT * self.step_s
        return bool((off_s <= allowed_s).all())


def _no_interval(strange: str) -> Problem:
    return Problem(
        Need.INTERVAL,
        say("the times in {name} are written in a way that is not read here", name=strange)
        if strange
        else say("it does not say how much time lies between two rows"),
        say("say it with --sample-interval SECONDS or --sample-rate HERTZ"),
    )


def _unread_times(table: Table) -> str:
    """The column of a text whose heading says time and whose cells say nothing; empty where there is none."""
    written = table.dialect
    if written is None:
        return ""
    columns = zip(written.names, written.units, written.numeric, strict=True)
    return next((name for name, unit, numeric in columns if not numeric and is_time(name, unit)), "")
