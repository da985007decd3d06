"""``wornband import``: recorded files become a capture, and it is said how they were understood."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Role, Step
from analysis.errors import WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.choices import TextChoices
from analysis.importing.recipe import check_place, keep_recipe, read_recipe, recipe_of
from analysis.importing.recipes import keep_for_shape, own_recipes_folder
from analysis.importing.sources import naming
from analysis.importing.understood import Understood
from analysis.importing.wishes import Blocks, Wishes, over
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
    recipes = None if call.recipe or call.no_recipe else own_recipes_folder()
    try:
        if call.keep_recipe:
            with naming(Path(call.keep_recipe)):
                check_place(Path(call.keep_recipe))
        wishes = wishes_of(call)
        with stoppable(err, call.sources[0]) as tick:
            understood = import_capture(
                [Path(item) for item in call.sources],
                Path(call.output),
                wishes,
                title=call.title,
                tick=tick,
                recipes=recipes,
            )
        kept = None if call.keep_recipe is None else _keep(understood[0], call.keep_recipe)
    except WornbandError as error:
        print(error_line(str(error.path or call.sources[0]), str(error)), file=err)
        return 1
    for one in understood:
        print("\n".join(explained(one)), file=out)
    if kept is not None:
        print(f"  recipe         kept in {printable(str(kept))}", file=out)
    return 0


def _keep(one: Understood, name: str) -> Path:
    wishes = one.wishes or Wishes()
    if not name:
        return keep_for_shape(one, wishes, own_recipes_folder())
    keep_recipe(recipe_of(one, wishes), Path(name))
    return Path(name)


def wishes_of(call: argparse.Namespace) -> Wishes:
    """The recipe that was named, if any, with what the call says in its place.

    Raises
    ------
    ImportingError
        Where the recipe is none.
    """
    stated = Wishes(
        channels={name: Role(role) for name, role in call.channel},
        time_column=call.time,
        interval_s=1.0 / call.sample_rate if call.sample_rate else call.sample_interval,
        units=dict(call.unit),
        full_scale_v=call.full_scale,
        step=Step(call.step) if call.step and call.step != "none" else None,
        resample=call.resample,
        attributes=dict(call.set),
        text=TextChoices(call.delimiter, call.decimal, call.thousands, call.head_lines, call.encoding),
        factors=dict(call.factor),
        offsets=dict(call.offset),
        probe_points=dict(call.probe),
        return_points=dict(call.return_point),
        conditions=dict(call.condition),
        guess_step=call.step != "none",
        datasets=tuple(call.dataset),
        blocks=Blocks(call.blocks) if call.blocks else None,
    )
    if not call.recipe:
        return stated
    with naming(Path(call.recipe)):
        return over(stated, read_recipe(Path(call.recipe)))


def explained(one: Understood) -> list[str]:
    """What became of each column, and why, in lines."""
    names = one.columns
    lines = [printable(str(one.path))]
    if one.recipe is not None:
        day = f" on {printable(one.recipe.day)}" if one.recipe.day else ""
        lines.append(f"  recipe         as kept{day} for files of this shape; --no-recipe does without")
    if one.plan.time_place is not None:
        lines.append(f"  time           {printable(names[one.plan.time_place])}")
    lines += [
        f"  {item.role!s:14} {printable(names[item.place])}: {printable(item.reason)}"
        for item in one.plan.channels
    ]
    lines += [
        f"  left out       {printable(name)}: {printable(reason)}" for name, reason in one.plan.left_out
    ]
    if one.step is not None:
        step = str(one.step.step) if one.step.step is not None and one.step.sure else "left open"
        lines.append(f"  step           {step}: {printable(one.step.reason)}")
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
