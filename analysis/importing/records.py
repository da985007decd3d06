"""A table whose columns are known as records: one, or one for each piece between gaps."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import pairwise

import numpy as np

from analysis.captures.model import ArraySource, Channel, Record, Role, SampleSource, Scaling
from analysis.errors import ImportingError
from analysis.importing.behaviour import StepGuess, guess_step
from analysis.importing.going_on import GoingOn, going_on
from analysis.importing.judging import look_at
from analysis.importing.model import clock_places, place_of
from analysis.importing.moments import moment_of
from analysis.importing.needs import unbelievable
from analysis.importing.plan import Plan, PlannedChannel
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.time_base import TimeBase, contradiction, is_believable, time_base
from analysis.importing.wishes import EVERY_CHANNEL, Wishes
from analysis.progress import Tick
from analysis.wording import plural, say

_MOST_RESAMPLED = 50_000_000  # in memory at once
_AT_ONCE = 1024 * 1024
Times = SpooledColumn | GoingOn
_ROLES = frozenset(str(role) for role in Role)


def records_of(
    spool: Spool,
    plan: Plan,
    wishes: Wishes,
    first_number: int,
    tick: Tick,
    *,
    step: StepGuess | None = None,
) -> tuple[list[Record], list[str]]:
    """The records of one source, and what is to be said about them.

    Parameters
    ----------
    spool : Spool
        Filled.
    plan : Plan
        What its columns are.
    wishes : Wishes
        Step, and whether resampling is allowed.
    first_number : int
        Number of the first record.
    tick : Tick
        Progress.
    step : StepGuess, optional
        What it seems to have been taken for, where nobody said so.

    Raises
    ------
    ImportingError
        Where the times cannot be used.
    """
    wishes, guessed = _with_step(wishes, step)
    size = len(spool.columns[0])
    if size < 2:
        raise ImportingError(say("it holds fewer than two rows"), say("record the sensor again"))
    notes = _left_aside(plan, wishes)
    pieces = _pieces(spool, plan, size, notes, tick)
    if any(not piece.base.even for piece in pieces):
        if not wishes.resample:
            raise _uneven(max((piece.base for piece in pieces), key=lambda base: base.off_intervals))
        notes.append(_resampled_note([piece.base.interval_s for piece in pieces]))
    scalings = [
        _with_range(spool.columns[item.place], item.scaling, spool, item, notes) for item in plan.channels
    ]
    moments = [_moment(spool, plan, piece) for piece in pieces]
    origin_s = pieces[0].base.first_s if moments[0] else 0.0
    records = []
    for number, (piece, moment) in enumerate(zip(pieces, moments, strict=True)):
        whole = piece.base.even
        make = _even_channels if whole else _resampled_channels
        resampled = {} if whole else {"resampled": "linear interpolation of unevenly spaced samples"}
        records.append(
            Record(
                name=f"{first_number + number:03d}",
                sample_interval_s=piece.base.interval_s,
                channels=make(spool, plan, wishes, scalings, piece),
                label=spool.table.path.stem,
                step=wishes.step,
                first_sample_s=piece.base.first_s - origin_s,
                attributes={**guessed, **wishes.conditions, **resampled, **moment},
            )
        )
    return records, notes


@dataclass(frozen=True, slots=True)
class _Piece:
    """Rows ``[start, stop)`` without a gap; `times` are theirs alone, None where an interval is stated."""

    start: int
    stop: int
    base: TimeBase
    times: Times | None


def _moment(spool: Spool, plan: Plan, piece: _Piece) -> dict[str, str]:
    """When a piece began, as the attribute of its record; nothing where its times do not say."""
    if plan.time_place is None:
        return {}
    clock = plan.time_place in clock_places(spool.table)
    moment = moment_of(
        piece.base.first_s, clock=clock, factor=plan.time_factor, day=_day_of(spool, piece.start)
    )
    return {"started": moment} if moment else {}


def _day_of(spool: Spool, row: int) -> datetime | None:
    """On which day the clock of a row counts from midnight, where a column of dates beside it says so."""
    days = None if spool.table.dialect is None else spool.table.dialect.days
    if days is None:
        return None
    later = len(spool.spans) > 1 and row >= spool.spans[0][1]  # blocks below may be of other days
    return None if later and days.first != days.last else days.last if spool.turned else days.first


def _pieces(spool: Spool, plan: Plan, size: int, notes: list[str], tick: Tick) -> list[_Piece]:
    spans = spool.spans or ((0, size),)
    if plan.time_place is None:
        interval = plan.interval_s or 0.0
        if not 0.0 < interval < float("inf"):
            raise ImportingError(say("the sample interval must be positive"), say("say it in seconds"))
        base = TimeBase(0.0, interval, 0.0, True, np.empty(0, dtype=np.int64))
        return [_Piece(start, stop, base, None) for start, stop in spans]
    found: list[_Piece] = []
    for start, stop in spans:
        said: list[str] = []
        found += _between_gaps(spool, plan, start, stop, said, tick)
        notes += [note for note in said if note not in notes]
    return found


def _between_gaps(
    spool: Spool, plan: Plan, first: int, last: int, notes: list[str], tick: Tick
) -> list[_Piece]:
    """The pieces of rows ``[first, last)``."""
    place = plan.time_place or 0
    column = spool.columns[place].part(first, last).scaled(spool.table.columns[place].scaling)
    times, restarts = going_on(column, plan.time_factor)
    notes += [restarts] if restarts else []
    base = time_base(times, plan.time_factor, tick, stated_s=spool.table.interval_s)
    notes += [] if base.note is None else [base.note]
    if not is_believable(base.interval_s):
        raise unbelievable(base.interval_s).error()
    against = contradiction(spool.table.interval_s, base.interval_s)
    notes += [] if against is None else [against]
    if base.even and base.off_intervals > 0.01:
        notes.append(
            say(
                "the rows lie up to {share:.1f} % of an interval off their even places",
                share=100 * base.off_intervals,
            )
        )
    if base.even or not len(base.cuts):
        return [_Piece(first, last, base, times)]
    notes.append(say("the time has gaps; each stretch between them is a record of its own"))
    edges = [0, *(int(cut) for cut in base.cuts), last - first]
    kept = [(start, stop) for start, stop in pairwise(edges) if stop - start >= 2]
    lost = last - first - sum(stop - start for start, stop in kept)
    if lost:
        notes.append(plural("{count} lone row between gaps was left out",
                            "{count:,} lone rows between gaps were left out", count=lost))  # fmt: skip
    parts = [(start, stop, times.part(start, stop)) for start, stop in kept]
    return [
        _Piece(first + start, first + stop, time_base(part, plan.time_factor), part)
        for start, stop, part in parts
    ]


def _uneven(base: TimeBase) -> ImportingError:
    return ImportingError(
        say(
            "its times are not evenly spaced: rows lie up to {off:.3g} intervals off", off=base.off_intervals
        ),
        say("add --resample to interpolate onto even times, or name the sample interval"),
    )


def _resampled_note(intervals_s: Sequence[float]) -> str:
    return say(
        "the samples were interpolated onto even times {interval_s:.6g} s apart", interval_s=intervals_s[0]
    )


def _even_channels(
    spool: Spool, plan: Plan, wishes: Wishes, scalings: Sequence[Scaling], piece: _Piece
) -> tuple[Channel, ...]:
    return tuple(
        _channel(spool, item, scaling, spool.columns[item.place].part(piece.start, piece.stop), wishes)
        for item, scaling in zip(plan.channels, scalings, strict=True)
    )


def _resampled_channels(
    spool: Spool, plan: Plan, wishes: Wishes, scalings: Sequence[Scaling], piece: _Piece
) -> tuple[Channel, ...]:
    """All channels on even times; in volts, since a count between two counts is none."""
    size = piece.stop - piece.start
    if size > _MOST_RESAMPLED:
        raise ImportingError(
            say("it is too long to be resampled at once"), say("save a shorter stretch of it")
        )
    assert piece.times is not None  # only times that were read can be uneven
    times_s = piece.times.read(0, size).astype(np.float64) * plan.time_factor
    count = round(float(times_s[-1] - times_s[0]) / piece.base.interval_s) + 1
    grid_s = piece.base.first_s + piece.base.interval_s * np.arange(min(count, _MOST_RESAMPLED))
    channels = []
    for item in plan.channels:
        raw = spool.columns[item.place].read(piece.start, piece.stop)
        volts = np.interp(grid_s, times_s, item.scaling.volts(raw))
        channels.append(_channel(spool, item, Scaling(), ArraySource(volts), wishes))
    return tuple(channels)


def _channel(
    spool: Spool, item: PlannedChannel, scaling: Scaling, source: SampleSource, wishes: Wishes
) -> Channel:
    column = spool.table.columns[item.place]
    words: dict[str, str | float] = {"long_name": column.name, "source_unit": column.unit or "V"}
    for key, points in (("probe_point", wishes.probe_points), ("return_point", wishes.return_points)):
        point = _point(spool, item, points)
        words |= {key: point} if point else {}
    return Channel(str(item.role), item.role, source, scaling, attributes=words)


def _point(spool: Spool, item: PlannedChannel, points: Mapping[str, str]) -> str:
    """Where the probe of a channel sat: said of its column, else of its role, else of all."""
    for name, point in points.items():
        of_column = name != EVERY_CHANNEL and name not in _ROLES
        if of_column and place_of(name, spool.table.columns) == item.place:
            return point
    return points.get(str(item.role), points.get(EVERY_CHANNEL, ""))


def _left_aside(plan: Plan, wishes: Wishes) -> list[str]:
    """Roles that a probe point was named for and no channel has."""
    named = {*wishes.probe_points, *wishes.return_points} & _ROLES
    gone = sorted(named - {str(item.role) for item in plan.channels})
    return (
        [say("no channel is {roles}: where its probe sat is left aside", roles=", ".join(gone))]
        if gone
        else []
    )


def step_of(spool: Spool, plan: Plan) -> StepGuess:
    """What a source seems to have been taken for, by how its channels behave."""
    return guess_step({item.role: look_at(spool.columns[item.place], item.scaling) for item in plan.channels})


def _with_step(wishes: Wishes, step: StepGuess | None) -> tuple[Wishes, dict[str, str | float]]:
    """The wishes with a step that was guessed surely, and what the capture says about that."""
    if step is None or not step.sure or wishes.step is not None:
        return wishes, {}
    return replace(wishes, step=step.step), {"step_guessed": str(step.reason)}


def _with_range(
    source: SpooledColumn, scaling: Scaling, spool: Spool, item: PlannedChannel, notes: list[str]
) -> Scaling:
    """Infinite samples are over-range: the limits say so to every program that knows CF."""
    if source.dtype.kind != "f":
        return scaling
    low, high = False, False
    for start in range(0, len(source), _AT_ONCE):
        raw = source.read(start, start + _AT_ONCE)
        low, high = low or bool((raw == -np.inf).any()), high or bool((raw == np.inf).any())
    if low or high:
        name = spool.table.columns[item.place].name
        notes.append(say("column {name} has samples beyond the range of the recorder", name=name))
    return replace(
        scaling,
        valid_min=-np.inf if low and scaling.valid_min is None else scaling.valid_min,
        valid_max=np.inf if high and scaling.valid_max is None else scaling.valid_max,
    )
