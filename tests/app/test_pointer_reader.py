from __future__ import annotations

import threading
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import pytest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Channel, Record, Role
from analysis.errors import CaptureError
from app.jobs import Jobs
from app.review.pointer_reader import Pointed, PointerReader
from app.review.readings import Reading

RATE_HZ = 100.0


@dataclass
class SlowSource:
    """Samples that count up, read from a disk that waits until it is let go; after `gone` it is damaged."""

    go_on: threading.Event
    read_by: list[tuple[int, threading.Thread]]
    gone: bool = False

    @property
    def dtype(self) -> np.dtype[Any]:
        return np.dtype(np.float64)

    def __len__(self) -> int:
        return 1000

    def read(self, start: int, stop: int) -> np.ndarray:
        self.read_by.append((start, threading.current_thread()))
        assert self.go_on.wait(10.0)
        if self.gone:
            raise CaptureError("the file is gone", "bring it back")
        return np.arange(start, stop, dtype=np.float64)


@pytest.fixture
def source() -> SlowSource:
    made = SlowSource(threading.Event(), [])
    made.go_on.set()
    return made


@pytest.fixture
def reader(qtbot: QtBot) -> Iterator[PointerReader]:
    jobs = Jobs()
    yield PointerReader(jobs)
    assert jobs.shut_down()


def _record(source: SlowSource) -> Record:
    return Record("001", 1.0 / RATE_HZ, (Channel("signal", Role.SIGNAL, source),))


def _heard(reader: PointerReader) -> list[float]:
    told: list[float] = []

    def note(reading: Reading, _resolution_s: float) -> None:
        told.append(reading.volts[0][1])

    reader.read.connect(note)
    return told


def test_it_reads_beside_the_window(qtbot: QtBot, reader: PointerReader, source: SlowSource) -> None:
    told = _heard(reader)
    reader.ask(Pointed(_record(source), 1.0, None, 0.01))
    qtbot.waitUntil(lambda: told == [100.0])
    assert source.read_by[0][1] is not threading.main_thread()


def test_of_what_was_passed_while_one_was_read_the_last_is_read_and_no_other(
    reader: PointerReader, source: SlowSource
) -> None:
    told, record = _heard(reader), _record(source)
    source.go_on.clear()
    for moment_s in (1.0, 2.0, 3.0, 4.0):
        reader.ask(Pointed(record, moment_s, None, 0.01))
    source.go_on.set()
    reader.settle()
    assert [start for start, _ in source.read_by] == [100, 400]
    assert told == [100.0, 400.0]


def test_what_is_forgotten_or_of_another_record_is_not_told(
    qtbot: QtBot, reader: PointerReader, source: SlowSource
) -> None:
    told, record = _heard(reader), _record(source)
    reader.ask(Pointed(record, 1.0, None, 0.01))
    reader.forget()
    reader.settle()
    assert told == []
    source.go_on.clear()
    reader.ask(Pointed(record, 1.0, None, 0.01))
    reader.ask(Pointed(replace(record, name="002"), 5.0, None, 0.01))
    source.go_on.set()
    reader.settle()
    assert told == [500.0]


def test_a_file_that_is_gone_is_one_sentence(reader: PointerReader, source: SlowSource) -> None:
    problems: list[str] = []
    reader.problem.connect(problems.append)
    source.gone = True
    reader.ask(Pointed(_record(source), 1.0, None, 0.01))
    reader.settle()
    assert len(problems) == 1
    assert "bring it back" in problems[0]
