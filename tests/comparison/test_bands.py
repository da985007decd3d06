"""Bands looked up on both sides: what the counts show, and what they do not."""

from __future__ import annotations

from dataclasses import replace
from math import comb

import numpy as np
import pytest
from scipy.stats import fisher_exact
from statsmodels.stats.proportion import confint_proportions_2indep

from analysis.captures.model import ArraySource, Capture, Channel, Role
from analysis.comparison.bands import LIKELY, compare_bands
from analysis.comparison.compare import compare
from analysis.comparison.model import CHANCE, BandComparison, Change, Relation
from analysis.comparison.pairing import Pairing
from analysis.comparison.side import Side
from analysis.diagnosis.findings import Verdict, VerdictCode
from analysis.intervals import Interval
from analysis.reports.verdicts import WATCH_BELOW
from analysis.signals.proportions import fisher_exact_p
from tests.comparison.examples import BAND, side, side_of, swept
from tests.diagnosis.examples import Meter, sweep, visit, worn
from tests.signals.examples import Floats


def _likely(first: Side, second: Side, relation: Relation = Relation.BEFORE_AFTER) -> BandComparison:
    (found,) = [item for item in compare_bands(first, second, Pairing(relation)) if item.confidence >= LIKELY]
    return found


def test_a_band_that_a_new_sensor_does_not_have_is_gone() -> None:
    found = _likely(side(BAND), side())
    assert found.change is Change.GONE
    assert found.reasons == ()
    assert found.travel.overlap(BAND) > 0.8 * BAND.length
    assert (found.first.passes, found.first.noisy_passes) == (12, 12)
    assert (found.second.passes, found.second.noisy_passes) == (12, 0)
    assert found.first.confidence > 0.9
    assert found.second.confidence < 0.1


def test_the_other_way_round_it_has_appeared_by_the_same_numbers() -> None:
    there, back = _likely(side(BAND), side()), _likely(side(), side(BAND))
    assert back.change is Change.APPEARED
    assert back.p_value == there.p_value
    assert (back.first, back.second) == (there.second, there.first)
    assert back.share_difference.start == pytest.approx(-there.share_difference.stop)


def test_a_capture_beside_itself_shows_no_difference() -> None:
    found = _likely(side(BAND), side(BAND))
    assert found.change is Change.STILL_THERE
    assert found.first == found.second
    assert found.p_value == 1.0
    assert found.share_difference.contains(0.0)


def test_sound_sensors_have_no_likely_band_to_compare() -> None:
    found = compare_bands(side(), side(strokes=10), Pairing(Relation.BEFORE_AFTER))
    assert not [item for item in found if item.confidence >= LIKELY]


def test_an_after_that_never_went_there_shows_no_cure() -> None:
    found = _likely(side(BAND), side(high=50.0, strokes=16))
    assert found.change is Change.NOT_SHOWN
    assert found.second.passes == 0
    assert found.p_value == 1.0
    assert [str(item) for item in found.reasons] == ["it was not crossed after"]


def test_an_after_that_crossed_it_less_often_shows_no_cure_however_clear_the_counts() -> None:
    found = _likely(side(BAND), side(strokes=10))
    assert found.p_value < 1e-4
    assert found.change is Change.NOT_SHOWN
    assert [str(item) for item in found.reasons] == ["it was crossed 10 × after, 12 × before"]


def test_one_crossing_more_or_less_matters_for_a_cure_alone() -> None:
    found = _likely(side(BAND), side(strokes=10), Relation.LEFT_RIGHT)
    assert found.change is Change.GONE
    assert _likely(side(strokes=10), side(BAND)).change is Change.APPEARED


@pytest.mark.parametrize("seconds", [0.3, 3.0])
def test_an_after_at_another_speed_shows_no_cure(seconds: float) -> None:
    found = _likely(side(BAND), side(seconds=seconds))
    assert found.change is Change.NOT_SHOWN
    assert "% of travel a second" in str(found.reasons[0])
    ratio = found.second.speed_percent_per_s / found.first.speed_percent_per_s
    assert ratio == pytest.approx(1.0 / seconds, rel=0.15)


