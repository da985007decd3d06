"""The Watch page as it is used: the recorder saves into a folder, and the page says what is missing."""

from __future__ import annotations

import threading
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Step
from analysis.diagnosis.enough import NOTHING_YET, Evidence, Task
from analysis.watching.gathered import Standing
from analysis.watching.watch import Watch
from app.language import install_language
from app.main_window import Window
from app.watching.distance import ARC_MINUTES, LEAST_ARC_MINUTES, font_px
from app.watching.far_line import FarLine
from app.watching.page import WatchPage
from tests.importing_page.tables import at_rest, comma_table, swept
from tests.watching_page.hands import begin, looked, taken, watch_worn, watched


def test_the_key_asks_for_a_folder_and_watches_it(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    QTest.keyClick(window, Qt.Key.Key_F8)
    assert window.pages.currentWidget() is window.watching.page
    assert window.watching.going
    looked(qtbot, window)
    assert window.watching.page.instruction.text == "Sweep the arm"
    assert str(tmp_path) in window.watching.page.title.text()


def test_a_file_written_in_slices_is_taken_once_it_is_whole(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    whole = comma_table(tmp_path / "whole.csv", swept(3.0)).read_bytes()
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    growing = folder / "sweep.csv"
    for place in range(4):
        part = whole[place * len(whole) // 4 : (place + 1) * len(whole) // 4]
        with growing.open("ab") as file:
            file.write(part)
        seen = growing.stat().st_size
        qtbot.waitUntil(partial(_has_seen, window, seen))
    taken(qtbot, window, 1)
    assert growing.read_bytes() == whole
    page = window.watching.page
    assert "sweep.csv" in page.files.text()
    assert any(item.crossings for item in watched(window).standing.evidence.stretches)
    assert "crossings" in page.bar.accessibleDescription()


def _has_seen(window: Window, size: int) -> bool:
    return (watched(window).seen or {}).get("sweep.csv", (0, 0))[0] == size


def test_files_of_one_job_join_and_are_judged_together(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    comma_table(folder / "1.csv", swept(2.0))
    taken(qtbot, window, 1)
    first = watched(window).standing
    assert first.evidence.next.task is not Task.ENOUGH
    assert window.watching.page.instruction.text == first.evidence.next.line
    comma_table(folder / "2.csv", swept(10.0, seed=8))
    comma_table(folder / "3.csv", at_rest(6.0))
    taken(qtbot, window, 3)
    second = watched(window).standing
    assert sum(item.crossings for item in second.evidence.stretches) > sum(
        item.crossings for item in first.evidence.stretches
    )
    assert second.findings is not None
    assert window.watching.page.verdict.text() == second.findings.verdict.summary


def test_a_bad_file_is_told_and_left_and_can_be_tried_again(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    watch_worn(qtbot, window, tmp_path)
    page, bad = window.watching.page, tmp_path / "job-4711" / "notes.csv"
    assert "notes.csv: No two rows of numbers" in page.trouble.text()
    assert bad.read_text() == "nothing here\n"
    assert window.watching.going
    assert len(watched(window).taken) == 1
    QTest.mouseClick(page.again, Qt.MouseButton.LeftButton)
    assert not watched(window).failures
    qtbot.waitUntil(lambda: len(watched(window).failures) == 1, timeout=10_000)
    QTest.mouseClick(page.by_hand, Qt.MouseButton.LeftButton)
    assert window.imports.shown


def test_a_folder_that_is_lost_is_told_and_found_again(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    folder.rename(tmp_path / "away")
    qtbot.waitUntil(lambda: "The folder cannot be read" in window.watching.page.trouble.text())
    (tmp_path / "away").rename(folder)
    qtbot.waitUntil(lambda: window.watching.page.trouble.text() == "")
    assert window.watching.going


def test_what_was_gathered_opens_in_review_as_one_capture(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    watch_worn(qtbot, window, tmp_path)
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.actions_by_name["review_gathered"].trigger()
    assert window.pages.currentWidget() is window.page
    assert list((tmp_path / "job-4711").glob("job-4711-*.h5"))


def test_the_next_sensor_begins_with_nothing_and_leaves_the_files(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    watch_worn(qtbot, window, tmp_path)
    window.actions_by_name["next_sensor"].trigger()
    looked(qtbot, window)
    assert not watched(window).taken
    assert not watched(window).failures
    assert (tmp_path / "job-4711" / "sweep-1.csv").exists()


def test_stopping_and_closing_leave_no_clock_and_no_thread(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    begin(window, tmp_path / "job")
    looked(qtbot, window)
    QTest.mouseClick(window.watching.page.stop, Qt.MouseButton.LeftButton)
    assert not window.watching.going
    assert window.watching.page.instruction.text == "Not watching"
    QTest.mouseClick(window.watching.page.stop, Qt.MouseButton.LeftButton)
    assert window.watching.going
    window.close()
    assert not window.watching.going
    assert not [item for item in threading.enumerate() if item.name.startswith("wornband")]


def test_complete_evidence_is_shown_as_enough(window: Window, tmp_path: Path) -> None:
    complete = Watch(tmp_path, standing=Standing(Evidence(NOTHING_YET.stretches, ())))
    window.watching.page.show_watch(complete, going=True)
    assert window.watching.page.instruction.text == "ENOUGH"


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_the_instruction_can_be_read_from_three_metres(
    qtbot: QtBot, window: Window, tmp_path: Path, size: tuple[int, int]
) -> None:
    window.setMinimumSize(*size)
    window.resize(*size)
    watch_worn(qtbot, window, tmp_path)
    assert window.watching.page.instruction.font_px >= font_px(LEAST_ARC_MINUTES, 96.0)


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("10–90 %: 3 more times", ["10–90 %:", "3 more times"]),
        ("10–20 % not done", ["10–20 %", "not done"]),
        ("Now probe the ground", ["Now probe", "the ground"]),
        ("ENOUGH", ["ENOUGH"]),
    ],
)
def test_the_instruction_breaks_where_sense_does(qtbot: QtBot, text: str, lines: list[str]) -> None:
    line = FarLine()
    qtbot.addWidget(line)
    line.resize(1340, 330)
    line.show()
    line.show_text(text, "#000000", "#ffffff")
    assert line.lines == lines
    line.resize(1340, 120)  # lower than two lines that can be read from afar
    assert line.lines == [text]


def test_letters_are_as_high_as_the_angle_asks() -> None:
    # 22 minutes of arc at 3 m are 19.2 mm (tan of the angle); a pixel of a 96 dpi screen is 0.2646 mm.
    assert font_px(ARC_MINUTES, 96.0) == pytest.approx(19.2 / 0.2646 / 0.72, abs=1.0)
    assert font_px(ARC_MINUTES, 192.0) == pytest.approx(2 * font_px(ARC_MINUTES, 96.0), abs=1.0)
    assert font_px(ARC_MINUTES, 0.0) == font_px(ARC_MINUTES, 96.0)


def test_a_sensor_chosen_on_the_page_judges_what_comes_and_what_came(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    watch_worn(qtbot, window, tmp_path)
    page = window.watching.page
    window.watching.enter()
    before = watched(window).standing.findings
    assert page.profile.count() > 5
    page.profile.setCurrentIndex(page.profile.findData("pedal"))
    page.profile.activated.emit(page.profile.currentIndex())
    qtbot.waitUntil(lambda: watched(window).profile == "pedal", timeout=10_000)
    after = watched(window).standing.findings
    assert before is not None
    assert after is not None
    assert after.profile != before.profile
    window.actions_by_name["next_sensor"].trigger()
    assert watched(window).profile == "pedal"


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_page_fits_a_screen_at_two_hundred_per_cent_in_every_language(
    qtbot: QtBot, window: Window, tmp_path: Path, language: str
) -> None:
    """1920 x 1080 at 200 % is 960 x 540 in logical pixels."""
    watch_worn(qtbot, window, tmp_path)
    application = QApplication.instance()
    assert application is not None
    install_language(application, language)
    try:
        page = WatchPage(window.page.button)
        qtbot.addWidget(page)
        page.resize(960, 500)
        page.show_watch(replace(watched(window), unconfirmed={"rest.csv": Step.WIGGLE}), going=True)
        page.show()
        qtbot.waitUntil(lambda: page.height() >= 500)
        assert page.minimumSizeHint().width() <= 960
        assert page.minimumSizeHint().height() <= 540
        for item in (page.profile, page.choose, page.stop, *page.buttons, page.instruction, page.bar):
            assert item.geometry().right() <= page.width()
        page.show_watch(watched(window), going=True)
        qtbot.waitUntil(lambda: page.instruction.font_px >= font_px(LEAST_ARC_MINUTES, 96.0))
        assert page.height() - page.bar.geometry().bottom() > 0
    finally:
        install_language(application, "en")


def test_on_a_low_screen_the_cautions_give_way_to_their_title_and_come_back(
    qtbot: QtBot, window: Window
) -> None:
    page = window.watching.page
    window.pages.setCurrentWidget(page)
    first = next(
        label for label in page.cautions.findChildren(QLabel) if label.wordWrap() and len(label.text()) > 60
    )
    qtbot.waitUntil(lambda: first.isVisibleTo(page))
    window.resize(1366, 560)
    qtbot.waitUntil(lambda: not first.isVisibleTo(page))
    assert page.cautions.isVisibleTo(window)
    window.resize(1366, 768)
    qtbot.waitUntil(lambda: first.isVisibleTo(page))
