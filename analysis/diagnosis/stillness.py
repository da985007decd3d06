"""Whether the arm was left alone in a record, by what the record was taken for and says of itself."""

from __future__ import annotations

from analysis.captures.model import Record, Step
from analysis.signals.facts import ArmPath

STILL_STEPS = frozenset(Step) - {Step.SWEEP, Step.ROAD}
"""Steps during which the arm is left alone, unless the record says that it was moved."""

CONDITIONS = frozenset({Step.TAP, Step.HEAT, Step.COLD, Step.WET})
"""Steps that say what was done to the sensor; the arm may have been swept meanwhile."""

MOVED = frozenset({"by hand", "suspension", "road"})
"""What a record's ``moved`` says of an arm that was moved."""


def said_to_move(record: Record) -> bool:
    """Whether a record is said to be one of an arm that moves, by its step or its ``moved``."""
    return record.step in (Step.SWEEP, Step.ROAD) or str(record.attributes.get("moved", "")) in MOVED


def left_alone(record: Record) -> bool:
    """Whether the arm was left alone: a step at rest, and no sweep of a tapped, warm or wet sensor."""
    swept = record.step in CONDITIONS and said_to_move(record)
    return record.step in STILL_STEPS and not swept


SURE_REST_PERCENT = 2.0
"""Standard uncertainty of an arm at rest up to which its place is told: a dot on the track is as wide."""


def stands(record: Record, path: ArmPath) -> bool:
    """Whether the arm was left alone, and where it stood is known well enough to be told."""
    unsure_percent = path.uncertainty_percent
    return left_alone(record) and bool(len(unsure_percent)) and unsure_percent.max() <= SURE_REST_PERCENT
