"""The stubs: strict in themselves, equal to what runs, and of use to whoever calls."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from table import OPERATIONS, SPECIMEN, made, units_of

import overslab

PACKAGE = Path(overslab.__file__).parent
ROOT = Path(__file__).parents[2]
PUBLIC = [row for row in OPERATIONS.values() if row["module"] != SPECIMEN]


def tool(*arguments: Any, where: Path) -> subprocess.CompletedProcess[str]:
    """Runs a module of this interpreter."""
    command = [sys.executable, "-m", *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, check=False, cwd=where, timeout=600)


def mypy(where: Path, *files: Any) -> subprocess.CompletedProcess[str]:
    """Runs the type checker, as strict as it is."""
    return tool("mypy", "--strict", "--warn-unreachable", "--cache-dir", where / "cache", *files, where=where)


def test_the_package_is_strictly_typed(tmp_path: Path) -> None:
    done = mypy(tmp_path, "-p", "overslab")
    assert done.returncode == 0, done.stdout


def test_the_stubs_are_what_runs(tmp_path: Path) -> None:
    # The test-only rows are in the native module of this wheel, but in no stub of the package. The tool takes an alias of
    # two literals for a union, which at run time it is not.
    allowed = tmp_path / "allowed"
    allowed.write_text("overslab\\._overslab\\.([sS]pecimen.*|_panics_.*)\noverslab\\.typing\\.(Units|Errors)\n")
    done = tool("mypy.stubtest", "overslab", "--allowlist", allowed, "--ignore-unused-allowlist", where=tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr


def test_the_stub_of_the_test_only_rows_is_strictly_typed(tmp_path: Path) -> None:
    done = mypy(tmp_path, ROOT / "tests" / "specimen" / "specimen.pyi")
    assert done.returncode == 0, done.stdout


def typed_use(row: Any) -> str:
    """A caller's code that calls an operation and declares the type of each result."""
    arguments = ", ".join(f"{name}={value!r}" for name, value in row["example"].items())
    lines = [f"from overslab.{row['module']} import {row['name']}", f"answer = {row['name']}({arguments})"]
    ports = made(row)["fields"] if made(row) else row["results"]
    for port in ports:
        for name in units_of(port):
            lines.append(f"one_{name}: {declared(port)} = answer.{name}")
    lines.append("notes: tuple[Note, ...] = answer.notes")
    return "\n".join(lines)


def declared(port: Any) -> str:
    """The type that a caller may declare for a result."""
    kind = {"number": "float", "count": "int", "choice": "str", "text": "str", "table": "dict[str, Any]"}
    found = kind.get(port["kind"], f"overslab.{port.get('class_name')}")
    return found if port["required"] else f"{found} | None"


def test_the_examples_of_all_rows_are_well_typed(tmp_path: Path) -> None:
    head = "from typing import Any\nimport overslab\nfrom overslab.results import Note\n"
    for row in PUBLIC:
        (tmp_path / f"use_{row['name']}.py").write_text(head + typed_use(row) + "\n")
    done = mypy(tmp_path, *sorted(tmp_path.glob("use_*.py")))
    assert done.returncode == 0, done.stdout


WRONG = [
    ("a missing argument", lambda row, first: f"{row['name']}()"),
    ("an argument that is not known", lambda row, first: f"{row['name']}(**{{}}, nothing_has_this_name=1)"),
    ("a complex number", lambda row, first: f"{row['name']}({first}=2j)"),
    ("units that are none", lambda row, first: f"{row['name']}(units='metric')"),
    ("a result that is none", lambda row, first: f"{row['name']}.nothing_has_this_name"),
]


@pytest.mark.parametrize(("what", "code"), WRONG, ids=lambda one: one if isinstance(one, str) else "")
def test_wrong_use_is_seen_by_the_type_checker(tmp_path: Path, what: str, code: Any) -> None:
    lines = []
    for row in PUBLIC:
        lines.append(f"from overslab.{row['module']} import {row['name']}")
        lines.append(code(row, row["ports"][0]["name"]))
    (tmp_path / "wrong.py").write_text("\n".join(lines) + "\n")
    done = mypy(tmp_path, "wrong.py")
    seen = {int(line.split(":")[1]) for line in done.stdout.splitlines() if ": error:" in line}
    assert seen == set(range(2, len(lines) + 1, 2)), done.stdout


USES = """
import numpy as np
import numpy.typing as npt
from overslab import OPERATIONS, QuantityError
from overslab.{module} import {name}, {result}, {result}Array
one: {result} = {name}({numbers}, units="us")
many: {result}Array = {name}({arrays}, units="si", errors="mark")
lists: {result}Array = {name}({lists}, units="us")
mixed: {result}Array = {name}({mixed}, units="us")
bad: npt.NDArray[np.int64] = many.bad
reason: str = many.reasons[0].remedy
shape: tuple[int, ...] = many.shape
{attributes}
try:
    {name}({numbers})
except QuantityError as error:
    print(error.code, error.path, error.allowed.upper())
for row in OPERATIONS.values():
    print(row["name"].upper(), [port["us"]["unit"] for port in row["ports"] if port["kind"] == "number"])
"""


def test_both_forms_of_a_scalar_row_are_told_apart(tmp_path: Path) -> None:
    count = 0
    for row in PUBLIC:
        if not row["scalar"] or any(port["kind"] != "number" for port in row["ports"]):
            continue
        result = type(getattr(overslab._overslab, row["name"])(**row["example"])).__name__
        ports = len(row["ports"])
        attributes = [
            f"many_{name}: npt.NDArray[np.float64] = many.{name}"
            for port in row["results"]
            if port["kind"] == "number"
            for name in units_of(port)
        ]
        text = USES.format(
            module=row["module"],
            name=row["name"],
            result=result,
            numbers=", ".join(["2", "3.5", "np.float64(4.0)", "7"][place % 4] for place in range(ports)),
            arrays=", ".join(["np.ones(3)"] * ports),
            lists=", ".join(["[1.0, 2.0]"] * ports),
            mixed=", ".join(["[1, '2 in']"] + ["'3 ft'"] * (ports - 1)),
            attributes="\n".join(attributes),
        )
        (tmp_path / f"use_{row['name']}.py").write_text(text)
        count += 1
    assert count
    done = mypy(tmp_path, *sorted(tmp_path.glob("use_*.py")))
    assert done.returncode == 0, done.stdout


def test_the_package_says_that_it_is_typed() -> None:
    assert (PACKAGE / "py.typed").exists()
    for row in PUBLIC:
        assert (PACKAGE / f"{row['module']}.pyi").exists()
