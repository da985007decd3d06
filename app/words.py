"""The trade's words for roles, steps and shapes, ready for translation."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Capture, Channel, Role, Step
from analysis.captures.record_names import STEP_NAMES, called
from analysis.captures.record_names import record_names as names_of
from app.language import said


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
    return said(STEP_NAMES[step])


def record_names(capture: Capture) -> dict[str, str]:
    """What to call each record, by its name in the file: its step, numbered where there are several."""
    return {record: said(name) for record, name in names_of(capture).items()}


def said_of(capture: Capture | None, text: str) -> str:
    """A sentence of the analysis about a capture, its records by the names that the window gives them."""
    return said(called(text, names_of(capture)) if capture is not None else text)


def shape_name(shape: str) -> str:
    """The shape of an event."""
    return {
        "drop": _tr("drop"),
        "rise": _tr("rise"),
        "ringing": _tr("ringing"),
        "spike": _tr("spike"),
    }.get(shape, shape)
