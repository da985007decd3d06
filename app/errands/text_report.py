"""A report as plain text for a terminal or a text file."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator

from analysis.reports.document import Report, Section, Table
from analysis.wording import ENGLISH
from app.printable import printable

WIDTH = 100
_GAP = "  "
_NARROWEST = 14


def report_text(report: Report, path: str) -> str:
    """The whole report, without a line end after the last line.

    Parameters
    ----------
    report : Report
        What to print.
    path : str
        The file as the caller named it.
    """
    lines = [printable(path), f"{_said(report.title)}"]
    known = dict(report.subject)
    about = [known[name] for name in ("Vehicle", "Mounting", "Complaint") if name in known]
    if about:
        lines.extend(_wrapped("; ".join(about)))
    lines += ["", _said(report.headline)]
    for sentence in report.lead:
        lines.extend(_wrapped(sentence))
    for section in report.sections:
        lines += ["", *section_lines(section)]
    return "\n".join(lines)


def section_lines(section: Section) -> list[str]:
    """A section's title and, indented, what stands below it."""
    lines = [_said(section.title)]
    for sentence in section.sentences:
        lines.extend(_wrapped(sentence, _GAP))
    for item in section.items:
        lines.extend(_wrapped(item, f"{_GAP}- ", f"{_GAP}  "))
    if section.table is not None and section.table.rows:
        lines.extend(_table_lines(section.table))
    return lines


def _wrapped(text: str, first: str = "", later: str | None = None) -> list[str]:
    """Lines of a paragraph; words that are longer than a line (paths, fingerprints) stay whole."""
    return textwrap.wrap(
        _said(text),
        WIDTH,
        initial_indent=first,
        subsequent_indent=first if later is None else later,
        break_long_words=False,
        break_on_hyphens=False,
    ) or [first.rstrip()]


def _table_lines(table: Table) -> Iterator[str]:
    """Columns side by side; a cell that is too wide goes on in the lines below."""
    cells = [[_said(cell) for cell in row] for row in (table.heads, *table.rows)]
    widths = _fitted([max(len(row[column]) for row in cells) for column in range(len(table.heads))])
    for row in cells:
        pieces = [_pieces(cell, width) for cell, width in zip(row, widths, strict=True)]
        for line in range(max(len(piece) for piece in pieces)):
            texts = (piece[line] if line < len(piece) else "" for piece in pieces)
            padded = (text.ljust(width) for text, width in zip(texts, widths, strict=True))
            yield (_GAP + _GAP.join(padded)).rstrip()


def _said(text: str) -> str:
    """A text as people read it: with a true minus sign, and nothing that acts on a terminal."""
    return printable(ENGLISH.say(text))


def _fitted(widths: list[int]) -> list[int]:
    """Widths of columns that fit a line: the widest gives way first, none below `_NARROWEST`."""
    widths = list(widths)
    while sum(widths) + len(_GAP) * len(widths) > WIDTH and max(widths) > _NARROWEST:
        widths[widths.index(max(widths))] -= 1
    return widths


def _pieces(cell: str, width: int) -> list[str]:
    return textwrap.wrap(cell, width, break_on_hyphens=False) or [""]
