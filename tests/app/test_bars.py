"""Fewer rectangles paint the same pixels: each way of filling is painted and the pictures are compared."""

from __future__ import annotations

from typing import cast

import numpy as np
import pytest
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication

from app.drawing.bars import merged

WIDTH, HEIGHT = 301, 170


def painted(runs: NDArray[np.int32]) -> QImage:
    image = QImage(WIDTH + 20, HEIGHT, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor("#009E73"))
    kept = np.ascontiguousarray(runs.T)
    painter.drawRects(cast(QRect, shiboken6.wrapInstance(kept.ctypes.data, QRect)), len(kept))
    painter.end()
    return image


def upright(
    left: NDArray[np.integer], top: NDArray[np.integer], bottom: NDArray[np.integer]
) -> NDArray[np.int32]:
    return np.stack((left, top, left, bottom)).astype(np.int32)


def noise(count: int, rng: np.random.Generator) -> NDArray[np.int32]:
    """A signal that fills its lane: every stroke over the middle."""
    return upright(np.arange(count), rng.integers(5, 80, count), rng.integers(85, 165, count))


@pytest.mark.parametrize("count", [1, 2, 3, 300, 301])
def test_dense_strokes_are_painted_to_the_same_pixels(qapp: QApplication, count: int) -> None:
    for seed in range(20):
        runs = noise(count, np.random.default_rng(seed))
        assert painted(merged(runs)) == painted(runs)


def test_of_dense_noise_fewer_rows_are_filled(qapp: QApplication) -> None:
    runs = noise(300, np.random.default_rng(1))
    rows = [int((item[3] - item[1] + 1).sum()) for item in (runs, merged(runs))]
    assert rows[1] < 0.8 * rows[0]


def test_spikes_to_the_floor_and_two_strokes_in_one_pixel_are_the_same_too(qapp: QApplication) -> None:
    rng = np.random.default_rng(2)
    left = np.cumsum(rng.integers(0, 2, WIDTH))
    top = (80 + 60 * np.sin(np.arange(WIDTH) / 40)).astype(int)
    runs = upright(left, top, np.where(rng.random(WIDTH) < 0.7, 168, top + 5))
    assert merged(runs).shape != runs.shape
    assert painted(merged(runs)) == painted(runs)


@pytest.mark.parametrize("broken", ["a gap", "a leap", "short"])
def test_what_lies_apart_or_is_short_stays_as_it_is(qapp: QApplication, broken: str) -> None:
    runs = noise(300, np.random.default_rng(3))
    if broken == "a gap":
        runs[::2, 101:] += 5
    elif broken == "a leap":
        runs[1::2, 100], runs[1::2, 101] = (2, 40), (60, 160)
    else:
        runs[3] = runs[1] + 3
    assert merged(runs) is runs


def test_nothing_is_nothing() -> None:
    nothing = np.empty((4, 0), np.int32)
    assert merged(nothing) is nothing
