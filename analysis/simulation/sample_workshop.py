"""What the sample visits share: recorders, the car, the usual round of records. All of it is invented."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from analysis.captures.model import Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.circuit import Circuit, Floats
from analysis.simulation.recorder import Recorder
from analysis.simulation.scenario import THREE, RecordPlan, Scenario
from analysis.simulation.track import Sensor

Attributes = Mapping[str, str | float]
CALM = hand.HandStyle(stroke_s=2.0, spread=0.2, tremor_percent=0.06, stall=0.05, slip=0.0, turn_back=0.0)
FAST = replace(CALM, stroke_s=0.7, pause_s=0.15)
CLUMSY = hand.HandStyle(
    stroke_s=1.2,
    spread=0.5,
    tremor_percent=0.3,
    stall=0.5,
    slip=0.4,
    turn_back=0.4,
    partial=0.3,
    knock_percent=2.0,
    catch_percent=47.0,
)
BENCH = Recorder(rate_hz=5_000.0, bits=12, range_v=10.0, noise_v=0.002, gain_error=0.0012, offset_v=0.002)
POCKET = Recorder(
    rate_hz=2_000.0,
    bits=10,
    range_v=8.0,
    noise_v=0.004,
    spikes_per_s=0.05,
    spike_v=0.3,
    gain_error=-0.003,
    offset_v=-0.004,
    stated_gain_error=0.01,
    stated_offset_error_v=0.02,
)
BENCH_TEXT: Attributes = {
    "recorder": "Lindqvist L4, four channels, 12 bit",
    "recorder_serial": "L4-00871",
    "recorder_calibrated": "2026-03-11",
}
POCKET_TEXT: Attributes = {
    "recorder": "Sundby Pocket, one channel, 10 bit",
    "recorder_serial": "SP1-5520",
    "recorder_calibrated": "2025-09-02",
}
TERN: Attributes = {
    "vehicle": "Halvorsen Tern 4",
    "registration": "HT 4 1187",
    "odometer_km": 148_220,
    "job": "W1041",
    "profile": "ride-height",
    "sensor": "ride height sensor",
    "part_number": "HV 7714 203",
}


@dataclass(frozen=True, slots=True)
class Sample:
    """One sample: file name, seed, date of the visit, and what happens."""

    file: str
    seed: int
    created: str
    scenario: Scenario


def wires(connector: str, colours: tuple[str, str, str]) -> dict[Role, Attributes]:
    """Pins 1 to 3 of a plug: ground, reference, signal."""
    roles = (Role.GROUND, Role.REFERENCE, Role.SIGNAL)
    return {
        role: {
            "connector": connector,
            "pin": str(pin),
            "wire_colour": colour,
            "long_name": f"sensor {role.value}",
        }
        for pin, (role, colour) in enumerate(zip(roles, colours, strict=True), 1)
    }


PROBED: Attributes = {
    "probe_point": "control-unit end",
    "return_point": "battery negative",
    "attenuation": 1.0,
    "coupling": "DC",
}
HEIGHT = Sensor(5_000.0, 90.0, Interval(10.4, 89.8), 52.5, (), 0.02)
HEIGHT_CIRCUIT = Circuit(pull_ohm=330e3, pull_up=False, filter_f=22e-9, series_ohm=220.0)


def plan(step: Step, label: str, path: Floats, roles: tuple[Role, ...], moved: str = "") -> RecordPlan:
    """One record of the usual round."""
    attributes: dict[str, str | float] = {"engine": "off", "temperature": 21.0}
    if moved:
        attributes["moved"] = moved
    return RecordPlan(step, path, roles, label, attributes)


def visit(
    seed: int,
    sensor: Sensor,
    *,
    roles: tuple[Role, ...] = THREE,
    alone: bool = False,
    styles: tuple[tuple[str, int, hand.HandStyle], ...] = (("slowly", 4, CALM), ("quickly", 6, FAST)),
    hold_at: float | None = None,
    bounce_percent: float = 0.0,
    swept: str = "link off, arm swept",
) -> tuple[RecordPlan, ...]:
    """The usual round: ground, reference, wiggle, sweeps, and where asked a hold and the car bounced."""
    rng = np.random.default_rng((seed, 77))
    rest = sensor.rest_percent
    standing = (
        (Step.GROUND, "ground, ignition on", Role.GROUND, 2.0),
        (Step.REFERENCE, "reference, plugged in", Role.REFERENCE, 2.0),
        (Step.WIGGLE, "wiggling the harness from plug to sill", Role.SIGNAL, 6.0),
    )
    taken = [
        plan(step, label, hand.hold(rng, rest, seconds, None, sensor.stops), (role,) if alone else roles)
        for step, label, role, seconds in standing
    ]
    for pace, strokes, style in styles:
        path = hand.sweep(rng, sensor.stops, strokes, style, start=rest)
        taken.append(plan(Step.SWEEP, f"{swept} {pace}".strip(), path, roles, "by hand"))
    if hold_at is not None:
        path = hand.hold(rng, hold_at, 6.0, None, sensor.stops)
        taken.append(plan(Step.HOLD, "clamped, hands off", path, roles))
    if bounce_percent:
        path = hand.bounced(rng, rest, bounce_percent, 6, sensor.stops)
        taken.append(plan(Step.ROAD, "link on, car bounced at the corner", path, roles, "suspension"))
    return tuple(taken)


def scenario(
    sensor: Sensor,
    circuit: Circuit,
    recorder: Recorder,
    plans: tuple[RecordPlan, ...],
    code: VerdictCode,
    story: str,
    attributes: Attributes,
    title: str,
    colours: tuple[str, str, str] = ("brown/black", "yellow/grey", "green/white"),
) -> Scenario:
    """A visit with the recorder's and the car's particulars."""
    text = POCKET_TEXT if recorder is POCKET else BENCH_TEXT
    return Scenario(
        sensor,
        circuit,
        recorder,
        plans,
        code,
        reference_v=5.02,
        ground_v=0.012,
        attributes={**attributes, **text},
        channel_attributes=PROBED,
        wires=wires(str(attributes.get("connector", "X31")), colours),
        title=title,
        story=story,
    )
