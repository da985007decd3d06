"""What is never scrolled away or moved from under the pointer: the verdict, and the card at work."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QToolButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.progress import Tick
from app.drawing.theme import LIGHT, style_sheet
from app.main_window import Window
from app.views.band_card import BandCard
from app.views.caution_strip import CautionStrip
from app.views.headline import Headline
from tests.app.conftest import Bench
from tests.app.fakes import worn_findings
from tests.app.stage import still
from tests.app.tongues import worn_in

SIZES = ((1366, 768), (960, 540))
REASON = "Kratzer am Stecker, von beiden Meistern zweimal gesehen und mit dem Rekorder noch einmal gemessen"


def with_three_bands(capture: Capture, tick: Tick) -> Findings:
    found = worn_findings(capture, tick)
    first = found.bands[0]
    more = [replace(first, travel=Interval(start, start + 4.0)) for start in (60.0, 75.0)]
    return replace(found, bands=(first, *more))


@pytest.fixture
def bench() -> Bench:
    return Bench(findings=with_three_bands)


@pytest.fixture(params=SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
def german(
    qtbot: QtBot, qapp: QApplication, bench: Bench, request: pytest.FixtureRequest
) -> Iterator[Window]:
    """Three bands examined, in German, at a size."""
    for made in worn_in(qtbot, qapp, bench, "de"):
        made.setMinimumSize(0, 0)
        made.resize(*request.param)
        still(qtbot, made)
        assert (made.width(), made.height()) == request.param
        yield made


def cards(window: Window) -> list[BandCard]:
    return window.page.evidence.findChildren(BandCard)


def wholly_seen(widget: QWidget) -> bool:
    """Whether all of it is in sight, and as high as its lines."""
    room = widget.heightForWidth(widget.width()) if widget.hasHeightForWidth() else widget.sizeHint().height()
    return widget.visibleRegion().boundingRect() == widget.rect() and widget.height() >= room


def test_the_verdict_and_how_sure_it_is_stay_in_sight_whatever_is_done_below(
    qtbot: QtBot, german: Window
) -> None:
    evidence = german.page.evidence
    told = evidence.findChildren(Headline)
    assert [bool(line.text()) for line in told] == [True, True]
    assert "99" in told[1].text() or "97" in told[1].text()
    qtbot.waitUntil(lambda: all(map(wholly_seen, told)))
    german.actions_by_name["next_band"].trigger()
    german.actions_by_name["dismiss"].trigger()
    reason = cards(german)[0].reason
    QTest.keyClicks(reason, REASON)
    QTest.keyClick(reason, Qt.Key.Key_Return)
    for moment_s in (1.0, 2.0, 3.0, 4.0):
        german.desk.markers.mark_moment(moment_s)
    qtbot.waitUntil(lambda: bool(german.page.markers.readings.rows))
    qtbot.waitUntil(lambda: all(map(wholly_seen, told)))
    bar = evidence.rows_area.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())
    QApplication.processEvents()
    assert all(map(wholly_seen, told))
    assert evidence.rows_area.viewport().height() >= 40  # two lines of what it stands on, at the least
    strip = evidence.findChild(CautionStrip)
    assert strip is not None
    more = strip.findChild(QToolButton)
    assert more is not None
    QTest.mouseClick(more, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: all(map(wholly_seen, told)))


def test_every_caution_can_be_read_where_there_is_no_room_for_all_of_them(
    qtbot: QtBot, german: Window
) -> None:
    strip = german.page.evidence.findChild(CautionStrip)
    assert strip is not None
    more = strip.findChild(QToolButton)
    assert more is not None
    QTest.mouseClick(more, Qt.MouseButton.LeftButton)
    lines = [label for label in strip.findChildren(QLabel) if label.property("quiet")]
    area = strip.findChild(QScrollArea)
    assert area is not None
    assert len(lines) > 1
    qtbot.waitUntil(lambda: strip.visibleRegion().boundingRect() == strip.rect())
    bar = area.verticalScrollBar()
    still(qtbot, german)  # the layout is done
    assert (bar.maximum() > 0) == (german.width() == 960)
    if bar.maximum() > 0:
        more.setFocus()
        QTest.keyClick(more, Qt.Key.Key_Tab)
        assert area.hasFocus()
        for _ in range(100):
            QTest.keyClick(area, Qt.Key.Key_Down)
    last, seen = lines[-1], area.viewport()
    assert seen.rect().contains(last.mapTo(seen, last.rect().bottomLeft()))
    assert last.height() >= last.heightForWidth(last.width())


def test_the_first_caution_is_whole_after_there_was_less_room_for_a_while(qtbot: QtBot) -> None:
    strip, holder = CautionStrip(), QWidget()
    column = QVBoxLayout(holder)
    column.addWidget(strip)
    column.addStretch(1)
    qtbot.addWidget(holder)
    holder.setStyleSheet(style_sheet(LIGHT))
    holder.resize(300, 600)
    with qtbot.waitExposed(holder):
        holder.show()
    area = strip.findChild(QScrollArea)
    assert area is not None
    first = next(label for label in area.findChildren(QLabel) if label.isVisible())
    for width in range(300, 700, 7):  # at some of them a line more is needed beside a bar
        holder.resize(width, 600)
        for room_px in (70, 500):
            strip.leave_room(room_px)
            still(qtbot, holder)
        assert not area.verticalScrollBar().isVisible()
        assert wholly_seen(first)


def middle(window: Window, card: BandCard) -> int:
    """Where the head of a card stands on the window."""
    return card.mapTo(window, QPoint(0, 12)).y()


def test_a_card_that_is_pressed_stays_under_the_pointer_while_the_one_above_closes(
    qtbot: QtBot, german: Window
) -> None:
    evidence, (first, second, third) = german.page.evidence, cards(german)
    QTest.mouseClick(first, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
    qtbot.waitUntil(first._tool_row.isVisible)
    for pressed in (second, third):
        QApplication.processEvents()
        evidence.rows_area.ensureWidgetVisible(pressed, 0, 0)
        before = middle(german, pressed)
        QTest.mouseClick(pressed, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
        qtbot.waitUntil(pressed._tool_row.isVisible)
        QApplication.processEvents()  # Qt gives everything its place after the event
        assert middle(german, pressed) == before
    QTest.mouseClick(first, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
    evidence.rows_area.verticalScrollBar().setValue(0)
    evidence.rows_area.ensureWidgetVisible(second, 0, 0)
    before = middle(german, second)
    with qtbot.waitSignal(second.opened):
        at = second.mapTo(german, QPoint(60, 12))
        for _ in range(2):
            under = german.childAt(at)
            assert under is not None
            assert under is second or second.isAncestorOf(under)
            QTest.mouseClick(second, Qt.MouseButton.LeftButton, pos=second.mapFrom(german, at))
        QTest.mouseDClick(second, Qt.MouseButton.LeftButton, pos=second.mapFrom(german, at))
    assert middle(german, second) == before


def test_the_room_above_a_pressed_card_closes_when_the_pointer_leaves(qtbot: QtBot, german: Window) -> None:
    german.resize(1366, 1400)  # nothing scrolls
    evidence, (first, second, _) = german.page.evidence, cards(german)
    QTest.mouseClick(first, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
    qtbot.waitUntil(first._tool_row.isVisible)
    qtbot.waitUntil(lambda: evidence.rows_area.verticalScrollBar().maximum() == 0)
    usual = second.y() - first.geometry().bottom()
    QTest.mouseClick(second, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
    qtbot.waitUntil(lambda: second.y() - first.geometry().bottom() > usual)
    QApplication.sendEvent(evidence, QEvent(QEvent.Type.Leave))
    qtbot.waitUntil(lambda: second.y() - first.geometry().bottom() == usual)
