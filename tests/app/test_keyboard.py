"""The keyboard alone: Tab reaches everything and comes back, what it is on is seen, panes have a key."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtGui import QAccessible, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPlainTextEdit, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from app.actions import menu_names
from app.main_window import Window
from app.views.band_card import BandCard
from app.views.caution_strip import CautionStrip
from app.views.flow_row import FlowRow
from app.views.pane import Pane
from app.views.press_row import PressRow
from app.views.record_form import RecordForm
from tests.app.test_pictures import DIALOGS, bench, enter
from tests.app.tongues import speaking

__all__ = ["bench"]  # the worn capture of a car whose heights are known

_MOST_STOPS = 200
_SEEN = 40  # of 255: a ring that anybody sees


def around(stop: QWidget) -> np.ndarray:
    """What its window shows where a control is, and a little around it."""
    window = stop.window()
    box = stop.rect().translated(stop.mapTo(window, QPoint(0, 0))).adjusted(-3, -3, 3, 3)
    image = window.grab(box.intersected(window.rect())).toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].astype(np.int64)


def by_tab(window: QWidget, key: Qt.Key = Qt.Key.Key_Tab) -> Iterator[QWidget]:
    """Every control that Tab comes to, until it comes back to the first one."""
    first: QWidget | None = None
    for _ in range(_MOST_STOPS):
        QTest.keyClick(QApplication.focusWidget() or window, key)
        now = QApplication.focusWidget()
        assert now is not None
        if now is first:
            return
        first = first or now
        yield now
    pytest.fail("Tab does not come back")


def name_of(stop: QWidget) -> str:
    return f"{type(stop).__name__} {QAccessible.queryAccessibleInterface(stop).text(QAccessible.Text.Name)}"


def in_front(qtbot: QtBot, widget: QWidget) -> None:
    widget.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is widget)


SCREENS = ("record", "compared", "report", "import", "watch", "why", *DIALOGS)
LOOKS = [*((screen, "dark") for screen in SCREENS), ("record", "light")]  # of Review with a record's words


@pytest.mark.parametrize(("screen", "theme"), LOOKS)
def test_everything_that_tab_comes_to_is_in_sight_and_looks_different_then(
    qtbot: QtBot, review: Window, tmp_path: Path, screen: str, theme: str
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    review.setMinimumSize(1366, 768)
    widget = enter(qtbot, review, screen, tmp_path)
    in_front(qtbot, widget)
    unseen = []
    for stop in by_tab(widget):
        with_focus = around(stop)
        visible = stop.visibleRegion().boundingRect().height()
        stop.clearFocus()
        without = around(stop)
        stop.setFocus(Qt.FocusReason.TabFocusReason)
        if (np.abs(with_focus - without) > _SEEN).sum() < 20 or visible < min(10, stop.height()):
            unseen.append(name_of(stop))
    assert unseen == []
    if widget is not review:
        widget.close()


def test_tab_leaves_the_address_of_the_workshop(qtbot: QtBot, review: Window, tmp_path: Path) -> None:
    form = enter(qtbot, review, "workshop", tmp_path)
    in_front(qtbot, form)
    kinds = [type(stop) for stop in by_tab(form)]
    assert len(kinds) == 6
    assert QPlainTextEdit in kinds
    form.close()


def test_tab_goes_from_column_to_column_and_through_the_evidence_as_it_is_read(
    qtbot: QtBot, review: Window
) -> None:
    QTest.keyClick(review, Qt.Key.Key_M)
    QTest.keyClick(review, Qt.Key.Key_F4)
    in_front(qtbot, review)
    page = review.page
    page.records.list.setFocus()
    stops = list(by_tab(review))
    card = page.evidence.findChild(BandCard)
    row = page.evidence.findChildren(PressRow)[-1]
    form = page.records.form
    assert isinstance(form, RecordForm)
    boxes = list(form.boxes.values())
    expected = [*boxes, page.events.list, page.overview, page.speed, card, row, page.markers.table]
    places = [stops.index(item) for item in expected if item is not None]
    assert places == sorted(places)
    assert places[len(boxes) - 1] - places[0] == len(boxes) - 1  # the words of a record follow each other
    assert len(places) == len(expected)


def test_tab_goes_through_the_columns_of_an_import_card_by_card(
    qtbot: QtBot, review: Window, tmp_path: Path
) -> None:
    page = enter(qtbot, review, "import", tmp_path)
    in_front(qtbot, page)
    cards = list(review.imports.page.columns.cards.values())
    stops = list(by_tab(page))
    owners = [next((n for n, card in enumerate(cards) if card.isAncestorOf(stop)), None) for stop in stops]
    on_cards = [owner for owner in owners if owner is not None]
    assert on_cards == sorted(on_cards)
    begin = next(n for n, owner in enumerate(owners) if owner is not None)
    assert owners[begin : begin + len(on_cards)] == on_cards
    assert stops.index(review.imports.page.files.list) < begin
    assert stops.index(review.imports.page.import_button) > begin


def test_backwards_tab_comes_to_the_same_controls(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    page = review.page
    page.records.list.setFocus()
    onward = set(by_tab(review))
    page.records.list.setFocus()
    assert set(by_tab(review, Qt.Key.Key_Backtab)) == onward


def test_coming_to_a_list_by_tab_leads_nobody_away(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    page, focus = review.page, review.focus
    before = focus.record, focus.window, focus.passage
    page.records.list.setFocus()
    for stop in by_tab(review):
        if stop is page.events.list:
            break
    assert page.events.list.hasFocus()
    assert (focus.record, focus.window, focus.passage) == before
    QTest.keyClick(page.events.list, Qt.Key.Key_Down)
    assert focus.passage is not None


def test_the_keys_begin_at_a_crossing_in_sight_and_enter_chooses_it(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    events = review.page.events.list
    bar = events.verticalScrollBar()
    events.setMaximumHeight(80)
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())
    events.setFocus(Qt.FocusReason.TabFocusReason)
    assert bar.value() == bar.maximum()
    assert review.focus.passage is None
    here = events.currentIndex()
    assert here.row() > 1
    QTest.keyClick(events, Qt.Key.Key_Return)
    assert review.focus.passage is not None
    assert events.currentIndex().row() == here.row()


def test_a_key_goes_from_pane_to_pane_and_back(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    page = review.page
    QTest.keyClick(review, Qt.Key.Key_M)
    page.records.list.setFocus()
    panes: tuple[Pane, ...] = (page.events, page.trace, page.track, page.evidence, page.markers)
    reached: list[Pane] = [page.records]
    for _ in range(8):
        QTest.keyClick(review, Qt.Key.Key_F6)
        now = QApplication.focusWidget()
        assert now is not None
        reached += [pane for pane in panes if pane.isAncestorOf(now)]
    assert reached == [page.records, *panes]
    for _ in range(8):
        QTest.keyClick(review, Qt.Key.Key_F6, Qt.KeyboardModifier.ShiftModifier)
    assert page.records.list.hasFocus()


def test_enter_presses_the_button_that_tab_came_to_and_space_stays_with_the_arm(
    qtbot: QtBot, review: Window
) -> None:
    in_front(qtbot, review)
    review.focus.zoom(0.5)
    whole = next(item for item in review.findChildren(QToolButton) if item.accessibleName() == "Whole record")
    whole.setFocus(Qt.FocusReason.TabFocusReason)
    shown = review.focus.window
    QTest.keyClick(whole, Qt.Key.Key_Return)
    assert review.focus.window.length > shown.length
    QTest.keyClick(whole, Qt.Key.Key_Space)
    assert review.arm.running
    strip = review.page.evidence.findChild(CautionStrip)
    assert strip is not None
    more = strip.findChild(QToolButton)
    assert isinstance(more, QToolButton)
    more.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(more, Qt.Key.Key_Enter)
    assert more.isChecked()


def test_the_keyboard_stays_in_the_pane_whose_field_goes(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    QTest.keyClick(review, Qt.Key.Key_M)
    QTest.keyClick(review, Qt.Key.Key_F2, Qt.KeyboardModifier.ShiftModifier)
    note = review.page.markers.note
    assert note.hasFocus()
    QTest.keyClicks(note, "seen")
    review.actions_by_name["release"].trigger()  # from the menu
    assert not note.isVisible()
    assert review.page.markers.table.hasFocus()
    assert review.desk.keeper.review.markers[0].note == "seen"


def test_the_words_of_a_record_take_the_keyboard_and_give_it_back(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    QTest.keyClick(review, Qt.Key.Key_F4)
    form = review.page.records.form
    assert isinstance(form, RecordForm)
    assert next(iter(form.boxes.values())).hasFocus()
    QTest.keyClick(QApplication.focusWidget() or review, Qt.Key.Key_F4)
    assert review.page.records.list.hasFocus()


def test_what_the_keyboard_went_past_can_go_and_the_rest_stays(qtbot: QtBot, review: Window) -> None:
    furnished = review.rooms.imports  # has such rows too
    in_front(qtbot, review)
    QTest.keyClick(review, Qt.Key.Key_F6)
    for strip in review.findChildren(CautionStrip):
        strip.show_for(None)
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    rows = review.findChildren(FlowRow)
    assert any(row.parentWidget() in furnished.page.findChildren(QWidget) for row in rows)
    assert len(rows) > 1
    assert all(row.heightForWidth(300) > 0 for row in rows)


def test_the_row_that_tab_comes_to_from_elsewhere_is_scrolled_into_sight(
    qtbot: QtBot, review: Window
) -> None:
    in_front(qtbot, review)
    scroll = review.page.evidence.rows_area
    scroll.verticalScrollBar().setValue(scroll.verticalScrollBar().maximum())
    card = review.page.evidence.findChild(BandCard)
    assert card is not None
    review.page.speed.setFocus()
    QTest.keyClick(review.page.speed, Qt.Key.Key_Tab)
    assert card.hasFocus()
    assert card.visibleRegion().boundingRect().height() > card.height() // 2


def test_a_row_of_the_evidence_is_a_button_that_a_screen_reader_can_press(
    qtbot: QtBot, review: Window
) -> None:
    row = next(item for item in review.page.evidence.findChildren(PressRow) if not isinstance(item, BandCard))
    face = QAccessible.queryAccessibleInterface(row)
    assert face.role() == QAccessible.Role.Button
    with qtbot.waitSignal(row.clicked):
        face.actionInterface().doAction("Press")


@pytest.mark.parametrize("code", ["en", "de"])
def test_every_menu_opens_with_alt_and_a_letter_of_its_own(
    qtbot: QtBot, qapp: QApplication, code: str
) -> None:
    with speaking(qapp, code):
        letters = [name[name.index("&") + 1].lower() for name in menu_names().values()]
    assert len(set(letters)) == len(letters) == 10


def test_alt_and_its_letter_open_a_menu(qtbot: QtBot, review: Window) -> None:
    in_front(qtbot, review)
    QTest.keyClick(review, Qt.Key.Key_E, Qt.KeyboardModifier.AltModifier)  # of Export
    qtbot.waitUntil(lambda: QApplication.activePopupWidget() is not None)
    popup = QApplication.activePopupWidget()
    assert popup is not None
    assert review.actions_by_name["picture_trace"] in popup.actions()
    QTest.keyClick(popup, Qt.Key.Key_Escape)
    QTest.keyClick(popup, Qt.Key.Key_Escape)
