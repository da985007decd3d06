"""Sensors whose output is the same at every feed: nothing of the feed may be divided out of it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Role, Step
from analysis.comparison.mirrored import mirrored_survey
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.diagnosis.profiles import Contact, load_profile
from analysis.intervals import Interval
from analysis.reports.findings_report import findings_report
from analysis.reports.quantities import breakup_unit
from analysis.reports.report_pictures import TRACK, picture
from analysis.reports.subject import Subject
from app.errands.text_report import report_text
from tests.diagnosis.examples import RATE_HZ, channel, standing, sweep, worn
from tests.signals.examples import Floats

ABSOLUTE, SHARE = "generic-non-ratiometric", "generic-ratiometric"
GROUND_V = 0.012
BAND = Interval(42.0, 48.0)


def _dipping(size: int, *, depth_v: float = 0.7) -> Floats:
    """A feed that dips for 30 ms, fifteen times."""
    reference_v = np.full(size, 5.0)
    for first in np.linspace(0.03 * size, 0.97 * size, 15).astype(int):
        reference_v[first : first + round(0.03 * RATE_HZ)] -= depth_v
    return reference_v


def _absolute(travel: Floats, reference_v: Floats | float, *, opened: Floats | None = None) -> Capture:
    """A sweep of a sensor that puts out 5 V at the end of its travel, whatever feeds it."""
    share = travel / 100.0 if opened is None else travel / 100.0 * (1.0 - opened)
    volts = {
        Role.SIGNAL: GROUND_V + 5.0 * share,
        Role.REFERENCE: np.broadcast_to(np.asarray(reference_v, np.float64), travel.shape),
        Role.GROUND: np.full(len(travel), GROUND_V),
    }
    channels = [channel(role, item, seed=60 + index) for index, (role, item) in enumerate(volts.items())]
    return make_capture([*standing(), make_record("004", 1.0 / RATE_HZ, channels, step=Step.SWEEP)])


def _signal_events(found: Findings) -> int:
    return sum(Role.SIGNAL in event.roles for event in found.events)


def test_the_generic_one_has_no_track_to_wear_and_keeps_the_limits_of_the_feed() -> None:
    absolute, share = load_profile(ABSOLUTE), load_profile(SHARE)
    assert not absolute.ratiometric
    assert absolute.contact is Contact.CONTACTLESS
    assert absolute.limits == share.limits


def test_a_dip_of_the_feed_is_not_divided_out_of_an_output_that_does_not_follow_it() -> None:
    path = sweep(8)
    capture = _absolute(path, _dipping(len(path)))
    surveys = {name: examine(capture, profile=name).surveys[0] for name in (ABSOLUTE, SHARE)}
    truth = np.interp(surveys[ABSOLUTE].paths[0].time_s, (np.arange(len(path)) + 0.5) / RATE_HZ, path)
    away = {
        name: float(np.abs(survey.paths[0].travel_percent - truth).max()) for name, survey in surveys.items()
    }
    assert away[ABSOLUTE] < 0.5
    assert away[SHARE] > 4.0 * away[ABSOLUTE]  # what the wrong profile makes of the same volts


def test_a_dip_of_the_feed_is_a_fault_of_the_reference_and_is_not_said_to_be_in_the_signal() -> None:
    path = sweep(8)
    found = examine(_absolute(path, _dipping(len(path))), profile=ABSOLUTE)
    assert found.verdict.code is VerdictCode.REFERENCE_FAULT
    assert "does not go with it" in found.verdict.summary
    assert "is a share of it" not in found.verdict.summary
    assert _signal_events(found) == 0
    assert found.bands == ()


@pytest.mark.parametrize("reference_v", [4.85, 5.0, 5.15])
def test_the_feed_moves_neither_the_band_nor_its_volts(reference_v: float) -> None:
    path = sweep(8)
    found = examine(_absolute(path, reference_v, opened=worn(path, BAND, seed=3)), profile=ABSOLUTE)
    band = max(found.bands, key=lambda item: item.confidence)
    assert found.verdict.code is VerdictCode.SENSOR_OUTPUT_FAULT  # no track is known to be in it
    assert band.travel.start == pytest.approx(BAND.start, abs=0.75)
    assert band.travel.stop == pytest.approx(BAND.stop, abs=0.75)
    assert band.volts.start == pytest.approx(band.travel.start * 0.05, abs=1e-6)


def test_break_up_is_found_though_the_feed_dips_at_the_same_time() -> None:
    path = sweep(8)
    found = examine(
        _absolute(path, _dipping(len(path), depth_v=0.15), opened=worn(path, BAND, seed=3)), profile=ABSOLUTE
    )
    surest = max(found.bands, key=lambda item: item.confidence)
    assert surest.confidence >= 0.5
    assert surest.travel.overlap(BAND) > 0.8 * BAND.length


def test_a_sound_one_on_a_steady_feed_is_found_sound() -> None:
    assert examine(_absolute(sweep(8), 5.0), profile=ABSOLUTE).verdict.code is VerdictCode.NO_FAULT_FOUND


def test_its_ends_are_held_against_its_own_volts_however_high_the_feed() -> None:
    base = load_profile("throttle")
    profile = replace(base, ratiometric=False)
    for reference_v in (4.85, 5.15):
        capture = _absolute(sweep(8, low=10.0, high=80.0), reference_v)
        absolute = {item.code: item for item in examine(capture, profile=profile).checks}
        scaled = {item.code: item for item in examine(capture, profile=base).checks}
        assert absolute["high_end"].value == pytest.approx(4.0, abs=0.01)
        assert absolute["high_end"].upper_limit == base.limits["high_end"].upper
        assert scaled["high_end"].upper_limit != base.limits["high_end"].upper


def _told(found: Findings, capture: Capture) -> str:
    """The evidence as text, and what stands below the customer's picture."""
    shown = picture(Subject(capture, found), TRACK, None)
    assert shown is not None
    return f"{report_text(findings_report(found, capture), 'x.h5')} {shown.caption}"


@pytest.mark.parametrize("reference_v", [4.85, 5.15])
def test_break_up_is_said_to_be_a_share_of_the_stated_volts_and_never_of_what_is_applied(
    reference_v: float,
) -> None:
    path = sweep(8)
    capture = _absolute(path, reference_v, opened=worn(path, BAND, seed=3))
    told = {name: _told(examine(capture, profile=name), capture) for name in (ABSOLUTE, SHARE)}
    assert "% of 5.00 V cannot be seen" in told[ABSOLUTE]
    assert "in % of 5.00 V, along the sensor's travel" in told[ABSOLUTE]
    for share in ("applied voltage", "of the supply", "of the reference", "of the feed"):
        assert share not in told[ABSOLUTE]
    assert "% of the applied voltage cannot be seen" in told[SHARE]
    assert "in % of the applied voltage, along the sensor's travel" in told[SHARE]
    assert "of 5.00 V" not in told[SHARE]


def test_two_sensors_on_one_scale_are_called_by_what_both_are_a_share_of() -> None:
    path = sweep(8)
    capture = _absolute(path, 5.0)
    absolute, share = (examine(capture, profile=name).surveys[0] for name in (ABSOLUTE, SHARE))
    assert breakup_unit(absolute, None) == breakup_unit(absolute) == "break-up in % of 5.00 V"
    assert breakup_unit(share, share) == breakup_unit() == "break-up in % of the applied voltage"
    assert breakup_unit(absolute, share) == "break-up in % of the output over the whole travel"
    assert breakup_unit(mirrored_survey(absolute)) == breakup_unit(absolute)
