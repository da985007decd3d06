"""The languages that a report can be said in."""

from __future__ import annotations

from analysis.wording import Language
from app.translations.catalogue import TONGUES, load_language

CODES = tuple(TONGUES)
"""ISO 639-1 codes of them."""


def report_language(code: str) -> Language:
    """The language of a code; English where it is not known."""
    return load_language(code)
