"""Files that other libraries write come in with equal values: pandas, pyarrow, SciPy, NumPy, xarray, h5py."""

from __future__ import annotations

import csv
import wave
from collections.abc import Callable
from pathlib import Path

import h5py
import netCDF4
import numpy as np
import pandas as pd
import pyarrow as pa
import pytest
import xarray as xr
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray
from pyarrow import feather, parquet
from scipy import io

from analysis.captures.model import Record, Role
from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.preview import preview
from analysis.importing.recipes import keep_for_shape
from analysis.importing.wishes import Wishes

N = 3000
TIME_S = np.arange(N) / 1000.0
SIGNAL_V = 2.5 + 2.0 * np.sin(TIME_S * 3.0) + np.random.default_rng(7).normal(0.0, 0.003, N)
REFERENCE_V = 5.0 + np.random.default_rng(8).normal(0.0, 0.002, N)
FRAME = pd.DataFrame({"time": TIME_S, "signal": SIGNAL_V, "reference": REFERENCE_V})


def _mat(path: Path) -> None:
    io.savemat(path, {"t": TIME_S, "signal": SIGNAL_V, "reference": REFERENCE_V})


def _mat_73(path: Path) -> None:
    """As MATLAB lays out a 7.3 file: a 512-byte user block, and rows of shape (1, n)."""
    with h5py.File(path, "w", userblock_size=512) as file:
        for name, values in (("t", TIME_S), ("signal", SIGNAL_V), ("reference", REFERENCE_V)):
            file.create_dataset(name, data=values[None, :], compression="gzip")
    with path.open("r+b") as raw:
        raw.write(b"MATLAB 7.3 MAT-file".ljust(124) + b"\x00\x02IM")


def _hdf5(path: Path) -> None:
    with h5py.File(path, "w") as file:
        group = file.create_group("bench/run")
        group["signal"], group["reference"] = SIGNAL_V, REFERENCE_V
        group["sample_rate"] = 1000.0


def _netcdf3(path: Path) -> None:
    with netCDF4.Dataset(path, "w", format="NETCDF3_CLASSIC") as file:
        file.createDimension("n", N)
        for name, values in (("time", TIME_S), ("signal", SIGNAL_V), ("reference", REFERENCE_V)):
            file.createVariable(name, "f8", ("n",))[:] = values


def _netcdf4(path: Path) -> None:
    data = {name: ("n", FRAME[name].to_numpy()) for name in FRAME.columns}
    xr.Dataset(data).to_netcdf(path, engine="h5netcdf")


WRITERS: dict[str, Callable[[Path], object]] = {
    "pandas csv": lambda path: FRAME.to_csv(path, index=False),
    "pandas csv with index": lambda path: FRAME.to_csv(path),
    "pandas German csv": lambda path: FRAME.to_csv(path, index=False, sep=";", decimal=","),
    "parquet": lambda path: parquet.write_table(pa.Table.from_pandas(FRAME), path),
    "feather": lambda path: feather.write_feather(FRAME, path),
    "npz": lambda path: np.savez_compressed(
        path.open("wb"), time=TIME_S, signal=SIGNAL_V, reference=REFERENCE_V
    ),
    "mat 5": _mat,
    "mat 7.3": _mat_73,
    "hdf5": _hdf5,
    "netcdf 3": _netcdf3,
    "netcdf 4": _netcdf4,
}


def _imported(
    source: Path, wishes: Wishes | None = None
) -> tuple[Record, dict[Role | None, NDArray[np.float64]]]:
    target = source.with_name("out.h5")
    import_capture([source], target, wishes, replace_target=True)
    with open_capture(target) as opened:
        (record,) = opened.capture.records
        return record, {item.role: item.volts() for item in record.channels}


@pytest.mark.parametrize("writer", WRITERS)
@pytest.mark.filterwarnings("ignore:unclosed file:ResourceWarning")
def test_what_a_library_writes_comes_in_equal_to_the_last_bit(writer: str, tmp_path: Path) -> None:
    source = tmp_path / "source.bin"
    WRITERS[writer](source)
    record, volts = _imported(source)
    assert record.sample_interval_s == 1e-3
    np.testing.assert_array_equal(volts[Role.SIGNAL], SIGNAL_V)
    np.testing.assert_array_equal(volts[Role.REFERENCE], REFERENCE_V)


