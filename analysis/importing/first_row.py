"""Where the samples of a text begin: found from the end of its head upwards."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from analysis.importing.cells import MISSING, looks_numeric
from analysis.importing.headings import split_line

LEAST_BLOCK = 6
"""Rows of a block that stands above another one; a shorter run of numbers belongs to a head."""

_MOST_BETWEEN = 8  # lines between two blocks
_SHARE = 10  # a block is at least a tenth as long as the one below it; a list of settings is shorter


def behind_numbers(lines: list[str], rows: list[int], delimiter: str) -> int:
    """The first of the rows, or the second where the first counts the columns (1, 2, 3) and numbers none."""
    cells = split_line(lines[rows[0]], delimiter)
    counting = [[str(place + start) for place in range(len(cells))] for start in (0, 1)]
    if len(cells) < 3 or len(rows) < 3 or cells not in counting:
        return rows[0]
    below = split_line(lines[rows[1]], delimiter)
    return rows[0] if all(cell.isdecimal() for cell in below) else rows[1]


def counts_rows(lines: list[str], rows: list[int], first: int, delimiter: str, width: int) -> bool:
    """Whether the first cells of the rows go 0, 1, 2 or 1, 2, 3, and the last ones are filled."""
    some = [split_line(lines[place], delimiter) for place in rows if place >= first][:5]
    counted = [cells[0] for cells in some if len(cells) == width and cells[-1]]
    return len(counted) > 1 and counted in (
        [str(place + start) for place in range(len(counted))] for start in (0, 1)
    )


def filled(cells: list[str]) -> list[str]:
    """The cells up to the last one that holds anything."""
    return cells[: max((place + 1 for place, cell in enumerate(cells) if cell), default=0)]


def first_row(lines: list[str], rows: list[int], delimiter: str, numeric: list[bool]) -> int | None:
    """The first line of the samples, found from the end of the head upwards; None where there is none.

    Blocks that stand one below the other all belong to them: what these are is decided when all are read.

    Parameters
    ----------
    lines : list of str
        Of the head of a file.
    rows : list of int
        Which of these may be rows.
    delimiter : str
        Between cells.
    numeric : list of bool
        Which cells hold numbers.
    """
    fits = [_fits(lines[place], delimiter, numeric) for place in rows]
    if not any(fits):
        return None
    at = first = len(fits) - 1 - fits[::-1].index(True)
    strange, run = 0, 0
    seen = Counter(lines[place] for place in rows[:at])
    while at >= 0:
        line = lines[rows[at]]
        if fits[at]:
            first, strange, run = at, 0, run + 1
        elif delimiter == " " and is_short(line, len(numeric)):
            pass
        elif seen[line] == 1 or not _is_heading(line, delimiter, numeric):
            strange += 1
            if strange > 2 or _is_heading(line, delimiter, numeric):
                above = _block_above(fits[: at + 1], run)
                if above is None:
                    break
                seen.subtract(lines[place] for place in rows[above + 1 : at])
                at, strange, run = above + 1, 0, 0
        seen[lines[rows[at]]] -= 1  # a heading that stands further up too begins a page, not the table
        at -= 1
    return rows[first]


def _block_above(fits: Sequence[bool], below: int) -> int | None:
    """The last row of another block that ends above, or None where none does."""
    upwards = list(reversed(fits))
    between = upwards.index(True) if True in upwards else len(upwards)
    if between > _MOST_BETWEEN or between == len(upwards):
        return None
    rest = upwards[between:]
    run = rest.index(False) if False in rest else len(rest)
    return len(fits) - 1 - between if run >= max(LEAST_BLOCK, below / _SHARE) else None


def is_short(line: str, width: int) -> bool:
    """Whether a line holds fewer numbers than a row, and nothing else: blank cells between spaces."""
    cells = line.split()
    return 1 < len(cells) < width and all(map(looks_numeric, cells))


def _is_heading(line: str, delimiter: str, numeric: list[bool]) -> bool:
    cells = split_line(line, delimiter)
    words = [cell for cell in cells if cell and not looks_numeric(cell) and cell.lower() not in MISSING]
    return len(cells) == len(numeric) and len(words) >= 0.5 * len(numeric)


def _fits(line: str, delimiter: str, numeric: list[bool]) -> bool:
    cells = split_line(line, delimiter)
    if len(cells) != len(numeric) != len(cells := filled(cells)):
        return False
    told = [cell for cell, use in zip(cells, numeric, strict=True) if use and cell.lower() not in MISSING]
    return bool(told) and all(map(looks_numeric, told))
