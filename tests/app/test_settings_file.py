"""The file of the settings: nothing in it is taken on trust, and nothing of it is lost."""

from __future__ import annotations

import json
import os
from dataclasses import replace
from pathlib import Path

import pytest

from analysis.errors import WornbandError
from analysis.reports.workshop import Workshop
from app.settings import Settings
from app.settings_file import SCHEMA, SettingsFile

BAD = {
    "empty": b"",
    "no text": b"\xff\xfe\x00",
    "no object": b"[1, 2]",
    "nothing in it": b"{}",
    "of a later version": b'{"schema": "wornband-settings/2", "values": {"paper": "letter"}}',
    "values that are no table": b'{"schema": "wornband-settings/1", "values": ["paper"]}',
    "deep": b'{"schema": "wornband-settings/1", "values": ' + b"[" * 100_000,
    "too long": b'{"schema": "wornband-settings/1", "values": {"paper": "' + b"x" * 1_000_001 + b'"}}',
}


@pytest.mark.parametrize("name", BAD)
def test_a_file_that_cannot_be_used_counts_as_none_and_is_kept_aside(name: str, tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    path.write_bytes(BAD[name])
    settings = Settings(SettingsFile(path))
    assert (settings.paper, settings.recent, settings.workshop.name) == ("a4", (), "")
    settings.paper = "letter"
    assert Settings(SettingsFile(path)).paper == "letter"
    assert (tmp_path / "settings.damaged.json").read_bytes() == BAD[name]


def test_values_of_another_kind_are_left_out_and_the_rest_holds(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    values = {
        "paper": {"a": 1},
        "recent": ["a.h5", 5],
        "colours": "\ud800dark",
        "lanes": None,
        "geometry": "no base64 \0",
        "known_good": '{"a": ["b"], "c": "d.h5"}',
        "workshop_name": "Garage",
    }
    path.write_text(json.dumps({"schema": SCHEMA, "values": values}))
    settings = Settings(SettingsFile(path))
    assert settings.paper == "a4"
    assert settings.recent == ()
    assert settings.colours == "system"
    assert settings.lanes
    assert settings.workshop.name == "Garage"
    assert settings.known_good["c"] == "d.h5"
    settings.geometry.size()


def test_two_windows_keep_each_others_changes(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    one, other = Settings(SettingsFile(path)), Settings(SettingsFile(path))
    one.paper, other.colours = "letter", "dark"
    found = Settings(SettingsFile(path))
    assert (found.paper, found.colours) == ("letter", "dark")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_a_pipe_in_its_place_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "settings.json")
    assert Settings(SettingsFile(tmp_path / "settings.json")).paper == "a4"


def test_where_it_cannot_be_written_it_is_told_once_and_kept_in_memory(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("no folder")
    told: list[WornbandError] = []
    settings = Settings(SettingsFile(tmp_path / "file" / "settings.json"))
    settings.tell = told.append
    settings.workshop = replace(Workshop(), name="Garage")
    settings.paper = "letter"
    assert (settings.paper, settings.workshop.name) == ("letter", "Garage")
    assert [error.problem for error in told] == ["there is no such folder to write to"]
