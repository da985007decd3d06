"""Controls in a row that goes on below where it is full."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import shiboken6
from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowRow(QLayout):
    """As many controls in each row as its width has room for.

    Parameters
    ----------
    controls : sequence of QWidget
        From the left.
    gap_px : int
        Between them, both ways.
    """

    def __init__(self, controls: Sequence[QWidget], gap_px: int = 2) -> None:
        super().__init__()
        self._items: list[QLayoutItem] = []
        self._gap_px = gap_px
        self.setContentsMargins(0, 0, 0, 0)
        for control in controls:
            self.addWidget(control)
        # Qt leaves the items to the layout's destructor, which a layout written in Python has not.
        self.destroyed.connect(partial(_delete, self._items))

    def addItem(self, item: QLayoutItem) -> None:  # noqa: N802 - Qt's own name, as below
        """Take one more at the end."""
        self._items.append(item)

    def count(self) -> int:
        """How many there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """One of them, or None beyond the last."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Take one of them out, or none beyond the last."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:  # noqa: N802
        """It asks for no more room than its controls need."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:  # noqa: N802
        """The narrower, the higher."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802
        """Height of all rows at a width."""
        return self._laid_out(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:  # noqa: N802
        """Put the controls in their places."""
        super().setGeometry(rect)
        self._laid_out(rect, move=True)

    def sizeHint(self) -> QSize:
        """All in one row."""
        sizes = [item.sizeHint() for item in self._shown()]
        width = sum(size.width() + self._gap_px for size in sizes)
        return QSize(width, max((size.height() for size in sizes), default=0))

    def minimumSize(self) -> QSize:  # noqa: N802
        """The widest control alone."""
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _laid_out(self, rect: QRect, *, move: bool) -> int:
        """Place row by row; back comes the height."""
        at, row_px = QPoint(rect.topLeft()), 0
        for item in self._shown():
            size = item.sizeHint()
            if at.x() > rect.left() and at.x() + size.width() > rect.right() + 1:
                at, row_px = QPoint(rect.left(), at.y() + row_px + self._gap_px), 0
            if move:
                item.setGeometry(QRect(at, size))
            at.setX(at.x() + size.width() + self._gap_px)
            row_px = max(row_px, size.height())
        return at.y() + row_px - rect.top()


def _delete(items: list[QLayoutItem]) -> None:
    while items:
        shiboken6.delete(items.pop())
