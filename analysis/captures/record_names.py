"""What a record is called where people read of it: by its step, in the window and on paper alike.

Sentences of the analysis hold a record by its name in the file, as programs do: ``"record 004"``. Whoever
shows one to people hands it to `called` with the names of its capture, and it says ``"Sweep 2"``.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from analysis.captures.model import Capture, Step
from analysis.wording import Template, Wording, joined, say

STEP_NAMES = {
    Step.ZERO: say("Zero"),
    Step.CHECK: say("Check"),
    Step.GROUND: say("Ground"),
    Step.REFERENCE: say("Reference"),
    Step.WIGGLE: say("Wiggle"),
    Step.SWEEP: say("Sweep"),
    Step.HOLD: say("Hold"),
    Step.ROAD: say("Road"),
    Step.TAP: say("Tap"),
    Step.HEAT: say("Heat"),
    Step.COLD: say("Cold"),
    Step.WET: say("Wet"),
    Step.UNPLUGGED: say("Unplugged"),
}
"""The steps, as people say them."""

_WITHOUT_STEP = say("Record")

_NUMBERED = Template("{word} {number:d}")
_UNBROKEN = Template("{word}\N{NO-BREAK SPACE}{number:d}")
"""In a narrow cell a number stays with its word."""

_RUN = Template("{first}–{last:d}")

_WITHIN = Template("record {record}")
_AT_FIRST = Template("Record {record}")
_ALONE = Template("{record}")
_NONE = "\N{EN DASH}"
_REFERENCES = {template.text for template in (_WITHIN, _AT_FIRST, _ALONE)}

Names = Mapping[str, Wording]


def record_names(capture: Capture) -> dict[str, Wording]:
    """What to call each record, by its name in the file: its step, numbered where there are several.

    Parameters
    ----------
    capture : Capture
        With what a review says of its records, and not divided into their spans.

    Returns
    -------
    dict
        No two alike; empty for a capture without records.
    """
    steps = [record.step for record in capture.records]
    return {
        record.name: record_name(
            record.step, steps[: place + 1].count(record.step) if steps.count(record.step) > 1 else 0
        )
        for place, record in enumerate(capture.records)
    }


def record_name(step: Step | None, number: int) -> Wording:
    """``"Sweep 2"``; the step alone where `number` is 0, for the only one of its kind."""
    word = STEP_NAMES[step] if step is not None else _WITHOUT_STEP
    return _NUMBERED(word=word, number=number) if number else word


def number_of(name: Wording) -> int:
    """Which of several of its kind a record is by its name; 0 for the only one."""
    return int(name.values["number"]) if name.template == _NUMBERED.text else 0


def the_record(record: str) -> Wording:
    """A record within a sentence by its name in the file, until it is `called`: ``"record 004"``."""
    return _WITHIN(record=record)


def record_at_first(record: str) -> Wording:
    """As `the_record`, where a line begins with it."""
    return _AT_FIRST(record=record)


def record_alone(record: str) -> Wording:
    """As `the_record`, where the word "record" stands already: ``"004"``."""
    return _ALONE(record=record)


def records_in_row(records: Sequence[str]) -> Wording:
    """Several within a sentence: ``"record 004, 005"``; empty for none."""
    return joined([*map(the_record, records[:1]), *map(record_alone, records[1:])], ", ")


def called(text: str, names: Names) -> str:
    """A sentence with its records by the names that people read.

    Parameters
    ----------
    text : str
        With or without a record in it; what is no `Wording` is somebody's own words and stays as it is.
    names : mapping of str to Wording
        As `record_names` gives them. A record that is not there keeps its name in the file.

    Returns
    -------
    str
        The same object where no record is named in it.
    """
    if not isinstance(text, Wording):
        return text
    if text.template in _REFERENCES:
        return names.get(str(text.values["record"]), text)
    values = {
        name: called(value, names) if isinstance(value, Wording) else value
        for name, value in text.values.items()
    }
    if all(values[name] is value for name, value in text.values.items()):
        return text
    return Wording(text.template, values)


def names_in_row(records: Sequence[str], names: Names) -> str:
    """Records in a table's cell, runs of three and more shortened: ``"Ground, Sweep 1–3"``.

    Parameters
    ----------
    records : sequence of str
        By their names in the file, which stand for those that `names` does not have.
    names : mapping of str to Wording

    Returns
    -------
    str
        A dash for none; "all" where it is every one of several.
    """
    if len(names) > 1 and set(names) <= set(records):
        return say("all")
    runs: list[list[Wording]] = []
    for record in records:
        name = names.get(record, record_alone(record))
        if runs and _follows(name, runs[-1][-1]):
            runs[-1].append(name)
        else:
            runs.append([name])
    parts = [part for run in runs for part in _shortened(run)]
    return joined(parts, ", ") or _NONE


def _shortened(run: list[Wording]) -> list[Wording]:
    whole = [_UNBROKEN(**name.values) if number_of(name) else name for name in run]
    return whole if len(run) < 3 else [_RUN(first=whole[0], last=number_of(run[-1]))]


def _follows(name: Wording, before: Wording) -> bool:
    alike = name.values.get("word", name) == before.values.get("word", before)
    return alike and number_of(name) == number_of(before) + 1
