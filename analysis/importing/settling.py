"""What becomes of a table that consists of blocks: side by side, a record each, or first a question."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from analysis.errors import ImportingError
from analysis.importing.block_names import (
    are_channels,
    are_recordings,
    is_heading,
    is_repeated,
    labels_of,
    names_of,
)
from analysis.importing.clock_parts import join_fractions
from analysis.importing.first_row import LEAST_BLOCK
from analysis.importing.guesses import counts_by_name, is_time, rises
from analysis.importing.headings import headings, stated_interval
from analysis.importing.model import Column, checked_columns, place_of
from analysis.importing.needs import Need, Problem
from analysis.importing.spool import Spool, SpooledColumn
from analysis.importing.stacked import Stack, stack_of
from analysis.importing.units import unit_of
from analysis.importing.wishes import Blocks, Wishes
from analysis.wording import Wording, plural, say

_MOST_CHANNELS = 8
_SAVE_APART = say("save each block as a file of its own, and choose them together")
_MOST_HEADINGS = 200
_HEAD_ROWS = 3  # of numbers that may stand below a heading
_AT_ONCE = 512 * 1024
_LOOK = 100_000  # rows of a block: a wire does not rise evenly for long


def settle_blocks(spool: Spool, wishes: Wishes) -> None:
    """Look for blocks in a table that was read, and set them side by side or apart where it is known how.

    Nothing happens to a table that is one course. Where nobody knows what the blocks are, the spool says what
    has to be said first (`Spool.problem`).

    Parameters
    ----------
    spool : Spool
        Filled.
    wishes : Wishes
        What is decided.
    """
    said = _said_time(spool, wishes)
    if wishes.interval_s is None:
        join_fractions(spool, said)
    _leave_head(spool)
    _leave_summary(spool)
    stack = stack_of(spool, said)
    if stack is None:
        spool.problem = _in_turn(spool) or _other_heading(spool)
        return
    spool.blocks = len(stack.spans)
    labels = labels_of(stack.heads)
    fits = stack.equal or not spool.whole
    wish = wishes.blocks
    spool.spans = stack.spans
    if wish is None and fits and len(labels) <= _MOST_CHANNELS and are_channels(labels):
        wish = Blocks.CHANNELS
        spool.notes.append(_channels_note(labels))
    elif wish is None and (are_recordings(labels) or (stack.timed and _several_wires(spool))):
        wish = Blocks.RECORDS
        spool.notes.append(
            say("its {count} blocks one below the other become a record each", count=spool.blocks)
        )
    if wish is Blocks.CHANNELS and fits and _same_times(spool, stack):
        _side_by_side(spool, stack, labels)
        spool.spans = ()
    elif wish is Blocks.JOINED and not stack.timed:
        spool.spans = ()
    elif wish is not Blocks.RECORDS:
        spool.problem = _question(stack, labels, wish)
    if spool.spans or wish is Blocks.JOINED:
        spool.problem = _other_heading(spool) or _apart(stack, labels, spool) or spool.problem


def _said_time(spool: Spool, wishes: Wishes) -> int | None:
    try:
        return None if wishes.time_column is None else place_of(wishes.time_column, spool.table.columns)
    except ImportingError:
        return None  # told where the columns are judged


def _other_heading(spool: Spool) -> Problem | None:
    """What is said where a heading further down names the columns in another order, or other units."""
    written = spool.table.dialect
    if written is None:
        return None
    used = [place for place, use in enumerate(written.numeric) if use]
    first = [(written.names[place].casefold(), written.units[place]) for place in used]
    for seam in spool.table.seams()[:_MOST_HEADINGS]:
        if not any(is_heading(line, written) for line in seam.lines):
            continue
        names, units = headings(list(seam.lines), written.delimiter, len(written.numeric), written.comment)
        below = [(names[place].casefold(), units[place]) for place in used]
        called, before = [name for name, _ in below], [name for name, _ in first]
        reordered = called != before and {*called} == {*before}
        pairs = zip(first, below, strict=True)
        if reordered or any(a and b and unit_of(a) != unit_of(b) for (_, a), (_, b) in pairs):
            row = seam.row + 1
            problem = say("a heading above row {row:,} names other columns or units than the first", row=row)
            return Problem(Need.TABLE, problem, _SAVE_APART)
    return None


def _apart(stack: Stack, labels: tuple[str, ...], spool: Spool) -> Problem | None:
    """What is said of channels that cannot be set side by side, or blocks of other rates without times."""
    stated = {found for head in stack.heads if (found := stated_interval(list(head))) is not None}
    if (len(stated) < 2 or stack.timed) and not (are_channels(labels) and not _several_wires(spool)):
        return None
    return Problem(
        Need.TABLE,
        say(
            "its {count} blocks one below the other differ in their times or their length", count=len(labels)
        ),
        _SAVE_APART,
    )


def _leave_head(spool: Spool) -> None:
    """Leave out rows of numbers above the samples that the times do not go on from: ranges, channels."""
    columns = spool.table.columns
    times = [
        place
        for place, column in enumerate(columns)
        if is_time(column.words, column.unit) and place not in spool.parts
    ]
    if len(times) != 1 or spool.table.dialect is None:
        return
    steps = np.diff(spool.columns[times[0]].read(0, _HEAD_ROWS + 3 * LEAST_BLOCK).astype(np.float64))
    falls = np.flatnonzero(steps < 0.0)
    if not len(falls) or int(falls[-1]) >= _HEAD_ROWS or len(steps) < _HEAD_ROWS + LEAST_BLOCK:
        return
    count = int(falls[-1]) + 1
    rest = steps[count:]
    if not float(np.ptp(rest)) <= 0.5 * float(np.median(rest)):
        return
    spool.columns = tuple(column.part(count, len(column)) for column in spool.columns)
    spool.notes.append(
        plural("{count} line of numbers above the samples was left out",
               "{count:,} lines of numbers above the samples were left out", count=count)
    )  # fmt: skip


def _leave_summary(spool: Spool) -> None:
    """Leave out a few rows of numbers at the end whose heading is not that of the table: means, extremes."""
    seams, written = spool.table.seams(), spool.table.dialect
    if not seams or written is None or not spool.whole:
        return
    last, size = seams[-1], len(spool.columns[0])
    if size - last.row >= LEAST_BLOCK or not last.lines or last.row < LEAST_BLOCK:
        return
    if any(is_repeated(line, written) for line in last.lines):
        return  # the last page, or a block that was cut short
    if not last.blank and not is_heading(last.lines[-1], written):
        return  # a remark between two rows
    if any(is_time(column.words, column.unit) for column in spool.table.columns):
        return  # they say themselves whether they go on
    spool.columns = tuple(column.part(0, last.row - last.empty) for column in spool.columns)
    spool.notes.append(
        plural("{count} line of numbers below the samples was left out",
               "{count:,} lines of numbers below the samples were left out", count=size - last.row)
    )  # fmt: skip


def _in_turn(spool: Spool) -> Problem | None:
    """What is said where a column of labels changes from row to row."""
    written, seams = spool.table.dialect, spool.table.seams()
    if written is None or written.label is None or not seams:
        return None
    words = dict.fromkeys(line for seam in seams[:_MOST_CHANNELS] for line in seam.lines)
    return Problem(
        Need.TABLE,
        say("its rows belong to more than one channel in turn: {labels}", labels=", ".join(words)),
        say("save it with a row a sample and a column for each channel"),
    )


def _several_wires(spool: Spool) -> bool:
    """Whether every block has more than one column that is neither a time nor a count: it is no channel."""
    columns = spool.table.columns
    others = [
        item for item in columns if not is_time(item.words, item.unit) and not counts_by_name(item.words)
    ]
    return len(others) > 1


def _channels_note(labels: tuple[str, ...]) -> Wording:
    return say(
        "its {count} blocks one below the other are taken as channels: {labels}",
        count=len(labels),
        labels=", ".join(labels),
    )


def _question(stack: Stack, labels: tuple[str, ...], wish: Blocks | None) -> Problem:
    """What has to be said first about blocks that nobody knows the meaning of."""
    rows = sorted({stop - start for start, stop in stack.spans})
    names = ", ".join(filter(None, labels))
    said = {"count": len(stack.spans), "row": stack.spans[1][0] + 1, "labels": names}
    if wish is Blocks.CHANNELS:
        problem = say("its {count} blocks one below the other differ in their times or their length", **said)
    elif stack.timed:
        problem = say(
            "its times start again at row {row:,}: it holds {count} blocks one below the other", **said
        )
    elif names:
        problem = say(
            "it holds {count} blocks one below the other ({labels}); the second begins at row {row:,}", **said
        )
    else:
        problem = say("it holds {count} blocks one below the other; the second begins at row {row:,}", **said)
    words = [str(Blocks.CHANNELS)] if len(rows) == 1 and wish is not Blocks.CHANNELS else []
    words += [str(Blocks.RECORDS)] if stack.timed else [str(Blocks.RECORDS), str(Blocks.JOINED)]
    action = say("say what they are with --blocks {words}", words=", ".join(words))
    return Problem(Need.BLOCKS, problem, action)


def _same_times(spool: Spool, stack: Stack) -> bool:
    """Whether the times of every block, should there be any, are those of the first."""
    columns = spool.table.columns
    times = [place for place, item in enumerate(columns) if is_time(item.words, item.unit)]
    return not stack.timed or not times or all(_is_shared(spool.columns[place], stack) for place in times)


def _counts(column: Column, source: SpooledColumn, stack: Stack) -> bool:
    """Whether a column holds times or counts: two wires may read the same, and are two all the same."""
    said = is_time(column.words, column.unit) or counts_by_name(column.words)
    return said or rises(source.read(*stack.spans[0])[:_LOOK].astype(np.float64))


def _is_shared(source: SpooledColumn, stack: Stack) -> bool:
    """Whether a column holds the same in every block, as far as the shortest goes."""
    parts = _parts(source, stack)
    return all(
        np.array_equal(parts[0].read(at, at + _AT_ONCE), part.read(at, at + _AT_ONCE), equal_nan=True)
        for part in parts[1:]
        for at in range(0, len(part), _AT_ONCE)
    )


def _parts(source: SpooledColumn, stack: Stack) -> list[SpooledColumn]:
    size = min(stop - start for start, stop in stack.spans)
    return [source.part(start, start + size) for start, _ in stack.spans]


def _side_by_side(spool: Spool, stack: Stack, labels: tuple[str, ...]) -> None:
    """Make every block columns of their own; what is the same in all, as a time or a count, stays one."""
    written, columns = spool.table.dialect, spool.table.columns
    if written is not None:
        named = names_of(stack.heads, labels, written)
    else:
        named = [([item.name for item in columns], [item.unit for item in columns])] * len(labels)
    shared = [
        _counts(column, source, stack) and _is_shared(source, stack)
        for column, source in zip(columns, spool.columns, strict=True)
    ]
    made: list[tuple[Column, SpooledColumn]] = []
    for place, (source, column) in enumerate(zip(spool.columns, columns, strict=True)):
        first = _parts(source, stack)[0]
        name = column.name if shared[place] else named[0][0][place] or column.name
        made.append((replace(column, name=name, heading="", unit=named[0][1][place] or column.unit), first))
    for number in range(1, len(stack.spans)):
        for place, (source, column) in enumerate(zip(spool.columns, columns, strict=True)):
            if shared[place]:
                continue
            name, unit = named[number][0][place] or column.name, named[number][1][place] or column.unit
            made.append((replace(column, name=name, heading="", unit=unit), _parts(source, stack)[number]))
    spool.rearrange(checked_columns([item for item, _ in made]), tuple(source for _, source in made))
