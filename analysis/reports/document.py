"""A report as sections, tables and sentences: no fonts, no pages. `app` makes text and HTML from it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Table:
    """A table of text.

    Parameters
    ----------
    heads : tuple of str
        One for each column.
    rows : tuple of tuple of str
        Each as long as `heads`.

    Raises
    ------
    ValueError
        Where a row is longer or shorter than the heads.
    """

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def __post_init__(self) -> None:
        for row in self.rows:
            if len(row) != len(self.heads):
                raise ValueError(
                    f"every row must have {len(self.heads)} cells as the heads do, got {len(row)}"
                )


@dataclass(frozen=True, slots=True)
class Section:
    """A titled part: sentences, then items of a list, then a table; each may be empty."""

    title: str
    sentences: tuple[str, ...] = ()
    items: tuple[str, ...] = ()
    table: Table | None = None

    @property
    def empty(self) -> bool:
        """Whether there is nothing below the title."""
        return not (self.sentences or self.items or (self.table and self.table.rows))


@dataclass(frozen=True, slots=True)
class Report:
    """A whole report.

    Parameters
    ----------
    title : str
        What was examined.
    subject : tuple of (str, str)
        Name and value of what is known about the vehicle and the visit.
    headline : str
        Verdict and confidence.
    lead : tuple of str
        The sentences below it.
    sections : tuple of Section
        None of them empty.
    """

    title: str
    subject: tuple[tuple[str, str], ...]
    headline: str
    lead: tuple[str, ...]
    sections: tuple[Section, ...]
