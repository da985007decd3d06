"""A drawing as PNG, painted without a screen."""

from __future__ import annotations

import os

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, Qt
from PySide6.QtGui import QImage, QPainter

from analysis.errors import ExportingError
from analysis.reports.drawing import Drawing
from analysis.wording import say
from app.reporting.placed import Drawn, Sheet
from app.window import application

_WIDTH_PX = 2000


def png(drawing: Drawing) -> bytes:
    """The bytes of a PNG file, 2000 pixels wide, on white.

    Raises
    ------
    ExportingError
        Where Qt cannot make it.
    """
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    application()
    drawn = Drawn(drawing, 0.0, 0.0, float(_WIDTH_PX))
    image = QImage(_WIDTH_PX, round(drawn.height), QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    Sheet(drawn.width, drawn.height, (drawn,)).paint(painter)
    painter.end()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not image.save(buffer, "PNG"):  # type: ignore[call-overload]
        raise ExportingError(say("the picture could not be made"), say("choose .svg instead"))
    return bytes(data.data())
