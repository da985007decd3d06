"""Whatever a file holds, the command answers with one sentence or with findings, never with a traceback."""

from __future__ import annotations

import json
import math
from collections.abc import Callable
from pathlib import Path
from typing import Any

import h5py
import numpy as np
import pytest

from app.command_line import main
from app.resources import folder
from tests.captures.examples import write_plain
from tests.reports.test_json_contract import CONTRACT, assert_keeps

Out = pytest.CaptureFixture[str]
SAMPLE = folder("sample_captures") / "W1041-rear-left-height.h5"


def _text(path: Path) -> None:
    path.write_text("time,volts\n0,1.5\n")


def _other(path: Path) -> None:
    with h5py.File(path, "w") as file:
        file["entry/data"] = np.zeros((3, 3))


def _cut(path: Path) -> None:
    whole = SAMPLE.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])


def _without_records(path: Path) -> None:
    with h5py.File(path, "w") as file:
        file.attrs["format"] = "wornband-capture"
        file.attrs["format_version"] = 1
        file.create_group("records")


def _unequal(path: Path) -> None:
    write_plain(path)
    with h5py.File(path, "r+") as file:
        other = file.create_dataset("records/001/reference", data=np.zeros(7, dtype=np.int16))
        other.attrs["role"] = "reference"
        other.attrs["units"] = "V"


REFUSED: dict[str, Callable[[Path], Any]] = {
    "no HDF5": _text,
    "another HDF5": _other,
    "cut short": _cut,
    "no records": _without_records,
    "no signal": lambda path: write_plain(path, role="ground"),
    "no samples": lambda path: write_plain(path, np.zeros(0, dtype=np.int16)),
    "one sample": lambda path: write_plain(path, np.ones(1, dtype=np.int16)),
    "unequal lengths": _unequal,
    "interval of zero": lambda path: write_plain(path, sample_interval=0.0),
    "interval that is no number": lambda path: write_plain(path, sample_interval=math.nan),
    "a later format": lambda path: write_plain(path, format_version=99),
}

ANSWERED: dict[str, Callable[[Path], Any]] = {
    "all missing": lambda path: write_plain(path, np.full(4000, np.nan, dtype=np.float32), scale_factor=None),
    "all over range": lambda path: write_plain(path, np.full(4000, 4095, dtype=np.int16), valid_max=4095),
    "all the same": lambda path: write_plain(path, np.full(4000, 1000, dtype=np.int16)),
    "two samples": lambda path: write_plain(path, np.array([1, 2], dtype=np.int16)),
    "infinite": lambda path: write_plain(path, np.full(4000, np.inf), scale_factor=None),
    "huge": lambda path: write_plain(path, np.full(4000, 1e300), scale_factor=None),
    "a very short interval": lambda path: write_plain(path, sample_interval=1e-12),
    "a very long interval": lambda path: write_plain(path, sample_interval=1e6),
}


@pytest.mark.parametrize("kind", REFUSED)
@pytest.mark.parametrize("options", [(), ("--json",)], ids=["text", "json"])
def test_a_file_that_cannot_be_examined_gets_one_clear_sentence(
    kind: str, options: tuple[str, ...], tmp_path: Path, capsys: Out
) -> None:
    path = tmp_path / "a.h5"
    REFUSED[kind](path)
    assert main(["analyse", str(path), *options]) == 1
    out, err = capsys.readouterr()
    assert err.startswith(f"{path}: ")
    assert len(err.splitlines()) == 1
    assert ";" in err
    assert "unforeseen" not in err
    if options:
        assert json.loads(out)["error"] in err
    else:
        assert out == ""


@pytest.mark.parametrize("kind", ANSWERED)
def test_samples_that_say_nothing_are_never_called_a_fault_of_the_sensor_or_sound(
    kind: str, tmp_path: Path, capsys: Out
) -> None:
    path = tmp_path / "a.h5"
    ANSWERED[kind](path)
    status = main(["analyse", str(path), "--json"])
    out, err = capsys.readouterr()
    item = json.loads(out)
    if status:
        assert len(err.splitlines()) == 1
        assert "unforeseen" not in err
        assert "error" in item
        return
    assert_keeps(item, CONTRACT)
    assert item["verdict"]["code"] in ("measurement_problem", "inconclusive", "out_of_range")
    assert not [band for band in item["bands"] if band["confidence"] >= 0.5]


def test_a_capture_written_by_a_stranger_with_the_least_attributes_is_examined(
    tmp_path: Path, capsys: Out
) -> None:
    """A slow sweep to and fro with contact breaks around 45 % of travel, as plain h5py stores it."""
    rng = np.random.default_rng(5)
    time_s = np.arange(60_000) / 2000.0
    travel = 50.0 - 40.0 * np.cos(2 * np.pi * time_s / 5.0)
    signal_v = 0.05 * travel + rng.normal(0.0, 0.001, time_s.size)
    inside = np.flatnonzero(np.abs(travel - 45.0) < 2.5)
    for start in rng.choice(inside, 400, replace=False):
        signal_v[start : start + int(rng.integers(4, 30))] *= rng.uniform(0.1, 0.8)
    path = tmp_path / "stranger.h5"
    with h5py.File(path, "w") as file:
        file.attrs["format"] = "wornband-capture"
        file.attrs["format_version"] = 1
        record = file.create_group("records/001")
        record.attrs["sample_interval"] = 1 / 2000.0
        for name, volts in (
            ("signal", signal_v),
            ("reference", np.full(time_s.size, 5.0)),
            ("ground", 0.0 * time_s),
        ):
            channel = record.create_dataset(name, data=volts.astype(np.float32))
            channel.attrs["role"] = name
            channel.attrs["units"] = "V"
    assert main(["analyse", str(path), "--json"]) == 0
    out, err = capsys.readouterr()
    assert err == ""
    item = json.loads(out)
    assert item["verdict"]["code"] == "worn_track"
    (band,) = [band for band in item["bands"] if band["confidence"] >= 0.5]
    assert band["start_percent"] == pytest.approx(42.5, abs=1.5)
    assert band["end_percent"] == pytest.approx(47.5, abs=1.5)
    assert item["assumptions"], "what the file does not state is said"
    assert main(["analyse", str(path)]) == 0
    assert "Taken as given" in capsys.readouterr().out
