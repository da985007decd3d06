"""What a probe read in the air is judged by no limit, and compared with nothing."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from analysis.captures.model import Step
from analysis.captures.reading import open_capture
from analysis.comparison.compare import compare
from analysis.comparison.side import Side
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Result
from analysis.diagnosis.measurement_check import Problem
from analysis.diagnosis.serialise import findings_object
from analysis.diagnosis.unread import not_of_the_air
from analysis.reports.checks import check_sentence, conformance_share, decision_name
from analysis.reports.quantities import NO_VALUE

SAMPLE = Path(__file__).resolve().parents[2] / "sample_captures" / "W1091-front-right-height.h5"
WHY = "The probe hung in the air: what it read is not the signal."


def _ranges(path: Path = SAMPLE) -> tuple[Side, list[Check]]:
    with open_capture(path) as opened:
        side = Side(opened.capture, examine(opened.capture))
    sweeps = [record.name for record in side.capture.records if record.step is Step.SWEEP]
    found = {item.record: item for item in side.findings.checks if item.code == "signal_range"}
    return side, [found[name] for name in sweeps]


def test_the_level_of_a_probe_that_hung_in_the_air_is_not_judged_and_says_why() -> None:
    side, (slipped, hung) = _ranges()
    assert hung.unread
    assert decision_name(hung) == "not judged"
    assert conformance_share(hung) == NO_VALUE
    assert check_sentence(hung).endswith(f"allowed 0.25 V to 4.75 V: not judged. {WHY}")
    assert not slipped.unread  # it was read while the probe was on the wire
    assert slipped.note != WHY
    written = findings_object(side.findings)["checks"]
    (told,) = [item for item in written if (item["code"], item["record"]) == (hung.code, hung.record)]
    assert told["result"] == "cannot_tell"


def test_it_is_set_against_no_other_reading() -> None:
    side, (slipped, hung) = _ranges()
    good = replace(hung, value=4.4, result=Result.PASS, conformance=1.0, note="")
    other = replace(side, findings=replace(side.findings, checks=(slipped, good)))
    found = [item for item in compare(other, side).checks if item.code == "signal_range"]
    assert [item.exceeds is None for item in found] == [False, True]


def test_what_may_not_have_hung_in_the_air_and_what_is_of_another_wire_stays_judged() -> None:
    _, (_, hung) = _ranges()
    level = replace(hung, result=Result.FAIL, conformance=0.0, note="")
    ground = replace(level, code="ground_drop")
    plain = Problem("in_the_air", level.record, 0.9, "", "")
    assert not_of_the_air([level, ground], [plain])[0].unread
    assert not_of_the_air([level, ground], [plain])[1] is ground
    for other in (
        replace(plain, strength=0.4),
        replace(plain, record="099"),
        replace(plain, code="slipped_off"),
    ):
        assert not_of_the_air([level], [other]) == (level,)
