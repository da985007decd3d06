"""What can be done while a folder is watched: name, menu, text, tip, keys and icon of each action."""

from __future__ import annotations

WATCH_SPECS = (
    (
        "watch",
        "Capture",
        "Watch a folder…",
        "Take every file that the recorder saves, and show from afar what is still missing",
        "F8",
    ),
    (
        "next_sensor",
        "Capture",
        "Next sensor",
        "Watch on for another sensor; what was gathered stays in the folder",
        "Ctrl+F8",
    ),
    (
        "review_gathered",
        "Capture",
        "Review what was gathered",
        "Write the gathered files as one capture and open it in Review",
        "Ctrl+Shift+F8",
    ),
)
