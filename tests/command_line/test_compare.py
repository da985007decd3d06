"""``wornband compare``: the manners of the command, on the sample captures."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from app.command_line import main
from app.resources import folder

Out = pytest.CaptureFixture[str]
SAMPLES = folder("sample_captures")
BEFORE = str(SAMPLES / "W1041-rear-left-height.h5")
AFTER = str(SAMPLES / "W1041-rear-left-height-new-sensor.h5")
RIGHT = str(SAMPLES / "W1041-rear-right-height.h5")


def test_before_and_after_in_one_object(capsys: Out) -> None:
    assert main(["compare", BEFORE, AFTER, "--json"]) == 0
    said = capsys.readouterr()
    (line,) = said.out.splitlines()
    found = json.loads(line)
    assert found["schema"] == "wornband-comparison/1"
    assert [item["change"] for item in found["bands"]] == ["gone"]
    assert found["before"]["path"] == BEFORE
    assert len(found["before"]["sha256"]) == 64
    assert said.err == ""


def test_before_and_after_in_words_with_the_cautions_below(capsys: Out) -> None:
    assert main(["compare", BEFORE, AFTER]) == 0
    said = capsys.readouterr().out
    assert "is gone" in said
    assert said.index("Readings") < said.index("Before you connect or sweep")
    assert all(len(line) <= 100 for line in said.splitlines()[1:])


def test_a_mirrored_side_can_be_named(capsys: Out) -> None:
    assert main(["compare", BEFORE, RIGHT, "--json", "--mirrored", "after"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["after"]["mirrored"] is True
    assert found["before"]["mirrored"] is False
    assert found["bands"][0]["after"]["passes"] > 10


@pytest.mark.parametrize("as_json", [False, True])
def test_a_file_that_cannot_be_read_gives_one_line_and_status_one(
    tmp_path: Path, capsys: Out, as_json: bool
) -> None:
    bad = tmp_path / "bad.h5"
    bad.write_text("time,volts\n")
    assert main(["compare", BEFORE, str(bad), *(["--json"] if as_json else [])]) == 1
    said = capsys.readouterr()
    (line,) = said.err.splitlines()
    assert line.startswith(f"{bad}: ")
    assert "; " in line
    if as_json:
        found = json.loads(said.out)
        assert (found["failed"], found["before"]["path"]) == (str(bad), BEFORE)
        assert found["error"] in line
    else:
        assert said.out == ""


def test_two_files_that_cannot_be_read_give_a_line_each(tmp_path: Path, capsys: Out) -> None:
    assert main(["compare", str(tmp_path / "a.h5"), str(tmp_path / "b.h5")]) == 1
    assert len(capsys.readouterr().err.splitlines()) == 2


def test_one_file_or_three_are_a_wrong_call(capsys: Out) -> None:
    assert main(["compare", BEFORE]) == 2
    assert main(["compare", BEFORE, AFTER, RIGHT]) == 2
    assert main(["compare", BEFORE, AFTER, "--mirrored", "left"]) == 2
    assert "usage" in capsys.readouterr().err
