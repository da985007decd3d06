from __future__ import annotations

from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from analysis.diagnosis.findings import Event, VerdictCode
from analysis.intervals import Interval
from app.review.focus import LEAST_SAMPLES, Focus, clipped, whole
from app.review.passages import passages
from tests.app.clocks import Clock, clock, focus
from tests.app.fakes import wiring_findings, worn_capture, worn_findings

__all__ = ["clock", "focus"]  # fixtures


def test_zooming_in_and_out_by_the_same_factor_comes_back(focus: Focus) -> None:
    focus.show_window(Interval(3.0, 5.0))
    focus.zoom(0.5, 3.5)
    focus.zoom(2.0, 3.5)
    assert focus.window.start == pytest.approx(3.0)
    assert focus.window.stop == pytest.approx(5.0)


def test_no_view_leaves_the_record_or_shows_less_than_a_few_samples(focus: Focus) -> None:
    assert focus.record is not None
    for wanted in (Interval(-5, 1), Interval(11, 40), Interval(-9, 99), Interval(3.0, 3.0)):
        focus.show_window(wanted)
        limits = whole(focus.record)
        assert limits.start <= focus.window.start < focus.window.stop <= limits.stop
        assert focus.window.length >= 0.999 * LEAST_SAMPLES * focus.record.sample_interval_s


def test_moving_stops_at_the_ends_without_changing_the_zoom(focus: Focus) -> None:
    focus.show_window(Interval(10.0, 11.5))
    focus.pan(5.0)
    assert focus.window.stop == pytest.approx(12.0)
    assert focus.window.length == pytest.approx(1.5)
    focus.pan(-50.0)
    assert focus.window.start == pytest.approx(0.0)


def test_a_quick_series_of_notches_is_one_step_back(focus: Focus, clock: Clock) -> None:
    before = focus.window
    clock.now_s = 10.0
    for _ in range(5):
        clock.now_s += 0.1
        focus.zoom(0.8)
    focus.back()
    assert focus.window == before


def test_slow_changes_are_steps_of_their_own(focus: Focus, clock: Clock) -> None:
    seen = [focus.window]
    for _ in range(3):
        clock.now_s += 5.0
        focus.zoom(0.8)
        seen.append(focus.window)
    for expected in reversed(seen[:-1]):
        focus.back()
        assert focus.window == expected
    focus.back()
    assert focus.window == seen[0]


def test_the_clearest_crossing_is_the_one_with_the_most_break_up(focus: Focus) -> None:
    focus.open_band(0)
    assert focus.passage is not None
    most = max(item.breakup_percent for item in focus.passages)
    assert focus.passages[focus.passage].breakup_percent == most


def test_stepping_with_a_chosen_band_stays_on_that_band(focus: Focus) -> None:
    focus.choose_band(0)
    for _ in range(4):
        focus.step(1)
        assert focus.passage is not None
        assert focus.passages[focus.passage].band == 0


def test_stepping_begins_at_what_is_shown(focus: Focus) -> None:
    names = [item.record for item in focus.passages]
    focus.show_record("005")
    focus.step(1)
    assert focus.passage == names.index("005")
    focus.choose_band(None)
    focus.show_record("004")
    focus.step(-1)
    assert focus.passage == names.index("005") - 1
    focus.choose_band(None)
    third = focus.passages[2].time
    focus.show_window(Interval(third.stop + 0.01, third.stop + 0.2))
    focus.step(1)
    assert focus.passage == 3


def test_what_was_chosen_stays_chosen_where_an_examination_finds_it_again(focus: Focus) -> None:
    found = worn_findings()
    focus.choose_passage(3)
    focus.learn(found)
    assert (focus.band, focus.passage) == (0, 3)
    other = replace(found.bands[0], travel=Interval(80.0, 84.0), crossings=())
    focus.learn(replace(found, bands=(other, replace(found.bands[0], travel=Interval(43.0, 49.0)))))
    assert focus.band == 1
    assert focus.passage is not None
    assert focus.passages[focus.passage].band == 1


def test_what_is_not_found_again_is_not_chosen_any_more(focus: Focus) -> None:
    found = worn_findings()
    for bands in ((), (replace(found.bands[0], track=Role.SECOND_SIGNAL, crossings=()),)):
        focus.learn(found)
        focus.choose_passage(3)
        focus.learn(replace(found, bands=bands))
        assert (focus.band, focus.passage) == (None, None)


def test_events_without_a_band_are_stepped_to_in_the_order_of_the_capture(qtbot: QtBot) -> None:
    focus = Focus()
    focus.start(worn_capture())
    focus.learn(wiring_findings())
    order = []
    for _ in range(4):
        focus.step(1)
        assert focus.record is not None
        order.append(focus.record.name)
    assert order == ["003", "003", "004", "005"]


def test_following_a_moment_turns_the_page_and_leaves_the_history_alone(focus: Focus) -> None:
    focus.show_window(Interval(1.0, 2.0))
    views = focus.history.views
    focus.follow(2.5)
    assert focus.window.contains(2.5)
    assert focus.window.length == pytest.approx(1.0)
    assert focus.history.views == views


def test_a_window_that_fits_is_not_changed() -> None:
    record = worn_capture().records[3]
    assert clipped(Interval(2.0, 3.0), record) == Interval(2.0, 3.0)


def _events(*depths_v: float) -> tuple[Event, ...]:
    return tuple(
        Event("004", Interval(place, place + 0.01), (Role.SIGNAL,), depth_v, None, "drop")
        for place, depth_v in enumerate(depths_v)
    )


def test_events_far_shallower_than_the_deepest_are_not_stepped_to() -> None:
    findings = replace(wiring_findings(), events=_events(-1.8, -0.01, 0.02, -0.5))
    assert [item.depth_v for item in passages(findings)] == [-1.8, -0.5]


def test_beside_a_likely_band_only_its_crossings_are_stepped_to() -> None:
    findings = replace(worn_findings(), events=_events(-1.8))
    assert len(passages(findings)) == 12
    assert all(item.band == 0 for item in passages(findings))


def test_where_no_fault_was_found_there_is_nothing_to_step_to() -> None:
    verdict = replace(worn_findings().verdict, code=VerdictCode.NO_FAULT_FOUND)
    assert passages(replace(wiring_findings(), verdict=verdict)) == ()


def test_the_first_look_is_where_the_finding_is_and_not_a_step_to_go_back_from(focus: Focus) -> None:
    assert focus.record is not None
    assert focus.record.name == "004"
    assert not focus.history.can_go_back
