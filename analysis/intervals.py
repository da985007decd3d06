"""Half-open intervals ``[start, stop)`` of time, samples or travel, and their algebra."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Interval:
    """A half-open interval ``[start, stop)``.

    Parameters
    ----------
    start, stop : float
        In the unit of whoever uses it (seconds, samples, % of travel). ``start <= stop``.

    Raises
    ------
    ValueError
        Where `stop` lies before `start`, or either is NaN.
    """

    start: float
    stop: float

    def __post_init__(self) -> None:
        if not self.start <= self.stop:
            raise ValueError(f"start must not lie after stop, got [{self.start}, {self.stop})")

    @property
    def length(self) -> float:
        """`stop` minus `start`."""
        return self.stop - self.start

    @property
    def centre(self) -> float:
        """Half way between `start` and `stop`."""
        return 0.5 * (self.start + self.stop)

    def contains(self, point: float) -> bool:
        """Whether ``start <= point < stop``."""
        return self.start <= point < self.stop

    def overlap(self, other: Interval) -> float:
        """Length that two intervals share; 0 where they do not meet."""
        return max(0.0, min(self.stop, other.stop) - max(self.start, other.start))

    def widened(self, margin: float) -> Interval:
        """The interval with `margin` added at both ends."""
        return Interval(self.start - margin, self.stop + margin)


def union(intervals: Iterable[Interval], gap: float = 0.0) -> tuple[Interval, ...]:
    """Merge intervals that touch, overlap or lie no further than `gap` apart.

    Parameters
    ----------
    intervals : iterable of Interval
        In any order; may be empty.
    gap : float
        The largest distance that is bridged.

    Returns
    -------
    tuple of Interval
        Disjoint, ascending; empty for no input.
    """
    merged: list[Interval] = []
    for item in sorted(intervals):
        if merged and item.start <= merged[-1].stop + gap:
            merged[-1] = Interval(merged[-1].start, max(merged[-1].stop, item.stop))
        else:
            merged.append(item)
    return tuple(merged)
