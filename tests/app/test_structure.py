from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QGraphicsView
from pytestqt.qtbot import QtBot

import app
from app.actions import SPECS, keys_page
from app.main_window import Window

_SOURCES = sorted(Path(app.__file__).parent.rglob("*.py"))
_WINDOW = {"jobs.py"}


def test_one_module_starts_threads() -> None:
    starters = {
        path.name
        for path in _SOURCES
        for word in ("Thread(", "QThreadPool", "QRunnable", "ThreadPoolExecutor")
        if word in path.read_text(encoding="utf-8")
    }
    assert starters <= _WINDOW


def test_views_neither_open_files_nor_examine() -> None:
    views = [path for path in _SOURCES if path.parent.name in ("views", "drawing")]
    assert len(views) > 15
    for path in views:
        text = path.read_text(encoding="utf-8")
        assert "open_capture" not in text, path
        assert "import examine" not in text, path


def test_changing_records_leaves_nothing_behind_in_the_plots(qtbot: QtBot, review: Window) -> None:
    plots = review.page.trace.findChild(QGraphicsView)
    assert plots is not None
    scene = plots.scene()
    review.focus.show_record("004")
    before = len(scene.items())
    for _ in range(5):
        review.focus.show_record("005")
        review.focus.show_record("004")
    assert len(scene.items()) == before


def test_the_keys_page_has_every_action(review: Window) -> None:
    page = keys_page(review.actions_by_name)
    for spec in SPECS:
        assert spec.tip in page


def test_the_keys_page_begins_with_the_keys_that_go_through_the_window(review: Window) -> None:
    page = keys_page(review.actions_by_name)
    assert page.index("Shift+Tab") < page.index("Press the button") < page.index(SPECS[0].tip)


@pytest.mark.parametrize("size", [(1366, 768), (960, 540)])
def test_the_window_fits_small_screens_and_two_hundred_per_cent(
    review: Window, size: tuple[int, int]
) -> None:
    """1920 x 1080 at 200 % is 960 x 540 in logical pixels."""
    least = review.minimumSizeHint()
    assert least.width() <= size[0]
    assert least.height() <= size[1]
