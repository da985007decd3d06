# ruff: noqa: E501 - a table is easier to see as it is
"""Words of wires in compounds and legends, and what is said where behaviour speaks against a heading."""

from __future__ import annotations

import math
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.importing.bring_in import import_capture
from analysis.importing.understood import Understood
from analysis.importing.wire_words import is_vague, names_another_of_a_sensor, said_role

_EVERY = range(300)
_SIGNAL_V = [round(2.4 + 1.7 * math.sin(n / 40), 3) for n in _EVERY]
_REFERENCE_V = [round(5.011 + 0.001 * (n % 3), 3) for n in _EVERY]
_GROUND_V = [round(0.021 + 0.001 * (n % 4), 3) for n in _EVERY]
_VOLTS = {Role.SIGNAL: _SIGNAL_V, Role.REFERENCE: _REFERENCE_V, Role.GROUND: _GROUND_V}

GROUND, REFERENCE, SIGNAL, SUPPLY = Role.GROUND, Role.REFERENCE, Role.SIGNAL, Role.SUPPLY

WORDS = {
    "Sensormasse": GROUND, "Gebermasse": GROUND, "Signalmasse": GROUND, "Sensor-Masse": GROUND, "Referenzmasse": GROUND, "Bezugspotential": GROUND, "Massepunkt": GROUND,
    "Fühlerminus": GROUND, "Sensormassa": GROUND, "Givarjord": GROUND, "Masa czujnika": GROUND, "Kostra": GROUND,
    "Şase": GROUND, "signal ground": GROUND, "アース": GROUND, "接地": GROUND, "センサGND": GROUND,
    "Sensorversorgung": REFERENCE, "Sensorspeisung": REFERENCE, "Geberversorgung": REFERENCE, "Sensorvoeding": REFERENCE,
    "Givarmatning": REFERENCE, "Zasilanie czujnika": REFERENCE, "alimentation capteur": REFERENCE, "基準電圧": REFERENCE,
    "センサ電源": REFERENCE, "電源": SUPPLY, "Batterie": SUPPLY,
    "Sensorsignal": SIGNAL, "Sensorausgang": SIGNAL, "Sensorsignaal": SIGNAL, "Givarsignal": SIGNAL, "Sygnał czujnika": SIGNAL,
    "ｱｰｽ": GROUND, "５Ｖ": REFERENCE, "信号": SIGNAL, "センサ出力": SIGNAL, "Höhengeber": SIGNAL, "Signal gegen Masse": SIGNAL, "sensor": SIGNAL, "sensor feedback signal": SIGNAL,
}  # fmt: skip


@pytest.mark.parametrize("words", WORDS)
def test_the_word_of_a_wire_outweighs_that_of_the_sensor_it_belongs_to(words: str) -> None:
    assert said_role(words) is WORDS[words]
    assert not is_vague(words)


@pytest.mark.parametrize(
    "words", ["Luftmasse", "masse d'air", "Massenstrom", "massage", "Fahrzeugmasse kg", "Motorlauf"]
)
def test_words_that_only_look_like_a_wire_name_none(words: str) -> None:
    assert said_role(words) is None


@pytest.mark.parametrize("words", ["Sensorik", "Sensormassenstrom", "sensor xyz", "Sensorkram", "Sensor rot"])
def test_a_sensor_with_a_word_that_is_not_known_is_vague(words: str) -> None:
    assert is_vague(words)


@pytest.mark.parametrize(
    ("words", "other"),
    [
        ("Sensortemperatur", True),
        ("Sensortemp", True),
        ("sensor current", True),
        ("speed sensor", False),
        ("sensor signal current", False),
    ],
)
def test_what_a_sensor_has_beside_its_wires_is_told_from_what_it_measures(words: str, other: bool) -> None:
    assert names_another_of_a_sensor(words) is other


def _table(head: str, *columns: list[float]) -> str:
    rows = zip(*columns, strict=True)
    return head + "".join(";".join([f"{n / 200:.3f}", *map(str, row)]) + "\n" for n, row in enumerate(rows))


def _imported(folder: Path, text: str, encoding: str = "utf-8") -> tuple[Understood, dict[Role, np.ndarray]]:
    (folder / "t.csv").write_bytes(text.encode(encoding))
    (understood,) = import_capture([folder / "t.csv"], folder / "a.h5")
    with open_capture(folder / "a.h5") as opened:
        (record,) = opened.capture.records
        assert record.sample_interval_s == pytest.approx(0.005)
        return understood, {item.role: item.volts() for item in record.channels if item.role is not None}


def _assert_right(found: dict[Role, np.ndarray]) -> None:
    assert set(found) == set(_VOLTS)
    for role, volts in _VOLTS.items():
        np.testing.assert_allclose(found[role], volts, atol=1e-9)


