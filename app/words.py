"""The trade's words for roles, steps and shapes, ready for translation."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Capture, Channel, Role, Step


def _tr(text: str) -> str:
    return QCoreApplication.translate("words", text)


def role_name(role: Role) -> str:
    """A role, as people say it."""
    return {
        Role.SIGNAL: _tr("Signal"),
        Role.SECOND_SIGNAL: _tr("Second signal"),
        Role.REFERENCE: _tr("Reference"),
        Role.GROUND: _tr("Ground"),
        Role.SUPPLY: _tr("Supply"),
    }[role]


def channel_name(channel: Channel) -> str:
    """A channel by its role, or by its own name where it has none."""
    return role_name(channel.role) if channel.role is not None else channel.name


def step_name(step: Step) -> str:
    """A step, as people say it."""
    return {
        Step.ZERO: _tr("Zero"),
        Step.CHECK: _tr("Check"),
        Step.GROUND: _tr("Ground"),
        Step.REFERENCE: _tr("Reference"),
        Step.WIGGLE: _tr("Wiggle"),
        Step.SWEEP: _tr("Sweep"),
        Step.HOLD: _tr("Hold"),
        Step.ROAD: _tr("Road"),
        Step.TAP: _tr("Tap"),
        Step.HEAT: _tr("Heat"),
        Step.COLD: _tr("Cold"),
        Step.WET: _tr("Wet"),
        Step.UNPLUGGED: _tr("Unplugged"),
    }[step]


def record_names(capture: Capture) -> dict[str, str]:
    """What to call each record, by its name in the file: its step, numbered where there are several."""
    names: dict[str, str] = {}
    steps = [record.step for record in capture.records]
    for place, record in enumerate(capture.records):
        word = step_name(record.step) if record.step is not None else _tr("Record")
        number = steps[: place + 1].count(record.step)
        names[record.name] = f"{word} {number}" if steps.count(record.step) > 1 else word
    return names


def shape_name(shape: str) -> str:
    """The shape of an event."""
    return {
        "drop": _tr("drop"),
        "rise": _tr("rise"),
        "ringing": _tr("ringing"),
        "spike": _tr("spike"),
    }.get(shape, shape)
