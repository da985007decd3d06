"""Settings of all tests: no screen, and property tests that come out the same every time."""

from __future__ import annotations

import os

from hypothesis import settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# Derandomised, so that a failure can be repeated; no deadline, since a shared machine may be slow.
settings.register_profile("house", derandomize=True, deadline=None)
settings.load_profile("house")
