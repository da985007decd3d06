"""Shares, times and counts as people say them."""

from __future__ import annotations

import math

from analysis.intervals import Interval
from analysis.wording import Wording, say


def share_words(share: float) -> Wording:
    """A share or a chance in per cent, never rounded to none or to all."""
    if 0.0 < share < 0.01:
        return say("less than 1 %")
    if 0.99 < share < 1.0:
        return say("more than 99 %")
    return say("{percent:.0f} %", percent=100.0 * share)


def span_words(seconds: float) -> Wording:
    """A time as people say it: milliseconds, seconds or minutes."""
    if not math.isfinite(seconds):
        return say("all the time")
    if seconds < 0.95:
        return say("{time_ms:.0f} ms", time_ms=1e3 * seconds)
    if seconds < 90.0:
        return say("{time_s:.1f} s", time_s=seconds)
    return say("{time_min:.0f} min", time_min=seconds / 60.0)


def range_words(over: Interval) -> Wording | None:
    """A range of shares; None where both ends read alike."""
    low, high = share_words(over.start), share_words(over.stop)
    return say("{low} to {high}", low=low, high=high) if low != high else None


def about_words(over: Interval) -> Wording:
    """A calculated share as the range that it is known to: ``"about 86 to over 99 %"``."""
    low, high = (min(max(100.0 * share, 0.0), 100.0) for share in (over.start, over.stop))
    if high < 1.0:
        return say("less than 1 %")
    if low > 99.0:
        return say("over 99 %")
    most = say("over 99 %") if high > 99.0 else say("{percent:.0f} %", percent=high)
    if low < 1.0:
        return say("up to about {most}", most=most) if high <= 99.0 else say("under 1 to over 99 %")
    if round(low) == round(high):
        return say("about {most}", most=most)
    return say("about {low:.0f} to {most}", low=low, most=most)


def visits_words(per_km: float) -> Wording:
    """Visits a kilometre, two figures where they are few."""
    if per_km >= 9.5:
        return say("{per_km:.0f}", per_km=per_km)
    return say("{per_km:.2g}", per_km=per_km)
