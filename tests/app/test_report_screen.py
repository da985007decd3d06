"""The Report screen: what is entered goes into the review, and what is seen is what is stored."""

from __future__ import annotations

import json
import shutil
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog, QStyle, QStyleOptionButton
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.reports.drawing import Label
from analysis.reports.workshop import Workshop
from analysis.review.job import FACTS, Photo
from app.main_window import Window
from app.reporting.placed import Drawn, Line
from app.reporting.printing import paint_on
from app.resources import sample_captures
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.views.report_fields import LineField
from app.views.workshop_form import WorkshopForm
from tests.app import hands
from tests.app.real_files import shown
from tests.reporting.examples import photo


@pytest.fixture
def report(qtbot: QtBot, review: Window) -> Window:
    """The window with the Report screen of the worn capture in front."""
    review.actions_by_name["report"].trigger()
    qtbot.waitUntil(lambda: review.report_desk.page.preview.count > 0)
    return review


def words(window: Window) -> str:
    """All text of the sheets that are shown."""
    texts = []
    for sheet in window.report_desk.sheets:
        for item in sheet.items:
            if isinstance(item, Line):
                line = item.layout.lineAt(item.number)
                start = line.textStart()
                texts.append(item.layout.text()[start : start + line.textLength()])
            elif isinstance(item, Drawn):
                texts += [mark.text for mark in item.drawing.marks if isinstance(mark, Label)]
    return " ".join(" ".join(texts).split())


def letters(text: str) -> str:
    """Plain letters and digits, in any order: a PDF keeps no spaces between its runs."""
    return "".join(letter for letter in text if letter.isascii() and letter.isalnum())


def enter(window: Window, key: str, text: str) -> None:
    """Type into a fact's field and leave it."""
    field = window.report_desk.page.form.facts[key]
    assert isinstance(field, LineField)
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)
    QTest.keyClick(field, Qt.Key.Key_Return)


def test_the_screen_comes_with_its_key_and_goes_with_its_key(qtbot: QtBot, review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_R, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: review.report_desk.page.preview.count > 0)
    assert review.pages.currentWidget() is review.report_desk.page
    QTest.keyClick(
        review, Qt.Key.Key_R, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    )
    assert review.pages.currentWidget() is review.page


def test_there_is_no_report_without_findings(window: Window) -> None:
    for name in ("report", "save_pdf", "save_html", "print_report"):
        assert not window.actions_by_name[name].isEnabled()
    window.report_desk.open()
    assert "once a capture is open" in window.report_desk.page._sheets.empty_text


def test_a_fact_that_is_typed_is_on_the_sheet_and_can_be_undone(qtbot: QtBot, report: Window) -> None:
    enter(report, "vin", "WBX00000000000017")
    qtbot.waitUntil(lambda: "WBX00000000000017" in words(report))
    assert report.keeper.review.job.facts == {"vin": "WBX00000000000017"}
    report.keeper.stack.undo()
    qtbot.waitUntil(lambda: "WBX00000000000017" not in words(report))
    assert report.report_desk.page.form.facts["vin"].text() == ""  # type: ignore[union-attr]


def test_every_fact_has_a_field_and_every_field_a_name_for_a_screen_reader(report: Window) -> None:
    form = report.report_desk.page.form
    assert set(form.facts) == set(FACTS)
    assert all(field.accessibleName() for field in (*form.facts.values(), *form.offer.values(), form.words))


def test_letters_typed_into_a_field_move_nothing_in_the_window(report: Window) -> None:
    before = report.focus.window
    enter(report, "technician", "C N P 0 - + L B")
    assert report.focus.window == before
    assert not report.actions_by_name["run"].isEnabled()


def test_own_words_stand_on_the_sheet_and_the_programs_come_back(qtbot: QtBot, report: Window) -> None:
    form = report.report_desk.page.form
    form.words.setFocus()
    form.words.setPlainText("The sensor fails when the car leans.")
    form.words.commit()
    qtbot.waitUntil(lambda: "The sensor fails when the car leans." in words(report))
    assert "changed by the technician" in words(report)
    QTest.mouseClick(form.own_again, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "The sensor fails when the car leans." not in words(report))
    assert report.keeper.review.job.words == {}


