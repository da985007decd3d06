"""Rows of factors and offsets above the samples: followed and told, or asked; offsets that are said."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Channel, Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.preview import preview
from analysis.importing.recipe import read_recipe
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes
from app.command_line import main

_ROWS = range(600)
_SIGNAL_V = [round(2.4 + 1.9 * np.sin(n / 30), 3) for n in _ROWS]
_REFERENCE_V = [round(4.993 + 0.002 * (n % 3), 3) for n in _ROWS]
_GROUND_V = [round(0.012 + 0.001 * (n % 4), 3) for n in _ROWS]
_WIRES = list(zip(_GROUND_V, _REFERENCE_V, _SIGNAL_V, strict=True))


def _rows(form: str, factor: float = 1.0, offset_v: float = 0.0, every_s: float = 0.004) -> str:
    """Rows whose numbers become the volts above by that factor and offset."""
    return "".join(
        form.format(
            n=n,
            t=n * every_s,
            g=(g - offset_v) / factor,
            r=(r - offset_v) / factor,
            s=(s - offset_v) / factor,
        )
        + "\n"
        for n, (g, r, s) in enumerate(_WIRES)
    )


def _imported(
    folder: Path, text: str, wishes: Wishes | None = None
) -> tuple[Understood, dict[Role, Channel]]:
    (folder / "t.csv").write_text(text, encoding="utf-8")
    (one,) = import_capture([folder / "t.csv"], folder / "a.h5", wishes, replace_target=True)
    with open_capture(folder / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.004, rel=1e-9)
        np.testing.assert_allclose(record.channels[0].volts(), _expected(record.channels[0]), atol=2e-3)
        for channel in record.channels:
            np.testing.assert_allclose(channel.volts(), _expected(channel), atol=2e-3)
        return one, {item.role: item for item in record.channels if item.role is not None}


def _expected(channel: Channel) -> list[float]:
    return {Role.GROUND: _GROUND_V, Role.REFERENCE: _REFERENCE_V, Role.SIGNAL: _SIGNAL_V}[
        channel.role or Role.SUPPLY
    ]


FOLLOWED = {
    "factors in German, between units and samples": (
        "Größe;Zeit;Masse;Referenz;Signal\nEinheit;s;V;V;V\nFaktor;1;0,002;0,002;0,002\n"
        + _rows(";{t:.3f};{g:.0f};{r:.0f};{s:.0f}", 0.002).replace(".", ","),
        ["'Faktor;1;0,002;0,002;0,002'"],
    ),
    "factors and offsets, with their formula": (
        "# volts = reading * factor + offset\ncolumn,Time (s),Ground (V),Reference (V),Signal (V)\n"
        "factor,,0.0025,0.0025,0.0025\noffset,,-2.5,-2.5,-2.5\n"
        + _rows(",{t:.3f},{g:.0f},{r:.0f},{s:.0f}", 0.0025, -2.5),
        ["'factor,,0.0025,0.0025,0.0025'", "'offset,,-2.5,-2.5,-2.5'"],
    ),
    "the label where the times stand": (
        "Time [s]\tGround [V]\tRef [V]\tSignal [V]\nMultiplier\t0.5\t0.5\t0.5\n"
        + _rows("{t:.3f}\t{g:.4f}\t{r:.4f}\t{s:.4f}", 0.5),
        ["Multiplier"],
    ),
    "a label in a cell of its own before rows without one": (
        "t [s];gnd [V];ref [V];sig [V]\nScale factor:;1;4;4;4\n"
        + _rows("{t:.3f};{g:.5f};{r:.5f};{s:.5f}", 4.0),
        ["Scale factor"],
    ),
    "in a remark, before other words and a row without numbers": (
        "# slope: 1, 0.001, 0.001, 0.001\n# intercept: 0, 0, 0, 0\ntime (s),ground,reference,signal\nData\n"
        + _rows("{t:.3f},{g:.0f},{r:.0f},{s:.0f}", 0.001),
        ["slope"],
    ),
    "volts a count in the label": (
        "Channel;ground;reference;signal\nScale (mV/count);1.22;1.22;1.22\nRate (S/s);250;250;250\n\n"
        + _rows("{n};{g:.0f};{r:.0f};{s:.0f}", 0.00122),
        ["Scale (mV/count)"],
    ),
    "counts in the units, and a column of times with a factor too": (
        "Tick;gnd;ref;sig\ns;counts;counts;counts\nFaktor;0,00125;0,00125;0,00125\nSkalierung;;;\n"
        + _rows("{t:.3f};{g:.0f};{r:.0f};{s:.0f}", 0.00125).replace(".", ","),
        ["Faktor"],
    ),
    "a gain that only then makes a reference": (
        "Name,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nGain,1,3,3,3\n"
        + _rows(",{t:.3f},{g:.5f},{r:.5f},{s:.5f}", 3.0),
        ["Gain"],
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", FOLLOWED)
def test_rows_of_factors_and_offsets_are_followed_and_named(name: str, tmp_path: Path) -> None:
    text, named = FOLLOWED[name]
    one, channels = _imported(tmp_path, text)
    assert set(channels) == {Role.GROUND, Role.REFERENCE, Role.SIGNAL}
    (note,) = [note for note in one.notes if note.startswith("volts are the numbers")]
    assert all(word in note for word in named)
    assert not any("taken as they stand" in item or "lines of numbers" in item for item in one.notes)


def test_the_numbers_stay_as_they_were_and_the_capture_keeps_factor_and_offset(tmp_path: Path) -> None:
    text = FOLLOWED["factors and offsets, with their formula"][0]
    _, channels = _imported(tmp_path, text)
    scaling = channels[Role.SIGNAL].scaling
    assert (scaling.scale_factor, scaling.add_offset) == (0.0025, -2.5)


def test_a_factor_of_the_times_counts_too(tmp_path: Path) -> None:
    head = "Name,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nFactor,0.001,1,1,1\n"
    one, _ = _imported(tmp_path, head + _rows(",{t:.0f},{g:.4f},{r:.4f},{s:.4f}", every_s=4.0))
    assert any("'Factor,0.001,1,1,1'" in note for note in one.notes)
    seen = preview(tmp_path / "t.csv")
    assert seen.ready
    assert seen.time.interval_s == pytest.approx(0.004)


def test_a_row_of_ones_says_nothing(tmp_path: Path) -> None:
    head = "Name,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nFactor,1,1,1,1\nOffset,0,0,0,0\n"
    one, _ = _imported(tmp_path, head + _rows(",{t:.3f},{g:.4f},{r:.4f},{s:.4f}"))
    assert not any("Factor" in note for note in one.notes)


ASKED = {
    "another formula": (
        "Hint: volts = (reading - offset) * factor\nName,Time,Ground,Reference,Signal\nUnit,s,V,V,V\n"
        "Factor,1,0.002,0.002,0.002\nOffset,0,100,100,100\n"
        + _rows(",{t:.3f},{g:.0f},{r:.0f},{s:.0f}", 0.002),
        r"says 'Hint: volts = \(reading - offset\) \* factor'.*--factor Ground=1 --offset Ground=0",
    ),
    "a division": (
        "volts = reading / factor\nName,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nFactor,1,10,10,10\n"
        + _rows(",{t:.3f},{g:.4f},{r:.4f},{s:.4f}", 0.1),
        "how volts come of it is not known here",
    ),
    "a factor that is in the numbers already": (
        "Name,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nFactor,1,10,10,10\n"
        + _rows(",{t:.3f},{g:.4f},{r:.4f},{s:.4f}"),
        r"may be in the numbers already: Reference reads 4.995 V without it and 49.95 V with it",
    ),
    "a gain that nothing confirms": (
        "Name,Time,Wiper\nUnit,s,V\nGain,1,2\n" + _rows(",{t:.3f},{s:.4f}", 2.0),
        r"'Gain,1,2' may be in the numbers already.*--factor Wiper=1",
    ),
    "two rows of factors": (
        "Name,Time,Ground,Reference,Signal\nUnit,s,V,V,V\nFactor,1,2,2,2\nMultiplier,1,3,3,3\n"
        + _rows(",{t:.3f},{g:.5f},{r:.5f},{s:.5f}", 2.0),
        "'Multiplier,1,3,3,3'",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", ASKED)
def test_what_may_be_meant_otherwise_is_asked(name: str, tmp_path: Path) -> None:
    text, asked = ASKED[name]
    (tmp_path / "t.csv").write_text(text)
    with pytest.raises(ImportingError, match=asked):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert not (tmp_path / "a.h5").exists()
    assert not preview(tmp_path / "t.csv").ready


def test_what_is_said_counts_in_the_place_of_the_rows(tmp_path: Path) -> None:
    names = ("Ground", "Reference", "Signal")
    _imported(
        tmp_path,
        ASKED["a factor that is in the numbers already"][0],
        Wishes(factors=dict.fromkeys(names, 1.0)),
    )
    by = Wishes(factors=dict.fromkeys(names, 0.002), offsets=dict.fromkeys(names, 0.0))
    _, channels = _imported(tmp_path, ASKED["another formula"][0], by)
    assert channels[Role.SIGNAL].scaling.add_offset == 0.0


NO_ROWS = {
    "a row named Data": ("Data", "Data,,,,\n"),
    "a scale of one number": ("scale", "Display scale,2\n"),
    "words behind the label": ("Factor", "Factor,see,the,data,sheet\n"),
}


@pytest.mark.parametrize("name", NO_ROWS)
def test_a_line_without_numbers_for_the_columns_is_no_row_of_factors(name: str, tmp_path: Path) -> None:
    _, line = NO_ROWS[name]
    head = "Name,Time (s),Ground (V),Reference (V),Signal (V)\n" + line
    one, channels = _imported(tmp_path, head + _rows(",{t:.3f},{g:.4f},{r:.4f},{s:.4f}"))
    assert set(channels) == {Role.GROUND, Role.REFERENCE, Role.SIGNAL}
    assert not any(note.startswith("volts are") for note in one.notes)


_PLAIN = "time (s),gnd (V),ref (V),sig (V)\n" + _rows("{t:.3f},{g:.4f},{r:.4f},{s:.4f}", 0.5, -1.5)


def test_a_factor_and_an_offset_can_be_said_and_a_recipe_keeps_them(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("a.csv", "b.csv"):
        (tmp_path / name).write_text(_PLAIN)
    said = [
        word
        for wire in ("gnd", "ref", "sig")
        for word in ("--factor", f"{wire}=0.5", "--offset", f"{wire}=-1.5")
    ]
    recipe = str(tmp_path / "r.json")
    call = ["import", str(tmp_path / "a.csv"), "-o", str(tmp_path / "a.h5"), *said, "--keep-recipe", recipe]
    assert main(call) == 0, capsys.readouterr().err
    assert read_recipe(Path(recipe)).offsets == {"gnd": -1.5, "ref": -1.5, "sig": -1.5}
    call = ["import", str(tmp_path / "b.csv"), "-o", str(tmp_path / "b.h5"), "--recipe", recipe]
    assert main(call) == 0, capsys.readouterr().err
    for name in ("a.h5", "b.h5"):
        with open_capture(tmp_path / name) as opened:
            (record,) = opened.capture.records
            for channel in record.channels:
                np.testing.assert_allclose(channel.volts(), _expected(channel), atol=2e-4)
                assert channel.scaling.add_offset == -1.5


def test_an_offset_alone_moves_what_is_guessed(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(
        "t (s),a (V)\n" + "".join(f"{n / 100},{7.5 + n % 3 / 1000}\n" for n in _ROWS)
    )
    seen = preview(tmp_path / "t.csv", Wishes(offsets={"a": -2.5}))
    assert seen.columns[1].role is Role.REFERENCE
    assert seen.columns[1].low == pytest.approx(5.0)
    assert seen.columns[1].offset == -2.5


def test_a_recipe_from_before_offsets_still_loads(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(_PLAIN)
    recipe = tmp_path / "r.json"
    call = ["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5"), "--keep-recipe", str(recipe)]
    main([*call, "--factor", "ref=0.5"])
    held = json.loads(recipe.read_text())
    del held["offsets"]
    recipe.write_text(json.dumps(held))
    assert read_recipe(recipe).offsets == {}
    assert read_recipe(recipe).factors == {"ref": 0.5}


@pytest.mark.parametrize("value", ["much", "inf", "nan", "1e9"])
def test_an_offset_that_is_no_number_of_volts_is_a_wrong_call(
    value: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "t.csv").write_text(_PLAIN)
    call = ["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5"), "--offset", f"sig={value}"]
    assert main(call) == 2
    assert "is no number of volts" in capsys.readouterr().err
