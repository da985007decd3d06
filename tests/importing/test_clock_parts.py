# ruff: noqa: E501 - a table is easier to see as it is
"""Whole seconds in one column and the fraction of each in another: together they are the time."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.preview import preview
from analysis.importing.wishes import Wishes

_ROWS = range(400)
_EVERY_MS = 80
_SIGNAL_V = [round(2.5 + 1.8 * np.sin(n / 20), 3) for n in _ROWS]


def _clock(ms: int) -> str:
    seconds = ms // 1000
    return f"{seconds // 3600 % 24:02d}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"


def _table(
    heading: str, row: Callable[[int], str], every_ms: int = _EVERY_MS, first_ms: int = 35_999_440
) -> str:
    """Rows from a little before ten o'clock on; `row` gives the cells of a moment in milliseconds."""
    lines = [
        f"{row(first_ms + n * every_ms)},{s},{5.001 + n % 2 / 1000:.3f}" for n, s in enumerate(_SIGNAL_V)
    ]
    return heading + ",signal (V),ref (V)\n" + "\n".join(lines) + "\n"


TOGETHER = {
    "a time of day and milliseconds": _table("Time,Millisecond", lambda ms: f"{_clock(ms)},{ms % 1000}"),
    "a stamp and microseconds": _table("Stamp,us", lambda ms: f"2026-05-02 {_clock(ms)},{ms % 1000 * 1000:06d}"),
    "a fraction with a point": _table("Time,Fraction", lambda ms: f"{_clock(ms)},{ms % 1000 / 1000:.2f}"),
    "hundredths in German": _table("Uhrzeit,Hundertstel", lambda ms: f"{_clock(ms)},{ms % 1000 // 10}"),
    "seconds since a start": _table("t (s),part (ms)", lambda ms: f"{(ms - 35_999_440) // 1000},{(ms - 35_999_440) % 1000}"),
    "the fraction first": _table("ms,clock", lambda ms: f"{ms % 1000},{_clock(ms)}"),
    "parts of one row each": _table("h,min,s,ms", lambda ms: f"{_clock(ms).replace(':', ',')},{ms % 1000}", first_ms=32_400_000),
}  # fmt: skip


def _imported(folder: Path, text: str, wishes: Wishes | None = None) -> tuple[float, str, tuple[str, ...]]:
    (folder / "t.csv").write_text(text)
    (one,) = import_capture([folder / "t.csv"], folder / "a.h5", wishes)
    with open_capture(folder / "a.h5") as opened:
        (record,) = opened.capture.records
        assert {item.role for item in record.channels} == {Role.SIGNAL, Role.REFERENCE}
        signal = record.channel(Role.SIGNAL)
        assert signal is not None
        np.testing.assert_allclose(signal.volts(), _SIGNAL_V)
        return record.sample_interval_s, str(record.attributes.get("started", "")), one.notes


@pytest.mark.parametrize("name", [name for name in TOGETHER if name != "parts of one row each"])
def test_a_clock_and_the_fraction_of_its_second_are_the_time(name: str, tmp_path: Path) -> None:
    interval_s, started, notes = _imported(tmp_path, TOGETHER[name])
    assert interval_s == pytest.approx(0.08)
    assert any(note.endswith("both together are the time") for note in notes)
    if name != "seconds since a start":
        assert started.endswith("09:59:59.440")


def test_the_newest_row_may_come_first(tmp_path: Path) -> None:
    head, *rows = TOGETHER["a time of day and milliseconds"].splitlines()
    interval_s, started, _ = _imported(tmp_path, "\n".join([head, *reversed(rows)]) + "\n")
    assert interval_s == pytest.approx(0.08)
    assert started == "09:59:59.440"


def test_rows_more_than_a_second_apart_have_fractions_too(tmp_path: Path) -> None:
    text = _table("Time,ms", lambda ms: f"{_clock(ms)},{ms % 1000}", every_ms=1250)
    assert _imported(tmp_path, text)[0] == pytest.approx(1.25)


def test_a_preview_says_so_and_a_chosen_clock_keeps_its_fraction(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(TOGETHER["a time of day and milliseconds"])
    seen = preview(tmp_path / "t.csv", Wishes(time_column="Time"))
    assert seen.ready
    assert seen.time.interval_s == pytest.approx(0.08)
    assert "fraction of each second of Time" in seen.columns[1].reason


def test_the_fraction_alone_can_be_chosen_and_the_interval_named(tmp_path: Path) -> None:
    text = TOGETHER["a time of day and milliseconds"]
    assert _imported(tmp_path, text, Wishes(time_column="Millisecond"))[0] == pytest.approx(0.08)
    (tmp_path / "a.h5").unlink()
    interval_s, _, notes = _imported(tmp_path, text, Wishes(interval_s=0.08))
    assert interval_s == 0.08
    assert not any("together" in note for note in notes)


APART = {
    "milliseconds that do not begin again": _table("Time,ms", lambda ms: f"{_clock(ms)},{(ms - 35_999_440) * 0.02:.3f}"),
    "a value of more than a second": _table("Time,ms", lambda ms: f"{_clock(ms)},{(ms * 7) % 3000}"),
    "milliseconds that jump about": _table("Time,ms", lambda ms: f"{_clock(ms)},{(ms * 7919) % 997}"),
}  # fmt: skip


@pytest.mark.parametrize("name", APART)
def test_columns_that_do_not_go_on_together_are_not_joined(name: str, tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(APART[name])
    seen = preview(tmp_path / "t.csv")
    assert not any("both together" in note for note in seen.notes)


def test_two_times_that_disagree_are_still_asked_about(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(_table("Time,ms", lambda ms: f"{_clock(ms)},{(ms * 7) % 3000}"))
    with pytest.raises(ImportingError, match="say which with --time COLUMN"):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
