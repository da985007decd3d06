"""Heights as people say them."""

from __future__ import annotations

from analysis.intervals import Interval
from analysis.wording import Wording, say

ENTERED = say("entered by the technician")
"""Source of figures that nobody published: whoever works here measured or chose them."""


def span_words(span_mm: Interval) -> Wording:
    """A stretch of heights: ``"7 to 20 mm of wheel travel below the normal height"``."""
    low, high = span_mm.start, span_mm.stop
    if high <= 0.0:
        return say("{near:.0f} to {far:.0f} mm of wheel travel below the normal height", near=-high, far=-low)
    if low >= 0.0:
        return say("{near:.0f} to {far:.0f} mm of wheel travel above the normal height", near=low, far=high)
    return say(
        "from {far:.0f} mm of wheel travel below the normal height to {near:.0f} mm above it",
        far=-low,
        near=high,
    )
