"""What the technician enters for the report: the job, the words, pictures, photos, offer, closing list."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from analysis.review.job import CLOSING, FACTS, Job, with_fact, with_words
from analysis.wording import Wording, say
from app.language import said
from app.views.photo_list import PhotoList
from app.views.picture_choice import PictureChoice
from app.views.report_fields import LineField, TextField, tick_box


def _tr(text: str) -> str:
    return QCoreApplication.translate("report_form", text)


def _fact_names() -> dict[str, Wording]:
    return {
        "job": say("Job number"),
        "date": say("Measured on"),
        "technician": say("Technician"),
        "vehicle": say("Vehicle"),
        "registration": say("Registration"),
        "vin": say("VIN"),
        "odometer": say("Odometer"),
        "complaint": say("Complaint"),
        "fault_codes": say("Fault codes"),
        "sensor": say("Sensor"),
        "mounting": say("Mounting"),
        "part_number": say("Part number"),
        "load": say("Load"),
        "earlier_repairs": say("Earlier repairs"),
    }


def _word_names() -> dict[str, str]:
    return {
        "sentence": _tr("What was found"),
        "meaning": _tr("What it means"),
        "driving": _tr("Can it be driven?"),
        "left": _tr("If it is left"),
        "recommended": _tr("What we recommend"),
        "not_included": _tr("What that does not include"),
    }


def _offer_names() -> dict[str, str]:
    return {
        "part": _tr("Part"),
        "labour": _tr("Labour"),
        "calibration": _tr("Calibration"),
        "tax_percent": _tr("Tax, %"),
        "currency": _tr("Currency"),
    }


def _closing_names() -> dict[str, str]:
    return {
        "calibrated": _tr("Calibrated by the maker's method"),
        "codes_cleared": _tr("Fault codes cleared"),
        "heights_measured": _tr("Heights or end positions measured"),
        "road_test": _tr("Road test done"),
        "captured_again": _tr("Captured again"),
    }


_LONG = ("complaint", "earlier_repairs", "fault_codes")


@dataclass(frozen=True, slots=True)
class Entries:
    """What the form shows.

    Parameters
    ----------
    job : Job
        As the review keeps it.
    facts : mapping of str to str
        Each fact as it will be printed.
    words : mapping of str to str
        The program's wording of each paragraph.
    other : str
        Name of the capture that is set beside this one; empty for none.
    """

    job: Job
    facts: Mapping[str, str]
    words: Mapping[str, str]
    other: str = ""


class ReportForm(QScrollArea):
    """The form; it changes nothing, it says what the technician entered.

    Signals
    -------
    edited(Wording, Job)
        What was done, for the menu of steps that can be undone, and the new job.
    other_wanted(), other_dropped()
        Another capture is to be set beside this one, or none.
    photos_wanted()
        Photos are to be chosen.
    """

    edited = Signal(object, object)
    other_wanted = Signal()
    other_dropped = Signal()
    photos_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(_tr("What the report says"))
        self._entries = Entries(Job(), {}, {})
        self.facts: dict[str, LineField | TextField] = {}
        self.offer: dict[str, LineField] = {}
        self.closing: dict[str, QCheckBox] = {}
        self.pictures = PictureChoice()
        self.paragraph, self.words = QComboBox(), TextField(_tr("Words of the paragraph"), 6)
        self.notes = TextField(_tr("Notes"), 3)
        self.repaired, self.number = tick_box(_tr("Print the list")), tick_box()
        self.markers = tick_box(_tr("Print what the markers read"))
        self.own_again = QPushButton(_tr("The program's words again"))
        self.other, self.photos = QLabel(), PhotoList()
        body = QWidget()
        self._column = QVBoxLayout(body)
        self._column.setContentsMargins(8, 6, 8, 8)  # the ring about the whole form keeps off its labels
        for build in (self._job, self._wording, self._picture_choice, self._extras, self._offer, self._after):
            build()
        self._column.addStretch(1)
        self.setWidget(body)

    def show_entries(self, entries: Entries) -> None:
        """Show what is kept; telling it twice is harmless."""
        self._entries = entries
        job = entries.job
        for key, field in self.facts.items():
            field.show_text(entries.facts.get(key, ""))
        for key, line in self.offer.items():
            line.show_text(job.offer.get(key, ""))
        for key, box in self.closing.items():
            _check(box, key in job.closing)
        self.pictures.show_choice(job.pictures)
        _check(self.repaired, job.repaired)
        _check(self.number, job.show_number)
        _check(self.markers, job.markers)
        self.notes.show_text(job.notes)
        self.other.setText(entries.other or _tr("A modelled good sensor"))
        self.photos.show_photos(job.photos)
        self._show_paragraph()

    def commit(self) -> None:
        """Take what is still being typed."""
        focused = self.focusWidget()
        if isinstance(focused, TextField):
            focused.commit()
        elif isinstance(focused, LineField):
            focused.editingFinished.emit()

    # -- layout ------------------------------------------------------------------------------

    def _group(self, title: str) -> QFormLayout:
        heading = QLabel(title)
        heading.setObjectName("paneTitle")
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.DontWrapRows)
        form.setVerticalSpacing(3)
        self._column.addWidget(heading)
        self._column.addLayout(form)
        self._column.addSpacing(6)
        return form

    def _job(self) -> None:
        form = self._group(_tr("The job"))
        names = {key: said(name) for key, name in _fact_names().items()}
        for key in FACTS:
            field = TextField(names[key], 2) if key in _LONG else LineField(names[key])
            field.entered.connect(lambda text, key=key: self._enter_fact(key, text))
            self.facts[key] = field
            form.addRow(names[key], field)

    def _wording(self) -> None:
        form = self._group(_tr("The words on page one"))
        for key, name in _word_names().items():
            self.paragraph.addItem(name, key)
        self.paragraph.setAccessibleName(_tr("Paragraph"))
        self.paragraph.currentIndexChanged.connect(lambda _place: self._show_paragraph())
        self.words.entered.connect(self._enter_words)
        self.own_again.clicked.connect(lambda: self._enter_words(None))
        form.addRow(_tr("Paragraph"), self.paragraph)
        form.addRow(self.words)
        form.addRow(self.own_again)
        self.number.setText(_tr("Say the odds as a number too"))
        self.number.clicked.connect(lambda on: self._edit(say("show the odds"), show_number=on))
        form.addRow(self.number)
        self.markers.clicked.connect(lambda on: self._edit(say("print the markers"), markers=on))
        form.addRow(self.markers)
        self.notes.entered.connect(lambda text: self._edit(say("change the notes"), notes=text))
        form.addRow(_tr("Notes"), self.notes)

    def _picture_choice(self) -> None:
        form = self._group(_tr("The picture"))
        self.pictures.chosen.connect(lambda codes: self._edit(say("choose the picture"), pictures=codes))
        form.addRow(self.pictures)
        choose, drop = QPushButton(_tr("Set a capture beside it…")), QPushButton(_tr("None"))
        choose.clicked.connect(self.other_wanted)
        drop.clicked.connect(self.other_dropped)
        self.other.setTextFormat(Qt.TextFormat.PlainText)  # the name of a file
        self.other.setWordWrap(True)
        form.addRow(_tr("Beside it"), self.other)
        form.addRow(_row(choose, drop))

    def _extras(self) -> None:
        form = self._group(_tr("Photos of the car"))
        self.photos.edited.connect(lambda photos: self._edit(say("change the photos"), photos=photos))
        self.photos.wanted.connect(self.photos_wanted)
        form.addRow(self.photos)

    def _offer(self) -> None:
        form = self._group(_tr("An offer (printed where an amount is entered)"))
        for key, name in _offer_names().items():
            field = LineField(name)
            field.entered.connect(lambda text, key=key: self._enter_offer(key, text))
            self.offer[key] = field
            form.addRow(name, field)

    def _after(self) -> None:
        form = self._group(_tr("After the repair"))
        self.repaired.clicked.connect(lambda on: self._edit(say("print the closing list"), repaired=on))
        form.addRow(self.repaired)
        for key, name in _closing_names().items():
            box = tick_box(name)
            box.clicked.connect(lambda on, key=key: self._tick(key, on))
            self.closing[key] = box
            form.addRow(box)

    # -- what was meant ----------------------------------------------------------------------

    def _edit(self, text: Wording, **changes: object) -> None:
        self.edited.emit(text, replace(self._entries.job, **changes))  # type: ignore[arg-type]

    def _enter_fact(self, key: str, text: str) -> None:
        done = say("change {name}", name=_fact_names()[key])
        self.edited.emit(done, with_fact(self._entries.job, key, text))

    def _enter_words(self, text: str | None) -> None:
        key = str(self.paragraph.currentData())
        own = None if text is None or text == self._entries.words.get(key) else text
        self.edited.emit(say("change the words"), with_words(self._entries.job, key, own))

    def _enter_offer(self, key: str, text: str) -> None:
        kept = {name: value for name, value in self._entries.job.offer.items() if name != key}
        self._edit(say("change the offer"), offer={**kept, key: text} if text.strip() else kept)

    def _tick(self, key: str, on: bool) -> None:
        done = {*self._entries.job.closing} | {key} if on else {*self._entries.job.closing} - {key}
        self._edit(say("tick the closing list"), closing=tuple(item for item in CLOSING if item in done))

    def _show_paragraph(self) -> None:
        key = str(self.paragraph.currentData())
        own = self._entries.job.words.get(key)
        self.words.show_text(self._entries.words.get(key, "") if own is None else own)
        self.own_again.setEnabled(own is not None)


def _check(box: QCheckBox, on: bool) -> None:
    box.setChecked(on)


def _row(*widgets: QWidget) -> QWidget:
    row = QWidget()
    layout = QHBoxLayout(row)
    layout.setContentsMargins(0, 0, 0, 0)
    for widget in widgets:
        layout.addWidget(widget)
    return row
