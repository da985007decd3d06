"""WAV files (RIFF: Multimedia Programming Interface and Data Specifications 1.0; RF64: EBU Tech 3306)."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

import numpy as np

from analysis.captures.model import Scaling
from analysis.errors import ImportingError
from analysis.importing.model import Block, Column, Table, checked_columns
from analysis.progress import Tick
from analysis.wording import say

_PCM, _FLOAT, _EXTENSIBLE = 1, 3, 0xFFFE
_FRAMES = 256 * 1024


def open_wav(path: Path) -> Table:
    """A WAV file as a table: integers as they are, full scale being 1 until it is told in volts.

    Raises
    ------
    ImportingError
        Where it is damaged, or holds anything but PCM of 8 to 32 bit or floats.
    """
    with path.open("rb") as file:
        form, start, size = _chunks(file, path.stat().st_size)
    code, channels, rate, _, frame, bits = struct.unpack("<HHIIHH", form[:16])
    if code == _EXTENSIBLE and len(form) >= 26:
        code = struct.unpack("<H", form[24:26])[0]
    width = bits // 8
    known = (code == _PCM and bits in (8, 16, 24, 32)) or (code == _FLOAT and bits in (32, 64))
    if not known or not channels or frame != channels * width or not rate:
        raise ImportingError(
            say("its sound is packed in a way that is not read here"),
            say("save it as plain PCM or as floats"),
        )
    scale = 1.0 if code == _FLOAT else 1.0 / 2 ** (bits - 1)
    offset = -1.0 if code == _PCM and bits == 8 else 0.0
    dtype = np.dtype(f"<f{width}" if code == _FLOAT else {1: "u1", 2: "<i2", 3: "<i4", 4: "<i4"}[width])
    column = Column("", "", dtype.newbyteorder("="), Scaling(scale, offset))
    count = size // frame

    def blocks(tick: Tick, notes: list[str]) -> Iterator[Block]:
        with path.open("rb") as file:
            file.seek(start)
            for first in range(0, count, _FRAMES):
                frames = min(_FRAMES, count - first)
                raw = file.read(frames * frame)
                frames = len(raw) // frame
                yield _unpacked(raw[: frames * frame], frames, channels, width, dtype)
                tick((first + frames) / count)

    names = [Column(f"channel {place + 1}", "", column.dtype, column.scaling) for place in range(channels)]
    return Table(path, "wav", checked_columns(names), blocks, 1.0 / rate)


def _chunks(file: BinaryIO, total: int) -> tuple[bytes, int, int]:
    """The format chunk, and where the samples are."""
    head = file.read(12)
    form, long_size = b"", 0
    while len(header := file.read(8)) == 8 and head[8:12] == b"WAVE":
        name, size = header[:4], struct.unpack("<I", header[4:])[0]
        if name == b"data":
            start = file.tell()
            size = long_size if size == 0xFFFFFFFF and long_size else size
            if len(form) >= 16:
                return (
                    form,
                    start,
                    min(size, total - start),
                )  # a recorder that was cut off leaves size 0 or -1
            break
        body = file.read(min(size, 4096)) if name in (b"fmt ", b"ds64") else b""
        form = body if name == b"fmt " else form
        if name == b"ds64" and len(body) >= 16:
            long_size = struct.unpack("<Q", body[8:16])[0]
        file.seek(size - len(body) + size % 2, 1)
    raise ImportingError(say("it is a damaged WAV file"), say("copy it from the recorder again"))


def _unpacked(raw: bytes, frames: int, channels: int, width: int, dtype: np.dtype[np.generic]) -> Block:
    if width == 3:
        wide = np.zeros((frames * channels, 4), dtype=np.uint8)
        wide[:, 1:] = np.frombuffer(raw, dtype=np.uint8).reshape(-1, 3)
        samples = wide.view("<i4").ravel() >> 8
    else:
        samples = np.frombuffer(raw, dtype=dtype)
    return tuple(samples.reshape(frames, channels).T)
