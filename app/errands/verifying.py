"""``wornband verify``: whether a capture still says what it said when it was written and reviewed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TextIO

from analysis.captures.model import Match
from analysis.captures.verification import Verification, verify_capture
from analysis.errors import WornbandError
from app.errands.progress_line import ProgressLine
from app.printable import error_line, printable
from app.reporting.fingerprints import report_fingerprint

PROVES = (
    "A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who"
    " took it, nor that the capture was true."
)


def verify(paths: Sequence[str], *, report: str = "", out: TextIO, err: TextIO) -> int:
    """Print what was found about each file.

    Parameters
    ----------
    paths : sequence of str
        Captures.
    report : str
        A stored report, or the fingerprint printed on one, to hold them against; empty for none.
    out, err : TextIO
        Standard output and standard error.

    Returns
    -------
    int
        0 where nothing speaks against any of them; 1 where one was changed, cannot be read, or is not the one
        that the report was made from.
    """
    status, done = 0, 0
    try:
        reported = report_fingerprint(report) if report else ""
    except WornbandError as error:
        print(error_line(report, str(error)), file=err)
        return 1
    for path in paths:
        try:
            with ProgressLine(err) as progress:
                progress.begin(path)
                found = verify_capture(path, tick=progress.tick)
        except WornbandError as error:
            print(error_line(path, str(error)), file=err)
            status = 1
            continue
        passed = found.passed and _reported(found, reported) is not Match.DIFFERS
        print("\n".join(_lines(path, found, reported)), file=out)
        done += 1
        status = status if passed else 1
    if done:
        print(f"\n{PROVES}", file=out)
    return status


_REPORTED = {
    Match.MATCHES: "The report was made from exactly this file.",
    Match.REPACKED: "The report was made from the same content; the file was packed anew since.",
    Match.DIFFERS: "The report was made from another capture, or the capture was changed since.",
}


def _reported(found: Verification, reported: str) -> Match:
    """The fingerprint on a report against the file; `ABSENT` where there is none."""
    if not reported:
        return Match.ABSENT
    if found.sha256.startswith(reported):
        return Match.MATCHES
    return Match.REPACKED if found.content_sha256.startswith(reported) else Match.DIFFERS


def _lines(path: str, found: Verification, reported: str) -> list[str]:
    said = _REPORTED.get(_reported(found, reported))
    return [
        f"{printable(path)}: {'unchanged as far as can be told' if found.passed else 'CHANGED'}",
        *(f"  {printable(sentence)}" for sentence in found.sentences),
        *([f"  {said}"] if said else []),
        f"  SHA-256 of the file: {found.sha256}",
        f"  Fingerprint of the content: {found.content_sha256}",
    ]
