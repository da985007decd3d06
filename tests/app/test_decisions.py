"""What the technician says of a found band, from Evidence and from the sensor track."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDoubleSpinBox, QMenu, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from analysis.review.model import Choice, Decision
from app.main_window import Window
from app.views.band_card import BandCard
from app.views.headline import Headline
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, sound_capture, worn_or_sound


def said(window: Window) -> Decision | None:
    findings = window.session.findings
    assert findings is not None
    return window.desk.keeper.review.decision(findings.bands[0])


def card(window: Window) -> BandCard:
    found = window.page.evidence.findChild(BandCard)
    assert found is not None
    return found


def at_travel(window: Window, travel_percent: float, breakup_percent: float = 12.0) -> QPoint:
    return window.page.track.viewport_point(travel_percent, breakup_percent).toPoint()


def press(window: Window, name: str) -> None:
    """Press a button on the band's card."""
    text = window.actions_by_name[name].text()
    button = next(item for item in card(window).findChildren(QToolButton) if item.text() == text)
    assert button.isVisible()
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def choose(window: Window, qtbot: QtBot) -> None:
    QTest.mouseClick(window.page.track.canvas, Qt.MouseButton.LeftButton, pos=at_travel(window, BAND.centre))
    qtbot.waitUntil(lambda: window.focus.band == 0)


def test_a_key_accepts_the_band_and_another_takes_that_back(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_A)
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.ACCEPTED
    assert decision.found == BAND
    assert decision.confidence == pytest.approx(0.98)
    assert "accepted" in card(review).said.text()
    QTest.keyClick(review, Qt.Key.Key_W)
    assert said(review) is None
    assert card(review).said.text() == ""


