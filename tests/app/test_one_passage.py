"""Whatever is gone to, every view of Review shows one and the same passage."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.main_window import Window


def press_marker(window: Window, row: int) -> None:
    table = window.page.markers.table
    spot = table.visualRect(table.model().index(row, 0)).center()
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=spot)


def press_crossing(window: Window, index: int) -> None:
    rows = window.page.events.list
    place = next(
        at
        for row in range(rows.model().rowCount())
        if (at := rows.model().index(row, 0)).data(Qt.ItemDataRole.UserRole + 1) == index
    )
    rows.scrollTo(place)
    QTest.mouseClick(rows.viewport(), Qt.MouseButton.LeftButton, pos=rows.visualRect(place).center())


def test_a_marker_that_is_gone_to_takes_the_crossing_in_which_it_lies_along(review: Window) -> None:
    focus, page = review.focus, review.page
    other, crossings = focus.passages[8], page.events.list
    review.desk.markers.mark_moment(focus.passages[4].time.centre)
    review.desk.markers.mark_moment(focus.passages[4].time.stop + 0.3)
    focus.show_record(other.record)
    review.desk.markers.mark_time(other.time.widened(-0.2 * other.time.length))
    for row, passage in ((0, 4), (2, 8)):
        press_crossing(review, 1)
        assert focus.passage == 1
        press_marker(review, row)
        marker = review.desk.markers.chosen
        assert marker is review.desk.keeper.review.markers[row]
        assert focus.passage == passage
        assert crossings.currentIndex().data(Qt.ItemDataRole.UserRole + 1) == passage
        assert page.track.singled_out == (passage,)
        assert focus.record is not None
        assert focus.record.name == focus.passages[passage].record
        assert focus.window.overlap(focus.passages[passage].time) > 0.0
    press_crossing(review, 1)
    press_marker(review, 1)
    assert review.desk.markers.chosen is not None
    assert focus.passage is None
    assert not crossings.selectionModel().hasSelection()
    assert not page.track.singled_out
