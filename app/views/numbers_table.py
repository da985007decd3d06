"""The numbers of a comparison: bands with their crossings, and every reading with its difference."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QResizeEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from analysis.captures.record_names import called, the_record
from analysis.comparison.checks import as_compared
from analysis.comparison.model import (
    FISHER,
    BandComparison,
    Change,
    CheckComparison,
    Compared,
    Comparison,
    Relation,
)
from analysis.comparison.words import change_name
from analysis.diagnosis.findings import Check
from analysis.intervals import Interval
from analysis.reports.checks import check_reading, decision_name
from analysis.reports.comparison_report import (
    chance_text,
    check_name,
    counts_text,
    difference_text,
    exceeds_text,
    how_tested_text,
)
from analysis.reports.quantities import NO_VALUE
from analysis.wording import Wording, say
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.views.pane import Pane

_ROW_PX, _AIR_PX = 22, 6
_LEAST_COLUMN_PX, _LEAST_NAME_PX, _MOST_NAME_PX = 60, 100, 170
_CELL_PX = 12  # what stands beside the words of a cell
_NARROW_PX, _SMALL_POINTS = 500, 8.0
_TONES = {
    Change.GONE: "good",
    Change.LESS: "unsure",
    Change.STILL_THERE: "bad",
    Change.MORE: "bad",
    Change.APPEARED: "bad",
    Change.NOT_SHOWN: "unsure",
}


class _Table(QTableView):
    """A table that tells when it has another width; what it lies in hears of that too early."""

    resized = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Tell it when all is in place."""
        super().resizeEvent(event)
        self.resized.emit()


