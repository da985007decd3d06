"""One found band: what the program found, and beside it what the technician says of it."""

from __future__ import annotations

import math

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QLabel,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.diagnosis.findings import Band
from analysis.intervals import Interval
from analysis.reports.confidence import band_odds_words, in_words
from analysis.reports.quantities import travel, volts
from analysis.reports.verdicts import is_watched
from analysis.review.model import Choice, Decision
from analysis.wording import plural
from app.drawing.plain import plain_tip
from app.language import said
from app.review.decision_words import said_of
from app.views.field_keys import FieldKeys
from app.views.flow_row import FlowRow
from app.views.number_box import NumberBox
from app.views.press_row import PressRow, text_line
from app.views.reason_line import ReasonLine

_BEYOND_PERCENT = 20.0
_EDGE_PX = 64
_DECIMALS = 1


class BandCard(PressRow):
    """A band's card.

    Parameters
    ----------
    band : Band
        As it was found.
    tools : list of QWidget
        Controls that stand on the card while it is the chosen one.

    Signals
    -------
    adjusted(Interval)
        Other edges were typed, in % of travel; in whichever order, and again with each key that moves them.
    restored(Decision or None)
        Typing of edges was given up: what was said before it holds.
    reasoned(str)
        A reason was typed.
    why_wanted()
        Why the band comes and goes was asked for.
    """

    adjusted = Signal(object)
    restored = Signal(object)
    reasoned = Signal(str)
    why_wanted = Signal()

    def __init__(self, band: Band, tools: list[QWidget]) -> None:
        title = said(travel(band.travel))
        super().__init__(self.tr("Band {span}").format(span=title))
        self._band = band
        self._decision: Decision | None = None
        self._before: Decision | None = None
        self._adjusting = self._reasoning = self._chosen = False
        self.setObjectName("bandCard")
        self.setToolTip(
            self.tr("Click: light up every crossing. Double-click or Enter: zoom to the clearest one.")
        )
        self.setProperty("watched", is_watched(band))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(9, 5, 6, 6)
        layout.setSpacing(1)
        self._show_found(layout, title)
        layout.addWidget(self._why(title))
        # What comes and goes stands below the buttons: these stay under the pointer that presses them.
        layout.addWidget(self._tools(tools))
        self.said = text_line("", "strong")
        self.said.setObjectName("said")
        layout.addWidget(self.said)
        layout.addWidget(self._edges())
        layout.addWidget(self._reason())
        self._keys = FieldKeys((self.start, self.stop, self.reason), self)
        self._keys.given_up.connect(self._give_up)
        self._show_parts()

    def show_chosen(self, chosen: bool) -> None:
        """Mark the card, and show its controls, or not."""
        self._chosen = chosen
        if not chosen:
            self._adjusting = self._reasoning = False
        self.setProperty("chosen", chosen)
        self.style().unpolish(self)
        self.style().polish(self)
        self._show_parts()

    def show_height(self, text: str) -> None:
        """Say where the band is in millimetres of wheel travel; nothing for an empty text."""
        self.height_line.setText(text)
        self.height_line.setVisible(bool(text))

    def show_decision(self, decision: Decision | None) -> None:
        """Show what the technician said."""
        self._decision = decision
        self.said.setText(said_of(decision))
        self.setAccessibleDescription(said_of(decision))
        self._show_edges()
        if decision is None:
            self._end_reasoning()
        if not self.reason.hasFocus():
            self.reason.setText(decision.reason if decision is not None else "")
        self._show_parts()

    def ask_for_edges(self) -> None:
        """Show the edges to be typed."""
        self._adjusting, self._before = True, self._decision
        self._show_edges()
        self._show_parts()
        self._keys.step_into(self.start)
        self.start.selectAll()

    def ask_for_reason(self) -> None:
        """Show the line for a reason."""
        self._reasoning = True
        self._show_parts()
        self._keys.step_into(self.reason)
        self.reason.selectAll()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter ends typing: the next key is meant for the window again."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._typed_in():
            self._end_typing()
        else:
            super().keyPressEvent(event)

    def _show_found(self, layout: QVBoxLayout, title: str) -> None:
        watched = is_watched(self._band)
        shown = self.tr("Watch: {band}").format(band=title) if watched else title
        head = text_line(shown, "strong" if watched else "place")
        head.setObjectName("pressText")
        layout.addWidget(head)
        band = self._band
        broke = plural(
            "{noisy} of {count} crossing breaks up, up to {worst:.0f} %",
            "{noisy} of {count} crossings break up, up to {worst:.0f} %",
            count=band.passes,
            noisy=band.noisy_passes,
            worst=band.output_smoothness_percent,
        )
        sure = text_line(f"{said(in_words(band.confidence))} · {said(volts(band.volts))}", quiet=True)
        if math.isfinite(band.confidence):
            tip = said(band_odds_words(band.confidence))
            sure.setToolTip(plain_tip(tip))
            sure.setAccessibleDescription(tip)
        layout.addWidget(sure)
        layout.addWidget(text_line(said(broke), quiet=True))
        self.height_line = text_line("", quiet=True)
        self.height_line.hide()
        layout.addWidget(self.height_line)

    def _why(self, title: str) -> QToolButton:
        why = QToolButton()
        why.setText(self.tr("Why it comes and goes…"))
        why.setProperty("heading", True)
        why.setAccessibleName(self.tr("Why it comes and goes…"))
        why.setAccessibleDescription(title)
        why.clicked.connect(self.why_wanted)
        return why

    def _edges(self) -> QWidget:
        self.start, self.stop = NumberBox(), NumberBox()
        names = (self.tr("Beginning of the band, in % of travel"), self.tr("End of the band, in % of travel"))
        self._edge_row = QWidget()
        for box, name in zip((self.start, self.stop), names, strict=True):
            box.setDecimals(_DECIMALS)
            box.setSingleStep(0.1)
            box.setRange(-_BEYOND_PERCENT, 100.0 + _BEYOND_PERCENT)
            box.setFixedWidth(_EDGE_PX)
            box.setAccessibleName(name)
            box.setToolTip(name)
            box.setKeyboardTracking(False)
            box.valueChanged.connect(self._edge_moved)
            box.editingFinished.connect(self._edges_typed)
        self.how_it_ends = text_line(self.tr("Enter takes it, Esc gives it up"), "small", quiet=True)
        self.how_it_ends.setWordWrap(False)  # or a row that flows takes it for a few letters wide
        self.how_it_ends.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        parts = [self.start, QLabel("–"), self.stop, QLabel(self.tr("% of travel")), self.how_it_ends]
        row = FlowRow(parts, gap_px=5)
        self._edge_row.setContentsMargins(0, 5, 0, 0)  # off the line above; the row itself has no rim
        self._edge_row.setLayout(row)
        return self._edge_row

    def _reason(self) -> ReasonLine:
        self.reason = ReasonLine()
        self.reason.setPlaceholderText(self.tr("Why? (Enter keeps it)"))
        self.reason.setAccessibleName(self.tr("Reason for what you say of this band"))
        self.reason.editingFinished.connect(lambda: self.reasoned.emit(self.reason.text().strip()))
        return self.reason

    def _tools(self, tools: list[QWidget]) -> QWidget:
        self._tool_row = QWidget()
        row = FlowRow(tools)
        row.setContentsMargins(0, 3, 0, 0)
        self._tool_row.setLayout(row)
        return self._tool_row

    def _show_edges(self) -> None:
        """Put the edges that hold into their fields, over whatever is half typed there."""
        for box, value in zip((self.start, self.stop), self._edges_that_hold(), strict=True):
            with QSignalBlocker(box):
                box.setValue(value)

    def _edges_that_hold(self) -> tuple[float, float]:
        """As they were said, or else found; in the digits of their fields."""
        said = self._decision.adjusted if self._decision is not None else None
        shown = said or self._band.travel
        return round(shown.start, _DECIMALS), round(shown.stop, _DECIMALS)

    def _edge_moved(self) -> None:
        """Follow at once while the edges are in order; else the other one may be about to be typed."""
        if self.start.value() < self.stop.value():
            self._tell_edges()

    def _edges_typed(self) -> None:
        """Both were typed, and the keyboard is elsewhere: take them in whichever order they came."""
        if not self._typed_in():
            self._tell_edges()

    def _tell_edges(self) -> None:
        low, high = sorted((self.start.value(), self.stop.value()))
        if low < high and (low, high) != self._edges_that_hold():
            self.adjusted.emit(Interval(low, high))
        elif low == high:
            self._show_edges()

    def _give_up(self) -> None:
        """Escape: what was said before holds, and so does the reason that was given."""
        if self.reason.hasFocus():
            self.reason.setText(self._decision.reason if self._decision is not None else "")
        else:
            self.restored.emit(self._before)
            self._show_edges()
        self._end_typing()

    def _end_typing(self) -> None:
        """Give the keyboard back to where it was when the field was stepped into."""
        self._keys.give_back()
        self._adjusting = self._reasoning = False
        self._show_parts()

    def _end_reasoning(self) -> None:
        """Nothing is said any more that a reason could be given for: the next key is the window's."""
        self._reasoning = False
        if self.reason.hasFocus():
            self.reason.clear()
            self._keys.give_back()

    def _typed_in(self) -> bool:
        return any(field.hasFocus() for field in (self.reason, self.start, self.stop))

    def _show_parts(self) -> None:
        decision = self._decision
        reasoned = decision is not None and decision.choice is not Choice.ACCEPTED
        self.said.setVisible(decision is not None)
        self._edge_row.setVisible(self._adjusting)
        self.reason.setVisible(self._chosen and (reasoned or self._reasoning))
        self._tool_row.setVisible(self._chosen)
        self.updateGeometry()
