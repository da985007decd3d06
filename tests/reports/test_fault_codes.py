"""The wording of fault codes.

Source: SAE J2012 / ISO 15031-6, written down from memory; the standard was not at hand.
"""

from __future__ import annotations

import pytest

from analysis.reports.fault_codes import code_meaning, fault_codes


@pytest.mark.parametrize(
    ("code", "meaning"),
    [
        ("P0120", "Throttle/pedal position sensor/switch A circuit"),
        ("P0123", "Throttle/pedal position sensor/switch A circuit high"),
        ("P0222", "Throttle/pedal position sensor/switch B circuit low"),
        ("p2122", "Throttle/pedal position sensor/switch D circuit low"),
        ("P2127", "Throttle/pedal position sensor/switch E circuit low"),
        ("P2135", "Throttle/pedal position sensor/switch A/B voltage correlation"),
        ("P2138", "Throttle/pedal position sensor/switch D/E voltage correlation"),
        ("P0641", "Sensor reference voltage A circuit/open"),
        ("P0653", "Sensor reference voltage B circuit high"),
        ("P0698", "Sensor reference voltage C circuit low"),
        ("C1806", "defined by the maker"),
        ("P1234", "defined by the maker"),
        ("P3012", "defined by the maker"),
        ("P3412", "see SAE J2012"),
        ("C0625", "see SAE J2012"),
        ("RH-214", ""),
        ("", ""),
    ],
)
def test_a_code_has_the_wording_of_whoever_defines_it(code: str, meaning: str) -> None:
    assert code_meaning(code) == meaning


def test_codes_are_told_apart_each_once_in_their_order() -> None:
    assert fault_codes("P2135, P0120;RH-214\nP2135 ,, ") == ("P2135", "P0120", "RH-214")
    assert fault_codes("none") == ()
    assert fault_codes("  ") == ()


def test_two_hundred_codes_stay_two_hundred() -> None:
    assert len(fault_codes(", ".join(f"C1{number:03d}" for number in range(200)))) == 200
