"""``wornband export``: samples, findings or a picture of a capture for other programs."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from analysis.captures.reading import open_capture
from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import ExportingError, WornbandError
from analysis.exporting.findings_file import export_findings, require_findings_target
from analysis.exporting.samples import export_samples
from analysis.intervals import Interval
from analysis.progress import Tick
from analysis.reports.trace_picture import trace_drawing
from analysis.reports.track_picture import track_drawing
from analysis.wording import say
from app.errands.analysing import examined, object_of
from app.errands.importing import stoppable
from app.printable import error_line, printable
from app.reporting.svg import svg_file


def export_file(call: argparse.Namespace, *, out: TextIO, err: TextIO) -> int:
    """Write what was asked for; 0 where it was, 1 where it was not, 2 where the call was wrong."""
    if call.span and not call.span[0] < call.span[1]:
        print("wornband: a span ends after it begins", file=err)
        return 2
    target = Path(call.output)
    try:
        with stoppable(err, call.file) as tick:
            if call.picture:
                written = [_export_picture(call.file, call.picture, target, tick)]
            elif call.findings or target.suffix.lower() == ".json":
                written = [_export_findings(call.file, target, tick)]
            else:
                span = Interval(*call.span) if call.span else None
                with open_capture(call.file) as opened:
                    written = export_samples(
                        opened.capture, target, record=call.record, span_s=span, tick=tick
                    )
    except WornbandError as error:
        print(error_line(call.file, str(error)), file=err)
        return 1
    for path in written:
        print(printable(str(path)), file=out)
    return 0


def _export_findings(file: str, target: Path, tick: Tick) -> Path:
    require_findings_target(target)
    with examined(file, None, tick) as one:
        return export_findings(object_of(one, file), target)


def _export_picture(file: str, kind: str, target: Path, tick: Tick) -> Path:
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
            drawing = track_drawing(one.findings, title=one.capture.title)
    if drawing is None:
        raise ExportingError(say("there is nothing to draw"), say("choose a capture with a sweep or a fault"))
    if ending == ".png":
        from app.reporting.png import png  # Qt is loaded for this alone

        data = png(drawing)
    else:
        data = svg_file(drawing).encode("utf-8")
    with replaced_at_the_end(target, ExportingError) as temporary:
        temporary.write_bytes(data)
    return target