def ticked(window: Window) -> list[str]:
    """Codes of the boxes that are ticked under The picture."""
    return [key for key, box in window.report_desk.page.form.pictures.boxes.items() if box.isChecked()]


def pictures_printed(window: Window) -> int:
    """How many pictures the first sheet shows."""
    return sum(isinstance(item, Drawn) for item in window.report_desk.sheets[0].items)


def test_the_picture_that_the_program_chose_is_ticked_and_said_to_be_its_choice(report: Window) -> None:
    choice = report.report_desk.page.form.pictures
    assert report.keeper.review.job.pictures == ()
    assert ticked(report) == ["trace"]
    assert pictures_printed(report) == 1
    assert choice.state.text() == "Chosen by the program."
    assert not choice.program_again.isEnabled()


def chosen(window: Window) -> tuple[str, ...]:
    """Codes of the pictures that were chosen by hand."""
    return window.keeper.review.job.pictures


def test_with_the_last_picture_unticked_there_is_none_until_the_program_chooses_again(
    qtbot: QtBot, report: Window
) -> None:
    choice = report.report_desk.page.form.pictures
    QTest.keyClick(choice.boxes["trace"], Qt.Key.Key_Space)
    assert chosen(report) == ("none",)
    assert ticked(report) == ["none"]
    qtbot.waitUntil(lambda: pictures_printed(report) == 0)
    assert choice.state.isHidden()
    QTest.mouseClick(choice.program_again, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: pictures_printed(report) == 1)
    assert chosen(report) == ()
    assert ticked(report) == ["trace"]
    QTest.keyClick(choice.boxes["none"], Qt.Key.Key_Space)
    assert ticked(report) == ["none"]
    QTest.keyClick(choice.boxes["none"], Qt.Key.Key_Space)  # and back
    qtbot.waitUntil(lambda: ticked(report) == ["trace"])
    report.actions_by_name["undo"].trigger()
    assert ticked(report) == ["none"]


@pytest.mark.parametrize("picture", ["none", "trace"])
def test_a_report_without_a_picture_says_that_it_has_none_and_why(
    qtbot: QtBot, tmp_path: Path, picture: str
) -> None:
    path = hands.copy_of_sample("W1091-front-right-height.h5", tmp_path)
    made = Window(real_tools(), Settings(MemoryStore()))
    for window in shown(qtbot, made):
        with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
            window.open_file(path)
        window.actions_by_name["report"].trigger()
        _no_picture_unless_one_is_chosen(qtbot, window, picture)


def _no_picture_unless_one_is_chosen(qtbot: QtBot, window: Window, picture: str) -> None:
    choice, told = window.report_desk.page.form.pictures, "The program shows none with this finding."
    qtbot.waitUntil(lambda: choice.state.text() == told, timeout=20_000)
    assert ticked(window) == ["none"]
    assert pictures_printed(window) == 0
    QTest.keyClick(choice.boxes[picture], Qt.Key.Key_Space)
    if picture == "none":  # as little as before, and still said
        assert ticked(window) == ["none"]
        assert window.keeper.review.job.pictures == ()
        return
    assert window.keeper.review.job.pictures == ("trace",)
    qtbot.waitUntil(lambda: choice.state.text() != told, timeout=20_000)
    missing = "Cannot be drawn from this capture: The signal in time"
    assert (choice.state.text(), pictures_printed(window)) == (missing, 0)


def test_a_box_stands_where_it_stood_when_it_is_ticked_and_its_ring_keeps_off_its_words(
    report: Window,
) -> None:
    choice = report.report_desk.page.form.pictures
    on, off = choice.boxes["trace"], choice.boxes["none"]
    size = QStyle.SubElement.SE_CheckBoxIndicator
    for box in (on, off):
        option = QStyleOptionButton()
        box.initStyleOption(option)
        assert box.style().subElementRect(size, option, box).width() == 14
        words = box.style().subElementRect(QStyle.SubElement.SE_CheckBoxContents, option, box)
        assert box.rect().left() + 4 <= words.left() - 14
        assert words.height() + 4 <= box.height()


