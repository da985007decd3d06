"""HDF5 read strictly: kind, type and size are checked before anything is fetched.

A damaged file can crash or hang the HDF5 library where it reads variable-length values, follows
references or believes absurd sizes. So nothing here reads an attribute that is not one number or one
fixed-length text, follows a link out of the file, or opens a dataset that is not a plain run of
numbers. Variable-length texts are only listed; `analysis.captures.variable_text` fetches them apart.
"""

from __future__ import annotations

import os
import stat
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from math import prod
from pathlib import Path
from typing import Any

import h5py
import numpy as np
from h5py import h5a, h5d, h5g, h5p, h5s, h5t, h5z

from analysis.captures import layout
from analysis.errors import CaptureError, NoCaptureError
from analysis.wording import say

_MAX_TEXT_BYTES = 64 * 1024  # an attribute of the classic object header cannot be larger
_MAX_ATTRIBUTES = 1_000
_MAX_MEMBERS = 10_000
_MAX_CHUNK_BYTES = 512 * 1024 * 1024

# Deflate cannot pack better than 1,032 to 1 (RFC 1951: 258 bytes from 2 bits), so a dataset that claims
# more than this beyond a generous start is damaged, not well compressed.
_MAX_PACKING = 1_100
_UNPACKED_ALLOWANCE_BYTES = 64 * 1024 * 1024

_CACHE_BYTES = 4 * 1024 * 1024  # HDF5's chunk cache of each dataset: 8 of our int16 chunks, filled as used
_MAX_CACHE_BYTES = 64 * 1024 * 1024
_CACHE_SLOTS = 521  # prime, as the HDF5 documentation asks

Value = str | float
"""What an attribute is read as; whole numbers come as `int`."""


@dataclass(frozen=True, slots=True)
class Attributes:
    """The attributes of one object.

    Parameters
    ----------
    values : dict
        Numbers and fixed-length texts.
    variable : tuple of str
        Names of variable-length texts, which are not read here.
    odd : dict
        Name to description of what is neither: arrays, references, compounds.
    """

    values: dict[str, Value]
    variable: tuple[str, ...] = ()
    odd: dict[str, str] = field(default_factory=dict)


@contextmanager
def translated(where: str) -> Iterator[None]:
    """Translate what h5py and the operating system raise into a `CaptureError`.

    Parameters
    ----------
    where : str
        What was being read, as a part of a sentence: ``"channel signal of record 001"``.
    """
    try:
        yield
    except (OSError, RuntimeError, KeyError, ValueError, TypeError, OverflowError) as error:
        raise CaptureError(
            say("{where} cannot be read, the file is damaged there", where=where),
            say("copy it from the recorder again"),
        ) from error


def open_file(path: Path) -> h5py.File:
    """Open a file as HDF5, read-only.

    Raises
    ------
    CaptureError
        Where it is missing, a folder, empty, not HDF5, cut short, locked, or may not be read.
    """
    _check_regular(path)
    try:
        return h5py.File(path, "r", locking="best-effort")
    except PermissionError as error:
        raise _no_rights() from error
    except (OSError, RuntimeError, ValueError) as error:
        raise _opening_error(path, str(error)) from error


def _no_rights() -> CaptureError:
    return CaptureError(
        say("you have no right to read the file"), say("change its permissions or get a copy")
    )


def _check_regular(path: Path) -> None:
    """Refuse what is not a regular, filled file before HDF5 waits on a pipe or reads a device."""
    try:
        status = path.stat()
    except PermissionError as error:
        raise _no_rights() from error
    except (OSError, ValueError) as error:
        raise CaptureError(say("there is no such file"), say("check the name and the folder")) from error
    if stat.S_ISDIR(status.st_mode):
        raise NoCaptureError(say("this is a folder, not a capture"), say("choose a file inside it"))
    if not stat.S_ISREG(status.st_mode):
        raise CaptureError(say("this is a device or a pipe, not a capture"), say("choose a capture file"))
    if status.st_size == 0:
        raise CaptureError(say("the file is empty"), say("copy it from the recorder again"))
    if not os.access(path, os.R_OK):
        raise _no_rights()


def _opening_error(path: Path, message: str) -> CaptureError:
    if "truncated" in message:
        size = path.stat().st_size
        return CaptureError(
            say("the file is cut short at {size:,} bytes", size=size), say("copy it from the recorder again")
        )
    if "file lock" in message or "lock file" in message:
        return CaptureError(
            say("another program is still writing the file"), say("close it there and try again")
        )
    if "signature not found" in message:
        return NoCaptureError(
            say("the file is not HDF5, so it is no capture"), say("import it, or choose another file")
        )
    return CaptureError(
        say("the file is damaged and cannot be opened"), say("copy it from the recorder again")
    )


