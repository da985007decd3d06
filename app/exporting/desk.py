"""Export in the window: asks for a place, writes beside the window or paints a picture, and says so."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from analysis.captures.model import Capture
from analysis.captures.verification import content_note, content_sentence, with_content
from analysis.errors import ExportingError, WornbandError
from analysis.intervals import Interval
from analysis.progress import Tick, part
from analysis.review.model import SpanMarker
from analysis.wording import say
from app.drawing.theme import Palette, palette_for
from app.exporting.pictures import PRINT, Shot, save_picture
from app.language import said
from app.save_place import folder_to_save
from app.trouble import sentence
from app.words import record_names

if TYPE_CHECKING:
    from app.main_window import Window

EXPORTING = "export"

_SAMPLES = ("csv", "parquet", "mat", "npz")
_SAY_MS = 8000


class _View(Protocol):
    def apply_palette(self, palette: Palette) -> None: ...


class ExportDesk(QObject):
    """Everything behind the menu Export.

    Parameters
    ----------
    window : Window
        Whose captures and views are exported, with its desks made.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        window.actions_by_name.connect(
            {
                "export_record": self._export_record,
                "export_shown": self._export_shown,
                "export_span": self._export_span,
                "export_findings": self._export_findings,
                "picture_trace": self._picture_trace,
                "picture_track": self._picture_track,
                "picture_overview": self._picture_overview,
                "picture_why": self._picture_why,
                "picture_page": self._picture_page,
                "cancel": self._say_stopped,
            }
        )
        for changed in (
            window.session.findings_changed,
            window.session.capture_changed,
            window.focus.record_changed,
            window.focus.window_changed,
            window.desk.markers.shown,
            window.pages.currentChanged,
        ):
            changed.connect(self.show_enabled)
        self.show_enabled()

    def show_enabled(self) -> None:
        """Offer only what can be exported now."""
        window = self._window
        own = window.pages.currentWidget() is window.page
        record = own and window.focus.record is not None
        can = {
            "export_record": record,
            "export_shown": record and window.focus.window.length > 0.0,
            "export_span": own and isinstance(window.desk.markers.chosen, SpanMarker),
            "export_findings": own and window.session.findings is not None,
            "picture_trace": record or window.comparing,
            "picture_track": (own and window.session.findings is not None) or window.comparing,
            "picture_overview": record,
            "picture_why": own and window.why.possible,
        }
        for name, possible in can.items():
            window.actions_by_name[name].setEnabled(possible)

    # -- samples and findings -----------------------------------------------------------------

    def _export_record(self) -> None:
        record = self._window.focus.record
        if record is not None:
            self._ask_for_samples(record.name, None)

    def _export_shown(self) -> None:
        record = self._window.focus.record
        if record is not None:
            self._ask_for_samples(record.name, self._window.focus.window)

    def _export_span(self) -> None:
        marker = self._window.desk.markers.chosen
        if isinstance(marker, SpanMarker):
            self._ask_for_samples(marker.record, marker.time)

    def _ask_for_samples(self, record: str, span_s: Interval | None) -> None:
        capture = self._window.session.capture
        if capture is None:
            return
        target = self._ask(self.tr("Export samples"), f"-{record}", _SAMPLES)
        if target is not None:
            self._run(target, partial(_samples, record, span_s, target), capture)

    def _export_findings(self) -> None:
        findings, capture = self._window.session.findings, self._window.session.capture
        if findings is None or capture is None:
            return
        target = self._ask(self.tr("Export the findings"), "-findings", ("json", "csv"))
        if target is not None:
            assumed = self._window.session.assumptions

            def work(compared: Capture, _tick: Tick) -> None:
                from analysis.diagnosis.serialise import findings_object
                from analysis.exporting.findings_file import export_findings

                found = findings_object(findings, assumptions=assumed, content=compared.content)
                export_findings(found, target)

            self._run(target, work, capture)

    def _run(self, target: Path, work: Callable[[Capture, Tick], None], capture: Capture) -> None:
        """Export beside the window; before, the capture is held against the fingerprint in its file."""
        doing = self.tr("Exporting {name}").format(name=target.name)

        def done(tick: Tick) -> Capture:
            compared = with_content(capture, part(tick, 0.0, 0.3))
            work(compared, part(tick, 0.3, 1.0))
            return compared

        self._window.jobs.run(
            EXPORTING, doing, done, lambda made: self._say_done(target, made), partial(self._complain, doing)
        )

    # -- pictures -----------------------------------------------------------------------------

    def _picture_trace(self) -> None:
        window = self._window
        if window.comparing:
            sides = zip(window.compare.page.traces, window.compare.sides, strict=True)
            shots = [(_named(side.capture), trace) for trace, side in sides if trace.record is not None]
        else:
            shots = [(self._heading(), window.page.trace)]
        self._save([(Shot(text, view.plots), view) for text, view in shots], "-trace")

    def _picture_track(self) -> None:
        if not self._window.comparing:
            view = self._window.page.track
            self._save([(Shot(self._heading(record=False), view.plots), view)], "-track")
            return
        page, names = self._window.compare.page, self._both()
        if page.corners_shown:
            self._save([(Shot(names, page.corners), page.corners)], "-corners")
        else:
            self._save([(Shot(names, page.track.plots), page.track)], "-track")

    def _picture_overview(self) -> None:
        view = self._window.page.overview
        self._save([(Shot(self._heading(), view), view)], "-overview")

    def _picture_why(self) -> None:
        self._window.why.open()
        why = self._window.why.why
        if why is not None and why.picture.isVisible():
            self._save([(Shot(self._heading(record=False), why.picture), why.picture)], "-why")

    def _picture_page(self) -> None:
        window = self._window
        text = self._both() if window.comparing else self._heading(record=False)
        self._save([(Shot(text, window.pages.currentWidget() or window.page), window)], "-page")

    def _shown_captures(self) -> list[Capture]:
        window = self._window
        shown = (
            [side.capture for side in window.compare.sides] if window.comparing else [window.session.capture]
        )
        return [capture for capture in shown if capture is not None]

    def _both(self) -> str:
        return " – ".join(map(_named, self._shown_captures()))

    def _save(self, views: list[tuple[Shot, _View]], ending: str) -> None:
        if not views:
            return
        target = self._ask(self.tr("Save a picture"), ending, ("svg", "png"))
        if target is None:
            return
        window = palette_for(self._window.settings.colours)
        palette = PRINT if self._window.actions_by_name["white_ground"].isChecked() else window
        doing = self.tr("Exporting {name}").format(name=target.name)
        try:
            for _, view in views:
                view.apply_palette(palette)
            save_picture([shot for shot, _ in views], target, palette)
            self._say_done(target, *self._shown_captures())
        except WornbandError as error:
            self._complain(doing, error)
        finally:
            for _, view in views:
                view.apply_palette(window)

    def _heading(self, *, record: bool = True) -> str:
        capture, shown = self._window.session.capture, self._window.focus.record
        if capture is None:
            return ""
        names = [_named(capture)]
        if record and shown is not None:
            names.append(record_names(capture).get(shown.name, shown.name))
        return " · ".join(names)

    # -- places and words ---------------------------------------------------------------------

    def _ask(self, title: str, ending: str, kinds: tuple[str, ...]) -> Path | None:
        capture = self._window.session.capture
        path = capture.path if capture is not None else None
        folder = folder_to_save(path, Path.home())
        start = folder / f"{path.stem if path is not None else 'capture'}{ending}"
        filters = ";;".join(f"{kind.upper()} (*.{kind})" for kind in kinds)
        chosen, kind = QFileDialog.getSaveFileName(
            self._window,
            title,
            f"{start}.{kinds[0]}",
            filters,
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        if not chosen:
            return None
        chosen_kind = next((item for item in kinds if kind.startswith(item.upper())), kinds[0])
        target = Path(chosen)
        return target if target.suffix else target.with_suffix(f".{chosen_kind}")

    def _say_done(self, target: Path, *captures: Capture) -> None:
        """Say that it is saved, and what speaks against taking it as evidence."""
        told = [content_sentence(capture.content, _file_name(capture)) for capture in captures]
        if any(told):
            self._window.problem_bar().show_problem(" ".join(said(text) for text in told if text))
        self._window.statusBar().showMessage(self.tr("Saved as {name}.").format(name=target.name), _SAY_MS)

    def _say_stopped(self) -> None:
        if self._window.jobs.running(EXPORTING):
            self._window.statusBar().showMessage(self.tr("Stopped; nothing was written."), _SAY_MS)

    def _complain(self, doing: str, error: Exception) -> None:
        self._window.problem_bar().show_problem(sentence(error, doing))


def _samples(record: str, span_s: Interval | None, target: Path, capture: Capture, tick: Tick) -> None:
    from analysis.exporting.samples import export_samples  # writers that no start has to wait for

    if target.suffix.lower() not in tuple(f".{kind}" for kind in _SAMPLES):
        raise ExportingError(
            say("samples cannot be written as {ending}", ending=target.suffix),
            say("choose .csv, .parquet, .mat or .npz"),
        )
    export_samples(capture, target, record=record, span_s=span_s, tick=tick)


def _named(capture: Capture | None) -> str:
    """What stands above a picture of a capture: its title, and whether it is as it was written."""
    if capture is None:
        return ""
    title = capture.title or (capture.path.stem if capture.path is not None else "")
    return " · ".join(filter(None, (title, said(content_note(capture.content)))))


def _file_name(capture: Capture) -> str:
    return capture.path.name if capture.path is not None else capture.title
