"""What a capture knows of the arm's true position beside the output that is judged.

Normally nothing does, and linearity and play are then not shown. A second track of the same sensor is a
reference of its own kind: what is read against it is what both tracks do together. A technician who sets the
arm by a gauge may state ``position_percent`` with each record at rest.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.diagnosis.one_arm import on_one_arm
from analysis.diagnosis.stillness import left_alone
from analysis.diagnosis.studies import Studies, Study
from analysis.intervals import Interval
from analysis.signals.linearity import LARGEST_GAP_PERCENT, why_refused
from analysis.signals.thinning import thinned
from analysis.signals.uncertainty import combined, expanded, resolution_uncertainty

POSITION_KEY = "position_percent"
"""Attribute of a record at rest: where the arm was set, in % of travel."""

BIN_PERCENT = 0.5
"""Readings within this stretch of the reference's travel are one point."""

LEAST_STATED = 4
"""Fewer stated positions than this are no test, whatever the gaps."""

LEAST_SPAN_PERCENT = 20.0
"""A line is not judged over less travel."""


@dataclass(frozen=True, slots=True)
class Direction:
    """Points of one direction of motion, shape (n,) each, by rising position."""

    position_percent: NDArray[np.float64]
    output_percent: NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class PositionReference:
    """Output against position.

    Parameters
    ----------
    kind : str
        ``"second track"`` or ``"stated"``.
    both : Direction
        Whichever way the arm went, and where it rested.
    up, down : Direction
        With rising and falling position; both the same where positions were set one by one.
    span : Interval
        The travel that is judged, in % of the reference's travel.
    uncertainty_percent : float
        Expanded (k = 2) uncertainty of a point, in % of the applied voltage, as far as it is known.
    speed_percent_per_s : float
        Typical speed of the arm; 0 where positions were set one by one.
    interval_s : float
        Longest sampling interval: channels read one after the other are no further apart.
    records : tuple of str
        Where it was read.
    refusal : str
        Why linearity cannot be judged; empty where it can.
    """

    kind: str
    both: Direction
    up: Direction
    down: Direction
    span: Interval
    uncertainty_percent: float
    speed_percent_per_s: float
    interval_s: float
    records: tuple[str, ...]
    refusal: str


def position_reference(studies: Studies) -> PositionReference | None:
    """The best reference that the capture holds, or None."""
    return _stated(studies) or _second_track(studies)


def _stated(studies: Studies) -> PositionReference | None:
    position, output, steps, names = [], [], [0.0], []
    for item in studies.every:
        told, survey = item.record.attributes.get(POSITION_KEY), item.surveys.get(Role.SIGNAL)
        if survey is None or not isinstance(told, (int, float)) or not left_alone(item.record):
            continue
        reading = item.cells.travel[Role.SIGNAL].mean
        if not 0.0 <= float(told) <= 100.0 or not np.isfinite(reading).any():
            continue
        position.append(float(told))
        output.append(float(np.nanmedian(reading)))
        steps.append(item.cells.step_percent[Role.SIGNAL])
        names.append(item.record.name)
    if len(position) < LEAST_STATED:
        return None
    order = np.argsort(position, kind="stable")
    points = Direction(np.array(position)[order], np.array(output)[order])
    span = Interval(points.position_percent[0], points.position_percent[-1])
    unsure = expanded(resolution_uncertainty(max(steps)))
    return PositionReference(
        "stated", points, points, points, span, unsure, 0.0, 0.0, tuple(names), _refusal(points, span)
    )


def _second_track(studies: Studies) -> PositionReference | None:
    items = [item for item in studies.swept if _has_both(item)]
    parts = [_both_true(item) for item in items]
    if not parts or not any(len(part[0]) for part in parts):
        return None
    second, first, speed = (np.concatenate([part[k] for part in parts]) for k in range(3))
    moving = np.abs(speed) > 1.0
    if not moving.any():
        return None
    # In the reference's own per cent, stretched to the travel of the track that is judged.
    slope = float(np.ptp(first)) / max(float(np.ptp(second)), 1e-6)
    position = second * slope
    up, down = (
        _binned(position, first, moving & (speed > 0.0)),
        _binned(position, first, moving & (speed < 0.0)),
    )
    both = _binned(position, first, np.ones(len(first), np.bool_))
    span = Interval(float(both.position_percent[0]), float(both.position_percent[-1]))
    steps = [
        resolution_uncertainty(item.cells.step_percent[role]) * scale
        for item in items
        for role, scale in ((Role.SIGNAL, 1.0), (Role.SECOND_SIGNAL, slope))
    ]
    return PositionReference(
        "second track",
        both,
        up,
        down,
        span,
        expanded(combined(max(steps[::2]), max(steps[1::2]), _scatter(position, first, both))),
        float(np.median(np.abs(speed[moving]))),
        max(item.record.sample_interval_s for item in items),
        tuple(item.record.name for item in items),
        _refusal(both, span),
    )


def _reach(travel: NDArray[np.float64]) -> float:
    low, high = np.percentile(travel, [1.0, 99.0])
    return float(high - low)


def _has_both(item: Study) -> bool:
    both = Role.SIGNAL in item.surveys and Role.SECOND_SIGNAL in item.surveys
    return both and on_one_arm(item.record)


def _both_true(item: Study) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Second and first track, and the speed of the first's path, wherever both tell the truth."""
    one, other = item.surveys[Role.SIGNAL].motion, item.surveys[Role.SECOND_SIGNAL].motion
    both = thinned(one.truthful) & thinned(other.truthful)
    travel = item.cells.travel
    first, second = (thinned(travel[role].mean)[both] for role in (Role.SIGNAL, Role.SECOND_SIGNAL))
    speeds = [thinned(_speed(motion.travel_percent, item.cells.cell_s))[both] for motion in (one, other)]
    speed = speeds[0]
    if len(speed) and float(np.median(speeds[1] * speed)) < 0.0:
        speed = -speed  # of the reference: in an inverted pair it falls while the first rises
    return second.astype(np.float64), first.astype(np.float64), speed


def _speed(place: NDArray[np.float32], cell_s: float) -> NDArray[np.float64]:
    return np.asarray(np.gradient(place) / cell_s) if len(place) > 1 else np.zeros(len(place))


def _binned(
    position: NDArray[np.float64], output: NDArray[np.float64], chosen: NDArray[np.bool_]
) -> Direction:
    """Means of position and output in stretches of the travel."""
    place, value = position[chosen], output[chosen]
    bins, index, count = np.unique(np.floor(place / BIN_PERCENT), return_inverse=True, return_counts=True)
    return Direction(
        np.bincount(index, place, len(bins)) / count, np.bincount(index, value, len(bins)) / count
    )


def _scatter(position: NDArray[np.float64], output: NDArray[np.float64], points: Direction) -> float:
    """Standard uncertainty of a point: scatter of the readings about the points' line, over their number."""
    away = output - np.interp(position, points.position_percent, points.output_percent)
    usual = 1.4826 * float(np.median(np.abs(away)))  # of a normal distribution: R, help page of `mad`
    return usual / float(np.sqrt(max(len(output) / len(points.output_percent), 1.0)))


def _refusal(points: Direction, span: Interval) -> str:
    if span.length < LEAST_SPAN_PERCENT:
        return why_refused(points.position_percent, position_known=True)
    return why_refused(
        points.position_percent, position_known=True, span=span, largest_gap_percent=LARGEST_GAP_PERCENT
    )
