"""What a record was taken for, what its probes touched, under which conditions: edited where it is listed."""

from __future__ import annotations

import math
from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, QEvent, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QWheelEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QToolButton,
    QWidget,
)

from analysis.captures.known_words import known_word
from analysis.captures.model import Channel, Record, Role, Step
from analysis.exposure.from_record import SPEED_KEY
from analysis.exposure.road_test import DISTANCE_KEY
from analysis.intervals import Interval
from analysis.review.records import CONDITIONS, DRIVEN, PROBED, Edits, edit_of, spans_of
from analysis.wording import say
from app.language import said
from app.views.tab_order import in_turn, stops
from app.words import channel_name, role_name, step_name

Field = tuple[Interval | None, str, str]
"""A span or the whole record, a channel's name or the record itself, and the word's key."""

_LEAST_LETTERS, _MOST_LETTERS = 7, 17
"""How many capitals X a word asks room for; a longer one than that shows its beginning."""

_MOST_ROWS = 16
"""Every step in sight at once."""

_PROPOSED: Mapping[str, tuple[str, ...]] = {
    "ignition": ("on", "off"),
    "engine": ("off", "idling", "running"),
    "moved": ("by hand", "suspension", "road"),
    "probe_point": ("sensor end", "control-unit end"),
    "return_point": ("battery negative", "sensor ground"),
}


class WordBox(QComboBox):
    """One word: chosen from those that are known, or typed where anybody's own will do.

    Parameters
    ----------
    words : mapping
        The known words, each with what to call it.
    name : str
        What the word is about.
    free : bool
        Whether other words may be typed.
    roomy : bool
        Whether it asks for the room that its word takes.

    Signals
    -------
    told(word)
        Another word was chosen or typed; empty for unknown.
    left()
        Enter or Escape was pressed: the next key is meant for the window.
    """

    told = Signal(str)
    left = Signal()

    def __init__(
        self, words: Mapping[str, str], name: str, free: bool = False, *, roomy: bool = False
    ) -> None:
        super().__init__()
        self._word, self._roomy = "", roomy
        for word, text in words.items():
            self.addItem(text, word)
        self.setEditable(free)
        self.setMaxVisibleItems(_MOST_ROWS)
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setMinimumContentsLength(_LEAST_LETTERS)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        line = self.lineEdit()
        if line is not None:
            line.setAccessibleName(name)
            line.editingFinished.connect(self._tell)
            self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.activated.connect(self._tell)

    def show_word(self, word: str) -> None:
        """Show a word; told nobody."""
        self._word = word
        with QSignalBlocker(self):
            self.setCurrentIndex(self.findData(word))
            if self.isEditable() and self.currentIndex() < 0:
                self.setEditText(word)
            line = self.lineEdit()
            if line is not None:
                line.setText(line.text())  # what was typed before is an edit of the review by now
                line.setCursorPosition(0)  # a long word shows its beginning
        self._make_room()

    def _make_room(self) -> None:
        """Ask for as much as the word takes, counted in capitals X as Qt does: the form gives it a line."""
        if not self._roomy:
            return
        metrics = self.fontMetrics()
        letters = math.ceil(metrics.horizontalAdvance(self.currentText()) / metrics.horizontalAdvance("X"))
        self.setMinimumContentsLength(min(max(letters, _LEAST_LETTERS), _MOST_LETTERS))

    def minimumSizeHint(self) -> QSize:
        """The room that was asked for; Qt keeps the first answer for good."""
        return self.sizeHint() if self._roomy else super().minimumSizeHint()

    def event(self, event: QEvent) -> bool:
        """Leave undo and redo to the window while nothing is typed; keep Escape for the field."""
        line = self.lineEdit()
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            undo = event.matches(QKeySequence.StandardKey.Undo) or event.matches(
                QKeySequence.StandardKey.Redo
            )
            if undo and line is not None and not line.isModified():
                event.ignore()
                return True
            if event.key() == Qt.Key.Key_Escape:
                event.accept()
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter keeps the word, Escape takes back what was typed; both let go of the field."""
        escape, enter = Qt.Key.Key_Escape, (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if event.key() == escape:
            self.show_word(self._word)
        else:
            super().keyPressEvent(event)
        if event.key() in (escape, *enter):
            event.accept()
            self.left.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Scroll what it stands in: a wheel that passes by changes no word."""
        event.ignore()

    def _tell(self) -> None:
        place = self.findText(self.currentText().strip())
        word = self.currentText().strip() if place < 0 else str(self.itemData(place))
        self._make_room()
        if word != self._word:
            self._word = word
            self.told.emit(word)


