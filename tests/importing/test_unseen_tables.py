# ruff: noqa: E501 - a table is easier to see as it is
"""What is said of a table beside its samples: what was assumed, left out, or stands against what it says."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.preview import preview
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes
from tests.importing.strange_tables import ROWS, rows_as

_TABLE = rows_as("{t:.3f};{s};{r}")


def _imported(folder: Path, text: str, wishes: Wishes | None = None, encoding: str = "utf-8") -> Understood:
    (folder / "t.txt").write_bytes(text.encode(encoding))
    (understood,) = import_capture([folder / "t.txt"], folder / "a.h5", wishes)
    return understood


SAID = {
    "seconds without a unit": ("time;signal;ref\n" + _TABLE, "has no unit and is read as seconds: its rows lie 0.001 s"),
    "a rate against the times": ("Sample rate: 500 Hz\ntime;signal;ref\n" + _TABLE, "says 0.002 s between two rows, and its"),
    "a probe": ("Probe 10:1\ntime;signal;ref\n" + _TABLE, "says 'Probe 10:1'"),
    "volts per part": ("V per part;0.02\ntime;signal;ref\n" + _TABLE, "says 'V per part;0.02'"),
    "means above": ("time;signal;ref\nmean;2.5;5.0\ns;V;V\n" + _TABLE, "1 line of numbers above the samples was left out"),
    "a column nobody can read": (
        "time;signal;ref;gnd\n" + rows_as("{t:.3f};{s};{r};0.01 ok"), "column gnd holds no plain numbers (0.01 ok)"),
    "a thousands mark": (
        "t [us];signal [mV]\n" + "".join(f"{n * 1000:,};{s * 1000:,.0f}\n" for n, _, s, _ in ROWS), "read as a thousands mark"),
    "parts of a day": (
        "Uhrzeit;signal\n" + "".join(f"{0.384826 + n / 86_400_000:.12f};{s}\n" for n, _, s, _ in ROWS), "parts of a day"),
    "microvolts": ("t [s];signal\n" + "".join(f"{t:.3f};{s * 1e6:.0f}\n" for _, t, s, _ in ROWS), "read as microvolts"),
    "a cut line": ("time;signal;ref\n" + _TABLE + "0.012", "1 line is no row of samples"),
}  # fmt: skip


@pytest.mark.parametrize("name", SAID)
def test_what_was_assumed_or_left_out_is_said(name: str, tmp_path: Path) -> None:
    text, sentence = SAID[name]
    assert any(sentence in note for note in _imported(tmp_path, text).notes)


def test_a_table_that_leaves_nothing_open_has_no_notes(tmp_path: Path) -> None:
    assert _imported(tmp_path, "time [s];signal [V];ref [V]\n" + _TABLE).notes == ()


def test_letters_of_another_code_page_are_said_and_can_be_chosen(tmp_path: Path) -> None:
    text = "Время [s];Сигнал [V]\n" + rows_as("{t:.3f};{s}")
    assert any(
        "choose another encoding" in note for note in _imported(tmp_path, text, encoding="cp1251").notes
    )


def test_whole_numbers_as_times_are_asked_about_and_the_preview_asks_too(tmp_path: Path) -> None:
    text = "time;signal\n" + "".join(f"{n};{1 + n % 3}\n" for n in range(2000))
    with pytest.raises(ImportingError, match=r"go up by 1, and no unit is given; say it with --unit"):
        _imported(tmp_path, text)
    assert preview(tmp_path / "t.txt").problems[0].need == "time_unit"
    _imported(tmp_path, text, Wishes(units={"time": "ms"}))
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].sample_interval_s == 1e-3


def test_rows_kept_only_when_something_changed_are_asked_about_not_cut_into_records(tmp_path: Path) -> None:
    times_s = np.cumsum(np.random.default_rng(5).choice([0.001, 0.003, 0.004, 0.02], 200))
    text = "t [s];signal\n" + "".join(f"{t:.3f};{2 + np.sin(t):.3f}\n" for t in times_s)
    with pytest.raises(ImportingError, match=r"not evenly spaced.*--resample"):
        _imported(tmp_path, text)


def test_rounded_times_say_the_interval_that_they_come_to(tmp_path: Path) -> None:
    text = "time;signal\n" + "".join(f"{n / 1000:.2f};{2.5 + 2 * np.sin(n / 100):.4f}\n" for n in range(3000))
    with pytest.raises(ImportingError, match=r"name the sample interval instead: 0.001 s"):
        _imported(tmp_path, text)


def test_counts_need_a_factor_once_their_wire_is_named(tmp_path: Path) -> None:
    text = "ms;adc0\n" + "".join(f"{n};{int(s / 5 * 1023)}\n" for n, _, s, _ in ROWS)
    with pytest.raises(ImportingError, match=r"adc0 is in counts, not in volts.*--factor adc0=VOLTS"):
        _imported(tmp_path, text, Wishes(channels={"adc0": Role.SIGNAL}))
    _imported(tmp_path, text, Wishes(channels={"adc0": Role.SIGNAL}, factors={"adc0": 5 / 1023}))
    with open_capture(tmp_path / "a.h5") as opened:
        volts = opened.capture.records[0].channels[0].volts()
    np.testing.assert_allclose(volts, [s for _, _, s, _ in ROWS], atol=5 / 1023)


def test_a_converter_that_states_volts_is_not_asked_for_a_factor(tmp_path: Path) -> None:
    _imported(tmp_path, "ms;adc0;adc1\n" + rows_as("{m};{s};{r}"))


def test_a_gap_between_two_stretches_makes_two_records(tmp_path: Path) -> None:
    later = "".join(f"{t + 2:.3f};{s};{r}\n" for _, t, s, r in ROWS)
    _imported(tmp_path, "time [s];signal;ref\n" + _TABLE + "\n" + later)
    with open_capture(tmp_path / "a.h5") as opened:
        assert [record.first_sample_s for record in opened.capture.records] == [0.0, 2.0]


@pytest.mark.parametrize("heading", ["Position (% of 5 V)", "Signal (% of range)", "Signal [%]"])
def test_a_column_in_per_cent_of_anything_is_never_taken_for_volts(tmp_path: Path, heading: str) -> None:
    rows = "".join(f"{t:.3f},{20 * s:.2f}\n" for _, t, s, _ in ROWS)
    with pytest.raises(ImportingError, match="say"):
        _imported(tmp_path, f"Time (s),{heading}\n{rows}")
    both = "".join(f"{t:.3f},{20 * s:.2f},{s},{r}\n" for _, t, s, r in ROWS)
    _imported(tmp_path, f"Time (s),Position (% of 5 V),Signal (V),Reference (V)\n{both}")
    with open_capture(tmp_path / "a.h5") as opened:
        for role, volts in ((Role.SIGNAL, 2), (Role.REFERENCE, 3)):
            channel = opened.capture.records[0].channel(role)
            assert channel is not None
            np.testing.assert_allclose(channel.volts(), [row[volts] for row in ROWS], atol=1e-9)


def test_a_unit_behind_several_underlines_is_read_and_makes_no_counts(tmp_path: Path) -> None:
    rows = "".join(f"{n},{1000 * s:.0f},{1000 * r:.0f}\n" for n, _, s, r in ROWS)
    _imported(tmp_path, f"t_ms,adc_sig_mV,adc_ref_mV\n{rows}")
    with open_capture(tmp_path / "a.h5") as opened:
        channel = opened.capture.records[0].channel(Role.SIGNAL)
        assert channel is not None
        np.testing.assert_allclose(channel.volts(), [s for _, _, s, _ in ROWS], atol=1e-3)
