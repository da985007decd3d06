"""The time of two traces: linked, free, aligned by hand, and its history."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest

from analysis.captures.memory import make_record
from analysis.captures.model import Record, Role, Scaling
from analysis.intervals import Interval
from app.compare.focus import CompareFocus


@dataclass
class Clock:
    now_s: float = 0.0

    def __call__(self) -> float:
        self.now_s += 1.0  # every step is a gesture of its own
        return self.now_s


def _record(duration_s: float, interval_s: float = 0.001, first_s: float = 0.0) -> Record:
    samples = np.zeros(round(duration_s / interval_s))
    made = make_record("001", interval_s, {Role.SIGNAL: (samples, Scaling())})
    return Record("001", interval_s, made.channels, first_sample_s=first_s)


@pytest.fixture
def focus() -> CompareFocus:
    made = CompareFocus(Clock())
    made.take(_record(10.0), _record(6.0, 0.002))
    return made


def test_linked_both_show_the_longer_of_the_two_from_one_beginning(focus: CompareFocus) -> None:
    assert focus.linked
    assert focus.windows == (Interval(0.0, 10.0), Interval(0.0, 10.0))


def test_records_that_begin_at_other_times_are_laid_on_their_beginnings() -> None:
    focus = CompareFocus(Clock())
    focus.take(_record(5.0, first_s=2.0), _record(5.0, first_s=7.5))
    assert focus.windows == (Interval(2.0, 7.0), Interval(7.5, 12.5))


@pytest.mark.parametrize("side", [0, 1])
def test_linked_a_zoom_of_one_is_the_same_zoom_of_the_other(focus: CompareFocus, side: int) -> None:
    focus.zoom(0.5, side, 4.0)
    assert focus.windows[0] == focus.windows[1]
    assert focus.windows[0].length == pytest.approx(5.0)
    assert (4.0 - focus.windows[0].start) / 5.0 == pytest.approx(0.4)


def test_let_go_each_moves_alone_within_its_own_record(focus: CompareFocus) -> None:
    focus.link(False)
    focus.show_window(1, Interval(2.0, 4.0))
    assert focus.windows == (Interval(0.0, 10.0), Interval(2.0, 4.0))
    focus.show_window(1, Interval(5.0, 9.0))
    assert focus.windows[1] == Interval(2.0, 6.0)


def test_linked_again_they_go_on_as_they_stand(focus: CompareFocus) -> None:
    focus.link(False)
    focus.show_window(0, Interval(3.0, 5.0))
    focus.show_window(1, Interval(1.0, 3.0))
    focus.link(True)
    assert focus.offset_s == pytest.approx(-2.0)
    assert focus.windows == (Interval(3.0, 5.0), Interval(1.0, 3.0))
    focus.pan(0.5, 1)
    assert focus.windows == (Interval(4.0, 6.0), Interval(2.0, 4.0))


def test_aligned_a_moment_of_one_lies_over_its_fellow_of_the_other(focus: CompareFocus) -> None:
    focus.align(1.25)
    focus.point(0, 3.0)
    assert focus.moments == (3.0, 4.25)
    focus.point(1, 3.0)
    assert focus.moments == (1.75, 3.0)
    focus.link(False)
    assert focus.moments[0] is None


def test_a_nudge_to_later_moves_the_second_to_the_right(focus: CompareFocus) -> None:
    focus.show_window(0, Interval(2.0, 4.0))
    focus.point(1, 3.0)
    before = focus.moments[0]
    focus.nudge(0.01)
    assert before is not None
    assert focus.moments[0] == pytest.approx(before + 0.02)


def test_the_limits_reach_from_the_earlier_beginning_to_the_later_end(focus: CompareFocus) -> None:
    focus.align(-3.0)  # the second record begins 3 s after the first
    focus.show_whole()
    assert focus.windows[0] == Interval(0.0, 10.0)
    focus.align(2.0)
    focus.show_whole()
    assert focus.windows[0] == Interval(-2.0, 10.0)
    assert focus.windows[1] == Interval(0.0, 12.0)


def test_no_zoom_shows_fewer_samples_than_the_slower_record_has_to_show(focus: CompareFocus) -> None:
    focus.show_window(0, Interval(4.0, 4.0001))
    assert focus.windows[0].length == pytest.approx(8 * 0.002)


def test_back_and_forward_go_through_earlier_views_of_both(focus: CompareFocus) -> None:
    focus.zoom(0.5, 0, 4.0)
    focus.link(False)
    focus.show_window(1, Interval(1.0, 2.0))
    shown = focus.windows
    focus.back()
    assert focus.windows != shown
    focus.forward()
    assert focus.windows == shown


def test_swapping_keeps_what_is_seen_of_each(focus: CompareFocus) -> None:
    focus.align(1.0)
    focus.show_window(0, Interval(2.0, 4.0))
    before = focus.windows
    focus.swapped()
    assert focus.windows == (before[1], before[0])
    assert focus.offset_s == -1.0
    focus.pan(0.5, 0)
    assert focus.windows[1].start == pytest.approx(focus.windows[0].start - 1.0)


def test_with_one_record_missing_the_other_can_still_be_looked_at() -> None:
    focus = CompareFocus(Clock())
    focus.take(_record(10.0), None)
    focus.zoom(0.5)
    assert focus.windows[0].length == pytest.approx(5.0)
    focus.show_window(1, Interval(0.0, 1.0))
    assert focus.windows[0].length == pytest.approx(5.0)


def test_being_told_the_same_twice_changes_nothing(focus: CompareFocus) -> None:
    first, second = _record(4.0), _record(3.0)
    focus.take(first, second)
    focus.zoom(0.5, 0, 1.0)
    shown = focus.windows
    focus.take(first, second)
    focus.link(True)
    assert focus.windows == shown
