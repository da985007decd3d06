"""Qt's file dialogs, answered at once, and where each of them began."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog


def begun_at(monkeypatch: pytest.MonkeyPatch, kind: str, chosen: Path | None = None) -> list[str]:
    """Let a kind of dialog give back `chosen`, or be given up; every one adds where it began.

    Parameters
    ----------
    monkeypatch : pytest.MonkeyPatch
    kind : str
        The dialog's function, as ``"getOpenFileName"``.
    chosen : Path or None
        None gives the dialog up.
    """
    begun: list[str] = []

    def choose(_parent: object, _title: str, start: str, _kinds: str) -> tuple[str, str]:
        begun.append(start)
        return "" if chosen is None else str(chosen), ""

    monkeypatch.setattr(QFileDialog, kind, choose)
    return begun
