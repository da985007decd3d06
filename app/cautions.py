"""What can hurt somebody or break something while a sensor is being swept."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Capture

_HEIGHT_WORDS = ("height", "level", "suspension", "ride")
_PEDAL_WORDS = ("pedal", "throttle")


def _tr(text: str) -> str:
    return QCoreApplication.translate("cautions", text)


def cautions(capture: Capture | None) -> tuple[str, ...]:
    """The cautions for the work at hand; every special one where the capture does not say what it is.

    Parameters
    ----------
    capture : Capture or None
        Its profile, sensor and title tell a ride-height sensor from a pedal.
    """
    said = (
        " ".join(capture.text(key) for key in ("profile", "sensor")) + " " + capture.title if capture else ""
    )
    said = said.lower()
    height = any(word in said for word in _HEIGHT_WORDS)
    pedal = any(word in said for word in _PEDAL_WORDS)
    lines = []
    if height or not pedal:
        lines.append(
            _tr(
                "Suspension: the vehicle can drop without warning. Put it on stands rated for it and disable "
                "levelling by the maker's method before you connect or sweep."
            )
        )
    if pedal or not height:
        lines.append(
            _tr("An electronic throttle traps fingers. Sweep with the engine off and the intake closed.")
        )
    lines.append(_tr("Back-probe without piercing insulation. Never probe airbag or high-voltage circuits."))
    lines.append(_tr("The maker's procedure, local codes and a licensed technician's judgement come first."))
    return tuple(lines)
