"""Every example runs: those of the rows, and those in the docstrings as they stand."""

from __future__ import annotations

import doctest
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from table import OPERATIONS, function, made, name_of

ROWS = list(OPERATIONS.values())


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_docstring_example_gives_what_it_shows(row: Any) -> None:
    text = function(row).__doc__
    examples = doctest.DocTestParser().get_doctest(text, {}, row["name"], None, 0)
    assert len(examples.examples) >= 2
    outcome = doctest.DocTestRunner(optionflags=doctest.REPORT_NDIFF).run(examples)
    assert outcome.failed == 0


def test_every_example_with_a_plain_result_shows_one() -> None:
    parser = doctest.DocTestParser()
    ports = [(row, record["fields"] if (record := made(row)) else row["results"]) for row in ROWS]
    plain = [row for row, own in ports if any(port["kind"] in {"number", "count", "choice"} for port in own)]
    for row in plain:
        assert any(one.want for one in parser.get_examples(function(row).__doc__)), row["name"]
    assert len(plain) * 10 >= len(ROWS) * 8


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_arguments_may_stand_in_the_order_of_the_row(row: Any) -> None:
    example = dict(row["example"])
    required = [example.pop(port["name"]) for port in row["ports"] if port["required"]]
    assert function(row)(*required, **example) == function(row)(**row["example"])


def test_the_scan_is_reported_on() -> None:
    script = Path(__file__).parents[2] / "examples/packing_shed_scan.py"
    done = subprocess.run([sys.executable, str(script)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert "Packing shed (invented)" in done.stdout
    assert "ORDER" in done.stdout
