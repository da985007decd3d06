"""Errors are one sentence with something to do; progress of a step is its share of the whole."""

from __future__ import annotations

import pytest

from analysis.errors import (
    Cancelled,
    CaptureError,
    NewerFormatError,
    ProfileError,
    ReviewError,
    WornbandError,
)
from analysis.progress import ignore, part


@pytest.mark.parametrize("kind", [CaptureError, NewerFormatError, ProfileError, ReviewError])
def test_an_expected_failure_says_what_is_wrong_and_what_to_do(kind: type[WornbandError]) -> None:
    failure = kind("the file is cut short", "save it again")
    assert str(failure) == "the file is cut short; save it again"
    assert (failure.problem, failure.action) == ("the file is cut short", "save it again")
    assert isinstance(failure, WornbandError)


def test_stopping_is_no_failure() -> None:
    assert not issubclass(Cancelled, WornbandError)


def test_steps_that_follow_each_other_report_one_rising_whole() -> None:
    heard: list[float] = []
    outer = part(heard.append, 0.2, 0.8)
    for step in (part(outer, 0.0, 0.5), part(outer, 0.5, 1.0)):
        for done in (0.0, 0.5, 1.0):
            step(done)
    assert heard == pytest.approx([0.2, 0.35, 0.5, 0.5, 0.65, 0.8])


def test_a_step_lets_the_stop_pass() -> None:
    def stop(done: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        part(stop, 0.0, 1.0)(0.5)
    ignore(0.5)
