"""What can be done on the Report screen: name, menu, text, tip, keys and icon of each action."""

from __future__ import annotations

REPORT_SPECS = (
    ("report", "Report", "Report", "Make the report of this capture", "Ctrl+R", "report"),
    ("review", "Report", "Back to Review", "Go back to the records and the trace", "Ctrl+Shift+R", "back"),
    ("save_pdf", "Report", "Save PDF…", "Save the report as PDF", "Ctrl+Shift+P", "save"),
    ("save_html", "Report", "Save HTML…", "Save the report as one HTML file", "Ctrl+Shift+H", "save"),
    ("print_report", "Report", "Print…", "Print the report", "Ctrl+P", "print"),
    ("workshop", "Report", "Workshop…", "Name, address and logo of the workshop", "Ctrl+Shift+W"),
)
