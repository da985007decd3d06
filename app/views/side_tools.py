"""What one side of Compare shows: its capture, its record and its track, to be chosen."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QMenu, QToolButton, QWidget

from analysis.captures.model import Capture, Record, Role
from app.drawing.plain import plain_tip
from app.words import record_names, role_name


class SideTools(QWidget):
    """Three choices beside the name of a trace.

    Parameters
    ----------
    captures_menu : QMenu
        Where the capture is chosen.

    Signals
    -------
    record_chosen(name), track_chosen(Role)
    """

    record_chosen = Signal(str)
    track_chosen = Signal(object)

    def __init__(self, captures_menu: QMenu) -> None:
        super().__init__()
        self.capture = QToolButton()
        self.capture.setText(self.tr("Capture"))
        self.capture.setToolTip(self.tr("Choose the capture of this side"))
        self.capture.setAccessibleName(self.tr("Capture of this side"))
        self.capture.setMenu(captures_menu)
        self.capture.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.capture.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.capture.setProperty("heading", True)
        self.capture.setProperty("outlined", True)
        self.records, self.tracks = QComboBox(), QComboBox()
        for box, name in (
            (self.records, self.tr("Record of this side")),
            (self.tracks, self.tr("Track of this side")),
        ):
            box.setAccessibleName(name)
            box.setToolTip(name)
            box.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(7)
        self.records.activated.connect(lambda _row: self.record_chosen.emit(self.records.currentData()))
        self.tracks.activated.connect(lambda _row: self.track_chosen.emit(Role(self.tracks.currentData())))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        for widget in (self.capture, self.records, self.tracks):
            row.addWidget(widget)
        self.show_choices(None, None, (), None)

    def show_choices(
        self, capture: Capture | None, record: Record | None, tracks: tuple[Role, ...], track: Role | None
    ) -> None:
        """Offer the records of a capture and its tracks, with those that are shown marked."""
        self.records.clear()
        if capture is not None:
            for name, text in record_names(capture).items():
                self.records.addItem(text, name)
                label = capture.record(name).label
                self.records.setItemData(
                    self.records.count() - 1, plain_tip(label), Qt.ItemDataRole.ToolTipRole
                )
        self.records.setVisible(self.records.count() > 0)
        if record is not None:
            self.records.setCurrentIndex(self.records.findData(record.name))
        self.tracks.clear()
        for role in tracks:
            self.tracks.addItem(role_name(role), role)
        self.tracks.setMinimumContentsLength(max((len(role_name(role)) for role in tracks), default=0))
        self.tracks.setVisible(len(tracks) > 1)
        if track is not None:
            self.tracks.setCurrentIndex(tracks.index(track))
