"""Known good references: one capture for each sensor, kept in the settings, to compare with in one step."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.reports.verdicts import verdict_title
from app.language import said
from app.settings import Settings


def sensor_key(capture: Capture) -> str:
    """What makes two sensors alike: their part number, else their profile; empty where neither is stated."""
    part = " ".join(capture.text("part_number").casefold().split())
    if part:
        return f"part {part}"
    profile = capture.text("profile").strip()
    return f"profile {profile}" if profile else ""


def known_good(settings: Settings, capture: Capture) -> Path | None:
    """The capture that is kept as known good for this sensor; None where there is none."""
    kept = settings.known_good.get(sensor_key(capture))
    return Path(kept) if kept else None


def keep_as_known_good(settings: Settings, capture: Capture) -> bool:
    """Keep a capture as known good for sensors of its part; False where it has no file or names no sensor."""
    key = sensor_key(capture)
    if not key or capture.path is None:
        return False
    settings.known_good = {**settings.known_good, key: str(capture.path)}
    return True


def doubt_of(findings: Findings | None) -> str:
    """Why a capture that was kept as known good may not be; empty where no fault was found in it."""
    if findings is not None and findings.verdict.code is VerdictCode.NO_FAULT_FOUND:
        return ""
    if findings is None:
        return _tr("It is kept as known good, but was not examined to the end: look at its verdict first.")
    text = _tr("It is kept as known good, but its verdict is: {verdict}. Keep another one to replace it.")
    return text.format(verdict=said(verdict_title(findings)))


def _tr(text: str) -> str:
    return QCoreApplication.translate("known_good", text)
