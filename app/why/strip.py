"""The control unit under Trace: how far each fault had ripened, and when it was stored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from analysis.control_unit.replay import Replay, RuleReplay
from analysis.control_unit.rules import RuleKind
from analysis.exposure.amounts import share_words
from analysis.exposure.stored_code import against_record
from analysis.exposure.words import RULE_NAMES
from analysis.intervals import Interval
from app.drawing.axes import LEFT_AXIS_PX
from app.drawing.numbers import seconds
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.views.elided_label import ElidedLabel
from app.views.pane import Pane
from app.views.press_row import text_line

_ROW_PX, _LOW_ROW_PX = 34, 26
_BESIDE_WORDS_PX = 18  # left and right of what a pane holds
_RIGHT_PX = 7  # as far as the plots of Trace stand from their frame


class ControlUnitStrip(Pane):
    """A row for each rule, over the same stretch of time as Trace."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Control unit"))
        self.setAccessibleName(self.tr("Control unit: which fault would have been stored, and when"))
        self.sheet = _Sheet()
        self.against, self._against_short = text_line("", quiet=True), ElidedLabel()
        self._against_short.setProperty("quiet", True)
        self._low = False
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        for part in (self.sheet, self.against, self._against_short):
            column.addWidget(part)
        self.set_content(content)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.show_replay(None)
        self.hide()

    def show_waiting(self) -> None:
        """Say that it is being worked out, where nothing is shown yet."""
        if self.sheet.replay is None:
            self.show_empty(self.tr("Running the record through a control unit."))

    def show_problem(self, sentence: str) -> None:
        """Say why there is nothing to show."""
        self.sheet.show_replay(None)
        self.set_note("")
        self.show_empty(sentence)

    def show_replay(self, replay: Replay | None, codes: Sequence[str] = ()) -> None:
        """Show what the control unit made of a record, or that there is nothing; the job names `codes`."""
        self.sheet.show_replay(replay)
        self.show_codes(codes)
        if replay is None or not replay.rules:
            self.set_note("")
            self.show_empty(self.tr("This record holds no signal that a control unit could judge."))
            return
        self.set_note(self._told(replay), short=self._told_shorter(replay))
        self.sheet.setToolTip(plain_tip(self._compared(replay)))
        self.show_content()

    def show_codes(self, codes: Sequence[str]) -> None:
        """Say what to make of codes that the job names, where none would have been stored in the record."""
        replay = self.sheet.replay
        words = said(against_record(codes, replay)) if replay is not None and replay.rules else ""
        self.against.setText(words)
        self._against_short.setText(words)
        self._fit_words()

    def show_low(self, low: bool) -> None:
        """Take less height: lower rows, and one line of words, the rest of it in its tip."""
        self._low = low
        self.sheet.show_low(low)
        self._fit_words()

    def hasHeightForWidth(self) -> bool:  # noqa: N802 - Qt's own name
        """No: the words know their height, and the page of what is not shown would ask for more."""
        return False

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the words the height that they need at the new width."""
        super().resizeEvent(event)
        self._fit_words()

    def _fit_words(self) -> None:
        """As high as its lines are: a stack of pages would guess, and leave Trace less."""
        told = bool(self.against.text())
        self.against.setVisible(told and not self._low)
        self._against_short.setVisible(told and self._low)
        width = max(self.width() - self.contentsMargins().left() - _BESIDE_WORDS_PX, 100)
        self.against.setFixedHeight(max(self.against.heightForWidth(width), 0))

    def show_window(self, window: Interval) -> None:
        """Show this stretch of time."""
        self.sheet.show_window(window)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.sheet.apply_palette(palette)

    def _compared(self, replay: Replay) -> str:
        """What the comparison was with, where that was not recorded."""
        if not replay.modelled:
            return ""
        return self.tr(
            "The other side was not recorded here. What a sound sensor would read that moves as this"
            " one does stands in for it."
        )

    def _told_shorter(self, replay: Replay) -> str:
        """The same where there is little room for it."""
        return "" if replay.first is not None else self.tr("no code would have been stored here")

    def _told(self, replay: Replay) -> str:
        first = replay.first
        if first is None:
            return self.tr("no code would have been stored in this record")
        kind, time_s = first
        told = self.tr("code stored at {time}: {rule}").format(
            time=seconds(time_s, 0.01), rule=said(RULE_NAMES[kind])
        )
        if kind is RuleKind.COMPARISON:
            told += self.tr("; it sees that the sides disagree, not which is wrong, and names both corners")
            if replay.modelled:
                told += self.tr(" (other side modelled)")
        return told


@dataclass(frozen=True, slots=True)
class _Row:
    """One rule, ready to be drawn."""

    rule: RuleReplay
    box: QRectF
    curve: QPolygonF
    stored_px: tuple[float, ...]


class _Sheet(QWidget):
    """Where the rows are drawn."""

    def __init__(self) -> None:
        super().__init__()
        self.replay: Replay | None = None
        self._window = Interval(0.0, 1.0)
        self._palette = LIGHT
        self._rows: tuple[_Row, ...] = ()
        self._row_px = _ROW_PX
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """A row for each rule."""
        return QSize(300, self._row_px * max(len(self.replay.rules) if self.replay is not None else 1, 1))

    def minimumSizeHint(self) -> QSize:
        """As high as its rows."""
        return self.sizeHint()

    @property
    def rows(self) -> tuple[_Row, ...]:
        """What is drawn, from the top."""
        return self._rows

    def show_low(self, low: bool) -> None:
        """Draw lower rows, or such of full height."""
        self._row_px = _LOW_ROW_PX if low else _ROW_PX
        self.updateGeometry()

    def show_replay(self, replay: Replay | None) -> None:
        """Draw this from now on."""
        self.replay = replay
        self._lay_out()
        self.updateGeometry()
        self.update()

    def show_window(self, window: Interval) -> None:
        """Show this stretch of time."""
        self._window = window
        self._lay_out()
        self.update()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay out for the new size."""
        super().resizeEvent(event)
        self._lay_out()

    def _plot(self) -> QRectF:
        return QRectF(LEFT_AXIS_PX, 0, max(self.width() - LEFT_AXIS_PX - _RIGHT_PX, 10), self.height())

    def _lay_out(self) -> None:
        replay = self.replay
        if replay is None or self._window.length <= 0.0:
            self._rows = ()
            return
        plot = self._plot()
        high = plot.height() / max(len(replay.rules), 1)
        self._rows = tuple(
            self._row(replay, rule, QRectF(plot.left(), place * high, plot.width(), high))
            for place, rule in enumerate(replay.rules)
        )

    def _row(self, replay: Replay, rule: RuleReplay, box: QRectF) -> _Row:
        time_s, window = replay.readings.time_s, self._window
        foot, tall = box.bottom() - 3, box.height() - 16
        columns = max(int(box.width()), 1)
        edges = np.searchsorted(time_s, np.linspace(window.start, window.stop, columns + 1))
        points = [QPointF(box.left(), foot)]
        for column in range(columns):
            start, stop = int(edges[column]), int(edges[column + 1])
            before = min(max(start - 1, 0), max(rule.ripe.shape[0] - 1, 0))
            part = rule.ripe[start:stop] if stop > start else rule.ripe[before : before + 1]
            height = float(part.max()) if part.size else 0.0
            points.append(QPointF(box.left() + column, foot - tall * height))
        points.append(QPointF(box.right(), foot))
        scale = box.width() / window.length
        stored = tuple(
            box.left() + (item - window.start) * scale for item in rule.stored_s if window.contains(item)
        )
        return _Row(rule, box, QPolygonF(points), stored)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint what was laid out."""
        painter = QPainter(self)
        font = painter.font()
        font.setPointSizeF(8.0)
        painter.setFont(font)
        for row in self._rows:
            self._paint_row(painter, row)

    def _paint_row(self, painter: QPainter, row: _Row) -> None:
        palette, box = self._palette, row.box
        foot = box.bottom() - 3
        painter.setPen(QPen(QColor(palette.line), 1))
        painter.drawLine(QPointF(box.left(), foot), QPointF(box.right(), foot))
        limit = QPen(QColor(palette.line), 1, Qt.PenStyle.DashLine)
        painter.setPen(limit)
        painter.drawLine(QPointF(box.left(), box.top() + 13), QPointF(box.right(), box.top() + 13))
        painter.setPen(QPen(QColor(palette.choice), 1))
        painter.setBrush(palette.shade("choice", 0.28))
        painter.drawPolygon(row.curve)
        painter.setPen(QPen(QColor(palette.bad), 2))
        for x in row.stored_px:
            painter.drawLine(QPointF(x, box.top() + 10), QPointF(x, foot))
        painter.setPen(QColor(palette.quiet))
        place = QRectF(box.left() + 2, box.top(), box.width() - 4, 13)
        words = self.told_within(row.rule, QFontMetricsF(painter.font()), place.width())
        painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, words)

    def _name(self, rule: RuleReplay) -> str:
        if rule.kind is RuleKind.COMPARISON and self.replay is not None and self.replay.modelled:
            return self.tr("comparison with the other side, modelled as sound, not recorded")
        return said(RULE_NAMES[rule.kind])

    def told_within(self, rule: RuleReplay, metrics: QFontMetricsF, width: float) -> str:
        """What is written on a rule's row that is so wide: its name gives way, never what came of it."""
        words = self.told(rule)
        over = metrics.horizontalAdvance(words) - width
        if over <= 0.0:
            return words
        name = self._name(rule)
        room = metrics.horizontalAdvance(name) - over
        return self.told(rule, metrics.elidedText(name, Qt.TextElideMode.ElideRight, max(room, 0.0)))

    def told(self, rule: RuleReplay, name: str = "") -> str:
        """What came of a rule, behind its name or another one."""
        name = name or self._name(rule)
        if rule.stored_s:
            times = ", ".join(seconds(item, 0.01) for item in rule.stored_s[:3])
            more = self.tr(" and more") if len(rule.stored_s) > 3 else ""
            return self.tr("{rule}: stored at {times}{more}").format(rule=name, times=times, more=more)
        if rule.longest_share <= 0.0:
            return self.tr("{rule}: never broken for long").format(rule=name)
        share = said(share_words(min(rule.longest_share, 0.999)))
        return self.tr("{rule}: not stored, {share} of the way").format(rule=name, share=share)
