"""Which bytes stand for which characters, and a text file as one stream of UTF-8 lines."""

from __future__ import annotations

import codecs
import re
from collections.abc import Iterator
from pathlib import Path

from analysis.errors import ImportingError
from analysis.wording import say

_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_CODE_PAGES = {  # by what tables of voltages say, with letters that no other code page has there
    "cp1251": re.compile(r"время|сигнал|частота|период|напряжен|земля|опорн|масса"),
    "cp1254": re.compile(
        r"şas[ei]|değer|ölçüm.{0,12}[ığş]|örnekleme hızı|aralığı|sıklığı|kayıt|çıkış|giriş"
        r"|algılayıcı|başlangıç|sıfır|başlık"
    ),
    "cp1250": re.compile(
        r"sygnał|napię|źród|częstotl|położ|czujnik[^a-z]*ś|č(?:as|idlo)|napět|měř|vzork.{0,12}ě|idő|fesz[üu]lts.g.{0,9}ő"
        r"|kmitoč|měřen|útlum.{0,9}ě"
    ),
}
_JAPANESE = re.compile(r"時間|時刻|日時|測定|電圧|信号|アース|接地|電源|基準|センサ|記録|周期|出力")

_IN_A_ROW = re.compile(r"[\u3041-\u30fe\u4e00-\u9fff]{4}")  # letters of two bytes: elsewhere hardly two meet
_BLOCK_BYTES = 8 * 1024 * 1024
MOST_LINE_BYTES = 1024 * 1024
"""A line of 256 columns has a few KiB; one of a million characters is no row of samples."""


def encoding_of(head: bytes, chosen: str | None = None) -> str:
    """The encoding of a file by its first bytes: its byte-order mark, else what was chosen or fits them.

    Parameters
    ----------
    head : bytes
        From the beginning of the file.
    chosen : str or None
        What somebody says it is.

    Raises
    ------
    ImportingError
        Where the bytes are no text.
    """
    for mark, name in _MARKS:
        if head.startswith(mark):
            return name
    if chosen is not None:
        return chosen
    head = head.rstrip(b"\0\x1a")  # room that a recorder set aside and did not use
    if len(head) >= 4 and head[1::2].count(0) > 0.4 * len(head[1::2]) and not head[0::2].count(0):
        return "utf-16-le"
    if len(head) >= 4 and head[0::2].count(0) > 0.4 * len(head[0::2]) and not head[1::2].count(0):
        return "utf-16-be"
    _check_text(head)
    try:
        codecs.getincrementaldecoder("utf-8")().decode(head)  # a character may be cut at the end
    except UnicodeDecodeError:
        if _is_japanese(head):
            return "cp932"
        for name, words in _CODE_PAGES.items():
            if words.search(head.decode(name, "replace").lower()):
                return name
        return "cp1252"
    return "utf-8"


def _is_japanese(head: bytes) -> bool:
    """Whether all bytes fit Shift-JIS, with what Windows adds to it, and come to Japanese words."""
    try:
        text = codecs.getincrementaldecoder("cp932")().decode(head)
    except UnicodeDecodeError:
        return False
    return bool(_JAPANESE.search(text) or _IN_A_ROW.search(text))


def _check_text(head: bytes) -> None:
    odd = sum(head.count(code) for code in range(32) if code not in b"\t\n\r\f\x1a")
    if odd > 0.001 * len(head):
        raise ImportingError(
            say("it is neither text nor any other kind of file that can be imported"),
            say("save the recording as a table with one row a sample"),
        )


def decoded(head: bytes, encoding: str) -> str:
    """The first characters of a file; a character that is cut at the end is left out."""
    return codecs.getincrementaldecoder(encoding)("replace").decode(head)


def line_blocks(path: Path, encoding: str) -> Iterator[tuple[bytes, int]]:
    """A text file as blocks of whole UTF-8 lines that end in a line feed, the last one where the file has it.

    Yields
    ------
    (bytes, int)
        The lines, and how many bytes of the file have been read so far.

    Raises
    ------
    ImportingError
        Where a line has no end.
    """
    decoder = (
        None if encoding in ("utf-8", "utf-8-sig") else codecs.getincrementaldecoder(encoding)("replace")
    )
    rest, done, feeds = b"", 0, None
    with path.open("rb") as file:
        if encoding == "utf-8-sig":
            done = len(file.read(3))
        while raw := file.read(_BLOCK_BYTES):
            done += len(raw)
            text = raw if decoder is None else decoder.decode(raw).encode("utf-8", "replace")
            if b"\0" in text:
                text = text.replace(b"\0", b"")
            if feeds is None:
                feeds = b"\n" in text
            if not feeds:
                text = text.replace(b"\r", b"\n")
            end = text.rfind(b"\n") + 1
            if len(rest) + (end or len(text)) > MOST_LINE_BYTES and not end:
                raise long_line()
            if end:
                yield rest + text[:end], done
                rest = text[end:]
            else:
                rest += text
    if rest.strip(b"\x1a \t\r"):
        yield rest.rstrip(b"\x1a"), done


def long_line() -> ImportingError:
    """What is said of a line that does not end."""
    return ImportingError(
        say("a line of it is longer than {most:,} characters", most=MOST_LINE_BYTES),
        say("save the recording as a table with one row a sample"),
    )
