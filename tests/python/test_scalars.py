"""Scalar rows: every way to give a quantity, and results that cannot be changed."""

from __future__ import annotations

import copy
import pickle
from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
import pytest
from table import SCALARS, SYSTEMS, function, inside, name_of, units_of

from overslab.results import Note, ScalarResult


def in_both_systems(row: Any, share: float) -> tuple[dict[str, Any], dict[str, Any]]:
    """The same inputs as texts with the unit of either system."""
    texts: list[dict[str, Any]] = []
    for system in SYSTEMS:
        given = {}
        for port in row["ports"]:
            value = inside(port, system, share)
            given[port["name"]] = f"{value!r} {port[system]['unit']}" if port["kind"] == "number" else value
        texts.append(given)
    return texts[0], texts[1]


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_kind_of_number_is_the_same_number(row: Any, system: str) -> None:
    example = function(row)(**row["example"])
    numbers = {p["name"]: p for p in row["ports"] if p["kind"] == "number"}
    exact = {
        name: float(round(8 * inside(port, system, 0.001) if port[system]["least"] is None else 8)) / 8
        for name, port in numbers.items()
    }
    given = {**row["example"], **exact}
    reference = outcome(row, given, system)
    assert type(example).__name__
    for kind in (int, np.float64, np.float32, np.int64, Fraction, Decimal):
        same = {**given, **{name: kind(value) for name, value in exact.items()}}
        assert outcome(row, same, system) == reference, kind
    positional = [given[port["name"]] for port in row["ports"]]
    try:
        assert function(row)(*positional, units=system) == reference
    except ValueError as error:
        assert str(error) == reference


def outcome(row: Any, given: Any, system: str) -> Any:
    """The result, or what the refusal says."""
    try:
        return function(row)(**given, units=system)
    except ValueError as error:
        return str(error)


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_text_says_its_own_unit_whatever_units_are_named(row: Any) -> None:
    results = [function(row)(**row["example"], units=units) for units in (None, *SYSTEMS)]
    assert results[0] == results[1] == results[2]


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_results_stand_in_both_systems(row: Any) -> None:
    result = function(row)(**row["example"])
    assert isinstance(result, ScalarResult)
    both = result.to_dict()
    assert list(both) == [name for port in row["results"] for name in units_of(port)]
    assert {**result.to_dict("us"), **result.to_dict("si")}.keys() == both.keys()
    for name, value in both.items():
        shown = getattr(result, name)
        assert (type(shown), shown) == (type(value), value)
        assert f"{name}=" in repr(result)
    for port in row["results"]:
        kind = {"number": float, "count": int, "choice": str}[port["kind"]]
        assert all(type(both[name]) is kind for name in units_of(port))
    assert all(isinstance(note, Note) for note in result.notes)


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_results_cannot_be_changed(row: Any) -> None:
    result = function(row)(**row["example"])
    for name in [*result.to_dict(), "notes", "brand_new"]:
        with pytest.raises(AttributeError):
            setattr(result, name, 1.0)
    with pytest.raises(TypeError):
        type(result)()
    with pytest.raises(TypeError):
        type("Child", (type(result),), {})


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_results_are_equal_by_value_and_survive_pickling(row: Any) -> None:
    result, again = (function(row)(**row["example"]) for _ in range(2))
    assert result == again and hash(result) == hash(again) and result is not again
    assert result != result.to_dict() and result != object()
    for protocol in range(2, pickle.HIGHEST_PROTOCOL + 1):
        kept = pickle.loads(pickle.dumps(result, protocol))
        assert type(kept) is type(result) and kept == result and hash(kept) == hash(result)
        assert kept.to_dict() == result.to_dict() and kept.notes == result.notes
    assert copy.deepcopy(result) == result


def test_other_inputs_give_other_results() -> None:
    different = 0
    for row in SCALARS:
        port = row["ports"][0]
        for share in (0.0, 0.001, 0.01, 0.1):
            value = inside(port, "si", share)
            if port["kind"] == "number":
                value = f"{value!r} {port['si']['unit']}"
            try:
                other = function(row)(**{**row["example"], port["name"]: value})
            except ValueError:
                continue
            different += other != function(row)(**row["example"])
    assert different >= len(SCALARS)


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_words_are_read_whatever_their_case(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] == "choice":
            for word in port["words"]:
                upper = function(row)(**{**row["example"], port["name"]: f" {word.upper()} "})
                assert upper == function(row)(**{**row["example"], port["name"]: word})


def test_a_note_says_what_the_result_does_not() -> None:
    noted = [result for row in SCALARS for result in (function(row)(**row["example"]),) if result.notes]
    assert noted
    for result in noted:
        (note,) = result.notes
        assert note.code > 0 and note.name.isupper() and note.text
        assert pickle.loads(pickle.dumps(result)).notes == result.notes
