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


def test_rounded_times_are_counted_and_the_interval_that_they_come_to_is_said(tmp_path: Path) -> None:
    text = "time;signal\n" + "".join(f"{n / 1000:.2f};{2.5 + 2 * np.sin(n / 100):.4f}\n" for n in range(3000))
    notes = _imported(tmp_path, text).notes
    assert any("are taken as evenly 0.001 s apart" in note for note in notes)
    assert _interval_s(tmp_path) == 0.001


def _interval_s(folder: Path) -> float:
    with open_capture(folder / "a.h5") as opened:
        return opened.capture.records[0].sample_interval_s


def _clock_rows(rate_hz: float, rows: int, first_s: float = 0.0) -> str:
    """Rows under a clock of whole seconds."""
    times_s = [36_000 + first_s + n / rate_hz for n in range(rows)]
    return "".join(
        f"{int(t // 3600):02d}:{int(t // 60 % 60):02d}:{int(t % 60):02d};{2.5 + 2 * np.sin(n / 90):.4f}\n"
        for n, t in enumerate(times_s)
    )


@pytest.mark.parametrize("head", ["", "Rate;50 samples/s\n", "Sample interval: 20 ms\n", "Taux : 50 Hz\n"])
def test_a_clock_of_whole_seconds_is_counted_or_read_as_the_head_says(head: str, tmp_path: Path) -> None:
    _imported(tmp_path, f"{head}Time;Signal [V]\n" + _clock_rows(50.0, 1003, 0.34))
    assert _interval_s(tmp_path) == 0.02


@pytest.mark.parametrize("rate_hz", [3.0, 16.0, 60.0, 100.0])
def test_whole_rates_under_a_clock_of_whole_seconds_come_out_as_they_are(
    rate_hz: float, tmp_path: Path
) -> None:
    _imported(tmp_path, "Time;Signal [V]\n" + _clock_rows(rate_hz, int(20 * rate_hz) + 1, 0.21))
    assert _interval_s(tmp_path) == pytest.approx(1.0 / rate_hz, rel=1e-9)


def test_a_rate_against_the_rows_of_a_second_is_asked_about(tmp_path: Path) -> None:
    with pytest.raises(ImportingError, match=r"says 0\.01 s between two rows, and 50 to 50 rows share 1 s"):
        _imported(tmp_path, "Rate: 100 Hz\nTime;Signal [V]\n" + _clock_rows(50.0, 1000))


def test_an_uncertain_count_is_proposed_as_about_and_never_taken(tmp_path: Path) -> None:
    text = "Time;Signal [V]\n" + _clock_rows(16.7, 150)
    with pytest.raises(ImportingError, match=r"about 0\.06 s, since 16 to 17 rows share 1 s"):
        _imported(tmp_path, text)


def test_rows_that_come_in_bursts_get_no_interval_proposed(tmp_path: Path) -> None:
    text = "Time;Signal [V]\n" + "".join(
        f"10:00:{second:02d};{1 + n % 3}\n" for second in range(20) for n in range(60 if second % 7 else 9)
    )
    with pytest.raises(ImportingError, match="9 to 60 rows share one") as caught:
        _imported(tmp_path, text)
    assert "about" not in str(caught.value)


def test_of_several_columns_of_times_that_agree_the_finest_is_used_and_named(tmp_path: Path) -> None:
    text = "Timestamp;Elapsed (ms);Signal (V)\n" + "".join(
        f"05.11.2023 08:00:{n // 200:02d};{5 * n};{2.5 + 2 * np.sin(n / 90):.4f}\n" for n in range(800)
    )
    understood = _imported(tmp_path, text)
    assert _interval_s(tmp_path) == 0.005
    assert any("the finest, Elapsed, is used" in note for note in understood.notes)


def test_pairs_of_a_time_and_a_wire_are_one_table_unless_their_times_differ(tmp_path: Path) -> None:
    head = "Time (ms);Signal (V);Time (ms);Reference (V)\n"
    understood = _imported(tmp_path, head + rows_as("{m};{s};{m};{r}"))
    assert _interval_s(tmp_path) == 0.001
    assert any("hold the same times; Time is used" in note for note in understood.notes)
    later = "".join(f"{n};{s};{n + 0.5};{r}\n" for n, _, s, r in ROWS)
    (tmp_path / "a.h5").unlink()
    with pytest.raises(ImportingError, match="they do not agree"):
        _imported(tmp_path, head + later)


