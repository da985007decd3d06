"""The sensor track as an SVG drawing: break-up over travel, made without Qt and without a screen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.findings import Band, Findings
from analysis.reports.quantities import number
from analysis.reports.verdicts import is_watched
from analysis.signals.facts import TrackSurvey

_WIDTH, _HEIGHT = 900, 340
_LEFT, _RIGHT, _TOP, _BOTTOM = 62, 14, 14, 48
_BAND_COLOUR = "#D55E00"  # vermillion of Okabe & Ito (2008); hatched too, for a black-and-white printer
_INK, _QUIET = "#22262b", "#777"
_STEPS = (1.0, 2.0, 5.0)


def track_svg(findings: Findings) -> str:
    """Break-up of the track that the first band is on, else of the first track; empty where none was swept.

    Each crossing is a faint line, the worst of all crossings a bold one; bands are hatched.
    """
    surveys = [item for item in findings.surveys if item.breakup_percent.size]
    if not surveys:
        return ""
    wanted = findings.bands[0].track if findings.bands else surveys[0].role
    survey = next((item for item in surveys if item.role is wanted), surveys[0])
    rows = [row for row in survey.breakup_percent if np.isfinite(row).any()]
    if not rows:
        return ""
    top = _nice_top(max(float(np.nanmax(np.asarray(rows))), 4.0 * survey.floor_percent, 1.0))
    bands = [band for band in findings.bands if band.track is survey.role]
    return "".join(
        [
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {_WIDTH} {_HEIGHT}" width="{_WIDTH}"'
            f' height="{_HEIGHT}" role="img" font-family="system-ui, sans-serif" font-size="13">',
            f"<title>{escape('Break-up of the output along the travel')}</title>",
            _hatch(),
            *(_band(band) for band in bands),
            *_axes(top),
            *_lines(survey, rows, top),
            "</svg>",
        ]
    )


def _nice_top(value: float) -> float:
    """The next 1, 2 or 5 times a power of ten."""
    power = 10.0 ** np.floor(np.log10(value))
    return float(next((step * power for step in _STEPS if step * power >= value), 10.0 * power))


def _x(travel_percent: float) -> float:
    return _LEFT + (_WIDTH - _LEFT - _RIGHT) * min(max(travel_percent, 0.0), 100.0) / 100.0


def _y(breakup_percent: float, top: float) -> float:
    return _HEIGHT - _BOTTOM - (_HEIGHT - _TOP - _BOTTOM) * min(max(breakup_percent, 0.0), top) / top


def _hatch() -> str:
    return (
        '<defs><pattern id="worn" width="7" height="7" patternUnits="userSpaceOnUse"'
        f' patternTransform="rotate(45)"><path d="M0 0V7" stroke="{_BAND_COLOUR}" stroke-width="2"'
        ' stroke-opacity="0.55"/></pattern></defs>'
    )


def _band(band: Band) -> str:
    left, right = _x(band.travel.start), _x(band.travel.stop)
    dash = ' stroke-dasharray="4 3"' if is_watched(band) else ""
    return (
        f'<rect x="{left:.1f}" y="{_TOP}" width="{max(right - left, 1.0):.1f}"'
        f' height="{_HEIGHT - _TOP - _BOTTOM}" fill="url(#worn)" stroke="{_BAND_COLOUR}"{dash}/>'
    )


def _axes(top: float) -> Iterator[str]:
    base = _HEIGHT - _BOTTOM
    yield f'<path d="M{_LEFT} {_TOP}V{base}H{_WIDTH - _RIGHT}" fill="none" stroke="{_INK}"/>'
    for travel in range(0, 101, 10):
        x = _x(travel)
        yield f'<path d="M{x:.1f} {base}v5" stroke="{_INK}"/>'
        yield f'<text x="{x:.1f}" y="{base + 19}" text-anchor="middle" fill="{_INK}">{travel}</text>'
    for part in range(6):
        level = top * part / 5
        y = _y(level, top)
        label = number(level, 0 if top >= 5 else 1)
        yield f'<path d="M{_LEFT} {y:.1f}h-5" stroke="{_INK}"/>'
        yield f'<text x="{_LEFT - 9}" y="{y + 4:.1f}" text-anchor="end" fill="{_INK}">{label}</text>'
    middle = (_LEFT + _WIDTH - _RIGHT) / 2
    yield f'<text x="{middle}" y="{_HEIGHT - 8}" text-anchor="middle" fill="{_INK}">travel, %</text>'
    yield (
        f'<text transform="translate(16 {(_TOP + base) / 2}) rotate(-90)" text-anchor="middle"'
        f' fill="{_INK}">break-up, % of the applied voltage</text>'
    )


def _lines(survey: TrackSurvey, rows: Sequence[NDArray[np.float64]], top: float) -> Iterator[str]:
    edges = survey.edges_percent
    for row in rows:
        yield f'<path d="{_path(edges, row, top)}" fill="none" stroke="{_QUIET}" stroke-opacity="0.4"/>'
    table = np.asarray(rows)
    seen = np.isfinite(table).any(axis=0)
    worst = np.full(table.shape[1], np.nan)
    worst[seen] = np.nanmax(table[:, seen], axis=0)
    yield f'<path d="{_path(edges, worst, top)}" fill="none" stroke="{_INK}" stroke-width="1.8"/>'


def _path(edges_percent: NDArray[np.float64], row: NDArray[np.float64], top: float) -> str:
    """A step for each bin; interrupted where the crossing did not come."""
    words, down = [], False
    for start, stop, level in zip(edges_percent[:-1], edges_percent[1:], row, strict=True):
        visited = bool(np.isfinite(level))
        if visited:
            y = f"{_y(level, top):.1f}"
            words.append(f"V{y}H{_x(stop):.1f}" if down else f"M{_x(start):.1f} {y}H{_x(stop):.1f}")
        down = visited
    return "".join(words)
