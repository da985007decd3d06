"""Which pictures page one of the report shows: what is ticked is what is printed, whoever chose it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QCheckBox, QLabel, QPushButton, QVBoxLayout, QWidget

from analysis.reports.report_pictures import NONE, PICTURES
from app.views.report_fields import tick_box


def _tr(text: str) -> str:
    return QCoreApplication.translate("picture_choice", text)


class PictureChoice(QWidget):
    """A box for each picture and one for none, whose choice it is, and the way back to the program's.

    Signals
    -------
    chosen(tuple)
        Codes of the pictures; `NONE` alone for none, empty for the program's choice.
    """

    chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._chosen: tuple[str, ...] = ()
        self._printed: tuple[str, ...] | None = None
        self.boxes: dict[str, QCheckBox] = {}
        self.state = QLabel()
        self.state.setWordWrap(True)
        self.state.setContentsMargins(5, 1, 5, 3)  # below the boxes, that stand in their ring
        self.state.setProperty("quiet", True)
        self.program_again = QPushButton(_tr("The program's choice again"))
        self.program_again.clicked.connect(lambda: self.chosen.emit(()))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        for key in (*PICTURES, NONE):
            self.boxes[key] = tick_box(_names()[key])
            self.boxes[key].clicked.connect(lambda _on, key=key: self._choose(key))
            column.addWidget(self.boxes[key])
        column.addWidget(self.state)
        column.addWidget(self.program_again)

    def show_choice(self, chosen: tuple[str, ...]) -> None:
        """Show what was chosen by hand; empty where it is left to the program."""
        self._chosen = chosen
        self._show()

    def show_printed(self, printed: tuple[str, ...] | None) -> None:
        """Show which pictures stand on page one; None while it is being made."""
        self._printed = printed
        self._show()

    def _show(self) -> None:
        ticked = self._chosen or (() if self._printed is None else self._printed or (NONE,))
        for key, box in self.boxes.items():
            box.setChecked(key in ticked)
        text = self._told()
        self.state.setText(text)
        self.state.setVisible(bool(text))
        self.program_again.setEnabled(bool(self._chosen))

    def _told(self) -> str:
        if self._printed is None:
            return ""
        if not self._chosen:
            told = _tr("Chosen by the program."), _tr("The program shows none with this finding.")
            return told[0] if self._printed else told[1]
        missing = [_names()[key] for key in self._chosen if key not in (*self._printed, NONE)]
        if not missing:
            return ""
        return _tr("Cannot be drawn from this capture: {names}").format(names=", ".join(missing))

    def _choose(self, key: str) -> None:
        """What is ticked from now on; with the last box unticked there is no picture."""
        if key == NONE:
            chosen: tuple[str, ...] = (NONE,) if self.boxes[NONE].isChecked() else ()
        else:
            chosen = tuple(item for item in PICTURES if self.boxes[item].isChecked()) or (NONE,)
        if chosen == self._chosen:
            self._show()
        else:
            self.chosen.emit(chosen)


def _names() -> dict[str, str]:
    return {
        "track": _tr("Break-up along the travel"),
        "trace": _tr("The signal in time"),
        NONE: _tr("No picture"),
    }
