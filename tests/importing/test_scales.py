# ruff: noqa: E501 - a table is easier to see as it is
"""Counts and per cent whose scale stands in the file, and what is asked where it does not."""

from __future__ import annotations

import math
import shlex
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.errors import ImportingError
from analysis.importing.bring_in import import_capture
from analysis.importing.needs import Need
from analysis.importing.preview import preview
from analysis.importing.scales import scale_of_counts, scale_of_per_cent
from analysis.importing.wishes import Wishes
from app.command_line import main

_EVERY = range(300)
_LSB_V = 5.0 / 4096
_COUNTS = {
    Role.GROUND: [14 + n % 3 for n in _EVERY],
    Role.REFERENCE: [4085 + n % 4 for n in _EVERY],
    Role.SIGNAL: [round(2000 + 1500 * math.sin(n / 40)) for n in _EVERY],
}
_ROLES = (Role.GROUND, Role.REFERENCE, Role.SIGNAL)


def _table(head: str, form: str = "{n},{g},{r},{s}", **changed: list[int]) -> str:
    wires = zip(*(changed.get(str(role), _COUNTS[role]) for role in _ROLES), strict=True)
    return head + "".join(
        form.format(n=n, t=n / 500, g=g, r=r, s=s) + "\n" for n, (g, r, s) in enumerate(wires)
    )


def _volts(path: Path) -> dict[Role, np.ndarray]:
    with open_capture(path) as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.002)
        return {item.role: item.volts() for item in record.channels if item.role is not None}


def _assert_scaled(found: dict[Role, np.ndarray], slope: float, zero_v: float = 0.0) -> None:
    assert set(found) == set(_ROLES)
    for role in _ROLES:
        np.testing.assert_allclose(
            found[role], slope * np.array(_COUNTS[role]) + zero_v, rtol=1e-12, atol=1e-12
        )


_RAW = "n,gnd_raw,ref_raw,sig_raw\n"
_RATE = "# rate: 500 Hz\n"

STATED = {
    "volts per count": ("# gain: 0.0012207 V/count\n" + _RATE + _RAW, 0.0012207, 0.0),
    "millivolts per digit, a comma": ("# Auflösung 1,2207 mV/Digit\n" + _RATE + _RAW, 0.0012207, 0.0),
    "the unit before the number": ("# Scale (mV/LSB): 1.2207\n" + _RATE + _RAW, 0.0012207, 0.0),
    "one count is": ("# 1 LSB = 1.2207 mV\n" + _RATE + _RAW, 0.0012207, 0.0),
    "one digit, in German": ("# 1 Digit entspricht 1,2207 mV\n" + _RATE + _RAW, 0.0012207, 0.0),
    "a formula": ("# V = raw * 5 / 4096\n" + _RATE + _RAW, _LSB_V, 0.0),
    "a formula with a zero": ("# U = (N - 8) * 0.00125\n" + _RATE + _RAW, 0.00125, -0.01),
    "a formula with signs of its own": ("# volts = 0.00125 × count − 0.01\n" + _RATE + _RAW, 0.00125, -0.01),
    "volts per count and a zero": ("# 0.00125 V/count, zero at count 8\n" + _RATE + _RAW, 0.00125, -0.01),
    "volts per count and an offset": ("# 0.00125 V/count, offset -0.01 V\n" + _RATE + _RAW, 0.00125, -0.01),
    "a formula and a remark": ("# V = 5 * N / 4096 (12 bit)\n" + _RATE + _RAW, _LSB_V, 0.0),
    "a formula with its unit": ("# Umrechnung: U = Digits * 5 V / 4096\n" + _RATE + _RAW, _LSB_V, 0.0),
    "the size of one": ("# LSB size: 1.2207 mV\n" + _RATE + "n,ground (LSB),reference (LSB),signal (LSB)\n", 0.0012207, 0.0),
    "both ends": ("# 0..4095 = 0..5 V\n" + _RATE + _RAW, 5.0 / 4095, 0.0),
    "bits and full scale": ("# ADC 12 bit, 0-5 V full scale\n" + _RATE + _RAW, _LSB_V, 0.0),
    "bits and full scale apart": ("# ADC: 12-bit\n# Vref: 5.0 V\n" + _RATE + _RAW, _LSB_V, 0.0),
    "a unit of counts": ("# 1 count = 1.2207 mV\n" + _RATE + "n,ground [counts],reference [counts],signal [counts]\n", 0.0012207, 0.0),
    "no word but whole numbers": ("# 0.0012207 V per count\n" + _RATE + "n,ground,reference,signal\n", 0.0012207, 0.0),
}  # fmt: skip


