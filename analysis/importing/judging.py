"""What each column of a table is: wishes first, then headings and behaviour, each with its reason."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Scaling
from analysis.errors import ImportingError
from analysis.importing.guesses import Guess, guess, is_count, is_counter, is_time, rises, said_role
from analysis.importing.model import Column, Table, clock_places
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.time_units import time_unit
from analysis.importing.units import VOLTAGE, is_share, unit_of
from analysis.importing.wishes import Wishes
from analysis.wording import say

_HOLDS_TIMES = say("it holds times")
_LOOK_SAMPLES = 20_000
_UNKNOWN_UNIT = re.compile(r"\[[^\[\]]+\]\s*$")  # a known one is taken off the heading
_MICROVOLTS = (1e5, 1.5e7)  # above are dates without marks
_MILLIVOLTS_FROM = 100.0  # a column without a unit that reads this much holds no volts of a vehicle


class Need(StrEnum):
    """What has to be said before a source can be brought in."""

    TABLE = "table"
    TIME_COLUMN = "time_column"
    TIME_UNIT = "time_unit"
    INTERVAL = "interval"
    RESAMPLE = "resample"
    FULL_SCALE = "full_scale"
    ROLES = "roles"


@dataclass(frozen=True, slots=True)
class Problem:
    """Why a source cannot be brought in as it stands.

    Parameters
    ----------
    need : Need
        What would help.
    problem, action : str
        As in `WornbandError`; the action names options of the command line.
    """

    need: Need
    problem: str
    action: str

    def error(self) -> ImportingError:
        """The same, to be raised."""
        return ImportingError(self.problem, self.action)


@dataclass(frozen=True, slots=True)
class Judged:
    """What every column of a table seems to be, whether or not that is enough to bring it in.

    Parameters
    ----------
    columns : tuple of Column
        With the units that were wished for.
    looks : tuple of ndarray, shape (n_look,)
        Samples from all over each column, in its own unit.
    factors : tuple of float
        Volts of one unit of each column, or seconds.
    guesses : mapping of int to Guess
        By place; the column of times is not among them.
    time_place : int or None
        The column of times.
    problems : tuple of Problem
        What has to be said first; empty where nothing has.
    notes : tuple of str
        What was assumed.
    """

    columns: tuple[Column, ...]
    looks: tuple[NDArray[np.float64], ...]
    factors: tuple[float, ...]
    guesses: Mapping[int, Guess]
    time_place: int | None
    problems: tuple[Problem, ...] = ()
    notes: tuple[str, ...] = ()


def judged(spool: Spool, wishes: Wishes) -> Judged:
    """Judge every column, as far as it goes.

    Raises
    ------
    ImportingError
        Where a wish names no column, or no unit.
    """
    columns = _with_units(spool.table.columns, wishes.units)
    looks = [look_at(source, column.scaling) for source, column in zip(spool.columns, columns, strict=True)]
    columns = [
        replace(item, unit="counts") if is_count(item.name, item.unit, look) else item
        for item, look in zip(columns, looks, strict=True)
    ]
    wanted = {place_of(name, columns): role for name, role in wishes.channels.items()}
    problems: list[Problem] = []
    notes: list[str] = []
    found = _time_place(columns, looks, wishes, set(wanted), spool.table)
    time_place = None if isinstance(found, Problem) else found
    clocks = clock_places(spool.table)
    factors = [
        _factor(column, look, wishes, spool.table.kind, [] if place in clocks else notes, problems)
        if place != time_place
        else 1.0
        for place, (column, look) in enumerate(zip(columns, looks, strict=True))
    ]
    if time_place is not None:
        unit = time_unit(columns[time_place], looks[time_place], clock=time_place in clocks)
        factors[time_place] = unit.factor
        notes += [unit.note] if unit.note and not unit.doubtful else []
        problems += [_doubtful(columns[time_place].name, unit.step)] if unit.doubtful else []
    factors = _millivolts_together(columns, looks, factors, time_place, notes)
    for name, factor in wishes.factors.items():
        factors[place_of(name, columns)] *= factor
    guesses = {
        place: Guess(None, _HOLDS_TIMES)
        if place in clocks and place not in wanted
        else _guess(column, looks[place], factors[place], wanted.get(place))
        for place, column in enumerate(columns)
        if place != time_place
    }
    if wanted:
        guesses = {p: g if p in wanted else Guess(None, say("it was not chosen")) for p, g in guesses.items()}
    guesses = _one_each(guesses, wanted)
    if isinstance(found, Problem):
        problems.insert(0, found)
    elif (
        found is not None
        and found not in clocks
        and _UNKNOWN_UNIT.search(columns[found].name)
        and not columns[found].unit
    ):
        problems.insert(0, _no_unit(columns[found].name))
    if not any(item.role for item in guesses.values()):
        problems.append(_no_role([columns[place].name for place in guesses]))
    problems += _not_in_volts(columns, guesses, wanted, {place_of(name, columns) for name in wishes.factors})
    problems += [_EVERY_ROW_TWICE] if _stand_twice(looks) else []
    return Judged(
        tuple(columns), tuple(looks), tuple(factors), guesses, time_place, tuple(problems), tuple(notes)
    )


def _no_unit(name: str) -> Problem:
    return Problem(
        Need.TIME_UNIT,
        say("the unit of the times in {name} is not known", name=name),
        say("say it with --unit COLUMN=UNIT: s, ms, us or min"),
    )


def _doubtful(name: str, step: float) -> Problem:
    return Problem(
        Need.TIME_UNIT,
        say("the times in {name} go up by {step:,.6g}, and no unit is given", name=name, step=step),
        say("say it with --unit COLUMN=UNIT: s, ms, us or min"),
    )


_EVERY_ROW_TWICE = Problem(
    Need.TABLE,
    say("every row stands in it twice"),
    say("save the recording again, with each sample once"),
)


def _stand_twice(looks: Sequence[NDArray[np.float64]]) -> bool:
    """Whether each row is like the one before it, pair by pair, and the pairs differ."""
    pairs = [look[: len(look) // 2 * 2].reshape(-1, 2) for look in looks]
    alike = all(np.array_equal(pair[:, 0], pair[:, 1], equal_nan=True) for pair in pairs)
    changing = any(len(pair) > 2 and float(np.mean(np.diff(pair[:, 0]) != 0)) > 0.5 for pair in pairs)
    return alike and changing


def _not_in_volts(
    columns: Sequence[Column], guesses: Mapping[int, Guess], wanted: Mapping[int, Role], scaled: set[int]
) -> list[Problem]:
    """A chosen wire, or the only signal, in per cent or counts: nobody but the technician knows the volts."""
    signal = any(item.role is Role.SIGNAL for item in guesses.values())
    for place in guesses:
        name, unit = columns[place].name, columns[place].unit
        asked = place in wanted or (not signal and said_role(name) is Role.SIGNAL)
        if asked and place not in scaled and is_share(unit):
            return [
                Problem(
                    Need.ROLES,
                    say("{name} is in {unit}, not in volts", name=name, unit=unit),
                    say(
                        "say how many volts 1 is with --channel {name}=signal --factor {name}=VOLTS",
                        name=name,
                    ),
                )
            ]
    return []


def unbelievable(interval_s: float) -> Problem:
    """What is said where the rows would lie nanoseconds or hours apart."""
    return Problem(
        Need.TIME_UNIT,
        say("its rows would lie {interval_s:.3g} s apart", interval_s=interval_s),
        say("say the unit of its times with --unit COLUMN=UNIT, or the sample interval"),
    )


def _no_role(names: list[str]) -> Problem:
    return Problem(
        Need.ROLES,
        say("no column looks like a wire of the sensor; there are: {names}", names=", ".join(names) or "-"),
        say("say which is which with --channel COLUMN=ROLE"),
    )


def _with_units(columns: tuple[Column, ...], units: Mapping[str, str]) -> list[Column]:
    changed = list(columns)
    for name, unit in units.items():
        if unit_of(unit) is None:
            raise ImportingError(
                say("{unit} is no unit of voltage or time", unit=unit), say("say V, mV, s, ms or us")
            )
        place = place_of(name, changed)
        changed[place] = replace(changed[place], unit=unit)
    return changed


def place_of(name: str, columns: Sequence[Column]) -> int:
    """The column of that name, in any case, or of that number from 1.

    Raises
    ------
    ImportingError
        Where there is none.
    """
    for spelled in (str, str.casefold):
        for place, column in enumerate(columns):
            if spelled(column.name) == spelled(name.strip()):
                return place
    if name.strip().isdecimal() and 1 <= int(name) <= len(columns):
        return int(name) - 1
    there = ", ".join(column.name for column in columns[:20])
    raise ImportingError(
        say("it has no column {name}; there are: {there}", name=name, there=there), say("name one of these")
    )


def look_at(source: SpooledColumn, scaling: Scaling) -> NDArray[np.float64]:
    """Samples from eight places between beginning and end, scaled; shape (n_look,), at most 20,000."""
    third = max(_LOOK_SAMPLES // 8, 1)
    starts = np.linspace(0, max(len(source) - third, 0), 8).astype(int)
    return scaling.volts(
        np.concatenate([source.read(int(start), int(start) + third) for start in np.unique(starts)])
    )


def _time_place(
    columns: list[Column],
    looks: list[NDArray[np.float64]],
    wishes: Wishes,
    taken: set[int],
    table: Table,
) -> int | Problem | None:
    if wishes.time_column is not None:
        return place_of(wishes.time_column, columns)
    free = [place for place in range(len(columns)) if place not in taken]
    named = [place for place in free if is_time(columns[place].name, columns[place].unit)]
    named = named or [place for place in free if place in clock_places(table)]
    if wishes.interval_s is not None:
        return None
    if len(named) > 1:
        there = ", ".join(columns[place].name for place in named)
        return Problem(
            Need.TIME_COLUMN,
            say("several columns could be the time: {there}", there=there),
            say("say which with --time COLUMN"),
        )
    if named:
        return named[0]
    if table.interval_s is not None:
        return None
    rising = [
        p
        for p in free
        if rises(looks[p][: _LOOK_SAMPLES // 8]) and not is_counter(columns[p].name, looks[p][:99])
    ]
    if rising and (len(rising) == 1 or rising[0] == free[0]):
        return rising[0]  # a slow sweep may rise evenly too; the time comes before it
    strange = _unread_times(table)
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


def _factor(
    column: Column,
    look: NDArray[np.float64],
    wishes: Wishes,
    kind: str,
    notes: list[str],
    problems: list[Problem],
) -> float:
    known = unit_of(column.unit)
    if known is not None and known.quantity == VOLTAGE:
        return known.factor
    if kind == "wav":
        if wishes.full_scale_v is None:
            scale = Problem(
                Need.FULL_SCALE,
                say("a WAV file does not say how many volts full scale is"),
                say("say it with --full-scale VOLTS"),
            )
            problems += [] if scale in problems else [scale]
        return wishes.full_scale_v or 1.0
    finite = np.abs(look[np.isfinite(look)])
    high = float(np.quantile(finite, 0.9)) if len(finite) else 0.0
    if not column.unit and _MICROVOLTS[0] < high < _MICROVOLTS[1]:
        notes.append(say("column {name} has no unit and is read as microvolts", name=column.name))
        return 1e-6
    if not column.unit and high > _MILLIVOLTS_FROM:
        notes.append(say("column {name} has no unit and is read as millivolts", name=column.name))
        return 1e-3
    return 1.0


def _millivolts_together(
    columns: Sequence[Column],
    looks: Sequence[NDArray[np.float64]],
    factors: Sequence[float],
    time_place: int | None,
    notes: list[str],
) -> list[float]:
    """Where one column without a unit reads millivolts, so do the others whose numbers are whole too."""
    bare = [place for place, column in enumerate(columns) if not column.unit and place != time_place]
    if not any(factors[place] == 1e-3 for place in bare):
        return list(factors)
    found = list(factors)
    for place in bare:
        finite = looks[place][np.isfinite(looks[place])]
        whole = bool(len(finite)) and bool((finite == np.round(finite)).all())
        if found[place] == 1.0 and whole and not is_counter(columns[place].name, looks[place][:99]):
            found[place] = 1e-3
            notes.append(say("column {name} has no unit and is read as millivolts", name=columns[place].name))
    return found


def _guess(column: Column, look: NDArray[np.float64], factor: float, wanted: Role | None) -> Guess:
    if wanted is not None:
        return Guess(wanted, say("it was chosen"))
    if is_time(column.name, column.unit):
        return Guess(None, _HOLDS_TIMES)
    if is_counter(column.name, look[:99]):
        return Guess(None, say("it counts the rows"))
    return guess(column.name, column.unit, look * factor)


def _one_each(guesses: dict[int, Guess], wanted: Mapping[int, Role]) -> dict[int, Guess]:
    """A role for one column each: a second signal is one, any other second is left out."""
    taken: set[Role] = set(wanted.values())
    decided: dict[int, Guess] = {}
    for place, found in sorted(guesses.items(), key=lambda item: not item[1].sure):
        role = found.role
        if place not in wanted and role in taken:
            second = role is Role.SIGNAL and Role.SECOND_SIGNAL not in taken
            role = Role.SECOND_SIGNAL if second else None
            found = Guess(role, found.reason if second else say("another column is that already"))
        if role is not None:
            taken.add(role)
        decided[place] = found
    return dict(sorted(decided.items()))
