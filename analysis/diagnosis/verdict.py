"""One code, one confidence, one plain sentence, and what may lie behind it."""

from __future__ import annotations

from collections.abc import Mapping

from analysis.captures.model import Role
from analysis.diagnosis.advice import part_visited
from analysis.diagnosis.findings import Band, State, Statement, Verdict, VerdictCode
from analysis.diagnosis.handled import ELSEWHERE, only_when_handled, state_of
from analysis.diagnosis.profile_model import Contact
from analysis.diagnosis.seen import Seen
from analysis.wording import Template, Wording, listed, plural, say

CAUSES: Mapping[VerdictCode, tuple[str, ...]] = {
    VerdictCode.WORN_TRACK: (
        say("worn resistive track"),
        say("dirt or moisture on the track"),
        say("a loom that moves with the arm"),
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: (
        say("fault inside the sensor at this position"),
        say("a loom that moves with the arm"),
    ),
    VerdictCode.SIGNAL_WIRING: (
        say("broken strand or loose terminal in the signal wire"),
        say("the sensor's own pins"),
    ),
    VerdictCode.REFERENCE_FAULT: (
        say("wiring of the reference"),
        say("another sensor on the same feed"),
        say("this sensor pulling it down"),
        say("the control unit"),
    ),
    VerdictCode.GROUND_FAULT: (
        say("ground point or splice"),
        say("wiring of the sensor ground"),
        say("the control unit's ground"),
    ),
    VerdictCode.OUT_OF_RANGE: (
        say("the height itself"),
        say("a bent or disconnected link"),
        say("the wrong sensor or profile"),
    ),
}

CLEARING = (
    "measured_properly",
    "ground_good",
    "reference_good",
    "rest_height_tested",
    "all_tracks_recorded",
    "tracks_agree",
    "sampled_fast_enough",
)
"""Statements of which none may be refuted where no fault is found."""

TESTED = ("rest_height_tested", "all_tracks_recorded", "tracks_agree", "sampled_fast_enough")
"""Those of them whose refutation leaves open whether there is a fault."""

_AT_A_PLACE = (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT)


def give_verdict(
    seen: Seen, probabilities: Mapping[VerdictCode, float], evidence: tuple[Statement, ...]
) -> Verdict:
    """Choose the likeliest explanation and say it.

    Parameters
    ----------
    seen : Seen
    probabilities : mapping of VerdictCode to float
        Of the explanations; `WORN_TRACK` stands for any place-locked fault of the sensor.
    evidence : tuple of Statement
        The chain, which the sentence may not outrun.

    Returns
    -------
    Verdict
    """
    shares = _no_surer_than_its_band(probabilities, seen)
    code = max(shares, key=lambda item: shares[item])
    confidence = shares[code]
    bands = seen.sure_bands
    if code is VerdictCode.WORN_TRACK and not bands:
        code, confidence = (
            VerdictCode.INCONCLUSIVE,
            max(shares.get(VerdictCode.INCONCLUSIVE, 0.0), 1.0 - confidence),
        )
    if code is VerdictCode.NO_FAULT_FOUND and not _may_clear(evidence):
        code = VerdictCode.INCONCLUSIVE
        undecided = shares.get(code, 0.0)
        # A sensor that may well be sound, but was not tested, is rightly left open.
        confidence = undecided + confidence if _untested(evidence) else max(undecided, 1.0 - confidence)
    if code is VerdictCode.WORN_TRACK and seen.studies.profile.contact is Contact.CONTACTLESS:
        code = VerdictCode.SENSOR_OUTPUT_FAULT
    summary = _summary(code, seen, bands)
    if code is VerdictCode.INCONCLUSIVE and state_of(evidence, "tracks_agree") is State.REFUTED:
        summary = _TRACKS_DISAGREE
    causes = CAUSES.get(code, ())
    if code is VerdictCode.SIGNAL_WIRING and only_when_handled(evidence):
        summary, causes = _WHEN_HANDLED, (say("a contact inside the sensor"), *causes)
    if code in _AT_A_PLACE and any(state_of(evidence, item) is State.REFUTED for item in ELSEWHERE):
        causes = (
            *causes,
            CAUSES[VerdictCode.SIGNAL_WIRING][0],
        )  # what broke up elsewhere is no track's doing
    return Verdict(code, confidence, summary, causes)


def _no_surer_than_its_band(
    probabilities: Mapping[VerdictCode, float], seen: Seen
) -> dict[VerdictCode, float]:
    """Shares in which a worn track is no surer than the surest band; what is left over decides nothing."""
    shares = dict(probabilities)
    surest = max((band.confidence for band in seen.bands), default=0.0)
    worn = shares.get(VerdictCode.WORN_TRACK, 0.0)
    if worn <= surest:
        return shares
    undecided = shares.get(VerdictCode.INCONCLUSIVE, 0.0) + worn - surest
    return {**shares, VerdictCode.WORN_TRACK: surest, VerdictCode.INCONCLUSIVE: undecided}


def _untested(evidence: tuple[Statement, ...]) -> bool:
    """Whether what forbids to clear the sensor is only what was not tested."""
    refuted = {code for code in CLEARING if state_of(evidence, code) is State.REFUTED}
    return bool(refuted) and refuted <= set(TESTED)


def _may_clear(evidence: tuple[Statement, ...]) -> bool:
    """No fault found is refused where a required part was not tested, or a wire is not good."""
    states = {item.code: item.state for item in evidence}
    return not any(states.get(code) is State.REFUTED for code in CLEARING)


def _summary(code: VerdictCode, seen: Seen, bands: tuple[Band, ...]) -> Wording:
    if code in (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT):
        return _broken_up(code, bands)
    if code is VerdictCode.MEASUREMENT_PROBLEM:
        text = seen.problems[0].text if seen.problems else say("the readings contradict each other")
        return say("This capture cannot be judged: {text}.", text=text)
    if code is VerdictCode.NO_FAULT_FOUND:
        told = _NONE_SEEN if part_visited(seen) is None else _NONE_SEEN_IN_PART
        return told(tested=_tested(seen))
    if code is VerdictCode.REFERENCE_FAULT and not seen.studies.profile.ratiometric:
        return _FEED_ALONE
    return _SENTENCES[code]


_NONE_SEEN = Template("No fault was seen in {tested}.")
_NONE_SEEN_IN_PART = Template("No fault was seen in {tested}; the rest of the travel was not visited.")


def _broken_up(code: VerdictCode, bands: tuple[Band, ...]) -> Wording:
    second = bool(bands) and bands[0].track is Role.SECOND_SIGNAL
    sure = tuple(band for band in bands[:3] if band is bands[0] or band.confidence >= SAID_PLAINLY)
    perhaps = tuple(band for band in bands[:3] if band not in sure)
    plain = _BROKEN_UP[code, second](spans=_spans(sure), crossed=_crossed(sure))
    if not perhaps:
        return plain
    return say(
        "{plain} It may break up at {spans} too, where {crossed}.",
        plain=plain,
        spans=_spans(perhaps),
        crossed=_crossed(perhaps),
    )


SAID_PLAINLY = 0.8
"""A further band of less confidence is not told in one breath with a sure one: "likely" begins here."""


def _spans(bands: tuple[Band, ...]) -> Wording:
    return listed(
        say("{start:.1f}–{stop:.1f} %", start=band.travel.start, stop=band.travel.stop) for band in bands
    )


_BROKEN_UP = {
    (VerdictCode.WORN_TRACK, False): Template("The track is worn at {spans} of travel: {crossed}."),
    (VerdictCode.WORN_TRACK, True): Template(
        "The track is worn at {spans} of travel of the second track: {crossed}."
    ),
    (VerdictCode.SENSOR_OUTPUT_FAULT, False): Template(
        "The sensor's output breaks up at {spans} of travel: {crossed}."
    ),
    (VerdictCode.SENSOR_OUTPUT_FAULT, True): Template(
        "The sensor's output breaks up at {spans} of travel of the second track: {crossed}."
    ),
}

_SENTENCES = {
    VerdictCode.SIGNAL_WIRING: say(
        "The signal breaks up at moments, not at a place: its wire or the sensor's pins make poor contact."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "The reference is not what it should be, and the signal is a share of it."
    ),
    VerdictCode.GROUND_FAULT: say(
        "Sensor ground is not what it should be, and the signal is read against it."
    ),
    VerdictCode.OUT_OF_RANGE: say(
        "The signal rests outside its valid range without breaking up: the sensor may be telling the truth."
    ),
    VerdictCode.INCONCLUSIVE: say("This capture does not decide it."),
}

_WHEN_HANDLED = say(
    "The signal breaks up at moments, not at a place, and only under what was done to the sensor: a contact"
    " inside it, its pins or its wire."
)

_TRACKS_DISAGREE = say("The two tracks disagree, and this capture does not show which of them is wrong.")

_FEED_ALONE = say("The reference is not what it should be; this sensor's output does not go with it.")


def _crossed(bands: tuple[Band, ...]) -> Wording:
    if not bands:
        return say("no crossings")
    if len(bands) > 1:
        counts = (say("{noisy} of {passes}", noisy=band.noisy_passes, passes=band.passes) for band in bands)
        return say("the output broke up on {counts} crossings", counts=listed(counts))
    return plural(
        "the output broke up on {noisy} of {count} crossing",
        "the output broke up on {noisy} of {count} crossings",
        count=bands[0].passes,
        noisy=bands[0].noisy_passes,
    )


def _tested(seen: Seen) -> Wording:
    survey = seen.studies.tracks.get(Role.SIGNAL)
    if survey is None or not survey.crossings:
        return say("what was recorded")
    return plural(
        "{low:.0f}–{high:.0f} % of travel, {count} stroke",
        "{low:.0f}–{high:.0f} % of travel, {count} strokes",
        low=min(item.travel.start for item in survey.crossings),
        high=max(item.travel.stop for item in survey.crossings),
        count=len(survey.crossings),
    )
