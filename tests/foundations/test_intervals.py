"""The one interval convention and its algebra."""

from __future__ import annotations

from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.intervals import Interval, union

POINTS = st.integers(-20, 20)
INTERVALS = st.tuples(POINTS, POINTS).map(lambda pair: Interval(min(pair), max(pair)))


def test_an_interval_holds_its_start_but_not_its_stop() -> None:
    assert Interval(2.0, 3.0).contains(2.0)
    assert not Interval(2.0, 3.0).contains(3.0)
    assert not Interval(2.0, 2.0).contains(2.0)


def test_length_centre_and_widening_are_those_of_the_number_line() -> None:
    item = Interval(42.0, 48.0)
    assert (item.length, item.centre) == (6.0, 45.0)
    assert item.widened(1.5) == Interval(40.5, 49.5)


@pytest.mark.parametrize(("start", "stop"), [(2.0, 1.0), (float("nan"), 1.0), (1.0, float("nan"))])
def test_an_interval_that_ends_before_it_begins_is_refused(start: float, stop: float) -> None:
    with pytest.raises(ValueError, match="start must not lie after stop"):
        Interval(start, stop)


@given(one=INTERVALS, other=INTERVALS)
def test_overlap_counts_the_whole_numbers_that_both_hold(one: Interval, other: Interval) -> None:
    shared = sum(one.contains(point) and other.contains(point) for point in range(-21, 22))
    assert one.overlap(other) == other.overlap(one) == shared


@given(items=st.lists(INTERVALS, max_size=8))
def test_a_union_holds_just_the_points_that_any_member_holds(items: list[Interval]) -> None:
    merged = union(items)
    for point in range(-21, 22):
        assert any(item.contains(point) for item in merged) == any(item.contains(point) for item in items)
    assert all(one.stop < other.start for one, other in pairwise(merged))


@given(items=st.lists(INTERVALS, max_size=8), order=st.randoms(use_true_random=False))
def test_a_union_does_not_depend_on_the_order(items: list[Interval], order: Random) -> None:
    shuffled = sorted(items, key=lambda _: order.random())
    assert union(shuffled, gap=2.0) == union(items, gap=2.0)


def test_a_union_bridges_gaps_up_to_the_one_that_is_allowed() -> None:
    apart = [Interval(0, 1), Interval(3, 4)]
    assert union(apart, gap=1.9) == tuple(apart)
    assert union(apart, gap=2.0) == (Interval(0, 4),)
    assert union([Interval(0, 9), Interval(2, 3)]) == (Interval(0, 9),)
    assert union([]) == ()
