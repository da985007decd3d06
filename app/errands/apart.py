"""The same work on many things in processes of its own, which can be stopped or lost at any moment.

The processes of `concurrent.futures` write their answers into one pipe. Whoever is ended while it writes
leaves the reader waiting for the rest of an answer, for ever, since others hold that pipe open. Here every
process has a pipe of its own, which ends with it.
"""

from __future__ import annotations

import multiprocessing
import signal
from collections import deque
from collections.abc import Callable, Generator, Sequence
from multiprocessing.connection import Connection, wait
from multiprocessing.context import SpawnProcess
from typing import Final, Generic, TypeVar

Item = TypeVar("Item")
Result = TypeVar("Result")

_LOOK_S: Final = 0.1  # how soon an interrupt is heard; nobody feels it
_SPAWN = multiprocessing.get_context("spawn")  # HDF5 holds threads and locks, which a fork copies half-way


def done_apart(
    work: Callable[[Item], Result], items: Sequence[Item], jobs: int, *, check: Callable[[], None]
) -> Generator[Result | None, None, None]:
    """Do some work in several processes.

    Parameters
    ----------
    work : callable
        What is done with an item; can be pickled, and says its own errors.
    items : sequence
        Can be pickled.
    jobs : int
        Processes.
    check : callable
        Asked often; whatever it raises ends the processes, and is raised.

    Yields
    ------
    object or None
        What became of each item, in their order; None where its process was ended from outside.
    """
    waiting = deque(enumerate(items))
    workers: list[_Worker[Item, Result]] = []
    results: dict[int, Result | None] = {}
    try:
        for place in range(len(items)):
            while place not in results:
                check()
                while waiting and len(workers) < jobs:
                    workers.append(_Worker(work))
                    workers[-1].take(*waiting.popleft())
                for worker in _with_an_answer(workers):
                    results[worker.place] = worker.answer()
                    if waiting and worker.alive:
                        worker.take(*waiting.popleft())
                    else:
                        worker.end()
                        workers.remove(worker)
            yield results.pop(place)
    finally:
        for worker in workers:
            worker.end()


class _Worker(Generic[Item, Result]):
    """A process, and the item that it has."""

    def __init__(self, work: Callable[[Item], Result]) -> None:
        self.place = -1
        self.alive = True
        self.pipe, far = _SPAWN.Pipe()
        self._process: SpawnProcess = _SPAWN.Process(target=_serve, args=(work, far), daemon=True)
        self._process.start()
        far.close()  # the process alone holds it, so that the pipe ends with the process

    def take(self, place: int, item: Item) -> None:
        """Give it an item."""
        self.place = place
        try:
            self.pipe.send(item)
        except OSError:  # it has just been ended; its answer will say so
            self.alive = False

    def answer(self) -> Result | None:
        """What became of its item; None where the process has ended."""
        try:
            result: Result = self.pipe.recv()
        except (EOFError, OSError):
            self.alive = False
            return None
        return result

    def end(self) -> None:
        """End the process, whatever it does."""
        self._process.terminate()
        self._process.join()
        self._process.close()
        self.pipe.close()


def _with_an_answer(workers: Sequence[_Worker[Item, Result]]) -> list[_Worker[Item, Result]]:
    ready = wait([worker.pipe for worker in workers], _LOOK_S)
    return [worker for worker in workers if worker.pipe in ready]


def _serve(work: Callable[[Item], Result], pipe: Connection) -> None:
    """Run in the other process, until whoever gives the items has ended."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)  # ended without a word; the first process speaks
    try:
        while True:
            pipe.send(work(pipe.recv()))
    except (EOFError, OSError):
        return