def test_an_after_sampled_at_a_third_of_the_rate_shows_no_cure() -> None:
    def thinned(one: Channel) -> Channel:
        return replace(one, source=ArraySource(one.source.read(0, len(one))[::3]))

    slow = side()
    records = tuple(
        replace(
            item,
            channels=tuple(thinned(one) for one in item.channels),
            sample_interval_s=3 * item.sample_interval_s,
        )
        for item in slow.capture.records
    )
    found = _likely(side(BAND), side_of(replace(slow.capture, records=records)))
    assert found.second.sample_rate_hz == pytest.approx(found.first.sample_rate_hz / 3)
    assert found.change is Change.NOT_SHOWN
    said = [str(item) for item in found.reasons]
    assert "it was sampled 667 times a second after, 2000 times before" in said


def test_an_after_by_a_recorder_that_could_not_have_seen_it_shows_no_cure() -> None:
    # A band at 20 % of travel falls by no more than that; a step of 1.3 V is 26 % of it.
    blind = swept((), sweep(12), meter=Meter(noise_v=0.02, step_v=1.3))
    found = _likely(side(Interval(20.0, 24.0)), side_of(blind))
    assert found.second.floor_percent > found.first.breakup_percent
    assert "could not have been seen after" in " ".join(str(item) for item in found.reasons)


def _in_conditions(made: Side, **said: str | float) -> Side:
    records = tuple(replace(item, attributes={**item.attributes, **said}) for item in made.capture.records)
    return replace(made, capture=replace(made.capture, records=records))


@pytest.mark.parametrize(
    ("before", "after", "reason"),
    [
        ({"engine": "on"}, {"engine": "off"}, "engine: off after, on before"),
        ({"loads": "blower, lamps"}, {}, "consumers switched on: not stated after"),
        ({"plugged": 1}, {"plugged": 0}, "sensor plugged in: no after, yes before"),
        ({"temperature": -5.0}, {"temperature": 21.0}, "the temperature differs by 26 °C"),
        ({}, {"engine": "on"}, ""),
        ({"temperature": 12.0}, {"temperature": 21.0}, ""),
        ({"engine": "off"}, {"engine": "off"}, ""),
    ],
)
def test_an_after_under_another_load_shows_no_cure(
    before: dict[str, str | float], after: dict[str, str | float], reason: str
) -> None:
    found = _likely(_in_conditions(side(BAND), **before), _in_conditions(side(), **after))
    assert found.change is (Change.NOT_SHOWN if reason else Change.GONE)
    assert [str(item) for item in found.reasons] == ([reason] if reason else [])


def test_few_crossings_show_no_difference() -> None:
    # 3 of 3 against 0 of 3: p = 2 / C(6, 3) = 0.1 by counting the tables.
    assert fisher_exact_p(3, 3, 0, 3) == pytest.approx(2.0 / comb(6, 3))
    found = _likely(side(BAND, strokes=3), side(strokes=3))
    assert (found.first.noisy_passes, found.second.noisy_passes) == (3, 0)
    assert found.p_value > CHANCE
    assert found.change is Change.NOT_SHOWN
    assert "no more than chance" in str(found.reasons[-1])


def test_a_band_that_is_less_bad_is_not_called_gone() -> None:
    band, mixed = side(BAND), visit_with_some_bad(sweep(12))
    found = _likely(band, side_of(mixed))
    assert 0 < found.second.noisy_passes < 6
    assert found.change is Change.LESS
    back = _likely(side_of(mixed), band)
    assert back.change is Change.MORE


