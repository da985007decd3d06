"""Actions of why it comes and goes."""

from __future__ import annotations

WHY_SPECS = (
    (
        "why",
        "View",
        "Why it comes and goes…",
        "Show at which heights and on which roads the arm comes into the band, and whether a code would set",
        "H",
        "why",
    ),
    (
        "control_unit",
        "View",
        "Control unit under Trace",
        "Run the record through a control unit: which fault would have been stored, and when",
        "U",
        "",
        True,
    ),
)
