"""What Compare begins with: what Review shows, and the folder beside its capture."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.captures_menu import first_sample
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.dialogs import begun_at
from tests.app.fakes import sound_capture, worn_or_sound

CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def bench() -> Bench:
    """``new.h5`` is the sound sensor, every other file the worn one."""
    return Bench(others={"new.h5": sound_capture()}, findings=worn_or_sound())


def test_compare_begins_with_the_record_that_review_shows_and_keeps_it(qtbot: QtBot, review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_PageDown)
    assert review.focus.record is not None
    assert review.focus.record.name == "005"
    QTest.keyClick(review, Qt.Key.Key_F7)
    shown = review.compare.sides[0]
    assert shown.record is review.page.trace.record is review.compare.page.traces[0].record
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(review, Qt.Key.Key_PageDown)  # on to the first record, the ground
    hands.compare_with(qtbot, review, "new.h5")
    assert shown.record is review.page.trace.record
    assert review.compare.sides[1].record is not None
    assert review.compare.sides[1].record.name == "001"
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    with qtbot.waitSignal(review.session.findings_changed):
        QTest.keyClick(review, Qt.Key.Key_F5)
    assert shown.record is review.page.trace.record


def test_another_capture_to_compare_with_is_looked_for_beside_the_first(
    qtbot: QtBot, review: Window, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun = begun_at(monkeypatch, "getOpenFileName")
    sample = first_sample()
    assert sample is not None
    bench.others[sample.name] = replace(bench.capture, path=sample)
    with qtbot.waitSignal(review.session.findings_changed):
        review.open_file(sample)
    QTest.keyClick(review, Qt.Key.Key_F7)
    QTest.keyClick(review, Qt.Key.Key_O, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert begun == [str(sample.parent)]
