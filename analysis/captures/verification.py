"""Whether a capture still says what it said when it was written, and when it was reviewed.

A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who
took it, or that the capture was true: someone who changes the samples can store a new fingerprint too.
So the review, and a printed report, keep the fingerprints that they were made from.
"""

from __future__ import annotations

import json
import os
from dataclasses import dataclass, replace
from pathlib import Path

from analysis.captures import layout
from analysis.captures.fingerprint import ContentDigest, file_sha256
from analysis.captures.model import Capture, Match
from analysis.captures.overview import stretches
from analysis.captures.stored import StoredCapture, read_stored
from analysis.captures.strict import DatasetSource, open_file
from analysis.errors import CaptureError
from analysis.progress import Tick, ignore, part
from analysis.wording import say


@dataclass(frozen=True, slots=True)
class Verification:
    """What was found about one capture file.

    Parameters
    ----------
    path : Path
        The file.
    sha256 : str
        Plain SHA-256 of the file as it is now.
    content_sha256 : str
        Content fingerprint as computed now.
    stored_sha256 : str
        Content fingerprint that the file itself holds; empty where it holds none.
    content : Match
        The two above against each other: `MATCHES`, `DIFFERS` or `ABSENT`.
    review_path : Path
        Where the review lies or would lie.
    review : Match
        What the review was made from, against the file: also `REPACKED` (other bytes, the same content)
        and `UNREADABLE`.
    """

    path: Path
    sha256: str
    content_sha256: str
    stored_sha256: str
    content: Match
    review_path: Path
    review: Match

    @property
    def passed(self) -> bool:
        """Whether nothing speaks against the capture; a fingerprint that is absent does not."""
        return self.content is not Match.DIFFERS and self.review not in (Match.DIFFERS, Match.UNREADABLE)

    @property
    def sentences(self) -> tuple[str, ...]:
        """The findings in words: about the file, then about its review."""
        return _CONTENT_WORDS[self.content], _REVIEW_WORDS[self.review]


_CONTENT_WORDS = {
    Match.MATCHES: "The samples and what describes them are as they were when the file was written.",
    Match.DIFFERS: "The samples or what describes them were changed after the file was written.",
    Match.ABSENT: "The file holds no fingerprint of its content, so a change since it was written cannot be"
    " told.",
}

_REVIEW_WORDS = {
    Match.MATCHES: "The review was made from exactly this file.",
    Match.REPACKED: "The review was made from the same content; the file was packed anew since.",
    Match.DIFFERS: "The review was made from another capture, or the capture was changed since.",
    Match.ABSENT: "There is no review, or it does not say which file it was made from.",
    Match.UNREADABLE: "The review cannot be read.",
}


def verify_capture(path: str | os.PathLike[str], *, tick: Tick = ignore) -> Verification:
    """Compute both fingerprints of a capture and compare them with what was stored.

    Parameters
    ----------
    path : path-like
        The capture. Its review is looked for at `layout.review_path`; of it the texts ``sha256`` and
        ``content_sha256`` of the object ``capture`` are used.
    tick : Tick
        Progress.

    Returns
    -------
    Verification
        Also where something differs: that is a finding, not an error.

    Raises
    ------
    CaptureError
        Where the file cannot be read as a capture.
    """
    where = Path(path)
    with open_file(where) as file:
        stored = read_stored(file, where)
        content = content_sha256(stored, part(tick, 0.0, 0.8))
    whole = file_sha256(where, part(tick, 0.8, 1.0))
    claimed = stored.words.text(layout.CONTENT_KEY)
    return Verification(
        path=where,
        sha256=whole,
        content_sha256=content,
        stored_sha256=claimed,
        content=_compared(claimed, content),
        review_path=layout.review_path(where),
        review=_review(layout.review_path(where), whole, content),
    )


def with_content(capture: Capture, tick: Tick = ignore) -> Capture:
    """The capture with its content held against the fingerprint that its file holds.

    Parameters
    ----------
    capture : Capture
        Returned as it is where it was never stored or has been compared already.
    tick : Tick
        Progress: every sample is read.

    Returns
    -------
    Capture
        With ``content``; `Match.UNREADABLE` where the file, or some of it, cannot be read any more.
    """
    if capture.path is None or capture.content is not None:
        return capture
    return replace(capture, content=verify_content(capture.path, tick))


