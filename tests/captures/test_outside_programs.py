"""Our files in the hands of programs that know CF and nothing of us: xarray, netCDF4, h5py, ncdump, h5dump.

Source of the decoding rule: CF-1.11, section 8.1, "Packed data": unpacked = packed * scale_factor +
add_offset; section 2.5.1: ``_FillValue`` marks missing data.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path
from typing import Literal

import h5py
import netCDF4
import numpy as np
import pytest
import xarray as xr

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from tests.captures.examples import small_capture

Engine = Literal["h5netcdf", "netcdf4"]
ENGINES: tuple[Engine, ...] = ("h5netcdf", "netcdf4")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    raw = np.array([0, 1, -5, 4095, -32768, 17] * 20_000, dtype=np.int16)
    scaling = Scaling(0.001220703125, -2.5, fill_value=-32768)
    packed = make_record("003", 2e-5, {Role.SIGNAL: (raw, scaling)}, first_sample_s=-1.5)
    capture = small_capture()
    write_capture(make_capture([*capture.records, packed], title="µ"), tmp_path / "a.h5")
    return tmp_path / "a.h5"


@pytest.mark.parametrize("engine", ENGINES)
@pytest.mark.parametrize("record", ["001", "002", "003"])
def test_xarray_decodes_the_volts_and_the_time_that_we_do(path: Path, engine: Engine, record: str) -> None:
    with (
        open_capture(path) as opened,
        xr.open_dataset(path, engine=engine, group=f"records/{record}") as theirs,
    ):
        ours = opened.capture.record(record)
        assert theirs.sizes == {"sample": len(ours)}
        assert set(theirs.data_vars) == {channel.name for channel in ours.channels}
        np.testing.assert_allclose(theirs["time"].values, ours.time_s(), rtol=1e-14, atol=1e-12)
        for channel in ours.channels:
            np.testing.assert_array_equal(theirs[channel.name].values, channel.volts())
            assert theirs[channel.name].attrs["units"] == "V"
            assert theirs[channel.name].attrs["role"] == channel.role
            assert "time" in theirs[channel.name].coords


def test_netcdf4_masks_what_is_missing_and_scales_the_rest(path: Path) -> None:
    with open_capture(path) as opened, netCDF4.Dataset(path) as file:
        theirs = file["records/003/signal"][:]
        volts = opened.capture.record("003").channels[0].volts()
        np.testing.assert_array_equal(np.ma.getmaskarray(theirs), np.isnan(volts))
        np.testing.assert_array_equal(np.ma.filled(theirs, np.nan), volts)
        assert file.Conventions == "CF-1.11"
        assert file.title == "µ"
        assert list(file["records/003"].dimensions) == ["sample"]


def test_the_whole_tree_opens_with_every_overview_in_it(path: Path) -> None:
    with xr.open_datatree(path, engine="netcdf4") as tree:
        assert "/records/003" in tree.groups
        assert tree["records/003/signal"].sizes == {"sample": 120_000}


def test_h5py_sees_fixed_length_utf_8_and_ordinary_gzip(path: Path) -> None:
    with h5py.File(path) as file:
        for item in (file, file["records/002"], file["records/002/signal"]):
            for key in item.attrs:
                kind = item.attrs.get_id(key).get_type()
                if isinstance(kind, h5py.h5t.TypeStringID) and key not in ("CLASS", "NAME"):
                    assert not kind.is_variable_str(), key
                    assert kind.get_cset() == h5py.h5t.CSET_UTF8, key
        signal = file["records/003/signal"]
        assert (signal.compression, signal.compression_opts, signal.shuffle) == ("gzip", 1, True)
        assert signal.attrs["_FillValue"].dtype == signal.dtype
        assert signal.attrs["scale_factor"].dtype == np.float64
        assert file["records/003/sample"].id.get_storage_size() == 0


def test_a_file_that_xarray_wrote_with_our_attributes_is_a_capture(tmp_path: Path) -> None:
    volts = np.linspace(0.5, 4.5, 400)
    volts[7] = np.nan
    record = xr.Dataset(
        {"wiper": ("sample", volts, {"role": "signal", "units": "V"})}, attrs={"sample_interval": 0.002}
    )
    packing = {"dtype": "int16", "scale_factor": 0.0002, "add_offset": 2.0, "_FillValue": -32768}
    head = xr.Dataset(attrs={"format": "wornband-capture", "format_version": 1})
    head.to_netcdf(tmp_path / "a.nc", engine="h5netcdf")
    record.to_netcdf(
        tmp_path / "a.nc", mode="a", group="records/001", engine="h5netcdf", encoding={"wiper": packing}
    )
    with open_capture(tmp_path / "a.nc") as opened:
        found = opened.capture.records[0]
        assert found.sample_interval_s == 0.002
        np.testing.assert_allclose(found.channels[0].volts(), volts, atol=0.0001)


def _told(program: str, *arguments: str) -> str:
    """What a program prints; the test is skipped where the program is not there."""
    if shutil.which(program) is None:
        pytest.skip(f"{program} is not installed (Debian: netcdf-bin, hdf5-tools)")
    done = subprocess.run([program, *arguments], capture_output=True, check=False)
    assert done.returncode == 0, done.stderr.decode("utf-8", "replace")
    return done.stdout.decode("utf-8", "replace")


def test_ncdump_shows_the_head_with_groups_units_and_conditions(path: Path) -> None:
    said = _told("ncdump", "-h", str(path))
    for line in (
        "group: \\001 {",
        ':Conventions = "CF-1.11"',
        'signal:units = "V"',
        'signal:role = "signal"',
        "signal:scale_factor = 0.0025",
        ':engine = "off"',
        'signal:wire_colour = "grün"',
        ":sample_interval = 0.001",
    ):
        assert line in said, line


def test_ncdump_prints_the_counts_that_we_read(path: Path) -> None:
    said = _told("ncdump", "-v", "/records/002/signal", str(path))
    found = re.findall(r"\bsignal =\s*([-\d,_\s]+);", said)
    counts = [int(word) for word in found[-1].replace("_", "-32768").split(",")]
    with open_capture(path) as opened:
        signal = opened.capture.record("002").channel(Role.SIGNAL)
        assert signal is not None
        np.testing.assert_array_equal(counts, signal.source.read(0, len(signal)))


def test_h5dump_prints_the_counts_that_we_read(path: Path, tmp_path: Path) -> None:
    _told("h5dump", "-H", str(path))
    raw = tmp_path / "raw.bin"
    _told("h5dump", "-d", "/records/003/signal", "-b", "LE", "-o", str(raw), str(path))
    with open_capture(path) as opened:
        signal = opened.capture.record("003").channels[0]
        np.testing.assert_array_equal(np.fromfile(raw, dtype="<i2"), signal.source.read(0, len(signal)))