def test_a_flag_beside_counts_is_none_of_them(tmp_path: Path) -> None:
    head = "# 1 LSB = 1.2207 mV\n" + _RATE + "n,ground,reference,signal,flag\n"
    (tmp_path / "t.csv").write_text(_table(head, "{n},{g},{r},{s},1"))
    (understood,) = import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert "a count of ground, reference, signal is read as" in understood.notes[0]


@pytest.mark.parametrize("name", STATED)
def test_a_scale_that_the_file_states_is_taken_with_a_note(name: str, tmp_path: Path) -> None:
    head, slope, zero_v = STATED[name]
    (tmp_path / "t.csv").write_text(_table(head), encoding="utf-8")
    (understood,) = import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    _assert_scaled(_volts(tmp_path / "a.h5"), slope, zero_v)
    (note,) = understood.notes
    assert note.startswith("a line above the samples says")
    assert "is read as" in note
    seen = preview(tmp_path / "t.csv")
    assert seen.problems == ()
    reference = next(item for item in seen.columns if item.role is Role.REFERENCE)
    assert reference.low == pytest.approx(4085 * slope + zero_v)


NO_SCALE = {
    "a drawing": ["scale 1:50"],
    "a screen": ["Scale: 5 V/div"],
    "a step of the arm": ["0.5 V per step of the arm"],
    "bits alone": ["resolution 12 bit"],
    "bits beside a battery": ["recorder with 12 bit, battery 12.6 V"],
    "bits beside a version": ["12-bit logger, software V 5.2"],
    "a number of the maker": ["serial 4095: 5 V version"],
    "an offset that it does not say": ["0.00122 V/count", "offset: see sheet"],
    "two that differ": ["1 LSB = 1.22 mV", "V = count * 0.005"],
    "two polarities": ["12 bit, ±10 V full scale"],
    "a formula of names": ["Messwert = Rohwert * Faktor + Offset"],
    "a formula that bends": ["V = raw * raw * 0.001"],
    "a formula that does more": ["V = __import__('os').getpid() * raw"],
    "nothing by nought": ["V = raw / 0"],
    "one that was applied": ["0.00122 V/count (already applied)"],
    "of one channel alone": ["CH2: 0.00122 V/count"],
    "one number for each column": ["Scale (V/count);0.00122;0.00122;0.00122"],
}  # fmt: skip


@pytest.mark.parametrize("name", NO_SCALE)
def test_a_line_that_only_looks_like_a_scale_is_none(name: str) -> None:
    assert scale_of_counts(NO_SCALE[name]) is None


def test_4095_and_4096_steps_are_one_scale_and_the_formula_is_followed() -> None:
    found = scale_of_counts(["ADC 12 bit, 0..4095 = 0..5 V", "V = count * 0.001220703"])
    assert found is not None
    assert (found.volts, found.line) == (0.001220703, "V = count * 0.001220703")


def test_a_scale_of_counts_leaves_volts_and_millivolts_as_they_are(tmp_path: Path) -> None:
    for form, unit in (("{t:.3f},{g},{r},{s}", "mV"), ("{t:.3f},0.{g:03d},{r},{s}", "mV")):
        head = (
            f"# internally 0.0012207 V/count\ntime [s],ground [{unit}],reference [{unit}],signal [{unit}]\n"
        )
        (tmp_path / "t.csv").write_text(_table(head, form, reference=[4990 + n % 4 for n in _EVERY]))
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", replace_target=True)
        assert _volts(tmp_path / "a.h5")[Role.REFERENCE][0] == pytest.approx(4.99)


def test_a_row_of_factors_and_a_line_of_volts_per_count_are_not_both_followed(tmp_path: Path) -> None:
    head = "# 0.00125 V/count\nname,time,ground,reference,signal\nunit,s,V,V,V\nfactor,1,0.00125,0.00125,0.00125\n"
    (tmp_path / "t.csv").write_text(_table(head, ",{t:.3f},{g},{r},{s}"))
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    _assert_scaled(_volts(tmp_path / "a.h5"), 0.00125)


