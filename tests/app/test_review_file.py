"""The review's file through the window: read, saved, watched, and never written over somebody else's."""

from __future__ import annotations

import subprocess
import sys
import threading
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.captures.fingerprint import file_sha256
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.control_unit.debounce import ContinuousTimer
from analysis.progress import Tick
from analysis.review.model import Choice
from analysis.review.sidecar import Sidecar, read_sidecar
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.fakes import sound_capture, worn_capture, worn_findings
from tests.app.visits import Make, labels, make, opened, path, theirs, tools_of

__all__ = ["make", "path"]  # fixtures


def channel_volts(window: Window) -> NDArray[np.float64]:
    capture = window.session.capture
    assert capture is not None
    return capture.records[0].channels[0].volts()


def test_markers_and_decisions_are_in_the_file_within_two_seconds_and_come_back(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    before = file_sha256(path)
    first = opened(qtbot, make(), path)
    first.focus.point(2.0)
    QTest.keyClick(first, Qt.Key.Key_M)
    QTest.keyClick(first, Qt.Key.Key_A)
    qtbot.waitUntil(layout.review_path(path).exists, timeout=2000)
    qtbot.waitUntil(lambda: not first.desk.keeper.unsaved, timeout=2000)
    first.close()
    again = opened(qtbot, make(), path)
    assert labels(again) == ["1"]
    (decision,) = again.desk.keeper.review.decisions
    assert decision.choice is Choice.ACCEPTED
    assert not again.actions_by_name["undo"].isEnabled()
    assert file_sha256(path) == before


@pytest.mark.parametrize("what", ["taken away", "replaced", "written to"])
def test_a_capture_that_changes_while_it_is_open_is_told_once_and_no_marker_is_lost(
    what: str, qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    window = opened(qtbot, make(), path)
    told: list[str] = []
    window.desk.file.problem.connect(told.append)
    before = channel_volts(window)
    if what == "taken away":
        path.rename(tmp_path / "elsewhere.h5")
    elif what == "replaced":
        write_capture(sound_capture(0.0), path, replace=True)
    else:
        with path.open("ab") as file:
            file.write(b"more")
    qtbot.waitUntil(lambda: bool(told))
    assert "worn.h5 was changed or taken away" in told[0]
    assert (channel_volts(window) == before).all()
    window.desk.markers.mark_moment(3.0)
    qtbot.waitUntil(lambda: not window.desk.keeper.unsaved)
    assert layout.review_path(path).exists()
    assert len(told) == 1
    window.close()
    if what == "replaced":  # the markers are not taken for those of the capture that lies there now
        again = read_sidecar(path)
        assert "made from another one" in again.trouble
        assert again.review.markers == ()


def test_what_was_edited_just_before_closing_is_saved(qtbot: QtBot, make: Make, path: Path) -> None:
    window = opened(qtbot, make(), path)
    window.desk.markers.mark_moment(3.0)
    window.close()
    assert [item.label for item in read_sidecar(path).review.markers] == ["1"]


def test_opening_another_capture_saves_this_one_and_brings_its_own_markers(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    other = path.with_name("other.h5")
    write_capture(worn_capture(), other)
    theirs(other, "kept before")
    window = opened(qtbot, make(), path)
    window.desk.markers.mark_moment(3.0)
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(other)
    qtbot.waitUntil(lambda: labels(window) == ["kept before"])
    assert len(read_sidecar(path).review.markers) == 1


@pytest.mark.parametrize(
    ("raw", "said"),
    [
        (b"{", "damaged"),
        (b"\xff\xfe\x00", "damaged"),
        (b'{"schema": "wornband-review/9", "capture": {}}', "later version"),
        (b'{"schema": "wornband-review/1", "capture": {"sha256": "00"}}', "another one"),
    ],
    ids=["damaged", "no text", "newer", "of another capture"],
)
def test_a_review_that_cannot_be_used_is_told_and_kept_aside(
    qtbot: QtBot, make: Make, path: Path, raw: bytes, said: str
) -> None:
    sidecar = layout.review_path(path)
    sidecar.write_bytes(raw)
    window = opened(qtbot, make(), path)
    assert said in window.page.problem_bar.text
    assert "kept under another name" in window.page.problem_bar.text
    assert sidecar.read_bytes() == raw  # looking changes nothing
    window.desk.markers.mark_moment(3.0)
    window.close()
    assert (path.parent / "worn.review.kept-1.json").read_bytes() == raw
    assert len(read_sidecar(path).review.markers) == 1


def test_a_change_by_another_program_is_told_at_once_and_its_review_can_be_taken(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    window = opened(qtbot, make(), path)
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()
    theirs(path)
    qtbot.waitUntil(lambda: "another window or program changed" in window.page.problem_bar.text.lower())
    QTest.mouseClick(tools_of(window)["Take the other review"], Qt.MouseButton.LeftButton)
    assert labels(window) == ["1", "theirs"]
    assert window.page.problem_bar.text == ""
    window.actions_by_name["undo"].trigger()
    assert labels(window) == ["1"]


def test_of_two_edits_at_once_neither_is_overwritten_and_the_technician_decides(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    window = opened(qtbot, make(), path)
    theirs(path)
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()
    assert [item.marker_id for item in read_sidecar(path).review.markers] == ["theirs"]
    assert "another window or program changed" in window.page.problem_bar.text.lower()
    QTest.mouseClick(tools_of(window)["Keep this review"], Qt.MouseButton.LeftButton)
    assert [item.label for item in read_sidecar(path).review.markers] == ["1"]
    assert '"theirs"' in (path.parent / "worn.review.kept-1.json").read_text("utf-8")
    assert not window.actions_by_name["keep_own"].isEnabled()


def test_taking_the_other_review_keeps_what_was_unsaved_under_another_name(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    window = opened(qtbot, make(), path)
    theirs(path)
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()
    window.actions_by_name["take_other"].trigger()
    assert labels(window) == ["theirs"]
    assert '"label": "1"' in (path.parent / "worn.review.kept-1.json").read_text("utf-8")


def test_a_capture_that_is_open_in_two_windows_is_told_and_nothing_is_lost(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    first = opened(qtbot, make(), path)
    assert first.page.problem_bar.text == ""
    second = opened(qtbot, make(), path)
    assert "another window" in second.page.problem_bar.text
    first.desk.markers.mark_moment(1.0)
    first.desk.keeper.save()
    qtbot.waitUntil(lambda: second.desk.keeper.conflict)
    second.desk.markers.mark_moment(2.0)
    first.close()
    second.close()
    kept = sorted(path.parent.glob("worn.review*.json"))
    assert len(kept) == 2
    third = opened(qtbot, make(), path)
    assert "another window" not in third.page.problem_bar.text


_HOLDER = """
import hashlib, sys, time
from pathlib import Path
from PySide6.QtCore import QDir, QLockFile
name = hashlib.sha256(str(Path(sys.argv[1]).resolve()).encode()).hexdigest()[:24]
lock = QLockFile(QDir.temp().filePath(f"wornband-{name}.lock"))
print(lock.tryLock(0), flush=True)
time.sleep(600)
"""


def test_a_window_that_was_killed_leaves_no_lock_that_anybody_hears_of(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    held = subprocess.Popen([sys.executable, "-c", _HOLDER, str(path)], stdout=subprocess.PIPE, text=True)
    assert held.stdout is not None
    assert held.stdout.readline() == "True\n"
    window = make()
    told: list[str] = []
    window.desk.file.problem.connect(told.append)
    opened(qtbot, window, path)
    assert "open in another window" in told[0]
    held.kill()
    held.communicate()
    told.clear()
    opened(qtbot, window, path)
    assert told == []


def test_an_edit_while_the_review_is_still_being_read_is_refused_and_told(qtbot: QtBot, path: Path) -> None:
    going = threading.Event()

    def slow(at: Path, tick: Tick) -> Sidecar:
        going.wait(5.0)
        return read_sidecar(at, tick)

    tools = Tools(lambda at, tick: open_capture(at), worn_findings, slow)
    window = Window(tools, Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.show()
    try:
        with qtbot.waitSignal(window.session.findings_changed):
            window.open_file(path)
        window.desk.markers.mark_moment(3.0)
        assert "still being read" in window.page.problem_bar.text
        assert window.desk.keeper.review.markers == ()
    finally:
        going.set()
        window.close()


def test_heights_road_and_rules_that_were_entered_are_there_again_the_next_time(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    first = opened(qtbot, make(), path)
    first.actions_by_name["why"].trigger()
    why = first.why.why
    assert why is not None
    why.heights.normal.setValue(51.0)
    why.drive.speed.setValue(75.0)
    why.unit.hold.setValue(120.0)
    why.proof.before.setValue(40.0)
    first.why.count_records([path])
    qtbot.waitUntil(lambda: "no record was taken on a road" in why.proof.counted.text())
    first.close()
    second = opened(qtbot, make(), path)
    choices = second.why.choices
    assert choices is not None
    assert choices.heights is not None
    assert choices.heights.normal_percent == 51.0
    assert choices.road.speed_km_h == 75.0
    assert choices.unit.range_rule is not None
    assert choices.unit.range_rule.debounce == ContinuousTimer(0.12)
    assert choices.test.before_km == 40.0
    second.actions_by_name["why"].trigger()
    assert second.why.why is not None
    assert second.why.why.proof.counted.text() == "worn.h5: no record was taken on a road"
    assert "mm of wheel travel" in " ".join(
        item.text() for item in second.page.evidence.findChildren(QLabel) if item.text()
    )
