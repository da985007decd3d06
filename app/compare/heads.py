"""What stands at the head of each trace of Compare: first what tells one side from the other."""

from __future__ import annotations

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture
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
