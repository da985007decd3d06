"""The window "Why it comes and goes": a sentence and a picture at the left, what to choose at the right."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QPoint, Qt, Signal
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFrame,
    QLabel,
    QScrollArea,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from analysis.exposure.picture import LEFT_OUT
from analysis.review.vehicle import RoadTest
from analysis.vehicle.heights import RestKind, VehicleHeights
from app.drawing.theme import Palette
from app.language import said
from app.views.fit_screen import fit_screen
from app.views.problem_bar import ProblemBar
from app.views.tall_enough import TallEnough
from app.why.choices import Choices, Part, Shown
from app.why.drive_form import DriveForm
from app.why.heights_form import HeightsForm
from app.why.picture import LEAST_WIDTH_PX, ExposurePicture
from app.why.proof_form import ProofForm
from app.why.telling import Details, InShort
from app.why.unit_form import UnitForm

_ABOVE_SHARE = 0.5


class WhyWindow(QDialog):
    """Beside the workbench, not in its way: it stays open while the record is looked at.

    Signals
    -------
    chosen(Choices)
        Something else was chosen.
    """

    chosen = Signal(object)

    def __init__(self, choices: Choices, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Why it comes and goes"))
        self.setWindowFlag(Qt.WindowType.WindowMaximizeButtonHint)
        fit_screen(self, 1120, 690)
        self._choices = choices
        self.picture, self.problem_bar = ExposurePicture(), ProblemBar()
        self.drive, self.unit = DriveForm(choices), UnitForm(choices)
        self.heights, self.proof = HeightsForm(choices), ProofForm(choices)
        self.short, self.details = InShort(), Details()
        self._empty = QLabel()
        self._empty.setWordWrap(True)
        self._empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._empty.setProperty("quiet", True)
        self.tabs = QTabWidget()
        self.tabs.setAccessibleName(self.tr("What it is told for"))
        self._lay_out()
        self.tabs.setFocus()  # in the picture, which Qt would begin with, the sentence is scrolled away
        self.drive.changed.connect(self._take)
        self.unit.changed.connect(self._take)
        self.heights.changed.connect(self._take_heights)
        self.heights.refused.connect(self.problem_bar.show_problem)
        self.picture.rest_chosen.connect(self._take_rest)
        self.proof.changed.connect(self._take_test)

    def show_choices(self, choices: Choices) -> None:
        """Show what is chosen; tells nobody."""
        self._choices = choices
        for form in (self.drive, self.unit, self.heights, self.proof):
            form.show_choices(choices)

    def show_result(self, result: Shown | None, instead: str = "") -> None:
        """Show what follows from the choices, or what to do instead."""
        self.picture.setVisible(result is not None)
        self._empty.setVisible(result is None)
        self._empty.setText(instead)
        self.short.show_result(result)
        self.details.show_result(result)
        if result is None:
            self.picture.show_exposure(None, RestKind.NORMAL)
            return
        self.problem_bar.hide()
        self.picture.show_exposure(result.exposure, result.rest.rest.kind)
        self.picture.setAccessibleDescription(
            " ".join(said(text) for text in result.parts[Part.HEIGHT] if text)
        )

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.picture.apply_palette(palette)
        self.problem_bar.apply_palette(palette)

    def _lay_out(self) -> None:
        left, self._area = _frame(self.short, self.picture, self._empty, self.details)
        # Queued: what was unfolded takes its room first.
        self.details.unfolded.connect(self._bring_details, Qt.ConnectionType.QueuedConnection)
        pages = (
            (self.drive, self.tr("Drive")),
            (self.unit, self.tr("Control unit")),
            (self.heights, self.tr("Heights")),
            (self.proof, self.tr("Road test")),
        )
        for page, title in pages:
            scroll = QScrollArea()
            scroll.setWidgetResizable(True)
            scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
            scroll.setWidget(page)
            scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            self.tabs.addTab(scroll, title)
        self.tabs.setMinimumWidth(336)
        panes = QSplitter(Qt.Orientation.Horizontal)
        for place, (side, stretch) in enumerate(((left, 1), (self.tabs, 0))):
            panes.addWidget(side)
            panes.setStretchFactor(place, stretch)
        panes.setSizes([760, 340])
        panes.setChildrenCollapsible(False)
        panes.setHandleWidth(6)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.addWidget(self.problem_bar)
        column.addWidget(panes, 1)
        left_out = QLabel(said(LEFT_OUT))
        left_out.setWordWrap(True)
        left_out.setProperty("quiet", True)
        column.addWidget(left_out)

    def _bring_details(self, open_: bool) -> None:
        """Scroll what was unfolded up to the middle; what it was unfolded from stays in sight above it."""
        sheet = self._area.widget()
        if open_ and sheet is not None:
            QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)
            room_px = self._area.viewport().height()
            beyond_px = self.details.mapTo(sheet, QPoint(0, 0)).y() - round(_ABOVE_SHARE * room_px)
            self._area.verticalScrollBar().setValue(beyond_px)

    def _take(self, choices: Choices) -> None:
        """The forms each know their own part; the rest is as it was."""
        mine = self._choices
        if self.sender() is self.drive:
            mine = replace(mine, road=choices.road, minutes=choices.minutes, rest=choices.rest)
        else:
            mine = replace(mine, unit=choices.unit)
        self._offer(mine)

    def _take_heights(self, heights: VehicleHeights) -> None:
        self.problem_bar.hide()  # what was refused before is gone, also where these are the heights that hold
        mine = replace(self._choices, heights=heights)
        self.drive.show_choices(mine)
        self._offer(mine)

    def _take_rest(self, kind: RestKind) -> None:
        mine = replace(self._choices, rest=kind)
        self.drive.show_choices(mine)
        self._offer(mine)

    def _take_test(self, test: RoadTest) -> None:
        self._offer(replace(self._choices, test=test))

    def _offer(self, choices: Choices) -> None:
        """Say what was chosen; what comes of it is shown by whoever was told."""
        self._choices = choices
        self.chosen.emit(choices)


class _Sheet(TallEnough):
    """As high as it has to be, and no higher than there is room for: the picture takes what is left."""

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's own name
        """What the area around it asks for."""
        layout = self.layout()
        return layout.minimumHeightForWidth(width) if layout is not None else -1

    def fit_height(self) -> None:
        """Set the least height."""
        self.setMinimumHeight(max(self.heightForWidth(self.width()), 0))


def _frame(*content: QWidget) -> tuple[QFrame, QScrollArea]:
    """A frame, and the area in it, whose content scrolls where the screen is too low for it."""
    frame, area, sheet = QFrame(), QScrollArea(), _Sheet()
    frame.setObjectName("pane")
    column = QVBoxLayout(sheet)
    column.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)
    column.setContentsMargins(0, 0, 0, 0)
    for item in content:
        column.addWidget(item, 0 if isinstance(item, InShort | Details) else 1)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setMinimumWidth(LEAST_WIDTH_PX + 12)
    area.setWidget(sheet)
    around = QVBoxLayout(frame)
    around.setContentsMargins(8, 6, 6, 6)
    around.addWidget(area)
    return frame, area
