"""The reading at the pointer, fetched beside the window: unpacking a chunk takes longer than a frame may.

At most one reading is on its way; of what the pointer passed meanwhile, the last place is read next.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Record
from analysis.diagnosis.findings import TrackSurvey
from app.jobs import Jobs
from app.review.readings import Reading, read_at
from app.trouble import sentence

POINTING = "pointer"


@dataclass(frozen=True, slots=True, eq=False)
class Pointed:
    """A moment that is pointed at.

    Parameters
    ----------
    record : Record
        Of which capture does not matter.
    moment_s : float
        Seconds of the record.
    survey : TrackSurvey or None
        Says where the arm was.
    resolution_s : float
        What the time is rounded to: a pixel's worth.
    """

    record: Record
    moment_s: float
    survey: TrackSurvey | None
    resolution_s: float


class PointerReader(QObject):
    """Reads every channel at the moment that is pointed at.

    Parameters
    ----------
    jobs : Jobs
        Where it is read.

    Signals
    -------
    read(Reading, resolution_s)
        What stands there.
    problem(sentence)
        It cannot be read.
    """

    read = Signal(object, float)
    problem = Signal(str)

    def __init__(self, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._wanted: Pointed | None = None

    def ask(self, pointed: Pointed) -> None:
        """Read there, as soon as what is on its way has come."""
        self._wanted = pointed
        if not self._jobs.running(POINTING):
            self._begin(pointed)

    def forget(self) -> None:
        """What is on its way is not wanted any more."""
        self._wanted = None

    def settle(self) -> None:
        """Wait until the reading is that of the last place that was asked for."""
        while self._jobs.running(POINTING):
            self._jobs.finish(POINTING)

    def _begin(self, pointed: Pointed) -> None:
        self._jobs.run(
            POINTING,
            self.tr("Reading at the pointer"),
            lambda _tick: read_at(pointed.record, pointed.moment_s, pointed.survey),
            lambda reading: self._take(pointed, reading),
            lambda error: self._fail(pointed, error),
        )

    def _take(self, pointed: Pointed, reading: Reading) -> None:
        if self._wanted is not None and self._wanted.record is pointed.record:
            self.read.emit(reading, pointed.resolution_s)
        self._go_on(pointed)

    def _fail(self, pointed: Pointed, error: Exception) -> None:
        if self._wanted is not None and self._wanted.record is pointed.record:
            self.problem.emit(sentence(error, self.tr("Reading at the pointer")))
        self._go_on(pointed)

    def _go_on(self, pointed: Pointed) -> None:
        if self._wanted is not None and self._wanted is not pointed:
            self._begin(self._wanted)
