"""How many seconds one unit of a column of times is, where its heading says so and where it does not."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.importing.model import Column
from analysis.importing.units import unit_of, without_accents
from analysis.wording import say

_SINCE_1970 = (
    (1e17, 1e-9, say("nanoseconds")),
    (1e14, 1e-6, say("microseconds")),
    (1e11, 1e-3, say("milliseconds")),
    (1e9, 1.0, say("seconds")),
)
_DAY_S = 86_400.0
_DAYS = (20_000.0, 80_000.0)  # of a spreadsheet: 1954 to 2119, counted from 1900
_LEAST_DAY_STEP = 1e-4  # days; as seconds nobody records a wire of a sensor so fast, at such times
_PART_OF_DAY_STEP = 1e-5  # days: 0.9 s
_OF_DAY = re.compile(
    r"date|datum|\bday|uhrzeit|clock|of day|tageszeit|heure|\bhora|\bora\b|godz"
)  # small letters
_DOUBTFUL_STEP = 0.1  # ours: with so few rows a second nobody records a sweep, and in ms it is a usual rate
_SAME_STEP = 0.01
_LIKE_A_NUMBER = 1e-3  # how close an interval lies to one of two digits


@dataclass(frozen=True, slots=True)
class TimeUnit:
    """One unit of a column of times.

    Parameters
    ----------
    factor : float
        Seconds.
    note : str
        What was assumed; empty where the heading says it.
    doubtful : bool
        Whether somebody has to say it: the numbers may as well be milliseconds as seconds.
    step : float
        How far the rows lie apart, in that unit.
    """

    factor: float
    note: str = ""
    doubtful: bool = False
    step: float = 0.0


def time_unit(column: Column, times: NDArray[np.float64], *, clock: bool) -> TimeUnit:
    """Judge the unit of a column of times.

    Parameters
    ----------
    column : Column
        With its heading.
    times : ndarray, shape (n_look,)
        Some of its numbers, as the file has them, runs of neighbours among them.
    clock : bool
        Whether they were written as times of day or dates.

    Returns
    -------
    TimeUnit
        Without a unit: dates by their size, parts of a day by their steps, else seconds.
    """
    unit = unit_of(column.unit)
    if unit is not None:
        return TimeUnit(unit.factor)
    if clock or (column.unit and unit is None):
        return TimeUnit(1.0)
    finite = times[np.isfinite(times)]
    if len(finite) < 2:
        return TimeUnit(1.0)
    size, step = float(np.median(finite)), float(np.median(np.diff(finite)))
    for least, factor, name in _SINCE_1970:
        if size > least:
            note = say("the times in {name} are read as {unit} since 1970", name=column.name, unit=name)
            return TimeUnit(factor, note, step=step)
    if _DAYS[0] < size < _DAYS[1] and 0.0 < step < _LEAST_DAY_STEP:
        note = say("the times in {name} are read as days of a spreadsheet", name=column.name)
        return TimeUnit(_DAY_S, note, step=step)
    if _are_parts_of_a_day(finite, said=bool(_OF_DAY.search(without_accents(column.words)))):
        note = say(
            "the times in {name} are read as parts of a day, as a spreadsheet counts", name=column.name
        )
        return TimeUnit(_DAY_S, note, step=step)
    note = say(
        "column {name} has no unit and is read as seconds: its rows lie {step:.3g} s apart",
        name=column.name,
        step=step,
    )
    return TimeUnit(1.0, note, step > (1.0 - _SAME_STEP) * _DOUBTFUL_STEP, step)


def is_confirmed(unit: TimeUnit, interval_s: float | None) -> bool:
    """Whether what the file says of the time between two rows is what its times are read as.

    Parameters
    ----------
    unit : TimeUnit
        Of its times.
    interval_s : float or None
        As the file states it beside its rows.
    """
    return interval_s is not None and abs(unit.step * unit.factor / interval_s - 1.0) < _SAME_STEP


def _are_parts_of_a_day(times: NDArray[np.float64], *, said: bool) -> bool:
    """Whether the rows lie a plain number of seconds apart if a day is 1, and no plain number otherwise.

    Minutes do so too, of a plain number of rows a second: there the heading has to speak of a time of day.
    """
    some = times[: max(len(times) // 8, 2)]
    step = float(some[-1] - some[0]) / (len(some) - 1)
    if not 0.0 < step < _PART_OF_DAY_STEP or some[0] < 0.0 or float(times.max()) > 1.0:
        return False
    return _is_plain(step * _DAY_S) and not _is_plain(step) and (said or not _is_plain(1.0 / step))


def _is_plain(value: float) -> bool:
    return abs(float(f"{value:.2g}") / value - 1.0) < _LIKE_A_NUMBER
