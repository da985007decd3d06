"""Whatever is wrong with a file is said in one sentence: what, where, and what to do."""

from __future__ import annotations

import os
import subprocess
import sys
import zlib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import h5py
import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.errors import CaptureError, NewerFormatError
from tests.captures.examples import counts, small_capture, write_plain


def refusal(path: Path) -> CaptureError:
    """The error that opening gives, which must be one sentence with a problem and an action."""
    with pytest.raises(CaptureError) as caught:
        open_capture(path)
    sentence = str(caught.value)
    assert "\n" not in sentence
    assert caught.value.problem
    assert caught.value.action
    assert "Traceback" not in sentence
    assert len(sentence) < 250
    return caught.value


def test_a_missing_file(tmp_path: Path) -> None:
    assert "no such file" in str(refusal(tmp_path / "a.h5"))


def test_a_folder(tmp_path: Path) -> None:
    assert "folder" in str(refusal(tmp_path))


def test_an_empty_file(tmp_path: Path) -> None:
    (tmp_path / "a.h5").touch()
    assert "empty" in str(refusal(tmp_path / "a.h5"))


@pytest.mark.parametrize(
    "content", [b"time,volts\n0,1.5\n", b"\x89HDF\r\n\x1a", np.random.default_rng(7).bytes(5000)]
)
def test_a_file_that_is_not_hdf5(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "a.h5").write_bytes(content)
    assert "not HDF5" in str(refusal(tmp_path / "a.h5"))


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_a_pipe_does_not_make_us_wait(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "a.h5")
    assert "pipe" in str(refusal(tmp_path / "a.h5"))


@pytest.mark.ordinary_rights
@pytest.mark.skipif(os.name != "posix", reason="rights are taken away in another way there")
def test_a_file_without_the_right_to_read_it(tmp_path: Path) -> None:
    write_plain(tmp_path / "a.h5").chmod(0)
    assert "right" in str(refusal(tmp_path / "a.h5"))


