"""The capture model: frozen, lazy, read-only.

A capture is everything recorded at one visit to one sensor. It holds records; a record holds
channels; a channel knows how to fetch a stretch of its raw samples and how to turn them into volts.
Nothing here opens a file: `analysis.captures.reading` and the simulation both build these values.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray


class Role(StrEnum):
    """What the probe touched."""

    SIGNAL = "signal"
    SECOND_SIGNAL = "second_signal"
    REFERENCE = "reference"
    GROUND = "ground"
    SUPPLY = "supply"


class Step(StrEnum):
    """What a record was taken for."""

    ZERO = "zero"
    CHECK = "check"
    GROUND = "ground"
    REFERENCE = "reference"
    WIGGLE = "wiggle"
    SWEEP = "sweep"
    HOLD = "hold"
    ROAD = "road"
    TAP = "tap"
    HEAT = "heat"
    COLD = "cold"
    WET = "wet"
    UNPLUGGED = "unplugged"


class Match(StrEnum):
    """Outcome of comparing two fingerprints."""

    MATCHES = "matches"
    REPACKED = "repacked"
    DIFFERS = "differs"
    ABSENT = "absent"
    UNREADABLE = "unreadable"


class SampleSource(Protocol):
    """A one-dimensional run of raw samples, fetched stretch by stretch."""

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the raw samples: an integer type for counts, or a float type."""

    def __len__(self) -> int:
        """Number of samples."""

    def read(self, start: int, stop: int) -> NDArray[Any]:
        """Raw samples ``[start, stop)``, shape ``(stop - start,)``; clipped at the ends.

        Raises
        ------
        CaptureError
            Where the file is damaged or gone.
        """


@dataclass(frozen=True, slots=True)
class ArraySource:
    """Samples that are already in memory."""

    samples: NDArray[Any]

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the raw samples."""
        return self.samples.dtype

    def __len__(self) -> int:
        """Number of samples."""
        return int(self.samples.shape[0])

    def read(self, start: int, stop: int) -> NDArray[Any]:
        """Raw samples ``[start, stop)``, clipped at the ends."""
        return self.samples[max(start, 0) : max(stop, 0)]


@dataclass(frozen=True, slots=True)
class Scaling:
    """How raw samples become volts (CF-1.11: ``counts * scale_factor + add_offset``).

    Parameters
    ----------
    scale_factor, add_offset : float
        Volts a count, and volts at count zero.
    fill_value : float or None
        Raw value that stands for a missing sample. NaN is missing in float channels whatever this says.
    valid_min, valid_max : float or None
        Raw values at or beyond which a sample is over-range.
    """

    scale_factor: float = 1.0
    add_offset: float = 0.0
    fill_value: float | None = None
    valid_min: float | None = None
    valid_max: float | None = None

    def volts(self, raw: NDArray[Any]) -> NDArray[np.float64]:
        """Raw samples in volts, same shape; NaN where missing, over-range values kept as they read."""
        voltage_v = raw.astype(np.float64)
        if self.scale_factor != 1.0:
            voltage_v *= self.scale_factor
        if self.add_offset != 0.0:
            voltage_v += self.add_offset
        if self._may_hold_fill(raw):
            voltage_v[raw == self.fill_value] = np.nan
        return voltage_v

    def missing(self, raw: NDArray[Any]) -> NDArray[np.bool_]:
        """Where samples are missing, same shape as `raw`."""
        gone = np.isnan(raw) if raw.dtype.kind == "f" else np.zeros(raw.shape, dtype=np.bool_)
        if self.fill_value is not None:
            gone = gone | (raw == self.fill_value)
        return gone

    def over_range(self, raw: NDArray[Any]) -> NDArray[np.bool_]:
        """Where samples lie at or beyond the recorder's range, same shape as `raw`."""
        over = np.zeros(raw.shape, dtype=np.bool_)
        if self.valid_min is not None:
            over |= raw <= self.valid_min
        if self.valid_max is not None:
            over |= raw >= self.valid_max
        return over & ~self.missing(raw)

    def count_lost(self, raw: NDArray[Any]) -> tuple[int, int]:
        """How many samples are over-range, and how many are missing."""
        if raw.dtype.kind in "iu" and raw.size and not self._may_hold_fill(raw):
            low, high = self.valid_min, self.valid_max
            if (low is None or raw.min() > low) and (high is None or raw.max() < high):
                return 0, 0  # nearly always, and found in a fraction of the time
        return int(np.count_nonzero(self.over_range(raw))), int(np.count_nonzero(self.missing(raw)))

    def _may_hold_fill(self, raw: NDArray[Any]) -> bool:
        """Whether the fill value lies between the extremes, which are found sooner than the value itself."""
        if self.fill_value is None or not raw.size:
            return False
        return raw.dtype.kind not in "iu" or bool(raw.min() <= self.fill_value <= raw.max())


