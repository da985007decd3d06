"""A folder that takes 50 ms for each call, as one far away does: the window goes on, and nothing is lost."""

from __future__ import annotations

import builtins
import io
import os
import threading
import time
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QEvent
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.captures.writing import write_capture
from analysis.errors import ReviewError
from analysis.review.model import Review
from analysis.review.sidecar import Sidecar, read_sidecar
from app.main_window import Window
from app.review import keeper
from app.review.saving import Saved, saved
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.fakes import worn_capture

_A_CALL_S = 0.05
_CALLS = ("access", "fsync", "lstat", "open", "rename", "replace", "scandir", "stat", "unlink")


class FarAway:
    """Lets every call of Python's for a file below a folder take its time, and counts them by thread.

    HDF5's own reading is not slowed: it goes past Python.
    """

    def __init__(self, folder: Path, monkeypatch: pytest.MonkeyPatch, *, a_call_s: float = _A_CALL_S) -> None:
        self._folder, self._a_call_s = str(folder), a_call_s
        self.by_window: Counter[str] = Counter()
        self.beside: Counter[str] = Counter()
        for name in _CALLS:
            monkeypatch.setattr(os, name, self._slow(name, getattr(os, name)))
        opening = self._slow("open", io.open)
        monkeypatch.setattr(io, "open", opening)
        monkeypatch.setattr(builtins, "open", opening)

    def _slow(self, name: str, real: Callable[..., Any]) -> Callable[..., Any]:
        def call(where: Any = ".", *more: Any, **named: Any) -> Any:
            if isinstance(where, int) or str(where).startswith(self._folder):
                by_window = threading.current_thread() is threading.main_thread()
                (self.by_window if by_window else self.beside)[name] += 1
                time.sleep(self._a_call_s)  # it is the disk that sleeps here, not the test
            return real(where, *more, **named)

        return call


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A capture in a folder of its own."""
    made = tmp_path / "visits" / "worn.h5"
    made.parent.mkdir()
    write_capture(worn_capture(), made)
    return made


@pytest.fixture
def window(qtbot: QtBot) -> Window:
    """A window that opens real files."""
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made)
    made.show()
    return made


def _open(window: Window, path: Path, qtbot: QtBot) -> None:
    window.open_file(path)
    review = layout.review_path(path)
    qtbot.waitUntil(
        lambda: window.session.findings is not None and window.keeper.path == review, timeout=20_000
    )
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)


def test_a_slow_folder_is_never_waited_for_by_the_window_that_opens_a_capture_in_it(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    far = FarAway(path.parent, monkeypatch)
    _open(window, path, qtbot)
    window.desk.eventFilter(window, QEvent(QEvent.Type.WindowActivate))  # the technician comes back to it
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    assert sum(far.beside.values()) > 10
    assert far.by_window == {}
    window.close()


def test_what_the_window_waits_for_in_a_slow_folder_is_told_below(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    status, text = window.work, window.work.text
    FarAway(path.parent, monkeypatch, a_call_s=1.0)
    window.open_file(path)
    assert text.isVisible()
    assert text.text() == "Opening worn.h5…"
    qtbot.waitUntil(
        lambda: text.text() == "Reading the review of worn.h5…" and text.isVisible(), timeout=20_000
    )
    assert not status.progress.isVisible()  # how far it has come is not known, and it cannot be stopped
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=60_000)
    assert not text.isVisible()
    window.close()


def test_a_slow_folder_delays_the_saving_and_not_the_window(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    far = FarAway(path.parent, monkeypatch)
    told: list[str] = []
    window.keeper.problem.connect(told.append)
    window.desk.file.problem.connect(told.append)
    _open(window, path, qtbot)
    far.beside.clear()
    window.desk.markers.mark_moment(0.5)
    qtbot.waitUntil(lambda: far.beside["fsync"] > 0, timeout=20_000)
    window.focus.zoom(0.5)  # while it is being saved
    window.desk.markers.mark_moment(1.0)
    qtbot.waitUntil(lambda: not window.keeper.unsaved and not window.jobs.busy(), timeout=20_000)
    assert (
        far.beside["fsync"] == 4
    )  # file and folder, twice: the second marker came while the first was written
    assert far.by_window == {}
    assert told == []
    window.close()
    assert len(read_sidecar(path).review.markers) == 2


def test_a_report_is_stored_in_a_slow_folder_beside_the_window(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    _open(window, path, qtbot)
    far = FarAway(path.parent, monkeypatch)
    target = path.with_name("report.html")
    window.report_desk.save(target)
    qtbot.waitUntil(lambda: far.beside["fsync"] > 0 and not window.jobs.busy(), timeout=20_000)
    assert far.by_window == {}
    assert target.read_bytes()
    window.close()


@pytest.mark.parametrize("then", ["close", "open another"])
def test_what_was_edited_just_before_is_whole_and_the_window_is_not_stared_at_while_it_is_written(
    then: str, window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = path.with_name("other.h5")
    write_capture(worn_capture(), other)
    _open(window, path, qtbot)
    seen: list[bool] = []

    def noted(sidecar: Sidecar, review: Review, *, over_changes: bool = False) -> Saved:
        seen.append(window.isVisible())
        return saved(sidecar, review, over_changes=over_changes)

    monkeypatch.setattr(keeper, "saved", noted)
    far = FarAway(path.parent, monkeypatch)
    window.desk.markers.mark_moment(0.5)
    began_s = time.monotonic()
    if then == "close":
        window.close()
        assert seen == [False]  # it went first
    else:
        _open(window, other, qtbot)
        assert seen == [True]
        assert far.by_window == {}
        window.close()
    assert time.monotonic() - began_s < 10.0
    assert len(read_sidecar(path).review.markers) == 1
    assert not window.isVisible()


def _refused(*_given: object, **_more: object) -> None:
    raise ReviewError("the disk is full", "make room on it")


def test_a_window_stays_open_with_a_review_that_can_be_saved_nowhere(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    _open(window, path, qtbot)

    window.page.trace.setFocus()
    record = window.focus.record
    with monkeypatch.context() as full:
        full.setattr(keeper, "saved", _refused)
        window.desk.markers.mark_moment(0.5)
        assert not window.close()
        assert window.isVisible()
        assert "in this window alone" in window.page.problem_bar.text
        assert window.session.capture is not None
        assert len(window.keeper.review.markers) == 1
        qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
        assert window.focus.record is record
    assert window.close()
    assert len(read_sidecar(path).review.markers) == 1


def test_a_review_that_can_be_saved_nowhere_is_given_up_where_closing_is_asked_again(
    window: Window, path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    _open(window, path, qtbot)

    window.page.trace.setFocus()
    monkeypatch.setattr(keeper, "saved", _refused)
    window.desk.markers.mark_moment(0.5)
    assert not window.close()
    window.desk.markers.mark_moment(1.0)
    assert not window.close()  # that is another review
    assert window.close()