def test_no_right_to_read_is_said_as_such(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = write_plain(tmp_path / "a.h5")
    monkeypatch.setattr(os, "access", lambda *_: False)
    assert "no right" in str(refusal(path))


def test_another_hdf5_file(tmp_path: Path) -> None:
    with h5py.File(tmp_path / "a.h5", "w") as file:
        file["entry/data"] = np.zeros((3, 3))
    assert "no capture" in str(refusal(tmp_path / "a.h5"))


@pytest.mark.parametrize("share", [0.05, 0.3, 0.7, 0.99])
def test_a_truncated_file(tmp_path: Path, share: float) -> None:
    write_capture(small_capture(), tmp_path / "whole.h5")
    content = (tmp_path / "whole.h5").read_bytes()
    (tmp_path / "a.h5").write_bytes(content[: int(len(content) * share)])
    assert "cut short" in str(refusal(tmp_path / "a.h5"))


def test_a_file_that_another_process_is_still_writing(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    writer = (
        "import h5py, sys; file = h5py.File(sys.argv[1], 'a', locking=True); print(1, flush=True); input()"
    )
    with subprocess.Popen(
        [sys.executable, "-c", writer, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    ) as process:
        assert process.stdout is not None
        assert process.stdout.readline()
        error = str(refusal(path))
        process.communicate(b"\n", timeout=20)
    assert "writing" in error


def test_a_later_version(tmp_path: Path) -> None:
    error = refusal(write_plain(tmp_path / "a.h5", format_version=2))
    assert isinstance(error, NewerFormatError)
    assert "update" in error.action


@pytest.mark.parametrize("version", [0, -1, 0.5, np.nan])
def test_a_version_that_never_was(tmp_path: Path, version: float) -> None:
    assert "version" in str(refusal(write_plain(tmp_path / "a.h5", format_version=version)))


def test_no_records(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        del file["records/001"]
    assert "no records" in str(refusal(path))
    with h5py.File(path, "a") as file:
        del file["records"]
    assert "no records" in str(refusal(path))


def test_records_that_are_a_link_out_of_the_file(tmp_path: Path) -> None:
    write_plain(tmp_path / "other.h5")
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        del file["records"]
        file["records"] = h5py.ExternalLink("other.h5", "/records")
    assert "no records" in str(refusal(path))


@pytest.mark.parametrize(("size", "said"), [(0, "no samples"), (1, "one sample")])
def test_too_few_samples(tmp_path: Path, size: int, said: str) -> None:
    assert said in str(refusal(write_plain(tmp_path / "a.h5", np.zeros(size))))


@pytest.mark.parametrize("role", [None, "antenna"])
def test_no_known_role(tmp_path: Path, role: str | None) -> None:
    assert "role" in str(refusal(write_plain(tmp_path / "a.h5", role=role)))


@pytest.mark.parametrize("value", [0.0, -1e-3, np.nan, np.inf, None, "0.001", [1.0, 2.0]])
def test_an_interval_that_is_none(tmp_path: Path, value: Any) -> None:
    error = str(refusal(write_plain(tmp_path / "a.h5", sample_interval=value)))
    assert "sample_interval" in error
    assert "record 001" in error


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("scale_factor", 0.0),
        ("scale_factor", np.nan),
        ("scale_factor", np.inf),
        ("scale_factor", "0.1"),
        ("scale_factor", [0.1, 0.2]),
        ("add_offset", np.nan),
        ("_FillValue", "none"),
        ("valid_max", [0, 4095]),
        ("gain_error", np.inf),
        ("offset_error", "small"),
        ("units", None),
        ("units", "A"),
        ("units", np.array([1, 2])),
        ("role", np.array([1, 2])),
    ],
)
def test_a_channel_attribute_that_makes_no_sense_is_named(tmp_path: Path, key: str, value: Any) -> None:
    error = str(refusal(write_plain(tmp_path / "a.h5", **{key: value})))
    assert key in error or repr(value) in error
    assert "sensor of record 001" in error


def test_a_reference_where_a_text_should_be(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5", units=None)
    with h5py.File(path, "a") as file:
        file["records/001/sensor"].attrs["units"] = file["records"].ref
    assert "units" in str(refusal(path))


def test_channels_of_unequal_length(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        file["records/001/short"] = counts(999)
        file["records/001/short"].attrs.update(file["records/001/sensor"].attrs)
    error = str(refusal(path))
    assert "differ in length" in error
    assert "999" in error


def compound(group: h5py.Group, path: Path) -> None:
    group["sensor"] = np.zeros(5, dtype=[("a", "i2"), ("b", "f4")])


def two_dimensions(group: h5py.Group, path: Path) -> None:
    group["sensor"] = np.zeros((5, 2))


def no_dimension(group: h5py.Group, path: Path) -> None:
    group["sensor"] = 5.0


def texts(group: h5py.Group, path: Path) -> None:
    group["sensor"] = ["1.0", "2.0"]


def references(group: h5py.Group, path: Path) -> None:
    group.create_dataset("sensor", data=[group.ref], dtype=h5py.ref_dtype)


def nothing_stored(group: h5py.Group, path: Path) -> None:
    group.create_dataset("sensor", shape=(10**15,), dtype="i2", chunks=(1000,))


def nothing_stored_and_no_chunks(group: h5py.Group, path: Path) -> None:
    group.create_dataset("sensor", shape=(10**15,), dtype="f8")


def enormous_chunks(group: h5py.Group, path: Path) -> None:
    group.create_dataset("sensor", shape=(1000,), maxshape=(None,), dtype="f8", chunks=(400_000_000,))


def virtual(group: h5py.Group, path: Path) -> None:
    there = h5py.VirtualLayout(shape=(5,), dtype="f8")
    there[:] = h5py.VirtualSource(path.with_name("other.h5"), "x", shape=(5,))
    group.create_virtual_dataset("sensor", there)


def external(group: h5py.Group, path: Path) -> None:
    group.create_dataset("sensor", shape=(5,), dtype="f8", external=[(path.with_name("raw"), 0, 40)])


def unknown_filter(group: h5py.Group, path: Path) -> None:
    created = h5py.h5p.create(h5py.h5p.DATASET_CREATE)
    created.set_chunk((100,))
    created.set_filter(32_099, h5py.h5z.FLAG_OPTIONAL, (1,))
    space = h5py.h5s.create_simple((1000,))
    h5py.h5d.create(group.id, b"sensor", h5py.h5t.NATIVE_INT16, space, created)


@pytest.mark.parametrize(
    "store",
    [
        compound, two_dimensions, no_dimension, texts, references, nothing_stored,
        nothing_stored_and_no_chunks, enormous_chunks, virtual, external, unknown_filter,
    ],
)  # fmt: skip
def test_a_channel_that_is_no_plain_run_of_numbers(
    tmp_path: Path, store: Callable[[h5py.Group, Path], None]
) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        words = dict(file["records/001/sensor"].attrs)
        del file["records/001/sensor"]
        store(file["records/001"], path)
        file["records/001/sensor"].attrs.update(words)
    assert "sensor of record 001" in str(refusal(path))


def test_a_damaged_stretch_is_told_when_it_is_read_and_the_rest_stays_readable(tmp_path: Path) -> None:
    path = write_plain(tmp_path / "a.h5", counts(100), scale_factor=1.0)
    with h5py.File(path, "a") as file:
        file.attrs["capture_id"] = "1b671a64-40d5-491e-99b0-da01ff1f3341"
        words = dict(file["records/001/sensor"].attrs)
        del file["records/001/sensor"]
        sensor = file["records/001"].create_dataset(
            "sensor", data=np.arange(3000.0), chunks=(1000,), compression="gzip"
        )
        sensor.attrs.update(words)
        place = sensor.id.get_chunk_info(1)
    with path.open("r+b") as raw:
        raw.seek(place.byte_offset + place.size // 2)
        raw.write(b"\xff" * 40)
    with open_capture(path) as opened:
        channel = opened.capture.records[0].channel(Role.SIGNAL)
        assert channel is not None
        np.testing.assert_array_equal(channel.source.read(2000, 3000), np.arange(2000.0, 3000.0))
        with pytest.raises(CaptureError, match="damaged"):
            channel.source.read(0, 3000)


def test_samples_cannot_be_read_after_closing_and_closing_twice_is_fine(tmp_path: Path) -> None:
    opened = open_capture(write_plain(tmp_path / "a.h5"))
    opened.close()
    opened.close()
    assert opened.capture.records[0].name == "001"
    with pytest.raises(CaptureError, match="closed"):
        opened.capture.records[0].channels[0].volts()


@pytest.mark.parametrize("channels", [1, 8])
def test_a_small_file_that_unpacks_to_days_of_zeros_is_refused(channels: int, tmp_path: Path) -> None:
    """Half a megabyte of these took 2.8 GB and a minute and a half to examine."""
    path = write_plain(tmp_path / "a.h5")
    block = 1 << 20
    packed = zlib.compress(np.zeros(block, np.int16).tobytes(), 9)
    with h5py.File(path, "a") as file:
        group = file["records/001"]
        words = dict(group["sensor"].attrs)
        del group["sensor"]
        for number in range(channels):
            made = group.create_dataset(
                f"sensor {number}", (64 * block // channels,), "i2", chunks=(block,), compression="gzip"
            )
            for start in range(0, len(made), block):
                made.id.write_direct_chunk((start,), packed)
            made.attrs.update(words)
    assert path.stat().st_size < 200_000
    assert "which no recording packs into its size" in str(refusal(path))


def test_a_long_quiet_recording_is_no_bomb(tmp_path: Path) -> None:
    quiet = np.random.default_rng(1).random(40_000_000) < 0.03  # a count up, three times in a hundred
    record = make_record("001", 1e-3, {Role.SIGNAL: (quiet.astype(np.int16), Scaling(scale_factor=0.01))})
    write_capture(make_capture([record]), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        assert len(opened.capture.records[0]) == 40_000_000
