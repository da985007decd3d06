"""The real sheets of a report on the screen: what is printed is what is seen, on white in every theme."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPixmap, QResizeEvent
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from app.drawing.curves import draws_curves
from app.drawing.spoken import DrawnSheet
from app.reporting.placed import Sheet

_GAP_PX = 12
_WIDEST_PX = 900


def _tr(text: str) -> str:
    return QCoreApplication.translate("report_preview", text)


class SheetView(DrawnSheet, QWidget):
    """One sheet, as wide as there is room."""

    def __init__(self, sheet: Sheet, name: str) -> None:
        super().__init__()
        self._sheet = sheet
        self._picture = QPixmap()
        self.setAccessibleName(name)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setSizePolicy(policy)

    def set_width(self, width: int) -> None:
        """Take a width; the height follows."""
        self.setFixedSize(QSize(width, round(width * self._sheet.height / self._sheet.width)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Show the picture of the sheet; it is drawn anew where the size has changed."""
        ratio = self.devicePixelRatioF()
        wanted = self.size() * ratio
        painter = QPainter(self)
        if draws_curves(painter):
            painter.save()
            self._paint_sheet(painter, self.size())
            painter.restore()
        else:
            if self._picture.size() != wanted:
                self._picture = self._drawn(wanted)
                self._picture.setDevicePixelRatio(ratio)
            painter.drawPixmap(0, 0, self._picture)
        painter.setPen(QColor("#9a9da3"))
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        painter.end()

    def _drawn(self, size: QSize) -> QPixmap:
        picture = QPixmap(size)
        painter = QPainter(picture)
        self._paint_sheet(painter, size)
        painter.end()
        return picture

    def _paint_sheet(self, painter: QPainter, size: QSize) -> None:
        painter.fillRect(QRect(QPoint(), size), QColor("white"))
        painter.scale(size.width() / self._sheet.width, size.height() / self._sheet.height)
        self._sheet.paint(painter)


class ReportPreview(QScrollArea):
    """All sheets, one below the other."""

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setAccessibleName(_tr("Preview of the report"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._body = QWidget()
        self._column = QVBoxLayout(self._body)
        self._column.setSpacing(_GAP_PX)
        self._views: list[SheetView] = []
        self.setWidget(self._body)

    @property
    def count(self) -> int:
        """How many sheets are shown."""
        return len(self._views)

    def show_sheets(self, sheets: Sequence[Sheet]) -> None:
        """Show other sheets at the same place."""
        at = self.verticalScrollBar().value()
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        names = _tr("Sheet {page} of {pages}")
        self._views = [
            SheetView(sheet, names.format(page=place, pages=len(sheets)))
            for place, sheet in enumerate(sheets, 1)
        ]
        for view in self._views:
            self._column.addWidget(view, 0, Qt.AlignmentFlag.AlignHCenter)
        self._column.addStretch(1)
        self._fit()
        self.verticalScrollBar().setValue(at)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the sheets to the new width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        for view in self._views:
            view.set_width(max(200, min(self.viewport().width() - 2 * _GAP_PX, _WIDEST_PX)))
