"""What hands do on the Import page: choose out of a list, type into a field, wait until it is understood."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture, Role
from app.main_window import Window
from app.views.record_form import WordBox


def wait_for_looks(qtbot: QtBot, window: Window, files: int = 1) -> None:
    """Until every file has been looked at as it is decided."""
    state = window.imports.state
    if not state.draft.files:
        qtbot.waitUntil(lambda: window.imports.shown, timeout=10_000)
    qtbot.waitUntil(
        lambda: (
            len(window.imports.state.draft.files) == files and window.imports.state.next_to_look_at() is None
        ),
        timeout=20_000,
    )


def choose(box: WordBox, word: str) -> None:
    """Choose a word with the keyboard: open the list, go to it, Enter."""
    place = box.findData(word)
    assert place >= 0, word
    assert box.isVisible()
    assert box.isEnabled()
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert box.view().isVisible()
    QTest.keyClick(box.view(), Qt.Key.Key_Home)
    for _ in range(place):
        QTest.keyClick(box.view(), Qt.Key.Key_Down)
    QTest.keyClick(box.view(), Qt.Key.Key_Return)
    assert box.currentData() == word


def enter(field: QLineEdit, text: str) -> None:
    """Type a text into a field, and Tab away."""
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)
    QTest.keyClick(field, Qt.Key.Key_Tab)


def imported(qtbot: QtBot, window: Window) -> Capture:
    """The capture that is opened once an import is done."""
    qtbot.waitUntil(lambda: window.session.capture is not None, timeout=30_000)
    capture = window.session.capture
    assert capture is not None
    assert not window.imports.shown
    return capture


def volts(capture: Capture, role: Role, record: int = 0) -> np.ndarray:
    channel = next(item for item in capture.records[record].channels if item.role is role)
    return channel.scaling.volts(channel.source.read(0, len(channel)))
