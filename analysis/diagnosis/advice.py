"""What to do next: first the captures that would decide what is not shown, then the trade's next step."""

from __future__ import annotations

from collections.abc import Iterator

from analysis.captures.model import Role, Step
from analysis.captures.record_names import record_at_first
from analysis.diagnosis.findings import MEASURE_AGAIN, Band, State, Statement, Verdict, VerdictCode
from analysis.diagnosis.seen import QUIET_WEIGHT, Seen, disturbed_weight, too_coarse
from analysis.intervals import Interval
from analysis.wording import Template, say

ENOUGH_CROSSINGS = 6
"""Crossings of a band after which more of them change little: 6 of 6 is a share of at least 0.61 with 95 %
confidence (Clopper and Pearson, one-sided)."""

ENOUGH_HZ = 1000
"""Samples a second that catch a break-up of a fast stroke with room to spare."""

NEXT_STEP = {
    VerdictCode.SIGNAL_WIRING: say(
        "Probe the signal at both ends at once and wiggle the harness section by section; "
        "look at the sensor's pins."
    ),
    VerdictCode.REFERENCE_FAULT: say(
        "Unplug this sensor, then each other one on the same feed: does the reference return?"
    ),
    VerdictCode.GROUND_FAULT: say(
        "Measure the drop from sensor ground to battery negative with the consumers on, "
        "then unplug this sensor: does it go?"
    ),
    VerdictCode.OUT_OF_RANGE: say(
        "Measure the real height, look at the link, and check that the profile is the right one."
    ),
    VerdictCode.WORN_TRACK: say(
        "Capture the new sensor in the same way and compare; calibrate it by the maker's method."
    ),
    VerdictCode.SENSOR_OUTPUT_FAULT: say("Capture the new sensor in the same way and compare."),
}


MEASURE_WIRE = say(
    "It breaks up with nobody touching anything: with both plugs off, measure the signal wire from end to"
    " end. More than a few ohms is corrosion, or a poor splice or pin."
)
"""A wire of high resistance need not answer to wiggling. Of a low reference under 5 Ω is published (Chevrolet
Traverse 2009, Circuit/System Testing); for the signal wire: common practice, no source."""

UNTOUCHED = (Step.CHECK, Step.GROUND, Step.REFERENCE)
"""Steps in which nobody moves the arm or touches the harness."""

RECORD_WIRE = {
    Role.GROUND: say("Record the ground with the sensor plugged in and the ignition on."),
    Role.REFERENCE: say("Record the reference with the sensor plugged in and the ignition on."),
}

SWEEP_ALL = say("Sweep the arm slowly through its whole travel, four times, hands off the harness.")
SWEEP_TO_STOPS = Template("Sweep to both stops of the arm; only {low:.0f}–{high:.0f} % was visited.")
SWEEP_PAST = Template(
    "Sweep past {low:.0f}–{high:.0f} % {missing} more times, slowly, hands off the harness."
)
HOLD_STILL = Template("Hold the arm still at {place:.0f} % for ten seconds, hands off, and record it.")
SECOND_TRACK = say("Record the second track in the same sweeps.")
WHICH_TRACK = say(
    "Hold the arm at a few known positions and record both tracks: "
    "which of them does not fit is the wrong one."
)
REST_HEIGHT = say("Sweep through the height at which the car stands.")
WIGGLE = say("Wiggle the harness with the arm at rest and the signal watched.")
KEEP_UP = say(
    "Record again so that no samples are lost: close other programs on the recorder, or sample more slowly."
)
RECORD_FASTER = Template(
    "Record faster: {rate_hz:.0f} samples a second miss most break-ups; take {enough_hz:,} or more."
)


RECORD_AGAIN = {
    Role.GROUND: say("Record the ground once more, away from what disturbs the probes."),
    Role.REFERENCE: say("Record the reference once more, away from what disturbs the probes."),
}


RECORD_FINER = {
    Role.GROUND: say(
        "Record the ground once more in a smaller range, so that the recorder's steps are finer."
    ),
    Role.REFERENCE: say(
        "Record the reference once more in a smaller range, so that the recorder's steps are finer."
    ),
}


def _wire_again(seen: Seen, role: Role) -> str:
    """How a wire that nothing was shown of is recorded next."""
    if not _was_recorded(seen, role):
        return RECORD_WIRE[role]
    return (RECORD_FINER if too_coarse(seen.check(f"{role.value}_steadiness")) else RECORD_AGAIN)[role]