def test_pictures_list_offer_and_odds_are_chosen_by_hand(qtbot: QtBot, report: Window) -> None:
    form = report.report_desk.page.form
    form.number.click()
    form.repaired.click()
    form.closing["road_test"].click()
    boxes = form.pictures.boxes
    QTest.mouseClick(boxes["track"], Qt.MouseButton.LeftButton)
    job = report.keeper.review.job
    assert job.show_number
    assert job.repaired
    assert job.closing == ("road_test",)
    assert job.pictures == ("track", "trace")  # the program's own was ticked already
    QTest.mouseClick(boxes["none"], Qt.MouseButton.LeftButton)
    assert report.keeper.review.job.pictures == ("none",)
    form.offer["part"].setText("180")
    form.offer["part"].editingFinished.emit()
    qtbot.waitUntil(lambda: "I approve the work above." in words(report))


def test_the_sheets_stay_white_in_the_dark(qtbot: QtBot, report: Window) -> None:
    report.settings.colours = "dark"
    report.apply_colours()
    view = report.report_desk.page.preview._views[0]
    image = view.grab().toImage()
    assert image.pixelColor(image.width() // 2, 20).lightness() > 250
    assert report.report_desk.page.grab().toImage().pixelColor(3, 3).lightness() < 90


def test_what_is_seen_is_what_is_stored(qtbot: QtBot, report: Window, tmp_path: Path) -> None:
    report.report_desk.save(tmp_path / "a.pdf")
    qtbot.waitUntil(lambda: (tmp_path / "a.pdf").exists() and not report.jobs.busy())
    pages = PdfReader(tmp_path / "a.pdf").pages
    assert len(pages) == report.report_desk.page.preview.count
    stored = "".join("".join(page.extract_text() for page in pages).split())
    shown = "".join(words(report).split())
    assert sorted(letters(shown)) == sorted(letters(stored))


def test_html_is_stored_too_and_the_suffix_is_put_on(
    qtbot: QtBot, report: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "my report"), ""))
    report.actions_by_name["save_html"].trigger()
    qtbot.waitUntil(lambda: (tmp_path / "my report.html").exists())
    assert "<svg" in (tmp_path / "my report.html").read_text(encoding="utf-8")


def test_a_place_that_cannot_be_written_is_said_above_the_sheets(
    qtbot: QtBot, report: Window, tmp_path: Path
) -> None:
    report.report_desk.save(tmp_path / "no folder" / "a.pdf")
    qtbot.waitUntil(lambda: "no such folder" in report.report_desk.page.problem_bar.text)
    report.report_desk.save(tmp_path / "a.odd")
    qtbot.waitUntil(lambda: ".pdf or .html" in report.report_desk.page.problem_bar.text)


def test_photos_are_added_captioned_and_taken_out(
    qtbot: QtBot, report: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    photo(tmp_path / "one.png")
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(tmp_path / "one.png")], ""))
    report.report_desk.page.form.photos.wanted.emit()
    (caption,) = report.report_desk.page.form.photos.findChildren(LineField)
    caption.setText("bent link")
    caption.editingFinished.emit()
    qtbot.waitUntil(lambda: "bent link" in words(report))
    assert report.keeper.review.job.photos[0].caption == "bent link"
    report.report_desk.page.form.photos._change(0, None)
    qtbot.waitUntil(lambda: "bent link" not in words(report))


