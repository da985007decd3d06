"""What speaks against the verdict: such statements are told first, and one of them beside the headline."""

from __future__ import annotations

from collections.abc import Mapping

from analysis.diagnosis.findings import Findings, State, Statement, VerdictCode
from analysis.reports.verdicts import only_at_the_sensor
from analysis.wording import Wording, joined, plural, say

_MEASURED = {"measured_properly": State.REFUTED}
_WIRES = {"ground_good": State.REFUTED, "reference_good": State.REFUTED, **_MEASURED}
_IN_TIME = {
    "wiring_quiet": State.REFUTED,
    "quiet_elsewhere": State.REFUTED,
    "unplugged_quiet": State.REFUTED,
}
_AT_A_PLACE = {"place_locked": State.PROVED}
_PLACE = {**_IN_TIME, **_WIRES, "contact_opens": State.REFUTED}
AGAINST: Mapping[VerdictCode, Mapping[str, State]] = {
    VerdictCode.WORN_TRACK: {
        **_PLACE,
        "constant_over_crossings": State.REFUTED,
        "improved_by_moving": State.PROVED,
    },
    VerdictCode.SENSOR_OUTPUT_FAULT: _PLACE,
    VerdictCode.SIGNAL_WIRING: {
        "wiring_quiet": State.PROVED,
        "unplugged_quiet": State.PROVED,
        **_AT_A_PLACE,
        **_WIRES,
    },
    VerdictCode.REFERENCE_FAULT: {
        "reference_good": State.PROVED,
        "ground_good": State.REFUTED,
        **_AT_A_PLACE,
        **_MEASURED,
    },
    VerdictCode.GROUND_FAULT: {"ground_good": State.PROVED, **_AT_A_PLACE, **_MEASURED},
    VerdictCode.OUT_OF_RANGE: {**_AT_A_PLACE, **_IN_TIME, **_WIRES},
    VerdictCode.NO_FAULT_FOUND: {**_AT_A_PLACE, **_IN_TIME, "output_straight": State.REFUTED, **_WIRES},
    VerdictCode.MEASUREMENT_PROBLEM: {},
    VerdictCode.INCONCLUSIVE: {},
}
"""By verdict: statements that point elsewhere, in this state. The last two claim nothing to be denied."""

_AT_THE_SENSOR = {"quiet_elsewhere": State.REFUTED, **_AT_A_PLACE, **_WIRES}
"""Of a bad contact at the sensor itself, whose wire may well be quiet."""


def against(findings: Findings) -> tuple[Statement, ...]:
    """Statements that speak against the verdict, in the order of the chain; empty where none does."""
    pointing = AGAINST[findings.verdict.code]
    if only_at_the_sensor(findings):
        pointing = _AT_THE_SENSOR
    return tuple(item for item in findings.evidence if pointing.get(item.code) is item.state)


def told_in_order(findings: Findings) -> tuple[Statement, ...]:
    """The whole chain as people read it: what speaks against the verdict, what else is refuted, the rest."""
    contrary = against(findings)

    def rank(statement: Statement) -> int:
        if statement in contrary:
            return 0
        return 1 if statement.state is State.REFUTED else 2

    return tuple(sorted(findings.evidence, key=rank))


def contrary_line(findings: Findings) -> Wording:
    """One line to stand under the headline: ``"Speaks against it: …"``; empty where nothing does."""
    contrary = against(findings)
    if not contrary:
        return joined([])
    first = say("Speaks against it: {statement}", statement=contrary[0].text)
    if len(contrary) == 1:
        return first
    more = plural("{count} more stands below.", "{count} more stand below.", count=len(contrary) - 1)
    return joined([first, more])