@dataclass(frozen=True, slots=True)
class OverviewLevel:
    """Minimum and maximum of consecutive blocks of one channel, in raw counts.

    Parameters
    ----------
    block : int
        Samples a block; the last block may be shorter.
    minimum, maximum : ndarray, shape (n_blocks,)
        Raw extremes of each block, missing samples left out (the fill value where a block has none).
    """

    block: int
    minimum: NDArray[Any]
    maximum: NDArray[Any]


@dataclass(frozen=True, slots=True)
class Channel:
    """One measured voltage of a record.

    Parameters
    ----------
    name : str
        As in the file.
    role : Role or None
        What the probe touched; None where the file does not say or says something unknown.
    source : SampleSource
        The raw samples.
    scaling : Scaling
        Raw samples to volts.
    gain_error : float or None
        Share of reading; None means that the accuracy is unknown, not zero.
    offset_error_v : float or None
        Volts; None means unknown.
    attributes : mapping
        Everything else that the file says: ``probe_point``, ``return_point``, ``connector``, ``pin``,
        ``wire_colour``, ``mounting``, ``attenuation``, ``coupling``, ``long_name``.
    """

    name: str
    role: Role | None
    source: SampleSource
    scaling: Scaling = Scaling()
    gain_error: float | None = None
    offset_error_v: float | None = None
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    overview: tuple[OverviewLevel, ...] = ()

    def __len__(self) -> int:
        """Number of samples."""
        return len(self.source)

    @property
    def step_v(self) -> float:
        """Volts between neighbouring counts; 0.0 for a float channel, whose step is unknown."""
        return abs(self.scaling.scale_factor) if self.source.dtype.kind in "iu" else 0.0

    def volts(self, start: int = 0, stop: int | None = None) -> NDArray[np.float64]:
        """Samples ``[start, stop)`` in volts; NaN where missing.

        Raises
        ------
        CaptureError
            Where the file is damaged or gone.
        """
        return self.scaling.volts(self.source.read(start, len(self) if stop is None else stop))


@dataclass(frozen=True, slots=True)
class Record:
    """One uninterrupted stretch of samples; all channels have the same length.

    Parameters
    ----------
    name : str
        Group name in the file, ``"001"`` upwards.
    sample_interval_s : float
        Seconds between samples, positive.
    channels : tuple of Channel
        In the file's order.
    step : Step or None
        What the record was taken for, where the file says.
    attributes : mapping
        Conditions and the rest: ``started``, ``plugged``, ``ignition``, ``engine``, ``loads``, ``moved``,
        ``temperature``.
    """

    name: str
    sample_interval_s: float
    channels: tuple[Channel, ...]
    label: str = ""
    step: Step | None = None
    first_sample_s: float = 0.0
    attributes: Mapping[str, str | float] = field(default_factory=dict)

    def __len__(self) -> int:
        """Number of samples of each channel."""
        return len(self.channels[0]) if self.channels else 0

    @property
    def duration_s(self) -> float:
        """Seconds from the first sample to one interval past the last."""
        return len(self) * self.sample_interval_s

    def channel(self, role: Role) -> Channel | None:
        """First channel of a role, or None."""
        return next((item for item in self.channels if item.role is role), None)

    def time_s(self, start: int = 0, stop: int | None = None) -> NDArray[np.float64]:
        """Time of samples ``[start, stop)`` in seconds, shape ``(stop - start,)``."""
        last = len(self) if stop is None else min(stop, len(self))
        index = np.arange(max(start, 0), last, dtype=np.float64)
        return self.first_sample_s + self.sample_interval_s * index

    def index_at(self, time_s: float) -> int:
        """Nearest sample to a time, clipped to the record."""
        index = round((time_s - self.first_sample_s) / self.sample_interval_s)
        return min(max(index, 0), max(len(self) - 1, 0))


@dataclass(frozen=True, slots=True)
class Capture:
    """Everything recorded at one visit to one sensor.

    Parameters
    ----------
    capture_id : str
        UUID, or a stable stand-in derived from the content where the file has none.
    records : tuple of Record
        In the file's order.
    attributes : mapping
        ``vehicle``, ``complaint``, ``profile``, ``mounting``, ``recorder`` and the rest, as in the file.
    path : Path or None
        Where it was read from; None for a capture that was never stored.
    sha256 : str
        Plain SHA-256 of the file, in hexadecimal; empty for a capture that was never stored.
    content : Match or None
        What it says against the content fingerprint that its file holds: `MATCHES`, `DIFFERS`, `ABSENT`, or
        `UNREADABLE` where some of it cannot be read; None where they were not compared.
    """

    capture_id: str
    records: tuple[Record, ...]
    title: str = ""
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    path: Path | None = None
    sha256: str = ""
    content: Match | None = None

    def record(self, name: str) -> Record:
        """The record of that name.

        Raises
        ------
        KeyError
            Where there is none.
        """
        for item in self.records:
            if item.name == name:
                return item
        raise KeyError(f"no record {name!r}; there are {[item.name for item in self.records]}")

    def text(self, key: str) -> str:
        """An attribute as text; empty where it is absent."""
        return str(self.attributes.get(key, ""))
