"""What the examination says: frozen values, one for each thing a reader can point at.

`analysis.diagnosis.serialise` writes them as the JSON contract; the views and the report read them here.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.intervals import Interval
from analysis.signals.facts import ArmPath, Crossing, Direction, TrackSurvey
from analysis.wording import Template

__all__ = [
    "ArmPath",
    "Band",
    "BandBasis",
    "Check",
    "CoverageSpan",
    "Crossing",
    "CrossingTime",
    "Direction",
    "Event",
    "Findings",
    "FoundSpot",
    "RecordOutcome",
    "Result",
    "State",
    "Statement",
    "TrackSurvey",
    "Verdict",
    "VerdictCode",
]


class VerdictCode(StrEnum):
    """The one word that the findings come down to."""

    WORN_TRACK = "worn_track"
    SENSOR_OUTPUT_FAULT = "sensor_output_fault"
    SIGNAL_WIRING = "signal_wiring"
    REFERENCE_FAULT = "reference_fault"
    GROUND_FAULT = "ground_fault"
    OUT_OF_RANGE = "out_of_range"
    MEASUREMENT_PROBLEM = "measurement_problem"
    NO_FAULT_FOUND = "no_fault_found"
    INCONCLUSIVE = "inconclusive"


class Result(StrEnum):
    """Outcome of a check against its limits (JCGM 106)."""

    PASS = "pass"
    FAIL = "fail"
    CANNOT_TELL = "cannot_tell"


class State(StrEnum):
    """State of one statement of evidence."""

    PROVED = "proved"
    REFUTED = "refuted"
    NOT_SHOWN = "not_shown"


@dataclass(frozen=True, slots=True)
class CrossingTime:
    """When a band was crossed: the record, the time in seconds, and whether the output broke up."""

    record: str
    time: Interval
    noisy: bool
    breakup_percent: float


@dataclass(frozen=True, slots=True)
class Band:
    """An interval of travel where the output breaks up on most crossings.

    Parameters
    ----------
    travel : Interval
        Edges in % of electrical travel.
    volts : Interval
        The same edges as signal volts against sensor ground.
    start_uncertainty_percent, stop_uncertainty_percent : float
        Expanded uncertainty (k = 2) of each edge, in % of travel.
    confidence : float
        Calibrated probability that the band is there.
    passes, noisy_passes : int
        Crossings, and those on which the output broke up.
    output_smoothness_percent : float
        Worst departure inside the band, in % of the applied voltage.
    falls_towards : str
        ``"ground"``, ``"reference"`` or ``"both"``.
    record : str
        The record that shows it best.
    crossings : tuple of CrossingTime
        Every crossing of the band, in the order of the capture.
    track : Role
        Which track it is on.
    """

    travel: Interval
    volts: Interval
    start_uncertainty_percent: float
    stop_uncertainty_percent: float
    confidence: float
    passes: int
    noisy_passes: int
    output_smoothness_percent: float
    falls_towards: str
    record: str
    crossings: tuple[CrossingTime, ...]
    track: Role = Role.SIGNAL


@dataclass(frozen=True, slots=True)
class Event:
    """A disturbance at a time, with its place on the travel where that is known.

    Parameters
    ----------
    record : str
        Name of the record.
    time : Interval
        Begin and end, in seconds.
    roles : tuple of Role
        Channels that it stands on.
    depth_v : float
        Largest departure from the undisturbed course, in volts; negative towards ground.
    travel_percent : float or None
        Where the arm was.
    shape : str
        ``"drop"``, ``"rise"``, ``"ringing"``, ``"spike"``.
    in_band : bool
        Whether it lies in a found band.
    """

    record: str
    time: Interval
    roles: tuple[Role, ...]
    depth_v: float
    travel_percent: float | None
    shape: str
    in_band: bool = False


@dataclass(frozen=True, slots=True)
class Check:
    """One reading against its limits.

    Parameters
    ----------
    code : str
        ``"ground_drop"``, ``"reference_level"``, ...
    record : str
        The record that it was read from; empty for a check over the whole capture.
    value, expanded_uncertainty : float
        In `unit`; the uncertainty with k = 2 (JCGM 100).
    lower_limit, upper_limit : float or None
        In `unit`; None where that side is open.
    result : Result
        Decided by the probability of conformance (JCGM 106).
    source : str
        Whose limit it is.
    title : str
        What was read, for people.
    conformance : float or None
        Probability that the true value keeps the limits, given the reading (JCGM 106:2012, clause 7), which
        the result follows from. None without a limit, or where the reading is not of what the limit is
        about, as of an end that the arm did not reach.
    note : str
        What the reading leaves out, in a sentence; empty where it leaves out nothing that a reader must know.
        Where `unread`, why.
    """

    code: str
    record: str
    value: float
    expanded_uncertainty: float
    unit: str
    lower_limit: float | None
    upper_limit: float | None
    result: Result
    source: str
    title: str = ""
    conformance: float | None = None
    note: str = ""

    @property
    def unread(self) -> bool:
        """Whether the reading is not the wire's: no limit judges it, and nothing is compared with it."""
        return self.result is Result.CANNOT_TELL and self.conformance is None and bool(self.note)


