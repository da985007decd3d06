"""Every block of a report, placed down the sheets."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import zip_longest
from typing import Any

from PySide6.QtGui import QImage

from analysis.reports.pages import (
    Block,
    Boxes,
    Columns,
    Facts,
    Grid,
    Heading,
    Items,
    Paragraph,
    Photos,
    Picture,
    Signatures,
)
from app.reporting.flow import INK_RULE, PALE_RULE, Metrics, laid_out
from app.reporting.images import Image
from app.reporting.materials import Materials
from app.reporting.placed import Drawn, Rule, Shown, moved, report_font
from app.reporting.table_columns import cells, column_widths
from app.reporting.word_blocks import Sizes, WordBlocks

_GUTTER_MM = 6.0
_TALLER = 1.02
"""By how much columns grow until they hold everything."""


class Blocks(WordBlocks):
    """A flow that knows every block.

    Parameters
    ----------
    metrics : Metrics
        Of the sheets.
    sizes : Sizes
        Of the letters.
    materials : Materials
        For the photos and the logo.
    """

    def __init__(self, metrics: Metrics, sizes: Sizes, materials: Materials) -> None:
        super().__init__(metrics, sizes)
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
            Columns: self._columns,
        }

    def blocks(self, blocks: Sequence[Block]) -> None:
        """Place blocks, one below the other."""
        for block, after in zip_longest(blocks, blocks[1:]):
            self.block(block, after)

    def block(self, block: Block, after: Block | None) -> None:
        """Place a block; a heading stays with the first lines of what follows it."""
        if isinstance(block, Heading):
            self.need(self.metrics.mm(10.0) + self._first_lines(after))
        self._makers[type(block)](block)

    def _first_lines(self, block: Block | None) -> float:
        """Height that a heading wants below it."""
        if isinstance(block, Picture):
            return Drawn(block.drawing, 0.0, 0.0, self.metrics.body).height
        if isinstance(block, Items):  # one alone below its heading reads as all there is
            font = report_font(self.metrics.points(self._sizes.item))
            wide = self.metrics.body - self.metrics.points(10.0)
            return sum(laid_out(item, font, wide).height + self.metrics.mm(0.3) for item in block.items[:2])
        return self.metrics.mm(40.0 if isinstance(block, Photos) else 9.0)

    def _grid(self, block: Grid) -> None:
        metrics, size = self.metrics, self.metrics.points(self._sizes.small)
        plain, bold, gap = report_font(size), report_font(size, bold=True), metrics.mm(2.0)
        widths = column_widths(block, metrics.body, gap, plain, bold)
        places = [metrics.left + sum(widths[:n]) + gap * n for n in range(len(widths))]
        heads = cells(block.table.heads, widths, places, bold)

        def say_heads() -> None:
            self.lines(heads)
            self.y += metrics.mm(0.4)
            self.add(Rule(metrics.left, self.y, metrics.right, self.y, 10.0, INK_RULE))
            self.y += metrics.mm(0.4)

        self.gap(metrics.mm(1.2))
        self.need(metrics.mm(14.0))
        say_heads()
        for row in block.table.rows:
            self._row(cells(row, widths, places, plain), say_heads)
            self.y += metrics.mm(0.4)
            self.add(Rule(metrics.left, self.y, metrics.right, self.y, 5.0, PALE_RULE))
            self.y += metrics.mm(0.4)
        self.y += metrics.mm(0.6)

    def _picture(self, block: Picture) -> None:
        metrics = self.metrics
        caption = laid_out(block.caption, report_font(metrics.points(self._sizes.small)), metrics.body)
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
        gap, font = metrics.mm(4.0), report_font(metrics.points(self._sizes.small))
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
                self.add(Shown(decoded(image), x, self.y + tallest - high, across, high))
            self.y += tallest
            self.lines(
                [(caption, metrics.left + place * (wide + gap)) for place, caption in enumerate(captions)]
            )

    def _columns(self, block: Columns) -> None:
        """Two columns, down each sheet and on to the next; as high as each other on the last."""
        self.gap(self.metrics.mm(1.0))
        self.need(max(self.metrics.mm(30.0), self._picture_height(block.blocks[0])))
        placed = self._balanced(block.blocks)
        for number, items in enumerate(placed.sheets):
            if number and number % 2 == 0:
                self.break_sheet()
            self.add(*(moved(item, (number % 2) * placed.step) for item in items))
        self.y = max(placed.last_ends)

    def _picture_height(self, first: Block) -> float:
        """Of a picture at the top of a column, with its caption; nought for anything else."""
        if not isinstance(first, Picture):
            return 0.0
        wide = 0.5 * (self.metrics.body - self.metrics.mm(_GUTTER_MM))
        caption = laid_out(first.caption, report_font(self.metrics.points(self._sizes.small)), wide)
        return Drawn(first.drawing, 0.0, 0.0, wide).height + caption.height + self.metrics.mm(1.0)

    def _balanced(self, blocks: Sequence[Block]) -> _TwoColumns:
        """On as few sheets as it takes, and on the last of them no lower than it must be."""
        full = self._flowing(blocks, 1, self.metrics.bottom)
        sheets = full.sheet_count
        top = full.top_of(2 * (sheets - 1))
        height = 0.5 * sum(end - top for end in full.last_ends)
        while top + height < self.metrics.bottom:
            made = self._flowing(blocks, sheets, top + height)
            if made.sheet_count == sheets and max(made.last_ends) <= top + height:
                return made
            height *= _TALLER
        return full

    def _flowing(self, blocks: Sequence[Block], sheets: int, bottom: float) -> _TwoColumns:
        """Blocks in columns from here; from the given sheet on they end at a place of their own."""
        gap = self.metrics.mm(_GUTTER_MM)
        wide = 0.5 * (self.metrics.body - gap)
        narrow = replace(self.metrics, right=self.metrics.left + wide, top=self.y)
        bottoms = (*((self.metrics.bottom,) * (sheets - 1)), bottom)
        made = _TwoColumns(narrow, self._sizes, self._materials, self.top_of(len(self.sheets)), bottoms)
        made.step, made.foot = wide + gap, self.metrics.bottom
        made.blocks(blocks)
        made.ends.append(made.y)
        return made


class _TwoColumns(Blocks):
    """Columns in the place of sheets, all at the left: whoever takes them moves every second one across.

    Attributes
    ----------
    step : float
        From the left edge of one column to that of the next.
    foot : float
        Where the sheet ends, however high the columns are.
    ends : list of float
        Where each column ends.
    """

    def __init__(
        self, metrics: Metrics, sizes: Sizes, materials: Materials, further: float, bottoms: Sequence[float]
    ) -> None:
        super().__init__(replace(metrics, bottom=bottoms[0]), sizes, materials)
        self._further, self._bottoms = further, bottoms
        self.step, self.foot = 0.0, bottoms[0]
        self.ends: list[float] = []

    @property
    def lowest(self) -> float:
        """What fits on the whole sheet is not cut by columns that are tried shorter: these get taller."""
        return self.foot

    @property
    def sheet_count(self) -> int:
        """How many sheets the columns stand on."""
        return (len(self.sheets) + 1) // 2

    @property
    def last_ends(self) -> list[float]:
        """Where the columns of the last sheet end."""
        return self.ends[2 * (self.sheet_count - 1) :]

    def top_of(self, sheet: int) -> float:
        """The first two stand where the columns begin, the others at the top of a sheet."""
        return self.metrics.top if sheet < 2 else self._further

    def break_sheet(self) -> None:
        """Go on in the next column."""
        self.ends.append(self.y)
        super().break_sheet()
        place = min((len(self.sheets) - 1) // 2, len(self._bottoms) - 1)
        self.metrics = replace(self.metrics, bottom=self._bottoms[place])


def _fitted(image: Image, wide: float, high: float) -> tuple[float, float]:
    factor = min(wide / image.width, high / image.height)
    return image.width * factor, image.height * factor


def decoded(image: Image) -> QImage:
    """A picture as Qt paints it."""
    return QImage.fromData(image.data)