@pytest.mark.parametrize("width", [1, 2, 3, 4])
def test_a_wav_of_any_width_comes_in_with_its_scale(width: int, tmp_path: Path) -> None:
    bits = 8 * width
    counts = np.round((SIGNAL_V - 2.5) / 5.0 * 2 ** (bits - 1)).astype(np.int64)
    stored = counts + (128 if width == 1 else 0)
    raw = stored.astype("<i8").view(np.uint8).reshape(-1, 8)[:, :width].tobytes()
    with wave.open(str(tmp_path / "a.wav"), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(width)
        file.setframerate(1000)
        file.writeframes(raw)
    wishes = Wishes(channels={"1": Role.SIGNAL}, full_scale_v=5.0)
    record, volts = _imported(tmp_path / "a.wav", wishes)
    assert record.sample_interval_s == 1e-3
    np.testing.assert_allclose(volts[Role.SIGNAL], counts * 5.0 / 2 ** (bits - 1), rtol=1e-12, atol=1e-12)


def test_a_wav_of_floats_comes_in_as_scipy_writes_it(tmp_path: Path) -> None:
    io.wavfile.write(tmp_path / "a.wav", 1000, (SIGNAL_V / 5.0).astype(np.float32))
    wishes = Wishes(channels={"1": Role.SIGNAL}, full_scale_v=5.0)
    _, volts = _imported(tmp_path / "a.wav", wishes)
    np.testing.assert_array_equal(
        volts[Role.SIGNAL], (SIGNAL_V / 5.0).astype(np.float32).astype(np.float64) * 5.0
    )


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    delimiter=st.sampled_from(";\t|,"),
    decimal=st.sampled_from(".,"),
    quoting=st.sampled_from([csv.QUOTE_MINIMAL, csv.QUOTE_ALL]),
    end=st.sampled_from(["\n", "\r\n"]),
    encoding=st.sampled_from(["utf-8", "utf-8-sig", "utf-16", "latin-1"]),
    values=st.lists(st.floats(-0.9, 5.9).map(lambda v: float(f"{v:.6g}")), min_size=4, max_size=40),
    digits=st.integers(6, 17),
)
def test_a_table_in_any_dialect_of_the_csv_module_is_read_back(
    delimiter: str, decimal: str, quoting: int, end: str, encoding: str, values: list[float], digits: int,
    tmp_path: Path,
) -> None:  # fmt: skip
    source = tmp_path / "t.csv"
    with source.open("w", newline="", encoding=encoding) as file:
        writer = csv.writer(file, delimiter=delimiter, quoting=quoting, lineterminator=end)  # type: ignore[arg-type]
        writer.writerow(["time", "signal µ", "reference"])
        for row, value in enumerate(values):
            cells = [f"{row * 0.002:.3f}", f"{value:.{digits}g}", "5.0"]
            writer.writerow([cell.replace(".", decimal) for cell in cells])
    record, volts = _imported(source)
    assert record.sample_interval_s == 0.002
    np.testing.assert_array_equal(volts[Role.SIGNAL], values)


def _two_runs(path: Path, *, alike: bool) -> None:
    """Two groups with the same names, of one length or of two."""
    with h5py.File(path, "w") as file:
        file["rate"] = 1000.0
        for place, name in enumerate(("first", "second")):
            count = N if alike or not place else N // 2
            file[f"{name}/signal"] = SIGNAL_V[:count] + place
            file[f"{name}/reference"] = REFERENCE_V[:count] + place / 100


@pytest.mark.parametrize("alike", [True, False])
def test_channels_of_two_groups_are_never_mixed_and_either_can_be_picked(alike: bool, tmp_path: Path) -> None:
    source = tmp_path / "two.h5"
    _two_runs(source, alike=alike)
    (understood,) = import_capture([source], tmp_path / "a.h5")
    assert any("left out: second/" in note for note in understood.notes)
    datasets = {item.name: item.taken for item in preview(source).datasets}
    assert datasets == {f"{run}/{name}": run == "first" for run in ("first", "second") for name in ("signal", "reference")}  # fmt: skip  # noqa: E501
    _, volts = _imported(source)
    np.testing.assert_array_equal(volts[Role.SIGNAL], SIGNAL_V)
    assert set(volts) == {Role.SIGNAL, Role.REFERENCE}
    _, volts = _imported(source, Wishes(datasets=("second/signal", "second/reference")))
    count = N if alike else N // 2
    np.testing.assert_array_equal(volts[Role.SIGNAL], SIGNAL_V[:count] + 1)
    assert set(volts) == {Role.SIGNAL, Role.REFERENCE}


def test_what_was_picked_is_picked_again_by_its_recipe(tmp_path: Path) -> None:
    source = tmp_path / "two.h5"
    _two_runs(source, alike=False)
    wishes = Wishes(datasets=("second/signal",))
    (understood,) = import_capture([source], tmp_path / "a.h5", wishes)
    keep_for_shape(understood, wishes, tmp_path / "recipes")
    (again,) = import_capture([source], tmp_path / "b.h5", recipes=tmp_path / "recipes")
    assert again.recipe is not None
    with open_capture(tmp_path / "b.h5") as opened:
        (channel,) = opened.capture.records[0].channels
        np.testing.assert_array_equal(channel.volts(), SIGNAL_V[: N // 2] + 1)
