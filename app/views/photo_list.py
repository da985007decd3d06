"""Photos of the customer's car, each with its caption, in the order in which they are printed."""

from __future__ import annotations

from dataclasses import replace
from pathlib import PurePath

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QToolButton, QVBoxLayout, QWidget

from analysis.review.job import Photo
from app.drawing.plain import plain_tip
from app.views.report_fields import LineField


def _tr(text: str) -> str:
    return QCoreApplication.translate("photo_list", text)


class PhotoList(QWidget):
    """A row for each photo.

    Signals
    -------
    edited(photos)
        A tuple of `Photo`, changed by the technician.
    wanted()
        More are to be chosen.
    """

    edited = Signal(object)
    wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._photos: tuple[Photo, ...] = ()
        self._rows = QVBoxLayout()
        add = QPushButton(_tr("Add photos…"))
        add.clicked.connect(self.wanted)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._rows)
        layout.addWidget(add)

    def show_photos(self, photos: tuple[Photo, ...]) -> None:
        """Show these, unless they are shown already."""
        if photos == self._photos:
            return
        self._photos = photos
        while (item := self._rows.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        for place, photo in enumerate(photos):
            self._rows.addWidget(self._row(place, photo))

    def _row(self, place: int, photo: Photo) -> QWidget:
        name = QLabel(PurePath(photo.path).name)
        name.setTextFormat(Qt.TextFormat.PlainText)
        name.setMaximumWidth(110)
        name.setToolTip(plain_tip(photo.path))
        caption = LineField(_tr("Caption of {name}").format(name=PurePath(photo.path).name))
        caption.setPlaceholderText(_tr("Caption"))
        caption.show_text(photo.caption)
        caption.entered.connect(lambda text: self._change(place, replace(photo, caption=text)))
        remove = QToolButton()
        remove.setText("×")
        remove.setAccessibleName(_tr("Take out {name}").format(name=PurePath(photo.path).name))
        remove.setToolTip(_tr("Take this photo out of the report"))
        remove.clicked.connect(lambda: self._change(place, None))
        row = QWidget()
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        for widget in (name, caption, remove):
            layout.addWidget(widget)
        return row

    def _change(self, place: int, photo: Photo | None) -> None:
        new = () if photo is None else (photo,)
        self.edited.emit((*self._photos[:place], *new, *self._photos[place + 1 :]))
