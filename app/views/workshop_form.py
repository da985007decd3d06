"""Who makes the reports: name, address and logo, kept in the settings."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from analysis.reports.workshop import Workshop
from app.views.dialog_buttons import dialog_buttons

IMAGE_FILES = "*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg"


def _tr(text: str) -> str:
    return QCoreApplication.translate("workshop_form", text)


class WorkshopForm(QDialog):
    """A dialog with the workshop's own particulars.

    Parameters
    ----------
    workshop : Workshop
        As it is now.
    """

    def __init__(self, workshop: Workshop, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(_tr("The workshop"))
        self.name, self.lines, self.logo = (
            QLineEdit(workshop.name),
            QPlainTextEdit(),
            QLineEdit(workshop.logo),
        )
        self.lines.setTabChangesFocus(True)  # or the keyboard does not get out of it
        self.lines.setPlainText("\n".join(workshop.lines))
        self.lines.setFixedHeight(90)
        self.name.setAccessibleName(_tr("Name of the workshop"))
        self.lines.setAccessibleName(_tr("Address and telephone"))
        self.logo.setAccessibleName(_tr("Logo"))
        choose = QPushButton(_tr("Choose…"))
        choose.clicked.connect(self._choose)
        logo = QHBoxLayout()
        logo.addWidget(self.logo, 1)
        logo.addWidget(choose)
        form = QFormLayout()
        form.addRow(_tr("Name"), self.name)
        form.addRow(_tr("Address, telephone"), self.lines)
        form.addRow(_tr("Logo"), logo)
        buttons = dialog_buttons(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addLayout(form)
        layout.addWidget(buttons)
        self.resize(460, 240)

    @property
    def workshop(self) -> Workshop:
        """As it was entered."""
        lines = tuple(line.strip() for line in self.lines.toPlainText().splitlines() if line.strip())
        return Workshop(self.name.text().strip(), lines, self.logo.text().strip())

    def _choose(self) -> None:
        kinds = _tr("Pictures ({patterns})").format(patterns=IMAGE_FILES)
        chosen, _ = QFileDialog.getOpenFileName(self, _tr("Choose a logo"), self.logo.text(), kinds)
        if chosen:
            self.logo.setText(chosen)
