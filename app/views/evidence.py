"""Evidence: the verdict, how sure it is, what it stands on, and what to capture next."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QEnterEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLayout,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Band, Findings, Result, State, Statement, VerdictCode
from analysis.reports.checks import check_sentence, state_name
from analysis.reports.confidence import in_words
from analysis.reports.quantities import travel, volts
from analysis.reports.verdicts import is_watched, verdict_name
from app.drawing import icons
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.views.caution_strip import CautionStrip
from app.views.pane import Pane
from app.views.tall_enough import TallEnough
from app.words import record_names

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
_CALM = {VerdictCode.NO_FAULT_FOUND: "good", VerdictCode.INCONCLUSIVE: "unsure"}


class PressRow(QFrame):
    """A row that can be pressed with the mouse, Enter or Space.

    Signals
    -------
    pressed(), opened()
        Pressed once; pressed twice.
    """

    pressed = Signal()
    opened = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Pressed, where the button is let go above the row."""
        if self.rect().contains(event.position().toPoint()):
            self.pressed.emit()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Pressed twice."""
        self.opened.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens, as a double click does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.opened.emit()
        else:
            super().keyPressEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Show that it can be pressed."""
        self._underline(True)

    def leaveEvent(self, event: QEvent) -> None:
        """Look at rest again."""
        self._underline(False)

    def _underline(self, on: bool) -> None:
        for label in self.findChildren(QLabel, "pressText"):
            font = label.font()
            font.setUnderline(on)
            label.setFont(font)


