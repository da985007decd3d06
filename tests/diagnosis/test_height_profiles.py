"""The height part of a sensor profile."""

from __future__ import annotations

from pathlib import Path

import pytest

from analysis.diagnosis.profiles import load_profile
from analysis.errors import ProfileError
from analysis.vehicle.geometry import Arm, TwoPoints, Up
from analysis.vehicle.heights import RestKind

_HEAD = 'id = "own"\ntitle = "Own"\nbased_on = "ride-height"\n'
_POINTS = """
[height]
up = "rising"
points = [[20.0, -60.0], [80.0, 60.0]]
normal_percent = 52.5
source = "measured at the wheel arch"
[height.rests_mm]
loaded = -13
off_road = 35.0
"""


def _load(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "own.toml"
    path.write_text(_HEAD + text, encoding="utf-8")
    return path


def test_heights_by_two_points_are_read_whole(tmp_path: Path) -> None:
    heights = load_profile(_load(tmp_path, _POINTS)).heights
    assert heights is not None
    assert heights.geometry == TwoPoints((20.0, -60.0), (80.0, 60.0))
    assert heights.source == "measured at the wheel arch"
    assert [(item.kind, item.height_mm) for item in heights.every] == [
        (RestKind.NORMAL, 0.0),
        (RestKind.LOADED, -13.0),
        (RestKind.OFF_ROAD, 35.0),
    ]


def test_heights_by_an_arm_are_those_of_the_samples_car() -> None:
    left = load_profile("halvorsen-tern-rear-left").heights
    right = load_profile("halvorsen-tern-rear-right").heights
    assert left is not None
    assert right is not None
    assert left.geometry == Arm(127.0, 90.0, 50.0, Up.RISING)
    for item in left.every:  # mounted the other way about: the same heights at mirrored travel
        assert right.travel_percent(item.height_mm) == pytest.approx(
            100.0 - left.travel_percent(item.height_mm)
        )


def test_a_profile_without_heights_has_none() -> None:
    assert load_profile("ride-height").heights is None
    assert load_profile("pedal").heights is None


def test_a_height_replaces_that_of_the_profile_below_as_a_whole(tmp_path: Path) -> None:
    text = _POINTS.replace("ride-height", "halvorsen-tern-rear-left")
    path = tmp_path / "own.toml"
    path.write_text(_HEAD.replace("ride-height", "halvorsen-tern-rear-left") + text, encoding="utf-8")
    heights = load_profile(path).heights
    assert heights is not None
    assert isinstance(heights.geometry, TwoPoints)
    assert len(heights.rests) == 2


@pytest.mark.parametrize(
    ("change", "what"),
    [
        (("-60.0", "60.0"), "coincide"),
        (('"rising"', '"falling"'), "run backwards"),
        (('"rising"', '"sideways"'), "height.up must be one of rising, falling"),
        (("[[20.0, -60.0], [80.0, 60.0]]", "[[20.0, -60.0]]"), "height.points must be two pairs of numbers"),
        (("[[20.0, -60.0], [80.0, 60.0]]", "[[20.0, true], [80.0, 60.0]]"), "two pairs of numbers"),
        (("normal_percent = 52.5", "normal_percent = 140.0"), "normal lies outside the travel"),
        (("off_road = 35.0", "off_road = 350.0"), "off-road lies outside the travel"),
        (("off_road", "offroad"), "height.rests_mm.offroad must be one of parked, access"),
        (("normal_percent = 52.5", ""), "height.normal_percent must be a number"),
        (("normal_percent", "arm_mm = 100.0\nnormal_percent"), "height.arm_mm must be left out"),
        (("points = [[20.0, -60.0], [80.0, 60.0]]", ""), "height.arm_mm must be a number"),
    ],
)
def test_a_height_that_cannot_be_is_refused_with_its_file_and_a_sentence(
    tmp_path: Path, change: tuple[str, str], what: str
) -> None:
    with pytest.raises(ProfileError, match=what) as caught:
        load_profile(_load(tmp_path, _POINTS.replace(*change)))
    assert "own.toml" in str(caught.value)
