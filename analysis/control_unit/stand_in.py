"""What a sound sensor on the same arm would have read, to stand in for the other side of the axle.

Where the other side was not recorded, a comparison can still be tried on the wheel that was, if both wheels
are taken to have moved alike. The volts go with travel as they do in the capture's own bands, or as the
examination took them where there is none.
"""

from __future__ import annotations

import numpy as np

from analysis.captures.model import Record, Role
from analysis.control_unit.debounce import Floats
from analysis.control_unit.replay import Replay, replay
from analysis.control_unit.rules import ControlUnit
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.progress import Tick, ignore

_SUPPLY_V = 5.0
"""Volts of the whole travel where the findings do not say."""


def replay_record(
    record: Record,
    findings: Findings | None,
    profile: SensorProfile,
    unit: ControlUnit,
    tick: Tick = ignore,
) -> Replay | None:
    """Run a record through a control unit, compared with its second track or with a stand-in.

    Parameters
    ----------
    record : Record
        Of the capture that `findings` speak of.
    findings : Findings or None
        For the stand-in; without them a sensor with one track is compared with nothing.
    profile : SensorProfile
        Says whether the sensor has a second track.
    unit : ControlUnit
        Whose rules.
    tick : Tick
        Progress.

    Returns
    -------
    Replay or None
        None for a record without a signal.

    Raises
    ------
    ControlUnitError, CaptureError
        As `analysis.control_unit.replay.replay`.
    """
    channel = record.channel(Role.SIGNAL)
    if channel is None:
        return None
    other = record.channel(Role.SECOND_SIGNAL) if profile.second_track is not None else None
    stand_in = sound_sensor_v(findings, record, Role.SIGNAL) if findings is not None else None
    return replay(record, channel, unit, other=other, stand_in_v=stand_in, tick=tick)


def sound_sensor_v(findings: Findings, record: Record, role: Role) -> tuple[Floats, Floats] | None:
    """Times and volts of a sound sensor that moves as this one does.

    Parameters
    ----------
    findings : Findings
        For the arm's path.
    record : Record
        Which record.
    role : Role
        Which track.

    Returns
    -------
    tuple of two ndarrays, shape (n_nodes,), or None
        Seconds and volts; None where the arm's path through the record is not known.
    """
    survey = next((item for item in findings.surveys if item.role is role), None)
    path = survey.path(record.name) if survey is not None else None
    if path is None:
        return None
    band = next((item for item in findings.bands if item.track is role and item.travel.length > 0.0), None)
    if band is None:
        whole_v = (findings.basis.feed_v if findings.basis is not None else 0.0) or _SUPPLY_V
        return path.time_s, np.asarray(path.travel_percent * whole_v / 100.0, dtype=np.float64)
    slope = (band.volts.stop - band.volts.start) / band.travel.length
    volts_v = band.volts.start + slope * (path.travel_percent - band.travel.start)
    return path.time_s, np.asarray(volts_v, dtype=np.float64)
