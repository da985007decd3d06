"""Rows of a list: a mark, a title, a quiet line below it, and a reading at the right."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import (
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPen,
    QResizeEvent,
    QStandardItemModel,
)
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from app.drawing import icons
from app.drawing.numbers import unbroken
from app.drawing.theme import LIGHT, Palette

_MARK_PX, _PLAIN_PX = 27, 9
_GAP_PX, _RIGHT_PX, _RIM_PX = 8, 5, 1
_DETAIL_FLAGS = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap
ROW_ROLE = Qt.ItemDataRole.UserRole + 7


@dataclass(frozen=True, slots=True)
class Row:
    """What one row shows.

    Parameters
    ----------
    title, detail, reading : str
        Main line, quiet line (empty for a one-line row), and what stands at the right.
    mark : str
        Icon name; empty for none.
    tone : str
        Palette field that colours the mark: ``"good"``, ``"bad"``, ``"unsure"``, ``"faint"``.
    faded : bool
        Something that is not there: a step that was not captured.
    """

    title: str
    detail: str = ""
    reading: str = ""
    mark: str = ""
    tone: str = "quiet"
    faded: bool = False


class RowList(QListView):
    """A list of `Row` values: one is current, none can be typed in, and it scrolls smoothly.

    Parameters
    ----------
    name : str
        For a screen reader.

    Signals
    -------
    picked(int)
        A row was chosen; the keyboard alone, that comes to the list, chooses none.
    wrapped_anew()
        Its width is another one, so that rows may need another height.
    """

    picked = Signal(int)
    wrapped_anew = Signal()

    def __init__(self, name: str) -> None:
        super().__init__()
        self.rows = QStandardItemModel(self)
        self._delegate = RowDelegate(self)
        self.setAccessibleName(name)
        self.setModel(self.rows)
        self.setItemDelegate(self._delegate)
        self.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.selectionModel().selectionChanged.connect(self._tell)
        self.setMouseTracking(True)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setResizeMode(QListView.ResizeMode.Adjust)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Tell that rows wrap anew, as where a scroll bar has come or gone."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.wrapped_anew.emit()
        self.scrollTo(self.currentIndex())  # what is marked stays in sight where the list gives up room

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the row that the keys start from: where none is marked, one that is in sight already."""
        if not self.currentIndex().isValid():
            self._begin_in_sight()
        super().focusInEvent(event)
        self.scrollTo(self.currentIndex())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter chooses the row that the keyboard is on: Tab came to it, and chose none."""
        here, enter = self.currentIndex(), event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and here.isValid() and not self.selectionModel().isSelected(here):
            self.selectionModel().select(here, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        else:
            super().keyPressEvent(event)

    def _begin_in_sight(self) -> None:
        place = self.indexAt(QPoint(2, 2))
        while place.isValid() and (self.visualRect(place).top() < 0 or not self._can_be_chosen(place)):
            place = place.siblingAtRow(place.row() + 1)
        if place.isValid():
            self.selectionModel().setCurrentIndex(place, QItemSelectionModel.SelectionFlag.NoUpdate)

    def _can_be_chosen(self, place: QModelIndex) -> bool:
        return bool(self.rows.flags(place) & Qt.ItemFlag.ItemIsEnabled)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._delegate.palette = palette
        self.viewport().update()

    def _tell(self) -> None:
        for index in self.selectedIndexes():
            self.picked.emit(index.row())


def room_for_text(row: Row, row_px: float) -> float:
    """Of the width of a row what is left for its words, in pixels."""
    return row_px - (_MARK_PX if row.mark else _PLAIN_PX) - _RIGHT_PX


def reading_within(row: Row, room_px: float, metrics: QFontMetricsF) -> str:
    """The reading as far as the title leaves room for it; its end is its figure."""
    title_px = min(metrics.horizontalAdvance(row.title), 0.5 * room_px)
    return metrics.elidedText(row.reading, Qt.TextElideMode.ElideLeft, room_px - title_px - _GAP_PX)


class RowDelegate(QStyledItemDelegate):
    """Paints `Row` values found under `ROW_ROLE`.

    Parameters
    ----------
    rows : QListView
        The list that is painted: its width decides where a detail wraps.
    """

    def __init__(self, rows: QListView) -> None:
        super().__init__(rows)
        self._list = rows
        self.palette: Palette = LIGHT

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        """The title's line, the lines of the detail, and some air."""
        row: Row = index.data(ROW_ROLE)
        metrics = QFontMetricsF(option.font)
        if not row.detail:
            return QSize(80, round(metrics.height() + 7))
        width = room_for_text(row, self._list.viewport().width() - 2 * _RIM_PX)
        lines = metrics.boundingRect(
            QRectF(0, 0, max(width, 40), 1e4), _DETAIL_FLAGS, unbroken(row.detail)
        ).height()
        return QSize(80, round(metrics.height() + lines + 8))

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Paint one row."""
        row: Row = index.data(ROW_ROLE)
        box = QRectF(option.rect).adjusted(_RIM_PX, _RIM_PX, -_RIM_PX, -_RIM_PX)
        painter.save()
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._ground(painter, box, option.state)
            if row.mark:
                size = 16
                colour = getattr(self.palette, row.tone)
                height = QFontMetricsF(option.font).height() + 4
                spot = QRectF(box.left() + 6, box.top() + (height - size) / 2, size, size)
                painter.drawPixmap(spot.topLeft(), icons.pixmap(row.mark, colour, size))
            self._text(
                painter,
                option.font,
                box.adjusted(_MARK_PX if row.mark else _PLAIN_PX, 2, -_RIGHT_PX, -2),
                row,
            )
        finally:
            painter.restore()

    def _ground(self, painter: QPainter, box: QRectF, state: QStyle.StateFlag) -> None:
        if state & QStyle.StateFlag.State_Selected:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(self.palette.raised))
            painter.drawRoundedRect(box, 4, 4)
            painter.fillRect(
                QRectF(box.left(), box.top() + 3, 3, box.height() - 6), QColor(self.palette.choice)
            )
        elif state & QStyle.StateFlag.State_MouseOver:
            painter.setPen(QPen(QColor(self.palette.line), 1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box, 4, 4)
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(self.palette.choice), 1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)

    def _text(self, painter: QPainter, font: QFont, box: QRectF, row: Row) -> None:
        metrics = QFontMetricsF(font)
        reading = reading_within(row, box.width(), metrics)
        reading_px = metrics.horizontalAdvance(reading) + _GAP_PX if reading else 0.0
        first = QRectF(box.left(), box.top(), box.width(), metrics.height() if row.detail else box.height())
        painter.setPen(QColor(self.palette.quiet if row.faded else self.palette.ink))
        middle = Qt.AlignmentFlag.AlignVCenter
        title = metrics.elidedText(row.title, Qt.TextElideMode.ElideRight, box.width() - reading_px)
        painter.drawText(first, middle | Qt.AlignmentFlag.AlignLeft, title)
        painter.drawText(first, middle | Qt.AlignmentFlag.AlignRight, reading)
        if row.detail:
            painter.setPen(QColor(self.palette.quiet))
            second = QRectF(box.left(), first.bottom(), box.width(), box.bottom() - first.bottom())
            painter.drawText(second, _DETAIL_FLAGS, unbroken(row.detail))
