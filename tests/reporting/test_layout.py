"""Sheets as they are laid out: columns of one height, what goes on says so, and letters that can be read."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from analysis.reports.document import Table
from analysis.reports.drawing import Drawing
from analysis.reports.pages import Block, Columns, Facts, Grid, Heading, Items, Page, Paragraph, Picture
from app.reporting.layout import SIZES_MM, Paper, lay_out
from app.reporting.materials import gather
from app.reporting.placed import UNITS_A_MM, Drawn, Line, Sheet
from tests.reporting.examples import pages

NOWHERE = Path("nowhere")
SMALLEST_POINTS = 6.0


def lines(sheet: Sheet) -> list[tuple[float, float, str]]:
    """Place and words of every line of a sheet, in the order in which a reader of the PDF meets them."""
    made = []
    for item in sheet.items:
        if isinstance(item, Line):
            line = item.layout.lineAt(item.number)
            start = line.textStart()
            made.append((item.x, item.y, item.layout.text()[start : start + line.textLength()].strip()))
    return made


def in_columns(count: int, paper: Paper = Paper.A4) -> tuple[Sheet, ...]:
    """A report whose page two is a row of numbered sections in two columns."""
    sections = [
        block
        for number in range(count)
        for block in (Heading(f"Heading {number}"), Items((f"first {number}", f"second {number}")))
    ]
    made = pages()
    page = Page("Evidence", (Paragraph("above"), Columns(tuple(sections)), Paragraph("below")))
    return lay_out(gather(replace(made, pages=(made.pages[0], page)), NOWHERE), paper)[1:]


@pytest.mark.parametrize("paper", Paper)
def test_the_plain_case_is_a_sheet_for_the_customer_and_a_sheet_of_evidence(paper: Paper) -> None:
    assert len(lay_out(gather(pages(), NOWHERE), paper)) == 2


@pytest.mark.parametrize("count", [2, 7, 20])
def test_columns_stand_beside_each_other_and_are_of_one_height(count: int) -> None:
    (sheet,) = in_columns(count)
    middle = 0.5 * sheet.width
    words = [item for item in lines(sheet) if item[2].startswith(("Heading", "first", "second"))]
    left, right = [item for item in words if item[0] < middle], [item for item in words if item[0] >= middle]
    assert min(y for _, y, _ in left) == min(y for _, y, _ in right)
    tallest = max(y for _, y, _ in words) - min(y for _, y, _ in words)
    a_section = 15.0 * UNITS_A_MM
    assert abs(max(y for _, y, _ in left) - max(y for _, y, _ in right)) < max(a_section, 0.1 * tallest)


@pytest.mark.parametrize("count", [2, 7, 20, 60, 150])
def test_columns_are_read_down_the_left_then_down_the_right_and_lose_nothing(count: int) -> None:
    words = [text for sheet in in_columns(count) for _, _, text in lines(sheet)]
    read = [text for text in words if text.startswith(("Heading", "first", "second"))]
    wanted = [f"{what} {number}" for number in range(count) for what in ("Heading", "first", "second")]
    assert read == wanted
    assert words.index("above") < words.index("Heading 0")
    assert words.index("below") > words.index(f"second {count - 1}")


def test_no_heading_is_left_alone_at_the_foot_of_a_column() -> None:
    for count in range(30, 60, 7):
        for sheet in in_columns(count):
            found = lines(sheet)
            for (x, _, text), (next_x, _, _) in pairwise(found):
                if text.startswith("Heading"):
                    assert next_x < x + 0.25 * sheet.width


def test_what_goes_on_over_a_further_sheet_says_what_it_continues() -> None:
    sheets = in_columns(150)
    assert len(sheets) > 1
    assert all("Evidence, continued" in [text for _, _, text in lines(sheet)] for sheet in sheets[1:])
    assert "Evidence, continued" not in [text for _, _, text in lines(sheets[0])]


@pytest.mark.parametrize("count", [2, 20, 150])
def test_letters_are_never_smaller_than_can_be_read(count: int) -> None:
    for sheet in in_columns(count):
        for item in sheet.items:
            if isinstance(item, Line):
                points = item.layout.font().pixelSize() / UNITS_A_MM / 25.4 * 72.0
                assert points >= SMALLEST_POINTS


def test_a_row_that_is_higher_than_a_column_is_kept_whole() -> None:
    made = pages()
    table = Table(("One", "Two"), (("word " * 4000, "short"),))
    page = Page("Evidence", (Columns((Grid(table, (1.0, 1.0)), Facts((("Name", "value " * 2000),)))),))
    sheets = lay_out(gather(replace(made, pages=(page, page)), NOWHERE))
    said = " ".join(text for sheet in sheets for _, _, text in lines(sheet)).split()
    assert said.count("word") == 2 * 4000
    assert said.count("value") == 2 * 2000
    for sheet in sheets:
        assert all(0.0 <= y <= SIZES_MM[Paper.A4][1] * UNITS_A_MM for _, y, _ in lines(sheet))


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("before", range(20, 36))
def test_a_picture_at_the_head_of_columns_ends_above_the_foot_of_the_sheet(paper: Paper, before: int) -> None:
    made = pages()
    drawing = Drawing(470.0, 220.0, (), "nothing")
    above = tuple(Paragraph(f"line {number}") for number in range(before))
    shown = Columns((Picture("trace", drawing, "What the picture shows."), Items(("one", "two"))))
    page = Page("Evidence", (*above, Grid(Table(("A", "B"), (("a", "b"),) * before), (1.0, 1.0)), shown))
    for sheet in lay_out(gather(replace(made, pages=(made.pages[0], page)), NOWHERE), paper)[1:]:
        for item in sheet.items:
            if isinstance(item, Drawn):
                assert item.y + item.height <= sheet.height - 15.0 * UNITS_A_MM


def test_no_word_and_no_short_cell_of_a_table_is_broken() -> None:
    made = pages()
    rows = (("nicht in Ordnung", "höchstens 100 mV", "Servicehandbuch " * 12, "entscheidungserheblich"),) * 3
    page = Page("Evidence", (Grid(Table(("Was", "Zulässig", "Wessen", "Wo"), rows), (0.4, 0.4, 5.0, 0.3)),))
    told = [
        text
        for sheet in lay_out(gather(replace(made, pages=(made.pages[0], page)), NOWHERE))[1:]
        for _, _, text in lines(sheet)
    ]
    for cell in ("nicht in Ordnung", "höchstens 100 mV", "entscheidungserheblich"):
        assert told.count(cell) == 3


def test_a_last_sheet_is_saved_where_slightly_smaller_letters_do() -> None:
    made, counts = pages(), []
    for number in range(60, 160):
        page = Page("Evidence", tuple(Paragraph(f"line {place}") for place in range(number)))
        sheets = lay_out(gather(replace(made, pages=(made.pages[0], page)), NOWHERE))[1:]
        counts.append([len([text for _, _, text in lines(s) if text.startswith("line")]) for s in sheets])
    assert min(item[-1] for item in counts if len(item) > 1) > 3


def test_a_heading_keeps_two_items_below_it_in_its_column() -> None:
    long, made = "word " * 120, pages()
    for before in range(1, 16):
        items = tuple(f"{name} {long}" for name in ("first", "second", "third"))
        blocks: tuple[Block, ...] = (
            *(Paragraph(f"above {place}") for place in range(before)),
            Heading("Heading"),
            Items(items),
        )
        page = Page("Evidence", (Columns(blocks),))
        for sheet in lay_out(gather(replace(made, pages=(made.pages[0], page)), NOWHERE))[1:]:
            begins = {text.split()[0]: x for x, _, text in lines(sheet) if text}
            if "Heading" in begins:
                middle = 0.5 * sheet.width
                sides = {begins[name] < middle for name in ("Heading", "first", "second")}
                assert len(sides) == 1, before
