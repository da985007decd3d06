from __future__ import annotations

import hashlib
import json
from pathlib import Path

import h5py
import numpy as np
import pytest

from analysis.captures import layout
from analysis.captures.fingerprint import file_sha256, with_sha256
from analysis.captures.model import Match
from analysis.captures.reading import open_capture
from analysis.captures.verification import verify_capture
from analysis.captures.writing import write_capture
from analysis.errors import Cancelled, CaptureError
from tests.captures.examples import small_capture, write_plain

ROLES = {"signal", "second_signal", "reference", "ground", "supply"}


def recomputed(path: Path) -> str:
    """The content fingerprint out of its description alone: ten lines of h5py."""
    digest = hashlib.sha256()
    with h5py.File(path) as file:
        items = [file]
        for _, record in sorted(file["records"].items()):
            items += [record, *(item for _, item in sorted(record.items()) if said(item, "role") in ROLES)]
        for item in items:
            words = [f"{key}={said(item, key)}" for key in sorted(layout.MEANING_KEYS & set(item.attrs))]
            digest.update("".join(f"{line}\n" for line in [item.name, *words]).encode())
            if isinstance(item, h5py.Dataset):
                digest.update(item[()].astype(item.dtype.newbyteorder("<")).tobytes())
    return digest.hexdigest()


def said(item: h5py.HLObject, key: str) -> str:
    value = item.attrs.get(key, "")
    if isinstance(value, str | bytes):
        return value if isinstance(value, str) else value.decode()
    return float(value).hex()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    write_capture(small_capture(), tmp_path / "a.h5")
    return tmp_path / "a.h5"


def repack(source: Path, target: Path) -> None:
    """The same content under another compression, chunking and byte order, without overviews."""
    with h5py.File(source) as old, h5py.File(target, "w") as new:
        new.attrs.update(old.attrs)
        for name, record in old["records"].items():
            group = new.create_group(f"records/{name}")
            group.attrs.update(record.attrs)
            for key in (key for key in record if "role" in record[key].attrs):
                dtype = record[key].dtype.newbyteorder(">")
                packed = group.create_dataset(
                    key, data=record[key][()], dtype=dtype, chunks=(77,), compression="lzf"
                )
                words = {k: v for k, v in record[key].attrs.items() if k != "DIMENSION_LIST"}
                packed.attrs.update(words)


def test_ten_lines_of_h5py_give_the_same_content_fingerprint(path: Path) -> None:
    assert verify_capture(path).content_sha256 == recomputed(path)


def test_ten_lines_of_h5py_agree_on_a_file_of_another_writer(tmp_path: Path) -> None:
    plain = write_plain(tmp_path / "b.h5", np.arange(10, dtype=">i4"))
    found = verify_capture(plain)
    assert found.content_sha256 == recomputed(plain)
    assert found.content is Match.ABSENT
    assert found.passed


def test_channels_of_unknown_role_are_not_part_of_it(path: Path) -> None:
    with h5py.File(path, "a") as file:
        file["records/001/warmth"] = np.zeros((2, 2))
        file["records/001/warmth"].attrs["role"] = "temperature"
    found = verify_capture(path)
    assert found.content is Match.MATCHES
    assert found.content_sha256 == recomputed(path)


def test_what_writing_returns_is_what_the_file_holds_and_what_verifying_finds(tmp_path: Path) -> None:
    returned = write_capture(small_capture(), tmp_path / "a.h5")
    found = verify_capture(tmp_path / "a.h5")
    assert returned == found.stored_sha256 == found.content_sha256
    assert found.content is Match.MATCHES


def test_the_file_fingerprint_is_that_of_any_tool(path: Path) -> None:
    assert file_sha256(path) == hashlib.sha256(path.read_bytes()).hexdigest()
    with open_capture(path) as opened:
        assert with_sha256(opened.capture).sha256 == file_sha256(path)


def test_repacking_changes_the_file_and_not_the_content(path: Path, tmp_path: Path) -> None:
    repack(path, tmp_path / "b.h5")
    one, other = verify_capture(path), verify_capture(tmp_path / "b.h5")
    assert one.sha256 != other.sha256
    assert one.content_sha256 == other.content_sha256
    assert other.content is Match.MATCHES


@pytest.mark.parametrize("what", ["sample", "scale", "vehicle", "plugged"])
def test_a_change_of_meaning_is_found(path: Path, what: str) -> None:
    with h5py.File(path, "a") as file:
        if what == "sample":
            file["records/002/signal"][500] += 1
        elif what == "scale":
            file["records/002/signal"].attrs["scale_factor"] = 0.00250001
        elif what == "vehicle":
            file.attrs["vehicle"] = np.bytes_("Another")
        else:
            file["records/001"].attrs["plugged"] = 0
    found = verify_capture(path)
    assert found.content is Match.DIFFERS
    assert not found.passed


def test_a_note_is_not_part_of_the_evidence(path: Path) -> None:
    with h5py.File(path, "a") as file:
        file.attrs["note"] = "bring a longer probe"
    assert verify_capture(path).content is Match.MATCHES


def review(path: Path, **capture: str) -> None:
    layout.review_path(path).write_text(json.dumps({"capture": capture}), encoding="utf-8")


def test_a_review_of_this_file_matches(path: Path) -> None:
    review(path, sha256=file_sha256(path))
    assert verify_capture(path).review is Match.MATCHES


def test_a_review_of_the_same_content_in_another_file_is_told_apart(path: Path) -> None:
    review(path, sha256="0" * 64, content_sha256=verify_capture(path).content_sha256)
    found = verify_capture(path)
    assert found.review is Match.REPACKED
    assert found.passed


def test_a_review_of_another_capture_does_not_pass(path: Path) -> None:
    review(path, sha256="0" * 64, content_sha256="1" * 64)
    found = verify_capture(path)
    assert found.review is Match.DIFFERS
    assert not found.passed


def test_a_review_that_names_no_fingerprint_says_nothing(path: Path) -> None:
    assert verify_capture(path).review is Match.ABSENT
    review(path)
    assert verify_capture(path).review is Match.ABSENT


@pytest.mark.parametrize("content", [b"{", b"[]", b"\xff", b'{"capture": 5}'])
def test_a_review_that_cannot_be_read_does_not_pass(path: Path, content: bytes) -> None:
    layout.review_path(path).write_bytes(content)
    found = verify_capture(path)
    assert found.review is Match.UNREADABLE
    assert not found.passed
    assert all(sentence.endswith(".") for sentence in found.sentences)


def test_a_file_that_is_gone_is_said_to_be_gone(path: Path) -> None:
    with open_capture(path) as opened:
        path.unlink()
        with pytest.raises(CaptureError, match="no longer"):
            with_sha256(opened.capture)


def test_verifying_reports_progress_and_can_be_cancelled(path: Path) -> None:
    heard: list[float] = []
    verify_capture(path, tick=heard.append)
    assert heard == sorted(heard)
    assert heard[-1] == 1.0

    def stop(done: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        verify_capture(path, tick=stop)
