"""The blocks of a report that are words alone: headings, paragraphs, facts, lists, lines to sign on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from analysis.reports.pages import Boxes, Facts, Heading, Items, Paragraph, Signatures, Style
from app.reporting.flow import INK_RULE, Flow, Metrics, Text, laid_out
from app.reporting.placed import Frame, Placed, Rule, report_font

_KEPT_LETTERS = 600
"""A paragraph that is no longer than this stays on one sheet."""


@dataclass(frozen=True, slots=True)
class Sizes:
    """Sizes of letters in points, and how many pairs of a name and a value stand on a line at most."""

    body: float
    small: float
    lead: float
    heading: float
    title: float
    item: float
    name: float
    value: float
    pairs: int


class WordBlocks(Flow):
    """A flow that knows the blocks of words.

    Parameters
    ----------
    metrics : Metrics
        Of the sheets.
    sizes : Sizes
        Of the letters.
    """

    def __init__(self, metrics: Metrics, sizes: Sizes) -> None:
        super().__init__(metrics)
        self._sizes = sizes

    def _heading(self, block: Heading) -> None:
        self.gap(self.metrics.mm(2.2))
        self.text(block.text, self._sizes.heading, bold=True, keep=True)

    def _paragraph(self, block: Paragraph) -> None:
        metrics = self.metrics
        if block.style is Style.LEAD:
            self._lead(block.text)
            return
        self.gap(metrics.mm(0.5))
        size = self._sizes.small if block.style is Style.SMALL else self._sizes.body
        self.text(block.text, size, keep=len(block.text) < _KEPT_LETTERS)

    def _lead(self, text: str) -> None:
        """A framed sentence; one that is longer than a sheet goes without its frame."""
        metrics, inset = self.metrics, self.metrics.mm(2.0)
        font = report_font(metrics.points(self._sizes.lead), bold=True)
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
        """As many pairs a line as all values leave room for, up to the number that the sizes say."""
        metrics, sizes = self.metrics, self._sizes
        name_font, font = report_font(metrics.points(sizes.name)), report_font(metrics.points(sizes.value))
        longest = max(laid_out(name, name_font, 1e6).width for name, _ in block.rows)
        widest = max(laid_out(value, font, 1e6).width for _, value in block.rows)
        name_width = min(longest + metrics.mm(2.5), 0.35 * metrics.body)
        fitting = int(metrics.body / (name_width + widest + metrics.mm(2.0)))
        pairs = max(1, min(fitting, sizes.pairs, len(block.rows)))
        share = metrics.body / pairs
        room = share - name_width - (metrics.mm(2.0) if pairs > 1 else 0.0)
        self.gap(metrics.mm(0.6))
        for first in range(0, len(block.rows), pairs):
            texts: list[tuple[Text, float]] = []
            for column, (name, value) in enumerate(block.rows[first : first + pairs]):
                left = metrics.left + column * share
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
        font = report_font(metrics.points(self._sizes.item))
        inset = metrics.points(10.0)
        for item in block.items:
            made = laid_out(item, font, metrics.body - inset)
            self._row([(laid_out("•", font, inset), metrics.left), (made, metrics.left + inset)])
            self.gap(metrics.mm(0.3))

    def _boxes(self, block: Boxes) -> None:
        metrics = self.metrics
        font = report_font(metrics.points(self._sizes.body))
        inset = metrics.mm(5.5)
        for text, done in block.items:
            made = laid_out(text, font, metrics.body - inset)
            self.gap(metrics.mm(0.6))
            self.need(made.height)
            side = 0.62 * made.heights[0]
            self.add(Frame(metrics.left, self.y + 0.22 * made.heights[0], side, side, 10.0, done))
            self.lines([(made, metrics.left + inset)])

    def _signatures(self, block: Signatures) -> None:
        metrics = self.metrics
        font = report_font(metrics.points(self._sizes.small))
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
