"""The signal over time where it breaks up most clearly, beside what a good sensor would have given."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Channel, Record, Role
from analysis.captures.record_names import the_record
from analysis.diagnosis.findings import Band, Event, Findings, VerdictCode
from analysis.intervals import Interval
from analysis.reports.axes import Axes
from analysis.reports.drawing import INK, WIDTH, Drawing, Label, Mark, Stroke, hatched, line
from analysis.reports.verdicts import is_watched
from analysis.signals.facts import ArmPath
from analysis.wording import say

_LEFT, _RIGHT, _TOP, _FOOT = 66.0, 12.0, 26.0, 46.0
_LEGEND_WIDTH, _ROW = 560.0, 17.0
"""Width that both words of the legend take beside each other, and height of a row of it."""

_COLUMNS = 820
_LEAST_S = 0.05
_MODEL_BLUE = "#0072B2"  # blue of Okabe & Ito (2008); dashed too


WIRES = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}
"""Names of the wires."""

IN_TIME = {
    VerdictCode.SIGNAL_WIRING: (Role.SIGNAL, Role.SECOND_SIGNAL),
    VerdictCode.REFERENCE_FAULT: (Role.REFERENCE,),
    VerdictCode.GROUND_FAULT: (Role.GROUND,),
}
"""Verdicts about moments instead of places, and the wires that such moments show on."""

_LIMITED = {Role.GROUND: "ground_drop", Role.REFERENCE: "reference_level"}


@dataclass(frozen=True, slots=True)
class Moment:
    """A stretch of a record that shows the fault, and the band or event that it shows."""

    record: str
    time: Interval
    role: Role
    band: Band | None = None
    event: Event | None = None


def clearest_moment(findings: Findings) -> Moment | None:
    """The crossing of a sure band with the most break-up, else the deepest event that the verdict is about.

    None where neither is: a disturbance that decided nothing is not held up to anybody.
    """
    sure = [band for band in findings.bands if not is_watched(band) and band.crossings]
    if sure:
        band = max(sure, key=lambda item: item.confidence)
        worst = max(band.crossings, key=lambda item: item.breakup_percent)
        return Moment(worst.record, worst.time, band.track, band)
    wires = IN_TIME.get(findings.verdict.code, ())
    events = [event for event in findings.events if set(event.roles) & set(wires)]
    if events:
        event = max(events, key=lambda item: abs(item.depth_v))
        return Moment(event.record, event.time, event.roles[0], event=event)
    return None


def trace_drawing(
    capture: Capture, findings: Findings, *, height: float = 225.0, width: float = WIDTH
) -> Drawing | None:
    """The signal through its clearest moment; None where there is none or its samples are gone.

    The measured course is a solid line (every extreme of it is drawn); the course that a sensor without a
    fault would have given for the same movement of the arm is a dashed one, modelled from the arm's path.

    Parameters
    ----------
    capture : Capture
        Open.
    findings : Findings
        Of that capture.
    height, width : float
        Height of the frame and width of the picture, in its units.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    """
    moment = clearest_moment(findings)
    record = next((item for item in capture.records if moment and item.name == moment.record), None)
    channel = record.channel(moment.role) if record is not None and moment is not None else None
    if moment is None or record is None or channel is None:
        return None
    span = _around(moment.time, record)
    time_s, voltage_v = _course(record, channel, span)
    if not np.isfinite(voltage_v).any():
        return None
    model = _modelled(findings, moment, span)
    limits = limits_of(findings, moment.role)
    shown = np.concatenate([voltage_v, limits, model[1] if model is not None else limits])
    top = _TOP if width - _LEFT - _RIGHT >= _LEGEND_WIDTH else _TOP + _ROW
    axes = Axes(_LEFT, top, width - _LEFT - _RIGHT, height, span, _volts_span(shown))
    marks: list[Mark] = []
    if moment.band is not None:
        left, right = axes.x(moment.time.start), axes.x(moment.time.stop)
        marks += hatched(left, axes.top, max(right - left, 2.0), axes.height)
    marks += axes.marks(across_title=say("time, s"), up_title=say("{wire}, V", wire=WIRES[moment.role]))
    if model is not None:
        marks.append(Stroke((axes.points(*model),), _MODEL_BLUE, 2.4, 1.0, (9.0, 5.0)))
    across = np.array([span.start, span.stop])
    marks += [
        Stroke((axes.points(across, np.full(2, limit_v)),), _MODEL_BLUE, 1.6, 1.0, (9.0, 5.0))
        for limit_v in limits
    ]
    marks.append(Stroke(tuple(axes.points(t, v) for t, v in _unbroken(time_s, voltage_v)), INK, 1.3))
    if model is not None:
        marks += _legend(axes, say("a good sensor for the same movement, modelled"))
    else:
        marks += _legend(axes, say("what is allowed") if len(limits) else "")
    return Drawing(width, axes.base + _FOOT, tuple(marks), _description(moment, span))


def _around(time: Interval, record: Record) -> Interval:
    """The moment with as much again on both sides, inside the record."""
    margin = max(time.length, _LEAST_S)
    begin, end = record.first_sample_s, record.first_sample_s + record.duration_s
    start = max(time.start - margin, begin)
    return Interval(start, max(min(time.stop + margin, end), start + record.sample_interval_s))


def _course(
    record: Record, channel: Channel, span: Interval
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Time and volts; of more samples than columns the least and the greatest of each column."""
    first, last = record.index_at(span.start), record.index_at(span.stop) + 1
    voltage_v, time_s = channel.volts(first, last), record.time_s(first, last)
    block = max(1, len(voltage_v) // _COLUMNS)
    if block == 1:
        return time_s, voltage_v
    whole = len(voltage_v) // block * block
    table = voltage_v[:whole].reshape(-1, block)
    filled = np.where(np.isnan(table), np.inf, table), np.where(np.isnan(table), -np.inf, table)
    least, most = filled[0].min(axis=1), filled[1].max(axis=1)
    pair = np.column_stack([least, most]).ravel()
    return np.repeat(time_s[:whole:block], 2), np.where(np.isfinite(pair), pair, np.nan)


def _modelled(
    findings: Findings, moment: Moment, span: Interval
) -> tuple[NDArray[np.float64], NDArray[np.float64]] | None:
    """Time and volts of the arm's path, as the travel was reckoned from volts."""
    path = _path(findings, moment)
    volts_a_percent = _volts_a_percent(findings, moment.band)
    if path is None or volts_a_percent is None:
        return None
    inside = (path.time_s >= span.start) & (path.time_s <= span.stop)
    if inside.sum() < 2:
        return None
    return path.time_s[inside], volts_a_percent * path.travel_percent[inside]


def _volts_a_percent(findings: Findings, band: Band | None) -> float | None:
    """From a band's own edges, else from what was taken for the whole travel, else from the feed."""
    if band is not None and band.travel.stop > 0.0:
        return band.volts.stop / band.travel.stop
    if findings.basis is not None and findings.basis.feed_v > 0.0:
        return findings.basis.feed_v / 100.0
    level = next((check for check in findings.checks if check.code == "reference_level"), None)
    return level.value / 100.0 if level is not None and np.isfinite(level.value) else None


def limits_of(findings: Findings, role: Role) -> NDArray[np.float64]:
    """The limits of a wire's level in volts, shape (n,) with n at most 2."""
    check = next((item for item in findings.checks if item.code == _LIMITED.get(role)), None)
    if check is None:
        return np.empty(0)
    return np.array([limit for limit in (check.lower_limit, check.upper_limit) if limit is not None])


def _path(findings: Findings, moment: Moment) -> ArmPath | None:
    survey = next((item for item in findings.surveys if item.role is moment.role), None)
    return survey.path(moment.record) if survey is not None else None


def _volts_span(voltage_v: NDArray[np.float64]) -> Interval:
    """All that is drawn with a margin; zero and five volts are shown where they lie near."""
    every = voltage_v[np.isfinite(voltage_v)]
    least, most = float(every.min()), float(every.max())
    margin = max(0.08 * (most - least), 0.02)
    return Interval(
        0.0 if 0.0 <= least < 0.8 else least - margin, 5.0 if 4.2 < most <= 5.0 else most + margin
    )


def _unbroken(
    time_s: NDArray[np.float64], voltage_v: NDArray[np.float64]
) -> list[tuple[NDArray[np.float64], NDArray[np.float64]]]:
    """Stretches without a missing sample."""
    there = np.isfinite(voltage_v)
    turns = np.flatnonzero(np.diff(there.astype(np.int8), prepend=0, append=0))
    return [
        (time_s[first:last], voltage_v[first:last])
        for first, last in zip(turns[::2], turns[1::2], strict=True)
    ]


def _legend(axes: Axes, dashed: str) -> list[Mark]:
    """What the lines are: side by side, or one below the other where the picture is narrow."""
    narrow = axes.width < _LEGEND_WIDTH
    y = axes.top - 10 - (_ROW if narrow else 0.0)
    marks: list[Mark] = [
        Stroke((line((axes.left, y - 4), (axes.left + 34, y - 4)),), INK, 1.6),
        Label(axes.left + 40, y, say("measured"), size=12.0),
    ]
    if dashed:
        x = axes.left + (0.0 if narrow else 190.0)
        y += _ROW if narrow else 0.0
        marks.append(Stroke((line((x, y - 4), (x + 34, y - 4)),), _MODEL_BLUE, 2.4, 1.0, (9.0, 5.0)))
        marks.append(Label(x + 40, y, dashed, size=12.0))
    return marks


def _description(moment: Moment, span: Interval) -> str:
    return say(
        "The {wire} in volts from {start:.2f} to {stop:.2f} s of {record}, where it breaks up most clearly.",
        wire=WIRES[moment.role],
        start=span.start,
        stop=span.stop,
        record=the_record(moment.record),
    )
