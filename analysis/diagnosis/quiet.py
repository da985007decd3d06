"""What is said of records that show no bad contact of the signal: no more than they show.

Their disturbances add up to less than one plain one (`QUIET_WEIGHT`): too brief or too seldom for a contact
that opens. They are in sight all the same, and so is what ground and reference do to the signal.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.checks import steadiness_check
from analysis.diagnosis.findings import Result
from analysis.diagnosis.seen import Seen, names_of
from analysis.diagnosis.strays import BESIDE_PERCENT
from analysis.diagnosis.studies import Study
from analysis.signals.facts import TrackSurvey
from analysis.wording import Template, Wording, listed, say


def quiet_wiggle(seen: Seen, wiggled: Sequence[Study]) -> Wording:
    """What is said of wiggling the harness, in these records that are quiet."""
    wires = moving_wires(seen, wiggled)
    if wires:
        return _WIGGLED_WITH(wire=_named(wires))
    brief_v = brief_at_rest_v(seen, wiggled)
    return _WIGGLED_BRIEFLY(brief_v=brief_v) if brief_v else _WIGGLED_QUIET


_WIGGLED_QUIET = say("Wiggling the harness does not disturb the signal.")
_WIGGLED_WITH = Template("While the harness is wiggled, the signal moves with {wire} and no further.")
_WIGGLED_BRIEFLY = Template(
    "While the harness is wiggled, the signal is disturbed by up to {brief_v:.2f} V, but too briefly or too"
    " seldom for a bad contact."
)


def quiet_sweeps(seen: Seen, swept: Sequence[Study]) -> Wording:
    """What is said of sweeps that are quiet away from the bands."""
    wires = moving_wires(seen, swept)
    if wires:
        return _SWEPT_WITH(wire=_named(wires))
    brief_percent = brief_breakup_percent(seen, swept)
    if brief_percent:
        return (_SWEPT_BRIEFLY_AWAY if seen.sure_bands else _SWEPT_BRIEFLY)(brief=brief_percent)
    return _UNBROKEN_AWAY if seen.sure_bands else _UNBROKEN


_UNBROKEN = say("The signal follows the arm without a break.")
_UNBROKEN_AWAY = say("Away from any band the signal follows the arm without a break.")
_SWEPT_WITH = Template("But for what {wire} does, the signal follows the arm without a break.")
_SWEPT_BRIEFLY = Template(
    "The signal follows the arm; it is disturbed by up to {brief:.0f} %, but too briefly or too seldom for a"
    " bad contact."
)
_SWEPT_BRIEFLY_AWAY = Template(
    "Away from any band the signal follows the arm; it is disturbed by up to {brief:.0f} %, but too briefly"
    " or too seldom for a bad contact."
)
_WIRES = {Role.GROUND: say("the sensor ground"), Role.REFERENCE: say("the reference")}


def _named(wires: Sequence[Role]) -> Wording:
    return listed([_WIRES[role] for role in wires])


def moving_wires(seen: Seen, items: Sequence[Study]) -> tuple[Role, ...]:
    """Which of ground and reference plainly move in some of these records."""
    return tuple(
        role
        for role in _WIRES
        if (worst := seen.check(f"{role.value}_steadiness")) is not None
        and worst.result is Result.FAIL  # none moves more than that one
        and any(_moves(item, role) for item in items)
    )


def _moves(item: Study, role: Role) -> bool:
    return role in item.steady and steadiness_check(item, role).result is Result.FAIL


def brief_at_rest_v(seen: Seen, items: Sequence[Study]) -> float:
    """Largest change of the signal at rest in these records, in volts; 0 where it keeps its limit."""
    names = set(names_of(items))
    failed = [
        abs(check.value)
        for check in seen.checks
        if check.code == "rest_variation" and check.record in names and check.result is Result.FAIL
    ]
    return max(failed, default=0.0)


def brief_breakup_percent(seen: Seen, items: Sequence[Study]) -> float:
    """Largest break-up away from the bands in these records, in % of what is applied; 0 below the floor."""
    names = set(names_of(items))
    return max((_away_percent(seen, survey, names) for survey in seen.studies.tracks.values()), default=0.0)


def _away_percent(seen: Seen, survey: TrackSurvey, names: set[str]) -> float:
    low, high = survey.edges_percent[:-1], survey.edges_percent[1:]
    away = np.ones(len(low), dtype=np.bool_)
    for band in seen.sure_bands:
        near = band.travel.widened(BESIDE_PERCENT)
        if band.track is survey.role:
            away &= (high <= near.start) | (low >= near.stop)
    rows = [index for index, item in enumerate(survey.crossings) if item.record in names]
    most = float(np.nan_to_num(survey.breakup_percent[rows][:, away]).max(initial=0.0))
    return most if most > survey.floor_percent else 0.0
