"""Colours and the style sheet: paper by day, slate by night, and role colours that mean the same in both."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication

from analysis.captures.model import Role

_WORD_DARKER = 150  # of Qt's scale: 4.5 to 1 for orange and sky blue (WCAG 2.2, 1.4.3)


@dataclass(frozen=True, slots=True)
class Palette:
    """Every colour that the window uses.

    The role colours and the band colour are Okabe & Ito's (2008), made to be told apart by colour-blind
    readers; they are never used for anything else.
    """

    dark: bool
    desk: str
    paper: str
    raised: str
    line: str
    ink: str
    quiet: str
    faint: str
    choice: str
    choice_ink: str
    good: str
    bad: str
    unsure: str
    band: str
    roles: tuple[tuple[Role, str], ...]
    no_role: str

    def role(self, role: Role | None) -> QColor:
        """Colour of a role; neutral grey where a channel has none."""
        return QColor(dict(self.roles).get(role, self.no_role) if role else self.no_role)

    def role_ink(self, role: Role | None) -> QColor:
        """The same for a word, which needs more contrast on paper than a curve does."""
        return self.role(role).darker(100 if self.dark else _WORD_DARKER)

    def shade(self, name: str, opacity: float) -> QColor:
        """One of the palette's colours, translucent."""
        colour = QColor(getattr(self, name))
        colour.setAlphaF(opacity)
        return colour


def _roles(ground: str) -> tuple[tuple[Role, str], ...]:
    return (
        (Role.SIGNAL, "#009E73"),
        (Role.SECOND_SIGNAL, "#CC79A7"),
        (Role.REFERENCE, "#E69F00"),
        (Role.GROUND, ground),
        (Role.SUPPLY, "#56B4E9"),
    )


LIGHT = Palette(
    dark=False,
    desk="#EFEBE2",
    paper="#FCFAF5",
    raised="#F5F1E8",
    line="#DAD3C4",
    ink="#22262B",
    quiet="#625F58",
    faint="#8F8A7F",
    choice="#1F4E79",
    choice_ink="#FFFFFF",
    good="#17694B",
    bad="#B34700",
    unsure="#7A6A2E",
    band="#D55E00",
    roles=_roles("#555555"),
    no_role="#8A8A8A",
)

DARK = Palette(
    dark=True,
    desk="#17191C",
    paper="#212428",
    raised="#2A2E33",
    line="#3A3F46",
    ink="#EDE9E0",
    quiet="#B4AFA4",
    faint="#878378",
    choice="#8FBCE6",
    choice_ink="#14181C",
    good="#5CC79E",
    bad="#FF9A4D",
    unsure="#D9C36A",
    band="#FF7A1A",
    # Okabe and Ito's dark grey would vanish on slate, so ground is the same grey turned light here.
    roles=_roles("#B9B9B9"),
    no_role="#8A8A8A",
)


def palette_for(colours: str) -> Palette:
    """The palette of a setting: ``"light"``, ``"dark"``, or whatever the desktop has for ``"system"``."""
    if colours in ("light", "dark"):
        return DARK if colours == "dark" else LIGHT
    return DARK if desktop_is_dark() else LIGHT


def desktop_is_dark() -> bool:
    """Whether the desktop says that it is dark; one that says nothing is light."""
    return QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark


