"""A table that nobody has seen before imports at the first try."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from tests.importing.odd_tables import ODD, REFERENCE_V, SIGNAL_V, Odd


@pytest.mark.parametrize("odd", ODD, ids=lambda odd: odd.name)
def test_an_odd_table_is_understood(odd: Odd, tmp_path: Path) -> None:
    source = tmp_path / "table.txt"
    source.write_bytes(odd.raw)
    import_capture([source], tmp_path / "a.h5", Wishes(interval_s=odd.interval_s))
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(1e-3, rel=1e-9)
        expected = {Role.SIGNAL: SIGNAL_V} | ({Role.REFERENCE: REFERENCE_V} if odd.reference else {})
        assert {item.role for item in record.channels} == set(expected)
        for role, volts in expected.items():
            channel = record.channel(role)
            assert channel is not None
            np.testing.assert_allclose(channel.volts(), volts, rtol=1e-12)
    assert sorted(item.name for item in tmp_path.iterdir()) == ["a.h5", "table.txt"]


def test_there_are_twenty_and_more() -> None:
    assert len({odd.name for odd in ODD}) >= 20


def test_a_first_row_that_could_count_the_columns_is_a_row_where_the_next_is_like_it(tmp_path: Path) -> None:
    source = tmp_path / "table.txt"
    source.write_text("0;1;5\n1;2;5\n2;1;5\n3;2;5\n".replace("0;1;5", "0;1;2"))
    wishes = Wishes(channels={"2": Role.SIGNAL}, time_column="1", units={"1": "s"})
    import_capture([source], tmp_path / "a.h5", wishes)
    with open_capture(tmp_path / "a.h5") as opened:
        np.testing.assert_array_equal(opened.capture.records[0].channels[0].volts(), [1.0, 2.0, 1.0, 2.0])
