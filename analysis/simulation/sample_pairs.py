"""Sample visits made to be compared: an incomplete check after a repair, and both ends of an axle."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from analysis.captures.model import Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.circuit import Floats
from analysis.simulation.road import road_path
from analysis.simulation.sample_workshop import (
    BENCH,
    CALM,
    FAST,
    HEIGHT,
    HEIGHT_CIRCUIT,
    TERN,
    plan,
    scenario,
    visit,
)
from analysis.simulation.scenario import RecordPlan, Scenario, SecondTrack, without_bands
from analysis.simulation.track import WornBand

_FOUR = (Role.SIGNAL, Role.SECOND_SIGNAL, Role.REFERENCE, Role.GROUND)
_LOADED_PERCENT = 45.8
"""Where the left arm stands with a loaded boot: in the worn band."""


def partly_checked(before: Scenario, seed: int, reach: Interval) -> Scenario:
    """The same position with a new sensor, whose arm was not swept any further than `reach`.

    Parameters
    ----------
    before : Scenario
        The visit with the worn sensor; its one-channel recorder and its wires are used again.
    seed : int
        Of the hand.
    reach : Interval
        Travel that the hand reached, in %.
    """
    after = without_bands(before)
    swept = replace(after.sensor, stops=reach)
    styles = (("slowly", 6, CALM), ("quickly", 6, FAST))
    return replace(
        after,
        plans=visit(seed, swept, roles=(Role.SIGNAL,), alone=True, styles=styles),
        code=VerdictCode.NO_FAULT_FOUND,
        story="A new sensor in place of the worn one; only the lower half of its travel was swept.",
        title=f"{before.title}, new sensor fitted",
        attributes={
            **before.attributes,
            "complaint": "check after repair",
            "fault_codes": "none",
            "note": "wheel on the ground, arm could not be lifted further",
        },
    )


def both_rear_corners(seed: int) -> Scenario:
    """Both height sensors of a rear axle on one recorder, pointing against each other; the left is worn."""
    band = WornBand(Interval(42.6, 48.9), severity=0.85, fixed=0.2, crossing=0.1, slow=0.5, slow_s=0.8)
    sensor = replace(HEIGHT, bands=(band,))
    other = replace(HEIGHT, stops=Interval(10.2, 89.6), rest_percent=47.5, track_ohm=4_900.0)
    made = scenario(
        sensor,
        HEIGHT_CIRCUIT,
        BENCH,
        _axle_plans(seed),
        VerdictCode.WORN_TRACK,
        "Both corners of one axle over one drive: the left sensor is worn where it stands with a loaded boot,"
        " the right one is sound and falls as the body rises.",
        {
            **TERN,
            "registration": "HT 4 7032",
            "odometer_km": 171_300,
            "job": "W1096",
            "mounting": "rear left",
            "second_mounting": "rear right",
            "complaint": "two corners in the fault memory, tail drops overnight",
            "fault_codes": "RH-214, RH-216",
        },
        "Ride height sensors, rear axle",
    )
    right = {
        **made.wires[Role.SIGNAL],
        "connector": "X32",
        "mounting": "rear right",
        "long_name": "right signal",
    }
    left = {**made.wires[Role.SIGNAL], "mounting": "rear left", "long_name": "left signal"}
    return replace(
        made,
        second=SecondTrack(other, 1.0, 0.0),
        wires={**made.wires, Role.SIGNAL: left, Role.SECOND_SIGNAL: right},
    )


def _axle_plans(seed: int) -> tuple[RecordPlan, ...]:
    rng = np.random.default_rng((seed, 78))
    usual = visit(seed, HEIGHT, roles=_FOUR, swept="left link off, left arm swept")
    swept = [_with_right_arm(item, np.full(len(item.arm_percent), HEIGHT.rest_percent)) for item in usual]
    bounced = hand.bounced(rng, HEIGHT.rest_percent, 16.0, 5, HEIGHT.stops)
    driven = hand.joined(
        hand.hold(rng, _LOADED_PERCENT, 3.0, None, HEIGHT.stops),
        road_path(rng, 12.0, HEIGHT.stops, _LOADED_PERCENT, speed_km_h=50.0, percent_per_m=300.0),
        hand.hold(rng, _LOADED_PERCENT, 4.0, None, HEIGHT.stops),
        road_path(rng, 6.0, HEIGHT.stops, _LOADED_PERCENT, speed_km_h=50.0, percent_per_m=300.0),
    )
    both = plan(Step.ROAD, "links on, tail bounced", bounced, _FOUR, "suspension")
    road = plan(Step.ROAD, "loaded boot, driven round the block", driven, _FOUR, "road")
    road = replace(road, attributes={**road.attributes, "engine": "running"})
    roll = 1.5 * np.sin(2.0 * np.pi * 0.2 * np.arange(len(driven)) / hand.NODE_HZ)
    return (*swept, _with_right_arm(both, bounced), _with_right_arm(road, driven - roll))


def _with_right_arm(taken: RecordPlan, as_left_percent: Floats) -> RecordPlan:
    """The right arm at the height that the left one would show there; it points the other way."""
    return replace(taken, second_percent=100.0 - as_left_percent)
