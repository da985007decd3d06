"""Captures built in memory, for the simulation and for tests."""

from __future__ import annotations

import hashlib
import uuid
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Scaling, Step

_NAMESPACE = uuid.UUID("6f0c5b1e-6c3b-5d0a-9b42-0c6f8a1d7e55")
_PROBE_SAMPLES = 4096


def make_channel(
    role: Role | None,
    samples: NDArray[Any],
    scaling: Scaling | None = None,
    *,
    name: str | None = None,
    gain_error: float | None = None,
    offset_error_v: float | None = None,
    attributes: Mapping[str, str | float] | None = None,
) -> Channel:
    """One channel out of an array.

    Parameters
    ----------
    role : Role or None
        What the probe touched.
    samples : ndarray, shape (n_samples,)
        Raw counts, or volts where `scaling` is left out.
    scaling : Scaling, optional
        Raw samples to volts.
    name : str, optional
        Name in the file; the role's own word where left out.
    gain_error, offset_error_v : float, optional
        The recorder's accuracy: a share of reading, and volts.
    attributes : mapping, optional
        ``probe_point``, ``wire_colour`` and the rest.

    Returns
    -------
    Channel
        Without an overview.

    Raises
    ------
    ValueError
        Where `samples` is not one-dimensional, or neither role nor name is given.
    """
    if samples.ndim != 1:
        raise ValueError(f"samples must be one-dimensional, got shape {samples.shape}")
    if name is None and role is None:
        raise ValueError("a channel without a role needs a name")
    return Channel(
        name=name if name is not None else str(role),
        role=role,
        source=ArraySource(samples),
        scaling=scaling or Scaling(),
        gain_error=gain_error,
        offset_error_v=offset_error_v,
        attributes=dict(attributes or {}),
    )


def make_record(
    name: str,
    sample_interval_s: float,
    channels: Mapping[Role, tuple[NDArray[Any], Scaling]] | Iterable[Channel],
    *,
    step: Step | None = None,
    label: str = "",
    first_sample_s: float = 0.0,
    attributes: Mapping[str, str | float] | None = None,
) -> Record:
    """One record out of arrays.

    Parameters
    ----------
    name : str
        ``"001"`` upwards.
    sample_interval_s : float
        Seconds between samples.
    channels : mapping of Role to (samples, Scaling), or iterable of Channel
        The raw samples of each channel, all of one length.
    step : Step, optional
        What the record was taken for.
    label, first_sample_s, attributes
        As in `Record`.

    Returns
    -------
    Record
        Its channels in the order of their names, as a file holds them.

    Raises
    ------
    ValueError
        Where lengths differ.
    """
    if isinstance(channels, Mapping):
        built = [make_channel(role, samples, scaling) for role, (samples, scaling) in channels.items()]
    else:
        built = list(channels)
    lengths = {len(item) for item in built}
    if len(lengths) > 1:
        raise ValueError(f"channels of record {name!r} must have one length, got {sorted(lengths)}")
    return Record(
        name=name,
        sample_interval_s=sample_interval_s,
        channels=tuple(sorted(built, key=lambda item: item.name)),
        label=label,
        step=step,
        first_sample_s=first_sample_s,
        attributes=dict(attributes or {}),
    )


def make_capture(
    records: Iterable[Record],
    *,
    title: str = "",
    attributes: Mapping[str, str | float] | None = None,
    capture_id: str | None = None,
) -> Capture:
    """A capture out of records; its id is derived from the content where none is given.

    Parameters
    ----------
    records : iterable of Record
        Sorted by name in the result, as a file holds them.
    title, attributes, capture_id
        As in `Capture`.

    Returns
    -------
    Capture
        Never stored: no path and no SHA-256.
    """
    ordered = tuple(sorted(records, key=lambda item: item.name))
    return Capture(
        capture_id=capture_id if capture_id is not None else stand_in_id(ordered),
        records=ordered,
        title=title,
        attributes=dict(attributes or {}),
    )


def stand_in_id(records: Iterable[Record]) -> str:
    """A UUID derived from the content, for a capture that has none.

    It depends on names, intervals, lengths and the first and last samples of each channel, so
    that it stays the same however the file is compressed, and opening never waits for a whole read.

    Parameters
    ----------
    records : iterable of Record
        In the file's order.

    Returns
    -------
    str
        A version 5 UUID.
    """
    digest = hashlib.sha256()
    for record in records:
        digest.update(f"{record.name}\n{record.sample_interval_s.hex()}\n".encode())
        for channel in record.channels:
            size = len(channel)
            digest.update(f"{channel.name}\n{channel.role}\n{size}\n".encode())
            for start in (0, max(size - _PROBE_SAMPLES, 0)):
                raw = channel.source.read(start, min(start + _PROBE_SAMPLES, size))
                digest.update(np.ascontiguousarray(raw, dtype=raw.dtype.newbyteorder("<")).tobytes())
    return str(uuid.uuid5(_NAMESPACE, digest.hexdigest()))
