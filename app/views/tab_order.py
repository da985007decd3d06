"""Where Tab goes next: in the order in which the eye reads, also into rows that are made later."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from itertools import pairwise

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QComboBox,
    QWidget,
)


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
    """Where the next pane begins, or the one before: column after column, each from the top.

    Parameters
    ----------
    start : QWidget
        What has the keyboard now.
    window : QWidget
        Whose panes are meant.
    pane_kind : type
        What counts as a pane; beside them, stops that stand in one holder count as one too.
    back : bool
        Whether the pane before is meant.

    Returns
    -------
    QWidget or None
        None where there is one pane alone.
    """
    reached: dict[QWidget, QWidget] = {}
    for item in stops(window):
        if item.isVisibleTo(window) and item.isEnabled():
            pane = _pane_of(item, pane_kind)
            known = reached.get(pane)
            # The list of a pane is what one comes for, and not the tools above it.
            if known is None or isinstance(item, QAbstractItemView) > isinstance(known, QAbstractItemView):
                reached[pane] = item
    own, panes = _pane_of(start, pane_kind), sorted(reached, key=partial(_corner, window))
    if own not in reached:
        return reached[panes[-1 if back else 0]] if panes else None
    beside = panes[(panes.index(own) + (-1 if back else 1)) % len(panes)]
    return reached[beside] if beside is not own else None


def _corner(window: QWidget, pane: QWidget) -> tuple[int, int]:
    at = pane.mapTo(window, QPoint(0, 0))
    return at.x(), at.y()


def _is_stop(item: QWidget) -> bool:
    by_tab = bool(item.focusPolicy() & Qt.FocusPolicy.TabFocus)
    # The line in a box gives the keyboard to the box, what scrolls to its frame. They are not asked for it:
    # PySide takes what `focusProxy` or `nextInFocusChain` gives for a child of the one that was asked; when
    # that one goes, all that hangs on it counts as deleted while Qt goes on with it.
    holder = item.parentWidget()
    inside = isinstance(holder, QAbstractSpinBox | QComboBox) or (
        isinstance(holder, QAbstractScrollArea) and holder.viewport() is item
    )
    return by_tab and not inside and not item.isWindow()


def _pane_of(item: QWidget, pane_kind: type[QWidget]) -> QWidget:
    """The pane that a stop stands in; beside panes what holds it."""
    holder: QWidget | None = item
    while holder is not None and not isinstance(holder, pane_kind):
        holder = holder.parentWidget()
    return holder or item.parentWidget() or item
