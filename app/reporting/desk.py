"""The Report screen at work: edits go into the review, sheets are made in the background, and stored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QFileDialog

from analysis.captures.verification import with_content
from analysis.diagnosis.profiles import profile_for
from analysis.errors import WornbandError
from analysis.progress import Tick, part
from analysis.reports.customer_page import program_words
from analysis.reports.pages import Picture
from analysis.reports.subject import Subject
from analysis.review.explained import explain_reviewed
from analysis.review.job import FACTS, Job, Photo
from analysis.review.records import edits_told
from analysis.wording import Language, Wording, say
from app.language import said, window_language
from app.reporting.languages import report_language
from app.reporting.layout import Paper, lay_out
from app.reporting.making import Wanted, check_target, materials_of, store
from app.reporting.materials import Materials
from app.reporting.page import ReportPage
from app.reporting.placed import Sheet
from app.review.keeper import ReviewKeeper
from app.save_place import folder_to_save
from app.trouble import as_sentence, sentence
from app.views.report_form import Entries
from app.views.workshop_form import IMAGE_FILES, WorkshopForm

if TYPE_CHECKING:
    from app.main_window import Window

MAKING = "report"
_AFTER_MS = 150


class ReportDesk(QObject):
    """Joins the review and the findings to the Report screen of one window.

    Parameters
    ----------
    window : Window
        With its session, jobs, actions and report page made.
    keeper : ReviewKeeper
        Of the open review.
    """

    def __init__(self, window: Window, keeper: ReviewKeeper) -> None:
        super().__init__(window)
        self._window, self._keeper, self.page = window, keeper, ReportPage(window.actions_by_name)
        self._materials: Materials | None = None
        self._sheets: tuple[Sheet, ...] = ()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_AFTER_MS)
        self._timer.timeout.connect(self._make)
        self._choose_settings()
        self._follow()

    @property
    def sheets(self) -> tuple[Sheet, ...]:
        """The sheets that are shown; empty while there are none."""
        return self._sheets

    @property
    def shown(self) -> bool:
        """Whether the Report screen is in front."""
        return self._window.pages.currentWidget() is self.page

    def open(self) -> None:
        """Bring the Report screen to the front."""
        self._window.pages.setCurrentWidget(self.page)
        self._show()
        self.page.form.setFocus()

    def leave(self) -> None:
        """Take what is still being typed."""
        self.page.form.commit()

    def close(self) -> None:
        """Make no more sheets."""
        self._timer.stop()

    def _choose_settings(self) -> None:
        settings, page = self._window.settings, self.page
        page.paper.setCurrentIndex(max(page.paper.findData(settings.paper), 0))
        page.language.setCurrentIndex(max(page.language.findData(self._language()), 0))

    def _follow(self) -> None:
        window, page = self._window, self.page
        window.session.capture_changed.connect(self._forget)
        window.session.capture_changed.connect(self._show)
        window.session.findings_changed.connect(self._show)
        self._keeper.changed.connect(self._show)
        self._keeper.problem.connect(self.page.problem_bar.show_problem)
        page.form.edited.connect(self._edit)
        page.form.other_wanted.connect(self._choose_other)
        page.form.other_dropped.connect(lambda: self._set_other(""))
        page.form.photos_wanted.connect(self._add_photos)
        page.paper.activated.connect(self._change_paper)
        page.language.activated.connect(self._change_language)
        window.actions_by_name.connect(
            {
                "report": self.open,
                "save_pdf": lambda: self._ask_and_save(".pdf"),
                "save_html": lambda: self._ask_and_save(".html"),
                "print_report": self.print_it,
                "workshop": self._ask_workshop,
            }
        )

    # -- showing -----------------------------------------------------------------------------

    def _show(self) -> None:
        subject = self._subject()
        if not self.shown:
            return
        if subject is None:
            self._sheets = ()
            self.page.title.setText(self.tr("Report"))
            self.page.show_empty(self.tr("The report appears here once a capture is open and examined."))
            return
        self.page.title.setText(self.tr("Report: {name}").format(name=subject.capture.title))
        self.page.form.show_entries(_entries(subject, report_language(self._language())))
        self._timer.start()

    def _forget(self) -> None:
        """Which pictures another capture's report shows is not known yet."""
        self.page.form.pictures.show_printed(None)

    def _subject(self) -> Subject | None:
        session = self._window.session
        if session.capture is None or session.findings is None:
            return None
        given = (*session.assumptions, *edits_told(session.edits))
        return Subject(session.capture, session.findings, given, self._keeper.review)

    def _folder(self) -> Path:
        capture = self._window.session.capture
        return capture.path.parent if capture is not None and capture.path is not None else Path.cwd()

    # -- making ------------------------------------------------------------------------------

    def _make(self) -> None:
        """Make the pages in the background; the latest edit wins."""
        subject = self._subject()
        if subject is None:
            return
        wanted, folder = self._wanted(), self._folder()
        self._window.jobs.run(
            MAKING,
            self.tr("Making the report"),
            lambda tick: _made_of(subject, folder, wanted, tick),
            self._take,
            self._complain,
        )

    def _wanted(self) -> Wanted:
        settings = self._window.settings
        language = report_language(self._language())
        chosen = settings.chosen_files(self._folder())
        return Wanted(language=language, paper=settings.paper, workshop=settings.workshop, chosen=chosen)

    def _language(self) -> str:
        """As it was chosen for reports, else the window's own."""
        return self._window.settings.report_language or window_language().code

    def _take(self, materials: Materials) -> None:
        self._materials = materials
        self.page.form.pictures.show_printed(_printed(materials))
        self._lay_out()
        if materials.troubles:
            self.page.problem_bar.show_problem(as_sentence(said(materials.troubles[0])))
        else:
            self.page.problem_bar.hide()

    def _lay_out(self) -> None:
        if self._materials is None:
            return
        try:
            self._sheets = lay_out(self._materials, Paper(self._window.settings.paper))
        except WornbandError as error:
            self._complain(error)
            return
        self.page.preview.show_sheets(self._sheets)
        self.page.show_content()

    def _complain(self, error: Exception) -> None:
        self.page.problem_bar.show_problem(sentence(error, self.tr("Making the report")))

    # -- edits -------------------------------------------------------------------------------

    def _edit(self, text: Wording, job: Job) -> None:
        self._keeper.change(text, replace(self._keeper.review, job=job))

    def _set_other(self, name: str) -> None:
        self._edit(say("choose what stands beside it"), replace(self._keeper.review.job, other=name))

    def _choose_other(self) -> None:
        kinds = self.tr("Captures ({patterns});;All files (*)").format(patterns="*.h5 *.hdf5 *.nc")
        title = self.tr("Set a capture beside it")
        chosen, _ = QFileDialog.getOpenFileName(self._window, title, str(self._folder()), kinds)
        if chosen:
            self._set_other(*self._kept_names([chosen]))

    def _add_photos(self) -> None:
        kinds = self.tr("Pictures ({patterns})").format(patterns=IMAGE_FILES)
        title = self.tr("Add photos")
        chosen, _ = QFileDialog.getOpenFileNames(self._window, title, str(self._folder()), kinds)
        if chosen:
            job = self._keeper.review.job
            new = tuple(Photo(name) for name in self._kept_names(chosen))
            self._edit(say("add photos"), replace(job, photos=(*job.photos, *new)))

    def _kept_names(self, chosen: Sequence[str]) -> list[str]:
        """Files as the review names them; that they were chosen here is remembered on this PC."""
        folder = self._folder()
        names = [_kept_name(Path(name), folder) for name in chosen]
        self._window.settings.choose_files(folder, [name for name in names if Path(name).is_absolute()])
        return names

    def _change_paper(self) -> None:
        self._window.settings.paper = str(self.page.paper.currentData())
        self._lay_out()

    def _change_language(self) -> None:
        self.page.form.commit()
        self._window.settings.report_language = str(self.page.language.currentData())
        self._show()

    def _ask_workshop(self) -> None:
        form = WorkshopForm(self._window.settings.workshop, self._window)
        form.accepted.connect(lambda: self._take_workshop(form))
        form.open()

    def _take_workshop(self, form: WorkshopForm) -> None:
        self._window.settings.workshop = form.workshop
        self._timer.start()

    # -- storing -----------------------------------------------------------------------------

    def _ask_and_save(self, suffix: str) -> None:
        self.page.form.commit()
        capture = self._window.session.capture
        path = capture.path if capture is not None else None
        name = path.stem if path is not None else "report"
        last = self._window.settings.report_folder
        folder = last if last is not None and last.is_dir() else folder_to_save(path, Path.cwd())
        start = str(folder / f"{name}-report{suffix}")
        kinds = self.tr("Reports (*{suffix})").format(suffix=suffix)
        chosen, _ = QFileDialog.getSaveFileName(self._window, self.tr("Save the report"), start, kinds)
        if chosen:
            path = Path(chosen)
            self.save(path if path.suffix.lower() == suffix else Path(f"{path}{suffix}"))

    def save(self, target: Path) -> None:
        """Make the report as it is entered now and store it; what is wrong is said above the sheets."""
        subject, wanted, folder = self._subject(), self._wanted(), self._folder()
        if subject is None:
            return
        sources = [str(subject.capture.path or "")]

        def work(tick: Tick) -> Path:
            check_target(target, sources)
            store(_made_of(subject, folder, wanted, tick), target, wanted.paper)
            return target

        self._window.jobs.run("save_report", self.tr("Saving the report"), work, self._saved, self._complain)

    def _saved(self, target: Path) -> None:
        self.page.problem_bar.hide()
        self._window.settings.report_folder = target.parent
        self._window.statusBar().showMessage(self.tr("Saved: {path}").format(path=target), 8000)

    def print_it(self) -> None:
        """Ask for a printer and print the sheets that are shown."""
        from app.reporting.printing import print_sheets  # loads the printing system, needed for nothing else

        self.page.form.commit()
        if self._sheets and not print_sheets(self._sheets, self.page.title.text(), self._window):
            self.page.problem_bar.show_problem(
                self.tr("The printer cannot be used; save the report as PDF and print that instead.")
            )


