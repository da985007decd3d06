"""The arm running along its track: where it is at a given moment of the wall clock, without Qt."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import log

from analysis.intervals import Interval

SPEEDS = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0)
"""Seconds of the record for each second at the counter."""

TO_BE_SEEN_S = 3.0
"""How long a crossing lasts at its own speed: so that somebody at the counter sees it. Ours, no source."""


def own_speed(length_s: float) -> float:
    """The speed at which a stretch lasts about `TO_BE_SEEN_S`, and never faster than it was.

    Parameters
    ----------
    length_s : float
        Seconds of the record; above zero.

    Returns
    -------
    float
        One of `SPEEDS`, at most 1: of those the one that comes nearest by its ratio.
    """
    return min(
        (item for item in SPEEDS if item <= 1.0), key=lambda item: abs(log(length_s / item / TO_BE_SEEN_S))
    )


@dataclass(frozen=True, slots=True)
class Playback:
    """A run through a stretch of one record. The clock is an argument, so a test needs no sleep.

    Parameters
    ----------
    span : Interval
        Where it runs, in the record's seconds.
    moment_s : float
        Where it was when the clock read `since_s`.
    since_s : float or None
        Reading of the clock at the start; None at rest.
    speed : float
        One of `SPEEDS`.
    repeat : bool
        Whether it begins again at the span's end.
    """

    span: Interval
    moment_s: float
    since_s: float | None = None
    speed: float = 1.0
    repeat: bool = False

    @property
    def running(self) -> bool:
        """Whether it moves."""
        return self.since_s is not None

    @property
    def interrupted(self) -> bool:
        """Whether it was stopped on its way."""
        return not self.running and self.span.start < self.moment_s < self.span.stop

    def moment_at(self, now_s: float) -> float:
        """The record's time at a reading of the clock; the span's end once it is through."""
        if self.since_s is None:
            return self.moment_s
        moment_s = self.moment_s + self.speed * (now_s - self.since_s)
        if self.repeat and moment_s >= self.span.stop > self.span.start:
            return self.span.start + (moment_s - self.span.start) % self.span.length
        return min(moment_s, self.span.stop)

    def finished(self, now_s: float) -> bool:
        """Whether it has run to the end of its span."""
        return self.running and not self.repeat and self.moment_at(now_s) >= self.span.stop

    def started(self, now_s: float) -> Playback:
        """Running from where it is, or from the beginning where it stands at the end."""
        at_end = self.moment_s >= self.span.stop - 1e-9 or not self.span.contains(self.moment_s)
        return replace(self, moment_s=self.span.start if at_end else self.moment_s, since_s=now_s)

    def stopped(self, now_s: float) -> Playback:
        """At rest where it is now."""
        return replace(self, moment_s=self.moment_at(now_s), since_s=None)

    def at_speed(self, speed: float, now_s: float) -> Playback:
        """Going on from where it is at another speed."""
        since_s = now_s if self.running else None
        return replace(self, moment_s=self.moment_at(now_s), since_s=since_s, speed=speed)

    def repeating(self, repeat: bool, now_s: float) -> Playback:
        """Going on from where it is, and beginning again at the end or not."""
        since_s = now_s if self.running else None
        return replace(self, moment_s=self.moment_at(now_s), since_s=since_s, repeat=repeat)
