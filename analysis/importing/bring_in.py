"""The door: sources of other programs become one capture file, whole or not at all."""

from __future__ import annotations

import uuid
from collections.abc import Mapping, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import ExitStack
from dataclasses import dataclass, replace
from pathlib import Path

from analysis.captures.fingerprint import file_sha256
from analysis.captures.model import Capture, Record
from analysis.captures.writing import write_capture
from analysis.errors import ImportingError
from analysis.importing.behaviour import StepGuess
from analysis.importing.judging import Judged, judged
from analysis.importing.needs import no_rows_so
from analysis.importing.plan import Plan, plan_of
from analysis.importing.recipe import Recipe
from analysis.importing.recipes import open_by_recipe
from analysis.importing.records import records_of, step_of
from analysis.importing.settling import settle_blocks
from analysis.importing.shape import shape_of
from analysis.importing.siblings import with_siblings
from analysis.importing.sources import naming, sources_in
from analysis.importing.spool import Spool
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes
from analysis.progress import Tick, ignore, part
from analysis.wording import say


def import_capture(
    paths: Sequence[Path],
    target: Path,
    wishes: Wishes | None = None,
    *,
    replace_target: bool = False,
    title: str = "",
    tick: Tick = ignore,
    recipes: Path | None = None,
    each: Sequence[Wishes] | None = None,
) -> tuple[Understood, ...]:
    """Bring sources in as the records of one capture.

    Parameters
    ----------
    paths : sequence of Path
        Files and folders; each file becomes a record, or several where its times have gaps.
    target : Path
        The capture file to be.
    wishes : Wishes, optional
        What is decided already.
    replace_target : bool
        Whether a capture of that name may be replaced.
    title : str
        Of the capture; the name of the first source where it is empty.
    tick : Tick
        Progress; what it raises stops the import, and nothing is left behind.
    recipes : Path, optional
        A folder of recipes: the one that fits a source says what `wishes` leaves open.
    each : sequence of Wishes, optional
        What is decided about each source of its own, one for each of `paths`, which are then files; in the
        place of `wishes`.

    Returns
    -------
    tuple of Understood
        One a source.

    Raises
    ------
    ImportingError
        Where a source cannot be brought in.
    CaptureError
        Where the capture cannot be written.
    """
    sources = sources_in(paths)
    decisions = [wishes or Wishes()] * len(sources) if each is None else list(each)
    if len(decisions) != len(sources):
        raise ValueError(f"each must have one item for each of {len(sources)} files, got {len(decisions)}")
    if target.exists() and not replace_target:
        with naming(target):
            raise ImportingError(say("a file of that name exists already"), say("choose another name"))
    understood: list[Understood] = []
    records: list[Record] = []
    facts: list[dict[str, str | float]] = []
    stated: dict[str, str] = {}
    with ExitStack() as stack, ThreadPoolExecutor(1) as pool:
        read: list[_Read] = []
        left: list[tuple[Path, ImportingError]] = []
        for place, (path, stated_now) in enumerate(zip(sources, decisions, strict=True)):
            share = part(tick, 0.6 * place / len(sources), 0.6 * (place + 1) / len(sources))
            with naming(path):
                try:
                    table, decided, recipe = open_by_recipe(path, stated_now, recipes)
                except ImportingError as error:
                    if path in paths or len(sources) == 1:
                        raise
                    left.append((path, error))  # a note among the recordings of a folder
                    continue
                digest = pool.submit(file_sha256, path)
                spool = stack.enter_context(Spool(table, target.absolute().parent))
                spool.fill(share)
                if not len(spool.columns[0]):
                    raise no_rows_so()
                settle_blocks(spool, decided)
                read.append(_Read(path, spool, decided, recipe, digest))
        if not read:
            with naming(left[0][0]):
                raise left[0][1]
        for place, (one, plan) in enumerate(zip(read, _plans(read), strict=True)):
            share = part(tick, 0.6 + 0.1 * place / len(read), 0.6 + 0.1 * (place + 1) / len(read))
            guessing = one.wishes.step is None and one.wishes.guess_step
            step = step_of(one.spool, plan) if guessing else None
            with naming(one.path):
                made, notes = records_of(one.spool, plan, one.wishes, len(records) + 1, share, step=step)
            notes += _left_out(left) if place == 0 else []
            facts.append(_source_facts(one.path, one.digest.result()))
            records += [replace(item, attributes={**item.attributes, **facts[-1]}) for item in made]
            understood.append(_understood(one, plan, notes, step))
            stated.update(one.wishes.attributes)
        attributes: dict[str, str | float] = {**_together(facts), **stated}
        capture = Capture(str(uuid.uuid4()), tuple(records), title or sources[0].stem, attributes)
        with naming(target):
            write_capture(capture, target, replace=replace_target, tick=part(tick, 0.7, 1.0))
    return tuple(understood)


@dataclass(frozen=True, slots=True)
class _Read:
    """A source that was read into a spool, with all that is decided about it."""

    path: Path
    spool: Spool
    wishes: Wishes
    recipe: Recipe | None
    digest: Future[str]


def _plans(read: Sequence[_Read]) -> list[Plan]:
    """What becomes of each source; those of one visit help each other where nobody has named columns."""
    seen: list[tuple[str, Judged]] = []
    for one in read:
        with naming(one.path):
            seen.append((one.path.name, judged(one.spool, one.wishes)))
    together = with_siblings(seen, [not one.wishes.channels for one in read])
    plans: list[Plan] = []
    for item, one in zip(together, read, strict=True):
        with naming(one.path):
            plans.append(plan_of(item, one.spool, one.wishes))
    return plans


def _left_out(files: Sequence[tuple[Path, ImportingError]]) -> list[str]:
    """What is said of files of a folder that hold no table."""
    return [
        say("{name} was left out: {problem}", name=path.name, problem=error.problem) for path, error in files
    ]


def _understood(one: _Read, plan: Plan, notes: Sequence[str], step: StepGuess | None) -> Understood:
    table = one.spool.table
    names = tuple(column.name for column in table.columns)
    said = (*one.spool.notes, *plan.notes, *notes)
    return Understood(one.path, names, plan, said, shape_of(one.spool.opened), one.recipe, step, one.wishes)


def _source_facts(path: Path, digest: str) -> dict[str, str | float]:
    return {"source_name": path.name, "source_size": path.stat().st_size, "source_sha256": digest}


def _together(facts: Sequence[Mapping[str, str | float]]) -> dict[str, str | float]:
    """Of several sources, names and size; each record keeps the fingerprint of its own."""
    if len(facts) == 1:
        return dict(facts[0])
    names = ", ".join(str(item["source_name"]) for item in facts)
    return {"source_name": names[:2000], "source_size": sum(int(item["source_size"]) for item in facts)}
