"""A clock of whole seconds and a column with the fraction of each second: together they are the time."""

from __future__ import annotations

import re
from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from analysis.importing.guesses import is_time
from analysis.importing.model import Column, clock_places
from analysis.importing.spool import Spool
from analysis.importing.units import TIME, unit_of, without_accents
from analysis.wording import say

_LOOK = 2500  # rows that show whether two columns belong together
_EVEN_SHARE = 0.9  # of the steps: the others may be gaps
_AT_ONCE = 512 * 1024
_NAMES = (  # without accents, in small letters; seconds of one
    (
        re.compile(r"^(?:ms|msecs?|millis?|milli ?s(?:ec(?:ond)?s?|ekunden?)?|millesim\w*|tausendstel\w*)$"),
        1e-3,
    ),
    (re.compile(r"^(?:[uµ]s|[uµ]secs?|micros?|mi[ck]ro ?s(?:ec(?:ond)?s?|ekunden?)?)$"), 1e-6),
    (re.compile(r"^(?:ns|nsecs?|nanos?|nano ?s(?:ec(?:ond)?s?|ekunden?)?)$"), 1e-9),
    (re.compile(r"^(?:1/100 ?s|hundredths?|hundertstel\w*|centi ?s(?:ec(?:ond)?s?|ekunden?)?)$"), 1e-2),
    (re.compile(r"^(?:1/10 ?s|tenths?|zehntel\w*|deci ?s(?:ec(?:ond)?s?)?)$"), 1e-1),
    (
        re.compile(r"^(?:sub|frac|fraction(?:al)?|bruchteil)[ .\-]?(?:of )?(?:s|secs?|seconds?|sekunden?)?$"),
        1.0,
    ),
)


def join_fractions(spool: Spool, said: int | None = None) -> None:
    """Add the fraction of each second to the whole seconds of a clock, where two columns are that.

    The column of the clock holds both from then on; `Spool.parts` says which other column is in it.

    Parameters
    ----------
    spool : Spool
        Filled.
    said : int or None
        The column that was said to hold the times.
    """
    columns, clocks = spool.table.columns, clock_places(spool.table)
    whole = {
        place: factor
        for place, column in enumerate(columns)
        if (factor := _seconds(column, place in clocks)) is not None
    }
    parts = {
        place: factor for place, column in enumerate(columns) if (factor := _fraction(column)) is not None
    }
    for clock, clock_s in whole.items():
        for part, part_s in parts.items():
            if (
                clock == part
                or said not in (None, clock)
                or not _belong(spool, clock, clock_s, part, part_s, clock in clocks)
            ):
                continue
            spool.refine(clock, _sums(spool, clock, part, part_s / clock_s))
            spool.parts[part] = columns[clock].name
            spool.notes.append(
                say(
                    "{name} is the fraction of each second of {clock}: both together are the time",
                    name=columns[part].name,
                    clock=columns[clock].name,
                )
            )
            return


def _seconds(column: Column, clock: bool) -> float | None:
    """Seconds of one unit of a column that may count whole seconds; None where it does not."""
    unit = unit_of(column.unit)
    if clock:
        return 1.0
    if not is_time(column.words, column.unit):
        return None
    return 1.0 if unit is None else unit.factor if unit.factor >= 1.0 else None


def _fraction(column: Column) -> float | None:
    """Seconds of one unit of a column that may hold fractions of a second; None where it does not."""
    unit = unit_of(column.unit)
    if unit is not None and unit.quantity == TIME and unit.factor < 1.0:
        return unit.factor
    name = without_accents(column.words.replace("_", " ")).strip()
    return next((factor for form, factor in _NAMES if form.match(name)), None)


def _belong(spool: Spool, clock: int, clock_s: float, part: int, part_s: float, written: bool) -> bool:
    """Whether seconds and fractions go on together, from the first rows to the last."""
    size = len(spool.columns[clock])
    if size < 3:
        return False
    seconds, fractions = (
        spool.columns[place].read(0, _LOOK).astype(np.float64) * factor
        for place, factor in ((clock, clock_s), (part, part_s))
    )
    if not _are_parts(seconds, fractions) or not _go_on(seconds, fractions, written):
        return False
    return all(
        _are_parts(
            spool.columns[clock].read(start, start + _AT_ONCE).astype(np.float64) * clock_s,
            spool.columns[part].read(start, start + _AT_ONCE).astype(np.float64) * part_s,
        )
        for start in range(0, size, _AT_ONCE)
    )


def _are_parts(seconds: NDArray[np.float64], fractions: NDArray[np.float64]) -> bool:
    """Whether one column holds whole seconds and the other less than a second, wherever they say anything."""
    known, parts = seconds[np.isfinite(seconds)], fractions[np.isfinite(fractions)]
    return bool((known == np.round(known)).all()) and bool(((parts >= 0.0) & (parts < 1.0)).all())


def _go_on(seconds: NDArray[np.float64], fractions: NDArray[np.float64], written: bool) -> bool:
    """Whether both together rise evenly, which each of them alone does not; the newest row may come first."""
    if not (np.isfinite(seconds).all() and np.isfinite(fractions).all()):
        return False
    ticks, parts = np.diff(seconds), np.diff(fractions)
    steps = ticks + parts
    if float(np.median(steps)) < 0.0:
        ticks, parts, steps = -ticks, -parts, -steps
    usual = float(np.median(steps))
    if not usual > 0.0 or ((steps < 0.0) & (ticks >= 0.0)).any():
        return False
    # All within one second only a clock says which.
    begins_again = bool((parts < 0.0).any()) if (ticks > 0.0).any() else written
    return begins_again and float(np.mean(np.abs(steps - usual) <= 0.5 * usual)) >= _EVEN_SHARE


def _sums(spool: Spool, clock: int, part: int, factor: float) -> Iterator[NDArray[np.float64]]:
    for start in range(0, len(spool.columns[clock]), _AT_ONCE):
        seconds, fractions = (
            spool.columns[place].read(start, start + _AT_ONCE).astype(np.float64) for place in (clock, part)
        )
        yield seconds + fractions * factor
