"""A stretch of a record, looked at as a record of its own without copying a sample."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel, Record, Role, SampleSource, Step


@dataclass(frozen=True, slots=True)
class SpanSource:
    """Samples ``[start, stop)`` of another source."""

    whole: SampleSource
    start: int
    stop: int

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the raw samples."""
        return self.whole.dtype

    def __len__(self) -> int:
        """Number of samples."""
        return self.stop - self.start

    def read(self, start: int, stop: int) -> NDArray[Any]:
        """Raw samples ``[start, stop)`` of the span, clipped at its ends."""
        return self.whole.read(self.start + max(start, 0), self.start + min(max(stop, 0), len(self)))


def span_of(record: Record, start: int, stop: int, *, step: Step | None, role: Role | None) -> Record:
    """Samples ``[start, stop)`` of a record with a step, and its only channel with a role, of their own.

    Parameters
    ----------
    record : Record
        It keeps its name: what is found in the span is found in that record.
    start, stop : int
        Within the record.
    step : Step or None
        What the span was taken for.
    role : Role or None
        Role of the first channel; None leaves all roles as they are.

    Returns
    -------
    Record
        Its time is that of the whole record.
    """

    def cut(index: int, channel: Channel) -> Channel:
        source = SpanSource(channel.source, start, stop)
        own = role if role is not None and index == 0 else channel.role
        return replace(channel, source=source, overview=(), role=own)

    return replace(
        record,
        step=step,
        first_sample_s=record.first_sample_s + start * record.sample_interval_s,
        channels=tuple(cut(index, channel) for index, channel in enumerate(record.channels)),
    )
