"""What the findings list: bands with their crossings, coverage, events, records; and probabilities."""

from __future__ import annotations

from dataclasses import fields, replace
from itertools import pairwise

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Step
from analysis.diagnosis.confidence import calibration, verdict_probabilities
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Band, Findings, Result, VerdictCode
from analysis.diagnosis.hypotheses import Features
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, STEP_V, bursts, record, standing, sweep, visit, worn
from tests.signals.examples import Floats

BAND = Interval(42.0, 48.0)


def _worn_visit() -> Capture:
    path = sweep(8)
    return make_capture([*standing(), record("004", Step.SWEEP, path, opened=worn(path, BAND, seed=4))])


def _band(found: Findings) -> Band:
    return max(found.bands, key=lambda band: band.confidence)


def test_each_crossing_of_a_band_carries_the_time_at_which_the_arm_was_there() -> None:
    band, path = _band(examine(_worn_visit())), sweep(8)
    assert [item.record for item in band.crossings] == ["004"] * 8
    for item in band.crossings:
        middle = path[round(item.time.centre * RATE_HZ)]
        assert band.travel.widened(1.0).contains(float(middle))
        assert 0.0 < item.time.length < 0.2
    starts = [item.time.start for item in band.crossings]
    assert starts == sorted(starts)


def test_passes_are_the_crossings_and_smoothness_is_the_worst_of_them() -> None:
    band = _band(examine(_worn_visit()))
    assert band.passes == len(band.crossings) == 8
    assert band.noisy_passes == sum(item.noisy for item in band.crossings)
    assert band.output_smoothness_percent == max(item.breakup_percent for item in band.crossings)
    # The contact opens to ground, so the worst departure is where the arm was: up to 48 % of the feed.
    assert band.output_smoothness_percent == pytest.approx(48.0, abs=2.0)


def test_volts_of_a_band_are_its_travel_on_the_feed_that_was_measured() -> None:
    band = _band(examine(_worn_visit()))
    assert band.volts.start == pytest.approx(band.travel.start * (5.0 - 0.012) / 100.0, abs=0.005)
    assert band.volts.stop == pytest.approx(band.travel.stop * (5.0 - 0.012) / 100.0, abs=0.005)


def _pulled(target_v: float | None) -> Capture:
    """The same worn track whose open contact falls to a voltage; to either side by turns without one."""
    capture = _worn_visit()
    swept, path = capture.records[3], sweep(8)
    opened = worn(path, BAND, seed=4) > 0
    either = np.where(np.arange(len(path)) // 4 % 2 == 0, 0.0, 5.0)
    volts = either if target_v is None else np.full(len(path), target_v)

    def changed(item: Channel) -> Channel:
        if item.role is not Role.SIGNAL:
            return item
        raw = item.source.read(0, len(item)).copy()
        raw[opened] = np.rint(volts[opened] / STEP_V).astype(np.int16)
        return replace(item, source=ArraySource(raw))

    turned: Record = replace(swept, channels=tuple(changed(item) for item in swept.channels))
    return make_capture([*capture.records[:3], turned])


@pytest.mark.parametrize(("target_v", "side"), [(0.0, "ground"), (5.0, "reference"), (None, "both")])
def test_the_side_that_the_signal_falls_to_is_told(target_v: float | None, side: str) -> None:
    assert _band(examine(_pulled(target_v))).falls_towards == side


def test_coverage_counts_the_crossings_of_every_stretch() -> None:
    path: Floats = np.concatenate([sweep(4), sweep(2, low=10.0, high=40.0)])
    spans = examine(make_capture([record("001", Step.SWEEP, path)])).coverage
    at = {
        place: next(s.passes for s in spans if s.travel.contains(place)) for place in (20.0, 35.0, 60.0, 85.0)
    }
    assert at == {20.0: 6, 35.0: 6, 60.0: 4, 85.0: 4}
    assert all(one.travel.stop <= other.travel.start for one, other in pairwise(spans))
    assert examine(make_capture(standing())).coverage == ()


def test_events_tell_time_depth_place_and_whether_a_band_explains_them() -> None:
    found = examine(_worn_visit())
    inside = [item for item in found.events if item.in_band]
    assert len(inside) >= 8
    for item in inside:
        assert item.roles == (Role.SIGNAL,)
        assert item.depth_v < -1.5  # from about 2.2 V to ground
        assert item.travel_percent is not None
        assert _band(found).travel.widened(1.0).contains(item.travel_percent)
    order = [(item.record, item.time.start) for item in found.events]
    assert order == sorted(order)


def test_events_of_a_wire_that_opens_belong_to_no_band() -> None:
    found = examine(visit(opened=bursts(len(sweep(6)), seed=3)))
    assert len(found.events) >= 5
    assert not any(item.in_band for item in found.events)


def test_each_record_has_one_line_in_the_order_of_the_capture() -> None:
    found = examine(_worn_visit())
    assert [item.record for item in found.record_outcomes] == ["001", "002", "003", "004"]
    results = [item.result for item in found.record_outcomes]
    assert results == [Result.PASS, Result.PASS, Result.PASS, Result.FAIL]
    assert found.record_outcomes[3].text == "breaks up in the band on 8 crossings"
    clean = examine(visit(travel=sweep(4))).record_outcomes
    assert clean[3].text == "4 strokes, clean"


# -- probabilities --------------------------------------------------------------------------------

NOTHING = Features(**{item.name: 0.0 for item in fields(Features)})


def test_probabilities_of_the_explanations_add_up_to_one_and_none_is_certain() -> None:
    shares = verdict_probabilities(replace(NOTHING, place=12.0, place_share=1.0), calibration())
    assert sum(shares.values()) == pytest.approx(1.0, abs=1e-9)
    assert all(0.0 < share < 0.9999 for share in shares.values())


@pytest.mark.parametrize(
    ("feature", "values", "code"),
    [
        ("measurement", (0.0, 0.5, 1.0), VerdictCode.MEASUREMENT_PROBLEM),
        ("reference_level", (-2.0, 1.0, 6.0), VerdictCode.REFERENCE_FAULT),
        ("ground_level", (-2.0, 1.0, 6.0), VerdictCode.GROUND_FAULT),
        ("reference_dips", (0.0, 2.0, 6.0), VerdictCode.REFERENCE_FAULT),
        ("ground_lifts", (0.0, 2.0, 6.0), VerdictCode.GROUND_FAULT),
        ("place", (-4.0, 2.0, 12.0), VerdictCode.WORN_TRACK),
        ("at_rest", (0.0, 1.0, 3.0), VerdictCode.SIGNAL_WIRING),
        ("out_of_range", (0.0, 1.0, 3.0), VerdictCode.OUT_OF_RANGE),
    ],
)
def test_more_of_what_an_explanation_predicts_makes_it_likelier(
    feature: str, values: tuple[float, ...], code: VerdictCode
) -> None:
    base = replace(NOTHING, reference_level=-2.0, ground_level=-2.0, place=-4.0)
    shares = [
        verdict_probabilities(replace(base, **{feature: value}), calibration())[code] for value in values
    ]
    assert shares == sorted(shares)
    assert shares[-1] > shares[0]
