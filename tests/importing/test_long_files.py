"""Long files are read piece by piece, and what they say of scale, gaps and dates is kept."""

from __future__ import annotations

import subprocess
import sys
import tracemalloc
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Literal, get_args

import netCDF4
import numpy as np
import pyarrow as pa
import pytest
from pyarrow import feather, parquet
from scipy import io

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing import arrow, model
from analysis.importing.bring_in import import_capture
from analysis.importing.opening import open_table
from analysis.progress import ignore

N = 1_500_000
RANDOM = np.random.default_rng(5)


def _columns() -> dict[str, np.ndarray]:
    return {
        "time": np.arange(N) / 1e4,
        "signal": RANDOM.normal(2.5, 0.5, N),
        "reference": RANDOM.normal(5.0, 0.1, N),
    }


def _netcdf3(path: Path, **columns: np.ndarray) -> None:
    with netCDF4.Dataset(path, "w", format="NETCDF3_CLASSIC") as file:
        file.createDimension("n", N)
        for name, values in columns.items():
            file.createVariable(name, "f8", ("n",))[:] = values


WRITERS: dict[str, Callable[[Path], object]] = {
    "parquet": lambda path: parquet.write_table(pa.table(_columns()), path, row_group_size=100_000),
    "feather": lambda path: feather.write_feather(pa.table(_columns()), path, compression="uncompressed"),
    "feather lz4": lambda path: feather.write_feather(pa.table(_columns()), path, compression="lz4"),
    "netcdf 3": lambda path: _netcdf3(path, **_columns()),
    "mat": lambda path: io.savemat(path, _columns(), appendmat=False),
    "npy": lambda path: np.save(path.open("wb"), np.column_stack([*_columns().values()])),
}


@pytest.mark.parametrize("writer", WRITERS)
@pytest.mark.filterwarnings("ignore:unclosed file:ResourceWarning")
def test_memory_does_not_grow_with_the_length_of_a_file(writer: str, tmp_path: Path) -> None:
    source = tmp_path / "source.bin"
    WRITERS[writer](source)
    tracemalloc.start()
    try:
        table = open_table(source)
        rows = sum(len(block[0]) for block in table.blocks(ignore, []))
        table.close()
        peak = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    assert rows == N
    assert peak < N * 3 * 8 / 2  # bytes; the whole is twice that


@pytest.mark.parametrize("writer", ["parquet", "feather", "feather lz4"])
def test_arrows_own_memory_does_not_grow_either(writer: str, tmp_path: Path) -> None:
    source = tmp_path / "source.bin"
    WRITERS[writer](source)
    code = (
        "import sys\nfrom pathlib import Path\nimport pyarrow as pa\n"
        "from analysis.importing.opening import open_table\nfrom analysis.progress import ignore\n"
        "table = open_table(Path(sys.argv[1]))\n"
        "print(sum(len(block[0]) for block in table.blocks(ignore, [])))\n"
        "print(pa.default_memory_pool().max_memory())"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, str(source)], capture_output=True, text=True, check=True
    )
    rows, peak = (int(word) for word in done.stdout.split())
    assert rows == N
    assert peak < N * 3 * 8 / 2


def test_a_file_that_claims_more_than_can_be_read_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    table = pa.table({"time": np.arange(2000) / 1e3, "signal": np.ones(2000)})
    parquet.write_table(table, tmp_path / "a.parquet")
    feather.write_feather(table, tmp_path / "a.feather")
    monkeypatch.setattr(arrow, "MOST_BYTES", 10_000)
    for name in ("a.parquet", "a.feather"):
        with pytest.raises(ImportingError, match="more than can be read; save a shorter stretch"):
            open_table(tmp_path / name)


def test_a_frame_with_too_many_columns_is_refused(tmp_path: Path) -> None:
    wide = {f"c{place}": [1.0, 2.0] for place in range(model.MOST_COLUMNS + 1)}
    parquet.write_table(pa.table(wide), tmp_path / "a.parquet")
    with pytest.raises(ImportingError, match="columns, and at most"):
        open_table(tmp_path / "a.parquet")


