"""Views as pictures: PNG for the screen, SVG with its words as text for print."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPoint, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPaintDevice, QPainter, QRegion
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QGraphicsView, QWidget

from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import ExportingError
from analysis.wording import say
from app.drawing.theme import LIGHT, Palette
from app.reporting.svg import without_control_marks

PICTURES = (".png", ".svg")
"""Endings of files that a picture can be written to."""

PRINT = replace(LIGHT, desk="#FFFFFF", paper="#FFFFFF", raised="#FFFFFF")
"""The light palette on white paper."""

_PNG_SCALE = 2
_HEADING_PX, _MARGIN_PX = 26, 10


@dataclass(frozen=True, slots=True)
class Shot:
    """One view of a picture, with what stands above it."""

    heading: str
    view: QWidget


def save_picture(shots: Sequence[Shot], target: Path, palette: Palette) -> None:
    """Write views below each other as one picture.

    Parameters
    ----------
    shots : sequence of Shot
        At least one; each view has the colours of `palette` already.
    target : Path
        A file that does not exist yet; its ending is one of `PICTURES`.
    palette : Palette
        For the ground and the headings.

    Raises
    ------
    ExportingError
        Where the ending is another, the file exists, or it cannot be written.
    """
    ending = target.suffix.lower()
    if ending not in PICTURES:
        raise ExportingError(
            say("a picture cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .png or .svg"),
        )
    if target.exists():
        raise ExportingError(say("a file of that name exists already"), say("choose another name"))
    data = _svg(shots, palette) if ending == ".svg" else _png(shots, palette)
    with replaced_at_the_end(target, ExportingError) as temporary:
        temporary.write_bytes(data)


def _size(shots: Sequence[Shot]) -> QSize:
    width = max(shot.view.width() for shot in shots)
    height = sum(shot.view.height() + _HEADING_PX for shot in shots)
    return QSize(width + 2 * _MARGIN_PX, height + 2 * _MARGIN_PX)


def _png(shots: Sequence[Shot], palette: Palette) -> bytes:
    size = _size(shots)
    image = QImage(size * _PNG_SCALE, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(_PNG_SCALE)
    _painted(image, shots, size, palette)
    data, buffer = _buffer()
    if not image.save(buffer, "PNG"):  # type: ignore[call-overload]
        raise ExportingError(say("the picture could not be made"), say("choose .svg instead"))
    return bytes(data.data())


def _svg(shots: Sequence[Shot], palette: Palette) -> bytes:
    size = _size(shots)
    data, buffer = _buffer()
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setSize(size)
    generator.setViewBox(QRectF(0, 0, size.width(), size.height()))
    generator.setResolution(shots[0].view.logicalDpiX())
    _painted(generator, shots, size, palette)
    return without_control_marks(bytes(data.data()).decode("utf-8")).encode("utf-8")


def _buffer() -> tuple[QByteArray, QBuffer]:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    return data, buffer


def _painted(device: QPaintDevice, shots: Sequence[Shot], size: QSize, palette: Palette) -> None:
    painter = QPainter(device)
    try:
        _paint(painter, shots, size, palette)
    finally:
        painter.end()


def _paint(painter: QPainter, shots: Sequence[Shot], size: QSize, palette: Palette) -> None:
    painter.fillRect(QRectF(0, 0, size.width(), size.height()), QColor(palette.paper))
    top = _MARGIN_PX
    for shot in shots:
        _write_heading(
            painter, shot.heading, QRectF(_MARGIN_PX, top, size.width() - 2 * _MARGIN_PX, 20), palette
        )
        top += _HEADING_PX
        painter.save()
        painter.translate(_MARGIN_PX, top)
        _paint_view(painter, shot.view)
        painter.restore()
        top += shot.view.height()


def _paint_view(painter: QPainter, view: QWidget) -> None:
    if isinstance(view, QGraphicsView):  # it has a way of its own, and hides that of a widget
        view.render(painter, QRectF(view.rect()), view.rect(), Qt.AspectRatioMode.IgnoreAspectRatio)
    else:
        with _no_caches(view):
            view.render(painter, QPoint(), QRegion(), QWidget.RenderFlag.DrawChildren)


@contextmanager
def _no_caches(view: QWidget) -> Iterator[None]:
    """Plots keep their ground as points, which would lie below their curves."""
    plots = {plot: plot.cacheMode() for plot in view.findChildren(QGraphicsView)}
    for plot in plots:
        plot.setCacheMode(QGraphicsView.CacheModeFlag.CacheNone)
    try:
        yield
    finally:
        for plot, mode in plots.items():
            plot.setCacheMode(mode)


def _write_heading(painter: QPainter, text: str, where: QRectF, palette: Palette) -> None:
    font = QFont()
    font.setPointSizeF(10.0)
    font.setBold(True)
    painter.setFont(font)
    painter.setPen(QColor(palette.ink))
    one_line = QFontMetricsF(font).elidedText(
        " ".join(text.split()), Qt.TextElideMode.ElideRight, where.width()
    )
    painter.drawText(where, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, one_line)
