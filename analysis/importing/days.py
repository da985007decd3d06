"""A column of dates beside a clock: on which day the first row was taken, and the last one."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from analysis.importing.instants import day_of

_DATE = re.compile(r"(?P<a>\d{1,4})(?P<mark>[-./])(?P<b>\d{1,2})(?P=mark)(?P<c>\d{1,4})")


@dataclass(frozen=True, slots=True)
class Days:
    """The days of a recording.

    Parameters
    ----------
    place : int
        The cell of a row that holds them.
    first, last : datetime
        Of the first row and of the last one, at midnight.
    """

    place: int
    first: datetime
    last: datetime


def days_beside(
    rows: Sequence[Sequence[str]],
    end: Sequence[Sequence[str]],
    numeric: Sequence[bool],
    clock: Sequence[bool],
) -> Days | None:
    """The days in a column of dates beside one of times of day, or None.

    Parameters
    ----------
    rows : sequence of sequence of str
        Cells of the first row and of some others.
    end : sequence of sequence of str
        Cells of the last lines, which need not be rows.
    numeric, clock : sequence of bool
        Which cells are numbers, and which of these are times of day.

    Returns
    -------
    Days or None
        None too where there are several such columns, or where the month or the day may come first.
    """
    if not any(clock) or not rows:
        return None
    found = []
    for place, use in enumerate(numeric):
        cells = [row[place].strip() for row in rows if place < len(row) and row[place].strip()]
        days = [] if use else [_day(cell) for cell in cells]
        known = [day for day in days if day is not None]
        if known and len(known) == len(days):
            last = [day for row in end if place < len(row) and (day := _day(row[place].strip())) is not None]
            found.append(Days(place, known[0], [*known, *last][-1]))
    return found[0] if len(found) == 1 else None


def _day(cell: str) -> datetime | None:
    found = _DATE.fullmatch(cell)
    if found is None:
        return None
    a, mark, b, c = found["a"], found["mark"], found["b"], found["c"]
    if len(a) != 4 and (mark == "-" or (mark == "/" and int(a) <= 12 and int(b) <= 12 and int(a) != int(b))):
        return None  # nobody knows which of them is the day
    return day_of(a, mark, b, c)
