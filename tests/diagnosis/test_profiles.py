from __future__ import annotations

from pathlib import Path

import pytest

from analysis.captures.model import Role
from analysis.diagnosis.profile_schema import LIMIT_UNITS
from analysis.diagnosis.profiles import (
    ASSUMED_PROFILE,
    Contact,
    Slope,
    available_profiles,
    built_in_ids,
    built_in_text,
    load_profile,
    own_profiles_folder,
)
from analysis.errors import ProfileError
from analysis.intervals import Interval

_OWN = """
id = "crane-boom"
title = "Boom angle, 8 V feed"
contact = "contactless"
ratiometric = false
supply_v = 8.0

[tracks.signal]
valid_v = [0.5, 7.5]
slope = "rising"
source = "our own crane, measured"

[limits.reference_level]
lower = 7.8
upper = 8.2
unit = "V"
source = "our own crane, measured"
"""


def _file(folder: Path, text: str, name: str = "own.toml") -> Path:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def test_the_profiles_that_the_trade_needs_come_with_the_program() -> None:
    assert set(built_in_ids()) >= {
        "generic-ratiometric",
        "pedal",
        "pedal-inverted",
        "pedal-offset",
        "ride-height",
        "ride-height-4v5",
        "ride-height-contactless",
        "throttle",
        "throttle-opposite",
    }


@pytest.mark.parametrize("profile_id", built_in_ids())
def test_every_built_in_profile_keeps_the_schema_and_names_a_source_for_each_figure(profile_id: str) -> None:
    profile = load_profile(profile_id)
    assert profile.id == profile_id
    assert not profile.assumed
    assert profile.path is None
    assert {"ground_drop", "reference_level", "rest_variation", "output_smoothness"} <= set(profile.limits)
    for code, limit in profile.limits.items():
        assert limit.unit == LIMIT_UNITS[code]
        assert len(limit.source) > 10
    for track in profile.tracks.values():
        assert len(track.source) > 10


@pytest.mark.parametrize("profile_id", [name for name in built_in_ids() if name.startswith("pedal")])
def test_the_rest_ranges_of_a_dual_track_agree_with_how_its_second_track_follows(profile_id: str) -> None:
    profile = load_profile(profile_id)
    first, second = profile.tracks[Role.SIGNAL], profile.tracks[Role.SECOND_SIGNAL]
    assert first.rest_v is not None
    assert second.rest_v is not None
    assert profile.second_track is not None
    expected = profile.expected_second_v(first.rest_v.centre)
    assert expected is not None
    assert abs(expected - second.rest_v.centre) < profile.second_track.tolerance_v
    assert (first.slope is second.slope) == (profile.second_track.factor > 0)


def test_where_none_is_named_one_is_assumed_and_says_so() -> None:
    for unnamed in (None, ""):
        profile = load_profile(unnamed)
        assert profile.id == ASSUMED_PROFILE
        assert profile.assumed
        assert profile.contact is Contact.TRACK


def test_a_contactless_profile_differs_from_the_track_it_is_based_on_in_its_contact_alone() -> None:
    track, contactless = load_profile("ride-height"), load_profile("ride-height-contactless")
    assert contactless.contact is Contact.CONTACTLESS
    assert contactless.limits == track.limits
    assert contactless.tracks == track.tracks


def test_an_own_profile_is_read_from_its_path_and_found_by_its_id(tmp_path: Path) -> None:
    path = _file(tmp_path, _OWN)
    by_path, by_id = load_profile(path), load_profile("crane-boom", folder=tmp_path)
    assert by_path == by_id == load_profile(str(path))
    assert by_path.path == path
    assert by_path.supply_v == 8.0
    assert by_path.tracks[Role.SIGNAL].slope is Slope.RISING
    assert by_path.limit("reference_level") is not None
    assert by_path.limit("ground_drop") is None


def test_an_own_profile_may_build_on_a_built_in_one(tmp_path: Path) -> None:
    text = """
id = "lorry"
title = "Lorry cab height"
based_on = "ride-height"
[limits.ground_drop]
upper = 0.05
unit = "V"
source = "stricter, our own"
"""
    profile = load_profile(_file(tmp_path, text))
    base = load_profile("ride-height")
    assert profile.limits["ground_drop"].upper == 0.05
    assert profile.limits["reference_level"] == base.limits["reference_level"]
    assert profile.tracks == base.tracks
    assert base.limits["ground_drop"].upper == 0.1


def test_a_limit_is_replaced_whole_and_does_not_keep_the_other_side_of_the_one_below(tmp_path: Path) -> None:
    text = """
id = "loose"
title = "Only a floor"
based_on = "ride-height"
[limits.reference_level]
lower = 4.5
unit = "V"
source = "our own"
"""
    assert load_profile(_file(tmp_path, text)).limits["reference_level"].upper is None


