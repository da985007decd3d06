"""The visits behind the sample captures. Vehicles, makers, codes and recorders are invented."""

from __future__ import annotations

from dataclasses import replace

from analysis.captures.model import Role
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation.circuit import Circuit
from analysis.simulation.disturbances import Interference, SupplyFault, WireFault
from analysis.simulation.measurement_faults import ProbeFault, ProbeFaultKind
from analysis.simulation.sample_pairs import both_rear_corners, partly_checked
from analysis.simulation.sample_workshop import (
    BENCH,
    CALM,
    CLUMSY,
    FAST,
    HEIGHT,
    HEIGHT_CIRCUIT,
    POCKET,
    TERN,
    Sample,
    scenario,
    visit,
)
from analysis.simulation.scenario import Scenario, SecondTrack, without_bands
from analysis.simulation.track import Sensor, WornBand


def _rear_left() -> Scenario:
    band = WornBand(
        Interval(42.6, 48.9), severity=0.6, soft_percent=0.6, grain_percent=0.09, lean_percent=0.06
    )
    sensor = replace(HEIGHT, bands=(band,))
    return scenario(
        sensor,
        HEIGHT_CIRCUIT,
        BENCH,
        visit(1041, sensor, hold_at=45.8, bounce_percent=13.0),
        VerdictCode.WORN_TRACK,
        "The track is worn where the wiper stands with a loaded boot.",
        {
            **TERN,
            "profile": "halvorsen-tern-rear-left",
            "mounting": "rear left",
            "complaint": "warning lamp over bumps, tail drops overnight",
            "fault_codes": "RH-214",
            "note": "link and bracket looked at, straight and tight",
        },
        "Ride height sensor rear left",
    )


def _rear_left_after() -> Scenario:
    before = without_bands(_rear_left())
    styles = (("slowly", 6, CALM), ("quickly", 8, FAST))
    return replace(
        before,
        # More strokes than before the repair: a cure is shown by at least as many crossings.
        plans=visit(1042, HEIGHT, styles=styles, hold_at=45.8, bounce_percent=13.0),
        code=VerdictCode.NO_FAULT_FOUND,
        story="The same position with a new sensor.",
        title="Ride height sensor rear left, new sensor fitted",
        attributes={
            **before.attributes,
            "complaint": "check after repair",
            "fault_codes": "none",
            "note": "new sensor fitted, height learnt again",
        },
    )


def _rear_right() -> Scenario:
    sensor = replace(HEIGHT, stops=Interval(10.2, 89.6), rest_percent=47.5, track_ohm=4_900.0)
    return scenario(
        sensor,
        HEIGHT_CIRCUIT,
        BENCH,
        visit(1043, sensor, bounce_percent=-13.0),
        VerdictCode.NO_FAULT_FOUND,
        "The other side of the axle, sound; its arm points the other way, so it falls as the body rises.",
        {
            **TERN,
            "profile": "halvorsen-tern-rear-right",
            "mounting": "rear right",
            "complaint": "taken to compare with the left side",
        },
        "Ride height sensor rear right",
    )


def _front_right() -> Scenario:
    circuit = replace(HEIGHT_CIRCUIT, pull_ohm=220e3, pull_up=True, filter_f=10e-9)
    made = scenario(
        HEIGHT,
        circuit,
        BENCH,
        visit(1057, HEIGHT),
        VerdictCode.SIGNAL_WIRING,
        "A strand of the signal wire is broken near the plug: it opens when the harness or the arm moves.",
        {
            **TERN,
            "vehicle": "Halvorsen Tern 4 Estate",
            "registration": "HT 4 2903",
            "odometer_km": 96_410,
            "job": "W1057",
            "mounting": "front right",
            "complaint": "headlamps dip on full lock",
            "fault_codes": "RH-221",
        },
        "Ride height sensor front right",
    )
    wire = WireFault("moving", per_s=0.9, burst_s=0.06, chatter_s=0.002)
    return replace(made, wire=wire)


