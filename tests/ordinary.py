"""Runs one test without the superuser's right to pass over the rights of files.

Tests marked ``ordinary_rights`` check what is said where a file may not be read or a folder not be written
to. The superuser may do everything, so that for him they are run in a process that has given this up.
Called as ``python -m tests.ordinary NODE``.
"""

from __future__ import annotations

import ctypes
import os
import subprocess
import sys

_DROP = 24  # PR_CAPBSET_DROP of prctl(2)
_PASSING_OVER = (1, 2, 3)  # CAP_DAC_OVERRIDE, CAP_DAC_READ_SEARCH, CAP_FOWNER of capabilities(7)
_SIGN = "WORNBAND_ORDINARY_RIGHTS"


def is_superuser() -> bool:
    """Whether this process passes over the rights of files."""
    return hasattr(os, "geteuid") and os.geteuid() == 0 and _SIGN not in os.environ


def run_apart(node: str) -> str:
    """Run a test in a process with ordinary rights; what it printed where it did not pass."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.ordinary", node],
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {_SIGN: "1"},
    )
    passed = done.returncode == 0 and "1 passed" in done.stdout
    return "" if passed else f"{done.stdout}\n{done.stderr}"


def main() -> None:
    """Give the rights up, which holds from the next program on, and become pytest."""
    libc = ctypes.CDLL(None, use_errno=True)
    if any(libc.prctl(_DROP, number, 0, 0, 0) for number in _PASSING_OVER):
        sys.exit("this system does not let the superuser give up a right")
    command = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", sys.argv[1]]
    os.execv(sys.executable, command)


if __name__ == "__main__":
    main()
