"""The recorder's own zero: probes held to where they are measured against, so that nought is the truth.

Such a record shows nothing of the sensor. What it reads is the recorder's offset, which every level of the
capture carries.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from analysis.captures.model import Channel, Record, Step
from analysis.diagnosis.findings import Check, RecordOutcome, Result, State, Statement
from analysis.diagnosis.judging import decided
from analysis.diagnosis.profile_model import Limit
from analysis.diagnosis.seen import Seen
from analysis.diagnosis.studies import Studies
from analysis.signals.uncertainty import combined, expanded, resolution_uncertainty
from analysis.wording import say

MOST_SAMPLES = 65_536
"""Samples of a channel that its zero is read from."""

_CODE = "recorder_zero"


def zeros_of(studies: Studies) -> tuple[Record, ...]:
    """Records of the recorder's own zero, in the capture's order."""
    return tuple(item for item in studies.capture.records if item.step is Step.ZERO and len(item))


def zero_check(studies: Studies) -> Iterator[Check]:
    """The channel that is furthest from nought, against the offset that its recorder is stated to have."""
    read = [
        (record, channel, level)
        for record in zeros_of(studies)
        for channel in record.channels
        if channel.role is not None and (level := _level(channel)) is not None
    ]
    if not read:
        return
    record, channel, (value, spread) = max(read, key=lambda item: _beyond(item[1], item[2][0]))
    unsure = expanded(combined(resolution_uncertainty(channel.step_v), spread))
    most = channel.offset_error_v
    if most is None:
        source, cannot = say("no accuracy is stated"), Result.CANNOT_TELL
        title = say("Zero of the recorder")
        yield Check(_CODE, record.name, value, unsure, "V", None, None, cannot, source, title)
        return
    limit = Limit(-most, most, "V", say("the recorder's stated accuracy"))
    yield decided(_CODE, say("Zero of the recorder"), record.name, value, unsure, "V", limit)


def _level(channel: Channel) -> tuple[float, float] | None:
    """Median of the middle of a channel, and standard deviation of its tenths; None without a sample."""
    first = max(0, (len(channel) - MOST_SAMPLES) // 2)
    volts = channel.volts(first, first + MOST_SAMPLES)
    known = volts[np.isfinite(volts)]
    if not len(known):
        return None
    parts = [float(np.median(part)) for part in np.array_split(known, min(10, len(known)))]
    return float(np.median(known)), float(np.std(parts, ddof=1)) if len(parts) > 1 else 0.0


def _beyond(channel: Channel, level_v: float) -> float:
    return abs(level_v) - (channel.offset_error_v or 0.0)


def zero_known(seen: Seen) -> Statement | None:
    """Whether the recorder reads nought where it should; None where nobody tried."""
    check = seen.check(_CODE)
    if check is None:
        return None
    if check.result is Result.PASS:
        text = say(
            "With its probes held together the recorder reads {offset_mv:.1f} mV: within its stated"
            " accuracy.",
            offset_mv=check.value * 1e3,
        )
        return Statement(_CODE, State.PROVED, (check.record,), text)
    if check.result is Result.FAIL:
        text = say(
            "With its probes held together the recorder reads {offset_mv:.1f} mV, more than its stated"
            " accuracy: every level here may be off by that.",
            offset_mv=check.value * 1e3,
        )
        return Statement(_CODE, State.REFUTED, (check.record,), text)
    text = say(
        "With its probes held together the recorder reads {offset_mv:.1f} mV; whether that is within its"
        " accuracy cannot be told.",
        offset_mv=check.value * 1e3,
    )
    return Statement(_CODE, State.NOT_SHOWN, (check.record,), text)


def zero_outcome(record: Record) -> RecordOutcome:
    """What one record of the recorder's zero showed, in one line."""
    levels = [level[0] for channel in record.channels if (level := _level(channel)) is not None]
    if not levels:
        return RecordOutcome(record.name, Result.CANNOT_TELL, say("nothing was read"))
    worst = max(levels, key=abs)
    return RecordOutcome(record.name, Result.PASS, say("zero at {offset_mv:.1f} mV", offset_mv=worst * 1e3))
