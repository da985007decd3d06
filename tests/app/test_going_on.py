"""Another language takes nothing away: undo, what is looked at, what is chosen and the first steps stay."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.errors import ReviewError
from analysis.progress import Tick
from app import resources
from app.main_window import Window
from app.review import keeper
from app.review.saving import Saved
from app.session import Tools
from app.tools import real_tools
from app.workbench import Workbench
from tests.app.hands import copy_of_sample
from tests.app.workbenches import running

examined: list[str] = []


def _counting() -> Tools:
    tools = real_tools()

    def examine(capture: Capture, tick: Tick) -> Findings:
        examined.append(capture.capture_id)
        return tools.examine(capture, tick)

    return Tools(tools.open_capture, examine, tools.read_review, tools.verify_content)


@pytest.fixture
def workbench(qapp: QApplication) -> Iterator[Workbench]:
    examined.clear()
    with running(qapp, _counting()) as made:
        yield made


def _speak_german(qtbot: QtBot, workbench: Workbench) -> Window:
    before = workbench.window
    next(item for item in before.findChildren(QAction) if item.text() == "Deutsch").trigger()
    qtbot.waitUntil(lambda: workbench.window is not before)
    window = workbench.window
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    qtbot.waitUntil(lambda: not window.keeper.waiting and not window.session.examining, timeout=20_000)
    in_front(qtbot, window)
    return window


def in_front(qtbot: QtBot, window: Window) -> None:
    """Bring a window to the front, where its keys are heard: X11 without a window manager does not."""
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)


def test_another_language_keeps_undo_view_choice_and_first_steps(
    qtbot: QtBot, workbench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = workbench.window
    sample = copy_of_sample("W1041-rear-left-height.h5", tmp_path)
    monkeypatch.setattr(resources, "sample_captures", lambda: [sample])
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(sample)
    qtbot.waitUntil(lambda: not window.keeper.waiting)
    in_front(qtbot, window)
    window.page.hint_bar.show()
    QTest.keyClick(window, Qt.Key.Key_C)  # to the clearest crossing
    QTest.keyClick(window, Qt.Key.Key_M)
    QTest.keyClick(window, Qt.Key.Key_A)
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.keeper.stack.canRedo()
    assert [window.actions_by_name[name].text() for name in ("undo", "redo")] == [
        "Undo: place a marker",
        "Redo: accept a band",
    ]
    looked_at, marker, stood = window.focus.keep(), window.keeper.review.markers[0], window.pos()
    times = len(examined)

    german = _speak_german(qtbot, workbench)

    qtbot.waitUntil(lambda: german.focus.keep().history.present == looked_at.history.present)
    again = german.focus.keep()
    assert (again.band, again.passage) == (looked_at.band, looked_at.passage)
    assert german.focus.window == looked_at.history.present.window  # type: ignore[union-attr]
    assert german.page.hint_bar.isVisible()
    assert german.pos() == stood
    assert len(examined) == times  # what was found is said in German, not found again
    assert list(german.keeper.review.markers) == [marker]
    assert [german.actions_by_name[name].text().partition(": ")[2] for name in ("undo", "redo")] == [
        "Marke setzen",
        "Zone annehmen",
    ]
    QTest.keyClick(german, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert not german.keeper.review.markers
    for _ in range(2):
        QTest.keyClick(german, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
    assert list(german.keeper.review.markers) == [marker]
    assert german.keeper.review.decisions
    assert not german.keeper.stack.canRedo()


def test_examining_again_by_hand_is_done_in_the_new_window(
    qtbot: QtBot, workbench: Workbench, tmp_path: Path
) -> None:
    window = workbench.window
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(copy_of_sample("W1083-pedal.h5", tmp_path))
    german = _speak_german(qtbot, workbench)
    times = len(examined)
    with qtbot.waitSignal(german.session.findings_changed, timeout=20_000):
        QTest.keyClick(german, Qt.Key.Key_F5)
    assert len(examined) == times + 1


def test_the_present_colours_are_ticked_and_others_are_taken_when_the_menu_is_gone(
    qtbot: QtBot, workbench: Workbench
) -> None:
    window = workbench.window
    light, dark = (
        next(item for item in window.findChildren(QAction) if item.text() == text)
        for text in ("Light", "Dark")
    )
    assert not light.isChecked()
    dark.trigger()
    assert dark.isChecked()
    qtbot.waitUntil(lambda: workbench.window.settings.colours == "dark")
    light.trigger()
    qtbot.waitUntil(lambda: workbench.window.settings.colours == "light")
    assert [light.isChecked(), dark.isChecked()] == [True, False]


def test_the_window_is_built_in_one_turn_and_put_in_place_in_another(
    qtbot: QtBot, workbench: Workbench
) -> None:
    before = workbench.window
    coming: list[Window] = []
    turns = QTimer()
    turns.setInterval(0)
    turns.timeout.connect(
        lambda: coming.extend(
            item
            for item in QApplication.topLevelWidgets()
            if isinstance(item, Window) and item is not before and not item.isVisible()
        )
    )
    turns.start()
    next(item for item in before.findChildren(QAction) if item.text() == "Deutsch").trigger()
    qtbot.waitUntil(lambda: workbench.window is not before)
    turns.stop()
    assert workbench.window in coming


def test_a_review_that_no_file_takes_keeps_its_window_until_the_language_is_chosen_once_more(
    qtbot: QtBot, workbench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, sample = workbench.window, copy_of_sample("W1041-rear-left-height.h5", tmp_path)
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(sample)
    qtbot.waitUntil(lambda: not window.keeper.waiting)

    def fail(*_: object, **__: object) -> Saved:
        raise ReviewError("the file could not be written", "check the free space and the drive")

    monkeypatch.setattr(keeper, "saved", fail)
    window.desk.markers.mark_moment(2.0)
    german = next(item for item in window.findChildren(QAction) if item.text() == "Deutsch")
    german.trigger()
    qtbot.waitUntil(lambda: "in this window alone" in window.page.problem_bar.text)
    assert workbench.window is window
    assert window.isVisible()
    assert len(window.page.markers.rows) == 1
    german.trigger()
    qtbot.waitUntil(lambda: workbench.window is not window)


def test_capture_findings_and_view_come_each_in_a_turn_of_its_own(
    qtbot: QtBot, workbench: Workbench, tmp_path: Path
) -> None:
    """One after the other in one turn they would hold the window for too long."""
    sample = copy_of_sample("W1041-rear-left-height.h5", tmp_path)
    told: list[str] = []
    with qtbot.waitSignal(workbench.window.session.findings_changed, timeout=20_000):
        workbench.window.open_file(sample)
    workbench.window.focus.step(1)
    turn = QTimer()
    turn.timeout.connect(lambda: told.append("turn") if told and told[-1] != "turn" else None)
    turn.start(0)
    before = workbench.window
    next(item for item in before.findChildren(QAction) if item.text() == "Deutsch").trigger()
    qtbot.waitUntil(lambda: workbench.window is not before)
    window = workbench.window
    window.session.capture_changed.connect(lambda: told.append("capture"))
    window.session.findings_changed.connect(lambda: told.append("findings"))
    window.focus.target_changed.connect(
        lambda: told.append("view") if window.focus.passage is not None else None
    )
    qtbot.waitUntil(lambda: "view" in told, timeout=20_000)
    turn.stop()
    assert told[: told.index("view") + 1] == ["capture", "turn", "findings", "turn", "view"]
