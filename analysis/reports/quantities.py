"""Quantities as text: no more digits than mean something, the unit always there."""

from __future__ import annotations

import math

from analysis.intervals import Interval
from analysis.signals.facts import TrackSurvey
from analysis.wording import Wording, plural, say
from analysis.wording import number as shown_number

NO_VALUE = "\N{EN DASH}"
"""Stands where there is no value."""

_MILLIVOLTS_BELOW_V = 0.1005  # so that the common limit of a ground, 0.1 V, reads 100 mV as its readings do


def number(value: float, digits: int) -> str:
    """Fixed digits with a true minus sign, and no minus before a zero; a dash where it is not finite."""
    return shown_number(value, digits) if math.isfinite(value) else NO_VALUE


def reading(value: float, expanded_uncertainty: float, unit: str) -> str:
    """A reading with its expanded uncertainty: ``"12.6 ± 3.0 mV"``.

    Parameters
    ----------
    value, expanded_uncertainty : float
        In `unit`. The uncertainty decides the digits: two that count (JCGM 100, 7.2.6). Zero means an exact
        value; where it is not finite the text says that it is unknown.
    unit : str
        As in the check; volts up to 0.1 V are shown in millivolts.
    """
    if not math.isfinite(value):
        return NO_VALUE
    scale, shown = (1e3, "mV") if unit == "V" and abs(value) < _MILLIVOLTS_BELOW_V else (1.0, unit)
    value, spread = value * scale, expanded_uncertainty * scale
    if not math.isfinite(spread):
        return say("{quantity} (uncertainty unknown)", quantity=quantity(value, shown))
    if spread <= 0.0:
        return quantity(value, shown)
    digits = digits_of(spread)
    both = say("{value} ± {spread}", value=number(value, digits), spread=number(spread, digits))
    return _with_unit(both, shown)


def digits_of(expanded_uncertainty: float) -> int:
    """Digits after the mark that a positive uncertainty leaves: two of its own count (JCGM 100, 7.2.6)."""
    return min(max(1 - math.floor(math.log10(expanded_uncertainty)), 0), 6)


def quantity(value: float, unit: str) -> str:
    """A value with three digits that count, and its unit."""
    if not math.isfinite(value):
        return NO_VALUE
    if unit == "V" and 0.0 < abs(value) < _MILLIVOLTS_BELOW_V:
        return quantity(value * 1e3, "mV")
    if value == 0.0:
        return _with_unit(number(0.0, 0), unit)
    digits = min(max(2 - math.floor(math.log10(abs(value))), 0), 6)
    after_the_mark = f"{value:.{digits}f}".partition(".")[2].rstrip("0")
    return _with_unit(number(value, len(after_the_mark)), unit)


def stretch(span: Interval, digits: int) -> Wording:
    """Both ends without a unit; a dash would run into the minus sign of a negative one."""
    start, stop = number(span.start, digits), number(span.stop, digits)
    if min(span.start, span.stop) < 0.0:
        return say("{start} to {stop}", start=start, stop=stop)
    return say("{start}–{stop}", start=start, stop=stop)


def travel(span: Interval) -> Wording:
    """A stretch of travel: ``"41.9–47.7 % of travel"``."""
    return say("{stretch} % of travel", stretch=stretch(span, 1))


def volts(span: Interval) -> Wording:
    """A stretch of volts, lower end first: ``"2.09–2.37 V"``."""
    return say("{stretch} V", stretch=stretch(span, 2))


def share_of(*surveys: TrackSurvey | None) -> Wording:
    """What break-up is a share of: ``"of the applied voltage"``.

    Where a sensor's output does not go with what is applied to it, these are the volts that its whole travel
    stands for: ``"of 5.00 V"``.

    Parameters
    ----------
    surveys : sequence of TrackSurvey or None
        All that are shown on one scale; None for none.
    """
    wholes = {item.fixed_v for item in surveys if item is not None}
    if len(wholes) > 1:
        return say("of the output over the whole travel")
    whole_v = next(iter(wholes), None)
    return say("of the applied voltage") if whole_v is None else say("of {whole_v:.2f} V", whole_v=whole_v)


def breakup_unit(*surveys: TrackSurvey | None) -> Wording:
    """Name and unit of an axis of break-up, as in `share_of`."""
    return say("break-up in % {of}", of=share_of(*surveys))


A_CROSSING = say(
    "A crossing is one passage of the arm through the band; where it turns there, the way there and back is"
    " one."
)
"""What is counted where a band breaks up: not strokes of the arm, nor how often each place was tested."""


def crossings(count: int) -> Wording:
    """``"1 crossing"``, ``"11 crossings"``."""
    return plural("{count} crossing", "{count} crossings", count=count)


def _with_unit(text: str, unit: str) -> str:
    return say("{text} {unit}", text=text, unit=unit) if unit else text
