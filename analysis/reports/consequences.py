"""What a verdict means for the customer: what it is, whether to drive, what happens if left, what to do.

All of it is common practice, no source; none of it promises, and the maker's procedure decides.
"""

from __future__ import annotations

from collections.abc import Mapping

from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.reports.confidence import Grade
from analysis.reports.customer_words import Kind, capped_grade, told_plainly, when_handled
from analysis.reports.verdicts import only_at_the_sensor
from analysis.wording import Template, Wording, joined, say

_SENSOR = (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT)
_WIRES = (VerdictCode.SIGNAL_WIRING, VerdictCode.REFERENCE_FAULT, VerdictCode.GROUND_FAULT)

_WHAT_IT_IS = {
    Kind.HEIGHT: say(
        "The sensor tells the car how high it stands at this corner. It is a little arm that slides along a"
        " track; the voltage it gives should follow the arm smoothly."
    ),
    Kind.PEDAL: say(
        "The sensor tells the engine how far the pedal or the throttle is open. It is an arm that slides"
        " along a track; the voltage it gives should follow the arm smoothly."
    ),
    Kind.OTHER: say(
        "The sensor tells the control unit a position. It is an arm that slides along a track; the voltage it"
        " gives should follow the arm smoothly."
    ),
}

_MEANING = {
    VerdictCode.SIGNAL_WIRING: say(
        "Here it drops out at any position, as a loose contact does. A new sensor alone may not cure that."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "The sensor can only be as good as its supply, and that was not as it should be. A new sensor may not"
        " cure that."
    ),
    VerdictCode.GROUND_FAULT: say(
        "The sensor can only be as good as its ground, and that was not as it should be. A new sensor may not"
        " cure that."
    ),
    VerdictCode.OUT_OF_RANGE: say(
        "It reads beyond its normal range without breaking up. It may be telling the truth: about the height,"
        " a bent link, or a part that does not belong there."
    ),
    VerdictCode.MEASUREMENT_PROBLEM: say(
        "What was recorded is not the sensor's own signal, so that nothing can be concluded from it."
    ),
    VerdictCode.NO_FAULT_FOUND: say(
        "No place was found where it does not. That holds for the travel and the conditions of the test; a"
        " fault that comes and goes may have been away."
    ),
    VerdictCode.INCONCLUSIVE: say(
        "What was recorded fits more than one explanation, or leaves out what would decide it."
    ),
}

_DRIVING = {
    Kind.HEIGHT: say(
        "The car may level itself wrongly, without warning, and the lamps may point too high. Nobody should"
        " reach under it unless it stands on stands. If it sits visibly low or leans, it should not be"
        " driven. Otherwise drive with care; the maker's instructions decide."
    ),
    Kind.PEDAL: say(
        "The engine may hesitate, jerk or lose power without warning. It should not be driven further than"
        " the workshop until this is cleared up; the maker's instructions decide."
    ),
    Kind.OTHER: say(
        "The system that uses this sensor may act on a wrong position. What may be driven is for the maker's"
        " instructions and the technician to say."
    ),
}
_DRIVING_UNKNOWN = say(
    "This measurement does not answer that. As long as the complaint is there, it is to be taken seriously:"
    " the technician and the maker's instructions decide."
)
_DRIVING_CLEAR = say(
    "This measurement gives no reason not to. It does not answer the complaint by itself; the technician and"
    " the maker's instructions decide."
)

