"""What the customer is told, by verdict: never surer than the number, nor than what was shown.

Whether a car can be driven and what happens to it is common practice, no source: the words say what the
fault can do, name the maker's procedure as what decides, and promise nothing.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Band, Findings, State, Statement, VerdictCode
from analysis.reports.confidence import Grade, grade
from analysis.reports.verdicts import is_watched, only_at_the_sensor
from analysis.wording import Template, Wording, joined, listed, say


class Kind(StrEnum):
    """What the sensor tells the car about."""

    HEIGHT = "height"
    PEDAL = "pedal"
    OTHER = "other"


NEEDED: Mapping[VerdictCode, tuple[str, ...]] = {
    VerdictCode.WORN_TRACK: ("measured_properly", "ground_good", "reference_good", "place_locked"),
    VerdictCode.SENSOR_OUTPUT_FAULT: ("measured_properly", "ground_good", "reference_good", "place_locked"),
    VerdictCode.SIGNAL_WIRING: ("measured_properly", "ground_good", "reference_good"),
    VerdictCode.REFERENCE_FAULT: ("measured_properly",),
    VerdictCode.GROUND_FAULT: ("measured_properly",),
    VerdictCode.OUT_OF_RANGE: ("measured_properly", "ground_good", "reference_good"),
    VerdictCode.NO_FAULT_FOUND: (
        "measured_properly",
        "ground_good",
        "reference_good",
        "wiring_quiet",
        "rest_height_tested",
    ),
}
"""Statements that a verdict rests on; one that is not proved takes "very likely" away from it."""

ALSO_ASKED: Mapping[VerdictCode, tuple[str, ...]] = {
    VerdictCode.WORN_TRACK: ("wiring_quiet", "not_the_loom"),
    VerdictCode.SENSOR_OUTPUT_FAULT: ("wiring_quiet", "not_the_loom"),
}
"""Statements that rule out what looks alike; where one is not proved, "very likely" becomes "probably"."""

_ORDER = (Grade.VERY_LIKELY, Grade.LIKELY, Grade.MORE_LIKELY_THAN_NOT, Grade.POSSIBLE, Grade.NOT_RATED)
_UNSAID = {
    "ground_good": say("It is not shown that the sensor's ground connection is good."),
    "reference_good": say("It is not shown that the sensor's supply is good and steady."),
    "wiring_quiet": say("It is not shown that the wires keep contact when they are moved."),
    "not_the_loom": say("It is not ruled out that a cable which moves with the arm causes it."),
    "measured_properly": say("It is not shown that the probes sat right."),
    "place_locked": say("It is not shown that it is the same spot every time."),
    "rest_height_tested": say("The position in which the arm normally rests was not tested."),
}
"""What is not shown, in words that need no knowledge of the trade; page two says more of it."""


_SURE = {
    Grade.VERY_LIKELY: say("Very likely"),
    Grade.LIKELY: say("Probably"),
    Grade.MORE_LIKELY_THAN_NOT: say("More likely than not,"),
    Grade.POSSIBLE: say("It is possible, but not shown, that"),
    Grade.NOT_RATED: say("It is possible, but not shown, that"),
}

_SENTENCES = {
    VerdictCode.WORN_TRACK: Template("{sure} the position sensor is worn: its output breaks up{place}."),
    VerdictCode.SENSOR_OUTPUT_FAULT: Template(
        "{sure} the position sensor is faulty: its output breaks up{place}."
    ),
    VerdictCode.SIGNAL_WIRING: Template(
        "{sure} the fault is a bad contact in the signal wire, its plugs or the sensor's pins, not a worn"
        " track."
    ),
    VerdictCode.REFERENCE_FAULT: Template(
        "{sure} the fault is in the supply that feeds the position sensor. What pulls it down has yet to be"
        " found."
    ),
    VerdictCode.GROUND_FAULT: Template(
        "{sure} the fault is in the ground connection of the position sensor. Where has yet to be found."
    ),
    VerdictCode.OUT_OF_RANGE: Template(
        "{sure} the position sensor reads outside its normal range. The height and the linkage come first;"
        " then the sensor."
    ),
    VerdictCode.MEASUREMENT_PROBLEM: Template(
        "The measurement cannot be used and has to be made again. It says nothing about the vehicle yet."
    ),
    VerdictCode.NO_FAULT_FOUND: Template(
        "No fault was seen in the position sensor and the wires that were measured{tested}. {sure} there is"
        " none in what was tested."
    ),
    VerdictCode.INCONCLUSIVE: Template(
        "The measurement does not show yet what is wrong. More has to be measured before a part is bought."
    ),
}
_AT_THE_SENSOR = Template(
    "{sure} there is a bad contact in the position sensor, at its pins or in its plug, and no worn track: the"
    " signal dropped out only {when}."
)
_WHEN = {
    "tapping_quiet": say("while the sensor was tapped"),
    "warm_quiet": say("while the sensor was warm"),
    "cold_quiet": say("while the sensor was cold"),
    "wet_quiet": say("while the sensor was wet"),
}
_DISMISSED = say(
    "The program found a place where the sensor's output breaks up; the technician does not accept that"
    " finding. It is not shown what is wrong."
)


def needed_missing(findings: Findings) -> tuple[str, ...]:
    """Codes of the statements that the verdict rests on and that are not proved."""
    return _missing(findings, NEEDED.get(findings.verdict.code, ()))


def capped_grade(findings: Findings) -> Grade:
    """How sure the customer may be told it is: as the confidence says, and no surer than what was shown.

    One thing that the verdict rests on, or that rules out what looks alike, and that was not shown takes
    "very likely" away; several that it rests on, or one that was refuted, take "probably" away too.
    """
    missing = needed_missing(findings)
    states = {item.code: item.state for item in findings.evidence}
    refuted = [code for code in missing if states.get(code) is State.REFUTED]
    unlike = _missing(findings, ALSO_ASKED.get(findings.verdict.code, ()))
    at_most = Grade.LIKELY if unlike else Grade.VERY_LIKELY
    if missing:
        at_most = Grade.MORE_LIKELY_THAN_NOT if refuted or len(missing) > 1 else Grade.LIKELY
    said = grade(findings.verdict.confidence)
    return max(said, at_most, key=_ORDER.index)


def not_shown(findings: Findings) -> tuple[str, ...]:
    """What the customer must know was not shown, as sentences; empty where all was.

    What was tested and found not to be in order is said as the finding says it.
    """
    code = findings.verdict.code
    wanted = (*NEEDED.get(code, ()), *ALSO_ASKED.get(code, ()))
    known: dict[str, Statement] = {item.code: item for item in findings.evidence}
    said = []
    for missing in _missing(findings, wanted):
        refuted = missing in known and known[missing].state is State.REFUTED
        text = known[missing].text if refuted or missing not in _UNSAID else _UNSAID[missing]
        said.append(text)
    return tuple(dict.fromkeys(text for text in said if text))


def customer_sentence(findings: Findings, *, dismissed: bool = False) -> str:
    """The one sentence, without a figure that reads as a degree of wear.

    Parameters
    ----------
    findings : Findings
        What was found.
    dismissed : bool
        Whether the technician dismissed every band that the verdict stands on.
    """
    if dismissed:
        return _DISMISSED
    if only_at_the_sensor(findings):
        return _AT_THE_SENSOR(sure=_SURE[capped_grade(findings)], when=when_handled(findings))
    return _SENTENCES[findings.verdict.code](
        sure=_SURE[capped_grade(findings)], place=_place(findings), tested=_tested(findings)
    )


def when_handled(findings: Findings) -> Wording:
    """What was done to the sensor when it broke up: ``"while the sensor was tapped"``."""
    refuted = [item.code for item in findings.evidence if item.state is State.REFUTED]
    return listed(words for code, words in _WHEN.items() if code in refuted)


def kind_of(capture: Capture) -> Kind:
    """What the sensor tells the car about, out of what the capture says of itself."""
    said = " ".join([capture.text("profile"), capture.text("sensor"), capture.title]).lower()
    if any(word in said for word in ("pedal", "throttle")):
        return Kind.PEDAL
    if any(word in said for word in ("height", "level", "suspension")):
        return Kind.HEIGHT
    return Kind.OTHER


def _missing(findings: Findings, wanted: tuple[str, ...]) -> tuple[str, ...]:
    states = {item.code: item.state for item in findings.evidence}
    return tuple(code for code in wanted if states.get(code) is not State.PROVED)


def told_plainly(findings: Findings) -> list[Band]:
    """The band that a verdict stands on and all that are likely, the surest first; empty where there is none.

    A place that is less than likely never reads like a sure one.
    """
    bands = sorted(
        (band for band in findings.bands if not is_watched(band)), key=lambda band: -band.confidence
    )
    likely = (Grade.VERY_LIKELY, Grade.LIKELY)
    return bands[:1] + [band for band in bands[1:] if grade(band.confidence) in likely]


def _place(findings: Findings) -> Wording:
    bands = [band for band in findings.bands if not is_watched(band)]
    if not bands:
        return say("")
    worst = max(bands, key=lambda band: band.confidence)
    every = worst.noisy_passes >= worst.passes > 1
    place = (_EVERY_TIME if every else _SOME_TIMES)(
        travel_percent=worst.travel.centre, noisy=worst.noisy_passes, passes=worst.passes
    )
    plain = len(told_plainly(findings))
    return joined([place, _others(plain - 1), _perhaps(len(bands) - plain)], "")


_EVERY_TIME = Template(
    " at the same place of its travel (around {travel_percent:.0f} %), each of the {passes} times that the"
    " arm passed it"
)
_SOME_TIMES = Template(
    " at the same place of its travel (around {travel_percent:.0f} %), {noisy} of the {passes} times that"
    " the arm passed it"
)


def _others(count: int) -> Wording:
    if not count:
        return say("")
    return say(" and at one other place") if count == 1 else say(" and at {more} other places", more=count)


def _perhaps(count: int) -> Wording:
    """Places that are less than likely never read like the sure ones."""
    if not count:
        return say("")
    if count == 1:
        return say(", and perhaps at one other place")
    return say(", and perhaps at {more} other places", more=count)


def _tested(findings: Findings) -> Wording:
    if not findings.coverage:
        return say("")
    spans = sorted(span.travel for span in findings.coverage)
    first, reach, holes = max(spans[0].start, 0.0), spans[0].stop, False
    for span in spans[1:]:
        holes = holes or span.start > reach + 0.1
        reach = max(reach, span.stop)
    reach = min(reach, 100.0)
    where = (_WITH_GAPS if holes else _WITHOUT_GAPS)(first=first, last=reach)
    return say("{where}; the rest was not tested", where=where) if reach - first < WHOLE_PERCENT else where


WHOLE_PERCENT = 90.0
"""A shorter stretch of travel is not told to the customer without saying that there is more (our choice)."""

_WITH_GAPS = Template(", in {first:.0f}–{last:.0f} % of its travel (with gaps)")
_WITHOUT_GAPS = Template(", in {first:.0f}–{last:.0f} % of its travel")