def _rear_right_other() -> Scenario:
    made = scenario(
        HEIGHT,
        HEIGHT_CIRCUIT,
        BENCH,
        visit(1063, HEIGHT),
        VerdictCode.GROUND_FAULT,
        "The ground point behind the trim is rusty: sensor ground lifts with the current of other consumers.",
        {
            **TERN,
            "vehicle": "Corrigan Ardent 2.2",
            "registration": "CA 22 714",
            "odometer_km": 203_900,
            "job": "W1063",
            "mounting": "rear right",
            "complaint": "stands crooked after rain",
            "fault_codes": "RH-230, RH-231",
            "part_number": "CR 55 0193",
        },
        "Ride height sensor rear right",
    )
    return replace(made, ground=SupplyFault("load", 0.62, 0.25, 0.8))


def _throttle() -> Scenario:
    sensor = Sensor(3_000.0, 70.0, Interval(10.0, 88.0), 10.6, (), 0.02)
    made = scenario(
        sensor,
        Circuit(pull_ohm=470e3, pull_up=False, filter_f=4.7e-9, series_ohm=100.0),
        BENCH,
        visit(1068, sensor, swept="throttle opened and closed"),
        VerdictCode.REFERENCE_FAULT,
        "Another sensor on the same feed pulls the reference down now and then.",
        {
            "vehicle": "Corrigan Ardent 1.6",
            "registration": "CA 16 388",
            "odometer_km": 121_050,
            "job": "W1068",
            "profile": "throttle",
            "sensor": "throttle position sensor",
            "part_number": "CR 61 0044",
            "connector": "M12",
            "complaint": "hesitates, idle hunts",
            "fault_codes": "TH-108",
        },
        "Throttle position sensor",
        ("black", "red/blue", "blue"),
    )
    sagging = SupplyFault("intermittent", -1.7, 0.6, 0.12)
    return replace(made, reference=sagging, interference=Interference(ripple_v=0.008, ripple_hz=820.0))


def _front_left() -> Scenario:
    band = WornBand(Interval(60.3, 64.1), severity=0.75, grain_percent=0.08, slow=0.25)
    sensor = replace(HEIGHT, track_ohm=2_000.0, stops=Interval(9.7, 90.2), rest_percent=49.0, bands=(band,))
    circuit = Circuit(pull_ohm=100e3, pull_up=True, filter_f=47e-9)
    styles = (("slowly", 4, CALM), ("quickly", 6, FAST), ("once more, slowly", 4, CALM))
    return scenario(
        sensor,
        circuit,
        POCKET,
        visit(1072, sensor, roles=(Role.SIGNAL,), alone=True, styles=styles, hold_at=62.0),
        VerdictCode.WORN_TRACK,
        "A recorder of one channel went from wire to wire; the track is worn.",
        {
            "vehicle": "Varsund Kite LWB",
            "registration": "VK 70 515",
            "odometer_km": 187_600,
            "job": "W1072",
            "profile": "ride-height",
            "sensor": "ride height sensor",
            "part_number": "VA-88-2140",
            "mounting": "front left",
            "complaint": "air suspension locks itself out",
            "fault_codes": "AS-041",
        },
        "Ride height sensor front left",
    )


def _rear_left_clumsy() -> Scenario:
    sensor = replace(HEIGHT, rest_percent=50.5)
    styles = (("", 6, CLUMSY), ("again", 5, replace(CLUMSY, stroke_s=0.8)))
    made = scenario(
        sensor,
        HEIGHT_CIRCUIT,
        replace(BENCH, bits=8, noise_v=0.006, noise_growth=1.5, spikes_per_s=0.2, spike_v=0.8),
        visit(1080, sensor, styles=styles),
        VerdictCode.NO_FAULT_FOUND,
        "A sound sensor, swept by an unsteady hand with a link that catches; sparks stand on every probe.",
        {
            **TERN,
            "registration": "HT 4 3360",
            "odometer_km": 61_730,
            "job": "W1080",
            "mounting": "rear left",
            "complaint": "warning lamp came on once",
            "fault_codes": "RH-214",
            "note": "little room at the arm, bracket in the way",
        },
        "Ride height sensor rear left",
    )
    sparks = Interference(spark_v=0.5, spark_hz=22.0, ring_hz=3_000.0, hum_v=0.01)
    return replace(made, interference=sparks)


