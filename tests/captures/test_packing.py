"""Packed samples: made by ISA-L, read by HDF5 itself, and streams of the published format."""

from __future__ import annotations

import zlib
from pathlib import Path
from typing import Any

import h5py
import netCDF4
import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures import layout
from analysis.captures.packing import packed_dataset, packing_of, write_chunk

_KINDS = ("int8", "uint8", "int16", "uint16", "int32", "int64", "float32", "float64")
_LENGTHS = (1, 1000, layout.CHUNK_SAMPLES, 2 * layout.CHUNK_SAMPLES + 17)


def _samples(kind: str, size: int) -> NDArray[Any]:
    """A wavering signal with noise, in steps that every type can hold."""
    random = np.random.default_rng(7)
    return np.round(50.0 + 20.0 * np.sin(np.arange(size) / 900.0) + random.normal(0.0, 3.0, size)).astype(
        kind
    )


def _written(path: Path, samples: NDArray[Any], packing: dict[str, Any]) -> Path:
    with h5py.File(path, "w") as file:
        dataset = packed_dataset(file, "samples", len(samples), samples.dtype, packing)
        for start in range(0, len(samples), layout.CHUNK_SAMPLES):
            write_chunk(dataset, start, samples[start : start + layout.CHUNK_SAMPLES])
    return path


@pytest.mark.parametrize("size", _LENGTHS)
@pytest.mark.parametrize("kind", _KINDS)
@pytest.mark.parametrize("shuffle", [True, False])
def test_hdf5_reads_what_was_packed_for_it(kind: str, size: int, shuffle: bool, tmp_path: Path) -> None:
    samples = _samples(kind, size)
    path = _written(tmp_path / "a.h5", samples, {"compression": "gzip", "shuffle": shuffle})
    with h5py.File(path) as file:
        np.testing.assert_array_equal(file["samples"][()], samples)
        assert file["samples"].dtype == samples.dtype


def test_netcdf_reads_a_packed_capture_too(tmp_path: Path) -> None:
    samples = _samples("float64", _LENGTHS[-1])
    path = _written(tmp_path / "a.h5", samples, packing_of(samples))
    with netCDF4.Dataset(path) as file:
        np.testing.assert_array_equal(file["samples"][:], samples)


def test_a_packed_chunk_is_a_zlib_stream(tmp_path: Path) -> None:
    """RFC 1950 and 1951; its sum (Adler-32) is checked by `zlib.decompress`."""
    samples = _samples("int16", 3000)
    path = _written(tmp_path / "a.h5", samples, {"compression": "gzip", "shuffle": False})
    with h5py.File(path) as file:
        mask, stream = file["samples"].id.read_direct_chunk((0,))
    assert mask == 0
    assert zlib.decompress(stream) == samples.tobytes()


def test_hdf5_packs_about_as_small(tmp_path: Path) -> None:
    samples = _samples("int16", layout.CHUNK_SAMPLES)
    path = _written(tmp_path / "a.h5", samples, packing_of(samples))
    with h5py.File(tmp_path / "b.h5", "w") as file:
        theirs = file.create_dataset(
            "samples", data=samples, chunks=True, compression="gzip", compression_opts=1, shuffle=True
        ).id.get_storage_size()
    with h5py.File(path) as file:
        assert file["samples"].id.get_storage_size() < 1.25 * theirs


def test_noise_is_stored_as_it_is_and_steps_are_packed() -> None:
    random = np.random.default_rng(3)
    assert packing_of(random.normal(size=40_000)) == {}
    steps = np.round(random.normal(size=40_000), 2)
    assert packing_of(steps)["compression"] == "gzip"
    assert packing_of(np.empty(0)) == packing_of(np.empty(0, dtype=np.int16))
