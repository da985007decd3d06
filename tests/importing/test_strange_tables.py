"""Tables in layouts of nobody: right at the first try, or it is said exactly what to choose."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from tests.importing.strange_tables import FIRST, FOURTH, SECOND, THIRD, Strange


@pytest.mark.parametrize("strange", [*FIRST, *SECOND, *THIRD, *FOURTH], ids=lambda item: item.name)
def test_a_strange_table_is_right_or_says_what_to_choose(strange: Strange, tmp_path: Path) -> None:
    source = tmp_path / "table.txt"
    source.write_bytes(strange.raw)
    if strange.says:
        with pytest.raises(ImportingError, match=strange.says):
            import_capture([source], tmp_path / "a.h5")
        if strange.wishes == Wishes():
            return  # nothing that is chosen helps: it must be saved in another way, as is said
    import_capture([source], tmp_path / "a.h5", strange.wishes)
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(strange.interval_s, rel=1e-9)
        assert {item.role for item in record.channels} == set(strange.expected)
        for role, volts in strange.expected.items():
            channel = record.channel(role)
            assert channel is not None
            np.testing.assert_allclose(channel.volts(), volts, rtol=1e-12)
