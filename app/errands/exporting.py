"""``wornband export``: samples, findings or a picture of a capture for other programs."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Capture, Match
from analysis.captures.reading import open_capture
from analysis.captures.replacing import replaced_at_the_end
from analysis.captures.verification import content_note, content_sentence, with_content
from analysis.errors import ExportingError, WornbandError
from analysis.exporting.findings_file import export_findings, require_findings_target
from analysis.exporting.samples import export_samples
from analysis.intervals import Interval
from analysis.progress import Tick, part
from analysis.reports.trace_picture import trace_drawing
from analysis.reports.track_picture import track_drawing
from analysis.wording import say
from app.errands.analysing import examined, object_of
from app.errands.importing import stoppable
from app.printable import error_line, printable
from app.reporting.svg import svg_file


def export_file(call: argparse.Namespace, *, out: TextIO, err: TextIO) -> int:
    """Write what was asked for; 0 where it was, 1 where it was not, 2 where the call was wrong.

    What speaks against the capture as evidence is told on standard error; it is exported all the same.
    """
    if call.span and not call.span[0] < call.span[1]:
        print("wornband: a span ends after it begins", file=err)
        return 2
    target = Path(call.output)
    try:
        with stoppable(err, call.file) as tick:
            if call.picture:
                written, content = _export_picture(call.file, call.picture, target, tick)
            elif call.findings or target.suffix.lower() == ".json":
                written, content = _export_findings(call.file, target, tick)
            else:
                span = Interval(*call.span) if call.span else None
                written, content = _export_samples(call.file, call.record, span, target, tick)
    except WornbandError as error:
        print(error_line(call.file, str(error)), file=err)
        return 1
    told = content_sentence(content, Path(call.file).name)
    if told:
        print(error_line(call.file, told), file=err)
    for path in written:
        print(printable(str(path)), file=out)
    return 0


Written = tuple[list[Path], Match | None]
"""Files, and how the content of the capture stands to the fingerprint in it."""


def _export_samples(
    file: str, record: str | None, span: Interval | None, target: Path, tick: Tick
) -> Written:
    with open_capture(file) as opened:
        capture = with_content(opened.capture, part(tick, 0.0, 0.3))
        written = export_samples(capture, target, record=record, span_s=span, tick=part(tick, 0.3, 1.0))
        return written, capture.content


def _export_findings(file: str, target: Path, tick: Tick) -> Written:
    require_findings_target(target)
    with examined(file, None, tick) as one:
        return [export_findings(object_of(one, file), target)], one.capture.content


def _export_picture(file: str, kind: str, target: Path, tick: Tick) -> Written:
    """Draw what the report draws, as a file of its own."""
    ending = target.suffix.lower()
    if ending not in (".svg", ".png"):
        raise ExportingError(
            say("a picture cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .png or .svg"),
        )
    if target.exists():
        raise ExportingError(say("a file of that name exists already"), say("choose another name"))
    with examined(file, None, tick) as one:
        if kind == "trace":
            drawing = trace_drawing(one.capture, one.findings)
        else:
            drawing = track_drawing(one.findings, title=_heading(one.capture))
        content = one.capture.content
    if drawing is None:
        raise ExportingError(say("there is nothing to draw"), say("choose a capture with a sweep or a fault"))
    if ending == ".png":
        from app.reporting.png import png  # Qt is loaded for this alone

        data = png(drawing)
    else:
        data = svg_file(drawing).encode("utf-8")
    with replaced_at_the_end(target, ExportingError) as temporary:
        temporary.write_bytes(data)
    return [target], content


def _heading(capture: Capture) -> str:
    return " · ".join(filter(None, (capture.title, content_note(capture.content))))
