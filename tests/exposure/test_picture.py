"""The whole picture: relations first, then the story that the model must be free to contradict."""

from __future__ import annotations

import time
from dataclasses import replace

import numpy as np
import pytest

from analysis.control_unit.debounce import ContinuousTimer, UpDownCounter
from analysis.control_unit.rules import ControlUnit, RangeRule, RuleKind
from analysis.errors import VehicleError
from analysis.exposure.amounts import about_words, share_words
from analysis.exposure.contact import BandContact, Contact
from analysis.exposure.picture import LEFT_OUT, Exposure, hold_that_sets, picture
from analysis.exposure.words import (
    caveats,
    customer_words,
    in_short,
    of_whom,
    rest_details,
    road_summary,
    what_follows,
    what_would,
)
from analysis.intervals import Interval
from analysis.vehicle.geometry import TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.vehicle.road import ROADS, Road, RoadClass, road_of

HEIGHTS = VehicleHeights(
    TwoPoints((0.0, -100.0), (100.0, 100.0)),
    50.0,
    (
        Rest(RestKind.PARKED, -15.0),
        Rest(RestKind.LOADED, -14.0),
        Rest(RestKind.OFF_ROAD, 40.0),
        Rest(RestKind.CORNER, -25.0),
    ),
    "made up for this test",
)
BAND = Interval(40.0, 46.0)  # -20 to -8 mm
RANGE = RangeRule(Interval(0.25, 4.75), ContinuousTimer(0.5), "HUMMER H2 2009, DTC C0625 or C0630")
UNIT = ControlUnit(0.010, RANGE)
OPEN = Contact(RuleKind.RANGE, 0.97, 4.0, 5.0)
CONTACT = BandContact((OPEN,), (OPEN,), 12, ("006",))
SMOOTH, ROUGH = ROADS[0], ROADS[3]


def _at(exposure: Exposure, kind: RestKind) -> float:
    return next(item.chance for item in exposure.rests if item.rest.kind is kind)


def _share(exposure: Exposure, kind: RestKind) -> float:
    return next(item.visits.share for item in exposure.rests if item.rest.kind is kind)


def test_with_500_ms_a_band_at_the_rest_height_faults_on_a_smooth_road_and_never_over_bumps() -> None:
    # The story says "over bumps"; the model decides: on bumps no stay lasts half a second.
    smooth = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    bumps = picture(HEIGHTS, BAND, CONTACT, UNIT, ROUGH)
    assert _at(smooth, RestKind.LOADED) > 0.99
    assert _at(bumps, RestKind.LOADED) < 0.01
    # And at the normal height the band is beyond the reach of the smooth road, and within that of the bumps.
    assert _share(smooth, RestKind.NORMAL) < 0.01 < 0.1 < _share(bumps, RestKind.NORMAL)


def test_with_an_up_down_counter_the_bumps_gather_what_a_timer_forgets() -> None:
    counting = replace(UNIT, range_rule=replace(RANGE, debounce=UpDownCounter(4, 1, 127)))
    bumps = picture(HEIGHTS, BAND, CONTACT, counting, ROUGH)
    assert _at(bumps, RestKind.LOADED) > 0.9


def test_more_patience_never_sets_a_code_sooner() -> None:
    chances = []
    for hold_s in (0.0, 0.1, 0.2, 0.5, 1.0, 3.0):
        unit = replace(UNIT, range_rule=replace(RANGE, debounce=ContinuousTimer(hold_s)))
        made = picture(HEIGHTS, BAND, CONTACT, unit, road_of("C", 60.0))
        chances.append([item.chance for item in made.rests])
    assert np.all(np.diff(np.array(chances), axis=0) <= 1e-12)


def test_a_longer_drive_is_never_less_likely_to_set_a_code() -> None:
    unit = replace(UNIT, range_rule=replace(RANGE, debounce=ContinuousTimer(0.3)))
    made = [
        picture(HEIGHTS, BAND, CONTACT, unit, road_of("B", 60.0), minutes=minutes) for minutes in (5.0, 60.0)
    ]
    for short, long in zip(made[0].rests, made[1].rests, strict=True):
        assert long.chance >= short.chance


def test_four_times_the_speed_moves_the_wheel_twice_as_far() -> None:
    slow, fast = (picture(HEIGHTS, BAND, CONTACT, UNIT, Road(RoadClass.C, speed)) for speed in (20.0, 80.0))
    assert fast.rests[1].rms_mm == pytest.approx(2.0 * slow.rests[1].rms_mm)
    assert fast.rests[1].rms_mm == pytest.approx(10.374, abs=1e-3)  # closed form, class C at 80 km/h


