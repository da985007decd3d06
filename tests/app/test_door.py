from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from app import resources, window
from app.pictures import review_picture
from app.window import NoWindowError, require_screen, where_to_begin
from tests.app.fakes import worn_capture, worn_findings


def _fresh(code: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False
    )


def test_the_door_loads_no_qt_until_it_is_opened() -> None:
    code = "import sys, app.window; print([m for m in sys.modules if m.startswith(('PySide6', 'pyqtgraph'))])"
    assert _fresh(code).stdout.strip() == "[]"


def test_missing_qt_is_one_sentence_with_the_packages_and_no_traceback() -> None:
    code = (
        "import sys\n"
        "sys.modules['PySide6'] = None\n"
        "from app.window import application, NoWindowError\n"
        "try:\n"
        "    application()\n"
        "except NoWindowError as error:\n"
        "    print(error)\n"
    )
    done = _fresh(code)
    assert done.stderr == ""
    assert "apt install" in done.stdout
    assert "libegl1" in done.stdout
    assert len(done.stdout.strip().splitlines()) == 1


def test_no_screen_is_one_sentence_that_names_what_works_without() -> None:
    with pytest.raises(NoWindowError, match="wornband analyse"):
        require_screen({}, "linux")


def test_a_missing_screen_library_is_named_by_its_package(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(window, "_loads", lambda library: library != "libxcb-cursor.so.0")
    with pytest.raises(NoWindowError, match=r"apt install libxcb-cursor0$"):
        require_screen({"DISPLAY": ":0"}, "linux")


@pytest.mark.parametrize(
    ("environment", "platform"),
    [({"QT_QPA_PLATFORM": "offscreen"}, "linux"), ({"WAYLAND_DISPLAY": "w"}, "linux"), ({}, "win32")],
)
def test_other_screens_are_left_to_qt(environment: dict[str, str], platform: str) -> None:
    require_screen(environment, platform)


def test_the_workbench_begins_with_what_is_asked_for_else_with_the_last_capture_that_is_still_there(
    tmp_path: Path,
) -> None:
    asked, gone, last = (tmp_path / name for name in ("asked.h5", "gone.h5", "last.h5"))
    last.touch()
    assert where_to_begin([asked], [last]) == asked  # were it gone, that must be said
    assert where_to_begin([], [gone, last]) == last
    assert where_to_begin([], [gone]) is None
    assert where_to_begin([], []) is None


def test_icons_are_found_and_every_action_has_the_one_it_names() -> None:
    from app.actions import SPECS

    there = {path.stem for path in resources.folder("icons").glob("*.svg")}
    assert {spec.icon for spec in SPECS if spec.icon} <= there


def test_a_folder_that_is_nowhere_says_so() -> None:
    with pytest.raises(FileNotFoundError, match="install Wornband again"):
        resources.folder("no_such_folder")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_a_picture_of_review_can_be_made_without_a_screen(
    tmp_path: Path, size: tuple[int, int], dark: bool
) -> None:
    from PySide6.QtGui import QColor, QImage

    path = tmp_path / "review.png"
    review_picture(worn_capture(), worn_findings(), path, size, dark)
    picture = QImage(str(path))
    assert (picture.width(), picture.height()) == size
    colours = {picture.pixelColor(x, y).rgb() for x in range(0, size[0], 3) for y in range(0, size[1], 3)}
    assert QColor("#009E73").rgb() in colours
    corner = picture.pixelColor(size[0] // 2, size[1] - 4).lightness()
    assert corner < 60 if dark else corner > 200
    foot = {
        picture.pixelColor(x, y).rgb() for x in range(0, 400, 2) for y in range(size[1] - 28, size[1] - 6)
    }
    assert len(foot) > 20  # the reading at the arm stands there


def test_a_shown_window_has_loaded_nothing_that_only_files_and_reports_need() -> None:
    code = (
        "import sys\n"
        "from app.window import application\n"
        "app = application()\n"
        "from app.main_window import Window\n"
        "from app.settings import MemoryStore, Settings\n"
        "from app.tools import real_tools\n"
        "window = Window(real_tools(), Settings(MemoryStore()))\n"
        "window.show()\n"
        "app.processEvents()\n"
        "late = ('pyarrow', 'scipy.io', 'pypdf', 'analysis.importing', 'analysis.watching',"
        " 'analysis.comparison', 'analysis.diagnosis.places', 'analysis.reports.whole_report')\n"
        "print([name for name in late if name in sys.modules], window.isVisible())\n"
        "window.close()\n"
    )
    done = _fresh(code)
    assert done.stdout.strip() == "[] True", done.stderr
