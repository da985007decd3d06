"""Savings that are disturbed where it hurts: at each system call, on a full disk, without the right."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from analysis.errors import WornbandError
from tests.robustness import every_call, small_disk
from tests.robustness.savings import KINDS

EVERY = 3  # calls from one that is tried here to the next; the command tries each


@pytest.fixture(scope="module")
def disturbed() -> dict[str, every_call.Ends]:
    reason = every_call.why_not()
    if reason:
        pytest.skip(reason=reason)
    return every_call.run_every_call(KINDS, EVERY)


@pytest.fixture(scope="module")
def filled() -> dict[str, tuple[int, ...]]:
    reason = small_disk.why_not()
    if reason:
        pytest.skip(reason=reason)
    return small_disk.run_small_disk(KINDS)


@pytest.mark.parametrize("kind", KINDS)
def test_a_crash_at_any_system_call_leaves_the_old_file_or_the_new_one_and_nothing_to_repair(
    kind: str, disturbed: dict[str, every_call.Ends]
) -> None:
    assert disturbed[kind].bad == 0
    assert disturbed[kind].killed > 2


@pytest.mark.parametrize("kind", KINDS)
def test_a_disk_that_is_full_from_any_system_call_on_is_told(
    kind: str, disturbed: dict[str, every_call.Ends]
) -> None:
    if not disturbed[kind].refused:
        pytest.skip(reason="calls are refused on x86-64 alone")
    assert disturbed[kind].told > 1


@pytest.mark.usefixtures("disturbed")
def test_the_watch_sees_a_saving_that_is_not_whole() -> None:
    # One that writes in place: between its calls the file is empty.
    assert every_call.run_every_call(["in place"])["in place"].damaged > 0


@pytest.mark.parametrize("kind", KINDS)
def test_a_full_disk_is_told_and_leaves_the_old_file(kind: str, filled: dict[str, tuple[int, ...]]) -> None:
    tried, told, done, *bad = filled[kind]
    assert bad == [0, 0, 0]
    assert told > 0
    assert told + done == tried


@pytest.mark.ordinary_rights
@pytest.mark.skipif(os.name != "posix", reason="rights are taken away in another way there")
@pytest.mark.ordinary_rights
@pytest.mark.skipif(os.name != "posix", reason="rights are taken away in another way there")
def test_a_folder_without_the_right_to_write_is_told_and_keeps_the_old_file(tmp_path: Path) -> None:
    for kind, made in KINDS.items():
        folder = tmp_path / kind
        folder.mkdir()
        saving = made(folder)
        saving.save(1)
        folder.chmod(0o500)
        try:
            with pytest.raises(WornbandError, match="no right"):
                saving.save(2)
            assert saving.version() == 1, kind
        finally:
            folder.chmod(0o700)
        saving.save(3)
        assert saving.version() == 3, kind