def members(group: h5g.GroupID) -> list[str]:
    """Names of what a group itself holds, in the file's order; soft and external links are left out."""
    names = []
    with translated(say("a group")):
        if group.get_num_objs() > _MAX_MEMBERS:
            raise CaptureError(
                say("a group holds more than {most:,} objects", most=_MAX_MEMBERS),
                say("choose another file"),
            )
        for raw in group:
            name = raw.decode("utf-8", "replace")
            if name.encode() == raw and _kind_of(group, name) in (h5g.GROUP, h5g.DATASET):
                names.append(name)
    return names


def _kind_of(group: h5g.GroupID, name: str) -> int:
    """Kind of a member, its link not followed: a soft or external link is a kind of its own."""
    return int(h5g.get_objinfo(group, name.encode(), follow_link=False).type)


def open_group(parent: h5g.GroupID, name: str) -> h5g.GroupID | None:
    """The group of that name that `parent` itself holds, or None where there is none."""
    with translated(say("group {name}", name=name)):
        if not parent.links.exists(name.encode()) or _kind_of(parent, name) != h5g.GROUP:
            return None
        return h5g.open(parent, name.encode())


def open_dataset(parent: h5g.GroupID, name: str) -> h5d.DatasetID | None:
    """The dataset of that name that `parent` itself holds, or None where there is none."""
    with translated(say("dataset {name}", name=name)):
        if not parent.links.exists(name.encode()) or _kind_of(parent, name) != h5g.DATASET:
            return None
        return h5d.open(parent, name.encode())


def attributes(item: Any, where: str) -> Attributes:
    """Every attribute of an object that can be read without danger.

    Parameters
    ----------
    item : h5py low-level identifier
        A group or a dataset.
    where : str
        For the error message.

    Raises
    ------
    CaptureError
        Where the attributes are damaged.
    """
    values: dict[str, Value] = {}
    variable: list[str] = []
    odd: dict[str, str] = {}
    with translated(say("the attributes of {where}", where=where)):
        if h5a.get_num_attrs(item) > _MAX_ATTRIBUTES:
            raise CaptureError(
                say(
                    "{where} has more than {most:,} attributes",
                    where=where,
                    most=_MAX_ATTRIBUTES,
                ),
                say("choose another file"),
            )
        for index in range(h5a.get_num_attrs(item)):
            attribute = h5a.open(item, index=index)
            name = attribute.name.decode("utf-8", "replace")
            if name in layout.MACHINERY_KEYS:
                continue
            kind = _kind(attribute)
            if kind == "variable":
                variable.append(name)
            elif kind:
                odd[name] = kind
            else:
                values[name] = _value(attribute)
    return Attributes(values, tuple(variable), odd)


def _kind(attribute: h5a.AttrID) -> str:
    """Empty for one readable value, ``"variable"`` for one variable-length text, else what it is."""
    space = attribute.get_space()
    if space.get_simple_extent_type() not in (h5s.SCALAR, h5s.SIMPLE):
        return say("empty")
    if space.get_simple_extent_npoints() != 1:
        return say("an array")
    kind = attribute.get_type()
    if isinstance(kind, h5t.TypeStringID):
        if kind.is_variable_str():
            return "variable"
        return "" if kind.get_size() <= _MAX_TEXT_BYTES else say("a text of absurd length")
    if isinstance(kind, h5t.TypeIntegerID | h5t.TypeFloatID):
        return "" if kind.get_size() <= 8 else say("a number of unknown size")
    if isinstance(kind, h5t.TypeEnumID):  # h5py writes True and False as an enumeration
        return "" if kind.get_size() == 1 and kind.dtype == np.bool_ else say("an enumeration")
    return say("neither a number nor a text")


def _value(attribute: h5a.AttrID) -> Value:
    """Read one number or fixed-length text."""
    kind = attribute.get_type()
    shape = attribute.get_space().get_simple_extent_dims()
    if isinstance(kind, h5t.TypeStringID):
        text = np.empty(shape, dtype=kind.dtype)
        attribute.read(text)
        return as_text(text.item())
    number = np.empty(shape, dtype=kind.dtype)
    attribute.read(number)
    value = number.item()
    return value if isinstance(value, float) else int(value)


def as_text(raw: bytes) -> str:
    """Text of an attribute: UTF-8, or Latin-1 where it is not UTF-8 (as a ``µ`` of older programs)."""
    raw = raw.split(b"\0", 1)[0].rstrip(b" ")
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        return raw.decode("latin-1")


def trouble_with_numbers(dataset: h5d.DatasetID) -> str:
    """What keeps a dataset from being a plain run of numbers, as a clause; empty where nothing does.

    One axis of integers or floats of at most 8 bytes, in this file, no larger than what is stored.
    """
    axes = dataset.get_space().get_simple_extent_ndims()
    wrong = "" if axes == 1 else say("has {count} dimensions instead of one", count=axes)
    return trouble_with_storage(dataset) or wrong


def trouble_with_storage(dataset: h5d.DatasetID) -> str:
    """The same of a dataset of any shape."""
    kind, created = dataset.get_type(), dataset.get_create_plist()
    plain = isinstance(kind, h5t.TypeIntegerID | h5t.TypeFloatID) and kind.get_size() <= 8
    if not plain or dataset.get_space().get_simple_extent_type() not in (h5s.SIMPLE, h5s.SCALAR):
        return say("holds something other than plain numbers")
    return _trouble_with_storage(created) or _trouble_with_size(dataset, created)


