"""Where Tab goes next: in the order in which the eye reads, also into rows that are made later."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget


def in_turn(widgets: Sequence[QWidget]) -> None:
    """Let Tab go through widgets of one window in this order; the first keeps its place.

    Parameters
    ----------
    widgets : sequence of QWidget
        One that is named again counts the first time. Qt passes over a widget that can get no focus at all,
        so a place to begin at that is no stop itself must take it by click.
    """
    each = list(dict.fromkeys(widgets))
    for before, after in pairwise(each):
        QWidget.setTabOrder(before, after)


def stops(holder: QWidget) -> list[QWidget]:
    """What Tab stops at inside a widget, in the order in which it was laid out."""
    window = holder.window()
    return [item for item in holder.findChildren(QWidget) if _is_stop(item) and item.window() is window]


def pane_beside(start: QWidget, window: QWidget, pane_kind: type[QWidget], *, back: bool) -> QWidget | None:
    """The first stop of the next pane, or of the one before.

    Parameters
    ----------
    start : QWidget
        What has the keyboard now.
    window : QWidget
        Whose panes are meant.
    pane_kind : type
        What counts as a pane; everything beside panes counts as one too.
    back : bool
        Whether the pane before is meant.

    Returns
    -------
    QWidget or None
        None where there is one pane alone.
    """
    ring = _ring(start, window)
    if back:
        ring.reverse()
    own = _pane_of(start, pane_kind)
    others = [item for item in ring if _pane_of(item, pane_kind) is not own]
    if not others:
        return None
    target = _pane_of(others[0], pane_kind)
    reached = []
    for item in others:
        if _pane_of(item, pane_kind) is not target:
            break
        reached.append(item)
    return reached[-1] if back else reached[0]


def _ring(start: QWidget, window: QWidget) -> list[QWidget]:
    """Every stop in sight, from the one after `start` on."""
    ring: list[QWidget] = []
    item = start.nextInFocusChain()
    while item is not None and item is not start:
        if _is_stop(item) and item.isVisibleTo(window) and item.isEnabled():
            ring.append(item)
        item = item.nextInFocusChain()
    return ring


def _is_stop(item: QWidget) -> bool:
    by_tab = bool(item.focusPolicy() & Qt.FocusPolicy.TabFocus)
    return by_tab and item.focusProxy() is None and not item.isWindow()


def _pane_of(item: QWidget, pane_kind: type[QWidget]) -> QWidget | None:
    holder: QWidget | None = item
    while holder is not None and not isinstance(holder, pane_kind):
        holder = holder.parentWidget()
    return holder
