"""The right column of Review: Evidence, and below it Markers, as high as what it holds."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter

from app.views.evidence import EvidenceView
from app.views.markers import MarkersView

_GAP_PX = 6
_LOW_PX = 500
_MOST_SHARE = 0.42
"""Of the column: the verdict, how sure it is and the bands stay in sight above the markers.

In a low one the readings get up to half of it, as long as the verdict has its room.
"""


class RightColumn(QSplitter):
    """Evidence above, Markers below; once the technician moved the border, it stays where it is."""

    def __init__(self, evidence: EvidenceView, markers: MarkersView) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._evidence, self._markers = evidence, markers
        self._moved = False
        self.setHandleWidth(_GAP_PX)
        self.setChildrenCollapsible(False)
        self.addWidget(evidence)
        self.addWidget(markers)
        self.splitterMoved.connect(self._keep)

    def fit(self) -> None:
        """Share the height out."""
        if not self._moved:
            self._markers.settle()
            most = round(_MOST_SHARE * self.height())
            if self.height() < _LOW_PX:
                spare = self.height() - self._evidence.minimumSizeHint().height() - _GAP_PX
                most = max(most, min(spare, self.height() // 2 - _GAP_PX))
            wanted = self._markers.wanted_height(most)
            self.setSizes([self.height() - wanted - _GAP_PX, wanted])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the new height out."""
        super().resizeEvent(event)
        self.fit()

    def _keep(self) -> None:
        self._moved = True
