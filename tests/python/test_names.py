"""Names, signatures and docstrings are those of the table, nothing missing and nothing left over."""

from __future__ import annotations

import inspect
import keyword
import re
from typing import Any

import pytest
from table import OPERATIONS, SPECIMEN, function, home, made, name_of, units_of

import overslab
from overslab import _overslab

ROWS = list(OPERATIONS.values())
BASES = {"ScalarResult", "ArrayResult", "AnswerResult", "Record"}


def records() -> dict[str, Any]:
    """Every record port of the table by the class of its record."""
    ports = [port for row in ROWS for port in row["ports"] + row["results"]]
    return {port["class_name"]: port for port in ports if port["kind"] == "record"}


def functions_of(module: Any) -> set[str]:
    """The public functions that a module has."""
    return {name for name in dir(module) if not name.startswith("_") and inspect.isbuiltin(getattr(module, name))}


def test_the_native_module_has_the_functions_of_the_table_and_no_others() -> None:
    assert functions_of(_overslab) == set(OPERATIONS)


def test_each_module_has_its_operations_and_no_others() -> None:
    modules = {row["module"] for row in ROWS} - {SPECIMEN}
    for name in modules:
        module = getattr(overslab, name)
        expected = {row["name"] for row in ROWS if row["module"] == name}
        assert functions_of(module) == expected, name
        assert expected <= set(module.__all__), name
        assert set(module.__all__) == {one for one in dir(module) if not one.startswith("_")}, name


def test_every_class_of_the_native_module_belongs_to_a_row() -> None:
    classes = {name for name in dir(_overslab) if isinstance(getattr(_overslab, name), type)}
    expected = set(BASES) | set(records())
    for row in ROWS:
        result = type(function(row)(**row["example"])).__name__
        expected |= {result, f"{result}Array"} if row["scalar"] else {result}
    assert classes == expected


def test_the_package_names_what_it_has() -> None:
    for name in overslab.__all__:
        assert hasattr(overslab, name), name
    public = {class_name for class_name in records() if class_name != "Specimen"}
    assert public <= set(overslab.__all__)
    assert overslab.__version__ == _overslab.__version__


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_signature_is_that_of_the_row(row: Any) -> None:
    parameters = inspect.signature(function(row)).parameters
    required = [port["name"] for port in row["ports"] if port["required"]]
    optional = [port["name"] for port in row["ports"] if not port["required"]]
    shared = ["units", "errors"] if row["scalar"] else ["units"]
    assert [name.rstrip("_") for name in parameters] == required + optional + shared
    for name, parameter in parameters.items():
        positional = name.rstrip("_") in required
        wanted = inspect.Parameter.POSITIONAL_OR_KEYWORD if positional else inspect.Parameter.KEYWORD_ONLY
        assert parameter.kind == wanted, name
        default = inspect.Parameter.empty if positional else "raise" if name == "errors" else None
        assert parameter.default == default, name
        assert not keyword.iskeyword(name)


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_docstring_says_what_the_row_says(row: Any) -> None:
    doc = function(row).__doc__
    words = " ".join(doc.split())
    for text in [row["meaning"], row["equation"], row["assumes"], row["since"], *(b["says"] for b in row["basis"])]:
        assert " ".join(text.split()) in words, text
    for port in row["ports"]:
        entry = entry_of(words, port["name"], port["meaning"])
        assert port["meaning"] in entry, port["name"]
        assert_says_units(port, entry)
        for column in port.get("columns", []):
            assert_says_units(column, entry_of(words, column["name"], column["meaning"]))
        if "taken" in port:
            assert port["taken"]["value"] in entry and port["taken"]["why"] in entry, port["name"]
    for code in row["refusals"]:
        assert code["name"] in doc
    if made(row) is None:
        for port in row["results"]:
            assert all(name in doc for name in units_of(port)), port["name"]


def entry_of(words: str, name: str, meaning: str) -> str:
    """The words that follow the name of an argument; of several of that name (a column and a port) those that say the meaning."""
    entries = [words[at.end() :] for at in re.finditer(re.escape(f" {name}: "), words)]
    assert entries, name
    return next((entry for entry in entries if entry.startswith(meaning)), entries[0])


def assert_says_units(port: Any, entry: str) -> None:
    """The entry begins with the meaning, the units in brackets and the range of the port."""
    if port["kind"] != "number":
        return
    us, si = port["us"], port["si"]
    units = f"[{us['unit']}]" if us["unit"] == si["unit"] else f"[{us['unit']} | {si['unit']}]"
    assert entry.startswith(f"{port['meaning']} {units}; {us['range']}"), port["name"]
    assert si["range"] in entry, port["name"]


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_results_have_the_attributes_of_the_row_with_their_units(row: Any) -> None:
    result = function(row)(**row["example"])
    record = made(row)
    ports = record["fields"] if record else row["results"]
    expected = {name for port in ports for name in units_of(port)}
    base = type(result).__mro__[1]
    own = {name for name in dir(result) if not name.startswith("_")} - set(dir(base))
    assert own == expected
    for port in ports:
        for system in ("us", "si") if port["kind"] == "number" else ():
            text = getattr(type(result), port[system]["name"]).__doc__
            assert port[system]["unit"] in text, port["name"]


def test_functions_and_classes_say_where_they_live() -> None:
    for row in ROWS:
        result = type(function(row)(**row["example"]))
        assert result.__module__ == home(row).__name__ or made(row), row["name"]
        assert getattr(__import__(result.__module__, fromlist=["x"]), result.__name__) is result
