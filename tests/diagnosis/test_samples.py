"""The sample captures, and a stranger's file: each gets its true verdict, each true band is met."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import h5py
import numpy as np
import pytest

from analysis.captures.reading import open_capture
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, Result, VerdictCode
from analysis.intervals import Interval
from analysis.simulation.registry import SampleBand, SampleTruth, read_truths
from tests.diagnosis.examples import RATE_HZ, sweep, worn
from tests.signals.examples import noise

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
TRUTHS = read_truths(SAMPLES / "truths.toml")
BANDS = [(truth, band) for truth in TRUTHS for band in truth.bands]


@cache
def _found(file: str) -> Findings:
    with open_capture(SAMPLES / file) as opened:
        return examine(opened.capture)


def test_the_samples_show_every_fault_that_the_trade_meets_most() -> None:
    codes = {truth.code for truth in TRUTHS}
    assert {"worn_track", "no_fault_found", "signal_wiring", "ground_fault", "reference_fault"} <= codes
    assert len(BANDS) >= 3


@pytest.mark.parametrize("truth", TRUTHS, ids=lambda truth: truth.file)
def test_each_sample_gets_its_true_verdict(truth: SampleTruth) -> None:
    verdict = _found(truth.file).verdict
    assert verdict.code == truth.code
    assert verdict.confidence >= 0.9


@pytest.mark.parametrize(("truth", "band"), BANDS, ids=lambda item: getattr(item, "file", ""))
def test_each_true_band_is_met_within_one_per_cent_at_each_edge(truth: SampleTruth, band: SampleBand) -> None:
    met = max(
        (item for item in _found(truth.file).bands if item.track == band.track),
        key=lambda item: item.confidence,
    )
    assert abs(met.travel.start - band.travel.start) <= 1.0
    assert abs(met.travel.stop - band.travel.stop) <= 1.0
    assert met.confidence >= 0.9
    # On a road the arm hovers about the band; crossings between which it did not leave it are one pass.
    assert met.noisy_passes >= 0.65 * band.shown


@pytest.mark.parametrize("truth", TRUTHS, ids=lambda truth: truth.file)
def test_no_crossing_is_said_to_break_up_by_nothing_and_the_time_of_each_holds_what_it_broke_up_by(
    truth: SampleTruth,
) -> None:
    findings = _found(truth.file)
    for band in findings.bands:
        survey = next(item for item in findings.surveys if item.role is band.track)
        inside = (survey.edges_percent[1:] > band.travel.start) & (
            survey.edges_percent[:-1] < band.travel.stop
        )
        for item in band.crossings:
            if band.confidence < 0.5 or not item.noisy:
                continue
            assert item.breakup_percent > survey.floor_percent, item
            # The arm may turn round in the band: it is one crossing, there and back, and the worst counts.
            met = [
                row
                for row, stroke in enumerate(survey.crossings)
                if stroke.record == item.record and stroke.time.overlap(item.time.widened(0.01)) > 0.0
            ]
            worst = max(float(np.nan_to_num(survey.breakup_percent[row][inside]).max()) for row in met)
            assert worst == pytest.approx(item.breakup_percent)


@pytest.mark.parametrize("truth", TRUTHS, ids=lambda truth: truth.file)
def test_no_sample_has_a_likely_band_that_is_not_true(truth: SampleTruth) -> None:
    for item in _found(truth.file).bands:
        if item.confidence >= 0.5:
            assert any(item.travel.overlap(band.travel) > 0 for band in truth.bands)


@pytest.mark.parametrize("truth", TRUTHS, ids=lambda truth: truth.file)
def test_no_travel_beyond_the_ends_of_the_track_is_said_to_be_tested(truth: SampleTruth) -> None:
    for span in _found(truth.file).coverage:
        assert 0.0 <= span.travel.start < span.travel.stop <= 100.0


def test_a_feed_at_its_level_that_moves_too_much_to_tell_is_not_said_to_be_near_its_limit() -> None:
    found = _found("W1080-rear-left-height.h5")
    level, steady = (
        next(check for check in found.checks if check.code == code)
        for code in ("reference_level", "reference_steadiness")
    )
    assert (level.result, steady.result) == (Result.PASS, Result.CANNOT_TELL)
    (said,) = [item.text for item in found.evidence if item.code == "reference_good"]
    assert said == (
        "The reference reads 5.00 V, but moves by 78 mV: too near the limit to tell whether it holds still."
    )


BAND = Interval(55.0, 60.0)


def _plain_file(path: Path, *, bad: bool) -> Path:
    """The least that the format card asks for, written with h5py alone."""
    travel = sweep(8)
    opened = worn(travel, BAND, seed=6) if bad else np.zeros(len(travel))
    volts = travel / 20.0 * (1.0 - opened) + noise(len(travel), 0.002)
    with h5py.File(path, "w") as file:
        file.attrs["format"] = "wornband-capture"
        file.attrs["format_version"] = 1
        record = file.create_group("records/001")
        record.attrs["sample_interval"] = 1.0 / RATE_HZ
        channel = record.create_dataset("probe", data=volts)
        channel.attrs["role"] = "signal"
        channel.attrs["units"] = "V"
    return path


def test_a_strangers_file_with_a_worn_track_is_analysed(tmp_path: Path) -> None:
    with open_capture(_plain_file(tmp_path / "plain.h5", bad=True)) as opened:
        found = examine(opened.capture)
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.bands[0].travel.start == pytest.approx(BAND.start, abs=1.0)
    assert found.bands[0].travel.stop == pytest.approx(BAND.stop, abs=1.0)
    assert found.path.endswith("plain.h5")


def test_a_strangers_file_with_a_sound_sensor_is_analysed(tmp_path: Path) -> None:
    with open_capture(_plain_file(tmp_path / "plain.h5", bad=False)) as opened:
        assert examine(opened.capture).verdict.code is VerdictCode.NO_FAULT_FOUND
