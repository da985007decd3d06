"""What a screen reader calls the widgets that draw themselves: Qt knows the roles of its own alone."""

from __future__ import annotations

from functools import cache

from PySide6.QtCore import QObject
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import QAccessibleWidget, QWidget


class Drawn:
    """Mixin of a widget that draws itself.

    Attributes
    ----------
    spoken_role : QAccessible.Role
        What it is; its accessible name says what it shows.
    """

    spoken_role = QAccessible.Role.Chart


class DrawnSheet(Drawn):
    """Mixin of a widget that shows a picture of paper."""

    spoken_role = QAccessible.Role.Graphic


@cache
def say_drawings() -> None:
    """Let a screen reader know all of them, from now on and once for the process."""
    QAccessible.installFactory(_face)


def _face(_kind: str, item: QObject | None) -> QAccessibleInterface | None:
    """How a widget shows itself, or None for Qt's own way."""
    if isinstance(item, Drawn) and isinstance(item, QWidget):
        return QAccessibleWidget(item, item.spoken_role)
    return None
