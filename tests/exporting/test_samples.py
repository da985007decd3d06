"""What is written for other programs is what the capture holds, to the last bit."""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import numpy as np
import pandas as pd
import pytest
from numpy.typing import NDArray
from pyarrow import parquet
from scipy import io

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling, Step
from analysis.captures.reading import open_capture
from analysis.errors import Cancelled, ExportingError
from analysis.exporting.findings_table import findings_csv
from analysis.exporting.neutral import neutral
from analysis.exporting.samples import FORMATS, export_samples
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from analysis.intervals import Interval
from tests.captures.examples import small_capture


def _sweep() -> Capture:
    return small_capture(500)


def _read(path: Path) -> NDArray[Any]:
    if path.suffix == ".csv":
        return np.asarray(pd.read_csv(path)["signal [V]"])
    if path.suffix == ".parquet":
        return np.asarray(parquet.read_table(path)["signal [V]"].to_numpy())
    if path.suffix == ".mat":
        return np.asarray(io.loadmat(path)["signal"]).ravel()
    with np.load(path, allow_pickle=False) as held:
        return np.asarray(held["signal"])


@pytest.mark.parametrize("ending", [".csv", ".parquet", ".mat", ".npz"])
def test_other_libraries_read_the_same_volts(ending: str, tmp_path: Path) -> None:
    capture = _sweep()
    (written,) = export_samples(capture, tmp_path / f"a{ending}", record="002")
    signal = capture.record("002").channel(Role.SIGNAL)
    assert signal is not None
    np.testing.assert_array_equal(_read(written), signal.volts())


STRETCHES = {
    "the record": (None, 0, 500),
    "a window": (Interval(-0.2, 0.1), 50, 350),
    "a marked span": (Interval(-0.1, 0.05), 150, 300),
}


@pytest.mark.parametrize("stretch", STRETCHES)
@pytest.mark.parametrize("ending", FORMATS)
def test_what_was_exported_is_imported_again_bit_by_bit(ending: str, stretch: str, tmp_path: Path) -> None:
    capture = _sweep()
    span_s, start, stop = STRETCHES[stretch]
    (written,) = export_samples(capture, tmp_path / f"a{ending}", record="002", span_s=span_s)
    again = written if ending == ".h5" else tmp_path / "again.h5"
    if again != written:
        import_capture([written], again)
    with open_capture(again) as opened:
        (record,) = opened.capture.records
        before = capture.record("002")
        assert record.sample_interval_s == before.sample_interval_s
        first_s = before.first_sample_s + start * before.sample_interval_s
        assert record.first_sample_s == pytest.approx(first_s, abs=1e-12)
        for channel in before.channels:
            assert channel.role is not None
            after = record.channel(channel.role)
            assert after is not None
            np.testing.assert_array_equal(after.volts(), channel.volts(start, stop))


