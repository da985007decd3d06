"""One long record of one probe that went from wire to wire: air, ground, reference, and then the sweep."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Record, Role, Step
from analysis.captures.spans import span_of
from analysis.signals.cells import CellSeries

BLOCK_S = 0.05
"""Stretch that is judged as one."""

LEAST_SPAN_S = 0.25
"""Nobody probes a wire for less."""

GROUND_V = 0.4
"""A wire that stands within this of the return is a ground, good or bad, or no wire at all."""

FEED_V = (3.2, 7.2)
"""A wire that stands steadily in this range, and above everything that moves, is a feed."""

STEADY_V = 0.15
"""A feed or a ground moves less than this within a stretch."""


def split_by_wire(record: Record, cells: CellSeries, cell_s: float) -> tuple[Record, ...]:
    """Split a record of one channel into the wires that it was held to.

    Parameters
    ----------
    record : Record
        With one channel, said to be the signal.
    cells : CellSeries
        Its volts, shape (n_cells,).
    cell_s : float
        Length of a cell, in seconds.

    Returns
    -------
    tuple of Record
        In order of time, each with its step and role; only the record itself where it does not begin on
        another wire, or where nothing moves after it.
    """
    block = max(1, round(BLOCK_S / cell_s))
    whole = len(cells.mean) // block
    if whole < 4:
        return (record,)
    labels = _labels(cells, block, whole)
    spans = _spans(labels, max(1, round(LEAST_SPAN_S / (block * cell_s))))
    kinds = [kind for kind, _, _ in spans]
    if kinds[-1] != "signal" or len(spans) < 2 or "reference" not in kinds:
        return (record,)
    per_block = len(record) / whole
    return tuple(
        span_of(
            record,
            round(first * per_block),
            round(last * per_block),
            step={"ground": Step.GROUND, "reference": Step.REFERENCE}.get(kind, Step.SWEEP),
            role={"ground": Role.GROUND, "reference": Role.REFERENCE}.get(kind, Role.SIGNAL),
        )
        for kind, first, last in spans
        if kind != "air"
    )


def _labels(cells: CellSeries, block: int, whole: int) -> NDArray[np.str_]:
    mean = np.nan_to_num(cells.mean[: whole * block]).reshape(whole, block)
    level, reach = np.median(mean, axis=1), np.ptp(mean, axis=1)
    top = float(np.percentile(level, 99.5))
    label = np.full(whole, "signal", dtype="<U9")
    steady = reach < STEADY_V
    feed = steady & (level > FEED_V[0]) & (level < FEED_V[1]) & (level > top - 0.2)
    label[feed] = "reference"
    near_nought = np.abs(level) < GROUND_V
    label[near_nought] = "air"
    label[near_nought & steady] = "ground"
    return label


def _spans(labels: NDArray[np.str_], least: int) -> list[tuple[str, int, int]]:
    """Runs of one label; short runs go to the one before, and all after the first long signal is signal."""
    cuts = [0, *(np.flatnonzero(labels[1:] != labels[:-1]) + 1).tolist(), len(labels)]
    runs: list[tuple[str, int, int]] = []
    for first, last in pairwise(cuts):
        kind = str(labels[first])
        if runs and (last - first < least or runs[-1][0] in ("signal", kind)):
            runs[-1] = (runs[-1][0], runs[-1][1], last)
        else:
            runs.append((kind, first, last))
    return runs
