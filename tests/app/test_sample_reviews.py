"""What is said of a sample that came along is kept among the user's own things, never beside the sample."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.captures_menu import first_sample
from app.main_window import Window
from app.review_place import read_review
from app.settings import MemoryStore, Settings
from app.tools import real_tools


def test_the_review_of_a_sample_is_kept_in_the_user_s_own_place_and_found_again(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("XDG_DATA_HOME", "LOCALAPPDATA", "HOME"):
        monkeypatch.setenv(name, str(tmp_path / "data"))
    sample = first_sample()
    assert sample is not None
    beside = set(sample.parent.iterdir())
    assert _mark_in_a_new_window(qtbot, sample) == ["1"]
    assert _mark_in_a_new_window(qtbot, sample) == ["1", "2"]
    (kept,) = (tmp_path / "data").rglob("*.review.json")
    assert set(sample.parent.iterdir()) == beside
    # What prints finds it there too.
    found = read_review(sample)
    assert found.path == kept
    assert [item.label for item in found.review.markers] == ["1", "2"]


def _mark_in_a_new_window(qtbot: QtBot, sample: Path) -> list[str]:
    """Open a sample, mark beside what is marked, let that be saved, and close; back come the labels."""
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(sample)
    qtbot.waitUntil(lambda: window.keeper.path is not None and not window.keeper.waiting)
    for _ in window.page.markers.rows:
        QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(window, Qt.Key.Key_M)
    qtbot.waitUntil(lambda: not window.keeper.unsaved)
    assert window.page.problem_bar.isHidden()  # that is as it should be, and nothing to be told
    shown = [row.label for row in window.page.markers.rows]
    window.close()
    return shown
