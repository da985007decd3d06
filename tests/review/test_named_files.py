"""A review opens no file of this PC but those beside it and those that the technician chose."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from analysis.review.named_files import allowed_path

OUTSIDE = [
    "/etc/passwd",
    "../secret.png",
    "photos/../../secret.png",
    "..",
    "D:\\photos\\secret.png",
    "C:secret.png",
    "\\secret.png",
    "..\\secret.png",
    "photos\\..\\..\\secret.png",
    "\\\\stranger.example\\share\\a.png",
    "//stranger.example/share/a.png",
    "\\\\?\\C:\\secret.png",
    "a\0.png",
    "",
]


@pytest.mark.parametrize("name", OUTSIDE)
def test_a_name_that_leads_out_of_the_folder_is_refused(name: str, tmp_path: Path) -> None:
    (tmp_path / "inner").mkdir()
    assert allowed_path(tmp_path / "inner", name) is None


@pytest.mark.parametrize("name", ["a.png", "photos/a.png", "a b … ü.png", "..a.png", "a..png"])
def test_a_name_inside_the_folder_is_taken(name: str, tmp_path: Path) -> None:
    assert allowed_path(tmp_path, name) == tmp_path / name


def test_a_name_that_leads_out_is_not_even_looked_up(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def ask(*_: object) -> Path:
        raise AssertionError("it was looked up")

    monkeypatch.setattr(Path, "resolve", ask)
    assert allowed_path(tmp_path, "\\\\stranger.example\\share\\a.png") is None


@pytest.mark.skipif(os.name != "posix", reason="links need a right of their own there")
def test_a_link_that_leads_out_is_refused(tmp_path: Path) -> None:
    (tmp_path / "secret.png").write_bytes(b"secret")
    (tmp_path / "job").mkdir()
    (tmp_path / "job" / "a.png").symlink_to(tmp_path / "secret.png")
    (tmp_path / "job" / "round.png").symlink_to(tmp_path / "job" / "round.png")
    assert allowed_path(tmp_path / "job", "a.png") is None
    assert allowed_path(tmp_path / "job", "round.png") in (None, tmp_path / "job" / "round.png")


def test_what_was_chosen_on_this_pc_is_taken_wherever_it_lies(tmp_path: Path) -> None:
    elsewhere = str(tmp_path / "camera" / "a.png")
    assert allowed_path(tmp_path / "job", elsewhere, {elsewhere}) == Path(elsewhere)
    assert allowed_path(tmp_path / "job", elsewhere, {"b.png"}) is None
