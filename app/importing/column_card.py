"""One column of a file: what it looks like, what it is used for and why, its unit, its probe."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QVBoxLayout, QWidget

from analysis.captures.model import Role
from analysis.importing.seen import ColumnSeen
from analysis.wording import say
from app.drawing.numbers import volts
from app.drawing.theme import LIGHT, Palette
from app.importing.draft import OUT, TIME
from app.importing.picture import ColumnPicture
from app.importing.wire_fields import WireFields
from app.importing.words import use_names
from app.language import said
from app.views.elided_label import ElidedLabel
from app.views.press_row import text_line
from app.views.record_form import WordBox

_STEPPING = (
    Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Home, Qt.Key.Key_End
)  # fmt: skip
_PICTURE_PX, _WORDS_PX, _USE_PX, _WIRE_PX = 150, 110, 140, 250
_SMALL_PX = 100
_LEAST_V = 0.5
"""A picture spans this much at least: a steady wire is a line, however its last digit flickers."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("column_card", text)


@dataclass(frozen=True, slots=True)
class CardFacts:
    """What a card shows.

    Parameters
    ----------
    seen : ColumnSeen
        The column as understood.
    use : str
        A role, ``"time"`` or ``"out"``.
    reason : str
        Why, for people.
    unit, factor, offset, probe, against : str
        As decided; empty where it is as found.
    scaled : bool
        Whether it is known how many volts its numbers are.
    """

    seen: ColumnSeen
    use: str
    reason: str
    unit: str = ""
    factor: str = ""
    offset: str = ""
    probe: str = ""
    against: str = ""
    scaled: bool = True


class UseBox(WordBox):
    """What a column is used for: arrow keys open the list, since to pass through a role would take it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Open the list; letters choose at once, as in any list."""
        if event.key() in _STEPPING:
            self.showPopup()
        else:
            super().keyPressEvent(event)


class ColumnCard(QFrame):
    """A card; it changes nothing, it says what was meant.

    The fields of a wire are made when they are first shown: a file may have hundreds of columns, and a sensor
    has a handful of wires.

    Signals
    -------
    told(key, word)
        Something else was chosen or entered: ``use``, or a key of `WireFields`.
    """

    told = Signal(str, str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("columnCard")
        self.setAccessibleName(_tr("Column {name}").format(name=name))
        self._palette, self._use, self._name = LIGHT, OUT, name
        self._wire: WireFields | None = None
        self._narrow = False
        self.picture, self.name, self.range = ColumnPicture(), ElidedLabel(), ElidedLabel()
        self.name.setStyleSheet("font-weight: 600;")
        self.range.setProperty("quiet", True)
        self.reason = text_line("", quiet=True)
        self.use = UseBox(use_names(), _tr("{name}: used as").format(name=name))
        self.use.told.connect(lambda word: self.told.emit("use", word))
        self._lay_out()

    @property
    def wire(self) -> WireFields:
        """The fields of a wire, made now if they were not yet."""
        if self._wire is None:
            self._wire = WireFields(self._name)
            self._wire.told.connect(self.told)
            self._place_wire(self._wire)
        return self._wire

    def show_facts(self, facts: CardFacts) -> None:
        """Show what holds; may be told the same thing twice."""
        seen = facts.seen
        self._use = facts.use
        self.name.setText(f"{seen.name} [{seen.unit}]" if seen.unit else seen.name)
        self.range.setText(_range(seen, facts.use == TIME, facts.scaled))
        self.reason.setText(facts.reason)
        self.setAccessibleDescription(f"{self.range.text()}. {facts.reason}")
        self.picture.show_extremes(seen.minimum, seen.maximum, 0.0 if facts.use == TIME else _LEAST_V)
        self.picture.setAccessibleName(self.range.text())
        self.use.show_word(facts.use)
        if facts.use != OUT:
            words = (facts.unit, facts.factor, facts.offset, facts.probe, facts.against)
            self.wire.show_words(*words, wire=facts.use != TIME)
            self.wire.show()
        elif self._wire is not None:
            self._wire.hide()
        self._recolour()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._recolour()

    def show_narrow(self, narrow: bool) -> None:
        """Where there is little width, put the fields of a wire below its use, and draw the picture small."""
        if narrow == self._narrow:
            return
        self._narrow = narrow
        self._layout.setColumnMinimumWidth(3, 0 if narrow else _WIRE_PX)
        self.picture.setFixedWidth(_SMALL_PX if narrow else _PICTURE_PX)
        if self._wire is not None:
            self._layout.removeWidget(self._wire)
            self._place_wire(self._wire)

    def _place_wire(self, wire: WireFields) -> None:
        if self._narrow:
            self._layout.addWidget(wire, 2, 0, 1, 4)
        else:
            self._layout.addWidget(wire, 0, 3, 2, 1, Qt.AlignmentFlag.AlignTop)

    def _recolour(self) -> None:
        palette = self._palette
        colour = palette.role(Role(self._use) if self._use not in (TIME, OUT) else None)
        if self.property("use") != self._use:
            self.setProperty("use", self._use)
            self.style().unpolish(self)
            self.style().polish(self)
        ink = palette.shade("faint", 1.0) if self._use == OUT else colour
        self.picture.recolour(ink, palette.shade("paper", 1.0), palette.shade("line", 1.0))
        self.name.setEnabled(self._use != OUT)

    def _lay_out(self) -> None:
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.name)
        words.addWidget(self.range)
        self._layout = layout = QGridLayout(self)
        layout.setContentsMargins(8, 5, 8, 5)
        layout.setHorizontalSpacing(10)
        layout.setVerticalSpacing(3)
        layout.addWidget(self.picture, 0, 0, 2, 1)
        layout.addLayout(words, 0, 1, 2, 1, Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self.use, 0, 2, 2, 1, Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self.reason, 3, 0, 1, 4)
        # The same widths in every card, so that one reads down the roles.
        for widget, width in ((self.picture, _PICTURE_PX), (self.use, _USE_PX)):
            widget.setFixedWidth(width)
        for column, share in ((1, 2), (3, 5)):
            layout.setColumnStretch(column, share)
        layout.setColumnMinimumWidth(1, _WORDS_PX)
        layout.setColumnMinimumWidth(3, _WIRE_PX)


def _range(seen: ColumnSeen, is_time: bool, scaled: bool) -> str:
    """What the column reads, and what is missing of it."""
    if seen.low != seen.low:  # NaN: nothing finite
        text = _tr("no finite sample")
    elif not scaled:
        text = said(say("{low:.3g}–{high:.3g} of full scale", low=seen.low, high=seen.high))
    elif is_time:
        text = said(say("{low:.6g}–{high:.6g} s", low=seen.low, high=seen.high))
    else:
        text = f"{volts(seen.low)} – {volts(seen.high)}"
    if seen.missing:
        text += " · " + _tr("{count} missing").format(count=seen.missing)
    if seen.over_range:
        text += " · " + _tr("{count} over range").format(count=seen.over_range)
    return text