def style_sheet(palette: Palette) -> str:
    """The whole window's style sheet in one palette."""
    p = palette
    rims = "\n".join(
        f'QFrame#columnCard[use="{role}"] {{ border-left: 5px solid {colour}; }}' for role, colour in p.roles
    )
    # A menu that opens from a holder of transparent widgets would be transparent too: black, uncomposed.
    frames = ("pane", "problem", "hint", "caution", "columnCard")
    holders = (*(f"QFrame#{name}" for name in frames), "QAbstractButton#bandCard")
    menus = ", ".join(f"{holder} QMenu" for holder in holders)
    # A thick edge beside thin ones leaves barbs where a corner is round.
    barred = (
        "border-top-right-radius: 5px; border-bottom-right-radius: 5px;"
        " border-top-left-radius: 0; border-bottom-left-radius: 0;"
    )
    return f"""
    QWidget {{ background: {p.desk}; color: {p.ink}; }}
    QMainWindow::separator {{ width: 6px; height: 6px; background: {p.desk}; }}
    QSplitter::handle {{ background: {p.desk}; }}
    QFrame#pane {{ background: {p.paper}; border: 1px solid {p.line}; border-radius: 6px; }}
    QFrame#pane QWidget {{ background: transparent; }}
    QLabel {{ background: transparent; }}
    QLabel#paneTitle {{ color: {p.quiet}; font-weight: 600; }}
    QLabel#paneNote, QLabel[quiet="true"] {{ color: {p.quiet}; }}
    QLabel[trouble="true"] {{ color: {p.bad}; font-weight: 600; }}
    QLabel#captureTitle {{ font-size: 15pt; font-weight: 600; }}
    QToolButton {{ border: 1px solid transparent; border-radius: 5px; padding: 4px 7px;
                   background: transparent; }}
    QToolButton:hover {{ background: {p.raised}; border-color: {p.line}; }}
    QToolButton:checked {{ background: {p.raised}; border-color: {p.faint}; }}
    QToolButton:focus {{ border-color: {p.choice}; }}
    QToolButton:disabled {{ color: {p.faint}; }}
    QToolButton[heading="true"] {{ padding: 2px 5px; }}
    QToolButton[popupMode="1"] {{ padding-right: 16px; }}
    QToolButton::menu-button {{ border: none; background: transparent; width: 14px; }}
    QToolButton[fold="true"] {{ font-weight: 600; }}
    QToolButton[fold="true"]:checked {{ background: transparent; border-color: transparent; }}
    QToolButton[fold="true"]:focus {{ border-color: {p.choice}; }}
    QToolButton[glyph="true"] {{ padding: 2px 1px; }}
    QToolButton[outlined="true"] {{ border-color: {p.line}; background: {p.paper}; }}
    QToolButton[outlined="true"]:hover, QToolButton[outlined="true"]:focus {{ border-color: {p.choice}; }}
    QFrame#pane QToolButton[outlined="true"] {{ background: {p.paper}; }}
    QFrame#pane QToolButton[outlined="true"]:checked {{ background: {p.raised}; border-color: {p.ink}; }}
    QToolButton::menu-indicator {{ image: none; width: 0; }}
    QToolButton::menu-button {{ border: 0; }}
    QPushButton {{ background: {p.raised}; border: 1px solid {p.line}; border-radius: 5px;
                   padding: 5px 12px; }}
    QPushButton:hover, QPushButton:focus {{ border-color: {p.choice}; }}
    QPushButton:disabled {{ color: {p.faint}; }}
    QPushButton#main {{ background: {p.choice}; color: {p.choice_ink}; border-color: {p.choice};
                        padding: 5px 26px; font-weight: 600; }}
    QPushButton#main:focus {{ border: 2px solid {p.ink}; padding: 4px 25px; }}
    QPushButton#main:disabled {{ background: {p.raised}; color: {p.faint}; border-color: {p.line}; }}
    QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
    QMenuBar {{ background: {p.desk}; }}
    QMenuBar::item {{ background: transparent; padding: 3px 9px; }}
    QMenuBar::item:selected {{ background: {p.raised}; }}
    QMenu {{ background: {p.paper}; border: 1px solid {p.line}; padding: 4px; }}
    QMenu::item {{ padding: 5px 26px 5px 10px; background: transparent; }}
    QMenu::item:selected {{ background: {p.choice}; color: {p.choice_ink}; }}
    QMenu::item:disabled {{ color: {p.faint}; }}
    QMenu::icon:checked {{ background: {p.raised}; border: 1px solid {p.quiet}; border-radius: 4px; }}
    QMenu::separator {{ height: 1px; background: {p.line}; margin: 4px 6px; }}
    QListView {{ background: transparent; border: 1px solid transparent; outline: 0; }}
    QListWidget::indicator {{ width: 12px; height: 12px; border: 1px solid {p.faint}; border-radius: 3px;
                   background: {p.raised}; }}
    QListWidget::indicator:checked {{ background: {p.choice}; border: 3px solid {p.raised}; }}
    QListWidget::item:selected {{ background: {p.raised}; color: {p.ink}; }}
    QScrollArea {{ border: 1px solid transparent; background: transparent; }}
    QScrollArea:focus, QTextBrowser:focus {{ border: 1px solid {p.choice}; border-radius: 4px; }}
    QScrollBar:vertical {{ background: transparent; width: 9px; margin: 0; }}
    QScrollBar::handle:vertical {{ background: {p.line}; border-radius: 4px; min-height: 28px; }}
    QScrollBar:horizontal {{ background: transparent; height: 9px; margin: 0; }}
    QScrollBar::handle:horizontal {{ background: {p.line}; border-radius: 4px; min-width: 28px; }}
    QAbstractScrollArea::corner {{ background: transparent; border: 0; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; width: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QStatusBar {{ background: {p.desk}; color: {p.quiet}; }}
    QLabel[look="strong"] {{ font-weight: 600; }}
    QLabel[look="large"] {{ font-size: 12pt; font-weight: 600; }}
    QLabel[look="place"] {{ font-size: 12pt; font-weight: 650; }}
    QLabel[look="small"] {{ font-size: 8pt; }}
    QLabel[look="title"] {{ font-weight: 600; color: {p.quiet}; }}
    QStatusBar::item {{ border: 0; }}
    QProgressBar {{ background: {p.raised}; border: 1px solid {p.line}; border-radius: 4px; max-height: 9px;
                    text-align: center; }}
    QProgressBar::chunk {{ background: {p.choice}; border-radius: 3px; }}
    QFrame#problem {{ background: {p.paper}; border: 1px solid {p.bad}; border-left: 6px solid {p.bad};
                      {barred} }}
    QFrame#hint {{ background: {p.paper}; border: 1px solid {p.line}; border-left: 6px solid {p.choice};
                   {barred} }}
    QFrame#caution {{ background: {p.raised}; border: 1px solid {p.line}; border-left: 5px solid {p.unsure};
                      {barred} }}
    *[row="true"] {{ background: transparent; border: 1px solid transparent; border-radius: 4px; }}
    *[row="true"]:focus {{ border-color: {p.choice}; }}
    QAbstractButton#bandCard {{ background: {p.raised}; border: 1px solid {p.line};
                 border-left: 5px solid {p.band}; {barred} }}
    QAbstractButton#bandCard[watched="true"] {{ border-left: 5px dotted {p.band}; }}
    QAbstractButton#bandCard[chosen="true"] {{ border-color: {p.band}; }}
    QAbstractButton#bandCard:focus {{ border-top-color: {p.choice}; border-right-color: {p.choice};
                       border-bottom-color: {p.choice}; }}
    QFrame#columnCard {{ background: {p.raised}; border: 1px solid {p.line}; {barred}
                         border-left: 5px solid {p.line}; }}
    QFrame#columnCard[use="time"] {{ border-left: 5px solid {p.no_role}; }}
    {rims}
    QFrame#columnCard QWidget {{ background: transparent; }}
    QFrame#pane QFrame#columnCard QLineEdit {{ background: {p.paper}; }}
    QFrame#problem QWidget, QFrame#hint QWidget {{ background: transparent; }}
    QFrame#caution QWidget, QAbstractButton#bandCard QWidget {{ background: transparent; }}
    QComboBox {{ background: transparent; border: 1px solid {p.line}; border-radius: 5px; padding: 2px 6px;
                 combobox-popup: 0; }}
    QComboBox:focus {{ border-color: {p.choice}; }}
    QComboBox QAbstractItemView, QFrame#pane QComboBox QAbstractItemView,
    QFrame#columnCard QComboBox QAbstractItemView {{ color: {p.ink};
                                   background: {p.paper}; border: 1px solid {p.line};
                                   selection-background-color: {p.choice}; selection-color: {p.choice_ink}; }}
    QDialog QLineEdit, QDialog QPlainTextEdit,
    QFrame#pane QLineEdit, QFrame#pane QPlainTextEdit {{ background: {p.raised}; border: 1px solid {p.line};
                   border-radius: 4px; padding: 2px 5px; selection-background-color: {p.choice};
                   selection-color: {p.choice_ink}; }}
    QDialog QLineEdit:focus, QDialog QPlainTextEdit:focus,
    QFrame#pane QLineEdit:focus, QFrame#pane QPlainTextEdit:focus {{ border-color: {p.choice}; }}
    QLineEdit, QPlainTextEdit {{ placeholder-text-color: {p.quiet}; }}
    QCheckBox::indicator {{ width: 12px; height: 12px; border: 1px solid {p.faint}; border-radius: 3px;
                   background: {p.raised}; }}
    QCheckBox::indicator:checked {{ width: 10px; height: 10px; background: {p.choice};
                   border: 2px solid {p.raised}; }}
    QCheckBox {{ border: 1px solid transparent; border-radius: 4px; padding: 1px 4px; spacing: 6px;
                   outline: 0; }}
    QCheckBox:focus {{ border-color: {p.choice}; }}
    QDoubleSpinBox {{ background: {p.raised}; border: 1px solid {p.line}; border-radius: 4px;
                                  padding: 2px 5px; selection-background-color: {p.choice};
                                  selection-color: {p.choice_ink}; }}
    QDoubleSpinBox:focus {{ border-color: {p.choice}; }}
    QDoubleSpinBox::up-button, QDoubleSpinBox::down-button {{ width: 0; border: 0; }}
    QDialog QDoubleSpinBox QLineEdit,
    QFrame#pane QDoubleSpinBox QLineEdit {{ border: 0; padding: 0; background: transparent; }}
    QAbstractButton#bandCard QDoubleSpinBox {{ background: {p.raised}; }}
    QTableView {{ background: transparent; border: 0; border-left: 2px solid transparent; outline: 0;
                  selection-background-color: {p.raised}; selection-color: {p.ink}; }}
    QTableView:focus {{ border-left-color: {p.choice}; }}
    QTableCornerButton::section {{ background: transparent; border: 0; }}
    QTabWidget::pane {{ border: 1px solid {p.line}; border-radius: 5px; }}
    QTabBar::tab {{ padding: 5px 11px; border: 1px solid transparent; border-bottom: 3px solid transparent;
                    color: {p.quiet}; }}
    QTabBar::tab:hover {{ color: {p.ink}; }}
    QTabBar::tab:selected {{ color: {p.ink}; border-bottom-color: {p.choice}; }}
    QTabBar::tab:focus {{ border: 1px solid {p.choice}; border-bottom: 3px solid {p.choice};
                          border-radius: 4px; }}
    QTableView::item {{ padding: 0 3px; border: 0; }}
    QTableView#numbers::item {{ padding: 0 2px; }}
    QTableView::item:selected {{ background: {p.raised}; color: {p.ink}; }}
    QHeaderView, QHeaderView::section {{ background: transparent; border: 0; color: {p.quiet};
                                         padding: 0 3px; }}
    QTableView#readings QHeaderView::section:horizontal {{ padding: 0 8px 0 0; }}
    QToolTip {{ background: {p.paper}; color: {p.ink}; border: 1px solid {p.line}; padding: 3px; }}
    QDialog, QTextBrowser {{ background: {p.paper}; }}
    {menus} {{ background: {p.paper}; }}
    """
