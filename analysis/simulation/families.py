"""One recipe for each kind of visit: what is wrong, and what a perfect reader says."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np

from analysis.captures.model import Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.alternatives import CONTACTLESS
from analysis.simulation.disturbances import SupplyFault, WireFault
from analysis.simulation.draws import (
    Visit,
    chance,
    draw_band,
    draw_bands,
    draw_visit,
    log_uniform,
    plans,
    standing,
    still,
)
from analysis.simulation.measurement_faults import ProbeFault, ProbeFaultKind
from analysis.simulation.scenario import THREE, RecordPlan, Scenario, SecondTrack
from analysis.simulation.track import Sensor

Recipe = Callable[[np.random.Generator], Scenario]
SOUND = VerdictCode.NO_FAULT_FOUND
UNSURE = VerdictCode.INCONCLUSIVE


def scenario(
    visit: Visit, taken: tuple[RecordPlan, ...], code: VerdictCode, story: str, *also: VerdictCode
) -> Scenario:
    """A visit with its records and what they should come down to."""
    attributes: dict[str, str | float] = {"profile": visit.profile} if visit.profile else {}
    return Scenario(
        visit.sensor,
        visit.circuit,
        visit.recorder,
        taken,
        code,
        frozenset(also),
        reference_v=visit.reference_v,
        ground_v=visit.ground_v,
        interference=visit.interference,
        attributes=attributes,
        story=story,
    )


def worn(rng: np.random.Generator) -> Scenario:
    """One or two worn bands."""
    visit = draw_visit(rng, nasty=0.08)
    sensor = replace(visit.sensor, bands=draw_bands(rng, visit.sensor))
    visit = replace(visit, sensor=sensor)
    if visit.driving:  # the road shows the travel about the rest height only
        near = replace(draw_band(rng, sensor), travel=_about(rng, sensor.rest_percent))
        visit = replace(visit, sensor=replace(sensor, bands=(near,)))
    focus = float(np.clip(visit.sensor.bands[0].travel.centre, *_ends(visit.sensor)))
    return scenario(visit, plans(rng, visit, focus=focus), VerdictCode.WORN_TRACK, "worn band")


def dirty(rng: np.random.Generator) -> Scenario:
    """Dirt on the track that the first crossings wipe away."""
    visit = replace(draw_visit(rng, nasty=0.05), driving=False)
    visit = replace(visit, crossings=int(rng.integers(6, 13)))
    band = replace(draw_band(rng, visit.sensor, wiped=rng.uniform(0.25, 0.6)), severity=rng.uniform(0.6, 1.0))
    visit = replace(visit, sensor=replace(visit.sensor, bands=(band,)))
    return scenario(visit, plans(rng, visit), VerdictCode.WORN_TRACK, "dirt, wiped by the sweep", UNSURE)


# Profile, stops and rest of the first track in %, slope and offset of the second: Mazda CX-30 2019 (2:1),
# Mazda6 2011 (0.55 V lower), Mazda CX-9 (one falls while the other rises), service information.
PEDALS = (
    ("pedal", Interval(16.0, 91.0), 16.4, 0.5, 0.0),
    ("pedal-offset", Interval(31.5, 78.0), 32.0, 1.0, -0.11),
    ("pedal-inverted", Interval(15.0, 84.0), 83.5, -1.0, 1.0),
)


def two_tracks(rng: np.random.Generator) -> Scenario:
    """A pedal with two tracks (2:1, offset or inverted), one of them worn or none."""
    pedal = PEDALS[int(rng.integers(0, len(PEDALS)))]
    profile, stops, rest, slope, offset = pedal
    visit = replace(draw_visit(rng, nasty=0.08), driving=False, profile=profile, layout="full")
    sensor = replace(visit.sensor, stops=stops, rest_percent=rest)
    ends = sorted(100.0 * offset + slope * place for place in (stops.start, stops.stop))
    other = Sensor(visit.sensor.track_ohm, 100.0, Interval(ends[0], ends[1]), 50.0, (), 0.03)
    which = int(rng.integers(0, 3))
    if which == 1:
        sensor = replace(sensor, bands=(draw_band(rng, sensor),))
    if which == 2:
        band = draw_band(rng, other)
        other = replace(other, bands=(band,))
    roles = (Role.SIGNAL, Role.SECOND_SIGNAL, Role.REFERENCE, Role.GROUND)
    visit = replace(visit, sensor=sensor, roles=roles)
    code = VerdictCode.WORN_TRACK if which else SOUND
    made = scenario(
        visit, plans(rng, visit), code, "two tracks, " + ("sound", "first worn", "second worn")[which]
    )
    return replace(made, second=SecondTrack(other, slope, offset))


def contactless(rng: np.random.Generator) -> Scenario:
    """A sensor without a contact whose output clamps, jumps or sticks at a place, or is sound."""
    visit = replace(draw_visit(rng, nasty=0.08), driving=False, profile="ride-height-contactless")
    visit = replace(visit, sensor=replace(visit.sensor, rest_percent=rng.uniform(38.0, 62.0)))
    if chance(rng, 0.25):
        return scenario(visit, plans(rng, visit), SOUND, "contactless, sound")
    band = draw_band(rng, visit.sensor)
    visit = replace(visit, sensor=replace(visit.sensor, bands=(band,)))
    physics = list(CONTACTLESS)[int(rng.integers(0, len(CONTACTLESS)))]
    made = scenario(visit, plans(rng, visit), VerdictCode.SENSOR_OUTPUT_FAULT, f"contactless, {physics}")
    return replace(made, physics=physics)


def sound(rng: np.random.Generator) -> Scenario:
    """A sound sensor, with every confounder often."""
    visit = draw_visit(rng, nasty=0.25)
    focus = rng.uniform(30.0, 70.0) if chance(rng, 0.3) else None
    return scenario(visit, plans(rng, visit, focus=focus), SOUND, "sound sensor")


def signal_wiring(rng: np.random.Generator) -> Scenario:
    """A signal wire that opens, corrodes or shorts now and then."""
    visit = draw_visit(rng, nasty=0.06)
    kind = str(rng.choice(["random", "random", "moving", "moving", "wiggle", "loom"]))
    if kind in ("wiggle", "loom"):
        visit = replace(visit, layout="full", told=True)
    corroded = chance(rng, 0.25)
    shorted = not corroded and chance(rng, 0.2)
    wire = WireFault(
        kind,
        per_s=log_uniform(rng, 0.5, 3.0),
        burst_s=log_uniform(rng, 0.003, 0.25),
        ohm=log_uniform(rng, 200e3, 2e6) if corroded else 1e9,
        chatter_s=0.0 if chance(rng, 0.4) else log_uniform(rng, 0.0003, 0.01),
        short_to_v=float(rng.choice([0.0, 5.0])) if shorted else None,
        place_percent=rng.uniform(60.0, 85.0),
    )
    story = f"signal wire, {kind}" + (", shorted" if shorted else ", corroded" if corroded else "")
    also = (VerdictCode.WORN_TRACK,) if kind == "loom" else ()
    made = scenario(visit, plans(rng, visit), VerdictCode.SIGNAL_WIRING, story, *also)
    if not (corroded or shorted or kind == "loom") and chance(rng, 0.2):
        # A plug that has corroded through is never open and never good: it drops part of the pull's voltage.
        ohm = rng.uniform(0.08, 0.6) / made.circuit.load_s
        wire = replace(wire, kind="random", ohm=ohm, wander=rng.uniform(0.3, 0.8))
        made = replace(made, story="signal wire, high resistance all the time")
    return replace(made, wire=wire)


def _three_wires(rng: np.random.Generator, nasty: float) -> Visit:
    """A visit that can show a fault of ground or reference at all, with room above 5 V."""
    visit = draw_visit(rng, nasty=nasty)
    range_v, bits = max(visit.recorder.range_v, 10.0), max(visit.recorder.bits, 10)
    recorder = replace(visit.recorder, range_v=range_v, bits=bits)
    return replace(visit, recorder=recorder, roles=THREE)


def _wire_to_wire(rng: np.random.Generator) -> str:
    """A layout in which one channel goes from wire to wire."""
    return "long" if chance(rng, 0.3) else "full"


def reference_fault(rng: np.random.Generator) -> Scenario:
    """A reference that is low, high, dips or sags under load."""
    visit = _three_wires(rng, 0.06)
    kind = str(rng.choice(["static", "static", "intermittent", "intermittent", "load"]))
    low = chance(rng, 0.7) or kind != "static"
    volts = -log_uniform(rng, 0.35, 4.0) if low else log_uniform(rng, 0.35, 2.5)
    if kind == "static" and chance(rng, 0.4):
        visit = replace(visit, roles=(Role.SIGNAL,), layout=_wire_to_wire(rng))
    fault = SupplyFault(kind, volts, log_uniform(rng, 0.4, 2.0), log_uniform(rng, 0.01, 0.5))
    made = scenario(
        visit, plans(rng, visit), VerdictCode.REFERENCE_FAULT, f"reference, {kind}, {volts:+.2f} V"
    )
    return replace(made, reference=fault)


def ground_fault(rng: np.random.Generator) -> Scenario:
    """A ground that is lifted for good, now and then, or by the current of other consumers."""
    visit = _three_wires(rng, 0.06)
    kind = str(rng.choice(["static", "static", "intermittent", "intermittent", "load"]))
    volts = log_uniform(rng, 0.2, 2.5)
    if kind == "static" and chance(rng, 0.4):
        visit = replace(visit, roles=(Role.SIGNAL,), layout=_wire_to_wire(rng))
    fault = SupplyFault(kind, volts, log_uniform(rng, 0.4, 2.0), log_uniform(rng, 0.01, 0.5))
    made = scenario(visit, plans(rng, visit), VerdictCode.GROUND_FAULT, f"ground, {kind}, {volts:+.2f} V")
    return replace(made, ground=fault)


def out_of_range(rng: np.random.Generator) -> Scenario:
    """A sensor that tells the truth about an arm or a link that stands where it should not."""
    visit = replace(
        draw_visit(rng, nasty=0.06), driving=False, profile="ride-height", layout="full", told=True
    )
    if chance(rng, 0.5):
        stops, rest = Interval(rng.uniform(0.5, 1.5), rng.uniform(45.0, 70.0)), rng.uniform(1.6, 3.0)
    else:
        stops, rest = Interval(rng.uniform(30.0, 55.0), rng.uniform(98.5, 99.5)), rng.uniform(97.0, 98.4)
    visit = replace(visit, sensor=replace(visit.sensor, stops=stops, rest_percent=rest))
    taken = plans(rng, visit)
    rested = RecordPlan(Step.HOLD, still(rng, visit, rest, 3.0), visit.roles)
    return scenario(visit, (*taken, rested), VerdictCode.OUT_OF_RANGE, "arm stands at its end")


def measurement_problem(rng: np.random.Generator) -> Scenario:
    """The capture is no measurement of the sensor."""
    visit = replace(draw_visit(rng, nasty=0.06), driving=False)
    visit = replace(visit, layout="full" if chance(rng, 0.6) else "single", told=True)
    kinds = [*ProbeFaultKind, "clipped", "not moved", "unplugged", "asleep", "two level"]
    kind = kinds[int(rng.integers(0, len(kinds)))]
    if isinstance(kind, ProbeFaultKind):
        return _probe_fault(rng, visit, kind)
    return _useless(rng, visit, kind)


def _probe_fault(rng: np.random.Generator, visit: Visit, kind: ProbeFaultKind) -> Scenario:
    if kind is ProbeFaultKind.POOR_RETURN:
        visit = replace(visit, roles=THREE)
    if kind in (ProbeFaultKind.ATTENUATION, ProbeFaultKind.SWAPPED):
        visit = replace(visit, recorder=replace(visit.recorder, range_v=max(visit.recorder.range_v, 10.0)))
    begin = rng.uniform(0.2, 0.7) if kind is ProbeFaultKind.SLIPPED_OFF else 0.0
    factor = float(rng.choice([0.1, 0.1, 10.0]))
    fault = ProbeFault(kind, Role.SIGNAL, begin, factor)
    taken = plans(rng, visit, probe=fault)
    if kind is not ProbeFaultKind.SLIPPED_OFF:  # a wrong setting holds for every record
        taken = tuple(replace(plan, probe=replace(fault, role=_own(plan, fault.role))) for plan in taken)
    return scenario(visit, taken, VerdictCode.MEASUREMENT_PROBLEM, f"probe: {kind.value}")


def _own(plan: RecordPlan, role: Role) -> Role:
    """The probe's role in a record, where one channel moves from wire to wire."""
    return plan.roles[0] if len(plan.roles) == 1 else role


