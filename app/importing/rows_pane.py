"""First rows: what stands in the file, dimmed, and beside it how it is understood."""

from __future__ import annotations

import math
from collections.abc import Mapping

from PySide6.QtCore import (
    QAbstractTableModel,
    QCoreApplication,
    QModelIndex,
    QPersistentModelIndex,
    QRectF,
    Qt,
)
from PySide6.QtGui import QColor, QPainter, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from analysis.importing.needs import Need
from analysis.importing.seen import ColumnSeen, Preview
from analysis.reports.quantities import NO_VALUE
from analysis.wording import say
from app.drawing.numbers import volts
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.importing.draft import OUT, TIME
from app.importing.trouble_line import TroubleLine
from app.importing.words import use_names
from app.language import said
from app.trouble import as_sentence
from app.views.pane import Pane
from app.views.press_row import text_line

RAW = Qt.ItemDataRole.UserRole + 1
UNDERSTOOD = Qt.ItemDataRole.UserRole + 2
HEAD = Qt.ItemDataRole.UserRole + 3

_COLUMN_PX, _ROW_PX = 140, 20
_MOST_TEXT = 200  # letters of a cell that are shown
_MOST_NOTES = 4
_Index = QModelIndex | QPersistentModelIndex


def _tr(text: str) -> str:
    return QCoreApplication.translate("rows_pane", text)


class RowsModel(QAbstractTableModel):
    """Lines of a file, cell by cell; understood values beside those that are samples."""

    def __init__(self) -> None:
        super().__init__()
        self._seen: Preview | None = None
        self._uses: dict[str, str] = {}
        self._by_cell: dict[int, tuple[int, ColumnSeen]] = {}
        self._width = 0

    def show_preview(self, seen: Preview | None, uses: Mapping[str, str]) -> None:
        """Show the lines of a file, or none, with what each column is used for."""
        self.beginResetModel()
        self._seen = seen
        self._uses = dict(uses)
        columns = seen.columns if seen is not None else ()
        self._by_cell = {item.cell: (place, item) for place, item in enumerate(columns)}
        self._width = max((len(line) for line in seen.lines), default=0) if seen is not None else 0
        self._width = min(max(self._width, len(columns)), 300)
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        """The lines that are shown."""
        return 0 if parent.isValid() or self._seen is None else len(self._seen.lines)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        """The cells of the longest of them."""
        return 0 if parent.isValid() else self._width

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A cell: as text for a screen reader, raw and understood for whoever paints."""
        if self._seen is None or not index.isValid():
            return None
        row, cell = index.row(), index.column()
        if role == HEAD:
            return row < self._seen.head_lines
        line = self._seen.lines[row]
        raw = line[cell][:_MOST_TEXT] if cell < len(line) else ""
        if role == RAW:
            return raw
        understood = self._understood(row, cell)
        if role == UNDERSTOOD:
            return understood
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{raw} → {understood}" if understood else raw
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(f"{raw} → {understood}" if understood else raw)
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        """A column's name and use; the number of a line."""
        if self._seen is None:
            return None
        if orientation == Qt.Orientation.Vertical:
            if role != Qt.ItemDataRole.DisplayRole:
                return None
            before = max((self._seen.text.head_lines or 0) - self._seen.head_lines, 0)
            return str(before + section + 1)
        found = self._by_cell.get(section)
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(found[1].name) if found else None
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        if found is None:
            return "–"
        name = " ".join(found[1].name.split())[:40]
        return f"{name}\n{use_names()[self._uses.get(found[1].name, OUT)]}"

    def _understood(self, row: int, cell: int) -> str:
        assert self._seen is not None  # `data` has looked
        place = row - self._seen.head_lines
        if place < 0 or cell not in self._by_cell or place >= len(self._seen.numbers):
            return ""
        at, column = self._by_cell[cell]
        use = self._uses.get(column.name, OUT)
        if use == OUT or self._seen.needs(Need.FULL_SCALE):
            return ""
        value = float(self._seen.numbers[place, at]) * column.factor + column.offset
        if math.isnan(value):
            return _tr("missing")
        if math.isinf(value):
            return _tr("over range")
        return said(say("{time:.9g} s", time=value)) if use == TIME else volts(value)


