"""The short form of ``python -m tests.robustness``: damage, kills and long use, a little of each."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from analysis.errors import CaptureError, ImportingError
from tests.robustness.__main__ import COUNTS, KILLS, ROUNDS
from tests.robustness.checksum import lookup3
from tests.robustness.kills import run_kills
from tests.robustness.soak import LEAKS, run_soak
from tests.robustness.tasks import TASKS
from tests.robustness.trials import Tally, run_trials
from tests.robustness.worker import damaged_file, spent_s

linux = pytest.mark.skipif(
    not sys.platform.startswith("linux"), reason="memory, handles and threads are counted through /proc"
)


@linux
@pytest.mark.parametrize("kind", COUNTS)
def test_no_damaged_file_crashes_hangs_swells_or_ends_in_a_traceback(kind: str) -> None:
    found = run_trials(kind, COUNTS[kind][0])
    assert found.bad == []
    assert found.count == COUNTS[kind][0]
    assert found.refused > 0 or kind == "settings"  # which count as none where they are damaged


@linux
@pytest.mark.parametrize("kind", KILLS)
def test_a_kill_while_saving_leaves_the_old_file_or_the_new_one_whole(kind: str) -> None:
    found = run_kills(kind, KILLS[kind][0])
    assert (found.damaged, found.lost) == (0, 0)


@linux
def test_long_use_keeps_no_file_open_and_no_thread_alive() -> None:
    found = run_soak(ROUNDS[0])
    assert not found.grows, str(found)


@linux
@pytest.mark.parametrize("leak", LEAKS)
def test_long_use_sees_what_is_kept_each_round(leak: str) -> None:
    found = run_soak(200, leak, window=False)
    assert found.grows, str(found)


@linux
def test_long_use_sees_nothing_where_nothing_is_kept() -> None:
    found = run_soak(200, window=False)
    assert not found.grows, str(found)


@linux
@pytest.mark.parametrize(
    ("use", "trouble"),
    [
        ("os.abort()", "crashes"),
        ("exec('while True: pass')", "hangs"),
        ("len(b'x' * 600_000_000)", "swollen"),
        ("1 / 0", "tracebacks"),
    ],
)
def test_the_watch_sees_what_it_watches_for(use: str, trouble: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("ROBUSTNESS_USE", use)
    found = run_trials("watched", 1)
    assert found.count == 1
    assert len(getattr(found, trouble)) == 1


def test_the_watch_counts_what_is_well() -> None:
    tally = Tally("profile", taken=2, refused=3)
    assert tally.count == 5
    assert tally.bad == []


def test_the_checksum_is_that_of_its_author() -> None:
    # Bob Jenkins, lookup3.c (public domain), driver5: "Four score and seven years ago" with 0 is 17770551.
    assert lookup3(b"Four score and seven years ago") == 0x17770551


@pytest.mark.parametrize("number", [322, 1358, 3275])
def test_a_damaged_mat_file_that_ends_its_reader_is_refused(tmp_path: Path, number: int) -> None:
    """These three ended the process that read them with SciPy; they are read in one of its own since."""
    task, whole = TASKS["table"], tmp_path / "whole"
    whole.mkdir()
    victim = damaged_file(task, sorted(task.make(whole)), tmp_path, f"table 1 {number}")
    assert victim.suffix == ".mat"
    with pytest.raises(ImportingError):
        task.use(victim)


@linux
def test_texts_that_are_read_in_circles_cost_a_file_less_than_a_second(tmp_path: Path) -> None:
    """This file has a heap of texts that leads back to itself; reading it took two seconds."""
    task, whole = TASKS["capture, foreign texts"], tmp_path / "whole"
    whole.mkdir()
    victim = damaged_file(task, sorted(task.make(whole)), tmp_path, "capture, foreign texts 1 782")
    before_s = spent_s()
    with pytest.raises(CaptureError, match="damaged"):
        task.use(victim)
    assert spent_s() - before_s < 1.5
