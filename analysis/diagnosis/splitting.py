"""One long record of one probe that went from wire to wire: air, ground, reference, and then the sweep."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import median_filter

from analysis.captures.model import Record, Role, Step
from analysis.captures.spans import span_of
from analysis.signals.cells import CellSeries

ONE_WIRE = "one_wire"
"""Attribute of a record of which somebody said that it is of one wire: it is not split."""

BLOCK_S = 0.05
"""Stretch that is judged as one."""

LEAST_SPAN_S = 0.25
"""Nobody probes a wire for less."""

FEED_V = (1.5, 9.5)
"""A wire that stands steadily in this range, reached and left at one jump, is a feed, good or bad."""

GROUND_V = 2.5
"""A steady wire below this, probed before the feed, is a ground, good or bad."""

STEADY_V = 0.15
"""A feed or a ground moves less than this within a stretch."""

JUMP_V = 0.8
"""A probe that is taken from a feed jumps further than this from one cell to the next but one..."""

JUMP_STAYS_S = 0.2
"""...and stays away for longer than half of this: nobody moves a probe faster, an open contact comes back."""

SHAKEN_SHARE = 0.15
"""Share of a plateau left out at either end."""

AIR_V = 0.35
"""A probe in the air reads about nought, with hum of some tenths of a volt at most into 1 M."""

HELD_S = 0.2
"""A probe is held to a wire, or off it, for this long."""

HUM_V = 0.015
"""A probe in the air swings by more than this within a stretch; a wire to ground is quieter."""


@dataclass(frozen=True, slots=True)
class _Plateau:
    """Blocks ``[first, last)`` that stand at one level."""

    first: int
    last: int
    level_v: float
    reach_v: float


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
        another wire, or where nothing follows.
    """
    if len(cells.mean) * cell_s < 2.0 * LEAST_SPAN_S:
        return (record,)
    block = max(1, round(BLOCK_S / cell_s))
    steady_v = STEADY_V + 2.0 * record.channels[0].step_v
    least = max(1, round(LEAST_SPAN_S / (block * cell_s)))
    filled = _held(cells.mean)
    plateaus = _plateaus(filled, block, least, steady_v)
    # The feed is probed before the arm is moved: what stands before it is a ground or the air.
    above = [item for item in plateaus if item.level_v > FEED_V[0]][:1]
    whole = len(cells.mean) // block
    lasting = median_filter(filled, size=max(1, round(JUMP_STAYS_S / cell_s)) | 1, mode="nearest")
    if not above or not _is_feed(above[0], lasting, block) or above[0].last > 0.8 * whole:
        return (record,)
    begin = _signal_start(cells.mean, block, above[0].last)
    if begin >= whole:
        return (record,)
    hum_v = HUM_V + 2.0 * record.channels[0].step_v
    grounds = [item for item in plateaus if item.last <= above[0].first and _is_ground(item, hum_v)]
    # The air before and after hums, if little; the wire itself is the quietest.
    quietest = min(grounds, key=lambda item: item.reach_v, default=None)
    ground = _without_air(filled, block, quietest, least, hum_v) if quietest is not None else None
    spans = [(ground, Role.GROUND, Step.GROUND)] if ground is not None else []
    spans += [(above[0], Role.REFERENCE, Step.REFERENCE)]
    per_block = block * cell_s / record.sample_interval_s

    def cut(first: float, last: float, role: Role, step: Step) -> Record:
        stop = min(round(last * per_block), len(record))
        return span_of(record, min(round(first * per_block), stop), stop, step=step, role=role)

    held = [cut(*_within(item), role, step) for item, role, step in spans]
    end = _signal_end(cells.mean, block, begin)
    return (*held, cut(begin, end, Role.SIGNAL, record.step or Step.SWEEP))


def _held(mean: NDArray[np.float32]) -> NDArray[np.float32]:
    """The series with the last reading in place of each missing one: a clock gap is no other wire."""
    known = np.isfinite(mean)
    last = np.maximum.accumulate(np.where(known, np.arange(len(mean)), 0))
    return np.nan_to_num(mean[last])


