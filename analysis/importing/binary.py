"""NPY, NPZ, MAT, Parquet, Feather, HDF5 and netCDF files as tables. Nothing in them is ever run."""

from __future__ import annotations

import json
import os
import struct
import subprocess
import sys
import tempfile
import tokenize
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

import h5py
import numpy as np
import pyarrow as pa
from numpy.typing import NDArray
from pyarrow import feather, parquet
from scipy import io

from analysis.captures import strict
from analysis.captures.model import Scaling
from analysis.errors import ImportingError, WornbandError
from analysis.importing.arrays import Named, in_memory, table_of
from analysis.importing.model import MOST_BYTES, MOST_COLUMNS, Table
from analysis.wording import say

_MAT_TIMEOUT_S = 20.0  # the child starts in half a second; a busy or cold machine needs more
_MOST_MAT_BYTES = 2 * 1024**3  # read as a whole
_MOST_DATASETS = 1000
_MOST_PACKING = 400  # a constant packs a thousandfold; no recording does
_SMALL_BYTES = 64_000_000
_DEEPEST = 8


@contextmanager
def _readable(kind: str) -> Iterator[None]:
    """Whatever a library raises over a damaged file, as one sentence."""
    try:
        yield
    except WornbandError:
        raise
    except (
        OSError, ValueError, TypeError, KeyError, IndexError, EOFError, OverflowError, MemoryError,
        RuntimeError, NotImplementedError, AttributeError, SyntaxError, UnicodeError,
        struct.error, zlib.error, zipfile.BadZipFile, pa.ArrowException,
        tokenize.TokenError,  # of NumPy, which takes a header of version 1 apart as Python does
    ) as error:  # fmt: skip
        raise ImportingError(
            say("it is damaged, or no {kind} file that can be read", kind=kind),
            say("save the recording again"),
        ) from error


def _too_much(size: int) -> ImportingError:
    return ImportingError(
        say("it unpacks to {size:,} bytes, more than can be read", size=size), say("save a shorter stretch")
    )


def _pickled() -> ImportingError:
    return ImportingError(
        say("it holds Python objects, which could run a program and are not opened"),
        say("save plain arrays of numbers"),
    )


def open_npy(path: Path) -> Table:
    """A NumPy file with one array: a run, or a matrix with a column a channel."""
    with _readable("NumPy"):
        return table_of(path, "npy", [in_memory(path.stem, _mapped(path))])


def _mapped(path: Path) -> NDArray[Any]:
    try:
        values = np.load(path, mmap_mode="r", allow_pickle=False)
    except ValueError as error:
        if "object" in str(error).lower() or "pickle" in str(error).lower():
            raise _pickled() from error
        raise
    if not isinstance(values, np.ndarray) or values.dtype.hasobject:
        raise _pickled()
    return values


def open_npz(path: Path) -> Table:
    """A NumPy archive: its members are unpacked into a folder that is gone when the table is."""
    with ExitStack() as stack, _readable("NumPy"), zipfile.ZipFile(path) as archive:
        members = archive.infolist()
        size = sum(item.file_size for item in members)
        if size > min(MOST_BYTES, _SMALL_BYTES + _MOST_PACKING * path.stat().st_size):
            raise _too_much(size)
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="wornband-")))
        arrays: list[Named] = []
        for place, item in enumerate(members[:_MOST_DATASETS]):
            if item.filename.endswith(".npy"):
                target = folder / f"{place}.npy"  # never a name out of the archive
                _unpack(archive, item, target)
                arrays.append(in_memory(item.filename[:-4], _mapped(target)))
        table = table_of(path, "npz", arrays)
        return replace(table, close=stack.pop_all().close)


def _unpack(archive: zipfile.ZipFile, item: zipfile.ZipInfo, target: Path) -> None:
    left = item.file_size
    with archive.open(item) as source, target.open("wb") as file:
        while block := source.read(min(left, 1 << 20) or 1):
            left -= len(block)
            if left < 0:
                raise _too_much(item.file_size)
            file.write(block)


def open_mat(path: Path) -> Table:
    """A MAT file up to version 7, read by SciPy in a process of its own; functions and objects stay out."""
    with _readable("MAT"), tempfile.TemporaryDirectory(prefix="wornband-") as folder:
        names = _unpacked_mat(path, Path(folder))
        arrays = [
            in_memory(name, np.load(Path(folder) / f"{place}.npy", allow_pickle=False))
            for place, name in enumerate(names)
        ]
        return table_of(path, "mat", arrays)


