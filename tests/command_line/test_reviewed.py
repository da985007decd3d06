"""What the review beside a capture says of its records, in the errands that print."""

from __future__ import annotations

import hashlib
import json
import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from analysis.captures import layout
from analysis.captures.reading import open_capture
from analysis.own_folder import kept_reviews
from analysis.review.job import with_fact
from analysis.review.records import with_word
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.command_line import main
from app.resources import folder

Out = pytest.CaptureFixture[str]
SAMPLE = folder("sample_captures") / "W1041-rear-left-height.h5"
TOLD = "as their review says"


@pytest.fixture
def told(tmp_path: Path) -> Path:
    """A sample of whose reference its review says that nobody knows what it is."""
    path = tmp_path / "told.h5"
    shutil.copy(SAMPLE, path)
    sidecar = read_sidecar(path)
    records = sidecar.review.records
    with open_capture(path) as opened:
        for record in opened.capture.records:
            for channel in record.channels:
                if channel.role == "reference":
                    records = with_word(records, record.name, "role", "", channel=channel.name)
    write_sidecar(sidecar, replace(sidecar.review, records=records))
    return path


def _printed(capsys: Out, *call: str) -> str:
    assert main(list(call)) == 0
    return " ".join(capsys.readouterr().out.split())


def test_text_hears_the_review_and_says_so_in_one_line(told: Path, capsys: Out) -> None:
    said = _printed(capsys, "analyse", str(told))
    assert "The reference was not recorded." in said
    assert said.count(TOLD) == 1


def test_a_review_that_the_window_keeps_elsewhere_is_heard_too(
    told: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: Out
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    kept = kept_reviews()
    kept.mkdir(parents=True)
    digest = hashlib.sha256(told.read_bytes()).hexdigest()
    (kept / f"{'0' * 64}.review.json").write_text("of another capture", encoding="utf-8")
    layout.review_path(told).rename(kept / f"{digest}.review.json")
    said = _printed(capsys, "analyse", str(told))
    assert "The reference was not recorded." in said
    assert said.count(TOLD) == 1


def test_text_can_be_of_the_capture_alone(told: Path, capsys: Out) -> None:
    said = _printed(capsys, "analyse", "--no-review", str(told))
    assert "The reference is good" in said
    assert TOLD not in said


def test_json_is_of_the_capture_alone_unless_the_review_is_asked_for(told: Path, capsys: Out) -> None:
    alone = json.loads(_printed(capsys, "analyse", "--json", str(told)))
    layout.review_path(told).rename(told.parent / "away.json")
    assert json.loads(_printed(capsys, "analyse", "--json", str(told))) == alone
    (told.parent / "away.json").rename(layout.review_path(told))
    heard = json.loads(_printed(capsys, "analyse", "--json", "--review", str(told)))
    assert heard.keys() == alone.keys()
    states = [{item["code"]: item["state"] for item in found["evidence"]} for found in (alone, heard)]
    assert [item["reference_good"] for item in states] == ["proved", "not_shown"]
    assert [line for line in heard["assumptions"] if TOLD in line]
    assert not [line for line in alone["assumptions"] if TOLD in line]


def test_a_review_that_cannot_be_used_is_said_and_the_capture_stands_alone(told: Path, capsys: Out) -> None:
    layout.review_path(told).write_text("{ torn", encoding="utf-8")
    said = _printed(capsys, "analyse", str(told))
    assert "The review beside it is not used: " in said
    assert "The reference is good" in said


def test_compare_hears_both_reviews_in_text_and_none_in_json(told: Path, capsys: Out) -> None:
    said = _printed(capsys, "compare", str(SAMPLE), str(told))
    assert said.count(TOLD) == 1
    checks = json.loads(_printed(capsys, "compare", "--json", str(SAMPLE), str(told)))["checks"]
    heard = json.loads(_printed(capsys, "compare", "--json", "--review", str(SAMPLE), str(told)))["checks"]
    level = next(item for item in checks if item["code"] == "reference_level")
    assert level["after"] is not None
    assert not [item for item in heard if item["code"] == "reference_level" and item["after"] is not None]


def test_compare_hears_of_each_review_where_the_sensor_sits_and_says_so(told: Path, capsys: Out) -> None:
    sidecar = read_sidecar(told)
    job = with_fact(sidecar.review.job, "mounting", "rear right")
    write_sidecar(sidecar, replace(sidecar.review, job=job))
    said = _printed(capsys, "compare", str(SAMPLE), str(told))
    assert "two different sensors, mounted rear left and rear right" in said
    assert said.count("as its review says") == 1
    alone = _printed(capsys, "compare", "--no-review", str(SAMPLE), str(told))
    assert "two different sensors" not in alone


def test_a_report_hears_the_review_of_the_capture_that_is_set_beside_it(
    told: Path, tmp_path: Path, capsys: Out
) -> None:
    target = tmp_path / "out.html"
    assert main(["report", str(told), "-o", str(target), "--compare", str(told)]) == 0
    page = target.read_text("utf-8")
    assert TOLD in page
    assert "The reference was not recorded" in page
