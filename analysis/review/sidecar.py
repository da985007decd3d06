"""The review's file beside the capture: read, replaced as a whole, and never written over somebody else's.

What cannot be taken over (damaged, of a later version, of another capture) stays where it is until there is
something to write; then it is renamed, so that looking at a capture changes nothing in its folder. Where that
folder cannot be written to, the review is kept in a spare one, under the capture's SHA-256 and that of the
review beside it from which it goes on: it holds for as long as that one lies there as it was.
"""

from __future__ import annotations

import hashlib
from contextlib import suppress
from dataclasses import dataclass, replace
from pathlib import Path

from analysis.captures import layout
from analysis.captures.fingerprint import file_sha256
from analysis.captures.replacing import replaced_at_the_end
from analysis.captures.stored import read_stored
from analysis.captures.strict import open_file
from analysis.errors import ReviewError
from analysis.progress import Tick, ignore
from analysis.review.model import Review
from analysis.review.stored import parse_review, review_text
from analysis.wording import say

_MOST_BYTES = 16 * 1024 * 1024  # a hundred thousand markers; nothing that a technician made is longer
_MOST_KEPT = 1000
_DIGITS = 16  # of a digest in a name: 64 bits, among a handful of files


class ChangedReviewError(ReviewError):
    """Another program wrote the review since it was read here."""


@dataclass(frozen=True, slots=True)
class Sidecar:
    """What is known of a review's file.

    Parameters
    ----------
    path : Path
        Where it lies or will lie.
    review : Review
        What it says; of the capture alone where there is none, or none that can be used.
    digest : str
        SHA-256 of its bytes as they were read or written; empty where there was no file.
    trouble : str
        Why the file cannot be used, and what happens to it; empty where it can.
    spare : Path or None
        Where a review goes that cannot be written beside the capture, as `spare_after` says.
    kept : Path or None
        Where that lies by now what the last writing found in its place and could not take over.
    spare_digest : str
        SHA-256 of the file in the spare place that this review was read from; empty where it was not.
    other : Path or None
        A review of the same capture in the spare place that does not go on from the one that was read.
    """

    path: Path
    review: Review
    digest: str = ""
    trouble: str = ""
    spare: Path | None = None
    kept: Path | None = None
    spare_digest: str = ""
    other: Path | None = None


def read_sidecar(
    capture_path: Path, tick: Tick = ignore, *, spare_folder: Path | None = None, beside: bool = True
) -> Sidecar:
    """Read the review of a capture file.

    Parameters
    ----------
    capture_path : Path
        The capture; it is hashed, to know whether the review speaks of it.
    tick : Tick
        Progress.
    spare_folder : Path or None
        Where reviews are kept whose captures lie in folders that cannot be written to. One that goes on from
        the review beside the capture is taken, and written beside it as soon as that can be done.
    beside : bool
        Whether the review lies beside the capture. One of a capture that came along with the program does
        not: it lies in the spare folder, wherever that can be written to or not.

    Returns
    -------
    Sidecar
        Also where there is no review, or none that can be used.

    Raises
    ------
    CaptureError
        Where the capture cannot be read any more.
    """
    fresh = _fresh(capture_path, tick)
    path = layout.review_path(capture_path)
    spare = spare_folder / f"{fresh.sha256}.review.json" if spare_folder is not None else None
    if spare is not None and not beside:
        path = spare
    try:
        own = replace(_taken(path, _bytes(path), fresh), spare=spare)
    except OSError:
        problem = say("the review beside this capture cannot be opened")
        said = say("{problem}; it is left as it is, and a new one begins in memory", problem=problem)
        own = Sidecar(path, fresh, "", said, spare)
    return own if spare is None or path == spare else _with_spare(own, spare, fresh)


def spare_after(spare: Path, digest: str) -> Path:
    """Name of what is kept in the spare place after a review of this SHA-256; empty: after none."""
    return spare.with_name(f"{_stem(spare)}.after-{digest[:_DIGITS]}.review.json") if digest else spare


