"""One column of a file: what it looks like, what it is used for and why, its unit, its probe."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from analysis.captures.model import Role
from analysis.importing.seen import ColumnSeen
from analysis.wording import say
from app.drawing.numbers import volts
from app.drawing.theme import LIGHT, Palette
from app.importing.draft import OUT, TIME
from app.importing.picture import ColumnPicture
from app.importing.words import unit_names, use_names
from app.language import said
from app.views.elided_label import ElidedLabel
from app.views.press_row import text_line
from app.views.record_form import WordBox, key_name, proposed_words
from app.views.report_fields import LineField

_STEPPING = (
    Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Home, Qt.Key.Key_End
)  # fmt: skip
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
    unit, factor, probe, against : str
        As decided; empty where it is as found.
    scaled : bool
        Whether it is known how many volts its numbers are.
    """

    seen: ColumnSeen
    use: str
    reason: str
    unit: str = ""
    factor: str = ""
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

    Signals
    -------
    use_told(use), unit_told(unit), factor_entered(text), probe_told(word), against_told(word)
        Something else was chosen or entered.
    """

    use_told = Signal(str)
    unit_told = Signal(str)
    factor_entered = Signal(str)
    probe_told = Signal(str)
    against_told = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("columnCard")
        self.setAccessibleName(_tr("Column {name}").format(name=name))
        self._palette, self._use = LIGHT, OUT
        self.picture, self.name, self.range = ColumnPicture(), ElidedLabel(), ElidedLabel()
        self.name.setStyleSheet("font-weight: 600;")
        self.range.setProperty("quiet", True)
        self.reason = text_line("", quiet=True)
        self.use = UseBox(use_names(), _tr("{name}: used as").format(name=name))
        self.unit = _box(unit_names(), _tr("{name}: unit"), name)
        self.probe = _box(proposed_words("probe_point"), _tr("{name}: probe"), name, free=True)
        self.against = _box(proposed_words("return_point"), _tr("{name}: against"), name, free=True)
        self.factor = LineField(_tr("{name}: multiplied by").format(name=name))
        self.factor.setFixedWidth(52)
        self.factor.setPlaceholderText("1")
        self.factor.setToolTip(_tr("What every sample is multiplied by: 10 for a probe that divides by ten"))
        for box, told in (
            (self.use, self.use_told),
            (self.unit, self.unit_told),
            (self.probe, self.probe_told),
            (self.against, self.against_told),
        ):
            box.told.connect(told)
        self.factor.entered.connect(self.factor_entered)
        self._lay_out()

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
        self.unit.show_word(facts.unit)
        self.factor.show_text(facts.factor)
        self.probe.show_word(facts.probe)
        self.against.show_word(facts.against)
        self.unit.setVisible(facts.use != OUT)
        wire = facts.use not in (TIME, OUT)
        self._times.setVisible(wire)
        for name in self._probe_names:
            name.setVisible(wire)
        for field in (self.factor, self.probe, self.against):
            field.setVisible(wire)
        self._recolour()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._recolour()

    def _recolour(self) -> None:
        palette = self._palette
        colour = palette.role(Role(self._use) if self._use not in (TIME, OUT) else None)
        if self.property("use") != self._use:
            self.setProperty("use", self._use)
            self.style().unpolish(self)
            self.style().polish(self)
        ink = palette.shade("faint", 0.7) if self._use == OUT else colour
        self.picture.recolour(ink, palette.shade("paper", 1.0), palette.shade("line", 1.0))
        self.name.setEnabled(self._use != OUT)

    def _lay_out(self) -> None:
        self._times = QLabel("×")
        self._probe_names = [QLabel(key_name(key)) for key in ("probe_point", "return_point")]
        for label in (self._times, *self._probe_names):
            label.setProperty("quiet", True)
        first, second = QHBoxLayout(), QHBoxLayout()
        for row, widgets in (
            (first, (self.use, self.unit, self._times, self.factor)),
            (second, (self._probe_names[0], self.probe, self._probe_names[1], self.against)),
        ):
            row.setSpacing(5)
            for widget in widgets:
                row.addWidget(widget, 1 if isinstance(widget, WordBox) else 0)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.name)
        words.addWidget(self.range)
        layout = QGridLayout(self)
        layout.setContentsMargins(8, 5, 8, 5)
        layout.setHorizontalSpacing(10)
        layout.setVerticalSpacing(3)
        layout.addWidget(self.picture, 0, 0, 2, 1)
        layout.addLayout(words, 0, 1, 2, 1, Qt.AlignmentFlag.AlignTop)
        layout.addLayout(first, 0, 2)
        layout.addLayout(second, 1, 2)
        layout.addWidget(self.reason, 2, 0, 1, 3)
        layout.setColumnStretch(0, 3)
        layout.setColumnStretch(1, 3)
        layout.setColumnStretch(2, 6)


def _box(words: Mapping[str, str], name: str, column: str, free: bool = False) -> WordBox:
    return WordBox(words, name.format(name=column), free)


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
