"""What a file holds, found and checked but not yet understood: the one walk over records and datasets."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path

import h5py
from h5py import h5g

from analysis.captures import layout, strict, variable_text
from analysis.captures.described import Described, with_texts
from analysis.captures.model import Role
from analysis.errors import CaptureError, NewerFormatError, NoCaptureError
from analysis.wording import say

# A file of half a megabyte can hold days of zeros, and examining takes memory by the hour. Noise of a sixth
# of a bit a sample packs no better than this already; what is quieter is taken up to the allowance, three
# hours of three channels at 1 kS/s.
_MOST_PACKING = 100
_UNPACKED_ALLOWANCE_BYTES = 64 * 1024 * 1024


@dataclass(frozen=True, slots=True)
class StoredChannel:
    """A dataset of a record.

    Parameters
    ----------
    name, path : str
        Its own name, and its path inside the file.
    words : Described
        Its attributes.
    trouble : str
        Why it is no plain run of numbers, as a clause; empty where it is one.
    length : int
        Samples; 0 where there is trouble.
    claimed_bytes : int
        What they take unpacked.
    """

    name: str
    path: str
    words: Described
    trouble: str
    length: int
    claimed_bytes: int = 0

    @property
    def role(self) -> Role | None:
        """What the probe touched; None where it says nothing or something unknown.

        Raises
        ------
        CaptureError
            Where the attribute is there and is no text.
        """
        text = self.words.text(layout.ROLE_KEY)
        return Role(text) if text in set(Role) else None


@dataclass(frozen=True, slots=True)
class StoredRecord:
    """A group of ``/records``: its name and path, its attributes, its datasets."""

    name: str
    path: str
    words: Described
    group: h5g.GroupID
    channels: tuple[StoredChannel, ...]


@dataclass(frozen=True, slots=True)
class StoredCapture:
    """A whole file: the attributes of ``/``, and its records."""

    words: Described
    records: tuple[StoredRecord, ...]


def read_stored(file: h5py.File, path: Path) -> StoredCapture:
    """Walk over a file; samples are not read.

    Parameters
    ----------
    file : h5py.File
        Open.
    path : Path
        Its path, for the process that reads variable-length texts.

    Raises
    ------
    CaptureError
        Where the file is damaged, or no capture of a version that is known.
    """
    root = strict.root(file)
    words = Described(say("the file"), strict.attributes(root, say("the file")))
    if layout.FORMAT_KEY not in words.attributes.variable:
        _check_format(words)  # another program's file is refused before anything else of it is touched
    records = _records(root)
    _check_packing(records, path)
    stored = _with_texts(StoredCapture(words, records), path)
    _check_format(stored.words)
    _check_version(stored.words)
    return stored


def _check_format(words: Described) -> None:
    if words.text(layout.FORMAT_KEY) != layout.FORMAT:
        raise NoCaptureError(
            say("the file is HDF5 but no capture"),
            say(
                "import it, or set its {format_key} to {format}",
                format_key=layout.FORMAT_KEY,
                format=layout.FORMAT,
            ),
        )


def _check_packing(records: tuple[StoredRecord, ...], path: Path) -> None:
    """Refuse a file that would unpack to far more than a recording of its size can."""
    channels = [channel for record in records for channel in record.channels]
    claimed = sum(channel.claimed_bytes for channel in channels)
    if claimed > _UNPACKED_ALLOWANCE_BYTES + _MOST_PACKING * path.stat().st_size:
        raise CaptureError(
            say(
                "the file claims {count:,} samples, which no recording packs into its size",
                count=sum(channel.length for channel in channels),
            ),
            say("copy it from the recorder again"),
        )


def _check_version(words: Described) -> None:
    version = words.number(layout.VERSION_KEY)
    if version is None:
        raise CaptureError(
            say("the file does not state its {version_key}", version_key=layout.VERSION_KEY),
            say("store {format_version} there", format_version=layout.FORMAT_VERSION),
        )
    if version > layout.FORMAT_VERSION:
        raise NewerFormatError(
            say(
                "the file has format version {version:g} and this program knows {format_version}",
                version=version,
                format_version=layout.FORMAT_VERSION,
            ),
            say("update the program"),
        )
    if version != layout.FORMAT_VERSION:
        raise CaptureError(
            say("the file has format version {version:g}, which never was", version=version),
            say("store {format_version} there", format_version=layout.FORMAT_VERSION),
        )


def _records(root: h5g.GroupID) -> tuple[StoredRecord, ...]:
    top = strict.open_group(root, layout.RECORDS_GROUP)
    found = []
    for name in strict.members(top) if top is not None else ():
        group = strict.open_group(top, name)
        if group is not None:
            path, where = f"/{layout.RECORDS_GROUP}/{name}", say("record {name}", name=name)
            words = Described(where, strict.attributes(group, where))
            found.append(StoredRecord(name, path, words, group, _channels(group, path, where)))
    return tuple(found)


def _channels(group: h5g.GroupID, parent: str, record: str) -> tuple[StoredChannel, ...]:
    """Datasets that may be channels: all but the dimension and the time."""
    found = []
    for name in strict.members(group):
        dataset = strict.open_dataset(group, name)
        if dataset is None or name in (layout.DIMENSION_NAME, layout.TIME_NAME):
            continue
        where = say("channel {name} of {record}", name=name, record=record)
        words = Described(where, strict.attributes(dataset, where))
        with strict.translated(where):
            trouble = strict.trouble_with_numbers(dataset)
            length = 0 if trouble else dataset.get_space().get_simple_extent_npoints()
            size = length * dataset.get_type().get_size() if length else 0
        found.append(StoredChannel(name, f"{parent}/{name}", words, trouble, length, size))
    return tuple(found)


def _with_texts(stored: StoredCapture, path: Path) -> StoredCapture:
    """The same with its variable-length texts, fetched all in one go."""
    objects = [("/", stored.words)]
    for record in stored.records:
        objects.append((record.path, record.words))
        objects.extend((channel.path, channel.words) for channel in record.channels)
    wanted = [(where, key) for where, words in objects for key in words.attributes.variable]
    texts: dict[str, dict[str, str]] = {}
    for (where, key), text in zip(wanted, variable_text.fetch(path, wanted), strict=True):
        texts.setdefault(where, {})[key] = text
    return _filled(stored, texts) if texts else stored


def _filled(stored: StoredCapture, texts: dict[str, dict[str, str]]) -> StoredCapture:
    def fill(words: Described, path: str) -> Described:
        return Described(words.where, with_texts(words.attributes, texts.get(path, {})))

    def fill_record(record: StoredRecord) -> StoredRecord:
        channels = tuple(replace(item, words=fill(item.words, item.path)) for item in record.channels)
        return replace(record, words=fill(record.words, record.path), channels=channels)

    return StoredCapture(fill(stored.words, "/"), tuple(fill_record(item) for item in stored.records))