def _with_spare(own: Sidecar, spare: Path, fresh: Review) -> Sidecar:
    """The review in the spare place, where it goes on from the one beside the capture; else that one."""
    place = spare_after(spare, own.digest)
    with suppress(OSError):
        raw = _bytes(place)
        found = _taken(place, raw, fresh)
        if raw is not None and not found.trouble:
            if own.trouble:  # which stays as it is: writing goes on in the spare place
                return replace(found, spare=place)
            return replace(own, review=found.review, spare_digest=found.digest)
        kept = sorted(spare.parent.glob(f"{_stem(spare)}*.review.json"))
        return replace(own, other=kept[-1] if kept else None)
    return own


def _stem(spare: Path) -> str:
    return spare.name.removesuffix(".review.json")


def read_again(sidecar: Sidecar) -> Sidecar:
    """Read the file again that another program may have changed.

    Returns
    -------
    Sidecar
        With an empty review where the file is gone; with `Sidecar.trouble` where it cannot be used.

    Raises
    ------
    ReviewError
        Where it cannot be opened.
    """
    own = sidecar.review
    fresh = Review(own.capture_id, own.sha256, own.content_sha256)
    try:
        raw = _bytes(sidecar.path)
    except OSError as error:
        raise ReviewError(say("the review cannot be opened"), say("check who may read it")) from error
    return replace(_taken(sidecar.path, raw, fresh), spare=sidecar.spare)


def is_changed(sidecar: Sidecar) -> bool:
    """Whether the file is another one than was read or written here; False where nobody can tell."""
    try:
        return _digest(_bytes(sidecar.path)) != sidecar.digest
    except OSError:
        return False


def changed_error() -> ChangedReviewError:
    """What is said where another program changed the file."""
    return ChangedReviewError(
        say("another window or program changed the review of this capture since it was opened here"),
        say("take its review, or keep this one; neither is lost"),
    )


def put_elsewhere(sidecar: Sidecar, path: Path) -> Sidecar:
    """A sidecar that is written to another place from now on; what lies there will be kept aside."""
    try:
        present = _bytes(path)
    except OSError:
        present = None
    there = say("another file lies there; it is kept under another name")
    trouble = there if present is not None else ""
    return replace(sidecar, path=path, digest=_digest(present), trouble=trouble)


def _taken(path: Path, raw: bytes | None, fresh: Review) -> Sidecar:
    """The review in a file's bytes, as far as it speaks of this capture."""
    if raw is None:
        return Sidecar(path, fresh)
    digest = _digest(raw)
    try:
        found = _parsed(raw)
        _check_same_capture(found, fresh)
    except ReviewError as error:
        trouble = say(
            "{problem}; a new one begins, and this one is kept under another name when the new one is saved",
            problem=error.problem,
        )
        return Sidecar(path, fresh, digest, trouble)
    # A file that was packed anew has other bytes: from now on the review speaks of these.
    own = replace(
        found,
        capture_id=fresh.capture_id,
        sha256=fresh.sha256,
        content_sha256=fresh.content_sha256 or found.content_sha256,
    )
    return Sidecar(path, own, digest)


def write_sidecar(sidecar: Sidecar, review: Review, *, over_changes: bool = False) -> Sidecar:
    """Put a review in the place of its file.

    Parameters
    ----------
    sidecar : Sidecar
        As it was read, or written before.
    review : Review
        What to write.
    over_changes : bool
        Write although another program changed the file; what that wrote is kept under another name.

    Returns
    -------
    Sidecar
        As it is now.

    Raises
    ------
    ChangedReviewError
        Where another program changed the file since; nothing is written.
    ReviewError
        Where it cannot be written.
    """
    raw = review_text(review).encode()
    try:
        present = _bytes(sidecar.path)
    except OSError as error:
        raise ReviewError(
            say("the review beside this capture cannot be opened"), say("check who may read it")
        ) from error
    changed = _digest(present) != sidecar.digest
    if changed and present != raw and not over_changes:
        raise changed_error()
    foreign = present is not None and present != raw and (changed or sidecar.trouble)
    kept = _keep_aside(sidecar.path) if foreign else None
    with replaced_at_the_end(sidecar.path, ReviewError) as temporary:
        temporary.write_bytes(raw)
    _drop_spare(sidecar)
    return Sidecar(sidecar.path, review, _digest(raw), spare=sidecar.spare, kept=kept)


