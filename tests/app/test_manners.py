from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QToolButton
from pytestqt.qtbot import QtBot

from app.captures_menu import first_sample
from app.drawing.theme import DARK, LIGHT, palette_for
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.settings_file import SettingsFile
from app.tools import real_tools
from app.views.caution_strip import CautionStrip
from tests.app.conftest import Bench
from tests.app.dialogs import begun_at
from tests.app.tongues import speaking


def test_the_reading_can_be_copied_as_text(review: Window) -> None:
    review.focus.point(2.0)
    QTest.keyClick(review, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    copied = QGuiApplication.clipboard().text()
    assert copied.startswith("2.0")
    assert "Reference 5.00" in copied
    assert "<" not in copied


def test_the_first_steps_are_of_the_sample_and_go_with_it(qtbot: QtBot, review: Window, bench: Bench) -> None:
    review.page.hint_bar.show()
    sample = first_sample()
    assert sample is not None
    bench.others = {path.name: replace(bench.capture, path=path) for path in (sample, Path("own.h5"))}
    with qtbot.waitSignal(review.session.findings_changed):
        review.open_file(sample)
    assert review.page.hint_bar.isVisible()
    review.open_file(Path("own.h5"))
    qtbot.waitUntil(lambda: not review.page.hint_bar.isVisible())


def test_a_capture_is_looked_for_where_ones_own_lie_and_among_the_samples_before_there_are_any(
    review: Window, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    begun = begun_at(monkeypatch, "getOpenFileName")
    review.settings.forget_capture(Path("worn.h5"))
    sample = first_sample()
    assert sample is not None
    review.settings.remember_capture(sample)
    QTest.keyClick(review, Qt.Key.Key_O, Qt.KeyboardModifier.ControlModifier)
    review.settings.remember_capture(tmp_path / "own.h5")
    review.settings.remember_capture(sample)
    QTest.keyClick(review, Qt.Key.Key_O, Qt.KeyboardModifier.ControlModifier)
    assert begun == [str(sample.parent), str(tmp_path)]


def test_keys_move_the_arm_a_little_and_the_page_turns_with_it(review: Window) -> None:
    review.focus.zoom(0.1, 1.0)
    review.focus.point(review.focus.window.stop - 1e-4)
    QTest.keyClick(review, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert review.focus.moment_s is not None
    assert review.focus.window.contains(review.focus.moment_s)


def test_the_most_dangerous_caution_is_always_in_sight_and_the_others_on_request(review: Window) -> None:
    strip = review.page.evidence.findChild(CautionStrip)
    assert strip is not None
    lines = [label for label in strip.findChildren(QLabel) if label.property("quiet")]
    assert [line.isVisible() for line in lines].count(True) == 1
    assert "suspension" in next(line for line in lines if line.isVisible()).text()
    more = strip.findChild(QToolButton)
    assert more is not None
    QTest.mouseClick(more, Qt.MouseButton.LeftButton)
    assert all(line.isVisible() for line in lines)
    assert any("airbag" in line.text() for line in lines)


def test_colours_follow_the_setting_and_the_desktop(review: Window) -> None:
    assert palette_for("dark") is DARK
    assert palette_for("light") is LIGHT
    wanted = DARK if QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark else LIGHT
    assert palette_for("system") is wanted
    review.settings.colours = "dark"
    review.apply_colours()
    assert review.grab().toImage().pixelColor(3, 300).lightness() < 60
    review.settings.colours = "light"
    review.apply_colours()
    assert review.grab().toImage().pixelColor(3, 300).lightness() > 200


def test_settings_survive_in_a_file(tmp_path: Path) -> None:
    def settings() -> Settings:
        return Settings(SettingsFile(tmp_path / "kept.json"))

    first = settings()
    for number in range(12):
        first.remember_capture(Path(f"capture-{number}.h5"))
    first.remember_capture(Path("capture-5.h5"))
    first.lanes, first.colours = False, "dark"
    del first
    again = settings()
    assert again.recent[0] == Path("capture-5.h5")
    assert len(again.recent) == len(set(again.recent)) == 8
    assert not again.lanes
    assert again.colours == "dark"


def test_the_window_remembers_its_size(qtbot: QtBot, bench: Bench) -> None:
    settings = Settings(MemoryStore())
    first = Window(Tools(bench.open_capture, bench.examine), settings)
    qtbot.addWidget(first)
    first.resize(1100, 640)
    first.show()
    first.close()
    second = Window(Tools(bench.open_capture, bench.examine), settings)
    qtbot.addWidget(second)
    # The width is cut to the screen, which may be small where there is none; the height tells.
    assert second.height() == 640


def test_actions_that_cannot_be_done_are_not_offered(window: Window) -> None:
    for name in ("next", "previous", "clearest", "run", "zoom_in", "back", "forward", "examine", "cancel"):
        assert not window.actions_by_name[name].isEnabled(), name
    assert window.actions_by_name["open"].isEnabled()


@pytest.mark.parametrize("code", ["en", "de"])
def test_review_fits_a_screen_of_1920_x_1080_at_200_per_cent(
    qtbot: QtBot, qapp: QApplication, code: str
) -> None:
    with speaking(qapp, code):
        window = Window(real_tools(), Settings(MemoryStore()))
        qtbot.addWidget(window, before_close_func=lambda made: made.session.close())
        window.page.hint_bar.show()
        window.resize(960, 540)
        window.show()
        QApplication.processEvents()
        window.resize(960, 540)  # as the program does, once the style is known
        assert (window.width(), window.height()) == (960, 540)
        tools = [item for item in window.page.findChildren(QToolButton) if item.isVisible()]
        assert len(tools) > 8
        for tool in tools:
            assert tool.width() >= tool.minimumSizeHint().width(), tool.accessibleName()
            right = tool.mapTo(window, tool.rect().topRight()).x()
            assert right < window.width(), tool.accessibleName()
