"""Sheets on paper: the printer gets the same marks as the screen and the PDF."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtGui import QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QWidget

from app.reporting.pdf import page_layout
from app.reporting.placed import UNITS_A_MM, Sheet

_MM_AN_INCH = 25.4


def print_sheets(sheets: Sequence[Sheet], title: str, parent: QWidget) -> bool:
    """Ask for a printer and print; False where that does not work, True also where the user thinks better.

    Parameters
    ----------
    sheets : sequence of Sheet
        At least one.
    title : str
        For the printer's queue.
    parent : QWidget
        Of the dialog.
    """
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(title)
    printer.setPageLayout(page_layout(sheets[0]))
    return paint_on(printer, sheets) if _accepted(printer, parent) else True


def _accepted(printer: QPrinter, parent: QWidget) -> bool:
    """Ask; the dialog ends with this call, before the printer whose pointer it holds."""
    dialog = QPrintDialog(printer, parent)
    try:
        return dialog.exec() == QDialog.DialogCode.Accepted
    finally:
        dialog.setParent(None)


def paint_on(printer: QPrinter, sheets: Sequence[Sheet]) -> bool:
    """Paint the sheets on a printer, in their true size; False where it cannot be painted on."""
    printer.setFullPage(True)
    painter = QPainter()
    if not painter.begin(printer):
        return False
    scale = printer.resolution() / _MM_AN_INCH / UNITS_A_MM
    for number, sheet in enumerate(sheets):
        if number:
            printer.newPage()
        painter.save()
        painter.scale(scale, scale)
        sheet.paint(painter)
        painter.restore()
    return painter.end()
