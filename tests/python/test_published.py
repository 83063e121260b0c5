"""Checks from outside through Python: the cases of `tests/published`, as `published.rs` takes them through the engine.

Expected numbers in another unit than a result's own are converted by the factors of `published/units.toml`, not by the engine.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import overslab

if sys.version_info >= (3, 11):
    import tomllib
else:
    import tomli as tomllib

TESTS = Path(__file__).parents[1]


def published(name: str) -> dict[str, Any]:
    """One file of the folder."""
    return tomllib.loads((TESTS / "published" / f"{name}.toml").read_text(encoding="utf-8"))


CASES = [
    pytest.param(case, id=f"{name}.toml: {case['id']}")
    for name in sorted(path.stem for path in (TESTS / "published").glob("*.toml") if path.stem != "units")
    for case in published(name)["case"]
    if case["steps"]
]

METRES = {row["text"].removeprefix("1 "): float(row["exact"]) for row in published("units")["unit"] if row["in"][0] == "m"}
"""Length, area and volume units in metres, square metres and cubic metres."""
SCALE = {**METRES, "m": 1.0, "mm": 0.001, "m2": 1.0, "m3": 1.0, "percent": 0.01, "ft_per_ft": 1.0, "in_per_ft": 1.0 / 12.0}


def suffixes(port: dict[str, Any]) -> list[str]:
    """The units that may stand at the end of a key for this port."""
    if port["kind"] != "number":
        return []
    symbols = [*port["symbols"], port["us"]["unit"], port["si"]["unit"]]
    named = ["ratio" if symbol == "1" else symbol for symbol in symbols]
    return [symbol.replace("/", "_per_").removeprefix("_").replace("%", "percent").lower() for symbol in named]


def symbol(suffix: str) -> str:
    """The unit as it is written in a text."""
    return suffix.replace("_per_", "/").replace("percent", "%").replace("per_", "/")


def plain(key: str, given: Any, ports: list[dict[str, Any]]) -> tuple[str, Any]:
    """A key and its value with the unit moved from the key into the text."""
    for port in ports:
        if key == port["name"]:
            if port["kind"] != "table":
                return key, given
            columns = port["columns"]
            if isinstance(given, list):
                return key, [dict(plain(name, cell, columns) for name, cell in row.items()) for row in given]
            return key, dict(plain(name, column, columns) for name, column in given.items())
        for suffix in suffixes(port):
            if key == f"{port['name']}_{suffix}":
                with_unit = lambda number: f"{number} {symbol(suffix)}"  # noqa: E731
                return port["name"], [with_unit(one) for one in given] if isinstance(given, list) else with_unit(given)
    raise AssertionError(f"{key} is no port with its unit")


class Steps:
    """The steps of a case, run one after the other."""

    def __init__(self, case: dict[str, Any]) -> None:
        self.answers: dict[str, Any] = {}
        for step in case["steps"]:
            self.answers[step.get("as", step["operation"])] = self.run(step["operation"], step["inputs"])

    def run(self, name: str, inputs: dict[str, Any]) -> Any:
        """Calls one operation."""
        row = overslab.OPERATIONS[name]
        args: dict[str, Any] = {}
        for key, given in inputs.items():
            if isinstance(given, str) and given.startswith("="):
                args[key] = self.result(given[1:])
            elif key == "text_file":
                text = (TESTS.parent / given).read_text(encoding="utf-8")
                for old, new in inputs.get("text_edits", []):
                    assert text.count(old) == 1
                    text = text.replace(old, new)
                args["text"] = text
            elif key != "text_edits":
                port, value = plain(key, given, row["ports"])
                args[port] = value
        return getattr(getattr(overslab, row["module"]), name)(**args)

    def result(self, reference: str) -> Any:
        """The result of an earlier step: a record is the answer itself, a number goes on as a text in SI units."""
        step, name = reference.split(".")
        answer = self.answers[step]
        if isinstance(answer, overslab.results.Record):
            return answer
        return f"{getattr(answer, f'{name}_m3')!r} m3"

    def find(self, key: str) -> Any:
        """What the answers say at a key."""
        step, rest = key.split(".", 1)
        if step == "total":
            return sum(self.number(answer, rest) for answer in self.answers.values())
        answer = self.answers[step]
        if ":" in rest:
            name, pointer = rest.split(":")
            return pointed(json.loads(getattr(answer, name)), pointer)
        if isinstance(answer, overslab.results.Record):
            return self.number(answer, rest.split(".", 1)[1])
        if "." in rest:
            table, column = rest.split(".")
            return self.number(getattr(answer, table), column)
        return self.number(answer, rest)

    @staticmethod
    def number(holder: Any, key: str) -> Any:
        """A number by its name and unit, converted from the one of both systems that the holder has."""
        get = holder.get if isinstance(holder, dict) else lambda name, default=None: getattr(holder, name, default)
        if (value := get(key)) is not None:
            return value
        for suffix, scale in SCALE.items():
            if not key.endswith(f"_{suffix}"):
                continue
            for own, of_own in SCALE.items():
                value = get(f"{key.removesuffix(suffix)}{own}")
                if value is not None and dimension(own) == dimension(suffix):
                    return np.asarray(value) * of_own / scale
        raise AssertionError(f"nothing is called {key}")


def dimension(suffix: str) -> str:
    """What a unit measures, told from its name."""
    if "_per_" in suffix or suffix == "percent":
        return "slope"
    if suffix in {"L", "gal"}:
        return "3"
    return suffix[-1] if suffix[-1].isdigit() else "1"


def pointed(report: Any, pointer: str) -> Any:
    """A text or a number of the report, or the US number of a measure whose unit stands at the pointer's end."""
    unit = None
    for part in pointer.strip("/").split("/"):
        node = report[int(part)] if isinstance(report, list) else report.get(part)
        if node is None:
            part, unit = part.rsplit("_", 1)
            node = report[part]
        report = node
    if unit is None:
        return report
    assert report["us_unit"] == unit
    return report["us"]


@pytest.mark.parametrize("case", CASES)
def test_published_numbers(case: dict[str, Any]) -> None:
    steps = Steps(case)
    for key, wanted in case["expected"].items():
        found = steps.find(key)
        if "text" in wanted:
            assert found == wanted["text"], key
            continue
        expected = np.atleast_1d(np.asarray(wanted["value"], dtype=float))
        assert np.shape(np.atleast_1d(found)) == expected.shape, key
        within = wanted["abs"] if "abs" in wanted else wanted["rel"] * np.abs(expected)
        assert np.all(np.abs(np.atleast_1d(found) - expected) <= within), f"{key}: {found}, expected {wanted}"