def _useless(rng: np.random.Generator, visit: Visit, kind: str) -> Scenario:
    if kind == "clipped":
        visit = replace(visit, recorder=replace(visit.recorder, range_v=float(rng.choice([1.0, 2.0, 3.0]))))
    taken = plans(rng, visit)
    if kind == "not moved":
        place = visit.sensor.rest_percent
        taken = tuple(
            replace(plan, arm_percent=np.full_like(plan.arm_percent, place), told=True) for plan in taken
        )
    if kind == "unplugged":
        taken = tuple(replace(plan, plugged=False, told=True) for plan in taken)
    made = scenario(visit, taken, VerdictCode.MEASUREMENT_PROBLEM, kind)
    if kind == "asleep":
        return replace(made, reference_v=rng.uniform(0.0, 0.05))
    return replace(made, two_level=kind == "two level")


def inconclusive(rng: np.random.Generator) -> Scenario:
    """Too slow, too little travel, or a single crossing."""
    visit = replace(draw_visit(rng, nasty=0.05), driving=False)
    kind = int(rng.integers(0, 3))
    if kind == 0:
        slow = replace(visit.recorder, rate_hz=float(rng.choice([10.0, 20.0, 40.0])), gaps_per_s=0.0)
        visit = replace(visit, recorder=slow)
        return scenario(visit, plans(rng, visit), UNSURE, "sampled too slowly")
    if kind == 1:
        return _little_travel(rng, visit)
    band = replace(draw_band(rng, visit.sensor), severity=rng.uniform(0.6, 1.0))
    visit = replace(visit, sensor=replace(visit.sensor, bands=(band,)), layout="single")
    style = replace(visit.style, turn_back=0.0, partial=0.0)
    path = hand.sweep(rng, visit.sensor.stops, 1, style)
    taken = (RecordPlan(Step.SWEEP, path, visit.roles),)
    return scenario(visit, taken, UNSURE, "crossed once", VerdictCode.WORN_TRACK)


