"""Which column is what: the technician's wishes first, then headings and behaviour, each with its reason."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Scaling, Step
from analysis.errors import ImportingError
from analysis.importing.guesses import Guess, guess, is_counter, is_time, rises
from analysis.importing.model import Column
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.units import VOLTAGE, unit_of
from analysis.wording import say

_LOOK_SAMPLES = 20_000
_MILLIVOLTS_FROM = 100.0  # a column without a unit that reads this much holds no volts of a vehicle


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the technician, or a recipe, has decided; whatever is left open is guessed.

    Parameters
    ----------
    channels : mapping of str to Role
        Roles by column, named or counted from 1. Where there are any, other columns are left out.
    time_column : str or None
        The column of times.
    interval_s : float or None
        Seconds between rows; a column of times is then not looked at.
    units : mapping of str to str
        Units by column, where the file says none or the wrong one.
    full_scale_v : float or None
        Volts at full scale of a WAV file.
    step : Step or None
        What the records were taken for.
    resample : bool
        Whether times that are not evenly spaced may be interpolated onto even ones.
    attributes : mapping
        Of the capture: ``vehicle``, ``complaint`` and the rest.
    """

    channels: Mapping[str, Role] = field(default_factory=dict)
    time_column: str | None = None
    interval_s: float | None = None
    units: Mapping[str, str] = field(default_factory=dict)
    full_scale_v: float | None = None
    step: Step | None = None
    resample: bool = False
    attributes: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class PlannedChannel:
    """A column that becomes a channel."""

    place: int
    role: Role
    scaling: Scaling
    reason: str


@dataclass(frozen=True, slots=True)
class Plan:
    """What becomes of a table.

    Parameters
    ----------
    channels : tuple of PlannedChannel
        At least one.
    time_place : int or None
        The column of times, or None where the interval is stated.
    time_factor : float
        Seconds of one unit of that column.
    interval_s : float or None
        The stated interval.
    left_out : tuple of (str, str)
        Columns that become nothing, with the reason.
    notes : tuple of str
        What was assumed.
    """

    channels: tuple[PlannedChannel, ...]
    time_place: int | None
    time_factor: float
    interval_s: float | None
    left_out: tuple[tuple[str, str], ...] = ()
    notes: tuple[str, ...] = ()


def plan_of(spool: Spool, wishes: Wishes) -> Plan:
    """Decide what every column is.

    Raises
    ------
    ImportingError
        Where a wish names no column, or what is needed can neither be read nor guessed; the sentence says
        what to choose.
    """
    columns = _with_units(spool.table.columns, wishes.units)
    looks = [_look(source, column.scaling) for source, column in zip(spool.columns, columns, strict=True)]
    wanted = {_place(name, columns): role for name, role in wishes.channels.items()}
    time_place = _time_place(columns, looks, wishes, set(wanted), spool.table.interval_s)
    notes: list[str] = []
    factors = [_factor(column, look, wishes, spool.table.kind, notes) if place != time_place else 1.0
               for place, (column, look) in enumerate(zip(columns, looks, strict=True))
               ]  # fmt: skip
    guesses = {
        place: _guess(column, looks[place], factors[place], wanted.get(place))
        for place, column in enumerate(columns)
        if place != time_place
    }
    if wanted:
        guesses = {p: g if p in wanted else Guess(None, say("it was not chosen")) for p, g in guesses.items()}
    guesses = _one_each(guesses, wanted)
    channels = tuple(
        PlannedChannel(place, found.role, _scaled(columns[place].scaling, factors[place]), found.reason)
        for place, found in guesses.items()
        if found.role is not None
    )
    if not channels:
        names = ", ".join(columns[place].name for place in guesses) or "-"
        raise ImportingError(
            say("no column looks like a wire of the sensor; there are: {names}", names=names),
            say("say which is which with --channel COLUMN=ROLE"),
        )
    unit = unit_of(columns[time_place].unit) if time_place is not None else None
    left = tuple(
        (columns[place].name, found.reason) for place, found in guesses.items() if found.role is None
    )
    interval = wishes.interval_s if wishes.interval_s is not None else spool.table.interval_s
    return Plan(
        channels,
        time_place,
        unit.factor if unit else 1.0,
        None if time_place is not None else interval,
        left,
        tuple(notes),
    )


def _with_units(columns: tuple[Column, ...], units: Mapping[str, str]) -> list[Column]:
    changed = list(columns)
    for name, unit in units.items():
        if unit_of(unit) is None:
            raise ImportingError(
                say("{unit} is no unit of voltage or time", unit=unit), say("say V, mV, s, ms or us")
            )
        place = _place(name, changed)
        changed[place] = replace(changed[place], unit=unit)
    return changed


def _place(name: str, columns: list[Column]) -> int:
    """The column of that name, in any case, or of that number from 1."""
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


def _look(source: SpooledColumn, scaling: Scaling) -> NDArray[np.float64]:
    """Samples from the beginning, the middle and the end, in the unit of the column."""
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
    stated: float | None,
) -> int | None:
    if wishes.time_column is not None:
        return _place(wishes.time_column, columns)
    free = [place for place in range(len(columns)) if place not in taken]
    named = [place for place in free if is_time(columns[place].name, columns[place].unit)]
    if wishes.interval_s is not None:
        return None
    if len(named) > 1:
        there = ", ".join(columns[place].name for place in named)
        raise ImportingError(
            say("several columns could be the time: {there}", there=there),
            say("say which with --time COLUMN"),
        )
    if named:
        return named[0]
    if stated is not None:
        return None
    rising = [
        p
        for p in free
        if rises(looks[p][: _LOOK_SAMPLES // 8]) and not is_counter(columns[p].name, looks[p][:99])
    ]
    if rising and (len(rising) == 1 or rising[0] == free[0]):
        return rising[0]  # a slow sweep may rise evenly too; the time comes before it
    raise ImportingError(
        say("it does not say how much time lies between two rows"),
        say("say it with --sample-interval SECONDS or --sample-rate HERTZ"),
    )


def _factor(column: Column, look: NDArray[np.float64], wishes: Wishes, kind: str, notes: list[str]) -> float:
    known = unit_of(column.unit)
    if known is not None and known.quantity == VOLTAGE:
        return known.factor
    if kind == "wav":
        if wishes.full_scale_v is None:
            raise ImportingError(
                say("a WAV file does not say how many volts full scale is"),
                say("say it with --full-scale VOLTS"),
            )
        return wishes.full_scale_v
    finite = np.abs(look[np.isfinite(look)])
    if not column.unit and len(finite) and float(np.quantile(finite, 0.9)) > _MILLIVOLTS_FROM:
        notes.append(say("column {name} has no unit and is read as millivolts", name=column.name))
        return 1e-3
    return 1.0


def _guess(column: Column, look: NDArray[np.float64], factor: float, wanted: Role | None) -> Guess:
    if wanted is not None:
        return Guess(wanted, say("it was chosen"))
    if is_time(column.name, column.unit):
        return Guess(None, say("it holds times"))
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


def _scaled(scaling: Scaling, factor: float) -> Scaling:
    return replace(
        scaling, scale_factor=scaling.scale_factor * factor, add_offset=scaling.add_offset * factor
    )
