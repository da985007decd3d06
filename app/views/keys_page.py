"""Every key on one page, made from the actions."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QTextBrowser, QVBoxLayout, QWidget

from app.actions import Actions, keys_page
from app.views.dialog_buttons import dialog_buttons
from app.views.fit_screen import fit_screen


class KeysPage(QDialog):
    """A window with every action and its keys.

    Parameters
    ----------
    actions : Actions
        Where the page is made from.
    """

    def __init__(self, actions: Actions, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Keys"))
        fit_screen(self, 520, 620)
        self.page = QTextBrowser()
        self.page.setAccessibleName(self.tr("Keys"))
        self.page.setHtml(keys_page(actions))
        buttons = dialog_buttons(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(self.page)
        layout.addWidget(buttons)
