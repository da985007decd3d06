"""The window's own values, without a window: history, playback, numbers, readings, the arm's place."""

from __future__ import annotations

import itertools
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QTransform
from PySide6.QtWidgets import QApplication

from analysis.captures.model import ArraySource, Role
from analysis.diagnosis.findings import ArmPath
from analysis.intervals import Interval
from app.drawing import numbers
from app.drawing.band_item import BandItem, Stretch, runs_px
from app.drawing.bars import bars, strokes
from app.drawing.envelopes import Columns, columns, extent_v
from app.drawing.theme import DARK, LIGHT, Palette
from app.review.arm import moment_of
from app.review.playback import Playback
from app.review.readings import in_role_order, read_at
from app.review.view_history import View, ViewHistory
from app.views.records import missing_steps
from app.words import record_names
from tests.app.fakes import REST_PERCENT, worn_capture, worn_findings


def test_a_new_view_forgets_what_lay_ahead() -> None:
    history = ViewHistory()
    for place in range(4):
        history = history.visited(View("1", Interval(place, place + 1)), now_s=10.0 * place)
    history = history.back().back().visited(View("1", Interval(9, 10)), now_s=99.0)
    assert not history.can_go_forward
    assert [view.window.start for view in history.views] == [0, 1, 9]


def test_going_back_and_forward_at_the_ends_changes_nothing() -> None:
    history = ViewHistory().visited(View("1", Interval(0, 1)), 0.0)
    assert history.back() is history
    assert history.forward() is history


def test_a_run_takes_as_long_as_its_speed_says() -> None:
    run = Playback(Interval(0.0, 10.0), 2.0, speed=0.5).started(100.0)
    assert run.moment_at(104.0) == pytest.approx(4.0)
    faster = run.at_speed(10.0, 104.0)
    assert faster.moment_at(104.0) == pytest.approx(4.0)
    assert faster.moment_at(104.5) == pytest.approx(9.0)
    assert not faster.finished(104.5)
    assert faster.finished(105.0)
    assert faster.moment_at(200.0) == 10.0


def test_a_run_that_has_ended_starts_again_at_the_beginning() -> None:
    ended = Playback(Interval(1.0, 3.0), 3.0)
    assert ended.started(0.0).moment_at(0.0) == 1.0


@pytest.mark.parametrize(
    ("value_v", "text"),
    [(2.3104, "2.310 V"), (0.0126, "13 mV"), (-0.0126, "−13 mV"), (0.00012, "0.1 mV"), (float("nan"), "–")],
)
def test_volts_have_a_unit_that_fits(value_v: float, text: str) -> None:
    assert numbers.volts(value_v) == text


def test_a_time_has_as_many_digits_as_a_pixel_can_move() -> None:
    assert numbers.seconds(1.23456789, 0.1) == "1.2 s"
    assert numbers.seconds(1.23456789, 1e-4) == "1.2346 s"
    assert numbers.seconds(-0.0004, 0.1) == "0.0 s"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("reference stands at 3.64 V", 4),
        ("the tracks differ by 0.36 V", 5),
        ("breaks up on 4 crossings", 5),
        ("11–90 % of travel", 3),
    ],
)
def test_a_number_keeps_its_unit_where_a_line_ends(text: str, words: int) -> None:
    whole = numbers.unbroken(text)
    assert whole.replace("\N{NO-BREAK SPACE}", " ") == text
    assert len(whole.split(" ")) == words


def test_the_plate_of_a_label_has_smooth_corners(qapp: QApplication) -> None:
    picture = QImage(300, 40, QImage.Format.Format_RGB32)
    picture.fill(QColor("white"))
    item = BandItem(labels=True)
    item.recolour(QColor("#d55e00"), QColor("#d55e00"), QColor("white"))
    item.show_stretches((Stretch(Interval(100.0, 101.0), label=" "),))
    painter = QPainter(picture)
    item._write_all(painter, QTransform(), QRectF(0, 0, 300, 40))
    painter.end()
    shades = {picture.pixel(x, y) for x in range(300) for y in range(40)}
    assert len(shades) > 4


