"""Whether the signal probe hung in the air, or slipped off its wire on the way."""

from __future__ import annotations

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.measurement_outcome import NOTHING, Outcome, ramp, signal_v
from analysis.diagnosis.splitting import AIR_V
from analysis.diagnosis.stillness import left_alone
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.cells import CellSeries
from analysis.wording import say

HUM_V = 0.012
"""Hum of a probe in the air is larger than this from peak to peak; a wire to ground is quieter."""

SLIP_S = 0.4
"""A probe that slipped off stays off; a contact that opens comes back sooner."""

LONG_GONE_S = 1.5
"""A signal that jumps to nought and stays there for so long is gone, whether it hums or not."""

LOW_STOP_V = 0.1
"""An arm at its low stop reads more than a probe in the air."""


def in_the_air(item: Study, studies: Studies) -> Outcome:
    """Hum about nought, and nothing else."""
    volts = signal_v(item)
    if volts is None:
        return NOTHING
    near = ramp(float(np.mean(np.abs(volts) < AIR_V)), 0.8, 0.95)
    if not near:
        return NOTHING
    # A record with the arm at rest is not what the verdict rests on; the sweep is.
    weight = 0.5 if left_alone(item.record) else 1.0
    strength = weight * near * ramp(_hum_v(item, slice(None)), HUM_V, 2 * HUM_V)
    return (
        strength,
        say("the signal probe hums about nought: it hung in the air"),
        say("put the probe back and repeat"),
    )


def slipped_off(item: Study, studies: Studies) -> Outcome:
    """From some moment on nothing but hum about nought, or a jump to nought that lasts."""
    series = item.cells.volts.get(Role.SIGNAL)
    if series is None:
        return NOTHING
    away = np.abs(np.nan_to_num(series.mean, nan=9.0)) < AIR_V
    back = np.flatnonzero(~away)
    first = int(back[-1]) + 1 if len(back) else 0
    gone_s = (len(away) - first) * item.cells.cell_s
    if not len(back) or gone_s < SLIP_S:
        return NOTHING
    # What hums as much while the probe is on the wire is not the air.
    more_v = _hum_v(item, slice(first, None)) - 1.5 * _hum_v(item, slice(0, first))
    hum = ramp(more_v, HUM_V, 2 * HUM_V)
    gone = 0.0
    if not _sank(series, first, item):
        gone = 0.7 * ramp(gone_s, LONG_GONE_S, 2.0 * LONG_GONE_S)
    elif abs(float(np.nanmedian(series.mean[first:]))) > LOW_STOP_V:
        return NOTHING
    strength = (0.5 if left_alone(item.record) else 1.0) * max(hum, gone) * ramp(gone_s, SLIP_S, 2 * SLIP_S)
    begun = item.cells.start_s + first * item.cells.cell_s
    text = (
        say("the signal probe slipped off at {begun:.1f} s: from there it only hums", begun=begun)
        if hum >= gone
        else say(
            "the signal is gone from {begun:.1f} s on: the probe slipped off, or the wire is open",
            begun=begun,
        )
    )
    return strength, text, say("put the probe back and repeat")


def _step_v(item: Study) -> float:
    channel = item.record.channel(Role.SIGNAL)
    return channel.step_v if channel is not None else 0.0


def _sank(series: CellSeries, first: int, item: Study) -> bool:
    """Whether the signal came down to its end as an arm does, not at a jump."""
    near = series.mean[max(first - max(2, round(0.02 / item.cells.cell_s)), 0) : first]
    return not len(near) or float(np.nanmedian(np.abs(near))) < 2.0 * AIR_V


def _hum_v(item: Study, span: slice) -> float:
    """Swing within a fiftieth of a second, median over the span, in volts; 0 where it is noise, not hum.

    Hum moves little from one cell to the next, so neighbouring cells agree; those of noise do not.
    """
    mean = np.nan_to_num(item.cells.volts[Role.SIGNAL].mean[span])
    block = max(4, round(0.02 / item.cells.cell_s))
    whole = len(mean) // block
    if not whole:
        return 0.0
    blocks = mean[: whole * block].reshape(whole, block)
    slope = np.linspace(-1.0, 1.0, block)
    about = blocks - blocks.mean(axis=1, keepdims=True)
    about -= (about @ slope)[:, None] * (slope / (slope @ slope))  # a moving arm drifts, hum swings
    power = (about**2).sum(axis=1)
    alike = (about[:, 1:] * about[:, :-1]).sum(axis=1) / np.maximum(power, 1e-12)
    swing = np.ptp(about, axis=1) * np.clip((alike - 0.3) / 0.3, 0.0, 1.0)
    return float(np.median(swing)) - _step_v(item)
