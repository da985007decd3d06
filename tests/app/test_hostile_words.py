"""Words out of a file are words in the window: no markup in labels, tips and cells."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6 import QtGui
from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractItemView, QLabel, QWidget
from pytestqt.qtbot import QtBot

from analysis.captures.memory import make_capture
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.review.job import Job, Photo
from analysis.review.model import PointMarker, with_marker
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.drawing.plain import plain_tip
from app.main_window import Window
from app.resources import sample_captures
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app import hands
from tests.importing_page.hands import wait_for_looks

HOSTILE = "<b>loud</b><img src='x.png'> & <a href='y'>here</a>"
SAMPLE = next(path for path in sample_captures() if path.name == "W1041-rear-left-height.h5")


@pytest.fixture
def capture(tmp_path: Path) -> Path:
    """A worn sensor in which everything that can be named is named by a stranger, the file too."""
    target = tmp_path / "<i>worn</i>.h5".replace("/", "\N{FRACTION SLASH}").replace("<i>", "<hr>")
    with open_capture(SAMPLE) as opened:
        records = [
            replace(
                record,
                label=HOSTILE,
                attributes={key: _spoilt(value) for key, value in record.attributes.items()},
                channels=tuple(
                    replace(item, attributes={key: _spoilt(value) for key, value in item.attributes.items()})
                    for item in record.channels
                ),
            )
            for record in opened.capture.records
        ]
        attributes = {
            key: value if key == "profile" else _spoilt(value)
            for key, value in opened.capture.attributes.items()
        }
        write_capture(make_capture(records, title=HOSTILE, attributes=attributes), target)
    sidecar = read_sidecar(target)
    job = Job(facts={"vehicle": HOSTILE}, photos=(Photo(f"{HOSTILE}.png", HOSTILE),), other=f"{HOSTILE}.h5")
    marker = PointMarker("m", records[0].name, 0.1, HOSTILE, HOSTILE)
    write_sidecar(sidecar, with_marker(replace(sidecar.review, job=job), marker))
    return target


def _spoilt(value: str | float) -> str | float:
    return HOSTILE if isinstance(value, str) else value


def _tips_of(model: QAbstractItemModel | None, parent: QModelIndex) -> list[str]:
    if model is None:
        return []
    found = []
    for row in range(model.rowCount(parent)):
        for column in range(model.columnCount(parent)):
            index = model.index(row, column, parent)
            found.append(str(model.data(index, Qt.ItemDataRole.ToolTipRole) or ""))
            found += _tips_of(model, index) if column == 0 else []
    return found


def read_as_markup(root: QWidget) -> list[str]:
    """Everything below a widget that Qt would read as markup and that holds a stranger's tags."""
    found = []
    for label in root.findChildren(QLabel):
        text, form = label.text(), label.textFormat()
        rich = form == Qt.TextFormat.RichText or (
            form == Qt.TextFormat.AutoText and QtGui.Qt.mightBeRichText(text)
        )
        if rich and _has_tags(text):
            found.append(f"{label.parent()} {label}: {text}")
    tips = [(item, item.toolTip()) for item in (root, *root.findChildren(QWidget))]
    tips += [(item, item.toolTip()) for item in root.findChildren(QAction)]  # type: ignore[misc]
    for view in root.findChildren(QAbstractItemView):
        tips += [(view, tip) for tip in _tips_of(view.model(), QModelIndex())]
    return found + [
        f"tip of {item}: {tip}" for item, tip in tips if QtGui.Qt.mightBeRichText(tip) and _has_tags(tip)
    ]


def _has_tags(text: str) -> bool:
    return any(tag in text for tag in ("<b>loud", "<img", "<a href='y'", "<hr>"))


def test_no_word_of_a_file_is_read_as_markup(qtbot: QtBot, capture: Path) -> None:
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.show()
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(capture)
    qtbot.waitUntil(lambda: window.keeper.path is not None and not window.keeper.waiting)
    assert read_as_markup(window) == []
    window.report_desk.open()
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    assert read_as_markup(window) == []
    window.rooms.leave()
    with qtbot.waitSignal(window.session.problem, timeout=20_000):
        window.open_file(capture.with_name(f"{capture.stem}-gone.h5"))
    assert read_as_markup(window) == []
    window.close()


def test_no_heading_of_a_table_is_read_as_markup(qtbot: QtBot, tmp_path: Path) -> None:
    table = tmp_path / "<b>loud\N{FRACTION SLASH}b>.csv"
    rows = "".join(f"{at / 1000:.3f},{2.5 + at / 1000:.4f},0.01\n" for at in range(200))
    table.write_text(f"{HOSTILE} (s),{HOSTILE} (V),{HOSTILE} ground (V)\n{rows}", encoding="utf-8")
    window = Window(real_tools(), Settings(MemoryStore()))
    window.imports.recipes = tmp_path / "recipes"
    qtbot.addWidget(window)
    window.show()
    hands.drop(window, table)
    wait_for_looks(qtbot, window)
    assert read_as_markup(window) == []
    window.close()


def test_the_search_finds_markup_in_a_label_and_in_a_tip(qtbot: QtBot) -> None:
    root = QWidget()
    qtbot.addWidget(root)
    label = QLabel(HOSTILE, root)
    root.setToolTip(HOSTILE)
    assert len(read_as_markup(root)) == 2
    label.setTextFormat(Qt.TextFormat.PlainText)
    root.setToolTip(plain_tip(HOSTILE))
    assert read_as_markup(root) == []


def test_a_tip_that_is_no_markup_stays_as_it_is() -> None:
    assert plain_tip("1 < 2 & 3") == "1 < 2 & 3"
    assert "&lt;b&gt;" in plain_tip("<b>loud</b>")
