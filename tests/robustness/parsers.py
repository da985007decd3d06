"""Every parser that is ours, as a function of bytes that either works or refuses with a sentence."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from analysis.captures.reading import open_capture
from analysis.diagnosis.profile_schema import parse_profile
from analysis.diagnosis.profiles import built_in_ids, built_in_text
from analysis.errors import WornbandError
from analysis.exporting.neutral import neutral
from analysis.importing.cells import number_of
from analysis.importing.delimited import open_text
from analysis.importing.dialect import understood
from analysis.importing.encoding import decoded, encoding_of
from analysis.importing.instants import seconds_of
from analysis.importing.recipe import load_recipe
from analysis.importing.units import is_other_unit, split_heading, unit_of
from analysis.importing.wav import open_wav
from analysis.progress import ignore
from analysis.reports.sheet import csv_text, tabbed_text
from analysis.review.named_files import allowed_path
from analysis.review.stored import parse_review, review_text
from app.printable import printable
from app.settings import Settings
from app.settings_file import SettingsFile
from tests.robustness import originals


@dataclass(frozen=True, slots=True)
class Parser:
    """A parser and the whole inputs that a fuzzer begins with.

    Parameters
    ----------
    use : callable
        Takes any bytes, and a folder of its own; raises `WornbandError` where it refuses them.
    begin : callable
        Makes whole inputs in a folder.
    longest : int
        Bytes beyond which nothing new is expected.
    """

    use: Callable[[bytes, Path], object]
    begin: Callable[[Path], list[bytes]]
    longest: int = 4096


def _file(data: bytes, folder: Path, name: str) -> Path:
    path = folder / name
    path.write_bytes(data)
    return path


def _dialect(data: bytes, folder: Path) -> None:
    understood(decoded(data, encoding_of(data)))


def _text(data: bytes, folder: Path) -> None:
    table = open_text(_file(data, folder, "a.csv"))
    for _ in table.blocks(ignore, []):
        pass


def _wav(data: bytes, folder: Path) -> None:
    table = open_wav(_file(data, folder, "a.wav"))
    for block in table.blocks(ignore, []):
        if len(block) != len(table.columns):
            raise AssertionError("a block has another number of columns than the table")


def _cells(data: bytes, folder: Path) -> None:
    text = data.decode("utf-8", "surrogateescape")
    for parse in (split_heading, unit_of, is_other_unit, number_of, seconds_of):
        parse(text)
    number_of(text, ",", ".")
    (row,) = csv.reader(io.StringIO(csv_text([("", text)]), newline=""))
    for cell in (neutral(text), tabbed_text([(text,)]), row[1]):
        if cell.strip("\0 \ufeff\u200b").strip().startswith(("=", "+", "-", "@")):
            raise AssertionError("a spreadsheet would take this for a formula")
    if len(neutral(text).splitlines()) > 1:
        raise AssertionError("a cell that is two lines")


def _words(data: bytes, folder: Path) -> None:
    text = data.decode("utf-8", "surrogateescape")
    shown = printable(text)
    if len(shown.splitlines()) > 1 or any(ord(letter) < 32 or ord(letter) == 127 for letter in shown):
        raise AssertionError("a control character would reach the terminal")
    path = allowed_path(folder, text)
    if path is not None and not path.resolve().is_relative_to(folder.resolve()):
        raise AssertionError("a name leads out of its folder")


def _review(data: bytes, folder: Path) -> None:
    review = parse_review(data.decode("utf-8"))
    if parse_review(review_text(review)) != review:
        raise AssertionError("what was read is not what is written")


def _profile(data: bytes, folder: Path) -> None:
    parse_profile(data.decode("utf-8-sig"), name="a.toml", built_in=_BUILT_IN)


_BUILT_IN = {name: built_in_text(name) for name in built_in_ids()}


def _settings(data: bytes, folder: Path) -> None:
    settings = Settings(SettingsFile(_file(data, folder, "settings.json")))
    for name in ("recent", "known_good", "workshop", "paper", "lanes", "colours", "language", "geometry"):
        getattr(settings, name)
    settings.chosen_files(folder)


def _recipe(data: bytes, folder: Path) -> None:
    load_recipe(_file(data, folder, "a.json"))


def _capture(data: bytes, folder: Path) -> None:
    with open_capture(_file(data, folder, "a.h5")):
        pass


def _read(begin: Callable[[Path], list[Path]]) -> Callable[[Path], list[bytes]]:
    return lambda folder: [path.read_bytes() for path in begin(folder)]


def _texts(*texts: str) -> Callable[[Path], list[bytes]]:
    return lambda folder: [text.encode() for text in texts]


def _wavs(folder: Path) -> list[bytes]:
    import numpy as np
    from scipy.io import wavfile

    found = []
    for kind in (np.uint8, np.int16, np.int32, np.float32):
        wavfile.write(folder / "a.wav", 1000, np.arange(40).reshape(-1, 2).astype(kind))
        found.append((folder / "a.wav").read_bytes())
    return found


_TABLES = _texts(
    "Time,Signal,Ground\n(s),(V),(mV)\n" + "".join(f"{at * 1e-3:.4f},2.5,{at}\n" for at in range(20)),
    "Zeit [s];U/mV\n" + "".join(f"0,{at:03d};1.234,5\n" for at in range(20)),
    "# rate: 1 kHz\n# made: 2024-05-06 07:08:09\nsample\tV\n" + "".join(f"{at}\t0.1\n" for at in range(20)),
    '"a, b";"c"\n' + "".join(f"{at};-1e-3\n" for at in range(20)),
    "12:00:00.000 1.5\n12:00:00.001 1.6\n12:00:00.002 1.7\n12:00:00.003 1.7\n",
)

PARSERS = {
    "dialect": Parser(_dialect, _TABLES),
    "text": Parser(_text, _TABLES),
    "cells": Parser(
        _cells, _texts("U/mV", "Time (s)", "1.234,5", "-0x1p3", "12:30:01,5", "2024-05-06T07:08:09Z", "=1+1")
    ),
    "words": Parser(_words, _texts("a.png", "../a", "C:\\a", "\x1b[2J", "\u202egnp.exe", "a/./b", "\u2028")),
    "recipe": Parser(
        lambda data, folder: load_recipe(_file(data, folder, "a.json")), _read(originals.recipes)
    ),
    "review": Parser(_review, lambda folder: [originals.review(folder / "r.json").read_bytes()], 8192),
    "profile": Parser(_profile, lambda folder: [built_in_text(name).encode() for name in built_in_ids()]),
    "settings": Parser(_settings, _read(originals.settings)),
    "wav": Parser(_wav, _wavs),
    "capture": Parser(_capture, lambda folder: [originals.oldest(folder / "c.h5").read_bytes()], 65536),
}


def refused(parser: Parser, data: bytes, folder: Path) -> bool:
    """Whether a parser refuses bytes with one sentence; raises whatever else it does."""
    try:
        parser.use(data, folder)
    except (WornbandError, UnicodeDecodeError) as error:
        # A text that is none is refused by those who read the file, before the parser sees it.
        if isinstance(error, WornbandError) and ("\n" in str(error) or not error.problem or not error.action):
            raise AssertionError(f"this is no sentence: {error}") from error
        return True
    return False
