"""A capture and its findings made by hand, so that the window can be tried without the analysis."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from types import TracebackType

import numpy as np

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Scaling, Step
from analysis.diagnosis.findings import (
    ArmPath,
    Band,
    CoverageSpan,
    Crossing,
    CrossingTime,
    Direction,
    Event,
    Findings,
    RecordOutcome,
    Result,
    State,
    Statement,
    TrackSurvey,
    Verdict,
    VerdictCode,
)
from analysis.intervals import Interval
from analysis.progress import Tick, ignore

RATE_HZ = 10_000.0
SWEEPS = 6
SWEEP_S = 2.0
BAND = Interval(41.9, 47.7)
REST_PERCENT = 59.0
"""Where the arm rests while ground, reference and harness are looked at."""


class FakeOpened:
    """An open capture without a file; counts how often it was closed."""

    def __init__(self, capture: Capture) -> None:
        self.capture = capture
        self.assumptions: tuple[str, ...] = ()
        self.closed = 0

    def __enter__(self) -> FakeOpened:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.closed += 1


def _channel(name: str, role: Role | None, voltage_v: np.ndarray) -> Channel:
    counts = np.round(voltage_v / 0.0005).astype(np.int16)
    return Channel(name, role, ArraySource(counts), Scaling(scale_factor=0.0005))


def _path(duration_s: float, rate_hz: float) -> tuple[np.ndarray, np.ndarray]:
    time_s = np.arange(round(duration_s * rate_hz)) / rate_hz
    return time_s, 50.0 - 42.0 * np.cos(np.pi * time_s / SWEEP_S)


def worn_capture(seed: int = 4) -> Capture:
    """Ground, reference, wiggle and two sweeps of a sensor whose track breaks up in `BAND`."""
    rng = np.random.default_rng(seed)

    def noise(count: int) -> np.ndarray:
        return rng.normal(0.0, 0.0015, count)

    records = []
    steady = (
        (Step.GROUND, "Ground at the sensor"),
        (Step.REFERENCE, "Reference"),
        (Step.WIGGLE, "Harness wiggle"),
    )
    for number, (step, label) in enumerate(steady, 1):
        count = 30_000
        channels = (
            _channel("signal", Role.SIGNAL, 2.95 + noise(count)),
            _channel("reference", Role.REFERENCE, 5.003 + noise(count)),
            _channel("ground", Role.GROUND, 0.013 + noise(count)),
        )
        records.append(Record(f"{number:03d}", 1 / RATE_HZ, channels, label, step))
    for number in (4, 5):
        time_s, travel = _path(SWEEPS * SWEEP_S, RATE_HZ)
        signal_v = 5.0 * travel / 100 + noise(time_s.size)
        inside = np.flatnonzero((travel > BAND.start) & (travel < BAND.stop))
        for start in rng.choice(inside, 60, replace=False):
            length = int(rng.integers(4, 60))
            signal_v[start : start + length] *= rng.uniform(0.05, 0.7)
        channels = (
            _channel("signal", Role.SIGNAL, signal_v),
            _channel("reference", Role.REFERENCE, 5.003 + noise(time_s.size)),
            _channel("ground", Role.GROUND, 0.013 + noise(time_s.size)),
        )
        label = "Slow sweep" if number == 4 else "Quick sweep"
        records.append(Record(f"{number:03d}", 1 / RATE_HZ, channels, label, Step.SWEEP))
    return Capture(
        "00000000-0000-4000-8000-000000000001",
        tuple(records),
        title="Ride-height sensor, rear left",
        attributes={
            "vehicle": "Halvorsen Fjell 2.4",
            "complaint": "Sits low at the rear after a night",
            "mounting": "rear left",
        },
    )


def worn_findings(capture: Capture | None = None, tick: Tick = ignore) -> Findings:
    """What an examination would say of `worn_capture`."""
    edges = np.linspace(0.0, 100.0, 201)
    centres = 0.5 * (edges[1:] + edges[:-1])
    rng = np.random.default_rng(1)
    crossings, rows, times, paths = [], [], [], []
    for record in ("004", "005"):
        time_s, travel = _path(SWEEPS * SWEEP_S, 200.0)
        paths.append(ArmPath(record, time_s, travel, np.full(time_s.size, 0.2)))
        for sweep in range(SWEEPS):
            direction = Direction.UP if sweep % 2 == 0 else Direction.DOWN
            span = Interval(sweep * SWEEP_S, (sweep + 1) * SWEEP_S)
            crossings.append(Crossing(record, direction, span, Interval(8.0, 92.0)))
            row = np.abs(rng.normal(0.25, 0.12, centres.size))
            inside = (centres > BAND.start) & (centres < BAND.stop)
            row[inside] += rng.gamma(2.0, 6.0, int(inside.sum()))
            row[(centres < 8.0) | (centres > 92.0)] = np.nan
            rows.append(row)
            place = np.flatnonzero(
                (time_s >= span.start) & (time_s < span.stop) & (travel > BAND.start) & (travel < BAND.stop)
            )
            crossing = Interval(float(time_s[place[0]]), float(time_s[place[-1]]))
            times.append(CrossingTime(record, crossing, True, float(np.nanmax(row[inside]))))
    survey = TrackSurvey(Role.SIGNAL, edges, tuple(crossings), np.array(rows), 0.4, tuple(paths))
    ends_s = np.array([0.0, 3.0])
    rests = (ArmPath(f"{n:03d}", ends_s, np.full(2, REST_PERCENT), np.full(2, 0.1)) for n in (1, 2, 3))
    survey = replace(survey, resting=tuple(rests))
    band = Band(BAND, Interval(2.09, 2.37), 0.3, 0.4, 0.98, 12, 12, 36.1, "ground", "004", tuple(times))
    tick(1.0)
    return Findings(
        path="",
        capture_id="00000000-0000-4000-8000-000000000001",
        sha256="",
        analysis_version="test",
        profile="",
        verdict=Verdict(
            VerdictCode.WORN_TRACK,
            0.97,
            "The output breaks up at 41.9–47.7 % of travel on 12 of 12 crossings, in both directions.",
            ("worn resistance track", "dirt on the track"),
        ),
        bands=(band,),
        evidence=(
            Statement(
                "ground_good",
                State.PROVED,
                ("001",),
                "The sensor ground is good: 13 mV against 100 mV allowed.",
            ),
            Statement("reference_good", State.PROVED, ("002",), "The reference is 5.003 V and steady."),
            Statement(
                "harness_quiet", State.PROVED, ("003",), "Nothing moved while the harness was wiggled."
            ),
            Statement(
                "same_spot",
                State.PROVED,
                ("004", "005"),
                "It breaks up at the same spot every time, up and down.",
            ),
            Statement("hold", State.NOT_SHOWN, (), "Held still in the spot, hands off: not shown."),
            Statement("far_end", State.NOT_SHOWN, (), "Wiring between sensor and control unit: not shown."),
        ),
        coverage=(CoverageSpan(Interval(8.0, 92.0), 12),),
        advice=(
            "Hold the arm at 45 % with hands off the harness for 20 s.",
            "Probe the signal at the control unit too.",
        ),
        surveys=(survey,),
        record_outcomes=(
            RecordOutcome("001", Result.PASS, "13 mV, steady"),
            RecordOutcome("002", Result.PASS, "5.003 V, steady"),
            RecordOutcome("003", Result.PASS, "nothing moved"),
            RecordOutcome("004", Result.FAIL, "breaks up on 6 of 6"),
            RecordOutcome("005", Result.FAIL, "breaks up on 6 of 6"),
        ),
    )


SOUND_ID = "00000000-0000-4000-8000-000000000002"


def sound_capture(delay_s: float = 0.0) -> Capture:
    """The same visit with a new sensor, the sweeps begun `delay_s` later after a rest."""
    worn = worn_capture(seed=9)
    rng = np.random.default_rng(10)
    records = []
    for record in worn.records:
        if record.step is not Step.SWEEP:
            records.append(record)
            continue
        _, travel = _path(SWEEPS * SWEEP_S, RATE_HZ)
        travel = np.concatenate([np.full(round(delay_s * RATE_HZ), travel[0]), travel])
        signal = _channel("signal", Role.SIGNAL, 5.0 * travel / 100 + rng.normal(0.0, 0.0015, travel.size))
        channels = [signal]
        for name, role, level_v in (
            ("reference", Role.REFERENCE, 5.003),
            ("ground", Role.GROUND, 0.013),
        ):
            channels.append(_channel(name, role, level_v + rng.normal(0.0, 0.0015, travel.size)))
        records.append(replace(record, channels=tuple(channels)))
    return replace(worn, capture_id=SOUND_ID, records=tuple(records), title="Ride-height sensor, new")


def worn_or_sound(delay_s: float = 0.0) -> Callable[[Capture, Tick], Findings]:
    """An examination that finds the sound capture sound, and every other one worn."""

    def findings(capture: Capture, tick: Tick) -> Findings:
        return sound_findings(delay_s) if capture.capture_id == SOUND_ID else worn_findings(capture, tick)

    return findings


def sound_findings(delay_s: float = 0.0) -> Findings:
    """What an examination would say of `sound_capture`."""
    worn = worn_findings()
    survey = worn.surveys[0]
    paths = []
    for path in survey.paths:
        rest_s = np.arange(0.0, delay_s, 1.0 / 200.0)
        travel = np.concatenate([np.full(rest_s.size, path.travel_percent[0]), path.travel_percent])
        time_s = np.arange(travel.size) / 200.0
        paths.append(ArmPath(path.record, time_s, travel, np.full(travel.size, 0.2)))
    crossings = tuple(
        replace(item, time=Interval(item.time.start + delay_s, item.time.stop + delay_s))
        for item in survey.crossings
    )
    quiet = np.where(np.isnan(survey.breakup_percent), np.nan, 0.0)
    return replace(
        worn,
        capture_id=SOUND_ID,
        verdict=Verdict(VerdictCode.NO_FAULT_FOUND, 0.92, "No fault was seen in 8–92 % of travel."),
        bands=(),
        surveys=(replace(survey, breakup_percent=quiet, crossings=crossings, paths=tuple(paths)),),
        record_outcomes=(),
    )


def wiring_findings() -> Findings:
    """What an examination would say of a broken signal wire: events in time, and no band."""
    events = tuple(
        Event(record, Interval(start_s, start_s + 0.02), (Role.SIGNAL,), -1.8, None, "drop")
        for record, start_s in (("003", 0.8), ("003", 1.9), ("004", 3.1), ("005", 7.2))
    )
    base = worn_findings()
    return Findings(
        path="",
        capture_id=base.capture_id,
        sha256="",
        analysis_version="test",
        profile="",
        verdict=Verdict(
            VerdictCode.SIGNAL_WIRING, 0.91, "The signal drops out wherever the arm is, also at rest."
        ),
        evidence=base.evidence[:2],
        advice=("Wiggle the signal wire along its length while recording.",),
        events=events,
        surveys=base.surveys,
    )


def nothing_found() -> Findings:
    """What an examination says that has nothing to go by."""
    verdict = Verdict(VerdictCode.INCONCLUSIVE, 0.2, "Nothing was swept.")
    return Findings("", "poor", "", "test", "", verdict)
