"""The PDF read back with pikepdf and pypdf, which had no part in drawing it."""

from __future__ import annotations

import io
import re
from pathlib import Path

import pikepdf
import pytest
from pypdf import PdfReader

from analysis.errors import WornbandError
from analysis.reports.pages import Pages
from analysis.reports.subject import Subject
from analysis.reports.whole_report import whole_report
from analysis.reports.workshop import Workshop
from analysis.review.job import Job, Photo
from analysis.review.model import Review
from app.reporting.languages import report_language
from app.reporting.layout import Paper, lay_out
from app.reporting.materials import gather
from app.reporting.pdf import report_pdf
from app.reporting.placed import UNITS_A_MM, Line
from app.reporting.table_columns import shared_widths
from app.window import application
from tests.reporting.examples import ODD, odd_job, pages, photo
from tests.reports.examples import CAPTURE, findings

NOWHERE = Path("nowhere")


def pdf(made: Pages, paper: Paper = Paper.A4, folder: Path = NOWHERE) -> bytes:
    sheets = lay_out(gather(made, folder), paper)
    return report_pdf(sheets, title=made.title, language=made.language, fingerprint=made.fingerprint)


def words(data: bytes) -> str:
    """The text of all pages, with one space wherever there is any."""
    return " ".join(" ".join(page.extract_text() for page in PdfReader(io.BytesIO(data)).pages).split())


def fonts(file: pikepdf.Pdf) -> list[pikepdf.Object]:
    found = {}
    for page in file.pages:
        for name, font in page.resources.get("/Font", {}).items():
            found[(str(name), font.objgen)] = font
    return list(found.values())


def images(file: pikepdf.Pdf) -> int:
    return sum(len(page.get_images()) for page in file.pages)


def test_the_document_has_its_title_language_and_fingerprint() -> None:
    with pikepdf.open(io.BytesIO(pdf(pages()))) as file:
        assert str(file.docinfo["/Title"]) == "Test report: Ride height sensor, rear left"
        assert str(file.Root.Lang) == "en"
        assert bool(file.Root.ViewerPreferences.DisplayDocTitle)
        assert str(file.docinfo["/WornbandSha256"]) == "ab" * 32
        assert "/OpenAction" not in file.Root
        assert "/JavaScript" not in file.Root.get("/Names", {})


def test_the_outline_leads_to_both_pages_in_the_reports_language() -> None:
    subject = Subject(CAPTURE, findings())
    for code, titles in (
        ("en", ["For the customer", "Evidence"]),
        ("de", ["Für den Kunden", "Nachweise"]),
    ):
        made = whole_report(subject, language=report_language(code), today="2026-04-14")
        reader = PdfReader(io.BytesIO(pdf(made)))
        items = [item for item in reader.outline if not isinstance(item, list)]
        assert [item.title for item in items] == titles
        assert [reader.get_destination_page_number(item) for item in items] == [0, 1]


def test_every_font_is_embedded_and_every_letter_has_its_meaning() -> None:
    with pikepdf.open(io.BytesIO(pdf(pages()))) as file:
        every = fonts(file)
        assert every
        for font in every:
            descriptor = font.DescendantFonts[0].FontDescriptor
            assert any(key in descriptor for key in ("/FontFile", "/FontFile2", "/FontFile3"))
            assert "/ToUnicode" in font


def test_the_traces_are_vectors_and_only_photos_are_images(tmp_path: Path) -> None:
    with pikepdf.open(io.BytesIO(pdf(pages()))) as file:
        assert images(file) == 0
    photo(tmp_path / "one.jpg")
    job = Job(photos=(Photo("one.jpg", "the corner"),))
    with pikepdf.open(io.BytesIO(pdf(pages(job), folder=tmp_path))) as file:
        assert images(file) == 1


