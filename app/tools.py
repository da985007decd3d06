"""What a session works with, taken from the analysis; loaded when the window opens and not before."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from pathlib import Path

from analysis.captures import layout
from analysis.captures.fingerprint import with_sha256
from analysis.captures.model import Capture
from analysis.captures.overview import with_overviews
from analysis.captures.reading import OpenCapture, open_capture
from analysis.captures.verification import verify_content
from analysis.diagnosis.findings import Findings
from analysis.errors import CaptureError
from analysis.progress import Tick, part
from app.review_place import read_review
from app.session import Tools

_SLOW_WITHOUT_OVERVIEW = 1 << 20
"""Samples above which a first picture without an overview would take longer than a blink."""


def real_tools() -> Tools:
    """The tools that the workbench uses."""
    return Tools(open_capture=_open, examine=_examine, read_review=read_review, verify_content=verify_content)


def _open(path: Path, tick: Tick) -> OpenCapture:
    """Open a file so that it can be drawn at once: out of memory, or by an overview where it is long."""
    opened = open_capture(path)
    try:
        return _drawable(opened, tick)
    except BaseException:
        opened.close()
        raise


def _drawable(opened: OpenCapture, tick: Tick) -> OpenCapture:
    for record in opened.capture.records:
        for channel in record.channels:
            if len(channel) <= layout.CHUNK_SAMPLES:
                with suppress(CaptureError):  # damage is said where it is drawn
                    channel.source.read(0, 1)  # HDF5 keeps the chunk; the window waits for no disk then
    lacking = any(
        len(channel) > _SLOW_WITHOUT_OVERVIEW and not channel.overview
        for record in opened.capture.records
        for channel in record.channels
    )
    return replace(opened, capture=with_overviews(opened.capture, tick)) if lacking else opened


def _examine(capture: Capture, tick: Tick) -> Findings:
    """Hash the file, then examine: the findings name the exact file that they speak of."""
    from analysis.diagnosis.examine import examine  # the first picture does not wait for it to load

    return examine(with_sha256(capture, part(tick, 0.0, 0.1)), tick=part(tick, 0.1, 1.0))
