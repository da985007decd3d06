"""Columns of counts and of per cent: in volts where the file says how many, else asked about, all at once."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Scaling
from analysis.importing.guesses import Guess, counts_by_word, is_count, is_per_cent
from analysis.importing.model import Column
from analysis.importing.needs import Need, Problem, options
from analysis.importing.scales import Scale, scale_of_counts, scale_of_per_cent
from analysis.importing.units import VOLTAGE, is_share, unit_of
from analysis.importing.wire_words import names_no_wire, said_role
from analysis.wording import Wording, say

_REFERENCE_V = (4.5, 5.5)
_MILLIVOLTS = 1e-3
_MOST_VOLTS = 60.0  # of a network of 24 V; whole numbers above are no volts

Look = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class InVolts:
    """The columns of a table, with the scales that its file states.

    Parameters
    ----------
    columns : list of Column
        Those that a scale was found for are in volts.
    looks : list of ndarray, shape (n_look,)
        Samples of each, in its unit.
    scaled : frozenset of int
        For which columns one was found.
    notes : tuple of Wording
        What was taken from where.
    """

    columns: list[Column]
    looks: list[Look]
    scaled: frozenset[int]
    notes: tuple[Wording, ...]


def in_volts(
    columns: Sequence[Column],
    looks: Sequence[Look],
    head: Sequence[str],
    bare: Collection[int],
    told: set[int],
    moved: Collection[int] = (),
) -> InVolts:
    """Follow what a file says of counts and per cent.

    Parameters
    ----------
    columns : sequence of Column
        Of the table.
    looks : sequence of ndarray, shape (n_look,)
        Samples from all over each column.
    head : sequence of str
        The lines before the samples.
    bare : collection of int
        Columns that say no unit and may be voltages.
    told : set of int
        Columns of which somebody said the unit or the factor: what the file says of these is not looked at.
    moved : collection of int
        Columns of which somebody said the offset, in the place of what the file says of nought.
    """
    told = told | {place for place, item in enumerate(columns) if item.scaling != Scaling()}
    scale = scale_of_counts(head)
    counts, beside = _counts(columns, looks, bare, stated=scale is not None)
    counts, beside = counts - told, beside - told
    scales: dict[int, Scale] = {}
    notes: list[Wording] = []
    if scale is not None:
        every = counts | beside if counts or scale.exact else counts
        scales = dict.fromkeys(sorted(every), scale) if _fits(columns, looks, every, scale) else {}
        notes += [_said(scale, [columns[place].name for place in scales])] if scales else []
    found = [
        replace(item, unit=item.unit or "counts") if place in counts else item
        for place, item in enumerate(columns)
    ]
    numbers = list(looks)
    for place, column in enumerate(columns):
        share = scale_of_per_cent(column.unit, head) if _is_per_cent(column.unit) else None
        if share is not None and place not in told and not names_no_wire(column.words):
            scales[place] = share
            notes.append(_said_of_share(share, column.name))
    for place, one in scales.items():
        zero_v = 0.0 if place in moved else one.zero_v
        found[place] = replace(columns[place], unit="V", scaling=Scaling(one.volts, zero_v))
        numbers[place] = looks[place] * one.volts + zero_v
    return InVolts(found, numbers, frozenset(scales), tuple(notes))


def _counts(
    columns: Sequence[Column], looks: Sequence[Look], bare: Collection[int], *, stated: bool
) -> tuple[set[int], set[int]]:
    """Columns of counts, by their unit or their word, and those that may be counts by a scale of the file."""
    found = {
        place for place, item in enumerate(columns) if is_share(item.unit) and not _is_per_cent(item.unit)
    }
    whole = {place for place in bare if _is_whole(looks[place])}
    by_word = {place for place in whole if counts_by_word(columns[place].words)}
    found |= by_word if found or stated else set()
    large = any(float(np.nanmax(looks[place])) > _MOST_VOLTS for place in whole)
    every = whole if whole == set(bare) and (large or found) else set()
    wires = {place for place in every if said_role(columns[place].words) or len(np.unique(looks[place])) > 2}
    return found, wires - found


def _fits(columns: Sequence[Column], looks: Sequence[Look], counts: Collection[int], scale: Scale) -> bool:
    """Whether the reference is one by that scale; where the scale is exact, a faulty one will do too."""
    references = [place for place in counts if said_role(columns[place].words) is Role.REFERENCE]
    for place in references:
        middle = float(np.nanmedian(looks[place]))
        by_scale = _is_reference(middle * scale.volts + scale.zero_v)
        if not by_scale and (not scale.exact or _is_reference(middle * _MILLIVOLTS)):
            return False
    return True


def _is_reference(volts: float) -> bool:
    return _REFERENCE_V[0] <= volts <= _REFERENCE_V[1]


def _is_whole(look: Look) -> bool:
    finite = look[np.isfinite(look)]
    return len(finite) > 0 and bool((finite == np.round(finite)).all())


def _is_per_cent(unit: str) -> bool:
    return unit.strip().startswith("%")


def _said(scale: Scale, names: Sequence[str]) -> Wording:
    values = {"line": scale.line, "volts": scale.volts, "zero_v": scale.zero_v, "names": ", ".join(names)}
    if scale.zero_v == 0.0:
        return say(
            "a line above the samples says {line!r}: a count of {names} is read as {volts:.7g} V", **values
        )
    return say(
        "a line above the samples says {line!r}: a count of {names} is read as {volts:.7g} V, and 0 as"
        " {zero_v:.5g} V",
        **values,
    )


def _said_of_share(scale: Scale, name: str) -> Wording:
    return say(
        "{line!r} is said of {name}: 1 % is read as {volts:.6g} V",
        line=scale.line,
        name=name,
        volts=scale.volts,
    )


def not_of_volts(column: Column, look: Look) -> Column:
    """A column whose numbers show that they are counts or per cent, with that unit."""
    if is_count(column.words, column.unit, look):
        return replace(column, unit="counts")
    unit = unit_of(column.unit)
    volts = not column.unit or (unit is not None and unit.quantity == VOLTAGE)
    per_cent = volts and is_per_cent(column.words, look, 1.0 if unit is None else unit.factor)
    return replace(column, unit="%") if per_cent else column


def not_in_volts(
    columns: Sequence[Column],
    guesses: Mapping[int, Guess],
    wanted: Mapping[int, Role],
    told: Collection[int],
) -> list[Problem]:
    """Chosen wires in per cent or counts of unknown size, or all such ones where no signal is in volts.

    Parameters
    ----------
    columns : sequence of Column
        Of the table.
    guesses : mapping of int to Guess
        What they are, but for the time.
    wanted : mapping of int to Role
        What somebody said they are.
    told : collection of int
        Columns whose factor somebody said.
    """
    shares = [place for place in guesses if place not in told and is_share(columns[place].unit)]
    asked = [place for place in shares if place in wanted]
    signal = next((place for place in shares if said_role(columns[place].words) is Role.SIGNAL), None)
    roles = {guess.role for guess in guesses.values()}
    if not wanted and Role.SIGNAL not in roles and (signal is not None or roles == {None}):
        asked = [
            place
            for place in shares
            if said_role(columns[place].words) is not None or not _is_per_cent(columns[place].unit)
        ]
    if not asked:
        return []
    first = columns[signal if signal in asked and signal is not None else asked[0]]
    names = {place: columns[place].name for place in asked}
    return [
        Problem(
            Need.ROLES,
            say("{name} is in {unit}, not in volts", name=first.name, unit=first.unit),
            say("say how many volts 1 is with {options}", options=options(names, "--factor {}=VOLTS")),
        )
    ]
