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

from analysis.captures.model import Capture, Role
from analysis.captures.reading import open_capture
from analysis.errors import ExportingError
from analysis.exporting.findings_table import findings_csv
from analysis.exporting.neutral import neutral
from analysis.exporting.samples import export_samples
from analysis.importing.bring_in import import_capture
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


@pytest.mark.parametrize("ending", [".csv", ".parquet", ".mat", ".npz"])
def test_what_was_exported_is_imported_again_bit_by_bit(ending: str, tmp_path: Path) -> None:
    capture = _sweep()
    (written,) = export_samples(capture, tmp_path / f"a{ending}", record="002")
    import_capture([written], tmp_path / "again.h5")
    with open_capture(tmp_path / "again.h5") as opened:
        (record,) = opened.capture.records
        before = capture.record("002")
        assert record.sample_interval_s == before.sample_interval_s
        assert record.first_sample_s == before.first_sample_s
        for channel in before.channels:
            assert channel.role is not None
            after = record.channel(channel.role)
            assert after is not None
            np.testing.assert_array_equal(after.volts(), channel.volts())


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


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", " ="])
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