def test_a_reading_has_every_channel_with_the_tracks_first_and_the_travel() -> None:
    capture, findings = worn_capture(), worn_findings()
    reading = read_at(capture.record("004"), 2.0, findings.surveys[0])
    assert [channel.role for channel, _ in reading.volts] == [Role.SIGNAL, Role.REFERENCE, Role.GROUND]
    assert reading.travel_percent == pytest.approx(92.0, abs=0.1)
    assert reading.volts[1][1] == pytest.approx(5.003, abs=0.01)


def test_without_a_path_travel_is_the_ratio_of_the_channels() -> None:
    reading = read_at(worn_capture().record("001"), 0.5, None)
    signal_v, reference_v, ground_v = (value for _, value in reading.volts)
    ratio = 100 * (signal_v - ground_v) / (reference_v - ground_v)
    assert reading.travel_percent == pytest.approx(ratio)


def test_a_signal_that_drops_out_does_not_move_an_arm_that_rests() -> None:
    record = worn_capture().record("003")
    signal, *others = record.channels
    dropped = replace(signal, source=ArraySource(np.zeros(len(record))))
    reading = read_at(replace(record, channels=(dropped, *others)), 0.5, worn_findings().surveys[0])
    assert reading.volts[0][1] == 0.0
    assert reading.travel_percent == REST_PERCENT


def test_where_nobody_found_the_arm_no_place_is_read() -> None:
    survey = replace(worn_findings().surveys[0], resting=())
    assert read_at(worn_capture().record("001"), 0.5, survey).travel_percent is None


def test_a_file_may_order_its_channels_as_it_likes() -> None:
    channels = worn_capture().records[3].channels
    assert in_role_order(channels[::-1]) == in_role_order(channels)


def test_the_arm_is_put_where_it_was_nearest_in_time() -> None:
    time_s = np.linspace(0.0, 4.0, 401)
    travel = 50.0 - 40.0 * np.cos(np.pi * time_s)
    path = ArmPath("004", time_s, travel, np.full_like(time_s, 0.1))
    for near_s in (0.4, 1.6, 2.4):
        moment_s = moment_of(path, 50.0, near_s)
        assert path.at(moment_s) == pytest.approx(50.0, abs=0.1)
        assert abs(moment_s - near_s) <= 0.11
    assert path.at(moment_of(path, 99.0, 1.2)) == pytest.approx(90.0, abs=0.1)


def test_columns_never_lose_a_spike() -> None:
    channel = worn_capture().records[3].channels[0]
    voltage_v = channel.volts()
    for count in (1, 7, 300, 5000):
        drawn = columns(channel, 0, len(channel), count)
        assert np.nanmin(drawn.low_v) == voltage_v.min()
        assert np.nanmax(drawn.high_v) == voltage_v.max()


def test_strokes_join_without_a_gap() -> None:
    channel = worn_capture().records[3].channels[0]
    made = strokes(columns(channel, 0, len(channel), 200), 0.0, 1e-4)
    for (_, low_v, high_v), (_, next_low_v, next_high_v) in itertools.pairwise(made.T.tolist()):
        assert high_v >= next_low_v
        assert next_high_v >= low_v


def test_a_column_of_missing_samples_has_no_stroke_of_its_own() -> None:
    level_v = np.array([1.0, 1.0, np.nan, np.nan, 1.0, np.nan])
    made = strokes(Columns(np.arange(6.0), level_v, level_v + 0.5, False), 10.0, 2.0)
    assert made.tolist() == [[10.0, 12.0, 18.0], [1.0, 1.0, 1.0], [1.5, 1.5, 1.5]]


@pytest.mark.parametrize("ratio", [1.0, 2.0])
def test_a_steady_channel_is_as_thick_as_it_should_be(ratio: float) -> None:
    level_v = np.full(50, 5.0)
    made = strokes(Columns(np.arange(50.0), level_v, level_v, False), 0.0, 1.0)
    _, top, _, bottom = bars(made, QTransform(2.0, 0.0, 0.0, -100.0, 40.0, 520.3), ratio, least_px=2.0)
    assert (bottom - top + 1 == round(2.0 * ratio)).all()
    assert np.abs((top + bottom + 1) / 2 - ratio * 20.3).max() <= 0.5


