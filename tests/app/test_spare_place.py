"""A capture whose folder takes no review, through the window: told, kept on this PC, and nothing lost."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.captures.writing import write_capture
from app.main_window import Window
from app.session import OPENING
from tests.app.fakes import sound_capture
from tests.app.visits import Make, labels, make, opened, path, theirs, tools_of

__all__ = ["make", "path"]  # fixtures

LONG = "c" * 215
"""A name with which the review can be looked for, but not written: that of its temporary file is too long."""


def _cannot_write(window: Window, qtbot: QtBot, path: Path) -> None:
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()
    assert "cannot be saved beside the capture" in window.page.problem_bar.text
    assert not layout.review_path(path).exists()


def test_where_the_folder_takes_no_file_the_review_is_kept_on_this_pc_and_found_again(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    long = path.rename(path.with_name(f"{LONG}.h5"))
    first = opened(qtbot, make(), long)
    _cannot_write(first, qtbot, long)
    assert str(tmp_path / "own") in first.page.problem_bar.text
    first.close()
    again = opened(qtbot, make(), long)
    assert labels(again) == ["1"]
    again.desk.markers.mark_moment(4.0)
    again.close()
    assert len(list((tmp_path / "own").iterdir())) == 1
    assert list(long.parent.iterdir()) == [long]


def test_where_the_folder_takes_no_review_any_more_the_later_one_is_found_again(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    theirs(path)
    long = path.rename(path.with_name(f"{LONG}.h5"))
    layout.review_path(path).rename(layout.review_path(long))
    first = opened(qtbot, make(), long)
    first.desk.markers.mark_moment(3.0)
    first.close()
    again = opened(qtbot, make(), long)
    assert labels(again) == ["theirs", "1"]


def test_a_review_on_this_pc_that_does_not_go_on_from_the_one_beside_the_capture_is_told(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    long = path.rename(path.with_name(f"{LONG}.h5"))
    first = opened(qtbot, make(), long)
    _cannot_write(first, qtbot, long)
    first.close()
    long.rename(path)
    theirs(path)
    again = opened(qtbot, make(), path)
    assert labels(again) == ["theirs"]
    assert str(tmp_path / "own") in again.page.problem_bar.text
    assert "does not go on from" in again.page.problem_bar.text


def test_a_review_that_no_file_takes_is_not_let_go_for_another_capture(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    (tmp_path / "own").write_text("a file where the folder should be")
    other = path.with_name("other.h5")
    write_capture(sound_capture(), other)
    long = path.rename(path.with_name(f"{LONG}.h5"))
    window = opened(qtbot, make(), long)
    window.desk.markers.mark_moment(3.0)
    qtbot.waitUntil(lambda: "kept in memory" in window.page.problem_bar.text)
    assert long.stem[:20] in window.page.problem_bar.text  # which file it is that takes nothing
    window.open_file(other)
    assert "in this window alone" in window.page.problem_bar.text
    assert not window.jobs.running(OPENING)
    assert labels(window) == ["1"]
    opened(qtbot, window, other)  # the same once more gives it up
    assert labels(window) == []


@pytest.mark.ordinary_rights
@pytest.mark.skipif(os.name != "posix", reason="rights are taken away in another way there")
def test_a_read_only_folder_is_told_and_the_review_kept_on_this_pc(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    path.parent.chmod(0o500)
    try:
        window = opened(qtbot, make(), path)
        _cannot_write(window, qtbot, path)
    finally:
        path.parent.chmod(0o700)


def test_where_no_folder_takes_it_the_review_stays_in_memory_and_is_saved_where_it_is_asked(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "own").write_text("a file where the folder should be")
    long = path.rename(path.with_name(f"{LONG}.h5"))
    window = opened(qtbot, make(), long)
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()
    assert "kept in memory" in window.page.problem_bar.text
    target = tmp_path / "elsewhere.review.json"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(target), ""))
    QTest.mouseClick(tools_of(window)["Save the review elsewhere"], Qt.MouseButton.LeftButton)
    assert window.page.problem_bar.text == ""
    assert '"label": "1"' in target.read_text("utf-8")
    window.desk.markers.mark_moment(4.0)
    window.close()
    assert '"label": "2"' in target.read_text("utf-8")
