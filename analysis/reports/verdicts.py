"""Each verdict in words: its name, and what it does not claim.

The wording is about behaviour ("the output breaks up"), since nobody opened the part.
"""

from __future__ import annotations

from typing import Protocol

from analysis.diagnosis.findings import Band, Findings, Statement, Verdict, VerdictCode
from analysis.diagnosis.handled import only_when_handled
from analysis.reports.confidence import in_words
from analysis.wording import Wording, say

WATCH_BELOW = 0.5
"""A band of lower confidence is listed as "possible, watch"."""

_NAMES = {
    VerdictCode.WORN_TRACK: say("Sensor track worn"),
    VerdictCode.SENSOR_OUTPUT_FAULT: say("Sensor output breaks up"),
    VerdictCode.SIGNAL_WIRING: say("Signal wiring faulty"),
    VerdictCode.REFERENCE_FAULT: say("Reference voltage faulty"),
    VerdictCode.GROUND_FAULT: say("Sensor ground faulty"),
    VerdictCode.OUT_OF_RANGE: say("Signal out of range"),
    VerdictCode.MEASUREMENT_PROBLEM: say("Measure again"),
    VerdictCode.NO_FAULT_FOUND: say("No fault found"),
    VerdictCode.INCONCLUSIVE: say("Not shown either way"),
}

_NOT_CLAIMED = {
    VerdictCode.WORN_TRACK: say(
        "It says how the output behaves; nobody opened the sensor. It does not say that"
        " this is the only fault, and it clears no wiring beyond the points that were probed."
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: say(
        "It says that the output breaks up at this position, not why: nobody"
        " opened the sensor. It clears no wiring beyond the points that were probed."
    ),
    VerdictCode.SIGNAL_WIRING: say(
        "It does not say that the harness must be replaced: the bad contact may be a"
        " plug, a splice or the sensor's own pins. Find the place first."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "It proves nothing against this sensor or the control unit: whatever else"
        " hangs on the same supply can pull it down."
    ),
    VerdictCode.GROUND_FAULT: say(
        "It proves nothing against this sensor or the control unit: the ground point, a"
        " splice or what else uses it can lift it."
    ),
    VerdictCode.OUT_OF_RANGE: say(
        "It does not say that the sensor is bad: a vehicle at its stop, a bent link or"
        " the wrong sensor profile reads the same."
    ),
    VerdictCode.MEASUREMENT_PROBLEM: say("It says nothing about the vehicle, neither good nor bad."),
    VerdictCode.NO_FAULT_FOUND: say(
        "It holds for the travel and the conditions that were tested, and no others."
        " A fault that comes and goes may have been away."
    ),
    VerdictCode.INCONCLUSIVE: say("It clears neither the sensor nor the wiring."),
}


def verdict_name(code: VerdictCode) -> Wording:
    """The verdict in the few words that are read from across the counter."""
    return _NAMES[code]


class Judged(Protocol):
    """What has a verdict and what it stands on: findings, or one side of a comparison."""

    @property
    def verdict(self) -> Verdict:
        """What it comes down to."""

    @property
    def evidence(self) -> tuple[Statement, ...]:
        """What the verdict stands on."""


def only_at_the_sensor(judged: Judged) -> bool:
    """Whether it broke up only under what was done to the sensor, so that its wire is not the first guess."""
    return judged.verdict.code is VerdictCode.SIGNAL_WIRING and only_when_handled(judged.evidence)


def verdict_title(judged: Judged) -> Wording:
    """The verdict in few words, the same wherever it is shown."""
    return _AT_THE_SENSOR if only_at_the_sensor(judged) else verdict_name(judged.verdict.code)


_AT_THE_SENSOR = say("Bad contact at the sensor")


def headline(findings: Findings) -> Wording:
    """Verdict and confidence: ``"Sensor track worn: very likely (97 in 100)"``."""
    return say(
        "{verdict}: {confidence}",
        verdict=verdict_title(findings),
        confidence=in_words(findings.verdict.confidence),
    )


def not_claimed(code: VerdictCode) -> Wording:
    """What the verdict must not be taken to say."""
    return _NOT_CLAIMED[code]


def is_watched(band: Band) -> bool:
    """Whether a band is only possible: listed, never the ground of a verdict."""
    return not band.confidence >= WATCH_BELOW
