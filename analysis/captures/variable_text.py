"""Variable-length texts, read in a process of their own.

h5py writes text attributes with variable length unless told otherwise, so captures of other programs
have them. Reading one out of a damaged file can crash or hang the HDF5 library, and no check from
outside prevents it: the length stands in a heap that the library reads unchecked. So a short-lived
child process reads them, with a limit on time and memory; only files that hold such texts pay for it.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from analysis.errors import CaptureError
from analysis.wording import say

_TIMEOUT_S = 20.0  # the child needs 0.2 s; a busy or cold machine needs more, a hang never ends
_CHILD = Path(__file__).with_name("variable_text_child.py")


def fetch(path: Path, wanted: Sequence[tuple[str, str]]) -> list[str]:
    """Texts of variable-length attributes.

    Parameters
    ----------
    path : Path
        The file.
    wanted : sequence of (str, str)
        Path of the object inside the file, and name of the attribute.

    Returns
    -------
    list of str
        One for each of `wanted`, in its order; empty without starting a process where nothing is wanted.

    Raises
    ------
    CaptureError
        Where the texts are damaged, or no process can be started.
    """
    if not wanted:
        return []
    request = json.dumps({"path": os.fspath(path.absolute()), "wanted": list(wanted)})
    try:
        done = subprocess.run(
            [sys.executable, "-P", os.fspath(_CHILD)],
            input=request.encode("ascii"),
            capture_output=True,
            timeout=_TIMEOUT_S,
            check=False,
            env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
            creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
        )
    except subprocess.TimeoutExpired as error:
        raise _damaged() from error
    except OSError as error:
        raise CaptureError(
            say("its texts have variable length and no process can be started to read them safely"),
            say("store them with fixed length"),
        ) from error
    if done.returncode != 0:
        raise _damaged()
    texts: list[str] = json.loads(done.stdout)
    return texts


def _damaged() -> CaptureError:
    return CaptureError(
        say("the text attributes of the file are damaged"), say("copy it from the recorder again")
    )
