"""The table of operations as the tests walk it. No test names an operation but those of the specimen."""

from __future__ import annotations

import importlib
import math
from typing import Any

import overslab
from overslab import _overslab

OPERATIONS = overslab.OPERATIONS
SCALARS = [row for row in OPERATIONS.values() if row["scalar"]]
OTHERS = [row for row in OPERATIONS.values() if not row["scalar"]]
SPECIMEN = "specimen"
SYSTEMS = ("us", "si")


def name_of(row: Any) -> str:
    """The name of a row, for the titles of tests."""
    return row["name"] if isinstance(row, dict) else str(row)


def home(row: Any) -> Any:
    """The Python module of an operation; the test-only ones have none of their own."""
    if row["module"] == SPECIMEN:
        return _overslab
    return importlib.import_module(f"overslab.{row['module']}")


def function(row: Any) -> Any:
    """The Python function of an operation."""
    return getattr(home(row), row["name"])


def made(row: Any) -> Any:
    """The record port that is the only result, if the operation makes one record."""
    results = row["results"]
    return results[0] if len(results) == 1 and results[0]["kind"] == "record" else None


def units_of(port: Any) -> list[str]:
    """The names of a port with its units, each once."""
    if port["kind"] != "number":
        return [port["name"]]
    return list(dict.fromkeys(port[system]["name"] for system in SYSTEMS))


def inside(port: Any, system: str, share: float) -> Any:
    """A value of a scalar port inside its range: the least at share 0, the greatest at share 1, both as far as they go."""
    if port["kind"] == "count":
        return port["least"] + round(share * (port["greatest"] - port["least"]))
    if port["kind"] == "choice":
        return port["words"][round(share * (len(port["words"]) - 1))]
    least, greatest = port[system]["least"], port[system]["greatest"]
    low = -1000.0 if least is None else least
    high = low + 1000.0 if greatest is None else greatest
    # An open lower bound is itself refused; both bounds are kept clear of by a rounding.
    share = 0.001 + 0.998 * share
    return low + share * (high - low)


def flat(port: Any, value: Any) -> float:
    """A value as a scalar row takes it: a word by its place."""
    return float(port["words"].index(value)) if port["kind"] == "choice" else float(value)


def same(one: float, other: float) -> bool:
    """Whether two doubles are the same to the bit; all that are not a number are alike."""
    return one.hex() == other.hex() or (math.isnan(one) and math.isnan(other))
