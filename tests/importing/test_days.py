"""A date beside a clock says on which day a record began; one that may be read in two ways says nothing."""

from __future__ import annotations

from datetime import datetime, timedelta
from pathlib import Path

import pytest

from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.understood import Understood

_FIRST = datetime(2027, 2, 17, 14, 59, 50)


def _started(
    folder: Path, form: str, first: datetime = _FIRST, *, newest_first: bool = False
) -> tuple[str, Understood]:
    moments = [first + timedelta(milliseconds=50 * n) for n in range(60)]
    rows = [f"{form.format(t=t)};{t:%H:%M:%S.%f};{1 + n / 20:.3f};5.01\n" for n, t in enumerate(moments)]
    text = "date;clock;signal [V];reference [V]\n" + "".join(reversed(rows) if newest_first else rows)
    (folder / "t.csv").write_text(text, encoding="utf-8")
    (understood,) = import_capture([folder / "t.csv"], folder / "a.h5")
    with open_capture(folder / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.05)
        return str(record.attributes["started"]), understood


@pytest.mark.parametrize(
    "form", ["{t:%d.%m.%Y}", "{t:%Y-%m-%d}", "{t:%Y/%m/%d}", "{t:%d/%m/%Y}", "{t:%m/%d/%Y}"]
)
def test_the_date_goes_into_when_a_record_began_and_is_not_said_to_be_left_out(
    form: str, tmp_path: Path
) -> None:
    started, understood = _started(tmp_path, form)
    assert started == "2027-02-17T14:59:50.000"
    assert understood.notes == ()


def test_a_record_over_midnight_begins_on_the_first_of_its_days(tmp_path: Path) -> None:
    started, _ = _started(tmp_path, "{t:%d.%m.%Y}", datetime(2027, 2, 17, 23, 59, 59))
    assert started == "2027-02-17T23:59:59.000"


def test_the_newest_row_first_changes_nothing(tmp_path: Path) -> None:
    started, _ = _started(tmp_path, "{t:%d.%m.%Y}", newest_first=True)
    assert started == "2027-02-17T14:59:50.000"


@pytest.mark.parametrize(
    ("form", "first"),
    [
        ("{t:%d/%m/%Y}", datetime(2027, 3, 4, 9)),
        ("{t:%d-%m-%y}", _FIRST),
        ("31.02.2027", _FIRST),
        ("17.2", _FIRST),
    ],
)
def test_a_date_that_may_be_another_or_is_none_is_left_aside(
    form: str, first: datetime, tmp_path: Path
) -> None:
    started, _ = _started(tmp_path, form, first)
    assert "T" not in started
