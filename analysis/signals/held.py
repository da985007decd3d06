"""Samples that a recorder repeated for want of a new one."""

from __future__ import annotations

import numpy as np

from analysis.signals.cells import CellSeries

HELD_S = 0.008
"""A sample repeated for this long, and at least `LEAST_HELD_CELLS` times, is no sample..."""

LEAST_HELD_CELLS = 4

MOST_HELD = 0.05
"""...unless more than this share of all neighbours read alike."""

LEAST_PERCENT = 0.01
"""Noise below this is not told apart from none: half a millivolt on a 5 V feed."""


def without_held(cells: CellSeries, cell_s: float) -> CellSeries:
    """Cells with the stretches blanked in which a recorder repeated its last sample for want of a new one.

    A signal with noise never reads the same to the last digit for long; where it often does, nothing is
    blanked, since then the recorder's step hides the noise.
    """
    same = (np.diff(cells.mean) == 0.0) & (cells.spread[1:] == 0.0)
    if not same.any() or np.mean(same) > MOST_HELD:
        return cells
    runs = np.flatnonzero(np.diff(np.concatenate([[False], same, [False]]).astype(np.int8))).reshape(-1, 2)
    least = max(LEAST_HELD_CELLS, round(HELD_S / cell_s))
    held = np.zeros(len(cells.mean), dtype=np.bool_)
    moved = np.abs(np.diff(cells.mean))
    usual = 12.0 * float(np.median(moved[np.isfinite(moved)])) + LEAST_PERCENT
    for first, last in runs[runs[:, 1] - runs[:, 0] >= least]:
        # A repeated sample goes on from the one before; what is reached by a jump is a contact on its rail.
        if first == 0 or moved[first - 1] <= usual:
            held[first : last + 1] = True
    return cells.blanked(held) if held.any() else cells
