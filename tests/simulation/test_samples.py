"""The sample captures agree with their registry and with the simulation that made them."""

from __future__ import annotations

import hashlib
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.diagnosis.findings import VerdictCode
from analysis.simulation.registry import TRUTHS_NAME, SampleTruth, read_truths, truths_text
from analysis.simulation.sample_visits import SAMPLES
from analysis.simulation.sample_workshop import Sample
from analysis.simulation.samples import FOLDER, made

TRUTHS = {truth.file: truth for truth in read_truths(FOLDER / TRUTHS_NAME)}
NAMES = [sample.file for sample in SAMPLES]


def test_registry_folder_and_simulation_name_the_same_files() -> None:
    assert sorted(TRUTHS) == sorted(NAMES) == sorted(path.name for path in FOLDER.glob("*.h5"))


def test_together_they_stay_below_eight_megabytes() -> None:
    assert sum(path.stat().st_size for path in FOLDER.iterdir()) < 8_000_000


@pytest.mark.parametrize("name", NAMES)
def test_the_file_is_the_one_that_was_registered(name: str) -> None:
    assert hashlib.sha256((FOLDER / name).read_bytes()).hexdigest() == TRUTHS[name].sha256


@pytest.mark.parametrize("sample", SAMPLES, ids=NAMES)
def test_the_file_holds_what_the_simulation_makes(sample: Sample) -> None:
    capture, truth = made(sample)
    assert TRUTHS[sample.file] == SampleTruth.of(sample.file, TRUTHS[sample.file].sha256, truth)
    with open_capture(FOLDER / sample.file) as stored:
        assert stored.capture.capture_id == capture.capture_id
        assert stored.capture.text("vehicle") == capture.text("vehicle")
        for record, wanted in zip(stored.capture.records, capture.records, strict=True):
            assert record.step is wanted.step
            for channel in wanted.channels:
                assert channel.role is not None
                twin = record.channel(channel.role)
                assert twin is not None
                counts, expected = (item.source.read(0, len(item)).astype(int) for item in (twin, channel))
                # another processor may round another way: a count in a thousand may differ
                assert np.mean(counts != expected) < 1e-3


def test_every_fault_that_a_demo_needs_is_there_with_its_bands_shown() -> None:
    codes = {truth.code for truth in TRUTHS.values()}
    assert codes == {
        VerdictCode.WORN_TRACK,
        VerdictCode.NO_FAULT_FOUND,
        VerdictCode.SIGNAL_WIRING,
        VerdictCode.GROUND_FAULT,
        VerdictCode.REFERENCE_FAULT,
        VerdictCode.MEASUREMENT_PROBLEM,
    }
    for truth in TRUTHS.values():
        assert bool(truth.bands) == (truth.code is VerdictCode.WORN_TRACK)
        assert all(band.shown == band.crossings >= 6 for band in truth.bands)


def test_names_and_titles_do_not_tell_the_answer() -> None:
    telling = ("worn", "wire", "broken", "ground", "fault", "dip", "slip", "clumsy", "good", "bad", "band")
    for sample in SAMPLES:
        text = f"{sample.file} {sample.scenario.title}".lower()
        assert not [word for word in telling if word in text]


def test_writing_a_sample_again_gives_the_same_bytes(tmp_path: Path) -> None:
    capture, _ = made(SAMPLES[-1])
    write_capture(capture, tmp_path / "one.h5")
    write_capture(capture, tmp_path / "two.h5")
    assert (tmp_path / "one.h5").read_bytes() == (tmp_path / "two.h5").read_bytes()


def test_the_registry_survives_its_own_text(tmp_path: Path) -> None:
    (tmp_path / TRUTHS_NAME).write_text(truths_text(list(TRUTHS.values())), encoding="utf-8")
    assert read_truths(tmp_path / TRUTHS_NAME) == tuple(TRUTHS.values())


def test_the_axle_that_was_driven_says_that_its_engine_ran() -> None:
    with open_capture(FOLDER / "W1096-rear-axle-heights.h5") as opened:
        said = {item.label: item.attributes["engine"] for item in opened.capture.records}
    assert said.pop("loaded boot, driven round the block") == "running"
    assert set(said.values()) == {"off"}  # what is swept or bounced by hand stands in the workshop
