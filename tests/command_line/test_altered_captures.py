"""A capture that was changed after it was written is examined all the same, and every answer says so."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import h5py
import pytest

from app.command_line import main
from app.resources import folder
from tests.captures.altering import alter

Out = pytest.CaptureFixture[str]
TOLD = "do not match the fingerprint in the file"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A sample as it came."""
    made = tmp_path / "visit.h5"
    shutil.copy(folder("sample_captures") / "W1041-rear-left-height.h5", made)
    return made


def _out(capsys: Out, *call: object) -> tuple[str, str]:
    assert main([str(item) for item in call]) == 0
    out, err = capsys.readouterr()
    return " ".join(out.split()), " ".join(err.split())


@pytest.mark.parametrize(
    ("what", "content"),
    [("nothing", "matches"), ("a sample", "differs"), ("a meaning", "differs"), ("the packing", "matches")],
)
def test_text_and_json_of_analyse_say_whether_the_content_is_what_was_written(
    path: Path, what: str, content: str, capsys: Out
) -> None:
    alter(path, what)
    text, _ = _out(capsys, "analyse", path)
    assert text.count(TOLD) == (content == "differs")
    item, _ = _out(capsys, "analyse", "--json", path)
    assert json.loads(item)["capture"]["content"] == content


def test_a_capture_without_a_fingerprint_is_not_suspected(path: Path, capsys: Out) -> None:
    with h5py.File(path, "a") as file:
        del file.attrs["content_sha256"]
    text, _ = _out(capsys, "analyse", path)
    assert "fingerprint" not in text
    item, _ = _out(capsys, "analyse", "--json", path)
    assert json.loads(item)["capture"]["content"] == "absent"


def test_compare_says_which_of_the_two_was_changed(path: Path, tmp_path: Path, capsys: Out) -> None:
    other = tmp_path / "later.h5"
    shutil.copy(path, other)
    alter(other, "a sample")
    text, _ = _out(capsys, "compare", path, other)
    assert text.count(TOLD) == 1
    item, _ = _out(capsys, "compare", "--json", path, other)
    said = json.loads(item)
    assert (said["before"]["content"], said["after"]["content"]) == ("matches", "differs")
    assert sum(TOLD in caution for caution in said["cautions"]) == 1


def test_a_report_says_it_on_both_pages_and_on_the_terminal(path: Path, tmp_path: Path, capsys: Out) -> None:
    _, err = _out(capsys, "report", path, "-o", tmp_path / "whole.html")
    assert err == ""
    alter(path, "a sample")
    target = tmp_path / "altered.html"
    _, err = _out(capsys, "report", path, "-o", target)
    assert err.startswith(f"{path}: ")
    assert TOLD in err
    text = target.read_text(encoding="utf-8")
    assert TOLD in text  # on the evidence page
    assert "is no evidence" in text  # on the customer's
    whole = (tmp_path / "whole.html").read_text(encoding="utf-8")
    assert TOLD not in whole
    assert "is no evidence" not in whole


def test_findings_that_are_exported_say_it_too(path: Path, tmp_path: Path, capsys: Out) -> None:
    alter(path, "a sample")
    target = tmp_path / "found.json"
    _out(capsys, "export", path, "-o", target)
    assert json.loads(target.read_text(encoding="utf-8"))["capture"]["content"] == "differs"


@pytest.mark.parametrize(
    "what",
    [("--record", "001", "-o", "out.csv"), ("-o", "out.json"), ("--picture", "track", "-o", "out.svg")],
)
def test_samples_and_pictures_of_a_changed_capture_are_exported_and_it_is_told(
    path: Path, tmp_path: Path, what: tuple[str, ...], capsys: Out
) -> None:
    *options, name = what
    out, err = _out(capsys, "export", path, *options, tmp_path / f"whole-{name}")
    assert err == ""
    alter(path, "a sample")
    target = tmp_path / name
    out, err = _out(capsys, "export", path, *options, target)
    assert out == str(target)
    assert target.stat().st_size > 1000
    assert err.startswith(f"{path}: ")
    assert err.count(TOLD) == 1
    if target.suffix == ".svg":
        assert "changed after it was recorded" in target.read_text(encoding="utf-8")


def test_no_capture_is_made_of_a_changed_one_that_would_bear_a_fingerprint_that_fits(
    path: Path, tmp_path: Path, capsys: Out
) -> None:
    alter(path, "a sample")
    target = tmp_path / "anew.h5"
    assert main(["export", str(path), "-o", str(target)]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert "does not match the fingerprint" in err
    assert not target.exists()
