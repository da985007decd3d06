"""Delimited text as a table: pyarrow for whole blocks, cell by cell where a block holds anything odd."""

from __future__ import annotations

import csv
import re
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Scaling
from analysis.errors import ImportingError
from analysis.importing.asides import foreign_letters
from analysis.importing.cells import MISSING, number_of, plain, thousands_marks
from analysis.importing.choices import NOTHING_CHOSEN, SPACED_COMMA, TextChoices, checked_choices
from analysis.importing.clocks import seconds_of_all
from analysis.importing.dialect import ARROW, Dialect, understood
from analysis.importing.edges_of_text import end_of, head_of
from analysis.importing.encoding import line_blocks
from analysis.importing.guesses import is_time
from analysis.importing.instants import seconds_of
from analysis.importing.left_out import LeftOut
from analysis.importing.model import Block, Column, Table, checked_columns
from analysis.importing.on_its_side import TURNED, lying
from analysis.importing.seams import SeamKeeper, blank_lines
from analysis.importing.summaries import is_summary, words_of
from analysis.progress import Tick
from analysis.wording import say

if TYPE_CHECKING:
    import pyarrow as pa

_ROWS_A_TICK = 20_000
_TORN_BY = 12  # rows that show to how many decimals a column is written
_TAIL_BYTES = 4096
_DECIMALS = re.compile(rb"\d[.,](\d+)[\s\"]*$")
_MOST_CHANGES = 10_000  # of channels in one block of text
_NULLS = sorted({form for word in MISSING for form in (word, word.upper(), word.capitalize())} | {"NaN"})


def open_text(path: Path, choices: TextChoices = NOTHING_CHOSEN) -> Table:
    """A delimited text file as a table.

    Parameters
    ----------
    path : Path
        A regular file.
    choices : TextChoices
        What is not to be found out.

    Raises
    ------
    ImportingError
        Where it is no text or holds no rows of numbers.
    """
    side = lying(path, checked_choices(choices))
    if side is None:
        text, encoding = head_of(path, choices.encoding)
        end = end_of(path, encoding)
    else:
        text, encoding, end = side.head(), side.encoding, side.end()
    dialect = understood(text, choices, end)
    columns = [item for item, use in zip(_every_column(dialect), dialect.numeric, strict=True) if use]
    reader = _Reader(path, dialect, side.blocks if side else partial(line_blocks, path, encoding))
    return Table(
        path,
        "text",
        checked_columns(columns),
        reader.blocks,
        dialect.interval_s,
        (
            *([TURNED] if side else []),
            *dialect.notes,
            *(foreign_letters(dialect.names, encoding) if choices.encoding is None else ()),
        ),
        dialect=dialect,
        encoding=encoding,
        seams=lambda: reader.keeper.seams,
        turned=text if side else "",
    )


def _every_column(dialect: Dialect) -> Iterator[Column]:
    """A column for each cell of a row, with what rows above the samples say of its numbers."""
    for place, (name, unit) in enumerate(zip(dialect.names, dialect.units, strict=True)):
        scales = None if dialect.clock[place] else dialect.scales
        scaling = scales.scalings[place] if scales is not None else Scaling()
        unit = unit if scales is None else scales.unit(place, unit, time=is_time(name, unit))
        yield Column(name or f"column {place + 1}", unit, scaling=scaling)


