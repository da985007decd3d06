"""Settings of all tests: no screen, no configuration of anybody, property tests that can be repeated."""

from __future__ import annotations

import atexit
import os
import shutil
import tempfile

import pytest
from hypothesis import settings

from tests.ordinary import is_superuser, run_apart

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# Nobody's own profiles, recipes and settings have a say in a test.
_configuration = tempfile.mkdtemp(prefix="wornband-tests-")
os.environ["XDG_CONFIG_HOME"] = os.environ["APPDATA"] = _configuration
atexit.register(shutil.rmtree, _configuration, ignore_errors=True)

# Derandomised, so that a failure can be repeated; no deadline, since a shared machine may be slow.
settings.register_profile("house", derandomize=True, deadline=None)
settings.load_profile("house")


@pytest.hookimpl(tryfirst=True)
def pytest_pyfunc_call(pyfuncitem: pytest.Function) -> bool | None:
    """Tests of what nobody but the superuser may do are run by an ordinary user, also for the superuser."""
    if pyfuncitem.get_closest_marker("ordinary_rights") is None or not is_superuser():
        return None
    failure = run_apart(pyfuncitem.nodeid)
    if failure:
        pytest.fail(failure)
    return True
