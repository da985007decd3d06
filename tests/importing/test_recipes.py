"""What was decided once holds for the next file of the same shape, and for no other."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from analysis.captures.model import Role, Step
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.choices import TextChoices
from analysis.importing.opening import open_table
from analysis.importing.preview import preview
from analysis.importing.recipe import keep_recipe, load_recipe, recipe_of
from analysis.importing.recipes import find_recipe, forget_recipe, keep_for_shape, kept_recipes
from analysis.importing.shape import shape_of
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes
from analysis.own_folder import own_folder

CHOSEN = Wishes(
    channels={"a": Role.SECOND_SIGNAL, "b": Role.SUPPLY},
    units={"b": "mV"},
    factors={"a": 10.0},
    step=Step.HOLD,
    attributes={"vehicle": "Larkspur 3", "recorder": "bench box 2"},
    probe_points={"a": "sensor end"},
    conditions={"ignition": "on"},
)


def _table(path: Path, heading: str = "time,a,b", interval_s: float = 0.001, rows: int = 60) -> Path:
    lines = [
        f"{n * interval_s:.4f},{0.1 + 0.001 * (n % 7):.4f},{5.0 + 0.001 * (n % 3):.4f}" for n in range(rows)
    ]
    path.write_text("\n".join([heading, *lines]) + "\n")
    return path


def _kept(tmp_path: Path, wishes: Wishes = CHOSEN, source: Path | None = None) -> tuple[Path, Understood]:
    folder = tmp_path / "recipes"
    source = source or _table(tmp_path / "first.csv")
    (understood,) = import_capture([source], tmp_path / "first.h5", wishes, replace_target=True)
    keep_for_shape(understood, wishes, folder)
    return folder, understood


def test_a_kept_recipe_is_followed_for_a_file_of_the_same_shape(tmp_path: Path) -> None:
    folder, _ = _kept(tmp_path)
    second = _table(
        tmp_path / "second.csv", interval_s=0.0025, rows=90
    )  # longer and slower: one shape all the same
    (understood,) = import_capture([second], tmp_path / "second.h5", recipes=folder)
    assert understood.recipe is not None
    with open_capture(tmp_path / "second.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == 0.0025
        second_signal, supply = record.channel(Role.SECOND_SIGNAL), record.channel(Role.SUPPLY)
        assert second_signal is not None
        assert supply is not None
        assert second_signal.volts(0, 1)[0] == pytest.approx(1.0)
        assert supply.volts(0, 1)[0] == pytest.approx(0.005)


def test_car_step_conditions_and_probe_points_are_not_claimed_of_the_next_visit(tmp_path: Path) -> None:
    folder, _ = _kept(tmp_path)
    import_capture([_table(tmp_path / "second.csv")], tmp_path / "second.h5", recipes=folder)
    with open_capture(tmp_path / "second.h5") as opened:
        (record,) = opened.capture.records
        assert opened.capture.text("vehicle") == ""
        assert opened.capture.text("recorder") == "bench box 2"
        assert record.step is not Step.HOLD
        assert "ignition" not in record.attributes
        assert all("probe_point" not in item.attributes for item in record.channels)


@pytest.mark.parametrize("heading", ["time,a,c", "time,a [mV],b", "b,a,time", "time;a;b"])
def test_another_shape_is_not_touched_by_it(heading: str, tmp_path: Path) -> None:
    folder, _ = _kept(tmp_path)
    other = _table(tmp_path / "other.csv", heading)
    if ";" in heading:
        other.write_text(other.read_text().replace(",", ";"))
    (understood,) = import_capture([other], tmp_path / "o.h5", Wishes(channels={"2": Role.SIGNAL}, interval_s=1.0), recipes=folder)  # fmt: skip  # noqa: E501
    assert understood.recipe is None


def test_the_recipe_that_was_kept_last_is_followed(tmp_path: Path) -> None:
    folder, understood = _kept(tmp_path)
    keep_recipe(recipe_of(understood, CHOSEN), folder / "aaa.json")
    late = Wishes(channels={"a": Role.SIGNAL})
    (again,) = import_capture([tmp_path / "first.csv"], tmp_path / "again.h5", late)
    keep_recipe(recipe_of(again, late), folder / "zzz.json")
    keep_recipe({**recipe_of(understood, CHOSEN), "kept": "2001-01-01T00:00:00+00:00"}, folder / "mmm.json")
    assert understood.shape is not None
    found = find_recipe(understood.shape, folder)
    assert found is not None
    assert found.path == folder / "zzz.json"
    assert found.wishes.channels == {"a": Role.SIGNAL}


def test_keeping_again_replaces_and_forgetting_removes(tmp_path: Path) -> None:
    folder, understood = _kept(tmp_path)
    _kept(tmp_path, Wishes(channels={"b": Role.REFERENCE}))
    (entry,) = kept_recipes(folder)
    assert entry.recipe is not None
    assert entry.recipe.wishes.channels == {"b": Role.REFERENCE}
    forget_recipe(entry.recipe)
    forget_recipe(entry.recipe)
    assert understood.shape is not None
    assert find_recipe(understood.shape, folder) is None
    assert find_recipe(understood.shape, tmp_path / "nowhere") is None


def test_what_is_said_now_wins_over_the_recipe(tmp_path: Path) -> None:
    folder, _ = _kept(tmp_path)
    second = _table(tmp_path / "second.csv")
    stated = Wishes(channels={"a": Role.GROUND}, interval_s=0.5)
    import_capture([second], tmp_path / "second.h5", stated, recipes=folder)
    with open_capture(tmp_path / "second.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == 0.5
        assert [item.role for item in record.channels] == [Role.GROUND]


def test_a_recipe_says_how_a_text_is_written_that_is_not_understood_without_it(
    tmp_path: Path,
) -> None:
    def caret(path: Path, start: int) -> Path:
        path.write_text("time [s]^sig\n" + "".join(f"{n + start}^{1 + n % 3}\n" for n in range(30)))
        return path

    wishes = Wishes(text=TextChoices(delimiter="^"))
    first, second = caret(tmp_path / "1.txt", 0), caret(tmp_path / "2.txt", 100)
    with pytest.raises(ImportingError):
        import_capture([second], tmp_path / "2.h5")
    folder, _ = _kept(tmp_path, wishes, first)
    (understood,) = import_capture([second], tmp_path / "2.h5", recipes=folder)
    assert understood.recipe is not None
    assert preview(second, recipes=folder).ready
    with open_capture(tmp_path / "2.h5") as opened:
        assert opened.capture.records[0].first_sample_s == 100.0


def test_files_of_one_nameless_array_share_a_shape_whatever_they_are_called(tmp_path: Path) -> None:
    for name in ("monday", "tuesday"):
        np.save(tmp_path / f"{name}.npy", np.linspace(0.0, 5.0, 300).reshape(-1, 2))
    wishes = Wishes(channels={"2": Role.GROUND}, interval_s=0.01)
    folder, _ = _kept(tmp_path, wishes, tmp_path / "monday.npy")
    (understood,) = import_capture([tmp_path / "tuesday.npy"], tmp_path / "t.h5", recipes=folder)
    assert [(item.place, item.role) for item in understood.plan.channels] == [(1, Role.GROUND)]


def test_a_preview_names_the_recipe_that_fits(tmp_path: Path) -> None:
    folder, _ = _kept(tmp_path)
    seen = preview(_table(tmp_path / "second.csv"), recipes=folder)
    assert seen.recipe is not None
    assert [item.role for item in seen.columns] == [None, Role.SECOND_SIGNAL, Role.SUPPLY]
    assert preview(tmp_path / "second.csv").recipe is None


def test_a_recipe_is_written_and_read_without_loss(tmp_path: Path) -> None:
    text = TextChoices(";", ",", "", 3, "cp1252")
    (understood,) = import_capture([_table(tmp_path / "t.csv")], tmp_path / "a.h5")
    wishes = Wishes(
        channels={"a": Role.GROUND, "b": Role.REFERENCE},
        time_column="time",
        units={"b": "mV"},
        full_scale_v=10.0,
        step=Step.SWEEP,
        resample=True,
        attributes={"vehicle": "Larkspur ’3’"},
        text=text,
        factors={"a": 10.0},
        probe_points={"all": "sensor end"},
        return_points={"signal": "battery negative"},
        conditions={"engine": "off"},
    )
    keep_recipe(recipe_of(understood, wishes), tmp_path / "r.json")
    read = load_recipe(tmp_path / "r.json")
    assert read.wishes == wishes
    assert read.shape == understood.shape == shape_of(open_table(tmp_path / "t.csv"))


def test_a_file_that_is_no_recipe_is_never_overwritten_by_one(tmp_path: Path) -> None:
    source = _table(tmp_path / "t.csv")
    (understood,) = import_capture([source], tmp_path / "a.h5")
    before = source.read_bytes()
    with pytest.raises(ImportingError, match="exists and is no recipe"):
        keep_recipe(recipe_of(understood, Wishes()), source)
    assert source.read_bytes() == before


def _hostile(good: dict[str, Any]) -> dict[str, Any]:
    def but(**changed: Any) -> dict[str, Any]:
        return {**good, **changed}

    return {
        "no object": [good],
        "another schema": but(schema="wornband-recipe/9"),
        "a role that is none": but(channels={"a": "king"}),
        "a role that is a list": but(channels={"a": ["signal"]}),
        "channels that are a list": but(channels=["signal"]),
        "a step that is none": but(step="jump"),
        "a time that is a number": but(time_column=3),
        "an interval of nought": but(sample_interval_s=0),
        "an interval that is true": but(sample_interval_s=True),
        "a huge interval": but(sample_interval_s=10**400),
        "a factor that is text": but(factors={"a": "10"}),
        "ten thousand columns": but(shape={"kind": "text", "columns": ["a"] * 10**4, "units": [""] * 10**4}),
        "a shape without units": but(shape={"kind": "text", "columns": ["a"], "units": []}),
        "a shape without columns": but(shape={}),
        "a long word": but(units={"a": "V" * 1000}),
        "a mark of two letters": but(text={"delimiter": "ab"}),
        "a quote between cells": but(text={"delimiter": '"'}),
        "an encoding that runs code": but(text={"encoding": "rot13"}),
        "lines without end": but(text={"head_lines": 10**9}),
        "a condition of its own": but(conditions={"weather": "fine"}),
        "a nought in a word": but(attributes={"vehicle": "a\0b"}),
    }


@pytest.mark.parametrize("kind", _hostile({}))
def test_a_hostile_recipe_is_refused_and_stops_nothing(kind: str, tmp_path: Path) -> None:
    folder, understood = _kept(tmp_path)
    (entry,) = kept_recipes(folder)
    good = json.loads(entry.path.read_text())
    entry.path.write_text(json.dumps(_hostile(good)[kind]))
    with pytest.raises(ImportingError, match="no recipe"):
        load_recipe(entry.path)
    (entry,) = kept_recipes(folder)
    assert "no recipe" in entry.problem
    (understood,) = import_capture([_table(tmp_path / "second.csv")], tmp_path / "2.h5", recipes=folder)
    assert understood.recipe is None


@pytest.mark.parametrize("raw", [b"", b"\xff\xfe{}", b"[" * 10**5, b" " * 10**6, b'{"schema": NaN}'])
def test_what_is_no_json_is_no_recipe(raw: bytes, tmp_path: Path) -> None:
    (tmp_path / "r.json").write_bytes(raw)
    with pytest.raises(ImportingError, match="no recipe"):
        load_recipe(tmp_path / "r.json")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_a_pipe_or_a_folder_in_the_place_of_a_recipe_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.json")
    (tmp_path / "folder.json").mkdir()
    assert [entry.recipe for entry in kept_recipes(tmp_path)] == [None, None]


def test_the_folder_lies_where_the_users_configuration_does() -> None:
    assert own_folder("recipes", {"XDG_CONFIG_HOME": "/set", "HOME": "/home/k"}, platform="linux") == Path("/set/wornband/recipes")  # fmt: skip  # noqa: E501
