"""States of the other pages, of the dialogs and of the menus, that a picture is taken of."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QDialog, QMenu, QWidget

from app.captures_menu import CapturesMenu
from app.views.workshop_form import WorkshopForm
from tests.app import hands
from tests.app.stage import Stage
from tests.app.states_of_review import WORN, State
from tests.importing_page.tables import at_rest, comma_table, plain_table, swept
from tests.watching_page.hands import begin, looked, watch_worn

NEW, RIGHT, AXLE = (
    "W1041-rear-left-height-new-sensor.h5",
    "W1041-rear-right-height.h5",
    "W1096-rear-axle-heights.h5",
)


def keys(stage: Stage) -> QWidget:
    stage.do("keys")
    return stage.window.findChildren(QDialog)[-1]


def about(stage: Stage) -> QWidget:
    stage.do("about")
    return stage.window.findChildren(QDialog)[-1]


def menu(place: int) -> State:
    def enter(stage: Stage) -> QWidget:
        stage.open(WORN)
        made = stage.window.menuBar().actions()[place].menu()
        assert isinstance(made, QMenu)
        made.popup(QPoint(0, 0))
        return made

    return enter


def last_captures(stage: Stage) -> QWidget:
    stage.open(WORN)
    made = next(item for item in stage.window.findChildren(QMenu) if isinstance(item, CapturesMenu))
    made.popup(QPoint(0, 0))
    return made


def compare_empty(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("compare")


def repaired(stage: Stage) -> None:
    stage.compare(WORN, NEW)


def axle(stage: Stage) -> None:
    stage.compare(WORN, RIGHT)


def axle_mirrored(stage: Stage) -> None:
    stage.compare(WORN, RIGHT)
    stage.do("mirror_second")
    stage.compared()


def corners(stage: Stage) -> None:
    """Left against right over one drive."""
    stage.compare(AXLE, AXLE)
    first, second = stage.window.compare.sides
    second.choose_track(next(track for track in second.tracks if track is not first.track))
    for side in (first, second):
        side.choose_record("006")
    stage.do("corners")
    stage.compared()


def corners_refused(stage: Stage) -> None:
    stage.compare(WORN, RIGHT)
    stage.do("corners")


def known_good(stage: Stage) -> None:
    stage.open(NEW)
    stage.do("keep_good")
    stage.open(WORN)
    stage.do("against_good")
    stage.compared()


def two_records(stage: Stage) -> None:
    stage.compare(WORN, WORN)
    for side, name in zip(stage.window.compare.sides, ("004", "005"), strict=True):
        side.choose_record(name)
    stage.compared()


def report(stage: Stage) -> None:
    stage.open(WORN)
    stage.do("report")
    stage.until(lambda: bool(stage.window.report_desk.sheets))


def report_foot(stage: Stage) -> None:
    report(stage)
    bar = stage.window.report_desk.page.form.verticalScrollBar()
    stage.until(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())


def imported(stage: Stage) -> None:
    hands.import_worn(stage.qtbot, stage.window, stage.folder)


def import_asks(stage: Stage) -> None:
    """A file whose unit is not stated, one that cannot be read, and one whose time is missing."""
    imports = stage.window.imports
    imports.recipes = stage.folder / "recipes"
    broken = stage.folder / "3-notes.csv"
    broken.write_text("nothing here\n")
    counts = {name: np.round(400 * wire) for name, wire in swept().items()}
    paths = [
        plain_table(stage.folder / "1-counts.csv", counts, "a,b,c"),
        comma_table(stage.folder / "2-rest.csv", at_rest()),
        broken,
    ]
    imports.open(paths)
    stage.until(lambda: len(imports.state.draft.files) == 3 and imports.state.next_to_look_at() is None)


def watch_begun(stage: Stage) -> None:
    begin(stage.window, stage.folder / "job-4711")
    looked(stage.qtbot, stage.window)


def watching(stage: Stage) -> None:
    watch_worn(stage.qtbot, stage.window, stage.folder)


def workshop(stage: Stage) -> QWidget:
    form = WorkshopForm(stage.window.settings.workshop, stage.window)
    form.show()
    return form


MENUS = 10

PAGE_STATES: dict[str, State] = {
    **{
        state.__name__: state
        for state in (
            keys,
            about,
            last_captures,
            compare_empty,
            repaired,
            axle,
            axle_mirrored,
            corners,
            corners_refused,
            known_good,
            two_records,
            report,
            report_foot,
            imported,
            import_asks,
            watch_begun,
            watching,
            workshop,
        )
    },
    **{f"menu-{place}": menu(place) for place in range(MENUS)},
}
