"""Writing captures: once, atomically, as any CF-aware program can read them."""

from __future__ import annotations

import os
from collections.abc import Mapping
from datetime import datetime
from pathlib import Path
from typing import Any

import h5py
import numpy as np

from analysis.captures import layout
from analysis.captures.fingerprint import ContentDigest
from analysis.captures.model import Capture, Channel, Record
from analysis.captures.overview import OverviewBuilder, stretches, write_levels
from analysis.captures.packing import TRIAL_SAMPLES, packed_dataset, packing_of, write_chunk
from analysis.captures.replacing import replaced_at_the_end
from analysis.captures.steady_file import SteadyFile
from analysis.captures.strict import Value
from analysis.errors import CaptureError
from analysis.progress import Tick, ignore, part
from analysis.wording import say

_MAX_TEXT_BYTES = 60_000  # HDF5 keeps an object's attributes in messages of at most 64 KiB
_DIMENSION_TEXT = "This is a netCDF dimension but not a netCDF variable.{:10d}"  # netCDF-4 file format


def write_capture(
    capture: Capture, path: str | os.PathLike[str], *, replace: bool = False, tick: Tick = ignore
) -> str:
    """Write a capture file, whole or not at all.

    The file is written under a temporary name in the same folder, flushed to the disk and renamed, so
    that nobody ever sees half a capture; a failure leaves nothing behind.

    Parameters
    ----------
    capture : Capture
        In memory or out of another file. Its records are stored under their names, its channels under
        theirs; ``created`` is set to now where its attributes lack it.
    path : path-like
        Where to.
    replace : bool
        A capture is evidence and is not overwritten unless this is said.
    tick : Tick
        Progress; what it raises stops the writing.

    Returns
    -------
    str
        The content fingerprint, which the file holds too.

    Raises
    ------
    CaptureError
        Where the file exists, the folder cannot be written, or the capture cannot be stored.
    """
    target = Path(path)
    if target.exists() and not replace:
        raise CaptureError(say("a file of that name exists already"), say("choose another name"))
    _check_names(capture)
    with replaced_at_the_end(target) as temporary, SteadyFile(temporary) as disk:

        def checked(done: float) -> None:
            disk.check()
            tick(done)

        with h5py.File(disk, "w") as file:
            fingerprint = _write(file, capture, checked)
        disk.check()
        return fingerprint


def _check_names(capture: Capture) -> None:
    _check_unique(say("records of the capture"), [item.name for item in capture.records])
    reserved = (layout.DIMENSION_NAME, layout.TIME_NAME, layout.OVERVIEW_GROUP)
    for record in capture.records:
        _check_unique(
            say("channels of record {name}", name=record.name), [item.name for item in record.channels]
        )
        for channel in record.channels:
            if channel.name in reserved:
                raise CaptureError(
                    say("a channel may not be named {name!r}", name=channel.name), say("rename the channel")
                )
        if len({len(item) for item in record.channels}) > 1:
            raise CaptureError(
                say("the channels of record {name} differ in length", name=record.name),
                say("cut them to one"),
            )


def _check_unique(what: str, names: list[str]) -> None:
    if len(set(names)) < len(names) or any(not name or "/" in name or name == "." for name in names):
        raise CaptureError(
            say("the {what} need names of their own, got {names}", what=what, names=str(names)),
            say("rename them"),
        )


def _write(file: h5py.File, capture: Capture, tick: Tick) -> str:
    digest = ContentDigest()
    words = capture_attributes(capture)
    digest.describe("/", words)
    top = file.create_group(layout.RECORDS_GROUP)
    ordered = sorted(capture.records, key=lambda item: item.name)
    whole = max(sum(len(item) * len(item.channels) for item in ordered), 1)
    done = 0
    for record in ordered:
        size = len(record) * len(record.channels)
        _write_record(top, record, digest, part(tick, done / whole, (done + size) / whole))
        done += size
    set_attributes(file, words | {layout.CONTENT_KEY: digest.hexdigest()})
    return digest.hexdigest()


def _write_record(top: h5py.Group, record: Record, digest: ContentDigest, tick: Tick) -> None:
    group = top.create_group(record.name)
    words = record_attributes(record)
    set_attributes(group, words)
    digest.describe(group.name, words)
    dimension = _write_dimension(group, len(record))
    _write_time(group, record).dims[0].attach_scale(dimension)
    count = len(record.channels)
    for index, channel in enumerate(sorted(record.channels, key=lambda item: item.name)):
        share = part(tick, index / count, (index + 1) / count)
        _write_channel(group, channel, digest, share).dims[0].attach_scale(dimension)


def _write_dimension(group: h5py.Group, size: int) -> h5py.Dataset:
    """The dimension `sample`, as netCDF-4 stores one without a variable: never allocated, no bytes."""
    dimension: h5py.Dataset = group.create_dataset(layout.DIMENSION_NAME, shape=(size,), dtype=">f4")
    dimension.make_scale(_DIMENSION_TEXT.format(size))
    return dimension


def _write_time(group: h5py.Group, record: Record) -> h5py.Dataset:
    """The ramp by which other programs know the time; 1 % of the size after compression."""
    size = len(record)
    kind = np.int32 if size <= np.iinfo(np.int32).max else np.int64
    dataset = packed_dataset(group, layout.TIME_NAME, size, np.dtype(kind))
    for start in range(0, size, layout.CHUNK_SAMPLES):
        stop = min(start + layout.CHUNK_SAMPLES, size)
        write_chunk(dataset, start, np.arange(start, stop, dtype=kind))
    words: dict[str, Value] = {
        layout.SCALE_KEY: record.sample_interval_s,
        layout.OFFSET_KEY: record.first_sample_s,
        layout.UNITS_KEY: "s",
        layout.LONG_NAME_KEY: "time",
    }
    set_attributes(dataset, words)
    return dataset


