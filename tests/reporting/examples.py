"""A report of words that try to be something else, and the tools to read a report back."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtGui import QColor, QImage, QPainter

from analysis.reports.pages import Pages
from analysis.reports.subject import Subject
from analysis.reports.whole_report import whole_report
from analysis.reports.workshop import Workshop
from analysis.review.job import FACTS, Job, Photo
from analysis.review.model import Review
from app.window import application
from tests.reports.examples import CAPTURE, findings

ODD = {
    "markup": "<script>alert(1)</script><img src=x onerror=alert(2)> & </style></title>",
    "quotes": "\"double\" 'single' `back` “curly” {braces} %s",
    "right to left": "مرحبا بالعالم وجود خلل שלום עולם",
    "turned": "\u202egnorw si siht\u202c and \u2066isolated\u2069",
    "long": "x" * 900,
    "emoji": "🚗💨 worn \N{WARNING SIGN}\N{VARIATION SELECTOR-16}",
    "control": "a\x00b\x1b[2Jc\x07\r\nnew line",
    "surrogate": "lone \udcff half",
    "formula": '=HYPERLINK("http://example.org")',
    "ideographs": "位置传感器磨损",
}


def pages(job: Job | None = None, workshop: Workshop | None = None, title: str = "") -> Pages:
    """A report of findings made by hand."""
    application()
    capture = replace(CAPTURE, title=title or CAPTURE.title)
    subject = Subject(capture, findings(), review=Review(job=job or Job(), content_sha256="cd" * 32))
    return whole_report(subject, workshop=workshop, today="2026-04-14")


def odd_job(text: str) -> Job:
    """A job in which everything that can be typed is the same text."""
    return Job(
        facts=dict.fromkeys(FACTS, text),
        words=dict.fromkeys(("sentence", "meaning", "driving", "left", "recommended", "not_included"), text),
        notes=text,
        photos=(Photo("none.jpg", text),),
        offer={"part": text, "labour": text, "currency": text},
    )


def photo(path: Path, width: int = 320, height: int = 240) -> Path:
    """A picture file of two colours."""
    application()
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("#336699"))
    painter = QPainter(image)
    painter.fillRect(0, 0, width // 2, height // 2, QColor("#eeeeee"))
    painter.end()
    assert image.save(str(path))
    return path
