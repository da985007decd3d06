"""The window in German: which language is spoken, that all of it is, and that it changes at once."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from analysis.errors import CaptureError
from analysis.wording import ENGLISH, say
from app.actions import SPECS, Actions
from app.drawing.axes import QuietAxis
from app.drawing.numbers import depth, duration, percent, rate_text, seconds, volts
from app.language import SYSTEM, install_language, said, wanted_code, window_language
from app.language_menu import LanguageMenu
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.trouble import sentence
from app.words import role_name
from app.workbench import Workbench
from tests.app.hands import copy_of_sample
from tests.app.tongues import speaking
from tests.app.workbenches import running


@pytest.fixture
def german(qapp: QApplication) -> Iterator[QApplication]:
    with speaking(qapp, "de"):
        yield qapp


@pytest.fixture
def workbench(qapp: QApplication) -> Iterator[Workbench]:
    with running(qapp, real_tools()) as made:
        yield made


@pytest.mark.parametrize(
    ("setting", "desktop", "code"),
    [
        (SYSTEM, ["de-AT", "de", "en"], "de"),
        (SYSTEM, ["en-GB", "de"], "en"),
        (SYSTEM, ["fr-FR", "de-DE"], "de"),
        (SYSTEM, ["fr-FR"], "en"),
        (SYSTEM, [], "en"),
        ("de", ["en-US"], "de"),
        ("en", ["de-DE"], "en"),
        ("gone", ["de_DE"], "de"),
    ],
)
def test_the_setting_comes_before_the_desktop(setting: str, desktop: list[str], code: str) -> None:
    assert wanted_code(setting, desktop) == code


def test_english_installs_nothing(qapp: QApplication) -> None:
    install_language(qapp, "en")

    assert qapp.findChildren(QTranslator) == []
    assert window_language() is ENGLISH


def test_a_language_takes_the_place_of_the_one_before(german: QApplication) -> None:
    install_language(german, "de")
    assert role_name(Role.GROUND) == "Masse"

    install_language(german, "en")
    assert role_name(Role.GROUND) == "Ground"
    assert said(say("Sensor ground")) == "Sensor ground"


def test_what_no_catalogue_knows_stays_as_it_is(german: QApplication) -> None:
    assert QCoreApplication.translate("nobody", "No such text") == "No such text"
    assert said("the customer's own words") == "the customer's own words"


def test_qts_own_words_are_german_too(german: QApplication) -> None:
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"


def test_readings_have_a_decimal_comma(german: QApplication) -> None:
    assert [volts(5.0295), volts(-0.0042), depth(-1.26)] == [
        "5,029 V",
        "\N{MINUS SIGN}4,2 mV",
        "\N{MINUS SIGN}1,3 V",
    ]
    assert [percent(47.36), seconds(9.744, 1e-3), duration(0.0123), rate_text(2500.0)] == [
        "47,4 %",
        "9,744 s",
        "12,3 ms",
        "2,5 kS/s",
    ]
    assert QuietAxis("bottom", " s").tickStrings([0.5, -1.5], 1.0, 0.5) == ["0,5 s", "\N{MINUS SIGN}1,5 s"]


def test_an_error_is_told_in_german(german: QApplication) -> None:
    error = CaptureError(say("the file is empty"), say("choose another file"))

    assert sentence(error, "") == "Die Datei ist leer; eine andere Datei wählen."


def test_every_action_is_german_and_no_two_of_a_menu_are_alike(qtbot: QtBot, german: QApplication) -> None:
    owner = QLabel()
    qtbot.addWidget(owner)
    actions = Actions(owner)
    for menu in {spec.menu for spec in SPECS}:
        texts = [action.text() for action in actions.in_menu(menu)]
        assert len(set(texts)) == len(texts)
    english = [spec for spec in SPECS if actions[spec.name].text() == spec.text]
    assert english == []


def test_the_menu_offers_each_language_by_its_own_name(qtbot: QtBot, german: QApplication) -> None:
    owner = QLabel()
    qtbot.addWidget(owner)
    settings = Settings(MemoryStore())
    menu = LanguageMenu(settings, owner)

    assert menu.title() == "Sprache (Language)"
    assert [action.text() for action in menu.actions()] == ["Wie der Desktop", "English", "Deutsch"]
    assert [action.isChecked() for action in menu.actions()] == [True, False, False]
    with qtbot.waitSignal(menu.chosen):
        menu.actions()[2].trigger()
    assert settings.language == "de"


def test_another_language_is_spoken_at_once_and_the_capture_stays(
    qtbot: QtBot, workbench: Workbench, tmp_path: Path
) -> None:
    before = workbench.window
    sample = copy_of_sample("W1041-rear-left-height.h5", tmp_path)
    with qtbot.waitSignal(before.session.findings_changed, timeout=20_000):
        before.open_file(sample)
    deutsch = next(item for item in before.findChildren(QAction) if item.text() == "Deutsch")
    deutsch.trigger()
    qtbot.waitUntil(lambda: workbench.window is not before)
    qtbot.waitUntil(lambda: workbench.window.session.findings is not None, timeout=20_000)

    window = workbench.window
    assert window.session.capture is not None
    assert window.session.capture.path == sample
    visible = [
        item for item in QApplication.topLevelWidgets() if isinstance(item, Window) and item.isVisible()
    ]
    assert visible == [window]
    shown = _shown(window.page.evidence.findChildren(QLabel))
    assert "Widerstandsbahn verschlissen" in shown
    assert not re.search(r"\d\.\d", " ".join(shown))


def _shown(labels: list[QLabel]) -> list[str]:
    return [label.text() for label in labels if not label.isHidden()]
