"""Whatever is handed in: one clear sentence, and nothing half-written."""

from __future__ import annotations

import os
import pickle
import zipfile
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import Cancelled, ImportingError, WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.headings import split_line
from analysis.importing.opening import open_table
from analysis.importing.wishes import Wishes

ROWS = "".join(f"{n / 1000},{1 + n % 4},5.0\n" for n in range(50))


def _zeros(path: Path) -> None:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("signal.npy", b"\0" * 300_000_000)


def _pickled(path: Path) -> None:
    with path.open("wb") as file:
        np.savez(file, signal=np.array([{"a": 1}], dtype=object), allow_pickle=True)


BAD: dict[str, tuple[Callable[[Path], object], str]] = {
    "binary": (lambda p: p.write_bytes(os.urandom(5000)), "neither text"),
    "a pickle": (lambda p: p.write_bytes(pickle.dumps(list(range(1000)))), "neither text|no two rows"),
    "no numbers": (lambda p: p.write_text("one,two\nthree,four\nfive,six\n"), "no two rows of numbers"),
    "one number": (lambda p: p.write_text("3.5\n"), "no two rows"),
    "no time": (lambda p: p.write_text("signal\n1.5\n2.25\n1.75\n"), "--sample-interval"),
    "two times": (lambda p: p.write_text("time,t,signal\n0,0,1\n0.1,0.3,2\n0.2,0.6,1\n"), "--time COLUMN"),
    "backwards": (lambda p: p.write_text("time [s],signal\n0,1\n1,2\n2,3\n1,2\n2,1\n"), "backwards at row 4"),
    "times in days": (lambda p: p.write_text("time,signal\n0,1\n86400,2\n172800,1\n"), "--unit COLUMN=UNIT"),
    "times in a wrong unit": (
        lambda p: p.write_text("time [ns],signal\n0,1\n1,2\n2,1\n"), "would lie 1e-09 s apart"
    ),
    "uneven": (lambda p: p.write_text("time [s],signal\n0,1\n1,2\n1.3,3\n2.9,2\n4,1\n"), "not evenly spaced"),
    "a million columns": (lambda p: p.write_text((",".join("1" * 1_000_000) + "\n") * 2), "longer than"),
    "many columns": (lambda p: p.write_text((",".join("1" * 3000) + "\n") * 5), "columns"),
    "a line of 10 MB": (lambda p: p.write_bytes(b"1" * 10_000_000), "longer than"),
    "a zip bomb": (_zeros, "more than can be read"),
    "pickled arrays": (_pickled, "Python objects"),
    "empty": (lambda p: p.write_bytes(b""), "empty"),
    "cut parquet": (lambda p: p.write_bytes(b"PAR1" + b"\0" * 100), "damaged"),
    "cut wav": (lambda p: p.write_bytes(b"RIFF\0\0\0\0WAVEfmt "), "damaged"),
    "cut mat": (lambda p: p.write_bytes(b"MATLAB 5.0".ljust(124) + b"\x00\x01IM\x0f\0"), "damaged|no run"),
    "cut hdf5": (lambda p: p.write_bytes(b"\x89HDF\r\n\x1a\n" + b"\0" * 100), "damaged|cut short"),
    "no file": (lambda p: None, "no such file"),
    "an empty folder": (lambda p: p.mkdir(), "no files"),
}  # fmt: skip


@pytest.mark.parametrize("kind", BAD)
def test_bad_input_is_refused_with_one_sentence_and_leaves_nothing(kind: str, tmp_path: Path) -> None:
    make, sentence = BAD[kind]
    source = tmp_path / "source"
    make(source)
    out = tmp_path / "out"
    out.mkdir()
    with pytest.raises(WornbandError, match=sentence) as caught:
        import_capture([source], out / "a.h5")
    assert "\n" not in str(caught.value)
    assert list(out.iterdir()) == []