@pytest.mark.parametrize(("paper", "size_mm"), [(Paper.A4, (210.0, 297.0)), (Paper.LETTER, (215.9, 279.4))])
def test_the_sheets_have_the_size_of_the_standard(paper: Paper, size_mm: tuple[float, float]) -> None:
    for page in PdfReader(io.BytesIO(pdf(pages(), paper))).pages:
        wide, high = float(page.mediabox.width), float(page.mediabox.height)
        assert wide == pytest.approx(size_mm[0] / 25.4 * 72, abs=0.6)
        assert high == pytest.approx(size_mm[1] / 25.4 * 72, abs=0.6)


def test_the_text_can_be_read_and_searched() -> None:
    text = words(pdf(pages()))
    for sentence in (
        "Test report: Ride height sensor, rear left",
        "tail drops overnight",
        "the position sensor is worn: its output breaks up at the same place of its travel (around 45 %)",
        "41.9–47.7",
        "12.6 ± 3.0 mV",
        "What that does not include",
        "ab" * 32,
        "cd" * 32,
        "Sheet 1 of",
    ):
        assert sentence in text, sentence


def test_words_are_parted_by_spaces() -> None:
    text = "".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf(pages()))).pages)
    assert "\t" not in text
    assert "Test report: Ride height sensor" in text


def test_the_report_speaks_german_and_says_so() -> None:
    application()
    subject = Subject(CAPTURE, findings(), review=Review())
    made = whole_report(subject, language=report_language("de"), today="2026-04-14")
    data = pdf(made)
    text = words(data)
    with pikepdf.open(io.BytesIO(data)) as file:
        assert str(file.Root.Lang) == "de"
    for sentence in (
        "Was wir empfehlen",
        "41,9–47,7",
        "12,6 ± 3,0 mV",
        "tail drops overnight",
        "Blatt 1 ",
    ):
        assert sentence in text, sentence
    for sentence in ("What we recommend", "Record", "Checks", "very likely"):
        assert sentence not in text, sentence


def test_no_word_of_a_heads_row_is_broken() -> None:
    assert shared_widths(100.0, (1.0, 1.0), (30.0, 20.0)) == [50.0, 50.0]
    wide = shared_widths(100.0, (1.0, 9.0), (30.0, 20.0))
    assert wide == pytest.approx([30.0, 70.0])
    assert sum(shared_widths(100.0, (1.0, 5.0, 4.0), (30.0, 20.0, 39.0))) == pytest.approx(100.0)
    assert shared_widths(100.0, (1.0, 1.0), (80.0, 40.0)) == [50.0, 50.0]


def test_page_one_is_one_sheet_and_the_evidence_begins_on_the_next() -> None:
    reader = PdfReader(io.BytesIO(pdf(pages())))
    assert "What we recommend" in reader.pages[0].extract_text()
    assert "What that does not include" in reader.pages[0].extract_text()
    assert "Evidence" not in reader.pages[0].extract_text()
    assert "Evidence" in reader.pages[1].extract_text()


def test_page_one_stays_one_sheet_with_an_offer_and_the_closing_list() -> None:
    offer = {"part": "180", "labour": "95", "calibration": "40", "tax_percent": "19", "currency": "EUR"}
    job = Job(offer=offer, repaired=True, notes="One line of a note.", show_number=True)
    for paper in Paper:
        reader = PdfReader(
            io.BytesIO(pdf(pages(job, Workshop("Invented Garage", ("Some Street 1",))), paper))
        )
        first = reader.pages[0].extract_text()
        assert "Signature of the customer" in first
        assert "captured again" in first


@pytest.mark.parametrize("name", ODD)
def test_odd_words_make_a_clean_document(name: str) -> None:
    text = ODD[name]
    data = pdf(pages(odd_job(text), Workshop(text, (text,)), text))
    with pikepdf.open(io.BytesIO(data)) as file:
        assert not file.check_pdf_syntax()
        assert len(file.pages) >= 2
    if name in ("markup", "quotes", "formula"):
        assert re.sub(r"\s", "", text) in re.sub(r"\s", "", words(data))


