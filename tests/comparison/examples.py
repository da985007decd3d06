"""Sides made by hand: visits with a known fault, and findings whose counts are given."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from pathlib import Path

from analysis.captures.model import Capture
from analysis.captures.reading import open_capture
from analysis.comparison.side import Side
from analysis.diagnosis.examine import examine
from analysis.intervals import Interval
from tests.diagnosis.examples import METER, Meter, sweep, visit
from tests.signals.examples import Floats

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
BAND = Interval(55.0, 60.0)
BEFORE = "W1041-rear-left-height.h5"
AFTER = "W1041-rear-left-height-new-sensor.h5"
RIGHT = "W1041-rear-right-height.h5"
FRONT_BEFORE = "W1072-front-left-height.h5"
FRONT_AFTER = "W1072-front-left-height-new-sensor.h5"
AXLE = "W1096-rear-axle-heights.h5"


@cache
def sample(file: str, *, mirrored: bool = False, record: str = "") -> Side:
    """A sample capture, examined; its file is closed, for a comparison reads no samples."""
    with open_capture(SAMPLES / file) as opened:
        return Side(opened.capture, examine(opened.capture), mirrored, record)


def side_of(capture: Capture, *, mirrored: bool = False, record: str = "") -> Side:
    """A capture, examined."""
    return Side(capture, examine(capture), mirrored, record)


@cache
def side(
    *bands: Interval, strokes: int = 12, seconds: float = 1.0, low: float = 10.0, high: float = 90.0
) -> Side:
    """A visit of one sweep, with bands where asked."""
    return side_of(swept(bands, sweep(strokes, seconds=seconds, low=low, high=high)))


def swept(
    bands: Sequence[Interval],
    travel: Floats,
    *,
    meter: Meter = METER,
    attributes: Mapping[str, str | float] | None = None,
) -> Capture:
    """The usual standing records and one sweep along a path."""
    return visit(bands=bands, travel=travel, meter=meter, attributes=attributes)
