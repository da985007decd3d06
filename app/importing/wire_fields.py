"""What is said of a wire beside its use: unit, factor and offset, probe, and what that measured against."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.importing.words import unit_names
from app.views.record_form import WordBox, key_name, proposed_words
from app.views.report_fields import LineField


def _tr(text: str) -> str:
    return QCoreApplication.translate("column_card", text)


class WireFields(QWidget):
    """The fields of one column.

    Parameters
    ----------
    name : str
        Of the column.

    Signals
    -------
    told(key, word)
        ``unit``, ``factor``, ``offset``, ``probe_point`` or ``return_point``, and the word.
    """

    told = Signal(str, str)

    def __init__(self, name: str) -> None:
        super().__init__()
        self.unit = _box(unit_names(), _tr("{name}: unit"), name)
        self.probe = _box(proposed_words("probe_point"), _tr("{name}: probe"), name, free=True)
        self.against = _box(proposed_words("return_point"), _tr("{name}: against"), name, free=True)
        self.factor = LineField(_tr("{name}: multiplied by").format(name=name))
        self.factor.setFixedWidth(52)
        self.factor.setPlaceholderText("1")
        self.factor.setToolTip(_tr("What every sample is multiplied by: 10 for a probe that divides by ten"))
        self.offset = LineField(_tr("{name}: added in volts").format(name=name))
        self.offset.setFixedWidth(52)
        self.offset.setPlaceholderText("0")
        self.offset.setToolTip(_tr("Volts that are added to every sample after that"))
        for box, key in (
            (self.unit, "unit"),
            (self.probe, "probe_point"),
            (self.against, "return_point"),
        ):
            box.told.connect(lambda word, key=key: self.told.emit(key, word))
        self.factor.entered.connect(lambda text: self.told.emit("factor", text))
        self.offset.entered.connect(lambda text: self.told.emit("offset", text))
        self._lay_out()

    def show_words(
        self, unit: str, factor: str, offset: str, probe: str, against: str, *, wire: bool
    ) -> None:
        """Show what holds; of the times the unit alone."""
        self.unit.show_word(unit)
        self.factor.show_text(factor)
        self.offset.show_text(offset)
        self.probe.show_word(probe)
        self.against.show_word(against)
        for widget in (self._times, self.factor, self._plus, self.offset, self._second):
            widget.setVisible(wire)

    def _lay_out(self) -> None:
        self._times, self._plus, self._second = QLabel("×"), QLabel("+"), QWidget()
        names = [QLabel(key_name(key)) for key in ("probe_point", "return_point")]
        for label in (self._times, self._plus, *names):
            label.setProperty("quiet", True)
        first, second = QHBoxLayout(), QHBoxLayout(self._second)
        first.addWidget(self.unit, 1)
        first.addWidget(self._times)
        first.addWidget(self.factor)
        first.addWidget(self._plus)
        first.addWidget(self.offset)
        for label, box in zip(names, (self.probe, self.against), strict=True):
            second.addWidget(label)
            second.addWidget(box, 1)
        layout = QVBoxLayout(self)
        for row in (first, second, layout):
            row.setContentsMargins(0, 0, 0, 0)
        first.setSpacing(5)
        second.setSpacing(5)
        layout.setSpacing(3)
        layout.addLayout(first)
        layout.addWidget(self._second)


def _box(words: Mapping[str, str], name: str, column: str, free: bool = False) -> WordBox:
    return WordBox(words, name.format(name=column), free)
