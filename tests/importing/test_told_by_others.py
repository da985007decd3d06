# ruff: noqa: E501 - a table is easier to see as it is
"""Tables of somebody who did not know the parser, smaller: what was wrong or needlessly asked at the first try."""

from __future__ import annotations

import zipfile
from pathlib import Path

import h5py
import numpy as np
import pytest
from scipy import io

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.choices import TextChoices
from analysis.importing.needs import Need
from analysis.importing.preview import preview
from analysis.importing.wishes import Wishes
from app.command_line import main

_ROWS = range(1200)
_SIGNAL_V = [round(2.5 + 2.0 * np.sin(n / 40), 4) for n in _ROWS]
_REFERENCE_V = [round(4.987 + 0.001 * (n % 3), 4) for n in _ROWS]
_GROUND_V = [round(0.0041 + 0.0007 * (n % 3), 4) for n in _ROWS]
_WIRES = list(zip(_GROUND_V, _REFERENCE_V, _SIGNAL_V, strict=True))


def _rows(form: str, scale: float = 1.0) -> str:
    return "".join(
        form.format(n=n, t=n / 1000, g=g * scale, r=r * scale, s=s * scale) + "\n"
        for n, (g, r, s) in enumerate(_WIRES)
    )


def _rows_in_minutes(first: float) -> str:
    return "".join(f"{first + n / 60_000:.9f};{g};{r};{s}\n" for n, (g, r, s) in enumerate(_WIRES))


def _grouped(value: float, mark: str) -> str:
    return f"{value:,.1f}".replace(",", mark).replace(".", ",")


