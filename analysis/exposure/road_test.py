"""The road test counted off against road records: how far each was driven, and whether the fault came.

A distance is the record's own where it states one, else its speed times its length. Where it states neither,
the chosen speed stands in, unless the engine is said to have been off: a car that is bounced in the workshop
is not driven. A record counts where a control unit would have stored no code and nothing disturbed the signal
in the band.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from analysis.captures.model import Capture, Record, Step
from analysis.captures.record_names import number_of, record_at_first, record_name, record_names
from analysis.control_unit.rules import ControlUnit
from analysis.control_unit.stand_in import replay_record
from analysis.diagnosis.findings import Band, Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.errors import ControlUnitError
from analysis.exposure.from_record import SPEED_KEY, events_in, stated
from analysis.progress import Tick, ignore
from analysis.wording import Template, Wording, say

SAID: Mapping[str, Template] = {
    "stated": Template("as the record states"),
    "stated_speed": Template("{time_s:.0f} s at {speed:g} km/h, as the record states"),
    "chosen_speed": Template("{time_s:.0f} s at {speed:g} km/h, as chosen: the record states no speed"),
    "not_known": Template("not known"),
    "not_judged": Template("the control unit cannot judge it: {problem}"),
    "no_signal": Template("it holds no signal"),
    "code_stored": Template("a code would have been stored at {time_s:.1f} s"),
    "disturbed": Template("the signal was disturbed in the band, {events:d} times"),
    "no_distance": Template("it states no distance or speed, and the engine was off"),
    "no_road": Template("no record was taken on a road"),
}
"""Where a distance is from, and what speaks against counting a record, by the code that a review keeps."""

NOTHING_AGAINST = say("")
"""Of a record that counts."""

DISTANCE_KEY = "distance_km"
"""Attribute of a record that says how far was driven; optional."""


@dataclass(frozen=True, slots=True)
class CountedRecord:
    """One road record of a road test.

    Parameters
    ----------
    record, label : str
        Name and label of the record.
    km : float
        Driven; NaN where that is not known.
    how : Wording
        Where the distance is from; one of `SAID`.
    against : Wording
        Why it does not count; one of `SAID`, or `NOTHING_AGAINST`, which is empty, where it does.
    number : int or None
        Which of several road records of its capture, from 1; 0 where it is the only one, None where that is
        not known.
    """

    record: str
    label: str
    km: float
    how: Wording
    against: Wording
    number: int | None = None

    @property
    def counted_km(self) -> float:
        """What it counts."""
        return 0.0 if self.against else self.km

    @property
    def words(self) -> Wording:
        """The record in one line; of a capture without one, that it has none."""
        if not self.record:
            return say("{why}", why=self.against)
        name = record_at_first(self.record) if self.number is None else record_name(Step.ROAD, self.number)
        if self.label:
            name = say("{record} ({label})", record=name, label=self.label)
        if self.against:
            return say("{name}: does not count, {why}", name=name, why=self.against)
        return say("{name}: {km:.2f} km, {how}", name=name, km=self.km, how=self.how)


def counted_records(
    capture: Capture,
    findings: Findings,
    profile: SensorProfile,
    unit: ControlUnit,
    *,
    band: Band | None = None,
    speed_km_h: float | None = None,
    tick: Tick = ignore,
) -> tuple[CountedRecord, ...]:
    """Count a capture's road records off.

    Parameters
    ----------
    capture, findings, profile : Capture, Findings, SensorProfile
        After the repair.
    unit : ControlUnit
        Whose rules judge whether the fault came.
    band : Band or None
        Of the capture before the repair; None looks at codes alone.
    speed_km_h : float or None
        How fast was driven where a record does not say; None leaves such a record out.
    tick : Tick
        Progress.

    Returns
    -------
    tuple of CountedRecord
        In the order of the capture; empty where no record was taken on a road.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    """
    found, names = [], record_names(capture)
    for record in capture.records:
        if record.step is not Step.ROAD or not len(record):
            continue
        km, how = _distance(record, speed_km_h)
        reasons = _against(record, findings, profile, unit, band, km, tick)
        against, number = next(reasons, NOTHING_AGAINST), number_of(names[record.name])
        found.append(CountedRecord(record.name, record.label, km, how, against, number))
    return tuple(found)


def no_road() -> CountedRecord:
    """What stands for a capture that no record was taken on a road in."""
    return CountedRecord("", "", math.nan, SAID["not_known"](), SAID["no_road"]())


def total_km(records: Sequence[CountedRecord]) -> float:
    """Kilometres without a fault."""
    return math.fsum(item.counted_km for item in records)


def _distance(record: Record, chosen_km_h: float | None) -> tuple[float, Wording]:
    attributes, hours = record.attributes, record.duration_s / 3_600.0
    distance_km, speed_km_h = stated(attributes.get(DISTANCE_KEY)), stated(attributes.get(SPEED_KEY))
    if distance_km > 0.0:
        return distance_km, SAID["stated"]()
    if speed_km_h > 0.0:
        return speed_km_h * hours, SAID["stated_speed"](time_s=record.duration_s, speed=speed_km_h)
    if chosen_km_h is None or attributes.get("engine") == "off":
        return math.nan, SAID["not_known"]()
    return chosen_km_h * hours, SAID["chosen_speed"](time_s=record.duration_s, speed=chosen_km_h)


def _against(
    record: Record,
    findings: Findings,
    profile: SensorProfile,
    unit: ControlUnit,
    band: Band | None,
    km: float,
    tick: Tick,
) -> Iterator[Wording]:
    """What speaks against counting a record, the weightiest first."""
    try:
        played = replay_record(record, findings, profile, unit, tick)
    except ControlUnitError as error:
        yield SAID["not_judged"](problem=error.problem)
        return
    if played is None:
        yield SAID["no_signal"]()
    elif played.first is not None:
        yield SAID["code_stored"](time_s=played.first[1])
    events = events_in(findings, record.name, band) if band is not None else 0
    if events:
        yield SAID["disturbed"](events=events)
    if not math.isfinite(km):
        yield SAID["no_distance"]()
