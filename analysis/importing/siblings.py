"""Files of one visit judged together: a wire that shows nothing in one is what another made of its column."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from analysis.captures.model import Role
from analysis.importing.guesses import Guess
from analysis.importing.judging import Judged
from analysis.importing.needs import Need
from analysis.wording import Template

LIKE_THERE = Template("it shows nothing by itself; in {name} the same column was found to be that")
"""Why a column is what another file made of it."""


def with_siblings(files: Sequence[tuple[str, Judged]], open_ones: Sequence[bool]) -> list[Judged]:
    """Judge the columns that show nothing by themselves by the files that have the same columns.

    Parameters
    ----------
    files : sequence of (str, Judged)
        Name of each file, and what it seems to hold by itself.
    open_ones : sequence of bool
        For which of them nobody has said what the columns are; the others are left as they are.

    Returns
    -------
    list of Judged
        One a file. A column takes a role only where all other files agree on it, and its own file has no
        other column with it.
    """
    return [
        _learned(seen, [item for at, item in enumerate(files) if at != place]) if free else seen
        for place, ((_, seen), free) in enumerate(zip(files, open_ones, strict=True))
    ]


def _learned(seen: Judged, others: Sequence[tuple[str, Judged]]) -> Judged:
    alike = [(name, other) for name, other in others if _names(other) == _names(seen)]
    guesses = dict(seen.guesses)
    taken = {item.role for item in guesses.values() if item.role is not None}
    none_before = not taken
    for place, own in seen.guesses.items():
        found = _elsewhere(place, alike)
        if own.role is None and found is not None and found[1] not in taken:
            guesses[place] = Guess(found[1], LIKE_THERE(name=found[0]))
            taken.add(found[1])
    problems = seen.problems
    if none_before and taken:  # then it was the one that no column looks like a wire
        problems = tuple(item for item in problems if item.need is not Need.ROLES)
    return replace(seen, guesses=guesses, problems=problems)


def _names(seen: Judged) -> tuple[str, ...]:
    return tuple(column.name for column in seen.columns)


def _elsewhere(place: int, others: Sequence[tuple[str, Judged]]) -> tuple[str, Role] | None:
    """A file that gives the column a role, and the role, where no file gives it another."""
    found: dict[Role, str] = {}
    for name, other in others:
        guess = other.guesses.get(place)
        if guess is not None and guess.role is not None:
            found.setdefault(guess.role, name)
    return next(((name, role) for role, name in found.items()), None) if len(found) == 1 else None
