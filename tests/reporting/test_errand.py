"""``wornband report`` and ``wornband verify --report`` on samples, with what can go wrong."""

from __future__ import annotations

import errno
import json
import re
import shutil
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QImage

from analysis.reports.workshop import Workshop
from analysis.review.job import Job, Photo
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.command_line import main
from app.resources import sample_captures

SAMPLES = {path.name: path for path in sample_captures()}
WORN, AFTER = SAMPLES["W1041-rear-left-height.h5"], SAMPLES["W1041-rear-left-height-new-sensor.h5"]


@pytest.fixture(autouse=True)
def nobodys_settings(monkeypatch: pytest.MonkeyPatch) -> None:
    """The workshop of the person who runs the tests stays out of them."""
    monkeypatch.setattr("app.errands.reporting._kept", lambda folder: (Workshop(), frozenset()))


def text_of(path: Path) -> str:
    pages = PdfReader(path).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_every_sample_has_a_report_whose_numbers_are_those_of_the_json(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / "report.pdf"
    assert main(["report", str(SAMPLES[name]), "-o", str(target)]) == 0
    assert main(["analyse", str(SAMPLES[name]), "--json"]) == 0
    said = capsys.readouterr()
    assert said.err == ""
    found = json.loads(said.out.splitlines()[-1])
    text = text_of(target)
    assert found["verdict"]["summary"] in text
    confidence = found["verdict"]["confidence"]
    assert f"{min(max(round(100 * confidence), 1), 99)} in 100" in text
    for band in found["bands"]:
        assert f"{band['start_percent']:.1f}–{band['end_percent']:.1f}" in text
        assert f"{band['start_v']:.2f}–{band['end_v']:.2f}" in text
        assert f"{band['noisy_passes']} of {band['passes']}" in text
    for statement in found["evidence"]:
        assert statement["text"] in text
    assert found["capture"]["sha256"] in text
    assert found["capture"]["capture_id"] in text


def test_html_and_pdf_say_the_same_numbers(tmp_path: Path) -> None:
    assert main(["report", str(WORN), "-o", str(tmp_path / "a.pdf")]) == 0
    assert main(["report", str(WORN), "-o", str(tmp_path / "a.html")]) == 0
    page = re.sub(r"<[^>]*>", " ", (tmp_path / "a.html").read_text(encoding="utf-8").split("</style>")[1])
    numbers = set(re.findall(r"\d+\.\d+ ± \d+\.\d+ m?V", text_of(tmp_path / "a.pdf")))
    assert len(numbers) > 4
    assert all(number in page for number in numbers)


def test_a_comparison_names_the_other_capture_on_both_pages(tmp_path: Path) -> None:
    target = tmp_path / "a.pdf"
    assert main(["report", str(WORN), "-o", str(target), "--compare", str(AFTER), "--paper", "letter"]) == 0
    text = text_of(target)
    assert "The same place, measured later (2026-04-16): no fault found" in text
    assert read_sidecar(AFTER).review.sha256 in text
    assert "captured again in the same way" in text


def test_the_review_beside_the_capture_is_in_the_report(tmp_path: Path) -> None:
    capture = tmp_path / WORN.name
    shutil.copy(WORN, capture)
    sidecar = read_sidecar(capture)
    job = Job(facts={"vin": "WBX00000000000017", "complaint": "leans to the left"})
    write_sidecar(sidecar, replace(sidecar.review, job=job))
    assert main(["report", str(capture), "-o", str(tmp_path / "a.pdf")]) == 0
    text = text_of(tmp_path / "a.pdf")
    assert "WBX00000000000017" in text
    assert "leans to the left" in text
    assert "tail drops overnight" not in text


@pytest.mark.parametrize("suffix", [".pdf", ".html"])
def test_a_capture_is_told_from_the_report_that_was_made_from_it(
    suffix: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / f"a{suffix}"
    assert main(["report", str(WORN), "-o", str(target)]) == 0
    assert main(["verify", str(WORN), "--report", str(target)]) == 0
    assert "made from exactly this file" in capsys.readouterr().out
    assert main(["verify", str(AFTER), "--report", str(target)]) == 1
    assert "made from another capture" in capsys.readouterr().out


def test_a_printed_fingerprint_can_be_typed_and_a_wrong_one_is_told(
    capsys: pytest.CaptureFixture[str],
) -> None:
    digest = read_sidecar(WORN).review.sha256
    for typed in (digest, digest[:16] + "…", f"{digest[:8].upper()} {digest[8:20]}"):
        assert main(["verify", str(WORN), "--report", typed]) == 0
    assert main(["verify", str(WORN), "--report", "0" * 64]) == 1
    capsys.readouterr()
    assert main(["verify", str(WORN), "--report", "short"]) == 1
    assert len(capsys.readouterr().err.splitlines()) == 1


def test_a_report_whose_words_were_changed_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / "a.html"
    assert main(["report", str(WORN), "-o", str(target)]) == 0
    page = target.read_text(encoding="utf-8")
    digest = read_sidecar(WORN).review.sha256
    head, body = page.split("<body>")
    target.write_text(head + "<body>" + body.replace(digest, "0" * 64), encoding="utf-8")
    capsys.readouterr()
    assert main(["verify", str(WORN), "--report", str(target)]) == 1
    assert "changed after it was made" in capsys.readouterr().err


@pytest.mark.parametrize("content", [b"", b"%PDF-1.4\nnothing", b"<p>no report</p>", b"\xff\xfe\x00"])
def test_what_is_no_report_carries_no_fingerprint(
    content: bytes, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "odd.pdf").write_bytes(content)
    assert main(["verify", str(WORN), "--report", str(tmp_path / "odd.pdf")]) == 1
    said = capsys.readouterr()
    assert said.out == ""
    assert len(said.err.splitlines()) == 1


@pytest.mark.parametrize("name", ["a.txt", "a", "a.h5", "pdf"])
def test_a_report_of_another_kind_is_a_wrong_call(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["report", str(WORN), "-o", str(tmp_path / name)]) == 2
    assert "end its name in .pdf or .html" in capsys.readouterr().err
    assert not list(tmp_path.iterdir())


def test_the_capture_is_never_replaced_by_its_report(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    odd = tmp_path / "capture.pdf"
    shutil.copy(WORN, odd)
    before = odd.read_bytes()
    assert main(["report", str(odd), "-o", str(odd)]) == 2
    assert "would replace the capture" in capsys.readouterr().err
    assert odd.read_bytes() == before


@pytest.mark.parametrize("suffix", [".pdf", ".html"])
def test_a_place_that_cannot_be_written_is_one_line(
    suffix: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["report", str(WORN), "-o", str(tmp_path / "no folder" / f"a{suffix}")]) == 1
    (tmp_path / f"taken{suffix}").mkdir()
    assert main(["report", str(WORN), "-o", str(tmp_path / f"taken{suffix}")]) == 1
    said = capsys.readouterr().err.splitlines()
    assert len(said) == 2
    assert "no such folder" in said[0]
    assert "a folder of that name" in said[1]


@pytest.mark.parametrize("suffix", [".pdf", ".html"])
def test_a_full_disk_leaves_the_report_that_was_there(
    suffix: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / f"a{suffix}"
    target.write_text("the report before")

    def full(path: Path, data: bytes) -> int:
        with path.open("wb") as file:
            file.write(data[:100])
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", full)
    assert main(["report", str(WORN), "-o", str(target)]) == 1
    assert "free space" in capsys.readouterr().err
    assert target.read_text() == "the report before"
    assert [path.name for path in tmp_path.iterdir()] == [target.name]


def test_a_capture_that_cannot_be_read_is_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "odd.h5").write_bytes(b"no capture")
    assert main(["report", str(tmp_path / "odd.h5"), "-o", str(tmp_path / "a.pdf")]) == 1
    assert (
        main(["report", str(WORN), "--compare", str(tmp_path / "odd.h5"), "-o", str(tmp_path / "a.pdf")]) == 1
    )
    assert len(capsys.readouterr().err.splitlines()) == 2
    assert not (tmp_path / "a.pdf").exists()


def test_a_missing_photo_is_told_and_the_report_made_without_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    capture = tmp_path / WORN.name
    shutil.copy(WORN, capture)
    sidecar = read_sidecar(capture)
    job = Job(photos=(Photo("gone.jpg", "x"),))
    write_sidecar(sidecar, replace(sidecar.review, job=job))
    assert main(["report", str(capture), "-o", str(tmp_path / "a.pdf")]) == 0
    assert "gone.jpg is not there" in capsys.readouterr().err


def _photo(path: Path) -> Path:
    picture = QImage(40, 30, QImage.Format.Format_RGB32)
    picture.fill(0x2244AA)
    assert picture.save(str(path))
    return path


def _reviewed(folder: Path, job: Job) -> Path:
    folder.mkdir()
    capture = Path(shutil.copy(WORN, folder / WORN.name))
    sidecar = read_sidecar(capture)
    write_sidecar(sidecar, replace(sidecar.review, job=job))
    return capture


@pytest.mark.parametrize("named", ["{outside}/secret.png", "../secret.png"])
def test_a_strangers_review_puts_no_picture_of_this_pc_into_a_report(
    named: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    _photo(tmp_path / "secret.png")
    name = named.format(outside=tmp_path)
    capture = _reviewed(tmp_path / "job", Job(photos=(Photo(name, "x"), Photo("own.png", "mine"))))
    _photo(capture.with_name("own.png"))
    assert main(["report", str(capture), "-o", str(tmp_path / "a.html")]) == 0
    said = capsys.readouterr().err
    assert "secret.png, outside the capture's folder" in said
    assert said.count("\n") == 1
    assert (tmp_path / "a.html").read_text(encoding="utf-8").count("data:image/") == 1


def test_a_strangers_review_sets_no_capture_of_this_pc_beside_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    other = Path(shutil.copy(AFTER, tmp_path / "secret.h5"))
    capture = _reviewed(tmp_path / "job", Job(other=str(other)))
    assert main(["report", str(capture), "-o", str(tmp_path / "a.html")]) == 0
    assert "outside the capture's folder" in capsys.readouterr().err
    without = (tmp_path / "a.html").read_text(encoding="utf-8")
    assert main(["report", str(capture), "--compare", str(other), "-o", str(tmp_path / "b.html")]) == 0
    assert (tmp_path / "b.html").read_text(encoding="utf-8") != without


def test_a_drawing_that_calls_itself_a_photo_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # SVG can name other files, and is no photo.
    capture = _reviewed(tmp_path / "job", Job(photos=(Photo("a.png", "x"),)))
    capture.with_name("a.png").write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect width="9" height="9"/></svg>'
    )
    assert main(["report", str(capture), "-o", str(tmp_path / "a.html")]) == 0
    assert "a.png cannot be read" in capsys.readouterr().err


def test_a_report_that_is_packed_in_no_known_way_carries_no_fingerprint(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Found by damaging reports: one flipped bit made a filter that the reader of PDF does not know."""
    report = tmp_path / "a.pdf"
    assert main(["report", str(WORN), "-o", str(report)]) == 0
    whole = report.read_bytes()
    assert b"/FlateDecode" in whole
    report.write_bytes(whole.replace(b"/FlateDecode", b"/F,ateDecode"))
    capsys.readouterr()
    assert main(["verify", str(WORN), "--report", str(report)]) == 1
    assert "damaged" in capsys.readouterr().err


@pytest.mark.parametrize(("language", "word"), [("en", "Sample · "), ("de", "Beispiel · ")])
def test_every_sheet_of_a_report_on_a_sample_says_so_and_none_of_a_copy_does(
    tmp_path: Path, language: str, word: str
) -> None:
    own = Path(shutil.copy(WORN, tmp_path))
    for path, called in ((WORN, True), (own, False)):
        pdf, page = tmp_path / f"{called}.pdf", tmp_path / f"{called}.html"
        for target in (pdf, page):
            assert main(["report", str(path), "-o", str(target), "--language", language]) == 0
        sheets = [" ".join(sheet.extract_text().split()) for sheet in PdfReader(pdf).pages]
        assert len(sheets) > 1
        assert all((f"{word}W1041" in sheet) is called for sheet in sheets)
        assert page.read_text(encoding="utf-8").count(word) == (3 if called else 0)
