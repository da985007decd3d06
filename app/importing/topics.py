"""Names of the work that Import does beside the window."""

from __future__ import annotations

RECEIVING, GATHERING, IMPORTING = "import_receive", "import_gather", "import"
LOOKING, PLACING = "import_look", "import_place"
QUIET = (LOOKING, PLACING)
"""What takes a blink, and is told on the page."""
