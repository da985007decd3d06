"""What is drawn of both sides of Compare: crossings and markers on the traces, bands on the track of both."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.comparison.mirrored import mirrored_band, mirrored_survey
from analysis.diagnosis.findings import Band, TrackSurvey
from analysis.intervals import Interval
from analysis.review.model import Marker
from app.compare.marks import marks_on, spans_on
from app.compare.page import ComparePage
from app.compare.side import CompareSide
from app.drawing.band_item import Stretch
from app.views.trace import TraceView


def draw_bands(
    page: ComparePage, sides: Sequence[CompareSide], in_review: tuple[Marker, ...]
) -> list[list[Interval]]:
    """Draw bands and markers of both sides.

    Parameters
    ----------
    page : ComparePage
    sides : pair of CompareSide
    in_review : tuple of Marker
        Those of the capture in Review.

    Returns
    -------
    list of list of Interval
        The crossings that break up in the shown record of each side, in its seconds.
    """
    surveys: list[TrackSurvey | None] = []
    bands: list[tuple[Band, ...]] = []
    spans: list[tuple[Stretch, ...]] = []
    crossings: list[list[Interval]] = []
    for side, trace in zip(sides, page.traces, strict=True):
        own = side.findings.bands if side.findings is not None else ()
        own = tuple(item for item in own if item.track is side.track)
        stretches = _crossings(side, own)
        trace.show_stretches(stretches)
        crossings.append([item.span for item in stretches])
        markers = in_review if side.of_review else side.markers
        trace.marks.show_marks(marks_on(markers, side.record))
        spans.append(spans_on(markers, side.track, side.mirrored))
        survey = side.survey
        surveys.append(mirrored_survey(survey) if side.mirrored and survey is not None else survey)
        bands.append(tuple(mirrored_band(item) for item in own) if side.mirrored else own)
    page.track.show_surveys((surveys[0], surveys[1]), (bands[0], bands[1]), (spans[0], spans[1]))
    return crossings


def share_scale(traces: Sequence[TraceView]) -> None:
    """One scale of volts for lanes of the same role, so that heights can be compared by eye."""
    lanes = [{lane.curves[0][1].role: lane for lane in trace.lanes} for trace in traces]
    for role in lanes[0].keys() & lanes[1].keys():
        shown = [own[role].box.shown()[1] for own in lanes]
        for own in lanes:
            own[role].box.show_y(min(item.start for item in shown), max(item.stop for item in shown))


def _crossings(side: CompareSide, bands: tuple[Band, ...]) -> tuple[Stretch, ...]:
    return tuple(
        Stretch(item.time, strong=band.confidence >= 0.5)
        for band in bands
        for item in band.crossings
        if side.record is not None and item.record == side.record.name and item.noisy
    )
