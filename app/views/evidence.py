"""Evidence: the verdict, how sure it is, what it stands on, and what to capture next."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEvent, QPoint, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLayout, QScrollArea, QVBoxLayout, QWidget

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Band, Findings, Result, State, Statement, VerdictCode
from analysis.reports.checks import check_sentence, is_judged, state_name
from analysis.reports.confidence import in_words, verdict_odds_words
from analysis.reports.contrary import contrary_line, told_in_order
from analysis.reports.quantities import travel
from analysis.reports.to_show import to_show
from analysis.reports.verdicts import verdict_title
from analysis.review.model import Choice, Decision
from analysis.vehicle.heights import VehicleHeights
from analysis.vehicle.words import span_words
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.views.band_card import BandCard
from app.views.caution_strip import CautionStrip
from app.views.held_row import HeldRow, bring_into_sight
from app.views.pane import Pane
from app.views.press_row import PressRow, text_line
from app.views.tab_order import in_turn, stops
from app.views.tall_enough import TallEnough
from app.views.told_row import told_row
from app.views.tone_mark import ToneMark
from app.views.verdict_head import VerdictHead
from app.words import record_names, said_of

_STATES = {
    State.PROVED: ("pass", "good"),
    State.REFUTED: ("fail", "bad"),
    State.NOT_SHOWN: ("unsure", "unsure"),
}
_RESULTS = {
    Result.PASS: ("pass", "good"),
    Result.FAIL: ("fail", "bad"),
    Result.CANNOT_TELL: ("unsure", "unsure"),
}
_LOW_PX = 400
"""Below this height the first caution would leave no room for the verdict; its title stays."""
_LEAST_ROWS_PX = 44  # three lines
_CAUTIONS_SHARE = 0.5
"""Of the pane, at the most: where all are asked for, verdict and evidence stay in sight, and they scroll."""
_CALM = {VerdictCode.NO_FAULT_FOUND: "good", VerdictCode.INCONCLUSIVE: "unsure"}


class EvidenceView(Pane):
    """The verdict and everything that it stands on.

    Signals
    -------
    band_chosen(index), band_opened(index)
        A band's card was pressed once or twice.
    band_adjusted(index, Interval), band_restored(index, Decision or None), reason_given(index, text)
        Other edges, or a reason, were typed on a band's card; or typing of edges was given up.
    record_wanted(name)
        A reading was pressed; it was read in this record.
    statement_pressed(Statement)
        A statement was pressed; what shows it is to be shown.
    why_wanted(index)
        Why a band comes and goes was asked for.
    """

    band_chosen = Signal(int)
    band_opened = Signal(int)
    band_adjusted = Signal(int, object)
    band_restored = Signal(int, object)
    reason_given = Signal(int, str)
    record_wanted = Signal(str)
    statement_pressed = Signal(object)
    why_wanted = Signal(int)
    _resized = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Evidence"))
        self.setAccessibleName(self.tr("Evidence: verdict and what it stands on"))
        self._palette = LIGHT
        self._capture: Capture | None = None
        self._findings: Findings | None = None
        self._cards: list[BandCard] = []
        self._chosen: int | None = None
        self._decisions: tuple[Decision | None, ...] = ()
        self._make_tools: Callable[[], list[QWidget]] = list
        self._heights: VehicleHeights | None = None
        self.rows_area = QScrollArea()
        self._layout = QVBoxLayout()
        self.rows_area.setMinimumHeight(_LEAST_ROWS_PX)
        self._held = HeldRow(self.rows_area, self._settle)
        self.rows_area.setWidgetResizable(True)
        self.rows_area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.rows_area.setFocusPolicy(Qt.FocusPolicy.ClickFocus)  # Tab's order begins here, and does not stop
        self._head, self._cautions = VerdictHead(), CautionStrip()
        content = QWidget()
        self._column = column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._head)
        column.addWidget(self.rows_area, 1)
        column.addWidget(self._cautions)
        self.set_content(content)
        # Queued: what stands in the pane takes its new height after it.
        self._resized.connect(self._keep_in_sight, Qt.ConnectionType.QueuedConnection)
        self.show_findings(None, None)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a low screen leave the room to the verdict."""
        super().resizeEvent(event)
        self._cautions.show_brief(self.height() < _LOW_PX)
        self._cautions.leave_room(round(_CAUTIONS_SHARE * self.height()))
        self._resized.emit()

    def _keep_in_sight(self) -> None:
        """Let the markers below take no part of the chosen card: its buttons and what was said of it."""
        if self._chosen is not None and self._chosen < len(self._cards):
            self._cautions.fit_height()  # folded or not just now, and not given its place yet
            self._column.activate()
            card, seen = self._cards[self._chosen], self.rows_area.viewport()
            if seen.rect().intersects(card.rect().translated(card.mapTo(seen, QPoint(0, 0)))):
                bring_into_sight(self.rows_area, card)

    def show_stopped(self) -> None:
        """Say how to go on after an examination that was stopped or failed."""
        if self._findings is None and self._capture is not None:
            self.show_empty(self.tr("The capture was not examined to the end. Press F5 to examine it again."))

    def show_findings(self, capture: Capture | None, findings: Findings | None) -> None:
        """Show these findings, or what to do to get some."""
        before, at_px = self._examined(), self.rows_area.verticalScrollBar().value()
        self._capture, self._findings = capture, findings
        self._cards, self._chosen, self._decisions = [], None, ()
        if findings is None:
            self.show_empty(
                self.tr("The capture is being examined.")
                if capture is not None
                else self.tr(
                    "Open a capture to learn which band of travel is worn, how sure that is, and why."
                )
            )
            return
        self._cautions.show_for(capture)
        self._cautions.show_brief(self.height() < _LOW_PX)
        self._fill(findings, at_px if before == self._examined() else 0)
        self.show_content()

    def _examined(self) -> tuple[str, VerdictCode] | None:
        """What is read here: examined again to the same verdict, the reader goes on where he was."""
        if self._capture is None or self._findings is None:
            return None
        return self._capture.capture_id, self._findings.verdict.code

    def use_tools(self, make: Callable[[], list[QWidget]]) -> None:
        """Put controls that `make` gives on the card of the chosen band."""
        self._make_tools = make

    def show_heights(self, heights: VehicleHeights | None) -> None:
        """Say bands in millimetres of wheel travel too, where heights are known."""
        self._heights = heights
        for card, band in zip(self._cards, self._findings.bands if self._findings else (), strict=True):
            card.show_height(self._in_mm(band))

    def choose_band(self, band: int | None) -> None:
        """Mark the card of a band; a row that was pressed stays under the pointer, to be pressed again."""
        another, self._chosen = band != self._chosen, band
        with self._held.kept(self._layout) as pressed:
            for index, card in enumerate(self._cards):
                card.show_chosen(index == band)
        if another and not pressed and band is not None and band < len(self._cards):
            self._bring_into_sight(self._cards[band])

    def leaveEvent(self, event: QEvent) -> None:
        """Close the room that was left where a card above the pointer closed."""
        super().leaveEvent(event)
        self._held.let_go()

    def _settle(self) -> None:
        """Give everything its place now: Qt would do so after the next event."""
        body = self.rows_area.widget()
        for card in self._cards:
            layout = card.layout()
            if layout is not None:
                layout.activate()
        self._layout.activate()
        if isinstance(body, TallEnough):
            body.fit_height()
            body.resize(body.width(), max(body.minimumHeight(), self.rows_area.viewport().height()))
        self._layout.activate()

    def show_decisions(self, decisions: tuple[Decision | None, ...]) -> None:
        """Show what the technician said of each band, beside what was found."""
        before, self._decisions = self._of_chosen(), decisions
        for card, decision in zip(self._cards, decisions, strict=False):
            card.show_decision(decision)
        if self._of_chosen() != before:
            self._resized.emit()  # the line that says so makes the card higher
        if self._findings is not None:
            self._show_dismissed(self._findings.bands)

    def _of_chosen(self) -> Decision | None:
        chosen = self._chosen
        return self._decisions[chosen] if chosen is not None and chosen < len(self._decisions) else None

    def _show_dismissed(self, bands: tuple[Band, ...]) -> None:
        """Under the bands, that none moves as it is pressed: which were dismissed; the verdict stays."""
        places = [
            said(travel(band.travel))
            for band, decision in zip(bands, self._decisions, strict=False)
            if decision is not None and decision.choice is Choice.DISMISSED
        ]
        words = self.tr("You dismissed the band at {places}. The verdict is the program's.")
        self.dismissed.setText(words.format(places=", ".join(places)) if places else "")
        self.dismissed.setVisible(bool(places))

    def ask_for_edges(self, band: int) -> None:
        """Let the technician type other edges on a band's card."""
        if band < len(self._cards):
            self._cards[band].ask_for_edges()
            self._bring_into_sight(self._cards[band])

    def ask_for_reason(self, band: int) -> None:
        """Let the technician type why on a band's card."""
        if band < len(self._cards):
            self._cards[band].ask_for_reason()
            self._bring_into_sight(self._cards[band])

    def _bring_into_sight(self, card: BandCard) -> None:
        """Scroll no further than the whole card needs: the verdict stays in sight where there is room."""
        self._settle()
        bring_into_sight(self.rows_area, card)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._cautions.apply_palette(palette)
        self._head.apply_palette(palette)
        for mark in self.rows_area.findChildren(ToneMark):
            mark.apply_palette(palette)

    def _fill(self, findings: Findings, at_px: int) -> None:
        self._held.let_go()
        body = TallEnough()
        self._layout = QVBoxLayout(body)
        self._layout.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        self._layout.setContentsMargins(3, 0, 3, 0)  # room for the ring of the pane
        self._layout.setSpacing(6)
        self._verdict(findings)
        self._cards = [self._band(index, band) for index, band in enumerate(findings.bands)]
        self.dismissed = text_line("", "strong")
        self._layout.addWidget(self.dismissed)
        self._chain(findings)
        self._advice(findings)
        self._readings(findings)
        self._layout.addStretch(1)
        self.rows_area.setWidget(body)
        in_turn([self.rows_area, *stops(body)])
        self.show_decisions(self._decisions)
        self.choose_band(self._chosen)
        if at_px:
            self._settle()
            self.rows_area.verticalScrollBar().setValue(at_px)

    def _verdict(self, findings: Findings) -> None:
        verdict = findings.verdict
        tone = _CALM.get(verdict.code, "bad")
        sure = "" if verdict.code is VerdictCode.INCONCLUSIVE else said(in_words(verdict.confidence))
        rated = bool(sure) and math.isfinite(verdict.confidence)
        told = partial(verdict_odds_words, causes=bool(verdict.possible_causes))
        tip = said(told(verdict.confidence)) if rated else ""
        self._head.show_verdict(said(verdict_title(findings)), sure, tip, tone, self._palette)
        contrary = said(contrary_line(findings))
        if contrary:
            row = told_row(ToneMark("fail", "bad", self._palette), contrary, bold=True)
            row.setAccessibleName(self.tr("What speaks against the verdict"))
            self._layout.addWidget(row)
        self._layout.addWidget(text_line(said_of(self._capture, verdict.summary)))
        if verdict.possible_causes:
            causes = self.tr("Possible: {causes}.").format(
                causes="; ".join(map(said, verdict.possible_causes))
            )
            self._layout.addWidget(text_line(causes, quiet=True))

    def _band(self, index: int, band: Band) -> BandCard:
        card = BandCard(band, self._make_tools())
        card.show_height(self._in_mm(band))
        card.why_wanted.connect(lambda: self.why_wanted.emit(index))
        card.clicked.connect(lambda: self._press_card(card, index))
        card.opened.connect(lambda: self.band_opened.emit(index))
        card.adjusted.connect(lambda edges: self.band_adjusted.emit(index, edges))
        card.restored.connect(lambda before: self.band_restored.emit(index, before))
        card.reasoned.connect(lambda reason: self._give_reason(card, reason))
        self._layout.addWidget(card)
        return card

    def _give_reason(self, card: BandCard, reason: str) -> None:
        """Of a card that is shown: one that goes takes its leave of what is typed in it, too late."""
        if card in self._cards:
            self.reason_given.emit(self._cards.index(card), reason)

    def _in_mm(self, band: Band) -> str:
        return said(span_words(self._heights.span_mm(band.travel))) if self._heights is not None else ""

    def _chain(self, findings: Findings) -> None:
        if findings.evidence:
            self._section(self.tr("What it stands on"))
        for statement in told_in_order(findings):
            self._layout.addWidget(self._statement(statement))

    def _readings(self, findings: Findings) -> None:
        names = record_names(self._capture) if self._capture is not None else {}
        if findings.checks:
            self._section(self.tr("Readings"))
        for check in findings.checks:
            mark, tone = _RESULTS[check.result if is_judged(check) else Result.CANNOT_TELL]
            line = said(check_sentence(check))
            text = f"{names[check.record]}: {line}" if check.record in names else line
            row = told_row(ToneMark(mark, tone, self._palette), text, check.record in names)
            if isinstance(row, PressRow):
                row.clicked.connect(partial(self._go_to_record, row, check.record))
            self._layout.addWidget(row)

    def _statement(self, statement: Statement) -> QWidget:
        """What is said, and in which records it is seen; of what is not shown, what to capture next."""
        mark, tone = _STATES[statement.state]
        names = record_names(self._capture) if self._capture is not None else {}
        records = [names[name] for name in dict.fromkeys(statement.records) if name in names]
        next_step = to_show(statement)
        below = [self.tr("Next: {step}").format(step=said(next_step))] if next_step is not None else []
        if 0 < len(records) < len(names):
            below.insert(0, ", ".join(records))
        quiet = statement.state is State.NOT_SHOWN
        picture, text = ToneMark(mark, tone, self._palette), said_of(self._capture, statement.text)
        row = told_row(picture, text, bool(records), quiet=quiet, below=below)
        told = said(state_name(statement.state))
        if isinstance(row, PressRow):
            row.clicked.connect(partial(self._press_statement, row, statement))
            told = self.tr("{state}; seen in: {records}").format(state=told, records=", ".join(records))
            more = self.tr("Press to go there, and again for the next.")
            row.setToolTip(plain_tip(f"{told}\n{more}" if len(records) > 1 else told))
        else:
            row.setToolTip(plain_tip(told))
        row.setAccessibleDescription(told)
        return row

    def _press_card(self, card: BandCard, index: int) -> None:
        with self._held.pressed(card):
            self.band_chosen.emit(index)

    def _go_to_record(self, row: QWidget, record: str, _checked: bool = False) -> None:
        with self._held.pressed(row):
            self.record_wanted.emit(record)

    def _press_statement(self, row: QWidget, statement: Statement, _checked: bool = False) -> None:
        with self._held.pressed(row):
            self.statement_pressed.emit(statement)

    def _advice(self, findings: Findings) -> None:
        if findings.advice:
            self._section(self.tr("What to capture next"))
        for line in findings.advice:
            self._layout.addWidget(text_line(f"– {said_of(self._capture, line)}"))

    def _section(self, title: str) -> None:
        label = text_line(title, "title")
        label.setContentsMargins(0, 6, 0, 0)
        self._layout.addWidget(label)
