"""The HTML report, held against the standard by a validator library (html5lib) and opened in a browser."""

from __future__ import annotations

import re
import shutil
import subprocess
from html.parser import HTMLParser
from pathlib import Path

import html5lib
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QImage

from analysis.reports.workshop import Workshop
from analysis.review.job import Job, Photo
from app.printable import printable
from app.reporting.html import report_html
from app.reporting.materials import gather
from tests.reporting.examples import ODD, odd_job, pages, photo

NOWHERE = Path("nowhere")
LOADING = ("src", "href", "xlink:href", "srcset", "action", "data", "poster", "background")
OUR_TAGS = {
    *("html", "head", "meta", "title", "style", "body", "header", "main", "footer", "section", "div", "bdi"),
    *("h1", "h2", "h3", "p", "br", "dl", "dt", "dd", "ul", "li", "table", "thead", "tbody", "tr", "th", "td"),
    *("figure", "figcaption", "img", "span", "strong", "svg", "path", "text", "rect"),
}


class Reader(HTMLParser):
    """Collects tags, what they load, and the words between them."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.loaded: list[str] = []
        self.words: list[str] = []
        self.without_alt = 0
        self.feed(page)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        known = dict(attrs)
        assert not [name for name in known if name.startswith("on") or name == "style"]
        self.loaded += [known[name] or "" for name in LOADING if name in known]
        self.without_alt += tag == "img" and "alt" not in known

    def handle_data(self, data: str) -> None:
        self.words.append(data)

    @property
    def text(self) -> str:
        return "".join(self.words)


def checked(page: str) -> Reader:
    """The page, read strictly: html5lib raises where it departs from the standard."""
    html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(page)
    reader = Reader(page)
    assert reader.tags <= OUR_TAGS
    assert all(item.startswith("data:image/") for item in reader.loaded)
    assert not reader.without_alt
    return reader


def test_the_validator_refuses_a_page_that_breaks_the_standard() -> None:
    with pytest.raises(html5lib.html5parser.ParseError):
        html5lib.HTMLParser(strict=True).parse("<!DOCTYPE html><p>a</b></p>")


@pytest.mark.parametrize("name", ODD)
def test_odd_words_stay_words(name: str) -> None:
    page = report_html(
        gather(pages(odd_job(ODD[name]), Workshop(ODD[name], (ODD[name],)), ODD[name]), NOWHERE)
    )
    reader = checked(page)
    for line in ODD[name].splitlines():
        assert printable(line) in reader.text
    page.encode("utf-8")


@given(st.text(max_size=60))
def test_every_word_comes_back_as_it_was_and_makes_no_tag(text: str) -> None:
    reader = Reader(
        report_html(gather(pages(Job(words={"sentence": text}, facts={"vehicle": text})), NOWHERE))
    )
    assert reader.tags <= OUR_TAGS
    for line in text.splitlines():
        assert printable(line) in reader.text


def test_the_page_names_its_language_and_fetches_and_runs_nothing() -> None:
    page = report_html(gather(pages(), NOWHERE))
    assert '<html lang="en">' in page
    assert "default-src 'none'" in page
    assert not re.search(r"https?://(?!www\.w3\.org/2000/svg)", page)
    assert "script" not in Reader(page).tags
    assert "unsafe" not in page


def test_pictures_stand_inside_the_page_with_words_for_those_who_cannot_see_them(tmp_path: Path) -> None:
    photo(tmp_path / "one.png")
    job = Job(photos=(Photo("one.png", 'link, "bent" <b>'), Photo("gone.jpg", "gone")))
    made = gather(pages(job, Workshop("Invented Garage", logo=str(tmp_path / "one.png"))), tmp_path)
    page = report_html(made)
    reader = checked(page)
    assert len(reader.loaded) == 2
    assert 'aria-label="Break-up of the sensor' in page
    assert [trouble for trouble in made.troubles if "gone.jpg" in trouble]
    assert len(made.troubles) == 1


def test_a_browser_shows_the_page_with_its_style(tmp_path: Path) -> None:
    browser = shutil.which("chromium")
    if browser is None:
        pytest.skip("Debian's Chromium is not installed: the page is not opened in a browser")
    page, picture = tmp_path / "report.html", tmp_path / "report.png"
    page.write_text(report_html(gather(pages(), NOWHERE)), encoding="utf-8")
    command = [
        *(browser, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars"),
        *(f"--user-data-dir={tmp_path / 'profile'}", f"--screenshot={picture}", "--window-size=900,1200"),
        page.as_uri(),
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=120)
    assert picture.is_file(), done.stderr
    assert "Refused" not in done.stderr
    image = QImage(str(picture))
    assert (image.width(), image.height()) == (900, 1200)
    # The frame around the one sentence is drawn by the style sheet: two dark rows over most of the width.
    dark = [
        sum(image.pixelColor(x, y).lightness() < 90 for x in range(0, 900, 5)) for y in range(image.height())
    ]
    assert sum(count > 100 for count in dark) >= 4
