"""A Feather file that claims to unpack to more than can be held is refused before anything is unpacked."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path
from typing import Literal

import numpy as np
import pyarrow as pa
import pytest
from pyarrow import feather, ipc

from analysis.errors import ImportingError
from analysis.importing.arrow_claims import largest_batch_bytes
from analysis.importing.opening import open_table

RANDOM = np.random.default_rng(11)


def _written(path: Path, packing: str | None, table: pa.Table) -> Path:
    options = ipc.IpcWriteOptions(compression=packing)
    with pa.OSFile(str(path), "wb") as file, ipc.new_file(file, table.schema, options=options) as writer:
        writer.write_table(table)
    return path


@pytest.mark.parametrize("packing", ["lz4", "zstd"])
def test_the_claim_is_what_arrow_unpacks_the_largest_batch_to(packing: str, tmp_path: Path) -> None:
    """`pyarrow.RecordBatch.get_total_buffer_size` counts what really was unpacked."""
    sizes = (100, 5000, 300)
    batches = [pa.record_batch({"a": np.zeros(n), "b": np.arange(n)}) for n in sizes]
    path = _written(tmp_path / "a.feather", packing, pa.Table.from_batches(batches))
    with pa.memory_map(str(path)) as source:
        file = ipc.open_file(source)
        unpacked = [file.get_batch(number).get_total_buffer_size() for number in range(len(sizes))]
        source.seek(0)
        assert largest_batch_bytes(source.read_buffer()) == max(unpacked) == 2 * 8 * 5000


def test_a_file_that_packs_nothing_claims_nothing(tmp_path: Path) -> None:
    path = _written(tmp_path / "a.feather", None, pa.table({"a": np.zeros(100)}))
    assert largest_batch_bytes(path.read_bytes()) == 0


def test_words_of_a_dictionary_count_too(tmp_path: Path) -> None:
    words = pa.array([str(number) * 50 for number in range(200)]).dictionary_encode()
    path = _written(tmp_path / "a.feather", "zstd", pa.table({"a": words}))
    assert largest_batch_bytes(path.read_bytes()) > 10_000


@pytest.mark.parametrize("packing", ["lz4", "zstd"])
def test_a_bomb_is_refused_by_what_it_says_of_itself_and_takes_no_memory(
    packing: Literal["lz4", "zstd"], tmp_path: Path
) -> None:
    bomb = tmp_path / "bomb.feather"
    rows = 60_000_000
    feather.write_feather(
        pa.table({"time": np.zeros(rows), "signal": np.zeros(rows)}),
        bomb,
        compression=packing,
        chunksize=rows,
    )
    script = (
        "import re, sys\nfrom pathlib import Path\nfrom analysis.errors import ImportingError\n"
        "from analysis.importing.opening import open_table\n"
        "def peak():\n"
        "    return int(re.search(r'VmHWM:\\s+(\\d+)', Path('/proc/self/status').read_text())[1]) // 1024\n"
        "before = peak()\ntry:\n    open_table(Path(sys.argv[1]))\nexcept ImportingError as error:\n"
        "    print(str(error), peak() - before, sep='|')\n"
    )
    if not Path("/proc/self/status").exists():
        pytest.skip("the peak memory of a process is read from /proc, which is of Linux")
    done = subprocess.run(
        [sys.executable, "-c", script, str(bomb)], capture_output=True, text=True, check=True, timeout=120
    )
    sentence, grown_mb = done.stdout.split("|")
    assert "unpacks to 960,000,000 bytes, more than can be read" in sentence
    assert int(grown_mb) < 100


def test_what_packs_as_recordings_do_is_read(tmp_path: Path) -> None:
    volts = np.round(RANDOM.normal(2.5, 0.5, 200_000) / 0.00244) * 0.00244
    feather.write_feather(
        pa.table({"time": np.arange(200_000) / 1e4, "signal": volts}), tmp_path / "a", compression="zstd"
    )
    table = open_table(tmp_path / "a")
    table.close()
    assert [column.name for column in table.columns] == ["time", "signal"]


@pytest.mark.filterwarnings("ignore:unclosed file:ResourceWarning")
def test_a_damaged_footer_is_refused_with_a_sentence(tmp_path: Path) -> None:
    said: set[str] = set()
    raw = bytearray(_written(tmp_path / "a", "zstd", pa.table({"a": np.zeros(100)})).read_bytes())
    for place in range(len(raw) - 400, len(raw) - 6, 3):
        broken = raw.copy()
        broken[place] ^= 0xFF
        (tmp_path / "b").write_bytes(broken)
        try:
            open_table(tmp_path / "b").close()
        except ImportingError as error:
            said.add(re.split(r",| \d", error.problem)[0])
    assert "it is damaged" in said
    assert said <= {"it is damaged", "it holds no run of numbers", "it unpacks to"}