@dataclass(frozen=True, slots=True)
class Statement:
    """One link of the chain of evidence."""

    code: str
    state: State
    records: tuple[str, ...]
    text: str


@dataclass(frozen=True, slots=True)
class CoverageSpan:
    """A stretch of travel that was tested, and how often."""

    travel: Interval
    passes: int


@dataclass(frozen=True, slots=True)
class Verdict:
    """What it comes down to.

    Parameters
    ----------
    code : VerdictCode
        One of the nine.
    confidence : float
        Calibrated probability that the verdict is right.
    summary : str
        One plain sentence.
    possible_causes : tuple of str
        What may lie behind it, likeliest first.
    """

    code: VerdictCode
    confidence: float
    summary: str
    possible_causes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class RecordOutcome:
    """What one record showed, in one line, for the list of records.

    Parameters
    ----------
    record : str
        Name of the record.
    result : Result
        Pass: as it should be; fail: shows a fault; cannot tell: neither.
    text : str
        One line: ``"13 mV, steady"``.
    """

    record: str
    result: Result
    text: str


@dataclass(frozen=True, slots=True)
class FoundSpot:
    """A stretch (% of travel) that was looked at as a band, and its log odds of place against time."""

    track: Role
    travel: Interval
    log_odds: float


@dataclass(frozen=True, slots=True)
class BandBasis:
    """What every band of a capture is judged by, kept so that another stretch can be judged like them.

    Parameters
    ----------
    measurement, reference_dips, ground_lifts, reference_level, at_rest, gathered, slow : float
        Of the whole capture, as in `analysis.diagnosis.hypotheses.Features`.
    worn : float
        Probability that a track is worn, of the capture as a whole.
    feed_v : float
        Signal volts above ground at 100 % of travel: reference above ground, for a ratiometric sensor.
    ground_v : float
        Sensor ground against the recorder's return, for the records that did not watch it.
    spots : tuple of FoundSpot
        All stretches that were looked at as bands, most certain first.
    pushes : mapping of Role to ndarray, shape (n, 3)
        Disturbances of each track: where (% of travel), and how far up and down (% of the applied voltage).
    """

    measurement: float
    reference_dips: float
    ground_lifts: float
    worn: float
    feed_v: float
    reference_level: float = 0.0
    at_rest: float = 0.0
    gathered: float = 0.0
    slow: float = 0.0
    ground_v: float = 0.0
    spots: tuple[FoundSpot, ...] = ()
    pushes: Mapping[Role, NDArray[np.float64]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Part:
    """A span that the examination took out of a lone record: one probe went from wire to wire.

    Parameters
    ----------
    record : str
        Name of the record.
    time : Interval
        In the record's seconds.
    step : Step or None
        What the span was taken for.
    role : Role or None
        What the probe touched.
    """

    record: str
    time: Interval
    step: Step | None
    role: Role | None


MEASURE_AGAIN = Template("{record}: {action}.")
"""The advice that names a record, as `analysis.captures.record_names.record_at_first` does."""


@dataclass(frozen=True, slots=True)
class Findings:
    """Everything that `examine` says of one capture, with how it was made.

    The `basis` lets `analysis.diagnosis.assess` judge a stretch of the technician's own; it is not part of
    what is written for other programs.
    """

    path: str
    capture_id: str
    sha256: str
    analysis_version: str
    profile: str
    verdict: Verdict
    bands: tuple[Band, ...] = ()
    checks: tuple[Check, ...] = ()
    evidence: tuple[Statement, ...] = ()
    coverage: tuple[CoverageSpan, ...] = ()
    advice: tuple[str, ...] = ()
    events: tuple[Event, ...] = ()
    surveys: tuple[TrackSurvey, ...] = ()
    record_outcomes: tuple[RecordOutcome, ...] = ()
    events_complete: bool = True
    basis: BandBasis | None = None
    parts: tuple[Part, ...] = ()
