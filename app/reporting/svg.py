"""A drawing as SVG, in text that can stand inside an HTML page."""

from __future__ import annotations

import re
from html import escape

from analysis.reports.drawing import Box, Drawing, Label, Mark, Stroke

_NO_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""What no XML file may hold, escaped or not (XML 1.0, section 2.2)."""

_FONT = "system-ui, 'Segoe UI', 'DejaVu Sans', sans-serif"


def svg(drawing: Drawing) -> str:
    """The drawing as an ``<svg>`` element with its description; every word of it is escaped."""
    marks = "".join(_mark(item) for item in drawing.marks)
    said = escape(drawing.description)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {drawing.width:g} {drawing.height:g}"'
        f' role="img" aria-label="{said}" font-family="{_FONT}">{marks}</svg>'
    )


def svg_file(drawing: Drawing) -> str:
    """The drawing as a file of its own, which every reader of XML takes."""
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + without_control_marks(svg(drawing)) + "\n"


def without_control_marks(text: str) -> str:
    """The text with a replacement character for whatever XML cannot hold."""
    return _NO_XML.sub("\ufffd", text)


def _mark(mark: Mark) -> str:
    if isinstance(mark, Stroke):
        return _stroke(mark)
    if isinstance(mark, Box):
        return (
            f'<rect x="{mark.x:.2f}" y="{mark.y:.2f}" width="{mark.width:.2f}" height="{mark.height:.2f}"'
            f' fill="{escape(mark.colour)}"/>'
        )
    return _label(mark)


def _stroke(stroke: Stroke) -> str:
    path = "".join("M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in points) for points in stroke.lines)
    if not path:
        return ""
    dashes = f' stroke-dasharray="{" ".join(f"{part:g}" for part in stroke.dashes)}"' if stroke.dashes else ""
    opacity = f' stroke-opacity="{stroke.opacity:g}"' if stroke.opacity < 1.0 else ""
    return (
        f'<path d="{path}" fill="none" stroke="{escape(stroke.colour)}" stroke-width="{stroke.width:g}"'
        f' stroke-linejoin="round"{opacity}{dashes}/>'
    )


def _label(label: Label) -> str:
    turned = f' transform="rotate(-90 {label.x:.2f} {label.y:.2f})"' if label.upwards else ""
    heavy = ' font-weight="700"' if label.bold else ""
    return (
        f'<text x="{label.x:.2f}" y="{label.y:.2f}" font-size="{label.size:g}" text-anchor="{label.anchor}"'
        f' fill="{escape(label.colour)}"{heavy}{turned}>{escape(label.text)}</text>'
    )
