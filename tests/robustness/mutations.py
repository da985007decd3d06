"""Damage, seeded: what a bad card, a cut transfer or a spiteful stranger makes of a file's bytes."""

from __future__ import annotations

import random
from collections.abc import Callable

from tests.robustness.checksum import repaired

_SIGNATURES = (
    b"\x89HDF", b"OHDR", b"OCHK", b"TREE", b"HEAP", b"SNOD", b"GCOL", b"FRHP", b"FHDB", b"BTHD", b"BTLF",
    b"FAHD", b"FADB", b"EAHD",
)  # fmt: skip
"""How the parts of an HDF5 file begin that say where everything lies (HDF5 file format specification)."""

_TELLING = (0, 1, 2, 0x7F, 0x80, 0xFE, 0xFF)
_LARGE = (2**15, 2**31 - 1, 2**31, 2**32 - 1, 2**40, 2**63 - 1, 2**64 - 1)

Damage = Callable[[bytearray, random.Random], bytes | bytearray]


def flipped(content: bytearray, chance: random.Random) -> bytearray:
    """One to eight bits the other way round."""
    for _ in range(chance.randint(1, 8)):
        content[chance.randrange(len(content))] ^= 1 << chance.randrange(8)
    return content


def replaced(content: bytearray, chance: random.Random) -> bytearray:
    """One to eight bytes set to telling values."""
    for _ in range(chance.randint(1, 8)):
        content[chance.randrange(len(content))] = chance.choice((*_TELLING, chance.randrange(256)))
    return content


def cut_short(content: bytearray, chance: random.Random) -> bytearray:
    """The end missing."""
    return content[: chance.randrange(len(content))]


def zeroed(content: bytearray, chance: random.Random) -> bytearray:
    """A stretch of zeros, or of the all-ones of an erased flash block."""
    start = chance.randrange(len(content))
    size = min(chance.choice((4, 16, 64, 512, 4096)), len(content) - start)
    content[start : start + size] = chance.choice((b"\0", b"\xff")) * size
    return content


def moved(content: bytearray, chance: random.Random) -> bytearray:
    """A stretch copied over another one."""
    size = chance.choice((4, 16, 64, 512))
    source, target = chance.randrange(len(content)), chance.randrange(len(content))
    piece = content[source : source + size]
    content[target : target + len(piece)] = piece
    return content


def header_hit(content: bytearray, chance: random.Random) -> bytearray:
    """A byte of the first hundred, where the file says what it is."""
    content[chance.randrange(min(100, len(content)))] = chance.choice((*_TELLING, chance.randrange(256)))
    return content


def metadata_hit(content: bytearray, chance: random.Random) -> bytearray:
    """A byte or a number of a part that says where everything lies; half the time its checksum made right."""
    places = [at for sign in _SIGNATURES for at in _all(content, sign)]
    if not places:
        return replaced(content, chance)
    for _ in range(chance.randint(1, 3)):
        at = chance.choice(places) + chance.randrange(4, 300)
        if chance.random() < 0.5:
            piece = bytes([chance.choice((*_TELLING, chance.randrange(256)))])
        else:
            piece = chance.choice(_LARGE).to_bytes(8, "little")[: chance.choice((2, 4, 8))]
        piece = piece[: max(len(content) - at, 0)]
        content[at : at + len(piece)] = piece
    return repaired(content) if chance.random() < 0.5 else content


def _all(content: bytearray, sign: bytes) -> list[int]:
    found, at = [], content.find(sign)
    while at >= 0:
        found.append(at)
        at = content.find(sign, at + 1)
    return found


WORDS = (
    b"null", b"true", b"-1", b"1e999", b"NaN", b"Infinity", b'""', b"[]", b"{}", b'"\\ud800"', b"9" * 400,
    b"9" * 5000, b"1e15", b"-0.0", b"[" * 3000, b'{"a":' * 3000, b"inf", b"nan", b"=", b"\n", b"\x00",
    b"\xff", b'"', b"'''", b"#", b".", b"1979-05-27T07:32:00Z", b"0x7fffffffffffffff", b"5.0", b"100.0",
)  # fmt: skip


def word_hit(content: bytearray, chance: random.Random) -> bytearray:
    """A word, a number or a mark of a text replaced by one that readers stumble over."""
    marks = [at for at, byte in enumerate(content) if byte in b' ,:=[]{}"\n']
    if len(marks) < 2:
        return replaced(content, chance)
    for _ in range(chance.randint(1, 3)):
        first = chance.randrange(len(marks) - 1)
        start, stop = marks[first] + 1, marks[min(first + chance.randint(1, 3), len(marks) - 1)]
        content[start:stop] = chance.choice(WORDS)
    return content


BINARY: tuple[Damage, ...] = (
    flipped,
    replaced,
    cut_short,
    zeroed,
    moved,
    header_hit,
    metadata_hit,
    metadata_hit,
)
TEXT: tuple[Damage, ...] = (flipped, replaced, cut_short, zeroed, moved, word_hit, word_hit, word_hit)


def mutated(original: bytes, kinds: tuple[Damage, ...], chance: random.Random) -> bytes:
    """The content damaged in one of these ways."""
    return bytes(chance.choice(kinds)(bytearray(original), chance))
