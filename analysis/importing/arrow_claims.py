"""How much a Feather file claims to unpack to, read from what it says of itself before anything is unpacked.

The layout is that of the Arrow IPC file format and of FlatBuffers (both open specifications): a footer lists
the batches, each has a header that lists its buffers, and a packed buffer begins with its unpacked length.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

_FOOTER_DICTIONARIES, _FOOTER_BATCHES = 2, 3  # places of the fields in their FlatBuffers tables
_MESSAGE_KIND, _MESSAGE_HEADER = 1, 2
_DICTIONARY_DATA, _BATCH_BUFFERS, _BATCH_PACKING = 1, 2, 3
_KIND_DICTIONARY, _KIND_BATCH = 2, 3
_GOES_ON = 0xFFFFFFFF
_TAIL_BYTES = 10  # length of the footer, and the word ARROW1
_BLOCK_BYTES, _BUFFER_BYTES = 24, 16


@dataclass(frozen=True, slots=True)
class _Flat:
    """A FlatBuffers table: `data` is the file, `at` where the table begins."""

    data: memoryview
    at: int

    def field(self, place: int) -> int | None:
        """Where a field lies; None where it is left at its default."""
        table = self.at - _number(self.data, "<i", self.at)
        if 4 + 2 * place >= _number(self.data, "<H", table):
            return None
        offset = _number(self.data, "<H", table + 4 + 2 * place)
        return self.at + offset if offset else None

    def table(self, place: int) -> _Flat | None:
        """The table that a field points to."""
        at = self.field(place)
        return None if at is None else _Flat(self.data, at + _number(self.data, "<I", at))

    def structures(self, place: int, size: int) -> Iterator[int]:
        """Where each structure of a vector lies."""
        at = self.field(place)
        if at is None:
            return
        start = at + _number(self.data, "<I", at)
        count = _number(self.data, "<I", start)
        if start + 4 + count * size > len(self.data):
            raise ValueError("a vector goes on behind the end")
        yield from (start + 4 + number * size for number in range(count))


def largest_batch_bytes(source: Any) -> int:
    """What the largest batch of an Arrow IPC file says it unpacks to.

    Parameters
    ----------
    source : buffer
        The whole file, mapped.

    Returns
    -------
    int
        Bytes; 0 where nothing is packed.

    Raises
    ------
    ValueError, struct.error
        Where the file is damaged.
    """
    data = memoryview(source)
    size = _number(data, "<i", len(data) - _TAIL_BYTES)
    start = len(data) - _TAIL_BYTES - size
    if size < 8 or start < 8:
        raise ValueError("the footer does not fit into the file")
    footer = _Flat(data, start + _number(data, "<I", start))
    blocks = (
        block
        for place in (_FOOTER_DICTIONARIES, _FOOTER_BATCHES)
        for block in footer.structures(place, _BLOCK_BYTES)
    )
    return max((_unpacked_bytes(data, block) for block in blocks), default=0)


def _unpacked_bytes(data: memoryview, block: int) -> int:
    """What the batch of a block of the footer says it unpacks to."""
    start, body = _number(data, "<q", block), _number(data, "<i", block + 8)
    head = start + (8 if _number(data, "<I", start) == _GOES_ON else 4)
    message = _Flat(data, head + _number(data, "<I", head))
    kind, batch = message.field(_MESSAGE_KIND), message.table(_MESSAGE_HEADER)
    if kind is None or batch is None:
        return 0
    if data[kind] == _KIND_DICTIONARY:
        batch = batch.table(_DICTIONARY_DATA)
    elif data[kind] != _KIND_BATCH:
        return 0
    if batch is None or batch.field(_BATCH_PACKING) is None:
        return 0
    total = 0
    for buffer in batch.structures(_BATCH_BUFFERS, _BUFFER_BYTES):
        offset, length = _number(data, "<q", buffer), _number(data, "<q", buffer + 8)
        if length >= 8:
            total += max(_number(data, "<q", start + body + offset), 0)
    return total


def _number(data: memoryview, form: str, at: int) -> int:
    if at < 0:
        raise ValueError("an offset points before the beginning")
    return int(struct.unpack_from(form, data, at)[0])
