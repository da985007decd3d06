"""What the panes of the Import page show of its state."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.errors import WornbandError
from analysis.importing.needs import Need
from analysis.importing.seen import Preview
from analysis.importing.wishes import Wishes
from analysis.wording import say
from app.drawing.numbers import duration, rate_text
from app.drawing.row_delegate import Row
from app.importing.column_card import CardFacts
from app.importing.draft import NO_STEP
from app.importing.maker import Place
from app.importing.page import ImportPage
from app.importing.reading_form import COLUMN, EVERY, FOUND, RATE
from app.importing.state import ImportState
from app.importing.words import error_sentence, problem_sentence, use_names
from app.language import said
from app.trouble import as_sentence
from app.words import step_name


def _tr(text: str) -> str:
    return QCoreApplication.translate("import_page", text)


def show_all(page: ImportPage, state: ImportState, place: Place | None) -> None:
    """Show the state; may be told the same thing twice."""
    _show_files(page, state)
    _show_file(page, state)
    draft = state.draft
    first = draft.files[0].path.stem if draft.files else ""
    page.capture.show_capture(draft.title, first, draft.facts)
    page.keep.setChecked(draft.keep)
    page.show_last_time(_last_time(state))
    _show_target(page, state, place)


def _show_files(page: ImportPage, state: ImportState) -> None:
    rows = []
    for place, file in enumerate(state.draft.files):
        rows.append((_row(state, place), str(file.path)))
    page.files.show_files(rows, state.place)
    page.files.show_together(len(state.alike()) > 1, state.all_alike)


def _row(state: ImportState, place: int) -> Row:
    file, looked = state.draft.files[place], state.looked(place)
    if looked is None:
        return Row(file.path.name, _tr("not looked at yet"), faded=True)
    seen = looked.preview
    if seen is None or not seen.ready:
        return Row(file.path.name, _trouble(looked.preview, looked.error), mark="fail", tone="bad")
    return Row(
        file.path.name, " · ".join((_step_said(state, place), _length(seen))), mark="pass", tone="good"
    )


def _trouble(seen: Preview | None, error: object) -> str:
    if seen is not None and seen.problems:
        return as_sentence(said(seen.problems[0].problem))
    return error_sentence(error) if isinstance(error, WornbandError) else ""


def _step_said(state: ImportState, place: int) -> str:
    wishes, guess = state.draft.files[place].wishes, state.step_guess(place)
    if wishes.step is not None:
        return step_name(wishes.step)
    if guess is not None and guess.step is not None and guess.sure and wishes.guess_step:
        return step_name(guess.step)
    return _tr("step not told")


def _length(seen: Preview) -> str:
    interval_s = seen.time.interval_s
    if interval_s is None:
        return _tr("{count} rows").format(count=seen.rows)
    text = _tr("{length} at {rate}").format(
        length=duration(seen.rows * interval_s), rate=rate_text(1.0 / interval_s)
    )
    return text if seen.whole else _tr("more than {length}").format(length=text)


def _show_file(page: ImportPage, state: ImportState) -> None:
    file = state.file
    if file is None:
        page.show_nothing()
        return
    looked = state.looked(state.place)
    if looked is None:
        page.show_nothing()
        return
    seen, wishes = looked.preview, file.wishes
    error = error_sentence(looked.error) if looked.error is not None else ""
    page.files.show_record(
        NO_STEP if not wishes.guess_step else str(wishes.step or ""),
        _guessed_step(state),
        _step_reason(state),
        wishes.conditions,
        error,
    )
    table = problem_of(seen, (Need.TABLE,))
    page.rows.show_preview(seen, state.uses(state.place), error or table)
    page.columns.trouble.show_sentence(
        state.troubles.get("columns", "") or problem_of(seen, (Need.ROLES, Need.UNIT))
    )
    page.columns.show_cards(_cards(state, seen) if seen is not None else ())
    if seen is not None:
        time = _time_kind(state, wishes)
        page.reading.show_reading(seen, wishes, time, _spacing(wishes, time), state.troubles)
    page.show_reading(seen is not None)


def problem_of(seen: Preview | None, needs: tuple[Need, ...]) -> str:
    """The first problem of these kinds as a sentence; empty where there is none."""
    problems = seen.problems if seen is not None else ()
    found = next((item for item in problems if item.need in needs), None)
    return problem_sentence(found) if found is not None else ""


def _guessed_step(state: ImportState) -> str:
    guess = state.step_guess(state.place)
    return step_name(guess.step) if guess is not None and guess.step is not None and guess.sure else ""


def _step_reason(state: ImportState) -> str:
    guess, seen = state.step_guess(state.place), state.seen(state.place)
    if guess is None or (seen is not None and seen.needs(Need.FULL_SCALE)):
        return ""
    reason = as_sentence(said(guess.reason))
    if guess.step is None or guess.sure:
        return reason
    return _tr("{reason} Choose {step} if that is so.").format(reason=reason, step=step_name(guess.step))


def _cards(state: ImportState, seen: Preview) -> list[CardFacts]:
    file, uses = state.draft.files[state.place], state.uses(state.place)
    wishes, cards = file.wishes, []
    for item in seen.columns:
        factor, offset = wishes.factors.get(item.name), wishes.offsets.get(item.name)
        cards.append(
            CardFacts(
                seen=item,
                use=uses[item.name],
                reason=_reason(state, seen, item.name, said(item.reason), uses[item.name]),
                unit=wishes.units.get(item.name, ""),
                factor="" if factor is None else said(say("{value:.9g}", value=factor)),
                offset="" if offset is None else said(say("{value:.9g}", value=offset)),
                probe=wishes.probe_points.get(item.name, ""),
                against=wishes.return_points.get(item.name, ""),
                scaled=not seen.needs(Need.FULL_SCALE),
            )
        )
    return cards


def _reason(state: ImportState, seen: Preview, name: str, found: str, use: str) -> str:
    guess = state.guess(state.place, name)
    if seen.needs(Need.FULL_SCALE):
        return _tr("Guessed as soon as the full scale is known.")
    if state.draft.files[state.place].as_last_time:
        return _tr("As last time.")
    if guess is None:
        return as_sentence(found)
    guessed, why = guess
    if guessed == use:
        return _tr("Guessed: {reason}").format(reason=as_sentence(said(why)))
    return _tr("Chosen by hand. Guessed was {use}: {reason}").format(
        use=use_names()[guessed], reason=as_sentence(said(why))
    )


def _time_kind(state: ImportState, wishes: Wishes) -> str:
    kind = state.time_kinds.get(state.draft.files[state.place].path)
    if kind is not None:
        return kind
    if wishes.interval_s is not None:
        return EVERY
    return COLUMN + wishes.time_column if wishes.time_column is not None else FOUND


def _spacing(wishes: Wishes, time: str) -> str:
    if wishes.interval_s is None:
        return ""
    value = 1.0 / wishes.interval_s if time == RATE else wishes.interval_s
    return said(say("{value:.9g}", value=value))


def _last_time(state: ImportState) -> str:
    kept = [item.recipe for item in state.draft.files if item.recipe is not None]
    if not kept:
        return ""
    day = max(item.day for item in kept)
    if len(kept) == len(state.draft.files):
        return _tr("As last time for files of this shape (kept on {day}): press Enter to import.").format(
            day=day
        )
    return _tr(
        "{count} of the files are understood as last time for files of their shape (kept on {day})."
    ).format(count=len(kept), day=day)


def _show_target(page: ImportPage, state: ImportState, place: Place | None) -> None:
    if not state.draft.files or place is None:
        page.show_target("")
    elif place.target is None:
        page.show_target("–", _tr("Nothing can be saved beside the first file: choose another place."))
    else:
        taken = _tr("A file of that name exists already; choose another name.") if place.taken else ""
        page.show_target(str(place.target), taken)
