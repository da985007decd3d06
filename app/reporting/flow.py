"""Lines and rows flow down a sheet and on to the next; nothing is cut in two that fits on one."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFont, QTextLayout, QTextOption

from app.printable import printable
from app.reporting.placed import Line, Placed, Sheet, report_font

INK_RULE, PALE_RULE = "#22262b", "#b4b7bc"


@dataclass(frozen=True, slots=True)
class Metrics:
    """Sizes of one report page in units, scaled together.

    Parameters
    ----------
    width, height : float
        Of the sheet.
    left, right, top, bottom : float
        Where the body ends.
    scale : float
        Of the letters and gaps; 1 unless a page is made to fit.
    """

    width: float
    height: float
    left: float
    right: float
    top: float
    bottom: float
    scale: float = 1.0

    def points(self, size: float) -> float:
        """A size of letters in points, in units."""
        return size * self.scale * 40.0 * 25.4 / 72.0

    def mm(self, length: float) -> float:
        """A gap in millimetres, in units."""
        return length * self.scale * 40.0

    @property
    def body(self) -> float:
        """Width between the margins."""
        return self.right - self.left


@dataclass(frozen=True, slots=True)
class Text:
    """A laid-out text: its lines' heights, one below the other."""

    layout: QTextLayout
    heights: tuple[float, ...]

    @property
    def height(self) -> float:
        """Of all lines."""
        return sum(self.heights)

    @property
    def width(self) -> float:
        """What the first line's letters take."""
        return self.layout.lineAt(0).naturalTextWidth()


def laid_out(text: str, font: QFont, width: float) -> Text:
    """Break a text into lines of a width; a word that is longer breaks anywhere.

    The direction of each paragraph is that of its own first letter. What would act on a reader's program is
    written as a code.
    """
    clean = "\u2028".join(printable(line) for line in text.splitlines()) or " "
    layout = QTextLayout(clean, font)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    option.setUseDesignMetrics(True)
    option.setTextDirection(Qt.LayoutDirection.LayoutDirectionAuto)
    layout.setTextOption(option)
    heights: list[float] = []
    layout.beginLayout()
    while (line := layout.createLine()).isValid():
        line.setLineWidth(max(width, 1.0))
        line.setPosition(QPointF(0.0, 0.0))
        heights.append(line.height())
    layout.endLayout()
    return Text(layout, tuple(heights))


class Flow:
    """Places blocks down the body, sheet after sheet.

    Parameters
    ----------
    metrics : Metrics
        Of the sheets.
    """

    def __init__(self, metrics: Metrics) -> None:
        self.metrics = metrics
        self.sheets: list[list[Placed]] = [[]]
        self.begin = self.y = metrics.top

    @property
    def room(self) -> float:
        """Height that is left on this sheet."""
        return self.metrics.bottom - self.y

    @property
    def fresh(self) -> bool:
        """Whether nothing stands on this sheet yet."""
        return self.y <= self.begin

    def add(self, *items: Placed) -> None:
        """Put something on this sheet where it says."""
        self.sheets[-1].extend(items)

    def break_sheet(self) -> None:
        """Go on at the top of a new sheet."""
        self.sheets.append([])
        self.begin = self.y = self.top_of(len(self.sheets) - 1)

    def top_of(self, sheet: int) -> float:
        """Where a sheet, counted from nought, begins."""
        return self.metrics.top

    @property
    def lowest(self) -> float:
        """Where a sheet ends at the lowest."""
        return self.metrics.bottom

    def gap(self, height: float) -> None:
        """Leave some room, but none at the top of a sheet."""
        if not self.fresh:
            self.y += height

    def need(self, height: float) -> None:
        """Go to a new sheet where so much does not fit here; what fits on none begins here."""
        there = self.lowest - self.top_of(len(self.sheets))
        if height > self.room and not self.fresh and height <= there:
            self.break_sheet()

    def text(self, text: str, size: float, *, bold: bool = False, keep: bool = False) -> None:
        """A paragraph over the whole body."""
        font = report_font(self.metrics.points(size), bold=bold)
        made = laid_out(text, font, self.metrics.body)
        if keep:
            self.need(made.height)
        self.lines([(made, self.metrics.left)])

    def lines(self, texts: Sequence[tuple[Text, float]], again: Callable[[], None] | None = None) -> None:
        """Texts beside each other, line by line; each with its place across.

        Parameters
        ----------
        texts : sequence of (Text, float)
            What, and where it begins across.
        again : callable or None
            Called at the top of a new sheet, to say again what the columns are.
        """
        tallest = max((made.height for made, _ in texts), default=0.0)
        if tallest <= self.room:  # text by text, so that a reader of the PDF meets whole cells
            for made, x in texts:
                y = self.y
                for number, tall in enumerate(made.heights):
                    self.add(Line(made.layout, number, x, y))
                    y += tall
            self.y += tallest
            return
        count = max(len(made.heights) for made, _ in texts)
        for number in range(count):
            tall = max(made.heights[number] for made, _ in texts if number < len(made.heights))
            if tall > self.room and not self.fresh:
                self.break_sheet()
                if again is not None:
                    again()
            for made, x in texts:
                if number < len(made.heights):
                    self.add(Line(made.layout, number, x, self.y))
            self.y += tall

    def finished(self) -> list[Sheet]:
        """The sheets so far."""
        return [Sheet(self.metrics.width, self.metrics.height, tuple(items)) for items in self.sheets]