class NumbersView(Pane):
    """A table; what is more than chance stands out, and each row says in its tip how it came about.

    Signals
    -------
    band_chosen(index)
        A band's row was picked, by its index in the comparison.
    """

    band_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Numbers"))
        self.setAccessibleName(self.tr("Numbers of both, with their difference"))
        self._palette = LIGHT
        self._comparison: Comparison | None = None
        self.model = QStandardItemModel(self)
        self.table = _Table()
        self.table.setObjectName("numbers")
        self.table.setModel(self.model)
        self.table.setAccessibleName(self.tr("Numbers of both, with their difference"))
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setShowGrid(False)
        self.table.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.table.setTabKeyNavigation(False)
        # In the middle: what tells a name from the next stands at its end.
        self.table.setTextElideMode(Qt.TextElideMode.ElideMiddle)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setMinimumSectionSize(_ROW_PX)
        self.table.verticalHeader().setDefaultSectionSize(_ROW_PX)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.table.horizontalHeader().setHighlightSections(False)
        self.table.selectionModel().currentRowChanged.connect(self._picked)
        self.table.resized.connect(self._fit_columns)
        self.table.horizontalHeader().sectionResized.connect(self._fit_names)
        self.set_content(self.table)
        self.show_empty(self.tr("Open a second capture to see what differs."))

    def show_comparison(self, comparison: Comparison | None, otherwise: str = "") -> None:
        """Show the numbers, or why there are none yet.

        Parameters
        ----------
        comparison : Comparison or None
        otherwise : str
            Why there is none.
        """
        self._comparison = comparison
        self.model.clear()
        if comparison is None:
            self.show_empty(otherwise or self.tr("Open a second capture to see what differs."))
            return
        first, second = comparison.titles
        heads = (self.tr("What"), said(first), said(second), self.tr("Difference"), self.tr("Beyond chance"))
        self.model.setHorizontalHeaderLabels(list(heads))
        for band in comparison.bands:
            self.model.appendRow(self._band_row(band, comparison))
        for check in comparison.checks:
            self.model.appendRow(self._check_row(check, comparison))
        self.table.horizontalHeader().setMinimumSectionSize(_LEAST_COLUMN_PX)
        self._fit_columns()
        self.show_content()

    def _fit_columns(self) -> None:
        """Names take what the figures leave; where that is too little to read, the table scrolls sideways."""
        header = self.table.horizontalHeader()
        self._fit_letters()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        figures = sum(header.sectionSize(place) for place in range(1, self.model.columnCount()))
        if self.model.columnCount() == 0:
            return
        least = self._least_name_px()
        if self.table.viewport().width() - figures >= least:
            header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        else:
            header.setSectionResizeMode(0, QHeaderView.ResizeMode.Fixed)
            header.resizeSection(0, least)
        self._fit_rows()

    def _fit_letters(self) -> None:
        """On a small screen small letters, as the readings of a marker have them."""
        font = self.font()
        if self.table.viewport().width() < _NARROW_PX:
            font.setPointSizeF(_SMALL_POINTS)
        if self.table.font().pointSizeF() == font.pointSizeF():
            return
        for part in (self.table, self.table.horizontalHeader()):
            part.setFont(font)
        for row in range(self.model.rowCount()):
            for item in (self.model.item(row, column) for column in range(self.model.columnCount())):
                if item.font().bold():
                    self._tint(item, "")

    def _least_name_px(self) -> int:
        """Width in which no word of a name is cut; the names wrap between their words."""
        metrics, rows = QFontMetrics(self.table.font()), range(self.model.rowCount())
        words = {word for row in rows for word in self.model.item(row).text().split()}
        longest = max((metrics.horizontalAdvance(word) for word in words), default=0) + _CELL_PX
        return min(max(longest, _LEAST_NAME_PX), _MOST_NAME_PX)

    def _fit_names(self, column: int, before_px: int, now_px: int) -> None:
        """Wrap the names anew: their column hears of another width after the table does."""
        if column == 0 and before_px != now_px:
            self._fit_rows()

    def _fit_rows(self) -> None:
        """A name that is too long for its column takes another line, with some air about it."""
        self.table.resizeRowsToContents()
        for row in range(self.model.rowCount()):
            if self.table.rowHeight(row) > _ROW_PX:
                self.table.setRowHeight(row, self.table.rowHeight(row) + _AIR_PX)

    def texts(self) -> list[list[str]]:
        """What the table says, row by row."""
        rows, columns = range(self.model.rowCount()), range(self.model.columnCount())
        return [[self.model.item(row, column).text() for column in columns] for row in rows]

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self.show_comparison(self._comparison, self.empty_text)

    def _band_row(self, band: BandComparison, comparison: Comparison) -> list[QStandardItem]:
        texts = (
            self.tr("Band {travel}").format(travel=_percent(band.travel)),
            said(counts_text(band.first)),
            said(counts_text(band.second)),
            said(change_name(band.change, comparison)),
            said(chance_text(band.p_value)),
        )
        lines = [said(reason) for reason in band.reasons]
        for title, side in zip(comparison.titles, (band.first, band.second), strict=True):
            lines.append(f"{said(title)}: {said(how_tested_text(side))}")
        lines.append(self.tr("Counts of crossings, tested by {test}").format(test=FISHER))
        row = _row(texts, "\n".join(lines))
        self._tint(row[3], _TONES[band.change] if comparison.relation is Relation.BEFORE_AFTER else "")
        self._tint(row[0], "")
        return row

    def _check_row(self, check: CheckComparison, comparison: Comparison) -> list[QStandardItem]:
        sides = as_compared(check)
        texts = (
            said(check_name(check, comparison)),
            *(said(check_reading(item)) if item is not None else self.tr("not taken") for item in sides),
            said(difference_text(check)),
            self._beyond(check),
        )
        compared = zip(sides, comparison.titles, (comparison.first, comparison.second), strict=True)
        limits = [
            f"{_whose(item, title, side)}: {said(decision_name(item))}"
            for item, title, side in compared
            if item is not None
        ]
        limits.append(self.tr("More than its uncertainty: {said}").format(said=said(exceeds_text(check))))
        row = _row(texts, "\n".join(limits))
        if check.exceeds and not check.worst_seen:
            self._tint(row[4], "bad")
        return row

    def _beyond(self, check: CheckComparison) -> str:
        """The answer in a word; the tip has all of it."""
        if check.exceeds is None:
            return NO_VALUE
        if check.worst_seen and check.exceeds:
            return self.tr("worst seen")
        return self.tr("yes") if check.exceeds else self.tr("no")

    def _tint(self, item: QStandardItem, tone: str) -> None:
        font = QFont(self.table.font())
        font.setBold(True)
        item.setFont(font)
        if tone:
            item.setForeground(QColor(getattr(self._palette, tone)))

    def _picked(self) -> None:
        row = self.table.currentIndex().row()
        if self._comparison is not None and 0 <= row < len(self._comparison.bands):
            self.band_chosen.emit(row)


def _percent(span: Interval) -> str:
    text = said(say("{start:.1f}–{stop:.1f} %", start=span.start, stop=span.stop))
    return text.replace(" %", "\N{NO-BREAK SPACE}%")


def _whose(check: Check, title: Wording, side: Compared) -> str:
    """The side, and the record that a check was read from where it was read from one."""
    if not check.record:
        return said(title)
    return f"{said(title)}, {said(called(the_record(check.record), side.called))}"


def _row(texts: tuple[str, ...], tip: str) -> list[QStandardItem]:
    items = [QStandardItem(text) for text in texts]
    for item in items:
        item.setToolTip(plain_tip(f"{texts[0]}\n{tip}"))
        item.setEditable(False)
    items[0].setAccessibleText(", ".join(texts))
    return items
