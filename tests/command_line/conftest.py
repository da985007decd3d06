"""A command line whose analysis is made by hand, so that its manners can be tried on their own."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick, ignore
from app.resources import sample_captures
from tests.reports.examples import findings

Examine = Callable[..., Findings]


@pytest.fixture
def sample() -> Path:
    """A sample capture that exists."""
    return next(path for path in sample_captures() if path.name == "W1041-rear-left-height.h5")


@pytest.fixture
def by_hand(monkeypatch: pytest.MonkeyPatch) -> list[str | None]:
    """Findings made by hand for every file; the profiles that were asked for are noted."""
    asked: list[str | None] = []

    def examine(capture: Capture, *, profile: str | None = None, tick: Tick = ignore) -> Findings:
        asked.append(profile)
        assert capture.sha256, "the file was to be hashed first"
        tick(1.0)
        return findings()

    monkeypatch.setattr("app.errands.analysing.examine", examine)
    return asked
