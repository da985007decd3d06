"""What this is, which version, and where it keeps things."""

from __future__ import annotations

import platform

from PySide6.QtCore import QLibraryInfo, Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

import analysis
from app.settings_file import settings_path
from app.trouble import log_file
from app.views.dialog_buttons import dialog_buttons


class AboutPage(QDialog):
    """A small window; what it says can be copied, for whoever asks what is installed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("About Wornband"))
        title = QLabel(self.tr("Wornband {version}").format(version=analysis.__version__))
        title.setObjectName("captureTitle")
        self.text = QLabel("\n".join(self._lines()))
        self.text.setTextFormat(Qt.TextFormat.PlainText)
        self.text.setWordWrap(True)
        self.text.setMinimumWidth(_WIDTH_PX)
        self.text.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        buttons = dialog_buttons(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(18, 14, 18, 14)
        layout.setSpacing(10)
        layout.addWidget(title)
        layout.addWidget(self.text)
        layout.addWidget(buttons)

    def _lines(self) -> list[str]:
        log = log_file()
        versions = self.tr("Python {python}, Qt {qt}").format(
            python=platform.python_version(), qt=QLibraryInfo.version().toString()
        )
        return [
            self.tr("It finds the worn band on a position sensor's track, and proves it."),
            self.tr("It needs no network and no account; nothing leaves this PC by itself."),
            self.tr("The vehicle maker's procedure stands above what it says."),
            "",
            versions,
            self.tr("Settings: {path}").format(path=settings_path()),
            self.tr("What went wrong is written to: {path}").format(path=log if log is not None else "–"),
        ]


_WIDTH_PX = 460
