"""Each verdict in words: its name, what the customer is told, and what it does not claim.

The wording is about behaviour ("the output breaks up"), since nobody opened the part.
"""

from __future__ import annotations

from analysis.diagnosis.findings import Band, Findings, VerdictCode
from analysis.reports.confidence import Grade, grade, in_words
from analysis.reports.quantities import count, number

WATCH_BELOW = 0.5
"""A band of lower confidence is listed as "possible, watch"."""

_TOUCHING_PERCENT = 0.1  # stretches of travel that lie no further apart are one

_NAMES = {
    VerdictCode.WORN_TRACK: "Sensor track worn",
    VerdictCode.SENSOR_OUTPUT_FAULT: "Sensor output breaks up",
    VerdictCode.SIGNAL_WIRING: "Signal wiring faulty",
    VerdictCode.REFERENCE_FAULT: "Reference voltage faulty",
    VerdictCode.GROUND_FAULT: "Sensor ground faulty",
    VerdictCode.OUT_OF_RANGE: "Signal out of range",
    VerdictCode.MEASUREMENT_PROBLEM: "Measure again",
    VerdictCode.NO_FAULT_FOUND: "No fault found",
    VerdictCode.INCONCLUSIVE: "Not shown either way",
}

_NOT_CLAIMED = {
    VerdictCode.WORN_TRACK: "It says how the output behaves; nobody opened the sensor. It does not say that"
    " this is the only fault, and it clears no wiring beyond the points that were probed.",
    VerdictCode.SENSOR_OUTPUT_FAULT: "It says that the output breaks up at this position, not why: nobody"
    " opened the sensor. It clears no wiring beyond the points that were probed.",
    VerdictCode.SIGNAL_WIRING: "It does not say that the harness must be replaced: the bad contact may be a"
    " plug, a splice or the sensor's own pins. Find the place first.",
    VerdictCode.REFERENCE_FAULT: "It proves nothing against this sensor or the control unit: whatever else"
    " hangs on the same supply can pull it down.",
    VerdictCode.GROUND_FAULT: "It proves nothing against this sensor or the control unit: the ground point, a"
    " splice or what else uses it can lift it.",
    VerdictCode.OUT_OF_RANGE: "It does not say that the sensor is bad: a vehicle at its stop, a bent link or"
    " the wrong sensor profile reads the same.",
    VerdictCode.MEASUREMENT_PROBLEM: "It says nothing about the vehicle, neither good nor bad.",
    VerdictCode.NO_FAULT_FOUND: "It holds for the travel and the conditions that were tested, and no others."
    " A fault that comes and goes may have been away.",
    VerdictCode.INCONCLUSIVE: "It clears neither the sensor nor the wiring.",
}

_CUSTOMER = {
    VerdictCode.WORN_TRACK: "{sure} the position sensor is worn: its output breaks up{place}.",
    VerdictCode.SENSOR_OUTPUT_FAULT: "{sure} the position sensor is faulty: its output breaks up{place}.",
    VerdictCode.SIGNAL_WIRING: "{sure} the fault is a bad contact in the signal wire or its plugs, not a worn"
    " sensor.",
    VerdictCode.REFERENCE_FAULT: "{sure} the fault is in the supply that feeds the position sensor. What"
    " pulls it down has yet to be found.",
    VerdictCode.GROUND_FAULT: "{sure} the fault is in the ground connection of the position sensor. Where has"
    " yet to be found.",
    VerdictCode.OUT_OF_RANGE: "{sure} the position sensor reads outside its normal range. The height and the"
    " linkage come first; then the sensor.",
    VerdictCode.MEASUREMENT_PROBLEM: "The measurement cannot be used and has to be made again. It says"
    " nothing about the vehicle yet.",
    VerdictCode.NO_FAULT_FOUND: "No fault was seen in the position sensor and the wires that were"
    " measured{tested}.",
    VerdictCode.INCONCLUSIVE: "The measurement does not show yet what is wrong. More has to be measured"
    " before a part is bought.",
}

_SURE = {
    Grade.VERY_LIKELY: "Very likely",
    Grade.LIKELY: "Probably",
    Grade.MORE_LIKELY_THAN_NOT: "More likely than not,",
    Grade.POSSIBLE: "It is possible, but not shown, that",
    Grade.NOT_RATED: "It is possible, but not shown, that",
}


def verdict_name(code: VerdictCode) -> str:
    """The verdict in the few words that are read from across the counter."""
    return _NAMES[code]


def headline(findings: Findings) -> str:
    """Verdict and confidence: ``"Sensor track worn: very likely (97 in 100)"``."""
    return f"{verdict_name(findings.verdict.code)}: {in_words(findings.verdict.confidence)}"


def not_claimed(code: VerdictCode) -> str:
    """What the verdict must not be taken to say."""
    return _NOT_CLAIMED[code]


def customer_sentence(findings: Findings) -> str:
    """What the customer is told, in one or two sentences without a figure that reads as a degree of wear."""
    verdict = findings.verdict
    return _CUSTOMER[verdict.code].format(
        sure=_SURE[grade(verdict.confidence)], place=_place(findings), tested=_tested(findings)
    )


def is_watched(band: Band) -> bool:
    """Whether a band is only possible: listed, never the ground of a verdict."""
    return not band.confidence >= WATCH_BELOW


def _place(findings: Findings) -> str:
    bands = [band for band in findings.bands if not is_watched(band)]
    if not bands:
        return ""
    worst = max(bands, key=lambda band: band.confidence)
    more = f" and at {count(len(bands) - 1, 'other place', 'other places')}" if len(bands) > 1 else ""
    return (
        f" at the same place of its travel (around {number(worst.travel.centre, 0)} %)"
        f" on {worst.noisy_passes} of {worst.passes} crossings{more}"
    )


def _tested(findings: Findings) -> str:
    if not findings.coverage:
        return ""
    first = min(span.travel.start for span in findings.coverage)
    last = max(span.travel.stop for span in findings.coverage)
    holes = " (with gaps)" if len(findings.coverage) > 1 and _gaps(findings) else ""
    return f", in {number(first, 0)}–{number(last, 0)} % of its travel{holes}"


def _gaps(findings: Findings) -> bool:
    """Whether the travel tested has holes wider than a tenth of a per cent."""
    spans = sorted(span.travel for span in findings.coverage)
    reach = spans[0].stop
    for span in spans[1:]:
        if span.start > reach + _TOUCHING_PERCENT:
            return True
        reach = max(reach, span.stop)
    return False