def test_the_newest_row_first_is_turned_round_and_never_joined_backwards(tmp_path: Path) -> None:
    rows = "".join(f"{t:.3f};{s};{r}\n" for _, t, s, r in reversed(ROWS))
    understood = _imported(tmp_path, "Time (s);Signal (V);Reference (V)\n" + rows)
    assert any("turned round" in note for note in understood.notes)
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        signal = record.channel(Role.SIGNAL)
        assert signal is not None
        np.testing.assert_array_equal(signal.volts(), [s for _, _, s, _ in ROWS])
        assert record.first_sample_s == 0.0
    seen = preview(tmp_path / "t.txt")
    assert seen.ready
    assert seen.numbers[0, 0] == ROWS[-1][1]  # the rows are shown as the file has them


@pytest.mark.parametrize("wishes", [Wishes(), Wishes(interval_s=1e-3)])
def test_channels_one_below_the_other_are_set_side_by_side_even_when_an_interval_is_named(
    wishes: Wishes, tmp_path: Path
) -> None:
    wires = ("Signal", 2), ("Reference", 3)
    text = "\n".join(
        f"Channel: {name}\nTime (s),Voltage (V)\n" + "".join(f"{row[1]:.3f},{row[place]}\n" for row in ROWS)
        for name, place in wires
    )
    _imported(tmp_path, text, wishes)
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        found = {str(item.role): item.volts().tolist() for item in record.channels}
    assert found == {name.lower(): [row[place] for row in ROWS] for name, place in wires}
    assert preview(tmp_path / "t.txt", wishes).ready


@pytest.mark.parametrize(
    ("form", "width"),
    [("{p};{s}", 0), ("{s};{p}", 0), ("{p};{s};{p};{r}", 1)],
    ids=["before", "behind", "two"],
)
def test_per_cent_beside_volts_of_one_name_never_hides_them(form: str, width: int, tmp_path: Path) -> None:
    names = {"p": "Signal [%]", "s": "Signal [V]", "r": "Reference [V]"}
    head = ";".join(names[item[1]] for item in form.split(";"))
    rows = "".join(f"{t:.3f};" + form.format(p=20 * s, s=s, r=r) + "\n" for _, t, s, r in ROWS)
    _imported(tmp_path, f"t [s];{head}\n{rows}")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert len(record.channels) == 1 + width
        signal = record.channel(Role.SIGNAL)
        assert signal is not None
        np.testing.assert_array_equal(signal.volts(), [s for _, _, s, _ in ROWS])


@pytest.mark.parametrize(
    "line",
    ["Interval: 00:00:00.050", "Intervall: 0:00,05", "Période d'échantillonnage : 50 ms", "Step;0,05;s",
     "Fréquence d'échantillonnage : 20 Hz", "Frecuencia de muestreo: 20 Hz", "Częstotliwość próbkowania: 20 Hz",
     "Период: 50 мс", "Частота: 20 Гц", "Pas de temps : 0,05 s", "Intervallo di campionamento: 50 ms"],
)  # fmt: skip
def test_a_stated_interval_is_read_in_other_languages_and_as_a_clock(line: str, tmp_path: Path) -> None:
    _imported(tmp_path, f"Journal\n{line}\n#;Signal (V);Ref (V)\n" + rows_as("{n};{s};{r}"))
    assert _interval_s(tmp_path) == pytest.approx(0.05, rel=1e-12)


@pytest.mark.parametrize(
    "head",
    [
        "Время, мс;Сигнал, мВ;Опорное 5 В, мВ",
        "Temps (ms);Señal (mV);Référence (mV)",
        "Czas [ms];Sygnał [mV];Uref [mV]",
    ],
)
def test_headings_and_units_of_other_languages_are_read(head: str, tmp_path: Path) -> None:
    understood = _imported(tmp_path, head + "\n" + rows_as("{m};{sm:.0f};{rm:.0f}"))
    assert _interval_s(tmp_path) == 0.001
    assert [(item.role, item.reason) for item in understood.plan.channels] == [
        (Role.SIGNAL, "its heading says so"), (Role.REFERENCE, "its heading says so")
    ]  # fmt: skip


def test_a_counter_that_is_left_out_is_not_said_to_be_read_as_volts(tmp_path: Path) -> None:
    rows = "".join(f"{n + 1};{2.5 + 2 * np.sin(n / 90):.4f}\n" for n in range(1500))
    understood = _imported(tmp_path, "Interval: 1 ms\nSample;Signal [V]\n" + rows)
    assert understood.plan.left_out == (("Sample", "it counts the rows"),)
    assert not any("Sample" in note for note in understood.notes)


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


@pytest.mark.parametrize("heading", ["Position (% of the supply)", "Signal (% of range)", "Signal [%]"])
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
