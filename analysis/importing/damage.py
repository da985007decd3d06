"""What the libraries say of damaged and of too large files, as sentences for the technician."""

from __future__ import annotations

import struct
import sys
import tokenize
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager

from analysis.errors import ImportingError, WornbandError
from analysis.wording import say

_RAISED: tuple[type[Exception], ...] = (
    OSError, ValueError, TypeError, KeyError, IndexError, EOFError, OverflowError, MemoryError,
    RuntimeError, NotImplementedError, AttributeError, SyntaxError, UnicodeError,
    struct.error, zlib.error, zipfile.BadZipFile,
    tokenize.TokenError,  # of NumPy, which takes a header of version 1 apart as Python does
)  # fmt: skip


def _raised() -> tuple[type[Exception], ...]:
    """What the libraries raise; of Arrow nothing where it was never loaded."""
    arrow = sys.modules.get("pyarrow")
    return (*_RAISED, arrow.ArrowException) if arrow is not None else _RAISED


@contextmanager
def readable(kind: str) -> Iterator[None]:
    """Whatever a library raises over a damaged file, as one sentence.

    Raises
    ------
    ImportingError
        In the place of what was raised.
    """
    try:
        yield
    except WornbandError:
        raise
    except _raised() as error:
        raise ImportingError(
            say("it is damaged, or no {kind} file that can be read", kind=kind),
            say("save the recording again"),
        ) from error


def too_much(size: int) -> ImportingError:
    """What is said of a file that claims more than can be read."""
    return ImportingError(
        say("it unpacks to {size:,} bytes, more than can be read", size=size), say("save a shorter stretch")
    )
