"""Settings of all tests: no screen, no configuration of anybody, property tests that can be repeated."""

from __future__ import annotations

import atexit
import gc
import itertools
import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tests.ordinary import is_superuser, run_apart

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# Nobody's own profiles, recipes, settings and kept reviews have a say in a test.
_configuration = tempfile.mkdtemp(prefix="wornband-tests-")
os.environ["XDG_CONFIG_HOME"] = os.environ["APPDATA"] = _configuration
os.environ["XDG_DATA_HOME"] = os.environ["LOCALAPPDATA"] = _configuration
atexit.register(shutil.rmtree, _configuration, ignore_errors=True)

# Derandomised, so that a failure can be repeated; no deadline, since a shared machine may be slow.
settings.register_profile("house", derandomize=True, deadline=None)
settings.load_profile("house")


_FULL_EVERY = 20
"""Tests between two looks through all there is for garbage: one takes a fifth of a second."""

_tests = itertools.count(1)


@pytest.fixture(autouse=True)
def garbage_is_found_on_the_main_thread() -> Iterator[None]:
    """Python looks on any thread, that of xdist's own messages too, where no widget may be destroyed."""
    gc.disable()
    yield
    gc.collect(2 if next(_tests) % _FULL_EVERY == 0 else 1)


_SAMPLES = Path(__file__).resolve().parents[1] / "sample_captures"


def state_of(folder: Path) -> dict[str, tuple[int, int]]:
    """Size and time of change of everything in a folder, by name."""
    with os.scandir(folder) as entries:
        return {item.name: (item.stat().st_size, item.stat().st_mtime_ns) for item in entries}


@pytest.fixture(autouse=True)
def samples_are_left_alone() -> Iterator[None]:
    """A test that writes works on a copy: no review, and no changed capture, is left beside the samples."""
    before = state_of(_SAMPLES)
    yield
    assert state_of(_SAMPLES) == before, "sample_captures has changed during the test: work on a copy"


@pytest.hookimpl(tryfirst=True)
def pytest_pyfunc_call(pyfuncitem: pytest.Function) -> bool | None:
    """Tests of what nobody but the superuser may do are run by an ordinary user, also for the superuser."""
    if pyfuncitem.get_closest_marker("ordinary_rights") is None or not is_superuser():
        return None
    failure = run_apart(pyfuncitem.nodeid)
    if failure:
        pytest.fail(failure)
    return True
