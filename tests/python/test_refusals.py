"""What must be refused is refused with the right exception, which says where, what and what to do."""

from __future__ import annotations

import math
import pickle
from decimal import Decimal
from typing import Any

import pytest
from table import OPERATIONS, OTHERS, SCALARS, function, inside, name_of

import overslab
from overslab import OverslabError, failures

ROWS = list(OPERATIONS.values())
REFUSALS = [(row, refusal) for row in ROWS for refusal in row["refusals"]]


def refused(row: Any, **arguments: Any) -> OverslabError:
    """The exception that a call raises."""
    with pytest.raises(OverslabError) as caught:
        function(row)(**arguments)
    return caught.value


def family_of(code: int) -> type[OverslabError]:
    """The class whose docstring lists the code."""
    found = [one for one in OverslabError.__subclasses__() if f"    {code} " in (one.__doc__ or "")]
    assert len(found) == 1, code
    return found[0]


@pytest.mark.parametrize(("row", "refusal"), REFUSALS, ids=lambda one: name_of(one) if "name" in one else "")
def test_stated_refusals_raise_their_code(row: Any, refusal: Any) -> None:
    error = refused(row, **{**row["example"], **refusal["change"]})
    assert (error.code, error.name) == (refusal["code"], refusal["name"]), error
    assert type(error) is family_of(error.code)
    assert error.path and error.remedy
    assert str(error).startswith(f"{error.name}: {error.path}")


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_a_required_argument_may_not_be_missing_or_none(row: Any) -> None:
    for port in row["ports"]:
        if not port["required"]:
            continue
        example = dict(row["example"])
        del example[port["name"]]
        with pytest.raises(TypeError, match=port["name"]):
            function(row)(**example)
        error = refused(row, **{**row["example"], port["name"]: None})
        assert (error.name, error.path) == ("KEY_MISSING", port["name"])


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_a_bare_number_without_units_names_the_port_and_its_units(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] != "number":
            continue
        for number in (2.5, 7, math.nan):
            error = refused(row, **{**row["example"], port["name"]: number})
            assert (error.name, error.path) == ("UNIT_MISSING", port["name"])
            assert port["us"]["unit"] in error.allowed and port["si"]["unit"] in error.allowed


@pytest.mark.parametrize("row", ROWS, ids=name_of)
@pytest.mark.parametrize("system", ["us", "si"])
def test_numbers_outside_their_range_are_said_in_the_callers_unit(row: Any, system: str) -> None:
    for port in row["ports"]:
        if port["kind"] != "number":
            continue
        unit = port[system]["unit"]
        for bad in outside(port, system):
            error = refused(row, **{**row["example"], port["name"]: bad}, units=system)
            assert error.path == port["name"]
            assert error.name in {"NOT_FINITE", "NEGATIVE", "OUT_OF_RANGE"}
            shown = {math.inf: "inf", -math.inf: "-inf"}.get(bad, "NaN" if math.isnan(bad) else None)
            assert error.written == f"{shown or format_number(bad)} {unit}"
            assert error.allowed == port[system]["range"]


def outside(port: Any, system: str) -> list[float]:
    """Numbers that a port refuses."""
    least, greatest = port[system]["least"], port[system]["greatest"]
    bad = [math.nan, math.inf, -math.inf]
    if least is not None:
        bad.append(least - 0.75 - abs(least))
    if greatest is not None:
        bad.append(greatest + 0.75 + abs(greatest))
    return bad


def format_number(number: float) -> str:
    """The shortest digits, without an exponent and without a needless point."""
    text = format(Decimal(repr(number)), "f")
    return text.removesuffix(".0")


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_text_outside_its_range_is_said_as_written(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] == "number" and port["us"]["least"] is not None:
            bad = f"{format_number(port['us']['least'] - 1.5)} {port['us']['unit']}"
            error = refused(row, **{**row["example"], port["name"]: bad}, units="si")
            assert (error.path, error.written) == (port["name"], bad)


STRANGE: list[Any] = [
    True, object(), b"bytes", {}, set(), 1 + 2j, "", " ", "\ud800", "x" * 5000, math.nan, -math.inf, 10**400, -(10**30),
    print, [], [[]], [None], [object()], {"x": 1}, {1: 2}, [{"x": [1]}], "1e999 in", "nan in", range(3), iter("ab"),
]  # fmt: skip


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_strange_values_are_refused_or_taken_but_nothing_else(row: Any) -> None:
    for port in row["ports"]:
        for value in STRANGE:
            for units in (None, "us"):
                try:
                    function(row)(**{**row["example"], port["name"]: value}, units=units)
                except OverslabError as error:
                    assert error.code != 99, error
                    # Beside a strange value another port may be the one to mend: a unit that a file of that kind lacks. Within a
                    # text the path is that of the text, and there is a line.
                    names = tuple(one["name"] for one in row["ports"])
                    assert error.path.startswith(names) or error.line is not None, (error, value)
                    assert error.remedy, error


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_shared_arguments_take_their_words_only(row: Any) -> None:
    assert refused(row, **row["example"], units="metric").name == "WORD_UNKNOWN"
    assert refused(row, **row["example"], units=1).path == "units"
    if row["scalar"]:
        assert refused(row, **row["example"], errors="ignore").path == "errors"
    with pytest.raises(TypeError):
        function(row)(**row["example"], nothing_has_this_name=1)


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_a_bad_cell_is_told_by_its_row_in_the_callers_unit(row: Any) -> None:
    for port in row["ports"]:
        table = row["example"].get(port["name"])
        if port["kind"] != "table" or not isinstance(table, list):
            continue
        for column in port["columns"]:
            if column["kind"] != "number":
                continue
            last = len(table) - 1
            for bad, name in (("1 parsec", "UNIT_UNKNOWN"), (math.inf, "NOT_FINITE")):
                rows = [*table[:-1], {**table[-1], column["name"]: bad}]
                error = refused(row, **{**row["example"], port["name"]: rows}, units="us")
                where = (error.name, error.path, error.index)
                assert where == (name, f"{port['name']}.{column['name']}", last), error
                assert error.written in ('"1 parsec"', f"inf {column['us']['unit']}")


def test_exceptions_can_be_caught_as_what_python_calls_them() -> None:
    for kind in OverslabError.__subclasses__():
        assert kind.__name__ in failures.__all__ and getattr(overslab, kind.__name__) is kind
        assert issubclass(kind, RuntimeError if kind is failures.BorderError else ValueError)


def test_exceptions_survive_pickling() -> None:
    row = SCALARS[0]
    error = refused(row, **{**row["example"], row["ports"][0]["name"]: object()})
    again = pickle.loads(pickle.dumps(error))
    assert type(again) is type(error) and str(again) == str(error) and vars(again) == vars(error)


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_values_inside_their_ranges_pass_one_by_one(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] == "number":
            value = inside(port, "si", 0.0)
            text = f"{format_number(value)} {port['si']['unit']}"
            try:
                by_number = function(row)(**{**row["example"], port["name"]: value}, units="si")
            except OverslabError as error:
                # Together with the example's other values it may leave the range of a result, but not its own.
                assert error.path != port["name"], error
            else:
                assert by_number == function(row)(**{**row["example"], port["name"]: text})
