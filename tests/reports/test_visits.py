"""Another capture beside this one: which visit it was decides what is said of the two."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.comparison.model import Relation
from analysis.diagnosis.findings import VerdictCode
from analysis.reports.customer_page import customer_page
from analysis.reports.subject import Beside, Subject
from tests.reports.examples import CAPTURE, findings, survey
from tests.reports.test_customer_words import boxes


def visit(created: str, code: VerdictCode = VerdictCode.NO_FAULT_FOUND, **changed: str) -> Beside:
    about = {
        "registration": "AB 1",
        "sensor": "height",
        "mounting": "rear left",
        "created": created,
        **changed,
    }
    return Beside(replace(CAPTURE, attributes=about), replace(findings(code), bands=()))


def test_another_capture_is_called_good_only_where_no_fault_was_found_and_later_only_where_it_is() -> None:
    first = Subject(visit("2026-04-14").capture, findings())
    assert visit("2026-04-16").title(first) == "The same place, measured later (2026-04-16): no fault found"
    assert "no fault found" not in visit("2026-04-16", VerdictCode.INCONCLUSIVE).title(first)
    assert (
        visit("2026-04-16", mounting="rear right")
        .title(first)
        .startswith("Another sensor, in which no fault was found: rear right")
    )
    assert visit("2026-04-01").title(first) == "The same place, measured earlier (2026-04-01)"
    assert (
        visit("2026-04-16", VerdictCode.WORN_TRACK, registration="CD 2")
        .title(first)
        .startswith("Another sensor: rear left")
    )


def test_a_capture_after_the_repair_ticks_that_it_was_made() -> None:
    subject = Subject(visit("2026-04-14").capture, findings())
    assert boxes(customer_page(subject, visit("2026-04-16")))["captured again in the same way"]


def test_a_capture_of_the_time_before_is_compared_as_before_and_ticks_that_this_one_was_made() -> None:
    before = Beside(visit("2026-04-14").capture, findings())
    after = Subject(visit("2026-04-16").capture, replace(findings(VerdictCode.NO_FAULT_FOUND), bands=()))
    assert before.compared(after).relation is Relation.BEFORE_AFTER
    assert before.compared(after).first.verdict.code is VerdictCode.WORN_TRACK
    assert "left" not in before.compared(after).summary
    assert boxes(customer_page(after, before))["captured again in the same way"]


def test_a_later_capture_that_left_the_place_out_does_not_tick_that_it_was_made_in_the_same_way() -> None:
    subject = Subject(visit("2026-04-14").capture, findings())
    half = visit("2026-04-16")
    short = replace(survey(), breakup_percent=np.where(np.arange(10) >= 4, np.nan, survey().breakup_percent))
    half = Beside(half.capture, replace(half.findings, surveys=(short,)))
    assert "not crossed after" in half.compared(subject).summary
    assert not boxes(customer_page(subject, half))["captured again in the same way"]


@pytest.mark.parametrize(
    ("own", "other", "relation"),
    [
        ("rear left", "rear right", Relation.LEFT_RIGHT),
        ("rear right", "rear left", Relation.LEFT_RIGHT),
        ("rear left", "front left", Relation.SIDE_BY_SIDE),
        ("", "", Relation.SIDE_BY_SIDE),
    ],
)
def test_left_and_right_are_said_only_of_what_was_mounted_there(
    own: str, other: str, relation: Relation
) -> None:
    bad = visit("2026-04-16", VerdictCode.WORN_TRACK, mounting=other, registration="CD 2")
    bad = Beside(bad.capture, findings())
    subject = Subject(visit("2026-04-14", mounting=own).capture, findings(VerdictCode.OUT_OF_RANGE))
    compared = bad.compared(subject)
    assert compared.relation is relation
    if relation is Relation.LEFT_RIGHT:
        left = VerdictCode.OUT_OF_RANGE if "left" in own else VerdictCode.WORN_TRACK
        assert compared.first.verdict.code is left
