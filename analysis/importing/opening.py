"""The kind of a source by its first bytes, whatever its name, and the source as a table."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from analysis.errors import ImportingError
from analysis.importing.binary import open_arrow, open_hdf5, open_mat, open_netcdf3, open_npy, open_npz
from analysis.importing.delimited import open_text
from analysis.importing.model import Table
from analysis.importing.wav import open_wav
from analysis.wording import say


def open_table(path: Path) -> Table:
    """A source as a table.

    Raises
    ------
    ImportingError
        Where it cannot be read as one; the sentence says why and what to do.
    CaptureError
        Where an HDF5 file is damaged.
    """
    _check(path)
    with path.open("rb") as file:
        head = file.read(128)
    if head.startswith(b"\x89HDF") or (head.startswith(b"MATLAB 7.3") and len(head) == 128):
        return open_hdf5(path)
    if head.startswith((b"RIFF", b"RF64")) and head[8:12] == b"WAVE":
        return open_wav(path)
    if head.startswith(b"\x93NUMPY"):
        return open_npy(path)
    if head.startswith(b"PK\x03\x04"):
        return open_npz(path)
    if head.startswith(b"PAR1"):
        return open_arrow(path, "parquet")
    if head.startswith((b"ARROW1", b"FEA1")):
        return open_arrow(path, "feather")
    if head.startswith((b"CDF\x01", b"CDF\x02")):
        return open_netcdf3(path)
    if head[124:128] in (b"\x00\x01IM", b"\x01\x00MI") or head[:4] in _MAT_4:
        return open_mat(path)
    return open_text(path)


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
        say("you have no right to read the file"), say("change its permissions or copy it first")
    )
