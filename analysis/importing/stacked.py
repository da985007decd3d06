"""Blocks that stand one below the other: several recordings, several wires, or one course on pages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import SampleSource
from analysis.importing.block_names import is_label
from analysis.importing.first_row import LEAST_BLOCK
from analysis.importing.going_on import going_on
from analysis.importing.guesses import counts_by_name, is_time, numbers_channels, rises
from analysis.importing.seams import Seam
from analysis.importing.spool import Spool, SpooledColumn, blocks_of
from analysis.importing.units import unit_of

_AS_AT_FIRST = 1.5  # intervals from the first time
_LOOK = 2500  # rows that show whether a column rises evenly


@dataclass(frozen=True, slots=True)
class Stack:
    """A table that consists of blocks.

    Parameters
    ----------
    spans : tuple of (int, int)
        Rows ``[start, stop)`` of each block, at least two.
    heads : tuple of tuple of str
        The lines above each; nothing where there are none.
    timed : bool
        Whether its times begin once more with each block.
    """

    spans: tuple[tuple[int, int], ...]
    heads: tuple[tuple[str, ...], ...]
    timed: bool

    @property
    def equal(self) -> bool:
        """Whether all blocks are equally long."""
        return len({stop - start for start, stop in self.spans}) == 1


def starts_again(source: SampleSource) -> NDArray[np.int64]:
    """Rows at which the times begin once more as at the first row; none where they never do.

    Parameters
    ----------
    source : SampleSource
        The times, in any unit.

    Returns
    -------
    ndarray of int64
        Empty too where times fall back more often than blocks of `LEAST_BLOCK` rows would let them.
    """
    first, before, usual, falls = float("nan"), 0, 0.0, 0
    found: list[NDArray[np.int64]] = []
    for block in blocks_of(source, overlap=1):
        steps = np.diff(block)
        if before == 0:
            first = float(block[0])
            usual = abs(float(np.median(steps[steps != 0.0]))) if steps.any() else 0.0
        falls += int((steps < 0.0).sum())
        at = np.flatnonzero((steps < 0.0) & (np.abs(block[1:] - first) <= _AS_AT_FIRST * usual))
        found.append(at + before + 1)
        before += len(steps)
    rows = np.concatenate(found).astype(np.int64)
    often = LEAST_BLOCK * falls > before or bool(len(rows) and rows[0] < LEAST_BLOCK)
    return rows[:0] if often else rows


def stack_of(spool: Spool, time_column: int | None = None) -> Stack | None:
    """The blocks of a table; None where it is one course.

    Parameters
    ----------
    spool : Spool
        Filled.
    time_column : int or None
        The column that was said to hold the times.
    """
    columns = spool.table.columns
    times = [
        place
        for place, column in enumerate(columns)
        if is_time(column.words, column.unit) and place not in spool.parts
    ]
    for place in times if time_column is None else [time_column]:
        unit = unit_of(columns[place].unit)
        source, restarts = going_on(spool.columns[place], 1.0 if unit is None else unit.factor)
        rows = starts_again(source) if restarts is None else np.empty(0, dtype=np.int64)
        if len(rows):
            return _stack(spool, [int(row) for row in rows], timed=True)
    if times or time_column is not None:
        return None
    labelled = _labels_change(spool)
    if labelled:
        return _stack(spool, labelled, timed=False)
    seams = [seam for seam in spool.table.seams() if seam.row < len(spool.columns[0])]
    for place, column in enumerate(columns):
        source = spool.columns[place]
        if not rises(_first_course(source)[: seams[0].row if seams else None]):
            continue
        if seams and _goes_on(source, seams):
            return None
        rows = starts_again(source)
        may_be_time = spool.table.interval_s is None and not counts_by_name(column.words)
        at_seams = {int(row) for row in rows} <= {seam.row for seam in seams}
        if len(rows) and (may_be_time or at_seams or counts_by_name(column.words)):
            return _stack(spool, [int(row) for row in rows], timed=may_be_time)
    return _stack(spool, [seam.row for seam in seams if _parts(seam, spool)], timed=False)


def _labels_change(spool: Spool) -> list[int]:
    """Rows at which a column of the numbers of channels goes to another one; none where it has no such."""
    for source, column in zip(spool.columns, spool.table.columns, strict=True):
        if column.unit or not numbers_channels(column.words):
            continue
        found: list[NDArray[np.int64]] = []
        before = 0
        for block in blocks_of(source, overlap=1):
            found.append(np.flatnonzero(np.diff(block) != 0.0) + before + 1)
            before += len(block) - 1
        rows = np.concatenate(found)
        return [int(row) for row in rows[:10_000]]
    return []


def _stack(spool: Spool, rows: Sequence[int], *, timed: bool) -> Stack | None:
    """Blocks that begin at the first row and at these; None where there are none, or too short ones."""
    size = len(spool.columns[0]) if spool.columns else 0
    by_row = {seam.row: seam for seam in spool.table.seams()}
    starts = [0, *rows, size]
    if len(starts) < 3 or float(np.median(np.diff(starts[:-1]))) < LEAST_BLOCK:
        return None
    spans = tuple(
        (start, stop - (by_row[stop].empty if stop in by_row else 0)) for start, stop in pairwise(starts)
    )
    heads = tuple(by_row[row].lines if row in by_row else () for row in rows)
    above = spool.table.dialect.above if spool.table.dialect is not None else ()
    return Stack(spans, (above[len(above) - len(heads[0]) :], *heads), timed)


def _parts(seam: Seam, spool: Spool) -> bool:
    """Whether a block ends there: at an empty line, or at words such as stand above the first row."""
    written = spool.table.dialect
    return seam.blank or (written is not None and any(is_label(line, written) for line in seam.lines))


def _first_course(source: SpooledColumn) -> NDArray[np.float64]:
    """Values of the first rows, up to where they fall for the first time."""
    values = source.read(0, _LOOK).astype(np.float64)
    falls = np.flatnonzero(np.diff(values) < 0.0)
    return values[: int(falls[0]) + 1] if len(falls) and falls[0] >= LEAST_BLOCK else values


def _goes_on(source: SpooledColumn, seams: Sequence[Seam]) -> bool:
    """Whether a column that rises evenly does so across every seam."""
    usual = float(np.median(np.diff(source.read(0, seams[0].row).astype(np.float64))))
    for seam in seams:
        before, after = (float(source.read(row, row + 1)[0]) for row in (seam.row - 1 - seam.empty, seam.row))
        if not abs(after - before - usual * (1 + seam.empty)) <= 0.5 * usual:
            return False
    return True
