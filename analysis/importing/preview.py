"""A look at a source before it is brought in: how it is understood, why, and what has yet to be said."""

from __future__ import annotations

import csv
import tempfile
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from itertools import islice
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel, Scaling
from analysis.captures.overview import envelope
from analysis.errors import ImportingError
from analysis.importing.behaviour import StepGuess, guess_step
from analysis.importing.choices import ENCODINGS, NOTHING_CHOSEN, TextChoices
from analysis.importing.dialect import ARROW, DELIMITERS
from analysis.importing.edges_of_text import head_of
from analysis.importing.headings import lines_of, split_line
from analysis.importing.judging import Judged, judged
from analysis.importing.model import Column, Table, place_of
from analysis.importing.needs import Need, Problem, no_rows_so
from analysis.importing.opening import is_text
from analysis.importing.recipes import open_by_recipe
from analysis.importing.seen import ColumnSeen, Preview, TimeSeen, TimeSource
from analysis.importing.settling import settle_blocks
from analysis.importing.shape import shape_of
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.time_seen import time_seen
from analysis.importing.units import unit_of
from analysis.importing.wishes import Wishes
from analysis.progress import Tick, ignore, part
from analysis.wording import say

MOST_ROWS = 1_000_000
"""Rows that are looked at unless more are asked for."""

FIRST_ROWS = 40
"""Rows that are shown as text and as numbers, beside the lines before them."""

_PICTURE = 400  # stretches of the picture of a column
_MOST_HEAD = 60  # lines before the first sample that are shown
_AT_ONCE = 1024 * 1024


def preview(
    path: Path,
    wishes: Wishes | None = None,
    *,
    recipes: Path | None = None,
    most_rows: int = MOST_ROWS,
    tick: Tick = ignore,
) -> Preview:
    """Look at a source as it would be brought in.

    Parameters
    ----------
    path : Path
        The source.
    wishes : Wishes, optional
        What is decided already.
    recipes : Path, optional
        A folder of recipes: the one that fits says what `wishes` leaves open.
    most_rows : int
        How many rows to look at, at most: of a long file only the beginning is seen.
    tick : Tick
        Progress; what it raises stops the look, and nothing is left behind.

    Returns
    -------
    Preview
        Of a text without a table the lines alone, with the problem.

    Raises
    ------
    ImportingError
        Where it cannot be opened at all.
    CaptureError
        Where an HDF5 file is damaged.
    """
    wishes = wishes or Wishes()
    try:
        table, decided, recipe = open_by_recipe(path, wishes, recipes)
    except ImportingError as error:
        return _lines_alone(path, wishes, error)
    with tempfile.TemporaryDirectory(prefix="wornband-") as folder, Spool(table, Path(folder)) as spool:
        spool.fill(part(tick, 0.0, 0.7), most_rows=most_rows)
        if not len(spool.columns[0]):
            return _lines_alone(path, wishes, no_rows_so())
        settle_blocks(spool, decided)
        table, rows = spool.table, len(spool.columns[0])
        decided, dropped = _that_fit(decided, table.columns)
        seen = judged(spool, decided)
        time, of_time = time_seen(spool, seen, decided)
        columns = _columns(spool, seen, part(tick, 0.7, 1.0))
        numbers = _first_numbers(spool, seen)
        lines, head_lines = _lines(table, numbers)
        problems = (*seen.problems, *of_time)
        if rows < 2:
            few = Problem(Need.TABLE, say("it holds fewer than two rows"), say("record the sensor again"))
            problems = (few,)
        return Preview(
            path=path,
            kind=table.kind,
            size_bytes=path.stat().st_size,
            rows=rows,
            whole=spool.whole,
            lines=lines,
            head_lines=head_lines,
            numbers=numbers,
            columns=columns,
            time=time,
            step=_step(seen, decided),
            text=_as_read(table),
            wishes=decided,
            shape=shape_of(spool.opened),
            recipe=recipe,
            problems=problems,
            notes=(*dropped, *spool.notes, *seen.notes),
            datasets=table.datasets,
            blocks=spool.blocks,
        )


def _lines_alone(path: Path, wishes: Wishes, error: ImportingError) -> Preview:
    """A text without a table: its lines as they are, for somebody to say how it is written."""
    if not is_text(path):
        raise error
    text, encoding = head_of(path, wishes.text.encoding)
    every = [line for line in lines_of(text) if line.strip()][: FIRST_ROWS + _MOST_HEAD]
    delimiter = wishes.text.delimiter or max(DELIMITERS, key=lambda mark: sum(mark in line for line in every))
    nothing = TimeSeen(TimeSource.UNKNOWN, say("No table was found, and so no time."))
    return Preview(
        path=path,
        kind="text",
        size_bytes=path.stat().st_size,
        rows=0,
        whole=True,
        lines=tuple(tuple(_cells(line, delimiter)) for line in every),
        head_lines=len(every),
        numbers=np.empty((0, 0)),
        columns=(),
        time=nothing,
        step=StepGuess(None, say("No table was found.")),
        text=replace(wishes.text, delimiter=delimiter, encoding=_choosable(encoding)),
        wishes=wishes,
        shape=None,
        recipe=None,
        problems=(Problem(Need.TABLE, error.problem, error.action),),
        notes=(),
    )