@pytest.mark.parametrize("interval_s", [1 / 44_100, 1 / 3, 12.8e-6, 1 / 30_000, 2e-9 * 5])
@pytest.mark.parametrize("ending", [".csv", ".parquet", ".mat", ".npz"])
def test_an_odd_interval_comes_back_as_it_was(ending: str, interval_s: float, tmp_path: Path) -> None:
    volts = np.random.default_rng(6).normal(2.5, 0.5, 700)
    record = make_record("001", interval_s, {Role.SIGNAL: (volts, Scaling())})
    (written,) = export_samples(make_capture([record]), tmp_path / f"a{ending}")
    import_capture([written], tmp_path / "again.h5")
    with open_capture(tmp_path / "again.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == interval_s
        np.testing.assert_array_equal(record.channels[0].volts(), volts)


ODD_V = np.array(
    [0.1, -0.0, 1e-310, 5e-324, 1 / 3, np.nan, np.inf, -np.inf, 1.7976931348623157e308, -2.5, 4.999]
)


@pytest.mark.parametrize("ending", [".csv", ".parquet", ".mat", ".npz"])
def test_no_bit_of_any_float_is_lost_on_the_way_out_and_in(ending: str, tmp_path: Path) -> None:
    random = np.random.default_rng(4).integers(0, 2**63, 3000, dtype=np.uint64).view(np.float64)
    volts = np.concatenate([ODD_V, random[np.isfinite(random)]])
    record = make_record(
        "001", 1e-3, {Role.SIGNAL: (volts, Scaling()), Role.GROUND: (volts[::-1].copy(), Scaling())}
    )
    (written,) = export_samples(make_capture([record]), tmp_path / f"a{ending}")
    wishes = Wishes(
        channels={"signal": Role.SIGNAL, "ground": Role.GROUND}, units={"signal": "V", "ground": "V"}
    )
    import_capture([written], tmp_path / "again.h5", wishes)
    with open_capture(tmp_path / "again.h5") as opened:
        for role, expected in ((Role.SIGNAL, volts), (Role.GROUND, volts[::-1])):
            channel = opened.capture.records[0].channel(role)
            assert channel is not None
            found = channel.volts()
            np.testing.assert_array_equal(np.isnan(found), np.isnan(expected))
            known = ~np.isnan(expected)  # a NaN is missing, whatever its bits
            np.testing.assert_array_equal(found[known].view(np.uint64), expected[known].view(np.uint64))


def test_a_capture_that_was_cut_says_from_which_one_and_a_whole_one_stays_itself(tmp_path: Path) -> None:
    capture = _sweep()
    (whole,) = export_samples(capture, tmp_path / "whole.h5")
    (cut,) = export_samples(capture, tmp_path / "cut.h5", record="002", span_s=Interval(-0.1, 0.05))
    with open_capture(whole) as opened:
        assert opened.capture.capture_id == capture.capture_id
        assert [len(item) for item in opened.capture.records] == [500, 500]
    with open_capture(cut) as opened:
        (record,) = opened.capture.records
        assert opened.capture.text("cut_from") == capture.capture_id != opened.capture.capture_id
        assert opened.capture.text("vehicle") == "Larkspur 3"
        assert (record.name, record.step, len(record)) == ("002", Step.SWEEP, 150)
        assert record.first_sample_s == pytest.approx(-0.1)
        signal, before = record.channel(Role.SIGNAL), capture.record("002").channel(Role.SIGNAL)
        assert signal is not None
        assert before is not None
        assert signal.scaling == before.scaling  # counts stay counts
        np.testing.assert_array_equal(signal.source.read(0, 150), before.source.read(150, 300))


def test_names_that_are_alike_as_variables_are_numbered(tmp_path: Path) -> None:
    volts = (np.ones(5), Scaling())
    channels = [make_channel(None, *volts, name=name) for name in ("a b", "a.b", "1", "=x()", "time")]
    capture = make_capture([make_record("001", 1.0, channels)])
    for ending in (".mat", ".npz"):
        (written,) = export_samples(capture, tmp_path / f"a{ending}")
        held = io.loadmat(written) if ending == ".mat" else np.load(written, allow_pickle=False)
        names = {name for name in held if not name.startswith("__")}
        assert names == {"time", "a_b", "a_b_2", "c_1", "c___x__", "time_2", "sample_interval"}
    (written,) = export_samples(capture, tmp_path / "a.csv")
    assert "'=x() [V]" in written.read_text().splitlines()[0]


@pytest.mark.parametrize("ending", FORMATS)
def test_a_cancelled_export_leaves_nothing_and_progress_only_grows(ending: str, tmp_path: Path) -> None:
    capture = small_capture(400_000)
    ticks: list[float] = []
    export_samples(capture, tmp_path / f"whole{ending}", record="002", tick=ticks.append)
    assert ticks == sorted(ticks)
    assert ticks[-1] == pytest.approx(1.0)
    assert len(ticks) > 2
    out = tmp_path / "out"
    out.mkdir()

    def stop(done: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        export_samples(capture, out / f"a{ending}", record="002", tick=stop)
    assert list(out.iterdir()) == []


def test_a_span_is_half_open_and_every_record_gets_a_file(tmp_path: Path) -> None:
    span = Interval(-0.1, 0.05)
    (written,) = export_samples(_sweep(), tmp_path / "a.csv", record="002", span_s=span)
    times = pd.read_csv(written)["time [s]"]
    assert len(times) == 150
    assert times.iloc[0] == pytest.approx(-0.1)
    both = export_samples(_sweep(), tmp_path / "b.csv")
    assert [path.name for path in both] == ["b-001.csv", "b-002.csv"]


def test_nothing_is_overwritten_and_an_unknown_ending_is_refused(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text("mine")
    for name, sentence in (("a.csv", "exists already"), ("a.doc", "cannot be written as .doc")):
        with pytest.raises(ExportingError, match=sentence):
            export_samples(_sweep(), tmp_path / name, record="002")
    with pytest.raises(ExportingError, match="no such samples"):
        export_samples(_sweep(), tmp_path / "b.csv", record="099")
    assert [item.name for item in tmp_path.iterdir()] == ["a.csv"]


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", " =", "\x0c=", "\u2028=", "\x00=", "\uff1d"])
def test_a_cell_that_a_spreadsheet_would_run_is_neutralised(start: str) -> None:
    assert neutral(f"{start}SUM(A1)").startswith("'")
    assert neutral("plain, with = inside") == "plain, with = inside"


def test_findings_are_a_table_without_formulas() -> None:
    found: dict[str, Any] = {
        "verdict": {"code": "worn_track", "confidence": 0.9, "summary": "=cmd()"},
        "bands": [{"start_percent": 40.0, "end_percent": 45.5, "confidence": 0.9, "record": "001"}],
        "checks": [{"code": "ground_drop", "value": -0.5, "unit": "V", "result": "pass", "source": "@x"}],
        "evidence": [{"code": "ground_good", "state": "proved", "text": "good"}],
        "advice": ["look"],
    }
    rows = list(csv.DictReader(findings_csv(found).splitlines()))
    assert [row["kind"] for row in rows] == ["verdict", "band", "check", "evidence", "advice"]
    assert rows[0]["text"] == "'=cmd()"
    assert float(rows[1]["end_percent"]) == 45.5
    assert float(rows[2]["value"]) == -0.5  # a number stays a number
    assert rows[2]["source"] == "'@x"
