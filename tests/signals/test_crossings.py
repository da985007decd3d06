"""Turning points and crossings."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import settings as rules
from hypothesis import strategies as st

from analysis.signals.crossings import find_crossings, turning_points
from analysis.signals.facts import Direction
from tests.signals.examples import Floats, noise, path_of, rest, stroke, strokes

NODE_HZ = 500.0


def _strokes(count: int, *, pause_s: float = 0.1) -> Floats:
    return strokes(count, rate_hz=NODE_HZ, pause_s=pause_s)


@pytest.mark.parametrize("count", [1, 2, 5, 12])
@pytest.mark.parametrize("pause_s", [0.0, 0.4])
def test_every_stroke_is_one_crossing_in_its_direction(count: int, pause_s: float) -> None:
    found = find_crossings(path_of(_strokes(count, pause_s=pause_s)))
    assert [item.direction for item in found] == ([Direction.UP, Direction.DOWN] * count)[:count]
    for item in found:
        assert item.travel.start == pytest.approx(10.0, abs=0.01)
        assert item.travel.stop == pytest.approx(90.0, abs=0.01)


def test_crossings_follow_each_other_without_a_gap() -> None:
    found = find_crossings(path_of(_strokes(6)))
    for one, other in pairwise(found):
        assert one.time.stop == other.time.start
        assert one.direction is not other.direction


@pytest.mark.parametrize("rms", [0.02, 0.1, 0.2])
def test_noise_below_the_least_stroke_makes_none(rms: float) -> None:
    quiet = np.clip(noise(5_000, rms), -0.49, 0.49)
    assert find_crossings(path_of(50.0 + quiet)) == ()
    assert len(find_crossings(path_of(_strokes(4) + quiet[: len(_strokes(4))]))) == 4


def test_a_move_of_just_the_least_stroke_counts_and_a_smaller_one_does_not() -> None:
    path = np.array([10.0, 20.0, 19.0, 30.0])
    assert len(find_crossings(path_of(path), least_stroke_percent=1.0)) == 3
    assert len(find_crossings(path_of(path), least_stroke_percent=1.01)) == 1


def test_a_short_reversal_in_mid_stroke_is_three_crossings() -> None:
    path = np.concatenate(
        [stroke(10, 60, 0.5, NODE_HZ), stroke(60, 50, 0.2, NODE_HZ), stroke(50, 90, 0.5, NODE_HZ)]
    )
    found = find_crossings(path_of(np.append(path, 90.0)))
    assert [item.direction for item in found] == [Direction.UP, Direction.DOWN, Direction.UP]
    assert found[1].travel.length == pytest.approx(10.0, abs=0.1)


def test_an_arm_at_rest_crosses_nothing() -> None:
    assert find_crossings(path_of(rest(40.0, 1.0, NODE_HZ))) == ()
    assert find_crossings(path_of(np.array([40.0]))) == ()
    assert turning_points(np.empty(0), 1.0) == []


PLACES = st.lists(st.integers(0, 60), min_size=1, max_size=40).map(lambda x: np.array(x, np.float64))


@given(place=PLACES)
@rules(max_examples=200)
def test_turning_points_alternate_and_lie_at_least_a_stroke_apart(place: Floats) -> None:
    turns = turning_points(place, 5.0)
    assert turns == sorted(set(turns))
    moves = np.diff(place[turns])
    assert np.all(np.abs(moves) >= 5.0)
    assert np.all(moves[1:] * moves[:-1] < 0)
    assert bool(turns) == (np.ptp(place) >= 5.0)


@given(place=PLACES)
@rules(max_examples=200)
def test_between_two_turns_nothing_reaches_beyond_them(place: Floats) -> None:
    turns = turning_points(place, 5.0)
    for one, other in pairwise(turns):
        low, high = sorted((place[one], place[other]))
        assert place[one : other + 1].min() == low
        assert place[one : other + 1].max() == high


@given(place=PLACES)
@rules(max_examples=200)
def test_a_mirrored_path_turns_at_the_same_points(place: Floats) -> None:
    assert turning_points(-place, 5.0) == turning_points(place, 5.0)


@given(place=PLACES)
@rules(max_examples=200)
def test_a_path_run_backwards_turns_at_the_same_places(place: Floats) -> None:
    forward = place[turning_points(place, 5.0)]
    backward = place[::-1][turning_points(place[::-1], 5.0)]
    np.testing.assert_array_equal(forward, backward[::-1])
