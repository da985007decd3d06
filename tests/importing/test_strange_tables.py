"""Tables in layouts of nobody: right at the first try, or it is said exactly what to choose."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from tests.importing.more_unseen_tables import MORE_UNSEEN
from tests.importing.strange_tables import FIFTH, FIRST, FOURTH, SECOND, SEVENTH, SIXTH, THIRD, Strange
from tests.importing.unseen_tables import UNSEEN

EVERY = [*FIRST, *SECOND, *THIRD, *FOURTH, *FIFTH, *SIXTH, *SEVENTH, *UNSEEN, *MORE_UNSEEN]


@pytest.mark.parametrize("strange", EVERY, ids=lambda item: item.name)
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
        assert len(opened.capture.records) == strange.records
        for record in opened.capture.records:
            assert record.sample_interval_s == pytest.approx(strange.interval_s, rel=1e-9)
            assert {item.role for item in record.channels} == set(strange.expected)
            for role, volts in strange.expected.items():
                channel = record.channel(role)
                assert channel is not None
                np.testing.assert_allclose(channel.volts(), volts, rtol=1e-12)


STARTED = {
    "time of day beside a word": "09:14:07.500",
    "over midnight": "23:59:59.995",
    "date and time in two columns": "2026-03-04T09:14:07.500",
    "a dotted date with the time": "2026-03-04T09:14:07.500",
    "month first and afternoon": "2026-03-04T14:14:07.500",
    "a year of two digits": "2026-03-04T09:14:07.500",
    "milliseconds since 1970": "2026-03-04T09:14:07.500+00:00",
    "days of a spreadsheet": "2026-03-04T09:14:08.966",  # a day is 46085.384826 from the end of 1899 on
    "times before the trigger": "",
    "hours": "",
}


@pytest.mark.parametrize("name", STARTED)
def test_a_record_says_when_it_began_and_counts_from_there(name: str, tmp_path: Path) -> None:
    (strange,) = [item for item in EVERY if item.name == name]
    (tmp_path / "table.txt").write_bytes(strange.raw)
    import_capture([tmp_path / "table.txt"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.attributes.get("started", "") == STARTED[name]
        before_s = -0.005 if name == "times before the trigger" else 0.0
        assert record.first_sample_s == pytest.approx(before_s, abs=1e-9)


def test_records_between_gaps_say_when_each_began(tmp_path: Path) -> None:
    rows = [f"2026-03-04 09:{minute}:{n / 1000:06.3f};{1 + n % 3}" for minute in (14, 16) for n in range(30)]
    (tmp_path / "t.csv").write_text("when;signal\n" + "\n".join(rows) + "\n")
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        first, second = opened.capture.records
        assert second.attributes["started"] == "2026-03-04T09:16:00.000"
        assert (first.first_sample_s, second.first_sample_s) == (0.0, 120.0)
