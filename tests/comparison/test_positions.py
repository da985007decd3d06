"""Where two captures say that their sensors sit, and what may be told of them then."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from analysis.captures.model import Role
from analysis.comparison.compare import compare
from analysis.comparison.model import Change, Relation
from analysis.comparison.pairing import Pairing, pairing_of, taken_as_one, why_not
from analysis.comparison.positions import Position, apart, position_of, stated_as_one
from analysis.comparison.serialise import comparison_object
from analysis.comparison.side import Side
from analysis.diagnosis.serialise import json_line
from tests.comparison.examples import AFTER, AXLE, BAND, BEFORE, FRONT_BEFORE, RIGHT, sample, side

LEFT = Position("rear left", "ride height sensor", "HV 7714 203", "Halvorsen Tern 4", "HT 4 1187")


def _with(**facts: str) -> Position:
    return replace(LEFT, **facts)


@pytest.mark.parametrize(
    ("other", "what"),
    [
        (_with(mounting="rear right"), "mounted rear left and rear right"),
        (_with(mounting="front left"), "mounted rear left and front left"),
        (_with(registration="HT 4 3360"), "of two cars, HT 4 1187 and HT 4 3360"),
        (_with(sensor="throttle"), "of two kinds, ride height sensor and throttle"),
    ],
)
def test_what_both_state_differently_are_two_sensors(other: Position, what: str) -> None:
    assert [str(item) for item in apart(LEFT, other)] == [what]
    assert not stated_as_one(LEFT, other)
    reason = why_not(Relation.BEFORE_AFTER, LEFT, other)
    assert str(reason) == f"These are two different sensors, {what}: not one before and after a repair."


@pytest.mark.parametrize(
    "other",
    [
        LEFT,
        _with(mounting="Left, rear"),
        _with(registration="ht-4 1187"),
        _with(part_number="HV 7714 204"),
        _with(vehicle="Tern 4, 2.2 l"),
        _with(sensor="", vehicle="", registration=""),
    ],
)
def test_one_position_written_otherwise_or_with_another_part_stays_one(other: Position) -> None:
    assert apart(LEFT, other) == ()
    assert stated_as_one(LEFT, other)
    assert pairing_of(Relation.BEFORE_AFTER, LEFT, other) == Pairing(Relation.BEFORE_AFTER)


def test_a_part_number_and_a_vehicle_count_where_nothing_else_is_stated() -> None:
    bare = Position(part_number="A 1", vehicle="Tern 4")
    assert len(apart(bare, replace(bare, part_number="A 2"))) == 1
    assert len(apart(bare, replace(bare, vehicle="Kite 3"))) == 1
    car = replace(bare, vin="X1", sensor="throttle")
    assert apart(car, replace(car, part_number="A 2", vehicle="Kite 3")) == ()
    assert stated_as_one(car, replace(car, part_number="A 2"))


def test_where_nothing_is_stated_that_it_is_one_place_is_taken_as_given_and_said() -> None:
    assert apart(Position(), LEFT) == ()
    assert not stated_as_one(Position(), LEFT)
    assert "taken as given" in str(taken_as_one(Relation.BEFORE_AFTER, Position(), LEFT))
    assert taken_as_one(Relation.LEFT_RIGHT, Position(), LEFT) is None
    found = compare(side(BAND), side())
    assert found.one_position is None
    assert "taken as given" in " ".join(found.cautions)
    assert found.bands[0].change is Change.GONE


@pytest.mark.parametrize(
    ("one", "two", "expected"),
    [
        ("rear left", "rear right", Pairing(Relation.LEFT_RIGHT)),
        ("rear right", "rear left", Pairing(Relation.LEFT_RIGHT, turned=True)),
        ("hinten rechts", "hinten links", Pairing(Relation.LEFT_RIGHT, turned=True)),
        ("front left", "rear right", Pairing(Relation.SIDE_BY_SIDE)),
        ("front left", "rear left", Pairing(Relation.SIDE_BY_SIDE)),
        ("rear left", "rear left", Pairing(Relation.BEFORE_AFTER)),
        ("", "rear left", Pairing(Relation.BEFORE_AFTER)),
    ],
)
def test_two_corners_of_one_axle_are_left_and_right_by_themselves(
    one: str, two: str, expected: Pairing
) -> None:
    assert pairing_of(Relation.BEFORE_AFTER, _with(mounting=one), _with(mounting=two)) == expected


def test_corners_of_two_cars_are_side_by_side_and_one_corner_is_never_left_and_right() -> None:
    elsewhere = _with(mounting="rear right", registration="HT 4 3360")
    assert pairing_of(Relation.BEFORE_AFTER, LEFT, elsewhere).relation is Relation.SIDE_BY_SIDE
    assert pairing_of(Relation.LEFT_RIGHT, LEFT, LEFT).relation is Relation.SIDE_BY_SIDE
    assert "not left and right" in str(why_not(Relation.LEFT_RIGHT, LEFT, LEFT))
    assert pairing_of(Relation.KNOWN_GOOD, LEFT, elsewhere) == Pairing(Relation.KNOWN_GOOD)


def test_names_change_places_where_the_first_is_the_right_one() -> None:
    turned = Pairing(Relation.LEFT_RIGHT, turned=True)
    assert [str(item) for item in turned.titles] == ["Right", "Left"]
    assert [str(item) for item in turned.names] == ["on the right", "on the left"]


def test_the_left_and_the_right_sample_are_not_told_as_a_repair() -> None:
    found = compare(sample(BEFORE), sample(RIGHT))
    assert (found.asked, found.relation) == (Relation.BEFORE_AFTER, Relation.LEFT_RIGHT)
    assert found.one_position is False
    assert "gone" not in found.summary
    assert "is on the left alone" in found.summary
    assert str(found.cautions[0]).startswith(
        "These are two different sensors, mounted rear left and rear right"
    )
    back = compare(sample(RIGHT), sample(BEFORE))
    assert "appeared" not in back.summary
    assert "is on the left alone" in back.summary


def test_samples_of_two_cars_are_neither_gone_nor_left_and_right() -> None:
    found = compare(sample(BEFORE), sample(FRONT_BEFORE))
    assert found.relation is Relation.SIDE_BY_SIDE
    assert "gone" not in found.summary
    assert "cured" not in found.summary


def test_the_channels_say_where_each_corner_of_one_capture_sits() -> None:
    capture = sample(AXLE).capture
    assert position_of(capture).mounting == "rear left"
    assert position_of(capture, Role.SECOND_SIGNAL).mounting == "rear right"
    made = sample(AXLE)
    right = Side(made.capture, made.findings, mirrored=True, track=Role.SECOND_SIGNAL)
    found = compare(Side(made.capture, made.findings, track=Role.SIGNAL), right)
    assert found.relation is Relation.LEFT_RIGHT
    assert "is on the left alone" in found.summary


def test_the_json_says_what_was_asked_and_that_they_are_two_positions() -> None:
    made = json.loads(json_line(comparison_object(compare(sample(BEFORE), sample(RIGHT)))))
    assert (made["asked"], made["relation"], made["one_position"]) == ("before_after", "left_right", False)
    assert made["after"]["position"]["mounting"] == "rear right"
    assert (made["bands"][0]["change"], made["bands"][0]["outcome"]) == ("gone", "on the left alone")
    same = json.loads(json_line(comparison_object(compare(sample(BEFORE), sample(AFTER)))))
    assert (same["asked"], same["relation"], same["one_position"]) == ("before_after", "before_after", True)
    assert same["bands"][0]["outcome"] == "gone"