def test_a_profile_on_another_feed_must_restate_what_depends_on_it(tmp_path: Path) -> None:
    text = 'id = "other"\ntitle = "Other feed"\nbased_on = "ride-height"\nsupply_v = 4.5\n'
    with pytest.raises(ProfileError, match=r"tracks\.signal\.valid_v must be within 0 and supply_v \(4\.5\)"):
        load_profile(_file(tmp_path, text))
    text += "[tracks.signal]\nvalid_v = [0.2, 4.4]\n"
    with pytest.raises(ProfileError, match=r"limits\.reference_level must be a range around supply_v"):
        load_profile(_file(tmp_path, text))


def test_the_list_shows_built_in_and_own_profiles_and_what_is_wrong_with_a_file(tmp_path: Path) -> None:
    _file(tmp_path, _OWN)
    _file(tmp_path, "id = ", name="torn.toml")
    entries = {entry.id: entry for entry in available_profiles(folder=tmp_path)}
    assert entries["ride-height"].path is None
    assert entries["crane-boom"].title == "Boom angle, 8 V feed"
    assert "torn.toml is not TOML" in entries["torn"].problem
    assert entries["crane-boom"].problem == ""


def test_a_folder_that_does_not_exist_leaves_the_built_in_profiles(tmp_path: Path) -> None:
    found = available_profiles(folder=tmp_path / "none")
    assert tuple(entry.id for entry in found) == built_in_ids()


def test_an_own_profile_cannot_take_the_id_of_a_built_in_one(tmp_path: Path) -> None:
    path = _file(tmp_path, _OWN.replace("crane-boom", "ride-height"))
    with pytest.raises(ProfileError, match="'ride-height' belongs to a built-in profile; choose another id"):
        load_profile(path)
    assert load_profile("ride-height", folder=tmp_path).path is None


def test_an_unknown_profile_is_refused_with_those_that_there_are(tmp_path: Path) -> None:
    _file(tmp_path, _OWN)
    with pytest.raises(
        ProfileError, match=r"no sensor profile 'sofa'; choose one of: .*ride-height.*crane-boom"
    ):
        load_profile("sofa", folder=tmp_path)
    with pytest.raises(ProfileError, match="no built-in sensor profile 'sofa'"):
        built_in_text("sofa")


@pytest.mark.parametrize(
    ("before", "after", "complaint"),
    [
        (
            'id = "crane-boom"',
            'id = "Crane Boom"',
            "id must be lower-case letters, digits and single hyphens",
        ),
        ('title = "Boom angle, 8 V feed"', 'title = " "', "title must be text, got ' '"),
        ('title = "Boom angle, 8 V feed"', "", "title must be text, got 'nothing'"),
        ('contact = "contactless"', 'contact = "optical"', "contact must be one of track, contactless"),
        ("ratiometric = false", "ratiometric = 0", "ratiometric must be true or false, got 0"),
        ("supply_v = 8.0", "supply_v = 0", "supply_v must be above 0"),
        ("supply_v = 8.0", "supply_v = 80", "supply_v must be at most 30"),
        ("supply_v = 8.0", "supply_v = true", "supply_v must be a number, got True"),
        ("supply_v = 8.0", "supply_v = nan", "supply_v must be a number, got nan"),
        ("supply_v = 8.0", "supply_v = 8.0\nsuply = 1", "suply must be one of id, title"),
        (
            "valid_v = [0.5, 7.5]",
            "valid_v = [7.5, 0.5]",
            "tracks.signal.valid_v must be two ascending numbers",
        ),
        ("valid_v = [0.5, 7.5]", "valid_v = [0.5]", "tracks.signal.valid_v must be two ascending numbers"),
        ("valid_v = [0.5, 7.5]", "valid_v = 7.5", "tracks.signal.valid_v must be two ascending numbers"),
        ("valid_v = [0.5, 7.5]", "valid_v = [0.5, 9]", "tracks.signal.valid_v must be within 0 and supply_v"),
        ('slope = "rising"', 'slope = "up"', "tracks.signal.slope must be one of rising, falling, either"),
        (
            'slope = "rising"',
            'slope = "rising"\nrest_v = [0, 1]',
            "tracks.signal.rest_v must be inside valid_v",
        ),
        ("[tracks.signal]", "[tracks.third]", "tracks.third must be one of signal, second_signal"),
        ("[limits.reference_level]", "[limits.reference]", "limits.reference must be one of ground_drop"),
        (
            "[limits.reference_level]",
            "[tracks.second_signal]",
            "tracks.second_signal.lower must be one of valid_v",
        ),
        ("lower = 7.8\nupper = 8.2", "", "limits.reference_level.upper must be there where lower is not"),
        ("lower = 7.8", "lower = 9", "limits.reference_level.lower must be at most upper"),
        ("upper = 8.2", "upper = 7.9", "limits.reference_level must be a range around supply_v"),
        ('unit = "V"', 'unit = "mV"', "limits.reference_level.unit must be \"V\", got 'mV'"),
        ('unit = "V"', 'unit = "V"\nhold_s = -1', "limits.reference_level.hold_s must be at least 0"),
        (
            'id = "crane-boom"',
            'id = "crane-boom"\nbased_on = "sofa"',
            "based_on must name a built-in profile",
        ),
        ('id = "crane-boom"', 'id = "crane-boom"\nlimits = 3\n', "is not TOML"),
    ],
)
def test_a_broken_rule_is_said_with_file_key_rule_and_what_came(
    tmp_path: Path, before: str, after: str, complaint: str
) -> None:
    assert before in _OWN
    with pytest.raises(ProfileError) as caught:
        load_profile(_file(tmp_path, _OWN.replace(before, after)))
    assert "own.toml" in str(caught.value)
    assert complaint in str(caught.value)
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize(
    ("extra", "complaint"),
    [
        ("", "second_track must be there if tracks.second_signal is"),
        ("\n[second_track]\nfactor = 0", "second_track.factor must be other than 0"),
        (
            "\n[second_track]\nfactor = 1\noffset_v = 0\ntolerance_v = 0",
            "second_track.tolerance_v must be above 0",
        ),
    ],
)
def test_a_second_track_needs_its_relation(tmp_path: Path, extra: str, complaint: str) -> None:
    track = '\n[tracks.second_signal]\nvalid_v = [0.5, 7.5]\nslope = "rising"\nsource = "our own"\n'
    with pytest.raises(ProfileError) as caught:
        load_profile(_file(tmp_path, _OWN + track + extra))
    assert complaint in str(caught.value)


