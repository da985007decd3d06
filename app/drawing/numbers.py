"""Readings as the window shows them: a unit that fits, no more digits than mean something."""

from __future__ import annotations

import math
import re

from analysis.intervals import Interval
from analysis.reports.quantities import NO_VALUE, number
from analysis.wording import say
from app.language import said

_BEFORE_A_UNIT = re.compile(r"(?<=\d) (?=[^\W\d]{1,2}\b|%)")


def volts(value_v: float) -> str:
    """Volts with three to four digits; millivolts below 0.1 V; a dash where there is no value."""
    if not math.isfinite(value_v):
        return NO_VALUE
    if abs(value_v) < 0.0995:
        return _with_unit(value_v * 1e3, 0 if abs(value_v) >= 0.01 else 1, "mV")
    return _with_unit(value_v, 3, "V")


def depth(value_v: float) -> str:
    """A departure, to two digits: its size matters, not its last millivolt."""
    if not math.isfinite(value_v):
        return NO_VALUE
    if abs(value_v) < 0.995:
        return _with_unit(value_v * 1e3, 0, "mV")
    return _with_unit(value_v, 1, "V")


def percent(value: float, digits: int = 1) -> str:
    """Per cent with one digit after the point; a dash where there is no value."""
    return _with_unit(value, digits, "%") if math.isfinite(value) else NO_VALUE


def millimetres(place_mm: float | Interval) -> str:
    """A height, or a stretch of them, from the normal height: ``"−20 to −7 mm"``."""
    if isinstance(place_mm, Interval):
        low, high = number(place_mm.start, 0), number(place_mm.stop, 0)
        return said(say("{low} to {high} mm", low=low, high=high))
    return _with_unit(place_mm, 0, "mm") if math.isfinite(place_mm) else NO_VALUE


def seconds(value_s: float, resolution_s: float = 1e-3) -> str:
    """A time, with as many digits as a step of `resolution_s` can move.

    Parameters
    ----------
    value_s : float
        Seconds.
    resolution_s : float
        The smallest step that matters: the sample interval, or a pixel's worth of time.
    """
    if not math.isfinite(value_s):
        return NO_VALUE
    digits = min(max(math.ceil(-math.log10(max(resolution_s, 1e-9)) - 1e-9), 0), 6)
    return _with_unit(value_s, digits, "s")


def unbroken(text: str) -> str:
    """The same, no line of which begins with the unit of a number at the end of the line above."""
    return _BEFORE_A_UNIT.sub("\N{NO-BREAK SPACE}", text)


def duration(value_s: float) -> str:
    """A length of time in the unit that fits: microseconds to minutes."""
    if not math.isfinite(value_s):
        return NO_VALUE
    if value_s >= 120.0:
        minutes, rest = divmod(round(value_s), 60)
        return f"{minutes} min {rest} s"
    for scale, unit in ((1.0, "s"), (1e-3, "ms"), (1e-6, "µs")):
        if value_s >= scale:
            return said(say("{value:.3g} {unit}", value=value_s / scale, unit=unit))
    return said(say("{value:.3g} {unit}", value=value_s / 1e-6, unit="µs"))


def rate_text(rate_hz: float) -> str:
    """A sampling rate: ``"10 kS/s"``."""
    for scale, unit in ((1e6, "MS/s"), (1e3, "kS/s")):
        if rate_hz >= scale:
            return said(say("{value:.4g} {unit}", value=rate_hz / scale, unit=unit))
    return said(say("{value:.4g} {unit}", value=rate_hz, unit="S/s"))


def _with_unit(value: float, digits: int, unit: str) -> str:
    return said(say("{value} {unit}", value=number(value, digits), unit=unit))
