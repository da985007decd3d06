"""What stands at the head of each trace of Compare: first what tells one side from the other."""

from __future__ import annotations

from analysis.captures.model import Capture
from app.compare.side import CompareSide
from app.drawing.numbers import duration, rate_text


def head_of(side: CompareSide, other: CompareSide, said_of: str = "") -> str:
    """A side in a line: what differs from the other side first, for the end of a long line is cut.

    Parameters
    ----------
    side, other : CompareSide
    said_of : str
        What else is said of it; may be empty.
    """
    capture, record = side.capture, side.record
    if capture is None:
        return ""
    parts = telling(capture, other.capture)
    if record is not None:
        parts += [record.label, duration(record.duration_s), rate_text(1.0 / record.sample_interval_s)]
    return " · ".join(part for part in (*parts, said_of) if part)


def telling(capture: Capture, other: Capture | None) -> list[str]:
    """The title, where both are alike in it or there is one alone; else where they part, and when.

    Parameters
    ----------
    capture : Capture
    other : Capture or None
        That of the other side.
    """
    if other is None or other is capture:
        return [capture.title]
    mounting, date = capture.text("mounting"), capture.text("created")[:10]
    elsewhere = mounting != other.text("mounting")
    parts = [mounting] if elsewhere else [_own_words(capture.title, other.title)]
    if date != other.text("created")[:10]:
        parts.append(date)
    if not any(parts):
        return [capture.title]
    return parts if elsewhere else [*parts, mounting or capture.title]


def _own_words(title: str, other: str) -> str:
    """What a title has beyond the words that the other begins with too."""
    words = title.split()
    alike = [one.strip(",;:") == two.strip(",;:") for one, two in zip(words, other.split(), strict=False)]
    shared = next((place for place, same in enumerate(alike) if not same), len(alike))
    return " ".join(words[shared:]).strip(" ,;:")