RIGHT = {
    "German": "Zeit [s];Gebermasse [V];Geberversorgung [V];Gebersignal [V]\n",
    "Dutch": "Tijd [s];Sensormassa [V];Sensorvoeding [V];Sensoruitgang [V]\n",
    "Swedish": "Tid [s];Givarjord [V];Givarmatning [V];Givarsignal [V]\n",
    "Polish": "Czas [s];Masa czujnika [V];Zasilanie czujnika [V];Sygnał czujnika [V]\n",
    "Finnish": "Aika [s];Anturin maa [V];Anturin syöttö [V];Anturin signaali [V]\n",
    "units behind a slash": "t/s;Signalmasse/V;Sensorspannungsversorgung/V;Sensorausgang/V\n",
    "legend by letter": "Kanal A = Sensormasse\nKanal B = Versorgung 5 V\nKanal C = Sensorsignal\n\nt [s];A [V];B [V];C [V]\n",
    "legend by number": "# CH1: ground\n# CH2: 5V ref\n# CH3: wiper\nt [s];CH1 [V];CH2 [V];CH3 [V]\n",
    "legend on one line": "CH1=gnd, CH2=vref, CH3=sig\nt [s];CH1 [V];CH2 [V];CH3 [V]\n",
    "legend the other way round": "Ground = channel 1\nReference = channel 2\nSignal = channel 3\nt [s];Channel 1 [V];Channel 2 [V];Channel 3 [V]\n",
    "legend with colours": "Kanal 1 (blau): Sensormasse\nKanal 2 (rot): Versorgung +5V\nKanal 3 (gelb): Sensorsignal\nt [s];Kanal 1 [V];Kanal 2 [V];Kanal 3 [V]\n",
    "legend in brackets": "Channels: 1 (ground), 2 (5 V ref), 3 (signal)\nt [s];CH1 [V];CH2 [V];CH3 [V]\n",
    "legend by titles": "Name CH1: Sensor ground\nName CH2: Reference\nCH3 name: Signal\nt [s];CH1 [V];CH2 [V];CH3 [V]\n",
    "legend above the headings": "Label;ground;5V ref;signal\nt [s];CH1 [V];CH2 [V];CH3 [V]\n",
    "legend between cells": "Input 1;Sensor ground\nInput 2;Sensor supply\nInput 3;Sensor signal\nt [s];Input 1;Input 2;Input 3\n",
}  # fmt: skip


@pytest.mark.parametrize("name", RIGHT)
def test_wires_named_in_compounds_or_in_the_head_are_right_at_once(name: str, tmp_path: Path) -> None:
    understood, found = _imported(tmp_path, _table(RIGHT[name], _GROUND_V, _REFERENCE_V, _SIGNAL_V))
    _assert_right(found)
    assert all(
        ("the head says so" if "legend" in name else "its heading") in item.reason
        for item in understood.plan.channels
    )
    assert understood.notes == ()


def test_a_legend_is_followed_where_behaviour_would_say_otherwise(tmp_path: Path) -> None:
    low = [0.03 + 0.001 * (n % 5) for n in _EVERY]  # a signal wire that is pulled down
    head = "A: sensor signal\nB: sensor ground\nC: 5V reference\nt [s];A [V];B [V];C [V]\n"
    understood, found = _imported(tmp_path, _table(head, low, _GROUND_V, _REFERENCE_V))
    np.testing.assert_allclose(found[Role.SIGNAL], low, atol=1e-9)
    np.testing.assert_allclose(found[Role.GROUND], _GROUND_V, atol=1e-9)
    assert understood.plan.channels[0].reason == "the head says so: A: sensor signal"


@pytest.mark.parametrize(
    "head",
    [
        "CH1 coupling: GND\nTrigger signal: CH1\n",
        "CH1: 5 V\nCH2: 5 V\nCH3: 5 V\n",
        "CH1: DC, ground lead short\n",
        "Sensor: A\nPosition: 3\n",
        "Ranges: 1 (5 V), 2 (5 V), 3 (5 V)\n",
        "Coupling;gnd;dc;dc\n",
        "CH1: signal\nCH1: ground\n",
        "CH3: no signal\nB: signal was lost twice when the harness was moved\n",
    ],
)
def test_a_line_that_only_looks_like_a_legend_is_not_followed(head: str, tmp_path: Path) -> None:
    understood, found = _imported(
        tmp_path, _table(head + "t [s];CH1 [V];CH2 [V];CH3 [V]\n", _SIGNAL_V, _REFERENCE_V, _GROUND_V)
    )
    _assert_right(found)
    assert not any("head" in item.reason for item in understood.plan.channels)


def test_a_wire_by_a_word_that_nobody_knows_is_taken_by_its_level_and_said_to_be_doubtful(
    tmp_path: Path,
) -> None:
    head = "t [s];Sensor abc [V];Sensor xyz [V];Sensor uvw [V]\n"
    understood, found = _imported(tmp_path, _table(head, _GROUND_V, _REFERENCE_V, _SIGNAL_V))
    _assert_right(found)
    said = [note for note in understood.notes if "no wire that is known here" in note]
    assert [note.partition(" names")[0] for note in said] == ["Sensor abc", "Sensor xyz"]


