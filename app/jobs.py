"""Long work off the window's thread: the latest request wins, progress comes back, and it can be stopped.

This is the only module that starts threads. Work takes frozen values and a `Tick`, and returns a
frozen value; everything that reaches the window does so on the window's own thread.
"""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt, Signal, Slot

from analysis.errors import Cancelled
from analysis.progress import Tick
from app.collecting import CollectsHere

_REPORT_EVERY_S = 0.04


@dataclass(slots=True, eq=False)
class _Job:
    topic: str
    title: str
    work: Callable[[Tick], Any]
    done: Callable[[Any], None]
    failed: Callable[[Exception], None]
    discarded: Callable[[Any], None] | None
    stop: threading.Event = field(default_factory=threading.Event)
    thread: threading.Thread | None = None
    reported_at_s: float = 0.0


class Jobs(QObject):
    """The workbench's long work, one running job for each topic.

    Signals
    -------
    progressed(topic, title, done)
        How far a job has come, in 0..1.
    ended(topic)
        A topic has no running job any more.
    """

    progressed = Signal(str, str, float)
    ended = Signal(str)
    _came_back = Signal(object, object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._latest: dict[str, _Job] = {}
        self._alive: list[_Job] = []
        self._garbage = CollectsHere(self)
        self._came_back.connect(self._deliver, Qt.ConnectionType.QueuedConnection)

    def run(
        self,
        topic: str,
        title: str,
        work: Callable[[Tick], Any],
        done: Callable[[Any], None],
        failed: Callable[[Exception], None],
        discarded: Callable[[Any], None] | None = None,
    ) -> None:
        """Start work; whatever the topic was doing before is stopped and its result dropped.

        Parameters
        ----------
        topic : str
            Jobs of one topic replace each other.
        title : str
            What is being done, for people: ``"Examining the capture"``.
        work : callable
            ``work(tick)``; runs on a thread of its own.
        done, failed : callable
            Take the result or the exception, on the window's thread. Neither is called for a job that was
            stopped or replaced.
        discarded : callable, optional
            Takes the result of a job that finished although nobody wants it any more, to close it.
        """
        self.cancel(topic)
        job = _Job(topic, title, work, done, failed, discarded)
        self._latest[topic] = job
        self._alive.append(job)
        self._garbage.hold(True)
        job.thread = threading.Thread(target=self._work, args=(job,), name=f"wornband-{topic}", daemon=True)
        self.progressed.emit(topic, title, 0.0)
        job.thread.start()

    def running(self, topic: str) -> bool:
        """Whether a topic has a job whose result is still wanted."""
        return topic in self._latest

    @property
    def topics(self) -> tuple[str, ...]:
        """Topics that have a job whose result is still wanted."""
        return tuple(self._latest)

    def busy(self) -> bool:
        """Whether any thread is still at work, a stopped one that has not noticed yet included."""
        return bool(self._alive)

    def cancel(self, topic: str) -> None:
        """Stop a topic's job and forget about it; nothing happens where there is none."""
        job = self._latest.pop(topic, None)
        if job is not None:
            job.stop.set()
            self.ended.emit(topic)

    def finish(self, topic: str) -> None:
        """Wait for a topic's job and deliver its result at once; nothing happens where there is none.

        For what must not be lost and takes a blink: a window waits here.
        """
        job = self._latest.get(topic)
        if job is not None and job.thread is not None:
            job.thread.join()
            QCoreApplication.sendPostedEvents(self, QEvent.Type.MetaCall.value)

    def shut_down(self, patience_s: float = 10.0) -> bool:
        """Stop everything and wait for the threads to end; False where one did not in time."""
        for topic in list(self._latest):
            self.cancel(topic)
        deadline_s = time.monotonic() + patience_s
        for job in self._alive:
            if job.thread is not None:
                job.thread.join(max(deadline_s - time.monotonic(), 0.0))
        # Whatever came back in the meantime is delivered now, so that files are closed and none is left.
        QCoreApplication.sendPostedEvents(self, QEvent.Type.MetaCall.value)
        self._alive = [job for job in self._alive if job.thread is not None and job.thread.is_alive()]
        self._garbage.hold(self.busy())
        return not self._alive

    def _work(self, job: _Job) -> None:
        result: Any = None
        error: Exception | None = None
        try:
            result = job.work(lambda share: self._tick(job, share))
        except Exception as unforeseen:  # shown by whoever asked for the work: nothing may pass silently
            error = unforeseen
        self._came_back.emit(job, result, error)

    def _tick(self, job: _Job, share: float) -> None:
        if job.stop.is_set():
            raise Cancelled("stopped by the user")
        now_s = time.monotonic()
        if now_s - job.reported_at_s >= _REPORT_EVERY_S:
            job.reported_at_s = now_s
            self.progressed.emit(job.topic, job.title, share)

    @Slot(object, object, object)
    def _deliver(self, job: _Job, result: Any, error: Exception | None) -> None:
        if job in self._alive:
            self._alive.remove(job)
        if job.thread is not None:
            job.thread.join()  # it has no more to do than to end
        self._garbage.hold(self.busy())
        if self._latest.get(job.topic) is not job:
            if error is None and job.discarded is not None:
                job.discarded(result)
            self.ended.emit(job.topic)
            return
        del self._latest[job.topic]
        self.ended.emit(job.topic)
        if error is None:
            job.done(result)
        elif not isinstance(error, Cancelled):
            job.failed(error)
