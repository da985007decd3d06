"""Labels of markers on the plots: each can be read, and none hides another."""

from __future__ import annotations

from itertools import combinations

from PySide6.QtCore import QRectF
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from app.drawing.mark_item import beside
from app.main_window import Window

PLOT = QRectF(0.0, 0.0, 400.0, 100.0)


def test_a_label_goes_a_row_further_where_it_would_cover_another() -> None:
    first, second = QRectF(100.0, 80.0, 60.0, 18.0), QRectF(130.0, 80.0, 60.0, 18.0)
    assert beside(first, [], PLOT) == first
    moved = beside(second, [first], PLOT)
    assert not moved.intersects(first)
    assert moved.left() == second.left()
    assert first.top() - 20.0 < moved.top() < first.top()
    third = beside(second, [first, moved], PLOT)
    assert not third.intersects(first)
    assert not third.intersects(moved)


def test_a_label_at_the_head_goes_down_and_one_without_room_stays() -> None:
    head = QRectF(100.0, 3.0, 60.0, 18.0)
    assert beside(head, [head], PLOT).top() > head.top()
    low = QRectF(0.0, 0.0, 400.0, 20.0)
    plate = QRectF(100.0, 1.0, 60.0, 18.0)
    assert beside(plate, [plate], low) == plate


def test_labels_of_stretches_close_to_each_other_are_all_in_sight_whichever_is_chosen(
    qtbot: QtBot, review: Window
) -> None:
    for start, label in ((60.0, "clean part of the track"), (63.0, "and here"), (66.0, "3")):
        review.desk.markers.mark_stretch(Interval(start, start + 10.0))
        review.desk.markers.rename(review.keeper.review.markers[-1].marker_id, label)
    painted = review.page.track.marks._plots[0][1]

    def plates() -> dict[str, QRectF]:
        return {mark.label: plate for plate, mark in painted._plates}

    qtbot.waitUntil(lambda: "3" in plates() and "and here" in plates())
    before = plates()
    assert not [pair for pair in combinations(before.values(), 2) if pair[0].intersects(pair[1])]
    review.desk.markers.choose(review.keeper.review.markers[0].marker_id)
    qtbot.waitUntil(lambda: painted._plates[-1][1].label == "clean part of the track")
    assert plates() == before
