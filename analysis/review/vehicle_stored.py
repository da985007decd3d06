"""What was entered of the vehicle, as the review's file keeps it under ``vehicle``.

All of it is optional::

    {"height": {"up", "normal_percent", "source", "rests_mm": {"parked", "access", ...},
                "points": [[percent, mm], [percent, mm]]},
                           or "arm_mm", "arm_angle_deg", "level_percent", "wheel_ratio"
     "road": {"class", "speed_km_h"},
     "minutes": 30,
     "rules": {"reads_every_s", "source",
               "range": {"lower_v", "upper_v", "source", "hold_s"} or ..., "up", "down", "limit"},
               "rate": {"limit_v_per_s", "source", "hold_s"},
               "comparison": {"tolerance_v", "factor", "offset_v", "source", "hold_s"}},
     "road_test": {"faults", "before_km", "driven_km", "counted": [...]}}

The keys of ``height`` are those of a sensor profile. A rule that is absent is one that the control unit does
not have.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from analysis.control_unit.debounce import ContinuousTimer, Debounce, UpDownCounter
from analysis.control_unit.rules import (
    HOLD_SOURCE,
    RATE,
    READING_SOURCE,
    SIDES_SOURCE,
    ComparisonRule,
    ControlUnit,
    RangeRule,
    RateRule,
)
from analysis.errors import ControlUnitError, ReviewError, VehicleError
from analysis.intervals import Interval
from analysis.review.counted_stored import counted_list, parse_counted
from analysis.review.taken import DAMAGED, Taken
from analysis.review.vehicle import RoadTest, Vehicle
from analysis.vehicle.geometry import Arm, Geometry, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.vehicle.road import MINUTES, Road, RoadClass
from analysis.vehicle.words import ENTERED
from analysis.wording import say

_RESTS = tuple(kind for kind in RestKind if kind is not RestKind.NORMAL)


def vehicle_object(vehicle: Vehicle) -> dict[str, Any]:
    """The vehicle as the review's file keeps it; empty where nothing was entered."""
    own: dict[str, Any] = {}
    if vehicle.heights is not None:
        own["height"] = _height_object(vehicle.heights)
    if vehicle.road is not None:
        own["road"] = {"class": vehicle.road.road_class.value, "speed_km_h": vehicle.road.speed_km_h}
    if vehicle.minutes is not None:
        own["minutes"] = vehicle.minutes
    if vehicle.unit is not None:
        own["rules"] = _rules_object(vehicle.unit)
    if vehicle.test is not None:
        test = vehicle.test
        own["road_test"] = {
            "faults": test.faults,
            "driven_km": test.driven_km,
        }
        if test.before_km is not None:
            own["road_test"]["before_km"] = test.before_km
        if test.counted:
            own["road_test"]["counted"] = counted_list(test.counted)
    return _over(vehicle.kept, own)


def parse_vehicle(stored: object) -> Vehicle:
    """Read what `vehicle_object` made; an empty one for None.

    Raises
    ------
    ReviewError
        Where it is damaged, or no vehicle can be like that: one sentence that says where.
    """
    if stored is None:
        return Vehicle()
    top = Taken(stored, say("the vehicle of the review"))
    kept: dict[str, Any] = {}
    try:
        made = Vehicle(
            heights=_heights(top, kept),
            road=_road(top, kept),
            minutes=_minutes(top),
            unit=_unit(top, kept),
            test=_test(top, kept),
        )
    except (VehicleError, ControlUnitError) as error:
        raise ReviewError(
            say("the vehicle of the review makes no sense: {problem}", problem=error.problem), DAMAGED
        ) from error
    return replace(made, kept={**top.rest(), **kept})


