"""The simple detector that everything is compared with: rolling deviation over a threshold, by travel.

A window of 20 ms goes along the sweep records; its deviation about its own straight line and its middle
position are binned by travel; bins whose mean deviation is beyond a threshold are a band. Reference and
ground are held against fixed limits, and a restless wiggle record is a bad wire. The one threshold is
fitted on the seeds that the calibration is fitted on.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray
from scipy.signal import medfilt

from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval, union
from analysis.simulation.scoring import Answer, FoundBand
from analysis.simulation.truth import Truth

Floats = NDArray[np.float64]

WINDOW_S = 0.020
LEAST_WINDOW = 8
"""Fewer samples make no deviation worth the name."""

BIN_PERCENT = 1.0
LEAST_MOVED_PERCENT = 5.0
REFERENCE_V = Interval(4.75, 5.25)
MOST_GROUND_V = 0.1  # common practice, no source

THRESHOLDS_PERCENT = np.geomspace(0.05, 20.0, 40)
"""Thresholds that are tried, in % of the feed."""


@dataclass(frozen=True, slots=True)
class Sketch:
    """What the simple detector measures on one capture, before it decides.

    Parameters
    ----------
    deviation_percent : mapping of Role to ndarray, shape (n_bins,)
        Mean deviation of each bin of travel from 0 to 100 %; 0 where the arm never was.
    wiggle_percent : float
        Largest deviation while the harness was shaken; 0 where it never was.
    reference_v, ground_v : float or None
        Medians; None where not recorded.
    moved_percent : float
        Travel that the sweeps covered.
    """

    deviation_percent: Mapping[Role, Floats]
    wiggle_percent: float
    reference_v: float | None
    ground_v: float | None
    moved_percent: float


def sketch(capture: Capture) -> Sketch:
    """Measure a capture."""
    reference_v, ground_v = _middle(capture, Role.REFERENCE), _middle(capture, Role.GROUND)
    feed = (0.0 if ground_v is None else ground_v, 5.0 if reference_v is None else reference_v)
    swept = [record for record in capture.records if record.step in (None, Step.SWEEP, Step.ROAD)]
    shaken = [record for record in capture.records if record.step is Step.WIGGLE]
    tracks, moved = {}, 0.0
    for role in (Role.SIGNAL, Role.SECOND_SIGNAL):
        places, deviations = _windows(swept, role, feed)
        if places.size:
            tracks[role] = _binned(places, deviations)
            moved = max(moved, float(np.ptp(np.quantile(places, [0.01, 0.99]))))
    _, wiggled = _windows(shaken, Role.SIGNAL, feed)
    return Sketch(tracks, float(wiggled.max(initial=0.0)), reference_v, ground_v, moved)


def judge(measured: Sketch, threshold_percent: float) -> Answer:
    """Decide with a threshold; bands are the surer, the further their deviation lies beyond it."""
    bands = [
        band
        for role, deviation in measured.deviation_percent.items()
        for band in _bands(role, deviation, threshold_percent)
    ]
    bands.sort(key=lambda band: -band.confidence)
    return Answer(_code(measured, bool(bands), threshold_percent), 1.0, tuple(bands))


def fit_threshold(measured: Sequence[Sketch], truths: Sequence[Truth]) -> float:
    """The threshold, in % of the feed, under which most verdicts are right."""
    right = [
        sum(judge(item, threshold).code is truth.code for item, truth in zip(measured, truths, strict=True))
        for threshold in THRESHOLDS_PERCENT
    ]
    return float(THRESHOLDS_PERCENT[int(np.argmax(right))])


def _code(measured: Sketch, banded: bool, threshold_percent: float) -> VerdictCode:
    reference_v, ground_v = measured.reference_v, measured.ground_v
    if measured.moved_percent < LEAST_MOVED_PERCENT:
        return VerdictCode.MEASUREMENT_PROBLEM
    if reference_v is not None and not REFERENCE_V.contains(reference_v):
        return VerdictCode.REFERENCE_FAULT
    if ground_v is not None and ground_v > MOST_GROUND_V:
        return VerdictCode.GROUND_FAULT
    if measured.wiggle_percent > threshold_percent:
        return VerdictCode.SIGNAL_WIRING
    return VerdictCode.WORN_TRACK if banded else VerdictCode.NO_FAULT_FOUND


def _middle(capture: Capture, role: Role) -> float | None:
    channels = [channel for record in capture.records if (channel := record.channel(role)) is not None]
    middles = [float(np.nanmedian(volts)) for item in channels if np.isfinite(volts := item.volts()).any()]
    return float(np.median(middles)) if middles else None


def _windows(records: Sequence[Record], role: Role, feed: tuple[float, float]) -> tuple[Floats, Floats]:
    """Middle position and deviation about a straight line of windows that overlap by half, both in %."""
    places, deviations = [np.zeros(0)], [np.zeros(0)]
    for record in records:
        travel = _travel_percent(record, role, feed)
        width = max(round(WINDOW_S / record.sample_interval_s), LEAST_WINDOW)
        if travel.size < width:
            continue
        window = sliding_window_view(travel, width)[:: width // 2]
        along = np.arange(width) - 0.5 * (width - 1)
        level = window - window.mean(axis=1, keepdims=True)
        slope = level @ along / (along @ along)
        deviations.append((level - slope[:, None] * along).std(axis=1))
        # Where a window has fallen to a rail, its neighbours tell better where the arm is.
        middle = np.median(window, axis=1)
        places.append(medfilt(middle, 5) if middle.size >= 5 else middle)
    return np.concatenate(places), np.concatenate(deviations)


def _travel_percent(record: Record, role: Role, feed: tuple[float, float]) -> Floats:
    """Travel of the samples that are not missing; sample by sample where the feed was recorded along."""
    channel = record.channel(role)
    if channel is None:
        return np.zeros(0)
    ground, reference = record.channel(Role.GROUND), record.channel(Role.REFERENCE)
    ground_v = feed[0] if ground is None else ground.volts()
    span_v = (feed[1] if reference is None else reference.volts()) - ground_v
    travel = 100.0 * (channel.volts() - ground_v) / np.where(span_v < 1.0, np.nan, span_v)
    return np.asarray(travel[np.isfinite(travel)], dtype=np.float64)


def _binned(places: Floats, deviations: Floats) -> Floats:
    bins = round(100.0 / BIN_PERCENT)
    inside = np.clip((places / BIN_PERCENT).astype(np.intp), 0, bins - 1)
    count = np.bincount(inside, minlength=bins)
    return np.asarray(np.bincount(inside, deviations, minlength=bins) / np.maximum(count, 1))


def _bands(role: Role, deviation: Floats, threshold_percent: float) -> list[FoundBand]:
    """Runs of bins beyond the threshold; one calm bin between two is bridged."""
    beyond = np.flatnonzero(deviation > threshold_percent)
    runs = union([Interval(float(at), float(at + 1)) for at in beyond], gap=1.0)
    found = []
    for run in runs:
        peak = float(deviation[int(run.start) : int(run.stop)].max())
        travel = Interval(run.start * BIN_PERCENT, run.stop * BIN_PERCENT)
        found.append(FoundBand(role, travel, 1.0 - 0.5 * threshold_percent / peak))
    return found
