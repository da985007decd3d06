"""The fingerprint that a stored report carries, so that a capture can be held against it."""

from __future__ import annotations

import io
import re
import struct
import zlib
from html.parser import HTMLParser
from pathlib import Path

from analysis.errors import WornbandError

PDF_KEY = "/WornbandSha256"
"""Name of the fingerprint among the PDF's own particulars."""

HTML_NAME = "wornband-sha256"
"""The same of an HTML file."""

_DAMAGED = (
    *(ValueError, LookupError, TypeError, AttributeError, RecursionError, NotImplementedError),
    *(ArithmeticError, AssertionError, zlib.error, struct.error),
)
"""What pypdf raises over a damaged file beside its own errors: those of whatever it stumbles over."""

_MOST_BYTES = 256 * 1024 * 1024
_WHOLE = re.compile(r"[0-9a-f]{64}")
_TYPED = re.compile(r"[0-9a-f]{16,64}")


class FingerprintError(WornbandError):
    """No fingerprint can be had from what was given."""


def report_fingerprint(given: str) -> str:
    """The fingerprint of a stored report, or one that was typed.

    Parameters
    ----------
    given : str
        Path of a report (PDF or HTML), or 16 to 64 digits as they stand on a printed one.

    Returns
    -------
    str
        16 to 64 hexadecimal digits in small letters.

    Raises
    ------
    FingerprintError
        Where it is neither, or the report's words say another fingerprint than its particulars.
    """
    path = Path(given)
    typed = re.sub(r"[\s…]", "", given).lower()
    if _TYPED.fullmatch(typed) and not path.exists():
        return typed
    try:
        if path.stat().st_size > _MOST_BYTES:
            raise FingerprintError("this is far too large for a report", "name a report, or its fingerprint")
        data = path.read_bytes()
    except (OSError, ValueError) as error:
        raise FingerprintError(
            "the report cannot be opened", "name a report, or 16 digits or more of its fingerprint"
        ) from error
    carried, words = _pdf(data) if data.startswith(b"%PDF-") else _html(data)
    if not _WHOLE.fullmatch(carried):
        raise FingerprintError("this report carries no fingerprint", "type the one that is printed on it")
    if carried not in re.sub(r"\s", "", words):
        raise FingerprintError("what this report says was changed after it was made", "ask for the original")
    return carried


def _pdf(data: bytes) -> tuple[str, str]:
    from pypdf import PdfReader  # here, since no window should wait for it when it opens
    from pypdf.errors import PyPdfError

    try:
        reader = PdfReader(io.BytesIO(data))
        metadata = reader.metadata
        carried = str(metadata.get(PDF_KEY, "")) if metadata is not None else ""
        return carried, "".join(page.extract_text() for page in reader.pages)
    except (PyPdfError, *_DAMAGED) as error:
        raise FingerprintError(
            "the report is damaged", "type the fingerprint that is printed on it"
        ) from error


class _Page(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.carried = ""
        self.words: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        known = dict(attrs)
        if tag == "meta" and known.get("name") == HTML_NAME:
            self.carried = known.get("content") or ""

    def handle_data(self, data: str) -> None:
        self.words.append(data)


def _html(data: bytes) -> tuple[str, str]:
    page = _Page()
    page.feed(data.decode("utf-8", "replace"))
    return page.carried, "".join(page.words)
