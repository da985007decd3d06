"""Text that a spreadsheet shows and never runs."""

from __future__ import annotations

_STARTS = ("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")  # OWASP, "CSV Injection"
_WHITE = ("\t", "\r", "\n")  # the same: a cell that begins so
_UNSEEN = "".join(map(chr, range(33))) + "\x7f\x85\u00a0\u200b\u2028\u2029\ufeff"
"""Control characters and blanks, line ends that `str.splitlines` knows among them."""


def starts_a_formula(text: str) -> bool:
    """Whether a spreadsheet could take a cell for a formula, whatever white space it drops before it."""
    return text.lstrip(_UNSEEN).startswith(_STARTS) or text.lstrip(" ").startswith(_WHITE)


def neutral(text: str) -> str:
    """The text with an apostrophe before it where a spreadsheet would take it for a formula.

    Line ends become spaces, so that a cell stays on its line.
    """
    line = " ".join(text.splitlines())
    return f"'{line}" if starts_a_formula(text) else line
