"""The wheel and the C library give the same: numbers to the bit, records as the same text, refusals with the same code."""

from __future__ import annotations

import ctypes
import itertools
import json
from ctypes import c_char_p, c_double, c_int, create_string_buffer
from typing import Any

import numpy as np
import pytest
from table import OPERATIONS, SCALARS, SYSTEMS, flat, function, inside, made, name_of, same

from overslab import OverslabError

ROWS = list(OPERATIONS.values())
SHARES = (0.0, 1e-6, 1e-3, 0.1, 0.37, 1.0)


def c_type(port: Any) -> Any:
    """The C type of a port: counts and words are int."""
    return c_double if port["kind"] == "number" else c_int


def call_c(library: ctypes.CDLL, row: Any, system: str, values: list[Any]) -> tuple[int, list[float], int]:
    """The scalar function of the C library: status, results, note."""
    call = getattr(library, f"ovs_{row['name']}_{system}")
    inputs = [c_type(port)(value) for port, value in zip(row["ports"], values, strict=True)]
    results = [c_type(port)() for port in row["results"]]
    note, message = c_int(), create_string_buffer(201)
    outputs = [ctypes.byref(one) for one in [*results, note]]
    status = call(*inputs, *outputs, message, c_int(len(message)))
    return status, [float(one.value) for one in results], note.value


def call_python(row: Any, system: str, values: list[Any]) -> tuple[int, list[float], int]:
    """The same by the wheel."""
    try:
        result = function(row)(*values, units=system)
    except OverslabError as error:
        return error.code, [0.0] * len(row["results"]), 0
    results = [flat(port, value) for port, value in zip(row["results"], result.to_dict(system).values(), strict=True)]
    return 0, results, result.notes[0].code if result.notes else 0


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_scalars_are_equal_to_the_bit(library: ctypes.CDLL, row: Any, system: str) -> None:
    spread = itertools.product(SHARES, repeat=min(3, len(row["ports"])))
    passed = 0
    for shares in spread:
        turned = itertools.cycle(shares)
        values = [inside(port, system, share) for port, share in zip(row["ports"], turned, strict=False)]
        numbers = [port["words"].index(v) if port["kind"] == "choice" else v
                   for port, v in zip(row["ports"], values, strict=True)]  # fmt: skip
        by_c, by_python = call_c(library, row, system, numbers), call_python(row, system, values)
        assert by_c[0] == by_python[0] and by_c[2] == by_python[2], values
        assert all(same(a, b) for a, b in zip(by_c[1], by_python[1], strict=True)), values
        passed += by_c[0] == 0
    assert passed


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_refused_numbers_give_the_same_code(library: ctypes.CDLL, row: Any, system: str) -> None:
    good = [inside(port, system, 0.3) for port in row["ports"]]
    for place, port in enumerate(row["ports"]):
        bad: list[Any] = [-1, 10**6] if port["kind"] == "count" else []
        if port["kind"] == "number":
            bad = [float("nan"), float("inf"), float("-inf"), -1e300, 1e300, -1.0, 0.0, 1e9]
        for value in bad:
            given = [*good[:place], value, *good[place + 1 :]]
            numbers = [one["words"].index(v) if one["kind"] == "choice" else v
                       for one, v in zip(row["ports"], given, strict=True)]  # fmt: skip
            assert call_c(library, row, system, numbers)[0] == call_python(row, system, given)[0], given


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_arrays_are_equal_to_the_bit(library: ctypes.CDLL, row: Any, system: str) -> None:
    length = 257
    columns = [
        [inside(port, system, (index * (7 + place) % length) / length) for index in range(length)]
        for place, port in enumerate(row["ports"])
    ]
    inputs = []
    for port, column in zip(row["ports"], columns, strict=True):
        numbers = [port["words"].index(one) for one in column] if port["kind"] == "choice" else column
        inputs.append((c_type(port) * length)(*numbers))
    results = [(c_type(port) * length)() for port in row["results"]]
    notes, bad_index, message = (c_int * length)(), c_int(-7), create_string_buffer(201)
    call = getattr(library, f"ovs_{row['name']}_{system}_array")
    status = call(*inputs, *results, notes, c_int(length), ctypes.byref(bad_index), message, c_int(len(message)))
    by_python = function(row)(*columns, units=system, errors="mark")
    bad = by_python.bad.tolist()
    assert status == (by_python.reasons[0].code if bad else 0)
    assert bad_index.value == (bad[0] if bad else -1)
    assert list(notes) == by_python.note_codes.tolist()
    for port, by_c, shown in zip(row["results"], results, by_python.to_dict(system).values(), strict=True):
        for index in set(range(length)) - set(bad):
            assert same(float(by_c[index]), flat(port, shown[index]))
        if port["kind"] == "number":
            assert np.isnan(np.array(by_c)[bad]).all()