def _pedal() -> Scenario:
    stops = Interval(16.0, 91.0)
    band = WornBand(Interval(27.4, 32.2), severity=0.55, grain_percent=0.08, soft_percent=0.4)
    sensor = Sensor(2_500.0, 80.0, stops, 16.2, (band,), 0.02)
    other = Sensor(2_500.0, 80.0, Interval(8.0, 45.5), 8.1, (), 0.02)
    roles = (Role.SIGNAL, Role.SECOND_SIGNAL, Role.REFERENCE, Role.GROUND)
    styles = (("slowly", 6, CALM), ("quickly", 6, FAST))
    made = scenario(
        sensor,
        Circuit(pull_ohm=200e3, pull_up=False, filter_f=10e-9, series_ohm=470.0),
        BENCH,
        visit(1083, sensor, roles=roles, styles=styles, hold_at=29.8, swept="pedal pressed and released"),
        VerdictCode.WORN_TRACK,
        "The first of two tracks is worn at light pedal; the second, at half the voltage, is sound.",
        {
            "vehicle": "Varsund Kite 3",
            "registration": "VK 31 009",
            "odometer_km": 174_300,
            "job": "W1083",
            "profile": "pedal",
            "sensor": "accelerator pedal position sensor",
            "part_number": "VA-61-0077",
            "connector": "C204",
            "complaint": "no pull at light pedal, then jerks",
            "fault_codes": "PD-118, PD-121",
        },
        "Accelerator pedal",
    )
    fourth = {**made.wires[Role.SIGNAL], "pin": "4", "wire_colour": "green/red", "long_name": "second signal"}
    wires = {**made.wires, Role.SECOND_SIGNAL: fourth}
    return replace(made, second=SecondTrack(other, 0.5, 0.0), wires=wires)


def _front_right_slipped() -> Scenario:
    plans = list(visit(1091, HEIGHT))
    slipped = ProbeFault(ProbeFaultKind.SLIPPED_OFF, Role.SIGNAL, 0.55)
    gone = ProbeFault(ProbeFaultKind.SLIPPED_OFF, Role.SIGNAL, 0.0)
    plans[3], plans[4] = replace(plans[3], probe=slipped), replace(plans[4], probe=gone)
    return scenario(
        HEIGHT,
        HEIGHT_CIRCUIT,
        BENCH,
        tuple(plans),
        VerdictCode.MEASUREMENT_PROBLEM,
        "The probe on the signal wire slipped off half way through the first sweep and hung in the air.",
        {
            **TERN,
            "registration": "HT 4 0518",
            "odometer_km": 110_940,
            "job": "W1091",
            "mounting": "front right",
            "complaint": "height message after the winter",
            "fault_codes": "RH-221",
        },
        "Ride height sensor front right",
    )


SAMPLES: tuple[Sample, ...] = (
    Sample("W1041-rear-left-height.h5", 1041, "2026-04-14T09:12:00+02:00", _rear_left()),
    Sample("W1041-rear-left-height-new-sensor.h5", 1042, "2026-04-16T15:40:00+02:00", _rear_left_after()),
    Sample("W1041-rear-right-height.h5", 1043, "2026-04-14T09:41:00+02:00", _rear_right()),
    Sample("W1057-front-right-height.h5", 1057, "2026-04-27T10:05:00+02:00", _front_right()),
    Sample("W1063-rear-right-height.h5", 1063, "2026-05-04T13:22:00+02:00", _rear_right_other()),
    Sample("W1068-throttle.h5", 1068, "2026-05-07T08:50:00+02:00", _throttle()),
    Sample("W1072-front-left-height.h5", 1072, "2026-05-11T11:17:00+02:00", _front_left()),
    Sample(
        "W1072-front-left-height-new-sensor.h5",
        1074,
        "2026-05-13T08:20:00+02:00",
        partly_checked(_front_left(), 1074, Interval(9.7, 56.5)),
    ),
    Sample("W1080-rear-left-height.h5", 1080, "2026-05-19T16:31:00+02:00", _rear_left_clumsy()),
    Sample("W1083-pedal.h5", 1083, "2026-05-21T09:58:00+02:00", _pedal()),
    Sample("W1091-front-right-height.h5", 1091, "2026-05-28T14:04:00+02:00", _front_right_slipped()),
    Sample("W1096-rear-axle-heights.h5", 1096, "2026-06-02T09:30:00+02:00", both_rear_corners(1096)),
)
