"""Keys, mouse and names once more on X11 with Qt's real plugin, on a screen in memory."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

_ROOT = Path(__file__).parents[2]
_AGAIN = ("tests/app/test_run.py", "tests/app/test_names.py")


@pytest.mark.skipif(not shutil.which("Xvfb"), reason="Xvfb is not installed: apt install xvfb")
@pytest.mark.skipif(os.environ.get("QT_QPA_PLATFORM") == "xcb", reason="this is the run on X11")
def test_the_window_does_the_same_on_a_real_screen() -> None:
    # The server chooses a free number for its screen and writes it to the pipe.
    near, far = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(far), "-screen", "0", "1920x1200x24"],
        pass_fds=(far,),
        stderr=subprocess.DEVNULL,
    )
    os.close(far)
    try:
        with os.fdopen(near, encoding="ascii") as answer:
            screen = f":{answer.readline().strip()}"
        done = subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "-p", "no:xdist", *_AGAIN],
            cwd=_ROOT,
            env={**os.environ, "QT_QPA_PLATFORM": "xcb", "DISPLAY": screen},
            capture_output=True,
            text=True,
            timeout=240,
            check=False,
        )
        assert done.returncode == 0, done.stdout[-4000:]
        assert " passed" in done.stdout
    finally:
        server.terminate()
        server.wait()
