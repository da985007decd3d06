"""Everything that can be done, once: its text, its keys, its icon, and a tip that says the key."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from html import escape

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from app.compare.specs import COMPARE_SPECS
from app.drawing import icons
from app.drawing.theme import Palette
from app.exporting.specs import EXPORT_SPECS
from app.importing.specs import IMPORT_SPECS
from app.reporting.specs import REPORT_SPECS
from app.review.specs import RECORD_SPECS, REVIEW_SPECS
from app.watching.specs import WATCH_SPECS
from app.why.specs import WHY_SPECS


@dataclass(frozen=True, slots=True)
class Spec:
    """One action.

    Parameters
    ----------
    name : str
        How the code calls it.
    menu : str
        The menu that it stands in; empty for none.
    text, tip : str
        Words for people, in English; translated when the action is made.
    keys : tuple of str
        Portable key sequences; the first is the one that tips say.
    icon : str
        Name of an icon, or empty.
    checkable : bool
        Whether it is on or off.
    """

    name: str
    menu: str
    text: str
    tip: str
    keys: tuple[str, ...] = ()
    icon: str = ""
    checkable: bool = False


def _spec(
    name: str, menu: str, text: str, tip: str, keys: str = "", icon: str = "", checkable: bool = False
) -> Spec:
    return Spec(name, menu, text, tip, tuple(keys.split()), icon, checkable)


MENUS = (
    "Capture",
    "Report",
    "Export",
    "View",
    "Step",
    "Arm",
    "Markers",
    "Review",
    "Compare",
    "Help",
)

SPECS = (
    _spec("open", "Capture", "Open…", "Open a capture", "Ctrl+O", "open"),
    *(_spec(*item) for item in IMPORT_SPECS),
    *(_spec(*item) for item in WATCH_SPECS),
    _spec("examine", "Capture", "Examine again", "Examine the open capture again", "F5"),
    _spec("cancel", "Capture", "Stop the work", "Stop the work that is under way", "Ctrl+."),
    _spec("copy", "Capture", "Copy the reading", "Copy the reading at the pointer as text", "Ctrl+C"),
    _spec("quit", "Capture", "Quit", "Close the window", "Ctrl+Q"),
    *(_spec(*item) for item in REPORT_SPECS),
    *(_spec(*item) for item in EXPORT_SPECS),
    _spec("whole", "View", "Whole record", "Show the whole record and the whole track", "Home 0", "whole"),
    _spec("zoom_in", "View", "Zoom in", "Show less time, in more detail", "+ = Ctrl++", "zoom_in"),
    _spec("zoom_out", "View", "Zoom out", "Show more time", "- Ctrl+-", "zoom_out"),
    _spec("earlier", "View", "Move to earlier", "Move the view to earlier time", "Left"),
    _spec("later", "View", "Move to later", "Move the view to later time", "Right"),
    _spec(
        "back",
        "View",
        "View before",
        "Go back to the view before this one",
        "Alt+Left Backspace",
        "view_before",
    ),
    _spec("forward", "View", "View after", "Go forward again", "Alt+Right", "view_after"),
    _spec(
        "lanes",
        "View",
        "A lane for each channel",
        "A lane for each channel, or all on one axis",
        "L",
        "lanes",
        True,
    ),
    *(_spec(*item) for item in WHY_SPECS),
    _spec("next_pane", "View", "Next pane", "Go to the next pane by keys", "F6"),
    _spec("previous_pane", "View", "Pane before", "Go to the pane before by keys", "Shift+F6"),
    _spec("full_screen", "View", "Full screen", "Use the whole screen", "F11", "", True),
    _spec(
        "previous",
        "Step",
        "Previous crossing or event",
        "Go to the previous crossing or event",
        "P Shift+F3",
        "previous",
    ),
    _spec("next", "Step", "Next crossing or event", "Go to the next crossing or event", "N F3", "next"),
    _spec(
        "clearest",
        "Step",
        "Clearest crossing or event",
        "Zoom to the crossing with the most break-up, or to the deepest event",
        "C",
    ),
    _spec("next_band", "Step", "Next band", "Light up the next band", "B"),
    _spec("release", "Step", "Choose nothing", "Let go of the chosen band and crossing", "Esc"),
    _spec("previous_record", "Step", "Previous record", "Show the previous record", "PgUp"),
    _spec("next_record", "Step", "Next record", "Show the next record", "PgDown"),
    _spec("run", "Arm", "Let the arm run", "Let the arm run along the track, or rest", "Space", "run", True),
    _spec(
        "run_crossing",
        "Arm",
        "Run through this crossing",
        "Let the arm run through this crossing alone",
        "Shift+Space",
    ),
    _spec(
        "run_onward",
        "Arm",
        "Run from crossing to crossing",
        "Let the arm run through one crossing after the other",
        "O",
    ),
    _spec(
        "repeat",
        "Arm",
        "Again and again",
        "Begin a crossing again when the arm is through it",
        "R",
        "",
        True,
    ),
    _spec("arm_back", "Arm", "Arm a little back", "Move the arm a little back in time", "Shift+Left"),
    _spec("arm_on", "Arm", "Arm a little on", "Move the arm a little on in time", "Shift+Right"),
    _spec("slower", "Arm", "Slower", "Let the arm run slower", ","),
    _spec("faster", "Arm", "Faster", "Let the arm run faster", "."),
    *(_spec(*item) for item in REVIEW_SPECS),
    *(_spec(*item) for item in RECORD_SPECS),
    *(_spec(*item) for item in COMPARE_SPECS),
    _spec("keys", "Help", "Keys", "Show every key", "F1", "keys"),
    _spec("about", "Help", "About Wornband", "Show the version, and where things are kept", "Shift+F1"),
)


class Actions:
    """The actions of one window, by name.

    Parameters
    ----------
    owner : QWidget
        The window that they belong to.
    """

    def __init__(self, owner: QWidget) -> None:
        self._made: dict[str, QAction] = {spec.name: _make(spec, owner) for spec in SPECS}
        self._handlers: dict[str, list[Callable[[], object]]] = {name: [] for name in self._made}
        self._to_furnish: dict[str, Callable[[], object]] = {}
        self._doing = {name: action.text().rstrip("…") for name, action in self._made.items()}
        for name, action in self._made.items():
            action.triggered.connect(lambda _checked=False, name=name: self._do(name))
        owner.addActions(list(self._made.values()))

    def __getitem__(self, name: str) -> QAction:
        """The action of that name."""
        return self._made[name]

    def connect(self, handlers: dict[str, Callable[[], object]]) -> None:
        """Do these things when the actions of these names are triggered."""
        for name, handler in handlers.items():
            self._handlers[name].append(handler)

    def furnish_first(self, names: Iterable[str], furnish: Callable[[], object]) -> None:
        """Call this before one of these is done for the first time: whoever does it connects itself then."""
        self._to_furnish.update(dict.fromkeys(names, furnish))

    def in_menu(self, menu: str) -> list[QAction]:
        """The actions of one menu, in order."""
        return [self._made[spec.name] for spec in SPECS if spec.menu == menu]

    def apply_palette(self, palette: Palette) -> None:
        """Tint the icons."""
        for spec in SPECS:
            if spec.icon:
                self._made[spec.name].setIcon(icons.icon(spec.icon, palette.ink, palette.faint))

    def _do(self, name: str) -> None:
        """Do it; what goes wrong says with it what was being done."""
        try:
            if name in self._to_furnish:
                self._to_furnish[name]()
                del self._to_furnish[name]  # not where it failed: the next wish tries again
            for handler in tuple(self._handlers[name]):
                handler()
        except Exception as error:
            error.add_note(self._doing[name])
            raise


def keys_page(actions: Actions) -> str:
    """Every action with its keys, as HTML for people, made from the actions themselves.

    Before them stand the keys that are no actions: those that go through the window.
    """
    parts = [_keys_table(_tr("On every page"), _beside_actions())]
    for menu in MENUS:
        rows = [
            (
                ", ".join(key.toString(QKeySequence.SequenceFormat.NativeText) for key in action.shortcuts()),
                str(action.property("plainTip")),
            )
            for action in actions.in_menu(menu)
        ]
        parts.append(_keys_table(_tr(menu), rows))
    return "".join(parts)


def _keys_table(title: str, rows: Sequence[tuple[str, str]]) -> str:
    lines = "".join(
        f"<tr><td width='150'><b>{escape(keys)}</b></td><td>{escape(tip)}</td></tr>" for keys, tip in rows
    )
    return f"<h3>{escape(title)}</h3><table cellpadding='3'>{lines}</table>"


def _beside_actions() -> list[tuple[str, str]]:
    def native(keys: str) -> str:
        return QKeySequence(keys).toString(QKeySequence.SequenceFormat.NativeText)

    return [
        (
            f"{native('Tab')}, {native('Shift+Tab')}",
            _tr("Go to the next control, or the one before"),
        ),
        (native("Enter"), _tr("Press the button that the keyboard is on; open the row")),
        (native("Alt+Down"), _tr("Open the list of a field")),
        (_tr("Alt and a letter"), _tr("Open the menu with that letter underlined")),
        ("← → ↑ ↓", _tr("In the overview: move the shown window, show less or more")),
    ]


def menu_names() -> dict[str, str]:
    """Every menu's name, translated, with the letter that opens it with Alt: no two have the same."""
    names, taken = {}, ""
    for menu in MENUS:
        name = _tr(menu)
        place = next((at for at, letter in enumerate(name) if letter.lower() not in taken), 0)
        taken += name[place].lower()
        names[menu] = f"{name[:place]}&{name[place:]}"
    return names


def _tr(text: str) -> str:
    return QCoreApplication.translate("actions", text)


def _make(spec: Spec, owner: QWidget) -> QAction:
    action = QAction(_tr(spec.text), owner)
    action.setObjectName(spec.name)
    action.setCheckable(spec.checkable)
    action.setShortcuts([QKeySequence(key) for key in spec.keys])
    action.setProperty("plainTip", _tr(spec.tip))
    key = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
    action.setToolTip(f"{_tr(spec.tip)} ({key})" if key else _tr(spec.tip))
    action.setStatusTip("")
    return action
