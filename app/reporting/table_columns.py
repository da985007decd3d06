"""The columns of a report's tables: how wide each is, and its cells laid out."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import zip_longest

from PySide6.QtGui import QFont

from analysis.reports.pages import Grid
from app.reporting.flow import Text, laid_out

_WHOLE_LETTERS = 16
"""A cell that is no longer than this stays on one line where there is room."""


def column_widths(block: Grid, body: float, gap: float, plain: QFont, bold: QFont) -> list[float]:
    """Widths of a table's columns, by their shares and by what stands in them.

    Parameters
    ----------
    block : Grid
        The table.
    body : float
        Width for all of it, in the units of a sheet.
    gap : float
        Between two columns, in the same.
    plain, bold : QFont
        Of the rows and of the heads.
    """
    whole = body - gap * (len(block.shares) - 1)
    return shared_widths(whole, block.shares, _least_widths(block, body, plain, bold))


def shared_widths(whole: float, shares: Sequence[float], least: Sequence[float]) -> list[float]:
    """Widths of columns by their shares; one that is too narrow for its head takes from the others."""
    widths = [whole * share / sum(shares) for share in shares]
    lacking = sum(max(need - width, 0.0) for need, width in zip(least, widths, strict=True))
    spare = sum(max(width - need, 0.0) for need, width in zip(least, widths, strict=True))
    if lacking > spare:
        return widths  # heads longer than the sheet: their words are broken
    given = lacking / spare if spare else 0.0
    return [
        max(need, width - given * max(width - need, 0.0)) for need, width in zip(least, widths, strict=True)
    ]


def cells(
    texts: Sequence[str], widths: Sequence[float], places: Sequence[float], font: QFont
) -> list[tuple[Text, float]]:
    """A row of a table laid out, each cell with its place across."""
    return [
        (laid_out(text, font, width), place) for text, width, place in zip(texts, widths, places, strict=True)
    ]


def _least_widths(block: Grid, body: float, plain: QFont, bold: QFont) -> list[float]:
    """Widths that the columns need so that no word is broken, and no short outcome either.

    A word that is longer than an equal share of the sheet is broken all the same.
    """
    most = body / len(block.shares)
    columns = zip_longest(block.table.heads, *block.table.rows, fillvalue="")
    return [min(_longest_word(column, plain, bold), most) for column in columns]


def _longest_word(column: Sequence[str], plain: QFont, bold: QFont) -> float:
    """Width of the longest word of a column; its first cell is the head, in bold."""
    heads = (laid_out(word, bold, 1e6).width for word in column[0].split())
    parts = (
        [cell] if len(cell) <= _WHOLE_LETTERS and "\n" not in cell else cell.split() for cell in column[1:]
    )
    words = {word for part in parts for word in part}
    return max((*heads, *(laid_out(word, plain, 1e6).width for word in words)), default=0.0)
