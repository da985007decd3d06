"""Every view leaves as a picture: SVG whose curves are curves and whose words are text, and PNG."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from app.exporting.desk import EXPORTING
from app.exporting.specs import EXPORT_SPECS
from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture
from tests.app.hands import import_worn


@pytest.fixture
def bench() -> Bench:
    """The worn capture, of a car whose heights are known."""
    capture = worn_capture()
    profile = {"profile": "halvorsen-tern-rear-left"}
    return Bench(capture=replace(capture, attributes={**capture.attributes, **profile}))


def _compare(qtbot: QtBot, window: Window, _folder: Path) -> None:
    window.compare.open_file(Path("other.h5"))
    qtbot.waitUntil(lambda: window.compare.comparison is not None, timeout=20_000)


def _import(qtbot: QtBot, window: Window, folder: Path) -> None:
    (folder / "in").mkdir()
    import_worn(qtbot, window, folder / "in")


def _report(qtbot: QtBot, window: Window, _folder: Path) -> None:
    window.actions_by_name["report"].trigger()
    qtbot.waitUntil(lambda: bool(window.report_desk.sheets), timeout=20_000)


def _review(_qtbot: QtBot, _window: Window, _folder: Path) -> None:
    """It is in front."""


VIEWS: dict[str, tuple[Callable[[QtBot, Window, Path], None], str, str]] = {
    "Trace": (_review, "picture_trace", "s"),
    "Sensor track": (_review, "picture_track", "%"),
    "Overview": (_review, "picture_overview", ""),
    "why it comes and goes": (_review, "picture_why", "%"),
    "Review with Records, Evidence and Markers": (_review, "picture_page", "Records"),
    "both traces of Compare": (_compare, "picture_trace", "s"),
    "the tracks of Compare": (_compare, "picture_track", "%"),
    "Compare": (_compare, "picture_page", "%"),
    "Import": (_import, "picture_page", "First rows as understood"),
    "Report": (_report, "picture_page", "Ride-height sensor, rear left"),
}


@pytest.mark.parametrize("name", VIEWS)
def test_every_view_leaves_as_curves_and_words_and_as_points(
    qtbot: QtBot, review: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    enter, action, word = VIEWS[name]
    names = iter(["a.svg", "a.png"])
    (tmp_path / "out").mkdir()
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(tmp_path / "out" / next(names)), "")
    )
    enter(qtbot, review, tmp_path)
    for _ in range(2):
        review.actions_by_name[action].trigger()
        qtbot.waitUntil(lambda: not review.jobs.running(EXPORTING))
    assert {item.name for item in (tmp_path / "out").iterdir()} == {"a.svg", "a.png"}
    root = ElementTree.fromstring((tmp_path / "out" / "a.svg").read_bytes())
    drawn = "".join(item.get("d", "") + item.get("points", "") for item in root.iter())
    assert len(drawn) > 1500
    words = {"".join(item.itertext()).strip() for item in root.iter() if item.tag.endswith("}text")}
    assert any(word in item for item in words)
    assert len(words) >= 3
    width, height = (float(size) for size in root.get("viewBox", "").split()[2:])
    embedded = [item for item in root.iter() if item.tag.endswith("}image")]
    largest = max(
        (float(item.get("width", 0)) * float(item.get("height", 0)) for item in embedded), default=0
    )
    assert largest < 0.05 * width * height  # small marks may be points, a view may not
    image = QImage(str(tmp_path / "out" / "a.png"))
    assert (image.width(), image.height()) == (2 * int(width), 2 * int(height))
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    assert np.ptp(np.frombuffer(grey.constBits(), np.uint8)) > 60
    window = review.why.why
    if window is not None:
        window.close()


def test_every_picture_of_the_menu_is_in_the_list() -> None:
    offered = {spec[0] for spec in EXPORT_SPECS if spec[0].startswith("picture_")}
    assert offered == {action for _, action, _ in VIEWS.values()}
