"""Blocks that stand one below the other: they are several recordings or several wires, never one course."""

from __future__ import annotations

import numpy as np

from analysis.captures.model import SampleSource
from analysis.importing.going_on import going_on
from analysis.importing.guesses import is_time
from analysis.importing.needs import Need, Problem
from analysis.importing.spool import Spool, blocks_of
from analysis.importing.units import unit_of
from analysis.wording import say

_AS_AT_FIRST = 1.5  # intervals from the first time
_LEAST_ROWS = 6  # of a block: where times fall back more often they are no times, or in disorder


def starts_again(source: SampleSource) -> int | None:
    """The first row at which the times begin once more as at the first row; None where they never do."""
    first, before, usual, again, falls = float("nan"), 0, 0.0, -1, 0
    for block in blocks_of(source, overlap=1):
        steps = np.diff(block)
        if before == 0:
            first = float(block[0])
            usual = abs(float(np.median(steps[steps != 0.0]))) if steps.any() else 0.0
        falls += int((steps < 0.0).sum())
        at = np.flatnonzero((steps < 0.0) & (np.abs(block[1:] - first) <= _AS_AT_FIRST * usual))
        if len(at) and again < 0:
            again = before + int(at[0]) + 1
        before += len(steps)
    return again if again >= _LEAST_ROWS and _LEAST_ROWS * falls <= before else None


def stacked(row: int) -> Problem:
    """What is said of a table whose times begin once more."""
    return Problem(
        Need.TABLE,
        say("its times start again at row {row:,}: it holds several blocks one below the other", row=row + 1),
        say("split the table there: save each block as a file of its own, and choose them together"),
    )


def hidden_blocks(spool: Spool) -> Problem | None:
    """Whether a table has times that start again, though an interval was named in their place."""
    for place, column in enumerate(spool.table.columns):
        if is_time(column.words, column.unit):
            unit = unit_of(column.unit)
            times, restarts = going_on(spool.columns[place], 1.0 if unit is None else unit.factor)
            row = starts_again(times) if restarts is None else None
            if row is not None:
                return stacked(row)
    return None
