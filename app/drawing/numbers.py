"""Quantities as text: a unit that fits, and no more digits than mean something."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication

from analysis.intervals import Interval


def _tr(text: str) -> str:
    return QCoreApplication.translate("numbers", text)


def volts(value_v: float) -> str:
    """Volts with three to four digits; millivolts below 0.1 V; a dash where there is no value."""
    if not math.isfinite(value_v):
        return "–"
    if abs(value_v) < 0.0995:
        return f"{_minus(value_v * 1e3, 0 if abs(value_v) >= 0.01 else 1)} mV"
    return f"{_minus(value_v, 3)} V"


def volts_span(span_v: Interval) -> str:
    """An interval of volts: ``"2.09–2.37 V"``; "to" where a minus would run into the dash."""
    pattern = _tr("{start} to {stop} V") if span_v.start < 0 else _tr("{start}–{stop} V")
    return pattern.format(start=_minus(span_v.start, 2), stop=_minus(span_v.stop, 2))


def depth(value_v: float) -> str:
    """A departure, to two digits: its size matters, not its last millivolt."""
    if not math.isfinite(value_v):
        return "–"
    if abs(value_v) < 0.995:
        return f"{_minus(value_v * 1e3, 0)} mV"
    return f"{_minus(value_v, 1)} V"


def percent(value: float, digits: int = 1) -> str:
    """Per cent with one digit after the point; a dash where there is no value."""
    return f"{_minus(value, digits)} %" if math.isfinite(value) else "–"


def travel_span(travel: Interval) -> str:
    """A band's edges: ``"41.9–47.7 % of travel"``; "to" where a minus would run into the dash."""
    pattern = _tr("{start} to {stop} % of travel") if travel.start < 0 else _tr("{start}–{stop} % of travel")
    return pattern.format(start=_minus(travel.start, 1), stop=_minus(travel.stop, 1))


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
        return "–"
    digits = min(max(math.ceil(-math.log10(max(resolution_s, 1e-9)) - 1e-9), 0), 6)
    return f"{_minus(value_s, digits)} s"


def duration(value_s: float) -> str:
    """A length of time in the unit that fits: microseconds to minutes."""
    if not math.isfinite(value_s):
        return "–"
    if value_s >= 120.0:
        minutes, rest = divmod(round(value_s), 60)
        return f"{minutes} min {rest} s"
    for scale, unit in ((1.0, "s"), (1e-3, "ms"), (1e-6, "µs")):
        if value_s >= scale:
            return f"{value_s / scale:.3g} {unit}"
    return f"{value_s / 1e-6:.3g} µs"


def rate_text(rate_hz: float) -> str:
    """A sampling rate: ``"10 kS/s"``."""
    for scale, unit in ((1e6, "MS/s"), (1e3, "kS/s")):
        if rate_hz >= scale:
            return f"{rate_hz / scale:.4g} {unit}"
    return f"{rate_hz:.4g} S/s"


def _minus(value: float, digits: int) -> str:
    """Fixed digits with a true minus sign, and no minus before a zero."""
    text = f"{value:.{digits}f}"
    if text.startswith("-"):
        text = text[1:] if float(text) == 0.0 else "\N{MINUS SIGN}" + text[1:]
    return text
