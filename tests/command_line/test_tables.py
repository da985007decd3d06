"""``wornband import``, ``export`` and ``watch``, called as a technician calls them."""

from __future__ import annotations

import io
import json
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest

from analysis.captures.model import Role, Step
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.importing.recipe import load_recipe
from app.command_line import main
from app.errands.watching import watch_folder

_SAMPLE = Path(__file__).parents[2] / "sample_captures" / "W1041-rear-left-height.h5"


def _sweep(path: Path, heading: str = "time,a,b") -> Path:
    time_s = np.arange(6000) / 1000.0
    volts = 2.5 + 2.0 * np.sin(time_s * 2.0) + np.random.default_rng(3).normal(0.0, 0.003, len(time_s))
    rows = (
        f"{t:.3f},{v:.4f},{5.0 + 0.001 * (n % 3):.4f}"
        for n, (t, v) in enumerate(zip(time_s, volts, strict=True))
    )
    path.write_text("\n".join([heading, *rows]) + "\n")
    return path


def test_import_says_what_it_took_each_column_for(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source = _sweep(tmp_path / "t.csv")
    assert main(["import", str(source), "-o", str(tmp_path / "a.h5"), "--step", "sweep"]) == 0
    said = capsys.readouterr().out
    assert "signal         a: it moves by" in said
    assert "reference      b: it stays near 5 V" in said
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].step is Step.SWEEP
        assert opened.capture.text("source_name") == "t.csv"


def test_what_was_decided_once_holds_for_the_next_file_of_the_same_shape(tmp_path: Path) -> None:
    recipe = str(tmp_path / "recipe.json")
    first, second = _sweep(tmp_path / "1.csv"), _sweep(tmp_path / "2.csv")
    chosen = [
        "--channel",
        "a=second_signal",
        "--channel",
        "3=supply",
        "--unit",
        "b=mV",
        "--set",
        "vehicle=Larkspur 3",
    ]
    assert main(["import", str(first), "-o", str(tmp_path / "1.h5"), *chosen, "--keep-recipe", recipe]) == 0
    assert main(["import", str(second), "-o", str(tmp_path / "2.h5"), "--recipe", recipe]) == 0
    for name in ("1.h5", "2.h5"):
        with open_capture(tmp_path / name) as opened:
            (record,) = opened.capture.records
            supply = record.channel(Role.SUPPLY)
            assert supply is not None
            assert supply.volts(0, 1)[0] == pytest.approx(0.005)
            assert record.channel(Role.SECOND_SIGNAL) is not None
            assert opened.capture.text("vehicle") == "Larkspur 3"


