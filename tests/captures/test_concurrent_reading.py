"""A worker reads a long record while the window reads small stretches for drawing."""

from __future__ import annotations

import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.errors import CaptureError


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    chance = np.random.default_rng(5)
    raw = (2000.0 * np.sin(np.arange(4_000_000) / 3e4) + chance.normal(0.0, 3.0, 4_000_000)).astype(np.int16)
    path = tmp_path_factory.mktemp("long") / "a.h5"
    write_capture(make_capture([make_record("001", 1e-4, {Role.SIGNAL: (raw, Scaling(0.001))})]), path)
    return path


def test_threads_read_the_same_samples_as_one_thread(path: Path) -> None:
    with open_capture(path) as opened, ThreadPoolExecutor(4) as pool:
        source = opened.capture.records[0].channels[0].source
        whole = source.read(0, len(source))
        starts = list(range(0, len(source) - 5000, 97_531))
        for start, part in zip(starts, pool.map(lambda at: source.read(at, at + 5000), starts), strict=True):
            np.testing.assert_array_equal(part, whole[start : start + 5000])


def test_closing_during_a_read_ends_in_samples_or_one_sentence(path: Path) -> None:
    opened = open_capture(path)
    source = opened.capture.records[0].channels[0].source
    with ThreadPoolExecutor(1) as pool:
        reading = pool.submit(source.read, 0, len(source))
        time.sleep(0.005)
        opened.close()
        error = reading.exception(timeout=20)
    assert error is None or (isinstance(error, CaptureError) and "closed" in error.problem)
