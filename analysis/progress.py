"""One hook that reports progress and stops long work."""

from __future__ import annotations

from collections.abc import Callable

Tick = Callable[[float], None]
"""``tick(done)`` with `done` in 0..1; called at least every 50 ms of work.

It may raise `analysis.errors.Cancelled`, which long work lets pass. The display, not the work,
decides how often to repaint.
"""


def ignore(done: float) -> None:
    """Report to nobody: the tick of a caller that neither shows progress nor stops."""


def part(tick: Tick, start: float, stop: float) -> Tick:
    """Map a step's own 0..1 onto its share ``start..stop`` of the whole work.

    Parameters
    ----------
    tick : Tick
        The hook of the whole work.
    start, stop : float
        The share of the whole that the step takes, each in 0..1.

    Returns
    -------
    Tick
        The hook to hand to the step.
    """

    def report(done: float) -> None:
        tick(start + (stop - start) * done)

    return report
