"""Files: those that become one capture, in the order of its records, and what each was taken for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QCoreApplication, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QFrame,
    QLabel,
    QListView,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.importing.wishes import CONDITIONS
from app.drawing.plain import plain_tip
from app.drawing.row_delegate import ROW_ROLE, Row, RowDelegate
from app.drawing.theme import Palette
from app.importing.trouble_line import TroubleLine
from app.importing.words import step_names
from app.views.flow_row import FlowRow
from app.views.pane import Pane
from app.views.press_row import text_line
from app.views.record_form import WordBox, key_name, proposed_words
from app.views.tall_enough import TallEnough


def _tr(text: str) -> str:
    return QCoreApplication.translate("files_pane", text)


class FileList(QListView):
    """The list itself, worked by keys too.

    Signals
    -------
    moved(by), removed()
        The chosen file is to go up or down, or away.
    """

    moved = Signal(int)
    removed = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Wrap the rows anew: beside a scroll bar they need more lines."""
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Alt+Up and Alt+Down move the chosen file, Del removes it."""
        alt = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
        if alt and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.moved.emit(-1 if event.key() == Qt.Key.Key_Up else 1)
        elif event.key() == Qt.Key.Key_Delete:
            self.removed.emit()
        else:
            super().keyPressEvent(event)


class FilesPane(Pane):
    """The files, and the record form of the chosen one.

    Signals
    -------
    chosen(place), moved(by), removed(), add_wanted()
        What is to be done with the list.
    step_told(word), condition_told(key, word)
        What is said of the record of the chosen file.
    together_ticked(on)
        Whether what is changed holds for all files with the same columns.
    """

    chosen = Signal(int)
    moved = Signal(int)
    removed = Signal()
    add_wanted = Signal()
    step_told = Signal(str)
    condition_told = Signal(str, str)
    together_ticked = Signal(bool)

    def __init__(self) -> None:
        super().__init__(_tr("Files"))
        self.setAccessibleName(_tr("Files, in the order of the records"))
        self._model, self._filling = QStandardItemModel(self), False
        self.list = FileList()
        self._delegate = RowDelegate(self.list)
        self.trouble, self.reason = TroubleLine(), text_line("", quiet=True)
        self.step = WordBox(step_names(), _tr("What the record was taken for"), roomy=True)
        self.conditions: dict[str, WordBox] = {}
        self.together = QCheckBox(_tr("Change all alike"))
        self.together.setToolTip(_tr("What is changed holds for all files with the same columns"))
        self.together.clicked.connect(self.together_ticked)
        self.step.told.connect(self.step_told)
        self._lay_out_list()
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self.list, 1)
        column.addLayout(self._tools())
        column.addWidget(self.together)
        column.addWidget(self.trouble)
        column.addWidget(self._form())
        self.set_content(content)

    def show_files(self, rows: Sequence[tuple[Row, str]], place: int) -> None:
        """List the files, each with a tip; the chosen one is marked."""
        self._filling = True
        kept = self._model.rowCount() == len(rows)
        if not kept:
            self._model.clear()
        for number, (row, tip) in enumerate(rows):
            item = self._model.item(number) if kept else QStandardItem()
            item.setData(row, ROW_ROLE)
            item.setToolTip(plain_tip(tip))
            item.setAccessibleText(", ".join(part for part in (row.title, row.detail, row.reading) if part))
            item.setEditable(False)
            if not kept:
                self._model.appendRow(item)
        self.list.setCurrentIndex(self._model.index(place, 0))
        self._filling = False
        several = len(rows) > 1
        for button in (self.up, self.down):
            button.setEnabled(several)
        self.remove.setEnabled(bool(rows))
        self.show_content()

    def show_record(
        self, step: str, guessed: str, reason: str, conditions: Mapping[str, str], trouble: str
    ) -> None:
        """Show what is said of the chosen file's record, and what is wrong with the file.

        Parameters
        ----------
        step : str
            The word for what it was taken for; empty where that is guessed.
        guessed : str
            Name of the step that goes into the capture then; empty for none.
        reason : str
            Of the guess.
        conditions : mapping of str to str
            By key.
        trouble : str
            What is wrong; empty where nothing is.
        """
        self.trouble.show_sentence(trouble)
        with QSignalBlocker(self.step):
            self.step.setItemText(0, _tr("Guessed: {step}").format(step=guessed) if guessed else "–")
        self.step.show_word(step)
        self.reason.setText(reason)
        self.reason.setVisible(bool(reason))
        for key, box in self.conditions.items():
            box.show_word(conditions.get(key, ""))

    def show_together(self, possible: bool, on: bool) -> None:
        """Offer to change all alike where there are several of a kind."""
        self.together.setVisible(possible)
        self.together.setChecked(on)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._delegate.palette = palette
        self.list.viewport().update()

    def _lay_out_list(self) -> None:
        self.list.setAccessibleName(_tr("Files, in the order of the records"))
        self.list.setModel(self._model)
        self.list.setItemDelegate(self._delegate)
        self.list.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.list.setMouseTracking(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setMinimumHeight(60)
        self.list.selectionModel().currentChanged.connect(self._picked)
        self.list.moved.connect(self.moved)
        self.list.removed.connect(self.removed)

    def _picked(self) -> None:
        if not self._filling:
            self.chosen.emit(self.list.currentIndex().row())

    def _tools(self) -> FlowRow:
        self.add = _tool(_tr("Add…"), _tr("Add files to this capture"))
        self.remove = _tool(_tr("Remove"), _tr("Take the chosen file off the list (Del)"))
        self.up = _tool("▲", _tr("Move the chosen file up (Alt+Up)"))
        self.down = _tool("▼", _tr("Move the chosen file down (Alt+Down)"))
        for arrow in (self.up, self.down):
            arrow.setProperty("glyph", True)
        self.add.clicked.connect(self.add_wanted)
        self.remove.clicked.connect(self.removed)
        self.up.clicked.connect(lambda: self.moved.emit(-1))
        self.down.clicked.connect(lambda: self.moved.emit(1))
        return FlowRow((self.add, self.remove, self.up, self.down), gap_px=3)

    def _form(self) -> QScrollArea:
        """It is as high as its fields, and scrolls where there is less room."""
        area, body = _FormArea(), _FormBody()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        body.grown.connect(area.updateGeometry)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setAccessibleName(_tr("What is said of the record"))
        area.setWidget(body)
        form = QFormLayout(body)
        form.setContentsMargins(0, 0, 6, 0)
        form.setVerticalSpacing(3)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.addRow(_tr("Taken for"), self.step)
        form.addRow(self.reason)
        for key in CONDITIONS:
            box = WordBox(proposed_words(key), key_name(key), free=key != "plugged", roomy=True)
            box.told.connect(lambda word, key=key: self.condition_told.emit(key, word))
            self.conditions[key] = box
            form.addRow(QLabel(key_name(key)), box)
        return area


class _FormBody(TallEnough):
    """Tells that its fields take another height."""

    grown = Signal()

    def fit_height(self) -> None:
        """Set the least height."""
        before_px = self.minimumHeight()
        super().fit_height()
        if self.minimumHeight() != before_px:
            self.grown.emit()


class _FormArea(QScrollArea):
    """As high as what stands in it, where there is room."""

    def sizeHint(self) -> QSize:
        """The height of its body."""
        body = self.widget()
        height_px = body.minimumHeight() if body is not None else 0
        return QSize(super().sizeHint().width(), height_px + 2 * self.frameWidth() + 2)


def _tool(text: str, tip: str) -> QToolButton:
    button = QToolButton()
    button.setText(text)
    button.setToolTip(tip)
    button.setAccessibleName(tip)
    button.setProperty("outlined", True)
    button.setProperty("heading", True)
    button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    return button
