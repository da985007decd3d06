"""Back and forward through earlier views, as a value and without Qt."""

from __future__ import annotations

from dataclasses import dataclass, replace

from analysis.intervals import Interval


@dataclass(frozen=True, slots=True)
class View:
    """What was being looked at: a record, and a stretch of its time in seconds.

    Parameters
    ----------
    record : str
        Its name.
    window : Interval
        Seconds of it.
    second : Interval or None
        The stretch of the other record where two are shown.
    travel : Interval or None
        What the sensor track shows, in % of travel; None for the whole of it.
    singled_out : Interval or None
        When the crossing was that was singled out; None where none was.
    """

    record: str
    window: Interval
    second: Interval | None = None
    travel: Interval | None = None
    singled_out: Interval | None = None


@dataclass(frozen=True, slots=True)
class ViewHistory:
    """Views in the order they were visited, and where we stand among them.

    Parameters
    ----------
    views : tuple of View
        Oldest first.
    position : int
        Index of the present view; -1 where there is none yet.
    stamped_s : float
        When the present view was set, by the caller's clock.
    """

    views: tuple[View, ...] = ()
    position: int = -1
    stamped_s: float = -1e9

    @property
    def present(self) -> View | None:
        """The view that we stand on."""
        return self.views[self.position] if self.views else None

    @property
    def can_go_back(self) -> bool:
        """Whether there is an earlier view."""
        return self.position > 0

    @property
    def can_go_forward(self) -> bool:
        """Whether there is a later view."""
        return self.position < len(self.views) - 1

    def visited(
        self, view: View, now_s: float, *, merge_within_s: float = 0.7, most: int = 200
    ) -> ViewHistory:
        """The history after a new view.

        Parameters
        ----------
        view : View
            Now shown. What lay ahead is forgotten.
        now_s : float
            The caller's clock.
        merge_within_s : float
            A view that follows the last one this quickly in the same record continues the same gesture and
            takes its place; ten notches of a wheel are one step back.
        most : int
            How many views are kept.
        """
        if view == self.present:
            return self
        kept = self.views[: self.position + 1]
        same = bool(kept) and kept[-1].record == view.record
        if same and len(kept) > 1 and now_s - self.stamped_s < merge_within_s:
            kept = kept[:-1]
        kept = (*kept, view)[-most:]
        return ViewHistory(kept, len(kept) - 1, now_s)

    def back(self) -> ViewHistory:
        """The history one view earlier; itself at the beginning."""
        return replace(self, position=self.position - 1, stamped_s=-1e9) if self.can_go_back else self

    def forward(self) -> ViewHistory:
        """The history one view later; itself at the end."""
        return replace(self, position=self.position + 1, stamped_s=-1e9) if self.can_go_forward else self
