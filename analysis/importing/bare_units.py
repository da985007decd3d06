"""Columns that say no unit: what their numbers may be, judged for all of a table together."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.importing.guesses import Guess
from analysis.importing.model import Column
from analysis.importing.needs import Need, Problem, options
from analysis.importing.units import VOLTAGE, unit_of
from analysis.importing.wire_words import names_no_wire, said_role
from analysis.wording import Wording, say

_MICROVOLTS = (1e5, 1.5e7)  # above are dates without marks
_MILLIVOLTS_FROM = 100.0  # a column without a unit that reads this much holds no volts of a vehicle
REFERENCE_V = (4.5, 5.5)
_SUPPLY_V = (9.0, 32.0)
_SIGNAL_V = (0.1, 7.0)
_NO_GROUND_V, _NO_REFERENCE_V = 2.5, 1.0  # what no wire of that name reads unless something is wrong
_NAMES = {1e-6: say("microvolts"), 1e-3: say("millivolts")}
MOST_OF_A_VEHICLE_V = 60.0  # a network of 24 V has less, with all that its alternator may add; ours
_BY_TEN, _PROBE = (10.0, 100.0), 0.05  # what probes divide by, and how closely

Looks = Sequence[NDArray[np.float64]]


@dataclass(frozen=True, slots=True)
class AsRead:
    """The columns of a table as they would be taken.

    Parameters
    ----------
    columns : sequence of Column
        Of the table.
    looks : sequence of ndarray, shape (n_look,)
        Samples from all over each column, in its own unit.
    factors, offsets : sequence of float
        Volts of one unit of each column, with what was said of it, and volts that are added to that.
    guesses : mapping of int to Guess
        What the columns are, but for the time.
    """

    columns: Sequence[Column]
    looks: Looks
    factors: Sequence[float]
    guesses: Mapping[int, Guess]
    offsets: Sequence[float]

    @property
    def roles(self) -> list[int]:
        """Columns that become a channel."""
        return [place for place, guess in self.guesses.items() if guess.role is not None]

    def name(self, place: int) -> str:
        """What a column is called."""
        return self.columns[place].name

    def volts(self, place: int) -> NDArray[np.float64]:
        """Samples of a column as they would be taken; shape (n_look,)."""
        return self.looks[place] * self.factors[place] + self.offsets[place]

    def middle_v(self, place: int) -> float:
        """Volts that a column stays at."""
        return _middle(self.looks[place]) * self.factors[place] + self.offsets[place]

    def highest_v(self, place: int) -> float:
        """Volts, up or down, that hardly any sample of a column goes beyond."""
        finite = self.looks[place][np.isfinite(self.looks[place])]
        volts = np.abs(finite * self.factors[place] + self.offsets[place])
        return float(np.quantile(volts, 0.98)) if len(finite) else 0.0


def bare_factors(columns: Sequence[Column], looks: Looks, places: Collection[int]) -> dict[int, float]:
    """Volts of one unit of the columns that say none.

    They are in one unit, as a recorder writes them: the one that the largest of them shows; a ground also in
    that of the columns that say theirs. Volts is what is believable in volts only.

    Parameters
    ----------
    columns : sequence of Column
        Of the table.
    looks : sequence of ndarray, shape (n_look,)
        Samples from all over each column, in its own unit.
    places : collection of int
        The columns without a unit that may be voltages.
    """
    sizes = {place: _by_size(looks[place]) for place in places}
    shared = min(sizes.values(), default=1.0)
    stated = {unit.factor for item in columns if (unit := unit_of(item.unit)) and unit.quantity == VOLTAGE}
    beside = min(stated) if len(stated) == 1 else 1.0
    found = {}
    middles = {place: _middle(looks[place]) for place in places}
    has_reference = any(_within(middle * shared, REFERENCE_V) for middle in middles.values())
    for place, middle in middles.items():
        role = said_role(columns[place].words)
        if shared == 1.0:
            found[place] = beside if role is Role.GROUND and abs(middle) > 1.0 else 1.0
        else:
            volts = sizes[place] == 1.0 and _only_as_volts(middle, role, has_reference)
            found[place] = 1.0 if volts else shared
    return found


def _by_size(look: NDArray[np.float64]) -> float:
    finite = np.abs(look[np.isfinite(look)])
    high = float(np.quantile(finite, 0.9)) if len(finite) else 0.0
    if _MICROVOLTS[0] < high < _MICROVOLTS[1]:
        return 1e-6
    return 1e-3 if high > _MILLIVOLTS_FROM else 1.0


def _only_as_volts(middle: float, role: Role | None, has_reference: bool) -> bool:
    """Whether a level fits what the heading says, in volts; the same in a smaller unit is next to nothing."""
    if role is Role.SUPPLY:
        return _within(middle, _SUPPLY_V)
    if role in (Role.SIGNAL, Role.SECOND_SIGNAL):
        return _within(middle, _SIGNAL_V)
    return role is not Role.GROUND and _within(middle, REFERENCE_V) and not has_reference


def read_as(columns: Sequence[Column], factors: Mapping[int, float], roles: Collection[int]) -> list[Wording]:
    """What is said of the columns that become channels in a unit that was guessed."""
    return [
        say("column {name} has no unit and is read as {unit}", name=columns[place].name, unit=_NAMES[factor])
        for place, factor in factors.items()
        if factor in _NAMES and place in roles
    ]


def doubted(read: AsRead, bare: Mapping[int, float], told: Collection[int]) -> list[Problem]:
    """What has to be said of numbers whose unit was guessed: they may be counts.

    Parameters
    ----------
    read : AsRead
    bare : mapping of int to float
        As `bare_factors` gave them.
    told : collection of int
        Columns whose factor somebody said; their unit is then no guess.
    """
    open_ones = sorted(place for place, factor in bare.items() if factor < 1.0 and place not in told)
    for place in open_ones:
        volts = _middle(read.looks[place]) * bare[place]
        if said_role(read.columns[place].words) is Role.REFERENCE and not _within(volts, REFERENCE_V):
            problem = say(
                "as {unit} {name} would read {volts:.3g} V: perhaps it is counts",
                unit=_NAMES[bare[place]],
                name=read.name(place),
                volts=volts,
            )
            every = [other for other in bare if other not in told and (other == place or other in read.roles)]
            return [_unit_problem(problem, read, every)]
    if told and (rest := [place for place in open_ones if place in read.roles]):
        name = read.name(rest[0])
        problem = say("a factor was said, but not for {name}, which has no unit", name=name)
        return [_unit_problem(problem, read, rest)]
    return []


def _unit_problem(problem: Wording, read: AsRead, places: Collection[int]) -> Problem:
    names = {place: read.name(place) for place in sorted(places)}
    action = say(
        "say the unit with {units}; of counts, how many volts 1 is with {factors}",
        units=options(names, "--unit {}=UNIT"),
        factors=options(names, "--unit {}=V", "--factor {}=VOLTS"),
    )
    return Problem(Need.UNIT, problem, action)


def behind_a_probe(line: str, read: AsRead, told: Collection[int]) -> list[Problem]:
    """What has to be said where a line tells of a probe and a wire reads a tenth of a reference.

    Parameters
    ----------
    line : str
        Above the samples; empty where none tells of a probe.
    read : AsRead
    told : collection of int
        Columns whose factor somebody said.
    """
    if told:
        open_ones = [place for place in read.roles if place not in told]
    else:
        open_ones = [
            place
            for place in read.guesses
            if _may_be_volts(read.columns[place])
            and any(abs(read.middle_v(place) * by / 5.0 - 1.0) < _PROBE for by in _BY_TEN)
        ]
    if not line or not open_ones:
        return []
    name = read.name(open_ones[0])
    problem = say(
        "a line above the samples says {line!r}, and {name} stays at {volts:.3g} V",
        line=line,
        name=name,
        volts=read.middle_v(open_ones[0]),
    )
    wires = open_ones if told else [place for place in read.guesses if _may_be_volts(read.columns[place])]
    action = say(
        "say of every wire what its numbers are multiplied by, 1 where they are its volts, with {options}",
        options=options({place: read.name(place) for place in wires}, "--factor {}=FACTOR"),
    )
    return [Problem(Need.UNIT, problem, action)]


def too_many_volts(read: AsRead, told: Collection[int]) -> list[Problem]:
    """What has to be said of a column that would be a wire with more volts than any of a vehicle has.

    `told` are columns of which somebody said the role, the unit or the factor.
    """
    for place in read.roles:
        if place not in told and read.highest_v(place) > MOST_OF_A_VEHICLE_V:
            problem = say(
                "{name} would read {volts:,.3g} V, which no wire of a sensor does",
                name=read.name(place),
                volts=read.highest_v(place),
            )
            return [_unit_problem(problem, read, [other for other in read.roles if other not in told])]
    return []


def _may_be_volts(column: Column) -> bool:
    unit = unit_of(column.unit)
    return (unit is None and not column.unit and not names_no_wire(column.words)) or (
        unit is not None and unit.quantity == VOLTAGE
    )


def contradictions(read: AsRead) -> list[Wording]:
    """What is said of a wire that reads what no wire of its name does: headings may have changed places."""
    found = []
    for place, guess in read.guesses.items():
        volts = read.middle_v(place)
        ground = guess.role is Role.GROUND and abs(volts) > _NO_GROUND_V
        reference = guess.role is Role.REFERENCE and abs(volts) < _NO_REFERENCE_V
        if guess.sure and (ground or reference):
            found.append(
                say(
                    "column {name} stays at {volts:.2f} V, which its heading does not fit",
                    name=read.name(place),
                    volts=volts,
                )
            )
    return found


def _middle(look: NDArray[np.float64]) -> float:
    finite = look[np.isfinite(look)]
    return float(np.median(finite)) if len(finite) else 0.0


def _within(value: float, span: tuple[float, float]) -> bool:
    return span[0] <= value <= span[1]