RIGHT = {
    "a dotted date in a column beside decimal points": "date;clock;ground/V;reference/V;signal/V\n" + _rows("14.03.2026;09:00:0{t:.3f};{g:.4f};{r:.4f};{s:.4f}"),
    "an address and a version in each row": "time\tground\treference\tsignal\tnode\tversion\n" + _rows("{t:.3f}\t{g:.4f}\t{r:.4f}\t{s:.4f}\t192.168.0.17\t1.4.2"),
    "a blank as thousands mark between tabs": "time\tground\treference\tsignal\n(ms)\t(mV)\t(mV)\t(mV)\n" + "".join(f"{n},0\t{_grouped(g*1e3, ' ')}\t{_grouped(r*1e3, ' ')}\t{_grouped(s*1e3, ' ')}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "a narrow blank as thousands mark between tabs": "time\tground\treference\tsignal\n(ms)\t(mV)\t(mV)\t(mV)\n" + "".join(f"{n},0\t{_grouped(g*1e3, chr(0x202F))}\t{_grouped(r*1e3, chr(0x202F))}\t{_grouped(s*1e3, chr(0x202F))}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "names before the numbers": "boot ok\nadc ready\n" + _rows("t={t:.3f} gnd={g:.4f} ref={r:.4f} sig={s:.4f}"),
    "every line one quoted cell": '"time (s);ground (V);reference (V);signal (V)"\n' + _rows('"{t:.3f};{g:.4f};{r:.4f};{s:.4f}"').replace(".", ","),
    "rows of numbers between heading and samples": "Time;Ground;Reference;Signal\ns;V;V;V\n0;1;2;3\n10;10;10;10\n" + _rows("{t:.3f};{g:.4f};{r:.4f};{s:.4f}"),
    "wires named by what they read": "ms;0V;5V;Signal\n" + _rows("{n};{g:.4f};{r:.4f};{s:.4f}"),
    "millivolts with decimals that nobody says": "time (s),gnd,ref,sig\n" + _rows("{t:.3f},{g:.1f},{r:.1f},{s:.1f}", 1e3),
    "the same without names of wires": "time (s),a,b,c\n" + _rows("{t:.3f},{g:.1f},{r:.1f},{s:.1f}", 1e3),
    "millivolts said of two columns only": "time (s),gnd,ref (mV),sig (mV)\n" + _rows("{t:.3f},{g:.1f},{r:.1f},{s:.1f}", 1e3),
    "microvolts that nobody says": "time (s),gnd,ref,sig\n" + _rows("{t:.3f},{g:.0f},{r:.0f},{s:.0f}", 1e6),
    "millivolts said above": "All voltages in mV\ntime [ms];ground;A;B\n" + "".join(f"{n};{g*1e3:.1f};{r*1e3:.1f};{s*1e3:.1f}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "per cent beside volts without brackets": "time [ms];Position/%;ground [V];ref [V];signal [V]\n" + _rows("{n};{n};{g:.4f};{r:.4f};{s:.4f}"),
    "minutes behind a slash": "Time/min;ground/V;ref/V;signal/V\n" + "".join(f"{0.208333 + n/60000:.9f};{g};{r};{s}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "a blank as thousands mark between commas": "time [s],ground [mV],ref [mV],signal [mV]\n" + "".join(f"{n/1000:.3f},{g*1e3:.1f},{r*1e3:,.1f}".replace(f"{r*1e3:,.1f}", f"{r*1e3:,.1f}".replace(",", " ")) + "," + f"{s*1e3:,.1f}".replace(",", " ") + "\n" for n, (g, r, s) in enumerate(_WIRES)),
    "a point as thousands mark": "time [ms];ground [mV];reference [mV];signal [mV]\n" + "".join(f"{n:,};{g*1e3:.0f};{r*1e3:,.0f};{s*1e3:,.0f}\n".replace(",", ".") for n, (g, r, s) in enumerate(_WIRES)),
    "minutes behind an underscore, in another language": "Czas_min;ground_V;ref_V;signal_V\n" + _rows_in_minutes(0.208333333),
    "minutes behind the word in": "Čas in min;ground in V;ref in V;signal in V\n" + _rows_in_minutes(0.0),
    "minutes behind in and underscores": "Tempo_in_min;ground_in_V;ref_in_V;signal_in_V\n" + _rows_in_minutes(-0.01),
    "minutes said above of the column X": "Time unit: min\nUnit: V\nX;ref;ground;signal\n" + "".join(f"{n/60000:.9f};{r};{g};{s}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "per cent behind an underscore": "time_ms;Position_%;ground_V;ref_V;signal_V\n" + _rows("{n};{n};{g:.4f};{r:.4f};{s:.4f}"),
    "per cent behind the word in": "time in ms;Position in %;ground in V;ref in V;signal in V\n" + _rows("{n};{n};{g:.4f};{r:.4f};{s:.4f}"),
    "a position of 0 to 100 without a unit": "time [ms];Position;ground [V];ref [V];signal [V]\n" + "".join(f"{n};{25*s-12.5:.1f};{g};{r};{s}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "a position of 0 to 100 below a unit of all": "Unit: mV\ntime [ms];Position;ground;ref;signal\n" + "".join(f"{n};{25*s-12.5:.1f};{g*1e3:.1f};{r*1e3:.1f};{s*1e3:.1f}\n" for n, (g, r, s) in enumerate(_WIRES)),
    "whole times with points as thousands marks beside decimal commas": "t in us;signal in V;ground in V;ref in V\n" + "".join(f"+{12_500_000+1000*n:,};+{s:.4f};+{g:.4f};+{r:.4f}\n".replace(".", "!").replace(",", ".").replace("!", ",") for n, (g, r, s) in enumerate(_WIRES)),
    "a stamp with a blank, thousands with a blank, and a tab at the end": "time\tsignal/V\tref/mV\tground/V\t\n" + "".join(f"2026-03-14 09:12:3{n/1000:.6f}\t{s}\t{r*1e3:,.1f}\t{g}\t\n".replace(",", " ") for n, (g, r, s) in enumerate(_WIRES)),
}  # fmt: skip


@pytest.mark.parametrize("name", RIGHT)
def test_a_table_that_says_enough_is_right_at_once(name: str, tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(RIGHT[name], encoding="utf-8")
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(1e-3)
        found = {item.role: item.volts() for item in record.channels}
    expected = {Role.GROUND: _GROUND_V, Role.REFERENCE: _REFERENCE_V, Role.SIGNAL: _SIGNAL_V}
    assert set(found) == set(expected)
    for role, volts in expected.items():
        np.testing.assert_allclose(found[role], volts, atol=6e-4 if "point as" in name else 6e-5)


ASKED = {
    "counts of 10 bits": ("time [s],ref,sig,gnd\n" + _rows("{t:.3f},{r:.0f},{s:.0f},{g:.0f}", 204.6), Need.UNIT, "as millivolts ref would read 1.02 V"),
    "counts of so many bits": ("Channel;ground;reference;signal\nBits;12;12;12\nRate (S/s);1000;1000;1000\n\n" + _rows("{n};{g:.0f};{r:.0f};{s:.0f}", 820.0), Need.UNIT, "as millivolts reference would read 4.09 V"),
    "a probe said above, and a tenth of a reference": ("Attenuation;10:1;10:1;10:1\nt (s);A (V);B (V);C (V)\n" + _rows("{t:.3f};{g:.5f};{r:.5f};{s:.5f}", 0.1), Need.UNIT, "says 'Attenuation;10:1;10:1;10:1', and B stays at 0.499 V"),
    "a position in per cent and no other signal": ("time [ms],ref [V],Position\n" + "".join(f"{n},{r},{25*s-12.5:.1f}\n" for n, (_, r, s) in enumerate(_WIRES)), Need.ROLES, "Position is in %, not in volts"),
    "more volts than a vehicle has": ("time [ms],ref [V],signal [V]\n" + "".join(f"{n},{r},{s*40:.1f}\n" for n, (_, r, s) in enumerate(_WIRES)), Need.UNIT, "signal would read 180 V, which no wire of a sensor does"),
    "a tenth of a unit of time between rows": ("time,ref [V],sig [V]\n" + "".join(f"{n / 10:.1f},{r},{s}\n" for n, (_, r, s) in enumerate(_WIRES)), Need.TIME_UNIT, "the times in time go up by 0.1"),
    "half a unit of time between rows": ("time,ref [V],sig [V]\n" + "".join(f"{n / 2:.1f},{r},{s}\n" for n, (_, r, s) in enumerate(_WIRES)), Need.TIME_UNIT, "the times in time go up by 0.5"),
}  # fmt: skip


@pytest.mark.parametrize("name", ASKED)
def test_what_may_be_something_else_is_asked_about(name: str, tmp_path: Path) -> None:
    text, need, sentence = ASKED[name]
    (tmp_path / "t.csv").write_text(text)
    with pytest.raises(ImportingError) as raised:
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert sentence in str(raised.value)
    assert preview(tmp_path / "t.csv").problems[0].need is need


def _late_thousands(mark: str, decimal: str, rows: int = 9000) -> str:
    """Times in ms that pass a thousand far below the first rows."""
    lines = (f"{n / 8:,.3f};{2 + n % 3}".replace(",", "!") for n in range(rows))
    return "t [ms];signal [V]\n" + "".join(
        line.replace(".", decimal).replace("!", mark) + "\n" for line in lines
    )


@pytest.mark.parametrize("encoding", ["utf-8", "utf-16"])
@pytest.mark.parametrize(
    ("mark", "decimal"), [(".", ","), (",", "."), (" ", ","), ("\u202f", ","), ("\u00a0", "."), ("'", ".")]
)
def test_a_thousands_mark_is_seen_though_it_comes_late(
    mark: str, decimal: str, encoding: str, tmp_path: Path
) -> None:
    (tmp_path / "t.csv").write_text(_late_thousands(mark, decimal), encoding=encoding)
    (understood,) = import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert (len(record), record.sample_interval_s) == (9000, 0.000125)
    assert not any("left out" in note for note in understood.notes)


@pytest.mark.parametrize("mark", [" ", "\u00a0", "\u202f"])
def test_a_blank_chosen_as_thousands_mark_is_one_of_any_width(mark: str, tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(_late_thousands(mark, ","), encoding="utf-8")
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", Wishes(text=TextChoices(thousands=" ")))
    with open_capture(tmp_path / "a.h5") as opened:
        assert len(opened.capture.records[0]) == 9000


def test_rows_written_otherwise_further_down_are_never_lost_with_a_note_alone(tmp_path: Path) -> None:
    text = _late_thousands(".", ",", 8999)
    end = "".join(f"{1125 + n / 8:.3f};2\n".replace(".", ",") for n in range(6000))  # the mark is gone again
    (tmp_path / "t.csv").write_text(text + end)
    wishes = Wishes(text=TextChoices(thousands=""))
    with pytest.raises(ImportingError, match=r"999 of its lines hold numbers and cannot be read"):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", wishes)


def test_times_without_a_unit_are_not_asked_about_where_the_file_states_the_interval(tmp_path: Path) -> None:
    rows = "".join(f"{n / 2:.1f},{r},{s}\n" for n, (_, r, s) in enumerate(_WIRES))
    (tmp_path / "t.csv").write_text("Sample interval: 0.5 s\ntime,ref [V],sig [V]\n" + rows)
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].sample_interval_s == 0.5


def test_counts_are_right_once_the_answer_is_given_for_every_wire(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(ASKED["counts of so many bits"][0])
    names = ("ground", "reference", "signal")
    one = Wishes(units={"reference": "V"}, factors={"reference": 0.00122})
    with pytest.raises(ImportingError, match="a factor was said, but not for ground"):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", one)
    every = Wishes(units=dict.fromkeys(names, "V"), factors=dict.fromkeys(names, 0.00122))
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", every)
    with open_capture(tmp_path / "a.h5") as opened:
        reference = opened.capture.records[0].channel(Role.REFERENCE)
        assert reference is not None
        np.testing.assert_allclose(reference.volts(), np.round(np.array(_REFERENCE_V) * 820) * 0.00122)


def test_headings_that_have_changed_places_are_told(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(
        "time [s],ground [V],reference [V],signal [V]\n" + _rows("{t},{r},{g},{s}")
    )
    (understood,) = import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert "column ground stays at 4.99 V, which its heading does not fit" in understood.notes


def test_rows_lost_here_and_there_part_records_and_move_no_sample(tmp_path: Path) -> None:
    lost = {200, 500, 501, 502, 900}
    lines = _rows("{t:.3f},{g:.4f},{r:.4f},{s:.4f}").splitlines()
    kept = [line for n, line in enumerate(lines) if n not in lost]
    (tmp_path / "t.csv").write_text("time [s],ground [V],reference [V],signal [V]\n" + "\n".join(kept) + "\n")
    for wishes in (Wishes(), Wishes(resample=True)):
        (tmp_path / "a.h5").unlink(missing_ok=True)
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", wishes)
        with open_capture(tmp_path / "a.h5") as opened:
            assert [len(record) for record in opened.capture.records] == [200, 299, 397, 299]
            for record in opened.capture.records:
                first = round(record.first_sample_s * 1000)
                signal = record.channel(Role.SIGNAL)
                assert signal is not None
                assert signal.volts().tolist() == _SIGNAL_V[first : first + len(record)]


def test_a_last_cell_that_is_torn_is_missing_and_a_whole_one_is_not(tmp_path: Path) -> None:
    text = "time [s],signal [V]\n" + _rows("{t:.3f},{s:.4f}")
    for end, missing in ((-1, False), (-3, True)):
        (tmp_path / "t.csv").write_text(text[:end])
        (tmp_path / "a.h5").unlink(missing_ok=True)
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
        with open_capture(tmp_path / "a.h5") as opened:
            volts = opened.capture.records[0].channels[0].volts()
        assert len(volts) == len(_SIGNAL_V)
        assert bool(np.isnan(volts[-1])) is missing


@pytest.mark.parametrize(
    ("text", "encoding", "names"),
    [
        ("czas [s];Sygnał [V];Napięcie 5 V [V]\n", "cp1250", ("czas", "Sygnał", "Napięcie 5 V")),
        ("Čas [s];Signál [V];Napětí [V]\n", "cp1250", ("Čas", "Signál", "Napětí")),
        ("Zeit [s];Höhe [V];Geber für 5 V [V]\n", "cp1252", ("Zeit", "Höhe", "Geber für 5 V")),
    ],
)
def test_code_pages_are_told_apart_by_the_words_of_such_tables(
    text: str, encoding: str, names: tuple[str, ...], tmp_path: Path
) -> None:
    (tmp_path / "t.csv").write_bytes((text + _rows("{t:.3f};{s:.4f};{r:.4f}")).encode(encoding))
    assert tuple(column.name for column in preview(tmp_path / "t.csv").columns) == names


def test_a_struct_of_a_mat_file_and_units_of_an_hdf5_file_are_read(tmp_path: Path) -> None:
    time_s = np.arange(len(_SIGNAL_V)) / 1000
    io.savemat(
        tmp_path / "a.mat", {"run": {"t": time_s, "ref": np.array(_REFERENCE_V), "sig": np.array(_SIGNAL_V)}}
    )
    with h5py.File(tmp_path / "b.h5", "w") as file:
        file.attrs["sample_rate_hz"] = 1000.0
        for name, volts in (("ground", _GROUND_V), ("reference", _REFERENCE_V), ("signal", _SIGNAL_V)):
            file.create_dataset(name, data=1000.0 * np.array(volts)).attrs["unit"] = "mV"
    for name in ("a.mat", "b.h5"):
        import_capture([tmp_path / name], tmp_path / f"{name}.out.h5")
        with open_capture(tmp_path / f"{name}.out.h5") as opened:
            (record,) = opened.capture.records
            assert record.sample_interval_s == pytest.approx(1e-3)
            signal = record.channel(Role.SIGNAL)
            assert signal is not None
            np.testing.assert_allclose(signal.volts(), _SIGNAL_V, rtol=1e-12)


def test_of_a_folder_notes_photos_and_captures_stay_out_and_names_are_counted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = tmp_path / "runs"
    folder.mkdir()
    for number in (10, 2, 1):
        (folder / f"run{number}.csv").write_text("time [s],signal [V]\n" + _rows("{t:.3f},{s:.4f}"))
    (folder / "read me.txt").write_text("Runs of Tuesday, rear left.\nRun 2 with the harness wiggled.\n")
    (folder / "photo.JPG").write_bytes(b"\xff\xd8\xff\xe0")
    (folder / "Thumbs.db").write_bytes(b"\xd0\xcf\x11\xe0")
    import_capture([folder / "run1.csv"], folder / "earlier.h5")
    assert main(["import", str(folder), "-o", str(tmp_path / "a.h5")]) == 0
    assert (
        "note: read me.txt was left out: no two rows of numbers were found in it" in capsys.readouterr().out
    )
    with open_capture(tmp_path / "a.h5") as opened:
        assert [record.label for record in opened.capture.records] == ["run1", "run2", "run10"]


def test_the_file_that_an_error_is_about_is_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    good, bad, out = tmp_path / "good.csv", tmp_path / "bad.csv", tmp_path / "a.h5"
    good.write_text("time [s],signal [V]\n" + _rows("{t:.3f},{s:.4f}"))
    bad.write_text("nothing\n")
    calls = {
        f"{bad}: no two rows": [str(good), str(bad), "-o", str(out)],
        f"{good}: a file of that name exists already": [str(bad), "-o", str(good)],
        f"{tmp_path / 'r.json'}: there is no such recipe": [str(good), "-o", str(out), "--recipe", str(tmp_path / "r.json")],
    }  # fmt: skip
    for said, call in calls.items():
        assert main(["import", *call]) == 1
        assert capsys.readouterr().err.startswith(said)
    assert not out.exists()


def test_marks_that_leave_no_row_are_told_and_shown(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(
        "time [s],signal [V]\n" + "".join(f"{n}.125,2.{n}00\n" for n in range(1, 9))
    )
    wishes = Wishes(text=TextChoices(decimal=","))
    with pytest.raises(ImportingError, match="no row of numbers is left when it is read so"):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", wishes)
    assert preview(tmp_path / "t.csv", wishes).problems[0].need is Need.TABLE


def test_a_spreadsheet_is_told_from_an_archive_of_arrays(tmp_path: Path) -> None:
    for member, said in (
        ("[Content_Types].xml", "a spreadsheet.*save its sheet as CSV"),
        ("content.xml", "a spreadsheet"),
        ("a.csv", "an archive of other files; unpack it"),
    ):
        with zipfile.ZipFile(tmp_path / "a.zip", "w") as archive:
            archive.writestr(member, "x" * 100)
        with pytest.raises(ImportingError, match=said):
            import_capture([tmp_path / "a.zip"], tmp_path / "a.h5")
