"""The status line's reading: every channel in volts, and where the arm is."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import Qt
from PySide6.QtGui import QTextDocumentFragment
from PySide6.QtWidgets import QLabel, QWidget

from analysis.captures.model import Role
from analysis.vehicle.heights import VehicleHeights
from analysis.wording import plural
from app.drawing.numbers import millimetres, percent, seconds, volts
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.review.readings import Reading
from app.words import channel_name


class Readout(QLabel):
    """One line of text; the names of the channels are in their colours and also spelled out."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleDescription(self.tr("Reading at the pointer"))  # its name is what it reads
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setContentsMargins(12, 0, 0, 2)
        self._palette = LIGHT
        self._reading: tuple[Reading, float] | None = None
        self._heights: VehicleHeights | None = None

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
        self.setText("&nbsp;&nbsp;&nbsp;".join(parts))

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
        self.clear()

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
        self.setText("&nbsp;&nbsp;&nbsp;".join(parts))

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
        return [*parts, self.tr("{height} from normal height").format(height=f"<b>{height}</b>")]

    def plain_text(self) -> str:
        """What is shown, as plain text."""
        return QTextDocumentFragment.fromHtml(self.text()).toPlainText().replace("\N{NO-BREAK SPACE}", " ")

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        if self._reading is not None:
            self.show_reading(*self._reading)
