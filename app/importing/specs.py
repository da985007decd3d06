"""What can be done about files of other programs: name, menu, text, tip, keys and icon of each action."""

from __future__ import annotations

IMPORT_SPECS = (
    ("import", "Capture", "Import…", "Make a capture out of what a recorder saved", "Ctrl+I", "import"),
    (
        "import_folder",
        "Capture",
        "Import a folder…",
        "Make one capture out of all files of a folder",
        "Ctrl+Shift+I",
    ),
    (
        "bring_in",
        "Capture",
        "Import now",
        "Import the files as they are understood",
        "Ctrl+Return Ctrl+Enter",
    ),
)
