"""No code that the environment offers to HDF5 is loaded: filters, drivers and connectors of its plugins."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import h5py
import pytest

from tests.captures.examples import write_plain

ROOT = Path(__file__).resolve().parents[2]
HOSTILE = "libhostile.so"
ABOUT = {
    "a filter": {},
    "a connector": {"HDF5_VOL_CONNECTOR": "hostile"},
    "a driver": {"HDF5_DRIVER": "hostile"},
}
"""What the environment asks for besides the folder of plugins. A filter is asked for by the file."""

PLAIN_H5PY = """
import h5py, sys
try:
    with h5py.File(sys.argv[1]) as file:
        h5py.h5z.filter_avail(32_099)
except OSError:
    pass
"""
WINDOW = """
import sys
from pathlib import Path
from PySide6.QtTest import QTest
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.window import application
application()
window = Window(real_tools(), Settings(MemoryStore()))
window.show()
window.open_file(Path(sys.argv[1]))
while window.jobs.busy():
    QTest.qWait(5)
window.close()
"""

pytestmark = pytest.mark.skipif(
    not sys.platform.startswith("linux") or shutil.which("ldconfig", path="/sbin:/usr/sbin:/bin") is None,
    reason="only the loader of glibc writes down what it loads (LD_DEBUG)",
)


@pytest.fixture
def capture(tmp_path: Path) -> Path:
    """A capture with texts of variable length and a second channel that needs a filter nobody has."""
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        created = h5py.h5p.create(h5py.h5p.DATASET_CREATE)
        created.set_chunk((100,))
        created.set_filter(32_099, h5py.h5z.FLAG_OPTIONAL, (1,))
        space = h5py.h5s.create_simple((1000,))
        group = file["records/001"]
        h5py.h5d.create(group.id, b"strange", h5py.h5t.NATIVE_INT16, space, created)
        group["strange"].attrs.update(group["sensor"].attrs)
    return path


def loaded(tmp_path: Path, about: dict[str, str], *command: str) -> tuple[int, list[str]]:
    """Run a command where a stranger's library lies among the plugins: processes watched, who loaded it."""
    plugins, seen = tmp_path / "plugins", tmp_path / "seen"
    plugins.mkdir()
    seen.mkdir()
    # Any library will do: it is run as it is loaded, before HDF5 finds that it is no plugin.
    shutil.copyfile(h5py.h5z.__file__, plugins / HOSTILE)
    subprocess.run(
        [sys.executable, *command],
        cwd=ROOT,
        capture_output=True,
        check=False,
        timeout=300,
        env=os.environ
        | {"HDF5_PLUGIN_PATH": str(plugins), "HDF5_PLUGIN_PRELOAD": "", "LD_DEBUG": "files"}
        | {"LD_DEBUG_OUTPUT": str(seen / "loader")}
        | about,
    )
    texts = [path.read_text("utf-8", "replace") for path in seen.iterdir()]
    with_hdf5 = [text for text in texts if "libhdf5" in text]
    return len(with_hdf5), [text for text in with_hdf5 if HOSTILE in text]


@pytest.mark.parametrize("about", ABOUT.values(), ids=ABOUT)
def test_the_watch_sees_plain_h5py_load_it(about: dict[str, str], capture: Path, tmp_path: Path) -> None:
    assert loaded(tmp_path, about, "-c", PLAIN_H5PY, str(capture))[1]


@pytest.mark.parametrize("about", ABOUT.values(), ids=ABOUT)
@pytest.mark.parametrize("command", [("-m", "app", "analyse"), ("-c", WINDOW)], ids=["command", "window"])
def test_neither_the_program_nor_its_reader_of_texts_loads_it(
    command: tuple[str, ...], about: dict[str, str], capture: Path, tmp_path: Path
) -> None:
    processes, by = loaded(tmp_path, about, *command, str(capture))
    assert processes == 2  # itself, and the child that reads texts of variable length
    assert by == []


def test_where_h5py_was_loaded_first_no_filter_is_asked_for_either(capture: Path, tmp_path: Path) -> None:
    code = "import h5py, sys, analysis\ntry: analysis.open_capture(__import__('pathlib').Path(sys.argv[1]))\n"
    code += "except analysis.WornbandError: pass"
    assert loaded(tmp_path, {}, "-c", code, str(capture))[1] == []
