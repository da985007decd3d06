"""A reading, its uncertainty and its limit become a check (JCGM 100, JCGM 106)."""

from __future__ import annotations

from analysis.captures.model import Channel, Record, Step
from analysis.diagnosis.conformance import conformance_of, decide
from analysis.diagnosis.findings import Check
from analysis.diagnosis.profile_model import Limit
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