def test_a_recipe_for_other_columns_says_what_is_there(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    recipe = str(tmp_path / "recipe.json")
    main(["import", str(_sweep(tmp_path / "1.csv")), "-o", str(tmp_path / "1.h5"), "--keep-recipe", recipe])
    other = _sweep(tmp_path / "2.csv", "time,left,right")
    assert main(["import", str(other), "-o", str(tmp_path / "2.h5"), "--recipe", recipe]) == 1
    assert "it has no column a; there are: time, left, right; name one of these" in capsys.readouterr().err
    assert not (tmp_path / "2.h5").exists()


@pytest.mark.parametrize(
    "arguments",
    [
        ["--channel", "a=green"],
        ["--channel", "a"],
        ["--sample-rate", "0"],
        ["--condition", "weather=fine"],
        ["--factor", "a=-1"],
        ["--head-lines", "two"],
        ["--encoding", "rot13"],
        ["--recipe", "r.json", "--no-recipe"],
    ],
)
def test_a_wrong_call_is_told_from_a_bad_file(arguments: list[str], tmp_path: Path) -> None:
    source = _sweep(tmp_path / "t.csv")
    assert main(["import", str(source), "-o", str(tmp_path / "a.h5"), *arguments]) == 2
    assert not (tmp_path / "a.h5").exists()


@pytest.mark.parametrize(
    "held", ["", "[]", "{}", '{"schema": "wornband-recipe/1", "channels": [1]}', "[" * 9999]
)
def test_what_is_no_recipe_is_refused(held: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "r.json").write_text(held)
    source = _sweep(tmp_path / "t.csv")
    call = ["import", str(source), "-o", str(tmp_path / "a.h5"), "--recipe", str(tmp_path / "r.json")]
    assert main(call) == 1
    assert "it is no recipe" in capsys.readouterr().err


def test_samples_and_findings_of_a_sample_are_exported(
    sample: Path, tmp_path: Path, by_hand: list[str]
) -> None:
    assert main(["export", str(sample), "-o", str(tmp_path / "a.parquet"), "--span", "0", "0.5"]) == 0
    assert list(tmp_path.glob("a*.parquet"))
    assert main(["export", str(sample), "-o", str(tmp_path / "f.json")]) == 0
    assert json.loads((tmp_path / "f.json").read_text())["schema"] == "wornband-findings/1"
    assert main(["export", str(sample), "-o", str(tmp_path / "f.csv"), "--findings"]) == 0
    assert (tmp_path / "f.csv").read_text().startswith("kind,code,")
    assert main(["export", str(sample), "-o", str(tmp_path / "f.csv"), "--findings"]) == 1


def test_watch_takes_what_has_stopped_growing_and_leaves_what_fails(tmp_path: Path) -> None:
    _sweep(tmp_path / "good.csv")
    (tmp_path / "bad.csv").write_text("nothing here\n")
    growing = _sweep(tmp_path / "growing.csv")
    out, err = io.StringIO(), io.StringIO()

    def wait(seconds: float) -> None:
        with growing.open("a") as file:
            file.write("6.000,2.5,5.0\n")

    assert watch_folder(tmp_path, None, None, once=True, out=out, err=err, wait=wait) == 1
    assert "good" in out.getvalue()
    assert "bad.csv: no two rows of numbers" in err.getvalue()
    names = {item.name for item in tmp_path.iterdir()}
    assert names == {"good.csv", "good.csv.h5", "bad.csv", "growing.csv"}


@pytest.fixture
def configuration(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A user's configuration that is empty at first."""
    folder = tmp_path / "configuration"
    for name in ("XDG_CONFIG_HOME", "APPDATA"):
        monkeypatch.setenv(name, str(folder))
    return folder / "wornband" / "recipes"


def test_watch_follows_the_recipe_that_import_kept_for_what_it_would_have_to_ask(
    configuration: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first, folder = _sweep(tmp_path / "1.csv", "time,t [s],left"), tmp_path / "job"
    folder.mkdir()
    second = _sweep(folder / "2.csv", "time,t [s],left")
    out, err = io.StringIO(), io.StringIO()

    def watched() -> int:
        return watch_folder(folder, None, None, once=True, out=out, err=err, wait=lambda _: None)

    assert watched() == 1
    assert "several columns could be the time, and they do not agree" in err.getvalue()
    assert "say which with --time COLUMN" in err.getvalue()
    assert list(folder.iterdir()) == [second]
    options = ["--time", "time", "--channel", "t=signal", "--unit", "t=V", "--keep-recipe"]
    assert main(["import", str(first), "-o", str(tmp_path / "1.h5"), *options]) == 0
    assert len(list(configuration.iterdir())) == 1
    assert watched() == 0
    with open_capture(folder / "2.csv.h5") as opened:
        assert [item.role for item in opened.capture.records[0].channels] == [Role.SIGNAL]
        assert opened.capture.records[0].sample_interval_s == pytest.approx(0.001)


def test_a_recipe_that_was_kept_is_followed_and_that_is_said(
    configuration: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first, second = _sweep(tmp_path / "1.csv"), _sweep(tmp_path / "2.csv")
    call = ["import", str(first), "-o", str(tmp_path / "1.h5"), "--channel", "b=supply", "--keep-recipe"]
    assert main(call) == 0
    (kept,) = configuration.iterdir()
    assert f"kept in {kept}" in capsys.readouterr().out
    assert main(["import", str(second), "-o", str(tmp_path / "2.h5")]) == 0
    day = load_recipe(kept).day
    said = capsys.readouterr().out
    assert f"as kept on {day} for files of this shape" in said
    assert "supply         b: it was chosen" in said
    assert main(["import", str(second), "-o", str(tmp_path / "3.h5"), "--no-recipe"]) == 0
    said = capsys.readouterr().out
    assert "as kept" not in said
    assert "reference      b" in said


def test_a_source_is_never_taken_for_the_recipe_to_be_kept(
    configuration: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first, second = _sweep(tmp_path / "1.csv"), _sweep(tmp_path / "2.csv")
    before = first.read_bytes()
    assert main(["import", "-o", str(tmp_path / "a.h5"), "--keep-recipe", str(first), str(second)]) == 1
    assert "1.csv exists and is no recipe" in capsys.readouterr().err
    assert first.read_bytes() == before
    assert not (tmp_path / "a.h5").exists()


def test_how_a_text_is_written_can_be_said_by_hand(tmp_path: Path) -> None:
    source = tmp_path / "t.txt"
    rows = "".join(f"{n},0~{1 + n % 4},{n % 10}~5,0\n" for n in range(40))
    source.write_bytes(("Höhe und Bezug\nms~sensor~Bezug (größer)\n" + rows).encode("cp850"))
    call = ["import", str(source), "-o", str(tmp_path / "a.h5"), "--sample-interval", "0.001"]
    call += ["--channel", "2=signal", "--channel", "3=reference", "--factor", "2=10"]
    assert main(call) == 1  # nobody takes a tilde for what stands between cells
    chosen = ["--delimiter", "~", "--decimal", "comma", "--head-lines", "2", "--encoding", "cp850"]
    assert main([*call, *chosen]) == 0
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        signal, reference = record.channel(Role.SIGNAL), record.channel(Role.REFERENCE)
        assert signal is not None
        assert reference is not None
        np.testing.assert_allclose(signal.volts(0, 3), [10.0, 21.0, 32.0])
        assert reference.attributes["long_name"] == "Bezug (größer)"


def test_probe_points_and_conditions_go_into_the_capture(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    source = _sweep(tmp_path / "t.csv")
    call = ["import", str(source), "-o", str(tmp_path / "a.h5"), "--probe", "signal=sensor end"]
    call += ["--probe", "all=control-unit end", "--return-point", "b=battery negative", "--probe", "ground=x"]
    call += ["--condition", "ignition=on", "--condition", "plugged=no"]
    assert main(call) == 0
    assert "no channel is ground" in capsys.readouterr().out
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        signal, reference = record.channel(Role.SIGNAL), record.channel(Role.REFERENCE)
        assert signal is not None
        assert reference is not None
        assert signal.attributes["probe_point"] == "sensor end"
        assert "return_point" not in signal.attributes
        assert reference.attributes["probe_point"] == "control-unit end"
        assert reference.attributes["return_point"] == "battery negative"
        assert record.attributes["ignition"] == "on"
        assert str(record.attributes["plugged"]) == "0"


def test_a_probe_of_a_column_that_is_not_there_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    source = _sweep(tmp_path / "t.csv")
    call = ["import", str(source), "-o", str(tmp_path / "a.h5"), "--probe", "green=sensor end"]
    assert main(call) == 1
    assert "it has no column green" in capsys.readouterr().err


@pytest.mark.parametrize("step", ["none", None])
def test_a_step_is_guessed_unless_it_is_to_be_left_open(
    step: str | None, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    call = ["import", str(_sweep(tmp_path / "t.csv")), "-o", str(tmp_path / "a.h5")]
    assert main(call if step is None else [*call, "--step", step]) == 0
    assert ("step           sweep: the signal moves over" in capsys.readouterr().out) is (step is None)
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].step is (Step.SWEEP if step is None else None)


@pytest.mark.parametrize("picture", ["trace", "track"])
def test_a_picture_is_drawn_as_text_that_is_no_markup_and_as_pixels(
    picture: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with open_capture(_SAMPLE) as opened:
        titled = replace(opened.capture, title="</text><script/> & \x07")
        write_capture(titled, tmp_path / "a.h5")
    for ending in ("svg", "png"):
        call = ["export", str(tmp_path / "a.h5"), "--picture", picture, "-o", str(tmp_path / f"o.{ending}")]
        assert main(call) == 0
    root = ElementTree.fromstring((tmp_path / "o.svg").read_bytes())
    assert not [item for item in root.iter() if "script" in item.tag]
    words = " ".join("".join(item.itertext()) for item in root.iter() if item.tag.endswith("}text"))
    assert ("</text><script/>" in words) is (picture == "track")
    assert (tmp_path / "o.png").read_bytes().startswith(b"\x89PNG")
    assert main([*call[:-1], str(tmp_path / "o.svg")]) == 1
    assert main([*call[:-1], str(tmp_path / "o.pdf")]) == 1
    said = capsys.readouterr().err
    assert "exists already" in said
    assert "choose .png or .svg" in said
    assert {item.name for item in tmp_path.iterdir()} == {"a.h5", "o.svg", "o.png"}


def test_headings_and_names_of_a_table_act_on_no_terminal(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    odd = "\x1b[2Jmoved \u202egnorw\u202c \x07"
    rows = "".join(f"{at / 1000:.3f},{2.5 + at / 1000:.4f},x\n" for at in range(200))
    source = tmp_path / f"{odd}.csv"
    source.write_text(f"Time (s),{odd} (V),{odd}\n{rows}", encoding="utf-8")
    assert main(["import", str(source), "-o", str(tmp_path / "a.h5"), "--channel", f"{odd}=signal"]) in (0, 1)
    assert main(["import", str(source), "-o", str(tmp_path / "b.h5"), "--channel", "gone=signal"]) == 1
    main(["analyse", str(tmp_path / "a.h5")])
    said = capsys.readouterr()
    text = said.out + said.err
    assert "moved" in text
    assert not [letter for letter in text if letter in "\x1b\x07\u202e\u202c\r"]
