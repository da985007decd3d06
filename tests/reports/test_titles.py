"""What a report is called."""

from __future__ import annotations

from dataclasses import replace

import pytest

from analysis.reports.subject import Subject
from analysis.reports.whole_report import whole_report
from tests.reports.examples import CAPTURE, findings


@pytest.mark.parametrize(
    ("title", "title_of_report"),
    [
        ("Ride height sensor", "Test report: Ride height sensor, rear left"),
        ("Ride height sensor, rear left", "Test report: Ride height sensor, rear left"),
    ],
)
def test_the_mounting_is_said_once(title: str, title_of_report: str) -> None:
    capture = replace(CAPTURE, title=title, attributes={**CAPTURE.attributes, "mounting": "rear left"})
    assert whole_report(Subject(capture, findings()), today="2026-04-14").title == title_of_report
