"""A table whose columns are known as records: one, or one for each piece between gaps."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise

import numpy as np

from analysis.captures.model import ArraySource, Channel, Record, Role, SampleSource, Scaling
from analysis.errors import ImportingError
from analysis.importing.behaviour import StepGuess, guess_step
from analysis.importing.going_on import GoingOn, going_on
from analysis.importing.judging import look_at, place_of
from analysis.importing.plan import Plan, PlannedChannel
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.time_base import TimeBase, time_base
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
    if plan.time_place is None:
        interval = plan.interval_s or 0.0
        if not 0.0 < interval < float("inf"):
            raise ImportingError(say("the sample interval must be positive"), say("say it in seconds"))
        pieces = [(0, size, 0.0, interval)]
    else:
        times, restarts = going_on(spool.columns[plan.time_place], plan.time_factor)
        notes += [restarts] if restarts else []
        base = time_base(times, plan.time_factor, tick)
        if not base.even and not len(base.cuts):
            made = _resampled(spool, plan, wishes, times, base, first_number, notes)
            return [replace(made, attributes={**made.attributes, **guessed, **wishes.conditions})], notes
        pieces = _pieces(times, plan, base, size, notes)
    scalings = [
        _with_range(spool.columns[item.place], item.scaling, spool, item, notes) for item in plan.channels
    ]
    records = [
        Record(
            name=f"{first_number + number:03d}",
            sample_interval_s=interval,
            channels=tuple(
                _channel(spool, item, scaling, spool.columns[item.place].part(start, stop), wishes)
                for item, scaling in zip(plan.channels, scalings, strict=True)
            ),
            label=spool.table.path.stem,
            step=wishes.step,
            first_sample_s=first,
            attributes={**guessed, **wishes.conditions},
        )
        for number, (start, stop, first, interval) in enumerate(pieces)
    ]
    return records, notes


def _pieces(
    times: Times, plan: Plan, base: TimeBase, size: int, notes: list[str]
) -> list[tuple[int, int, float, float]]:
    if base.off_intervals > 0.01:
        notes.append(
            say(
                "the rows lie up to {share:.1f} % of an interval off their even places",
                share=100 * base.off_intervals,
            )
            if base.even
            else say("the time has gaps; each stretch between them is a record of its own")
        )
    if base.even:
        return [(0, size, base.first_s, base.interval_s)]
    edges = [0, *(int(cut) for cut in base.cuts), size]
    kept = [(start, stop) for start, stop in pairwise(edges) if stop - start >= 2]
    lost = size - sum(stop - start for start, stop in kept)
    if lost:
        notes.append(plural("{count} lone row between gaps was left out",
                            "{count:,} lone rows between gaps were left out", count=lost))  # fmt: skip
    found = []
    for start, stop in kept:
        first = float(times.read(start, start + 1)[0]) * plan.time_factor
        own = time_base(times.part(start, stop), plan.time_factor)
        if not own.even:
            raise _uneven(own)
        found.append((start, stop, first, own.interval_s))
    return found


def _uneven(base: TimeBase) -> ImportingError:
    return ImportingError(
        say(
            "its times are not evenly spaced: rows lie up to {off:.3g} intervals off", off=base.off_intervals
        ),
        say("add --resample to interpolate onto even times, or name the sample interval"),
    )


def _resampled(
    spool: Spool, plan: Plan, wishes: Wishes, source: Times, base: TimeBase, number: int, notes: list[str]
) -> Record:
    if not wishes.resample:
        raise _uneven(base)
    if len(source) > _MOST_RESAMPLED:
        raise ImportingError(
            say("it is too long to be resampled at once"), say("save a shorter stretch of it")
        )
    times_s = source.read(0, len(source)).astype(np.float64) * plan.time_factor
    grid_s = base.first_s + base.interval_s * np.arange(len(times_s))
    notes.append(
        say(
            "the samples were interpolated onto even times {interval_s:.6g} s apart",
            interval_s=base.interval_s,
        )
    )
    channels = []
    for item in plan.channels:
        raw = spool.columns[item.place]
        volts = np.interp(grid_s, times_s, item.scaling.volts(raw.read(0, len(raw))))
        channels.append(_channel(spool, item, Scaling(), ArraySource(volts), wishes))
    return Record(
        f"{number:03d}", base.interval_s, tuple(channels), spool.table.path.stem, wishes.step, base.first_s,
        {"resampled": "linear interpolation of unevenly spaced samples"},
    )  # fmt: skip


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
