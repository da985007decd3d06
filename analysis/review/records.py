"""What the technician says of records and spans of them: steps, roles, probe points, conditions.

The capture is never changed. What is said lies in the review, and a view of the capture with it applied is
what is shown and examined. In the review file, one object for each record or span::

    {"record": "001", "start_s": 1.2, "stop_s": 3.4,
     "words": {"step": "sweep", "ignition": "on"},
     "channels": {"signal": {"role": "signal", "probe_point": "sensor end"}}}

Times are there for a span alone; an empty text takes away what the file says. Words that are not known here
are kept, and change nothing.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from analysis.captures.model import Capture, Channel, Record, Role, Step
from analysis.captures.spans import span_of
from analysis.diagnosis.findings import Part
from analysis.diagnosis.splitting import ONE_WIRE
from analysis.errors import ReviewError
from analysis.exposure.from_record import SPEED_KEY
from analysis.exposure.road_test import DISTANCE_KEY
from analysis.intervals import Interval
from analysis.wording import plural, say

CONDITIONS = ("plugged", "ignition", "engine", "loads", "moved", "temperature")
"""Attributes of a record that say under which conditions it was taken."""

DRIVEN = (DISTANCE_KEY, SPEED_KEY)
"""Attributes of a record taken on a road that say how far and how fast was driven."""

PROBED = ("probe_point", "return_point")
"""Attributes of a channel that say where its probe sat."""

LEFT_OUT = "rest"
"""Word of a record whose stretches outside its spans are not examined."""

_LEAST_REST_S = 0.1
"""A stretch beside the spans that is shorter says nothing: a hand takes longer to do anything."""


@dataclass(frozen=True, slots=True)
class RecordEdit:
    """What is said of one record, or of one span of it.

    Parameters
    ----------
    record : str
        Name of the record.
    time : Interval or None
        The span, in the record's seconds; None for the whole record.
    words : mapping of str to str
        Of the record: ``step``, ``label``, `CONDITIONS` and `DRIVEN`.
    channels : mapping of str to mapping
        By the channel's name: ``role`` and `PROBED`.
    kept : mapping
        Unknown keys.
    """

    record: str
    time: Interval | None = None
    words: Mapping[str, str] = field(default_factory=dict)
    channels: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    kept: Mapping[str, Any] = field(default_factory=dict)


Edits = tuple[RecordEdit, ...]


def edit_of(edits: Edits, record: str, time: Interval | None = None) -> RecordEdit:
    """What is said of a record or span; an edit that says nothing where there is none."""
    found = (item for item in edits if item.record == record and item.time == time)
    return next(found, RecordEdit(record, time))


def spans_of(edits: Edits, record: str) -> tuple[RecordEdit, ...]:
    """What is said of spans of a record, in order of time."""
    spans = [(item.time.start, item) for item in edits if item.record == record and item.time is not None]
    return tuple(item for _, item in sorted(spans, key=lambda pair: pair[0]))


def with_edit(edits: Edits, edit: RecordEdit) -> Edits:
    """The edits with this one in the place of what was said of its record or span."""
    place = next(
        (i for i, item in enumerate(edits) if (item.record, item.time) == (edit.record, edit.time)), None
    )
    if place is None:
        return (*edits, edit)
    return (*edits[:place], edit, *edits[place + 1 :])


def with_word(
    edits: Edits, record: str, key: str, value: str, *, time: Interval | None = None, channel: str = ""
) -> Edits:
    """The edits with one word said of a record or span, or of one channel in it.

    Parameters
    ----------
    edits : tuple of RecordEdit
    record, key, value : str
        `value` may be empty: it is unknown, whatever the file says.
    time : Interval or None
        The span; None for the whole record.
    channel : str
        Name of the channel; empty for the record.
    """
    edit = edit_of(edits, record, time)
    if not channel:
        return with_edit(edits, replace(edit, words={**edit.words, key: value}))
    said = {**edit.channels.get(channel, {}), key: value}
    return with_edit(edits, replace(edit, channels={**edit.channels, channel: said}))


def without_span(edits: Edits, record: str, time: Interval) -> Edits:
    """The edits with nothing said of a span; of a record without spans nothing is left out any more."""
    left = tuple(item for item in edits if (item.record, item.time) != (record, time))
    if spans_of(left, record):
        return left
    whole = edit_of(left, record)
    words = {key: value for key, value in whole.words.items() if key != LEFT_OUT}
    return with_edit(left, replace(whole, words=words)) if words != whole.words else left


def split_accepted(edits: Edits, record: Record, parts: Sequence[Part]) -> Edits:
    """The edits with a proposed splitting taken over: a span each, and the air between them left out."""
    for part in parts:
        words = {"step": str(part.step or "")}
        channels = {record.channels[0].name: {"role": str(part.role or "")}}
        edits = with_edit(edits, RecordEdit(record.name, part.time, words, channels))
    return with_word(edits, record.name, LEFT_OUT, "left out")


def split_refused(edits: Edits, record: Record) -> Edits:
    """The edits with a record said to be of one wire."""
    return with_word(edits, record.name, ONE_WIRE, "yes")


def edits_told(edits: Edits) -> tuple[str, ...]:
    """A line that says of how many records the review's words hold; empty where it says nothing of any."""
    told = {item.record for item in edits if item.words or item.channels or item.time is not None}
    if not told:
        return ()
    return (
        plural(
            "Steps, roles, probe points and conditions of {count} record: as its review says, where that"
            " differs from the file.",
            "Steps, roles, probe points and conditions of {count} records: as their review says, where that"
            " differs from the file.",
            count=len(told),
        ),
    )


