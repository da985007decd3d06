"""A newcomer's first minute: nothing is known but what stands on the screen."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from analysis.review.model import Choice
from app import resources
from app.captures_menu import first_sample
from app.drawing.row_delegate import ROW_ROLE
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app import hands

# Seconds for one action of a practised hand by the keystroke-level model (Card, Moran and Newell 1980; from
# memory): decide 1.35, point 1.1, press 0.2. A newcomer is given three times that.
_ACTION_S = 3.0 * (1.35 + 1.1 + 2 * 0.2)
_WORDS_A_MINUTE = 180.0  # slow reading (common practice, no source)


def words_on(widget: QWidget) -> str:
    """Everything that can be read on a widget now."""
    return " ".join(label.text() for label in widget.findChildren(QLabel) if label.isVisible())


def button_that_says(window: Window, text: str) -> QToolButton:
    """The first button in sight with these words on it."""
    return next(
        item
        for item in window.page.findChildren(QToolButton)
        if item.text() == text and item.isVisible() and not item.visibleRegion().isEmpty()
    )


@pytest.fixture
def first_start(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Window]:
    """The window as it opens for the first time on a small screen, its sample examined."""
    sample = first_sample()
    assert sample is not None
    shutil.copy(sample, tmp_path)
    monkeypatch.setattr(resources, "sample_captures", lambda: [tmp_path / sample.name])
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.setMinimumSize(1366, 768)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    window.page.hint_bar.show()
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(tmp_path / sample.name)
    qtbot.waitUntil(lambda: window.keeper.path is not None and not window.keeper.waiting)
    yield window
    window.close()


def test_a_newcomer_finds_measures_and_marks_in_under_a_minute(qtbot: QtBot, first_start: Window) -> None:
    window, page, begun_s = first_start, first_start.page, time.monotonic()
    hint = words_on(page.hint_bar)
    actions = 0

    # The worst of all crossings is in sight before anything is done, though the list is longer than its pane.
    events = page.events.list
    shown = [events.model().index(place, 0) for place in range(events.model().rowCount())]
    named = [item for item in shown if "worst" in item.data(ROW_ROLE).reading]
    assert len(named) == 1
    assert events.viewport().rect().contains(events.visualRect(named[0]))

    # "Press C": what is wanted, the worst crossing, comes of it, wherever the keyboard is.
    assert "Press C: Trace shows the worst crossing" in hint
    QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_C)
    actions += 1
    row = page.events.list.currentIndex().data(ROW_ROLE)
    assert row.reading.startswith("worst ")
    assert window.focus.passage is not None

    # "Press M": nothing has to be pointed at.
    assert "Press M: it marks the deepest place" in hint
    QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_M)
    actions += 1
    qtbot.waitUntil(lambda: "Signal" in dict(page.markers.readings.rows))
    (reading,) = dict(page.markers.readings.rows)["Signal"]
    assert "±" in reading
    assert reading.endswith("mV")  # of 2.3 V beside the band
    told = dict(page.markers.readings.rows)
    (dropped_v, sure_v), (belongs_v, _) = (
        map(float, told[head][0].removesuffix(" V").split(" ± ")) for head in ("Drop", "Should read")
    )
    assert 2.0 < dropped_v <= belongs_v
    assert 0.0 < sure_v < 0.2 * dropped_v
    assert 2.1 < belongs_v < 2.5  # what a divider of 5 V gives between 42 and 49 % of travel

    # "Accept": it stands beside the band.
    assert "Accept" in hint
    QTest.mouseClick(button_that_says(window, "Accept"), Qt.MouseButton.LeftButton)
    actions += 1
    assert [item.choice for item in window.keeper.review.decisions] == [Choice.ACCEPTED]

    # How sure it is stands in large letters, where the hint says.
    assert "At the right: the verdict, how sure it is" in hint
    assert "very likely (99 in 100)" in words_on(page.evidence)
    sure = next(item for item in page.evidence.findChildren(QLabel) if item.text().startswith("very likely"))
    assert sure.visibleRegion().contains(QPoint(5, sure.height() // 2))

    waited_s = time.monotonic() - begun_s
    reading_s = 60.0 * len(hint.split()) / _WORDS_A_MINUTE
    assert actions == 3
    assert actions * _ACTION_S + reading_s + waited_s < 60.0


def test_the_first_steps_speak_of_a_band_where_there_is_one_alone(
    qtbot: QtBot, first_start: Window, tmp_path: Path
) -> None:
    clean = hands.copy_of_sample("W1041-rear-left-height-new-sensor.h5", tmp_path)
    with qtbot.waitSignal(first_start.session.findings_changed, timeout=20_000):
        first_start.open_file(clean)
    findings = first_start.session.findings
    assert findings is not None
    assert not findings.bands
    first_start.page.hint_bar.show()
    hint = words_on(first_start.page.hint_bar)
    assert "band" not in hint
    assert "crossing" not in hint
    assert "Point in Trace and press M: it marks that moment and reads it." in hint
    first_start.open_file(tmp_path / "W1041-rear-left-height.h5")
    qtbot.waitUntil(lambda: "worst crossing" in words_on(first_start.page.hint_bar), timeout=20_000)
