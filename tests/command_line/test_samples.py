"""The main job from end to end: the command finds in every sample what was put into it."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from analysis.diagnosis.findings import VerdictCode
from analysis.simulation.registry import TRUTHS_NAME, SampleTruth, read_truths
from app.resources import folder
from tests.reports.test_json_contract import CONTRACT, assert_keeps

SAMPLES = folder("sample_captures")
TRUTHS = read_truths(SAMPLES / TRUTHS_NAME)
EDGE_PERCENT = 1.0
CONFIDENCE = 0.9


def _analyse(*options: str) -> subprocess.CompletedProcess[str]:
    paths = [str(SAMPLES / truth.file) for truth in TRUTHS]
    return subprocess.run(
        [sys.executable, "-m", "app", "analyse", *paths, *options],
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
    )


@pytest.fixture(scope="module")
def found() -> dict[str, dict[str, Any]]:
    """Findings of every sample by file name, as the command prints them."""
    done = _analyse("--json")
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    return {Path(item["capture"]["path"]).name: item for item in map(json.loads, done.stdout.splitlines())}


@pytest.mark.parametrize("truth", TRUTHS, ids=lambda truth: truth.file)
def test_the_verdict_is_true_and_the_object_keeps_its_contract(
    truth: SampleTruth, found: dict[str, dict[str, Any]]
) -> None:
    item = found[truth.file]
    assert_keeps(item, CONTRACT)
    assert item["capture"]["sha256"] == truth.sha256
    assert VerdictCode(item["verdict"]["code"]) in truth.acceptable


@pytest.mark.parametrize("truth", [item for item in TRUTHS if item.bands], ids=lambda truth: truth.file)
def test_every_true_band_is_met_and_no_other_is_held_to_be_there(
    truth: SampleTruth, found: dict[str, dict[str, Any]]
) -> None:
    sure = [band for band in found[truth.file]["bands"] if band["confidence"] >= 0.5]
    assert len(sure) == len(truth.bands)
    for true in truth.bands:
        met = [
            band
            for band in sure
            if band["track"] == true.track
            and abs(band["start_percent"] - true.travel.start) <= EDGE_PERCENT
            and abs(band["end_percent"] - true.travel.stop) <= EDGE_PERCENT
        ]
        assert len(met) == 1, sure
        assert met[0]["confidence"] >= CONFIDENCE


@pytest.mark.parametrize("truth", [item for item in TRUTHS if not item.bands], ids=lambda truth: truth.file)
def test_no_band_is_held_to_be_there_where_none_is(
    truth: SampleTruth, found: dict[str, dict[str, Any]]
) -> None:
    assert not [band for band in found[truth.file]["bands"] if band["confidence"] >= 0.5]


def test_several_processes_give_the_same_in_the_same_order(found: dict[str, dict[str, Any]]) -> None:
    done = _analyse("--json", "--jobs", "2")
    assert done.returncode == 0, done.stderr
    assert [json.loads(line) for line in done.stdout.splitlines()] == list(found.values())


def test_the_text_is_printable_line_by_line_and_says_every_verdict() -> None:
    done = _analyse()
    assert done.returncode == 0, done.stderr
    assert all(line.isprintable() for line in done.stdout.splitlines())
    assert done.stdout.count("What this does not say") == len(TRUTHS)


def test_the_demonstration_leaves_what_it_says_without_a_screen(tmp_path: Path) -> None:
    clean = {key: value for key, value in os.environ.items() if key not in ("DISPLAY", "WAYLAND_DISPLAY")}
    done = subprocess.run(
        [sys.executable, "-m", "app", "demo", "shown here"],
        capture_output=True,
        text=True,
        check=False,
        cwd=tmp_path,
        env={**clean, "CI": "true", "PYTHONPATH": str(SAMPLES.parent)},
        timeout=300,
    )
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    made = tmp_path / "shown here"
    words = {"findings.txt", "findings.json", "report.html", "report.pdf"}
    names = {"W1041-rear-left-height.h5", "review.png", *words}
    assert {path.name for path in made.iterdir()} == names
    assert all(name in done.stdout for name in names)
    assert str(made) in done.stdout
    assert json.loads((made / "findings.json").read_text(encoding="utf-8"))["verdict"]["code"] == "worn_track"
    assert (made / "review.png").read_bytes().startswith(b"\x89PNG\r\n")
    page = (made / "report.html").read_text(encoding="utf-8")
    assert "Sensor track worn" in page
    assert "<svg" in page
    assert (made / "report.pdf").read_bytes().startswith(b"%PDF-")
    assert "stands rated for it" in page


def test_a_demonstration_that_cannot_be_written_is_one_line(tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file")
    done = subprocess.run(
        [sys.executable, "-m", "app", "demo", str(tmp_path / "taken"), "--no-window"],
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert done.returncode == 1
    assert len(done.stderr.splitlines()) == 1
    assert done.stderr.startswith(str(tmp_path / "taken"))


@pytest.mark.parametrize(
    ("environment", "seen"),
    [
        ({"DISPLAY": ":0", "CI": "true"}, False),
        ({"DISPLAY": ":0", "CI": "1"}, False),
        ({"DISPLAY": ":0", "QT_QPA_PLATFORM": "offscreen"}, False),
        ({}, False),
        ({"DISPLAY": ":0", "CI": "false"}, True),
        ({"DISPLAY": ":7", "CI": "false"}, False),
        ({"WAYLAND_DISPLAY": "wayland-0"}, True),
    ],
)
def test_the_window_opens_only_where_somebody_sees_it(
    environment: dict[str, str], seen: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    from app import window, x_display
    from app.errands import demonstration

    monkeypatch.setattr(window, "_loads", lambda library: True)
    monkeypatch.setattr(x_display, "answers", lambda display: display == ":0")
    assert demonstration.screen_here(environment, "linux") is seen
