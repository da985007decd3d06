"""What is edited, adjusted and measured says what it is, where it stands."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from app.drawing.mark_item import plate_of
from app.drawing.theme import DARK
from app.drawing.track_items import ArmItem
from app.main_window import Window


def test_the_record_that_is_edited_is_named_and_in_sight(review: Window, qtbot: QtBot) -> None:
    review.resize(1366, 560)
    review.focus.show_record("005")
    QTest.keyClick(review, Qt.Key.Key_F4)
    records = review.page.records
    heads = [item.text() for item in records.form.findChildren(QLabel) if item.objectName() == "paneTitle"]
    assert heads[0] == "Edit: Sweep 2"
    assert "Signal" in heads
    assert "signal" not in heads

    def in_sight() -> bool:
        row = records.list.visualRect(records.list.currentIndex())
        return records.list.viewport().rect().contains(row)

    qtbot.waitUntil(in_sight)


def test_an_adjusted_band_carries_the_technicians_edges_and_those_that_were_found(review: Window) -> None:
    review.focus.choose_band(0)
    review.desk.decisions.adjust(0, Interval(40.5, 50.5))
    label = review.page.track.stretches[0].label
    assert label.startswith("yours 40.5–50.5 %")
    assert "found 41.9–47.7 %" in label


def test_a_label_on_the_track_stands_above_the_dot_of_the_arm(review: Window) -> None:
    room = review.page.track.marks.foot_px
    plot = QRectF(0, 0, 400, 200)
    plate = plate_of(200.0, (40.0, 16.0), [], plot.adjusted(0, 0, 0, -room))
    dot_top = plot.bottom() - 2 * ArmItem.RADIUS_PX - 3
    assert plate.bottom() <= dot_top
    assert plot.contains(QPointF(plate.center()))


def test_the_axis_of_break_up_says_its_unit_beside_each_figure(review: Window) -> None:
    axis = review.page.track._axes[0]
    assert axis.tickStrings([0.0, 20.0], 1.0, 20.0) == ["0 %", "20 %"]


def test_a_list_that_opens_has_no_bright_edges_in_the_dark(review: Window, qtbot: QtBot) -> None:
    review.apply_palette(DARK)
    QTest.keyClick(review, Qt.Key.Key_F4)
    box = next(item for (_, _, key), item in review.page.records.form.boxes.items() if key == "step")
    box.showPopup()
    popup = box.view().window()
    qtbot.waitUntil(popup.isVisible)
    drawn = popup.grab().toImage()
    edges = [
        drawn.pixelColor(drawn.width() // 2, y) for y in (0, 1, 2, drawn.height() - 2, drawn.height() - 1)
    ]
    box.hidePopup()
    assert max(edge.lightness() for edge in edges) < 200
