"""Which files are meant: those that were named, and those of a folder that may be recordings."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from analysis.captures.reading import open_capture
from analysis.errors import ImportingError, WornbandError
from analysis.wording import say

_MOST_SOURCES = 500
_NO_RECORDINGS = frozenset(
    [
        *("png", "jpg", "jpeg", "gif", "bmp", "tif", "tiff", "webp", "heic", "svg", "mp4", "mov"),
        *("pdf", "doc", "docx", "odt", "lnk", "ini", "db", "json", "toml", "part", "tmp"),
    ]
)
"""What lies beside recordings in a folder: photos, papers, what a desktop or this program left there."""

_HDF5 = b"\x89HDF"


def sources_in(paths: Sequence[Path]) -> list[Path]:
    """Files, with those of a folder in the order of their names, in which 10 comes behind 9.

    Of a folder photos, papers and captures of this program are left out.

    Raises
    ------
    ImportingError
        Where a folder holds no files, or there are absurdly many.
    """
    found: list[Path] = []
    for path in paths:
        inside = _of_folder(path) if path.is_dir() else [path]
        if not inside:
            raise ImportingError(say("the folder holds no files"), say("choose another folder"))
        found.extend(inside)
    if len(found) > _MOST_SOURCES:
        raise ImportingError(
            say(
                "there are {count:,} files, and at most {most} become one capture",
                count=len(found),
                most=_MOST_SOURCES,
            ),
            say("choose those of one sensor"),
        )
    return found


@contextmanager
def naming(path: Path) -> Iterator[None]:
    """Let an error of the work inside say which file it is about, unless it does already."""
    try:
        yield
    except WornbandError as error:
        error.path = error.path or path
        raise


def _of_folder(folder: Path) -> list[Path]:
    files = [item for item in folder.iterdir() if item.is_file() and not item.name.startswith(".")]
    return sorted((item for item in files if _may_be_recording(item)), key=_by_name)


def _by_name(path: Path) -> tuple[tuple[int, str], ...]:
    """A key by which names that differ in a number come in its order."""
    return tuple(
        (int(part), "") if part.isdecimal() and len(part) < 16 else (-1, part.casefold())
        for part in re.split(r"(\d+)", path.name)
    )


def _may_be_recording(path: Path) -> bool:
    if path.suffix.lower().lstrip(".") in _NO_RECORDINGS:
        return False
    try:
        with path.open("rb") as file:
            if file.read(4) != _HDF5:
                return True
        with open_capture(path):
            return False  # what an earlier import left beside its sources
    except (OSError, WornbandError):
        return True
