"""A frame that is as high as its wrapped lines need at its width."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame


class TallEnough(QFrame):
    """Takes its height from its layout; a layout or scroll area around it would guess, and cut lines."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Take the height that this width asks for."""
        super().resizeEvent(event)
        self.fit_height()

    def event(self, event: QEvent) -> bool:
        """Take the height that the new content asks for."""
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self.fit_height()
        return done

    def fit_height(self) -> None:
        """Set the least height."""
        layout, rim = self.layout(), self.contentsMargins()  # of the frame that the style sheet draws
        if layout is not None:
            inside_px = layout.heightForWidth(self.width() - rim.left() - rim.right())
            self.setMinimumHeight(max(inside_px, 0) + rim.top() + rim.bottom())  # -1 of what is empty
