"""Lines that hold a row in a wrapping: a name before each number, or quotes around all of it."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

_NAME = r"[A-Za-z_][\w.\-]{0,30}(?: [A-Za-z0-9_]{1,20}){0,2}"
_NAMED_LINE = re.compile(rf"\s*(?:{_NAME}\s*[=:]\s*[+\-]?\.?\d\S*?(?:[\s,;|]+|$)){{2,}}")
_NAMED = rf"({_NAME})\s*[=:]\s*(?=[+\-]?\.?\d)"
_QUOTED_LINE = re.compile(r'"[^"]*"')
_QUOTES = r'(?m)^"|"(?=\r?$)'
_MOST = 0.6  # of the lines
_LEAST_LINES = 4


@dataclass(frozen=True, slots=True)
class Rewriting:
    """How the lines of a text are read as plain rows.

    Parameters
    ----------
    pattern : str
        What goes away, wherever it stands.
    names : tuple of str
        Of the columns, where each number had a name before it.
    """

    pattern: str
    names: tuple[str, ...] = ()

    def line(self, text: str) -> str:
        """A line, or many, as plain rows."""
        return re.sub(self.pattern, "", text)

    def block(self, lines: bytes) -> bytes:
        """Whole lines of UTF-8 as plain rows."""
        return re.sub(self.pattern.encode(), b"", lines)


def rewriting_of(lines: Sequence[str]) -> Rewriting | None:
    """How most of these lines are wrapped; None where they are not.

    Parameters
    ----------
    lines : sequence of str
        From the beginning of a text.
    """
    said = [line.strip() for line in lines if line.strip()]
    if len(said) < _LEAST_LINES:
        return None
    if sum(map(_is_quoted, said)) > _MOST * len(said):
        return Rewriting(_QUOTES)
    named = Counter(_names(line) for line in said if _NAMED_LINE.fullmatch(line))
    names, often = named.most_common(1)[0] if named else ((), 0)
    enough = often > _MOST * len(said) and len(set(names)) == len(names)
    return Rewriting(_NAMED, names) if enough else None


def _names(line: str) -> tuple[str, ...]:
    return tuple(found.strip() for found in re.findall(_NAMED, line))


def _is_quoted(line: str) -> bool:
    """Whether all of a line is one quoted cell with several cells in it."""
    if not _QUOTED_LINE.fullmatch(line):
        return False
    return any(mark in line for mark in ";\t|") or line.count(",") > 1
