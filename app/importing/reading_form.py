"""How a file is read: the marks of a text, the scale of a WAV file, and where the time comes from."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QCoreApplication, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QFormLayout, QFrame, QScrollArea, QVBoxLayout, QWidget

from analysis.importing.choices import TextChoices
from analysis.importing.needs import Need
from analysis.importing.seen import Preview
from analysis.importing.wishes import Wishes
from analysis.wording import say
from app.importing.dataset_list import DatasetList
from app.importing.trouble_line import TroubleLine
from app.importing.words import block_names, encoding_names, mark_name, mark_names, problem_sentence
from app.language import said
from app.views.press_row import text_line
from app.views.record_form import WordBox
from app.views.report_fields import LineField
from app.views.tall_enough import TallEnough

FOUND, EVERY, RATE, COLUMN = "found", "every", "rate", "column:"
"""Where the time comes from: found out, an interval, a rate, or (followed by its name) a column."""

_OPEN = "?"  # in a box of marks, where the empty word means "none"
_DELIMITERS, _DECIMALS = ("\t", ";", ",", "|", " "), (".", ",")
_THOUSANDS = ("", ",", ".", " ", "'")
_OF_TIME = (Need.TIME_COLUMN, Need.TIME_UNIT, Need.INTERVAL, Need.RESAMPLE)


def _tr(text: str) -> str:
    return QCoreApplication.translate("reading_form", text)


class ReadingForm(QScrollArea):
    """The form; it changes nothing, it says what was meant.

    Signals
    -------
    text_told(key, word)
        A field of `TextChoices`; the word is ``"?"`` where it is to be found out.
    time_told(word)
        `FOUND`, `EVERY`, `RATE`, or `COLUMN` and a name.
    spacing_entered(text)
        The interval in seconds, or the rate in hertz.
    full_scale_entered(text)
        Volts at full scale of a WAV file.
    datasets_told(names)
        Which of the named arrays of a file are to be used, as a tuple.
    blocks_told(word)
        What blocks are that stand one below the other; empty for what was found.
    resample_ticked(on)
        Whether times that are not evenly spaced may be interpolated.
    """

    text_told = Signal(str, str)
    time_told = Signal(str)
    spacing_entered = Signal(str)
    full_scale_entered = Signal(str)
    resample_ticked = Signal(bool)
    datasets_told = Signal(object)
    blocks_told = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(_tr("How the file is read"))
        self.marks: dict[str, WordBox] = {}
        self.datasets = DatasetList()
        self.datasets.told.connect(self.datasets_told)
        self.blocks, self.block_trouble = (
            WordBox(block_names(), _tr("Blocks of rows"), roomy=True),
            TroubleLine(),
        )
        self.head_lines = LineField(_tr("Lines before the first sample"))
        self.full_scale = LineField(_tr("Volts at full scale"))
        self.time, self.spacing = QComboBox(), LineField(_tr("Seconds between rows, or rows a second"))
        self.resample = QCheckBox(_tr("Interpolate onto even times"))
        self.trouble, self.scale_trouble, self.text_trouble = TroubleLine(), TroubleLine(), TroubleLine()
        self.found, self.resample_note = text_line("", quiet=True), text_line("", quiet=True)
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 6, 0)
        column.setSpacing(6)
        self._text, self._scale, self._blocks = self._text_part(), self._scale_part(), self._block_part()
        for part in (self._text, self._scale, self.datasets, self._blocks, self._time_part()):
            column.addWidget(part)
        column.addStretch(1)
        self.setWidget(body)

    def show_reading(
        self, seen: Preview, wishes: Wishes, time: str, spacing: str, troubles: Mapping[str, str]
    ) -> None:
        """Show how a file is read, what of it was chosen, and what is wrong with it.

        Parameters
        ----------
        seen : Preview
            Of the file.
        wishes : Wishes
            What is decided about it.
        time, spacing : str
            As `time_told` and `spacing_entered` say them.
        troubles : mapping of str to str
            What is wrong with what was entered: ``text``, ``scale``, ``time``.
        """
        self._text.setVisible(seen.kind == "text")
        self._scale.setVisible(seen.kind == "wav")
        self.datasets.show_datasets(seen.datasets)
        self._blocks.setVisible(seen.blocks > 1 or wishes.blocks is not None)
        with QSignalBlocker(self.blocks):
            self.blocks.setItemText(0, _tr("not known yet") if seen.needs(Need.BLOCKS) else _tr("As found"))
        self.blocks.show_word(str(wishes.blocks or ""))
        self.block_trouble.show_sentence(_sentence(seen, (Need.BLOCKS,)))
        self._show_marks(seen.text, wishes.text)
        scale = wishes.full_scale_v
        self.full_scale.show_text("" if scale is None else said(say("{value:.9g}", value=scale)))
        self.text_trouble.show_sentence(troubles.get("text", ""))
        self.scale_trouble.show_sentence(troubles.get("scale", "") or _sentence(seen, (Need.FULL_SCALE,)))
        self._show_time(seen, time, spacing)
        self.trouble.show_sentence(troubles.get("time", "") or _sentence(seen, _OF_TIME))
        self.resample.setChecked(wishes.resample)
        uneven = wishes.resample or seen.needs(Need.RESAMPLE)
        self.resample.setVisible(uneven)
        self.resample_note.setVisible(uneven)
        self.found.setText(said(seen.time.sentence))

    def _show_marks(self, found: TextChoices, chosen: TextChoices) -> None:
        for key, box in self.marks.items():
            value, own = getattr(found, key), getattr(chosen, key)
            name = encoding_names().get(value, value) if key == "encoding" else mark_name(value or "")
            with QSignalBlocker(box):
                box.setItemText(0, _tr("Found: {name}").format(name=name) if value is not None else "–")
            box.show_word(_OPEN if own is None else own)
        lines = found.head_lines
        self.head_lines.setPlaceholderText("" if lines is None else _tr("Found: {name}").format(name=lines))
        own_lines = chosen.head_lines
        self.head_lines.show_text("" if own_lines is None else str(own_lines))

    def _show_time(self, seen: Preview, time: str, spacing: str) -> None:
        found = "" if seen.time.place is None else seen.columns[seen.time.place].name
        as_found = _tr("As found: {name}").format(name=found[:60]) if found and time == FOUND else ""
        words = [(FOUND, as_found or _tr("As found"))]
        words += [
            (COLUMN + item.name, _tr("Column {name}").format(name=item.name[:60])) for item in seen.columns
        ]
        words += [(EVERY, _tr("Seconds between rows")), (RATE, _tr("Rows a second (Hz)"))]
        with QSignalBlocker(self.time):
            if [self.time.itemData(place) for place in range(self.time.count())] != [k for k, _ in words]:
                self.time.clear()
                for word, text in words:
                    self.time.addItem(text, word)
            self.time.setItemText(0, words[0][1])
            self.time.setCurrentIndex(max(self.time.findData(time), 0))
        self.spacing.setVisible(time in (EVERY, RATE))
        self.spacing.setPlaceholderText(_tr("seconds") if time == EVERY else _tr("hertz"))
        self.spacing.show_text(spacing)

    # -- layout ------------------------------------------------------------------------------

    def _text_part(self) -> QWidget:
        part, form = _part()
        form.addRow(self.text_trouble)
        for key, title, marks in (
            ("delimiter", _tr("Between cells"), _DELIMITERS),
            ("decimal", _tr("Decimal sign"), _DECIMALS),
            ("thousands", _tr("Thousands"), _THOUSANDS),
        ):
            names = {_OPEN: "", **{mark: mark_names()[mark] for mark in marks}}
            self._add_mark(form, key, title, names)
        self._add_mark(form, "encoding", _tr("Encoding"), {_OPEN: "", **encoding_names()})
        self.head_lines.entered.connect(lambda text: self.text_told.emit("head_lines", text.strip() or _OPEN))
        form.addRow(_tr("Head lines"), self.head_lines)
        return part

    def _add_mark(self, form: QFormLayout, key: str, title: str, names: Mapping[str, str]) -> None:
        box = WordBox(names, title, roomy=True)
        box.told.connect(lambda word: self.text_told.emit(key, word))
        self.marks[key] = box
        form.addRow(title, box)

    def _scale_part(self) -> QWidget:
        part, form = _part()
        self.full_scale.entered.connect(self.full_scale_entered)
        self.full_scale.setPlaceholderText(_tr("volts"))
        form.addRow(self.scale_trouble)
        form.addRow(_tr("Full scale, V"), self.full_scale)
        return part

    def _block_part(self) -> QWidget:
        part, form = _part()
        self.blocks.told.connect(self.blocks_told)
        form.addRow(self.block_trouble)
        form.addRow(_tr("Blocks"), self.blocks)
        return part

    def _time_part(self) -> QWidget:
        part, form = _part()
        self.time.setAccessibleName(_tr("Where the time comes from"))
        self.time.setToolTip(_tr("Where the time comes from"))
        self.time.setMinimumContentsLength(7)
        self.time.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.time.activated.connect(lambda: self.time_told.emit(str(self.time.currentData())))
        self.spacing.entered.connect(self.spacing_entered)
        self.resample.clicked.connect(self.resample_ticked)
        self.resample_note.setText(
            _tr("Samples between the rows of the file are then worked out, and the capture says so.")
        )
        form.addRow(self.trouble)
        form.addRow(_tr("Time"), self.time)
        form.addRow("", self.spacing)
        form.addRow(self.found)
        form.addRow(self.resample)
        form.addRow(self.resample_note)
        return part


def _part() -> tuple[QWidget, QFormLayout]:
    part = TallEnough()  # or its wrapped lines are cut
    form = QFormLayout(part)
    form.setContentsMargins(0, 0, 0, 0)
    form.setVerticalSpacing(3)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
    form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
    return part, form


def _sentence(seen: Preview, needs: Sequence[Need]) -> str:
    found = next((item for item in seen.problems if item.need in needs), None)
    return problem_sentence(found) if found is not None else ""
