from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp

from analysis.captures.memory import make_capture, make_channel, make_record, stand_in_id
from analysis.captures.model import Capture, Channel, Record, Role, Scaling, Step
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from tests.captures.examples import small_capture

INTEGERS = ("i1", "u1", "i2", "u2", "i4")
FLOATS = ("f4", "f8")
finite = st.floats(-1e6, 1e6, allow_nan=False)


@st.composite
def scalings(draw: st.DrawFn, dtype: str) -> Scaling:
    if dtype in INTEGERS:
        bounds = np.iinfo(dtype)
        raw = st.none() | st.integers(int(bounds.min), int(bounds.max)).map(float)
    else:
        raw = st.none() | st.integers(-1000, 1000).map(float)
    factor = draw(finite.filter(lambda value: value != 0.0))
    return Scaling(factor, draw(finite), draw(raw), draw(raw), draw(raw))


@st.composite
def channels(draw: st.DrawFn, role: Role, size: int) -> Channel:
    dtype = draw(st.sampled_from(INTEGERS + FLOATS))
    samples = draw(hnp.arrays(dtype, size))
    error = st.none() | st.floats(0.0, 0.1)
    return make_channel(
        role, samples, draw(scalings(dtype)), gain_error=draw(error), offset_error_v=draw(error)
    )


@st.composite
def records(draw: st.DrawFn, name: str) -> Record:
    size = draw(st.integers(2, 300))
    roles = draw(st.lists(st.sampled_from(list(Role)), min_size=1, max_size=3, unique=True))
    words = st.text(st.characters(codec="utf-8", exclude_characters="\0"), max_size=20).map(str.rstrip)
    return make_record(
        name,
        draw(st.floats(1e-9, 1e3)),
        [draw(channels(role, size)) for role in roles],
        step=draw(st.none() | st.sampled_from(list(Step))),
        label=draw(words),
        first_sample_s=draw(finite),
        attributes={"loads": draw(words), "temperature": draw(finite)},
    )


def assert_same_channel(found: Channel, meant: Channel) -> None:
    raw, expected = found.source.read(0, len(found)), meant.source.read(0, len(meant))
    assert raw.dtype == expected.dtype
    assert raw.tobytes() == expected.tobytes()
    assert found.scaling == meant.scaling
    assert (found.name, found.role) == (meant.name, meant.role)
    assert (found.gain_error, found.offset_error_v) == (meant.gain_error, meant.offset_error_v)
    assert {**found.attributes, "long_name": ""} == {**meant.attributes, "long_name": ""}


def assert_same_record(found: Record, meant: Record) -> None:
    bare = replace(found, channels=())
    assert bare == replace(meant, channels=())
    for one, other in zip(found.channels, meant.channels, strict=True):
        assert_same_channel(one, other)


def assert_same_capture(found: Capture, meant: Capture) -> None:
    assert (found.capture_id, found.title) == (meant.capture_id, meant.title)
    assert {**found.attributes, "created": ""} == {**meant.attributes, "created": ""}
    for one, other in zip(found.records, meant.records, strict=True):
        assert_same_record(one, other)


@settings(max_examples=60, deadline=None)
@given(first=records("001"), second=records("002"))
def test_what_is_written_is_read_back_to_the_last_bit(
    tmp_path_factory: pytest.TempPathFactory, first: Record, second: Record
) -> None:
    path = tmp_path_factory.mktemp("round") / "capture.h5"
    meant = make_capture([first, second], title="t", attributes={"note": "n"})
    write_capture(meant, path)
    with open_capture(path) as opened:
        assert_same_capture(opened.capture, meant)


def test_a_capture_with_everything_comes_back_with_everything(tmp_path: Path) -> None:
    write_capture(small_capture(), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        assert_same_capture(opened.capture, small_capture())
        assert opened.capture.path == tmp_path / "a.h5"
        assert opened.capture.sha256 == ""


def test_a_capture_read_from_one_file_can_be_written_to_another(tmp_path: Path) -> None:
    first = write_capture(small_capture(), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        second = write_capture(opened.capture, tmp_path / "b.h5")
    assert first == second


def test_an_unknown_role_and_an_unknown_step_survive_a_copy(tmp_path: Path) -> None:
    odd = make_channel(None, np.arange(10.0), name="hum", attributes={"role": "antenna"})
    record = make_record(
        "001", 1.0, [odd, make_channel(Role.SIGNAL, np.arange(10.0))], attributes={"step": "x"}
    )
    write_capture(make_capture([record]), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        found = opened.capture.records[0]
        assert found.step is None
        assert found.attributes["step"] == "x"
        assert found.channels[0].role is None
        assert found.channels[0].attributes["role"] == "antenna"


def test_missing_samples_are_not_numbers_in_volts_and_over_range_ones_stay(tmp_path: Path) -> None:
    scaling = Scaling(0.001, 0.0, fill_value=-1, valid_min=0, valid_max=4095)
    raw = np.array([-1, 0, 5, 4095, 4096], dtype=np.int16)
    write_capture(make_capture([make_record("001", 1.0, {Role.SIGNAL: (raw, scaling)})]), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        channel = opened.capture.records[0].channels[0]
        np.testing.assert_array_equal(channel.volts(), [np.nan, 0.0, 0.005, 4.095, 4.096])
        assert channel.scaling.over_range(raw).tolist() == [False, True, False, True, True]


def test_a_stand_in_id_depends_on_the_samples_and_not_on_the_file() -> None:
    records = small_capture().records
    other = make_record("001", 2e-3, {Role.GROUND: (np.zeros(1000, dtype=np.float32), Scaling())})
    assert stand_in_id(records) == stand_in_id(small_capture().records)
    assert stand_in_id(records) != stand_in_id((other, records[1]))


def test_reading_beyond_the_ends_is_clipped(tmp_path: Path) -> None:
    write_capture(small_capture(), tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        source = opened.capture.records[0].channels[0].source
        assert len(source.read(-5, 3)) == 3
        assert len(source.read(998, 2000)) == 2
        assert len(source.read(5000, 6000)) == 0
        assert len(source.read(10, 5)) == 0
