"""Icons of our own: one-colour drawings, tinted to the palette as they are loaded."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from app import resources


@lru_cache(maxsize=256)
def pixmap(name: str, colour: str, size: int = 20, scale: float = 2.0) -> QPixmap:
    """One icon in one colour.

    Parameters
    ----------
    name : str
        File name without ``.svg``.
    colour : str
        Any colour that `QColor` reads; it takes the place of ``currentColor``.
    size : int
        Edge in logical pixels.
    scale : float
        Pixels a logical pixel; 2 keeps it sharp at 200 % scaling.

    Raises
    ------
    FileNotFoundError
        Where there is no such icon.
    """
    renderer = QSvgRenderer(QByteArray(_drawn(name).replace("currentColor", QColor(colour).name()).encode()))
    picture = QPixmap(QSize(round(size * scale), round(size * scale)))
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    try:
        renderer.render(painter, QRectF(picture.rect()))
    finally:
        painter.end()
    picture.setDevicePixelRatio(scale)
    return picture


@lru_cache(maxsize=128)
def _drawn(name: str) -> str:
    return (resources.folder("icons") / f"{name}.svg").read_text(encoding="utf-8")


def icon(name: str, colour: str, faint: str) -> QIcon:
    """An icon with its disabled state in a fainter colour."""
    result = QIcon(pixmap(name, colour))
    result.addPixmap(pixmap(name, faint), QIcon.Mode.Disabled)
    return result
