"""What Compare begins with: the record that Review shows, and where another capture is looked for."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from analysis.captures.model import Capture
from app.compare.side import CompareSide

if TYPE_CHECKING:
    from app.main_window import Window


def looked_at(window: Window) -> str:
    """Name of the record that Review shows.

    Empty where none is, and while the capture is examined and nobody chose one: Review itself goes to the
    record with the fault then.
    """
    session, focus = window.session, window.focus
    known = session.findings is not None or focus.history.can_go_back
    return focus.record.name if known and focus.record is not None else ""


def begin(sides: Sequence[CompareSide], record: str) -> None:
    """Let the first side be that record of Review's capture; sides that were chosen stay."""
    first, second = sides
    if first.capture is None and not second.of_review:
        first.take_review(record)
    elif first.of_review and second.capture is None and record:
        first.choose_record(record)


def folder_of(capture: Capture | None) -> Path | None:
    """The folder that a capture lies in; None where it has none."""
    return capture.path.parent if capture is not None and capture.path is not None else None
