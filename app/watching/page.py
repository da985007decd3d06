"""Watch laid out: the one instruction and the travel tested, legible from the car; the rest small below."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.diagnosis.enough import Task
from analysis.watching.watch import Watch
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.trouble import in_window
from app.views.caution_strip import CautionStrip
from app.views.elided_label import ElidedLabel
from app.views.flow_row import FlowRow
from app.views.problem_bar import ProblemBar
from app.watching.far_line import FarLine
from app.watching.travel_bar import TravelBar

_MOST_TOLD = 3
_LOW_PX = 640  # 1920 x 1080 at 200 % leaves 540 for the window
_SENTENCE_PX, _LOW_SENTENCE_PX = 26, 18


def _tr(text: str) -> str:
    return QCoreApplication.translate("watch_page", text)


class WatchPage(QWidget):
    """The Watch screen.

    Parameters
    ----------
    button : callable
        ``button(name, text=True)`` makes a button for an action.

    Signals
    -------
    folder_wanted()
        Another folder is to be chosen.
    stop_wanted()
        Watching is to end, or to go on.
    again_wanted()
        The files that failed are to be tried once more.
    import_wanted()
        The file that failed last is to be imported by hand.
    confirm_wanted()
        What was asked for was done in the records at rest.
    profile_wanted(str)
        Another sensor profile is to judge; empty for the one that the files name.
    """

    folder_wanted = Signal()
    stop_wanted = Signal()
    again_wanted = Signal()
    import_wanted = Signal()
    confirm_wanted = Signal()
    profile_wanted = Signal(str)

    def __init__(self, button: Callable[..., QToolButton]) -> None:
        super().__init__()
        self._palette = LIGHT
        self._watch: Watch | None = None
        self._going = False
        self.title = ElidedLabel(mode=Qt.TextElideMode.ElideMiddle)
        self.problem_bar, self.cautions = ProblemBar(), CautionStrip()
        self.cautions.show_brief(False)
        self.instruction, self.bar = FarLine(), TravelBar()
        self.sentence, self.files, self.verdict = QLabel(), QLabel(), QLabel()
        self.trouble = QLabel()
        self.choose, self.stop = QPushButton(_tr("Choose a folder…")), QPushButton(_tr("Stop watching"))
        self.again, self.by_hand = QPushButton(_tr("Try again")), QPushButton(_tr("Import by hand…"))
        self.confirm, self.unconfirmed = QPushButton(_tr("I wiggled the harness")), QLabel()
        self.profile = QComboBox()
        self.offer_profiles({})
        self.buttons = [button(name) for name in ("next_sensor", "review_gathered", "full_screen")]
        self._lay_out()
        self._make_room()
        self._explain()
        self.choose.clicked.connect(self.folder_wanted)
        self.stop.clicked.connect(self.stop_wanted)
        self.again.clicked.connect(self.again_wanted)
        self.by_hand.clicked.connect(self.import_wanted)
        self.confirm.clicked.connect(self.confirm_wanted)
        self.profile.activated.connect(lambda _: self.profile_wanted.emit(self.profile_id or ""))
        self.show_watch(None, going=False)

    def _lay_out(self) -> None:
        self.title.setObjectName("captureTitle")
        head = QHBoxLayout()
        self.title.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        head.addWidget(self.title, 1)
        head.addLayout(FlowRow([self.profile, self.choose, self.stop, *self.buttons], 6))
        self.profile.setMinimumContentsLength(13)
        self.profile.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for label in (self.sentence, self.files, self.verdict, self.trouble, self.unconfirmed):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.sentence.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.trouble.setProperty("trouble", True)
        self._failed = QFrame()
        self._failed.setObjectName("problem")
        failed = QHBoxLayout(self._failed)
        failed.setContentsMargins(10, 5, 10, 5)
        failed.addWidget(self.trouble, 1)
        failed.addWidget(self.again)
        failed.addWidget(self.by_hand)
        self._to_confirm = QFrame()
        asking = QHBoxLayout(self._to_confirm)
        asking.setContentsMargins(10, 5, 10, 5)
        asking.addWidget(self.unconfirmed, 1)
        asking.addWidget(self.confirm)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 6, 10, 6)
        layout.setSpacing(6)
        layout.addLayout(head)
        layout.addWidget(self.problem_bar)
        layout.addWidget(self.cautions)
        layout.addWidget(self.instruction, 5)
        layout.addWidget(self.sentence)
        layout.addWidget(self._to_confirm)
        layout.addWidget(self.bar, 4)
        layout.addWidget(self.verdict)
        layout.addWidget(self.files)
        layout.addWidget(self._failed)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a low screen the instruction keeps its size; what is around it gives way."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        low = self.height() < _LOW_PX
        self.cautions.show_brief(low)
        font = self.sentence.font()
        font.setPixelSize(_LOW_SENTENCE_PX if low else _SENTENCE_PX)
        self.sentence.setFont(font)
        layout = self.layout()
        if layout is not None:
            layout.setSpacing(2 if low else 6)

    def _explain(self) -> None:
        for button, tip in (
            (self.choose, _tr("Choose the folder that the recorder saves into")),
            (self.stop, _tr("Stop watching the folder, or go on")),
            (self.confirm, _tr("Only if the harness and the plug were moved while it was recorded")),
            (self.again, _tr("Try the files that failed once more")),
            (self.by_hand, _tr("Say how the file is to be read; the next one of its shape is then read so")),
        ):
            button.setToolTip(tip)
            button.setAccessibleName(button.text())
        self.profile.setToolTip(_tr("Which sensor is judged"))
        self.profile.setAccessibleName(_tr("Sensor profile"))

    @property
    def profile_id(self) -> str | None:
        """The profile that is chosen; None for the one that the files name."""
        return self.profile.currentData() or None

    def offer_profiles(self, titles: Mapping[str, str]) -> None:
        """Offer sensor profiles, by id; what was chosen stays so."""
        chosen = self.profile.currentData() or ""
        self.profile.clear()
        self.profile.addItem(_tr("Sensor by the files"), "")
        for profile_id, title in titles.items():
            self.profile.addItem(title, profile_id)
        self.profile.setCurrentIndex(max(self.profile.findData(chosen), 0))

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self.cautions.apply_palette(palette)
        self.problem_bar.apply_palette(palette)
        self.bar.apply_palette(palette)
        self.show_watch(self._watch, going=self._going)

    def show_watch(self, watch: Watch | None, *, going: bool) -> None:
        """Show a watch as it stands.

        Parameters
        ----------
        watch : Watch or None
            None before a folder was chosen.
        going : bool
            Whether the folder is being looked at.
        """
        self._watch, self._going = watch, going
        self.stop.setEnabled(watch is not None)
        self.stop.setText(_tr("Stop watching") if going or watch is None else _tr("Go on watching"))
        if watch is None:
            self._tell(_tr("Choose a folder"), _tr("Choose the folder that the recorder saves into."), False)
            self.title.setText(_tr("Watch a folder"))
            self._failed.hide()
            self._to_confirm.hide()
            return
        ask = watch.standing.evidence.next
        self.title.setText(_tr("Watching {folder}").format(folder=watch.folder))
        if going:
            self._tell(said(ask.line), said(ask.sentence), ask.task is Task.ENOUGH)
        else:
            self._tell(
                _tr("Not watching"), _tr("What the recorder saves now is taken when you go on."), False
            )
        self.bar.show_stretches(watch.standing.evidence.stretches)
        found = watch.standing.findings
        self.verdict.setText(said(found.verdict.summary) if found is not None else "")
        self.files.setText(_of_files(watch))
        self._to_confirm.setVisible(bool(watch.unconfirmed))
        self.unconfirmed.setText(
            _tr("At rest: {names}. It counts as no wiggle test unless you say that you did it.").format(
                names=", ".join(watch.unconfirmed)
            )
        )
        lines = _troubles(watch)
        self.trouble.setText("\n".join(lines))
        self._failed.setVisible(bool(lines))
        self.again.setVisible(bool(watch.failures))
        self.by_hand.setVisible(bool(watch.failures))

    def _tell(self, line: str, sentence: str, enough: bool) -> None:
        p = self._palette
        self.instruction.show_text(line, p.paper if enough else p.ink, p.good if enough else p.paper)
        self.sentence.setText(sentence)


def _of_files(watch: Watch) -> str:
    if not watch.taken:
        return _tr("No file has come yet; a file is taken once it has stopped growing.")
    return _tr("Files together: {count}. Last: {name}").format(count=len(watch.taken), name=watch.last)


def _troubles(watch: Watch) -> list[str]:
    """What is wrong, in sentences, the latest last."""
    lines = [
        _tr("{name} has been growing for a minute: stop the recording, and it is taken.").format(name=name)
        for name in watch.endless[:_MOST_TOLD]
    ]
    lines += [f"{item.name}: {in_window(item.sentence)}" for item in watch.failures[-_MOST_TOLD:]]
    if watch.trouble:
        lines.append(in_window(watch.trouble))
    return lines
