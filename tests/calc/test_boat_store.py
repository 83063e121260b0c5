"""One invented job through the four callers: Rust, C, Python and the spreadsheet give the same figures, and move alike."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from harness import Calc

ROOT = Path(__file__).resolve().parents[2]
JOB = ROOT / "examples/boat_store.toml"
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))

# The callers print nine decimals.
PRINTED = 1e-9


def run(*command):
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, timeout=120, cwd=ROOT)
    assert done.returncode == 0, done.stderr
    return done.stdout


def figures(text):
    return {name: float(number) for name, number in (line.split() for line in text.splitlines() if line)}


def rust(job):
    return figures(run(TARGET / "debug/examples/boat_store", job, "--figures"))


def c(job, folder):
    program = folder / "boat_store"
    library = ROOT / "build/lib"
    run("cc", "-std=c99", "-I", "ffi/include", "examples/boat_store.c", "-o", program, "-L", library, "-loverslab", f"-Wl,-rpath,{library}")
    return figures(run(program, job, "--figures"))


def python(job):
    return figures(run(ROOT / ".venv/bin/python", "examples/boat_store.py", job, "--figures"))


def spreadsheet(job, folder):
    """The figures that the sheet computes from its cells, and those that it reads from the report of the whole job."""
    sheet = folder / "boat_store.fods"
    run(sys.executable, "examples/boat_store_sheet.py", job, sheet)
    with Calc(ROOT / "build/overslab.oxt") as calc:
        return read(calc, sheet)


def read(calc, sheet):
    calc.load(str(sheet))
    calc.recalculate()
    rows = calc.results("Floor.A1:B60")
    cells = {name: number for name, number in rows if isinstance(name, str) and name.endswith(("_yd3", "_in", "loads"))}
    report = {name: number for name, number in calc.results("Report.A1:B7")}
    return cells, report


@pytest.fixture(scope="module")
def moved(tmp_path_factory):
    """The job with the shot that fixes the height booked 1/8 in less: the floor there is 1/8 in higher."""
    text = JOB.read_text(encoding="utf-8")
    shot = "5' 0 3/8\\\""
    assert text.count(shot) == 1
    job = tmp_path_factory.mktemp("moved") / "moved.toml"
    job.write_text(text.replace(shot, "5' 0 1/4\\\""), encoding="utf-8")
    return job


def all_four(job, folder):
    cells, report = spreadsheet(job, folder)
    whole = {name: report[name.partition("_")[0]] for name in cells}
    return {"Rust": rust(job), "C": c(job, folder), "Python": python(job), "cells": cells, "report in cells": whole}


def test_the_four_callers_agree(tmp_path):
    found = all_four(JOB, tmp_path)
    for caller, numbers in found.items():
        assert numbers == pytest.approx(found["Rust"], abs=2 * PRINTED), caller


def test_a_moved_rod_moves_all_four_alike(moved, tmp_path):
    before = rust(JOB)
    found = all_four(moved, tmp_path)
    for caller, numbers in found.items():
        assert numbers == pytest.approx(found["Rust"], abs=2 * PRINTED), caller
    # The floor comes up by 1/8 in over 640 ft2, less what the raised shot takes: about a quarter of a yard.
    assert 0.2 < found["Rust"]["net_yd3"] - before["net_yd3"] < 0.25
    assert found["Rust"]["ordered_yd3"] == before["ordered_yd3"] + 0.25


def test_the_shipped_sheet_is_made_from_the_job(tmp_path):
    fresh = tmp_path / "fresh.fods"
    run(sys.executable, "examples/boat_store_sheet.py", JOB, fresh)
    assert fresh.read_text() == (ROOT / "examples/boat_store.fods").read_text(), "run examples/boat_store_sheet.py"
