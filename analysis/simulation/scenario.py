"""One frozen description of a visit to a sensor; `analysis.simulation.bench` turns it into a capture."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from analysis.captures.model import Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.simulation import track
from analysis.simulation.circuit import Circuit, Floats
from analysis.simulation.disturbances import Interference, SupplyFault, WireFault
from analysis.simulation.measurement_faults import ProbeFault
from analysis.simulation.recorder import Recorder

QUIET = Interference()
THREE = (Role.SIGNAL, Role.REFERENCE, Role.GROUND)


@dataclass(frozen=True, slots=True)
class RecordPlan:
    """One record to be taken.

    Parameters
    ----------
    step : Step or None
        What for; written into the record unless `untold`.
    arm_percent : ndarray, shape (n,)
        The arm's path at `hand.NODE_HZ`; its length is the record's.
    roles : tuple of Role
        What the probes touch.
    label : str
        As the technician wrote it.
    attributes : mapping
        Conditions.
    plugged : bool
        Whether the sensor is plugged in.
    probe : ProbeFault or None
        What is wrong at a probe.
    told : bool
        Whether the file says the step.
    prelude : bool
        Whether the one probe first went through the air, to ground and to the reference in this record.
    second_percent : ndarray, shape (n,), or None
        Path of a second arm, where the second signal is another sensor's; None where one arm moves both.
    """

    step: Step | None
    arm_percent: Floats
    roles: tuple[Role, ...] = THREE
    label: str = ""
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    plugged: bool = True
    probe: ProbeFault | None = None
    told: bool = True
    prelude: bool = False
    second_percent: Floats | None = None


@dataclass(frozen=True, slots=True)
class SecondTrack:
    """A second track on the same arm: its unloaded ratio is ``offset + slope * ratio`` of the first."""

    sensor: track.Sensor
    slope: float = 0.5
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Scenario:
    """Everything that decides a capture but chance.

    Parameters
    ----------
    code, acceptable : VerdictCode, frozenset of VerdictCode
        What a perfect reader says, and what else may be said.
    wires : mapping
        Attributes of single channels: pin and colour of the wire.
    physics : str
        Name of the contact model: ``"main"``, or one of `alternatives.PHYSICS`.
    """

    sensor: track.Sensor
    circuit: Circuit
    recorder: Recorder
    plans: tuple[RecordPlan, ...]
    code: VerdictCode
    acceptable: frozenset[VerdictCode] = frozenset()
    reference_v: float = 5.0
    ground_v: float = 0.015
    supply_v: float = 12.4
    wire: WireFault | None = None
    ground: SupplyFault | None = None
    reference: SupplyFault | None = None
    interference: Interference = QUIET
    second: SecondTrack | None = None
    two_level: bool = False
    physics: str = "main"
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    channel_attributes: Mapping[str, str | float] = field(default_factory=dict)
    wires: Mapping[Role, Mapping[str, str | float]] = field(default_factory=dict)
    title: str = ""
    story: str = ""


def without_bands(scenario: Scenario) -> Scenario:
    """The same visit with a new sensor."""
    return replace(scenario, sensor=replace(scenario.sensor, bands=()))
