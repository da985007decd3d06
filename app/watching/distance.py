"""How high letters must be to be read from the car, in pixels of the screen at hand."""

from __future__ import annotations

import math

DISTANCE_MM = 3000.0
ARC_MINUTES = 22.0
"""Height of a capital for comfortable reading; ISO 9241-303 asks for 16 at least and 20 to 22 by preference
(value from memory): at three metres 14 and 19 mm."""

LEAST_ARC_MINUTES = 16.0
USUAL_DOTS_PER_INCH = 96.0  # 0.265 mm a pixel, where the screen does not tell its size
_CAPITAL = 0.72  # height of a capital, of the font's pixel size; common practice, no source
_BELIEVED = (60.0, 260.0)  # dots per inch; a screen that tells less or more tells nonsense


def font_px(arc_minutes: float, dots_per_inch: float) -> int:
    """Pixel size of a font whose capitals are seen under that angle from three metres.

    Parameters
    ----------
    arc_minutes : float
        Height as an angle.
    dots_per_inch : float
        What the screen tells; 96 is taken where that cannot be.
    """
    low, high = _BELIEVED
    believed = dots_per_inch if low <= dots_per_inch <= high else USUAL_DOTS_PER_INCH
    height_mm = DISTANCE_MM * math.tan(math.radians(arc_minutes / 60.0))
    return math.ceil(height_mm * believed / 25.4 / _CAPITAL)
