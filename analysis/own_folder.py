"""Where the technician's own things lie: profiles, recipes; one folder of the user's configuration."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from pathlib import Path


def own_folder(
    name: str, environment: Mapping[str, str] = os.environ, *, platform: str = sys.platform
) -> Path:
    r"""A folder of the technician's own; it need not exist.

    ``%APPDATA%\wornband\NAME`` on Windows; elsewhere below ``$XDG_CONFIG_HOME``, or ``~/.config``
    (XDG Base Directory Specification, which also has a relative path there ignored).

    Parameters
    ----------
    name : str
        ``profiles`` or ``recipes``.
    environment : mapping of str to str
        Of the process.
    platform : str
        As `sys.platform` says it.
    """
    home = Path(environment.get("HOME") or environment.get("USERPROFILE") or Path.home())
    if platform == "win32":
        base = Path(environment.get("APPDATA") or home / "AppData" / "Roaming")
    else:
        base = Path(environment.get("XDG_CONFIG_HOME") or home / ".config")
        base = base if base.is_absolute() else home / ".config"
    return base / "wornband" / name


def kept_reviews(environment: Mapping[str, str] = os.environ, *, platform: str = sys.platform) -> Path:
    r"""Folder of the reviews that could not lie beside their captures; it need not exist.

    ``%LOCALAPPDATA%\wornband\reviews`` on Windows, ``~/Library/Application Support`` on macOS; elsewhere
    below ``$XDG_DATA_HOME``, or ``~/.local/share``. Qt's ``AppLocalDataLocation`` is the same place; it is
    worked out here, since the command line does without Qt.

    Parameters
    ----------
    environment : mapping of str to str
        Of the process.
    platform : str
        As `sys.platform` says it.
    """
    home = Path(environment.get("HOME") or environment.get("USERPROFILE") or Path.home())
    if platform == "win32":
        base = Path(environment.get("LOCALAPPDATA") or home / "AppData" / "Local")
    elif platform == "darwin":
        base = home / "Library" / "Application Support"
    else:
        base = Path(environment.get("XDG_DATA_HOME") or home / ".local" / "share")
        base = base if base.is_absolute() else home / ".local" / "share"
    return base / "wornband" / "reviews"
