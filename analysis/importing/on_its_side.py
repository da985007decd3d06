"""A text table that lies on its side, each line a channel: read whole, and turned into a row a sample."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path

from analysis.importing.cells import MISSING, looks_numeric, plain
from analysis.importing.choices import TextChoices
from analysis.importing.encoding import decoded, encoding_of
from analysis.importing.headings import lines_of
from analysis.wording import say

MOST_BYTES = 64 * 1024 * 1024
"""A table that is turned has to be held whole; a longer one is refused as before."""

TURNED = say("it lies on its side, each line a channel: it was turned")

DELIMITERS = ("\t", ";", "|", ",", " ")
_HEAD_BYTES = 512 * 1024
_MOST_LINES = 80  # that hold anything: a few channels, and what stands above and below them
_MOST_CHANNELS = 16
_MOST_LABELS = 4  # cells before the samples: number, name, unit, place
_LEAST_SAMPLES = 8
_LOOK = 200  # cells of a line that show whether they are numbers
_NUMBERS = 0.9  # of these
_CELLS_AT_ONCE = 50_000
_HEAD_ROWS = 3000
_BEHIND_A_COMMA = re.compile(r"0\d+$")  # it parts decimals too


@dataclass(frozen=True, slots=True)
class Side:
    """A table that lies on its side.

    Parameters
    ----------
    above, below : tuple of str
        Lines above the channels, and below them.
    labels : tuple of tuple of str
        The cells before the samples of each channel.
    samples : tuple of str
        The rest of each line.
    delimiter : str
        Between cells.
    encoding : str
        That it was read in.
    size_bytes : int
        Of its file.
    """

    above: tuple[str, ...]
    below: tuple[str, ...]
    labels: tuple[tuple[str, ...], ...]
    samples: tuple[str, ...]
    delimiter: str
    encoding: str
    size_bytes: int

    def head(self) -> str:
        """The first lines of it as it is read: names and units below what stands above, and then rows."""
        found = self._head()
        for rows in self._rows(_HEAD_ROWS):
            found += rows
            break
        return "\n".join(found) + "\n"

    def blocks(self) -> Iterator[tuple[bytes, int]]:
        """All of it as rows: whole UTF-8 lines, and how many bytes of the file they are, as `line_blocks`."""
        yield ("\n".join(self._head()) + "\n").encode(), 0
        letters = max(map(len, self.samples))
        done = 0
        for rows in self._rows(_CELLS_AT_ONCE):
            text = "\n".join(rows) + "\n"
            done += len(text) // len(self.samples)
            yield text.encode(), min(self.size_bytes * done // max(letters, 1), self.size_bytes)
        if self.below:
            yield ("\n".join(self.below) + "\n").encode(), self.size_bytes

    def end(self) -> list[str]:
        """Some of its last rows."""
        tails = [_cells(line[-4096:], self.delimiter)[1:] for line in self.samples]
        count = min(map(len, tails))
        return [self.delimiter.join(cells) for cells in zip(*(tail[-count:] for tail in tails), strict=True)]

    def _head(self) -> list[str]:
        told = [row for row in zip(*self.labels, strict=True) if not all(map(looks_numeric, row))]
        return [*self.above, *(self.delimiter.join(map(self._quoted, row)) for row in told)]

    def _quoted(self, label: str) -> str:
        return f'"{label}"' if self.delimiter in label or not label else label

    def _rows(self, at_once: int) -> Iterator[list[str]]:
        """Rows of cells, so many at once."""
        rests: list[str] = list(self.samples)
        mark = None if self.delimiter == " " else self.delimiter
        while any(rests):
            columns = []
            for place, rest in enumerate(rests):
                cells = rest.split(mark, at_once) if rest else []
                rests[place] = cells.pop() if len(cells) > at_once else ""
                columns.append(cells)
            yield [self.delimiter.join(cells) for cells in zip_longest(*columns, fillvalue="")]


def lying(path: Path, choices: TextChoices) -> Side | None:
    """A table that lies on its side; None where it does not, or is too large to be turned.

    Parameters
    ----------
    path : Path
        A text file.
    choices : TextChoices
        What is not to be found out.

    Raises
    ------
    ImportingError
        Where the bytes are no text.
    """
    size = path.stat().st_size
    if size > MOST_BYTES:
        return None
    with path.open("rb") as file:
        head = file.read(_HEAD_BYTES)
        encoding = encoding_of(head, choices.encoding)
        if len(_filled(decoded(head, encoding))) > _MOST_LINES:
            return None
        text = decoded(head + file.read(MOST_BYTES), encoding).replace("\0", "")
    quoted = '"' in text
    lines = _filled(text.replace('"', "") if quoted else text)
    if len(lines) > _MOST_LINES:
        return None
    for delimiter in DELIMITERS if choices.delimiter is None else (choices.delimiter,):
        if quoted and delimiter == ",":
            continue  # it may stand inside the quotes too
        found = _found(lines, delimiter)
        if found is not None:
            first, last, labels, samples = found
            above, below = tuple(lines[:first]), tuple(lines[last + 1 :])
            return Side(above, below, labels, samples, delimiter, encoding, size)
    return None


def _filled(text: str) -> list[str]:
    return [line for line in lines_of(text) if line.strip()]


def _found(
    lines: Sequence[str], delimiter: str
) -> tuple[int, int, tuple[tuple[str, ...], ...], tuple[str, ...]] | None:
    """First and last line of the channels, their labels and their samples."""
    counts = [_count(line, delimiter) for line in lines]
    most = max(counts, default=0)
    long = [place for place, count in enumerate(counts) if 2 * count > most]
    if not 2 <= len(long) <= _MOST_CHANNELS or long[-1] - long[0] + 1 != len(long):
        return None
    if most < max(2 * len(long) + 1, _LEAST_SAMPLES):
        return None
    begins = [_cells(lines[place], delimiter, _LOOK)[:_LOOK] for place in long]
    counted = [_labels(row) for row in begins]
    counted = counted if delimiter == " " else [max(counted)] * len(long)
    if not _are_channels(begins, counted, delimiter, most):
        return None
    parted = [
        _cells(lines[place].rstrip(delimiter + "\r\t "), delimiter, count)
        for place, count in zip(long, counted, strict=True)
    ]
    pairs = list(zip(parted, counted, strict=True))
    labels = tuple(tuple(cell.strip() for cell in row[:count]) for row, count in pairs)
    if delimiter == " ":
        labels = tuple((" ".join(row),) for row in labels)
    return long[0], long[-1], labels, tuple(row[count] if len(row) > count else "" for row, count in pairs)


def _are_channels(begins: Sequence[Sequence[str]], counted: Sequence[int], delimiter: str, most: int) -> bool:
    """Whether lines begin with so many cells of labels each, and hold numbers behind them."""
    if not all(1 <= count <= _MOST_LABELS for count in counted):
        return False
    if sum(not any(map(_is_word, row[:count])) for row, count in zip(begins, counted, strict=True)) > 1:
        return False
    if delimiter != " ":
        for place in range(counted[0]):
            cells = [row[place].strip() for row in begins if place < len(row) and row[place].strip()]
            if len({_is_number(cell) for cell in cells}) > 1:
                return False  # a unit in one line, the first sample in another
    for row, count in zip(begins, counted, strict=True):
        numbers = [cell.strip() for cell in row[count:] if cell.strip()]
        if len(numbers) < 0.5 * min(most - count, _LOOK - count):
            return False
        if sum(map(_is_number, numbers)) < _NUMBERS * len(numbers):
            return False
        if delimiter == "," and any(map(_BEHIND_A_COMMA.match, numbers)):
            return False
    return True


def _count(line: str, delimiter: str) -> int:
    return (
        len(re.findall(r"\S+", line))
        if delimiter == " "
        else line.rstrip(delimiter + " ").count(delimiter) + 1
    )


def _cells(line: str, delimiter: str, most: int = -1) -> list[str]:
    return line.split(None if delimiter == " " else delimiter, most)


def _labels(row: Sequence[str]) -> int:
    """How many cells stand before the samples of a line."""
    words = [place for place, cell in enumerate(row[: _MOST_LABELS + 1]) if _is_word(cell)]
    return words[-1] + 1 if words else 1 if row and not row[0].strip() else 0


def _is_word(cell: str) -> bool:
    return bool(cell.strip()) and not _is_number(cell)


def _is_number(cell: str) -> bool:
    text = plain(cell)
    return looks_numeric(text) or text.lower() in MISSING
