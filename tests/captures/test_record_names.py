"""One name for a record: by its step where people read, by its name in the file where programs do."""

from __future__ import annotations

import pickle
from collections.abc import Sequence

import pytest

from analysis.captures.model import Capture, Record, Step
from analysis.captures.record_names import (
    STEP_NAMES,
    called,
    names_in_row,
    record_alone,
    record_at_first,
    record_names,
    records_in_row,
    the_record,
)
from analysis.wording import joined, say
from app.reporting.languages import report_language

STEPS = (Step.GROUND, Step.SWEEP, None, Step.SWEEP, Step.SWEEP, Step.HOLD, None)


def capture(steps: Sequence[Step | None] = STEPS) -> Capture:
    records = [Record(f"{place:03}", 1e-3, (), step=step) for place, step in enumerate(steps, start=1)]
    return Capture("an id", tuple(records))


NAMES = record_names(capture())


def test_a_record_is_called_by_its_step_and_numbered_where_there_are_several() -> None:
    assert list(NAMES.values()) == ["Ground", "Sweep 1", "Record 1", "Sweep 2", "Sweep 3", "Hold", "Record 2"]
    assert set(STEP_NAMES) == set(Step)
    assert record_names(capture(())) == {}


def test_no_two_records_of_a_capture_are_called_alike() -> None:
    assert len(set(NAMES.values())) == len(STEPS)


def test_programs_read_the_name_in_the_file_and_people_what_the_record_is_called() -> None:
    sentence = say("It was seen in {record}.", record=the_record("004"))
    assert sentence == "It was seen in record 004."
    assert called(sentence, NAMES) == "It was seen in Sweep 2."
    line = say("{record}: again.", record=record_at_first("001"))
    assert (line, called(line, NAMES)) == ("Record 001: again.", "Ground: again.")
    row = records_in_row(("002", "006"))
    assert (row, called(row, NAMES)) == ("record 002, 006", "Sweep 1, Hold")
    assert called(record_alone("006"), NAMES) == "Hold"


def test_a_record_is_named_however_deep_in_a_sentence_it_stands_and_other_words_stay() -> None:
    inner = joined([say("well"), say("at {place}", place=the_record("002"))], ", ")
    deep = say("{one} and {two}", one=inner, two="record 002")
    assert called(deep, NAMES) == "well, at Sweep 1 and record 002"
    plain = say("{one} of {two}", one=say("none"), two=3)
    assert called(plain, NAMES) is plain
    assert called("record 002", NAMES) == "record 002"
    assert called(the_record("099"), NAMES) == "record 099"


def test_names_are_said_in_german_with_their_sentence_and_go_to_another_process() -> None:
    german = report_language("de").say
    assert german(called(the_record("004"), NAMES)) == "Durchlauf 2"
    assert german(called(the_record("099"), NAMES)) == "Aufzeichnung 099"
    assert (
        german(names_in_row(("002", "004", "005"), NAMES)).replace("\N{NO-BREAK SPACE}", " ")
        == "Durchlauf 1–3"
    )
    assert pickle.loads(pickle.dumps(NAMES)) == NAMES


@pytest.mark.parametrize(
    ("items", "text"),
    [
        ((), "–"),
        (("001",), "Ground"),
        (("002", "004"), "Sweep 1, Sweep 2"),
        (("001", "002", "004", "005", "006"), "Ground, Sweep 1–3, Hold"),
        (("005", "004", "002"), "Sweep 3, Sweep 2, Sweep 1"),
        (("003", "004"), "Record 1, Sweep 2"),
        (("099", "001"), "099, Ground"),
        (tuple(NAMES), "all"),
    ],
)
def test_runs_of_records_are_shortened(items: tuple[str, ...], text: str) -> None:
    row = names_in_row(items, NAMES)
    assert row.replace("\N{NO-BREAK SPACE}", " ") == text
    assert row == text.replace(" ", "\N{NO-BREAK SPACE}").replace(",\N{NO-BREAK SPACE}", ", ")
