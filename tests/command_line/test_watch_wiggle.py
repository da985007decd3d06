"""``wornband watch``: that the harness was wiggled in a record at rest is said by the technician."""

from __future__ import annotations

import io
import os
import pty
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from analysis.captures.model import Step
from analysis.captures.reading import open_capture
from app.command_line import main
from app.errands.keyboard import keyboard
from app.errands.watching import watch_folder
from tests.watching.tables import tables

_SAMPLE = "W1041-rear-left-height.h5"


class _EndedError(Exception):
    """Ends a watch that would go on."""


@pytest.fixture
def job(tmp_path: Path) -> Path:
    """A folder with all that has to come before a wiggle test is asked for, and two records at rest."""
    made, folder = tables(tmp_path / "made", _SAMPLE), tmp_path / "job"
    folder.mkdir()
    rest = [made["hold"][0], made["hold"][0]]
    for place, table in enumerate([*made["ground"], *made["reference"], *made["sweep"], *rest]):
        target = folder / f"{place:02d}.csv"
        shutil.copy(table, target)
        os.utime(target, (1e9 + place, 1e9 + place))
    return folder


def _step(capture: Path) -> Step | None:
    with open_capture(capture) as opened:
        return opened.capture.records[0].step


def _last(job: Path) -> Path:
    return max(job.glob("*.csv"))


def _watched(job: Path, answers: Iterator[str]) -> tuple[str, str]:
    out, err = io.StringIO(), io.StringIO()
    looks = iter(range(4))

    def wait(_seconds: float) -> None:
        if next(looks, None) is None:
            raise _EndedError

    with pytest.raises(_EndedError):
        watch_folder(
            job, None, None, once=False, out=out, err=err, wait=wait, typed=lambda: next(answers, "")
        )
    return out.getvalue(), err.getvalue()


def test_a_letter_typed_while_it_watches_makes_the_record_at_rest_a_wiggle_test(job: Path) -> None:
    before: list[Step | None] = []

    def answers() -> Iterator[str]:
        yield ""
        yield "what?\n"
        before.append(_step(job / f"{_last(job).name}.h5"))
        yield "w\n"

    said, errors = _watched(job, answers())
    name = _last(job).name
    assert f"{name}: the arm rests; type w and Enter if you wiggled the harness in it" in said
    assert said.count(f"{name}: taken as a wiggle test") == 1
    assert before == [None]
    assert _step(job / f"{name}.h5") is Step.WIGGLE
    assert "Wiggle the harness" not in said.splitlines()[-1]
    assert errors == ""


def test_a_file_is_what_its_name_says_where_the_call_says_so(
    job: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    named = job / "99-Wiggle.csv"
    _last(job).rename(named)
    assert main(["watch", str(job), "--once", "--step", "*wiggle*=wiggle"]) == 0
    said = capsys.readouterr().out
    assert _step(job / "99-Wiggle.csv.h5") is Step.WIGGLE
    assert "Wiggle the harness" not in said.splitlines()[-1]


def test_where_nobody_can_type_the_option_is_named(job: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["watch", str(job), "--once"]) == 0
    assert f"{_last(job).name}: the arm rests; save such files" in capsys.readouterr().out


def test_a_step_that_there_is_not_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["watch", str(tmp_path), "--step", "*=shake"]) == 2
    assert "there is no step shake" in capsys.readouterr().err


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no terminals of this kind (pty)")
def test_what_was_typed_is_read_without_waiting_for_it(monkeypatch: pytest.MonkeyPatch) -> None:
    typing, terminal = pty.openpty()
    with os.fdopen(terminal, "r") as screen:
        monkeypatch.setattr(sys, "stdin", screen)
        typed = keyboard()
        assert typed is not None
        assert typed() == ""
        os.write(typing, b"w\n")
        assert typed() == "w\n"
        assert typed() == ""
    os.close(typing)


def test_where_there_is_no_terminal_nobody_is_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO())
    assert keyboard() is None
