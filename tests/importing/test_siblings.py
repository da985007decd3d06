"""Files of one visit help each other: a wire that rests in one is what the sweep of another shows."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes


def _table(path: Path, volts: np.ndarray, heading: str = "t [s];A;B") -> Path:
    rows = "".join(f"{n / 1000:.3f};{v:.4f};{5 + 0.001 * (n % 3):.3f}\n" for n, v in enumerate(volts))
    path.write_text(f"{heading}\n{rows}")
    return path


RESTING_V = np.full(300, 2.95)
SWEPT_V = 2.5 + 2.0 * np.sin(np.arange(300) / 40.0)


def _roles(path: Path) -> list[set[Role | None]]:
    with open_capture(path) as opened:
        return [{channel.role for channel in record.channels} for record in opened.capture.records]


def test_a_wire_at_rest_is_what_the_sweep_of_the_other_file_shows(tmp_path: Path) -> None:
    files = [_table(tmp_path / "1.csv", RESTING_V), _table(tmp_path / "2.csv", SWEPT_V)]
    first, _ = import_capture(files, tmp_path / "a.h5")
    assert _roles(tmp_path / "a.h5") == [{Role.SIGNAL, Role.REFERENCE}] * 2
    (reason,) = [str(item.reason) for item in first.plan.channels if item.role is Role.SIGNAL]
    assert reason == "it shows nothing by itself; in 2.csv the same column was found to be that"


def test_alone_it_stays_out(tmp_path: Path) -> None:
    (one,) = import_capture([_table(tmp_path / "1.csv", RESTING_V)], tmp_path / "a.h5")
    assert _roles(tmp_path / "a.h5") == [{Role.REFERENCE}]
    assert [name for name, _ in one.plan.left_out] == ["A"]


def test_other_columns_say_nothing_about_it(tmp_path: Path) -> None:
    files = [_table(tmp_path / "1.csv", RESTING_V), _table(tmp_path / "2.csv", SWEPT_V, "t [s];C;D")]
    import_capture(files, tmp_path / "a.h5")
    assert _roles(tmp_path / "a.h5")[0] == {Role.REFERENCE}


def test_what_was_said_by_hand_stands(tmp_path: Path) -> None:
    files = [_table(tmp_path / "1.csv", RESTING_V), _table(tmp_path / "2.csv", SWEPT_V)]
    import_capture(files, tmp_path / "a.h5", Wishes(channels={"B": Role.REFERENCE}))
    assert _roles(tmp_path / "a.h5") == [{Role.REFERENCE}] * 2


def test_a_file_without_any_known_wire_is_asked_about_only_where_none_helps(tmp_path: Path) -> None:
    rows = "".join(f"{n / 1000:.3f};2.9{n % 3}\n" for n in range(300))
    (tmp_path / "1.csv").write_text("t [s];A\n" + rows)
    moving = "".join(f"{n / 1000:.3f};{v:.4f}\n" for n, v in enumerate(SWEPT_V))
    (tmp_path / "2.csv").write_text("t [s];A\n" + moving)
    with pytest.raises(ImportingError, match="no column looks like a wire"):
        import_capture([tmp_path / "1.csv"], tmp_path / "a.h5")
    import_capture([tmp_path / "1.csv", tmp_path / "2.csv"], tmp_path / "a.h5")
    assert _roles(tmp_path / "a.h5") == [{Role.SIGNAL}] * 2
