"""Sheets as a PDF: vectors and letters as they are laid out, with the document's title and language."""

from __future__ import annotations

import io
from collections.abc import Sequence

from pypdf import PdfReader, PdfWriter
from pypdf.generic import BooleanObject, DictionaryObject, NameObject, StreamObject, TextStringObject
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from analysis.errors import WornbandError
from app.reporting.fingerprints import PDF_KEY
from app.reporting.placed import UNITS_A_MM, Sheet

_DPI = 1200
_MM_AN_INCH = 25.4
_VERSION = "1.7"  # ISO 32000-1; the transparent lines and the marked language need 1.4
_TAB, _SPACE = b"<0009>", b"<0020>"


def report_pdf(sheets: Sequence[Sheet], *, title: str, language: str, fingerprint: str = "") -> bytes:
    """The bytes of a PDF file.

    Parameters
    ----------
    sheets : sequence of Sheet
        At least one; all of one size.
    title : str
        Of the document.
    language : str
        ISO 639-1 code of its words.
    fingerprint : str
        SHA-256 of the capture's file, kept among the document's particulars; empty for none.

    Raises
    ------
    WornbandError
        Where Qt cannot paint it.
    """
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    writer.setTitle(title)
    writer.setCreator("Wornband")
    writer.setPageLayout(page_layout(sheets[0]))
    painter = QPainter()
    if not painter.begin(writer):
        raise WornbandError("the PDF cannot be made", "store the report as HTML instead")
    try:
        for number, sheet in enumerate(sheets):
            if number:
                writer.newPage()
            painter.save()
            scale = _DPI / _MM_AN_INCH / UNITS_A_MM
            painter.scale(scale, scale)
            sheet.paint(painter)
            painter.restore()
    finally:
        painter.end()
    buffer.close()
    return _completed(bytes(data.data()), language, fingerprint, [sheet.begins for sheet in sheets])


def page_layout(sheet: Sheet) -> QPageLayout:
    """The sheet's size, upright, with no margin of its own: the margins are part of the layout."""
    size = QSizeF(sheet.width / UNITS_A_MM, sheet.height / UNITS_A_MM)
    page = QPageSize(size, QPageSize.Unit.Millimeter)
    layout = QPageLayout(page, QPageLayout.Orientation.Portrait, QMarginsF(0.0, 0.0, 0.0, 0.0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout


def _completed(data: bytes, language: str, fingerprint: str, begins: Sequence[str]) -> bytes:
    """Add what Qt has no call for: language, fingerprint, an outline, and that the title is shown."""
    writer = PdfWriter(clone_from=PdfReader(io.BytesIO(data)))
    root = writer.root_object
    root[NameObject("/Lang")] = TextStringObject(language)
    shown = DictionaryObject({NameObject("/DisplayDocTitle"): BooleanObject(True)})
    root[NameObject("/ViewerPreferences")] = shown
    for number, title in enumerate(begins):
        if title:
            writer.add_outline_item(title=title, page_number=number)
    _mend_spaces(writer)
    writer.pdf_header = f"%PDF-{_VERSION}"
    if fingerprint:
        writer.add_metadata({PDF_KEY: fingerprint})
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def _mend_spaces(writer: PdfWriter) -> None:
    """Let the glyph of a space mean a space.

    Qt names the first character of that glyph, which in many fonts is the tab; a search for two words, or a
    copied line, would find tabs.
    """
    for page in writer.pages:
        resources = page["/Resources"].get_object()
        assert isinstance(resources, DictionaryObject)
        fonts = resources.get("/Font", DictionaryObject()).get_object()
        for font in fonts.values():
            item = font.get_object().get("/ToUnicode")
            stream = item.get_object() if item is not None else None
            if isinstance(stream, StreamObject) and _TAB in stream.get_data():
                stream.set_data(stream.get_data().replace(_TAB, _SPACE))
