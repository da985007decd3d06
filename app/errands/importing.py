"""``wornband import``: recorded files become a capture, and it is said how they were understood."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Role, Step
from analysis.errors import WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.recipe import keep_recipe, read_recipe, recipe_of
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes
from analysis.progress import Tick
from app.errands.interrupts import Interrupts
from app.errands.progress_line import ProgressLine
from app.printable import error_line, printable


def import_files(call: argparse.Namespace, *, out: TextIO, err: TextIO) -> int:
    """Make one capture out of the files that were named.

    Returns
    -------
    int
        0 where the capture was written, 1 where it was not, 2 where the call was wrong.
    """
    wrong = [role for _, role in call.channel if role not in set(Role)]
    if wrong:
        print(f"wornband: {printable(wrong[0])} is no role; there are {', '.join(Role)}", file=err)
        return 2
    try:
        wishes = wishes_of(call)
        with stoppable(err, call.sources[0]) as tick:
            understood = import_capture(
                [Path(item) for item in call.sources], Path(call.output), wishes, title=call.title, tick=tick
            )
        if call.keep_recipe:
            keep_recipe(recipe_of(understood[0], wishes), Path(call.keep_recipe))
    except WornbandError as error:
        print(error_line(call.sources[0], str(error)), file=err)
        return 1
    for one in understood:
        print("\n".join(explained(one)), file=out)
    return 0


def wishes_of(call: argparse.Namespace) -> Wishes:
    """The recipe, where there is one, with what the call says in its place.

    Raises
    ------
    ImportingError
        Where the recipe is none.
    """
    wishes = read_recipe(Path(call.recipe)) if call.recipe else Wishes()
    interval = 1.0 / call.sample_rate if call.sample_rate else call.sample_interval
    if call.channel:
        wishes = replace(wishes, channels={name: Role(role) for name, role in call.channel})
    return replace(
        wishes,
        time_column=call.time or (None if interval else wishes.time_column),
        interval_s=interval or wishes.interval_s,
        units={**wishes.units, **dict(call.unit)},
        full_scale_v=call.full_scale or wishes.full_scale_v,
        step=Step(call.step) if call.step else wishes.step,
        resample=call.resample or wishes.resample,
        attributes={**wishes.attributes, **dict(call.set)},
    )


def explained(one: Understood) -> list[str]:
    """What became of each column, and why, in lines."""
    names = one.columns
    lines = [printable(str(one.path))]
    if one.plan.time_place is not None:
        lines.append(f"  time           {printable(names[one.plan.time_place])}")
    lines += [
        f"  {item.role!s:14} {printable(names[item.place])}: {printable(item.reason)}"
        for item in one.plan.channels
    ]
    lines += [
        f"  left out       {printable(name)}: {printable(reason)}" for name, reason in one.plan.left_out
    ]
    return [*lines, *(f"  note: {printable(note)}" for note in one.notes)]


@contextmanager
def stoppable(err: TextIO, label: str) -> Iterator[Tick]:
    """A tick that shows progress and lets Ctrl+C stop the work between two steps."""
    with ProgressLine(err) as progress, Interrupts() as interrupts:
        progress.begin(label)

        def tick(done: float) -> None:
            interrupts.check()
            progress.tick(done)

        yield tick
