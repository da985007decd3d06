"""A list that opens below a field can be read, in both themes: it lies on the paper of the theme."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QMenu, QToolButton
from pytestqt.qtbot import QtBot

from app.drawing.theme import DARK, LIGHT
from app.main_window import Window
from tests.app import hands
from tests.app.hands import import_worn


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_lists_of_the_import_page_lie_on_the_paper_of_the_theme(
    qtbot: QtBot, review: Window, tmp_path: Path, theme: str
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    import_worn(qtbot, review, tmp_path)
    fields = [
        item for item in review.imports.page.findChildren(QComboBox) if item.isVisible() and item.count()
    ]
    assert len(fields) > 8
    paper = {"light": LIGHT, "dark": DARK}[theme].paper.lower()
    for field in fields:
        field.showPopup()
        field.view().clearSelection()  # the row that is chosen begins at the very edge
        opened = field.view().window().grab().toImage()
        field.hidePopup()
        ratio = opened.devicePixelRatio()
        corner = opened.pixelColor(int(opened.width() - 12 * ratio), int(6 * ratio))
        assert corner.name() == paper, field.currentText()


def _ask_in_trace(window: Window) -> None:
    hands.ask(window.page.trace.canvas, window.page.trace.viewport_point(2.0).toPoint())


def _ask_for_the_band(window: Window) -> None:
    track = window.page.track
    hands.ask(track.canvas, track.viewport_point(track.stretches[0].span.centre, 10.0).toPoint())


def _ask_in_the_note(window: Window) -> None:
    window.focus.point(2.0)
    QTest.keyClick(window, Qt.Key.Key_M)
    note = window.page.markers.note
    hands.ask(note, QPoint(5, 5))


def _open_ways_to_run(window: Window) -> None:
    run = next(item for item in window.page.track.findChildren(QToolButton) if item.menu() is not None)
    run.menu().popup(run.mapToGlobal(run.rect().bottomLeft()))


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("open_it", [_ask_in_trace, _ask_for_the_band, _ask_in_the_note, _open_ways_to_run])
def test_menus_that_open_in_a_pane_lie_on_the_paper_of_the_theme(
    qtbot: QtBot, review: Window, theme: str, open_it: Callable[[Window], None]
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    open_it(review)
    qtbot.waitUntil(lambda: isinstance(QApplication.activePopupWidget(), QMenu))
    menu = QApplication.activePopupWidget()
    assert menu is not None
    opened = menu.grab().toImage()
    menu.close()
    ratio = opened.devicePixelRatio()
    corner = opened.pixelColor(int(opened.width() - 4 * ratio), int(4 * ratio))
    assert corner.alpha() == 255  # a see-through menu is black where nobody composes the screen
    assert corner.name() == {"light": LIGHT, "dark": DARK}[theme].paper.lower()
