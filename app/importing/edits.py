"""What is said on the Import page, put into the draft; a number that is none is told where it was entered."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from analysis.importing.choices import TextChoices
from analysis.importing.units import RATE, TIME, VOLTAGE
from analysis.importing.wishes import Blocks, Wishes
from app.importing import draft as drafts
from app.importing.draft import Draft
from app.importing.draft_edit import DraftEdit
from app.importing.entries import count_entered, number_entered, positive_entered, volts_entered
from app.importing.page import ImportPage
from app.importing.reading_form import COLUMN, EVERY, FOUND
from app.importing.reading_form import RATE as BY_RATE
from app.importing.state import Change, ImportState


class ImportEdits(QObject):
    """Follows the panes and changes the state.

    Parameters
    ----------
    state : ImportState
        What is changed.
    page : ImportPage
        Whose panes say what was meant.

    Signals
    -------
    changed()
        Something else is decided.
    """

    changed = Signal()

    def __init__(self, state: ImportState, page: ImportPage, parent: QObject) -> None:
        super().__init__(parent)
        self.state = state
        self.stack = page.stack
        self._page = page
        page.columns.told.connect(self._tell_column)
        page.files.step_told.connect(self._tell_step)
        page.files.condition_told.connect(self._tell_condition)
        page.files.together_ticked.connect(self._tick_together)
        page.reading.text_told.connect(self._tell_text)
        page.reading.time_told.connect(self._tell_time)
        page.reading.spacing_entered.connect(self._enter_spacing)
        page.reading.full_scale_entered.connect(self._enter_full_scale)
        page.reading.datasets_told.connect(self._tell_datasets)
        page.reading.blocks_told.connect(self._tell_blocks)
        page.reading.resample_ticked.connect(
            lambda on: self._read(lambda _, wishes: replace(wishes, resample=on))
        )
        page.capture.title_entered.connect(self._enter_title)
        page.capture.fact_entered.connect(self._enter_fact)
        page.keep_ticked.connect(self._tick_keep)

    def forget_trouble(self) -> None:
        """Another file is in front: what was wrong with an entry concerns it no more."""
        self.state.troubles.clear()

    def do(self, text: str, after: Draft) -> None:
        """Let another draft hold from now on; this can be undone."""
        if after != self.state.draft:
            self.stack.push(DraftEdit(text, self.state.draft, after, self._put))
        else:
            self.changed.emit()  # the pane that said so may show something else by now

    def _put(self, draft: Draft) -> None:
        self.state.draft = draft
        self.state.place = max(min(self.state.place, len(draft.files) - 1), 0)
        self.state.troubles.clear()
        self.changed.emit()

    def _change(self, text: str, change: Change, *, alone: bool = False) -> None:
        self.state.troubles.clear()
        self.do(text, self.state.changed(change, alone=alone))

    def _read(self, change: Change) -> None:
        self._change(self.tr("change how it is read"), change)

    def _change_column(self, change: Change) -> None:
        self._change(self.tr("change a column"), change)

    def _enter_title(self, text: str) -> None:
        self.do(self.tr("change the title"), replace(self.state.draft, title=text.strip()))

    def _tick_keep(self, on: bool) -> None:
        self.do(self.tr("keep it for the next file"), replace(self.state.draft, keep=on))

    def _refuse(self, where: str, sentence: str) -> None:
        self.state.troubles[where] = sentence
        self.changed.emit()

    def _tick_together(self, on: bool) -> None:
        self.state.together = on
        self.changed.emit()

    # -- columns ------------------------------------------------------------------------------

    def _tell_column(self, name: str, key: str, word: str) -> None:
        if key == "use":
            self._tell_use(name, word)
        elif key == "factor":
            self._enter_factor(name, word)
        elif key == "offset":
            self._enter_offset(name, word)
        else:
            self._change_column(lambda _, wishes: drafts.with_column_word(wishes, key, name, word))

    def _tell_use(self, name: str, use: str) -> None:
        state = self.state
        file, uses = state.file, state.uses(state.place)
        if file is None:
            return
        if uses.get(name) == drafts.TIME and use == drafts.OUT:
            self._refuse("columns", self.tr("Say at the right how far the rows lie apart instead."))
            return
        if drafts.with_use(file.wishes, uses, name, use) is None:
            self._refuse("columns", self.tr("One column at least has to be a wire of the sensor."))
            return

        def change(place: int, wishes: Wishes) -> Wishes:
            return drafts.with_use(wishes, state.uses(place), name, use) or wishes

        self.state.time_kinds.pop(file.path, None)
        self._change_column(change)

    def _enter_factor(self, name: str, text: str) -> None:
        factor = number_entered(text) if text.strip() else 1.0
        if factor is None:
            self._refuse(
                "columns",
                self.tr("{text} is no number to multiply by; enter one such as 10 or 0.5.").format(text=text),
            )
            return

        def change(_place: int, wishes: Wishes) -> Wishes:
            kept = {key: value for key, value in wishes.factors.items() if key != name}
            return replace(wishes, factors={**kept, name: factor} if text.strip() else kept)

        self._change_column(change)

    def _enter_offset(self, name: str, text: str) -> None:
        offset = volts_entered(text) if text.strip() else 0.0
        if offset is None:
            wrong = self.tr("{text} is no number of volts to add; enter one such as -5 or 0.5.")
            self._refuse("columns", wrong.format(text=text))
            return

        def change(_place: int, wishes: Wishes) -> Wishes:
            kept = {key: value for key, value in wishes.offsets.items() if key != name}
            return replace(wishes, offsets={**kept, name: offset} if text.strip() else kept)

        self._change_column(change)

    # -- record -------------------------------------------------------------------------------

    def _tell_step(self, word: str) -> None:
        step = self.tr("change the step")
        self._change(step, lambda _, wishes: drafts.with_step(wishes, word), alone=True)

    def _tell_condition(self, key: str, word: str) -> None:
        self._change(
            self.tr("change the conditions"),
            lambda _, wishes: replace(wishes, conditions=drafts.with_word(wishes.conditions, key, word)),
        )

    def _enter_fact(self, key: str, text: str) -> None:
        facts = drafts.with_word(self.state.draft.facts, key, text.strip())
        self.do(self.tr("change what is said of the capture"), replace(self.state.draft, facts=facts))

    # -- reading ------------------------------------------------------------------------------

    def _tell_text(self, key: str, word: str) -> None:
        value: str | int | None = None if word == "?" else word
        if key == "head_lines" and value is not None:
            value = count_entered(word)
            if value is None:
                self._refuse("text", self.tr("{text} is no count of lines.").format(text=word))
                return

        def change(_place: int, wishes: Wishes) -> Wishes:
            chosen: TextChoices = replace(wishes.text, **{key: value})  # type: ignore[arg-type]
            return replace(wishes, text=chosen)

        self._read(change)

    def _tell_time(self, word: str) -> None:
        file, seen = self.state.file, self.state.seen(self.state.place)
        if file is None or seen is None:
            return
        self.state.time_kinds.pop(file.path, None)
        if word == FOUND:
            self._read(lambda _, wishes: drafts.with_time(wishes))
        elif word.startswith(COLUMN):
            name = word.removeprefix(COLUMN)
            self._read(lambda _, wishes: drafts.with_time(wishes, column=name))
        else:
            self.state.time_kinds[file.path] = word
            known_s = seen.time.interval_s
            if known_s is not None:
                self._read(lambda _, wishes: drafts.with_time(wishes, interval_s=known_s))
            else:
                self.changed.emit()
            self._page.reading.spacing.setFocus()

    def _enter_spacing(self, text: str) -> None:
        file = self.state.file
        if file is None:
            return
        rate = self.state.time_kinds.get(file.path, EVERY) == BY_RATE
        value = positive_entered(text, RATE if rate else TIME)
        if value is None:
            wrong = (
                self.tr("{text} is no rate; enter hertz, such as 1000 or 10 kHz.")
                if rate
                else self.tr("{text} is no interval; enter seconds, such as 0.001 or 1 ms.")
            )
            self._refuse("time", wrong.format(text=text or "–"))
            return
        interval_s = 1.0 / value if rate else value
        self._read(lambda _, wishes: drafts.with_time(wishes, interval_s=interval_s))

    def _tell_datasets(self, names: tuple[str, ...]) -> None:
        """Other columns: what was said of those there were before does not hold for these."""
        self._read(lambda _, wishes: replace(wishes, datasets=names, channels={}, time_column=None))

    def _tell_blocks(self, word: str) -> None:
        """Blocks side by side are other columns: what was said of those does not hold for these."""
        blocks = Blocks(word) if word else None
        self._read(lambda _, wishes: replace(wishes, blocks=blocks, channels={}, time_column=None))

    def _enter_full_scale(self, text: str) -> None:
        volts = positive_entered(text, VOLTAGE)
        if volts is None and text.strip():
            self._refuse("scale", self.tr("{text} is no voltage; enter volts, such as 10.").format(text=text))
            return
        self._read(lambda _, wishes: replace(wishes, full_scale_v=volts))
