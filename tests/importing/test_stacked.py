# ruff: noqa: E501 - a table is easier to see as it is
"""Tables of blocks one below the other: set side by side, a record each, or asked about; never joined unsaid."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Record, Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing import encoding
from analysis.importing.bring_in import import_capture
from analysis.importing.needs import Need
from analysis.importing.preview import preview
from analysis.importing.recipe import keep_recipe, load_recipe, recipe_of
from analysis.importing.understood import Understood
from analysis.importing.wishes import Blocks, Wishes
from tests.importing.strange_tables import REFERENCE_V, SIGNAL_V

_S, _R = list(SIGNAL_V), list(REFERENCE_V)
_Read = dict[str, list[float]]


def _one(volts: Sequence[float], form: str = "{v}") -> str:
    return "".join(form.format(n=n, t=n / 1000, v=v) + "\n" for n, v in enumerate(volts))


_PAIRS = "".join(f"{s};{r}\n" for s, r in zip(_S, _R, strict=True))


def _import(folder: Path, text: str, wishes: Wishes | None = None) -> tuple[Understood, list[_Read]]:
    (folder / "t.csv").write_text(text, encoding="utf-8")
    (folder / "a.h5").unlink(missing_ok=True)
    (understood,) = import_capture([folder / "t.csv"], folder / "a.h5", wishes)
    with open_capture(folder / "a.h5") as opened:
        assert {record.sample_interval_s for record in opened.capture.records} == {0.001}
        return understood, [_read(record) for record in opened.capture.records]


def _read(record: Record) -> _Read:
    return {str(channel.role): channel.volts().tolist() for channel in record.channels}


CHANNELS = {
    "channel and number": "Sample interval: 0.001 s\nCH1 [V]\n" + _one(_S) + "CH2 [V]\n" + _one(_R),
    "an empty line too": "Rate: 1 kHz\nKanal 1\n" + _one(_S) + "\nKanal 2\n" + _one(_R),
    "a heading below the label": "Rate: 1000 Hz\nChannel: 1\nVoltage [V]\n" + _one(_S) + "\nChannel: 2\nVoltage [V]\n" + _one(_R),
    "an interval below each label": "Channel: 1\nInterval: 1 ms\n" + _one(_S) + "\nChannel: 2\nInterval: 1 ms\n" + _one(_R),
    "names of wires": "dt=0.001\nsignal\n" + _one(_S) + "ref\n" + _one(_R),
    "comments": "# interval 0.001 s\n# A [V]\n" + _one(_S) + "# B [V]\n" + _one(_R),
    "counted rows": "Interval: 1 ms\nCH1\nNo;V\n" + _one(_S, "{n};{v}") + "CH2\nNo;V\n" + _one(_R, "{n};{v}"),
    "other units": "Interval: 1 ms\nCH1 [mV]\n" + _one([1000 * v for v in _S], "{v:.0f}") + "CH2 [V]\n" + _one(_R),
    "times in each": "CH1\ntime [s];V\n" + _one(_S, "{t};{v}") + "CH2\ntime [s];V\n" + _one(_R, "{t};{v}"),
    "times and names": "time [s];signal [V]\n" + _one(_S, "{t};{v}") + "\ntime [s];ref [V]\n" + _one(_R, "{t};{v}"),
    "a word in each row": "Interval: 1 ms\nchannel;U [V]\n" + _one(_S, "signal;{v}") + _one(_R, "ref;{v}"),
    "a word and a time in each row": "ch;time [s];U [V]\n" + _one(_S, "CH1;{t};{v}") + _one(_R, "CH2;{t};{v}"),
    "semicolons for an empty line": "Interval;0.001\nCH1 [V];\n" + _one(_S, "{v};") + ";\nCH2 [V];\n" + _one(_R, "{v};"),
}  # fmt: skip


@pytest.mark.parametrize("name", CHANNELS)
def test_blocks_that_are_named_as_channels_are_set_side_by_side_and_that_is_said(
    name: str, tmp_path: Path
) -> None:
    understood, records = _import(tmp_path, CHANNELS[name])
    assert records == [{"reference": _R, "signal": pytest.approx(_S)}]
    assert any("2 blocks one below the other are taken as channels" in note for note in understood.notes)


def test_blocks_longer_than_what_is_looked_at_first_are_understood_alike(tmp_path: Path) -> None:
    text = "Interval: 1 ms\nCH1 [V]\n" + _one(_S * 9000) + "CH2 [V]\n" + _one(_R * 9000)
    assert len(text) > 700_000
    assert _import(tmp_path, text)[1] == [{"reference": _R * 9000, "signal": _S * 9000}]


RECORDS = {
    "numbered": "Rate: 1000 Hz\nMeasurement 1\nsignal;ref\n" + _PAIRS + "Measurement 2\nsignal;ref\n" + _PAIRS,
    "times begin again": "time [s];signal;ref\n" + _one(_S, "{t};{v};5.0") + "time [s];signal;ref\n" + _one(_S, "{t};{v};5.0"),
    "times begin again without a word": "time [s];signal;ref\n" + 2 * _one(_S, "{t};{v};5.0"),
}  # fmt: skip


@pytest.mark.parametrize("name", RECORDS)
def test_blocks_that_are_recordings_become_a_record_each_and_that_is_said(name: str, tmp_path: Path) -> None:
    understood, records = _import(tmp_path, RECORDS[name])
    assert [item["signal"] for item in records] == [_S, _S]
    assert any("2 blocks one below the other become a record each" in note for note in understood.notes)


ASKED = {
    "the heading again": "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + "\nsignal;ref\n" + _PAIRS,
    "an empty line alone": "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + "\n" + _PAIRS,
    "an empty row alone": "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + ";\n" + _PAIRS,
    "parts": "Rate: 1000 Hz\nPart 1\nsignal;ref\n" + _PAIRS + "\nPart 2\nsignal;ref\n" + _PAIRS,
}  # fmt: skip


@pytest.mark.parametrize("name", ASKED)
def test_other_blocks_are_asked_about_with_a_choice_that_works(name: str, tmp_path: Path) -> None:
    with pytest.raises(
        ImportingError, match=r"2 blocks one below the other.*--blocks channels, records, joined"
    ):
        _import(tmp_path, ASKED[name])
    assert [item.name for item in tmp_path.iterdir()] == ["t.csv"]
    seen = preview(tmp_path / "t.csv")
    assert seen.problems[0].need is Need.BLOCKS
    assert seen.blocks == 2
    _, apart = _import(tmp_path, ASKED[name], Wishes(blocks=Blocks.RECORDS))
    assert [item["signal"] for item in apart] == [_S, _S]
    (joined,) = _import(tmp_path, ASKED[name], Wishes(blocks=Blocks.JOINED))[1]
    assert [v for v in joined["signal"] if not np.isnan(v)] == _S + _S
    understood, (beside,) = _import(tmp_path, ASKED[name], Wishes(blocks=Blocks.CHANNELS))
    assert len(understood.columns) == 4
    assert beside["signal"] == beside["second_signal"] == _S


def test_blocks_that_differ_in_length_are_no_channels(tmp_path: Path) -> None:
    text = "Rate: 1000 Hz\nCH1\n" + _one(_S) + "CH2\n" + _one(_R[:9])
    with pytest.raises(ImportingError, match=r"differ in their times or their length; save each block"):
        _import(tmp_path, text)
    with pytest.raises(ImportingError, match="differ in their times or their length"):
        _import(tmp_path, text, Wishes(blocks=Blocks.CHANNELS))


def test_channels_whose_times_differ_are_never_set_side_by_side(tmp_path: Path) -> None:
    text = "CH1\ntime [s];V\n" + _one(_S, "{t};{v}") + "CH2\ntime [s];V\n" + _one(_R, "{n};{v}")
    with pytest.raises(ImportingError, match=r"differ in their times or their length; save each block"):
        _import(tmp_path, text)


def test_channels_named_in_turn_are_refused(tmp_path: Path) -> None:
    text = "Interval: 1 ms\nchannel;U [V]\n" + "".join(
        f"signal;{s}\nref;{r}\n" for s, r in zip(_S, _R, strict=True)
    )
    with pytest.raises(ImportingError, match="more than one channel in turn"):
        _import(tmp_path, text)


ONE_COURSE: dict[str, Callable[[], str]] = {
    "an empty line behind every row": lambda: "Rate: 1000 Hz\nsignal;ref\n\n" + _PAIRS.replace("\n", "\n\n"),
    "short pages": lambda: "Rate: 1000 Hz\n" + "".join(
        f"Page {p + 1} of 3\nsignal;ref\n" + "".join(_PAIRS.splitlines(True)[4 * p : 4 * p + 4]) + "\n" for p in range(3)
    ),
    "a count that goes on": lambda: "Rate: 1000 Hz\nno;signal;ref\n" + "".join(
        ("\nno;signal;ref\n" if n == 6 else "") + f"{n + 1};{_S[n]};{_R[n]}\n" for n in range(12)
    ),
    "a remark": lambda: "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS.replace("4.5;", "arm at the top\n4.5;"),
    "a comment": lambda: "# Rate: 1000 Hz\nsignal;ref\n" + _PAIRS.replace("4.5;", "# arm at the top\n4.5;"),
    "a summary": lambda: "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + "\nmin;0.5\nmax;4.5\n",
    "a summary with a heading": lambda: "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + "\nmean signal;mean ref\n2.4;5.0\n",
    "empty rows at the end": lambda: "Rate: 1000 Hz\nsignal;ref\n" + _PAIRS + ";\n;\n",
}  # fmt: skip


@pytest.mark.parametrize("name", ONE_COURSE)
def test_what_is_one_course_stays_one_and_is_not_asked_about(name: str, tmp_path: Path) -> None:
    assert _import(tmp_path, ONE_COURSE[name]())[1] == [{"reference": _R, "signal": _S}]


def test_a_row_in_which_nothing_stands_keeps_its_place_among_the_samples(tmp_path: Path) -> None:
    rows = _PAIRS.splitlines(keepends=True)
    (read,) = _import(tmp_path, "Rate: 1000 Hz\nsignal;ref\n" + "".join([*rows[:3], ";\n", *rows[4:]]))[1]
    assert np.isnan(read["signal"][3])
    assert read["signal"][4:] == _S[4:]


def test_what_was_said_of_blocks_is_kept_in_a_recipe(tmp_path: Path) -> None:
    wishes = Wishes(blocks=Blocks.RECORDS)
    understood, _ = _import(tmp_path, ASKED["the heading again"], wishes)
    keep_recipe(recipe_of(understood, wishes), tmp_path / "r.json")
    assert load_recipe(tmp_path / "r.json").wishes.blocks is Blocks.RECORDS
    wishes = Wishes(channels={"CH1": Role.SIGNAL, "CH2": Role.REFERENCE})
    understood, _ = _import(tmp_path, CHANNELS["channel and number"], wishes)
    keep_recipe(recipe_of(understood, wishes), tmp_path / "r.json")
    assert dict(load_recipe(tmp_path / "r.json").wishes.channels) == dict(wishes.channels)


def test_a_look_at_the_beginning_shows_channels_of_blocks_that_it_does_not_see_the_end_of(
    tmp_path: Path,
) -> None:
    (tmp_path / "t.csv").write_text("Interval: 1 ms\nCH1 [V]\n" + _one(_S * 9) + "CH2 [V]\n" + _one(_R * 9))
    seen = preview(tmp_path / "t.csv", most_rows=150)
    assert [column.role for column in seen.columns] == [Role.SIGNAL, Role.REFERENCE]
    assert not seen.problems


def test_blocks_are_found_across_the_pieces_in_which_a_text_is_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for piece in (37, 64, 101):
        monkeypatch.setattr(encoding, "_BLOCK_BYTES", piece)
        for name, text in CHANNELS.items():
            assert _import(tmp_path, text)[1] == [{"reference": _R, "signal": pytest.approx(_S)}], name
        for text in ASKED.values():
            _, apart = _import(tmp_path, text, Wishes(blocks=Blocks.RECORDS))
            assert [item["signal"] for item in apart] == [_S, _S]


OTHERWISE = {
    "another order": "time [s];signal;ref\n" + _one(_S, "{t};{v};5.0") + "time [s];ref;signal\n" + _one(_S, "{t};5.0;{v}"),
    "other units": "time [s];signal [V];ref [V]\n" + _one(_S, "{t};{v};5.0") + "time [ms];signal [mV];ref [V]\n" + _one(_S, "{n};{v};5.0"),
    "other units in a course that goes on": "no;signal [V];ref [V]\n" + _one(_S, "{n};{v};5.0") + "no;signal [mV];ref [mV]\n" + "".join(f"{12 + n};{1000 * v};5000\n" for n, v in enumerate(_S)),
}  # fmt: skip


@pytest.mark.parametrize("name", OTHERWISE)
@pytest.mark.parametrize("blocks", [None, Blocks.RECORDS, Blocks.JOINED])
def test_a_heading_further_down_that_says_something_else_is_never_passed_over(
    name: str, blocks: Blocks | None, tmp_path: Path
) -> None:
    wishes = Wishes(blocks=blocks, interval_s=0.001)
    with pytest.raises(ImportingError, match=r"a heading above row 13 names other columns or units"):
        _import(tmp_path, OTHERWISE[name], wishes)


@pytest.mark.parametrize("blocks", [None, Blocks.RECORDS, Blocks.JOINED])
def test_blocks_of_other_rates_are_not_made_records_of_one(blocks: Blocks | None, tmp_path: Path) -> None:
    text = "dt = 1 ms\nsignal;ref\n" + _PAIRS + "\ndt = 0.2 ms\nsignal;ref\n" + _PAIRS
    with pytest.raises(ImportingError, match="save each block as a file of its own"):
        _import(tmp_path, text, Wishes(blocks=blocks))