def test_an_offset_that_was_said_counts_in_the_place_of_the_zero_of_the_file(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(_table("# 0.00125 V/count, zero at count 8\n" + _RATE + _RAW))
    wishes = Wishes(offsets=dict.fromkeys(("gnd_raw", "ref_raw", "sig_raw"), 0.02))
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5", wishes)
    _assert_scaled(_volts(tmp_path / "a.h5"), 0.00125, 0.02)


def test_whole_millivolts_without_a_unit_are_not_scaled_by_a_remark_about_counts(tmp_path: Path) -> None:
    head = "# internally 0.0012207 V/count\ntime [s],ground,reference,signal\n"
    (tmp_path / "t.csv").write_text(
        _table(head, "{t:.3f},{g},{r},{s}", reference=[4990 + n % 4 for n in _EVERY])
    )
    import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert _volts(tmp_path / "a.h5")[Role.REFERENCE][0] == pytest.approx(4.99)


def test_bits_and_a_full_scale_that_make_no_reference_are_asked_about(tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_text(
        _table("# ADC 12 bit, full scale 10 V\n" + _RATE + _RAW, reference=[3000] * 300)
    )
    with pytest.raises(ImportingError, match="sig_raw is in counts, not in volts"):
        import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")


@pytest.mark.parametrize(
    ("unit", "head", "volts"),
    [
        ("% of 5 V", [], 0.05),
        ("% von 5,0 V", [], 0.05),
        ("%", ["100 % = 5 V"], 0.05),
        ("%", ["Signal in % of 5000 mV"], 0.05),
        ("% of range", [], None),
        ("%", ["12 % of 5 V is the tolerance"], None),
        ("%", ["Humidity 40 %, supply 12 V"], None),
    ],
)
def test_per_cent_of_so_many_volts_is_a_scale_and_of_anything_else_is_none(
    unit: str, head: list[str], volts: float | None
) -> None:
    found = scale_of_per_cent(unit, head)
    assert (None if found is None else found.volts) == volts


def test_a_signal_in_per_cent_of_5_v_is_right_at_once(tmp_path: Path) -> None:
    rows = "".join(f"{n / 500:.3f},{50 + 40 * math.sin(n / 40):.2f}\n" for n in _EVERY)
    (tmp_path / "t.csv").write_text("time [s],signal [% of 5 V]\n" + rows)
    (understood,) = import_capture([tmp_path / "t.csv"], tmp_path / "a.h5")
    assert _volts(tmp_path / "a.h5")[Role.SIGNAL][0] == pytest.approx(2.5)
    assert understood.notes == ("'% of 5 V' is said of signal: 1 % is read as 0.05 V",)


def _follow(folder: Path, said: str, capsys: pytest.CaptureFixture[str]) -> None:
    """Type what the sentence says, with the number in the place of VOLTS."""
    options = shlex.split(said.rpartition(" with ")[2].strip().replace("VOLTS", "0.00125"))
    assert main(["import", str(folder / "t.csv"), "-o", str(folder / "a.h5"), *options]) == 0
    capsys.readouterr()


@pytest.mark.parametrize(
    "heading",
    [
        _RAW,
        "n,gnd adc,ref adc,sig adc\n",
        "n,sensor ground (raw),sensor reference (raw),sensor signal (raw)\n",
        'n,"gnd ""a"" raw","ref ""b"" raw","sig ""c"" raw"\n',
        "n,ground [counts],reference [counts],signal [counts]\n",
        "n,ground,reference,signal\n",
    ],
)
def test_one_command_answers_for_every_column_of_counts(
    heading: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "t.csv").write_text(_table(_RATE + heading))
    assert main(["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5")]) == 1
    _follow(tmp_path, capsys.readouterr().err, capsys)
    _assert_scaled(_volts(tmp_path / "a.h5"), 0.00125)
    assert preview(tmp_path / "t.csv").problems[0].need in (Need.ROLES, Need.UNIT)


def test_one_command_answers_for_every_wire_behind_a_probe(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = "".join(f"{n / 500:.3f},{0.002},{0.5},{0.25 + 0.2 * math.sin(n / 40):.4f}\n" for n in _EVERY)
    (tmp_path / "t.csv").write_text("Probe 10:1\ntime [s],left wire [V],red one [V],right wire [V]\n" + rows)
    assert main(["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5")]) == 1
    said = capsys.readouterr().err
    _follow(tmp_path, said.replace("FACTOR", "10"), capsys)
    found = _volts(tmp_path / "a.h5")
    assert set(found) == set(_ROLES)
    np.testing.assert_allclose(found[Role.REFERENCE], 5.0)


def test_a_factor_that_was_said_is_followed_before_the_file_and_the_line_is_not_quoted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "t.csv").write_text(_table("# scale 0.002 V/count\n" + _RATE + _RAW))
    factors = [f"--factor={name}=0.00125" for name in ("gnd_raw", "ref_raw", "sig_raw")]
    assert main(["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5"), *factors]) == 0
    assert "note" not in capsys.readouterr().out
    _assert_scaled(_volts(tmp_path / "a.h5"), 0.00125)


def test_a_reading_beyond_range_gives_no_warning_and_no_counter(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = "".join(f"{n / 500:.3f},{'OL' if n < 4 or n % 50 < 3 else 2.5},{5.0}\n" for n in _EVERY)
    (tmp_path / "t.csv").write_text("time [s],signal [V],ref [V]\n" + rows)
    assert main(["import", str(tmp_path / "t.csv"), "-o", str(tmp_path / "a.h5")]) == 0
    assert capsys.readouterr().err == ""
    assert np.isinf(_volts(tmp_path / "a.h5")[Role.SIGNAL][:3]).all()
