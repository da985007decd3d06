"""Files whose tree is built to be walked for ever, or holds too much: opened or refused, at once."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

import h5py
import numpy as np
import pytest

from analysis.captures.reading import open_capture
from analysis.errors import CaptureError
from tests.captures.examples import write_plain

_LIMIT_S = 2.0  # of the processor, as the fuzzers have it


def nested(file: h5py.File) -> None:
    group = file["records/001"]
    for _ in range(3000):
        group = group.create_group("d")


def a_record_that_is_the_whole_file(file: h5py.File) -> None:
    file["records/002"] = file["/"]


def a_record_that_holds_all_records(file: h5py.File) -> None:
    file["records/001/again"] = file["records"]


def a_soft_link_to_itself(file: h5py.File) -> None:
    file["records/002"] = h5py.SoftLink("/records/002")


def a_channel_out_of_the_file(file: h5py.File) -> None:
    file["records/001/other"] = h5py.ExternalLink("/etc/hostname", "/x")


def texts_and_references_as_attributes(file: h5py.File) -> None:
    group = file["records/001"]
    group.attrs["many"] = ["a"] * 1000
    group.attrs["region"] = np.array([group["sensor"].regionref[0:2]], dtype=h5py.regionref_dtype)
    group.attrs["runs"] = np.array([np.arange(3), np.arange(9)], dtype=object).astype(h5py.vlen_dtype("i4"))
    group.attrs["opaque"] = np.void(b"\0\1\2")


@pytest.mark.parametrize(
    "build",
    [
        nested, a_record_that_is_the_whole_file, a_record_that_holds_all_records, a_soft_link_to_itself,
        a_channel_out_of_the_file, texts_and_references_as_attributes,
    ],
)  # fmt: skip
def test_what_stands_beside_the_channels_is_left_out_and_the_capture_opens(
    tmp_path: Path, build: Callable[[h5py.File], None]
) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a") as file:
        build(file)
    before_s = time.process_time()
    with open_capture(path) as opened:
        assert [item.name for item in opened.capture.records[0].channels] == ["sensor"]
        assert len(opened.capture.records) == 1
    assert time.process_time() - before_s < _LIMIT_S


def ten_thousand_groups(file: h5py.File) -> None:
    for number in range(10_001):
        file.create_group(f"records/{number + 2:06}")


def a_thousand_attributes(file: h5py.File) -> None:
    for number in range(1001):
        file["records/001"].attrs[f"a{number}"] = 1.0


@pytest.mark.parametrize(
    ("build", "said"), [(ten_thousand_groups, "more than 10,000"), (a_thousand_attributes, "more than 1,000")]
)
def test_more_than_anybody_records_is_refused(
    tmp_path: Path, build: Callable[[h5py.File], None], said: str
) -> None:
    path = write_plain(tmp_path / "a.h5")
    with h5py.File(path, "a", libver="latest") as file:
        build(file)
    before_s = time.process_time()
    with pytest.raises(CaptureError, match=said):
        open_capture(path)
    assert time.process_time() - before_s < _LIMIT_S
