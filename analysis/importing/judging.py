"""What each column of a table is: wishes first, then headings and behaviour, each with its reason."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Scaling
from analysis.errors import ImportingError
from analysis.importing.asides import scale_line, taken_as_they_stand
from analysis.importing.bare_units import (
    AsRead,
    bare_factors,
    behind_a_probe,
    contradictions,
    doubted,
    read_as,
    too_many_volts,
)
from analysis.importing.guesses import (
    Guess,
    counts_cycles,
    guess,
    is_counter,
    is_time,
    rises,
)
from analysis.importing.in_volts import in_volts, not_in_volts, not_of_volts
from analysis.importing.legend import legend, with_legend
from analysis.importing.model import Column, Table, clock_places, place_of
from analysis.importing.needs import Need, Problem, doubtful_unit, no_unit
from analysis.importing.second_look import SecondLook, second_look
from analysis.importing.spool import Spool, SpooledColumn, blocks_of
from analysis.importing.stated_scales import own_scales, stated_scales
from analysis.importing.time_column import TimeColumn, time_column
from analysis.importing.time_units import is_confirmed, time_unit
from analysis.importing.units import VOLTAGE, is_share, unit_of
from analysis.importing.wire_words import names_no_wire
from analysis.importing.wishes import Wishes
from analysis.wording import Template, say

_IN_CLOCK = Template("it is the fraction of each second of {clock}")
_HOLDS_TIMES = say("it holds times")
_TURNED = say("the newest row comes first in it: the rows were turned round")
_LOOK_SAMPLES = 20_000
_LOOK_RISES = 2500  # of these, that lie side by side
_UNKNOWN_UNIT = re.compile(r"\[[^\[\]]+\]\s*$")  # a known one is taken off the heading


@dataclass(frozen=True, slots=True)
class Judged:
    """What every column of a table seems to be, whether or not that is enough to bring it in.

    Parameters
    ----------
    columns : tuple of Column
        With the units that were wished for.
    looks : tuple of ndarray, shape (n_look,)
        Samples from all over each column, in its own unit.
    factors, offsets : tuple of float
        Volts of one unit of each column, or seconds; and volts that are added to that.
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
    offsets: tuple[float, ...] = ()

    def in_volts(self, place: int) -> Scaling:
        """How raw samples of a column become volts, or seconds."""
        factor, scaling = self.factors[place], self.columns[place].scaling
        return replace(
            scaling,
            scale_factor=scaling.scale_factor * factor,
            add_offset=scaling.add_offset * factor + self.offsets[place],
        )

    def volts(self, place: int) -> NDArray[np.float64]:
        """Samples from all over a column in volts, or seconds; shape (n_look,)."""
        return np.asarray(self.looks[place] * self.factors[place] + self.offsets[place])


def judged(spool: Spool, wishes: Wishes) -> Judged:
    """Judge every column, as far as it goes; a table whose newest row comes first is turned round.

    Raises
    ------
    ImportingError
        Where a wish names no column, or no unit.
    """
    seen = _judged(spool, wishes)
    if not spool.turned and _newest_first(spool, seen):
        spool.turn_round()
        seen = _judged(spool, wishes)
    return replace(seen, notes=(_TURNED, *seen.notes)) if spool.turned else seen


def _newest_first(spool: Spool, seen: Judged) -> bool:
    """Whether the times run backwards from the first row to the last."""
    place = seen.time_place
    if place is None:
        return False
    if seen.looks[place][0] <= seen.looks[place][-1]:
        return False
    return all(bool((np.diff(block) <= 0.0).all()) for block in blocks_of(spool.columns[place], overlap=1))


@dataclass(frozen=True, slots=True)
class _Said:
    """What the file and the technician say of the columns, before anybody guesses.

    `named` are those that the head names, by place; `units`, `scaled`, `moved` and `wanted` those of which
    somebody said the unit, the factor, the offset in volts or the role.
    """

    columns: list[Column]
    looks: list[NDArray[np.float64]]
    head: tuple[str, ...]
    named: Mapping[int, tuple[str, str]]
    units: set[int]
    scaled: set[int]
    moved: Mapping[int, float]
    wanted: Mapping[int, Role]


