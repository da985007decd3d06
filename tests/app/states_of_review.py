"""States of Review and what belongs to it, that a picture is taken of."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolButton, QWidget

from app.resources import sample_captures
from app.views.caution_strip import CautionStrip
from tests.app import hands
from tests.app.stage import Stage

WORN = "W1041-rear-left-height.h5"

State = Callable[[Stage], QWidget | None]


def review_of(name: str) -> State:
    def enter(stage: Stage) -> None:
        stage.open(name)

    return enter


def first_start(stage: Stage) -> None:
    stage.open(WORN)
    stage.window.page.hint_bar.show()


def empty(stage: Stage) -> None:
    """Nothing is open."""


def loading(stage: Stage) -> None:
    stage.go_on.clear()
    stage.window.open_file(stage.copy(WORN))
    stage.until(lambda: stage.window.session.capture is not None)


def trouble(stage: Stage) -> None:
    stage.open(WORN)
    path = stage.folder / "W2000.h5"
    path.write_bytes(b"\x89HDF\r\n\x1a\n" + b"no capture " * 20)
    stage.window.open_file(path)
    stage.until(lambda: stage.window.problem_bar().isVisible())


def contested(stage: Stage) -> None:
    """Another program changed the review."""
    stage.open(WORN)
    QTest.keyClick(stage.window, Qt.Key.Key_M)
    path = stage.window.keeper.path
    assert path is not None
    stage.until(lambda: not stage.window.keeper.unsaved)
    path.write_text(path.read_text().replace('"label"', '"label" ', 1) + "\n")
    stage.window.keeper.look()
    stage.until(lambda: stage.window.keeper.conflict)


def band_chosen(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("next_band")


def dismissing(stage: Stage) -> None:
    band_chosen(stage)
    stage.do("dismiss")


def dismissed(stage: Stage) -> None:
    dismissing(stage)
    line = QApplication.focusWidget()
    assert line is not None
    QTest.keyClicks(line, "Kratzer")
    QTest.keyClick(line, Qt.Key.Key_Return)


def adjusting(stage: Stage) -> None:
    band_chosen(stage)
    stage.do("adjust")


def accepted(stage: Stage) -> None:
    band_chosen(stage)
    stage.do("accept")


def crossing(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("next")


def event(stage: Stage) -> None:
    stage.open("W1063-rear-right-height.h5")
    stage.do("next")


def one_axis(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("lanes")


def markers(stage: Stage) -> None:
    stage.open(WORN)
    window = stage.window
    trace, track = window.page.trace, window.page.track
    span = window.focus.window

    def at(share: float) -> QPoint:
        return trace.viewport_point(span.start + share * span.length).toPoint()

    hands.point(trace.canvas, at(0.3))
    QTest.keyClick(window, Qt.Key.Key_M)
    hands.drag(trace.canvas, at(0.5), at(0.6), held=Qt.KeyboardModifier.ControlModifier)
    left, right = track.viewport_point(60.0, 1.0).toPoint(), track.viewport_point(70.0, 1.0).toPoint()
    hands.drag(track.canvas, left, right, held=Qt.KeyboardModifier.ControlModifier)
    stage.until(lambda: len(window.keeper.review.markers) == 3)


def point_chosen(stage: Stage) -> None:
    markers(stage)
    stage.do("next_marker")


def naming(stage: Stage) -> None:
    markers(stage)
    stage.do("next_marker")
    stage.do("rename_marker")
    line = QApplication.focusWidget()
    assert line is not None
    QTest.keyClicks(line, "Einbruch beim Anfahren")


def noting(stage: Stage) -> None:
    markers(stage)
    stage.do("note_marker")


def record(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("describe")


def control_unit(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("control_unit")


def cautions(stage: Stage) -> None:
    stage.open(WORN)
    strip = stage.window.page.evidence.findChild(CautionStrip)
    assert strip is not None
    button = strip.findChild(QToolButton)
    assert button is not None
    button.click()


def evidence_foot(stage: Stage) -> None:
    stage.open(WORN)
    bar = stage.window.page.evidence.rows_area.verticalScrollBar()
    stage.until(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())


def why(stage: Stage) -> QWidget:
    stage.open(WORN)
    stage.do("why")
    made = stage.window.why.why
    assert made is not None
    return made


def why_asked(stage: Stage) -> QWidget:
    """Of a sensor whose heights nobody stated."""
    stage.open("W1072-front-left-height.h5")
    stage.do("why")
    made = stage.window.why.why
    assert made is not None
    return made


REVIEW_STATES: dict[str, State] = {
    **{f"review-{path.stem}": review_of(path.name) for path in sample_captures()},
    **{
        state.__name__: state
        for state in (
            first_start,
            empty,
            loading,
            trouble,
            contested,
            band_chosen,
            dismissing,
            dismissed,
            adjusting,
            accepted,
            crossing,
            event,
            one_axis,
            markers,
            point_chosen,
            naming,
            noting,
            record,
            control_unit,
            cautions,
            evidence_foot,
            why,
            why_asked,
        )
    },
}