class _Reader:
    """Blocks of samples out of a text file whose dialect is known."""

    def __init__(
        self, path: Path, dialect: Dialect, lines: Callable[[], Iterator[tuple[bytes, int]]]
    ) -> None:
        import pyarrow as pa  # here, since no window should wait for it when it opens
        from pyarrow import csv as arrow_csv

        self._path, self._lines, self._dialect = path, lines, dialect
        self._used = [place for place, use in enumerate(dialect.numeric) if use]
        self._times = {
            place for place in self._used
            if dialect.clock[place] or is_time(dialect.names[place], dialect.units[place])
        }  # fmt: skip
        self._clean = _cleaner(dialect)
        self._words = words_of(dialect.numeric, dialect.margin)
        self.keeper = SeamKeeper()
        names = [str(place) for place in range(len(dialect.numeric))]
        used = [names[place] for place in self._used]
        label = [] if dialect.label is None else [names[dialect.label]]
        margin = [names[place] for place in dialect.margin if place != dialect.label]
        self._above = b""  # the last rows of the block before
        self._word = ""  # of the channel that the last row belongs to
        self._read = arrow_csv.ReadOptions(column_names=names, block_size=1 << 20)
        self._parse = arrow_csv.ParseOptions(
            delimiter="\t" if dialect.delimiter in (" ", SPACED_COMMA) else dialect.delimiter
        )
        self._convert = arrow_csv.ConvertOptions(
            column_types={
                names[place]: pa.string() if dialect.clock[place] else pa.float64() for place in self._used
            }
            | dict.fromkeys(label, pa.string())
            | dict.fromkeys(margin, pa.null()),  # a word there may name the line
            include_columns=used + label + margin,
            null_values=_NULLS,
            decimal_point=dialect.decimal,
        )

    def blocks(self, tick: Tick, notes: list[str]) -> Iterator[Block]:
        """Samples from the first to the last; see `Table`."""
        left, self.keeper, self._word = LeftOut(), SeamKeeper(), ""
        size = max(self._path.stat().st_size, 1)
        skip = self._dialect.first_line
        for lines, done in self._lines():
            while skip and lines:
                end = lines.find(b"\n") + 1 or len(lines)
                lines, skip = lines[end:], skip - 1
            if self._dialect.rewriting is not None:
                lines = self._dialect.rewriting.block(lines)
            if self._dialect.arrow:
                lines = lines.replace(ARROW.encode(), self._dialect.arrow.encode())
            if lines.strip():
                yield self._block(lines, left, tick, min(done / size, 1.0))
            tick(min(done / size, 1.0))
        left.check(self.keeper.rows)
        notes.extend(left.notes())

    def _block(self, lines: bytes, left: LeftOut, tick: Tick, done: float) -> Block:
        found = None if _is_cut(lines) else self._by_arrow(self._clean(lines))
        if not _is_cut(lines):
            self._above = b"\n".join(lines[-_TAIL_BYTES:].splitlines()[-_TORN_BY:])
        if found is None:
            return self._by_cell(lines, left, tick, done)
        quick, words = found
        blanks = blank_lines(lines) if not self._times else np.empty(0, dtype=np.int64)
        before = self.keeper.pass_block(len(quick[0]), blanks, self._changes(words))
        return tuple(np.concatenate([np.full(before, np.nan), part]) for part in quick) if before else quick

    def _changes(self, words: pa.Array | None) -> dict[int, str]:
        """From which rows on another channel is named, and which."""
        if words is None or not len(words):
            return {}
        at = np.asarray(words.dictionary_encode().indices.to_numpy(zero_copy_only=False))
        rows = [0, *(int(row) + 1 for row in np.flatnonzero(at[1:] != at[:-1]))]
        found = {row: str(words[row].as_py() or "").strip() for row in rows[:_MOST_CHANGES]}
        if self._word in ("", found[0]):
            del found[0]
        self._word = str(words[len(words) - 1].as_py() or "").strip()
        return found

    def _by_arrow(self, lines: bytes) -> tuple[Block, pa.Array | None] | None:
        """All columns at once and the words of channels, or None where any cell or row is odd."""
        import pyarrow as pa
        from pyarrow import csv as arrow_csv

        try:
            table = arrow_csv.read_csv(
                pa.BufferReader(lines), self._read, self._parse, self._convert, pa.system_memory_pool()
            )
        except pa.ArrowInvalid:
            return None
        found: list[NDArray[np.float64]] = []
        for place, column in zip(self._used, table.columns[: len(self._used)], strict=True):
            values = column.combine_chunks() if column.num_chunks != 1 else column.chunk(0)
            if place in self._times and values.null_count:
                return None  # a row of nothing is none
            if self._dialect.clock[place]:
                times = seconds_of_all(values)
                if times is None:
                    return None
                found.append(times)
            else:
                found.append(np.asarray(values.to_numpy(zero_copy_only=False), dtype=np.float64))
        if (
            all(column.null_count for column in table.columns[: len(self._used)])
            and np.isnan(found).all(axis=0).any()
        ):
            return None  # a row in which nothing stands may part two blocks
        label = None if self._dialect.label is None else table.columns[len(self._used)].combine_chunks()
        return tuple(found), label

    def _by_cell(self, lines: bytes, left: LeftOut, tick: Tick, done: float) -> Block:
        rows: list[list[float]] = []
        cut, keeper = _is_cut(lines), self.keeper
        torn = cut and b"\n" not in lines and _is_torn(lines, self._above)
        nothing = [float("nan")] * len(self._used)
        for number, cells in enumerate(self._rows(lines, cut=cut)):
            if number % _ROWS_A_TICK == 0:
                tick(done)
            if torn and len(cells) == len(self._dialect.numeric):
                cells, left.ragged = [*cells[:-1], ""], left.ragged + 1
            row = self._row(cells, left, cut=cut)
            if row is None:
                left.see_numbers(cells)
                keeper.pass_line(self._dialect.delimiter.join(cells).strip(self._dialect.delimiter))
            elif not self._times and not any(map(str.strip, cells)):
                keeper.pass_empty_row()
            else:
                self._pass_word(cells)
                rows += [nothing] * keeper.begin_row()
                rows.append(row)
        made: NDArray[Any] = np.array(rows, dtype=np.float64).reshape(len(rows), len(self._used))
        return tuple(np.ascontiguousarray(made[:, place]) for place in range(len(self._used)))

    def _rows(self, lines: bytes, *, cut: bool) -> Iterator[list[str]]:
        dialect = self._dialect
        text = lines.decode("utf-8", "replace").replace("\0", "").splitlines()
        kept = self._kept(text)
        if dialect.delimiter == " ":
            yield from (self._spaced(line.replace('"', ""), cut) for line in kept)
            return
        if dialect.delimiter == SPACED_COMMA:
            yield from (line.split(SPACED_COMMA) for line in kept)
            return
        try:
            yield from csv.reader(kept, delimiter=dialect.delimiter)
        except csv.Error as error:
            raise ImportingError(
                say("a cell of it is too long for a number"), say("save the recording as a plain table")
            ) from error

    def _pass_word(self, cells: list[str]) -> None:
        place = self._dialect.label
        word = "" if place is None or place >= len(cells) else plain(cells[place])
        if word and self._word not in ("", word):
            self.keeper.pass_word(word)
        self._word = word or self._word

    def _kept(self, lines: list[str]) -> Iterator[str]:
        """The lines that may be rows."""
        mark = self._dialect.comment
        for line in lines:
            if not line.strip():
                self.keeper.pass_line()
            elif mark and line.startswith(mark):
                self.keeper.pass_line(line)
            else:
                yield line

    def _spaced(self, line: str, cut: bool) -> list[str]:
        """The cells of a line between spaces: where some are blank, by where they stand in other lines."""
        cells = line.split()
        width, edges = len(self._dialect.numeric), self._dialect.edges
        if len(cells) >= width or cut:
            return cells
        places = {edge: place for place, edge in enumerate(edges.at)} if edges is not None else {}
        found = [""] * width
        for item in re.finditer(r"\S+", line):
            place = places.get(item.end() if edges is not None and edges.right else item.start())
            if place is None:
                return []  # nobody can say which cell it is
            found[place] = item.group()
        return found

    def _row(self, cells: list[str], left: LeftOut, *, cut: bool) -> list[float] | None:
        """One row of numbers, or None where the line is no row of samples."""
        dialect = self._dialect
        short = len(cells) < len(dialect.numeric)
        if is_summary(cells, self._words):
            left.rows += 1
            return None
        if short and cut:
            cells = cells[:-1]  # the file ends in the midst of it: it may lack digits
        values: list[float] = []
        odd: list[str] = []
        for place in self._used:
            cell = cells[place] if place < len(cells) else ""
            value = seconds_of(cell.strip().strip('"')) if dialect.clock[place] else None
            if value is None:
                decimal = "." if dialect.pointed and dialect.pointed[place] else dialect.decimal
                value = number_of(cell, decimal, dialect.thousands)
            if value is not None and np.isnan(value) and place in self._times and self._is_named(cells):
                left.rows += 1  # what a word names and no time belongs to
                return None
            if value is None:
                if place in self._times:  # a summary below the samples, a heading again
                    left.rows += 1
                    return None
                odd.append(cell)
            values.append(float("nan") if value is None else value)
        if odd and not self._times and self.keeper.broken and any(cell.strip()[:1].isalpha() for cell in odd):
            left.rows += 1  # a summary below the samples, or the words above another block
            return None
        told = len(self._used) - sum(map(np.isnan, values))
        if not told and self._times:
            left.rows += bool(odd or short)
            return None  # nothing stands in it, not even a time
        if (not told and (odd or short)) or (short and not cut and 2 * told < len(self._used)):
            left.rows += 1
            return None
        left.cells += len(odd)
        left.examples.extend(odd[: 1 - min(len(left.examples), 1)])
        left.ragged += short
        return values

    def _is_named(self, cells: list[str]) -> bool:
        """Whether a word stands before a line where samples have nothing."""
        return any(
            cells[place].strip(' "')[:1].isalpha() for place in self._dialect.margin if place < len(cells)
        )


