"""What is to become of the files, as far as it is decided: frozen values; a change is a new one."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from analysis.captures.model import Role, Step
from analysis.importing.recipe import Recipe
from analysis.importing.seen import Preview
from analysis.importing.wishes import Wishes

TIME, OUT = "time", "out"
"""What a column may be used for, beside a role."""

NO_STEP = "none"
"""The word for a record of which nobody says what it was taken for, whatever its behaviour suggests."""


NOTHING_WISHED = Wishes()
"""Everything is guessed."""


@dataclass(frozen=True, slots=True)
class FileDraft:
    """One source.

    Parameters
    ----------
    path : Path
        The file.
    wishes : Wishes
        What is decided about it, by hand or by a recipe; the rest is guessed.
    recipe : Recipe or None
        The one that `wishes` began with.
    follow : bool
        Whether a kept recipe may still be looked for.
    """

    path: Path
    wishes: Wishes = NOTHING_WISHED
    recipe: Recipe | None = None
    follow: bool = True

    @property
    def as_last_time(self) -> bool:
        """Whether the columns are taken as the recipe has them."""
        return self.recipe is not None and self.wishes.channels == self.recipe.wishes.channels


@dataclass(frozen=True, slots=True)
class Draft:
    """The capture to be.

    Parameters
    ----------
    files : tuple of FileDraft
        In the order of the records.
    title : str
        Empty for the name of the first file.
    facts : mapping of str to str
        Attributes of the capture: ``recorder``, ``profile`` and the rest.
    target : Path or None
        Where it goes, where the technician chose.
    keep : bool
        Whether what is decided is kept for the next file of the shape.
    """

    files: tuple[FileDraft, ...] = ()
    title: str = ""
    facts: Mapping[str, str] = field(default_factory=dict)
    target: Path | None = None
    keep: bool = True

    def with_wishes(self, places: list[int], change: Callable[[int, Wishes], Wishes]) -> Draft:
        """The same with other wishes for the files at those places."""
        files = [
            replace(item, wishes=change(place, item.wishes)) if place in places else item
            for place, item in enumerate(self.files)
        ]
        return replace(self, files=tuple(files))


def uses_of(seen: Preview, wishes: Wishes) -> dict[str, str]:
    """What each column is used for: a role, `TIME` or `OUT`.

    Parameters
    ----------
    seen : Preview
        The last look at the file.
    wishes : Wishes
        What is decided by now, which may be more than there was at that look.
    """
    uses = {
        item.name: TIME if item.is_time else str(item.role) if item.role is not None else OUT
        for item in seen.columns
    }
    if wishes.time_column in uses or wishes.interval_s is not None:
        uses = {name: OUT if use == TIME else use for name, use in uses.items()}
    if wishes.channels:
        uses = {
            name: str(wishes.channels[name]) if name in wishes.channels else TIME if use == TIME else OUT
            for name, use in uses.items()
        }
    if wishes.time_column in uses:
        uses[str(wishes.time_column)] = TIME
    return uses


def with_use(wishes: Wishes, uses: Mapping[str, str], name: str, use: str) -> Wishes | None:
    """Wishes in which a column is used otherwise.

    Parameters
    ----------
    wishes : Wishes
        Of the file.
    uses : mapping of str to str
        What each column is used for now, as `uses_of` gives it.
    name : str
        The column; it need not be there.
    use : str
        A role, `TIME` or `OUT`. Whichever column had that role before takes this one's in exchange, so that
        no two have the same.

    Returns
    -------
    Wishes or None
        None where no wire of the sensor would be left.
    """
    if name not in uses or uses[name] == use:
        return wishes
    before = uses[name]
    changed = {**uses, name: use}
    for other, had in uses.items():
        if other != name and had == use and use != OUT:
            changed[other] = before if before != TIME and use != TIME else OUT
    channels = {column: Role(word) for column, word in changed.items() if word not in (TIME, OUT)}
    if not channels:
        return None
    time = next((column for column, word in changed.items() if word == TIME), None)
    by_hand = use == TIME or before == TIME
    return replace(
        wishes,
        channels=channels,
        time_column=time if by_hand else wishes.time_column,
        interval_s=None if use == TIME else wishes.interval_s,
    )


def with_time(wishes: Wishes, *, column: str | None = None, interval_s: float | None = None) -> Wishes:
    """Wishes in which the time comes from that column, or from that interval, or is found out again."""
    channels = {name: role for name, role in wishes.channels.items() if name != column}
    return replace(wishes, channels=channels, time_column=column, interval_s=interval_s)


def with_step(wishes: Wishes, word: str) -> Wishes:
    """Wishes in which the records were taken for that step; an empty word lets it be guessed."""
    if word == NO_STEP:
        return replace(wishes, step=None, guess_step=False)
    return replace(wishes, step=Step(word) if word else None, guess_step=True)


def with_word(words: Mapping[str, str], key: str, word: str) -> dict[str, str]:
    """A table of words with another one; an empty word drops it."""
    kept = {name: value for name, value in words.items() if name != key}
    return {**kept, key: word} if word.strip() else kept


def with_column_word(wishes: Wishes, key: str, name: str, word: str) -> Wishes:
    """Wishes with another word for a column.

    Parameters
    ----------
    wishes : Wishes
        Of the file.
    key : str
        ``"unit"``, ``"probe_point"`` or ``"return_point"``.
    name, word : str
        The column, and the word; empty to leave it open.
    """
    if key == "unit":
        return replace(wishes, units=with_word(wishes.units, name, word))
    if key == "probe_point":
        return replace(wishes, probe_points=with_word(wishes.probe_points, name, word))
    return replace(wishes, return_points=with_word(wishes.return_points, name, word))


def moved(draft: Draft, place: int, to: int) -> Draft:
    """The same with a file at another place; nothing changes where there is no such place."""
    if not (0 <= place < len(draft.files) and 0 <= to < len(draft.files)):
        return draft
    files = list(draft.files)
    files.insert(to, files.pop(place))
    return replace(draft, files=tuple(files))


def joined_by(draft: Draft, paths: list[Path]) -> Draft:
    """The same with more files behind; one that is there already is not taken twice."""
    there = {item.path for item in draft.files}
    new = [path for path in dict.fromkeys(paths) if path not in there]
    return replace(draft, files=(*draft.files, *(FileDraft(path) for path in new)))
