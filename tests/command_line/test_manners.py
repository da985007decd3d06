"""The command line: what goes where, in which order, and how it ends."""

from __future__ import annotations

import io
import json
import os
import re
import shutil
import signal
import socket
import subprocess
import sys
from pathlib import Path

import pytest

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.errors import CaptureError
from app import command_line
from app.command_line import main
from app.errands.progress_line import ProgressLine
from app.window import NoWindowError
from app.x_display import answers

Out = pytest.CaptureFixture[str]


def test_json_is_one_object_a_line_a_file_a_line_in_the_order_given(
    by_hand: list[str | None], sample: Path, tmp_path: Path, capsys: Out
) -> None:
    (tmp_path / "broken.h5").write_bytes(b"no capture")
    names = [str(sample), str(tmp_path / "broken.h5"), str(tmp_path / "missing.h5"), str(sample)]
    assert main(["analyse", *names, "--json"]) == 1
    out, err = capsys.readouterr()
    items = [json.loads(line) for line in out.splitlines()]
    assert [item["capture"]["path"] for item in items] == names
    assert ["error" in item for item in items] == [False, True, True, False]
    assert {item["schema"] for item in items} == {"wornband-findings/1"}
    assert len(err.splitlines()) == 2


def test_errors_are_one_line_a_file_with_problem_and_action(
    by_hand: list[str | None], tmp_path: Path, capsys: Out
) -> None:
    path = str(tmp_path / "missing.h5")
    assert main(["analyse", path]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    (line,) = err.splitlines()
    assert line.startswith(f"{path}: ")
    assert "; " in line.removeprefix(path)


def test_text_is_separated_and_ends_with_the_cautions(
    by_hand: list[str | None], sample: Path, capsys: Out
) -> None:
    assert main(["analyse", str(sample), str(sample)]) == 0
    out, err = capsys.readouterr()
    assert out.count("Sensor track worn: very likely (97 in 100)") == 2
    assert out.count("=" * 40) == 1
    assert out.count("stands rated for it") == 1
    assert err == ""


def test_the_profile_is_passed_on(by_hand: list[str | None], sample: Path, capsys: Out) -> None:
    assert main(["analyse", str(sample), "--profile", "pedal"]) == 0
    assert main(["analyse", str(sample)]) == 0
    assert by_hand == ["pedal", None]
    capsys.readouterr()


def test_an_unknown_profile_is_a_wrong_call_and_names_the_known_ones(sample: Path, capsys: Out) -> None:
    assert main(["analyse", str(sample), "--profile", "no-such"]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert "ride-height" in err


@pytest.mark.parametrize(
    "arguments",
    [
        ["analyse"],
        ["verify"],
        ["analyse", "x.h5", "--jobs", "0"],
        ["analyse", "x.h5", "--jobs", "many"],
        ["analyse", "x.h5", "--jsn"],
        ["--no-such"],
        ["x.h5", "--json"],
    ],
)
def test_a_wrong_call_ends_with_2_and_says_why(arguments: list[str], capsys: Out) -> None:
    assert main(arguments) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "wornband" in err


@pytest.mark.parametrize(
    "arguments", [["--help"], ["analyse", "--help"], ["demo", "--help"], ["verify", "--help"]]
)
def test_help_is_printed_and_lists_the_exit_statuses(arguments: list[str], capsys: Out) -> None:
    assert main(arguments) == 0
    assert "exit status" in capsys.readouterr().out


def test_the_help_names_what_exists_and_nothing_else(capsys: Out) -> None:
    main(["--help"])
    words = capsys.readouterr().out
    assert all(errand in words for errand in command_line.ERRANDS)
    listed = re.findall(r"^ {4}([a-z]+) ", words, re.MULTILINE)
    assert sorted(listed) == sorted(command_line.ERRANDS)


def test_the_version_is_printed(capsys: Out) -> None:
    assert main(["--version"]) == 0
    assert capsys.readouterr().out.startswith("wornband ")


def test_files_and_nothing_open_the_workbench(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    opened: list[list[Path]] = []

    def stand_in(paths: list[Path]) -> int:
        opened.append(paths)
        return 0

    monkeypatch.setattr("app.window.open_workbench", stand_in)
    assert main([]) == 0
    assert main(["one.h5", "two.h5"]) == 0
    assert main(["--", "./demo"]) == 0
    assert opened == [[], [Path("one.h5"), Path("two.h5")], [Path("./demo")]]


def test_a_window_that_cannot_open_is_one_sentence(monkeypatch: pytest.MonkeyPatch, capsys: Out) -> None:
    def stand_in(paths: list[Path]) -> int:
        raise NoWindowError("the window needs a library that is missing", "run: sudo apt install libegl1")

    monkeypatch.setattr("app.window.open_workbench", stand_in)
    assert main([]) == 1
    assert capsys.readouterr().err == (
        "wornband: the window needs a library that is missing; run: sudo apt install libegl1\n"
    )


def test_an_interrupt_ends_quietly_with_130(
    monkeypatch: pytest.MonkeyPatch, sample: Path, capsys: Out
) -> None:
    def examine(capture: Capture, **_: object) -> Findings:
        raise KeyboardInterrupt

    monkeypatch.setattr("app.errands.analysing.examine", examine)
    assert main(["analyse", str(sample)]) == 130
    assert capsys.readouterr() == ("", "")


def test_the_unforeseen_costs_one_file_one_line_and_no_traceback(
    monkeypatch: pytest.MonkeyPatch, sample: Path, capsys: Out
) -> None:
    def examine(capture: Capture, **_: object) -> Findings:
        raise ZeroDivisionError("float division by zero")

    monkeypatch.setattr("app.errands.analysing.examine", examine)
    assert main(["analyse", str(sample), str(sample)]) == 1
    err = capsys.readouterr().err
    assert err.count("ZeroDivisionError: float division by zero") == 2
    assert len(err.splitlines()) == 2
    assert "Traceback" not in err


def test_errors_keep_control_characters_from_the_terminal(
    monkeypatch: pytest.MonkeyPatch, sample: Path, capsys: Out
) -> None:
    def examine(capture: Capture, **_: object) -> Findings:
        raise CaptureError("record \x1b[31m001\n is odd", "look at it")

    monkeypatch.setattr("app.errands.analysing.examine", examine)
    main(["analyse", str(sample)])
    assert "record \\x1b[31m001\\x0a is odd; look at it\n" in capsys.readouterr().err


def test_progress_is_shown_on_a_terminal_alone_at_most_ten_times_a_second_and_wiped() -> None:
    class Terminal(io.StringIO):
        def isatty(self) -> bool:
            return True

    ticks = iter([0.0, 0.01, 0.05, 0.2])
    terminal, pipe = Terminal(), io.StringIO()
    with ProgressLine(terminal, clock=lambda: next(ticks)) as progress:
        progress.begin("one\x1b.h5")
        for done in (0.1, 0.2, 0.3, 0.4):
            progress.tick(done)
    shown = [line.strip() for line in terminal.getvalue().split("\r") if line.strip()]
    assert shown == ["one\\x1b.h5  10 %", "one\\x1b.h5  40 %"]
    assert terminal.getvalue().endswith("\r")
    with ProgressLine(pipe) as progress:
        progress.begin("one.h5")
        progress.tick(0.5)
    assert pipe.getvalue() == ""


def test_verify_says_unchanged_of_a_sample_and_finds_a_changed_one(
    sample: Path, tmp_path: Path, capsys: Out
) -> None:
    h5py = pytest.importorskip("h5py", reason="the program cannot run without h5py")
    copy = tmp_path / "copy.h5"
    shutil.copyfile(sample, copy)
    assert main(["verify", str(copy)]) == 0
    out = capsys.readouterr().out
    assert "unchanged" in out
    assert "does not prove who took it" in out
    with h5py.File(copy, "r+") as file:
        file.attrs["vehicle"] = "Another Car"
    assert main(["verify", str(copy)]) == 1
    assert "CHANGED" in capsys.readouterr().out


def test_verify_of_what_is_no_capture_is_one_line(tmp_path: Path, capsys: Out) -> None:
    path = tmp_path / "no.h5"
    path.write_bytes(b"text")
    assert main(["verify", str(path)]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1


def _call(*arguments: str, **environment: str) -> subprocess.CompletedProcess[str]:
    """The command in a process of its own, without a screen."""
    clean = {
        key: value
        for key, value in os.environ.items()
        if key not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    }
    return subprocess.run(
        [sys.executable, "-m", "app", *arguments],
        capture_output=True,
        text=True,
        check=False,
        env={**clean, **environment},
        timeout=120,
    )


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="elsewhere there always is a screen")
def test_without_a_screen_the_workbench_is_refused_in_one_line() -> None:
    done = _call()
    assert done.returncode == 1
    assert len(done.stderr.splitlines()) == 1
    assert "no screen" in done.stderr


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="X displays are looked for on Linux alone")
def test_a_display_that_does_not_answer_is_one_line_and_no_crash() -> None:
    done = _call(DISPLAY=":7779")
    assert done.returncode == 1
    assert done.stderr.count("\n") == 1
    assert "':7779'" in done.stderr


def test_a_display_is_asked_where_its_name_says() -> None:
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = server.getsockname()[1]
        assert port >= 6000  # X(7): display N listens on port 6000 + N
        assert answers(f"127.0.0.1:{port - 6000}.0")
    assert not answers(f"127.0.0.1:{port - 6000}.0")
    assert not answers("127.0.0.1:99999")
    assert answers("/private/tmp/of.another.kind")


def test_a_reader_that_goes_away_ends_the_output_without_a_word(sample: Path) -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "app", "analyse", *[str(sample)] * 2],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None
    process.stdout.close()
    assert process.stderr is not None
    assert process.stderr.read() == b""
    process.stderr.close()
    assert process.wait(120) == 1


@pytest.mark.skipif(os.name != "posix", reason="elsewhere an interrupt cannot be sent to one process")
@pytest.mark.parametrize("jobs", ["1", "2"])
def test_an_interrupt_from_the_keyboard_stops_every_process_without_a_word(jobs: str, sample: Path) -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "app", "analyse", "--json", "--jobs", jobs, *[str(sample)] * 400],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None
    assert process.stderr is not None
    assert json.loads(process.stdout.readline())["schema"] == "wornband-findings/1"
    process.send_signal(signal.SIGINT)
    rest, said = process.communicate(timeout=60)  # ends only when no child holds the pipes any more
    assert process.returncode == 130
    assert said == b""
    assert rest.count(b"\n") < 399
