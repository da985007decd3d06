"""Whether two signals come from one sensor, as far as a file says."""

from __future__ import annotations

from analysis.captures.model import Record, Role


def on_one_arm(record: Record) -> bool:
    """Whether both signals of a record come from one sensor, as far as the file says.

    Two sensors of one axle, each with a mounting and a plug of its own, move together only until a wheel
    goes its own way.
    """
    pair = [record.channel(role) for role in (Role.SIGNAL, Role.SECOND_SIGNAL)]
    if any(channel is None for channel in pair):
        return False
    for key in ("mounting", "connector"):
        told = {
            str(channel.attributes.get(key, "")).strip().lower() for channel in pair if channel is not None
        }
        if len(told - {""}) > 1 or (key == "mounting" and len(told) > 1):
            return False
    return True