def _cells(line: str, delimiter: str) -> list[str]:
    try:
        return split_line(line[:10_000], delimiter)
    except csv.Error:
        return [line[:10_000]]


def _as_read(table: Table) -> TextChoices:
    written = table.dialect
    if written is None:
        return NOTHING_CHOSEN
    return TextChoices(
        written.delimiter,
        written.decimal,
        written.thousands,
        written.first_line,
        _choosable(table.encoding),
    )


def _choosable(encoding: str) -> str | None:
    """An encoding as it is chosen: what a byte-order mark says needs no choice, and may be any."""
    known = {"utf-8-sig": "utf-8", "utf-16": "utf-16-le"}.get(encoding, encoding)
    return known if known in ENCODINGS else None


def _that_fit(wishes: Wishes, columns: Sequence[Column]) -> tuple[Wishes, tuple[str, ...]]:
    """The wishes whose columns are there, and what is to be said of the others."""
    gone: set[str] = set()

    def there(name: str) -> bool:
        try:
            place_of(name, columns)
        except ImportingError:
            gone.add(name)
            return False
        return True

    def kept(held: Mapping[str, Any]) -> dict[str, Any]:
        return {name: value for name, value in held.items() if there(name)}

    fitting = replace(
        wishes,
        channels=kept(wishes.channels),
        units={name: unit for name, unit in kept(wishes.units).items() if unit_of(unit) is not None},
        factors=kept(wishes.factors),
        offsets=kept(wishes.offsets),
        time_column=wishes.time_column if wishes.time_column and there(wishes.time_column) else None,
    )
    names = ", ".join(sorted(gone))
    return fitting, ((say("there is no column {names}: left aside", names=names),) if gone else ())


def _columns(spool: Spool, seen: Judged, tick: Tick) -> tuple[ColumnSeen, ...]:
    written = spool.table.dialect
    cells = [place for place, use in enumerate(written.numeric) if use] if written else None
    if (
        written is not None and cells is not None
    ):  # columns that stand further down have no cell beside the first ones
        cells += [len(written.numeric) + more for more in range(len(seen.columns) - len(cells))]
    found = []
    for place, column in enumerate(seen.columns):
        is_time = place == seen.time_place
        guess = seen.guesses.get(place)
        scaled, source = seen.in_volts(place), spool.columns[place]
        low, high, missing, over = _extremes(source, scaled)
        picture = envelope(Channel(column.name, None, source, scaled), 0, len(source), _PICTURE)
        found.append(
            ColumnSeen(
                name=column.name,
                unit=column.unit,
                cell=cells[place] if cells is not None else place,
                is_time=is_time,
                role=guess.role if guess is not None else None,
                reason=guess.reason if guess is not None else say("it holds the times"),
                factor=seen.factors[place],
                offset=seen.offsets[place],
                low=low,
                high=high,
                missing=missing,
                over_range=over,
                minimum=picture.minimum_v,
                maximum=picture.maximum_v,
            )
        )
        tick((place + 1) / len(seen.columns))
    return tuple(found)


def _extremes(source: SpooledColumn, scaling: Scaling) -> tuple[float, float, int, int]:
    """Least and greatest finite sample, scaled; how many are missing, and how many infinite."""
    low, high, missing, over = np.inf, -np.inf, 0, 0
    for start in range(0, len(source), _AT_ONCE):
        volts = scaling.volts(source.read(start, start + _AT_ONCE))
        finite = volts[np.isfinite(volts)]
        gone = int(np.isnan(volts).sum())
        missing, over = missing + gone, over + len(volts) - len(finite) - gone
        if len(finite):
            low, high = min(low, float(finite.min())), max(high, float(finite.max()))
    return (low, high, missing, over) if low <= high else (np.nan, np.nan, missing, over)


def _first_numbers(spool: Spool, seen: Judged) -> NDArray[np.float64]:
    """The first rows as the file has them, whether or not they are turned round."""
    sources = [source.turned() if spool.turned else source for source in spool.columns]
    pairs = zip(seen.columns, sources, strict=True)
    return np.column_stack([column.scaling.volts(source.read(0, FIRST_ROWS)) for column, source in pairs])


def _lines(table: Table, numbers: NDArray[np.float64]) -> tuple[tuple[tuple[str, ...], ...], int]:
    """The first lines as cells, and how many of them stand before the first sample."""
    written = table.dialect
    if written is None:
        return tuple(tuple(f"{value:.9g}" for value in row) for row in numbers), 0
    text = table.turned or head_of(table.path, table.encoding)[0]
    first = max(written.first_line - _MOST_HEAD, 0)
    shown: Iterable[str] = islice(lines_of(text), first, written.first_line + FIRST_ROWS)
    if written.rewriting is not None:
        shown = map(written.rewriting.line, shown)
    if written.arrow:
        shown = (line.replace(ARROW, written.arrow, 1) for line in shown)
    return tuple(tuple(_cells(line, written.delimiter)) for line in shown), written.first_line - first


def _step(seen: Judged, wishes: Wishes) -> StepGuess:
    if wishes.step is not None:
        return StepGuess(wishes.step, say("it was chosen"), sure=True)
    pairs = [(item.role, place) for place, item in seen.guesses.items() if item.role is not None]
    return guess_step({role: seen.volts(place) for role, place in pairs})
