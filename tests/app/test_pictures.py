"""Pictures of every screen, in both themes and sizes; ``WORNBAND_PICTURES=folder`` keeps them."""

from __future__ import annotations

import os
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QWidget
from pytestqt.qtbot import QtBot

from app.drawing.theme import DARK, LIGHT
from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import sound_capture, worn_capture, worn_or_sound
from tests.app.hands import drop, import_worn
from tests.app.stage import still
from tests.watching_page.hands import watch_worn

SIZES = ((1366, 768), (1920, 1080))
DIALOGS = ("keys", "about", "workshop")
SCREENS = ("review", "record", "compare", "compared", "report", "import", "watch", "why", *DIALOGS)


@pytest.fixture
def bench() -> Bench:
    """The worn capture, of a car whose heights are known; ``new.h5`` is a sound sensor."""
    capture = worn_capture()
    profile = {"profile": "halvorsen-tern-rear-left"}
    worn = replace(capture, attributes={**capture.attributes, **profile})
    return Bench(capture=worn, findings=worn_or_sound(), others={"new.h5": sound_capture()})


def enter(qtbot: QtBot, window: Window, screen: str, folder: Path) -> QWidget:
    """Bring a screen to the front, and give back what is to be looked at."""
    if screen == "record":
        QTest.keyClick(window, Qt.Key.Key_F4)
        QTest.keyClick(window, Qt.Key.Key_C)
    elif screen in DIALOGS:
        window.actions_by_name[screen].trigger()
        return next(item for item in window.findChildren(QDialog) if item.isVisible())
    elif screen == "why":
        window.actions_by_name["why"].trigger()
        why = window.why.why
        assert why is not None
        why.resize(window.size())
        return why
    elif screen == "import":
        import_worn(qtbot, window, folder)
    elif screen == "watch":
        watch_worn(qtbot, window, folder)
    elif screen == "compared":
        window.actions_by_name["compare"].trigger()
        drop(window, Path("new.h5"))
        qtbot.waitUntil(lambda: window.compare.comparison is not None)
    elif screen != "review":
        window.actions_by_name[screen].trigger()
    if screen == "report":
        qtbot.waitUntil(lambda: bool(window.report_desk.sheets), timeout=20_000)
    return window


def shades(image: QImage) -> np.ndarray:
    """Lightness of every pixel, shape (height, width)."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), grey.bytesPerLine())
    return rows[:, : grey.width()].copy()


@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_every_screen_is_drawn_in_its_theme_and_at_its_size(
    qtbot: QtBot, review: Window, tmp_path: Path, theme: str, size: tuple[int, int], screen: str
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    review.setMinimumSize(*size)  # a screen of 800 x 600 would cut it
    review.resize(*size)
    widget = enter(qtbot, review, screen, tmp_path)
    image = still(qtbot, widget)
    folder = Path(os.environ.get("WORNBAND_PICTURES") or tmp_path)
    folder.mkdir(parents=True, exist_ok=True)
    target = folder / f"{screen}-{theme}-{size[0]}x{size[1]}.png"
    assert image.save(str(target))
    drawn = shades(image)
    if widget is review:
        assert (image.width(), image.height()) == size
        quarters = [half for rows in np.array_split(drawn, 2) for half in np.array_split(rows, 2, axis=1)]
        assert all(np.ptp(quarter) > 60 for quarter in quarters[:2]), "a part of the picture is blank"
        ground = {"light": LIGHT, "dark": DARK}[theme].desk
        assert image.pixelColor(2, size[1] // 2).name().lower() == ground.lower()
    assert len(np.unique(drawn)) > 20
    if widget is not review:
        widget.close()
