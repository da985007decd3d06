"""What hands do: point, drag, turn the wheel and drop, through Qt's own events."""

from __future__ import annotations

import shutil
from collections.abc import Sequence
from functools import cache
from pathlib import Path

from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDropEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPointingDevice,
    QWheelEvent,
)
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from app import resources
from app.main_window import Window
from tests.importing_page.tables import at_rest, comma_table, swept


def _mouse(
    widget: QWidget,
    kind: QMouseEvent.Type,
    at: QPoint,
    button: Qt.MouseButton,
    held: Qt.MouseButton,
    keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
) -> None:
    """A mouse event with buttons held, which `QTest.mouseMove` cannot say."""
    spot = QPointF(at)
    event = QMouseEvent(kind, spot, widget.mapToGlobal(spot), button, held, keys)
    QApplication.sendEvent(widget, event)


def drag(
    widget: QWidget,
    start: QPoint,
    stop: QPoint,
    steps: int = 8,
    held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
) -> None:
    """Press the left button, move, and let go; perhaps with a key held."""
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    _mouse(widget, QMouseEvent.Type.MouseMove, start, none, none)
    _mouse(widget, QMouseEvent.Type.MouseButtonPress, start, left, left, held)
    for step in range(1, steps + 1):
        at = start + (stop - start) * (step / steps)
        _mouse(widget, QMouseEvent.Type.MouseMove, at, none, left, held)
        QTest.qWait(2)
    _mouse(widget, QMouseEvent.Type.MouseButtonRelease, stop, left, none, held)


def point(widget: QWidget, at: QPoint) -> None:
    """Move the pointer there."""
    none = Qt.MouseButton.NoButton
    _mouse(widget, QMouseEvent.Type.MouseMove, at, none, none)


def double_click(widget: QWidget, at: QPoint) -> None:
    """Click twice, as Qt delivers it."""
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    for kind in (QMouseEvent.Type.MouseButtonPress, QMouseEvent.Type.MouseButtonDblClick):
        _mouse(widget, kind, at, left, left)
        _mouse(widget, QMouseEvent.Type.MouseButtonRelease, at, left, none)


def ask(widget: QWidget, at: QPoint) -> None:
    """Press and let go of the right button, as Qt delivers it where a menu opens on the press."""
    right, none = Qt.MouseButton.RightButton, Qt.MouseButton.NoButton
    _mouse(widget, QMouseEvent.Type.MouseButtonPress, at, right, right)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, widget.mapToGlobal(at))
    QApplication.sendEvent(widget, event)
    _mouse(widget, QMouseEvent.Type.MouseButtonRelease, at, right, none)


def wheel(
    widget: QWidget,
    at: QPoint,
    notches: int,
    held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
) -> None:
    """Turn the wheel, perhaps with a key held; away from the hand is positive."""
    spot = QPointF(at)
    event = QWheelEvent(
        spot,
        widget.mapToGlobal(spot),
        QPoint(),
        QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton,
        held,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(widget, event)


def pinch(widget: QWidget, at: QPoint, spread: float) -> None:
    """Spread two fingers on a pad by that share, as Qt delivers it; closed where it is negative."""
    spot = QPointF(at)
    event = QNativeGestureEvent(
        Qt.NativeGestureType.ZoomNativeGesture,
        QPointingDevice.primaryPointingDevice(),
        2,
        spot,
        spot,
        widget.mapToGlobal(spot),
        spread,
        QPointF(),
    )
    QApplication.sendEvent(widget, event)


@cache
def _screen() -> QPointingDevice:
    """The one screen that feels fingers: Qt goes on looking at it, so it is never let go."""
    return QTest.createTouchDevice()


def spread_fingers(widget: QWidget, at: QPoint, from_px: int, to_px: int, moved_px: int = 0) -> None:
    """Put two fingers on a screen, one after the other, and draw them apart or together, level with `at`.

    Parameters
    ----------
    widget : QWidget
    at : QPoint
        Halfway between them.
    from_px, to_px : int
        How far from there they are at the beginning and at the end.
    moved_px : int
        How far the first one went before the second came.
    """
    screen = _screen()
    first, second = at - QPoint(from_px, 0), at + QPoint(from_px, 0)
    QTest.touchEvent(widget, screen).press(0, first - QPoint(moved_px, 0), widget).commit()
    for step in range(1, 5 if moved_px else 1):
        QTest.touchEvent(widget, screen).move(
            0, first - QPoint(moved_px * (4 - step) // 4, 0), widget
        ).commit()
    QTest.touchEvent(widget, screen).stationary(0).press(1, second, widget).commit()
    for step in range(1, 9):
        out = QPoint((to_px - from_px) * step // 8, 0)
        event = QTest.touchEvent(widget, screen).move(0, first - out, widget)
        event.move(1, second + out, widget).commit()
    last = QPoint(to_px, 0)
    QTest.touchEvent(widget, screen).release(0, at - last, widget).release(1, at + last, widget).commit()


def import_worn(qtbot: QtBot, window: Window, folder: Path) -> None:
    """Bring the Import page to the front, with two tables understood that are written into a folder."""
    window.imports.recipes = folder / "recipes"
    paths = [
        comma_table(folder / "1-at-rest.csv", at_rest()),
        comma_table(folder / "2-sweep.csv", swept()),
    ]
    window.imports.open(paths)
    state = window.imports.state
    qtbot.waitUntil(lambda: len(state.draft.files) == 2 and state.next_to_look_at() is None, timeout=20_000)


def copy_of_sample(name: str, folder: Path) -> Path:
    """A sample in a folder of the test's own, where a review may be left beside it."""
    return Path(shutil.copy(resources.folder("sample_captures") / name, folder))


def drop(window: Window, path: Path) -> None:
    """Drop a file on the window."""
    drop_all(window, [path])


def compare_with(qtbot: QtBot, window: Window, name: str) -> Window:
    """Go to Compare by its key, and drop the other capture there; once they are compared."""
    QTest.keyClick(window, Qt.Key.Key_F7)
    drop(window, Path(name))
    qtbot.waitUntil(lambda: window.compare.comparison is not None)
    return window


def drop_all(window: Window, paths: Sequence[Path]) -> None:
    """Drop several files on the window at once."""
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    actions, none = Qt.DropAction.CopyAction, Qt.KeyboardModifier.NoModifier
    held = Qt.MouseButton.LeftButton
    QApplication.sendEvent(window, QDragEnterEvent(QPoint(300, 300), actions, data, held, none))
    QApplication.sendEvent(window, QDropEvent(QPointF(300, 300), actions, data, held, none))
