from __future__ import annotations

import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from analysis.progress import Tick
from app.jobs import Jobs


@pytest.fixture
def jobs(qtbot: QtBot) -> Iterator[Jobs]:
    made = Jobs()
    yield made
    assert made.shut_down()


def never(_value: object) -> None:
    pytest.fail("this must not be called")


def test_work_runs_on_a_thread_of_its_own_and_its_result_comes_back_to_ours(qtbot: QtBot, jobs: Jobs) -> None:
    seen: list[tuple[threading.Thread, threading.Thread]] = []
    jobs.run(
        "a",
        "Counting",
        lambda tick: threading.current_thread(),
        lambda worker: seen.append((worker, threading.current_thread())),
        never,
    )
    qtbot.waitUntil(lambda: bool(seen))
    assert seen[0][0] is not seen[0][1]
    assert seen[0][1] is threading.main_thread()


def test_the_latest_request_wins_and_the_older_result_is_discarded(qtbot: QtBot, jobs: Jobs) -> None:
    release = threading.Event()
    done: list[str] = []
    discarded: list[str] = []

    def stubborn(tick: Tick) -> str:
        release.wait(5.0)
        return "old"

    jobs.run("a", "Old", stubborn, never, never, discarded.append)
    jobs.run("a", "New", lambda tick: "new", done.append, never)
    qtbot.waitUntil(lambda: done == ["new"])
    release.set()
    qtbot.waitUntil(lambda: discarded == ["old"])


def test_jobs_of_different_topics_do_not_disturb_each_other(qtbot: QtBot, jobs: Jobs) -> None:
    done: list[str] = []
    jobs.run("a", "A", lambda tick: "a", done.append, never)
    jobs.run("b", "B", lambda tick: "b", done.append, never)
    qtbot.waitUntil(lambda: sorted(done) == ["a", "b"])


def test_a_stopped_job_ends_at_its_next_tick_and_says_nothing(qtbot: QtBot, jobs: Jobs) -> None:
    begun = threading.Event()

    def endless(tick: Tick) -> None:
        while True:
            tick(0.5)
            begun.set()

    jobs.run("a", "Endless", endless, never, never)
    assert begun.wait(5.0)
    with qtbot.waitSignal(jobs.ended):
        jobs.cancel("a")
    qtbot.waitUntil(lambda: not jobs.busy())


def test_an_exception_in_the_work_reaches_whoever_asked(qtbot: QtBot, jobs: Jobs) -> None:
    failures: list[Exception] = []
    jobs.run("a", "Dividing", lambda tick: 1 // 0, never, failures.append)
    qtbot.waitUntil(lambda: bool(failures))
    assert isinstance(failures[0], ZeroDivisionError)


def test_progress_is_reported_with_the_title_and_not_more_often_than_can_be_seen(
    qtbot: QtBot, jobs: Jobs
) -> None:
    told: list[tuple[str, str, float]] = []
    jobs.progressed.connect(lambda *what: told.append(what))

    def work(tick: Tick) -> str:
        for step in range(10_000):
            tick(step / 10_000)
        return "done"

    done: list[str] = []
    jobs.run("a", "Counting", work, done.append, never)
    qtbot.waitUntil(lambda: done == ["done"])
    assert told[0] == ("a", "Counting", 0.0)
    assert len(told) < 200


def test_shutting_down_discards_a_result_that_nobody_will_fetch(qtbot: QtBot) -> None:
    jobs = Jobs()
    closed: list[str] = []
    jobs.run("a", "Opening", lambda tick: "file", never, never, closed.append)
    assert jobs.shut_down()
    assert closed == ["file"]


def test_finishing_a_topic_delivers_its_result_before_it_returns(jobs: Jobs) -> None:
    release = threading.Event()
    done: list[str] = []

    def slow(tick: Tick) -> str:
        release.wait(5.0)
        return "written"

    jobs.run("a", "Writing", slow, done.append, never)
    threading.Timer(0.05, release.set).start()
    jobs.finish("a")
    assert done == ["written"]
    jobs.finish("a")  # nothing to wait for
    assert done == ["written"]
