"""A report laid out on sheets of paper: what the window previews is what is printed and stored as PDF."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from enum import StrEnum
from typing import Any

from PySide6.QtGui import QFontDatabase, QImage

from analysis.errors import WornbandError
from analysis.reports.pages import (
    Block,
    Boxes,
    Facts,
    Grid,
    Heading,
    Items,
    Page,
    Paragraph,
    Photos,
    Picture,
    Signatures,
    Style,
)
from app.reporting.flow import INK_RULE, PALE_RULE, Flow, Metrics, Text, laid_out
from app.reporting.images import Image
from app.reporting.materials import Materials
from app.reporting.placed import UNITS_A_MM, Drawn, Frame, Placed, Rule, Sheet, Shown, report_font

_MARGIN_MM, _TOP_MM, _BOTTOM_MM = 16.0, 13.0, 17.0
_FIT = (1.0, 0.94, 0.88, 0.83)
"""How far the first page may shrink to stay on one sheet; its smallest letters are then 6.2 points high."""

_KEPT_LETTERS = 600
"""A paragraph that is no longer than this stays on one sheet."""

_BODY, _SMALL, _LEAD, _HEADING, _TITLE = 9.5, 7.5, 11.5, 9.5, 14.0


class Paper(StrEnum):
    """Sizes of paper (ISO 216; ANSI/ASME Y14.1)."""

    A4 = "a4"
    LETTER = "letter"


SIZES_MM = {Paper.A4: (210.0, 297.0), Paper.LETTER: (215.9, 279.4)}
"""Width and height."""


def lay_out(materials: Materials, paper: Paper = Paper.A4) -> tuple[Sheet, ...]:
    """All sheets of a report.

    Parameters
    ----------
    materials : Materials
        The pages, and their pictures.
    paper : Paper
        Size of the sheets.

    Returns
    -------
    tuple of Sheet
        The first page on one sheet where it can be made to fit; each page begins on a new one.

    Raises
    ------
    WornbandError
        Where the computer has no letters to print with.
    """
    if not QFontDatabase.families():
        raise WornbandError(
            "this computer has no font to print with", "install one (on Debian: fonts-dejavu-core)"
        )
    sheets: list[Sheet] = []
    for number, page in enumerate(materials.pages.pages):
        sheets += _page_sheets(page, materials, paper, first=number == 0)
    return tuple(_with_foot(sheet, materials, place, len(sheets)) for place, sheet in enumerate(sheets, 1))


def _page_sheets(page: Page, materials: Materials, paper: Paper, first: bool) -> list[Sheet]:
    made: list[Sheet] = []
    # What fits on one sheet at no scale goes on over the next ones at the scale of the evidence.
    for scale in (*_FIT, _FIT[1]) if first else (_FIT[1],):
        flow = _Layout(_metrics(paper, scale), materials)
        flow.head(page, first)
        for place, block in enumerate(page.blocks):
            flow.block(block, page.blocks[place + 1] if place + 1 < len(page.blocks) else None)
        made = flow.finished()
        if len(made) == 1:
            return made
    return made


def _metrics(paper: Paper, scale: float) -> Metrics:
    width, height = (UNITS_A_MM * side for side in SIZES_MM[paper])
    margin = UNITS_A_MM * _MARGIN_MM
    top, bottom = UNITS_A_MM * _TOP_MM, height - UNITS_A_MM * _BOTTOM_MM
    return Metrics(width, height, margin, width - margin, top, bottom, scale)


def _with_foot(sheet: Sheet, materials: Materials, number: int, count: int) -> Sheet:
    """The sheet with the line at its foot: which capture, and which sheet of how many."""
    metrics = replace(_metrics(Paper.A4, 1.0), width=sheet.width, height=sheet.height)
    right = sheet.width - metrics.left
    y = sheet.height - UNITS_A_MM * (_BOTTOM_MM - 3.0)
    font = report_font(metrics.points(7.0))
    count_text = laid_out(materials.pages.sheet.format(page=number, pages=count), font, metrics.mm(40.0))
    wide = count_text.width
    left_text = laid_out(materials.pages.footer, font, right - metrics.left - wide - metrics.mm(4.0))
    own = Flow(replace(metrics, top=y, bottom=sheet.height))
    own.y = y + metrics.mm(1.2)
    own.add(Rule(metrics.left, y, right, y, 6.0, PALE_RULE))
    own.lines([(left_text, metrics.left), (count_text, right - wide)])
    return replace(sheet, items=(*sheet.items, *own.sheets[0]))


class _Layout(Flow):
    """A flow that knows every block."""

    def __init__(self, metrics: Metrics, materials: Materials) -> None:
        super().__init__(metrics)
        self._materials = materials
        self._makers: dict[type, Callable[[Any], None]] = {
            Heading: self._heading,
            Paragraph: self._paragraph,
            Facts: self._facts,
            Items: self._items,
            Boxes: self._boxes,
            Grid: self._grid,
            Picture: self._picture,
            Photos: self._photos,
            Signatures: self._signatures,
        }

    def block(self, block: Block, after: Block | None) -> None:
        """Place a block; a heading stays with the first lines of what follows it."""
        if isinstance(block, Heading):
            self.need(self.metrics.mm(10.0) + self._first_lines(after))
        self._makers[type(block)](block)

    def head(self, page: Page, first: bool) -> None:
        """The title, who made it, and what this page is."""
        metrics, pages = self.metrics, self._materials.pages
        logo = self._materials.images.get(pages.workshop.logo) if first else None
        right = self._logo(logo) if logo is not None else metrics.right
        font = report_font(metrics.points(_TITLE if first else 11.0), bold=True)
        start = self.y
        self.lines([(laid_out(pages.title, font, right - metrics.left), metrics.left)])
        if first and (pages.workshop.name or pages.workshop.lines):
            words = " · ".join(part for part in (pages.workshop.name, *pages.workshop.lines) if part)
            small = report_font(metrics.points(_SMALL + 0.5))
            self.lines([(laid_out(words, small, right - metrics.left), metrics.left)])
        if logo is not None:
            self.y = max(self.y, start + self._logo_size(logo)[1])
        self.y += metrics.mm(1.0)
        self.add(Rule(metrics.left, self.y, metrics.right, self.y, 16.0, INK_RULE))
        self.y += metrics.mm(1.5)
        if not first:
            self.text(page.title, _HEADING + 2.0, bold=True)

    def _logo_size(self, logo: Image) -> tuple[float, float]:
        most_wide, most_high = UNITS_A_MM * 45.0, UNITS_A_MM * 16.0
        factor = min(most_wide / logo.width, most_high / logo.height)
        return logo.width * factor, logo.height * factor

    def _logo(self, logo: Image) -> float:
        """Put the logo at the upper right; the right end of what may stand beside it."""
        wide, high = self._logo_size(logo)
        self.add(Shown(_decoded(logo), self.metrics.right - wide, self.y, wide, high))
        return self.metrics.right - wide - UNITS_A_MM * 5.0

    def _first_lines(self, block: Block | None) -> float:
        """Height that a heading wants below it."""
        if isinstance(block, Picture):
            return Drawn(block.drawing, 0.0, 0.0, self.metrics.body).height
        return self.metrics.mm(40.0 if isinstance(block, Photos) else 9.0)

    def _heading(self, block: Heading) -> None:
        self.gap(self.metrics.mm(2.2))
        self.text(block.text, _HEADING, bold=True, keep=True)

    def _paragraph(self, block: Paragraph) -> None:
        metrics = self.metrics
        if block.style is Style.LEAD:
            self._lead(block.text)
            return
        self.gap(metrics.mm(0.5))
        size = _SMALL if block.style is Style.SMALL else _BODY
        self.text(block.text, size, keep=len(block.text) < _KEPT_LETTERS)

    def _lead(self, text: str) -> None:
        """A framed sentence; one that is longer than a sheet goes without its frame."""
        metrics, inset = self.metrics, self.metrics.mm(2.0)
        font = report_font(metrics.points(_LEAD), bold=True)
        made = laid_out(text, font, metrics.body - 2 * inset)
        whole = made.height + 2 * inset
        self.gap(metrics.mm(1.0))
        self.need(whole)
        if whole > self.room:
            self.lines([(made, metrics.left + inset)])
            return
        self.add(Frame(metrics.left, self.y, metrics.body, whole, 16.0))
        self.y += inset
        self.lines([(made, metrics.left + inset)])
        self.y += inset + metrics.mm(1.0)

    def _facts(self, block: Facts) -> None:
        """Two pairs a line where all values are short, else one."""
        metrics = self.metrics
        name_font, font = report_font(metrics.points(_SMALL + 0.5)), report_font(metrics.points(_BODY - 0.5))
        longest = max(laid_out(name, name_font, 1e6).width for name, _ in block.rows)
        name_width = min(longest + metrics.mm(2.5), 0.35 * metrics.body)
        half = 0.5 * metrics.body
        room = half - name_width - metrics.mm(2.0)
        fits = all(laid_out(value, font, 1e6).width <= room for _, value in block.rows)
        columns = 2 if fits and len(block.rows) > 1 else 1
        room = room if columns == 2 else metrics.body - name_width
        self.gap(metrics.mm(0.6))
        for first in range(0, len(block.rows), columns):
            texts: list[tuple[Text, float]] = []
            for column, (name, value) in enumerate(block.rows[first : first + columns]):
                left = metrics.left + column * half
                texts.append((laid_out(name, name_font, name_width), left))
                texts.append((laid_out(value, font, room), left + name_width))
            self._row(texts)

    def _row(self, texts: Sequence[tuple[Text, float]], again: Callable[[], None] | None = None) -> None:
        """Texts beside each other, kept on one sheet where they fit on one."""
        tall = max(made.height for made, _ in texts)
        if tall > self.room and not self.fresh and tall <= 0.5 * self.metrics.bottom:
            self.break_sheet()
            if again is not None:
                again()
        self.lines(texts, again)

    def _items(self, block: Items) -> None:
        metrics = self.metrics
        font = report_font(metrics.points(_BODY - 1.0))
        inset = metrics.mm(3.5)
        for item in block.items:
            made = laid_out(item, font, metrics.body - inset)
            self._row([(laid_out("•", font, inset), metrics.left), (made, metrics.left + inset)])
            self.gap(metrics.mm(0.3))

    def _boxes(self, block: Boxes) -> None:
        metrics = self.metrics
        font = report_font(metrics.points(_BODY))
        inset = metrics.mm(5.5)
        for text, done in block.items:
            made = laid_out(text, font, metrics.body - inset)
            self.gap(metrics.mm(0.6))
            self.need(made.height)
            side = 0.62 * made.heights[0]
            self.add(Frame(metrics.left, self.y + 0.22 * made.heights[0], side, side, 10.0, done))
            self.lines([(made, metrics.left + inset)])

    def _grid(self, block: Grid) -> None:
        metrics = self.metrics
        gap = metrics.mm(2.0)
        whole = metrics.body - gap * (len(block.shares) - 1)
        widths = _shared(whole, block.shares, [self._longest_word(head) for head in block.table.heads])
        places = [metrics.left + sum(widths[:n]) + gap * n for n in range(len(widths))]
        heads = self._cells(block.table.heads, widths, places, bold=True)

        def say_heads() -> None:
            self.lines(heads)
            self.y += metrics.mm(0.4)
            self.add(Rule(metrics.left, self.y, metrics.right, self.y, 10.0, INK_RULE))
            self.y += metrics.mm(0.4)

        self.gap(metrics.mm(1.2))
        self.need(metrics.mm(14.0))
        say_heads()
        for row in block.table.rows:
            self._row(self._cells(row, widths, places), say_heads)
            self.y += metrics.mm(0.4)
            self.add(Rule(metrics.left, self.y, metrics.right, self.y, 5.0, PALE_RULE))
            self.y += metrics.mm(0.4)
        self.y += metrics.mm(0.6)

    def _longest_word(self, head: str) -> float:
        """Width that a column's head needs so that none of its words is broken."""
        font = report_font(self.metrics.points(_SMALL), bold=True)
        return max((laid_out(word, font, 1e6).width for word in head.split()), default=0.0)

    def _cells(
        self, texts: Sequence[str], widths: Sequence[float], places: Sequence[float], bold: bool = False
    ) -> list[tuple[Text, float]]:
        font = report_font(self.metrics.points(_SMALL), bold=bold)
        return [
            (laid_out(text, font, width), place)
            for text, width, place in zip(texts, widths, places, strict=True)
        ]

    def _picture(self, block: Picture) -> None:
        metrics = self.metrics
        caption = laid_out(block.caption, report_font(metrics.points(_SMALL)), metrics.body)
        self.gap(metrics.mm(1.0))
        placed = Drawn(block.drawing, metrics.left, self.y, metrics.body)
        self.need(placed.height + caption.height)
        self.add(replace(placed, y=self.y))
        self.y += placed.height
        self.lines([(caption, metrics.left)])

    def _photos(self, block: Photos) -> None:
        """Three a row, each as high as its own shape asks for, up to six centimetres."""
        metrics = self.metrics
        there = [photo for photo in block.photos if photo.path in self._materials.images]
        gap, font = metrics.mm(4.0), report_font(metrics.points(_SMALL))
        wide = (metrics.body - 2 * gap) / 3
        for first in range(0, len(there), 3):
            row = there[first : first + 3]
            images = [self._materials.images[photo.path] for photo in row]
            sizes = [_fitted(image, wide, metrics.mm(60.0)) for image in images]
            captions = [laid_out(photo.caption, font, wide) for photo in row]
            tallest = max(high for _, high in sizes)
            self.gap(metrics.mm(1.5))
            self.need(tallest + max(caption.height for caption in captions))
            for place, (image, (across, high)) in enumerate(zip(images, sizes, strict=True)):
                x = metrics.left + place * (wide + gap)
                self.add(Shown(_decoded(image), x, self.y + tallest - high, across, high))
            self.y += tallest
            self.lines(
                [(caption, metrics.left + place * (wide + gap)) for place, caption in enumerate(captions)]
            )

    def _signatures(self, block: Signatures) -> None:
        metrics = self.metrics
        font = report_font(metrics.points(_SMALL))
        gap = metrics.mm(8.0)
        wide = (metrics.body - gap * (len(block.labels) - 1)) / len(block.labels)
        self.need(metrics.mm(16.0))
        self.y += metrics.mm(9.0)
        items: list[Placed] = []
        texts = []
        for place, label in enumerate(block.labels):
            x = metrics.left + place * (wide + gap)
            items.append(Rule(x, self.y, x + wide, self.y, 8.0, INK_RULE))
            texts.append((laid_out(label, font, wide), x))
        self.add(*items)
        self.lines(texts)


def _shared(whole: float, shares: Sequence[float], least: Sequence[float]) -> list[float]:
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


def _fitted(image: Image, wide: float, high: float) -> tuple[float, float]:
    factor = min(wide / image.width, high / image.height)
    return image.width * factor, image.height * factor


def _decoded(image: Image) -> QImage:
    return QImage.fromData(image.data)
