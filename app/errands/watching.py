"""``wornband watch``: what a recorder saves in a folder is imported and analysed as it arrives."""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from pathlib import Path
from typing import TextIO

from analysis.errors import WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.recipe import read_recipe
from analysis.importing.recipes import own_recipes_folder
from analysis.importing.wishes import Wishes
from app.errands.analysing import Request, answer
from app.errands.importing import stoppable
from app.printable import error_line

_EVERY_S = 1.0
_OURS = (".h5", ".json", ".toml", ".part", ".tmp")

Seen = dict[str, tuple[int, int]]
"""Size and time of change of each file, by name."""


def watch_folder(
    folder: Path,
    recipe: Path | None,
    profile: str | None,
    *,
    once: bool,
    out: TextIO,
    err: TextIO,
    wait: Callable[[float], None] = time.sleep,
) -> int:
    """Import and analyse each file that has stopped growing, until it is stopped.

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
    wait : callable
        Waits that many seconds; between two looks a file must not have changed.

    Returns
    -------
    int
        0, or 1 where some file could not be done.
    """
    wishes = read_recipe(recipe) if recipe is not None else Wishes()
    recipes = own_recipes_folder() if recipe is None else None
    done: Seen = {}
    failed = False
    before = _look(folder, err)
    if before is None:
        return 1
    while True:
        wait(_EVERY_S)
        now = _look(folder, err) or {}
        still = [name for name, state in now.items() if before.get(name) == state and done.get(name) != state]
        for name in sorted(still):
            done[name] = now[name]
            failed = not _do(folder / name, wishes, recipes, profile, out, err) or failed
        before = now
        if once:
            return 1 if failed else 0


def _look(folder: Path, err: TextIO) -> Seen | None:
    seen: Seen = {}
    try:
        for item in os.scandir(folder):
            if item.is_file() and not item.name.startswith(".") and not item.name.lower().endswith(_OURS):
                state = item.stat()
                if state.st_size:
                    seen[item.name] = state.st_size, state.st_mtime_ns
    except OSError:
        print(error_line(str(folder), "the folder cannot be read; check its name and your rights"), file=err)
        return None
    return seen


def _do(
    source: Path, wishes: Wishes, recipes: Path | None, profile: str | None, out: TextIO, err: TextIO
) -> bool:
    """Import and analyse one file; whether that went well. The file itself is never touched."""
    target = source.with_name(source.name + ".h5")
    if target.exists() and target.stat().st_mtime_ns >= source.stat().st_mtime_ns:
        return True  # done in an earlier watch
    try:
        with stoppable(err, source.name) as tick:
            import_capture(
                [source], target, wishes, replace_target=True, title=source.stem, tick=tick, recipes=recipes
            )
            found = answer(str(target), Request(profile), tick)
    except WornbandError as error:
        print(error_line(str(source), str(error)), file=err, flush=True)
        return False
    if found.error:
        print(error_line(str(source), found.error), file=err, flush=True)
        return False
    print(found.text, file=out, flush=True)
    return True
