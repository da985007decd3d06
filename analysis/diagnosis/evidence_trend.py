"""Break-up against the number of the crossing: dirt is wiped away, wear stays."""

from __future__ import annotations

import numpy as np

from analysis.diagnosis.findings import Band, State, Statement
from analysis.diagnosis.seen import Seen
from analysis.signals.trend import Trend, trend
from analysis.wording import say

ENOUGH = 6
"""Crossings from which on a trend may show: of six in falling order p is 0.003, of four 0.04."""

UNLIKELY = 0.01
"""A trend as plain as this comes by chance once in a hundred bands; a worn band must not be called dirt."""


def improved_by_moving(seen: Seen) -> Statement | None:
    """Dirt that the sweep wiped away: bad at first, clean at last, and not by chance."""
    for band in seen.sure_bands:
        if _wiped(band):
            text = say("It improved while being moved: the last crossings are clean. That is not cured.")
            return Statement("improved_by_moving", State.PROVED, (band.record,), text)
    return None


def constant_over_crossings(seen: Seen) -> Statement | None:
    """Whether the surest band broke up as much at the end as at the beginning."""
    if not seen.sure_bands:
        return None
    band = max(seen.sure_bands, key=lambda item: item.confidence)
    records = tuple(dict.fromkeys(item.record for item in band.crossings))
    count = len(band.crossings)
    if count < ENOUGH:
        text = say("Too few crossings, {count}, to tell wear from dirt that a sweep wipes away.", count=count)
        return Statement("constant_over_crossings", State.NOT_SHOWN, records, text)
    found = _trend(band)
    if _wiped(band) or (found.p_value < UNLIKELY and found.tau < 0.0):
        text = say(
            "It breaks up less from crossing to crossing: dirt that is wiped away does so, wear does not."
        )
        return Statement("constant_over_crossings", State.REFUTED, records, text)
    if found.p_value < UNLIKELY:
        text = say("It breaks up more from crossing to crossing: it became worse while being moved.")
        return Statement("constant_over_crossings", State.REFUTED, records, text)
    text = say(
        "It breaks up alike from the first of {count} crossings to the last: "
        "no sign of dirt that a sweep wipes away.",
        count=count,
    )
    return Statement("constant_over_crossings", State.PROVED, records, text)


def _trend(band: Band) -> Trend:
    """Of the break-up within each record: from one record to the next the speed changes too."""
    return trend([item.breakup_percent for item in band.crossings], [item.record for item in band.crossings])


def _wiped(band: Band) -> bool:
    """Whether the second half is clean, or nearly so where the trend is plain."""
    noisy = np.array([item.noisy for item in band.crossings], dtype=np.bool_)
    half, third = len(noisy) // 2, len(noisy) // 3
    if half < 3 or noisy[:half].sum() < 2:
        return False
    if not noisy[half:].any():
        return True
    found = _trend(band)
    return bool(found.p_value < UNLIKELY and found.tau < 0.0 and not noisy[-max(third, 2) :].any())
