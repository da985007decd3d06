"""What becomes of a table: which columns are channels, and where the time comes from."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.captures.model import Role, Scaling
from analysis.importing.judging import Judged
from analysis.importing.spool import Spool
from analysis.importing.wishes import Wishes


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


def plan_of(seen: Judged, spool: Spool, wishes: Wishes) -> Plan:
    """Decide what becomes of every column, by what it was judged to be.

    Raises
    ------
    ImportingError
        Where something has to be said first; the sentence says what to choose.
    """
    if seen.problems:
        raise seen.problems[0].error()
    channels = tuple(
        PlannedChannel(place, found.role, seen.in_volts(place), found.reason)
        for place, found in seen.guesses.items()
        if found.role is not None
    )
    left = tuple(
        (seen.columns[place].name, found.reason)
        for place, found in seen.guesses.items()
        if found.role is None
    )
    stated = wishes.interval_s if wishes.interval_s is not None else spool.table.interval_s
    return Plan(
        channels,
        seen.time_place,
        1.0 if seen.time_place is None else seen.factors[seen.time_place],
        None if seen.time_place is not None else stated,
        left,
        seen.notes,
    )
