import pickle
from copy import deepcopy

import pytest

from analysis.wording import (
    ENGLISH,
    Language,
    Template,
    Wording,
    joined,
    listed,
    number,
    plural,
    say,
    verbatim,
)

GERMAN = Language(
    "de",
    {
        "{wire} reads {level_v:.2f} V.": "{wire}: {level_v:.2f} V gemessen.",
        "Sensor ground": "Sensormasse",
        "{count} crossings": "{count} Überfahrten",
        "Good.": "Gut.",
    },
    ",",
)


def test_a_wording_is_the_english_string() -> None:
    made = say("{wire} reads {level_v:.2f} V.", wire="Ground", level_v=4.981)

    assert made == "Ground reads 4.98 V."
    assert isinstance(made, str)
    assert ENGLISH.say(made) == made


def test_another_language_fills_its_own_template_with_its_own_decimal_mark() -> None:
    made = say("{wire} reads {level_v:.2f} V.", wire=say("Sensor ground"), level_v=0.0126)

    assert GERMAN.say(made) == "Sensormasse: 0,01 V gemessen."


def test_whole_numbers_have_no_decimal_mark_to_change() -> None:
    assert GERMAN.say(say("{count} crossings", count=11)) == "11 Überfahrten"


def test_words_of_other_people_are_left_alone() -> None:
    assert GERMAN.say("Good.") == "Good."
    assert (
        GERMAN.say(say("{wire} reads {level_v:.2f} V.", wire="Good.", level_v=1.0))
        == "Good.: 1,00 V gemessen."
    )


def test_a_sentence_without_a_translation_stays_english() -> None:
    assert GERMAN.say(say("No such sentence.")) == "No such sentence."


def test_braces_in_a_value_are_only_text() -> None:
    assert GERMAN.say(say("{wire} reads {level_v:.2f} V.", wire="{level_v}", level_v=1.0)).startswith(
        "{level_v}"
    )


def test_joined_wordings_are_translated_one_by_one() -> None:
    made = joined([say("Good."), "", say("{count} crossings", count=2)], " {} ")

    assert made == "Good. {} 2 crossings"
    assert GERMAN.say(made) == "Gut. {} 2 Überfahrten"
    assert joined([]) == ""


def test_a_template_is_filled_later() -> None:
    made = Template("{count} crossings")(count=3)

    assert GERMAN.say(made) == "3 Überfahrten"


def test_a_missing_value_is_told_at_once() -> None:
    with pytest.raises(KeyError):
        say("{count} crossings")


@pytest.mark.parametrize("copied", [lambda made: pickle.loads(pickle.dumps(made)), deepcopy])
def test_a_copy_can_still_be_translated(copied: object) -> None:
    again = copied(say("{count} crossings", count=11))  # type: ignore[operator]

    assert isinstance(again, Wording)
    assert GERMAN.say(again) == "11 Überfahrten"


@pytest.mark.parametrize(("count", "said"), [(0, "0 crossings"), (1, "1 crossing"), (2, "2 crossings")])
def test_one_is_told_from_several(count: int, said: str) -> None:
    assert plural("{count} crossing", "{count} crossings", count=count) == said


def test_things_are_listed_as_people_list_them() -> None:
    assert listed([]) == ""
    assert listed(["a"]) == "a"
    assert listed(["a", "b", "c"]) == "a and b and c"
    assert Language("de", {"{first} and {second}": "{first} und {second}"}).say(listed("abc")) == (
        "a und b und c"
    )


@pytest.mark.parametrize(
    ("value", "digits", "english", "german"),
    [
        (-12.64, 1, "\N{MINUS SIGN}12.6", "\N{MINUS SIGN}12,6"),
        (-0.04, 1, "0.0", "0,0"),
        (0.5, 0, "0", "0"),
        (99.95, 2, "99.95", "99,95"),
    ],
)
def test_a_number_has_a_true_minus_sign_and_the_mark_of_its_language(
    value: float, digits: int, english: str, german: str
) -> None:
    made = number(value, digits)

    assert made == english
    assert GERMAN.say(made) == german
    assert GERMAN.say(pickle.loads(pickle.dumps(made))) == german


def test_thousands_are_set_apart_by_a_narrow_space() -> None:
    made = say("{count:,} samples in {time_s:,.1f} s", count=12345, time_s=1234.5)

    assert made == "12,345 samples in 1,234.5 s"
    assert GERMAN.say(made) == "12\N{NARROW NO-BREAK SPACE}345 samples in 1\N{NARROW NO-BREAK SPACE}234,5 s"


def test_text_of_a_data_file_keeps_its_braces() -> None:
    assert verbatim("a {b} c") == "a {b} c"
    assert Language("xx", {"a {{b}} c": "d {{b}} e"}).say(verbatim("a {b} c")) == "d {b} e"
