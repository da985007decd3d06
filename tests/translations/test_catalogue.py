"""The catalogues as they are committed: whole, and alike in everything that is no word."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from analysis.wording import ENGLISH, listed, say
from app.translations.__main__ import updated
from app.translations.catalogue import (
    ANALYSIS,
    TONGUES,
    Message,
    State,
    catalogue_path,
    load_language,
    read_messages,
    write_messages,
)
from app.translations.extract import field_names, free_text, messages_of_sources

CODES = [code for code in TONGUES if code != ENGLISH.code]
HINT = "run: python -m app.translations, then translate what it lists as unfinished"


@cache
def _messages(code: str) -> tuple[Message, ...]:
    return read_messages(catalogue_path(code))


@cache
def _wanted() -> tuple[Message, ...]:
    return messages_of_sources()


@pytest.mark.parametrize("code", CODES)
def test_no_text_is_missing(code: str) -> None:
    missing = {item.key for item in _wanted()} - {item.key for item in _messages(code)}

    assert not missing, HINT


@pytest.mark.parametrize("code", CODES)
def test_no_text_is_unfinished(code: str) -> None:
    unfinished = [
        item for item in _messages(code) if item.state is State.UNFINISHED or not item.translation.strip()
    ]

    assert not unfinished, HINT


@pytest.mark.parametrize("code", CODES)
def test_no_text_is_left_that_nobody_says(code: str) -> None:
    gone = {item.key for item in _messages(code)} - {item.key for item in _wanted()}

    assert not gone, "run: python -m app.translations --drop"


@pytest.mark.parametrize("code", CODES)
def test_every_text_stands_once(code: str) -> None:
    keys = [item.key for item in _messages(code)]

    assert len(keys) == len(set(keys))


@pytest.mark.parametrize("code", CODES)
def test_fields_are_the_same_in_both_languages(code: str) -> None:
    different = [
        item for item in _messages(code) if field_names(item.source) != field_names(item.translation)
    ]

    assert different == []


@pytest.mark.parametrize("sign", ["…", "%", "\n", "&", ";;", "<", ">", "±", "°"])
@pytest.mark.parametrize("code", CODES)
def test_signs_are_as_many_in_both_languages(code: str, sign: str) -> None:
    different = [
        item
        for item in _messages(code)
        if free_text(item.source).count(sign) != free_text(item.translation).count(sign)
    ]

    assert different == []


@pytest.mark.parametrize("code", CODES)
def test_texts_begin_and_end_alike(code: str) -> None:
    def edges(text: str) -> tuple[bool, ...]:
        full_stop = text.endswith(".") and " " in text  # a head of a table may be abbreviated
        return text[:1].isspace(), text[-1:].isspace(), full_stop, text.endswith(":")

    different = [item for item in _messages(code) if edges(item.source) != edges(item.translation)]

    assert different == []


def test_english_is_said_without_a_catalogue() -> None:
    assert load_language("en") is ENGLISH
    assert load_language("no such code") is ENGLISH


def test_german_says_a_sentence_with_its_own_decimal_mark() -> None:
    german = load_language("de")

    assert german.say(say("Sensor ground")) == "Sensormasse"
    assert german.say(say("{reading}, steady", reading=say("{level_v:.2f} V", level_v=4.98))) == (
        "4,98 V, stabil"
    )


def test_german_lists_things_with_its_own_word() -> None:
    german = load_language("de")
    assert german.say(listed(["1", "2", "3"])) == "1 und 2 und 3"


def test_a_catalogue_reads_back_as_it_was_written(tmp_path: Path) -> None:
    messages = (
        Message("A", 'x < y & "z"', "ü\n„ä“", State.FINISHED, "a.py"),
        Message("A", "new", "", State.UNFINISHED, "b.py"),
        Message(ANALYSIS, " old ", " alt ", State.VANISHED, ""),
    )
    write_messages(tmp_path / "made.ts", "de", messages)

    assert read_messages(tmp_path / "made.ts") == messages
    assert read_messages(tmp_path / "none.ts") == ()


def test_a_file_of_another_kind_is_refused(tmp_path: Path) -> None:
    (tmp_path / "made.ts").write_text("<html/>")

    with pytest.raises(ValueError, match="Qt Linguist"):
        read_messages(tmp_path / "made.ts")


def test_an_update_keeps_what_is_translated_and_marks_what_came_and_went() -> None:
    known = (
        Message("A", "kept", "behalten", State.FINISHED),
        Message("A", "gone", "weg", State.FINISHED),
        Message("A", "back", "zurück", State.VANISHED),
    )
    wanted = (
        Message("B", "kept"),
        Message("A", "kept", note="a.py"),
        Message("A", "back"),
        Message("A", "new"),
    )

    assert updated(known, wanted) == (
        Message("B", "kept", "behalten", State.UNFINISHED),
        Message("A", "kept", "behalten", State.FINISHED, "a.py"),
        Message("A", "back", "zurück", State.UNFINISHED),
        Message("A", "new", "", State.UNFINISHED),
        Message("A", "gone", "weg", State.VANISHED),
    )
    assert updated(known, wanted, drop=True)[-1].source == "new"
