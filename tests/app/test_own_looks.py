"""Four elements that come out looking like somebody's program when built the obvious way are built our way.

Each is looked at in the picture itself as well as in what it is made of; `test_pictures` saves all screens.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractSlider,
    QGraphicsTextItem,
    QGraphicsView,
    QPushButton,
    QScrollBar,
    QToolButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from app.drawing.axes import QuietAxis
from app.drawing.row_delegate import ROW_ROLE, Row
from app.drawing.theme import LIGHT
from app.main_window import Window
from app.views.overview import OverviewView
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture
from tests.app.test_pictures import DIALOGS, enter


def pixels(widget: QWidget) -> np.ndarray:
    """Red, green and blue of a widget's picture, shape (height, width, 3)."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    seen = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    return np.asarray(seen, dtype=np.int64)


def shows(picture: np.ndarray, colour: str | QColor, within: int = 12) -> np.ndarray:
    """Where a picture shows a colour, shape (height, width)."""
    wanted = QColor(colour)
    away = np.abs(picture - np.array([wanted.red(), wanted.green(), wanted.blue()])).max(axis=2)
    return np.asarray(away <= within)


def is_grey(colour: QColor) -> bool:
    parts = (colour.red(), colour.green(), colour.blue())
    return max(parts) - min(parts) < 20


def test_every_icon_is_drawn_in_one_colour_and_used_somewhere() -> None:
    root = Path(__file__).parents[2]
    text = "".join(path.read_text(encoding="utf-8") for path in (root / "app").rglob("*.py"))
    for path in sorted((root / "icons").glob("*.svg")):
        drawn = path.read_text(encoding="utf-8")
        assert "currentColor" in drawn, path.name
        assert "#" not in drawn, path.name
        assert f'"{path.stem}"' in text, path.name


@pytest.mark.parametrize("screen", DIALOGS)
def test_the_buttons_of_a_dialog_have_no_pictures_of_the_style(
    qtbot: QtBot, review: Window, tmp_path: Path, screen: str
) -> None:
    dialog = enter(qtbot, review, screen, tmp_path)
    buttons = dialog.findChildren(QPushButton)
    assert buttons
    assert all(button.icon().isNull() for button in buttons)
    dialog.close()


# -- Records: a checklist by step with its outcome, not a row of numbered small screens with back and forward


def test_records_is_a_checklist_of_steps_with_their_outcome_in_words(review: Window) -> None:
    rows = review.page.records.list.rows
    seen: list[Row] = [rows.item(place).data(ROW_ROLE) for place in range(rows.rowCount())]
    assert [row.title for row in seen] == ["Ground", "Reference", "Wiggle", "Sweep 1", "Sweep 2", "Hold"]
    assert all(row.mark in ("pass", "fail", "unsure", "missing") for row in seen)
    assert all(row.detail for row in seen)
    assert not any(row.title[:1].isdigit() for row in seen)


def test_records_holds_no_small_pictures_of_traces_and_no_back_and_forward(review: Window) -> None:
    picture = pixels(review.page.records)
    for role in (Role.SIGNAL, Role.REFERENCE):
        assert not shows(picture, LIGHT.role(role)).any()
    tools = [tool for tool in review.page.records.findChildren(QToolButton) if tool.isVisible()]
    assert [tool.defaultAction() for tool in tools] == [review.actions_by_name["describe"]]


# -- Markers: on the samples, read out in the table; nothing pulled in from an edge, no floating box of values


def test_a_marker_sits_on_its_sample_and_its_value_stands_in_the_table_alone(
    qtbot: QtBot, review: Window
) -> None:
    trace = review.page.trace
    review.focus.point(2.0)
    QTest.keyClick(review, Qt.Key.Key_M)
    qtbot.waitUntil(lambda: "Signal" in dict(review.page.markers.readings.rows))
    lane = trace.lanes[0]
    signal_v = 5.0 * 92.0 / 100.0  # the arm stands at 92 % then
    sheet = trace.findChild(QGraphicsView)
    assert sheet is not None
    spot = sheet.mapFromScene(lane.box.to_scene(2.0, signal_v))
    diamonds = shows(pixels(trace.canvas), LIGHT.choice)
    near = diamonds[spot.y() - 4 : spot.y() + 5, spot.x() - 4 : spot.x() + 5]
    assert near.mean() > 0.4
    written = [item.toPlainText() for item in sheet.scene().items() if isinstance(item, QGraphicsTextItem)]
    assert not [text for text in written if any(unit in text for unit in (" V", "mV", "Δ"))]
    assert dict(review.page.markers.readings.rows)["Signal"][0].startswith("4.6")


