"""Two fingers on a screen that feels them: they zoom as two fingers on a pad do."""

from __future__ import annotations

from copy import copy
from typing import Any

from PySide6.QtCore import QEvent, QObject, QPointF, Qt
from PySide6.QtWidgets import QGestureEvent, QPinchGesture

from app.drawing.canvas import Canvas

_LEAST = 0.1


class TouchPinch(QObject):
    """Lets a canvas tell of two fingers on it, by its signal `pinched`; one finger is a mouse, and stays one.

    Parameters
    ----------
    canvas : Canvas
    """

    def __init__(self, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._pinching = False
        canvas.viewport().grabGesture(Qt.GestureType.PinchGesture)
        canvas.viewport().installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Take what Qt made of two fingers, and what it still makes of the first of them."""
        if isinstance(event, QGestureEvent):
            gesture = event.gesture(Qt.GestureType.PinchGesture)
            if isinstance(gesture, QPinchGesture):
                self._take(gesture)
                event.accept(gesture)
                return True
        elif event.type() in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
            self._pinching = False
        elif event.type() == QEvent.Type.MouseMove and self._pinching:
            return True
        return super().eventFilter(watched, event)

    def _take(self, gesture: QPinchGesture) -> None:
        if gesture.state() == Qt.GestureState.GestureStarted:
            self._pinching = True
            self._let_go()
        if gesture.changeFlags() & QPinchGesture.ChangeFlag.ScaleFactorChanged:
            at = self._canvas.viewport().mapFromGlobal(gesture.centerPoint())
            scene_point: QPointF = self._canvas.mapToScene(at.toPoint())
            self._canvas.pinched.emit(1.0 / max(gesture.scaleFactor(), _LEAST), scene_point)

    def _let_go(self) -> None:
        """The first finger meant no click and no drag: put back what it drags, and let it go."""
        scene: Any = self._canvas.scene()
        drag, item = scene.lastDrag, scene.dragItem
        if drag is not None and item is not None and scene.dragButtons:
            back = copy(drag)
            back.start, back.finish = False, True
            back._scenePos = drag.buttonDownScenePos()  # no event can be made without one of Qt's
            item.mouseDragEvent(back)
        scene.dragItem, scene.lastDrag = None, None
        scene.dragButtons, scene.clickEvents = [], []
