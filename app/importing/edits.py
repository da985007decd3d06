"""What is said on the Import page, put into the draft; a number that is none is told where it was entered."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from analysis.importing.choices import TextChoices
from analysis.importing.units import RATE, TIME, VOLTAGE
from analysis.importing.wishes import Wishes
from app.importing import draft as drafts
from app.importing.entries import count_entered, number_entered, positive_entered
from app.importing.page import ImportPage
from app.importing.reading_form import COLUMN, EVERY, FOUND
from app.importing.reading_form import RATE as BY_RATE
from app.importing.state import ImportState


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
        page.reading.resample_ticked.connect(
            lambda on: self._change(lambda _, wishes: replace(wishes, resample=on))
        )
        page.capture.title_entered.connect(lambda text: self._put(title=text.strip()))
        page.capture.fact_entered.connect(self._enter_fact)
        page.keep_ticked.connect(lambda on: self._put(keep=on))

    def forget_trouble(self) -> None:
        """Another file is in front: what was wrong with an entry concerns it no more."""
        self.state.troubles.clear()

    def _put(self, **changes: object) -> None:
        self.state.draft = replace(self.state.draft, **changes)  # type: ignore[arg-type]
        self.changed.emit()

    def _change(self, change: Callable[[int, Wishes], Wishes], *, alone: bool = False) -> None:
        self.state.troubles.clear()
        self.state.change(change, alone=alone)
        self.changed.emit()

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
        else:
            self._change(lambda _, wishes: drafts.with_column_word(wishes, key, name, word))

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
        self._change(change)

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
            return replace(wishes, factors=kept if factor == 1.0 else {**kept, name: factor})

        self._change(change)

    # -- record -------------------------------------------------------------------------------

    def _tell_step(self, word: str) -> None:
        self._change(lambda _, wishes: drafts.with_step(wishes, word), alone=True)

    def _tell_condition(self, key: str, word: str) -> None:
        self._change(
            lambda _, wishes: replace(wishes, conditions=drafts.with_word(wishes.conditions, key, word))
        )

    def _enter_fact(self, key: str, text: str) -> None:
        self._put(facts=drafts.with_word(self.state.draft.facts, key, text.strip()))

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

        self._change(change)

    def _tell_time(self, word: str) -> None:
        file, seen = self.state.file, self.state.seen(self.state.place)
        if file is None or seen is None:
            return
        self.state.time_kinds.pop(file.path, None)
        if word == FOUND:
            self._change(lambda _, wishes: drafts.with_time(wishes))
        elif word.startswith(COLUMN):
            name = word.removeprefix(COLUMN)
            self._change(lambda _, wishes: drafts.with_time(wishes, column=name))
        else:
            self.state.time_kinds[file.path] = word
            known_s = seen.time.interval_s
            if known_s is not None:
                self._change(lambda _, wishes: drafts.with_time(wishes, interval_s=known_s))
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
        self._change(lambda _, wishes: drafts.with_time(wishes, interval_s=interval_s))

    def _tell_datasets(self, names: tuple[str, ...]) -> None:
        """Other columns: what was said of those there were before does not hold for these."""
        self._change(lambda _, wishes: replace(wishes, datasets=names, channels={}, time_column=None))

    def _enter_full_scale(self, text: str) -> None:
        volts = positive_entered(text, VOLTAGE)
        if volts is None and text.strip():
            self._refuse("scale", self.tr("{text} is no voltage; enter volts, such as 10.").format(text=text))
            return
        self._change(lambda _, wishes: replace(wishes, full_scale_v=volts))