def test_the_sensor_of_the_other_side_sees_the_same() -> None:
    mirrored = VehicleHeights(TwoPoints((0.0, 100.0), (100.0, -100.0), Up.FALLING), 50.0, HEIGHTS.rests)
    one = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    other = picture(mirrored, Interval(54.0, 60.0), CONTACT, UNIT, SMOOTH)
    for left, right in zip(one.rests, other.rests, strict=True):
        assert left.visits.share == pytest.approx(right.visits.share)
        assert left.chance == pytest.approx(right.chance)


def test_a_parked_vehicle_in_the_band_is_judged_by_how_the_contact_stands() -> None:
    still = BandContact((OPEN,), (Contact(RuleKind.RANGE, 0.0, 0.0, 60.0),), 12, ("006",))
    assert _at(picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH), RestKind.PARKED) > 0.99
    assert _at(picture(HEIGHTS, BAND, still, UNIT, SMOOTH), RestKind.PARKED) == 0.0


def test_the_ranges_hold_the_value_between_them() -> None:
    for road in ROADS:
        for item in picture(HEIGHTS, BAND, CONTACT, UNIT, road).rests:
            assert item.share_over_class.start <= item.visits.share <= item.share_over_class.stop
            assert item.chance_over_class.start <= item.chance <= item.chance_over_class.stop


def test_the_distribution_that_is_drawn_sums_to_one_and_to_the_share_in_the_band() -> None:
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, ROUGH)
    height_mm = np.linspace(-200.0, 200.0, 40_001)
    for item in made.rests:
        density = made.density_per_mm(item, height_mm)
        if item.rest.standing:
            assert not density.any()
            continue
        assert np.trapezoid(density, height_mm) == pytest.approx(1.0, abs=1e-6)
        within = (height_mm >= made.band_mm.start) & (height_mm <= made.band_mm.stop)
        assert np.trapezoid(density[within], height_mm[within]) == pytest.approx(item.visits.share, abs=1e-4)


def test_the_rule_that_would_set_a_code_does_and_a_more_patient_one_does_not() -> None:
    weak = Contact(RuleKind.RANGE, 0.2, 0.03, 5.0)
    contact = BandContact((weak,), (weak,), 12, ())
    made = picture(HEIGHTS, BAND, contact, UNIT, SMOOTH)
    found = hold_that_sets(made, RuleKind.RANGE)
    assert found is not None
    hold_s, where = found
    assert where in made.rests
    for held, expected in ((hold_s, True), (hold_s + UNIT.tick_s, False)):
        unit = replace(UNIT, range_rule=replace(RANGE, debounce=ContinuousTimer(held)))
        again = picture(HEIGHTS, BAND, contact, unit, SMOOTH)
        assert (max(item.chance for item in again.rests) >= 0.5) is expected
    assert hold_that_sets(made, RuleKind.RATE) is None


def test_changing_road_height_or_rules_changes_the_words() -> None:
    base = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    lower = VehicleHeights(HEIGHTS.geometry, 45.0, HEIGHTS.rests[1:3])
    patient = replace(UNIT, range_rule=replace(RANGE, debounce=ContinuousTimer(30.0)))
    others = [
        picture(HEIGHTS, BAND, CONTACT, UNIT, ROUGH),
        picture(lower, BAND, CONTACT, UNIT, SMOOTH),
        picture(HEIGHTS, BAND, CONTACT, patient, SMOOTH),
    ]
    for other in others:
        assert road_summary(other) != road_summary(base)


def test_the_words_carry_the_numbers() -> None:
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    said = road_summary(made)
    assert "smooth motorway at 110 km/h" in said
    assert "loaded height (14 mm down)" in said
    assert "The calculated chance of a code within 30 min is" in said
    assert "off-road height (40 mm up)" in said
    details = [rest_details(made, item) for item in made.rests]
    assert "stands in the band" in details[0]
    assert "times a kilometre" in details[2]
    assert "does not come into the band" in details[3]
    assert LEFT_OUT in caveats([made])
    assert "12 crossings" in caveats([made])


