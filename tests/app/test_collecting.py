"""Garbage is looked for on the window's thread alone: widgets that are destroyed elsewhere crash it."""

from __future__ import annotations

import gc
import threading
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from analysis.progress import Tick
from app.collecting import CollectsHere
from app.jobs import Jobs


class _Cycle:
    """Garbage that only looking for it finds, and that says on which thread it was found."""

    def __init__(self, found: list[int]) -> None:
        self.me = self
        self.found = found

    def __del__(self) -> None:
        self.found.append(threading.get_ident())


@pytest.fixture(autouse=True)
def as_in_the_program() -> Iterator[None]:
    gc.enable()
    yield
    gc.disable()


def _never(value: object) -> None:
    pytest.fail(f"this came back: {value}")


def _makes_garbage(found: list[int], release: threading.Event) -> Callable[[Tick], int]:
    def work(tick: Tick) -> int:
        kept = [[index] for index in range(200_000)]  # objects by the hundred thousand set Python looking
        for _ in range(2_000):
            _Cycle(found)
        release.wait(20.0)
        return len(kept)

    return work


def test_python_looks_for_garbage_on_any_thread_that_makes_objects() -> None:
    """What the rest guards against; should it fail one day, Python has changed and the guard may go."""
    found: list[int] = []
    release = threading.Event()
    release.set()
    worker = threading.Thread(target=_makes_garbage(found, release), args=(lambda share: None,))
    worker.start()
    ident = worker.ident
    worker.join()
    assert ident in found


def test_garbage_that_work_makes_is_found_on_the_windows_thread_while_it_is_at_work(qtbot: QtBot) -> None:
    jobs, found, done, release = Jobs(), list[int](), list[int](), threading.Event()
    jobs.run("a", "Making", _makes_garbage(found, release), done.append, _never)
    assert not gc.isenabled()
    qtbot.waitUntil(lambda: len(found) >= 2_000, timeout=20_000)
    assert not done
    release.set()
    qtbot.waitUntil(lambda: bool(done), timeout=20_000)
    assert set(found) == {threading.get_ident()}
    assert gc.isenabled()
    assert jobs.shut_down()


def test_python_looks_by_itself_again_once_the_last_of_all_windows_is_done(qtbot: QtBot) -> None:
    one, other = CollectsHere(), CollectsHere()
    one.hold(True)
    other.hold(True)
    other.hold(True)  # said twice is said once
    one.hold(False)
    assert not gc.isenabled()
    other.hold(False)
    assert gc.isenabled()
    assert not any(timer.isActive() for timer in (*one.findChildren(QTimer), *other.findChildren(QTimer)))


def test_what_was_off_before_stays_off(qtbot: QtBot) -> None:
    gc.disable()
    keeper = CollectsHere()
    keeper.hold(True)
    keeper.hold(False)
    assert not gc.isenabled()


def test_work_that_was_stopped_lets_python_look_again(qtbot: QtBot) -> None:
    jobs, release = Jobs(), threading.Event()
    jobs.run("a", "Waiting", lambda tick: release.wait(20.0), _never, _never)
    jobs.cancel("a")
    assert not gc.isenabled()  # the thread is still there
    release.set()
    assert jobs.shut_down()
    assert gc.isenabled()
