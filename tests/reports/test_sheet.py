from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.reports.sheet import csv_text, neutral, tabbed_text


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "\r", "\x0c=", "\u2028=", "\x00=", "\uff1d"])
def test_no_cell_starts_what_a_spreadsheet_takes_for_a_formula(start: str) -> None:
    """The characters are those of OWASP, "CSV Injection"."""
    assert neutral(f"{start}1+1") == f"'{start}1+1"
    assert neutral(f"  {start}1+1").startswith("'")
    assert neutral(f"a{start}1") == f"a{start}1"


def test_no_pasted_cell_starts_a_formula_once_its_white_space_is_gone() -> None:
    assert tabbed_text([("\x0c=1+1", "\u2028-2")]) == "' =1+1\t' -2\n"


def test_numbers_stay_numbers_and_what_is_not_known_stays_empty() -> None:
    assert csv_text([("a", -0.25, 3, None, float("nan"))]) == "a,-0.25,3,,\r\n"


@given(st.lists(st.text(st.characters(exclude_categories=["Cs"])), min_size=1, max_size=4))
def test_what_is_written_is_what_a_reader_of_csv_reads(texts: list[str]) -> None:
    """RFC 4180, read back with Python's own reader."""
    (row,) = csv.reader(io.StringIO(csv_text([texts]), newline=""))
    assert row == [neutral(text) for text in texts] or texts == [""]


def test_text_with_tabs_has_a_line_a_row_whatever_the_cells_hold() -> None:
    text = tabbed_text([("a\nb", "c\td"), ("", 1.5)])
    assert text == "a b\tc d\n\t1.5\n"
    assert tabbed_text([]) == ""
