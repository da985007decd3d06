"""How it was measured: recorder, wires and where they were probed, and what was done in each record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture, Channel, Record, Role, Step
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
_COMMON = (2, 3, 4)
"""Columns of the wires that are said once where they hold for all."""

_ROLES = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}
_STEPS = {
    Step.ZERO: say("zero"),
    Step.CHECK: say("check"),
    Step.GROUND: say("ground"),
    Step.REFERENCE: say("reference"),
    Step.WIGGLE: say("wiggle"),
    Step.SWEEP: say("sweep"),
    Step.HOLD: say("hold"),
    Step.ROAD: say("road"),
    Step.TAP: say("tap"),
    Step.HEAT: say("heat"),
    Step.COLD: say("cold"),
    Step.WET: say("wet"),
    Step.UNPLUGGED: say("unplugged"),
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
        yield _records(capture.records, outcomes)


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


def _records(records: Sequence[Record], outcomes: Mapping[str, str]) -> Grid:
    """What was done in each record, and what it showed; the car's state where it changed."""
    rows = [_record(item, outcomes.get(item.name, "–")) for item in records]
    heads = (say("Record"), say("What was done"), say("State of the car"), say("What it showed"))
    if len({row[2] for row in rows}) == 1:
        rows = [(row[0], row[1], row[3]) for row in rows]
        return Grid(Table((heads[0], heads[1], heads[3]), tuple(rows)), (0.8, 4.4, 4.0))
    return Grid(Table(heads, tuple(rows)), (0.8, 2.8, 3.2, 2.6))


def _record(record: Record, outcome: str) -> tuple[str, ...]:
    step = _STEPS.get(record.step, "") if record.step is not None else ""
    label = record.label.strip()
    repeated = record.step is not None and label.lower().startswith(record.step.value)
    done = label if repeated else joined([step, label], ": ")
    return (record.name, done or "–", _state(record) or "–", outcome)


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
