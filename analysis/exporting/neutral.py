"""Text that a spreadsheet shows and never runs."""

from __future__ import annotations

_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n")  # OWASP, "CSV Injection"


def neutral(text: str) -> str:
    """The text with an apostrophe before it where a spreadsheet would take it for a formula.

    Line ends become spaces, so that a cell stays on its line.
    """
    said = f"'{text}" if text.lstrip(" \u00a0\ufeff").startswith(_STARTS) else text
    return " ".join(said.splitlines()) if len(said.splitlines()) > 1 else said
