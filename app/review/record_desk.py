"""What the technician says of records, at work in a window: the form, spans, a proposed splitting."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from analysis.captures.model import Record
from analysis.intervals import Interval
from analysis.review.model import SpanMarker
from analysis.review.records import (
    Edits,
    RecordEdit,
    edit_of,
    split_accepted,
    split_refused,
    with_edit,
    with_word,
    without_span,
)
from analysis.wording import Wording, say
from app.review.focus import whole
from app.review.keeper import ReviewKeeper
from app.review.marker_desk import MarkerDesk
from app.words import record_names

if TYPE_CHECKING:
    from app.main_window import Window


class RecordDesk(QObject):
    """Joins the review to the records of one window; every word is an edit that can be undone.

    Parameters
    ----------
    window : Window
        With its page, session, focus and actions made.
    keeper : ReviewKeeper
        Of the open review.
    markers : MarkerDesk
        A chosen span marker says which span is meant.
    """

    def __init__(self, window: Window, keeper: ReviewKeeper, markers: MarkerDesk) -> None:
        super().__init__(window)
        self._window, self._keeper, self._markers = window, keeper, markers
        records, focus = window.page.records, window.focus
        keeper.changed.connect(self._follow_review)
        window.session.records_changed.connect(self._show)
        window.session.findings_changed.connect(self._show)
        window.session.capture_changed.connect(self._show)
        for changed in (
            focus.record_changed,
            focus.window_changed,
            markers.shown,
            window.pages.currentChanged,
        ):
            changed.connect(self._show)
        records.edit_wanted.connect(self.open_form)
        records.form.told.connect(self._tell)
        records.form.span_dropped.connect(self._drop)
        records.form.left.connect(window.page.track.take_keys)
        window.actions_by_name.connect(
            {
                "describe": self.toggle_form,
                "describe_span": self.add_span,
                "accept_split": self.accept_split,
                "refuse_split": self.refuse_split,
            }
        )
        self._show()

    @property
    def edits(self) -> Edits:
        """What is said of the records of the open capture."""
        return self._keeper.review.records

    def toggle_form(self) -> None:
        """Open the form of the shown record, or close it."""
        records = self._window.page.records
        records.show_form(not records.form_shown)
        self._show()
        self._window.page.fit_records()
        if records.form_shown:
            records.form.take_keys()

    def open_form(self) -> None:
        """Open the form of the shown record."""
        if not self._window.page.records.form_shown:
            self.toggle_form()

    def add_span(self) -> None:
        """Give the chosen span marker's stretch, or else the shown one, a step of its own."""
        record, span = self._window.focus.record, self._span()
        if record is None or span is None:
            return
        if edit_of(self.edits, record.name, span) == RecordEdit(record.name, span):
            words = {"step": str(record.step or "")}
            self._change(
                say("give a span its own step"),
                with_edit(self.edits, RecordEdit(record.name, span, words)),
            )
        self.open_form()
        box = self._window.page.records.form.boxes.get((span, "", "step"))
        if box is not None:
            box.setFocus()
            self._window.page.records.form.ensureWidgetVisible(box)

    def accept_split(self) -> None:
        """Take the proposed splitting over as spans of the record."""
        record, findings = self._lone(), self._window.session.findings
        if record is not None and findings is not None and findings.parts:
            self._change(say("accept the splitting"), split_accepted(self.edits, record, findings.parts))

    def refuse_split(self) -> None:
        """Say that the record is of one wire."""
        record = self._lone()
        if record is not None:
            self._change(say("refuse the splitting"), split_refused(self.edits, record))

    def _name(self) -> str:
        """What the list calls the shown record."""
        record, capture = self._window.focus.record, self._window.session.capture
        return (
            record_names(capture).get(record.name, "") if record is not None and capture is not None else ""
        )

    def _lone(self) -> Record | None:
        capture = self._window.session.capture
        return capture.records[0] if capture is not None and len(capture.records) == 1 else None

    def _span(self) -> Interval | None:
        """The span that is meant; None where that is the whole record."""
        record, chosen, window = self._window.focus.record, self._markers.chosen, self._window.focus.window
        if record is None or not len(record):
            return None
        if isinstance(chosen, SpanMarker) and chosen.record == record.name:
            return chosen.time
        return window if window.length < 0.99 * whole(record).length else None

    def _tell(self, span: Interval | None, channel: str, key: str, word: str) -> None:
        record = self._window.focus.record
        if record is not None:
            said = with_word(self.edits, record.name, key, word, time=span, channel=channel)
            self._change(say("edit the record"), said, f"{record.name} {span} {channel} {key}")

    def _drop(self, span: Interval) -> None:
        record = self._window.focus.record
        if record is not None:
            self._change(say("drop the span"), without_span(self.edits, record.name, span))

    def _change(self, what: Wording, edits: Edits, field: str = "") -> None:
        self._keeper.change(what, replace(self._keeper.review, records=edits), field)

    def _follow_review(self) -> None:
        self._window.session.edit(self.edits)
        self._show()

    def _show(self) -> None:
        window = self._window
        page, findings = window.page, window.session.findings
        if page.records.form_shown:
            page.records.form.show_record(window.focus.record, self.edits, self._name())
        proposed = findings.parts if findings is not None and not window.session.examining else ()
        page.split_strip.show_parts(proposed)
        shown = window.focus.record is not None and window.pages.currentWidget() is page
        can = {
            "describe": shown,
            "describe_span": shown and self._span() is not None,
            "accept_split": bool(proposed) and shown,
            "refuse_split": bool(proposed) and shown,
        }
        for name, possible in can.items():
            window.actions_by_name[name].setEnabled(possible)
        window.actions_by_name["describe"].setChecked(page.records.form_shown)
