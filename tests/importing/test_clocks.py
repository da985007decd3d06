"""Clocks of a whole block are read as cell by cell, to the last bit, or not at all."""

from __future__ import annotations

import numpy as np
import pyarrow as pa
import pytest

from analysis.importing.clocks import seconds_of_all
from analysis.importing.instants import seconds_of

FORMS = (
    "{h:02d}:{m:02d}:{s:02d}.{f:03d}",
    "{h:02d}:{m:02d}:{s:02d},{f:06d}",
    "{h:02d}:{m:02d}:{s:02d}",
    "{m:02d}:{s:02d}.{f:03d}",
    "04.03.2026 {h:02d}:{m:02d}:{s:02d},{f:03d}",
    "{d:02d}-Mar-2026 {h:02d}:{m:02d}:{s:02d}.{f:03d}",
    "2026-03-{d:02d}T{h:02d}:{m:02d}:{s:02d}.{f:09d}",
    "2026-03-{d:02d} {h:02d}:{m:02d}:{s:02d}.{f:03d}+01:00",
    "3/{d:02d}/2026 {t:02d}:{m:02d}:{s:02d}.{f:03d} PM",
)


def _cells(form: str) -> list[str]:
    random = np.random.default_rng(2)
    moments = np.sort(random.integers(0, 3 * 86_400_000, 400))
    return [
        form.format(
            d=1 + int(n) // 86_400_000,
            h=int(n) // 3_600_000 % 24,
            t=1 + int(n) // 3_600_000 % 12,
            m=int(n) // 60_000 % 60,
            s=int(n) // 1000 % 60,
            f=int(n) % 1000,
        )
        for n in moments
    ]


@pytest.mark.parametrize("form", FORMS)
def test_a_block_of_clocks_is_read_as_cell_by_cell(form: str) -> None:
    cells = _cells(form)
    found = seconds_of_all(pa.array(cells))
    if "+01:00" in form:
        assert found is None  # the zone ends like a clock; such cells are read one by one
        return
    assert found is not None
    np.testing.assert_array_equal(found, [seconds_of(cell) for cell in cells])


@pytest.mark.parametrize(
    "cells",
    [
        [],
        [""],
        ["09:14:07", "09:14:7"],
        ["09:14:07", "nothing!"],
        ["09:14:07", None],
        ["abc", "abd"],
        ["31.02.2026 09:14:07", "31.02.2026 09:14:08"],
    ],
)
def test_what_is_not_written_alike_is_left_to_be_read_cell_by_cell(cells: list[str | None]) -> None:
    assert seconds_of_all(pa.array(cells, type=pa.string())) is None