def _trouble_with_storage(created: h5p.PropDCID) -> str:
    if created.get_layout() == h5d.VIRTUAL or created.get_external_count() > 0:
        return say("keeps its samples in another file")
    for index in range(created.get_nfilters()):
        code, _, _, name = created.get_filter(index)
        if code not in layout.FILTERS or not h5z.filter_avail(code):
            known = name.decode("ascii", "replace").strip("\0 ") or say("number {code}", code=code)
            return say("is compressed by a filter that is not at hand ({known})", known=known)
    return ""


def _trouble_with_size(dataset: h5d.DatasetID, created: h5p.PropDCID) -> str:
    size = dataset.get_type().get_size()
    claimed = dataset.get_space().get_simple_extent_npoints() * size
    chunk = prod(created.get_chunk()) if created.get_layout() == h5d.CHUNKED else 0
    if claimed > _UNPACKED_ALLOWANCE_BYTES + _MAX_PACKING * dataset.get_storage_size():
        return say("claims {count:,} samples but does not hold them", count=claimed // size)
    held = chunk * size <= _MAX_CHUNK_BYTES
    return "" if held else say("is stored in chunks of {count:,} samples, more than can be held", count=chunk)


class DatasetSource:
    """Samples of an HDF5 dataset, fetched stretch by stretch; safe to read from several threads.

    h5py lets one thread at a time into the library, so a long read goes chunk by chunk and lets others
    in between. After the file was closed a read raises `CaptureError`.

    Parameters
    ----------
    parent : h5g.GroupID
        The record's group.
    name : str
        The dataset's name, already checked by `trouble_with_numbers`.
    where : str
        For error messages: ``"channel signal of record 001"``.
    """

    __slots__ = ("_dataset", "_dtype", "_length", "_stride", "_where")

    def __init__(self, parent: h5g.GroupID, name: str, where: str) -> None:
        self._where = where
        with translated(where):
            dataset, chunk = _open_with_cache(parent, name)
            self._dataset = dataset
            self._dtype: np.dtype[Any] = np.dtype(dataset.dtype).newbyteorder("=")
            self._length = int(dataset.shape[0])
            self._stride = chunk * max(1, round(layout.CHUNK_SAMPLES / chunk))

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the raw samples, in this machine's byte order."""
        return self._dtype

    def __len__(self) -> int:
        """Number of samples."""
        return self._length

    def read(self, start: int, stop: int) -> np.ndarray[Any, np.dtype[Any]]:
        """Raw samples ``[start, stop)``, clipped at the ends.

        Raises
        ------
        CaptureError
            Where the file is damaged or was closed.
        """
        start, stop = max(start, 0), min(stop, self._length)
        raw = np.empty(max(stop - start, 0), dtype=self._dtype)
        try:
            with translated(self._where):
                self._read_by_chunks(raw, start)
        except CaptureError as error:
            if self._dataset.valid:
                raise
            raise CaptureError(
                say("{where} was read after the capture was closed", where=self._where), say("open it again")
            ) from error
        return raw

    def _read_by_chunks(self, raw: np.ndarray[Any, np.dtype[Any]], start: int) -> None:
        stop, position = start + len(raw), start
        while position < stop:
            after = min(stop, (position // self._stride + 1) * self._stride)
            self._read_into(raw[position - start : after - start], position)
            position = after
            if position < stop:
                # Hands the interpreter to a waiting thread now, not at its next switch 5 ms later: a
                # window that draws meanwhile waits half as long (measured).
                time.sleep(0)

    def _read_into(self, out: np.ndarray[Any, np.dtype[Any]], start: int) -> None:
        stored = h5s.create_simple((self._length,))
        stored.select_hyperslab((start,), (len(out),))
        self._dataset.read(h5s.create_simple((len(out),)), stored, out)


def _open_with_cache(parent: h5g.GroupID, name: str) -> tuple[h5d.DatasetID, int]:
    """Open a dataset with a chunk cache that holds at least one of its chunks; its samples a chunk too.

    A chunk that does not fit the cache would be unpacked again for every window that touches it.
    """
    plain = h5d.open(parent, name.encode())
    created = plain.get_create_plist()
    if created.get_layout() != h5d.CHUNKED:
        return plain, layout.CHUNK_SAMPLES
    chunk = int(created.get_chunk()[0])
    wanted = max(_CACHE_BYTES, min(chunk * plain.get_type().get_size(), _MAX_CACHE_BYTES))
    plain.close()
    access = h5p.create(h5p.DATASET_ACCESS)
    access.set_chunk_cache(_CACHE_SLOTS, wanted, 0.0)  # 0: drop the least recently used, read or not
    return h5d.open(parent, name.encode(), access), chunk


def root(file: h5py.File) -> h5g.GroupID:
    """The root group of an open file."""
    with translated(say("the root group")):
        return h5g.open(file.id, b"/")
