"""What to capture so that a statement which is not shown will be; one sentence each."""

from __future__ import annotations

from collections.abc import Mapping

from analysis.diagnosis.findings import State, Statement
from analysis.wording import Wording, say

_WATCH = say("Record it once more with a probe on the signal.")

TO_SHOW: Mapping[str, Wording] = {
    "recorder_zero": say("Hold the probes together once more, and state how accurate the recorder is."),
    "ground_good": say("Record the ground, plugged in and with the ignition on, away from what disturbs it."),
    "reference_good": say(
        "Record the reference, plugged in and with the ignition on, away from what disturbs it."
    ),
    "wiring_quiet": say("Wiggle the harness with the arm at rest and a probe on the signal."),
    "place_locked": say("Sweep past it a few more times, slowly, hands off the harness."),
    "both_directions": say("Sweep past it in the other direction too."),
    "not_the_loom": say("Hold the arm still in the spot for ten seconds, hands off, and record it."),
    "constant_over_crossings": say("Sweep past it until there are six crossings or more."),
    "tracks_agree": say("Hold the arm still at a few places and record both tracks."),
    "rest_height_tested": say("Record the car as it stands, and sweep past that height."),
    "output_straight": say("Record a second track with it, or the arm held at known positions."),
    "far_end_probed": say("Probe the signal at the other end of its wire too."),
    "recorder_floor": say("Record in finer steps: more bits, or a smaller range."),
    "profile_assumed": say("Name the sensor's profile when its files are imported."),
    "tapping_quiet": _WATCH,
    "warm_quiet": _WATCH,
    "cold_quiet": _WATCH,
    "wet_quiet": _WATCH,
    "depends_on_temperature": say("Sweep past it more often, both cold and warm."),
    "open_level_known": say("Follow the signal wire to what else is connected to it."),
}
"""By the code of the statement: the steps are those of the trade (common practice, no source)."""


def to_show(statement: Statement) -> Wording | None:
    """What to capture next for a statement that is not shown; None where it is shown, one way or the other.

    Parameters
    ----------
    statement : Statement
        Of a code that stands in `TO_SHOW`, or of a later version, which gives None.
    """
    return TO_SHOW.get(statement.code) if statement.state is State.NOT_SHOWN else None
