"""A window that opens real files and keeps recipes in a folder of its own."""

from __future__ import annotations

from tests.app.real_files import qapp, window

__all__ = ["qapp", "window"]