def test_nothing_is_placed_beyond_the_edge_of_a_sheet() -> None:
    for text in ODD.values():
        for sheet in lay_out(gather(pages(odd_job(text)), NOWHERE)):
            for item in sheet.items:
                if isinstance(item, Line):
                    line = item.layout.lineAt(item.number)
                    assert item.x + line.naturalTextWidth() <= sheet.width - 12.0 * UNITS_A_MM
                    assert item.y + line.height() <= sheet.height - 4.0 * UNITS_A_MM


def test_two_hundred_fault_codes_flow_over_sheets_with_the_heads_said_again() -> None:
    codes = ", ".join(f"P{number:04d}" for number in range(100, 300))
    data = pdf(pages(Job(facts={"fault_codes": codes})))
    text = words(data)
    assert all(f"P{number:04d}" in text for number in range(100, 300))
    assert text.count("The standard's wording") >= 2


def test_notes_longer_than_a_sheet_go_on_over_the_next() -> None:
    data = pdf(pages(Job(notes="\n".join(f"note {number}" for number in range(300)))))
    text = words(data)
    assert "note 0" in text
    assert "note 299" in text
    assert len(PdfReader(io.BytesIO(data)).pages) >= 4


def test_a_page_one_that_goes_on_over_the_next_sheet_still_says_who_made_it(tmp_path: Path) -> None:
    photo(tmp_path / "logo.png", 300, 100)
    job = Job(notes="\n".join(f"note {number}" for number in range(300)))
    data = pdf(pages(job, Workshop("Invented Garage", ("Some Street 1",), str(tmp_path / "logo.png"))))
    assert "Invented Garage" in PdfReader(io.BytesIO(data)).pages[0].extract_text()
    with pikepdf.open(io.BytesIO(data)) as file:
        assert images(file) == 1


def test_a_cell_taller_than_a_sheet_is_printed_whole() -> None:
    job = Job(facts={"earlier_repairs": "word " * 6000})
    assert words(pdf(pages(job))).replace(" ", "").count("word") == 6000


@pytest.mark.parametrize("content", [b"", b"no picture", b"\x89PNG\r\n\x1a\n" + b"\0" * 40])
def test_a_broken_logo_is_left_out_and_said(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "logo.png").write_bytes(content)
    made = gather(pages(workshop=Workshop("Invented Garage", logo=str(tmp_path / "logo.png"))), tmp_path)
    assert len(made.troubles) == 1
    assert "logo.png" in made.troubles[0]
    assert lay_out(made)


def test_a_huge_logo_is_made_small(tmp_path: Path) -> None:
    photo(tmp_path / "logo.png", 6000, 4000)
    made = gather(pages(workshop=Workshop("Invented Garage", logo=str(tmp_path / "logo.png"))), tmp_path)
    assert not made.troubles
    image = made.images[str(tmp_path / "logo.png")]
    assert max(image.width, image.height) <= 1600
    assert len(pdf(pages(workshop=Workshop("Invented Garage", logo=str(tmp_path / "logo.png"))))) < 2_000_000


def test_a_computer_without_fonts_is_told_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    made = gather(pages(), NOWHERE)
    monkeypatch.setattr("app.reporting.layout.QFontDatabase.families", list)
    with pytest.raises(WornbandError, match="no font to print with; install one"):
        lay_out(made)


def test_a_folder_in_place_of_a_logo_is_left_out(tmp_path: Path) -> None:
    made = gather(pages(workshop=Workshop(logo=str(tmp_path))), tmp_path)
    assert len(made.troubles) == 1


def test_a_photo_keeps_nothing_that_the_camera_wrote(tmp_path: Path) -> None:
    from PySide6.QtGui import QColor, QImage

    image = QImage(64, 64, QImage.Format.Format_RGB32)
    image.fill(QColor("#808080"))
    image.setText("Location", "52.5 N 13.4 E")
    image.save(str(tmp_path / "one.png"))
    assert b"Location" in (tmp_path / "one.png").read_bytes()
    made = gather(pages(Job(photos=(Photo("one.png", "x"),))), tmp_path)
    assert b"52.5 N" not in made.images["one.png"].data
