"""Where a text table is broken off and goes on: what stands between two of its rows that is no row."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

_MOST_SEAMS = 10_000  # a table that is broken off more often is written with lines between its rows
_MOST_LINES = 12  # of one seam that are kept
_LINE_FEED, _RETURN = 10, 13


@dataclass(frozen=True, slots=True)
class Seam:
    """A place where a table is broken off.

    Parameters
    ----------
    row : int
        The first row below.
    lines : tuple of str
        What stands there; empty where the lines are.
    empty : int
        Rows directly above `row` in which nothing stands: lines of delimiters alone.
    blank : bool
        Whether an empty line is among them, or an empty row.
    """

    row: int
    lines: tuple[str, ...]
    empty: int = 0
    blank: bool = True


@dataclass(slots=True)
class SeamKeeper:
    """Notes the seams while a text is read from its first line to its last.

    Attributes
    ----------
    rows : int
        Rows so far.
    empty : int
        Rows of nothing since the last one that holds something; they are not among `rows` yet.
    lines : list of str
        Lines since then that are no rows.
    broken, blank : bool
        Whether anything at all stands since then, and whether an empty line does.
    """

    rows: int = 0
    empty: int = 0
    broken: bool = False
    blank: bool = False
    lines: list[str] = field(default_factory=list)
    _found: list[Seam] = field(default_factory=list)

    @property
    def seams(self) -> tuple[Seam, ...]:
        """Where it was broken off; nothing where that is nearly everywhere."""
        return tuple(self._found) if len(self._found) < _MOST_SEAMS else ()

    def pass_line(self, line: str = "") -> None:
        """A line that is no row, or an empty one."""
        self.broken = True
        if not line:
            self.blank = True
            return
        self.empty = 0  # what stands beside words is no row of missing samples
        if len(self.lines) < _MOST_LINES:
            self.lines.append(line.strip())

    def pass_empty_row(self) -> None:
        """A row in which nothing stands."""
        self.broken = self.blank = True
        if not self.lines:
            self.empty += 1

    def pass_word(self, word: str) -> None:
        """Another word in the column that says which channel a row belongs to."""
        self.broken = self.blank = True
        self.lines = [word]

    def begin_row(self) -> int:
        """A row that holds something; how many empty ones come before it, which count as rows then."""
        before, self.rows = self.empty, self.rows + self.empty
        if self.broken and self.rows > before and len(self._found) < _MOST_SEAMS:
            self._found.append(Seam(self.rows, tuple(self.lines), before, self.blank))
        self.lines, self.broken, self.blank, self.empty = [], False, False, 0
        self.rows += 1
        return before

    def pass_block(self, rows: int, blanks: NDArray[np.int64], words: Mapping[int, str]) -> int:
        """Many rows at once, which are nothing else.

        Parameters
        ----------
        rows : int
            How many.
        blanks : ndarray of int64
            Rows of them with empty lines above; `rows` itself for those below the last.
        words : mapping of int to str
            Rows of them from which on another channel is named.

        Returns
        -------
        int
            How many rows of nothing come before them, as of `begin_row`.
        """
        if not rows:
            return 0
        if len(blanks) and int(blanks[0]) == 0:
            self.pass_line()
        if 0 in words:
            self.pass_word(words[0])
        before = self.begin_row()
        first = self.rows - 1
        inside: dict[int, tuple[str, ...]] = {int(row): () for row in blanks[:_MOST_SEAMS] if 0 < row < rows}
        inside |= {row: (word,) for row, word in words.items() if row}
        for row in sorted(inside)[: _MOST_SEAMS - len(self._found)]:
            self._found.append(Seam(first + row, inside[row]))
        self.rows = first + rows
        if len(blanks) and int(blanks[-1]) == rows:
            self.pass_line()
        return before


def blank_lines(lines: bytes) -> NDArray[np.int64]:
    """Before which rows a text has lines in which nothing stands.

    Parameters
    ----------
    lines : bytes
        Whole lines; all that are not empty are rows.

    Returns
    -------
    ndarray of int64
        Each row once; the number of rows for empty lines below the last.
    """
    if b"\n\n" not in lines and b"\n\r\n" not in lines and not lines.startswith((b"\n", b"\r\n")):
        return np.empty(0, dtype=np.int64)
    raw = np.frombuffer(lines, dtype=np.uint8)
    ends = np.flatnonzero(raw == _LINE_FEED)
    starts = np.concatenate([[0], ends[:-1] + 1])
    length = ends - starts
    blank = (length == 0) | ((length == 1) & (raw[starts] == _RETURN))
    return np.unique(np.cumsum(~blank)[blank]).astype(np.int64)
