"""NPY, NPZ, MAT, HDF5 and netCDF files as tables. Nothing in them is ever run."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Sequence
from contextlib import ExitStack
from dataclasses import replace
from pathlib import Path
from typing import Any

import h5py
import numpy as np
from numpy.typing import NDArray

from analysis.captures import strict
from analysis.captures.model import Scaling
from analysis.errors import ImportingError
from analysis.importing.arrays import Named, in_memory, interval_of, table_of
from analysis.importing.damage import readable, too_much
from analysis.importing.model import MOST_BYTES, Table
from analysis.wording import say

_MAT_TIMEOUT_S = 20.0  # the child starts in half a second; a busy or cold machine needs more
_MOST_MAT_BYTES = 2 * 1024**3  # read as a whole
_MOST_DATASETS = 1000
_MOST_PACKING = 400  # a constant packs a thousandfold; no recording does
_SMALL_BYTES = 64_000_000
_DEEPEST = 8


def _pickled() -> ImportingError:
    return ImportingError(
        say("it holds Python objects, which could run a program and are not opened"),
        say("save plain arrays of numbers"),
    )


def open_npy(path: Path) -> Table:
    """A NumPy file with one array: a run, or a matrix with a column a channel."""
    with readable("NumPy"):
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


def open_npz(path: Path, chosen: Sequence[str] = ()) -> Table:
    """A NumPy archive: its members are unpacked into a folder that is gone when the table is."""
    with ExitStack() as stack, readable("NumPy"), zipfile.ZipFile(path) as archive:
        members = archive.infolist()
        if not any(item.filename.endswith(".npy") for item in members):
            raise _no_arrays({item.filename for item in members})
        size = sum(item.file_size for item in members)
        if size > min(MOST_BYTES, _SMALL_BYTES + _MOST_PACKING * path.stat().st_size):
            raise too_much(size)
        folder = Path(stack.enter_context(_folder()))
        arrays: list[Named] = []
        for place, item in enumerate(members[:_MOST_DATASETS]):
            if item.filename.endswith(".npy"):
                target = folder / f"{place}.npy"  # never a name out of the archive
                _unpack(archive, item, target)
                arrays.append(in_memory(item.filename[:-4], _mapped(target)))
        table = table_of(path, "npz", arrays, chosen)
        return replace(table, close=stack.pop_all().close)


def _no_arrays(names: set[str]) -> ImportingError:
    """What is said of an archive without arrays: spreadsheets are archives too."""
    sheets = {"[Content_Types].xml", "content.xml"}  # ECMA-376, part 2; OpenDocument 1.3, part 2
    if names & sheets:
        return ImportingError(
            say("it is a spreadsheet or another office document"),
            say("save its sheet as CSV, with a row a sample"),
        )
    return ImportingError(say("it is an archive of other files"), say("unpack it, and choose the recording"))


def _unpack(archive: zipfile.ZipFile, item: zipfile.ZipInfo, target: Path) -> None:
    left = item.file_size
    with archive.open(item) as source, target.open("wb") as file:
        while block := source.read(min(left, 1 << 20) or 1):
            left -= len(block)
            if left < 0:
                raise too_much(item.file_size)
            file.write(block)


def open_mat(path: Path, chosen: Sequence[str] = ()) -> Table:
    """A MAT file up to version 7, read by SciPy in a process of its own; functions and objects stay out."""
    with ExitStack() as stack, readable("MAT"):
        folder = Path(stack.enter_context(_folder()))
        names = _unpacked_mat(path, folder)
        arrays = [in_memory(name, _mapped(folder / f"{place}.npy")) for place, name in enumerate(names)]
        table = table_of(path, "mat", arrays, chosen)
        return replace(table, close=stack.pop_all().close)


def _folder() -> tempfile.TemporaryDirectory[str]:
    """Room for arrays that are mapped from there; on Windows it may outlive a map for a moment."""
    return tempfile.TemporaryDirectory(prefix="wornband-", ignore_cleanup_errors=True)


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
        raise too_much(answer["too_much"])
    return [str(name) for name in answer["names"]]


_MAT_KINDS = frozenset(
    ["double", "single", "logical", "int8", "uint8", "int16", "uint16", "int32", "uint32", "int64", "uint64"]
)


def open_hdf5(path: Path, chosen: Sequence[str] = ()) -> Table:
    """An HDF5 or netCDF-4 file of any layout, a MAT file of version 7.3 among them."""
    with ExitStack() as stack, readable("HDF5"):
        file = stack.enter_context(strict.open_file(path))
        arrays: list[Named] = []
        _walk(file.id, "", arrays, 0)
        table = table_of(path, "hdf5", arrays, chosen)
        if table.interval_s is None:
            about = strict.attributes(file.id, say("the file")).values
            table = replace(table, interval_s=interval_of(about))
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
    unit = words.get("units") or words.get("unit", "")

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


def open_netcdf3(path: Path, chosen: Sequence[str] = ()) -> Table:
    """A classic netCDF file: SciPy reads its head, and the samples are mapped into memory."""
    with readable("netCDF"):
        from scipy import io  # here, since no window should wait for it when it opens

        arrays: list[Named] = []
        with io.netcdf_file(str(path), "r", mmap=True) as file:
            for name, item in file.variables.items():
                arrays.append(_packed(in_memory(name, _in_our_map(path, np.atleast_1d(item.data))), item))
            del item
        return table_of(path, "netcdf", arrays, chosen)


def _in_our_map(path: Path, data: NDArray[Any]) -> NDArray[Any]:
    """The same samples in a map of the file that is ours: SciPy's cannot be closed while anybody reads it."""
    if not data.size:
        return np.empty(data.shape, data.dtype)
    origin = data
    while isinstance(origin.base, np.ndarray):
        origin = origin.base
    start = _address(data) - _address(origin)
    whole = np.memmap(path, dtype=np.uint8, mode="r")
    return np.ndarray(data.shape, data.dtype, whole.data, start, data.strides)


def _address(array: NDArray[Any]) -> int:
    return int(array.__array_interface__["data"][0])


def _packed(array: Named, item: Any) -> Named:
    """An array with the unit and the scale that the attributes of a netCDF variable give it."""

    def number(key: str) -> float | None:
        found = np.asarray(getattr(item, key, np.nan)).ravel()
        plain = found.size == 1 and found.dtype.kind in "iuf" and np.isfinite(found[0])
        return float(found[0]) if plain else None

    unit = getattr(item, "units", b"")
    text = unit.decode("utf-8", "replace") if isinstance(unit, bytes) else str(unit)
    scale = number("scale_factor")
    scaling = Scaling(
        1.0 if scale is None else scale,
        number("add_offset") or 0.0,
        number("_FillValue"),
        number("valid_min"),
        number("valid_max"),
    )
    return replace(array, unit=text, scaling=scaling)
