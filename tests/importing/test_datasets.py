"""Which of the named arrays of a file become columns."""

from __future__ import annotations

from pathlib import Path

import h5py
import numpy as np
import pytest
from netCDF4 import Dataset as NetcdfFile
from scipy.io import savemat

from analysis.captures.reading import open_capture
from analysis.importing.model import Dataset
from analysis.importing.opening import open_table
from analysis.importing.recipe import load_recipe
from app.command_line import main

RNG = np.random.default_rng(11)
SIGNAL = 2.5 + 2.0 * np.sin(np.arange(4000) / 300.0) + RNG.normal(0.0, 0.002, 4000)
ARRAYS = {"raw": SIGNAL, "smooth": np.round(SIGNAL, 1), "few": np.arange(7.0), "matrix": np.ones((4000, 2))}


def hdf5(path: Path) -> None:
    with h5py.File(path, "w") as file:
        for name, values in ARRAYS.items():
            file[name] = values


def netcdf(path: Path) -> None:
    with NetcdfFile(path, "w", format="NETCDF3_CLASSIC") as file:
        for size in (4000, 7, 2):
            file.createDimension(f"d{size}", size)
        for name, values in ARRAYS.items():
            file.createVariable(name, "f8", [f"d{size}" for size in values.shape])[:] = values


def npz(path: Path) -> None:
    with path.open("wb") as file:
        np.savez(file, **ARRAYS)  # type: ignore[arg-type]


def mat(path: Path) -> None:
    savemat(path, ARRAYS, appendmat=False)


WRITERS = pytest.mark.parametrize("write", [hdf5, netcdf, npz, mat])


@WRITERS
def test_a_file_lists_its_arrays_and_says_which_are_used(write: object, tmp_path: Path) -> None:
    write(tmp_path / "a")  # type: ignore[operator]
    table = open_table(tmp_path / "a")
    try:
        used = {item.name: item.taken for item in table.datasets}
        assert used == {"raw": True, "smooth": True, "few": False, "matrix": True}
        assert len(table.columns) == 4
    finally:
        table.close()


@WRITERS
def test_only_the_chosen_arrays_become_columns(write: object, tmp_path: Path) -> None:
    write(tmp_path / "a")  # type: ignore[operator]
    table = open_table(tmp_path / "a", datasets=("raw",))
    try:
        assert [item.name for item in table.columns] == ["raw"]
        (block,) = table.blocks(lambda done: None, [])
        np.testing.assert_array_equal(np.ravel(block[0]), SIGNAL)
    finally:
        table.close()


def test_names_that_are_not_there_leave_the_choice_open(tmp_path: Path) -> None:
    hdf5(tmp_path / "a")
    table = open_table(tmp_path / "a", datasets=("gone",))
    try:
        assert Dataset("raw", (4000,), True) in table.datasets
    finally:
        table.close()


def test_the_command_takes_a_data_set_and_its_recipe_keeps_it(tmp_path: Path) -> None:
    hdf5(tmp_path / "a.hdf5")
    recipe = tmp_path / "r.json"
    call = ["import", str(tmp_path / "a.hdf5"), "-o", str(tmp_path / "o.h5"), "--dataset", "raw"]
    call += ["--sample-rate", "1000", "--keep-recipe", str(recipe)]
    assert main([*call, "--no-recipe"]) == 0
    assert load_recipe(recipe).wishes.datasets == ("raw",)
    with open_capture(tmp_path / "o.h5") as opened:
        (channel,) = opened.capture.records[0].channels
        np.testing.assert_array_equal(channel.source.read(0, len(channel)), SIGNAL)
