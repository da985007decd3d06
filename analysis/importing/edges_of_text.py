"""The first and the last lines of a text file, by which it is understood."""

from __future__ import annotations

from pathlib import Path

from analysis.importing.encoding import MOST_LINE_BYTES, decoded, encoding_of, long_line
from analysis.importing.headings import lines_of

_HEAD_BYTES = 512 * 1024
_END_BYTES = 32 * 1024


def head_of(path: Path, encoding: str | None = None) -> tuple[str, str]:
    """The first lines of a text file, whole ones, and its encoding.

    Parameters
    ----------
    path : Path
        A regular file.
    encoding : str or None
        Where it was chosen.

    Raises
    ------
    ImportingError
        Where it is no text, or a line has no end.
    """
    with path.open("rb") as file:
        head = file.read(_HEAD_BYTES)
        more = bool(file.read(1))
    encoding = encoding_of(head, encoding)
    text = decoded(head, encoding)
    if more:
        end = max(text.rfind("\n"), text.rfind("\r"))
        if end < 0:
            raise long_line()
        text = text[:end]
    if max(map(len, text.splitlines()), default=0) > MOST_LINE_BYTES:
        raise long_line()
    return text, encoding


def end_of(path: Path, encoding: str) -> list[str]:
    """The last whole lines of a text file.

    Parameters
    ----------
    path : Path
        A regular file.
    encoding : str
        That it is read in.
    """
    with path.open("rb") as file:
        start = max(file.seek(0, 2) - _END_BYTES, 0) // 4 * 4  # where a character begins
        file.seek(0)
        mark = file.read(2) if encoding == "utf-16" and start else b""  # which of its two orders it is
        file.seek(start)
        text = decoded(mark + file.read(_END_BYTES), encoding)
    return lines_of(text)[1:-1]
