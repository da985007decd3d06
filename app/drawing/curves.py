"""Whether something is painted as curves, for print, or as points, for the screen."""

from __future__ import annotations

from PySide6.QtGui import QPaintEngine, QPainter


def draws_curves(painter: QPainter) -> bool:
    """Whether what is painted stays curves and words: then nothing is to be painted from points kept ready.

    Parameters
    ----------
    painter : QPainter
        Begun.
    """
    engine = painter.paintEngine()
    kinds = (QPaintEngine.Type.SVG, QPaintEngine.Type.Pdf, QPaintEngine.Type.Picture)
    return engine is not None and engine.type() in kinds