class EvidenceView(Pane):
    """The verdict and everything that it stands on.

    Signals
    -------
    band_chosen(index), band_opened(index)
        A band's card was pressed once or twice.
    record_wanted(name)
        A statement was pressed; this record shows it.
    """

    band_chosen = Signal(int)
    band_opened = Signal(int)
    record_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Evidence"))
        self.setAccessibleName(self.tr("Evidence: verdict and what it stands on"))
        self._palette = LIGHT
        self._capture: Capture | None = None
        self._findings: Findings | None = None
        self._cards: list[QFrame] = []
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._cautions = CautionStrip()
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._scroll, 1)
        column.addWidget(self._cautions)
        self.set_content(content)
        self.show_findings(None, None)

    def show_stopped(self) -> None:
        """Say how to go on after an examination that was stopped or failed."""
        if self._findings is None and self._capture is not None:
            self.show_empty(self.tr("The capture was not examined to the end. Press F5 to examine it again."))

    def show_findings(self, capture: Capture | None, findings: Findings | None) -> None:
        """Show these findings, or what to do to get some."""
        self._capture, self._findings = capture, findings
        self._cards = []
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
        self._fill(findings)
        self.show_content()

    def choose_band(self, band: int | None) -> None:
        """Mark the card of a band."""
        for index, card in enumerate(self._cards):
            card.setProperty("chosen", index == band)
            card.style().unpolish(card)
            card.style().polish(card)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._cautions.apply_palette(palette)
        if self._findings is not None:
            self._fill(self._findings)

    def _fill(self, findings: Findings) -> None:
        body = TallEnough()
        self._layout = QVBoxLayout(body)
        self._layout.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        self._layout.setContentsMargins(0, 0, 6, 0)
        self._layout.setSpacing(6)
        self._verdict(findings)
        self._cards = [self._band(index, band) for index, band in enumerate(findings.bands)]
        self._chain(findings)
        self._advice(findings)
        self._readings(findings)
        self._layout.addStretch(1)
        self._scroll.setWidget(body)

    def _verdict(self, findings: Findings) -> None:
        verdict = findings.verdict
        tone = getattr(self._palette, _CALM.get(verdict.code, "bad"))
        headline = _text(
            said(verdict_name(verdict.code)), f"font-size: 21pt; font-weight: 700; color: {tone};"
        )
        headline.setAccessibleName(self.tr("Verdict"))
        self._layout.addWidget(headline)
        if verdict.code is not VerdictCode.INCONCLUSIVE:
            how_sure = said(in_words(verdict.confidence))
            self._layout.addWidget(_text(how_sure, "font-size: 12pt; font-weight: 600;"))
        self._layout.addWidget(_text(said(verdict.summary)))
        if verdict.possible_causes:
            causes = self.tr("Possible: {causes}.").format(
                causes="; ".join(map(said, verdict.possible_causes))
            )
            self._layout.addWidget(_text(causes, quiet=True))

    def _band(self, index: int, band: Band) -> QFrame:
        title = said(travel(band.travel))
        watched = is_watched(band)
        card = PressRow(self.tr("Band {span}").format(span=title))
        card.setObjectName("bandCard")
        card.setToolTip(
            self.tr("Click: light up every crossing. Double-click or Enter: zoom to the clearest one.")
        )
        layout = QVBoxLayout(card)
        layout.setContentsMargins(9, 5, 6, 6)
        layout.setSpacing(1)
        card.setProperty("watched", watched)
        shown = self.tr("Watch: {band}").format(band=title) if watched else title
        head = _text(shown, "font-weight: 600;" if watched else "font-size: 12pt; font-weight: 650;")
        head.setObjectName("pressText")
        layout.addWidget(head)
        lines = [
            f"{said(in_words(band.confidence))} · {said(volts(band.volts))}",
            self.tr("{noisy} of {passes} crossings break up, up to {worst} %").format(
                noisy=band.noisy_passes, passes=band.passes, worst=f"{band.output_smoothness_percent:.0f}"
            ),
        ]
        for line in lines:
            layout.addWidget(_text(line, quiet=True))
        card.pressed.connect(lambda: self.band_chosen.emit(index))
        card.opened.connect(lambda: self.band_opened.emit(index))
        self._layout.addWidget(card)
        return card

    def _chain(self, findings: Findings) -> None:
        if findings.evidence:
            self._section(self.tr("What it stands on"))
        for statement in findings.evidence:
            self._layout.addWidget(self._statement(statement))

    def _readings(self, findings: Findings) -> None:
        names = record_names(self._capture) if self._capture is not None else {}
        if findings.checks:
            self._section(self.tr("Readings"))
        for check in findings.checks:
            mark, tone = _RESULTS[check.result]
            line = said(check_sentence(check))
            text = f"{names[check.record]}: {line}" if check.record in names else line
            self._layout.addWidget(self._row(mark, tone, text, check.record, quiet=False))

    def _statement(self, statement: Statement) -> QWidget:
        mark, tone = _STATES[statement.state]
        shown = statement.state is not State.NOT_SHOWN
        row = self._row(mark, tone, said(statement.text), next(iter(statement.records), ""), quiet=not shown)
        row.setToolTip(said(state_name(statement.state)))
        row.setAccessibleDescription(said(state_name(statement.state)))
        return row

    def _row(self, mark: str, tone: str, text: str, record: str, quiet: bool) -> QFrame:
        """A mark and a text; pressed, it goes to the record that shows it."""
        row = PressRow(text) if record else QFrame()
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(7)
        picture = QLabel()
        picture.setPixmap(icons.pixmap(mark, getattr(self._palette, tone), 15))
        picture.setContentsMargins(0, 2, 0, 0)
        layout.addWidget(picture, 0, Qt.AlignmentFlag.AlignTop)
        label = _text(text, quiet=quiet)
        layout.addWidget(label, 1)
        if isinstance(row, PressRow):
            label.setObjectName("pressText")
            row.pressed.connect(lambda: self.record_wanted.emit(record))
            row.opened.connect(lambda: self.record_wanted.emit(record))
        return row

    def _advice(self, findings: Findings) -> None:
        if findings.advice:
            self._section(self.tr("What to capture next"))
        for line in findings.advice:
            self._layout.addWidget(_text(f"– {said(line)}"))

    def _section(self, title: str) -> None:
        label = _text(title, f"font-weight: 600; color: {self._palette.quiet};")
        label.setContentsMargins(0, 6, 0, 0)
        self._layout.addWidget(label)


def _text(text: str, style: str = "", quiet: bool = False) -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setProperty("quiet", quiet)
    if style:
        label.setStyleSheet(style)
    return label
