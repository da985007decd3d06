"""Stepping in Compare: from crossing to crossing of the side that is looked at, and from band to band."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.intervals import Interval


class Steps:
    """What can be stepped to on both sides, and where a hand stands in it."""

    def __init__(self) -> None:
        self.crossings: list[tuple[Interval, ...]] = [(), ()]
        self._standing: tuple[int, Interval] | None = None
        self._band: int | None = None

    def take(self, crossings: Sequence[Sequence[Interval]]) -> None:
        """Step through these from now on, of the first and of the second side, in seconds of its record."""
        self.crossings = [tuple(sorted(own, key=lambda item: item.start)) for own in crossings]

    @property
    def possible(self) -> bool:
        """Whether there is a crossing to step to."""
        return any(self.crossings)

    def swap(self) -> None:
        """The sides have changed places."""
        self._standing = None

    def crossing(self, by: int, pointed: tuple[int, float] | None) -> tuple[int, Interval] | None:
        """The next (1) or previous (-1) crossing, and its side.

        Parameters
        ----------
        by : int
            1 or -1; after the last comes the first.
        pointed : (int, float) or None
            The side and the moment that are pointed at: from there it goes on.
        """
        side = pointed[0] if pointed is not None and self.crossings[pointed[0]] else None
        if side is None:
            side = next((place for place in (0, 1) if self.crossings[place]), None)
        if side is None:
            return None
        stops = self.crossings[side]
        if self._standing is not None and self._standing[0] == side and self._standing[1] in stops:
            place = (stops.index(self._standing[1]) + by) % len(stops)
        else:
            at_s = pointed[1] if pointed is not None and pointed[0] == side else stops[0].start
            ahead = [i for i, stop in enumerate(stops) if stop.stop >= at_s]
            place = (ahead[0] if ahead else 0) if by > 0 else ((ahead[0] if ahead else 0) - 1) % len(stops)
        self._standing = (side, stops[place])
        return self._standing

    def band(self, count: int) -> int | None:
        """The band after the one that was stepped to last; None after the last of so many, and of none."""
        after = 0 if self._band is None else self._band + 1
        self._band = after if after < count else None
        return self._band
