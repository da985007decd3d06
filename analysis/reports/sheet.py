"""Rows for a spreadsheet: CSV whose cells no program takes for a formula, and text with tabs."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence

from analysis.exporting.neutral import starts_a_formula

Cell = str | float | int | None


def neutral(text: str) -> str:
    """A text that no spreadsheet takes for a formula: an apostrophe before whatever would start one."""
    return f"'{text}" if starts_a_formula(text) else text


def csv_text(rows: Iterable[Sequence[Cell]]) -> str:
    """Rows as CSV (RFC 4180), numbers as numbers, texts neutralised, absent values as empty cells."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    for row in rows:
        writer.writerow([_stored(cell) for cell in row])
    return out.getvalue()


def tabbed_text(rows: Iterable[Sequence[Cell]]) -> str:
    """Rows with tabs between the cells; line breaks and tabs inside a text become spaces."""
    lines = ["\t".join(" ".join(_stored(cell).split()) for cell in row) for row in rows]
    return "\n".join(lines) + "\n" if lines else ""


def _stored(cell: Cell) -> str:
    if cell is None or cell != cell:
        return ""
    if isinstance(cell, str):
        return neutral(cell)
    return str(cell) if isinstance(cell, int) else f"{cell:.9g}"
