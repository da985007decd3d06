"""A newcomer's first minute: nothing is known but what stands on the screen."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
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

    # "Double-click the hatched band": it is in sight, and what is wanted, the worst crossing, comes of it.
    assert "Double-click the hatched band" in hint
    band = page.track.stretches[0].span
    spot = page.track.viewport_point(band.centre, 20.0).toPoint()
    hands.double_click(page.track.canvas, spot)
    actions += 1
    row = page.events.list.currentIndex().data(ROW_ROLE)
    assert row.reading.startswith("worst ")
    assert window.focus.passage is not None

    # "Point at the drop and press M": the eye finds the lowest place of the signal.
    assert "press M to measure" in hint
    record = window.focus.record
    assert record is not None
    signal = record.channel(Role.SIGNAL)
    assert signal is not None
    first, last = (record.index_at(at_s) for at_s in (window.focus.window.start, window.focus.window.stop))
    lowest = first + int(np.nanargmin(signal.volts(first, last)))
    at_s = record.first_sample_s + lowest * record.sample_interval_s
    hands.point(page.trace.canvas, page.trace.viewport_point(at_s).toPoint())
    QTest.keyClick(window, Qt.Key.Key_M)
    actions += 2
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
    assert actions == 4
    assert actions * _ACTION_S + reading_s + waited_s < 60.0