def test_after_no_answer_nothing_is_said_and_undo_leads_back_to_the_answer_before(
    qtbot: QtBot, review: Window
) -> None:
    choose(review, qtbot)
    press(review, "accept")
    press(review, "dismiss")
    QTest.keyClick(card(review).reason, Qt.Key.Key_Return)
    button = next(item for item in card(review).findChildren(QToolButton) if item.text() == "No answer")
    assert "whatever you said of it goes" in button.toolTip()
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert said(review) is None
    for choice in (Choice.DISMISSED, Choice.ACCEPTED):
        QTest.keyClick(review, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
        decision = said(review)
        assert decision is not None
        assert decision.choice is choice


def test_a_band_is_dismissed_with_a_reason_that_is_typed_in_its_card(qtbot: QtBot, review: Window) -> None:
    choose(review, qtbot)
    press(review, "dismiss")
    assert review.focusWidget() is card(review).reason
    QTest.keyClicks(card(review).reason, "a scratch, as my mate said")
    QTest.keyClick(card(review).reason, Qt.Key.Key_Return)
    decision = said(review)
    assert decision is not None
    assert (decision.choice, decision.reason) == (Choice.DISMISSED, "a scratch, as my mate said")
    assert review.desk.keeper.review.markers == ()  # what was typed is no key of the window
    assert "dismissed · a scratch" in card(review).said.text()
    # The next key is meant for the window again, and is not written into the reason.
    QTest.keyClick(QApplication.focusWidget() or review, Qt.Key.Key_N)
    assert review.focus.passage is not None
    assert card(review).reason.text() == "a scratch, as my mate said"


def test_a_reason_in_the_midst_of_typing_is_kept_when_another_capture_is_opened(
    qtbot: QtBot, review: Window, bench: Bench
) -> None:
    bench.others, bench.findings = {"new.h5": sound_capture()}, worn_or_sound()
    choose(review, qtbot)
    press(review, "dismiss")
    QTest.keyClicks(card(review).reason, "a scratch")
    with qtbot.waitSignal(review.session.findings_changed):
        review.open_file(Path("new.h5"))
        decision = said(review)  # still of the capture that goes
        assert decision is not None
        assert decision.reason == "a scratch"
    qtbot.waitUntil(lambda: review.session.findings is not None and not review.session.findings.bands)


def test_what_was_found_stays_in_sight_beside_what_was_said(qtbot: QtBot, review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_X)
    shown = " ".join(label.text() for label in card(review).findChildren(type(card(review).said)))
    assert "41.9–47.7 % of travel" in shown
    assert "very likely (98 in 100)" in shown
    (stretch,) = review.page.track.stretches
    assert stretch.label.endswith("dismissed")
    assert stretch.span == BAND
    assert not stretch.hatched


def test_edges_are_adjusted_by_typing_them(qtbot: QtBot, review: Window) -> None:
    choose(review, qtbot)
    QTest.keyClick(review, Qt.Key.Key_E)
    start = card(review).start
    qtbot.waitUntil(start.hasFocus)
    start.selectAll()
    QTest.keyClicks(start, start.locale().toString(40.5))
    QTest.keyClick(start, Qt.Key.Key_Return)
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.ADJUSTED
    assert decision.adjusted == Interval(40.5, 47.7)
    assert decision.found == BAND
    assert not start.isVisible()
    QTest.keyClick(QApplication.focusWidget() or review, Qt.Key.Key_N)
    assert review.focus.passage is not None


def test_edges_are_adjusted_by_dragging_those_of_the_chosen_band(qtbot: QtBot, review: Window) -> None:
    choose(review, qtbot)
    hands.drag(review.page.track.canvas, at_travel(review, BAND.stop), at_travel(review, 52.0))
    decision = said(review)
    assert decision is not None
    assert decision.adjusted is not None
    assert decision.adjusted.start == pytest.approx(BAND.start)
    assert decision.adjusted.stop == pytest.approx(52.0, abs=0.3)


def test_edges_are_adjusted_to_where_the_arm_is(qtbot: QtBot, review: Window) -> None:
    choose(review, qtbot)
    review.arm.drag_to(40.0)
    at = review.page.track.arm_position()
    assert at is not None
    QTest.keyClick(review, Qt.Key.Key_B, Qt.KeyboardModifier.ControlModifier)
    decision = said(review)
    assert decision is not None
    assert decision.adjusted is not None
    assert decision.adjusted.start == pytest.approx(at, abs=0.06)
    assert decision.adjusted.stop == pytest.approx(BAND.stop)


def test_edges_as_they_were_found_are_no_adjustment(review: Window) -> None:
    review.desk.decisions.adjust(0, BAND)
    assert said(review) is None


def test_the_buttons_beside_the_sensor_track_speak_of_the_chosen_band(qtbot: QtBot, review: Window) -> None:
    buttons = {item.text(): item for item in review.page.track.findChildren(QToolButton)}
    assert not buttons["Accept"].isVisible()
    choose(review, qtbot)
    QTest.mouseClick(buttons["Accept"], Qt.MouseButton.LeftButton)
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.ACCEPTED


def test_both_buttons_say_that_the_band_is_accepted_and_take_it_back(qtbot: QtBot, review: Window) -> None:
    choose(review, qtbot)
    beside = next(item for item in review.page.track.findChildren(QToolButton) if item.text() == "Accept")
    on_card = next(item for item in card(review).findChildren(QToolButton) if item.text() == "Accept")
    width_px = on_card.width()

    def shown() -> list[tuple[str, str, bool]]:
        return [(item.text(), item.accessibleName(), item.isChecked()) for item in (beside, on_card)]

    QTest.mouseClick(beside, Qt.MouseButton.LeftButton)
    assert shown() == [("Accepted", "Accepted", True)] * 2
    assert "pressed again" in on_card.toolTip()
    assert on_card.accessibleDescription() == on_card.toolTip()
    QTest.mouseClick(on_card, Qt.MouseButton.LeftButton)
    assert said(review) is None
    assert shown() == [("Accept", "Accept", False)] * 2
    QTest.keyClick(review, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert said(review) is not None
    assert shown() == [("Accepted", "Accepted", True)] * 2
    QTest.mouseClick(beside, Qt.MouseButton.LeftButton)
    QTest.keyClick(review, Qt.Key.Key_X)
    assert shown() == [("Accept", "Accept", False)] * 2
    assert on_card.width() == width_px


def test_the_right_button_offers_what_can_be_said_of_a_band(qtbot: QtBot, review: Window) -> None:
    sheet = review.page.track.canvas
    QTest.mouseClick(sheet, Qt.MouseButton.RightButton, pos=at_travel(review, BAND.centre))
    qtbot.waitUntil(lambda: isinstance(QApplication.activePopupWidget(), QMenu))
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    texts = [item.text() for item in menu.actions()]
    menu.close()
    assert texts[:4] == ["Accept", "Adjust", "Dismiss", "No answer"]
    assert texts[-2:] == ["Mark this place", "Begin a stretch of travel here"]
    assert review.focus.band == 0


def test_a_decision_is_undone_and_done_again(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_A)
    QTest.keyClick(review, Qt.Key.Key_X)
    QTest.keyClick(review, Qt.Key.Key_Escape)
    review.actions_by_name["undo"].trigger()
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.ACCEPTED
    review.actions_by_name["undo"].trigger()
    assert said(review) is None
    review.actions_by_name["redo"].trigger()
    assert "accepted" in card(review).said.text()


def test_what_was_said_outlives_another_examination_and_other_colours(qtbot: QtBot, review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_A)
    with qtbot.waitSignal(review.session.findings_changed):
        review.session.examine_again()
    assert "accepted" in card(review).said.text()
    review.settings.colours = "dark"
    review.apply_colours()
    assert "accepted" in card(review).said.text()


def test_undo_takes_a_dismissal_back_from_the_field_that_asks_why(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_X)
    field = card(review).reason
    assert review.focusWidget() is field
    assert review.actions_by_name["undo"].toolTip() == "Undo: dismiss a band (Ctrl+Z)"
    QTest.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert said(review) is None
    assert not field.isVisible()
    shift = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(review.focusWidget() or review, Qt.Key.Key_Z, shift)
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.DISMISSED


def test_undo_in_the_field_that_asks_why_is_first_that_of_what_was_typed(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_X)
    field = card(review).reason
    QTest.keyClicks(field, "scratch")
    QTest.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert field.text() == ""
    assert said(review) is not None
    QTest.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert said(review) is None


def test_a_dismissal_is_said_under_the_bands_and_the_verdict_stays(review: Window) -> None:
    line, headline = review.page.evidence.dismissed, review.page.evidence.findChild(Headline)
    assert headline is not None
    verdict = headline.text()
    assert not line.isVisible()
    QTest.keyClick(review, Qt.Key.Key_X)
    assert line.isVisible()
    assert "You dismissed the band at" in line.text()
    assert headline.text() == verdict
    QTest.mouseClick(button(review, "undo"), Qt.MouseButton.LeftButton)
    assert said(review) is None
    assert not line.isVisible()


def button(window: Window, name: str) -> QToolButton:
    """The button of the header that stands for an action."""
    action = window.actions_by_name[name]
    found = window.page.findChildren(QToolButton)
    return next(item for item in found if item.defaultAction() is action and item.isVisible())


def step_into(qtbot: QtBot, review: Window, which: Qt.Key, field: QWidget) -> None:
    """Press a key that steps into a field of the card, while the list of records has the keyboard."""
    review.page.records.list.setFocus()
    QTest.keyClick(review, which)
    qtbot.waitUntil(field.hasFocus)


def type_number(box: QDoubleSpinBox, value: float) -> None:
    box.selectAll()
    QTest.keyClicks(box, box.locale().toString(value))


@pytest.mark.parametrize("end", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
@pytest.mark.parametrize("which", [Qt.Key.Key_X, Qt.Key.Key_E])
def test_after_the_field_of_a_band_the_keyboard_is_where_it_was(
    qtbot: QtBot, review: Window, which: Qt.Key, end: Qt.Key
) -> None:
    field = card(review).reason if which == Qt.Key.Key_X else card(review).start
    step_into(qtbot, review, which, field)
    QTest.keyClick(field, end)
    assert review.page.records.list.hasFocus()
    assert review.focus.band == 0


def test_escape_gives_up_edges_that_are_half_typed(qtbot: QtBot, review: Window) -> None:
    step_into(qtbot, review, Qt.Key.Key_E, card(review).start)
    type_number(card(review).start, 30.0)
    QTest.keyClick(card(review).start, Qt.Key.Key_Escape)
    assert said(review) is None
    assert not card(review).start.isVisible()
    QTest.keyClick(review, Qt.Key.Key_E)
    assert card(review).start.value() == pytest.approx(BAND.start, abs=0.05)


def test_escape_gives_up_edges_that_followed_the_keys_and_leaves_nothing_to_undo(
    qtbot: QtBot, review: Window
) -> None:
    QTest.keyClick(review, Qt.Key.Key_A)
    step_into(qtbot, review, Qt.Key.Key_E, card(review).start)
    for _ in range(3):
        QTest.keyClick(card(review).start, Qt.Key.Key_Up)
    decision = said(review)
    assert decision is not None
    assert decision.adjusted is not None
    assert decision.adjusted.start == pytest.approx(BAND.start + 0.3, abs=0.06)  # shown while it moves
    QTest.keyClick(card(review).start, Qt.Key.Key_Escape)
    decision = said(review)
    assert decision is not None
    assert decision.choice is Choice.ACCEPTED
    assert review.desk.keeper.stack.count() == 1


def test_keys_that_move_an_edge_ten_times_make_one_step_to_undo(qtbot: QtBot, review: Window) -> None:
    step_into(qtbot, review, Qt.Key.Key_E, card(review).start)
    for _ in range(10):
        QTest.keyClick(card(review).start, Qt.Key.Key_Down)
    QTest.keyClick(card(review).start, Qt.Key.Key_Return)
    assert said(review) is not None
    QTest.keyClick(review, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert said(review) is None


def test_edges_hold_in_whichever_order_they_were_typed(qtbot: QtBot, review: Window) -> None:
    step_into(qtbot, review, Qt.Key.Key_E, card(review).start)
    type_number(card(review).start, 60.0)  # beyond the end: the end may be about to be typed
    QTest.keyClick(card(review).start, Qt.Key.Key_Return)
    decision = said(review)
    assert decision is not None
    assert decision.adjusted == Interval(47.7, 60.0)
    assert (card(review).start.value(), card(review).stop.value()) == (47.7, 60.0)


def test_an_edge_beyond_the_other_waits_for_that_one(qtbot: QtBot, review: Window) -> None:
    step_into(qtbot, review, Qt.Key.Key_E, card(review).start)
    type_number(card(review).start, 60.0)
    QTest.keyClick(card(review).start, Qt.Key.Key_Tab)
    assert card(review).stop.hasFocus()
    assert said(review) is None
    type_number(card(review).stop, 65.0)
    QTest.keyClick(card(review).stop, Qt.Key.Key_Return)
    decision = said(review)
    assert decision is not None
    assert decision.adjusted == Interval(60.0, 65.0)


def test_escape_gives_up_a_reason_that_is_half_typed(qtbot: QtBot, review: Window) -> None:
    step_into(qtbot, review, Qt.Key.Key_X, card(review).reason)
    QTest.keyClicks(card(review).reason, "a scr")
    QTest.keyClick(card(review).reason, Qt.Key.Key_Escape)
    decision = said(review)
    assert decision is not None
    assert (decision.choice, decision.reason) == (Choice.DISMISSED, "")
    assert card(review).reason.text() == ""
