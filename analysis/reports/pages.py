"""The printed report as pages of blocks: what stands on paper, with no fonts and no places."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields, is_dataclass, replace
from enum import StrEnum
from typing import Any, TypeAlias

from analysis.reports.document import Table
from analysis.reports.drawing import Drawing
from analysis.reports.workshop import Workshop
from analysis.review.job import Photo


class Style(StrEnum):
    """How a paragraph is meant."""

    BODY = "body"
    LEAD = "lead"
    SMALL = "small"


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading inside a page."""

    text: str


@dataclass(frozen=True, slots=True)
class Paragraph:
    """A paragraph.

    Parameters
    ----------
    text : str
        What stands there.
    style : Style
        How it is meant.
    key : str
        By which the technician's own wording is kept; empty where it is not theirs to change.
    own : bool
        Whether the words are the technician's instead of the program's.
    """

    text: str
    style: Style = Style.BODY
    key: str = ""
    own: bool = False


@dataclass(frozen=True, slots=True)
class Facts:
    """Names and values, side by side."""

    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Items:
    """A list."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Boxes:
    """Things to tick: what, and whether it is ticked."""

    items: tuple[tuple[str, bool], ...]


@dataclass(frozen=True, slots=True)
class Grid:
    """A table with the share of the width that each column takes.

    Raises
    ------
    ValueError
        Where there is another number of shares than of columns.
    """

    table: Table
    shares: tuple[float, ...]

    def __post_init__(self) -> None:
        if len(self.shares) != len(self.table.heads):
            raise ValueError(f"every column needs its share, got {len(self.shares)} shares")


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with the words below it; ``code`` is the name by which it is chosen."""

    code: str
    drawing: Drawing
    caption: str


@dataclass(frozen=True, slots=True)
class Photos:
    """Photos side by side, each with its caption."""

    photos: tuple[Photo, ...]


@dataclass(frozen=True, slots=True)
class Signatures:
    """Lines to write on, with what belongs there."""

    labels: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Columns:
    """Blocks that run down a left column and go on in a right one, where there is room for two."""

    blocks: tuple[Block, ...]


Block: TypeAlias = (
    Heading | Paragraph | Facts | Items | Boxes | Grid | Picture | Photos | Signatures | Columns
)


@dataclass(frozen=True, slots=True)
class Page:
    """Blocks that begin on a new sheet, and go on over further ones where they need them."""

    title: str
    blocks: tuple[Block, ...]


@dataclass(frozen=True, slots=True)
class Pages:
    """A whole report.

    Parameters
    ----------
    title : str
        Of the document.
    language : str
        ISO 639-1 code of its words.
    workshop : Workshop
        At the top.
    pages : tuple of Page
    footer : str
        At the foot of every sheet: which capture it speaks of.
    sheet, continued : str
        ``"Sheet {page} of {pages}"`` and ``"{title}, continued"`` in the report's language, filled in by
        whoever lays it out.
    fingerprint : str
        SHA-256 of the capture's file; empty where there is none.
    """

    title: str
    language: str
    workshop: Workshop
    pages: tuple[Page, ...]
    footer: str
    sheet: str
    continued: str
    fingerprint: str = ""


def spoken(item: Any, say: Callable[[str], str]) -> Any:
    """The same value with every text in it said by a language.

    Parameters
    ----------
    item : object
        A text, a tuple, or a frozen dataclass of these; other values come back as they are.
    say : callable
        `analysis.wording.Language.say`.
    """
    if isinstance(item, str):
        return item if isinstance(item, StrEnum) else say(item)
    if isinstance(item, tuple):
        return tuple(spoken(part, say) for part in item)
    if is_dataclass(item) and not isinstance(item, type):
        return replace(item, **{part.name: spoken(getattr(item, part.name), say) for part in fields(item)})
    return item
