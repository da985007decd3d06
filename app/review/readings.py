"""What every channel read at one moment, and where the arm was."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.captures.model import Channel, Record, Role
from analysis.diagnosis.findings import TrackSurvey


@dataclass(frozen=True, slots=True)
class Reading:
    """All channels of a record at one sample.

    Parameters
    ----------
    time_s : float
        Time of the sample.
    volts : tuple of (Channel, float)
        In the order of `in_role_order`; NaN where a sample is missing.
    travel_percent : float or None
        Where the arm was found to be; before that is found out, what the channels' ratio says; else unknown.
    track : Role
        Whose travel that is: the second track of a sensor has an electrical travel of its own.
    """

    time_s: float
    volts: tuple[tuple[Channel, float], ...]
    travel_percent: float | None
    track: Role = Role.SIGNAL


def read_at(record: Record, moment_s: float, survey: TrackSurvey | None) -> Reading:
    """Read the sample nearest to a moment.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    """
    if not len(record):
        return Reading(moment_s, (), None)
    index = record.index_at(moment_s)
    values = tuple((channel, _one(channel, index)) for channel in in_role_order(record.channels))
    time_s = record.first_sample_s + index * record.sample_interval_s
    track = survey.role if survey is not None else Role.SIGNAL
    return Reading(time_s, values, travel_at(record, time_s, survey, values), track)


def in_role_order(channels: tuple[Channel, ...]) -> tuple[Channel, ...]:
    """Channels as they are always shown: tracks first, whatever the file's order, and the nameless last."""
    order = {role: place for place, role in enumerate(Role)}
    return tuple(sorted(channels, key=lambda item: order[item.role] if item.role else len(order)))


def travel_at(
    record: Record,
    moment_s: float,
    survey: TrackSurvey | None,
    values: tuple[tuple[Channel, float], ...] = (),
) -> float | None:
    """Where the arm was at a moment, in % of travel, or None where that cannot be told."""
    if survey is not None:  # a signal that breaks up says of no sample where the arm is
        return survey.whereabouts(record.name, moment_s)
    by_role = {channel.role: value for channel, value in values if channel.role is not None}
    signal_v, reference_v = by_role.get(Role.SIGNAL), by_role.get(Role.REFERENCE)
    if signal_v is None or reference_v is None:
        return None
    ground_v = by_role.get(Role.GROUND, 0.0)
    applied_v = reference_v - ground_v
    travel = 100.0 * (signal_v - ground_v) / applied_v if applied_v > 0.5 else float("nan")
    return travel if travel == travel else None


def _one(channel: Channel, index: int) -> float:
    voltage_v = channel.volts(index, index + 1)
    return float(voltage_v[0]) if voltage_v.size else float("nan")