def _is_torn(line: bytes, above: bytes) -> bool:
    """Whether the last number of a line without an end has fewer decimals than those of all lines above."""
    few, *others = (
        len(item[1]) if (item := _DECIMALS.search(row)) else 0 for row in [line, *above.splitlines()]
    )
    return len(others) >= _TORN_BY and len(set(others)) == 1 and few < others[0]


def _is_cut(lines: bytes) -> bool:
    """Whether it is the last line of a file, and without an end."""
    return not lines.endswith(b"\n")


def _cleaner(dialect: Dialect) -> Callable[[bytes], bytes]:
    """Bytes as pyarrow reads them: no thousands marks, no plus signs, one tab for any run of spaces."""
    away = [b"+"]  # 1E+3 and 1E3 are the same number, and a leading plus is not understood
    if dialect.thousands:
        away += [mark.encode() for mark in thousands_marks(dialect.thousands)]

    def clean(lines: bytes) -> bytes:
        for mark in away:
            if mark in lines:
                lines = lines.replace(mark, b"")
        if not lines.isascii():
            lines = lines.replace("∞".encode(), b"inf").replace("\u2212".encode(), b"-")
        if dialect.delimiter == SPACED_COMMA:
            lines = lines.replace(b", ", b"\t")
        if dialect.delimiter == " ":
            lines = lines.replace(b"\r\n", b"\n")
            lines = re.sub(rb"[ \t]+", b"\t", lines)
            lines = re.sub(rb"(?m)^\t|\t$", b"", lines)
        return lines

    return clean
