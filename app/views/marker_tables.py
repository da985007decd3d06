"""The two tables of the Markers pane as models: the markers, and what the chosen one reads."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QStyledItemDelegate, QStyleOptionViewItem, QTableView, QWidget

from app.drawing import icons
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.review.marker_words import NOTHING, Grid

_Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()
_HEAD = QSize(66, 19)
_NO_HEAD = QSize(0, 19)
_PART = " · "
_CELL_MARGINS_PX = 12
_LEAST_LETTERS = 3
_ROW_ROLE = Qt.ItemDataRole.UserRole
_NAME_PX = 170  # some twenty letters
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class MarkerRow:
    """One marker as the table shows it.

    Parameters
    ----------
    marker_id : str
    icon : str
        Name of the icon of its kind.
    kind, label, where, reads : str
        Words for people.
    note : str
        The technician's; empty for none.
    record : str
        What `where` begins with: the record of a place in time; empty for a stretch of travel.
    reads_shorter : str
        `reads` in fewer letters; empty where it has no shorter form.
    short : str
        The place alone in fewer digits, where there is no room for more; empty where there is no shorter one.
    """

    marker_id: str
    icon: str
    kind: str
    label: str
    where: str
    reads: str
    note: str = ""
    record: str = ""
    reads_shorter: str = ""
    short: str = ""


class MarkersModel(QAbstractTableModel):
    """The markers: name, where, what it reads. The name can be edited.

    Signals
    -------
    renamed(marker_id, label)
        The technician typed another name.
    """

    renamed = Signal(str, str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.palette: Palette = LIGHT
        self._rows: tuple[MarkerRow, ...] = ()
        self._shorter = False

    @property
    def rows(self) -> tuple[MarkerRow, ...]:
        """What is shown."""
        return self._rows

    def show_rows(self, rows: tuple[MarkerRow, ...]) -> None:
        """Show these; an edit under way in a row that stays is left alone."""
        if [item.marker_id for item in rows] != [item.marker_id for item in self._rows]:
            self.beginResetModel()
            self._rows = rows
            self.endResetModel()
        elif rows != self._rows:
            before, self._rows = self._rows, rows
            # A name is told as changed only where it is: that would put it back into its own editor.
            renamed = [item.label for item in before] != [item.label for item in rows]
            first = self.index(0, 0 if renamed else 1)
            self.dataChanged.emit(first, self.index(len(rows) - 1, self.columnCount() - 1))

    def read_shorter(self, shorter: bool) -> None:
        """Let what is read stand there in fewer letters, or in full again."""
        if shorter != self._shorter:
            self._shorter = shorter
            if self._rows:
                self.dataChanged.emit(self.index(0, 2), self.index(len(self._rows) - 1, 2))

    def rowCount(self, parent: _Index = _TOP) -> int:
        """Markers."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = _TOP) -> int:
        """Name, where, reading."""
        return 0 if parent.isValid() else 3

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Heads of the columns; they are hidden, and take no room from the figures below them."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (self.tr("Marker"), self.tr("Where"), self.tr("Reads"))[section]
        return _NO_HEAD if role == Qt.ItemDataRole.SizeHintRole else None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        """The name can be edited."""
        usual = super().flags(index)
        return usual | Qt.ItemFlag.ItemIsEditable if index.column() == 0 else usual

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What a cell shows."""
        row = self._rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            reads = (self._shorter and row.reads_shorter) or row.reads
            return (row.label, row.where, reads)[index.column()]
        if role == _ROW_ROLE:
            return row
        if role == Qt.ItemDataRole.ToolTipRole:
            lines = (f"{row.kind} {row.label}: {row.where}", row.reads, row.note)
            return plain_tip("\n".join(filter(None, lines)))
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{row.kind} {row.label}, {row.where}, {row.reads}"
        if role == Qt.ItemDataRole.DecorationRole and index.column() == 0:
            return icons.pixmap(row.icon, self.palette.choice, 14)
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == 2:
            return _RIGHT
        return None

    def setData(  # noqa: N802 - Qt's own name
        self, index: _Index, value: Any, role: int = Qt.ItemDataRole.EditRole
    ) -> bool:
        """Say what the technician typed; the review decides what is shown."""
        if role != Qt.ItemDataRole.EditRole or index.column() != 0:
            return False
        self.renamed.emit(self._rows[index.row()].marker_id, str(value).strip())
        return True


class NameDelegate(QStyledItemDelegate):
    """Gives a name that is typed room for a name, and keeps it when the table is laid out meanwhile."""

    def updateEditorGeometry(  # noqa: N802 - Qt's own name
        self, editor: QWidget, option: QStyleOptionViewItem, index: _Index
    ) -> None:
        """Begin where the cell does, and go on over the place beside it, or over all of a narrow row."""
        super().updateEditorGeometry(editor, option, index)
        table = self.parent()
        assert isinstance(table, QTableView)  # as the pane makes it
        reading_px, row_px = table.columnViewportPosition(2), table.viewport().width()
        narrow = reading_px - editor.x() < _NAME_PX
        editor.resize(row_px - editor.x() if narrow else _NAME_PX, editor.height())


class PlaceDelegate(QStyledItemDelegate):
    """Where a marker is, without its last parts where there is no room for all: half a figure is another."""

    def initStyleOption(  # noqa: N802 - Qt's own name
        self, option: QStyleOptionViewItem, index: _Index
    ) -> None:
        """Leave out what does not fit."""
        super().initStyleOption(option, index)
        row: MarkerRow = index.data(_ROW_ROLE)
        option.text = shortened(row, option.rect.width() - _CELL_MARGINS_PX, option.fontMetrics)


def _in_parts(row: MarkerRow) -> tuple[str, list[str]]:
    """What stands before the place, and the place in the parts that may be left out from the end."""
    lead = f"{row.record}{_PART}" if row.record else ""
    return lead, row.where.removeprefix(lead).split(_PART)


def least_place_px(rows: tuple[MarkerRow, ...], metrics: QFontMetrics) -> int:
    """Width of a column in which of each place at least its first part, a time or a travel, is whole."""
    widths = [metrics.horizontalAdvance(_in_parts(row)[1][0]) for row in rows]
    return max(widths, default=0) + _CELL_MARGINS_PX


def reads_px(rows: tuple[MarkerRow, ...], metrics: QFontMetrics) -> int:
    """Width of a column in which all that is read stands in full."""
    return max((metrics.horizontalAdvance(row.reads) for row in rows), default=0) + _CELL_MARGINS_PX


def shortened(row: MarkerRow, room_px: int, metrics: QFontMetrics) -> str:
    """What there is room for of where a marker is: first the height goes, then the name of the record."""
    lead, parts = _in_parts(row)
    while len(parts) > 1 and metrics.horizontalAdvance(lead + _PART.join(parts)) > room_px:
        parts.pop()
    place = _PART.join(parts)
    if row.short and metrics.horizontalAdvance(place) > room_px:
        return row.short
    if not lead or metrics.horizontalAdvance(lead + place) <= room_px:
        return lead + place
    left_px = room_px - metrics.horizontalAdvance(_PART + place)
    name = metrics.elidedText(row.record, Qt.TextElideMode.ElideRight, left_px)
    return f"{name}{_PART}{place}" if len(name) > _LEAST_LETTERS else place


class ReadingsModel(QAbstractTableModel):
    """What the chosen marker reads."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.shown: Grid = NOTHING
        self._cut = False

    def cut_heads(self, cut: bool) -> None:
        """Let the heads be no wider than figures: a long name is cut, a figure never is."""
        if cut != self._cut:
            self._cut = cut
            last = max(self.columnCount() - 1, 0)
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, last)

    def show_grid(self, shown: Grid) -> None:
        """Show these readings."""
        if shown != self.shown:
            self.beginResetModel()
            self.shown = shown
            self.endResetModel()

    def rowCount(self, parent: _Index = _TOP) -> int:
        """Figures."""
        return 0 if parent.isValid() else len(self.shown.rows)

    def columnCount(self, parent: _Index = _TOP) -> int:
        """Channels."""
        return 0 if parent.isValid() else len(self.shown.columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Channels above, figures at the left."""
        if role == Qt.ItemDataRole.SizeHintRole and orientation is Qt.Orientation.Horizontal:
            return _HEAD if self._cut else None
        if role == Qt.ItemDataRole.DisplayRole:
            across = orientation is Qt.Orientation.Horizontal
            return self.shown.columns[section] if across else self.shown.rows[section][0]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            across = orientation is Qt.Orientation.Horizontal
            return _RIGHT if across else Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """A figure with its uncertainty."""
        head, cells = self.shown.rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return cells[index.column()]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.shown.columns[index.column()]}, {head}: {cells[index.column()]}"
        return _RIGHT if role == Qt.ItemDataRole.TextAlignmentRole else None
