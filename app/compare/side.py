"""One side of Compare: which capture, which record and track of it, and how the sensor is mounted."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Capture, Record, Role, Step
from analysis.comparison.side import Side
from analysis.diagnosis.findings import ArmPath, Findings, TrackSurvey
from analysis.review.job import Job, placed
from analysis.review.model import Marker, Review
from analysis.review.records import edits_told
from app.jobs import Jobs
from app.session import Opened, Session, Tools
from app.trouble import sentence

MARKERS = "markers"


class CompareSide(QObject):
    """Holds what one side shows; it is Review's capture, or one of its own.

    Parameters
    ----------
    review : Session
        Of the capture that Review shows.
    tools : Tools
        How a capture of its own is opened and examined.
    job : callable
        Gives the job of Review's capture as it stands.

    Signals
    -------
    capture_changed()
        Another capture, or its findings came.
    chosen_changed()
        Another record, track or mounting of the same capture.
    markers_changed()
        The markers of its own capture were read.
    placed_anew()
        What the review of its own capture says of its sensor and car was read.
    problem(sentence)
        A capture of its own could not be used.
    """

    capture_changed = Signal()
    chosen_changed = Signal()
    markers_changed = Signal()
    placed_anew = Signal()
    problem = Signal(str)

    def __init__(
        self, review: Session, tools: Tools, job: Callable[[], Job], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.jobs = Jobs(self)
        self._review = review
        self._own = Session(tools, self.jobs, self)
        self._read_review = tools.read_review
        self._markers: tuple[Marker, ...] = ()
        self._review_job, self._own_job = job, Job()
        self._of_review = False
        self._record: Record | None = None
        self._wanted = ""
        self._track: Role | None = None
        self._mirrored = False
        for session in (review, self._own):
            session.capture_changed.connect(lambda session=session: self._taken(session))
            session.findings_changed.connect(lambda session=session: self._learnt(session))
            session.content_changed.connect(lambda session=session: self._learnt(session))
        self._own.problem.connect(self.problem)
        self._own.foreign.connect(self._refuse)

    @property
    def of_review(self) -> bool:
        """Whether it is Review's capture."""
        return self._of_review

    @property
    def capture(self) -> Capture | None:
        """The capture, or None where none was chosen yet."""
        return self._session.capture

    @property
    def placed(self) -> Capture | None:
        """The capture as it and its review say of which sensor of which car it is."""
        capture = self._session.capture
        job = self._review_job() if self._of_review else self._own_job
        return placed(capture, job) if capture is not None else None

    @property
    def findings(self) -> Findings | None:
        """What the examination says, or None while there is nothing to say yet."""
        return self._session.findings

    @property
    def record(self) -> Record | None:
        """The record whose trace is shown."""
        return self._record

    @property
    def markers(self) -> tuple[Marker, ...]:
        """The markers beside its own capture; those of Review's are Review's."""
        return () if self._of_review else self._markers

    @property
    def reviewed(self) -> bool:
        """Whether something is said of its records in its review, and holds here too."""
        return bool(edits_told(self._session.edits))

    @property
    def mirrored(self) -> bool:
        """Whether the sensor is mounted the other way round."""
        return self._mirrored

    @property
    def tracks(self) -> tuple[Role, ...]:
        """The tracks that were surveyed."""
        return tuple(item.role for item in self.findings.surveys) if self.findings is not None else ()

    @property
    def track(self) -> Role | None:
        """The track that is shown, or None where none was surveyed."""
        return self._track

    @property
    def survey(self) -> TrackSurvey | None:
        """The survey of that track, on the sensor's own axis."""
        surveys = self.findings.surveys if self.findings is not None else ()
        return next((item for item in surveys if item.role is self._track), None)

    @property
    def path(self) -> ArmPath | None:
        """The arm's path through the shown record."""
        return self.survey.path(self._record.name) if self.survey is not None and self._record else None

    def shows_as(self, other: CompareSide) -> bool:
        """Whether both show one capture: the one that is open for both, or one file that is open twice."""
        ours, theirs = self.capture, other.capture
        if ours is None or theirs is None or ours is theirs:
            return ours is not None and ours is theirs
        return ours.path is not None and (ours.path, ours.capture_id) == (theirs.path, theirs.capture_id)

    def take_review(self, record: str = "") -> None:
        """Show Review's capture from now on, and of it this record rather than the usual one."""
        if not self._of_review:
            self._of_review = True
            self._taken(self._review, record)

    def open_file(self, path: Path) -> None:
        """Open a capture of its own in the background."""
        self._of_review = False
        self._own.open_file(path)

    def show(self, opened: Opened, findings: Findings | None = None) -> None:
        """Take an open capture of its own; examine it in the background unless its findings are given."""
        self._of_review = False
        self._own.show(opened, findings)

    def choose_record(self, name: str) -> None:
        """Show another record of the capture; it stays where the capture is examined again."""
        self._wanted = name
        if self.capture is not None and (self._record is None or self._record.name != name):
            self._record = self.capture.record(name)
            self.chosen_changed.emit()

    def match(self, other: Record | None) -> None:
        """Show the record that was taken for the same step as another side's, the longest of them.

        One that was chosen stays.
        """
        if self.capture is not None and other is not None and other.step is not None:
            alike = [item for item in self.capture.records if item.step is other.step]
            if alike and not self._wanted and self._record not in alike:
                self._record = max(alike, key=len)

    def choose_track(self, track: Role) -> None:
        """Show another track of the sensor."""
        if track is not self._track:
            self._track = track
            self.chosen_changed.emit()

    def mirror(self, mirrored: bool) -> None:
        """Say how the sensor is mounted."""
        if mirrored != self._mirrored:
            self._mirrored = mirrored
            self.chosen_changed.emit()

    def compared(self, *, by_track: bool, by_record: bool) -> Side | None:
        """What goes into the comparison; None while there are no findings.

        Parameters
        ----------
        by_track : bool
            Whether the two sides show two different tracks, so that these are to be compared.
        by_record : bool
            Whether the sides are two records of one capture, so that these are.
        """
        if self.placed is None or self.findings is None:
            return None
        record = self._record.name if by_record and self._record is not None else ""
        return Side(self.placed, self.findings, self._mirrored, record, self._track if by_track else None)

    def close(self) -> None:
        """Stop its work and close its file."""
        self._own.close()

    @property
    def _session(self) -> Session:
        return self._review if self._of_review else self._own

    def _refuse(self, path: Path) -> None:
        told = self.tr("{name} is no capture. Import it first, then compare with what came of it.")
        self.problem.emit(told.format(name=path.name))

    def _taken(self, session: Session, record: str = "") -> None:
        if session is not self._session:
            return
        self._mirrored, self._wanted = False, record
        self._choose_usual()
        self.capture_changed.emit()
        if not self._of_review:
            self._look_for_review()

    def _learnt(self, session: Session) -> None:
        if session is self._session:
            self._choose_usual()
            self.capture_changed.emit()

    def _look_for_review(self) -> None:
        """Read the review beside its own capture in the background: markers, and what is said of records."""
        self._markers, self._own_job = (), Job()
        path, read = self.capture.path if self.capture is not None else None, self._read_review
        if path is not None and read is not None:
            doing = self.tr("Reading the review of {name}").format(name=path.name)
            self.jobs.run(
                MARKERS,
                doing,
                lambda tick: read(path, tick).review,
                self._take_review,
                lambda error: self.problem.emit(sentence(error, doing)),
            )

    def _take_review(self, review: Review) -> None:
        self._markers, self._own_job = review.markers, review.job
        self.markers_changed.emit()
        self.placed_anew.emit()
        self._own.edit(review.records)

    def _choose_usual(self) -> None:
        """The track with the likeliest band, and the record that was chosen.

        Where none was: the longest sweep that shows that band; else the longest sweep.
        """
        capture, findings = self.capture, self.findings
        bands = findings.bands if findings is not None else ()
        best = max(bands, key=lambda item: item.confidence, default=None)
        self._track = best.track if best is not None else next(iter(self.tracks), None)
        if capture is None or not capture.records:
            self._record = None
            return
        chosen = next((item for item in capture.records if item.name == self._wanted), None)
        if chosen is not None:
            self._record = chosen
            return
        sweeps = [item for item in capture.records if item.step is Step.SWEEP]
        crossed = [item.record for item in best.crossings if item.noisy] if best is not None else []
        telling = [item for item in sweeps or capture.records if item.name in crossed]
        self._record = max(telling or sweeps or capture.records, key=len)
