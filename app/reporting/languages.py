"""The languages that a report can be said in."""

from __future__ import annotations

from analysis.wording import ENGLISH, Language

CODES = ("en", "de")
"""ISO 639-1 codes of them."""


def report_language(code: str) -> Language:
    """The language of a code; English where it is not known."""
    return ENGLISH if code != "de" else Language("de", {}, ",")