def _entries(subject: Subject, language: Language) -> Entries:
    job = subject.review.job
    facts = {key: subject.fact(key) for key in FACTS}
    words = {key: language.say(text) for key, text in program_words(subject).items()}
    return Entries(job, facts, words, Path(job.other).name if job.other else "")


def _printed(materials: Materials) -> tuple[str, ...]:
    """Codes of the pictures that page one shows."""
    return tuple(block.code for block in materials.pages.pages[0].blocks if isinstance(block, Picture))


def _made_of(subject: Subject, folder: Path, wanted: Wanted, tick: Tick) -> Materials:
    """A report of a subject, its capture held against its fingerprint first where that was not done yet."""
    capture = with_content(subject.capture, part(tick, 0.0, 0.3))
    return materials_of(_explained(replace(subject, capture=capture)), folder, wanted, part(tick, 0.3, 1.0))


def _explained(subject: Subject) -> Subject:
    """The subject with why it comes and goes, by what its review says of the vehicle."""
    profile = profile_for(subject.capture)
    review = subject.review
    found = explain_reviewed(subject.capture, subject.findings, profile, review.vehicle, review.job)
    return subject if found is None else replace(subject, why=found.sentences, why_brief=found.brief)


def _kept_name(path: Path, folder: Path) -> str:
    """A path as the review keeps it: by its name alone where it lies beside the capture."""
    return path.name if path.parent == folder else str(path)
