"""Fingerprints: of the file as it lies on the disk, and of what it says.

The **file fingerprint** is the plain SHA-256 of the file's bytes, as any tool computes it.

The **content fingerprint** stays the same when the file is repacked with another compression, and
changes when a sample or a word that gives the samples meaning changes. It is the SHA-256 over

1. ``/``, then each ``/records/<NNN>`` in the order of the names, after each of them those of its datasets
   whose attribute ``role`` is one of the five words of the format, in the order of their names;
2. for each of these objects its path and a line feed;
3. then for each of its attributes out of `layout.MEANING_KEYS`, in the order of their names,
   ``name=value`` and a line feed, where a text is itself and a number is Python's ``float.hex``;
4. then, for a dataset, its samples as they are stored, little-endian.

Texts are UTF-8. ``tests/captures/test_fingerprint.py`` computes it with ten lines of h5py.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from analysis.captures import layout
from analysis.captures.model import Capture
from analysis.captures.strict import Value
from analysis.errors import CaptureError
from analysis.progress import Tick, ignore
from analysis.wording import say

_BLOCK_BYTES = 4 * 1024 * 1024  # some 5 ms of hashing between two ticks


class Digest(Protocol):
    """What `hashlib.sha256` returns."""

    def update(self, data: Any, /) -> None:
        """Take more bytes."""

    def hexdigest(self) -> str:
        """The fingerprint so far."""


class ContentDigest:
    """The content fingerprint, fed object by object in the order that the module states."""

    def __init__(self) -> None:
        self._digest: Digest = hashlib.sha256()

    def describe(self, path: str, attributes: Mapping[str, Value]) -> None:
        """Take an object's path and those of its attributes that give the samples meaning."""
        self._digest.update(f"{path}\n".encode())
        for key in sorted(layout.MEANING_KEYS & attributes.keys()):
            self._digest.update(f"{key}={_as_text(attributes[key])}\n".encode())

    def add(self, raw: NDArray[Any]) -> None:
        """Take the next stretch of a dataset's samples."""
        self._digest.update(np.ascontiguousarray(raw, dtype=raw.dtype.newbyteorder("<")).data)

    def hexdigest(self) -> str:
        """The fingerprint, 64 hexadecimal digits."""
        return self._digest.hexdigest()


def _as_text(value: Value) -> str:
    return value if isinstance(value, str) else float(value).hex()


def _blocks(path: Path, tick: Tick) -> Iterator[bytes]:
    size = max(path.stat().st_size, 1)
    done = 0
    with path.open("rb") as file:
        while block := file.read(_BLOCK_BYTES):
            yield block
            done += len(block)
            tick(min(done / size, 1.0))


def file_sha256(path: Path, tick: Tick = ignore) -> str:
    """Plain SHA-256 of a file.

    Parameters
    ----------
    path : Path
        Any file.
    tick : Tick
        Progress; a file of 1 GB takes about a second.

    Returns
    -------
    str
        64 hexadecimal digits.

    Raises
    ------
    CaptureError
        Where the file cannot be read.
    """
    digest = hashlib.sha256()
    try:
        for block in _blocks(path, tick):
            digest.update(block)
    except OSError as error:
        raise CaptureError(
            say("the file can no longer be read"), say("check that it is still there")
        ) from error
    return digest.hexdigest()


def with_sha256(capture: Capture, tick: Tick = ignore) -> Capture:
    """The capture with the fingerprint of its file filled in.

    Parameters
    ----------
    capture : Capture
        Returned as it is where it was never stored or has the fingerprint already.
    tick : Tick
        Progress.

    Returns
    -------
    Capture
        With ``sha256``.

    Raises
    ------
    CaptureError
        Where the file cannot be read any more.
    """
    if capture.path is None or capture.sha256:
        return capture
    return replace(capture, sha256=file_sha256(capture.path, tick))
