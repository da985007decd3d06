"""Travel as height, and the heights that a vehicle rests at."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import VehicleError
from analysis.intervals import Interval
from analysis.vehicle.geometry import Arm, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights

LINE = TwoPoints((20.0, -60.0), (80.0, 60.0))
ARM = Arm(127.0, 90.0)


def test_two_points_make_a_straight_line() -> None:
    assert LINE.height_mm([20.0, 50.0, 80.0]).tolist() == [-60.0, 0.0, 60.0]
    assert LINE.travel_percent([-60.0, 0.0, 60.0]).tolist() == [20.0, 50.0, 80.0]


def test_an_arm_goes_with_the_sine_of_its_angle() -> None:
    # Lexus GS 2006, height control sensor: 90 degrees over 0.5-4.5 V, level at 2.5 V.
    arm = Arm(100.0, 90.0, 50.0)
    assert float(arm.height_mm(50.0)) == pytest.approx(0.0)
    assert float(arm.height_mm(100.0)) == pytest.approx(100.0 * math.sin(math.radians(45.0)))
    near_level = float(arm.height_mm(50.5) - arm.height_mm(49.5))
    assert near_level == pytest.approx(100.0 * math.radians(0.9), rel=1e-4)


@pytest.mark.parametrize("geometry", [LINE, ARM, TwoPoints((10.0, 80.0), (90.0, -80.0), Up.FALLING)])
@given(travel=st.floats(0.0, 100.0))
def test_there_and_back_is_where_it_was(geometry: TwoPoints | Arm, travel: float) -> None:
    assert float(geometry.travel_percent(geometry.height_mm(travel))) == pytest.approx(travel, abs=1e-6)


def test_a_sensor_of_the_other_side_falls_as_the_body_rises() -> None:
    # Volvo XC70 2008, Height Sensor, Suspension: left and right go opposite ways.
    left, right = Arm(127.0, 90.0), Arm(127.0, 90.0, up=Up.FALLING)
    travel = np.linspace(5.0, 95.0, 19)
    np.testing.assert_allclose(left.height_mm(travel), right.height_mm(100.0 - travel), atol=1e-9)


def test_heights_count_from_the_normal_one() -> None:
    heights = VehicleHeights(LINE, 52.5, (Rest(RestKind.LOADED, -13.0), Rest(RestKind.OFF_ROAD, 35.0)))
    assert float(heights.height_mm(52.5)) == 0.0
    assert heights.travel_percent(-13.0) == pytest.approx(46.0)
    assert heights.span_mm(Interval(42.5, 48.5)) == Interval(-20.0, -8.0)
    assert [item.kind for item in heights.every] == [RestKind.NORMAL, RestKind.LOADED, RestKind.OFF_ROAD]


def test_a_band_of_a_falling_sensor_is_still_told_from_low_to_high() -> None:
    falling = VehicleHeights(TwoPoints((20.0, 60.0), (80.0, -60.0), Up.FALLING), 50.0)
    assert falling.span_mm(Interval(60.0, 70.0)) == Interval(-40.0, -20.0)


@pytest.mark.parametrize(
    ("first", "second", "up", "what"),
    [
        ((50.0, 0.0), (50.0, 10.0), Up.RISING, "coincide"),
        ((20.0, 5.0), (80.0, 5.0), Up.RISING, "coincide"),
        ((80.0, 60.0), (20.0, -60.0), Up.RISING, "run backwards"),
        ((20.0, 60.0), (80.0, -60.0), Up.RISING, "run backwards"),
        ((20.0, -60.0), (80.0, 60.0), Up.FALLING, "run backwards"),
        ((-5.0, -60.0), (80.0, 60.0), Up.RISING, "within 0 and 100"),
        ((float("nan"), -60.0), (80.0, 60.0), Up.RISING, "within 0 and 100"),
        ((20.0, float("inf")), (80.0, 60.0), Up.RISING, "is no number"),
        ((20.0, -60_000.0), (80.0, 60_000.0), Up.RISING, "mm of one %"),
    ],
)
def test_points_that_cannot_be_are_refused_with_a_sentence(
    first: tuple[float, float], second: tuple[float, float], up: Up, what: str
) -> None:
    with pytest.raises(VehicleError, match=what):
        TwoPoints(first, second, up)


@pytest.mark.parametrize(
    ("length_mm", "angle_deg", "level_percent", "ratio"),
    [
        (0.0, 90.0, 50.0, 1.0),
        (1e6, 90.0, 50.0, 1.0),
        (100.0, 0.0, 50.0, 1.0),
        (100.0, 90.0, 120.0, 1.0),
        (100.0, 90.0, 50.0, 0.0),
    ],
)
def test_an_arm_that_nobody_builds_is_refused_with_a_sentence(
    length_mm: float, angle_deg: float, level_percent: float, ratio: float
) -> None:
    with pytest.raises(VehicleError, match="must lie within"):
        Arm(length_mm, angle_deg, level_percent, Up.RISING, ratio)


def test_a_rest_height_outside_the_travel_is_refused_with_its_name() -> None:
    with pytest.raises(VehicleError, match="rest height off-road lies outside the travel, at 120 %"):
        VehicleHeights(LINE, 50.0, (Rest(RestKind.OFF_ROAD, 140.0),))
    with pytest.raises(VehicleError, match="normal lies outside the travel"):
        VehicleHeights(LINE, 130.0)
    with pytest.raises(VehicleError, match="the arm cannot reach"):
        VehicleHeights(ARM, 50.0, (Rest(RestKind.PARKED, -500.0),))


def test_a_height_given_twice_is_refused() -> None:
    with pytest.raises(VehicleError, match="given twice"):
        VehicleHeights(LINE, 50.0, (Rest(RestKind.PARKED, -10.0), Rest(RestKind.PARKED, -20.0)))
