"""What a start and a frame spare, without a window: garbage, samples kept at hand, dots that are stamped."""

from __future__ import annotations

import gc
import importlib
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from analysis.captures.model import SampleSource
from analysis.errors import CaptureError
from app.drawing.dots import Dots
from app.drawing.held import HeldSource
from app.window import without_collecting

INK = QColor("#009e73")


class CountedSource:
    """A ramp that counts how often it is read, and cannot be read at one sample."""

    def __init__(self, length: int, damaged: int | None = None) -> None:
        self.reads: list[tuple[int, int]] = []
        self._samples = np.arange(length, dtype=np.int32)
        self._damaged = damaged

    @property
    def dtype(self) -> np.dtype[Any]:
        return self._samples.dtype

    def __len__(self) -> int:
        return len(self._samples)

    def read(self, start: int, stop: int) -> NDArray[Any]:
        start, stop = max(start, 0), min(stop, len(self))
        self.reads.append((start, stop))
        if self._damaged is not None and start <= self._damaged < stop:
            raise CaptureError("A chunk is damaged", "record again")
        return self._samples[start:stop]


def test_garbage_is_looked_for_again_after_loading_even_where_loading_failed() -> None:
    with without_collecting():
        assert not gc.isenabled()
    assert gc.isenabled()
    with pytest.raises(ImportError, match="no_such_library"), without_collecting():
        importlib.import_module("no_such_library")
    assert gc.isenabled()
    gc.unfreeze()  # the other tests' objects are no part of a start


def test_what_is_kept_gives_the_same_samples_as_the_source() -> None:
    plain, rng = CountedSource(100_000), np.random.default_rng(5)
    held: SampleSource = HeldSource(plain)
    for start, length in zip(rng.integers(-500, 100_500, 200), rng.integers(0, 30_000, 200), strict=True):
        stop = int(start + length)
        np.testing.assert_array_equal(held.read(int(start), stop), plain.read(int(start), stop))


def test_a_pan_by_steps_reads_the_source_once_in_several_frames() -> None:
    plain = CountedSource(2_000_000)
    held = HeldSource(plain)
    for step in range(40):
        held.read(10_000 * step, 10_000 * step + 100_000)
    assert len(plain.reads) <= 8
    assert held.read(390_000, 490_000)[0] == 390_000


@pytest.mark.parametrize("direction", [1, -1])
def test_of_a_pan_no_sample_is_read_twice(direction: int) -> None:
    plain = CountedSource(4_000_000)
    held = HeldSource(plain)
    for step in range(40):
        start = 2_000_000 + direction * 10_000 * step
        assert held.read(start, start + 100_000)[0] == start
    asked = [place for start, stop in plain.reads for place in range(start, stop, 1000)]
    assert len(plain.reads) > 3
    assert len(asked) == len(set(asked))


def test_a_stretch_too_long_to_keep_is_read_as_it_is() -> None:
    plain = CountedSource(3_000_000)
    assert len(HeldSource(plain).read(500_000, 2_500_000)) == 2_000_000
    assert plain.reads == [(500_000, 2_500_000)]


def test_damage_beside_what_is_shown_does_not_hide_it_and_damage_within_is_said() -> None:
    held = HeldSource(CountedSource(100_000, damaged=52_000))
    np.testing.assert_array_equal(held.read(40_000, 50_000), np.arange(40_000, 50_000))
    with pytest.raises(CaptureError, match="damaged"):
        held.read(45_000, 55_000)
    assert held.read(40_000, 41_000)[0] == 40_000


@pytest.mark.parametrize("ratio", [1.0, 1.5, 2.0])
def test_a_stamped_dot_lies_where_a_round_point_of_the_same_width_does(qtbot: QtBot, ratio: float) -> None:
    """The other picture is Qt's own: `QPainter.drawPoints` with a round pen, anti-aliased."""
    rng = np.random.default_rng(7)
    places = np.column_stack((10.0 + 12.0 * np.arange(15), rng.uniform(8.0, 52.0, 15)))
    places[:, 0] += rng.uniform(-2.0, 2.0, 15)
    stamped, round_ones = _picture(ratio), _picture(ratio)
    with QPainter(stamped) as painter:
        Dots(INK).paint(painter, places, ratio)
    with QPainter(round_ones) as painter:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _round_points(painter, places)
    ink, meant = _ink(stamped), _ink(round_ones)
    for x, y in places * ratio:
        box = np.s_[int(y - 4 * ratio) : int(y + 4 * ratio) + 1, int(x - 4 * ratio) : int(x + 4 * ratio) + 1]
        assert _middle(ink[box]) == pytest.approx(_middle(meant[box]), abs=0.2)
        assert ink[box].sum() == pytest.approx(meant[box].sum(), rel=0.06)


def test_no_dots_are_painted_where_there_are_none(qtbot: QtBot) -> None:
    picture = _picture(1.0)
    with QPainter(picture) as painter:
        Dots(INK).paint(painter, np.empty((0, 2)), 1.0)
    assert not _ink(picture).any()


def _picture(ratio: float) -> QImage:
    picture = QImage(round(200 * ratio), round(60 * ratio), QImage.Format.Format_ARGB32_Premultiplied)
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    return picture


def _round_points(painter: QPainter, places: NDArray[np.float64]) -> None:
    pen = painter.pen()
    pen.setColor(INK)
    pen.setWidthF(5.0)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    for x, y in places.tolist():
        painter.drawPoint(QPointF(x, y))


def _ink(picture: QImage) -> NDArray[np.float64]:
    """How much of each device pixel is covered, 0 to 1."""
    pixels = np.frombuffer(picture.constBits(), np.uint32).reshape(picture.height(), picture.width())
    return (pixels >> 24) / 255.0


def _middle(ink: NDArray[np.float64]) -> tuple[float, float]:
    """Centre of gravity, down and right."""
    down, right = np.indices(ink.shape)
    return float((down * ink).sum() / ink.sum()), float((right * ink).sum() / ink.sum())