def write_spare(sidecar: Sidecar, spare: Path, review: Review) -> Sidecar:
    """Put a review into its spare place, where it is written from now on.

    Raises
    ------
    ReviewError
        Where it cannot be written there either.
    """
    place = spare_after(spare, sidecar.digest)
    with suppress(OSError):  # whoever writes says what is wrong
        place.parent.mkdir(parents=True, exist_ok=True)
    there = Sidecar(place, sidecar.review, sidecar.spare_digest, spare=place)
    return write_sidecar(there, review, over_changes=True)


def _drop_spare(sidecar: Sidecar) -> None:
    """Remove from the spare place what was just written beside the capture, with all that came of it."""
    if sidecar.spare is None or not sidecar.spare_digest:
        return
    with suppress(OSError):
        place = spare_after(sidecar.spare, sidecar.digest)
        if _digest(_bytes(place)) == sidecar.spare_digest:
            place.unlink()


def write_aside(sidecar: Sidecar, review: Review) -> Path:
    """Write a review under another name, where its own place is taken; raises ReviewError as above.

    Where its folder takes none, it goes under such a name into the spare place.
    """
    try:
        return _written_aside(sidecar.path, review)
    except ReviewError:
        if sidecar.spare is None or sidecar.spare.parent == sidecar.path.parent:
            raise
        with suppress(OSError):
            sidecar.spare.parent.mkdir(parents=True, exist_ok=True)
        return _written_aside(sidecar.spare, review)


def _written_aside(path: Path, review: Review) -> Path:
    target = _free_name(path)
    with replaced_at_the_end(target, ReviewError) as temporary:
        temporary.write_text(review_text(review), encoding="utf-8")
    return target


def _fresh(capture_path: Path, tick: Tick) -> Review:
    """A review of nothing but the capture."""
    with open_file(capture_path) as file:
        words = read_stored(file, capture_path).words
        # Taken at its word: computing it means reading every sample, and `wornband verify` does that.
        capture_id, content = words.text(layout.ID_KEY), words.text(layout.CONTENT_KEY)
    return Review(capture_id, file_sha256(capture_path, tick), content)


def _bytes(path: Path) -> bytes | None:
    """A file's bytes, or None where there is none; of one that is too long, as many as say so."""
    try:
        with path.open("rb") as file:
            return file.read(_MOST_BYTES + 1)
    except FileNotFoundError:
        return None


def _digest(raw: bytes | None) -> str:
    return hashlib.sha256(raw).hexdigest() if raw is not None else ""


def _parsed(raw: bytes) -> Review:
    if len(raw) > _MOST_BYTES:
        raise ReviewError(say("the file of the review is far too long"), say("look what it is"))
    try:
        return parse_review(raw.decode("utf-8"))
    except UnicodeDecodeError as error:
        raise ReviewError(say("the review is damaged: it is no text"), say("begin a new one")) from error


def _check_same_capture(found: Review, own: Review) -> None:
    """As `analysis.captures.verification`: the same bytes, or else the same content, or nothing claimed."""
    if found.sha256 == own.sha256 or (found.content_sha256 and found.content_sha256 == own.content_sha256):
        return
    if found.sha256 or found.content_sha256:
        raise ReviewError(
            say("the review beside this capture was made from another one, or the capture was changed since"),
            say("begin a new one"),
        )


def _keep_aside(path: Path) -> Path:
    """Give a file another name; back comes that."""
    try:
        return path.rename(_free_name(path))
    except OSError as error:
        raise ReviewError(
            say("the review that lies there cannot be renamed"), say("see who may write there")
        ) from error


def _free_name(path: Path) -> Path:
    """``<name>.review.kept-1.json``, or the first number that is free."""
    stem = path.name.removesuffix(".json")
    for number in range(1, _MOST_KEPT):
        target = path.with_name(f"{stem}.kept-{number}.json")
        if not target.exists():
            return target
    raise ReviewError(say("a thousand reviews are kept aside in this folder"), say("move some of them away"))
