"""The named arrays of a file, to choose among: each with its size, ticked where it is used."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QLabel, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from analysis.importing.model import Dataset
from app.drawing.plain import plain_tip

_MOST_SHOWN_ROWS = 7


def _tr(text: str) -> str:
    return QCoreApplication.translate("dataset_list", text)


class DatasetList(QWidget):
    """A list with a tick for each; hidden where there is nothing to choose.

    Signals
    -------
    told(names)
        Other arrays are to be used: a tuple of their names, in the order of the file.
    """

    told = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        title = QLabel(_tr("Data sets"))
        self.list = QListWidget()
        self.list.setAccessibleName(_tr("Data sets of the file"))
        self.list.setToolTip(_tr("Which of the file's data sets become columns (Space)"))
        self.list.itemChanged.connect(self._tell)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(title)
        layout.addWidget(self.list)
        self.hide()

    def show_datasets(self, datasets: Sequence[Dataset]) -> None:
        """Show what there is to choose."""
        self.setVisible(len(datasets) > 1)
        with QSignalBlocker(self.list):
            if [item.name for item in datasets] != self._names():
                self.list.clear()
                for item in datasets:
                    row = QListWidgetItem(f"{item.name}  ({' × '.join(map(str, item.shape))})")
                    row.setData(Qt.ItemDataRole.UserRole, item.name)
                    row.setToolTip(plain_tip(item.name))
                    self.list.addItem(row)
            for place, item in enumerate(datasets):
                tick = Qt.CheckState.Checked if item.taken else Qt.CheckState.Unchecked
                self.list.item(place).setCheckState(tick)
        height = self.list.sizeHintForRow(0) if datasets else 0
        self.list.setFixedHeight(min(len(datasets), _MOST_SHOWN_ROWS) * max(height, 18) + 6)

    def _names(self) -> list[str]:
        rows = range(self.list.count())
        return [str(self.list.item(row).data(Qt.ItemDataRole.UserRole)) for row in rows]

    def _tell(self) -> None:
        rows = [self.list.item(row) for row in range(self.list.count())]
        ticked = [item for item in rows if item.checkState() == Qt.CheckState.Checked]
        self.told.emit(tuple(str(item.data(Qt.ItemDataRole.UserRole)) for item in ticked))
