"""``wornband export``: samples or findings of a capture for other programs."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from analysis.captures.reading import open_capture
from analysis.captures.replacing import replaced_at_the_end
from analysis.diagnosis.serialise import json_line
from analysis.errors import ExportingError, WornbandError
from analysis.exporting.findings_table import findings_csv
from analysis.exporting.samples import export_samples
from analysis.intervals import Interval
from analysis.progress import Tick
from analysis.wording import say
from app.errands.analysing import examined, object_of
from app.errands.importing import stoppable
from app.printable import error_line, printable


def export_file(call: argparse.Namespace, *, out: TextIO, err: TextIO) -> int:
    """Write what was asked for; 0 where it was, 1 where it was not, 2 where the call was wrong."""
    if call.span and not call.span[0] < call.span[1]:
        print("wornband: a span ends after it begins", file=err)
        return 2
    target = Path(call.output)
    try:
        with stoppable(err, call.file) as tick:
            if call.findings or target.suffix.lower() == ".json":
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
    if target.suffix.lower() not in (".json", ".csv"):
        raise ExportingError(
            say("findings cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .json or .csv"),
        )
    if target.exists():
        raise ExportingError(say("a file of that name exists already"), say("choose another name"))
    with examined(file, None, tick) as one:
        found = object_of(one, file)
    text = json_line(found) + "\n" if target.suffix.lower() == ".json" else findings_csv(found)
    with replaced_at_the_end(target, ExportingError) as temporary:
        temporary.write_text(text, encoding="utf-8", newline="")
    return target
