"""``wornband watch``: what a recorder saves in a folder is imported and analysed as it arrives."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Step
from analysis.importing.recipe import read_recipe
from analysis.importing.recipes import own_recipes_folder
from analysis.importing.wishes import Wishes
from analysis.watching.watch import Failure, Watch, confirmed, look_again, take_first
from app.errands.analysing import Request, answer
from app.errands.importing import stoppable
from app.errands.keyboard import keyboard
from app.printable import error_line, printable

_EVERY_S = 1.0


def watch_folder(
    folder: Path,
    recipe: Path | None,
    profile: str | None,
    *,
    once: bool,
    out: TextIO,
    err: TextIO,
    steps: Sequence[tuple[str, Step]] = (),
    wait: Callable[[float], None] = time.sleep,
    typed: Callable[[], str] | None = None,
) -> int:
    """Import and analyse each file that has stopped growing, until it is stopped.

    After each, one line says what all of them together still lack.

    Parameters
    ----------
    folder : Path
        Where the recorder saves; captures are written beside its files.
    recipe : Path or None
        How its files are to be understood; None for the kept one that fits each file.
    profile : str or None
        Sensor profile.
    once : bool
        Take what is there and end.
    out, err : TextIO
        Standard output and standard error.
    steps : sequence of (str, Step)
        What files were taken for, by a pattern of their names.
    wait : callable
        Waits that many seconds; between two looks a file must not have changed.
    typed : callable or None
        What was typed since it was last asked for; None for the keyboard, should there be one.

    Returns
    -------
    int
        0, or 1 where some file could not be done.
    """
    wishes = read_recipe(recipe) if recipe is not None else Wishes()
    recipes = own_recipes_folder() if recipe is None else None
    typed = keyboard() if typed is None and not once else typed  # nobody can answer in time
    watch = Watch(folder, wishes, recipes, profile, take_present=True, steps=tuple(steps))
    watch = look_again(watch, time.monotonic())
    if watch.trouble:
        print(error_line(str(folder), watch.trouble), file=err)
        return 1
    while True:
        wait(_EVERY_S)
        before, watch = watch, look_again(watch, time.monotonic())
        _tell_of_folder(before, watch, err)
        while watch.ready:
            watch = _take(watch, out, err)
        watch = _ask(before, watch, typed, out, err)
        if once:
            return 1 if watch.failures else 0


def _tell_of_folder(before: Watch, watch: Watch, err: TextIO) -> None:
    if watch.trouble and watch.trouble != before.trouble:
        print(error_line(str(watch.folder), watch.trouble), file=err, flush=True)
    for name in set(watch.endless) - set(before.endless):
        said = "it has been growing for a minute; stop the recording, and it is taken"
        print(error_line(str(watch.folder / name), said), file=err, flush=True)


def _take(watch: Watch, out: TextIO, err: TextIO) -> Watch:
    """Take the first file that is ready, and tell what came of it. The file itself is never touched."""
    name = watch.ready[0]
    with stoppable(err, name) as tick:
        after = take_first(watch, tick)
        capture = after.taken.get(name) if after.last == name else None
        found = answer(str(capture), Request(watch.profile), tick) if capture is not None else None
    for failure in after.failures:
        if failure.name == name:
            print(error_line(str(watch.folder / name), failure.sentence), file=err, flush=True)
            return after
    if found is not None:
        if found.error:
            print(error_line(str(watch.folder / name), found.error), file=err, flush=True)
            return replace(after, failures=(*after.failures, Failure(name, found.error)))
        print(found.text, file=out, flush=True)
    if len(after.taken) > 1 and not after.ready:
        print(_all_together(after), file=out, flush=True)
    return after


def _ask(before: Watch, watch: Watch, typed: Callable[[], str] | None, out: TextIO, err: TextIO) -> Watch:
    """Ask whether the harness was wiggled in a record at rest, which the samples do not show."""
    new = sorted(set(watch.unconfirmed) - set(before.unconfirmed))
    if new:
        how = (
            "save such files under a name of their own, and say it with --step 'PATTERN=wiggle'"
            if typed is None
            else "type w and Enter if you wiggled the harness in it"
        )
        print(printable(f"{', '.join(new)}: the arm rests; {how}"), file=out, flush=True)
    said = typed() if typed is not None else ""
    if not watch.unconfirmed or "w" not in said.lower().split():
        return watch
    with stoppable(err, str(watch.folder)) as tick:
        after = confirmed(watch, tick)
    for failure in after.failures[len(watch.failures) :]:
        print(error_line(str(watch.folder / failure.name), failure.sentence), file=err, flush=True)
    if not after.unconfirmed:
        names = ", ".join(watch.unconfirmed)
        print(printable(f"{names}: taken as a wiggle test"), file=out, flush=True)
        print(_all_together(after), file=out, flush=True)
    return after


def _all_together(watch: Watch) -> str:
    """One line of what all files of this watch say together."""
    ask = watch.standing.evidence.next
    count = len(watch.taken)
    return printable(f"{count} {'file' if count == 1 else 'files'} together: {ask.line}. {ask.sentence}")
