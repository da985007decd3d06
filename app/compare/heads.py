"""What stands at the head of each trace of Compare: first what tells one side from the other."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.reports.confidence import in_words
from analysis.reports.verdicts import verdict_title
from app.compare.side import CompareSide
from app.drawing.numbers import duration, rate_text
from app.language import said


def head_of(side: CompareSide, other: CompareSide, mountings: tuple[str, str], said_of: str = "") -> str:
    """A side in a line: what differs from the other side first, for the end of a long line is cut.

    Parameters
    ----------
    side, other : CompareSide
    mountings : pair of str
        Where each sits, this side's first; empty where it is not stated.
    said_of : str
        What else is said of it; may be empty.
    """
    capture, theirs, record = side.placed, other.placed, side.record
    if capture is None:
        return ""
    taken = []
    if record is not None:
        taken = [record.label, duration(record.duration_s), rate_text(1.0 / record.sample_interval_s)]
    apart = [said(known_word(mountings[0]))] if mountings[0] != mountings[1] else []
    if theirs is None:
        parts = [capture.title, *taken]
    elif side.shows_as(other):
        parts = [*apart, *taken, capture.title]
    else:
        parts = [*(apart or telling(capture, theirs)), *taken]
    return " · ".join(part for part in (*parts, said_of) if part)


def verdicts_of(sides: Sequence[CompareSide], titles: Sequence[str]) -> str:
    """What each capture shows by itself: that a band is gone does not make the other sensor a good one.

    Parameters
    ----------
    sides : two of CompareSide
    titles : two of str
        What each is to the other.

    Returns
    -------
    str
        Empty where both are of one capture, and while one is not examined.
    """
    found = [side.findings for side in sides]
    if sides[0].shows_as(sides[1]) or None in found:
        return ""
    told = [
        f"{title}: {_verdict(findings)}"
        for title, findings in zip(titles, found, strict=True)
        if findings is not None
    ]
    return " · ".join([_tr("Each capture by itself"), *told])


def _verdict(findings: Findings) -> str:
    title = said(verdict_title(findings))
    if findings.verdict.code is VerdictCode.INCONCLUSIVE:
        return title
    return f"{title}, {said(in_words(findings.verdict.confidence))}"


def _tr(text: str) -> str:
    return QCoreApplication.translate("compare_heads", text)


def telling(capture: Capture, other: Capture) -> list[str]:
    """What tells two captures of one mounting apart, then that mounting; the title where nothing does.

    Parameters
    ----------
    capture, other : Capture
        This side's and the other's.
    """
    date = capture.text("created")[:10]
    parts = [_own_words(capture.title, other.title), date if date != other.text("created")[:10] else ""]
    if not any(parts):
        return [capture.title]
    mounting = said(known_word(capture.text("mounting"))) or capture.title
    return parts if mounting in parts else [*parts, mounting]


def _own_words(title: str, other: str) -> str:
    """What a title has beyond the words that the other begins with too."""
    words = title.split()
    alike = [one.strip(",;:") == two.strip(",;:") for one, two in zip(words, other.split(), strict=False)]
    shared = next((place for place, same in enumerate(alike) if not same), len(alike))
    return " ".join(words[shared:]).strip(" ,;:")
