"""What the Watch page follows and tells: kept recipes, and sentences that fit a window."""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Mapping
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.recipes import keep_for_shape
from analysis.importing.wishes import Wishes
from analysis.wording import say, verbatim
from app.importing.words import error_sentence
from app.main_window import Window
from app.translations.catalogue import catalogue_path, read_messages
from app.trouble import in_window
from tests.importing_page.tables import plain_table, swept
from tests.watching_page.hands import begin, looked, taken, watched


def nameless(path: Path, wires: Mapping[str, NDArray[np.float64]]) -> Path:
    """A table that does not say how much time lies between two rows."""
    rows = zip(wires["signal"], wires["reference"], strict=True)
    path.write_text("left,right\n" + "".join(f"{a:.4f},{b:.4f}\n" for a, b in rows))
    return path


def failed(qtbot: QtBot, window: Window, count: int = 1) -> None:
    """Wait until so many files have failed."""
    qtbot.waitUntil(lambda: len(watched(window).failures) == count, timeout=10_000)


def test_a_kept_recipe_decides_what_would_have_to_be_asked(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    nameless(folder / "1.csv", swept(3.0))
    failed(qtbot, window)
    assert "how much time lies between two rows" in window.watching.page.trouble.text()
    wishes = Wishes(interval_s=0.0005, channels={"left": Role.SECOND_SIGNAL, "right": Role.SUPPLY})
    (understood,) = import_capture([folder / "1.csv"], tmp_path / "by-hand.h5", wishes)
    keep_for_shape(understood, wishes, tmp_path / "recipes")
    nameless(folder / "2.csv", swept(3.0, seed=8))
    taken(qtbot, window, 1)
    with open_capture(watched(window).taken["2.csv"]) as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == 0.0005
        assert {item.role for item in record.channels} == {Role.SECOND_SIGNAL, Role.SUPPLY}
    window.watching.try_again()
    taken(qtbot, window, 2)
    assert not watched(window).failures


def _caret(folder: Path) -> None:
    (folder / "t.csv").write_text("time [s]^sig\n" + "".join(f"{n}^{1 + n % 3}\n" for n in range(30)))


def _nameless(folder: Path) -> None:
    nameless(folder / "t.csv", swept(1.0))


def _two_times(folder: Path) -> None:
    (folder / "t.csv").write_text(
        "time (s),zeit (s),sig\n" + "".join(f"{n / 10},{n},{1 + n % 3}\n" for n in range(30))
    )


@pytest.mark.parametrize("made", [_caret, _nameless, _two_times])
def test_a_failure_in_the_window_names_no_option_of_a_command(
    qtbot: QtBot, window: Window, tmp_path: Path, made: Callable[[Path], None]
) -> None:
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    made(folder)
    failed(qtbot, window)
    assert "--" in watched(window).failures[0].sentence  # the command names its option
    told = window.watching.page.trouble.text()
    assert told.endswith("; import it by hand, and say there how it is to be read.")
    assert "--" not in told
    assert window.watching.page.by_hand.isVisible()


def test_the_import_page_names_no_option_of_a_command(tmp_path: Path) -> None:
    _caret(tmp_path)
    with pytest.raises(ImportingError) as caught:
        import_capture([tmp_path / "t.csv"], tmp_path / "t.h5")
    assert "--delimiter" in str(caught.value)
    assert error_sentence(caught.value).endswith("; say at the right how it is written, or remove the file.")


def test_every_advice_of_the_analysis_that_names_an_option_is_said_otherwise() -> None:
    options = [
        message.source
        for message in read_messages(catalogue_path("de"))
        if re.search(r"(^|\s)--[a-z]", message.source)
    ]
    assert len(options) >= 8
    for text in options:
        fields = dict.fromkeys(re.findall(r"{(\w+)[^}]*}", text), "x")
        error = ImportingError(say("it is so"), say(text, **fields))
        assert "--" not in in_window(error.sentence), text
    assert in_window(verbatim("all is well")) == "All is well."


@pytest.mark.ordinary_rights
@pytest.mark.skipif(os.name != "posix", reason="rights are taken away in another way there")
@pytest.mark.parametrize(
    ("rights", "sentence"),
    [(0o000, "The folder cannot be read; check its name, the connection and your rights."),
     (0o500, "no right")],
)  # fmt: skip
def test_a_folder_without_rights_gets_its_sentence(
    qtbot: QtBot, window: Window, tmp_path: Path, rights: int, sentence: str
) -> None:
    folder = tmp_path / "job"
    begin(window, folder)
    looked(qtbot, window)
    plain_table(folder / "1.csv", swept(2.0), "Time,signal,ref,gnd")
    folder.chmod(rights)
    try:
        qtbot.waitUntil(lambda: sentence in window.watching.page.trouble.text(), timeout=10_000)
        assert window.watching.going
        assert not watched(window).taken
    finally:
        folder.chmod(0o700)
    assert [item.name for item in folder.iterdir()] == ["1.csv"]
    if rights == 0o500:
        window.watching.try_again()
    taken(qtbot, window, 1)
    assert not window.watching.page.trouble.text()
