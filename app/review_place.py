"""Where the review of a capture lies: beside it, or among the user's own things."""

from __future__ import annotations

from pathlib import Path

from analysis.own_folder import kept_reviews
from analysis.progress import Tick, ignore
from analysis.review.sidecar import Sidecar, read_sidecar
from app.resources import lies_among_samples


def read_review(path: Path, tick: Tick = ignore) -> Sidecar:
    """Read the review beside a capture, or the one that is kept on this PC where it could not lie there.

    That of a sample is always kept there: the samples are the program's, and what is said of them is not.

    Raises
    ------
    CaptureError
        Where the capture cannot be read any more.
    """
    return read_sidecar(path, tick, spare_folder=kept_reviews(), beside=not lies_among_samples(path))
