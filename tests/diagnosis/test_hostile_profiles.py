"""Profiles that a stranger sent, or a bad card: one sentence, whatever stands in them."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from analysis.diagnosis.profiles import load_profile
from analysis.errors import ProfileError

_SOUND = """
id = "own"
title = "Own"
based_on = "generic-ratiometric"
"""


def refusal(path: Path) -> str:
    with pytest.raises(ProfileError) as caught:
        load_profile(path)
    said = str(caught.value)
    assert "\n" not in said
    assert len(said) < 400
    return said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("x = " + "[" * 3000, "nested too deeply"),
        ("x = " + "{a=" * 3000, "nested too deeply"),
        ("x = " + "9" * 5000, "a number that is none"),
        ('id = "own"\nbased_on = []', "based_on"),
        ('id = "own"\nbased_on = {}', "based_on"),
        (_SOUND + "supply_v = " + "9" * 400, "supply_v"),
        (_SOUND + "supply_v = 0x" + "f" * 5000, "supply_v"),
        (_SOUND + "supply_v = inf", "supply_v"),
        (_SOUND + "supply_v = nan", "supply_v"),
        (_SOUND + f"supply_v = [{'1, ' * 10_000}]", "supply_v"),
        (_SOUND + f"[tracks.signal]\nvalid_v = [0.0, {'9' * 400}]", "valid_v"),
        (_SOUND + '[height]\nup = "rising"\npoints = [[0.0, 0.0], [1.0, nan]]', "points"),
        (_SOUND + "#" * 2_000_000, "too long"),
    ],
)
def test_a_profile_that_cannot_be_is_refused_with_a_sentence(tmp_path: Path, text: str, said: str) -> None:
    path = tmp_path / "own.toml"
    path.write_text(text, encoding="utf-8")
    assert said in refusal(path)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_a_pipe_in_the_place_of_a_profile_does_not_make_us_wait(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "own.toml")
    assert "no file" in refusal(tmp_path / "own.toml")
