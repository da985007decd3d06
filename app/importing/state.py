"""What stands on the Import page: the draft of the capture, and the last look at each of its files."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

from analysis.captures.model import Role
from analysis.importing.behaviour import StepGuess
from analysis.importing.seen import Preview
from analysis.importing.siblings import LIKE_THERE
from analysis.importing.wishes import Wishes
from app.importing.draft import OUT, TIME, Draft, FileDraft, uses_of, with_use
from app.importing.maker import Looked

Guessed = tuple[str, str]
"""What a column was guessed to be used for, and why."""

Change = Callable[[int, Wishes], Wishes]
"""Wishes of the file at a place, changed."""


class ImportState:
    """The current draft, what was seen of its files, and which of them is in front.

    Attributes
    ----------
    draft : Draft
        What is decided.
    place : int
        Of the file in front.
    together : bool or None
        Whether a change holds for all files with the same columns, where the technician said so.
    time_kinds : dict of Path to str
        Files whose spacing is being entered, as an interval or as a rate.
    troubles : dict of str to str
        Sentences about entries that cannot be used, by where they were made.
    """

    def __init__(self) -> None:
        self.draft = Draft()
        self.place = 0
        self.together: bool | None = None
        self.time_kinds: dict[Path, str] = {}
        self.troubles: dict[str, str] = {}
        self._looked: dict[Path, Looked] = {}
        self._guesses: dict[Path, Mapping[str, Guessed]] = {}
        self._steps: dict[Path, StepGuess] = {}
        self._learned: set[Path] = set()
        self._said: list[tuple[tuple[str, ...], Change]] = []

    @property
    def file(self) -> FileDraft | None:
        """The file that is in front, or None where there is none."""
        return self.draft.files[self.place] if self.place < len(self.draft.files) else None

    def looked(self, place: int) -> Looked | None:
        """The last look at a file, stale or not."""
        return self._looked.get(self.draft.files[place].path)

    def seen(self, place: int) -> Preview | None:
        """What was seen of a file; None before the first look, and where it cannot be opened."""
        looked = self.looked(place)
        return looked.preview if looked is not None else None

    def fresh(self, place: int) -> bool:
        """Whether the last look at a file was at what is decided by now."""
        looked, file = self.looked(place), self.draft.files[place]
        return looked is not None and looked.asked == file.wishes and not file.follow

    def next_to_look_at(self) -> int | None:
        """The file to look at next, that in front first; None where all looks are fresh."""
        order = (self.place, *range(len(self.draft.files)))
        return next(
            (place for place in order if place < len(self.draft.files) and not self.fresh(place)), None
        )

    def first_trouble(self) -> int | None:
        """The first file that cannot be brought in as it stands; those not looked at are not counted."""
        places = range(len(self.draft.files))
        return next((p for p in places if (found := self.looked(p)) is not None and not found.ready), None)

    def take(self, file: FileDraft, looked: Looked) -> bool:
        """Take a look at a file in; False where something else has been decided meanwhile."""
        place = next((p for p, item in enumerate(self.draft.files) if item == file), None)
        if place is None:
            return False
        seen = looked.preview
        if seen is not None and not looked.asked.channels and seen.recipe is None:
            uses = uses_of(seen, looked.asked)
            self._guesses[file.path] = {item.name: (uses[item.name], item.reason) for item in seen.columns}
        if seen is not None and looked.asked.step is None and looked.asked.guess_step:
            self._steps[file.path] = seen.step
        first = file.follow
        if first:
            looked = self._begun(place, looked)
        self._looked[file.path] = looked
        if first and self.draft.files[place].recipe is None:
            self._catch_up(place)
        if self.next_to_look_at() is None:
            self._learn_from_others()
        return True

    def _learn_from_others(self) -> None:
        """A wire that shows nothing by itself is what the same column of another file was guessed to be."""
        for place, file in enumerate(self.draft.files):
            if file.wishes.channels or file.recipe is not None or file.path in self._learned:
                continue
            self._learned.add(file.path)
            uses, wishes = self.uses(place), file.wishes
            for name in [name for name, use in uses.items() if use == OUT]:
                found = self._elsewhere(place, name)
                if found is None or found[0] in uses.values():
                    continue
                wishes = with_use(wishes, uses, name, found[0]) or wishes
                uses = {**uses, name: found[0]}
                reason = LIKE_THERE(name=found[1])
                guesses = {**self._guesses.get(file.path, {}), name: (found[0], reason)}
                self._guesses[file.path] = guesses
            self._put(place, replace(file, wishes=wishes))

    def _elsewhere(self, place: int, name: str) -> tuple[str, str] | None:
        """The one role that a column has in the other files with the same columns, and one of these."""
        found: dict[str, str] = {}
        for other, file in enumerate(self.draft.files):
            if other != place and self._columns(other) == self._columns(place):
                use = self._guessed_uses(other).get(name, OUT)
                if use not in (OUT, TIME):
                    found.setdefault(use, file.path.name)
        return next(iter(found.items())) if len(found) == 1 else None

    def _catch_up(self, place: int) -> None:
        """What was said of all files with these columns before this one was looked at holds for it too."""
        mine = self._columns(place)
        if not self._is_alike(place):
            return
        for columns, change in self._said:
            if columns == mine:
                self.draft = self.draft.with_wishes([place], change)

    def _begun(self, place: int, looked: Looked) -> Looked:
        """After the first look: what a recipe says is decided from now on, and can be changed as anything."""
        file, seen = self.draft.files[place], looked.preview
        wishes, recipe = looked.asked, seen.recipe if seen is not None else None
        if seen is not None and recipe is not None:
            facts = {**seen.wishes.attributes, **self.draft.facts}
            wishes = replace(seen.wishes, attributes={})
            self.draft = replace(self.draft, facts=facts)
        self._put(place, replace(file, wishes=wishes, recipe=recipe, follow=False))
        return replace(looked, asked=wishes)

    def without_file(self) -> Draft:
        """The draft without the file in front."""
        files = [item for place, item in enumerate(self.draft.files) if place != self.place]
        return replace(self.draft, files=tuple(files))

    def guessed_anew(self) -> Draft:
        """The draft without what recipes said."""
        files = [
            item if item.recipe is None else replace(item, wishes=Wishes(), recipe=None)
            for item in self.draft.files
        ]
        return replace(self.draft, files=tuple(files))

    def _put(self, place: int, file: FileDraft) -> None:
        files = list(self.draft.files)
        files[place] = file
        self.draft = replace(self.draft, files=tuple(files))

    # -- what holds ---------------------------------------------------------------------------

    def uses(self, place: int) -> dict[str, str]:
        """What each column of a file is used for by now; empty before the first look."""
        seen = self.seen(place)
        return uses_of(seen, self.draft.files[place].wishes) if seen is not None else {}

    def guess(self, place: int, column: str) -> Guessed | None:
        """What a column was guessed to be, while nobody had said anything."""
        return self._guesses.get(self.draft.files[place].path, {}).get(column)

    def step_guess(self, place: int) -> StepGuess | None:
        """What a file seems to have been taken for, while nobody had said so."""
        return self._steps.get(self.draft.files[place].path)

    def sources(self) -> list[tuple[Path, Wishes]]:
        """Every file with all that is decided about it: what is shown is what becomes of it."""
        made = []
        for place, file in enumerate(self.draft.files):
            uses = self.uses(place)
            channels = {name: Role(use) for name, use in uses.items() if use not in (TIME, OUT)}
            time = next((name for name, use in uses.items() if use == TIME), None)
            made.append(
                (
                    file.path,
                    replace(
                        file.wishes, channels=channels, time_column=time, attributes=dict(self.draft.facts)
                    ),
                )
            )
        return made

    # -- several files alike ------------------------------------------------------------------

    def alike(self) -> list[int]:
        """Places of the files with the same columns as the one in front, itself among them."""
        if self.file is None:
            return []
        mine = self._columns(self.place)
        places = range(len(self.draft.files))
        return [place for place in places if place == self.place or (mine and self._columns(place) == mine)]

    def _columns(self, place: int) -> tuple[str, ...]:
        seen = self.seen(place)
        if seen is None:
            return ()
        return tuple(item.name for item in seen.columns) or (f"no table of {seen.kind}",)

    @property
    def all_alike(self) -> bool:
        """Whether a change holds for all files with the same columns.

        As the technician ticked it; else where the columns of all of them were guessed to be the same, which
        they are not where a recorder with one channel was moved from wire to wire.
        """
        if self.together is not None:
            return self.together
        if self.file is None:
            return False
        mine = self._guessed_uses(self.place)
        return all(self._guessed_uses(place) == mine for place in self.alike())

    def _is_alike(self, place: int) -> bool:
        if self.together is not None:
            return self.together
        same = [p for p in range(len(self.draft.files)) if self._columns(p) == self._columns(place)]
        return all(self._guessed_uses(p) == self._guessed_uses(place) for p in same)

    def _guessed_uses(self, place: int) -> dict[str, str]:
        kept = self._guesses.get(self.draft.files[place].path, {})
        return {name: use for name, (use, _) in kept.items()}

    def changed(self, change: Change, *, alone: bool = False) -> Draft:
        """The draft with something decided about the file in front, and those alike where that is wanted."""
        together = self.all_alike and not alone
        if together:
            self._said.append((self._columns(self.place), change))
        return self.draft.with_wishes(self.alike() if together else [self.place], change)