def verify_content(path: Path, tick: Tick = ignore) -> Match:
    """Compare a capture's content with the fingerprint that it holds itself.

    Parameters
    ----------
    path : Path
        The capture.
    tick : Tick
        Progress.

    Returns
    -------
    Match
        `MATCHES`, `DIFFERS`, `ABSENT`, or `UNREADABLE` where the file, or some of it, cannot be read.
    """
    try:
        with open_file(path) as file:
            stored = read_stored(file, path)
            claimed = stored.words.text(layout.CONTENT_KEY)
            return _compared(claimed, content_sha256(stored, tick)) if claimed else Match.ABSENT
    except CaptureError:
        return Match.UNREADABLE


def content_sentence(content: Match | None, name: str) -> str:
    """What speaks against taking a capture as evidence; empty where nothing does.

    Parameters
    ----------
    content : Match or None
        As `Capture` holds it.
    name : str
        Of the file.
    """
    if content is Match.DIFFERS:
        return say(
            "{name} was changed after it was recorded: its samples or what they mean do not match the"
            " fingerprint in the file. Open the original, or do not use it as evidence.",
            name=name,
        )
    if content is Match.UNREADABLE:
        return say(
            "Not all of {name} can be read, so it was not held against the fingerprint in the file. Do not"
            " use it as evidence.",
            name=name,
        )
    return ""


def content_note(content: Match | None) -> str:
    """The same as `content_sentence` in a few words, for a heading; empty where nothing speaks against it."""
    if content is Match.DIFFERS:
        return say("changed after it was recorded")
    return say("not all of it can be read") if content is Match.UNREADABLE else ""


def content_sha256(stored: StoredCapture, tick: Tick = ignore) -> str:
    """Content fingerprint of an open file, as `analysis.captures.fingerprint` defines it.

    Parameters
    ----------
    stored : StoredCapture
        Of a file that is still open.
    tick : Tick
        Progress.

    Raises
    ------
    CaptureError
        Where a channel is damaged.
    """
    digest = ContentDigest()
    digest.describe("/", stored.words.attributes.values)
    whole = max(sum(item.length for record in stored.records for item in record.channels), 1)
    done = 0
    for record in sorted(stored.records, key=lambda item: item.name):
        digest.describe(record.path, record.words.attributes.values)
        for channel in sorted(record.channels, key=lambda item: item.name):
            if channel.role is None:
                continue
            if channel.trouble:
                raise CaptureError(
                    say("{where} {trouble}", where=channel.words.where, trouble=channel.trouble),
                    say("store plain numbers"),
                )
            digest.describe(channel.path, channel.words.attributes.values)
            source = DatasetSource(record.group, channel.name, channel.words.where)
            for raw in stretches(source, part(tick, done / whole, (done + channel.length) / whole)):
                digest.add(raw)
            done += channel.length
    return digest.hexdigest()


def _compared(claimed: str, found: str) -> Match:
    if not claimed:
        return Match.ABSENT
    return Match.MATCHES if claimed == found else Match.DIFFERS


def _review(path: Path, whole: str, content: str) -> Match:
    """What a review says about the file that it was made from."""
    try:
        said = json.loads(path.read_text(encoding="utf-8"))["capture"]
        claimed_whole, claimed_content = said.get("sha256", ""), said.get("content_sha256", "")
    except FileNotFoundError:
        return Match.ABSENT
    except KeyError:
        return Match.ABSENT
    except (OSError, ValueError, TypeError, AttributeError, RecursionError):
        return Match.UNREADABLE
    by_bytes = _compared(claimed_whole, whole)
    if by_bytes is Match.DIFFERS and _compared(claimed_content, content) is Match.MATCHES:
        return Match.REPACKED
    return by_bytes if by_bytes is not Match.ABSENT else _compared(claimed_content, content)
