"""Every control has a name for a screen reader, and the overview is worked by keys alone."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSlider,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QListView,
    QPlainTextEdit,
    QTabBar,
    QTableView,
    QTextBrowser,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app.drawing.canvas import Canvas
from app.main_window import Window
from app.review.focus import whole
from app.views.headline import Headline
from app.views.report_preview import SheetView
from app.views.tab_order import stops
from app.why.picture import ExposurePicture
from tests.app.conftest import Bench
from tests.app.test_pictures import SCREENS, bench, enter
from tests.app.tongues import worn_in

__all__ = ["bench"]  # the worn capture of a car whose heights are known

Role = QAccessible.Role
ROLES = {  # what a screen reader says of a control, by its kind; the first kind that fits counts
    QTableView: {Role.Table},
    QTextBrowser: {Role.StaticText},
    QLineEdit: {Role.EditableText},
    QPlainTextEdit: {Role.EditableText},
    QComboBox: {Role.ComboBox},
    QAbstractSpinBox: {Role.SpinBox},
    QAbstractSlider: {Role.Slider},
    QTabBar: {Role.PageTabList},
    QListView: {Role.List},
    QAbstractButton: {Role.Button, Role.CheckBox, Role.ButtonMenu},
}


def face_of(item: QWidget) -> QAccessibleInterface:
    return QAccessible.queryAccessibleInterface(item)


def unspoken(page: QWidget) -> list[str]:
    """What Tab comes to on a page and a screen reader cannot name, or takes for something else."""
    found = []
    for item in stops(page):
        face = face_of(item)
        kinds = next((roles for kind, roles in ROLES.items() if isinstance(item, kind)), None)
        if not face.text(QAccessible.Text.Name).strip() and not face.text(QAccessible.Text.Description):
            found.append(f"{type(item).__name__} in {type(item.parent()).__name__} has no name")
        if kinds is not None and face.role() not in kinds:
            found.append(f"{type(item).__name__} is a {face.role().name}")
    return found


def _plain(text: str) -> str:
    """A number that is kept beside its unit is said as any other."""
    return text.replace("\N{NO-BREAK SPACE}", " ")


def silent(page: QWidget) -> list[str]:
    """Words on a page that a screen reader does not say: a name of their own hides them."""
    said = {
        _plain(label.text().replace("&", "")): _plain(face_of(label).text(QAccessible.Text.Name))
        for label in page.findChildren(QLabel)
        if label.textFormat() is not Qt.TextFormat.RichText and "<" not in label.text()
    }
    return [text for text, name in said.items() if text not in name]


@pytest.fixture(params=["en", "de"])
def spoken(
    qtbot: QtBot, qapp: QApplication, bench: Bench, request: pytest.FixtureRequest
) -> Iterator[Window]:
    """The worn capture examined, in a language."""
    yield from worn_in(qtbot, qapp, bench, request.param)


@pytest.mark.parametrize("screen", [*SCREENS, "corners"])
def test_a_screen_reader_can_say_every_control_of_every_screen(
    qtbot: QtBot, spoken: Window, tmp_path: Path, screen: str
) -> None:
    QTest.keyClick(spoken, Qt.Key.Key_M)
    page = enter(qtbot, spoken, "compared" if screen == "corners" else screen, tmp_path)
    if screen in ("corners", "why"):
        spoken.actions_by_name["corners" if screen == "corners" else "control_unit"].trigger()
    assert len(stops(page)) > 0
    assert unspoken(page) == []
    assert silent(page) == []
    if page is not spoken:
        page.close()


def test_a_control_without_a_name_is_noticed(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    QLineEdit(page)
    label = QLabel("a word", page)
    label.setTextFormat(Qt.TextFormat.PlainText)
    assert unspoken(page) == ["QLineEdit in QWidget has no name"]
    assert silent(page) == []
    label.setAccessibleName("what it is about")
    assert silent(page) == ["a word"]


def test_the_verdict_and_the_reading_are_said_in_their_words(qtbot: QtBot, review: Window) -> None:
    headline = review.page.evidence.findChild(Headline)
    assert headline is not None
    assert face_of(headline).text(QAccessible.Text.Name) == headline.text()
    review.focus.point(2.0)
    qtbot.waitUntil(lambda: "2.0" in face_of(review.readout).text(QAccessible.Text.Name))


@pytest.mark.parametrize(
    ("screen", "kind", "role"),
    [
        ("review", Canvas, Role.Chart),
        ("compared", Canvas, Role.Chart),
        ("why", ExposurePicture, Role.Chart),
        ("report", SheetView, Role.Graphic),
    ],
)
def test_what_we_draw_ourselves_is_said_to_be_a_chart_or_a_picture(
    qtbot: QtBot, spoken: Window, tmp_path: Path, screen: str, kind: type[QWidget], role: QAccessible.Role
) -> None:
    page = enter(qtbot, spoken, screen, tmp_path)
    drawn = [item for item in page.findChildren(kind) if item.isVisible()]
    assert drawn
    for item in drawn:
        face_of(item)
        gc.collect()  # Qt alone knows of what speaks for a widget
        assert face_of(item).role() == role
        assert face_of(item).text(QAccessible.Text.Name)
    if page is not spoken:
        page.close()


def test_the_overview_is_a_slider_that_says_what_it_shows(review: Window) -> None:
    overview = review.page.overview
    face = QAccessible.queryAccessibleInterface(overview)
    assert face.role() == QAccessible.Role.Slider
    assert face.text(QAccessible.Text.Name) == "Overview of the whole record"
    assert face.valueInterface().currentValue() == overview.value()


def test_keys_move_and_resize_the_shown_window_in_the_overview(review: Window) -> None:
    overview, focus = review.page.overview, review.focus
    assert focus.record is not None
    limits = whole(focus.record)
    overview.setFocus()
    QTest.keyClick(overview, Qt.Key.Key_Up)
    assert focus.window.length == pytest.approx(0.5 * limits.length)
    centre = focus.window.centre
    QTest.keyClick(overview, Qt.Key.Key_Right)
    assert focus.window.centre > centre
    QTest.keyClick(overview, Qt.Key.Key_End)
    assert focus.window.stop == pytest.approx(limits.stop)
    QTest.keyClick(overview, Qt.Key.Key_Home)
    assert focus.window.start == pytest.approx(limits.start)
    assert focus.window.length == pytest.approx(0.5 * limits.length)
    QTest.keyClick(overview, Qt.Key.Key_Down)
    assert focus.window.length == pytest.approx(limits.length)


def test_a_value_that_a_screen_reader_sets_moves_the_window(review: Window) -> None:
    review.focus.zoom(0.25)
    assert review.focus.record is not None
    limits = whole(review.focus.record)
    review.page.overview.setValue(500)
    assert review.focus.window.start == pytest.approx(limits.start + 0.5 * limits.length, rel=1e-3)
    assert "of 12 s" in review.page.overview.accessibleDescription()


def test_the_overview_is_reached_by_tab(review: Window) -> None:
    assert review.page.overview.focusPolicy() & Qt.FocusPolicy.TabFocus
