"""What lies in a folder, and which of it has stopped growing."""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path

from analysis.errors import ImportingError
from analysis.wording import say

State = tuple[int, int]
"""Size in bytes, and time of the last change in nanoseconds."""

_OURS = (".h5", ".json", ".toml", ".part", ".tmp")


def look(folder: Path) -> dict[str, State]:
    """Size and time of change of each file that a recorder may have saved, by name; empty files left out.

    Raises
    ------
    ImportingError
        Where the folder is gone or may not be read.
    """
    seen: dict[str, State] = {}
    try:
        with os.scandir(folder) as items:
            for item in items:
                if item.name.startswith(".") or item.name.lower().endswith(_OURS) or not item.is_file():
                    continue
                state = item.stat()
                if state.st_size:
                    seen[item.name] = state.st_size, state.st_mtime_ns
    except OSError as error:
        raise ImportingError(
            say("the folder cannot be read"), say("check its name, the connection and your rights")
        ) from error
    return seen


def at_rest(before: Mapping[str, State], now: Mapping[str, State], done: Mapping[str, State]) -> list[str]:
    """Names of files that did not change between two looks and are not done, first saved first."""
    still = [name for name, state in now.items() if before.get(name) == state and done.get(name) != state]
    return sorted(still, key=lambda name: (now[name][1], name))
