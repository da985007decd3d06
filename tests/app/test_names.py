"""Every control has a name for a screen reader, and the overview is worked by keys alone."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSlider,
    QAbstractSpinBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollBar,
    QTextEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app.captures_menu import first_sample
from app.main_window import Window
from app.review.focus import whole
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.hands import copy_of_sample, import_worn

CONTROLS = (
    QAbstractButton,
    QAbstractSlider,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QTextEdit,
)


def nameless(page: QWidget) -> list[str]:
    """Controls of a page that a screen reader cannot call by a name."""
    buddies = {label.buddy() for label in page.findChildren(QLabel) if label.buddy() is not None}
    return [
        f"{type(item).__name__} in {type(item.parent()).__name__}"
        for item in page.findChildren(QWidget)
        if isinstance(item, CONTROLS)
        and not isinstance(item, QScrollBar)
        and not item.objectName().startswith("qt_")
        and item not in buddies
        and not item.accessibleName()
        and not (isinstance(item, QAbstractButton) and item.text())
    ]


def nameless_anywhere(window: Window) -> list[str]:
    """The same of a window and of every dialog that it has made."""
    shown = [item for item in window.findChildren(QWidget) if item.isWindow()] + [window]
    return [name for page in shown for name in nameless(page)]


@pytest.mark.parametrize("key", ["review", "compare", "report"])
def test_every_control_of_every_screen_has_a_name(qtbot: QtBot, review: Window, key: str) -> None:
    if key == "review":
        QTest.keyClick(review, Qt.Key.Key_F4)
        QTest.keyClick(review, Qt.Key.Key_M)
    else:
        assert review.actions_by_name[key].isEnabled()
        review.actions_by_name[key].trigger()
    assert nameless_anywhere(review) == []


def test_every_control_of_the_exposure_has_a_name(qtbot: QtBot, tmp_path: Path) -> None:
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window, before_close_func=lambda made: made.session.close())
    window.show()
    sample = first_sample()
    assert sample is not None
    with qtbot.waitSignal(window.session.findings_changed, timeout=30_000):
        window.open_file(copy_of_sample(sample.name, tmp_path))
    qtbot.waitUntil(window.actions_by_name["why"].isEnabled, timeout=10_000)
    window.actions_by_name["why"].trigger()
    window.actions_by_name["control_unit"].trigger()
    assert nameless_anywhere(window) == []


def test_every_control_of_import_has_a_name(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    import_worn(qtbot, window, tmp_path)
    assert window.imports.page.columns.cards
    assert nameless_anywhere(window) == []


def test_a_control_without_a_name_is_noticed(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    QLineEdit(page)
    assert nameless(page) == ["QLineEdit in QWidget"]


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
