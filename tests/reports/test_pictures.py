"""The pictures of the report, as marks with known places."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Step
from analysis.diagnosis.findings import ArmPath, CrossingTime
from analysis.intervals import Interval
from analysis.reports.axes import Axes, digits_of, nice_above, ticks
from analysis.reports.drawing import BAND_COLOUR, INK, QUIET, Drawing, Label, Stroke
from analysis.reports.trace_picture import clearest_moment, trace_drawing
from analysis.reports.track_picture import Beside, track_drawing
from tests.reports.examples import BAND, CAPTURE, findings, survey


def labels(drawing: Drawing) -> dict[str, Label]:
    return {mark.text: mark for mark in drawing.marks if isinstance(mark, Label)}


def strokes(drawing: Drawing, colour: str, width: float) -> list[Stroke]:
    return [
        mark
        for mark in drawing.marks
        if isinstance(mark, Stroke) and mark.colour == colour and mark.width == width
    ]


def _heights(drawing: Drawing) -> list[str]:
    return [mark.text for mark in drawing.marks if isinstance(mark, Label) and mark.anchor == "end"]


def drawn(drawing: Drawing | None) -> Drawing:
    assert drawing is not None
    return drawing


def test_a_band_is_hatched_where_it_lies_on_the_axis() -> None:
    drawing = drawn(track_drawing(findings()))
    names = labels(drawing)
    scale = (names["100"].x - names["0"].x) / 100 if names["0"].anchor == "middle" else 0.0
    (edge,) = strokes(drawing, BAND_COLOUR, 1.2)
    left, right = edge.lines[0][:, 0].min(), edge.lines[0][:, 0].max()
    ten = names["10"].x
    scale = (names["90"].x - ten) / 80.0
    assert (left - ten) / scale + 10.0 == pytest.approx(BAND.travel.start, abs=0.1)
    assert (right - left) / scale == pytest.approx(BAND.travel.length, abs=0.1)
    assert not edge.dashes
    possible = drawn(track_drawing(replace(findings(), bands=(replace(BAND, confidence=0.3),))))
    assert strokes(possible, BAND_COLOUR, 1.2)[0].dashes


def test_a_gap_in_every_crossing_is_a_gap_in_the_bold_line() -> None:
    holed = survey()
    holed.breakup_percent[:, 5] = np.nan
    (worst,) = strokes(drawn(track_drawing(replace(findings(), surveys=(holed,)))), INK, 1.9)
    assert len(worst.lines) == 2


def test_the_bold_line_is_the_worst_of_all_crossings() -> None:
    drawing = drawn(track_drawing(findings()))
    (worst,) = strokes(drawing, INK, 1.9)
    heights = worst.lines[0][:, 1]
    faint = np.concatenate([points[:, 1] for mark in strokes(drawing, QUIET, 0.8) for points in mark.lines])
    assert heights.min() == pytest.approx(faint.min())


def test_nothing_is_drawn_where_no_track_was_swept() -> None:
    assert track_drawing(replace(findings(), surveys=())) is None
    empty = replace(survey(), breakup_percent=np.empty((0, 10)), crossings=())
    assert track_drawing(replace(findings(), surveys=(empty,))) is None
    unseen = replace(survey(), breakup_percent=np.full((2, 10), np.nan))
    assert track_drawing(replace(findings(), surveys=(unseen,))) is None


def test_the_drawing_shows_the_track_that_the_band_is_on() -> None:
    second = replace(survey(), role=Role.SECOND_SIGNAL, breakup_percent=np.full((2, 10), 7.0))
    made = replace(findings(), surveys=(survey(), second))
    on_second = replace(made, bands=(replace(BAND, track=Role.SECOND_SIGNAL),))
    assert "50" not in _heights(drawn(track_drawing(on_second)))
    assert "50" in _heights(drawn(track_drawing(made)))


def test_two_sensors_are_drawn_on_one_scale() -> None:
    quiet = replace(survey(), breakup_percent=np.full((2, 10), 0.3))
    good = replace(findings(), bands=(), surveys=(quiet,))
    drawing = drawn(track_drawing(findings(), title="This", beside=Beside("Good", good)))
    assert [mark.text for mark in drawing.marks if isinstance(mark, Label)].count("50") >= 2
    assert "Good" in drawing.description
    assert drawn(track_drawing(findings(), beside=Beside("Model"))).height == drawing.height


def test_every_mark_lies_inside_the_picture() -> None:
    drawing = drawn(track_drawing(findings(), title="This", beside=Beside("Model")))
    for mark in drawing.marks:
        if isinstance(mark, Stroke):
            for points in mark.lines:
                assert points[:, 0].min() >= 0.0
                assert points[:, 0].max() <= drawing.width
                assert points[:, 1].min() >= 0.0
                assert points[:, 1].max() <= drawing.height


def ramp_capture() -> tuple[Capture, ArmPath]:
    """A rising signal, 0.02 V a sample, with one deep drop at 0.5 s."""
    time_s = np.arange(1000) / 1000.0
    voltage_v = 1.0 + 2.0 * time_s
    voltage_v[500] = 0.1
    channel = Channel("signal", Role.SIGNAL, ArraySource(voltage_v))
    record = Record("004", 0.001, (channel,), step=Step.SWEEP)
    path = ArmPath("004", time_s[::10], 20.0 * (1.0 + 2.0 * time_s[::10]), np.full(100, 0.1))
    return replace(CAPTURE, records=(record,)), path


def test_the_trace_shows_the_drop_and_the_modelled_course_without_it() -> None:
    capture, path = ramp_capture()
    band = replace(
        BAND,
        travel=Interval(39.0, 41.0),
        volts=Interval(1.95, 2.05),
        crossings=(CrossingTime("004", Interval(0.48, 0.52), True, 38.0),),
    )
    made = replace(findings(), bands=(band,), surveys=(replace(survey(), paths=(path,)),))
    drawing = drawn(trace_drawing(capture, made))
    measured = [mark for mark in strokes(drawing, INK, 1.3) if len(mark.lines[0]) > 3]
    modelled = [
        mark for mark in drawing.marks if isinstance(mark, Stroke) and mark.dashes and len(mark.lines[0]) > 3
    ]
    assert len(measured) == len(modelled) == 1
    assert np.ptp(measured[0].lines[0][:, 1]) > 3 * np.ptp(modelled[0].lines[0][:, 1])


def test_of_many_samples_the_trace_keeps_every_extreme() -> None:
    time_s = np.arange(200_000) / 100_000.0
    voltage_v = np.full(time_s.size, 2.5)
    voltage_v[123_457] = 0.25
    channel = Channel("signal", Role.SIGNAL, ArraySource(voltage_v))
    capture = replace(CAPTURE, records=(Record("004", 1e-5, (channel,)),))
    crossing = CrossingTime("004", Interval(0.6, 1.3), True, 40.0)
    made = replace(findings(), bands=(replace(BAND, crossings=(crossing,)),))
    drawing = drawn(trace_drawing(capture, made))
    heights = {
        float(mark.text): mark.y - 4
        for mark in drawing.marks
        if isinstance(mark, Label) and mark.anchor == "end"
    }
    (measured,) = [mark for mark in strokes(drawing, INK, 1.3) if len(mark.lines[0]) > 3]
    lowest_v = (heights[0.0] - measured.lines[0][:, 1].max()) / (heights[0.0] - heights[1.0])
    assert lowest_v == pytest.approx(0.25, abs=0.02)
    assert len(measured.lines[0]) < 4000


def test_a_record_that_is_gone_is_not_drawn() -> None:
    assert trace_drawing(CAPTURE, findings()) is None
    assert clearest_moment(replace(findings(), bands=(), events=())) is None


@pytest.mark.parametrize(
    ("value", "above"), [(0.9, 1.0), (1.0, 1.0), (1.1, 2.0), (46.9, 50.0), (300.0, 500.0)]
)
def test_a_scale_ends_at_a_round_number(value: float, above: float) -> None:
    assert nice_above(value) == pytest.approx(above)


def test_ticks_are_round_and_inside() -> None:
    assert ticks(Interval(0.0, 100.0), 10) == tuple(10.0 * place for place in range(11))
    assert ticks(Interval(2.0, 2.0), 5) == (2.0,)
    assert digits_of((0.0, 0.25)) == 1
    assert digits_of((0.0, 10.0)) == 0


def test_a_value_beyond_the_axis_is_drawn_at_its_edge() -> None:
    axes = Axes(10.0, 10.0, 100.0, 50.0, Interval(0.0, 10.0), Interval(0.0, 5.0))
    assert axes.y(9.0) == 10.0
    assert axes.x(-3.0) == 10.0
