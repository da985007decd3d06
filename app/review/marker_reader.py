"""Readings of markers, made in the background and remembered as long as nothing changes them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick, part
from analysis.review.model import Marker, PointMarker, SpanMarker, TravelSpan
from analysis.review.readings import MarkerReadings, readings_of
from app.jobs import Jobs
from app.trouble import sentence

READING = "readings"

_Key = tuple[object, ...]
_Read = dict[_Key, MarkerReadings | None]


class MarkerReader(QObject):
    """Reads markers of one capture.

    Signals
    -------
    read()
        More readings are there.
    problem(sentence)
        The file turned out damaged while it was read.
    """

    read = Signal()
    problem = Signal(str)

    def __init__(self, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._capture: Capture | None = None
        self._findings: Findings | None = None
        self._known: _Read = {}

    def follow(self, capture: Capture | None, findings: Findings | None) -> None:
        """Read this capture from now on; what was read of another one is forgotten."""
        if capture is not self._capture:
            self._jobs.cancel(READING)
            self._known.clear()
        elif findings is not self._findings:
            # Places in time read the same whatever the examination says.
            self._known = {key: value for key, value in self._known.items() if key[0] is not TravelSpan}
        self._capture, self._findings = capture, findings

    def reading(self, marker: Marker) -> MarkerReadings | None:
        """What a marker reads, or None while that is not known."""
        return self._known.get(_key(marker))

    def ask(self, markers: Sequence[Marker]) -> None:
        """Read whatever of these is not known yet."""
        capture, findings = self._capture, self._findings
        missing = [item for item in markers if _key(item) not in self._known and self._can_read(item)]
        if capture is None or not missing:
            return
        doing = self.tr("Reading the markers")

        def work(tick: Tick) -> _Read:
            count = len(missing)
            return {
                _key(item): readings_of(item, capture, findings, part(tick, at / count, (at + 1) / count))
                for at, item in enumerate(missing)
            }

        self._jobs.run(READING, doing, work, self._take, lambda error: self._fail(error, doing, missing))

    def _can_read(self, marker: Marker) -> bool:
        return self._findings is not None or not isinstance(marker, TravelSpan)

    def _take(self, read: _Read) -> None:
        self._known.update(read)
        self.read.emit()

    def _fail(self, error: Exception, doing: str, missing: Sequence[Marker]) -> None:
        # Not to be tried again with every change: the file is what it is.
        self._known.update({_key(item): None for item in missing})
        self.problem.emit(sentence(error, doing))


def _key(marker: Marker) -> _Key:
    if isinstance(marker, PointMarker):
        return PointMarker, marker.record, marker.time_s
    if isinstance(marker, SpanMarker):
        return SpanMarker, marker.record, marker.time
    return TravelSpan, marker.track, marker.travel
