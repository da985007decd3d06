from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from analysis.captures import replacing
from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.errors import Cancelled, CaptureError
from tests.captures.examples import small_capture


def test_nothing_but_the_capture_is_left_in_the_folder(tmp_path: Path) -> None:
    write_capture(small_capture(), tmp_path / "a.h5")
    assert [item.name for item in tmp_path.iterdir()] == ["a.h5"]


def test_a_capture_is_not_overwritten_unless_that_is_said(tmp_path: Path) -> None:
    write_capture(small_capture(), tmp_path / "a.h5")
    before = (tmp_path / "a.h5").read_bytes()
    with pytest.raises(CaptureError, match="exists already"):
        write_capture(replace(small_capture(), title="other"), tmp_path / "a.h5")
    assert (tmp_path / "a.h5").read_bytes() == before
    write_capture(replace(small_capture(), title="other"), tmp_path / "a.h5", replace=True)
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.title == "other"


def test_the_same_capture_gives_the_same_bytes(tmp_path: Path) -> None:
    for name in ("a.h5", "b.h5"):
        write_capture(small_capture(70_000), tmp_path / name)
    assert (tmp_path / "a.h5").read_bytes() == (tmp_path / "b.h5").read_bytes()


def test_cancelling_half_way_leaves_nothing_behind(tmp_path: Path) -> None:
    def stop(done: float) -> None:
        if done > 0.5:
            raise Cancelled

    with pytest.raises(Cancelled):
        write_capture(small_capture(), tmp_path / "a.h5", tick=stop)
    assert list(tmp_path.iterdir()) == []


def test_a_failing_drive_leaves_nothing_behind_and_the_old_file_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write_capture(small_capture(), tmp_path / "a.h5")
    before = (tmp_path / "a.h5").read_bytes()

    def fail(path: Path) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(replacing, "_sync", fail)
    with pytest.raises(CaptureError, match="free space"):
        write_capture(small_capture(500), tmp_path / "a.h5", replace=True)
    assert [item.name for item in tmp_path.iterdir()] == ["a.h5"]
    assert (tmp_path / "a.h5").read_bytes() == before


def test_the_file_and_its_folder_are_flushed_to_the_disk(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    heard: list[str] = []
    real = replacing._sync

    def listen(path: Path) -> None:
        heard.append(path.name)
        real(path)

    monkeypatch.setattr(replacing, "_sync", listen)
    monkeypatch.setattr(replacing, "_sync_folder", lambda path: heard.append(str(path)))
    write_capture(small_capture(), tmp_path / "a.h5")
    assert heard[0].startswith(".a.h5.")
    assert heard[1] == str(tmp_path)


def test_a_folder_that_is_not_there_is_said(tmp_path: Path) -> None:
    with pytest.raises(CaptureError, match="folder"):
        write_capture(small_capture(), tmp_path / "missing" / "a.h5")
    with pytest.raises(CaptureError, match="exists already"):
        write_capture(small_capture(), tmp_path)


def one(
    samples: object, scaling: Scaling | None = None, name: str = "signal", record: str = "001"
) -> Capture:
    channel = make_channel(Role.SIGNAL, np.asarray(samples), scaling, name=name)
    return make_capture([make_record(record, 1.0, [channel])])


TWICE = make_record("001", 1.0, {Role.SIGNAL: (np.arange(5.0), Scaling())})


@pytest.mark.parametrize(
    ("build", "said"),
    [
        (lambda: one([1, 2], name="time"), "may not be named"),
        (lambda: one([1, 2], name="overview"), "may not be named"),
        (lambda: one([1, 2], name="a/b"), "names of their own"),
        (lambda: one([1, 2], record=""), "names of their own"),
        (lambda: make_capture([TWICE, TWICE]), "names of their own"),
        (lambda: one([1j, 2j]), "cannot store"),
        (lambda: one(np.zeros(5, dtype="u1"), Scaling(fill_value=-1)), "_FillValue"),
        (lambda: one(np.zeros(5, dtype="i2"), Scaling(valid_max=0.5)), "valid_max"),
        (lambda: replace(small_capture(), title="x" * 70_000), "shorten"),
    ],
)
def test_what_cannot_be_stored_is_said_and_leaves_nothing_behind(
    tmp_path: Path, build: Callable[[], Capture], said: str
) -> None:
    with pytest.raises(CaptureError, match=said):
        write_capture(build(), tmp_path / "a.h5")
    assert list(tmp_path.iterdir()) == []


def test_the_time_of_writing_is_stored_where_the_capture_has_none(tmp_path: Path) -> None:
    write_capture(one([1.0, 2.0]), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        created = opened.capture.text("created")
    assert created[10] == "T"
    assert created[-6] in "+-"


def test_writing_reports_progress(tmp_path: Path) -> None:
    heard: list[float] = []
    write_capture(small_capture(), tmp_path / "a.h5", tick=heard.append)
    assert heard == sorted(heard)
    assert heard[-1] == 1.0


def test_a_builder_refuses_what_is_no_record() -> None:
    with pytest.raises(ValueError, match="one length"):
        make_record(
            "001", 1.0, {Role.SIGNAL: (np.zeros(5), Scaling()), Role.GROUND: (np.zeros(4), Scaling())}
        )
    with pytest.raises(ValueError, match="one-dimensional"):
        make_channel(Role.SIGNAL, np.zeros((2, 2)))
    with pytest.raises(ValueError, match="needs a name"):
        make_channel(None, np.zeros(2))
