"""Actions of the review: markers, what is said of bands, undo; name, menu, text, tip, keys, icon of each."""

from __future__ import annotations

MARKER_SPECS = (
    ("mark", "Markers", "Mark this moment", "Mark the moment at the pointer or the arm", "M", "mark_point"),
    (
        "mark_span",
        "Markers",
        "Begin or end a span",
        "Begin a span of time here, or end it here",
        "S",
        "mark_span",
    ),
    (
        "mark_travel",
        "Markers",
        "Begin or end a stretch of travel",
        "Begin a stretch of travel at the pointer or the arm, or end it there",
        "T",
        "mark_travel",
    ),
    ("next_marker", "Markers", "Next marker", "Choose the next marker and show it", "K"),
    ("previous_marker", "Markers", "Previous marker", "Choose the previous marker and show it", "Shift+K"),
    ("go_to_marker", "Markers", "Zoom to the marker", "Zoom to the chosen marker", "G"),
    (
        "marker_here",
        "Markers",
        "Move the marker here",
        "Move the chosen point to the pointer or the arm",
        "Ctrl+M",
    ),
    ("begin_here", "Markers", "Begin it here", "Let the chosen span or band begin at the arm", "Ctrl+B"),
    ("end_here", "Markers", "End it here", "Let the chosen span or band end at the arm", "Ctrl+E"),
    ("rename_marker", "Markers", "Rename the marker", "Give the chosen marker another name", "F2"),
    ("note_marker", "Markers", "Note on the marker", "Write a note on the chosen marker", "Shift+F2"),
    ("delete_marker", "Markers", "Delete the marker", "Delete the chosen marker", "Del"),
    ("copy_markers", "Markers", "Copy the markers", "Copy all markers and readings as text", "Ctrl+Shift+C"),
    ("copy_csv", "Markers", "Copy the markers as CSV", "Copy all markers and readings as CSV", "Ctrl+Alt+C"),
    (
        "save_csv",
        "Markers",
        "Save the markers as CSV…",
        "Save all markers and readings to a CSV file",
        "Ctrl+Alt+S",
    ),
)

DECISION_SPECS = (
    ("undo", "Review", "Undo", "Undo the last edit", "Ctrl+Z", "undo"),
    ("redo", "Review", "Redo", "Do again what was undone", "Ctrl+Shift+Z Ctrl+Y", "redo"),
    ("accept", "Review", "Accept", "Accept the chosen band as it was found", "A", "", True),
    ("adjust", "Review", "Adjust", "Give the chosen band other edges", "E"),
    ("dismiss", "Review", "Dismiss", "Dismiss the chosen band, and say why", "X"),
    (
        "withdraw",
        "Review",
        "No answer",
        "Give no answer on the chosen band: whatever you said of it goes",
        "W",
    ),
    (
        "save_elsewhere",
        "Review",
        "Save the review elsewhere…",
        "Save a copy of the review; where its own place takes none, it goes on there",
        "Ctrl+Shift+S",
    ),
    (
        "take_other",
        "Review",
        "Take the other review",
        "Go on with what another program wrote; this review is kept under another name",
        "Ctrl+Shift+T",
    ),
    (
        "keep_own",
        "Review",
        "Keep this review",
        "Go on with this review; what another program wrote is kept under another name",
        "Ctrl+Shift+K",
    ),
)

RECORD_SPECS = (
    (
        "describe",
        "Review",
        "Edit the record",
        "Say what the shown record was taken for, what was probed and under which conditions",
        "F4",
        "describe",
        True,
    ),
    (
        "describe_span",
        "Review",
        "Give the span its own step",
        "Give the chosen span, or the stretch that is shown, a step of its own",
        "Shift+F4",
    ),
    (
        "accept_split",
        "Review",
        "Accept the splitting",
        "Take the proposed splitting over as spans of the record",
        "Ctrl+Shift+A",
    ),
    (
        "refuse_split",
        "Review",
        "It is one wire",
        "Examine the record as one wire, without splitting it",
        "Ctrl+Shift+X",
    ),
)

REVIEW_SPECS = (*MARKER_SPECS, *DECISION_SPECS)