def _said(spool: Spool, wishes: Wishes) -> _Said:
    written = spool.table.dialect
    head = () if written is None else written.head
    named = legend(
        head, spool.table.columns, *(() if written is None else (written.delimiter, written.numeric))
    )
    columns = _with_units(with_legend(spool.table.columns, named), wishes.units)
    columns = own_scales(columns, spool.table, wishes)
    looks = [look_at(source, column.scaling) for source, column in zip(spool.columns, columns, strict=True)]
    units = {place_of(name, columns) for name in wishes.units}
    scaled = {place_of(name, columns) for name in wishes.factors}
    columns = [
        item if place in units else _of_what(item, look, told=place in scaled)
        for place, (item, look) in enumerate(zip(columns, looks, strict=True))
    ]
    wanted = {place_of(name, columns): role for name, role in wishes.channels.items()}
    moved = {place_of(name, columns): offset for name, offset in wishes.offsets.items()}
    return _Said(columns, looks, head, named, units, scaled, moved, wanted)


def _judged(spool: Spool, wishes: Wishes) -> Judged:
    said = _said(spool, wishes)
    wanted, scaled = said.wanted, said.scaled
    problems: list[Problem] = []
    found = _time(said.columns, said.looks, wishes, frozenset({*wanted, *spool.parts}), spool.table)
    time_place, clocks = found.place, clock_places(spool.table)
    counters = {p for p, item in enumerate(said.columns) if is_counter(item.words, said.looks[p][:99])}
    quiet = counters | {*clocks, *spool.parts} - set(wanted)  # nobody asks how many volts a counter is
    bare = _bare(said.columns, spool.table.kind, quiet, time_place)
    volts = in_volts(said.columns, said.looks, said.head, bare, said.units | scaled, set(said.moved))
    columns, looks = volts.columns, volts.looks
    notes: list[str] = [*(() if found.note is None else (found.note,)), *volts.notes]
    factors = [_factor(column, wishes, spool.table.kind, problems) for column in columns]
    guessed = bare_factors(columns, looks, [place for place in bare if not columns[place].unit])
    factors = [guessed.get(place, factor) for place, factor in enumerate(factors)]
    if time_place is not None:
        unit = time_unit(columns[time_place], looks[time_place], clock=time_place in clocks)
        factors[time_place] = unit.factor
        doubtful = unit.doubtful and not is_confirmed(unit, spool.table.interval_s)
        notes += [unit.note] if unit.note and not doubtful else []
        problems += [doubtful_unit(columns[time_place].name, unit.step)] if doubtful else []
    for name, factor in wishes.factors.items():
        factors[place_of(name, columns)] *= factor
    offsets = [said.moved.get(place, 0.0) for place in range(len(columns))]
    again = _guesses(AsRead(columns, looks, factors, {}, offsets), said, clocks, time_place, spool.parts)
    guesses = again.guesses
    problems[:0] = [*([] if spool.problem is None else [spool.problem]), *_of_time(found, columns, clocks)]
    read = AsRead(columns, looks, factors, guesses, offsets)
    stated = stated_scales(read, spool.table, scaled)
    notes += [*stated.notes, *read_as(columns, guessed, read.roles), *contradictions(read), *again.notes]
    in_share = not_in_volts(columns, guesses, wanted, scaled)
    scales = "" if volts.scaled else scale_line(said.head)
    notes += [taken_as_they_stand(scales)] if scales and not scaled.issuperset(read.roles) else []
    problems += [
        *stated.problems,
        *in_share,
        *doubted(read, guessed, scaled | volts.scaled),
        *too_many_volts(read, {*wanted, *scaled, *said.units}),
        *behind_a_probe(scales, read, scaled),
    ]
    if not in_share and not any(item.role for item in guesses.values()):
        problems.append(_no_role([columns[place].name for place in guesses]))
    problems += [_EVERY_ROW_TWICE] if _stand_twice(looks) else []
    return Judged(
        tuple(columns), tuple(looks), tuple(factors), guesses, time_place, tuple(problems), tuple(notes),
        tuple(offsets),
    )  # fmt: skip


def _guesses(
    read: AsRead,
    said: _Said,
    clocks: frozenset[int],
    time_place: int | None,
    parts: Mapping[int, str],
) -> SecondLook:
    """What every column but the time is: chosen, said or by behaviour, and a role for one column each."""
    wanted = said.wanted
    guesses = {
        place: Guess(None, _IN_CLOCK(clock=parts[place]))
        if place in parts and place not in wanted
        else Guess(None, _HOLDS_TIMES)
        if place in clocks and place not in wanted
        else _guess(column, read.looks[place], read.volts(place), wanted.get(place), said.named.get(place))
        for place, column in enumerate(read.columns)
        if place != time_place
    }
    if wanted:
        guesses = {p: g if p in wanted else Guess(None, say("it was not chosen")) for p, g in guesses.items()}
    again = second_look(replace(read, guesses=guesses), wanted)
    return SecondLook(_one_each(again.guesses, wanted), again.notes)


