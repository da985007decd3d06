"""Whatever the import may ask for has words on the page."""

from __future__ import annotations

import pytest

from analysis.importing.needs import Need, Problem
from app.importing.words import problem_sentence


@pytest.mark.parametrize("need", Need)
def test_every_need_says_what_helps_on_this_page(need: Need) -> None:
    said = problem_sentence(Problem(need, "it is not known", "say it with --option"))
    assert said.startswith("It is not known; ")
    assert "--" not in said
