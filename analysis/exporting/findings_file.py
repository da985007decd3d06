"""Findings in a file of their own, for other programs: JSON by the contract, or a table."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from analysis.captures.replacing import replaced_at_the_end
from analysis.diagnosis.serialise import json_line
from analysis.errors import ExportingError
from analysis.exporting.findings_table import findings_csv
from analysis.wording import say

FINDINGS_FORMATS = (".json", ".csv")
"""Endings of files that findings can be written to."""


def require_findings_target(target: Path) -> None:
    """Refuse a file that findings cannot be written to, before any work is done.

    Raises
    ------
    ExportingError
        Where the ending is not one of `FINDINGS_FORMATS`, or the file exists.
    """
    if target.suffix.lower() not in FINDINGS_FORMATS:
        raise ExportingError(
            say("findings cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .json or .csv"),
        )
    if target.exists():
        raise ExportingError(say("a file of that name exists already"), say("choose another name"))


def export_findings(found: Mapping[str, Any], target: Path) -> Path:
    """Write findings.

    Parameters
    ----------
    found : mapping
        As `analysis.diagnosis.serialise.findings_object` gives it.
    target : Path
        A file that does not exist yet; its ending says the format.

    Returns
    -------
    Path
        What was written.

    Raises
    ------
    ExportingError
        Where the format is unknown or the file exists or cannot be written.
    """
    require_findings_target(target)
    text = json_line(dict(found)) + "\n" if target.suffix.lower() == ".json" else findings_csv(found)
    with replaced_at_the_end(target, ExportingError) as temporary:
        temporary.write_text(text, encoding="utf-8", newline="")
    return target