def call_json(library: ctypes.CDLL, row: Any, system: str, arguments: Any) -> tuple[int, Any]:
    """The call by name of the C library: status and answer."""
    name, text = row["name"].encode(), json.dumps(arguments).encode()
    call, needed = getattr(library, f"ovs_call_{system}"), c_int()
    size, status = 1 << 16, 0
    for _ in range(2):
        out, message = create_string_buffer(size), create_string_buffer(201)
        status = call(c_char_p(name), c_int(len(name)), c_char_p(text), c_int(len(text)), out, c_int(size),
                      ctypes.byref(needed), message, c_int(len(message)))  # fmt: skip
        if needed.value <= size:
            break
        size = needed.value
    return status, json.loads(out.value) if status == 0 else None


def answer_of(row: Any, result: Any, system: str) -> Any:
    """What the wheel gives, in the form that the C library writes."""
    if made(row):
        results = {made(row)["name"]: result.to_dict()}
    else:
        shown = result.to_dict(system)
        results = {name_in(port, system): plain(port, shown[name_in(port, system)], system) for port in row["results"]}
    basis = [] if row["scalar"] else [{"result": b.result, "basis": b.name, "says": b.says} for b in result.basis]
    taken = [] if row["scalar"] else [one._asdict() for one in result.taken]
    return {"results": results, "notes": [one._asdict() for one in result.notes], "basis": basis, "taken": taken}


def name_in(port: Any, system: str) -> str:
    """The name of a port in one system."""
    return str(port[system]["name"]) if port["kind"] == "number" else str(port["name"])


def plain(port: Any, value: Any, system: str) -> Any:
    """A value as JSON has it: a table by rows, an empty cell as null."""
    if port["kind"] != "table":
        return value
    columns = {name_in(column, system): value.get(name_in(column, system)) for column in port["columns"]}
    length = max((len(column) for column in columns.values() if column is not None), default=0)
    return [
        {name: None if column is None else cell(column[at]) for name, column in columns.items()} for at in range(length)
    ]


def cell(value: Any) -> Any:
    """A cell as JSON has it."""
    if isinstance(value, np.generic):
        value = value.item()
    return None if isinstance(value, float) and np.isnan(value) else value


def canonical(answer: Any) -> str:
    """JSON in one form, with every digit."""
    return json.dumps(answer, sort_keys=True, indent=1)


@pytest.mark.parametrize("row", ROWS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_answers_are_the_same_text(library: ctypes.CDLL, row: Any, system: str) -> None:
    status, by_c = call_json(library, row, system, row["example"])
    assert status == 0
    by_python = answer_of(row, function(row)(**row["example"], units=system), system)
    assert canonical(by_python) == canonical(by_c)


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_stated_refusals_are_the_same(library: ctypes.CDLL, row: Any) -> None:
    for refusal in row["refusals"]:
        status, _ = call_json(library, row, "us", {**row["example"], **refusal["change"]})
        # A bare number is one in the C call by name, which always has units.
        with pytest.raises(OverslabError) as caught:
            function(row)(**{**row["example"], **refusal["change"]}, units="us")
        assert (status, caught.value.code) == (refusal["code"], refusal["code"])


def test_every_operation_is_in_the_c_library(library: ctypes.CDLL) -> None:
    for row in SCALARS:
        for system in SYSTEMS:
            assert getattr(library, f"ovs_{row['name']}_{system}")
