import pytest

from app.translations.catalogue import ANALYSIS
from app.translations.extract import field_names, free_text, messages_of_sources, messages_of_text


def test_texts_of_classes_modules_and_templates_are_found() -> None:
    text = """
from analysis.wording import Template, plural, say

def _tr(text):
    return QCoreApplication.translate("words", text)

ONE = Template("{count} of {all}")
TWO = plural("{count} band", "{count} bands", count=2)

class View(Pane):
    def __init__(self):
        self.tr("Trace" if self else "Track")
        _tr("Sweep")
        say("The reference" " reads {level_v:.2f} V.", level_v=5.0)
        QCoreApplication.translate("View", "quiet")
        _spec("open", "Capture", "Open", "Open a capture", "Ctrl+O")

MORE_SPECS = (("print", "Report", "Print", "Print the report", "Ctrl+P"),)
"""
    assert messages_of_text(text, "made.py") == (
        (ANALYSIS, "{count} of {all}"),
        (ANALYSIS, "{count} band"),
        (ANALYSIS, "{count} bands"),
        ("View", "Trace"),
        ("View", "Track"),
        ("words", "Sweep"),
        (ANALYSIS, "The reference reads {level_v:.2f} V."),
        ("View", "quiet"),
        ("actions", "Capture"),
        ("actions", "Open"),
        ("actions", "Open a capture"),
        ("actions", "Report"),
        ("actions", "Print"),
        ("actions", "Print the report"),
    )


def test_a_template_without_a_word_needs_no_translation() -> None:
    text = 'from analysis.wording import say\nsay("{first}: {second}–{third}", first=1, second=2, third=3)'

    assert messages_of_text(text, "made.py") == ()


def test_a_say_from_elsewhere_is_somebody_elses() -> None:
    assert messages_of_text("def spoken(item, say):\n    return say(item)", "made.py") == ()


@pytest.mark.parametrize(
    "call", ["say(text)", 'say(f"{level} V")', 'say("a" if level else text)', 'say("a" + text)']
)
def test_a_text_that_is_no_literal_is_told_with_its_line(call: str) -> None:
    with pytest.raises(ValueError, match=r"made\.py:2: .* literal"):
        messages_of_text(f"from analysis.wording import say\n{call}", "made.py")


def test_the_sources_hold_texts_of_every_kind() -> None:
    found = {item.key: item.note for item in messages_of_sources()}

    assert found[ANALYSIS, "Sensor track worn"] == "analysis/reports/verdicts.py"
    assert found[ANALYSIS, "Ride-height sensor, 5 V"].endswith("ride-height.toml")
    assert found["actions", "Open a capture"] == "app/actions.py"
    assert found["TraceView", "Trace"] == "app/views/trace.py"
    assert found["words", "Signal"] == "app/words.py"


def test_fields_are_told_from_the_words_around_them() -> None:
    assert field_names("{b!r} and {a:.1f} {{c}}") == [("a", "", ".1f"), ("b", "r", "")]
    assert free_text("{b!r} and {a:.1f} %") == " and  %"
