"""From a marked band to the PDF and to the printer, as a technician does it; every action is counted."""

from __future__ import annotations

import shutil
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from analysis.review.job import Job
from analysis.review.model import TravelSpan
from app.main_window import Window
from app.reporting import printing
from app.resources import sample_captures
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app import hands

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
MOST_ACTIONS = 5
A_MINUTE_S = 60.0


class Hand:
    """Mouse and keys of one window; counts what a person does."""

    def __init__(self, window: Window) -> None:
        self.window, self.count = window, 0

    def drag_over_travel(self, start_percent: float, stop_percent: float) -> None:
        track = self.window.page.track
        start = track.viewport_point(start_percent, 12.0).toPoint()
        hands.drag(track.canvas, start, track.viewport_point(stop_percent, 12.0).toPoint(), held=CTRL)
        self.count += 1

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier, widget: QWidget | None = None) -> None:
        QTest.keyClick(widget or self.window, key, held)
        self.count += 1


@pytest.fixture
def opened(qtbot: QtBot, tmp_path: Path) -> Window:
    """A window with a copy of the worn sample open and examined, by the program's real tools."""
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made)
    made.resize(1366, 768)
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    source = next(path for path in sample_captures() if path.name == "W1041-rear-left-height.h5")
    sample = tmp_path / source.name
    shutil.copy(source, sample)
    with qtbot.waitSignal(made.session.findings_changed, timeout=30_000):
        made.open_file(sample)
    qtbot.waitUntil(lambda: not made.jobs.busy() and made.page.track.empty_text == "", timeout=10_000)
    return made


def in_file_dialog(qtbot: QtBot, target: Path) -> Callable[..., tuple[str, str]]:
    """Stands for the system's own file dialog: takes the name that it proposes, in another folder."""
    return lambda _parent, _title, start, _kinds: (str(target / Path(start).name), "")


def test_from_a_marked_band_to_the_pdf_takes_a_handful_of_actions_and_seconds(
    qtbot: QtBot,
    opened: Window,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    record_property: Callable[[str, object], None],
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", in_file_dialog(qtbot, tmp_path))
    hand, begun = Hand(opened), time.perf_counter()
    hand.drag_over_travel(42.0, 49.0)
    (marker,) = opened.desk.keeper.review.markers
    assert isinstance(marker, TravelSpan)
    assert marker.travel.start == pytest.approx(42.0, abs=0.3)
    assert marker.travel.stop == pytest.approx(49.0, abs=0.3)
    hand.press(Qt.Key.Key_R, CTRL)
    qtbot.waitUntil(lambda: opened.report_desk.page.preview.count > 0, timeout=20_000)
    opened.report_desk.page.form.markers.setFocus()
    hand.press(Qt.Key.Key_Space, Qt.KeyboardModifier.NoModifier, opened.report_desk.page.form.markers)
    assert opened.keeper.review.job.markers
    hand.press(Qt.Key.Key_P, CTRL | SHIFT)
    target = tmp_path / "W1041-rear-left-height-report.pdf"
    qtbot.waitUntil(lambda: target.exists() and not opened.jobs.busy(), timeout=20_000)
    taken_s = time.perf_counter() - begun
    hand.count += 1  # Return, in the file dialog
    record_property("actions", hand.count)
    record_property("seconds of the program", round(taken_s, 2))
    print(f"from the mark to the PDF: {hand.count} actions, {taken_s:.2f} s of the program's own time")
    assert hand.count <= MOST_ACTIONS
    assert taken_s < 0.5 * A_MINUTE_S
    pages = [" ".join(page.extract_text().split()) for page in PdfReader(target).pages]
    assert "Very likely the position sensor is worn" in pages[0]
    assert "What the technician's markers read" in " ".join(pages[1:])
    assert "breaks up on 18 of 18" in " ".join(pages[1:])


def test_print_goes_through_the_windows_command_and_the_dialog_to_paper(
    qtbot: QtBot, opened: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Accepting(QPrintDialog):
        """The dialog, in which a person chooses to print into a file and presses Print."""

        def __init__(self, printer: QPrinter, parent: QWidget) -> None:
            super().__init__(printer, parent)
            printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
            printer.setOutputFileName(str(tmp_path / "printed.pdf"))
            assert printer.docName().startswith("Report:")

        def exec(self) -> int:
            return int(QDialog.DialogCode.Accepted)

    monkeypatch.setattr(printing, "QPrintDialog", Accepting)
    QTest.keyClick(opened, Qt.Key.Key_R, CTRL)
    qtbot.waitUntil(lambda: opened.report_desk.page.preview.count > 0, timeout=20_000)
    QTest.keyClick(opened, Qt.Key.Key_P, CTRL)
    qtbot.waitUntil(lambda: (tmp_path / "printed.pdf").exists())
    pages = PdfReader(tmp_path / "printed.pdf").pages
    assert len(pages) == opened.report_desk.page.preview.count
    assert not opened.findChildren(QPrintDialog)  # none is left that knows a printer which is gone
    assert [round(float(side) * 25.4 / 72.0) for side in pages[0].mediabox[2:]] == [210, 297]
    assert "Very likely the position sensor is worn" in " ".join(pages[0].extract_text().split())


def test_a_print_that_the_user_thinks_better_of_prints_nothing_and_says_nothing(
    qtbot: QtBot, opened: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QPrintDialog, "exec", lambda _self: int(QDialog.DialogCode.Rejected))
    monkeypatch.setattr(printing, "paint_on", lambda *_: pytest.fail("printed"))
    QTest.keyClick(opened, Qt.Key.Key_R, CTRL)
    qtbot.waitUntil(lambda: opened.report_desk.page.preview.count > 0, timeout=20_000)
    opened.actions_by_name["print_report"].trigger()
    assert not opened.report_desk.page.problem_bar.isVisible()


def test_a_printer_that_cannot_be_used_is_said_with_the_way_round_it(
    qtbot: QtBot, opened: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QPrintDialog, "exec", lambda _self: int(QDialog.DialogCode.Accepted))
    monkeypatch.setattr(printing, "paint_on", lambda *_: False)
    opened.report_desk.open()
    qtbot.waitUntil(lambda: opened.report_desk.page.preview.count > 0, timeout=20_000)
    opened.actions_by_name["print_report"].trigger()
    assert "save the report as PDF" in opened.report_desk.page.problem_bar.text


def test_the_readings_of_markers_are_printed_only_where_the_technician_says_so(
    qtbot: QtBot, opened: Window
) -> None:
    keeper = opened.keeper
    QTest.keyClick(opened, Qt.Key.Key_M)
    assert len(keeper.review.markers) == 1
    opened.report_desk.open()
    qtbot.waitUntil(lambda: opened.report_desk.page.preview.count > 0, timeout=20_000)
    assert keeper.review.job == Job()
    opened.report_desk.page.form.markers.click()
    assert keeper.review.job == replace(Job(), markers=True)
    opened.actions_by_name["undo"].trigger()
    assert keeper.review.job == Job()
