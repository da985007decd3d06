"""What is entered of the vehicle: kept whole, read strictly, and used in place of the profile's."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.control_unit.debounce import ContinuousTimer, UpDownCounter
from analysis.control_unit.rules import SIDES, ComparisonRule, ControlUnit, RangeRule, RateRule
from analysis.errors import ReviewError, VehicleError
from analysis.exposure.explain import TOLD_ROADS
from analysis.exposure.road_test import NOTHING_AGAINST, SAID, CountedRecord, no_road
from analysis.intervals import Interval
from analysis.review.explained import told_roads
from analysis.review.model import Review
from analysis.review.stored import parse_review, review_text
from analysis.review.vehicle import RoadTest, Vehicle
from analysis.review.vehicle_stored import parse_vehicle, vehicle_object
from analysis.vehicle.geometry import Arm, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.vehicle.road import Road, RoadClass
from analysis.vehicle.words import ENTERED
from analysis.wording import Wording

ARM = VehicleHeights(Arm(127.0, 90.0, 50.0), 52.5, (Rest(RestKind.LOADED, -13.0),), ENTERED)
POINTS = VehicleHeights(TwoPoints((20.0, 60.0), (80.0, -60.0), Up.FALLING), 48.0, (), "door plate")
UNIT = ControlUnit(
    0.01,
    RangeRule(Interval(0.3, 4.7), UpDownCounter(3, 1, 90), ENTERED),
    RateRule(25.0, ContinuousTimer(0.1), "wiring diagram"),
    SIDES,
    ENTERED,
)
DISTURBED = SAID["disturbed"](events=4)
COUNTED = (
    ("after.h5", CountedRecord("007", "by the lake", 12.5, SAID["stated"](), NOTHING_AGAINST, 1)),
    ("after.h5", CountedRecord("008", "", 3.0, SAID["stated_speed"](time_s=180.0, speed=60.0), DISTURBED)),
    ("bounced.h5", CountedRecord("007", "", math.nan, SAID["not_known"](), SAID["no_distance"]())),
    ("bench.h5", no_road()),
)
WHOLE = Vehicle(ARM, Road(RoadClass.D, 35.0), 45.0, UNIT, RoadTest(2, 40.0, 12.5, COUNTED))

heights = st.builds(
    VehicleHeights,
    st.builds(Arm, st.floats(20.0, 900.0), st.floats(30.0, 150.0), st.floats(20.0, 80.0)),
    st.floats(0.0, 100.0),
)
timers = st.one_of(
    st.builds(ContinuousTimer, st.floats(0.0, 60.0)),
    st.builds(UpDownCounter, st.integers(1, 255), st.integers(0, 255), st.integers(1, 32_767)),
)
units = st.builds(
    ControlUnit,
    st.floats(0.001, 2.0),
    st.none() | st.builds(RangeRule, st.just(Interval(-math.inf, 4.75)), timers, st.text(max_size=5)),
    st.none() | st.builds(RateRule, st.floats(0.1, 1e5), timers, st.just("")),
    st.none() | st.builds(ComparisonRule, st.floats(0.01, 30.0), timers, st.just(""), st.floats(-2.0, 2.0)),
)
vehicles = st.builds(
    Vehicle,
    st.none() | heights,
    st.none() | st.builds(Road, st.sampled_from(RoadClass), st.floats(5.0, 250.0)),
    st.none() | st.floats(1.0, 600.0),
    st.none() | units,
    st.none()
    | st.builds(RoadTest, st.integers(1, 1000), st.none() | st.floats(0.1, 1e5), st.floats(0.0, 1e5)),
)


def test_counted_records_come_back_with_sentences_that_other_languages_can_say() -> None:
    text = review_text(Review(vehicle=WHOLE))
    test = parse_review(text).vehicle.test
    assert test is not None
    assert [record.words for _, record in test.counted] == [record.words for _, record in COUNTED]
    for (_, before), (_, after) in zip(COUNTED, test.counted, strict=True):
        assert after.how.template == before.how.template
        assert after.how.values == before.how.values
    assert test.counted[0][1].words == "Road 1 (by the lake): 12.50 km, as the record states"
    assert (
        test.counted[1][1].words
        == "Record 008: does not count, the signal was disturbed in the band, 4 times"
    )


@pytest.mark.parametrize(
    "damage",
    [
        {"how": "stated"},
        {"how": ["stated"]},
        {"how": ["of my own {file.__class__}", {}]},
        {"how": [["stated"], {}]},
        {"how": ["stated_speed", {"time_s": "long", "speed": 60.0}]},
        {"how": ["stated_speed", {"time_s": 1.0}]},
        {"how": ["stated_speed", {"time_s": [1.0], "speed": 60.0}]},
        {"against": ["disturbed", {"events": 1.5}]},
        {"km": "far"},
        {"record": 7},
    ],
    ids=str,
)
def test_a_counted_record_that_is_damaged_is_refused(damage: dict[str, Any]) -> None:
    stored = vehicle_object(WHOLE)
    stored["road_test"]["counted"][0] |= damage
    with pytest.raises(ReviewError):
        parse_vehicle(stored)


def test_more_counted_records_than_any_road_test_has_are_refused() -> None:
    stored = vehicle_object(WHOLE)
    stored["road_test"]["counted"] *= 300
    with pytest.raises(ReviewError, match="too many"):
        parse_vehicle(stored)


@given(vehicles)
def test_what_was_entered_comes_back_from_the_file(vehicle: Vehicle) -> None:
    review = Review(vehicle=vehicle)
    assert parse_review(review_text(review)) == review


@pytest.mark.parametrize("heights", [ARM, POINTS])
def test_an_arm_and_two_points_come_back(heights: VehicleHeights) -> None:
    assert parse_vehicle(vehicle_object(Vehicle(heights))).heights == heights


def test_nothing_entered_leaves_no_trace_in_the_file() -> None:
    assert "vehicle" not in json.loads(review_text(Review()))
    assert parse_review(review_text(Review())).vehicle == Vehicle()


def test_our_own_word_for_the_source_can_be_said_in_another_language_again() -> None:
    back = parse_vehicle(json.loads(json.dumps(vehicle_object(WHOLE))))
    assert back == WHOLE
    assert back.heights is not None
    assert isinstance(back.heights.source, Wording)


def test_unknown_keys_are_kept_at_every_depth() -> None:
    stored = vehicle_object(WHOLE)
    stored["tyre"] = {"size": 17}
    stored["height"]["roll_mm"] = 4
    stored["height"]["rests_mm"]["towing"] = -9
    stored["rules"]["range"]["filter_ms"] = 12
    stored["road"]["wet"] = True
    again = parse_vehicle(stored)
    assert vehicle_object(again) == stored
    other = vehicle_object(replace(again, road=Road(RoadClass.A, 110.0)))
    assert other["road"] == {"class": "A", "speed_km_h": 110.0, "wet": True}
    assert other["height"]["rests_mm"]["towing"] == -9


def test_what_is_known_beats_what_was_kept_and_goes_with_its_object() -> None:
    stored = vehicle_object(WHOLE)
    stored["height"]["roll_mm"] = 4
    again = parse_vehicle(stored)
    assert "height" not in vehicle_object(replace(again, heights=None))


HOSTILE: tuple[tuple[str, Any], ...] = (
    ("", []),
    ("height", 3),
    ("height.up", "sideways"),
    ("height.normal_percent", 140),
    ("height.normal_percent", "52"),
    ("height.normal_percent", None),
    ("height.arm_mm", -5),
    ("height.arm_mm", True),
    ("height.arm_mm", 10**400),
    ("height.arm_angle_deg", 0),
    ("height.wheel_ratio", 1e9),
    ("height.points", [[20, -60], [20, 60]]),
    ("height.points", [[20, -60]]),
    ("height.points", [[20, -60, 1], [80, 60]]),
    ("height.points", [[80, 60], [20, -60]]),
    ("height.points", "20 80"),
    ("height.rests_mm", []),
    ("height.rests_mm", {"loaded": 4000}),
    ("height.source", 7),
    ("road.class", "Z"),
    ("road.class", 1),
    ("road.speed_km_h", 900),
    ("road.speed_km_h", 0),
    ("minutes", 0),
    ("minutes", 1e9),
    ("minutes", "30"),
    ("rules", "none"),
    ("rules.reads_every_s", 0),
    ("rules.reads_every_s", -1e300),
    ("rules.range.lower_v", 9),
    ("rules.range.up", 1.5),
    ("rules.range.up", 0),
    ("rules.range.limit", -1),
    ("rules.range.hold_s", -1),
    ("rules.rate.limit_v_per_s", 0),
    ("rules.rate.hold_s", 1e9),
    ("rules.comparison.tolerance_v", 0),
    ("rules.comparison.factor", "same"),
    ("road_test.faults", 0),
    ("road_test.faults", 1.5),
    ("road_test.before_km", 0),
    ("road_test.before_km", 1e12),
    ("road_test.driven_km", -1),
)


@pytest.mark.parametrize(("path", "value"), HOSTILE, ids=lambda item: str(item)[:24])
def test_hostile_values_get_one_sentence(path: str, value: object) -> None:
    stored: Any = json.loads(json.dumps(vehicle_object(WHOLE)))
    if path:
        *way, last = path.split(".")
        inner = stored
        for key in way:
            inner = inner[key]
        inner[last] = value
    else:
        stored = value
    with pytest.raises(ReviewError) as caught:
        parse_vehicle(stored)
    assert str(caught.value).count("\n") == 0
    assert "begin a new review" in str(caught.value)


@pytest.mark.parametrize("path", ["height.up", "height.normal_percent", "road.class", "road_test.faults"])
def test_a_key_that_must_be_there_is_asked_for(path: str) -> None:
    stored: Any = json.loads(json.dumps(vehicle_object(WHOLE)))
    first, last = path.split(".")
    del stored[first][last]
    with pytest.raises(ReviewError, match=f"lacks '{last}'"):
        parse_vehicle(stored)


def test_a_road_test_that_cannot_be_is_refused_where_it_is_made() -> None:
    with pytest.raises(VehicleError, match="no fault was counted"):
        RoadTest(0, 6.0)
    with pytest.raises(VehicleError, match="no fault was counted"):
        RoadTest(0)


def test_the_chosen_road_is_told_first_in_place_of_its_class() -> None:
    assert told_roads(None) == TOLD_ROADS
    lane = Road(RoadClass.D, 25.0)
    assert told_roads(lane) == (lane, TOLD_ROADS[0], TOLD_ROADS[1])
    track = Road(RoadClass.E, 20.0)
    assert told_roads(track) == (track, *TOLD_ROADS)
