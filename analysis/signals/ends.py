"""Where each piece begins and ends, how fast, and how impossible a move from one piece to another is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.signals.cutting import (
    FASTEST_PERCENT_PER_S,
    KINK_S,
    RAIL_PERCENT,
    USUAL_PERCENT_PER_S2,
    Pieces,
)

USUAL_PERCENT_PER_S = 250.0
"""A brisk stroke by hand, 80 % of travel in a third of a second (common practice, no source)."""

HARDEST_KNOCK_PERCENT_PER_S = 600.0
"""Largest change of speed at once: an arm that arrives at 300 % of travel a second and bounces off."""

UNSEEN_PERCENT_PER_S2 = 60_000.0
"""How hard the arm may have swerved while nothing was recorded: as a wheel that hops 10 % at 12 Hz."""

GATHERED_SO_FAR = 1.2
"""A motion that goes on without a gap may have gathered this share of the speed it had, or lost it."""

HARD_KINK = 0.03
"""Strain of a harder change of speed between two long smooth pieces: a wheel in a pothole may do it."""

KNOCKED_S = 0.010
"""A stretch as long as this shows how far the arm goes..."""

STOP_PERCENT = 1.5
"""...and a stop gives by this much."""

KNOCK_PERCENT_PER_S = (600.0, 4000.0)
"""An arm that is thrown against its stop arrives as fast as this; through a filter the signal of an open
contact slows down on its way to its level, and without one it jumps."""

KNOCK_S = 0.004
"""It is seen on its way for this long at least."""

CARRIED = 1.5
"""So much further than at its last speed it may have come in the cells between."""

MOST_CARRIED_S = 0.005

SLOPE_S = 0.012
"""Span near a piece's end over which its speed is read."""

SPARED_S = 0.004
"""What is spared at a piece's end, where the contact may be failing already."""


