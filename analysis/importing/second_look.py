"""Headings that behaviour speaks against: wires by a word that nobody knows, columns that changed places."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.importing.bare_units import AsRead
from analysis.importing.guesses import Guess, by_behaviour
from analysis.importing.wire_words import is_vague, names_sensor_alone
from analysis.wording import Wording, say

_WIRES = (Role.GROUND, Role.REFERENCE, Role.SIGNAL)
_AGAINST = say("its heading says so, but it behaves otherwise")


@dataclass(frozen=True, slots=True)
class SecondLook:
    """What the columns are once their behaviour was held against their headings.

    Parameters
    ----------
    guesses : dict of int to Guess
        By place.
    notes : tuple of Wording
        What is doubtful.
    """

    guesses: dict[int, Guess]
    notes: tuple[Wording, ...]


def second_look(read: AsRead, chosen: Collection[int]) -> SecondLook:
    """Hold the behaviour of columns against their headings, all of a table together.

    A heading that names a sensor and a word that is not known may be any of its wires: where another column
    moves as a signal does, one that rests as ground or reference is taken for that. Known words are followed
    even if two columns behave otherwise, each in a way of its own, since a fault may look so; but it is said.

    Parameters
    ----------
    read : AsRead
        With the guesses by headings.
    chosen : collection of int
        Columns of which somebody said what they are: nobody doubts these.
    """
    behaves = {
        place: by_behaviour(_finite_v(read, place)).role
        for place, guess in read.guesses.items()
        if guess.sure and place not in chosen
    }
    guesses, notes = dict(read.guesses), []
    known = any(
        read.guesses[place].role is Role.SIGNAL and not names_sensor_alone(read.columns[place].words)
        for place in behaves
    )
    for place in behaves:
        if known and guesses[place].role is Role.SIGNAL and names_sensor_alone(read.columns[place].words):
            guesses[place] = replace(guesses[place], sure=False)  # the column that says signal comes first
    for place in _other_wires(read, behaves):
        guesses[place], note = _by_level(read, place, behaves[place])
        notes.append(note)
    against = [
        place
        for place, role in behaves.items()
        if guesses[place].sure and role in _WIRES and guesses[place].role in _WIRES
        and role is not guesses[place].role
    ]  # fmt: skip
    if len({behaves[place] for place in against}) > 1:
        notes.append(
            say(
                "the columns {names} behave otherwise than their headings say: check which is which",
                names=", ".join(read.name(place) for place in against),
            )
        )
        guesses |= {place: Guess(guesses[place].role, _AGAINST, sure=True) for place in against}
    return SecondLook(guesses, tuple(notes))


def _other_wires(read: AsRead, behaves: dict[int, Role | None]) -> list[int]:
    """Columns of a sensor without a known wire that rest like ground or reference beside another signal."""
    words = {place: read.columns[place].words for place in behaves}
    known = {read.guesses[place].role for place in behaves if not names_sensor_alone(words[place])}
    found = [
        place
        for place, role in behaves.items()
        if role in (Role.GROUND, Role.REFERENCE) and role not in known
        and read.guesses[place].role is Role.SIGNAL
        and (is_vague(words[place]) or (Role.SIGNAL in known and names_sensor_alone(words[place])))
    ]  # fmt: skip
    signals = {
        place
        for place, guess in read.guesses.items()
        if place not in found and (guess.role is Role.SIGNAL and behaves.get(place) in (None, Role.SIGNAL))
    }
    return found if signals else []


def _by_level(read: AsRead, place: int, role: Role | None) -> tuple[Guess, Wording]:
    values = {"name": read.name(place), "middle_v": read.middle_v(place)}
    if role is Role.GROUND:
        return (
            Guess(role, say("it stays near zero, at {middle_v:.3f} V", middle_v=values["middle_v"])),
            say(
                "{name} names a sensor and no wire that is known here: at {middle_v:.3f} V it is taken for"
                " the ground; check it",
                **values,
            ),
        )
    return (
        Guess(role, say("it stays near 5 V, at {middle_v:.3f} V", middle_v=values["middle_v"])),
        say(
            "{name} names a sensor and no wire that is known here: at {middle_v:.3f} V it is taken for the"
            " reference; check it",
            **values,
        ),
    )


def _finite_v(read: AsRead, place: int) -> NDArray[np.float64]:
    volts = read.volts(place)
    return volts[np.isfinite(volts)]
