"""What stands above the samples of a text: names, units, and perhaps how far the rows lie apart."""

from __future__ import annotations

import csv
import re

from analysis.importing.cells import looks_numeric, plain
from analysis.importing.choices import SPACED_COMMA
from analysis.importing.units import RATE, TIME, Unit, split_heading, unit_of

_MOST_JOINED = 12  # lines of one heading: a cell of a spreadsheet has two or three
_NAMES_INTERVAL = re.compile(
    r"(?:interval|period|increment|\bdt\b|delta ?t|Δt|abtastintervall|(?:sample|sampling) ?time)",
    re.IGNORECASE,
)
_NAMES_RATE = re.compile(r"(?:\brate\b|frequency|\bfs\b|abtastrate|samples per second|s/s\b)", re.IGNORECASE)
_STATED = re.compile(r"([+\-]?\d[\d.,]*(?:[eE][+\-]?\d+)?)[\s,;\t\"\])]*([\[(]?[A-Za-zµμ/]{1,12})?")


def split_line(line: str, delimiter: str) -> list[str]:
    """The cells of one line, quotes taken off."""
    if delimiter == " ":
        line = line.strip()
        if '"' not in line:
            return line.split()
    if '"' not in line or delimiter == SPACED_COMMA:
        return [plain(cell) for cell in line.split(delimiter)]
    return [plain(cell) for cell in next(csv.reader([line], delimiter=delimiter, skipinitialspace=True), [])]


def lines_of(text: str) -> list[str]:
    """The lines of a text, as they are counted where the samples are read.

    Parameters
    ----------
    text : str
        With line feeds; or, where there are none, with carriage returns.
    """
    if "\n" not in text:
        return text.split("\r")
    return [line.strip("\r") for line in text.split("\n")]


def logical(lines: list[str]) -> tuple[list[str], list[int]]:
    """Lines with those of one quoted cell of a heading joined, and how many physical ones stand before each.

    Parameters
    ----------
    lines : list of str
        As the file has them.
    """
    found, before = [], []
    place = 0
    while place < len(lines):
        line, end = lines[place], place + 1
        if line.count('"') % 2 and not looks_numeric(plain(re.split(r"[;,\t|]", line)[0])):
            while end < min(place + _MOST_JOINED, len(lines)) and " ".join(lines[place:end]).count('"') % 2:
                end += 1
            joined = " ".join(lines[place:end])
            line, end = (joined, end) if joined.count('"') % 2 == 0 else (line, place + 1)
        found.append(line)
        before.append(place)
        place = end
    return found, before


def headings(before: list[str], delimiter: str, width: int, comment: str) -> tuple[list[str], list[str]]:
    """Names and units out of the lines before the samples; a line of units stands below the names.

    Parameters
    ----------
    before : list of str
        Those lines.
    delimiter : str
        Between cells.
    width : int
        Cells of a row.
    comment : str
        What a line that is no row begins with; empty where there are none.

    Returns
    -------
    (list of str, list of str)
        One name and one unit a cell; empty ones where there are none.
    """
    names, units = [""] * width, [""] * width
    for line in reversed(before[-12:]):
        cells = split_line(line.lstrip("#%/!* ") if comment and line.startswith(comment) else line, delimiter)
        if len(cells) == width + 1 and not cells[-1]:
            cells.pop()
        said = [cell for cell in cells if cell]
        if not said or len(cells) > width or len(cells) < max(width - 1, 1):
            if said and any(names):
                break
            continue
        cells = padded(cells, width)
        if not any(units) and sum(unit_of(cell) is not None for cell in said) >= 0.5 * len(said):
            units = [cell.strip("[](){}<> ") for cell in cells]
        elif not all(map(looks_numeric, said)):
            names = cells
            break
    split = [
        split_heading(name) if not unit else (name, unit) for name, unit in zip(names, units, strict=True)
    ]
    return [name for name, _ in split], [unit for _, unit in split]


def padded(cells: list[str], width: int) -> list[str]:
    """As many cells as there are columns."""
    return [*cells, *[""] * width][:width]


def stated_interval(before: list[str]) -> float | None:
    """Seconds between rows that a line before the samples states, as an interval or as a rate."""
    for line in before:
        interval, rate = _NAMES_INTERVAL.search(line), _NAMES_RATE.search(line)
        named = interval or rate
        found = _STATED.search(line, named.end()) if named else None
        if found is None:
            continue
        try:
            value = float(found.group(1).replace(",", "."))
        except ValueError:
            continue
        said = unit_of((found.group(2) or "").strip("[(")) or _named_unit(line)
        by_rate = said.quantity == RATE if said else interval is None
        factor = said.factor if said and said.quantity in (RATE, TIME) else 1.0
        if value > 0.0 and value * factor < 1e12:
            return 1.0 / (value * factor) if by_rate else value * factor
    return None


def _named_unit(line: str) -> Unit | None:
    found = re.search(r"[\[(]\s*([^\[\]()]{1,12})\s*[\])]", line)
    return unit_of(found.group(1)) if found else None
