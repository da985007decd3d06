"""A report from a capture file to the bytes of its file: the errand and the window make it here."""

from __future__ import annotations

import datetime
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from pathlib import Path

from analysis.captures.replacing import replaced_at_the_end
from analysis.captures.verification import content_sentence
from analysis.errors import WornbandError
from analysis.progress import Tick, ignore, part
from analysis.reports.pages import Pages
from analysis.reports.subject import Beside as OtherCapture
from analysis.reports.subject import Subject
from analysis.reports.whole_report import whole_report
from analysis.reports.workshop import Workshop
from analysis.review.job import placed
from analysis.review.named_files import allowed_path
from analysis.review.records import edits_told
from analysis.wording import ENGLISH, Language, say
from app.errands.analysing import examined
from app.errands.beside import Beside, words_beside
from app.reporting.html import report_html
from app.reporting.materials import Materials, gather
from app.resources import is_sample
from app.review_place import read_review

SUFFIXES = (".pdf", ".html", ".htm")
"""What a report can be stored as."""

PAPERS = ("a4", "letter")


class ReportError(WornbandError):
    """A report cannot be made or stored."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """How a report is wanted.

    Parameters
    ----------
    compare : str
        Path of another capture; empty for the one that the review names, or none.
    language : Language
        Of the program's words.
    paper : str
        One of `PAPERS`.
    workshop : Workshop
        Who makes it.
    today : str
        The date on it; today's where it is empty.
    chosen : frozenset of str
        Files outside the capture's folder that the review names and the technician chose on this PC.
    """

    compare: str = ""
    language: Language = ENGLISH
    paper: str = "a4"
    workshop: Workshop = field(default_factory=Workshop)
    today: str = ""
    chosen: frozenset[str] = frozenset()


def make_report(path: str, target: Path, wanted: Wanted, tick: Tick = ignore) -> Materials:
    """Examine a capture and store its report.

    Parameters
    ----------
    path : str
        The capture.
    target : Path
        Where to store it; the suffix says as what. What is there is replaced when the new file is whole.
    wanted : Wanted
        How.
    tick : Tick
        Progress.

    Returns
    -------
    Materials
        What it was made from; its `troubles` say which pictures are missing.

    Raises
    ------
    WornbandError
        Where a capture cannot be read, or the report not be made or stored.
    """
    check_target(target, [path, wanted.compare])
    with subject_of(path, part(tick, 0.0, 0.6)) as subject:
        materials = materials_of(subject, Path(path).parent, wanted, part(tick, 0.6, 0.9))
        told = content_sentence(subject.capture.content, Path(path).name)
    store(materials, target, wanted.paper)
    tick(1.0)
    return replace(materials, altered=told)


def materials_of(subject: Subject, folder: Path, wanted: Wanted, tick: Tick = ignore) -> Materials:
    """Everything that a report is laid out from.

    Parameters
    ----------
    subject : Subject
        The capture with what was found.
    folder : Path
        Of the capture.
    wanted : Wanted
        How the report is wanted.
    tick : Tick
        Progress.

    Returns
    -------
    Materials
        A capture or a picture that the review names and that may not be opened is left out and told.

    Raises
    ------
    WornbandError
        Where the capture beside it cannot be read.
    """
    named = subject.review.job.other
    other = allowed_path(folder, named, wanted.chosen) if named else None
    if wanted.compare or other is not None:
        with beside_of(wanted.compare or str(other), tick) as beside:
            return gather(pages_of(subject, beside, wanted), folder, wanted.chosen)
    made = gather(pages_of(subject, None, wanted), folder, wanted.chosen)
    return replace(made, troubles=(_foreign(named), *made.troubles)) if named else made


def _foreign(name: str) -> str:
    return say(
        "the review sets {name} beside it, outside the capture's folder; choose it on this PC, or put it"
        " beside the capture",
        name=name,
    )


@contextmanager
def subject_of(path: str, tick: Tick = ignore) -> Iterator[Subject]:
    """A capture examined, with its review, open until the context ends; raises as `make_report`."""
    review = read_review(Path(path)).review
    beside = Beside(review.records, edits_told(review.records), review.vehicle)
    with examined(path, tick=tick, beside=beside) as one:
        yield Subject(one.capture, one.findings, one.assumptions, review, one.why, one.why_brief)


@contextmanager
def beside_of(path: str, tick: Tick = ignore) -> Iterator[OtherCapture]:
    """Another capture examined with its review, open until the context ends; raises as `make_report`."""
    words = words_beside(path, part(tick, 0.0, 0.1))
    with examined(path, tick=part(tick, 0.1, 1.0), beside=words) as one:
        yield OtherCapture(placed(one.capture, words.job), one.findings)


def pages_of(subject: Subject, beside: OtherCapture | None, wanted: Wanted) -> Pages:
    """The pages of a report."""
    return whole_report(
        subject,
        beside=beside,
        workshop=wanted.workshop,
        language=wanted.language,
        today=wanted.today or datetime.date.today().isoformat(),
        sample=is_sample(Path(subject.findings.path)),
    )


def store(materials: Materials, target: Path, paper: str) -> None:
    """Write the file, whole or not at all.

    Raises
    ------
    ReportError
        Where it cannot be made or written.
    """
    data = report_bytes(materials, target.suffix.lower(), paper)
    with replaced_at_the_end(target, ReportError) as temporary:
        temporary.write_bytes(data)


def report_bytes(materials: Materials, suffix: str, paper: str) -> bytes:
    """The bytes of the file."""
    if suffix != ".pdf":
        return report_html(materials).encode("utf-8")
    _begin_qt()
    from app.reporting.layout import Paper, lay_out
    from app.reporting.pdf import report_pdf

    pages = materials.pages
    sheets = lay_out(materials, Paper(paper))
    return report_pdf(sheets, title=pages.title, language=pages.language, fingerprint=pages.fingerprint)


def check_target(target: Path, sources: list[str]) -> None:
    """Refuse to store a report over a capture, or as something else than PDF or HTML.

    Raises
    ------
    ReportError
        With what to do instead.
    """
    if target.suffix.lower() not in SUFFIXES:
        raise ReportError("a report is stored as PDF or HTML", "end its name in .pdf or .html")
    for source in sources:
        if source and target.exists() and Path(source).exists() and target.samefile(source):
            raise ReportError("the report would replace the capture", "choose another name")


def _begin_qt() -> None:
    """Qt for letters and pages alone: no screen is needed for it."""
    if sys.platform.startswith("linux"):
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from app.window import NoWindowError, application

    try:
        application()
    except NoWindowError as error:
        raise ReportError(
            "a PDF needs Qt, which cannot be loaded here", f"{error.action}; or store it as .html"
        ) from error
