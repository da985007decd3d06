"""Axes of a picture: a frame of ticks and numbers, and the way from values to places on it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.intervals import Interval
from analysis.reports.drawing import PALE, Label, Mark, Stroke, line
from analysis.reports.quantities import number

_STEPS = (1.0, 2.0, 5.0)
_LEAST_GAP = 60.0  # between two numbers below a picture, in its units: the widest have five digits


@dataclass(frozen=True, slots=True)
class Axes:
    """A rectangle of a picture with a scale on each side.

    Parameters
    ----------
    left, top, width, height : float
        The rectangle.
    across, up : Interval
        Values at its left and right, and at its bottom and top.
    """

    left: float
    top: float
    width: float
    height: float
    across: Interval
    up: Interval

    @property
    def right(self) -> float:
        """The right edge."""
        return self.left + self.width

    @property
    def base(self) -> float:
        """The lower edge."""
        return self.top + self.height

    def x(self, value: float) -> float:
        """Place of a value on the way across, kept inside."""
        share = (value - self.across.start) / max(self.across.length, 1e-12)
        return self.left + self.width * min(max(share, 0.0), 1.0)

    def y(self, value: float) -> float:
        """Place of a value on the way up, kept inside."""
        share = (value - self.up.start) / max(self.up.length, 1e-12)
        return self.base - self.height * min(max(share, 0.0), 1.0)

    def points(self, across: NDArray[np.float64], up: NDArray[np.float64]) -> NDArray[np.float64]:
        """Places of many values, shape (n, 2)."""
        x = self.left + self.width * (across - self.across.start) / max(self.across.length, 1e-12)
        y = self.base - self.height * (up - self.up.start) / max(self.up.length, 1e-12)
        return np.column_stack([np.clip(x, self.left, self.right), np.clip(y, self.top, self.base)])

    def marks(self, *, across_title: str, up_title: str, numbers_across: bool = True) -> tuple[Mark, ...]:
        """Frame, ticks, numbers and titles; faint lines at the upward ticks to read a height by."""
        frame = line((self.left, self.top), (self.left, self.base), (self.right, self.base))
        marks: list[Mark] = [Stroke(tuple(self._rules()), PALE, 0.6), Stroke((frame,))]
        marks += self._ticks_up()
        marks += self._ticks_across(numbers_across)
        middle = self.top + self.height / 2
        marks.append(Label(self.left - 46, middle, up_title, "middle", 12.0, upwards=True))
        if numbers_across:
            marks.append(Label(self.left + self.width / 2, self.base + 36, across_title, "middle", 12.0))
        return tuple(marks)

    def _rules(self) -> list[NDArray[np.float64]]:
        return [
            line((self.left, self.y(value)), (self.right, self.y(value)))
            for value in ticks(self.up, 5)
            if value > self.up.start
        ]

    def _ticks_up(self) -> list[Mark]:
        marks: list[Mark] = []
        values = ticks(self.up, 5)
        digits = digits_of(values)
        for value in values:
            y = self.y(value)
            marks.append(Stroke((line((self.left - 5, y), (self.left, y)),)))
            marks.append(Label(self.left - 9, y + 4, number(value, digits), "end", 12.0))
        return marks

    def _ticks_across(self, numbers: bool) -> list[Mark]:
        marks: list[Mark] = []
        values = ticks(self.across, min(10, max(2, round(self.width / _LEAST_GAP))))
        digits = digits_of(values)
        for value in values:
            x = self.x(value)
            marks.append(Stroke((line((x, self.base), (x, self.base + 5)),)))
            if numbers:
                marks.append(Label(x, self.base + 18, number(value, digits), "middle", 12.0))
        return marks


def ticks(span: Interval, at_most: int) -> tuple[float, ...]:
    """Round values inside a span, at most so many steps apart; its start alone where it has no width."""
    if span.length <= 0.0:
        return (span.start,)
    step = nice_above(span.length / at_most)
    first, last = math.ceil(span.start / step - 1e-9), math.floor(span.stop / step + 1e-9)
    return tuple(step * place for place in range(first, last + 1))


def nice_above(value: float) -> float:
    """The next 1, 2 or 5 times a power of ten at or above a positive value."""
    power = 10.0 ** math.floor(math.log10(value))
    return float(next((step * power for step in _STEPS if step * power >= value * (1 - 1e-9)), 10.0 * power))


def digits_of(values: Sequence[float]) -> int:
    """Digits after the mark that tell neighbouring ticks apart."""
    if len(values) < 2:
        return 1
    return max(0, -math.floor(math.log10(abs(values[1] - values[0])) + 1e-9))