class RowsPane(Pane):
    """The table, what is wrong with it above, what was assumed below."""

    def __init__(self) -> None:
        super().__init__(_tr("First rows as understood"))
        self.trouble, self.notes = TroubleLine(), text_line("", quiet=True)
        self.model, self.table = RowsModel(), QTableView()
        self._delegate = _CellDelegate(self.table)
        self._lay_out_table()
        content = QWidget()
        layout = QVBoxLayout(content)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(3)
        layout.addWidget(self.trouble)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.notes)
        self.set_content(content)

    def show_preview(self, seen: Preview | None, uses: Mapping[str, str], trouble: str = "") -> None:
        """Show how a file is understood, or why it is not."""
        self.trouble.show_sentence(trouble)
        self.model.show_preview(seen, uses)
        self.table.setVisible(seen is not None)
        notes = [as_sentence(said(note)) for note in seen.notes] if seen is not None else []
        self.notes.setText("\n".join(notes[:_MOST_NOTES]))
        self.notes.setVisible(bool(notes))
        self._share_width()
        if seen is not None:
            # the last line of the heading stays in sight, the samples below it
            first = self.model.index(max(seen.head_lines - 3, 0), 0)
            self.table.scrollTo(first, QAbstractItemView.ScrollHint.PositionAtTop)
        self.show_content()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._delegate.palette = palette
        self.table.viewport().update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the new width out."""
        super().resizeEvent(event)
        self._share_width()

    def _lay_out_table(self) -> None:
        table = self.table
        table.setModel(self.model)
        table.setItemDelegate(self._delegate)
        table.setAccessibleName(_tr("First rows as understood"))
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        table.setMinimumHeight(4 * _ROW_PX)
        across, down = table.horizontalHeader(), table.verticalHeader()
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        across.setHighlightSections(False)
        across.setDefaultSectionSize(_COLUMN_PX)
        down.setDefaultSectionSize(_ROW_PX)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setHighlightSections(False)
        down.setDefaultAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)

    def _share_width(self) -> None:
        heads = self.table.horizontalHeader()
        least = [max(_COLUMN_PX, heads.sectionSizeHint(at)) for at in range(self.model.columnCount())]
        wide = sum(least) > self.table.viewport().width()
        mode = QHeaderView.ResizeMode.Interactive if wide else QHeaderView.ResizeMode.Stretch
        heads.setSectionResizeMode(mode)
        for column, width in enumerate(least if wide else ()):  # else it keeps what it was squeezed into
            heads.resizeSection(column, width)


class _CellDelegate(QStyledItemDelegate):
    """Paints what stands in the file at the left, dimmed, and the value at the right."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.palette: Palette = LIGHT

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        """Paint one cell."""
        palette, box = self.palette, QRectF(option.rect)
        painter.save()
        try:
            if index.data(HEAD):
                painter.fillRect(box, QColor(palette.raised))
            if option.state & QStyle.StateFlag.State_HasFocus:
                painter.setPen(QColor(palette.choice))
                painter.drawRect(box.adjusted(0, 0, -1, -1))
            inner = box.adjusted(5, 0, -8, 0)
            metrics = option.fontMetrics
            value = str(index.data(UNDERSTOOD) or "")
            painter.setPen(QColor(palette.bad if value and value[0].isalpha() else palette.ink))
            if value != NO_VALUE:
                painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, value)
            room = inner.width() - metrics.horizontalAdvance(value) - (8 if value else 0)
            raw = " ".join(str(index.data(RAW) or "").split())
            raw = metrics.elidedText(raw, Qt.TextElideMode.ElideRight, max(int(room), 0))
            painter.setPen(QColor(palette.quiet))
            painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, raw)
        finally:
            painter.restore()