def test_a_stuck_second_sensor_is_no_wire_of_the_first(tmp_path: Path) -> None:
    stuck = [0.02] * len(_EVERY)
    understood, found = _imported(tmp_path, _table("t [s];Sensor 1 [V];Sensor 2 [V]\n", _SIGNAL_V, stuck))
    assert set(found) == {Role.SIGNAL, Role.SECOND_SIGNAL}
    assert understood.notes == ()


def test_what_a_pedal_is_called_makes_it_no_ground(tmp_path: Path) -> None:
    stuck = [0.02] * len(_EVERY)
    _, found = _imported(tmp_path, _table("t [s];Pedal alpha [V];Pedal beta [V]\n", _SIGNAL_V, stuck))
    assert set(found) == {Role.SIGNAL, Role.SECOND_SIGNAL}


def test_of_a_column_that_says_signal_and_one_that_says_sensor_the_first_is_the_signal(
    tmp_path: Path,
) -> None:
    head = "t [s];Sensorspannung [V];Sensor xyz [V];Sensorausgang [V];Masse [V]\n"
    understood, found = _imported(tmp_path, _table(head, _REFERENCE_V, [1.2] * 300, _SIGNAL_V, _GROUND_V))
    np.testing.assert_allclose(found.pop(Role.SECOND_SIGNAL), 1.2)
    _assert_right(found)
    assert any("Sensorspannung names a sensor and no wire" in note for note in understood.notes)


def test_the_ground_of_a_second_sensor_is_no_second_signal(tmp_path: Path) -> None:
    head = "t [s];Sensor 1 ground [V];Sensor 1 signal [V];Sensor 2 ground [V];Sensor 2 output [V]\n"
    other = [5.0 - volts for volts in _SIGNAL_V]
    _, found = _imported(tmp_path, _table(head, _GROUND_V, _SIGNAL_V, _GROUND_V, other))
    np.testing.assert_allclose(found[Role.SECOND_SIGNAL], other)


def test_two_columns_that_behave_as_each_other_are_never_stated_as_certain(tmp_path: Path) -> None:
    head = "t [s];Signal [V];Masse [V];Referenz [V]\n"
    understood, found = _imported(tmp_path, _table(head, _GROUND_V, _SIGNAL_V, _REFERENCE_V))
    np.testing.assert_allclose(found[Role.GROUND], _SIGNAL_V, atol=1e-9)  # the words are followed
    assert (
        "the columns Signal, Masse behave otherwise than their headings say: check which is which"
        in understood.notes
    )
    reasons = {item.role: item.reason for item in understood.plan.channels}
    assert reasons[Role.SIGNAL] == reasons[Role.GROUND] == "its heading says so, but it behaves otherwise"
    assert reasons[Role.REFERENCE] == "its heading says so"


def test_one_wire_that_behaves_otherwise_is_a_fault_and_no_doubt(tmp_path: Path) -> None:
    head = "t [s];Signal [V];Masse [V];Referenz [V]\n"
    low = [0.03 + 0.001 * (n % 5) for n in _EVERY]
    understood, _ = _imported(tmp_path, _table(head, low, _GROUND_V, _REFERENCE_V))
    assert understood.notes == ()


JAPANESE = {
    "seconds in brackets": "記録計,みさご\n時間(秒),アース(V),基準電圧(V),信号(V)\n",
    "wide brackets": "時間（秒）,接地（V）,基準電圧（V）,信号（V）\n",
    "what Windows adds": "記録①\n時間[秒],センサGND[V],センサ電源5V[V],センサ出力[V]\n",
}  # fmt: skip


@pytest.mark.parametrize("name", JAPANESE)
def test_shift_jis_is_found_by_itself_with_its_words(name: str, tmp_path: Path) -> None:
    text = _table("", _GROUND_V, _REFERENCE_V, _SIGNAL_V).replace(";", ",")
    understood, found = _imported(tmp_path, JAPANESE[name] + text, "cp932")
    _assert_right(found)
    assert all("heading says" in item.reason for item in understood.plan.channels)
    assert understood.notes == (
        "the names of the columns were read as Japanese; choose another encoding where they look wrong",
    )


@pytest.mark.parametrize("encoding", ["cp1252", "cp850", "cp437", "mac-roman"])
def test_western_letters_are_not_taken_for_shift_jis(encoding: str, tmp_path: Path) -> None:
    text = _table(
        "Prüfstand Nähe Größe élève Überströmöl\nZeit [s];Masse [V];Geber für 5 V [V];Höhe [V]\n",
        _GROUND_V,
        _REFERENCE_V,
        _SIGNAL_V,
    )
    understood, found = _imported(tmp_path, text, encoding)
    assert not any("Japanese" in note for note in understood.notes)
    _assert_right(found)


def test_turkish_is_told_from_latin_1(tmp_path: Path) -> None:
    head = "Kayıt: Kızılırmak\nÖrnekleme aralığı: 5 ms\nZaman (s);Şase (V);Referans (V);Sinyal (V)\n"
    understood, found = _imported(tmp_path, _table(head, _GROUND_V, _REFERENCE_V, _SIGNAL_V), "cp1254")
    _assert_right(found)
    assert understood.columns == ("Zaman", "Şase", "Referans", "Sinyal")