def _unpacked_mat(path: Path, folder: Path) -> list[str]:
    """Names of the arrays of numbers in a MAT file, each unpacked into the folder; see `mat_child`."""
    request = {
        "path": os.fspath(path.absolute()),
        "folder": os.fspath(folder),
        "kinds": sorted(_MAT_KINDS),
        "most_bytes": _MOST_MAT_BYTES,
        "most_arrays": _MOST_DATASETS,
    }
    try:
        done = subprocess.run(
            [sys.executable, "-P", os.fspath(Path(__file__).with_name("mat_child.py"))],
            input=json.dumps(request).encode("ascii"),
            capture_output=True,
            timeout=_MAT_TIMEOUT_S + path.stat().st_size / 1e6,
            check=False,
            env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
            creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
        )
    except subprocess.TimeoutExpired as error:
        raise ValueError("the reader does not come to an end") from error
    if done.returncode != 0:
        raise ValueError("the reader came to a bad end")
    answer = json.loads(done.stdout)
    if "too_much" in answer:
        raise _too_much(answer["too_much"])
    return [str(name) for name in answer["names"]]


_MAT_KINDS = frozenset(
    ["double", "single", "logical", "int8", "uint8", "int16", "uint16", "int32", "uint32", "int64", "uint64"]
)


def open_arrow(path: Path, kind: str) -> Table:
    """A Parquet or Feather file."""
    with _readable("Parquet" if kind == "parquet" else "Feather"):
        if kind == "parquet":
            facts = parquet.ParquetFile(path).metadata
            if facts.num_columns > MOST_COLUMNS or facts.num_rows * facts.num_columns * 8 > MOST_BYTES:
                raise _too_much(facts.num_rows * facts.num_columns * 8)
            table = parquet.read_table(path)
        else:
            table = feather.read_table(path)
        arrays = [
            in_memory(name, _numbers(column))
            for name, column in zip(table.column_names, table.columns, strict=True)
            if _is_number(column.type)
        ]
        return table_of(path, kind, arrays)


def _is_number(kind: pa.DataType) -> bool:
    return bool(pa.types.is_integer(kind) or pa.types.is_floating(kind) or pa.types.is_duration(kind))


def _numbers(column: pa.ChunkedArray) -> NDArray[Any]:
    if pa.types.is_duration(column.type):
        column = column.cast(pa.duration("ns")).cast(pa.int64())
        return np.asarray(column.to_numpy(), dtype=np.float64) * 1e-9
    return np.asarray(column.to_numpy())


def open_hdf5(path: Path) -> Table:
    """An HDF5 or netCDF-4 file of any layout, a MAT file of version 7.3 among them."""
    with ExitStack() as stack, _readable("HDF5"):
        file = stack.enter_context(strict.open_file(path))
        arrays: list[Named] = []
        _walk(file.id, "", arrays, 0)
        table = table_of(path, "hdf5", arrays)
        return replace(table, close=stack.pop_all().close)


def _walk(group: Any, prefix: str, arrays: list[Named], depth: int) -> None:
    for name in strict.members(group):
        if len(arrays) > _MOST_DATASETS or depth > _DEEPEST:
            return
        inner = strict.open_group(group, name)
        if inner is not None:
            if not name.startswith("#"):  # MAT 7.3 keeps its references there
                _walk(inner, f"{prefix}{name}/", arrays, depth + 1)
            continue
        dataset = strict.open_dataset(group, name)
        if dataset is not None and not strict.trouble_with_storage(dataset):
            arrays.append(_named(h5py.Dataset(dataset), f"{prefix}{name}", dataset))


def _named(dataset: h5py.Dataset, name: str, handle: Any) -> Named:
    words = strict.attributes(handle, say("dataset {name}", name=name)).values
    unit = words.get("units", "")

    def value(key: str) -> float | None:
        found = words.get(key)
        return float(found) if isinstance(found, int | float) else None

    def read(start: int, stop: int, axis: int) -> NDArray[Any]:
        if axis < 0:
            return np.asarray(dataset[()])
        return np.asarray(dataset[(slice(None),) * axis + (slice(start, stop),)])

    scale, offset = value("scale_factor"), value("add_offset")
    scaling = Scaling(
        1.0 if scale is None else scale,
        offset or 0.0,
        value("_FillValue"),
        value("valid_min"),
        value("valid_max"),
    )
    return Named(name, dataset.shape, dataset.dtype, read, unit if isinstance(unit, str) else "", scaling)


def open_netcdf3(path: Path) -> Table:
    """A classic netCDF file, read by SciPy."""
    with _readable("netCDF"):
        arrays: list[Named] = []
        with io.netcdf_file(str(path), "r", mmap=False) as file:
            for name, item in file.variables.items():
                unit = getattr(item, "units", b"")
                text = unit.decode("utf-8", "replace") if isinstance(unit, bytes) else str(unit)
                arrays.append(in_memory(name, np.array(item.data), text))
        return table_of(path, "netcdf", arrays)