def edited(capture: Capture, edits: Edits) -> Capture:
    """The capture with what is said of whole records; the same value where nothing is.

    Parameters
    ----------
    capture : Capture
        As recorded. Its samples are not touched.
    edits : tuple of RecordEdit
        Those of records that it does not have change nothing.
    """
    said = {item.record: item for item in edits if item.time is None}
    records = tuple(
        _said(record, said[record.name]) if record.name in said else record for record in capture.records
    )
    return replace(capture, records=records) if records != capture.records else capture


def divided(capture: Capture, edits: Edits) -> Capture:
    """The capture with spans that have words of their own as records of their own, for the examination.

    They keep the name of their record. What lies beside them stays as it is, unless it is left out. Where
    spans overlap, the one that begins later holds from its beginning.

    Parameters
    ----------
    capture : Capture
        As `edited` gives it.
    edits : tuple of RecordEdit
    """
    if not any(item.time is not None for item in edits):
        return capture
    records = tuple(part for record in capture.records for part in _parts(record, edits))
    return replace(capture, records=records)


def _parts(record: Record, edits: Edits) -> list[Record]:
    spans = spans_of(edits, record.name)
    if not spans:
        return [record]
    keep_rest = not edit_of(edits, record.name).words.get(LEFT_OUT)
    least = max(round(_LEAST_REST_S / record.sample_interval_s), 2)
    cuts = [_samples(record, item.time) for item in spans if item.time is not None]
    parts: list[Record] = []
    done = 0
    for place, (item, (start, stop)) in enumerate(zip(spans, cuts, strict=True)):
        stop = min(stop, cuts[place + 1][0]) if place + 1 < len(cuts) else stop
        if keep_rest and start - done >= least:
            parts.append(span_of(record, done, start, step=record.step, role=None))
        if stop > start:
            parts.append(_said(span_of(record, start, stop, step=record.step, role=None), item))
        done = max(done, stop)
    if keep_rest and len(record) - done >= least:
        parts.append(span_of(record, done, len(record), step=record.step, role=None))
    return parts


def _samples(record: Record, time: Interval) -> tuple[int, int]:
    first, last = (
        round((moment - record.first_sample_s) / record.sample_interval_s)
        for moment in (time.start, time.stop)
    )
    return min(max(first, 0), len(record)), min(max(last, 0), len(record))


def _said(record: Record, edit: RecordEdit) -> Record:
    words = dict(edit.words)
    step = _step(words.pop("step", None), record.step)
    label = words.pop("label", record.label)
    channels = tuple(_said_of_channel(item, edit.channels.get(item.name, {})) for item in record.channels)
    attributes = _with_words(record.attributes, words)
    return replace(record, step=step, label=label, channels=channels, attributes=attributes)


def _said_of_channel(channel: Channel, said: Mapping[str, str]) -> Channel:
    if not said:
        return channel
    words = dict(said)
    role = _role(words.pop("role", None), channel.role)
    return replace(channel, role=role, attributes=_with_words(channel.attributes, words))


def _step(word: str | None, otherwise: Step | None) -> Step | None:
    if word == "":
        return None
    return Step(word) if word in tuple(Step) else otherwise


def _role(word: str | None, otherwise: Role | None) -> Role | None:
    if word == "":
        return None
    return Role(word) if word in tuple(Role) else otherwise


def _with_words(attributes: Mapping[str, str | float], words: Mapping[str, str]) -> Mapping[str, str | float]:
    if not words:
        return attributes
    joint = {**attributes, **{key: _as_stored(key, value) for key, value in words.items()}}
    return {key: value for key, value in joint.items() if value != ""}


def _as_stored(key: str, value: str) -> str | float:
    """As a capture file holds it: degrees Celsius, kilometres and their number an hour are numbers."""
    if key not in ("temperature", *DRIVEN):
        return value
    try:
        return float(value.replace(",", "."))
    except ValueError:
        return value


def records_objects(edits: Edits) -> list[Mapping[str, Any]]:
    """What is said of records, as it is stored; what says nothing is not."""
    return [_object(item) for item in edits if item.words or item.channels or item.time or item.kept]


def parse_records(stored: object) -> Edits:
    """Read what is said of records; nothing where it is absent.

    Raises
    ------
    ReviewError
        Where it is damaged.
    """
    if stored is None:
        return ()
    if not isinstance(stored, list):
        raise _damaged()
    return tuple(_parsed(item) for item in stored)


def _object(edit: RecordEdit) -> Mapping[str, Any]:
    time = {"start_s": edit.time.start, "stop_s": edit.time.stop} if edit.time is not None else {}
    channels = {name: dict(said) for name, said in edit.channels.items()}
    return {**edit.kept, "record": edit.record, **time, "words": dict(edit.words), "channels": channels}


def _parsed(stored: object) -> RecordEdit:
    if not isinstance(stored, dict) or not isinstance(stored.get("record"), str):
        raise _damaged()
    left = dict(stored)
    record, words = left.pop("record"), _texts(left.pop("words", {}))
    channels = left.pop("channels", {})
    if not isinstance(channels, dict):
        raise _damaged()
    start, stop = left.pop("start_s", None), left.pop("stop_s", None)
    time = None
    if start is not None or stop is not None:
        if not all(type(item) in (int, float) for item in (start, stop)) or not start <= stop:
            raise _damaged()
        time = Interval(float(start), float(stop))
    return RecordEdit(record, time, words, {name: _texts(said) for name, said in channels.items()}, left)


def _texts(stored: object) -> Mapping[str, str]:
    if not isinstance(stored, dict) or not all(isinstance(value, str) for value in stored.values()):
        raise _damaged()
    return stored


def _damaged() -> ReviewError:
    return ReviewError(
        say("what the review says of records is damaged"), say("begin a new review; the file is kept aside")
    )