def _over(kept: Mapping[str, Any], own: Mapping[str, Any]) -> dict[str, Any]:
    """Known values over kept ones, at every depth. What was kept of an object goes with the object."""
    merged = {key: value for key, value in kept.items() if not isinstance(value, _Inside)}
    for key, value in own.items():
        inside = kept.get(key)
        merged[key] = (
            _over(inside.kept, value) if isinstance(inside, _Inside) and isinstance(value, dict) else value
        )
    return merged


@dataclass(frozen=True, slots=True)
class _Inside:
    """Unknown keys of an object that is known itself."""

    kept: Mapping[str, Any]


def _keep(item: Taken, key: str, kept: dict[str, Any], more: Mapping[str, Any] | None = None) -> None:
    """Remember what is left of an object, once everything known was taken from it."""
    left = {**item.rest(), **(more or {})}
    if left:
        kept[key] = _Inside(left)


# -- heights -------------------------------------------------------------------------------------


def _height_object(heights: VehicleHeights) -> dict[str, Any]:
    geometry = heights.geometry
    own: dict[str, Any] = {"normal_percent": heights.normal_percent, "source": str(heights.source)}
    if isinstance(geometry, TwoPoints):
        own |= {"up": geometry.up.value, "points": [list(geometry.first), list(geometry.second)]}
    elif isinstance(geometry, Arm):
        own |= {"up": geometry.up.value, "arm_mm": geometry.length_mm, "arm_angle_deg": geometry.angle_deg}
        own |= {"level_percent": geometry.level_percent, "wheel_ratio": geometry.wheel_ratio}
    return {**own, "rests_mm": {item.kind.value: item.height_mm for item in heights.rests}}


def _heights(top: Taken, kept: dict[str, Any]) -> VehicleHeights | None:
    item = top.inner("height", say("the heights of the review"))
    if item is None:
        return None
    made = VehicleHeights(_geometry(item), item.number("normal_percent"), source=_source(item))
    inside: dict[str, Any] = {}
    given = item.inner("rests_mm", say("the rest heights of the review"))
    if given is None:
        _keep(item, "height", kept)
        return made
    rests = tuple(Rest(kind, given.number(kind.value)) for kind in _RESTS if given.holds(kind.value))
    _keep(given, "rests_mm", inside)
    _keep(item, "height", kept, inside)
    return VehicleHeights(made.geometry, made.normal_percent, rests, made.source)


def _geometry(item: Taken) -> Geometry:
    up = item.choice("up", Up, say("rising or falling"))
    if item.holds("points"):
        points = item.list("points")
        if len(points) != 2:
            item.refuse("points", say("two points"))
        first, second = (_point(item, point) for point in points)
        return TwoPoints(first, second, up)
    return Arm(
        item.number("arm_mm"),
        item.number("arm_angle_deg"),
        item.number("level_percent", 50.0),
        up,
        item.number("wheel_ratio", 1.0),
    )


def _point(item: Taken, stored: object) -> tuple[float, float]:
    if not isinstance(stored, list) or len(stored) != 2:
        item.refuse("points", say("travel and height"))
    return item.as_number("points", stored[0]), item.as_number("points", stored[1])


_OWN_WORDS = {str(word): word for word in (ENTERED, READING_SOURCE, HOLD_SOURCE, SIDES_SOURCE, RATE.source)}


def _source(item: Taken) -> str:
    """Whose figures they are; in our own words where they are ours, so that any language can say them."""
    text = item.text("source", "")
    return _OWN_WORDS.get(text, text)


# -- the drive -----------------------------------------------------------------------------------


def _road(top: Taken, kept: dict[str, Any]) -> Road | None:
    item = top.inner("road", say("the road of the review"))
    if item is None:
        return None
    road = Road(item.choice("class", RoadClass, say("a road class")), item.number("speed_km_h"))
    _keep(item, "road", kept)
    return road


def _minutes(top: Taken) -> float | None:
    if not top.holds("minutes"):
        return None
    minutes = top.number("minutes")
    if not MINUTES.start <= minutes <= MINUTES.stop:
        top.refuse("minutes", say("the length of a drive"))
    return minutes