@pytest.mark.parametrize("edge", ["left", "top"])
def test_nothing_is_pulled_in_from_the_edge_of_a_plot(review: Window, edge: str) -> None:
    trace = review.page.trace
    middle = trace.viewport_point(6.0).toPoint()
    first = trace.viewport_point(review.focus.window.start).toPoint()
    start = QPoint(first.x() - 8, middle.y()) if edge == "left" else QPoint(middle.x(), 2)
    hands.drag(trace.canvas, start, middle)
    assert review.keeper.review.markers == ()
    assert trace.marks.marks == ()


# -- Lanes, or one neutral axis: no coloured axis for each channel, no colour by order, no role no colour


@pytest.mark.parametrize("lanes", [True, False])
def test_axes_are_neutral_and_on_one_axis_there_is_one(review: Window, lanes: bool) -> None:
    if not lanes:
        QTest.keyClick(review, Qt.Key.Key_L)
    trace = review.page.trace
    assert len(trace.lanes) == (3 if lanes else 1)
    upright = [axis for lane in trace.lanes for axis in lane.axes if axis.orientation == "left"]
    assert len(upright) == len(trace.lanes)
    for axis in upright:
        assert isinstance(axis, QuietAxis)
        assert axis.textPen().color().name() == QColor(LIGHT.quiet).name()
        assert axis.pen().color().name() == QColor(LIGHT.line).name()
    figures = pixels(trace.canvas)[:, : int(trace.lanes[0].box.sceneBoundingRect().left()) - 3]
    below_names = figures[24:]
    for role in (Role.SIGNAL, Role.REFERENCE):
        assert shows(below_names, LIGHT.role(role), within=6).sum() < 40  # at most a name's foot


def test_colours_follow_the_role_and_not_the_order_and_without_a_role_it_is_grey(
    qtbot: QtBot, bench: Bench, window: Window
) -> None:
    capture = worn_capture()
    record = capture.records[3]
    turned = tuple(reversed(record.channels))
    nameless = replace(turned[0], role=None)
    bench.capture = replace(capture, records=(replace(record, channels=(nameless, *turned[1:])),))
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    drawn = {channel.name: curve for lane in window.page.trace.lanes for curve, channel in lane.curves}
    assert drawn["signal"].colour.name().upper() == "#009E73"  # Okabe and Ito 2008, bluish green
    assert drawn["reference"].colour.name().upper() == "#E69F00"  # the same, orange
    assert is_grey(drawn["ground"].colour)


# -- Playback along the track: the dot is the arm; no transport bar


def test_there_is_no_transport_bar_and_the_dot_on_the_track_is_what_moves(review: Window) -> None:
    others = (QScrollBar, OverviewView)  # the overview moves what is shown, and not the arm
    assert [item for item in review.findChildren(QAbstractSlider) if not isinstance(item, others)] == []
    running = {"run", "run_crossing", "run_onward", "repeat", "slower", "faster", "arm_back", "arm_on"}
    shown = [
        tool.defaultAction().objectName()
        for tool in review.page.findChildren(QToolButton)
        if tool.isVisible() and tool.defaultAction() is not None
    ]
    assert [name for name in shown if name in running] == ["run"]
    track = review.page.track
    before = track.arm_position()
    assert before is not None
    spot = track.viewport_point(before, 0.0).toPoint()
    dark = shows(pixels(track.canvas), LIGHT.ink)
    assert dark[spot.y() - 3 : spot.y() + 2, spot.x() - 3 : spot.x() + 4].all()
    hands.drag(track.canvas, spot, track.viewport_point(60.0, 0.0).toPoint(), 12)
    assert track.arm_position() == pytest.approx(60.0, abs=1.0)
