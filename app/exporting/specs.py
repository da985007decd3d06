"""What can be written for other programs: name, menu, text, tip, keys and icon of each action."""

from __future__ import annotations

EXPORT_SPECS = (
    (
        "export_record",
        "Export",
        "Samples of the record…",
        "Save all samples of the shown record for other programs",
        "Ctrl+Shift+E",
        "save",
    ),
    (
        "export_shown",
        "Export",
        "Samples of what is shown…",
        "Save the samples of the stretch of time that is shown",
        "Ctrl+Alt+E",
    ),
    (
        "export_span",
        "Export",
        "Samples of the marked span…",
        "Save the samples of the chosen span marker",
        "Ctrl+Alt+M",
    ),
    (
        "export_findings",
        "Export",
        "Findings…",
        "Save verdict, bands, checks and evidence as JSON or CSV",
        "Ctrl+Shift+J",
    ),
    ("picture_trace", "Export", "Picture of Trace…", "Save Trace as a picture", "Ctrl+Alt+1"),
    ("picture_track", "Export", "Picture of Sensor track…", "Save Sensor track as a picture", "Ctrl+Alt+2"),
    ("picture_overview", "Export", "Picture of Overview…", "Save Overview as a picture", "Ctrl+Alt+3"),
    (
        "picture_why",
        "Export",
        "Picture of why it comes and goes…",
        "Save the band and the movement of the wheel as a picture",
        "Ctrl+Alt+4",
    ),
    (
        "picture_page",
        "Export",
        "Picture of the whole page…",
        "Save all that the page shows as one picture, its lists and cards too",
        "Ctrl+Alt+5",
    ),
    (
        "white_ground",
        "Export",
        "Pictures on white",
        "Save pictures on white paper, for printing, whatever colours the window has",
        "Ctrl+Alt+0",
        "",
        True,
    ),
)
