"""Report laid out: what is entered at the left, the real sheets at the right, what to do with them above."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QSplitter, QToolButton, QVBoxLayout, QWidget

from app.actions import Actions
from app.drawing.theme import Palette
from app.reporting.languages import CODES
from app.reporting.making import PAPERS
from app.views.elided_label import ElidedLabel
from app.views.pane import Pane
from app.views.problem_bar import ProblemBar
from app.views.report_form import ReportForm
from app.views.report_preview import ReportPreview


def _tr(text: str) -> str:
    return QCoreApplication.translate("report_page", text)


class ReportPage(QWidget):
    """The Report screen.

    Parameters
    ----------
    actions : Actions
        For the buttons.
    """

    def __init__(self, actions: Actions) -> None:
        super().__init__()
        self.form, self.preview, self.problem_bar = ReportForm(), ReportPreview(), ProblemBar()
        self.title = ElidedLabel()
        self.title.setObjectName("captureTitle")
        self.paper, self.language = _combo(_tr("Paper")), _combo(_tr("Language of the report"))
        names = {"a4": "A4", "letter": "Letter"}
        for code in PAPERS:
            self.paper.addItem(names[code], code)
        tongues = {"en": "English", "de": "Deutsch"}
        for code in CODES:
            self.language.addItem(tongues.get(code, code), code)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 2, 8, 0)
        layout.setSpacing(6)
        layout.addLayout(self._header(actions))
        layout.addWidget(self.problem_bar)
        layout.addWidget(self._panes(), 1)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette; the sheets stay white."""
        self.problem_bar.apply_palette(palette)

    def show_empty(self, text: str) -> None:
        """Show what to do instead of the sheets."""
        self._sheets.show_empty(text)

    def show_content(self) -> None:
        """Show the sheets."""
        self._sheets.show_content()

    def _header(self, actions: Actions) -> QHBoxLayout:
        header = QHBoxLayout()
        header.setSpacing(4)
        header.addWidget(_button(actions, "review"))
        header.addWidget(self.title, 1)
        header.addWidget(QLabel(_tr("Paper")))
        header.addWidget(self.paper)
        header.addWidget(self.language)
        for name in ("workshop", "print_report", "save_html", "save_pdf"):
            header.addWidget(_button(actions, name))
        return header

    def _panes(self) -> QSplitter:
        entered, self._sheets = Pane(_tr("What it says")), Pane(_tr("As it is printed"))
        entered.set_content(self.form)
        entered.show_content()
        self._sheets.set_content(self.preview)
        panes = QSplitter(Qt.Orientation.Horizontal)
        panes.addWidget(entered)
        panes.addWidget(self._sheets)
        panes.setStretchFactor(1, 1)
        panes.setSizes([430, 920])
        panes.setChildrenCollapsible(False)
        return panes


def _combo(name: str) -> QComboBox:
    combo = QComboBox()
    combo.setAccessibleName(name)
    combo.setToolTip(name)
    return combo


def _button(actions: Actions, name: str) -> QToolButton:
    button = QToolButton()
    button.setDefaultAction(actions[name])
    button.setProperty("outlined", True)
    button.setAccessibleName(actions[name].text())
    button.setAccessibleDescription(actions[name].toolTip())
    button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
    return button
