"""Whether the output broke up only while something was done to the sensor, as its evidence says."""

from __future__ import annotations

from analysis.diagnosis.findings import State, Statement

HANDLED = ("tapping_quiet", "warm_quiet", "cold_quiet", "wet_quiet")
"""Statements that are refuted where the output broke up while something was done to the sensor."""

ELSEWHERE = ("wiring_quiet", "quiet_elsewhere", "unplugged_quiet")
"""Statements that are refuted where it broke up otherwise."""


def only_when_handled(evidence: tuple[Statement, ...]) -> bool:
    """Whether the sensor broke up when it was tapped, warmed, cooled or wetted, and not otherwise."""
    handled = any(state_of(evidence, code) is State.REFUTED for code in HANDLED)
    return handled and not any(state_of(evidence, code) is State.REFUTED for code in ELSEWHERE)


def state_of(evidence: tuple[Statement, ...], code: str) -> State | None:
    """How a statement of the evidence stands; None where it is not among it."""
    return next((item.state for item in evidence if item.code == code), None)
