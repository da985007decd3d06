"""Captures of other writers: the least that the format asks for, and what they may do differently."""

from __future__ import annotations

import subprocess
from pathlib import Path

import h5py
import numpy as np
import pytest

from analysis.captures.model import Role, Step
from analysis.captures.overview import envelope
from analysis.captures.reading import open_capture, require_signal
from analysis.errors import CaptureError
from tests.captures.examples import counts, write_plain


def test_the_least_that_the_format_asks_for_opens_and_draws(tmp_path: Path) -> None:
    with open_capture(write_plain(tmp_path / "a.h5")) as opened:
        record = opened.capture.records[0]
        assert record.sample_interval_s == 1e-3
        assert record.first_sample_s == 0.0
        np.testing.assert_array_equal(record.channels[0].volts(), counts() * 0.0025)
        assert record.channels[0].role is Role.SIGNAL
        drawn = envelope(record.channels[0], 0, 1000, 10)
        assert drawn.maximum_v[0] == record.channels[0].volts(0, 100).max()
        require_signal(opened.capture)


def test_every_default_is_stated(tmp_path: Path) -> None:
    with open_capture(write_plain(tmp_path / "a.h5", scale_factor=None)) as opened:
        said = " | ".join(opened.assumptions)
    for word in ("no id", "no step", "no scale_factor", "accuracy"):
        assert word in said


def test_the_stand_in_id_is_the_same_however_the_file_is_compressed(tmp_path: Path) -> None:
    with h5py.File(write_plain(tmp_path / "a.h5")) as one, h5py.File(tmp_path / "b.h5", "w") as other:
        one.copy("records", other)
        other.attrs.update(one.attrs)
        del other["records/001/sensor"]
        packed = other.create_dataset(
            "records/001/sensor", data=one["records/001/sensor"][()], compression="lzf", chunks=(100,)
        )
        packed.attrs.update(one["records/001/sensor"].attrs)
    with open_capture(tmp_path / "a.h5") as one, open_capture(tmp_path / "b.h5") as other:
        assert one.capture.capture_id == other.capture.capture_id


@pytest.mark.parametrize(("unit", "factor"), [("V", 1.0), ("mV", 1e-3), ("kV", 1e3), ("millivolt", 1e-3)])
def test_a_channel_in_another_voltage_unit_is_converted(tmp_path: Path, unit: str, factor: float) -> None:
    path = write_plain(tmp_path / "a.h5", units=unit, scale_factor=2.5, add_offset=-100.0)
    with open_capture(path) as opened:
        np.testing.assert_allclose(
            opened.capture.records[0].channels[0].volts(), (counts() * 2.5 - 100.0) * factor, rtol=1e-12
        )


@pytest.mark.parametrize("dtype", [">i2", "<i4", "u1", "i8", ">f4", "f8", "f2"])
def test_every_plain_number_type_and_byte_order_is_read(tmp_path: Path, dtype: str) -> None:
    data = np.arange(100).astype(dtype)
    with open_capture(write_plain(tmp_path / "a.h5", data, scale_factor=1.0)) as opened:
        np.testing.assert_array_equal(opened.capture.records[0].channels[0].volts(), np.arange(100.0))


def test_what_is_unknown_is_ignored(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        file["records/001/photo"] = np.zeros((4, 4))
        file["records/001/temperature"] = np.zeros(7)
        file["records/001/names"] = ["a", "b"]
        file["records/001/warmth"] = np.zeros(3)
        file["records/001/warmth"].attrs.update({"role": "temperature", "units": "degC"})
        file["records/001/slow"] = np.zeros(3)
        file["records/001/slow"].attrs.update({"role": "pressure", "units": "V"})
        file["records/note"] = 5
        file.create_group("settings/deep")
        file.attrs["array"] = [1, 2, 3]
        file.attrs["reference"] = file["records"].ref
        file.attrs["made_up"] = "kept"
        file["records/elsewhere"] = h5py.ExternalLink("missing.h5", "/records/001")
        file["records/soft"] = h5py.SoftLink("/records/001")
        file["records/001/outside"] = h5py.ExternalLink("missing.h5", "/x")
    with open_capture(path) as opened:
        assert [item.name for item in opened.capture.records] == ["001"]
        assert [item.name for item in opened.capture.records[0].channels] == ["sensor"]
        assert opened.capture.text("made_up") == "kept"


def test_a_volts_channel_without_a_role_is_shown_and_not_judged(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        extra = file.create_dataset("records/001/extra", data=counts())
        extra.attrs["units"] = np.bytes_("V")
    with open_capture(path) as opened:
        assert [item.role for item in opened.capture.records[0].channels] == [None, Role.SIGNAL]
        assert any("extra" in item and "no role" in item for item in opened.assumptions)


def test_true_and_false_and_one_element_arrays_are_read_as_numbers(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5", sample_interval=np.array([0.5]))
    with h5py.File(path, "a") as file:
        file["records/001"].attrs["plugged"] = True
        file["records/001"].attrs["step"] = np.bytes_("sweep")
    with open_capture(path) as opened:
        record = opened.capture.records[0]
        assert record.sample_interval_s == 0.5
        assert record.attributes["plugged"] == 1
        assert record.step is Step.SWEEP


def test_texts_that_are_latin_1_are_read_as_latin_1(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        file.attrs["title"] = np.bytes_("5 µV".encode("latin-1"))
    with open_capture(path) as opened:
        assert opened.capture.title == "5 µV"


def test_an_empty_record_is_set_aside_and_said(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        file.copy("records/001", "records/002")
        del file["records/002/sensor"]
        file["records/002/sensor"] = np.empty(0, dtype="i2")
        file["records/002/sensor"].attrs.update(file["records/001/sensor"].attrs)
        file.create_group("records/003")
    with open_capture(path) as opened:
        assert [item.name for item in opened.capture.records] == ["001"]
        said = " | ".join(opened.assumptions)
        assert "record 002 holds no samples" in said
        assert "record 003 holds no channel" in said


def test_missing_and_over_range_samples_alone_are_no_reason_to_refuse(tmp_path: Path) -> None:
    with open_capture(write_plain(tmp_path / "a.h5", np.full(50, np.nan))) as opened:
        assert np.isnan(opened.capture.records[0].channels[0].volts()).all()
    path = write_plain(tmp_path / "b.h5", np.full(50, 4095, dtype="i2"), valid_max=np.int16(4095))
    with open_capture(path) as opened:
        channel = opened.capture.records[0].channels[0]
        assert channel.scaling.over_range(channel.source.read(0, 50)).all()


def test_a_ground_alone_is_a_capture_but_nothing_to_examine(tmp_path: Path) -> None:
    with (
        open_capture(write_plain(tmp_path / "a.h5", role="ground")) as opened,
        pytest.raises(CaptureError, match="signal"),
    ):
        require_signal(opened.capture)


def test_a_file_without_variable_texts_starts_no_process(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    fixed = {key: np.bytes_(text) for key, text in (("role", "signal"), ("units", "V"))}
    path = write_plain(tmp_path / "a.h5", format=np.bytes_("wornband-capture"), **fixed)

    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("a process was started")

    monkeypatch.setattr(subprocess, "run", refuse)
    with open_capture(path) as opened:
        assert opened.capture.records[0].channels[0].role is Role.SIGNAL