@pytest.mark.parametrize(
    ("unit", "step", "a_second"), [("s", 3, 1), ("ms", 25, 10**3), ("us", 1250, 10**6), ("ns", 12_500, 10**9)]
)
@pytest.mark.parametrize("ending", ["parquet", "feather"])
def test_dates_become_seconds_to_the_last_digit(
    unit: str, step: int, a_second: int, ending: str, tmp_path: Path
) -> None:
    counts = pa.array(1_772_615_647 * a_second + np.arange(300) * step, type=pa.int64())  # since 1970
    table = pa.table({"when": counts.cast(pa.timestamp(unit)), "signal": np.linspace(0.5, 4.5, 300)})
    path = tmp_path / f"a.{ending}"
    (parquet.write_table if ending == "parquet" else feather.write_feather)(table, path)
    import_capture([path], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        assert opened.capture.records[0].sample_interval_s == pytest.approx(step / a_second, rel=1e-12)


@pytest.mark.parametrize("ending", ["parquet", "feather"])
def test_gaps_in_counts_are_missing_and_counts_without_gaps_stay_counts(ending: str, tmp_path: Path) -> None:
    gaps = pa.array([None if n % 7 == 3 else n % 5 for n in range(50)], type=pa.int16())
    whole = pa.array([n % 5 for n in range(50)], type=pa.int16())
    money = pa.array([Decimal("4.999") + Decimal(n % 2) / 1000 for n in range(50)])
    table = pa.table({"time [s]": np.arange(50) / 10, "signal": gaps, "sig2": whole, "reference": money})
    path = tmp_path / f"a.{ending}"
    (parquet.write_table if ending == "parquet" else feather.write_feather)(table, path)
    import_capture([path], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        channels = {role: record.channel(role) for role in (Role.SIGNAL, Role.SECOND_SIGNAL, Role.REFERENCE)}
        signal, second, reference = channels.values()
        assert signal is not None
        assert second is not None
        assert reference is not None
        assert np.flatnonzero(np.isnan(signal.volts())).tolist() == list(range(3, 50, 7))
        assert second.source.dtype.kind == "i"
        np.testing.assert_array_equal(second.volts(), np.arange(50) % 5)
        np.testing.assert_array_equal(reference.volts(0, 2), [4.999, 5.0])


Form = Literal["NETCDF3_CLASSIC", "NETCDF3_64BIT_OFFSET", "NETCDF4"]


@pytest.mark.parametrize("form", get_args(Form))
@pytest.mark.parametrize("unlimited", [False, True])
def test_packed_counts_of_netcdf_become_volts(form: Form, unlimited: bool, tmp_path: Path) -> None:
    counts = RANDOM.integers(100, 3900, 700).astype(np.int16)
    counts[5] = -1
    with netCDF4.Dataset(tmp_path / "a.nc", "w", format=form) as file:
        file.createDimension("n", None if unlimited else 700)
        time = file.createVariable("time", "f8", ("n",))
        time[:], time.units = np.arange(700) / 1e3, "s"
        packed = file.createVariable("signal", "i2", ("n",), fill_value=-1)
        packed.set_auto_maskandscale(False)
        packed[:] = counts
        packed.scale_factor, packed.add_offset, packed.units = 0.00125, -0.01, "V"
    import_capture([tmp_path / "a.nc"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        signal = opened.capture.records[0].channel(Role.SIGNAL)
        assert signal is not None
        expected = counts * 0.00125 - 0.01
        expected[5] = np.nan
        np.testing.assert_allclose(signal.volts(), expected, rtol=1e-14)
        assert signal.step_v == 0.00125


@pytest.mark.parametrize(("head", "said"), [(b"CDF\x05", "64-bit data"), (b"FEA1", "first version")])
def test_a_kind_that_is_not_read_is_named(head: bytes, said: str, tmp_path: Path) -> None:
    (tmp_path / "a.bin").write_bytes(head + b"\0" * 200)
    with pytest.raises(ImportingError, match=said):
        open_table(tmp_path / "a.bin")