@pytest.mark.parametrize("ratio", [1.0, 2.0])
def test_strokes_fill_every_pixel_column_and_reach_their_extremes(ratio: float) -> None:
    width_px, rng = 300, np.random.default_rng(2)
    count = round(width_px * ratio)
    low_v = rng.uniform(0.0, 2.0, count)
    high_v = low_v + rng.uniform(0.1, 3.0, count)
    time_s = (np.arange(count) + 0.5) / count
    to_screen = QTransform(width_px, 0.0, 0.0, -100.0, 40.0, 520.0)
    left, top, right, bottom = bars(np.stack([time_s, low_v, high_v]), to_screen, ratio)
    assert left.tolist() == list(range(round(40 * ratio), round((40 + width_px) * ratio)))
    assert (left == right).all()
    assert np.abs(top - ratio * (520.0 - 100.0 * high_v)).max() <= 0.5
    assert np.abs(bottom + 1 - ratio * (520.0 - 100.0 * low_v)).max() <= 0.5


def test_stretches_that_would_run_into_each_other_are_one_unless_they_are_kept_apart() -> None:
    to_screen, view = QTransform(10.0, 0.0, 0.0, 1.0, 0.0, 0.0), QRectF(0.0, 0.0, 1000.0, 100.0)
    spans = np.array([[1.0, 2.0], [2.2, 3.0], [2.3, 2.4], [50.0, 50.0], [200.0, 300.0]])
    joined = runs_px(spans, to_screen, view, least_px=3.0, apart=False)
    assert joined == [(10.0, 30.0), (498.5, 501.5)]
    assert len(runs_px(spans, to_screen, view, least_px=3.0, apart=True)) == 4
    assert runs_px(spans[:0], to_screen, view, least_px=3.0, apart=False) == []


def test_a_steady_channel_is_not_blown_up() -> None:
    low_v, high_v = extent_v(worn_capture().records[0].channels[2])
    assert high_v - low_v >= 0.1


def test_the_checklist_lacks_what_neither_a_step_nor_a_channel_covered() -> None:
    assert [str(step) for step in missing_steps(worn_capture())] == ["hold"]


def test_records_of_one_step_are_numbered_and_others_are_not() -> None:
    names = record_names(worn_capture())
    assert names["001"] == "Ground"
    assert names["004"] == "Sweep 1"
    assert names["005"] == "Sweep 2"


def _luminance(colour: str) -> float:
    shares = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
def test_text_contrasts_as_wcag_asks(palette: Palette) -> None:
    """WCAG 2.2, 1.4.3: 4.5 to 1 for text, 3 to 1 for large text; relative luminance as defined there."""
    for ground in (palette.paper, palette.desk, palette.raised):
        for ink in (palette.ink, palette.quiet, palette.good, palette.bad):
            assert contrast(ink, ground) >= 4.5, (ink, ground)
    for role in (*Role, None):  # names of lanes stand on paper
        assert contrast(palette.role_ink(role).name(), palette.paper) >= 4.5, role
    assert contrast(palette.choice_ink, palette.choice) >= 4.5


def contrast(ink: str, ground: str) -> float:
    """How much a colour stands out from another, as WCAG defines it."""
    lighter, darker = sorted((_luminance(ink), _luminance(ground)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def test_roles_have_okabe_and_itos_colours() -> None:
    """Okabe & Ito 2008, "Color Universal Design": bluish green, reddish purple, orange, sky blue."""
    wanted = {
        Role.SIGNAL: "#009e73",
        Role.SECOND_SIGNAL: "#cc79a7",
        Role.REFERENCE: "#e69f00",
        Role.SUPPLY: "#56b4e9",
    }
    for palette in (LIGHT, DARK):
        assert {role: palette.role(role).name() for role in wanted} == wanted
    assert LIGHT.band == "#D55E00"
