"""Work in processes of its own: in order, and never stuck where one of them is lost."""

from __future__ import annotations

import multiprocessing
import os
import signal
import threading
import time
from contextlib import closing

import pytest

from app.errands.apart import done_apart

pytestmark = pytest.mark.skipif(os.name != "posix", reason="elsewhere a process cannot be ended by a signal")

_MUCH = 10_000_000  # bytes; far more than a pipe takes at once


def _never() -> None:
    """Nobody interrupts."""


def _squared(number: int) -> int:
    time.sleep(0.2 / (1 + number))  # those that come later are done sooner
    return number * number


def _lost_at_three(number: int) -> int:
    if number == 3:
        os.kill(os.getpid(), signal.SIGKILL)
    return number


def _lost_while_answering(number: int) -> bytes:
    if number:
        threading.Timer(0.2, os.kill, (os.getpid(), signal.SIGKILL)).start()
    return bytes(_MUCH if number else 1)


def _for_ever(number: int) -> int:
    time.sleep(3600.0 * min(number, 1))
    return number


def test_answers_come_in_the_order_of_the_items() -> None:
    numbers = range(12)
    assert list(done_apart(_squared, numbers, 3, check=_never)) == [number * number for number in numbers]


def test_a_lost_process_costs_its_own_item_alone() -> None:
    assert list(done_apart(_lost_at_three, range(8), 2, check=_never)) == [0, 1, 2, None, 4, 5, 6, 7]


def test_nobody_waits_for_the_rest_of_an_answer_whose_writer_is_lost() -> None:
    with closing(done_apart(_lost_while_answering, [0, 1], 1, check=_never)) as done:
        assert next(done) == bytes(1)
        for child in multiprocessing.active_children():
            child.join(30)  # it has written what a pipe takes, and then is lost
        assert next(done) is None


def test_what_the_check_raises_ends_every_process() -> None:
    asked: list[float] = []

    def impatient() -> None:
        asked.append(time.monotonic())
        if len(asked) > 5:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        list(done_apart(_for_ever, [1, 2], 2, check=impatient))
    assert multiprocessing.active_children() == []


def test_whoever_wants_no_more_answers_leaves_no_process_behind() -> None:
    with closing(done_apart(_for_ever, [0, 1, 1], 2, check=_never)) as done:
        assert next(done) == 0
        assert multiprocessing.active_children()
    assert multiprocessing.active_children() == []
