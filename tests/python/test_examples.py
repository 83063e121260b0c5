"""Every example runs: those of the rows, and those in the docstrings as they stand."""

from __future__ import annotations

import doctest
from typing import Any

import pytest
from table import OPERATIONS, function, name_of

ROWS = list(OPERATIONS.values())


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_docstring_example_gives_what_it_shows(row: Any) -> None:
    text = function(row).__doc__
    examples = doctest.DocTestParser().get_doctest(text, {}, row["name"], None, 0)
    assert len(examples.examples) >= 2
    outcome = doctest.DocTestRunner(optionflags=doctest.REPORT_NDIFF).run(examples)
    assert outcome.failed == 0


def test_most_examples_show_a_result() -> None:
    parser = doctest.DocTestParser()
    shown = [any(one.want for one in parser.get_examples(function(row).__doc__)) for row in ROWS]
    assert sum(shown) * 10 >= len(ROWS) * 9


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_arguments_may_stand_in_the_order_of_the_row(row: Any) -> None:
    example = dict(row["example"])
    required = [example.pop(port["name"]) for port in row["ports"] if port["required"]]
    assert function(row)(*required, **example) == function(row)(**row["example"])
