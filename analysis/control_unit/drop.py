"""How far the signal lies below or above what belongs to the arm's place, at one moment."""

from __future__ import annotations

import numpy as np

from analysis.captures.model import Record, Role
from analysis.control_unit.stand_in import sound_sensor_v
from analysis.diagnosis.findings import Findings

_LEAST_DROP_V = 0.1
"""2 % of the usual supply: less may be the width of an increment of travel, and neither drop nor rise."""


def drop_at(findings: Findings, record: Record, time_s: float, signal_v: float) -> tuple[float, float] | None:
    """How far a reading of the signal lies below what belongs to the arm's place, and what belongs there.

    Where a control unit pulls its input up, a lost contact lets the signal rise instead.

    Parameters
    ----------
    findings : Findings
        For the arm's path, and for how its bands turn travel into volts.
    record : Record
        That was read.
    time_s : float
        When, in seconds of the record.
    signal_v : float
        What the signal read then.

    Returns
    -------
    tuple of (float, float) or None
        Both in volts, the first negative where the signal lies above; None where it is neither drop nor
        rise, the arm's path is not known, or no band says how travel becomes volts.
    """
    if not any(item.track is Role.SIGNAL for item in findings.bands):
        return None
    sound = sound_sensor_v(findings, record, Role.SIGNAL)
    if sound is None:
        return None
    belongs_v = float(np.interp(time_s, *sound))
    drop_v = belongs_v - signal_v
    return (drop_v, belongs_v) if abs(drop_v) >= _LEAST_DROP_V else None