def test_a_cancelled_import_leaves_nothing_wherever_it_is_stopped(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    source.write_text("time,signal,ref\n" + ROWS)
    ticks: list[float] = []
    import_capture([source], tmp_path / "whole.h5", tick=ticks.append)
    assert ticks == sorted(ticks)
    assert ticks[-1] == pytest.approx(1.0)
    out = tmp_path / "out"
    out.mkdir()
    for stop in range(len(ticks)):
        calls = iter(range(len(ticks) + 1))

        def tick(done: float, stop: int = stop, calls: object = calls) -> None:
            if next(calls) == stop:  # type: ignore[call-overload]
                raise Cancelled

        with pytest.raises(Cancelled):
            import_capture([source], out / "a.h5", tick=tick)
        assert list(out.iterdir()) == []


def test_a_capture_is_not_overwritten(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    source.write_text("time,signal,ref\n" + ROWS)
    (tmp_path / "a.h5").write_text("evidence")
    with pytest.raises(ImportingError, match="exists already"):
        import_capture([source], tmp_path / "a.h5")
    assert (tmp_path / "a.h5").read_text() == "evidence"


def test_odd_cells_are_missing_or_over_range_and_counted(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    heading = "time [s],signal,ref"
    rows = [heading, "0,1.5,5", "1,∞,5", "2,,5", "3,-∞,5", "4,what,5", "5,2.5", "6,2.25,5", "7,1.2"]
    source.write_text("\n".join(rows), encoding="utf-8")
    (understood,) = import_capture([source], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        signal = opened.capture.records[0].channel(Role.SIGNAL)
        assert signal is not None
        raw = signal.source.read(0, 8)
        np.testing.assert_array_equal(
            raw, [1.5, np.inf, np.nan, -np.inf, np.nan, 2.5, 2.25, np.nan]
        )  # the last may lack digits
        np.testing.assert_array_equal(signal.scaling.over_range(raw), np.isinf(raw))
    said = " ".join(understood.notes)
    assert "2 rows are cut short" in said
    assert "what" in said
    assert "beyond the range" in said


def test_a_gap_in_the_time_parts_two_records(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    times = [*(n / 1000 for n in range(20)), *(5 + n / 1000 for n in range(30))]
    source.write_text("time,signal\n" + "".join(f"{t:.3f},{1 + n % 3}\n" for n, t in enumerate(times)))
    (understood,) = import_capture([source], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        records = opened.capture.records
        assert [(len(item), item.first_sample_s) for item in records] == [(20, 0.0), (30, 5.0)]
        assert {item.sample_interval_s for item in records} == {1e-3}
    assert any("gaps" in note for note in understood.notes)


def test_uneven_times_are_resampled_only_when_asked_and_it_is_said(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    source.write_text("time [s],signal\n0,1\n1,2\n1.4,2.4\n3,4\n4,5\n")
    (understood,) = import_capture([source], tmp_path / "a.h5", Wishes(resample=True))
    with open_capture(tmp_path / "a.h5") as opened:
        record = opened.capture.records[0]
        np.testing.assert_allclose(
            record.channels[0].volts(), 1.0 + record.time_s()
        )  # a straight line stays one
        assert "interpolation" in str(record.attributes["resampled"])
    assert any("interpolated" in note for note in understood.notes)


def test_several_files_become_the_records_of_one_capture_with_their_fingerprints(tmp_path: Path) -> None:
    folder = tmp_path / "short ones"
    folder.mkdir()
    for name in "ba":
        (folder / f"{name}.csv").write_text("time,signal,ref\n" + ROWS)
    import_capture([folder], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        records = opened.capture.records
        assert [(item.name, item.label) for item in records] == [("001", "a"), ("002", "b")]
        assert len({item.attributes["source_sha256"] for item in records}) == 1


def test_a_numpy_header_with_an_open_bracket_is_damage(tmp_path: Path) -> None:
    np.save(tmp_path / "a.npy", np.arange(20.0))
    raw = (tmp_path / "a.npy").read_bytes()
    (tmp_path / "a.npy").write_bytes(raw.replace(b"(20,)", b"((0,)"))
    with pytest.raises(ImportingError, match="damaged"):
        open_table(tmp_path / "a.npy")


def test_uneven_stretches_between_gaps_are_resampled_one_by_one_when_asked(tmp_path: Path) -> None:
    first = [0.0, 1.0, 1.4, 3.0, 4.0]
    times = [*first, *(100.0 + time for time in first)]
    source = tmp_path / "t.csv"
    source.write_text("time [s],signal\n" + "".join(f"{t},{(t % 100) / 2 + 0.5}\n" for t in times))
    with pytest.raises(ImportingError, match=r"not evenly spaced.*--resample"):
        import_capture([source], tmp_path / "a.h5")
    import_capture([source], tmp_path / "a.h5", Wishes(resample=True))
    with open_capture(tmp_path / "a.h5") as opened:
        early, late = opened.capture.records
        assert late.first_sample_s == 100.0
        for record in (early, late):
            assert "interpolation" in str(record.attributes["resampled"])
            np.testing.assert_allclose(
                record.channels[0].volts(), 0.5 + (record.time_s() % 100.0) / 2.0
            )  # a straight line stays one


@pytest.mark.parametrize(
    "line",
    ['"a\rb";1.0', f'"{"x" * 200_000}";1.0', '"a" \r;"b"'],
    ids=["a carriage return", "a cell that is too long", "a carriage return after quotes"],
)
def test_a_line_that_pythons_csv_refuses_is_split_all_the_same(line: str) -> None:
    """The fuzzer that is led by coverage found the first."""
    assert len(split_line(line, ";")) == 2
