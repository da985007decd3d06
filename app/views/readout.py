"""The status line's reading: every channel in volts, and where the arm is."""

from __future__ import annotations

import re
from html import escape, unescape

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent, QTextDocumentFragment
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from analysis.captures.model import Role
from analysis.vehicle.heights import VehicleHeights
from analysis.wording import plural
from app.drawing.numbers import millimetres, percent, seconds, volts
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.review.readings import Reading
from app.words import channel_name

_INDENT_PX = 12
_BETWEEN = "&nbsp;&nbsp;&nbsp;"
_RUN = re.compile(r"<b>(?P<bold>.*?)</b>|<[^>]*>|(?P<plain>[^<]+)")


def _bold(font: QFont) -> QFont:
    made = QFont(font)
    made.setBold(True)
    return made


def _width_px(part: str, metrics: QFontMetrics, bold: QFontMetrics) -> int:
    """Width of a piece of text with bold runs."""
    return sum(
        bold.horizontalAdvance(unescape(run["bold"] or ""))
        + metrics.horizontalAdvance(unescape(run["plain"] or ""))
        for run in _RUN.finditer(part)
    )


class Readout(QLabel):
    """One line of text; the names of the channels are in their colours and also spelled out."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleDescription(self.tr("Reading at the pointer"))  # its name is what it reads
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setIndent(_INDENT_PX)
        self._palette = LIGHT
        self._reading: tuple[Reading, float] | None = None
        self._heights: VehicleHeights | None = None
        self._parts: list[str] = []
        self._height_part = ""
        # Work under way takes its room in the status line from it.
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def minimumSizeHint(self) -> QSize:
        """It never holds the window wide."""
        return QSize(1, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show what the new width has room for."""
        super().resizeEvent(event)
        self._fit()

    def show_reading(self, reading: Reading, resolution_s: float) -> None:
        """Show what was read at a moment; `resolution_s` is what one pixel is worth."""
        self._reading = (reading, resolution_s)
        parts = [f"<b>{seconds(reading.time_s, resolution_s)}</b>"]
        if reading.travel_percent is not None:
            parts += self._place(reading.travel_percent, reading.track)
        for channel, value_v in reading.volts:
            colour = self._palette.role(channel.role).name()
            name = escape(channel_name(channel))
            parts.append(f"<span style='color:{colour}'>●</span> {name} <b>{volts(value_v)}</b>")
        self._show(parts)

    def show_resolution(self, resolution_s: float) -> None:
        """Say the moment with as many digits as it can be pointed at with now."""
        if self._reading is None:
            return
        reading, before_s = self._reading
        if seconds(reading.time_s, resolution_s) != seconds(reading.time_s, before_s):
            self.show_reading(reading, resolution_s)

    def show_nothing(self) -> None:
        """Show no reading: nothing is pointed at."""
        self._reading = None
        self._show([])

    def show_place(
        self, travel_percent: float, breakup_percent: float | None, tested: int, track: Role = Role.SIGNAL
    ) -> None:
        """Show what is known of a place on a track, and how often the arm went over it."""
        self._reading = None
        parts = self._place(travel_percent, track)
        if breakup_percent is None:
            parts.append(self.tr("not tested"))
        else:
            parts.append(self.tr("worst break-up {worst}").format(worst=f"<b>{percent(breakup_percent)}</b>"))
            parts.append(said(plural("tested once", "tested {count} times", count=tested)))
        self._show(parts)

    def show_heights(self, heights: VehicleHeights | None) -> None:
        """Say where the wheel is too, where heights are known."""
        self._heights = heights
        if self._reading is not None:
            self.show_reading(*self._reading)

    def _place(self, travel_percent: float, track: Role) -> list[str]:
        if track is Role.SECOND_SIGNAL:  # neither the signal's travel nor what is known of its heights
            told = self.tr("{travel} of travel, second signal")
            return [told.format(travel=f"<b>{percent(travel_percent)}</b>")]
        parts = [self.tr("{travel} of travel").format(travel=f"<b>{percent(travel_percent)}</b>")]
        if self._heights is None:
            return parts
        height = millimetres(float(self._heights.height_mm(travel_percent)))
        self._height_part = self.tr("{height} from normal height").format(height=f"<b>{height}</b>")
        return [*parts, self._height_part]

    def plain_text(self) -> str:
        """All that was read, as plain text, whatever there is room for."""
        whole = QTextDocumentFragment.fromHtml(_BETWEEN.join(self._parts)).toPlainText()
        return whole.replace("\N{NO-BREAK SPACE}", " ")

    def _show(self, parts: list[str]) -> None:
        self._parts = parts
        self._fit()

    def _fit(self) -> None:
        """Leave out whole parts that have no room: the height first, then from the end; the tip has all."""
        parts, metrics = list(self._parts), self.fontMetrics()
        bold = QFontMetrics(_bold(self.font()))
        room_px = self.contentsRect().width() - _INDENT_PX
        widths = {part: _width_px(part, metrics, bold) for part in parts}
        gap_px = 3 * metrics.horizontalAdvance(" ")
        while len(parts) > 1 and sum(widths[part] + gap_px for part in parts) - gap_px > room_px:
            parts.remove(self._height_part if self._height_part in parts else parts[-1])
        cut = len(parts) < len(self._parts)
        self.setText(_BETWEEN.join(parts))
        self.setToolTip(plain_tip(self.plain_text()) if cut else "")

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        if self._reading is not None:
            self.show_reading(*self._reading)
