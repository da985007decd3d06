"""What the tables of another stranger brought up: runs of a stopwatch, of other rates, counted cycles."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Capture, Role
from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.guesses import counts_cycles
from analysis.importing.understood import Understood

_ROWS = 400
_SIGNAL_V = [round(2.4 + 1.6 * float(np.sin(n / 30)), 3) for n in range(_ROWS)]


def _import(folder: Path, text: str) -> tuple[Understood, list[tuple[float, list[float]]], Capture]:
    (folder / "t.csv").write_text(text, encoding="utf-8")
    (understood,) = import_capture([folder / "t.csv"], folder / "a.h5")
    with open_capture(folder / "a.h5") as opened:
        records = [
            (record.sample_interval_s, channel.volts().tolist())
            for record in opened.capture.records
            for channel in record.channels
            if channel.role is Role.SIGNAL
        ]
        return understood, records, opened.capture


def _stopwatch(seconds: float) -> str:
    return f"{int(seconds // 60):02d}:{seconds % 60:06.3f}"


@pytest.mark.parametrize("heading", ["Elapsed", "run", "Time"])
def test_a_stopwatch_that_starts_again_makes_a_record_of_each_run(heading: str, tmp_path: Path) -> None:
    run = "".join(f"{_stopwatch(n / 50)};4.998;{v}\n" for n, v in enumerate(_SIGNAL_V))
    understood, records, _ = _import(tmp_path, f"{heading};ref V;signal V\n" + run + run + run)
    assert [interval for interval, _ in records] == pytest.approx([0.02] * 3)
    assert [volts for _, volts in records] == [pytest.approx(_SIGNAL_V)] * 3
    assert any("a record each" in note for note in understood.notes)


def test_runs_of_other_rates_with_times_of_their_own_become_a_record_each(tmp_path: Path) -> None:
    def run(name: str, ms: int) -> str:
        rows = "".join(f"{n * ms / 1000:.3f};5.001;{v}\n" for n, v in enumerate(_SIGNAL_V))
        return f"Run {name}\nInterval: {ms} ms\nTime (s);Reference (V);Signal (V)\n{rows}\n"

    _, records, _ = _import(tmp_path, run("slow", 10) + run("fast", 4) + run("slow again", 10))
    assert [interval for interval, _ in records] == pytest.approx([0.01, 0.004, 0.01])
    assert [volts for _, volts in records] == [pytest.approx(_SIGNAL_V)] * 3


def test_cycles_that_a_bench_counts_are_no_wire(tmp_path: Path) -> None:
    rows = "".join(f"{n * 5};{1 + n // 90};5.002;{v}\n" for n, v in enumerate(_SIGNAL_V))
    _, records, capture = _import(tmp_path, "t [ms];Lap;U_REF [V];U_SIG [V]\n" + rows)
    ((interval, volts),) = records
    assert interval == pytest.approx(0.005)
    assert volts == pytest.approx(_SIGNAL_V)
    assert {channel.role for channel in capture.records[0].channels} == {Role.REFERENCE, Role.SIGNAL}


def test_a_column_counts_cycles_only_where_nothing_says_that_it_is_a_wire() -> None:
    cycles = np.repeat(np.arange(1.0, 7.0), 50)
    assert counts_cycles("Zyklus", "", cycles)
    assert not counts_cycles("Zyklus", "V", cycles)
    assert not counts_cycles("CH2", "", cycles)
    assert not counts_cycles("signal", "", cycles)
    assert not counts_cycles("Zyklus", "", cycles + 0.5)
    assert not counts_cycles("Zyklus", "", cycles[::-1])
    assert not counts_cycles("Zyklus", "", np.ones(300))
