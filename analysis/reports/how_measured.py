"""How it was measured: recorder, wires and where they were probed, and what was done in each record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture, Channel, Record, Role
from analysis.captures.record_names import record_names
from analysis.reports.document import Table
from analysis.reports.pages import Block, Facts, Grid, Heading
from analysis.reports.quantities import NO_VALUE
from analysis.reports.subject import Subject
from analysis.wording import Template, Wording, joined, say

_RECORDER = (
    ("recorder", say("Recorder")),
    ("recorder_serial", say("Serial number")),
    ("recorder_calibrated", say("Calibrated")),
)
_WIRE_HEADS = (
    say("Wire"),
    say("Plug and pin"),
    say("Probed at"),
    say("Against"),
    say("Accuracy"),
)
_WIRE_SHARES = (1.6, 1.6, 1.5, 1.5, 2.2)
_RECORD_HEADS = (
    say("Record"),
    say("In file"),
    say("What was done"),
    say("State of the car"),
    say("What it showed"),
)
_STATE = 3
"""Column of the car's state, which is left out where it is the same for all."""

_RECORD_SHARES = (1.7, 0.9, 2.3, 2.5, 2.1)
_RECORD_SHARES_ALIKE = (1.7, 0.9, 3.3, 3.6)
_COMMON = (2, 3, 4)
"""Columns of the wires that are said once where they hold for all."""

_ROLES = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}


def how_measured(subject: Subject) -> Iterator[Block]:
    """The recorder and the wires, then the records; nothing of what the capture does not say."""
    capture = subject.capture
    rows = [(name, capture.text(key).strip()) for key, name in _RECORDER]
    states = {_state(item) for item in capture.records}
    if len(states) == 1:
        rows.append((say("State of the car"), states.pop()))
    rows.append((say("Load"), subject.fact("load")))
    alike, wires = _wires(capture)
    known = tuple((name, value) for name, value in (*rows, *alike) if value)
    if known or wires is not None:
        yield Heading(say("How it was measured"))
    if known:
        yield Facts(known)
    if wires is not None:
        yield wires
    if capture.records:
        outcomes = {item.record: item.text for item in subject.findings.record_outcomes}
        yield Heading(say("What was done in each record"))
        yield _records(capture, outcomes)


def _wires(capture: Capture) -> tuple[tuple[tuple[str, str], ...], Grid | None]:
    """What holds for every wire alike as facts, the rest as a table; none where no wire was probed."""
    wires = tuple(dict.fromkeys(_wire(channel) for item in capture.records for channel in item.channels))
    alike = [
        place for place in _COMMON if len({row[place] for row in wires}) == 1 and wires[0][place] != NO_VALUE
    ]
    facts = tuple((_WIRE_HEADS[place], wires[0][place]) for place in alike)
    left = [place for place in range(len(_WIRE_HEADS)) if place not in alike]
    if not wires:
        return facts, None
    heads = tuple(_WIRE_HEADS[place] for place in left)
    rows = tuple(tuple(row[place] for place in left) for row in wires)
    return facts, Grid(Table(heads, rows), tuple(_WIRE_SHARES[place] for place in left))


def _wire(channel: Channel) -> tuple[str, ...]:
    def said(key: str) -> str:
        return str(channel.attributes.get(key, "")).strip()

    role = _ROLES.get(channel.role, channel.name) if channel.role is not None else channel.name
    pin = " ".join(part for part in (said("connector"), said("pin")) if part)
    colour = said("wire_colour")
    return (
        joined([role, colour], ", "),
        pin or "–",
        known_word(said("probe_point")) or "–",
        known_word(said("return_point")) or "–",
        _accuracy(channel),
    )


def _accuracy(channel: Channel) -> str:
    if channel.gain_error is None or channel.offset_error_v is None:
        return say("not stated; assumed")
    return say(
        "±({gain_percent:g} % + {offset_mv:g} mV), stated",
        gain_percent=round(100.0 * channel.gain_error, 6),
        offset_mv=round(1e3 * channel.offset_error_v, 6),
    )


def _records(capture: Capture, outcomes: Mapping[str, str]) -> Grid:
    """What was done in each record, and what it showed; the car's state where it changed."""
    names = record_names(capture)
    rows = [_record(names[item.name], item, outcomes.get(item.name, NO_VALUE)) for item in capture.records]
    if len({row[_STATE] for row in rows}) > 1:
        return Grid(Table(_RECORD_HEADS, tuple(rows)), _RECORD_SHARES)
    heads, *others = (_without_state(row) for row in (_RECORD_HEADS, *rows))
    return Grid(Table(heads, tuple(others)), _RECORD_SHARES_ALIKE)


def _without_state(row: tuple[str, ...]) -> tuple[str, ...]:
    return (*row[:_STATE], *row[_STATE + 1 :])


def _record(name: str, record: Record, outcome: str) -> tuple[str, ...]:
    """Its name here and in the file, so that whoever opens the file finds it."""
    return (name, record.name, record.label.strip() or NO_VALUE, _state(record) or NO_VALUE, outcome)


def _state(record: Record) -> str:
    plugged = record.attributes.get("plugged")
    parts: list[Wording] = []
    if plugged is not None:
        parts.append(say("plugged in") if str(plugged) in ("1", "1.0") else say("unplugged"))
    for key, template in _STATES.items():
        given = record.attributes.get(key, "")
        value = f"{given:g}" if isinstance(given, float) else str(given).strip()
        if value:
            parts.append(template(value=known_word(value)))
    return joined(parts, ", ")


_STATES = {
    "ignition": Template("ignition {value}"),
    "engine": Template("engine {value}"),
    "loads": Template("load: {value}"),
    "temperature": Template("{value} °C"),
}
