"""A report laid out on sheets of paper: what the window previews is what is printed and stored as PDF."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from PySide6.QtGui import QFontDatabase

from analysis.errors import WornbandError
from analysis.reports.pages import Page
from app.reporting.blocks import Blocks, decoded
from app.reporting.flow import INK_RULE, PALE_RULE, Flow, Metrics, laid_out
from app.reporting.images import Image
from app.reporting.materials import Materials
from app.reporting.placed import UNITS_A_MM, Line, Rule, Sheet, Shown, report_font
from app.reporting.word_blocks import Sizes

_TOP_MM, _BOTTOM_MM = 13.0, 15.0
_LEAST_SHARE = 0.93


@dataclass(frozen=True, slots=True)
class _Look:
    """Letters and margin of a page.

    Parameters
    ----------
    sizes : Sizes
        Of its letters.
    margin_mm : float
        At both sides.
    scales : tuple of float
        How far it may shrink to stay on one sheet, in turn; the smallest letters are then 6.2 points high.
    usual : float
        The scale where it needs more sheets than one.
    """

    sizes: Sizes
    margin_mm: float
    scales: tuple[float, ...]
    usual: float


_CUSTOMER = _Look(
    Sizes(body=9.5, small=7.5, lead=11.5, heading=9.5, title=14.0, item=8.5, name=8.0, value=9.0, pairs=2),
    margin_mm=16.0,
    scales=(1.0, 0.94, 0.88, 0.83),
    usual=0.94,
)
_EVIDENCE = _Look(
    Sizes(body=7.5, small=7.0, lead=10.0, heading=8.0, title=11.0, item=7.0, name=7.0, value=7.0, pairs=3),
    margin_mm=13.0,
    scales=(1.0, 0.94, 0.88),
    usual=1.0,
)


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
        Each page on one sheet where it can be made to fit; each begins on a new one.

    Raises
    ------
    WornbandError
        Where the computer has no letters to print with.
    """
    if not QFontDatabase.families():
        raise WornbandError(
            "this computer has no font to print with", "install one (on Debian: fonts-dejavu-core)"
        )
    sheets: list[tuple[Sheet, Metrics]] = []
    for number, page in enumerate(materials.pages.pages):
        made = _page_sheets(page, materials, paper, first=number == 0)
        begun = [(replace(sheet, begins=page.title), metrics) for sheet, metrics in made[:1]]
        sheets += [*begun, *made[1:]]
    return tuple(
        _with_foot(sheet, metrics, materials, f"{place}", f"{len(sheets)}")
        for place, (sheet, metrics) in enumerate(sheets, 1)
    )


def _page_sheets(page: Page, materials: Materials, paper: Paper, first: bool) -> list[tuple[Sheet, Metrics]]:
    """Sheets of one page, each with its metrics."""
    look = _CUSTOMER if first else _EVIDENCE
    made: dict[float, list[tuple[Sheet, Metrics]]] = {}
    for scale in dict.fromkeys((*look.scales, look.usual)):
        metrics = _metrics(paper, scale, look.margin_mm)
        flow = _PageFlow(metrics, materials, page, first=first)
        flow.blocks(page.blocks)
        made[scale] = [(sheet, metrics) for sheet in flow.finished()]
        if len(made[scale]) == 1:
            return made[scale]
    # What fits on one sheet at no scale goes on over the next ones in letters of its usual size, or of the
    # next smaller one where that saves a sheet: a last sheet with a line or two is no use to anybody.
    near = [scale for scale in made if _LEAST_SHARE * look.usual <= scale <= look.usual]
    return made[min(near, key=lambda scale: (len(made[scale]), -scale))]


def _metrics(paper: Paper, scale: float, margin_mm: float) -> Metrics:
    width, height = (UNITS_A_MM * side for side in SIZES_MM[paper])
    margin = UNITS_A_MM * margin_mm
    top, bottom = UNITS_A_MM * _TOP_MM, height - UNITS_A_MM * _BOTTOM_MM
    return Metrics(width, height, margin, width - margin, top, bottom, scale)


def _with_foot(sheet: Sheet, of_page: Metrics, materials: Materials, number: str, count: str) -> Sheet:
    """The sheet with the line at its foot: which capture, and which sheet of how many."""
    metrics = replace(of_page, scale=1.0)
    right = metrics.right
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


class _PageFlow(Blocks):
    """One page of the report over as many sheets as it needs; each says at its top which page that is."""

    def __init__(self, metrics: Metrics, materials: Materials, page: Page, *, first: bool) -> None:
        sizes = (_CUSTOMER if first else _EVIDENCE).sizes
        super().__init__(metrics, sizes, materials)
        words = materials.pages.continued.format(title=page.title)
        font = report_font(metrics.points(sizes.heading), bold=True)
        self._continued = laid_out(words, font, metrics.body)
        self._head(page, first)
        self.begin = self.y

    def top_of(self, sheet: int) -> float:
        """Below what the head of a further sheet takes."""
        return self.metrics.top + (self._continued.height + self.metrics.mm(2.0) if sheet else 0.0)

    def break_sheet(self) -> None:
        """Go on at the top of a new sheet, below the words that say what goes on there."""
        super().break_sheet()
        metrics, y = self.metrics, self.metrics.top
        for number, tall in enumerate(self._continued.heights):
            self.add(Line(self._continued.layout, number, metrics.left, y))
            y += tall
        self.add(Rule(metrics.left, y + metrics.mm(0.5), metrics.right, y + metrics.mm(0.5), 10.0, INK_RULE))

    def _head(self, page: Page, first: bool) -> None:
        """The title, who made it, and what this page is."""
        metrics, pages, sizes = self.metrics, self._materials.pages, self._sizes
        logo = self._materials.images.get(pages.workshop.logo) if first else None
        right = self._logo(logo) if logo is not None else metrics.right
        title = pages.title if first else f"{pages.title} · {page.title}"
        font = report_font(metrics.points(sizes.title), bold=True)
        start = self.y
        self.lines([(laid_out(title, font, right - metrics.left), metrics.left)])
        if first and (pages.workshop.name or pages.workshop.lines):
            words = " · ".join(part for part in (pages.workshop.name, *pages.workshop.lines) if part)
            small = report_font(metrics.points(sizes.name))
            self.lines([(laid_out(words, small, right - metrics.left), metrics.left)])
        if logo is not None:
            self.y = max(self.y, start + _logo_size(logo)[1])
        self.y += metrics.mm(1.0)
        self.add(Rule(metrics.left, self.y, metrics.right, self.y, 16.0, INK_RULE))
        self.y += metrics.mm(1.5)

    def _logo(self, logo: Image) -> float:
        """Put the logo at the upper right; the right end of what may stand beside it."""
        wide, high = _logo_size(logo)
        self.add(Shown(decoded(logo), self.metrics.right - wide, self.y, wide, high))
        return self.metrics.right - wide - UNITS_A_MM * 5.0


def _logo_size(logo: Image) -> tuple[float, float]:
    most_wide, most_high = UNITS_A_MM * 45.0, UNITS_A_MM * 16.0
    factor = min(most_wide / logo.width, most_high / logo.height)
    return logo.width * factor, logo.height * factor
