# ruff: noqa: E501 - a table is easier to see as it is
"""Tables that lie on their side, each line a channel, are turned; what is no such table is not."""

from __future__ import annotations

import tracemalloc
from collections.abc import Iterable
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import Cancelled, ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.choices import NOTHING_CHOSEN, TextChoices
from analysis.importing.delimited import open_text
from analysis.importing.on_its_side import MOST_BYTES, lying
from analysis.importing.preview import preview
from analysis.importing.recipe import keep_recipe, read_recipe, recipe_of
from analysis.importing.wishes import Wishes

_ROWS = range(350)
_SIGNAL_V = [round(2.5 + 1.9 * np.sin(n / 20), 3) for n in _ROWS]
_REFERENCE_V = [round(5.001 + 0.001 * (n % 3), 3) for n in _ROWS]
_GROUND_V = [round(0.011 + 0.001 * (n % 4), 3) for n in _ROWS]
_TIMES_S = [round(n * 0.005, 3) for n in _ROWS]


def _line(label: str, values: Iterable[object], mark: str = ";") -> str:
    return label + mark + mark.join(map(str, values)) + "\n"


def _comma(text: str) -> str:
    return text.replace(".", ",")


_MV = [[f"{v * 1000:.0f}" for v in wire] for wire in (_GROUND_V, _REFERENCE_V, _SIGNAL_V)]
_WIRES = (_GROUND_V, _REFERENCE_V, _SIGNAL_V)
_NAMES = ("Ground", "Reference", "Signal")

TURNED = {
    "times in the first line": _line("Time (s)", _TIMES_S, "\t") + "".join(_line(f"{name} (V)", wire, "\t") for name, wire in zip(_NAMES, _WIRES, strict=True)),
    "an interval in the head, decimal commas": "Prüfling 4711\nAbtastintervall: 5 ms\n\n" + _comma("".join(_line(f"{name} [V]", wire) for name, wire in zip(("Masse", "Referenz", "Signal"), _WIRES, strict=True))),
    "units in a cell of their own": _line("t;ms", (f"{t * 1000:.0f}" for t in _TIMES_S)) + "".join(_line(f"{name};mV", wire) for name, wire in zip(_NAMES, _MV, strict=True)),
    "numbers, names, units and words below": _line("1,Time,s", _TIMES_S, ",") + "".join(_line(f"{number},{name},V", wire, ",") for number, (name, wire) in enumerate(zip(_NAMES, _WIRES, strict=True), start=2)) + "END OF FILE\n",
    "blanks between cells": _line("Time (s)", _TIMES_S, "  ") + "".join(_line(f"Sensor {name} (V)", wire, " ") for name, wire in zip(_NAMES, _WIRES, strict=True)),
    "the times without a name": _line("", _TIMES_S) + "".join(_line(name, wire) for name, wire in zip(_NAMES, _WIRES, strict=True)),
    "times of day, the last line cut short": _line("clock", (f"08:15:{10 + t:06.3f}" for t in _TIMES_S), "|") + _line("gnd/V", _GROUND_V, "|") + _line("ref/V", _REFERENCE_V, "|") + _line("sig/V", _SIGNAL_V, "|").rstrip("\n"),
    "quotes around every cell": "".join('"' + '";"'.join([name, *map(str, wire)]) + '"\n' for name, wire in zip(("Time (s)", *_NAMES), (_TIMES_S, *_WIRES), strict=True)),
}  # fmt: skip


@pytest.mark.parametrize("name", TURNED)
def test_a_table_on_its_side_is_turned_and_says_so(name: str, tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(TURNED[name], encoding="utf-8")
    (one,) = import_capture([tmp_path / "t.txt"], tmp_path / "a.h5")
    assert "it lies on its side, each line a channel: it was turned" in one.notes
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.005)
        found = {item.role: item.volts() for item in record.channels}
    assert set(found) == {Role.GROUND, Role.REFERENCE, Role.SIGNAL}
    for role, volts in zip((Role.GROUND, Role.REFERENCE, Role.SIGNAL), _WIRES, strict=True):
        np.testing.assert_allclose(found[role], volts, atol=1e-9)


def test_a_preview_shows_it_turned_and_what_is_chosen_holds_for_that(tmp_path: Path) -> None:
    path = tmp_path / "t.txt"
    path.write_text(TURNED["an interval in the head, decimal commas"], encoding="utf-8")
    seen = preview(path)
    assert seen.ready
    assert seen.rows == len(_ROWS)
    assert seen.lines[seen.head_lines - 1] == ("Masse [V]", "Referenz [V]", "Signal [V]")
    assert seen.lines[seen.head_lines] == ("0,011", "5,001", "2,5")
    again = preview(path, Wishes(text=seen.text))
    assert again.ready
    np.testing.assert_array_equal(again.numbers, seen.numbers)


