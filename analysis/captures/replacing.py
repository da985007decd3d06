"""Files that are there whole or not at all: written beside, flushed to the disk, and renamed."""

from __future__ import annotations

import os
import re
import sys
import time
import uuid
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from analysis.errors import CaptureError, WornbandError
from analysis.wording import say

_SURELY_OVER_S = 3600.0  # nothing that is saved takes an hour


@contextmanager
def replaced_at_the_end(target: Path, error_type: type[WornbandError] = CaptureError) -> Iterator[Path]:
    """A temporary path beside `target` that takes its place when all went well.

    Parameters
    ----------
    target : Path
        What is to be replaced, or made.
    error_type : type of WornbandError
        What a failure of the disk is raised as.

    Yields
    ------
    Path
        Where to write; nothing is left there after a failure.

    Raises
    ------
    WornbandError
        Of `error_type`, where it cannot be written.
    """
    _sweep(target)
    temporary = target.with_name(f".{target.name}.{uuid.uuid4().hex}.part")
    try:
        try:
            yield temporary
            _sync(temporary)
            temporary.replace(target)
            _sync_folder(target.parent)
        except (OSError, RuntimeError) as error:  # h5py raises the second where a disk is full
            raise error_type(*_reason(target, error)) from error
    finally:
        # Where it could not be made it cannot always be looked for either: a name may be too long.
        with suppress(OSError):
            temporary.unlink(missing_ok=True)


def _sweep(target: Path) -> None:
    """Remove what savings of the same file left behind that were killed, once they are surely over."""
    with suppress(OSError), os.scandir(target.parent) as entries:
        left = [item for item in entries if item.name.startswith(f".{target.name}.")]
        for item in left:
            whole = re.fullmatch(r"[0-9a-f]{32}\.part", item.name.removeprefix(f".{target.name}."))
            if whole and time.time() - item.stat(follow_symlinks=False).st_mtime > _SURELY_OVER_S:
                Path(item.path).unlink()


def _reason(target: Path, error: Exception) -> tuple[str, str]:
    if not target.parent.is_dir():
        return say("there is no such folder to write to"), say("create it, or choose another")
    if isinstance(error, PermissionError):
        return say("you have no right to write there"), say("choose another folder")
    if target.is_dir():
        return say("a folder of that name exists already"), say("choose another name")
    return say("the file could not be written"), say("check the free space and the drive")


def _sync(path: Path) -> None:
    handle = os.open(path, os.O_RDWR)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _sync_folder(folder: Path) -> None:
    """Make the rename durable; Windows does so by itself and opens no folders."""
    if sys.platform == "win32":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
