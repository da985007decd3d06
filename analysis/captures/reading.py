"""Reading captures: lazily, strictly, and with a sentence for whatever is wrong."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from types import TracebackType
from typing import Self

import h5py
from h5py import h5g

from analysis.captures import layout, memory, strict
from analysis.captures.described import Described, interval_s, volts_a_unit
from analysis.captures.fingerprint import with_sha256
from analysis.captures.model import Capture, Channel, OverviewLevel, Record, Role, Scaling, Step
from analysis.captures.overview import stored_levels, with_overviews
from analysis.captures.stored import StoredChannel, StoredRecord, read_stored
from analysis.captures.verification import with_content
from analysis.errors import CaptureError
from analysis.progress import Tick, ignore, part
from analysis.wording import say


@dataclass(frozen=True, slots=True)
class OpenCapture:
    """An open capture file; a context manager.

    Samples are fetched from the file when they are asked for, from any thread. After `close` the
    attributes and overviews stay usable and a request for samples raises `CaptureError`.

    Parameters
    ----------
    capture : Capture
        What the file holds. Its ``sha256`` is empty until
        `analysis.captures.fingerprint.with_sha256` fills it in: hashing a long file must not delay
        opening it.
    assumptions : tuple of str
        One sentence for each default that stands in for something the file does not state.
    file : h5py.File
        The open file; of no interest to callers.
    """

    capture: Capture
    assumptions: tuple[str, ...]
    file: h5py.File

    def close(self) -> None:
        """Close the file; doing so twice is allowed."""
        self.file.close()

    def completed(self, tick: Tick = ignore) -> OpenCapture:
        """The same with the file's SHA-256, its content held against its fingerprint, and all overviews.

        Each takes a pass over the file, so they are no part of opening it. The file stays open behind
        both values; closing either closes both.

        Parameters
        ----------
        tick : Tick
            Progress.

        Raises
        ------
        CaptureError
            Where the file is damaged or gone.
        """
        drawable = with_overviews(self.capture, part(tick, 0.0, 0.4))
        hashed = with_sha256(drawable, part(tick, 0.4, 0.6))
        return replace(self, capture=with_content(hashed, part(tick, 0.6, 1.0)))

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()


def open_capture(path: str | os.PathLike[str]) -> OpenCapture:
    """Open a capture file read-only.

    Parameters
    ----------
    path : path-like
        The file.

    Returns
    -------
    OpenCapture
        Holds the file open until it is closed.

    Raises
    ------
    CaptureError
        Where the file cannot be read as a capture; the sentence says what, where, and what to do.
    NewerFormatError
        Where a later version of the format was used.
    """
    where = Path(path)
    file = strict.open_file(where)
    try:
        capture, assumptions = _read(file, where)
    except BaseException:
        file.close()
        raise
    return OpenCapture(capture, assumptions, file)


def require_signal(capture: Capture) -> None:
    """Check that there is something to examine.

    A capture of the ground or the reference alone is a legal file, but no track can be judged by it.

    Raises
    ------
    CaptureError
        Where no record has a signal or second-signal channel.
    """
    wanted = {Role.SIGNAL, Role.SECOND_SIGNAL}
    if not any(channel.role in wanted for record in capture.records for channel in record.channels):
        raise CaptureError(
            say("no record has a channel whose role is signal"),
            say("record the signal wire, or set the role"),
        )


def _read(file: h5py.File, path: Path) -> tuple[Capture, tuple[str, ...]]:
    found = read_stored(file, path)
    words, stored = found.words, found.records
    if not stored:
        raise CaptureError(
            say("the capture holds no records"), say("record the sensor again, or choose another file")
        )
    assumptions: list[str] = []
    records = tuple(record for item in stored if (record := _record(item, assumptions)) is not None)
    _check_not_empty(stored, records)
    if not words.has(layout.ID_KEY):
        assumptions.append(say("the capture has no id; one is derived from its content"))
    capture = Capture(
        capture_id=words.text(layout.ID_KEY) or memory.stand_in_id(records),
        records=records,
        title=words.text(layout.TITLE_KEY),
        attributes=words.rest(layout.CAPTURE_KEYS),
        path=path,
    )
    return capture, tuple(assumptions)


def _check_not_empty(stored: Sequence[StoredRecord], records: Sequence[Record]) -> None:
    """Refuse a capture of which nothing is left; say the most useful reason."""
    if any(channel.role is not None for record in records for channel in record.channels):
        return
    lengths = [channel.length for item in stored for channel in item.channels if _is_channel(channel)]
    if lengths and max(lengths) < 2:
        held = say("no samples") if max(lengths) == 0 else say("one sample a channel")
        raise CaptureError(say("the capture holds {held}", held=held), say("record the sensor again"))
    raise CaptureError(
        say("no channel of the capture has a known role"),
        say(
            "set the attribute {role_key} of each channel to signal, reference, ground or supply",
            role_key=layout.ROLE_KEY,
        ),
    )


def _record(stored: StoredRecord, assumptions: list[str]) -> Record | None:
    """A record, or None where it holds nothing to look at, which is stated."""
    known = [item for item in stored.channels if _is_channel(item)]
    if not known:
        assumptions.append(say("{where} holds no channel and is set aside", where=stored.words.where))
        return None
    interval = interval_s(stored.words)
    length = _common_length(stored.words.where, known)
    if length < 2:
        held = say("no samples") if length == 0 else say("one sample a channel")
        assumptions.append(say("{where} holds {held} and is set aside", where=stored.words.where, held=held))
        return None
    step = _step(stored.words, assumptions)
    channels = tuple(_channel(stored.group, item, assumptions) for item in known if item.length == length)
    taken = layout.RECORD_KEYS if step is not None else layout.RECORD_KEYS - {layout.STEP_KEY}
    return Record(
        name=stored.name,
        sample_interval_s=interval,
        channels=channels,
        label=stored.words.text(layout.LABEL_KEY),
        step=step,
        first_sample_s=stored.words.finite(layout.FIRST_SAMPLE_KEY) or 0.0,
        attributes=stored.words.rest(taken),
    )


def _is_channel(stored: StoredChannel) -> bool:
    """Whether a dataset states a role that is known, or at least is a plain run of volts."""
    if stored.role is not None:
        return True
    unit = stored.words.attributes.values.get(layout.UNITS_KEY)
    return not stored.trouble and unit in layout.VOLTS_A_UNIT


def _common_length(where: str, channels: Sequence[StoredChannel]) -> int:
    """Length of the channels whose role is known; of all where none is."""
    for item in channels:
        if item.trouble:
            raise CaptureError(
                say("{where} {trouble}", where=item.words.where, trouble=item.trouble),
                say("store plain one-dimensional numbers"),
            )
    stated = [item for item in channels if item.role is not None] or channels
    lengths = {item.length for item in stated}
    if len(lengths) > 1:
        listed = ", ".join(f"{item.name} {item.length:,}" for item in stated)
        raise CaptureError(
            say("the channels of {where} differ in length ({listed})", where=where, listed=listed),
            say("export that record again"),
        )
    return lengths.pop()


def _step(words: Described, assumptions: list[str]) -> Step | None:
    text = words.text(layout.STEP_KEY)
    try:
        return Step(text)
    except ValueError:
        said = say("the step {text!r}, which is unknown", text=text) if text else say("no step")
        assumptions.append(
            say(
                "{where} states {said}; the step is taken from what the samples show",
                where=words.where,
                said=said,
            )
        )
        return None


def _channel(group: h5g.GroupID, stored: StoredChannel, assumptions: list[str]) -> Channel:
    words = stored.words
    role = stored.role
    if role is None:
        text = words.text(layout.ROLE_KEY)
        said = say("the role {text!r}, which is unknown", text=text) if text else say("no role")
        assumptions.append(
            say("{where} states {said}; it is shown and not judged", where=words.where, said=said)
        )
    source = strict.DatasetSource(group, stored.name, words.where)
    if words.number(layout.GAIN_ERROR_KEY) is None or words.number(layout.OFFSET_ERROR_KEY) is None:
        assumptions.append(say("{where} states no full accuracy; it is unknown, not zero", where=words.where))
    taken = layout.CHANNEL_KEYS if role is not None else layout.CHANNEL_KEYS - {layout.ROLE_KEY}
    return Channel(
        name=stored.name,
        role=role,
        source=source,
        scaling=_scaling(words, source, assumptions),
        gain_error=words.finite(layout.GAIN_ERROR_KEY),
        offset_error_v=words.finite(layout.OFFSET_ERROR_KEY),
        attributes=words.rest(taken),
        overview=_overview(group, stored.name, source),
    )


def _scaling(words: Described, source: strict.DatasetSource, assumptions: list[str]) -> Scaling:
    """CF scaling in volts, whatever voltage unit the channel is stored in."""
    factor = volts_a_unit(words)
    scale = words.finite(layout.SCALE_KEY)
    if scale == 0.0:
        raise CaptureError(
            say(
                "the {scale_key} of {where} is {value}",
                scale_key=layout.SCALE_KEY,
                where=words.where,
                value=0,
            ),
            say("store the volts a count there"),
        )
    if scale is None and source.dtype.kind in "iu":
        unit = words.text(layout.UNITS_KEY)
        assumptions.append(
            say(
                "{where} states no {scale_key}; a count is taken as {count} {unit}",
                count=1,
                where=words.where,
                scale_key=layout.SCALE_KEY,
                unit=unit,
            )
        )
    fill = words.number(layout.FILL_KEY)
    return Scaling(
        scale_factor=(1.0 if scale is None else scale) * factor,
        add_offset=(words.finite(layout.OFFSET_KEY) or 0.0) * factor,
        fill_value=None if fill is None or fill != fill else fill,  # NaN is missing anyway
        valid_min=words.number(layout.VALID_MIN_KEY),
        valid_max=words.number(layout.VALID_MAX_KEY),
    )


def _overview(group: h5g.GroupID, name: str, source: strict.DatasetSource) -> tuple[OverviewLevel, ...]:
    """The stored overview where it fits the samples; empty where there is none or it does not."""
    top = strict.open_group(group, layout.OVERVIEW_GROUP)
    stored = strict.open_group(top, name) if top is not None else None
    if stored is None:
        return ()
    return stored_levels(stored, len(source), source.dtype)