def _was_recorded(seen: Seen, role: Role) -> bool:
    """Whether a wire was watched in its own step: then it is not enough to ask for that again."""
    steps = {item.record.step for item in seen.studies.every if role in item.steady}
    return Step.GROUND in steps if role is Role.GROUND else Step.REFERENCE in steps


def give_advice(seen: Seen, verdict: Verdict, evidence: tuple[Statement, ...]) -> tuple[str, ...]:
    """What to capture next, and what to do, most useful first.

    Parameters
    ----------
    seen : Seen
    verdict : Verdict
    evidence : tuple of Statement

    Returns
    -------
    tuple of str
        Whole sentences; no two alike.
    """
    return tuple(dict.fromkeys(_sentences(seen, verdict, evidence)))


def _sentences(seen: Seen, verdict: Verdict, evidence: tuple[Statement, ...]) -> Iterator[str]:
    if verdict.code is VerdictCode.MEASUREMENT_PROBLEM:
        for problem in seen.problems[:2]:
            yield MEASURE_AGAIN(record=record_at_first(problem.record), action=problem.action)
        return
    open_points = {item.code: item.state for item in evidence}
    if not seen.studies.swept:
        yield SWEEP_ALL
    yield from _wider(seen)
    for band in seen.bands:
        yield from _more_crossings(band)
    if seen.sure_bands and open_points.get("not_the_loom") is State.NOT_SHOWN:
        place = seen.sure_bands[0].travel.centre
        yield HOLD_STILL(place=place)
    if open_points.get("all_tracks_recorded") is State.REFUTED:
        yield SECOND_TRACK
    if open_points.get("tracks_agree") is State.REFUTED and not seen.sure_bands:
        yield WHICH_TRACK
    if open_points.get("rest_height_tested") is State.REFUTED:
        yield REST_HEIGHT
    if open_points.get("wiring_quiet") is State.NOT_SHOWN:
        yield WIGGLE
    for role, code in ((Role.GROUND, "ground_good"), (Role.REFERENCE, "reference_good")):
        if open_points.get(code) is State.NOT_SHOWN:
            yield _wire_again(seen, role)
    if "recorder_kept_up" in open_points:
        yield KEEP_UP
    slow = seen.check("sample_rate")
    if slow is not None and slow.value < (slow.lower_limit or 0.0):
        yield RECORD_FASTER(rate_hz=slow.value, enough_hz=ENOUGH_HZ)
    if verdict.code in NEXT_STEP:
        yield NEXT_STEP[verdict.code]
    if verdict.code is VerdictCode.SIGNAL_WIRING and _breaks_up_untouched(seen):
        yield MEASURE_WIRE


LEAST_REACH = 0.7
"""Of the travel that the profile allows: an arm that moved less was hardly swept from stop to stop."""


def part_visited(seen: Seen) -> Interval | None:
    """The travel that was visited, in %, where that is only a part; None where it is most, or unknown."""
    profile, survey = seen.studies.profile, seen.studies.tracks.get(Role.SIGNAL)
    if survey is None or not survey.crossings or Role.SIGNAL not in profile.tracks:
        return None
    low = max(min(item.travel.start for item in survey.crossings), 0.0)
    high = min(max(item.travel.stop for item in survey.crossings), 100.0)
    allowed_percent = 100.0 * profile.tracks[Role.SIGNAL].valid_v.length / profile.supply_v
    return Interval(low, max(low, high)) if high - low < LEAST_REACH * allowed_percent else None


def _wider(seen: Seen) -> Iterator[str]:
    """To sweep from stop to stop, where no band was found and much of the travel was not visited."""
    visited = part_visited(seen)
    if visited is not None and not seen.sure_bands:
        yield SWEEP_TO_STOPS(low=visited.start, high=visited.stop)


def _breaks_up_untouched(seen: Seen) -> bool:
    """Whether the signal plainly breaks up in records in which nobody touched anything."""
    untouched = [item for item in seen.studies.every if item.record.step in UNTOUCHED]
    return sum(disturbed_weight(seen, item) for item in untouched) >= QUIET_WEIGHT


def _more_crossings(band: Band) -> Iterator[str]:
    if band.passes < ENOUGH_CROSSINGS or (band.confidence < 0.5 and band.noisy_passes < 3):
        low, high = max(band.travel.start - 8.0, 0.0), min(band.travel.stop + 8.0, 100.0)
        missing = max(ENOUGH_CROSSINGS - band.passes, 2)
        yield SWEEP_PAST(low=low, high=high, missing=missing)
