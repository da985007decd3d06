"""What is not shown says what to capture next."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from analysis.diagnosis import evidence_conditions
from analysis.diagnosis.findings import State, Statement
from analysis.reports.to_show import TO_SHOW, to_show

DIAGNOSIS = Path(__file__).resolve().parents[2] / "analysis" / "diagnosis"
# A statement whose code is looked up, by the name of what it is looked up in.
LOOKED_UP = {
    "code": ("ground_good", "reference_good"),
    "_CODE": ("recorder_zero",),
    "_CODES[step]": tuple(evidence_conditions._CODES.values()),
}


def codes() -> set[str]:
    """Codes of every statement of the analysis that may be not shown, read from where they are made."""
    source = "".join(path.read_text(encoding="utf-8") for path in DIAGNOSIS.glob("*.py"))
    found: set[str] = set()
    for code in re.findall(r"Statement\(\s*([^,]+),\s*(?:State\.NOT_SHOWN|state\b|State\.PROVED if)", source):
        found.update((code.strip('"'),) if code.startswith('"') else LOOKED_UP[code])
    return found


def test_every_statement_that_may_be_not_shown_says_what_to_capture() -> None:
    assert len(codes()) > 15
    assert codes() == set(TO_SHOW)


@pytest.mark.parametrize("state", [State.PROVED, State.REFUTED])
def test_what_is_shown_either_way_asks_for_nothing(state: State) -> None:
    assert to_show(Statement("far_end_probed", state, (), "")) is None


def test_a_code_of_a_later_version_asks_for_nothing() -> None:
    assert to_show(Statement("seen_from_the_moon", State.NOT_SHOWN, (), "")) is None