def _write_channel(group: h5py.Group, channel: Channel, digest: ContentDigest, tick: Tick) -> h5py.Dataset:
    """Samples, attributes and overview of a channel, in one pass over the samples."""
    dtype = channel.source.dtype.newbyteorder("=")
    packing = packing_of(channel.source.read(0, TRIAL_SAMPLES))
    dataset = packed_dataset(group, channel.name, len(channel), dtype, packing)
    words = channel_attributes(channel)
    covered = channel.role is not None
    if covered:
        digest.describe(dataset.name, words)
    set_attributes(dataset, words, dtype)
    builder = OverviewBuilder(channel.scaling)
    start = 0
    for raw in stretches(channel.source, tick):
        write_chunk(dataset, start, raw)
        if covered:
            digest.add(raw)
        builder.add(raw)
        start += len(raw)
    if len(channel) >= layout.OVERVIEW_MIN_SAMPLES:
        write_levels(group.require_group(layout.OVERVIEW_GROUP).create_group(channel.name), builder.levels())
    return dataset


def capture_attributes(capture: Capture) -> dict[str, Value]:
    """Attributes of ``/`` as they are stored."""
    words = dict(capture.attributes)
    words.setdefault(layout.CREATED_KEY, datetime.now().astimezone().isoformat(timespec="seconds"))
    words[layout.CONVENTIONS_KEY] = layout.CONVENTIONS
    words[layout.FORMAT_KEY] = layout.FORMAT
    words[layout.VERSION_KEY] = layout.FORMAT_VERSION
    words[layout.ID_KEY] = capture.capture_id
    words[layout.TITLE_KEY] = capture.title
    return words


def record_attributes(record: Record) -> dict[str, Value]:
    """Attributes of a record as they are stored."""
    words = dict(record.attributes)
    words[layout.INTERVAL_KEY] = float(record.sample_interval_s)
    words[layout.FIRST_SAMPLE_KEY] = float(record.first_sample_s)
    words[layout.LABEL_KEY] = record.label
    if record.step is not None:
        words[layout.STEP_KEY] = str(record.step)
    return words


def channel_attributes(channel: Channel) -> dict[str, Value]:
    """Attributes of a channel as they are stored; always in volts."""
    scaling = channel.scaling
    words = dict(channel.attributes)
    words.setdefault(layout.LONG_NAME_KEY, channel.name.replace("_", " "))
    words[layout.UNITS_KEY] = "V"
    words[layout.COORDINATES_KEY] = layout.TIME_NAME
    if channel.role is not None:
        words[layout.ROLE_KEY] = str(channel.role)
    optional = {
        layout.SCALE_KEY: float(scaling.scale_factor),
        layout.OFFSET_KEY: float(scaling.add_offset),
        layout.FILL_KEY: scaling.fill_value,
        layout.VALID_MIN_KEY: scaling.valid_min,
        layout.VALID_MAX_KEY: scaling.valid_max,
        layout.GAIN_ERROR_KEY: channel.gain_error,
        layout.OFFSET_ERROR_KEY: channel.offset_error_v,
    }
    return words | {key: value for key, value in optional.items() if value is not None}


def set_attributes(
    item: h5py.HLObject, words: Mapping[str, Value], dtype: np.dtype[Any] | None = None
) -> None:
    """Store attributes: texts as fixed-length UTF-8, raw limits in the type of the samples.

    Parameters
    ----------
    item : h5py object
        A group or a dataset.
    words : mapping
        Texts and numbers.
    dtype : dtype, optional
        Type of the samples; CF wants ``_FillValue``, ``valid_min`` and ``valid_max`` in it.

    Raises
    ------
    CaptureError
        Where a text is too long, or a limit cannot be held in `dtype`.
    """
    for key, value in words.items():
        if isinstance(value, str):
            _set_text(item, key, value)
        elif dtype is not None and key in (layout.FILL_KEY, layout.VALID_MIN_KEY, layout.VALID_MAX_KEY):
            item.attrs[key] = _in_type(key, value, dtype)
        elif isinstance(value, int | np.integer):
            item.attrs[key] = np.int64(value)
        else:
            item.attrs[key] = np.float64(value)


def _set_text(item: h5py.HLObject, key: str, text: str) -> None:
    raw = text.replace("\0", "").encode("utf-8", "replace")
    if len(raw) > _MAX_TEXT_BYTES:
        raise CaptureError(
            say("the text of {key} is {size:,} bytes long", key=key, size=len(raw)),
            say("shorten it to {most:,}", most=_MAX_TEXT_BYTES),
        )
    kind = h5py.string_dtype("utf-8", max(len(raw), 1))
    item.attrs.create(key, np.array(raw, dtype=kind), dtype=kind)


def _in_type(key: str, value: float, dtype: np.dtype[Any]) -> Any:
    if dtype.kind in "iu":
        bounds = np.iinfo(dtype)
        if value != value or not bounds.min <= value <= bounds.max or value != int(value):
            raise CaptureError(
                say("{key} {value:g} is no value of {dtype} samples", key=key, value=value, dtype=str(dtype)),
                say("correct the scaling"),
            )
        return dtype.type(int(value))
    return dtype.type(value)