def test_one_sentence_says_where_it_comes_most_and_how_it_is_at_the_normal_height() -> None:
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    driven = [item for item in made.rests if not item.rest.standing]
    most = max(driven, key=lambda item: item.visits.share)
    assert most.rest.kind is RestKind.LOADED
    share = about_words(most.share_over_class)
    assert in_short(made).startswith(
        f"Calculated: at loaded height (14 mm down) the sensor is in the band {share} of the time, at normal"
    )
    assert "come and go" in what_follows(made)
    assert "The calculated chance of a code within 30 min is" in what_follows(made)
    assert "smooth motorway at 110 km/h, not measured" in of_whom(made)


def test_no_single_figure_stands_where_the_roads_of_a_class_give_a_range() -> None:
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    for item in made.rests:
        over, told = item.share_over_class, str(about_words(item.share_over_class))
        if item.rest.standing or over.stop < 0.01 or share_words(over.start) == share_words(over.stop):
            continue
        alone = f"band {share_words(item.visits.share)} of the time"
        for said in (in_short(made), road_summary(made), customer_words([made])):
            assert alone not in said
        assert f"{told} of the time at {item.rest.name} height" in road_summary(made)
    assert "by calculation the sensor is in the band" in road_summary(made)


def test_never_is_said_only_where_the_roughest_road_of_the_class_comes_there_neither() -> None:
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    driven = [item for item in made.rests if not item.rest.standing]
    seldom = tuple(
        replace(
            item, visits=replace(item.visits, share=0.0), per_km=0.0, share_over_class=Interval(0.0, 0.06)
        )
        for item in driven
    )
    on_some = replace(made, rests=seldom)
    assert "up to about 6 % of the time" in in_short(on_some)
    assert "never" not in road_summary(on_some)
    nowhere = replace(
        made, rests=tuple(replace(item, share_over_class=Interval(0.0, 0.001)) for item in seldom)
    )
    assert "at none of the heights" in in_short(nowhere)
    assert "never in the band" in road_summary(nowhere)


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [
        (0.862, 0.998, "about 86 to over 99 %"),
        (0.03, 0.18, "about 3 to 18 %"),
        (0.002, 0.05, "up to about 5 %"),
        (0.0, 0.004, "less than 1 %"),
        (0.995, 1.0, "over 99 %"),
        (0.401, 0.404, "about 40 %"),
        (0.0, 1.0, "under 1 to over 99 %"),
    ],
)
def test_a_range_is_said_with_both_its_ends_and_never_surer(low: float, high: float, words: str) -> None:
    assert about_words(Interval(low, high)) == words


def test_the_sentence_promises_no_coming_and_going_where_there_is_none() -> None:
    far = picture(HEIGHTS, Interval(90.0, 95.0), CONTACT, UNIT, SMOOTH)  # 80 mm up: no height is near
    assert in_short(far).startswith("Calculated: at none of the heights")
    assert "come and go" not in what_follows(far)
    everywhere = picture(HEIGHTS, Interval(5.0, 95.0), CONTACT, UNIT, SMOOTH)
    assert "come and go" not in what_follows(everywhere)
    alone = picture(VehicleHeights(HEIGHTS.geometry, 43.0, ()), BAND, CONTACT, UNIT, SMOOTH)
    assert "at normal height" not in in_short(alone).partition("the sensor")[2]
    assert "come and go" not in what_follows(alone)


def test_where_no_code_sets_the_words_say_which_rule_would() -> None:
    weak = Contact(RuleKind.RANGE, 0.2, 0.03, 5.0)
    made = picture(HEIGHTS, BAND, BandContact((weak,), (weak,), 12, ()), UNIT, ROUGH)
    assert "out of limits 20 % of the time, 30 ms at a stretch" in what_would([made])
    none = Contact(RuleKind.RANGE, 0.0, 0.0, 5.0)
    made = picture(HEIGHTS, BAND, BandContact((none,), (none,), 12, ()), UNIT, ROUGH)
    assert what_would([made]) == "In the band the reading never left the limits."


def test_a_band_without_width_and_a_drive_that_nobody_makes_are_refused_with_a_sentence() -> None:
    with pytest.raises(VehicleError, match="the band has no width"):
        picture(HEIGHTS, Interval(40.0, 40.0), CONTACT, UNIT, SMOOTH)
    for minutes in (0.0, 1e6, float("nan")):
        with pytest.raises(VehicleError, match="the drive must last 1 to 600 minutes"):
            picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH, minutes=minutes)


def test_the_picture_is_there_in_a_fifth_of_a_second() -> None:
    picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    taken = []
    for road in ROADS:
        begun = time.perf_counter()
        picture(HEIGHTS, BAND, CONTACT, UNIT, road)
        taken.append(time.perf_counter() - begun)
    assert min(taken) < 0.2
