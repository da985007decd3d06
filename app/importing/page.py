"""Import laid out: files at the left, rows and columns in the middle, how they are read at the right."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QKeyEvent, QUndoStack
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QProgressBar,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.importing.needs import Need
from app.drawing.theme import Palette
from app.importing.capture_form import CaptureForm
from app.importing.columns_pane import ColumnsPane
from app.importing.files_pane import FilesPane
from app.importing.reading_form import ReadingForm
from app.importing.rows_pane import RowsPane
from app.importing.trouble_line import TroubleLine
from app.views.elided_label import ElidedLabel
from app.views.pane import Pane
from app.views.problem_bar import ProblemBar

_GAP_PX = 6


def _tr(text: str) -> str:
    return QCoreApplication.translate("import_page", text)


class ImportPage(QWidget):
    """The Import screen.

    Parameters
    ----------
    button : callable
        ``button(name, text=True)`` makes a button for an action.

    Signals
    -------
    import_wanted()
        The files are to be brought in, as they are understood.
    anew_wanted()
        What was taken over from the last time is to be guessed anew.
    elsewhere_wanted()
        Another place for the capture is to be chosen.
    keep_ticked(on)
        Whether what is decided is kept for the next file.
    """

    import_wanted = Signal()
    anew_wanted = Signal()
    elsewhere_wanted = Signal()
    keep_ticked = Signal(bool)

    def __init__(self, button: Callable[..., QToolButton]) -> None:
        super().__init__()
        self.files, self.rows, self.columns = FilesPane(), RowsPane(), ColumnsPane()
        self.reading, self.capture = ReadingForm(), CaptureForm()
        self.problem_bar, self.title, self.subtitle = ProblemBar(), ElidedLabel(), ElidedLabel()
        self.target = ElidedLabel(mode=Qt.TextElideMode.ElideMiddle)
        self.target_trouble = TroubleLine()
        self.keep = QCheckBox(_tr("Keep for files of this shape"))
        self.import_button, self.elsewhere = QPushButton(_tr("Import")), QToolButton()
        self.progress, self.stop = QProgressBar(), button("cancel")
        self.stop.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
        self.stack = QUndoStack(self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 2, 8, 0)
        layout.setSpacing(_GAP_PX)
        layout.addLayout(self._header(button))
        layout.addWidget(self.problem_bar)
        layout.addWidget(self._last_time())
        layout.addWidget(self._panes(), 1)
        layout.addWidget(self.target_trouble)
        layout.addLayout(self._foot())
        self.show_work(None)
        self.show_nothing()

    def show_last_time(self, sentence: str) -> None:
        """Say that a kept recipe fits; nothing for an empty sentence."""
        self._last.setVisible(bool(sentence))
        self._last_text.setText(sentence)
        self._last.setAccessibleDescription(sentence)

    @property
    def last_time(self) -> str:
        """What is said of a kept recipe; empty where none fits."""
        return "" if self._last.isHidden() else self._last_text.text()

    def show_work(self, done: float | None) -> None:
        """Show how far the import has come; None while there is none."""
        at_work = done is not None
        self.progress.setVisible(at_work)
        self.stop.setVisible(at_work)
        self.progress.setValue(round(1000 * (done or 0.0)))
        for widget in (self.panes, self.keep, self.elsewhere, self._last):
            widget.setEnabled(not at_work)
        self.import_button.setVisible(not at_work)

    def show_looking(self, done: float | None) -> None:
        """Say that the file is being looked at; None once it is."""
        text = "" if done is None else _tr("looking at the file: {percent:.0f} %")
        self.rows.set_note(text.format(percent=100.0 * (done or 0.0)))

    def show_nothing(self) -> None:
        """Show that there is no file in front, or that nothing is known of it yet."""
        self.files.show_record("", "", "", {}, "")
        self.rows.show_empty(_tr("The first rows appear here as soon as the file has been looked at."))
        self.columns.show_cards(())
        self.show_reading(False)

    def show_reading(self, known: bool) -> None:
        """Show how the file in front is read, or that this is not known."""
        if known:
            self._reading_pane.show_content()
        else:
            self._reading_pane.show_empty(_tr("How the file is read appears here."))

    def commit(self) -> None:
        """Take what is still being typed."""
        typed = QApplication.focusWidget()
        if isinstance(typed, QLineEdit) and self.isAncestorOf(typed):
            typed.editingFinished.emit()

    def attend(self, need: Need) -> None:
        """Put the hand where something has to be said."""
        reading = self.reading
        fields: dict[Need, QWidget] = {
            Need.TABLE: reading.marks["delimiter"],
            Need.TIME_COLUMN: reading.time,
            Need.TIME_UNIT: reading.time,
            Need.INTERVAL: reading.time,
            Need.RESAMPLE: reading.resample,
            Need.FULL_SCALE: reading.full_scale,
            Need.BLOCKS: reading.blocks,
        }
        cards = [card.use for card in self.columns.cards.values()]
        field = fields.get(need) or next(iter(cards), None)
        if field is not None:
            field.setFocus()

    def show_target(self, text: str, trouble: str = "") -> None:
        """Say where the capture will lie, and what is wrong with that."""
        self.target.setText(text)
        self.target_trouble.show_sentence(trouble)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        for view in (self.problem_bar, self.files, self.rows, self.columns):
            view.apply_palette(palette)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter imports, wherever it does not end what is typed or chosen, or press a button."""
        typing = isinstance(QApplication.focusWidget(), QLineEdit | QComboBox | QPushButton | QToolButton)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not typing:
            self.import_wanted.emit()
        else:
            super().keyPressEvent(event)

    # -- layout ------------------------------------------------------------------------------

    def _header(self, button: Callable[..., QToolButton]) -> QHBoxLayout:
        self.title.setObjectName("captureTitle")
        self.title.setText(_tr("Import"))
        self.subtitle.setProperty("quiet", True)
        self.subtitle.setContentsMargins(0, 4, 0, 0)
        header = QHBoxLayout()
        header.setSpacing(4)
        header.addWidget(button("review", text=True))
        header.addWidget(self.title)
        header.addSpacing(8)
        header.addWidget(self.subtitle, 1)
        return header

    def _last_time(self) -> QFrame:
        self._last = QFrame()
        self._last.setObjectName("hint")
        self._last.setAccessibleName(_tr("As last time"))
        self._last_text = QLabel()
        self._last_text.setTextFormat(Qt.TextFormat.PlainText)
        self._last_text.setWordWrap(True)
        self._last_text.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.anew = QToolButton()
        self.anew.setText(_tr("Guess anew"))
        self.anew.setToolTip(_tr("Leave aside what was kept, and guess from this file alone"))
        self.anew.setProperty("outlined", True)
        self.anew.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.anew.clicked.connect(self.anew_wanted)
        row = QHBoxLayout(self._last)
        row.setContentsMargins(12, 4, 6, 4)
        row.addWidget(self._last_text, 1)
        row.addWidget(self.anew)
        self._last.hide()
        return self._last

    def _panes(self) -> QSplitter:
        reading, capture = Pane(_tr("How it is read")), Pane(_tr("The capture"))
        for pane, form in ((reading, self.reading), (capture, self.capture)):
            pane.set_content(form)
            pane.show_content()
        self._reading_pane = reading
        middle = _stack(self.rows, self.columns, [230, 330])
        right = _stack(reading, capture, [300, 260])
        self.panes = QSplitter(Qt.Orientation.Horizontal)
        columns: tuple[tuple[QWidget, int, int], ...] = (
            (self.files, 1, 232),
            (middle, 5, 420),
            (right, 2, 256),
        )
        for place, (column, stretch, least) in enumerate(columns):
            self.panes.addWidget(column)
            self.panes.setStretchFactor(place, stretch)
            column.setMinimumWidth(least)
        self.panes.setSizes([230, 810, 300])
        self.panes.setHandleWidth(_GAP_PX)
        self.panes.setChildrenCollapsible(False)
        return self.panes

    def _foot(self) -> QHBoxLayout:
        self.progress.setRange(0, 1000)
        self.progress.setTextVisible(False)
        self.progress.setFixedWidth(220)
        self.progress.setAccessibleName(_tr("Progress of the import"))
        self.elsewhere.setText(_tr("Elsewhere…"))
        self.elsewhere.setToolTip(_tr("Choose where the capture is saved"))
        self.elsewhere.setProperty("outlined", True)
        self.elsewhere.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.elsewhere.clicked.connect(self.elsewhere_wanted)
        self.keep.setToolTip(_tr("The next file of the same shape comes up as this one is understood"))
        self.keep.clicked.connect(self.keep_ticked)
        self.import_button.setObjectName("main")
        self.import_button.setAutoDefault(True)
        self.import_button.setToolTip(_tr("Make the capture and open it (Enter, Ctrl+Enter)"))
        self.import_button.clicked.connect(self.import_wanted)
        foot = QHBoxLayout()
        foot.setSpacing(8)
        foot.setContentsMargins(4, 0, 0, 2)
        foot.addWidget(QLabel(_tr("Saved as")))
        foot.addWidget(self.target)
        foot.addWidget(self.elsewhere)
        foot.addStretch(1)
        for widget in (self.keep, self.progress, self.stop, self.import_button):
            foot.addWidget(widget)
        return foot


def _stack(first: QWidget, second: QWidget, sizes: list[int]) -> QSplitter:
    both = QSplitter(Qt.Orientation.Vertical)
    both.setHandleWidth(_GAP_PX)
    both.setChildrenCollapsible(False)
    both.addWidget(first)
    both.addWidget(second)
    both.setSizes(sizes)
    return both
