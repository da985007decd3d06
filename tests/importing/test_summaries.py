# ruff: noqa: E501 - a table is easier to see as it is
"""Means, extremes, rulers and closing words are no samples, wherever they stand; a time is never a wire."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.summaries import is_summary, margin_of
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes

_ROWS = range(500)
_SIGNAL_V = [round(2.6 + 1.7 * np.sin(n / 25), 3) for n in _ROWS]
_REFERENCE_V = [round(5.004 + 0.001 * (n % 3), 3) for n in _ROWS]
_GROUND_V = [round(0.014 + 0.001 * (n % 4), 3) for n in _ROWS]
_WIRES = list(zip(_GROUND_V, _REFERENCE_V, _SIGNAL_V, strict=True))


def _rows(form: str) -> str:
    return "".join(form.format(n=n, t=n * 0.02, g=g, r=r, s=s) + "\n" for n, (g, r, s) in enumerate(_WIRES))


_COLUMNS = (
    "BAY 7\n     READING     ELAPSED         GND         REF      WIPER\n"
    "                   sec       volts       volts      volts\n"
    + _rows("{n:12d}{t:12.3f}{g:12.4f}{r:12.4f}{s:11.4f}")
)
_RULER = "-" * 59 + "\n"

BELOW = {
    "a mean under the second column": _COLUMNS + _RULER + "                AVERAGE      0.0155      5.0050     2.6000\nEND OF DATA\n",
    "extremes in the margin": ",time (s),gnd (V),ref (V),sig (V)\n" + _rows(",{t:.2f},{g:.4f},{r:.4f},{s:.4f}") + "Min,,0.014,5.004,0.9\nMax,,0.017,5.006,4.3\nStd. dev.,,0.001,0.001,1.2\n",
    "extremes without a column of times": "Abtastzeit: 20 ms\n;Masse [V];Referenz [V];Signal [V]\n" + _rows(";{g:.4f};{r:.4f};{s:.4f}").replace(".", ",") + "Mittelwert;0,0155;5,005;2,6\nStandardabweichung;0,001;0,001;1,2\n",
    "a mean in the place of a voltage": "Sample interval: 20 ms\ngnd (V);ref (V);sig (V)\n" + _rows("{g:.4f};{r:.4f};{s:.4f}") + "mean;5.005;2.6\n",
    "a total in the place of the times": "time (s);gnd (V);ref (V);sig (V)\n" + _rows("{t:.2f};{g:.4f};{r:.4f};{s:.4f}") + "\n===\nRMS value (V):;0.0155;5.005;2.9\nSigned: hj\n",
    "an unknown word in the margin and no time": "No.;time (s);gnd (V);ref (V);sig (V)\n" + _rows(";{t:.2f};{g:.4f};{r:.4f};{s:.4f}") + "Verdict;;0.01;5.0;2.5\n",
}  # fmt: skip
ABOVE = {
    "limits between heading and samples": "Name,time (s),gnd (V),ref (V),sig (V)\nRange,10,1,6,6\nLower limit,0,0,4.5,0\n" + _rows(",{t:.2f},{g:.4f},{r:.4f},{s:.4f}"),
}  # fmt: skip


def _imported(folder: Path, text: str, wishes: Wishes | None = None) -> Understood:
    (folder / "t.csv").write_text(text)
    (one,) = import_capture([folder / "t.csv"], folder / "a.h5", wishes)
    with open_capture(folder / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.02)
        found = {item.role: item.volts() for item in record.channels}
    expected = {Role.GROUND: _GROUND_V, Role.REFERENCE: _REFERENCE_V, Role.SIGNAL: _SIGNAL_V}
    assert set(found) == set(expected)
    for role, volts in expected.items():
        np.testing.assert_allclose(found[role], volts, atol=1e-9)
    return one


@pytest.mark.parametrize("name", BELOW)
def test_what_sums_up_the_samples_below_them_is_none_and_is_noted(name: str, tmp_path: Path) -> None:
    one = _imported(tmp_path, BELOW[name])
    assert any("no row of samples" in note or "no rows of samples" in note for note in one.notes)


@pytest.mark.parametrize("name", ABOVE)
def test_what_stands_above_the_samples_is_none_and_is_noted(name: str, tmp_path: Path) -> None:
    one = _imported(tmp_path, ABOVE[name])
    assert "2 lines of numbers above the samples were left out" in one.notes


def test_a_time_stays_a_time_where_the_interval_is_named_by_hand(tmp_path: Path) -> None:
    one = _imported(tmp_path, BELOW["a mean under the second column"], Wishes(interval_s=0.02))
    assert ("ELAPSED", "it holds times") in one.plan.left_out


def test_a_rising_column_named_time_is_no_wire_even_in_volts(tmp_path: Path) -> None:
    text = "time (V);gnd (V);ref (V);sig (V)\n" + _rows("{t:.2f};{g:.4f};{r:.4f};{s:.4f}")
    one = _imported(tmp_path, text, Wishes(interval_s=0.02))
    assert ("time", "it holds times") in one.plan.left_out


def test_words_of_the_samples_themselves_are_kept(tmp_path: Path) -> None:
    states = ("min", "max", "mean")
    rows = "".join(
        f"{states[n % 3]};{n * 0.02:.2f};{g};{r};{s}\n" for n, (g, r, s) in enumerate(_WIRES)
    )  # a pedal that is let go or pressed
    one = _imported(tmp_path, "pedal;time (s);gnd (V);ref (V);sig (V)\n" + rows)
    assert not any("no row" in note for note in one.notes)


def test_a_mark_in_the_margin_of_a_sample_leaves_it_a_sample(tmp_path: Path) -> None:
    rows = "".join(
        f"{'tap' if n == 77 else ''};{n * 0.02:.2f};{g};{r};{s}\n" for n, (g, r, s) in enumerate(_WIRES)
    )
    one = _imported(tmp_path, "mark;time (s);gnd (V);ref (V);sig (V)\n" + rows)
    assert not any("no row" in note for note in one.notes)


@pytest.mark.parametrize(
    "word", ["MEAN", "Std. dev.:", "Mittelwert", "max [V]", "Peak to peak", "Écart type"]
)
def test_words_that_sum_up_are_known(word: str) -> None:
    assert is_summary(["", word, "0.1", "0.2"])


@pytest.mark.parametrize("word", ["", "0.1", "minus", "signal", "sensor max load", "meanwhile", "09:14"])
def test_other_words_sum_up_nothing(word: str) -> None:
    assert not is_summary([word, "0.1"])


def test_the_margin_is_what_samples_leave_empty_before_their_first_number() -> None:
    rows = [["", "ok", "1", ""], ["", "ok", "2", ""], ["Mean", "", "1.5", ""], *[["", "ok", "3", ""]] * 9]
    assert margin_of(rows, [False, False, True, False]) == (0,)