@dataclass(frozen=True, slots=True)
class Ends:
    """Time, place and speed at both ends of each piece."""

    start_s: NDArray[np.float64]
    stop_s: NDArray[np.float64]
    start: NDArray[np.float64]
    stop: NDArray[np.float64]
    start_speed: NDArray[np.float64]
    stop_speed: NDArray[np.float64]
    certain: NDArray[np.bool_]
    begin_s: NDArray[np.float64]
    end_s: NDArray[np.float64]
    begin: NDArray[np.float64]
    end: NDArray[np.float64]
    first_speed: NDArray[np.float64]
    last_speed: NDArray[np.float64]
    missing_s: NDArray[np.float64]
    gone_s: NDArray[np.float64]
    cell_s: float

    @classmethod
    def of(
        cls,
        travel: NDArray[np.float32],
        pieces: Pieces,
        cell_s: float,
        missing: NDArray[np.bool_] | None = None,
        gone_s: NDArray[np.float64] | None = None,
    ) -> Ends:
        """Read the ends of each piece, a little inside: a contact often fails gently at first.

        `missing` marks the cells that the recorder lost, none unless given; `gone_s` is how much time it had
        left out of the record up to each cell, in seconds, none unless given.
        """
        first, last = pieces.first, pieces.last
        length = last - first
        spare = np.minimum(max(1, round(SPARED_S / cell_s)), length // 4)
        width = np.maximum(np.minimum(max(1, round(SLOPE_S / cell_s)), length - 2 * spare), 0)
        near = max(1, round(KINK_S / cell_s))
        place = travel.astype(np.float64)
        head, tail = first + spare, last - spare
        span_s = np.maximum(width, 1) * cell_s
        return cls(
            start_s=head * cell_s,
            stop_s=tail * cell_s,
            start=place[head],
            stop=place[tail],
            start_speed=(place[head + width] - place[head]) / span_s,
            stop_speed=(place[tail] - place[tail - width]) / span_s,
            certain=width * cell_s >= 0.5 * SLOPE_S,
            begin_s=first.astype(np.float64) * cell_s,
            end_s=last.astype(np.float64) * cell_s,
            begin=place[first],
            end=place[last],
            first_speed=(place[np.minimum(first + near, last)] - place[first]) / (near * cell_s),
            last_speed=(place[last] - place[np.maximum(last - near, first)]) / (near * cell_s),
            missing_s=_missing_s(missing, first, cell_s),
            gone_s=np.zeros(len(first)) if gone_s is None else gone_s[first],
            cell_s=cell_s,
        )

    def strain(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> NDArray[np.float64]:
        """How impossible the moves from pieces `earlier` to pieces `later` are, 0 to 1 each.

        Indices of shapes that broadcast; the strain has the shape that they broadcast to.
        """
        gone_s = self.gone_s[later] - self.gone_s[earlier]
        gap_s = self.start_s[later] - self.stop_s[earlier] + gone_s
        moved = self.start[later] - self.stop[earlier]
        known = self.certain[earlier] & self.certain[later]
        speed = np.where(known, 0.5 * (self.stop_speed[earlier] + self.start_speed[later]), 0.0)
        lost_s = self.missing_s[later] - self.missing_s[earlier] + gone_s
        bend = 0.25 * (USUAL_PERCENT_PER_S2 * gap_s**2 + UNSEEN_PERCENT_PER_S2 * lost_s**2)
        allowed = tolerance_percent + np.minimum(bend, np.where(known, 40.0, 60.0))
        allowed += np.where(known, 60.0, USUAL_PERCENT_PER_S) * np.minimum(gap_s, 0.015)
        # Within what is allowed a move costs nothing: a short true piece is not left out for its noise.
        beyond = np.maximum(np.abs(moved - speed * gap_s) / allowed - 1.0, 0.0)
        strain = np.minimum(1.0, (0.5 * beyond) ** 2)
        touching, soft = self._touching(earlier, later, tolerance_percent)
        strain = np.where(touching & known, np.minimum(strain, HARD_KINK), strain)
        stopped = self.at_stop(self.begin[later]) & self.knocks(earlier, later, tolerance_percent)
        stopped |= self.at_stop(self.end[earlier]) & self.rebounds(earlier, later, tolerance_percent)
        return np.where(stopped | (touching & soft), 0.0, strain)

    def knocks(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> NDArray[np.bool_]:
        """Pieces `later` at which `earlier` ones arrive, too fast for an arm that stops there by itself."""
        seen_s = self.end_s[earlier] - self.begin_s[earlier]
        return self._carried(self.last_speed[earlier], seen_s, earlier, later, tolerance_percent)

    def rebounds(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> NDArray[np.bool_]:
        """Pieces `later` that come from `earlier` ones as fast as that."""
        seen_s = self.end_s[later] - self.begin_s[later]
        return self._carried(self.first_speed[later], seen_s, earlier, later, tolerance_percent)

    def _carried(
        self,
        speed: NDArray[np.float64],
        seen_s: NDArray[np.float64],
        earlier: NDArray[np.int64],
        later: NDArray[np.int64],
        tolerance_percent: float,
    ) -> NDArray[np.bool_]:
        gap_s = self.begin_s[later] - self.end_s[earlier]
        moved = (self.begin[later] - self.end[earlier]) * np.sign(speed)
        swift = (np.abs(speed) > KNOCK_PERCENT_PER_S[0]) & (np.abs(speed) < KNOCK_PERCENT_PER_S[1])
        near = moved < CARRIED * np.abs(speed) * gap_s + tolerance_percent
        near &= (moved > -tolerance_percent) & (gap_s < MOST_CARRIED_S)
        return np.asarray(swift & near & (seen_s >= KNOCK_S))

    def _touching(
        self, earlier: NDArray[np.int64], later: NDArray[np.int64], tolerance_percent: float
    ) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
        """Pieces that go on without a gap or a jump, and those that do so as an arm can.

        An arm that knocks on its stop changes speed at once, by no more than `HARDEST_KNOCK_PERCENT_PER_S`.
        """
        gap_s = self.begin_s[later] - self.end_s[earlier]
        after, before = self.first_speed[later], self.last_speed[earlier]
        moved = np.abs(self.begin[later] - self.end[earlier] - 0.5 * (after + before) * gap_s)
        close = moved < tolerance_percent + FASTEST_PERCENT_PER_S * gap_s
        swift = np.where(
            after * before > 0.0, GATHERED_SO_FAR * np.minimum(np.abs(after), np.abs(before)), 0.0
        )
        knock = np.maximum(HARDEST_KNOCK_PERCENT_PER_S + tolerance_percent / KINK_S, swift)
        soft = (np.abs(after - before) < knock) | self.at_stop(self.begin[later])
        return np.asarray((gap_s < max(0.0015, 1.5 * self.cell_s)) & close), np.asarray(soft)

    def at_stop(self, place: NDArray[np.float64]) -> NDArray[np.bool_]:
        """Places as far to one side as any long piece goes, short of the rails: there an arm is stopped."""
        long = self.end_s - self.begin_s > KNOCKED_S
        ends = np.concatenate([self.begin[long], self.end[long]])
        inside = ends[(ends > RAIL_PERCENT) & (ends < 100.0 - RAIL_PERCENT)]
        if not len(inside):
            return np.zeros(place.shape, dtype=np.bool_)
        return np.asarray(
            (np.abs(place - inside.min()) < STOP_PERCENT) | (np.abs(place - inside.max()) < STOP_PERCENT)
        )


def _missing_s(
    missing: NDArray[np.bool_] | None, first: NDArray[np.int64], cell_s: float
) -> NDArray[np.float64]:
    """Seconds that the recorder lost before each piece: what was not recorded tells of no open contact."""
    if missing is None:
        return np.zeros(len(first))
    return np.asarray(np.cumsum(missing)[first] * cell_s, dtype=np.float64)