def _test(top: Taken, kept: dict[str, Any]) -> RoadTest | None:
    item = top.inner("road_test", say("the road test of the review"))
    if item is None:
        return None
    counted = parse_counted(item.list("counted"))
    before_km = item.number("before_km") if item.holds("before_km") else None
    test = RoadTest(_whole(item, "faults"), before_km, item.number("driven_km"), counted)
    _keep(item, "road_test", kept)
    return test


# -- rules ---------------------------------------------------------------------------------------


def _rules_object(unit: ControlUnit) -> dict[str, Any]:
    own: dict[str, Any] = {"reads_every_s": unit.tick_s, "source": str(unit.tick_source)}
    if (within := unit.range_rule) is not None:
        limits = {"lower_v": within.limits_v.start, "upper_v": within.limits_v.stop}
        own["range"] = {key: value for key, value in limits.items() if math.isfinite(value)}
        own["range"] |= _common(within.source, within.debounce)
    if (rate := unit.rate_rule) is not None:
        own["rate"] = {"limit_v_per_s": rate.limit_v_per_s, **_common(rate.source, rate.debounce)}
    if (pair := unit.comparison_rule) is not None:
        own["comparison"] = {
            "tolerance_v": pair.tolerance_v,
            "factor": pair.factor,
            "offset_v": pair.offset_v,
        }
        own["comparison"] |= _common(pair.source, pair.debounce)
    return own


def _common(source: str, debounce: Debounce) -> dict[str, Any]:
    if isinstance(debounce, ContinuousTimer):
        return {"hold_s": debounce.hold_s, "source": str(source)}
    return {"up": debounce.up, "down": debounce.down, "limit": debounce.limit, "source": str(source)}


def _unit(top: Taken, kept: dict[str, Any]) -> ControlUnit | None:
    item = top.inner("rules", say("the rules of the review"))
    if item is None:
        return None
    inside: dict[str, Any] = {}
    unit = ControlUnit(
        item.number("reads_every_s"),
        _range(item, inside),
        _rate(item, inside),
        _comparison(item, inside),
        _source(item),
    )
    _keep(item, "rules", kept, inside)
    return unit


def _range(rules: Taken, kept: dict[str, Any]) -> RangeRule | None:
    item = rules.inner("range", say("the range of the review"))
    if item is None:
        return None
    lower = item.number("lower_v") if item.holds("lower_v") else -math.inf
    upper = item.number("upper_v") if item.holds("upper_v") else math.inf
    if lower > upper:
        item.refuse("upper_v", say("at or above {first!r}", first="lower_v"))
    rule = RangeRule(Interval(lower, upper), _debounce(item), _source(item))
    _keep(item, "range", kept)
    return rule


def _rate(rules: Taken, kept: dict[str, Any]) -> RateRule | None:
    item = rules.inner("rate", say("the rate of change of the review"))
    if item is None:
        return None
    rule = RateRule(item.number("limit_v_per_s"), _debounce(item), _source(item))
    _keep(item, "rate", kept)
    return rule


def _comparison(rules: Taken, kept: dict[str, Any]) -> ComparisonRule | None:
    item = rules.inner("comparison", say("the comparison of the review"))
    if item is None:
        return None
    rule = ComparisonRule(
        item.number("tolerance_v"),
        _debounce(item),
        _source(item),
        item.number("factor", 1.0),
        item.number("offset_v", 0.0),
    )
    _keep(item, "comparison", kept)
    return rule


def _debounce(item: Taken) -> Debounce:
    if item.holds("hold_s"):
        return ContinuousTimer(item.number("hold_s"))
    return UpDownCounter(_whole(item, "up"), _whole(item, "down"), _whole(item, "limit"))


def _whole(item: Taken, key: str) -> int:
    value = item.number(key)
    if not value.is_integer():
        item.refuse(key, say("a whole number"))
    return int(value)