def _plateaus(
    mean: NDArray[np.float32], block: int, least: int, steady_v: float = STEADY_V
) -> list[_Plateau]:
    """Stretches of at least `least` blocks that stand at one level."""
    whole = len(mean) // block
    blocks = mean[: whole * block].reshape(whole, block)
    level = np.median(blocks, axis=1)
    reach = np.ptp(np.percentile(blocks, [4.0, 96.0], axis=1), axis=0)  # a lone spike ends no plateau
    broken = (reach[1:] > steady_v) | (reach[:-1] > steady_v) | (np.abs(np.diff(level)) > 0.5 * steady_v)
    cuts = [0, *(np.flatnonzero(broken) + 1).tolist(), whole]
    runs: list[tuple[int, int]] = []
    for first, last in pairwise(cuts):
        again = runs and first - runs[-1][1] <= 2 and abs(level[first] - level[runs[-1][1] - 1]) < steady_v
        if again and last - first >= 2:  # a short disturbance does not end a plateau
            runs[-1] = (runs[-1][0], last)
        else:
            runs.append((first, last))
    return [
        _Plateau(first, last, float(np.median(level[first:last])), float(np.median(reach[first:last])))
        for first, last in runs
        # A slow sweep moves little from block to block, but far from end to end.
        if last - first >= least and np.ptp(np.percentile(level[first:last], [4.0, 96.0])) <= steady_v
    ]


def _without_air(mean: NDArray[np.float32], block: int, item: _Plateau, least: int, hum_v: float) -> _Plateau:
    """The longest quiet part of a ground: the air before and after it is as near nought, and hums."""
    blocks = mean[item.first * block : item.last * block].reshape(-1, block)
    reach = np.ptp(np.percentile(blocks, [4.0, 96.0], axis=1), axis=0)
    edges = np.flatnonzero(np.diff((reach <= hum_v).astype(np.int8), prepend=0, append=0)).reshape(-1, 2)
    first, last = max(edges.tolist(), key=lambda run: run[1] - run[0], default=(0, 0))
    if last - first < least:
        return item
    return replace(item, first=item.first + first, last=item.first + last)


def _within(item: _Plateau) -> tuple[float, float]:
    """The inner part of a plateau, in blocks: putting the probe on and taking it off shake it."""
    margin = max(1.0, SHAKEN_SHARE * (item.last - item.first))
    return item.first + margin, item.last - margin


def _is_feed(item: _Plateau, mean: NDArray[np.float32], block: int) -> bool:
    low, high = FEED_V
    # A spike may cut the plateau short of the jump by a stretch or two.
    entered = item.first == 0 or _jumps(mean, (item.first - 3) * block, (item.first + 1) * block)
    left = _jumps(mean, (item.last - 1) * block, (item.last + 3) * block)
    return low < item.level_v < high and entered and left


def _is_ground(item: _Plateau, hum_v: float) -> bool:
    humming = abs(item.level_v) < AIR_V and item.reach_v > hum_v
    return -0.5 < item.level_v < GROUND_V and not humming


def _jumps(mean: NDArray[np.float32], first: int, last: int) -> bool:
    near = mean[max(first, 0) : last]
    return len(near) > 2 and float(np.abs(near[2:] - near[:-2]).max()) > JUMP_V


def _signal_start(mean: NDArray[np.float32], block: int, after: int) -> int:
    """Block in which the probe, taken from the feed, has come to rest on the signal wire."""
    tail = np.abs(np.nan_to_num(mean[after * block :]))
    touching = tail > AIR_V
    # The probe is in the air until the signal stays on for a fifth of a second.
    need = round(HELD_S / BLOCK_S) * block
    held = np.convolve(touching, np.ones(need), mode="valid") >= 0.98 * need
    first = int(np.argmax(held)) if held.any() else 0
    # The block in which it touches is left out, and the next: a probe that is put on shakes.
    return after + first // block + 2


def _signal_end(mean: NDArray[np.float32], block: int, begin: int) -> float:
    """Block before which the probe was taken from the signal wire and left in the air; else the end.

    Half of the signal's time at least must be left: a probe that slipped off early measured nothing.
    """
    away = np.abs(np.nan_to_num(mean[begin * block :], nan=9.0)) < AIR_V
    back = np.flatnonzero(~away)
    if not len(back):
        return len(mean) / block
    on, off = int(back[-1]) + 1, len(away) - int(back[-1]) - 1
    if off < round(HELD_S / BLOCK_S) * block or off > on:
        return len(mean) / block
    return begin + max(on / block - 1.0, 0.0)
