"""A review put into its file, or where its folder does not take it, into the spare place on this PC."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass

from analysis.errors import ReviewError
from analysis.review.model import Review
from analysis.review.sidecar import ChangedReviewError, Sidecar, write_sidecar, write_spare


@dataclass(frozen=True, slots=True)
class Saved:
    """A review that a file holds now.

    Parameters
    ----------
    sidecar : Sidecar
        The file as it is.
    review : Review
        What was saved.
    moved : bool
        Whether it went to the spare place, and not where it was meant to.
    """

    sidecar: Sidecar
    review: Review
    moved: bool = False


def saved(sidecar: Sidecar, review: Review, *, over_changes: bool = False) -> Saved:
    """Write a review; may run on any thread, as long as one file is written by one at a time.

    Raises
    ------
    ChangedReviewError
        Where another program changed the file, and `over_changes` is not said; nothing is written.
    ReviewError
        Where neither the file nor the spare place can be written.
    """
    if sidecar.path == sidecar.spare:
        with suppress(OSError):  # whoever writes says what is wrong
            sidecar.spare.parent.mkdir(parents=True, exist_ok=True)
    try:
        return Saved(write_sidecar(sidecar, review, over_changes=over_changes), review)
    except ChangedReviewError:
        raise
    except ReviewError as error:
        if sidecar.spare is None or sidecar.path == sidecar.spare:
            raise
        try:
            return Saved(write_spare(sidecar, sidecar.spare, review), review, moved=True)
        except ReviewError:
            raise error from None