class RecordForm(QScrollArea):
    """The words of one record and of its spans.

    Signals
    -------
    told(span or None, channel, key, word)
        A word of the record, of a span, or of a channel in it was given.
    span_dropped(Interval)
        A span shall have no words of its own any more.
    left()
        A field was let go by Enter or Escape.
    """

    told = Signal(object, str, str, str)
    span_dropped = Signal(object)
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("What is said of the record"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)  # Tab's order begins here, and does not stop
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.boxes: dict[Field, WordBox] = {}
        self._standing: tuple[object, ...] = ()

    def show_record(self, record: Record | None, edits: Edits, name: str = "") -> None:
        """Show what is said of a record, by its file and by the review; `name` is what it is called."""
        if record is None:
            return
        spans = spans_of(edits, record.name)
        on_road = record.step is Step.ROAD
        standing = (
            record.name,
            name,
            on_road,
            *((item.name, item.role) for item in record.channels),
            *(item.time for item in spans),
        )
        if standing != self._standing:
            self._standing = standing
            self._build(record, [item.time for item in spans if item.time is not None], name)
        for (time, channel, key), box in self.boxes.items():
            box.show_word(_word(record, edits, time, channel, key))

    def take_keys(self) -> None:
        """Let the keyboard begin at the step."""
        first = next(iter(self.boxes.values()), None)
        if first is not None:
            first.setFocus(Qt.FocusReason.TabFocusReason)

    def _build(self, record: Record, spans: list[Interval], name: str) -> None:
        at = next((field for field, box in self.boxes.items() if box.hasFocus()), None)
        self.boxes = {}
        sheet = QWidget()
        form = QFormLayout(sheet)
        form.setContentsMargins(0, 2, 6, 2)
        form.setVerticalSpacing(3)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.addRow(_head(self.tr("Edit: {record}").format(record=name or record.name)))
        self._add(form, (None, "", "step"))
        for key in (*CONDITIONS, *(DRIVEN if record.step is Step.ROAD else ())):
            self._add(form, (None, "", key))
        for channel in record.channels:
            form.addRow(_head(_channel_text(channel)))
            for key in ("role", *PROBED):
                self._add(form, (None, channel.name, key))
        for span in spans:
            form.addRow(self._span_head(span))
            self._add(form, (span, "", "step"))
            for channel in record.channels:
                self._add(form, (span, channel.name, "role"))
        old = self.takeWidget()
        if old is not None:
            old.deleteLater()
        self.setWidget(sheet)
        in_turn([self, *stops(sheet)])
        if at is not None and at in self.boxes:
            self.boxes[at].setFocus()  # whoever goes through the steps by keys goes on

    def _add(self, form: QFormLayout, field: Field) -> None:
        time, channel, key = field
        name = key_name(key)
        spoken = " · ".join(part for part in (name, channel, _span_text(time) if time else "") if part)
        free = key not in ("step", "role", "plugged")
        box = WordBox(proposed_words(key), spoken, free, roomy=True)
        box.told.connect(lambda word: self.told.emit(time, channel, key, word))
        box.left.connect(self.left)
        self.boxes[field] = box
        label = QLabel(channel if time is not None and channel else name)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setBuddy(box)
        form.addRow(label, box)

    def _span_head(self, span: Interval) -> QWidget:
        head = QWidget()
        row = QHBoxLayout(head)
        row.setContentsMargins(0, 4, 0, 0)
        row.addWidget(_head(_span_text(span)), 1)
        drop = QToolButton()
        drop.setText(self.tr("Drop"))
        drop.setProperty("heading", True)
        drop.setToolTip(self.tr("Let this span be as the rest of its record again"))
        drop.setAccessibleName(self.tr("Drop the span {span}").format(span=_span_text(span)))
        drop.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        drop.clicked.connect(lambda: self.span_dropped.emit(span))
        row.addWidget(drop)
        return head


def _channel_text(channel: Channel) -> str:
    """A channel by its role; by its own name too where that says something else."""
    name = channel_name(channel)
    role = str(channel.role or "").replace("_", " ")
    return name if channel.name in (name, role, str(channel.role or "")) else f"{name} ({channel.name})"


def _head(text: str) -> QLabel:
    label = QLabel(text)
    label.setObjectName("paneTitle")
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label


def _span_text(span: Interval) -> str:
    return said(say("{start_s:.2f}–{stop_s:.2f} s", start_s=span.start, stop_s=span.stop))


def _word(record: Record, edits: Edits, time: Interval | None, channel: str, key: str) -> str:
    """What holds: the review's word, else the file's; a span without a word has that of its record."""
    if time is not None:
        edit = edit_of(edits, record.name, time)
        told = edit.channels.get(channel, {}) if channel else edit.words
        if key in told:
            return told[key]
    if channel:
        own = next(item for item in record.channels if item.name == channel)
        return str(own.role or "") if key == "role" else str(own.attributes.get(key, ""))
    if key == "step":
        return str(record.step or "")
    value = record.attributes.get(key, "")
    return f"{value:g}" if isinstance(value, float | int) else str(value)


def proposed_words(key: str) -> Mapping[str, str]:
    """Words that are proposed for a key, with what to call each; the empty one stands for unknown."""
    unknown = {"": _tr("not told")}
    if key == "step":
        return unknown | {str(step): step_name(step) for step in Step}
    if key == "role":
        return unknown | {str(role): role_name(role) for role in Role}
    if key == "plugged":
        return unknown | {"1": _tr("yes"), "0": _tr("no")}
    return {word: said(known_word(word)) for word in _PROPOSED.get(key, ())}


def key_name(key: str) -> str:
    """What a key is called: ``"ignition"``, ``"probe_point"``."""
    return {
        "step": _tr("Step"),
        "plugged": _tr("Plugged in"),
        "ignition": _tr("Ignition"),
        "engine": _tr("Engine"),
        "loads": _tr("Loads"),
        "moved": _tr("Moved"),
        "temperature": _tr("°C"),
        DISTANCE_KEY: _tr("Driven, km"),
        SPEED_KEY: _tr("Speed, km/h"),
        "role": _tr("Touches"),
        "probe_point": _tr("Probe"),
        "return_point": _tr("Against"),
    }[key]


def _tr(text: str) -> str:
    return QCoreApplication.translate("RecordForm", text)
