"""Markers and what they read for other programs: copied as text or CSV, or saved as CSV."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog

from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import WornbandError
from analysis.reports.sheet import Cell, csv_text, tabbed_text
from app.review.keeper import ReviewKeeper
from app.review.marker_desk import MarkerDesk
from app.review.marker_sheet import rows
from app.save_place import folder_to_save
from app.trouble import sentence
from app.words import record_names

if TYPE_CHECKING:
    from app.main_window import Window

_SAY_MS = 8000


class MarkerCopies(QObject):
    """Hands out the markers of the open review, and tells what it did.

    Parameters
    ----------
    window : Window
    keeper : ReviewKeeper
        Whose markers.
    markers : MarkerDesk
        Knows what they read.
    """

    def __init__(self, window: Window, keeper: ReviewKeeper, markers: MarkerDesk) -> None:
        super().__init__(window)
        self._window, self._keeper, self._markers = window, keeper, markers

    def copy_text(self) -> None:
        """Put the markers on the clipboard with tabs between the cells."""
        self._copy(tabbed_text(self._rows()))

    def copy_csv(self) -> None:
        """Put the markers on the clipboard as CSV."""
        self._copy(csv_text(self._rows()))

    def save_csv(self) -> None:
        """Ask for a file, and save the markers there as CSV."""
        capture = self._window.session.capture
        path = capture.path if capture is not None else None
        name = f"{path.stem if path is not None else 'capture'}.markers.csv"
        start = str(folder_to_save(path, Path.home()) / name)
        kinds = self.tr("CSV (*.csv)")
        chosen, _ = QFileDialog.getSaveFileName(self._window, self.tr("Save the markers"), start, kinds)
        if chosen:
            self._save(Path(chosen))

    def _save(self, target: Path) -> None:
        try:
            with replaced_at_the_end(target, WornbandError) as temporary:
                # With a byte order mark: without one spreadsheets take UTF-8 for something else.
                temporary.write_text(csv_text(self._rows()), encoding="utf-8-sig", newline="")
        except WornbandError as error:
            said = sentence(error, self.tr("Saving the markers"))
            self._window.page.problem_bar.show_problem(said)
        else:
            self._tell(self.tr("Saved: {path}").format(path=target))

    def _copy(self, text: str) -> None:
        QGuiApplication.clipboard().setText(text)
        count = len(self._keeper.review.markers)
        said = self.tr("{count} markers copied") if count != 1 else self.tr("{count} marker copied")
        self._tell(said.format(count=count))

    def _tell(self, said: str) -> None:
        self._window.statusBar().showMessage(said, _SAY_MS)

    def _rows(self) -> list[tuple[Cell, ...]]:
        markers, capture = self._keeper.review.markers, self._window.session.capture
        readings = {item.marker_id: self._markers.reader.reading(item) for item in markers}
        names = record_names(capture) if capture is not None else {}
        return rows(markers, readings, names, self._markers.places)
