"""``wornband verify``: whether a capture still says what it said when it was written and reviewed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TextIO

from analysis.captures.verification import Verification, verify_capture
from analysis.errors import WornbandError
from app.printable import error_line, printable
from app.progress_line import ProgressLine

PROVES = (
    "A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who"
    " took it, nor that the capture was true."
)


def verify(paths: Sequence[str], *, out: TextIO, err: TextIO) -> int:
    """Print what was found about each file.

    Returns
    -------
    int
        0 where nothing speaks against any of them; 1 where one was changed or cannot be read.
    """
    status, done = 0, 0
    for path in paths:
        try:
            with ProgressLine(err) as progress:
                progress.begin(path)
                found = verify_capture(path, tick=progress.tick)
        except WornbandError as error:
            print(error_line(path, str(error)), file=err)
            status = 1
            continue
        print("\n".join(_lines(path, found)), file=out)
        done += 1
        status = status if found.passed else 1
    if done:
        print(f"\n{PROVES}", file=out)
    return status


def _lines(path: str, found: Verification) -> list[str]:
    return [
        f"{printable(path)}: {'unchanged as far as can be told' if found.passed else 'CHANGED'}",
        *(f"  {printable(sentence)}" for sentence in found.sentences),
        f"  SHA-256 of the file: {found.sha256}",
        f"  Fingerprint of the content: {found.content_sha256}",
    ]
