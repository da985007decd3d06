"""Writes the hashes of the files that the versions of ``constraints.txt`` are installed from here.

Run as ``.venv/bin/python .ci/hashes.py`` after pinning. The list holds for the platform and the version of
Python that it was made on, and says so in its name; nothing is installed.
"""

from __future__ import annotations

import json
import subprocess
import sys
import sysconfig
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
PLATFORM = sysconfig.get_platform().replace("-", "_")
TARGET = HERE / f"hashes-{PLATFORM}-cp{sys.version_info.major}{sys.version_info.minor}.txt"


def hashed(report: dict[str, Any]) -> list[str]:
    """A line for each file of a report of pip's, in the order of the names."""
    lines = {}
    for item in report["install"]:
        about = item["metadata"]
        digest = item["download_info"]["archive_info"]["hashes"]["sha256"]
        lines[about["name"].lower()] = f"{about['name']}=={about['version']} --hash=sha256:{digest}"
    return [lines[name] for name in sorted(lines)]


def main() -> None:
    """Ask pip what it would install, and keep the hashes."""
    command = [
        *(sys.executable, "-m", "pip", "install", "--dry-run", "--ignore-installed", "--no-deps", "--quiet"),
        *("--only-binary", ":all:", "--report", "-", "-r", str(HERE / "constraints.txt")),
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    version = f"{sys.version_info.major}.{sys.version_info.minor}"
    head = f"# Files for {PLATFORM}, Python {version}; made by hashes.py."
    TARGET.write_text("\n".join([head, *hashed(json.loads(done.stdout)), ""]), encoding="ascii")


if __name__ == "__main__":
    main()