_LEFT = {
    VerdictCode.WORN_TRACK: say(
        "A track that breaks up does not heal. As a rule the place grows and the complaint comes more often."
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: say(
        "A fault inside the sensor does not heal; the complaint will come back."
    ),
    VerdictCode.SIGNAL_WIRING: say(
        "A bad contact comes and goes, and as a rule comes more often, above all in the wet and on bad roads."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "The complaint is likely to come back, and other systems on the same supply may be disturbed too."
    ),
    VerdictCode.GROUND_FAULT: say(
        "The complaint is likely to come back, and other systems on the same ground may be disturbed too."
    ),
    VerdictCode.OUT_OF_RANGE: say("The system that uses this sensor may go on acting on a wrong position."),
}
_LEFT_UNKNOWN = say("This cannot be said before the cause is found.")
_LEFT_CLEAR = say(
    "Nothing follows from this measurement. If the complaint comes back, it should be measured again then."
)

_RECOMMENDED = {
    VerdictCode.WORN_TRACK: say(
        "Replace the position sensor, calibrate it by the maker's method, and measure again in the same way."
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: say(
        "Replace the position sensor, calibrate it by the maker's method, and measure again in the same way."
    ),
    VerdictCode.SIGNAL_WIRING: say(
        "Find the bad contact in the signal wire, its plugs or the sensor's pins, repair it, and measure"
        " again."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "Find what disturbs the supply of the sensor, before any part is replaced, and measure again."
    ),
    VerdictCode.GROUND_FAULT: say(
        "Find the bad ground connection, before any part is replaced, repair it, and measure again."
    ),
    VerdictCode.OUT_OF_RANGE: say(
        "Measure the height, look at the linkage and check that the part is the right one, before it is"
        " replaced."
    ),
    VerdictCode.MEASUREMENT_PROBLEM: say("Measure again. No part should be bought on this measurement."),
    VerdictCode.NO_FAULT_FOUND: say(
        "No part should be replaced on this measurement. If the complaint goes on, look further."
    ),
    VerdictCode.INCONCLUSIVE: say("Measure what is missing. No part should be bought on this measurement."),
}
_LOOK_AT_THE_PLUG = say(
    "Look at the sensor's plug and pins first. If they are good, replace the position sensor, calibrate it by"
    " the maker's method, and measure again in the same way."
)
_CONFIRM_FIRST = say(
    "Confirm it before a part is bought: measure again what page two lists as not shown, or set the sensor"
    " beside a known good one."
)

_NOT_INCLUDED = {
    VerdictCode.WORN_TRACK: say(
        "Wiring beyond the points that were probed, other sensors, other causes of the complaint, and"
        " whatever the system itself has suffered. Nobody opened the sensor."
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: say(
        "Wiring beyond the points that were probed, other sensors, other causes of the complaint, and"
        " whatever the system itself has suffered. Nobody opened the sensor."
    ),
}
_NOT_INCLUDED_ELSE = say(
    "Anything that was not measured: other sensors, wiring beyond the points that were probed, and other"
    " causes of the complaint."
)


def meaning(findings: Findings, kind: Kind) -> tuple[Wording, ...]:
    """What the sensor does, and what was found about it."""
    code = findings.verdict.code
    found = _drops_out(findings) if code in _SENSOR else _MEANING[code]
    if only_at_the_sensor(findings):
        found = _AT_THE_SENSOR(when=when_handled(findings))
    decided = code not in (VerdictCode.INCONCLUSIVE, VerdictCode.MEASUREMENT_PROBLEM)
    hedge = _NO_PROOF if decided and not _sure(findings) else say("")
    return (_WHAT_IT_IS[kind], joined([found, hedge]))


_AT_THE_SENSOR = Template(
    "Here it drops out at any position, as a loose contact does, but only {when}: the contact is in the"
    " sensor or where it is plugged in, rather than along the wire."
)
_NO_PROOF = say("What was recorded points to this, and does not prove it.")
_DROPS_OUT = Template(
    "{where} it drops out instead, {when}: the system is told a wrong position for moments."
)


def _drops_out(findings: Findings) -> Wording:
    """Where and how often, as the bands have it that a verdict can stand on."""
    bands = told_plainly(findings)
    if not bands:
        return _DROPS_OUT(where=say("At times"), when=say("for no reason that the arm gives"))
    where = say("At one place") if len(bands) == 1 else say("At {count} places", count=len(bands))
    share = min(band.noisy_passes / max(band.passes, 1) for band in bands)
    if share >= 1.0:
        return _DROPS_OUT(where=where, when=say("each time the arm passes"))
    when = say("most times the arm passes") if share > 0.5 else say("some of the times the arm passes")
    return _DROPS_OUT(where=where, when=when)


def driving(findings: Findings, kind: Kind) -> Wording:
    """Whether to drive it."""
    code = findings.verdict.code
    if code is VerdictCode.NO_FAULT_FOUND:
        return _DRIVING_CLEAR if _sure(findings) else _DRIVING_UNKNOWN
    return _DRIVING[kind] if code in _LEFT else _DRIVING_UNKNOWN


def if_left(findings: Findings) -> Wording:
    """What happens if it is left."""
    code = findings.verdict.code
    if code is VerdictCode.NO_FAULT_FOUND:
        return _LEFT_CLEAR
    return _pick(_LEFT, findings) if _sure(findings) else _LEFT_UNKNOWN


def recommended(findings: Findings) -> Wording:
    """What to do; a part is recommended only where the verdict is sure enough, and all it rests on shown."""
    code = findings.verdict.code
    if code in (*_SENSOR, *_WIRES, VerdictCode.OUT_OF_RANGE) and not _sure(findings):
        return _CONFIRM_FIRST
    if only_at_the_sensor(findings):
        return _LOOK_AT_THE_PLUG
    return _RECOMMENDED[code]


def not_included(findings: Findings) -> Wording:
    """What the recommendation does not cover."""
    return _NOT_INCLUDED.get(findings.verdict.code, _NOT_INCLUDED_ELSE)


def _sure(findings: Findings) -> bool:
    return capped_grade(findings) in (Grade.VERY_LIKELY, Grade.LIKELY)


def _pick(table: Mapping[VerdictCode, Wording], findings: Findings) -> Wording:
    return table.get(findings.verdict.code, _LEFT_UNKNOWN)
