"""Each verdict in words: its name, what the customer is told, and what it does not claim.

The wording is about behaviour ("the output breaks up"), since nobody opened the part.
"""

from __future__ import annotations

from analysis.diagnosis.findings import Band, Findings, VerdictCode
from analysis.intervals import Interval
from analysis.reports.confidence import Grade, grade, in_words
from analysis.reports.quantities import number
from analysis.wording import Template, Wording, plural, say

WATCH_BELOW = 0.5
"""A band of lower confidence is listed as "possible, watch"."""

_TOUCHING_PERCENT = 0.1  # stretches of travel that lie no further apart are one

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

_CUSTOMER = {
    VerdictCode.WORN_TRACK: Template("{sure} the position sensor is worn: {output}."),
    VerdictCode.SENSOR_OUTPUT_FAULT: Template("{sure} the position sensor is faulty: {output}."),
    VerdictCode.SIGNAL_WIRING: Template(
        "{sure} the fault is a bad contact in the signal wire or its plugs, not a worn sensor."
    ),
    VerdictCode.REFERENCE_FAULT: Template(
        "{sure} the fault is in the supply that feeds the position sensor. What"
        " pulls it down has yet to be found."
    ),
    VerdictCode.GROUND_FAULT: Template(
        "{sure} the fault is in the ground connection of the position sensor. Where has yet to be found."
    ),
    VerdictCode.OUT_OF_RANGE: Template(
        "{sure} the position sensor reads outside its normal range. The height and the"
        " linkage come first; then the sensor."
    ),
    VerdictCode.MEASUREMENT_PROBLEM: Template(
        "The measurement cannot be used and has to be made again. It says nothing about the vehicle yet."
    ),
    VerdictCode.NO_FAULT_FOUND: Template("No fault was seen in {tested}."),
    VerdictCode.INCONCLUSIVE: Template(
        "The measurement does not show yet what is wrong. More has to be measured before a part is bought."
    ),
}

_SURE = {
    Grade.VERY_LIKELY: say("Very likely"),
    Grade.LIKELY: say("Probably"),
    Grade.MORE_LIKELY_THAN_NOT: say("More likely than not,"),
    Grade.POSSIBLE: say("It is possible, but not shown, that"),
    Grade.NOT_RATED: say("It is possible, but not shown, that"),
}


def verdict_name(code: VerdictCode) -> Wording:
    """The verdict in the few words that are read from across the counter."""
    return _NAMES[code]


def headline(findings: Findings) -> Wording:
    """Verdict and confidence: ``"Sensor track worn: very likely (97 in 100)"``."""
    return say(
        "{verdict}: {confidence}",
        verdict=verdict_name(findings.verdict.code),
        confidence=in_words(findings.verdict.confidence),
    )


def not_claimed(code: VerdictCode) -> Wording:
    """What the verdict must not be taken to say."""
    return _NOT_CLAIMED[code]


def customer_sentence(findings: Findings) -> Wording:
    """What the customer is told, in one or two sentences without a figure that reads as a degree of wear."""
    verdict = findings.verdict
    return _CUSTOMER[verdict.code](
        sure=_SURE[grade(verdict.confidence)], output=_output(findings), tested=_tested(findings)
    )


def is_watched(band: Band) -> bool:
    """Whether a band is only possible: listed, never the ground of a verdict."""
    return not band.confidence >= WATCH_BELOW


def _output(findings: Findings) -> Wording:
    bands = [band for band in findings.bands if not is_watched(band)]
    if not bands:
        return say("its output breaks up")
    worst = max(bands, key=lambda band: band.confidence)
    said = say(
        "its output breaks up at the same place of its travel (around {place} %)"
        " on {noisy} of {passes} crossings",
        place=number(worst.travel.centre, 0),
        noisy=worst.noisy_passes,
        passes=worst.passes,
    )
    if len(bands) == 1:
        return said
    return plural(
        "{worst} and at {count} other place",
        "{worst} and at {count} other places",
        worst=said,
        count=len(bands) - 1,
    )


def _tested(findings: Findings) -> Wording:
    if not findings.coverage:
        return say("the position sensor and the wires that were measured")
    reach = Interval(
        min(span.travel.start for span in findings.coverage),
        max(span.travel.stop for span in findings.coverage),
    )
    return (_TESTED_WITH_GAPS if _gaps(findings) else _TESTED)(
        first=number(reach.start, 0), last=number(reach.stop, 0)
    )


_TESTED = Template("the position sensor and the wires that were measured, in {first}–{last} % of its travel")
_TESTED_WITH_GAPS = Template(
    "the position sensor and the wires that were measured, in {first}–{last} % of its travel (with gaps)"
)


def _gaps(findings: Findings) -> bool:
    """Whether the travel tested has holes wider than a tenth of a per cent."""
    spans = sorted(span.travel for span in findings.coverage)
    reach = spans[0].stop
    for span in spans[1:]:
        if span.start > reach + _TOUCHING_PERCENT:
            return True
        reach = max(reach, span.stop)
    return False
