"""A clock that a test sets, and what Review looks at in the worn capture."""

from __future__ import annotations

from dataclasses import dataclass

import pytest
from pytestqt.qtbot import QtBot

from app.review.focus import Focus
from tests.app.fakes import worn_capture, worn_findings


@dataclass(slots=True)
class Clock:
    """Tells the time that it was given, in seconds."""

    now_s: float = 100.0

    def __call__(self) -> float:
        return self.now_s


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def focus(qtbot: QtBot, clock: Clock) -> Focus:
    made = Focus(clock)
    made.start(worn_capture())
    made.learn(worn_findings())
    return made