def visit_with_some_bad(path: Floats) -> Capture:
    """Only the first three strokes break up: dirt that was wiped away."""
    opened = worn(path, BAND, seed=21)
    opened[len(path) // 4 :] = 0.0
    return visit(travel=path, opened=opened)


def test_the_test_of_the_counts_is_fishers_exact_one() -> None:
    # The lady who tasted tea, 3 of 4 against 1 of 4: p = 0.4857 (Fisher 1935; Agresti, Categorical Data
    # Analysis, 3.5.2; from memory), and scipy's own for the counts of a comparison.
    assert fisher_exact_p(3, 4, 1, 4) == pytest.approx(0.4857, abs=5e-5)
    found = _likely(side(BAND), side(strokes=14))
    table = np.array([[12, 0], [0, 14]])
    assert found.p_value == pytest.approx(fisher_exact(table).pvalue, rel=1e-12)
    assert found.p_value == pytest.approx(1.0 / comb(26, 12), rel=1e-9)


def test_the_interval_of_the_difference_is_statsmodels_newcombe() -> None:
    found = _likely(side(BAND), side(strokes=14))
    theirs = confint_proportions_2indep(0, 14, 12, 12, method="newcomb", compare="diff")  # type: ignore[no-untyped-call]
    assert (found.share_difference.start, found.share_difference.stop) == pytest.approx(theirs, abs=1e-9)


def test_two_bands_are_two_stretches_and_one_of_them_may_be_gone() -> None:
    other = Interval(25.0, 29.0)
    found = compare_bands(side(BAND, other), side(other), Pairing(Relation.BEFORE_AFTER))
    changes = {item.change for item in found if item.travel.overlap(BAND) > 0 and item.confidence >= LIKELY}
    kept = {item.change for item in found if item.travel.overlap(other) > 0 and item.confidence >= LIKELY}
    assert changes == {Change.GONE}
    assert kept == {Change.STILL_THERE}


def test_of_a_merely_possible_band_nothing_is_claimed() -> None:
    bad = side(BAND)
    weak = tuple(replace(item, confidence=0.3) for item in bad.findings.bands)
    doubted = replace(bad, findings=replace(bad.findings, bands=weak))
    found = compare_bands(doubted, side(), Pairing(Relation.BEFORE_AFTER))
    assert {item.change for item in found} == {Change.NOT_SHOWN}
    assert "gone" not in compare(doubted, side()).summary


def test_likely_means_the_same_as_in_the_report() -> None:
    assert LIKELY == WATCH_BELOW


def test_a_mirrored_sensor_has_its_band_at_the_same_place() -> None:
    turned = Interval(100.0 - BAND.stop, 100.0 - BAND.start)
    plain = side(turned)
    found = _likely(side(BAND), replace(plain, mirrored=True), Relation.LEFT_RIGHT)
    assert found.change is Change.STILL_THERE
    assert found.travel.overlap(BAND) > 0.8 * BAND.length
    assert found.second.noisy_passes == found.second.passes == 12
    assert _likely(side(BAND), side(), Relation.LEFT_RIGHT).change is Change.GONE
    apart = compare_bands(side(BAND), plain, Pairing(Relation.LEFT_RIGHT))
    assert len([item for item in apart if item.confidence >= LIKELY]) == 2


def test_two_records_of_one_capture_are_compared_by_their_own_crossings() -> None:
    paths = (sweep(6), sweep(6))
    opened = worn(paths[0], BAND, seed=21)
    made: Capture = visit(travel=paths[0], opened=opened)
    clean = visit(travel=paths[1]).records[-1]
    both = side_of(replace(made, records=(*made.records, replace(clean, name="005"))))
    found = _likely(replace(both, record="004"), replace(both, record="005"))
    assert (found.first.noisy_passes, found.first.passes) == (6, 6)
    assert (found.second.noisy_passes, found.second.passes) == (0, 6)
    assert found.change is Change.GONE
    with pytest.raises(KeyError, match="no record '9'"):
        replace(both, record="9").seen()


def test_nothing_is_said_beside_a_capture_with_a_measurement_problem() -> None:
    sound = side()
    verdict = Verdict(VerdictCode.MEASUREMENT_PROBLEM, 0.9, "In the air.")
    spoilt = replace(sound, findings=replace(sound.findings, verdict=verdict))
    found = _likely(side(BAND), spoilt)
    assert found.change is Change.NOT_SHOWN
    assert "measurement problem" in str(found.reasons[0])


def test_a_track_that_one_side_did_not_record_was_not_crossed_there() -> None:
    bad = side(BAND)
    moved = tuple(replace(item, track=Role.SECOND_SIGNAL) for item in bad.findings.bands)
    surveys = tuple(replace(item, role=Role.SECOND_SIGNAL) for item in bad.findings.surveys)
    other = replace(bad, findings=replace(bad.findings, bands=moved, surveys=surveys))
    found = _likely(other, side())
    assert found.second.passes == 0
    assert found.change is Change.NOT_SHOWN