def test_a_recipe_brings_the_next_one_in(tmp_path: Path) -> None:
    for name in ("a.txt", "b.txt"):
        (tmp_path / name).write_text(TURNED["blanks between cells"])
    seen = preview(tmp_path / "a.txt")
    wishes = Wishes(text=seen.text)
    (one,) = import_capture([tmp_path / "a.txt"], tmp_path / "a.h5", wishes)
    keep_recipe(recipe_of(one, wishes), tmp_path / "r.json")
    import_capture([tmp_path / "b.txt"], tmp_path / "b.h5", read_recipe(tmp_path / "r.json"))
    with open_capture(tmp_path / "b.h5") as opened:
        assert len(opened.capture.records[0].channels) == 3


NOT_TURNED = {
    "rows as usual": "time;gnd;ref;sig\n" + "".join(f"{t};{g};{r};{s}\n" for t, g, r, s in zip(_TIMES_S, *_WIRES, strict=True)),
    "few rows of many columns": ";".join(f"c{n}" for n in range(30)) + "\n" + (";".join(["1.5"] * 30) + "\n") * 4,
    "one line": _line("signal (V)", _SIGNAL_V),
    "no names": _line("0.000", _TIMES_S[1:]) + _line("0.5", _SIGNAL_V[1:]),
    "commas between cells and inside numbers": _comma(_line("Signal", (f"{v:.3f}" for v in _SIGNAL_V), ",")) + _comma(_line("Ground", (f"{v:.3f}" for v in _GROUND_V), ",")),
    "commas inside quotes": "".join('"' + '","'.join([name, *(_comma(f"{v:.3f}") for v in wire)]) + '"\n' for name, wire in zip(_NAMES, _WIRES, strict=True)),
    "words among the numbers": _line("Time", _TIMES_S) + _line("State", ("open" for _ in _ROWS)),
    "a unit in one line only": _line("Time;s", _TIMES_S) + _line("Signal", _SIGNAL_V),
}  # fmt: skip


@pytest.mark.parametrize("name", NOT_TURNED)
def test_what_is_no_table_on_its_side_is_not_turned(name: str, tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(NOT_TURNED[name])
    assert lying(tmp_path / "t.txt", NOTHING_CHOSEN) is None


def test_another_delimiter_that_was_chosen_is_followed(tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(TURNED["units in a cell of their own"])
    assert lying(tmp_path / "t.txt", TextChoices(delimiter=";")) is not None
    assert lying(tmp_path / "t.txt", TextChoices(delimiter="|")) is None


HOSTILE = {
    "one line of 10 MB": lambda: "signal;" + "1.25;" * 2_000_000 + "\n",
    "two lines of a million words": lambda: ("word;" * 1_000_000 + "\n") * 2,
    "a million columns": lambda: ("1;" * 1_000_000 + "\n") * 2,
    "lines that differ": lambda: "a;" + "1;" * 1_000_000 + "\nb;1;2\n",
}


@pytest.mark.parametrize("name", HOSTILE)
def test_endless_lines_are_one_sentence_and_leave_nothing_behind(name: str, tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(HOSTILE[name]())
    with pytest.raises(ImportingError, match=r"^[^\n]+$"):
        import_capture([tmp_path / "t.txt"], tmp_path / "a.h5")
    assert [item.name for item in tmp_path.iterdir()] == ["t.txt"]


def _wide(path: Path, samples: int) -> Path:
    times = ";".join(f"{n / 1000:.3f}" for n in range(samples))
    volts = ";".join(f"{2.5 + n % 1000 / 1000:.3f}" for n in range(samples))
    path.write_text(f"Time (s);{times}\nSignal (V);{volts}\n")
    return path


def test_lines_of_megabytes_are_turned_in_bounded_memory(tmp_path: Path) -> None:
    path = _wide(tmp_path / "t.txt", 600_000)
    assert path.stat().st_size > 7e6
    table = open_text(path)
    tracemalloc.start()
    rows = sum(len(block[0]) for block in table.blocks(lambda _: None, []))
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert rows == 600_000
    assert most < 60e6  # a few times what is turned at once, not of all


def test_turning_can_be_stopped_and_leaves_nothing_behind(tmp_path: Path) -> None:
    path = _wide(tmp_path / "t.txt", 200_000)
    seen: list[float] = []

    def stop(done: float) -> None:
        seen.append(done)
        if done > 0.2:
            raise Cancelled

    with pytest.raises(Cancelled):
        import_capture([path], tmp_path / "a.h5", tick=stop)
    assert len(seen) > 2
    assert [item.name for item in tmp_path.iterdir()] == ["t.txt"]


def test_a_table_too_large_to_be_held_is_not_turned(tmp_path: Path) -> None:
    path = tmp_path / "t.txt"
    path.write_text(TURNED["units in a cell of their own"])
    with path.open("r+b") as file:
        file.truncate(MOST_BYTES + 1)
    assert lying(path, NOTHING_CHOSEN) is None
