"""A reading, its uncertainty and its limit become a check (JCGM 100, JCGM 106)."""

from __future__ import annotations

from analysis.captures.model import Channel, Record, Role, Step
from analysis.diagnosis.conformance import conformance_of, decide
from analysis.diagnosis.findings import Check
from analysis.diagnosis.profile_model import Limit
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.several import Share
from analysis.signals.uncertainty import combined, expanded, resolution_uncertainty, standard_uncertainty


def level_uncertainty(channel: Channel, level_v: float, spread_v: float = 0.0) -> float:
    """Expanded uncertainty (k = 2) of a level, in volts.

    The recorder's step and, where stated, its gain and offset errors as rectangular distributions
    (JCGM 100, 4.3.7 and F.2.2.1), and `spread_v`, the standard deviation of repeated levels.
    """
    parts = [resolution_uncertainty(channel.step_v), spread_v]
    if channel.gain_error is not None:
        parts.append(standard_uncertainty(abs(level_v) * channel.gain_error, distribution="rectangular"))
    if channel.offset_error_v is not None:
        parts.append(standard_uncertainty(channel.offset_error_v, distribution="rectangular"))
    return expanded(combined(*parts))


def reading_of(
    item: Study, role: Role, level_v: float, *, sensitivity: float = 1.0, spread_v: float = 0.0
) -> tuple[Share, ...]:
    """A reading of one record's channel as a share of a result; empty where the record has no such channel.

    A recorder of one channel is moved from wire to wire, so all its readings come from one input; of a
    recorder of several each wire has its own.
    """
    channel = item.record.channel(role)
    if channel is None:
        return ()
    source = role.value if len(item.record.channels) > 1 else "the one probe"
    return (Share(channel, level_v, sensitivity, source, spread_v),)


def departure_of(
    item: Study, role: Role, departure_v: float, *, sensitivity: float = 1.0, spread_v: float = 0.0
) -> tuple[Share, ...]:
    """How far a channel left its own level, as shares of a result: two readings of one input.

    Its offset cancels, its gain error counts with the departure alone, and each reading has its rounding.
    """
    return (
        *reading_of(item, role, departure_v, sensitivity=sensitivity, spread_v=spread_v),
        *reading_of(item, role, 0.0, sensitivity=-sensitivity),
    )


def feed_of(studies: Studies, item: Study, role: Role, *, sensitivity: float) -> tuple[Share, ...]:
    """The ground or the reference that a record's volts are held against, as a share of a result.

    Read in the record itself or else where the capture read it; empty where it never did: volts are then
    against the recorder's return, or of a nominal feed, and the chain of evidence says so.
    """
    level_v = studies.feed.ground_v if role is Role.GROUND else studies.feed.reference_v
    others = (other for other in studies.with_channel(role) if not unplugged(other.record))
    for held in (item, *others):
        found = reading_of(held, role, level_v, sensitivity=sensitivity)
        if found:
            return found
    return ()


def unplugged(record: Record) -> bool:
    """Whether the sensor was unplugged: by the step, or by what the record states."""
    plugged = record.attributes.get("plugged", 1)
    return record.step is Step.UNPLUGGED or str(plugged) in ("0", "0.0")


def decided(
    code: str, title: str, record: str, value: float, uncertainty: float, unit: str, limit: Limit
) -> Check:
    """A check of a reading in `unit` with its expanded uncertainty (k = 2) against a limit in that unit."""
    result = decide(value, uncertainty, lower=limit.lower, upper=limit.upper)
    conformance = conformance_of(value, uncertainty, lower=limit.lower, upper=limit.upper)
    return Check(
        code,
        record,
        value,
        uncertainty,
        unit,
        limit.lower,
        limit.upper,
        result,
        limit.source,
        title,
        conformance,
    )
