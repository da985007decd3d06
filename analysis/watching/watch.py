"""A watch as a value: each step looks or takes one file, and gives back the watch after it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from fnmatch import fnmatch
from pathlib import Path

import numpy as np

from analysis.captures.model import Record, Role, Step
from analysis.captures.reading import open_capture
from analysis.diagnosis import advice
from analysis.diagnosis.enough import Missing, Task
from analysis.errors import WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from analysis.progress import Tick, ignore, part
from analysis.watching.folder import State, at_rest, look
from analysis.watching.gathered import Standing, judge_together
from analysis.wording import say

LONG_GROWING_S = 60.0
"""A file that grows for longer is told: a recorder that streams must be stopped before it is judged. Ours."""

_HELD_WITHIN_V = 0.1  # 2 % of a 5 V supply; sample captures: holds up to 0.02, roads from 0.13
_PIECE_S = 0.25
_LOOK_SAMPLES = 5_000_000
_AS_ASKED = say("it was asked for, and the arm rests")


@dataclass(frozen=True, slots=True)
class Failure:
    """A file that could not be taken, and why; it stays where it is."""

    name: str
    sentence: str


@dataclass(frozen=True, slots=True)
class Watch:
    """A watched folder, and what has come of it.

    Parameters
    ----------
    folder : Path
        Where the recorder saves; captures are written beside its files.
    wishes : Wishes
        What is decided of every file already.
    recipes : Path or None
        Folder of kept recipes; the one that fits a file says what `wishes` leaves open.
    profile : str, Path or None
        Sensor profile; None for the one that the files name.
    take_present : bool
        Whether the files that lie there at the first look are taken too.
    seen : mapping or None
        What the last look saw; None before the first.
    done : mapping
        Files that were taken, or failed, or were there before, as they then were.
    growing_s : mapping
        Since when each file that is not done has been changing, in seconds of the caller's clock.
    now_s : float
        Time of the last look, on the same clock.
    taken : mapping of str to Path
        The capture of each file that was taken, by the file's name, in order.
    failures : tuple of Failure
        In order.
    last : str
        Name of the file that was taken last.
    ready : tuple of str
        Files that have stopped growing and are yet to be taken.
    trouble : str
        Why the folder cannot be looked at; empty where it can.
    standing : Standing
        What all that was taken says.
    stale : bool
        Whether files were taken since that was judged.
    unconfirmed : mapping of str to Step
        Files at rest that came when a step was asked for which rest alone does not show: they are of no step
        until the technician says that it was done (`confirmed`).
    steps : tuple of (str, Step)
        What files were taken for, by a pattern of their names (``*wiggle*``): the technician named them so.
    """

    folder: Path
    wishes: Wishes = field(default_factory=Wishes)
    recipes: Path | None = None
    profile: str | None = None
    take_present: bool = False
    seen: Mapping[str, State] | None = None
    done: Mapping[str, State] = field(default_factory=dict)
    growing_s: Mapping[str, float] = field(default_factory=dict)
    now_s: float = 0.0
    taken: Mapping[str, Path] = field(default_factory=dict)
    failures: tuple[Failure, ...] = ()
    last: str = ""
    ready: tuple[str, ...] = ()
    trouble: str = ""
    standing: Standing = field(default_factory=Standing)
    stale: bool = False
    unconfirmed: Mapping[str, Step] = field(default_factory=dict)
    steps: tuple[tuple[str, Step], ...] = ()

    @property
    def endless(self) -> tuple[str, ...]:
        """Names of files that have been growing for long."""
        return tuple(
            name for name, since_s in self.growing_s.items() if self.now_s - since_s >= LONG_GROWING_S
        )


def look_again(watch: Watch, now_s: float) -> Watch:
    """Look at the folder once: what is ready now, and what still grows.

    Parameters
    ----------
    watch : Watch
        As it stands.
    now_s : float
        Seconds on a clock that does not jump.

    Returns
    -------
    Watch
        A folder that cannot be read is told in it, and does not end the watch.
    """
    try:
        now = look(watch.folder)
    except WornbandError as error:
        return replace(watch, trouble=error.sentence, now_s=now_s, ready=())
    done = now if watch.seen is None and not watch.take_present else watch.done
    ready = at_rest(watch.seen or {}, now, done)
    growing_s = {
        name: watch.growing_s.get(name, now_s)
        for name, state in now.items()
        if done.get(name) != state and name not in ready
    }
    return replace(
        watch, seen=now, done=done, growing_s=growing_s, now_s=now_s, ready=tuple(ready), trouble=""
    )


def take_first(watch: Watch, tick: Tick = ignore) -> Watch:
    """Take the first file that is ready; nothing happens where there is none.

    Parameters
    ----------
    watch : Watch
        As it stands.
    tick : Tick
        Progress; what it raises stops the import, and nothing is left behind.

    Returns
    -------
    Watch
        A file that fails is told in it, and stays where it is.
    """
    if not watch.ready:
        return watch
    name, *others = watch.ready
    failures = tuple(item for item in watch.failures if item.name != name)
    done = {**watch.done, name: (watch.seen or {})[name]}
    watch = replace(watch, done=done, failures=failures, ready=tuple(others))
    try:
        target, standing, asked = _import(watch, watch.folder / name, part(tick, 0.0, 0.5))
        taken = {**{key: path for key, path in watch.taken.items() if key != name}, name: target}
        unconfirmed = {key: item for key, item in watch.unconfirmed.items() if key != name}
        unconfirmed |= {} if asked is None else {name: asked}
        if not others:  # each takes as long as all before it, so that a full folder is judged once
            standing = _judge(watch, list(taken.values()), part(tick, 0.5, 1.0))
    except WornbandError as error:
        return replace(watch, failures=(*failures, Failure(name, error.sentence)))
    return replace(
        watch, taken=taken, last=name, standing=standing, stale=bool(others), unconfirmed=unconfirmed
    )


def confirmed(watch: Watch, tick: Tick = ignore) -> Watch:
    """The same watch, the technician having said that what was asked for was done in the files at rest.

    Parameters
    ----------
    watch : Watch
        As it stands.
    tick : Tick
        Progress.
    """
    try:
        for name, asked in watch.unconfirmed.items():
            told = replace(watch.wishes, step=asked)
            _bring_in(watch, watch.folder / name, told, part(tick, 0.0, 0.5))
        standing = _judge(watch, list(watch.taken.values()), part(tick, 0.5, 1.0))
    except WornbandError as error:
        return replace(watch, failures=(*watch.failures, Failure(watch.last, error.sentence)))
    return replace(watch, standing=standing, stale=False, unconfirmed={})


def with_profile(watch: Watch, profile: str | None, tick: Tick = ignore) -> Watch:
    """The same watch, judged by another sensor profile; None for the one that the files name."""
    watch = replace(watch, profile=profile)
    try:
        return replace(watch, standing=_judge(watch, list(watch.taken.values()), tick), stale=False)
    except WornbandError as error:
        return replace(watch, failures=(*watch.failures, Failure(watch.last, error.sentence)))


def _judge(watch: Watch, files: list[Path], tick: Tick) -> Standing:
    return judge_together(files, watch.folder.name, watch.profile, tick)


def step(watch: Watch, now_s: float, tick: Tick = ignore) -> Watch:
    """Look once, or take the next file that is ready already."""
    watch = watch if watch.ready else look_again(watch, now_s)
    return take_first(watch, tick)


def anew(watch: Watch) -> Watch:
    """The same watch for the next sensor: what lies there now is left alone."""
    return Watch(watch.folder, watch.wishes, watch.recipes, watch.profile, steps=watch.steps)


def again(watch: Watch) -> Watch:
    """The same watch with the files that failed to be tried once more."""
    failed = {item.name for item in watch.failures}
    done = {name: state for name, state in watch.done.items() if name not in failed}
    return replace(watch, done=done, failures=())


def capture_path(source: Path) -> Path:
    """Where the capture of a file lies."""
    return source.with_name(source.name + ".h5")


def _import(watch: Watch, source: Path, tick: Tick) -> tuple[Path, Standing, Step | None]:
    """The capture of a file, made unless an earlier watch has made it: a review may lie beside that one.

    A record at rest may be what was asked for. A hold it then is. That somebody shook the harness rest does
    not show, and neither do spikes (a worn spot has them too): that step is given back, to be confirmed.
    """
    target, standing = capture_path(source), watch.standing
    try:
        if target.stat().st_mtime_ns >= source.stat().st_mtime_ns:
            return target, standing, None
    except OSError:
        pass  # there is none; where the source is gone the import says so
    wishes = _by_name(watch, source.name)
    _bring_in(watch, source, wishes, part(tick, 0.0, 0.5))
    if wishes.step is not None or not _is_held(target):
        return target, standing, None
    if watch.stale:  # what is asked for depends on the files before this one
        standing = _judge(watch, list(watch.taken.values()), ignore)
    asked = _asked_step(standing.evidence.next)
    if asked is Step.HOLD:
        conditions = {**watch.wishes.conditions, "step_guessed": _AS_ASKED}
        _bring_in(
            watch, source, replace(watch.wishes, step=asked, conditions=conditions), part(tick, 0.5, 1.0)
        )
        asked = None
    return target, standing, asked


def _by_name(watch: Watch, name: str) -> Wishes:
    """What is decided of a file, its step by its name where that says it."""
    step = next((step for pattern, step in watch.steps if fnmatch(name.lower(), pattern.lower())), None)
    return watch.wishes if step is None else replace(watch.wishes, step=step)


def _bring_in(watch: Watch, source: Path, wishes: Wishes, tick: Tick) -> None:
    import_capture(
        [source],
        capture_path(source),
        wishes,
        replace_target=True,
        title=source.stem,
        tick=tick,
        recipes=watch.recipes,
    )


def _asked_step(ask: Missing) -> Step | None:
    """The step at rest that was asked for; None where something else was."""
    if ask.task is Task.HOLD:
        return Step.HOLD
    return Step.WIGGLE if ask.sentence == advice.WIGGLE else None


def _is_held(path: Path) -> bool:
    """Whether the arm seems to rest in every record: what was asked for has then been done.

    A step is told from the samples only where they leave no doubt, and a hold in a worn spot breaks up.
    """
    with open_capture(path) as opened:
        return all(_rests(item) for item in opened.capture.records)


def _rests(record: Record) -> bool:
    """Whether one edge of the signal stays: break-up leaves the other, a moving arm takes both."""
    signal = record.channel(Role.SIGNAL)
    if signal is None:
        return False
    voltage_v = signal.volts(0, _LOOK_SAMPLES)
    size = max(round(_PIECE_S / record.sample_interval_s), 1)
    pieces = voltage_v[: len(voltage_v) // size * size].reshape(-1, size)
    pieces = pieces[np.isfinite(pieces).all(axis=1)]
    if not len(pieces):
        return False
    edges_v = pieces.max(axis=1), pieces.min(axis=1)
    return any(float(np.ptp(np.quantile(edge_v, (0.05, 0.95)))) <= _HELD_WITHIN_V for edge_v in edges_v)
