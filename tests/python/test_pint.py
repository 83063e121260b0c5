"""Quantities of pint are taken as they are, in any unit of the port's quantity; pint itself is never needed."""

from __future__ import annotations

import subprocess
import sys
from typing import Any

import numpy as np
import pint
import pytest
from table import OPERATIONS, OTHERS, SCALARS, function, name_of

from overslab import OverslabError

REGISTRY: Any = pint.UnitRegistry()
ROWS = list(OPERATIONS.values())
# Our symbols that pint spells otherwise, or does not know. It knows no money: an amount is a plain number.
SPELLED = {"%": "percent", "of 1": "", "1": "", "w/cm": "", "ft/ft": "", "money": "", "lbf": "lbf", "L": "liter", "ton": "short_ton", "pci": "lbf/in**3"}


def unit_of(symbol: str) -> str:
    """A symbol of ours as pint spells it."""
    if symbol in SPELLED:
        return SPELLED[symbol]
    out = "1" if symbol.startswith("/") else ""
    for before, letter in zip(" " + symbol, symbol, strict=False):
        out += f"**{letter}" if letter.isdigit() and before.isalpha() else letter
    return out


def measured(port: Any, magnitude: Any, system: str) -> Any:
    """The magnitude with the unit of the port as pint has it."""
    unit = unit_of(port[system]["unit"])
    if port["quantity"] == "temperature difference" and unit.startswith("deg"):
        unit = f"delta_{unit}"
    if port["quantity"] == "thermal expansion":
        unit = unit.replace("/deg", "/delta_deg")
    return REGISTRY.Quantity(magnitude, unit)


def numbers_of(row: Any) -> list[Any]:
    """The number ports of a row."""
    return [port for port in row["ports"] if port["kind"] == "number"]


@pytest.mark.parametrize("row", ROWS, ids=name_of)
@pytest.mark.parametrize("system", ["us", "si"])
def test_a_quantity_is_the_number_in_that_unit(row: Any, system: str) -> None:
    for port in numbers_of(row):
        for magnitude in (1.5, 3):
            by_number = outcome(row, {**row["example"], port["name"]: magnitude}, system)
            by_pint = outcome(row, {**row["example"], port["name"]: measured(port, magnitude, system)}, None)
            assert_close(by_number, by_pint)


def outcome(row: Any, given: Any, units: str | None) -> Any:
    """The results by name, or the code of the refusal."""
    try:
        result = function(row)(**given, units=units)
    except OverslabError as error:
        return error.name
    return result.fields() if hasattr(result, "fields") else result.to_dict()


def assert_close(one: Any, other: Any) -> None:
    """pint reckons its own way from one unit to another, so the last digits may differ."""
    if isinstance(one, float):
        assert other == pytest.approx(one, rel=1e-9, abs=1e-9)
    elif isinstance(one, dict):
        assert one.keys() == other.keys()
        for name in one:
            assert_close(one[name], other[name])
    elif isinstance(one, np.ndarray):
        np.testing.assert_allclose(other, one, rtol=1e-9, atol=1e-9)
    elif isinstance(one, list | tuple):
        assert len(one) == len(other)
        for mine, theirs in zip(one, other, strict=True):
            assert_close(mine, theirs)
    elif not isinstance(one, str):
        assert one == other


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_arrays_with_a_unit_are_arrays(row: Any) -> None:
    for port in numbers_of(row):
        values = np.array([[1.0, 2.0, 3.0], [1.5, 2.5, 3.5]])
        given = {**row["example"], port["name"]: values}
        by_number = function(row)(**given, units="us", errors="mark")
        by_pint = function(row)(**{**given, port["name"]: measured(port, values, "us")}, errors="mark")
        assert by_pint.shape == (2, 3)
        for name, array in by_number.to_dict().items():
            if array.dtype != object:
                np.testing.assert_allclose(getattr(by_pint, name), array, rtol=1e-9, atol=1e-12)


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_a_quantity_of_another_kind_is_refused(row: Any) -> None:
    wrong = REGISTRY.Quantity(2, "candela")
    for port in numbers_of(row):
        with pytest.raises(OverslabError) as caught:
            function(row)(**{**row["example"], port["name"]: wrong})
        assert (caught.value.name, caught.value.path) == ("UNIT_WRONG", port["name"])
        assert "candela" in caught.value.written and all(s in caught.value.allowed for s in port["symbols"])


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_a_column_may_have_a_unit(row: Any) -> None:
    for port in row["ports"]:
        table = row["example"].get(port["name"])
        if port["kind"] != "table" or not isinstance(table, list):
            continue
        for column in port["columns"]:
            if column["kind"] != "number" or any(column["name"] not in one for one in table):
                continue
            values = np.arange(1.0, len(table) + 1)
            others = {name: [one.get(name) for one in table] for name in table[0] if name != column["name"]}
            bare = {**row["example"], port["name"]: {**others, column["name"]: values}}
            with_unit = {**others, column["name"]: measured(column, values, "us")}
            assert_close(outcome(row, bare, "us"), outcome(row, {**row["example"], port["name"]: with_unit}, None))


def test_pint_is_not_imported() -> None:
    code = "import sys, overslab; sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