def _of_what(column: Column, look: NDArray[np.float64], *, told: bool) -> Column:
    """A column with the unit that its numbers show; counts and per cent are volts once a factor is said."""
    item = not_of_volts(column, look)
    return replace(item, unit="V") if told and is_share(item.unit) else item


def _time(
    columns: Sequence[Column],
    looks: Sequence[NDArray[np.float64]],
    wishes: Wishes,
    wanted: frozenset[int],
    table: Table,
) -> TimeColumn:
    if wishes.time_column is not None:
        return TimeColumn(place_of(wishes.time_column, columns))
    return time_column(columns, looks, table, taken=wanted, stated=wishes.interval_s is not None)


def _of_time(found: TimeColumn, columns: Sequence[Column], clocks: frozenset[int]) -> list[Problem]:
    """What has to be said about the times."""
    if found.problem is not None:
        return [found.problem]
    if found.place is None or found.place in clocks or columns[found.place].unit:
        return []
    name = columns[found.place].name
    return [no_unit(name)] if _UNKNOWN_UNIT.search(name) else []


_EVERY_ROW_TWICE = Problem(
    Need.TABLE,
    say("every row stands in it twice"),
    say("save the recording again, with each sample once"),
)


def _stand_twice(looks: Sequence[NDArray[np.float64]]) -> bool:
    """Whether each row is like the one before it, pair by pair, and the pairs differ."""
    pairs = [look[: len(look) // 2 * 2].reshape(-1, 2) for look in looks]
    alike = all(np.array_equal(pair[:, 0], pair[:, 1], equal_nan=True) for pair in pairs)
    changing = any(len(pair) > 2 and float(np.mean(pair[1:, 0] != pair[:-1, 0])) > 0.5 for pair in pairs)
    return alike and changing


def _no_role(names: list[str]) -> Problem:
    return Problem(
        Need.ROLES,
        say("no column looks like a wire of the sensor; there are: {names}", names=", ".join(names) or "-"),
        say("say which is which with --channel COLUMN=ROLE"),
    )


def _with_units(columns: Sequence[Column], units: Mapping[str, str]) -> list[Column]:
    changed = list(columns)
    for name, unit in units.items():
        if unit_of(unit) is None:
            raise ImportingError(
                say("{unit} is no unit of voltage or time", unit=unit), say("say V, mV, s, ms or us")
            )
        place = place_of(name, changed)
        changed[place] = replace(changed[place], unit=unit)
    return changed


def look_at(source: SpooledColumn, scaling: Scaling) -> NDArray[np.float64]:
    """Samples from eight places between beginning and end, scaled; shape (n_look,), at most 20,000."""
    third = max(_LOOK_SAMPLES // 8, 1)
    starts = np.linspace(0, max(len(source) - third, 0), 8).astype(int)
    return scaling.volts(
        np.concatenate([source.read(int(start), int(start) + third) for start in np.unique(starts)])
    )


def _factor(column: Column, wishes: Wishes, kind: str, problems: list[Problem]) -> float:
    known = unit_of(column.unit)
    if known is not None and known.quantity == VOLTAGE:
        return known.factor
    if kind != "wav":
        return 1.0
    if wishes.full_scale_v is None:
        scale = Problem(
            Need.FULL_SCALE,
            say("a WAV file does not say how many volts full scale is"),
            say("say it with --full-scale VOLTS"),
        )
        problems += [] if scale in problems else [scale]
    return wishes.full_scale_v or 1.0


def _bare(columns: Sequence[Column], kind: str, quiet: set[int], time_place: int | None) -> set[int]:
    """Columns that say no unit and may be voltages."""
    if kind == "wav":
        return set()
    return {
        place
        for place, column in enumerate(columns)
        if not column.unit
        and place != time_place
        and place not in quiet
        and not is_time(column.words, "")
        and not names_no_wire(column.words)
    }


def _guess(
    column: Column,
    look: NDArray[np.float64],
    volts: NDArray[np.float64],
    wanted: Role | None,
    named: tuple[str, str] | None,
) -> Guess:
    if wanted is not None:
        return Guess(wanted, say("it was chosen"))
    if is_time(column.words, column.unit) or (is_time(column.words, "") and rises(look[:_LOOK_RISES])):
        return Guess(None, _HOLDS_TIMES)
    if is_counter(column.words, look[:99]):
        return Guess(None, say("it counts the rows"))
    if counts_cycles(column.words, column.unit, look):
        return Guess(None, say("its whole numbers only go up: it counts"))
    made = guess(column.words, column.unit, volts)
    if named is None or not made.sure:
        return made
    return replace(made, reason=say("the head says so: {line}", line=named[1]))


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
