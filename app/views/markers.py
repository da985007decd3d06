"""Markers: what the technician marked, and what the chosen marker reads."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.drawing.plain import plain_tip
from app.drawing.theme import Palette
from app.review.marker_words import NOTHING, Grid
from app.views.field_keys import FieldKeys
from app.views.marker_tables import (
    MarkerRow,
    MarkersModel,
    NameDelegate,
    PlaceDelegate,
    ReadingsModel,
    least_place_px,
    reads_px,
)
from app.views.pane import Pane
from app.views.quiet_tables import (
    BAR_OFF,
    BAR_ON,
    ChosenInSight,
    Figures,
    RowsRoom,
    quiet_table,
    whole_rows_px,
)

_ROW_PX = 21
_GRID_ROW_PX = 17
_GRID_HEAD_PX = _GRID_ROW_PX + 2
_MOST_ROWS, _FIRST_ROWS, _LEAST_GRID_ROWS = 4, 2, 2
"""Of the list where there is room; of it before the readings have theirs; of the readings at the least."""
_BAR_PX, _LIST_BAR_PX = 10, 16  # the one below figures, and the one beside rows with its gap
_LEAST_NAME_PX, _MOST_NAME_PX = 36, 190
_GAP_PX, _NO_LIMIT_PX = 4, 16_777_215
_CELL_PX, _WRAP = 12, int(Qt.TextFlag.TextWordWrap)
_HEADING_PX = 35
_HEAD_GAPS_PX = 28
_MARGINS_PX = 22


class MarkersView(Pane):
    """The table of markers, the note of the chosen one, and its readings.

    Signals
    -------
    chosen(marker_id), opened(marker_id)
        A row was picked; asked for with Enter or a double click beside its name.
    renamed(marker_id, label), noted(marker_id, note)
        Another name or note was typed.
    """

    chosen = Signal(str)
    opened = Signal(str)
    renamed = Signal(str, str)
    noted = Signal(str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Markers"))
        self.setAccessibleName(self.tr("Markers: what was marked, and what it reads"))
        self._empty.setContentsMargins(0, 0, 0, 0)
        self._empty.setAlignment(Qt.AlignmentFlag.AlignLeft)
        self._chosen: str | None = None
        self._hint = ""
        self._filling = self._scrolls = False
        self._model, self._readings = MarkersModel(self), ReadingsModel(self)
        self._model.renamed.connect(self.renamed)
        self.table, self.grid = self._table(), self._grid()
        self.note = QLineEdit()
        self.note.setPlaceholderText(self.tr("A note on this marker"))
        self.note.setAccessibleName(self.tr("Note on the chosen marker"))
        self.note.editingFinished.connect(self._note_typed)
        self._keys, self._name_keys = FieldKeys((self.note,), self.table), FieldKeys((), self.table)
        # Or the next key, which is meant for the window, would be written into the note.
        self.note.returnPressed.connect(self._keys.give_back)
        self._keys.given_up.connect(self._give_note_up)
        self._remark = QLabel()
        self._remark.setTextFormat(Qt.TextFormat.PlainText)
        self._remark.setWordWrap(True)
        self._remark.setProperty("quiet", True)
        self._remark.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        content = RowsRoom()
        content.resized.connect(self._share_height)
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(_GAP_PX)
        column.addWidget(self.table)
        column.addWidget(self.note)
        column.addWidget(self.grid)
        column.addWidget(self._remark)
        column.addStretch(1)
        self._content = content
        self.set_content(content)
        self.show_markers((), None, NOTHING)

    @property
    def rows(self) -> tuple[MarkerRow, ...]:
        """What the table shows."""
        return self._model.rows

    @property
    def readings(self) -> Grid:
        """What is shown of the chosen marker."""
        return self._readings.shown

    def show_markers(self, rows: tuple[MarkerRow, ...], chosen: str | None, readings: Grid) -> None:
        """Show these markers, and the readings of the chosen one."""
        self._filling = True
        self._model.show_rows(rows)
        self._choose(chosen)
        self._filling = False
        self._fit_names()
        self._show_note(next((item for item in rows if item.marker_id == chosen), None))
        self._readings.show_grid(readings)
        self._fit_columns(readings)
        self.grid.setVisible(bool(readings.rows))
        self._fit_grid(readings)
        for told in (self._remark, self.grid):
            told.setToolTip(plain_tip(readings.tip))
        self._tell()
        if rows:
            self.show_content()
        else:
            self.show_empty(
                self.tr(
                    "M marks the moment at the pointer, S begins and ends a span, T a stretch of travel; or"
                    " drag with Ctrl."
                )
            )

    def show_hint(self, text: str) -> None:
        """Say something at the head of the list, in place of how many there are; empty for nothing.

        Where there is no room for all of it there, it takes the place of what is to be known of the figures.
        """
        if text != self._hint:
            self._hint = text
            self._tell()

    def _tell(self) -> None:
        """Write what stands above the list and below the readings."""
        count, room = len(self._model.rows), self.width() - self._title.sizeHint().width() - _HEAD_GAPS_PX
        above = self._note.fontMetrics().horizontalAdvance(self._hint) <= room
        self.set_note((self._hint if above else "") or (str(count) if count else ""))
        self._remark.setText(self.readings.remark if above else self._hint)
        self._remark.setVisible(bool(self._remark.text()))
        self._share_height()
        if self._hint:
            self.setAccessibleDescription(self._hint)

    def wanted_height(self, most_px: int = _NO_LIMIT_PX) -> int:
        """Height that shows what there is, in pixels; where that is more than `most_px`, whole rows of it."""
        if not self._model.rows:
            return _HEADING_PX + self._empty.heightForWidth(max(self.width() - 36, 120)) + 22
        around_px = max(self.height() - self._content.height(), _HEADING_PX) + self._beside_rows()
        listed = min(len(self._model.rows), _MOST_ROWS) * _ROW_PX
        wanted_px = around_px + listed + self._grid_height(self._readings.shown)
        return wanted_px if wanted_px <= most_px else around_px + sum(self._shares(most_px - around_px))

    def _beside_rows(self) -> int:
        """What the note, what is said below and the gaps take of the height, in pixels."""
        parts = [
            self.note.sizeHint().height() if self._chosen is not None else 0,
            self._remark.heightForWidth(self._content.width()) if self._remark.text() else 0,
        ]
        gaps = sum(map(bool, parts)) + bool(self._readings.shown.rows)
        return sum(parts) + _GAP_PX * gaps

    def _shares(self, room_px: int) -> tuple[int, int]:
        """Of a height, that of the list and that of the readings; no row of either is cut through."""
        count, shown = len(self._model.rows), self._readings.shown
        grid_px = self._grid_height(shown)
        first_px = min(count, _FIRST_ROWS) * _ROW_PX
        if grid_px > room_px - first_px:
            heights = [self.grid.rowHeight(row) for row in range(len(shown.rows))]
            head_px = grid_px - sum(heights)
            grid_px = head_px + whole_rows_px(room_px - first_px - head_px, heights, _LEAST_GRID_ROWS)
        return whole_rows_px(room_px - grid_px, [_ROW_PX] * count, 1), grid_px

    def _share_height(self) -> None:
        """Let the list and the readings be so high that their rows are seen whole."""
        list_px, grid_px = self._shares(self._content.height() - self._beside_rows())
        self.table.give(list_px)
        self.grid.give(grid_px)

    def settle(self) -> None:
        """Need no more height than what is shown by now, at once and not in the next turn."""
        for widget in (self._content, self._stack, self):
            layout = widget.layout()
            if layout is not None:
                layout.activate()

    def edit_label(self, marker_id: str) -> None:
        """Let the technician type another name, in place."""
        row = self._row_of(marker_id)
        if row is not None:
            self._name_keys.step_into(self.table)
            self.table.edit(self._model.index(row, 0))

    def edit_note(self) -> None:
        """Let the technician type a note."""
        self._keys.step_into(self.note)
        self.note.selectAll()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._model.palette = palette
        self.table.viewport().update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Columns of figures have their width from that of the pane."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self._fit_names()
            self._fit_columns(self.readings)
            self._fit_grid(self.readings)
            self._tell()

    def _table(self) -> ChosenInSight:
        table = quiet_table(ChosenInSight(), self._model, self.tr("Markers"), _ROW_PX)
        table.setItemDelegate(NameDelegate(table))
        table.setItemDelegateForColumn(1, PlaceDelegate(table))
        table.horizontalHeader().hide()
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.DoubleClicked)
        table.setMinimumHeight(_ROW_PX)
        heads = table.horizontalHeader()
        heads.setStretchLastSection(False)
        for column, mode in enumerate(("Fixed", "Stretch", "ResizeToContents")):
            heads.setSectionResizeMode(column, QHeaderView.ResizeMode[mode])
        heads.setMaximumSectionSize(_MOST_NAME_PX)
        table.selectionModel().currentRowChanged.connect(self._picked)
        table.activated.connect(self._activated)
        table.itemDelegate().closeEditor.connect(lambda *_: self._name_keys.give_back())
        return table

    def _beside_bar(self) -> None:
        self._fit_columns(self.readings)

    def _fit_grid(self, readings: Grid) -> None:
        """Let the readings be as high as their rows, or scroll where the pane is too low for them."""
        least_px = _GRID_HEAD_PX + _LEAST_GRID_ROWS * _GRID_ROW_PX
        self.grid.want(self._grid_height(readings), least_px)
        self._share_height()

    def _grid(self) -> Figures:
        grid = quiet_table(Figures(), self._readings, self.tr("Readings of the chosen marker"), _GRID_ROW_PX)
        grid.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        grid.verticalHeader().show()
        grid.setWordWrap(True)
        # In the middle: the unit stands at the end.
        grid.horizontalHeader().setTextElideMode(Qt.TextElideMode.ElideMiddle)
        grid.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        grid.horizontalHeader().setFixedHeight(_GRID_HEAD_PX)
        small = grid.font()
        small.setPointSizeF(8.0)
        for part in (grid, grid.horizontalHeader(), grid.verticalHeader()):
            part.setFont(small)
        grid.setObjectName("readings")
        grid.barred.connect(self._beside_bar)
        return grid

    def _fit_names(self) -> None:
        """Names are whole as far as that leaves room for a time or a travel beside them."""
        table, rows = self.table, self._model.rows
        place = least_place_px(rows, table.fontMetrics())
        beside = self.width() - _MARGINS_PX - _LIST_BAR_PX - place
        self._model.read_shorter(beside - reads_px(rows, table.fontMetrics()) < _LEAST_NAME_PX)
        room = beside - table.sizeHintForColumn(2)
        # Where not even the shortest name fits beside it, the place is written in fewer digits.
        wanted = min(table.sizeHintForColumn(0), _MOST_NAME_PX)
        table.horizontalHeader().resizeSection(0, max(min(wanted, room), _LEAST_NAME_PX))

    def _fit_columns(self, readings: Grid) -> None:
        """Columns as wide as their figures; the first takes what is left, or else they scroll.

        Set one by one: a column that the header stretches is left narrower than its figures where the names
        of the rows need another width than those before them.
        """
        heads = self.grid.horizontalHeader()
        room = self.width() - _MARGINS_PX - self.grid.verticalHeader().sizeHint().width() - self.grid.bar_px()
        self._readings.cut_heads(False)
        whole = least = self._wanted(readings)
        if sum(whole) > room:
            self._readings.cut_heads(True)
            least = self._wanted(readings)
        if len(least) == 1:  # words, which wrap; figures of several channels stay beside each other
            whole = least = [min(least[0], room)]
        self._scrolls = sum(least) > room
        for column, width in enumerate(_shared_out(least, whole, room)):
            heads.resizeSection(column, width)
        self.grid.setHorizontalScrollBarPolicy(BAR_ON if self._scrolls else BAR_OFF)
        self._fit_rows(readings)

    def _fit_rows(self, readings: Grid) -> None:
        """Rows as high as their words need in the one column that there is."""
        room, metrics = self.grid.columnWidth(0) - _CELL_PX, self.grid.fontMetrics()
        for row, (_, cells) in enumerate(readings.rows):
            lines = metrics.boundingRect(0, 0, room, 500, _WRAP, cells[0]).height() // metrics.height()
            wraps = len(cells) == 1 and lines > 1
            more_px = (lines - 1) * metrics.height() if wraps else 0
            self.grid.setRowHeight(row, _GRID_ROW_PX + more_px)

    def _wanted(self, readings: Grid) -> list[int]:
        """Width of each column, its head as the model lets it be."""
        heads = self.grid.horizontalHeader()
        columns = range(len(readings.columns))
        return [max(self.grid.sizeHintForColumn(at), heads.sectionSizeHint(at)) for at in columns]

    def _grid_height(self, readings: Grid) -> int:
        bar = _BAR_PX if self._scrolls else 0
        rows = sum(self.grid.rowHeight(row) for row in range(len(readings.rows)))
        return _GRID_HEAD_PX + rows + bar if readings.rows else 0

    def _row_of(self, marker_id: str | None) -> int | None:
        ids = [item.marker_id for item in self._model.rows]
        return ids.index(marker_id) if marker_id in ids else None

    def _choose(self, marker_id: str | None) -> None:
        row = self._row_of(marker_id)
        self._chosen = marker_id if row is not None else None
        if row is None:
            self.table.setCurrentIndex(QModelIndex())
            self.table.clearSelection()
        elif self.table.currentIndex().row() != row:
            self.table.selectRow(row)
            self.table.scrollTo(self._model.index(row, 0))

    def _show_note(self, row: MarkerRow | None) -> None:
        self.note.setVisible(row is not None)
        if row is not None and not self.note.hasFocus():
            self.note.setText(row.note)
        self.note.setProperty("markerId", row.marker_id if row is not None else "")

    def _picked(self, current: QModelIndex) -> None:
        if not self._filling and current.isValid():
            self.chosen.emit(self._model.rows[current.row()].marker_id)

    def _activated(self, index: QModelIndex) -> None:
        if index.column() != 0 or self.table.state() is not QAbstractItemView.State.EditingState:
            self.opened.emit(self._model.rows[index.row()].marker_id)

    def _give_note_up(self) -> None:
        """Escape: the note that was there holds."""
        kept = next((item.note for item in self._model.rows if item.marker_id == self._chosen), "")
        self.note.setText(kept)
        self._keys.give_back()

    def _note_typed(self) -> None:
        marker_id = str(self.note.property("markerId") or "")
        if marker_id:
            self.noted.emit(marker_id, self.note.text())


def _shared_out(least: list[int], whole: list[int], room: int) -> list[int]:
    """Widths that fill a room: what is left over goes to heads that were cut, then to the first column."""
    left, widths = max(room - sum(least), 0), []
    for width, wanted in zip(least, whole, strict=True):
        more = min(wanted - width, left)
        left -= more
        widths.append(width + more)
    return [width + (left if column == 0 else 0) for column, width in enumerate(widths)]
