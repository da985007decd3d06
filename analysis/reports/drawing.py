"""A picture as plain marks in its own units: one drawing for every way of putting it on paper or screen."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

WIDTH = 900.0
"""Of a picture over the whole width of a sheet."""

INK, QUIET, PALE = "#22262b", "#6b6f76", "#c9ccd1"
BAND_COLOUR = "#D55E00"
"""Vermillion of Okabe & Ito (2008); hatched too, for a black-and-white printer."""


@dataclass(frozen=True, slots=True, eq=False)
class Stroke:
    """Lines drawn with one pen.

    Parameters
    ----------
    lines : tuple of ndarray, each shape (n_points, 2)
        x to the right and y downwards.
    colour : str
        ``"#rrggbb"``.
    width : float
        Of the pen.
    opacity : float
        0 to 1.
    dashes : tuple of float
        Lengths drawn and left out in turn; empty for a line without a break.
    """

    lines: tuple[NDArray[np.float64], ...]
    colour: str = INK
    width: float = 1.0
    opacity: float = 1.0
    dashes: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Label:
    """Words at a point.

    Parameters
    ----------
    x, y : float
        Of the base line.
    text : str
        One line.
    anchor : str
        ``"start"``, ``"middle"`` or ``"end"``: which part of the words stands at the point.
    size : float
        Height of the letters' square.
    bold, upwards : bool
        Heavy letters; read from the bottom to the top.
    colour : str
        ``"#rrggbb"``.
    """

    x: float
    y: float
    text: str
    anchor: str = "start"
    size: float = 13.0
    bold: bool = False
    upwards: bool = False
    colour: str = INK


@dataclass(frozen=True, slots=True)
class Box:
    """A filled rectangle without an edge."""

    x: float
    y: float
    width: float
    height: float
    colour: str = PALE


Mark: TypeAlias = Stroke | Label | Box


@dataclass(frozen=True, slots=True)
class Drawing:
    """A picture.

    Parameters
    ----------
    width, height : float
        Its units are arbitrary; letters of size 13 read well where the width is printed over 17 cm.
    marks : tuple of Mark
        The later ones cover the earlier.
    description : str
        What it shows, for those who cannot see it.
    """

    width: float
    height: float
    marks: tuple[Mark, ...]
    description: str


def line(*points: tuple[float, float]) -> NDArray[np.float64]:
    """A line through some points, shape (n_points, 2)."""
    return np.asarray(points, dtype=np.float64).reshape(-1, 2)


def hatched(x: float, y: float, width: float, height: float, *, possible: bool = False) -> tuple[Mark, ...]:
    """A rectangle hatched as a band is, with its edge; dashed where the band is only possible."""
    edge = line((x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y))
    strokes = tuple(_hatches(x, y, width, height, 9.0))
    return (
        Stroke(strokes, BAND_COLOUR, 1.3, 0.4),
        Stroke((edge,), BAND_COLOUR, 1.2, 1.0, (5.0, 3.5) if possible else ()),
    )


def _hatches(x: float, y: float, width: float, height: float, gap: float) -> list[NDArray[np.float64]]:
    """Slanted lines at 45 degrees, clipped to the rectangle."""
    lines = []
    for along in np.arange(gap, width + height, gap):
        first, last = max(0.0, along - width), min(height, along)
        lines.append(line((x + along - first, y + first), (x + along - last, y + last)))
    return lines
