"""Factors and offsets that rows above the samples state: followed and told, or asked where that is open."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

import numpy as np

from analysis.captures.model import Role, Scaling
from analysis.importing.bare_units import MOST_OF_A_VEHICLE_V, REFERENCE_V, AsRead
from analysis.importing.model import Column, Table, place_of
from analysis.importing.needs import Need, Problem
from analysis.importing.scale_rows import ScaleRows
from analysis.importing.wire_words import said_role
from analysis.importing.wishes import Wishes
from analysis.wording import Wording, say

_NO_SCALES = Scaling()


@dataclass(frozen=True, slots=True)
class StatedScales:
    """What is to be said of the rows of factors and offsets: what was done, or what has to be said first."""

    notes: tuple[Wording, ...] = ()
    problems: tuple[Problem, ...] = ()


def own_scales(columns: Sequence[Column], table: Table, wishes: Wishes) -> list[Column]:
    """The columns without what rows above the samples say, where somebody said something else.

    A factor that is said counts in the place of factor and offset of the rows, an offset of the offset.
    """
    own = list(columns)
    if table.dialect is None or table.dialect.scales is None:
        return own
    for name in wishes.offsets:
        place = place_of(name, columns)
        own[place] = replace(own[place], scaling=replace(own[place].scaling, add_offset=0.0))
    for name in wishes.factors:
        place = place_of(name, columns)
        own[place] = replace(own[place], scaling=_NO_SCALES)
    return own


def stated_scales(read: AsRead, table: Table, told: Collection[int]) -> StatedScales:
    """Judge what rows above the samples say of the columns that become channels.

    Parameters
    ----------
    read : AsRead
        With these factors and offsets.
    table : Table
        That the columns belong to.
    told : collection of int
        Columns whose factor somebody said.
    """
    rows = None if table.dialect is None else table.dialect.scales
    if rows is None:
        return StatedScales()
    places = [
        place for place in read.roles if place not in told and read.columns[place].scaling != _NO_SCALES
    ]
    times = [
        item
        for place, item in enumerate(read.columns)
        if place not in read.guesses and item.scaling != _NO_SCALES
    ]
    of_times = tuple(_of_times(item, rows) for item in times)
    if not places:
        return StatedScales(of_times)
    against = next((place for place in places if _was_in_volts(read, place)), None)
    sure = rows.sure or any(_only_so(read, place) for place in places)
    if rows.otherwise or against is not None or not sure:
        return StatedScales(problems=(_question(read, rows, places, against),))
    return StatedScales((*of_times, *_notes(rows)))


def _raw_v(read: AsRead, place: int) -> float:
    """Volts that a column would stay at without what the rows say."""
    scaling, look = read.columns[place].scaling, read.looks[place]
    finite = look[np.isfinite(look)]
    if not len(finite) or not scaling.scale_factor:
        return 0.0
    return float(np.median((finite - scaling.add_offset) / scaling.scale_factor)) * read.factors[place]


def _is_reference(volts: float) -> bool:
    return REFERENCE_V[0] <= volts <= REFERENCE_V[1]


def _was_in_volts(read: AsRead, place: int) -> bool:
    """Whether a column reads as a reference does, but with the factor of its row it does not."""
    may_be = said_role(read.columns[place].words) in (None, Role.REFERENCE)
    return may_be and _is_reference(_raw_v(read, place)) and not _is_reference(read.middle_v(place))


def _only_so(read: AsRead, place: int) -> bool:
    """Whether a column reads as a wire of a sensor does with the factor of its row only."""
    may_be = said_role(read.columns[place].words) in (None, Role.REFERENCE)
    raw_v = _raw_v(read, place)
    if may_be and _is_reference(read.middle_v(place)) and not _is_reference(raw_v):
        return True
    return abs(raw_v) > MOST_OF_A_VEHICLE_V > read.highest_v(place)


def _question(read: AsRead, rows: ScaleRows, places: Sequence[int], against: int | None) -> Problem:
    line, name = rows.factors or rows.offsets, read.name(places[0] if against is None else against)
    if rows.otherwise:
        problem = say(
            "a line above the samples says {line!r}, and how volts come of it is not known here",
            line=rows.otherwise,
        )
    else:
        place = places[0] if against is None else against
        problem = say(
            "the row {line!r} may be in the numbers already: {name} reads {raw_v:.4g} V without it and"
            " {volts:.4g} V with it",
            line=line,
            name=name,
            raw_v=_raw_v(read, place),
            volts=read.middle_v(place),
        )
    action = (
        say(
            "say of every wire what its numbers are multiplied by, and the volts to be added, as with"
            " --factor {name}=1 --offset {name}=0",
            name=name,
        )
        if rows.offsets
        else say("say of every wire what its numbers are multiplied by, as with --factor {name}=1", name=name)
    )
    return Problem(Need.UNIT, problem, action)


def _of_times(column: Column, rows: ScaleRows) -> Wording:
    return say(
        "the times in {name} are the numbers with what the row {line!r} says",
        name=column.name,
        line=rows.factors or rows.offsets,
    )


def _notes(rows: ScaleRows) -> tuple[Wording, ...]:
    if rows.factors and rows.offsets:
        return (
            say(
                "volts are the numbers times the factors of the row {factors!r}, plus the offsets of the row"
                " {offsets!r}",
                factors=rows.factors,
                offsets=rows.offsets,
            ),
        )
    if rows.factors:
        return (say("volts are the numbers times the factors of the row {factors!r}", factors=rows.factors),)
    return (say("volts are the numbers plus the offsets of the row {offsets!r}", offsets=rows.offsets),)
