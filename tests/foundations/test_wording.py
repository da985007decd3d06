import pickle
from copy import deepcopy

import pytest

from analysis.wording import ENGLISH, Language, Template, Wording, joined, say

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
