"""The sensor track as a picture: break-up over travel, this sensor above and a good one below."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.diagnosis.findings import Band, Findings
from analysis.intervals import Interval
from analysis.reports.axes import Axes, nice_above
from analysis.reports.drawing import (
    INK,
    PALE,
    QUIET,
    WIDTH,
    Box,
    Drawing,
    Label,
    Mark,
    Stroke,
    hatched,
    line,
)
from analysis.reports.verdicts import is_watched
from analysis.signals.facts import TrackSurvey
from analysis.wording import say

_LEFT, _RIGHT, _TITLE, _FOOT = 66.0, 12.0, 24.0, 46.0
_WHOLE_TRAVEL = Interval(0.0, 100.0)
_TRAVEL = say("travel, %")
_BREAKUP = say("break-up, %")


@dataclass(frozen=True, slots=True)
class Beside:
    """What is drawn below: another capture's findings, or the model where there is none.

    Parameters
    ----------
    title : str
        Which it is, for people.
    findings : Findings or None
        Of another capture; None for a track as modelled.
    """

    title: str
    findings: Findings | None = None


def shown_survey(findings: Findings) -> TrackSurvey | None:
    """The track that the surest band is on, else the first that was swept; None where none was."""
    surveys = [item for item in findings.surveys if np.isfinite(item.breakup_percent).any()]
    if not surveys:
        return None
    wanted = max(findings.bands, key=lambda band: band.confidence).track if findings.bands else None
    return next((item for item in surveys if item.role is wanted), surveys[0])


def track_drawing(
    findings: Findings,
    *,
    title: str = "",
    beside: Beside | None = None,
    panel_height: float = 150.0,
    width: float = WIDTH,
) -> Drawing | None:
    """Break-up along the travel; None where nothing was swept.

    Each crossing is a faint line, the worst of all crossings a bold one; bands are hatched. Everything is
    clipped to 0-100 % of travel, and both sensors are drawn on one scale.

    Parameters
    ----------
    findings : Findings
        Of the sensor in question.
    title : str
        Above it; empty for none.
    beside : Beside or None
        What stands below it; None for nothing.
    panel_height, width : float
        Height of each sensor and width of the picture, in its units.
    """
    survey = shown_survey(findings)
    if survey is None:
        return None
    other = _other(beside, survey.role)
    scale = _scale([survey, *([other] if other is not None else [])])
    first = _axes(_TITLE, panel_height, scale, width)
    marks: list[Mark] = [*_panel(first, survey, findings.bands, title, beside is None)]
    height = first.base + _FOOT
    if beside is not None:
        second = _axes(first.base + _TITLE + 14, panel_height, scale, width)
        if other is None:
            marks += _modelled(second, survey, beside.title)
        else:
            bands = beside.findings.bands if beside.findings is not None else ()
            marks += _panel(second, other, bands, beside.title, True)
        height = second.base + _FOOT
    return Drawing(width, height, tuple(marks), _description(findings, beside))


def _other(beside: Beside | None, role: Role) -> TrackSurvey | None:
    if beside is None or beside.findings is None:
        return None
    same = next(
        (
            item
            for item in beside.findings.surveys
            if item.role is role and np.isfinite(item.breakup_percent).any()
        ),
        None,
    )
    return same or shown_survey(beside.findings)


def _scale(surveys: Sequence[TrackSurvey]) -> Interval:
    highest = max(
        max(float(np.nanmax(item.breakup_percent)), 4.0 * item.floor_percent, 1.0) for item in surveys
    )
    return Interval(0.0, nice_above(highest))


def _axes(top: float, height: float, scale: Interval, width: float) -> Axes:
    return Axes(_LEFT, top, width - _LEFT - _RIGHT, height, _WHOLE_TRAVEL, scale)


def _panel(axes: Axes, survey: TrackSurvey, bands: Sequence[Band], title: str, numbers: bool) -> list[Mark]:
    marks: list[Mark] = [_untested(axes, survey)]
    for band in bands:
        if band.track is survey.role:
            left, right = axes.x(band.travel.start), axes.x(band.travel.stop)
            wide = max(right - left, 2.0)
            marks += hatched(left, axes.top, wide, axes.height, possible=is_watched(band))
    marks += axes.marks(across_title=_TRAVEL, up_title=_BREAKUP, numbers_across=numbers)
    rows = [row for row in survey.breakup_percent if np.isfinite(row).any()]
    edges = survey.edges_percent
    marks.append(Stroke(tuple(line for row in rows for line in _steps(axes, edges, row)), QUIET, 0.8, 0.4))
    marks.append(Stroke(tuple(_steps(axes, edges, _worst(rows))), INK, 1.9))
    if title:
        marks.append(Label(axes.left, axes.top - 8, title, "start", 15.0, bold=True))
    return marks


def _untested(axes: Axes, survey: TrackSurvey) -> Mark:
    """A line below the frame along the travel that no crossing visited."""
    visited = np.flatnonzero(np.isfinite(survey.breakup_percent).any(axis=0))
    edges = survey.edges_percent
    tested = [(float(edges[place]), float(edges[place + 1])) for place in visited]
    gaps, reach = [], 0.0
    for start, stop in tested:
        if start > reach + 1e-6:
            gaps.append((reach, start))
        reach = max(reach, stop)
    if reach < 100.0:
        gaps.append((reach, 100.0))
    y = axes.base - 3
    return Stroke(tuple(line((axes.x(start), y), (axes.x(stop), y)) for start, stop in gaps), PALE, 6.0)


def _modelled(axes: Axes, survey: TrackSurvey, title: str) -> list[Mark]:
    """A track without a fault: nothing above what this recorder cannot see."""
    top = axes.y(survey.floor_percent)
    marks: list[Mark] = [Box(axes.left, top, axes.width, axes.base - top, PALE)]
    marks += axes.marks(across_title=_TRAVEL, up_title=_BREAKUP)
    marks.append(Stroke((line((axes.left, top), (axes.right, top)),), INK, 1.9))
    marks.append(Label(axes.left, axes.top - 8, title, "start", 15.0, bold=True))
    return marks


def _worst(rows: Sequence[NDArray[np.float64]]) -> NDArray[np.float64]:
    table = np.asarray(rows)
    seen = np.isfinite(table).any(axis=0)
    worst = np.full(table.shape[1], np.nan)
    worst[seen] = np.nanmax(table[:, seen], axis=0)
    return worst


def _steps(
    axes: Axes, edges_percent: NDArray[np.float64], row: NDArray[np.float64]
) -> list[NDArray[np.float64]]:
    """A step for each bin; interrupted where the crossing did not come."""
    visited = np.isfinite(row) & (edges_percent[1:] > 0.0) & (edges_percent[:-1] < 100.0)
    turns = np.flatnonzero(np.diff(visited.astype(np.int8), prepend=0, append=0))
    lines = []
    for first, last in zip(turns[::2], turns[1::2], strict=True):
        across = np.repeat(edges_percent[first : last + 1], 2)[1:-1]
        lines.append(axes.points(across, np.repeat(row[first:last], 2)))
    return lines


def _description(findings: Findings, beside: Beside | None) -> str:
    bands = [band for band in findings.bands if not is_watched(band)]
    if bands:
        worst = max(bands, key=lambda band: band.confidence)
        text = say(
            "Break-up of the sensor's output along its travel: it stands out between {start:.0f} and"
            " {stop:.0f} per cent of travel.",
            start=worst.travel.start,
            stop=worst.travel.stop,
        )
    else:
        text = say("Break-up of the sensor's output along its travel: no place stands out.")
    if beside is None:
        return text
    return say("{first} Below it, on the same scale: {second}.", first=text, second=beside.title)
