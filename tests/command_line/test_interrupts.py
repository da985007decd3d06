"""An interrupt from the keyboard is kept until the work can stop."""

from __future__ import annotations

import os
import signal

import pytest

from app.errands.interrupts import Interrupts

pytestmark = pytest.mark.skipif(
    os.name != "posix", reason="elsewhere an interrupt cannot be sent to one process"
)


def test_an_interrupt_is_not_raised_where_it_could_be_dropped_but_where_it_is_asked_for() -> None:
    with Interrupts() as interrupts:
        os.kill(os.getpid(), signal.SIGINT)
        with pytest.raises(KeyboardInterrupt):
            interrupts.check()


def test_without_an_interrupt_the_work_goes_on() -> None:
    with Interrupts() as interrupts:
        interrupts.check()


def test_a_second_interrupt_is_raised_at_once() -> None:
    with Interrupts():
        os.kill(os.getpid(), signal.SIGINT)
        with pytest.raises(KeyboardInterrupt):
            os.kill(os.getpid(), signal.SIGINT)


def test_the_handler_from_before_is_set_again() -> None:
    before = signal.getsignal(signal.SIGINT)
    with Interrupts():
        assert signal.getsignal(signal.SIGINT) != before
    assert signal.getsignal(signal.SIGINT) == before
