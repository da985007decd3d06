"""The kind of a source by its first bytes, whatever its name, and the source as a table."""

from __future__ import annotations

import os
import stat
from collections.abc import Callable, Sequence
from pathlib import Path

from analysis.errors import ImportingError
from analysis.importing.binary import open_hdf5, open_mat, open_netcdf3, open_npy, open_npz
from analysis.importing.choices import NOTHING_CHOSEN, TextChoices
from analysis.importing.delimited import open_text
from analysis.importing.model import Table
from analysis.importing.wav import open_wav
from analysis.wording import say


def open_table(path: Path, choices: TextChoices = NOTHING_CHOSEN, datasets: Sequence[str] = ()) -> Table:
    """A source as a table.

    Parameters
    ----------
    path : Path
        Any file.
    choices : TextChoices
        How it is written, should it be text.
    datasets : sequence of str
        Which of its named arrays are to be used, should it hold such; all where it is empty.

    Raises
    ------
    ImportingError
        Where it cannot be read as one; the sentence says why and what to do.
    CaptureError
        Where an HDF5 file is damaged.
    """
    _check(path)
    kind = _kind(path)
    if kind == "text":
        return open_text(path, choices)
    if kind in _OF_ARRAYS:
        return _OF_ARRAYS[kind](path, datasets)
    return _OPENERS[kind](path)


def is_text(path: Path) -> bool:
    """Whether a source would be opened as text.

    Raises
    ------
    ImportingError
        Where there is no such file, or it may not be read.
    """
    _check(path)
    return _kind(path) == "text"


def _kind(path: Path) -> str:
    with path.open("rb") as file:
        head = file.read(128)
    if head.startswith(b"\x89HDF") or (head.startswith(b"MATLAB 7.3") and len(head) == 128):
        return "hdf5"
    if head.startswith((b"RIFF", b"RF64")) and head[8:12] == b"WAVE":
        return "wav"
    if head.startswith(b"\x93NUMPY"):
        return "npy"
    if head.startswith(b"PK\x03\x04"):
        return "npz"
    if head.startswith(b"PAR1"):
        return "parquet"
    if head.startswith(b"ARROW1"):
        return "feather"
    if head.startswith(b"FEA1"):
        raise ImportingError(
            say("it is a Feather file of the first version, which is not read any more"),
            say("save it as Parquet, or as Feather of version 2"),
        )
    if head.startswith((b"CDF\x01", b"CDF\x02")):
        return "netcdf"
    if head.startswith(b"CDF\x05"):
        raise ImportingError(
            say("it is a netCDF file of a kind that is not read here (64-bit data)"),
            say("save it as netCDF-4"),
        )
    if head[124:128] in (b"\x00\x01IM", b"\x01\x00MI") or head[:4] in _MAT_4:
        return "mat"
    return "text"


def _open_parquet(path: Path) -> Table:
    from analysis.importing.arrow import open_parquet  # here, since no window should wait for Arrow

    return open_parquet(path)


def _open_feather(path: Path) -> Table:
    from analysis.importing.arrow import open_feather

    return open_feather(path)


_OPENERS: dict[str, Callable[[Path], Table]] = {
    "wav": open_wav,
    "npy": open_npy,
    "parquet": _open_parquet,
    "feather": _open_feather,
}
_OF_ARRAYS: dict[str, Callable[[Path, Sequence[str]], Table]] = {
    "hdf5": open_hdf5,
    "npz": open_npz,
    "netcdf": open_netcdf3,
    "mat": open_mat,
}
_MAT_4 = tuple(code.to_bytes(4, "little") for code in (0, 10, 20, 30, 40, 50))


def _check(path: Path) -> None:
    try:
        status = path.stat()
    except PermissionError as error:
        raise _no_rights() from error
    except (OSError, ValueError) as error:
        raise ImportingError(say("there is no such file"), say("check the name and the folder")) from error
    if not stat.S_ISREG(status.st_mode):
        raise ImportingError(say("it is no file"), say("choose a file with recorded samples"))
    if not status.st_size:
        raise ImportingError(say("the file is empty"), say("copy it from the recorder again"))
    if not os.access(path, os.R_OK):
        raise _no_rights()


def _no_rights() -> ImportingError:
    return ImportingError(
        say("you have no right to read the file"), say("change its permissions or get a copy")
    )
