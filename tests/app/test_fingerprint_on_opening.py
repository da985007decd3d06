"""What a capture says of its own content is compared with the content when it is opened."""

from __future__ import annotations

from pathlib import Path

import h5py
import pytest
from pytestqt.qtbot import QtBot

from analysis.captures.writing import write_capture
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.fakes import worn_capture


@pytest.mark.parametrize("what", ["nothing", "a sample", "a meaning", "the packing"])
def test_the_fingerprint_in_a_capture_is_checked_on_opening(what: str, qtbot: QtBot, tmp_path: Path) -> None:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    with h5py.File(path, "a") as file:
        channel = next(item for item in file["records/004"].values() if "role" in item.attrs)
        if what == "a sample":
            channel[10] = channel[11] + 1
        elif what == "a meaning":
            file["records/004"].attrs["sample_interval"] *= 2
        elif what == "the packing":
            words, samples = dict(channel.attrs), channel[()]
            name = channel.name
            del file[name]
            file.create_dataset(name, data=samples).attrs.update(words)
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window)
    told: list[str] = []
    window.desk.file.problem.connect(told.append)
    window.open_file(path)
    qtbot.waitUntil(
        lambda: window.session.findings is not None and window.keeper.path is not None, timeout=20_000
    )
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    told = [text for text in told if "do not match the fingerprint" in text]
    assert len(told) == (what in ("a sample", "a meaning"))
    window.close()
