"""What every spreadsheet test may ask for: the packed add-in, and a running spreadsheet with it installed."""

import os
from pathlib import Path

import pytest
from harness import Calc

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def oxt():
    """The add-in as packed by the test run (`tests/run calc`), or the file OVERSLAB_OXT names."""
    path = Path(os.environ.get("OVERSLAB_OXT", ROOT / "build/overslab.oxt"))
    assert path.is_file(), f"{path} is missing: it is built by tests/run"
    return path


@pytest.fixture(scope="module")
def running_sheet(oxt):
    with Calc(oxt) as calc:
        yield calc


@pytest.fixture
def sheet(running_sheet):
    """An empty spreadsheet with the add-in; the office itself is started once for a file of tests."""
    running_sheet.clear()
    return running_sheet