def _little_travel(rng: np.random.Generator, visit: Visit) -> Scenario:
    """Sweeps that stay away from where a ride-height sensor rests."""
    visit = replace(visit, profile="ride-height")
    stops = visit.sensor.stops
    part = Interval(stops.start, rng.uniform(20.0, 28.0))
    if chance(rng, 0.5):
        part = Interval(rng.uniform(72.0, 80.0), stops.stop)
    style = replace(visit.style, knock_percent=0.0)
    path = hand.sweep(rng, part, int(rng.integers(2, 6)), style)
    swept = RecordPlan(Step.SWEEP, path, visit.roles)
    taken = (swept,) if visit.layout != "full" else (*_away(rng, visit, part), swept)
    return scenario(visit, taken, UNSURE, "rest height not visited", SOUND)


def _away(rng: np.random.Generator, visit: Visit, part: Interval) -> tuple[RecordPlan, ...]:
    """The standing records, the arm resting inside the part that is swept."""
    moved = replace(visit, sensor=replace(visit.sensor, rest_percent=part.centre))
    return standing(rng, moved)


def _about(rng: np.random.Generator, rest_percent: float) -> Interval:
    width = log_uniform(rng, 0.8, 6.0)
    start = rest_percent + rng.uniform(-3.0, 3.0) - 0.5 * width
    return Interval(start, start + width)


def _ends(sensor: Sensor) -> tuple[float, float]:
    return sensor.stops.start + 0.5, sensor.stops.stop - 0.5


FAMILIES: dict[str, tuple[float, Recipe]] = {
    "worn": (0.27, worn),
    "dirty": (0.02, dirty),
    "two_tracks": (0.05, two_tracks),
    "contactless": (0.03, contactless),
    "sound": (0.23, sound),
    "signal_wiring": (0.12, signal_wiring),
    "reference_fault": (0.07, reference_fault),
    "ground_fault": (0.07, ground_fault),
    "measurement_problem": (0.07, measurement_problem),
    "out_of_range": (0.03, out_of_range),
    "inconclusive": (0.04, inconclusive),
}