def test_a_photo_from_elsewhere_is_printed_where_it_was_chosen_and_told_where_it_was_not(
    qtbot: QtBot, report: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    elsewhere = tmp_path / "camera" / "one.png"
    elsewhere.parent.mkdir()
    photo(elsewhere)
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(elsewhere)], ""))
    report.report_desk.page.form.photos.wanted.emit()
    assert report.keeper.review.job.photos == (Photo(str(elsewhere)),)
    folder = report.report_desk._folder()
    assert report.settings.chosen_files(folder) == {str(elsewhere)}
    assert report.settings.chosen_files(folder / "other") == set()

    def printed() -> bool:
        made = report.report_desk._materials
        return made is not None and str(elsewhere) in made.images

    qtbot.waitUntil(printed)
    # On another PC, where nobody chose it, the same review prints it no more.
    report.settings._keep(chosen_files="[]")
    report.report_desk._make()
    qtbot.waitUntil(lambda: not printed())
    assert "outside the capture's folder" in report.report_desk.page.problem_bar.text


def test_the_workshop_is_kept_in_the_settings_and_printed(qtbot: QtBot, report: Window) -> None:
    form = WorkshopForm(report.settings.workshop)
    qtbot.addWidget(form)
    form.name.setText("Invented Garage")
    form.lines.setPlainText("Some Street 1\n\n Some Town ")
    assert form.workshop == Workshop("Invented Garage", ("Some Street 1", "Some Town"))
    report.report_desk._take_workshop(form)
    qtbot.waitUntil(lambda: "Invented Garage" in words(report))
    assert report.settings.workshop.lines == ("Some Street 1", "Some Town")


def test_another_paper_gives_other_sheets_at_once(report: Window) -> None:
    before = report.report_desk.sheets[0].width
    report.report_desk.page.paper.setCurrentIndex(report.report_desk.page.paper.findData("letter"))
    report.report_desk.page.paper.activated.emit(report.report_desk.page.paper.currentIndex())
    assert report.report_desk.sheets[0].width > before
    assert report.settings.paper == "letter"


def test_the_printer_gets_the_same_marks_in_their_true_size(report: Window, tmp_path: Path) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    assert paint_on(printer, report.report_desk.sheets)
    pages = PdfReader(tmp_path / "printed.pdf").pages
    assert len(pages) == len(report.report_desk.sheets)
    assert "What was found" in pages[0].extract_text().replace("\t", " ")


def test_a_sheet_is_painted_the_same_twice(report: Window) -> None:
    sheet = report.report_desk.sheets[0]

    def painted() -> QImage:
        image = QImage(420, 594, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFFFF)
        painter = QPainter(image)
        painter.scale(image.width() / sheet.width, image.height() / sheet.height)
        sheet.paint(painter)
        painter.end()
        return image

    assert painted() == painted()


def _opened_and_read(qtbot: QtBot, capture: Path, technician: str) -> str:
    """Open a capture in a window of its own, read the sheets, then enter a technician."""
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made)
    made.show()
    with qtbot.waitSignal(made.session.findings_changed, timeout=30_000):
        made.open_file(capture)
    qtbot.waitUntil(lambda: not made.jobs.busy())
    made.report_desk.open()
    qtbot.waitUntil(lambda: made.report_desk.page.preview.count > 0)
    seen = words(made)
    if technician:
        enter(made, "technician", technician)
    made.close()
    return seen


def test_what_was_entered_lies_beside_the_capture_and_comes_back(qtbot: QtBot, tmp_path: Path) -> None:
    source = next(path for path in sample_captures() if path.name == "W1041-rear-left-height.h5")
    capture = tmp_path / source.name
    shutil.copy(source, capture)
    assert "R. Invented" not in _opened_and_read(qtbot, capture, "R. Invented")
    assert "R. Invented" in _opened_and_read(qtbot, capture, "")
    kept = json.loads(layout.review_path(capture).read_text(encoding="utf-8"))
    assert kept["job"]["facts"] == {"technician": "R. Invented"}


def test_a_capture_that_is_set_beside_it_and_cannot_be_read_is_said(
    qtbot: QtBot, report: Window, tmp_path: Path
) -> None:
    (tmp_path / "odd.h5").write_bytes(b"no capture")
    job = replace(report.keeper.review.job, other=str(tmp_path / "odd.h5"))
    report.keeper.change("x", replace(report.keeper.review, job=job))
    qtbot.waitUntil(lambda: report.report_desk.page.problem_bar.text != "")
    assert "odd.h5" in report.report_desk.page.form.other.text()