def test_a_file_that_cannot_be_read_is_said_so(tmp_path: Path) -> None:
    with pytest.raises(ProfileError, match=r"none\.toml cannot be read"):
        load_profile(tmp_path / "none.toml")
    (tmp_path / "a folder.toml").mkdir()
    with pytest.raises(ProfileError, match=r"a folder\.toml cannot be read"):
        load_profile(tmp_path / "a folder.toml")
    (tmp_path / "old.toml").write_bytes('title = "für"'.encode("latin-1"))
    with pytest.raises(ProfileError, match=r"old\.toml is not UTF-8 text"):
        load_profile(tmp_path / "old.toml")


def test_a_byte_order_mark_does_not_matter(tmp_path: Path) -> None:
    (tmp_path / "own.toml").write_text(_OWN, encoding="utf-8-sig")
    assert load_profile(tmp_path / "own.toml").id == "crane-boom"


def test_a_ratiometric_track_moves_with_its_supply_and_another_does_not(tmp_path: Path) -> None:
    range_v = Interval(0.5, 4.5)
    scaled = load_profile("ride-height").at_supply(range_v, supply_v=4.5)
    assert (scaled.start, scaled.stop) == pytest.approx((0.45, 4.05))
    fixed = load_profile(_file(tmp_path, _OWN))
    assert fixed.at_supply(range_v, supply_v=7.0) == range_v


def test_the_offset_of_a_ratiometric_pair_moves_with_its_supply() -> None:
    pair = load_profile("pedal-inverted")
    assert pair.expected_second_v(1.0) == pytest.approx(4.0)
    assert pair.expected_second_v(0.98, supply_v=4.9) == pytest.approx(0.98 * 4.0)
    assert load_profile("ride-height").expected_second_v(1.0) is None


def test_the_folder_of_own_profiles_follows_the_platform() -> None:
    windows = own_profiles_folder({"APPDATA": "/roaming", "HOME": "/home/k"}, platform="win32")
    assert windows == Path("/roaming/wornband/profiles")
    assert own_profiles_folder({"HOME": "/home/k"}, platform="win32") == Path(
        "/home/k/AppData/Roaming/wornband/profiles"
    )
    assert own_profiles_folder({"XDG_CONFIG_HOME": "/set", "HOME": "/home/k"}, platform="linux") == Path(
        "/set/wornband/profiles"
    )
    for missing in ({"HOME": "/home/k"}, {"HOME": "/home/k", "XDG_CONFIG_HOME": "relative"}):
        assert own_profiles_folder(missing, platform="linux") == Path("/home/k/.config/wornband/profiles")
