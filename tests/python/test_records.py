"""Rows with tables, texts, records and optional arguments."""

from __future__ import annotations

import copy
import json
import pickle
from collections import OrderedDict
from types import MappingProxyType
from typing import Any

import numpy as np
import pytest
from table import OPERATIONS, OTHERS, SYSTEMS, function, made, name_of, units_of

from overslab import OverslabError, _overslab
from overslab.results import AnswerResult, Basis, Note, Record, Taken

MAKERS = [row for row in OTHERS if made(row)]
SPECIMEN = OPERATIONS["specimen_every_kind"]


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_results_show_every_field(row: Any) -> None:
    result = function(row)(**row["example"])
    record = made(row)
    assert isinstance(result, Record if record else AnswerResult)
    shown = result.fields() if record else result.to_dict()
    ports = record["fields"] if record else row["results"]
    assert list(shown) == [name for port in ports for name in units_of(port)]
    for port in ports:
        for name in units_of(port):
            assert_holds(port, getattr(result, name))
            assert f"{name}=" in repr(result)
        if port["kind"] == "table":
            assert_columns(port, getattr(result, port["name"]))
    assert all(isinstance(note, Note) for note in result.notes)
    assert all(isinstance(basis, Basis) for basis in result.basis)
    assert all(isinstance(taken, Taken) for taken in result.taken)


def assert_holds(port: Any, value: Any) -> None:
    """The value is of the kind of its port."""
    kinds = {"number": float, "count": int, "choice": str, "text": str, "table": dict, "record": Record}
    assert isinstance(value, kinds[port["kind"]]) or (value is None and not port["required"]), port["name"]
    if port["kind"] == "choice" and value is not None:
        assert value in port["words"]


def assert_columns(port: Any, table: dict[str, Any]) -> None:
    """A table has the columns of its port, all of one length."""
    known = [name for column in port["columns"] for name in units_of(column)]
    assert [name for name in known if name in table] == list(table)
    assert len({len(column) for column in table.values()}) <= 1
    for column in port["columns"]:
        for name in units_of(column):
            if name not in table:
                assert not column["required"] or not table, name
            elif column["kind"] == "number":
                assert isinstance(table[name], np.ndarray) and table[name].dtype == np.float64
            elif column["kind"] == "count" and column["required"]:
                assert isinstance(table[name], np.ndarray) and table[name].dtype == np.int64
            else:
                assert isinstance(table[name], list)


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_what_was_not_given_is_listed_as_taken(row: Any) -> None:
    expected = [
        Taken(port["name"], port["taken"]["value"], port["taken"]["why"])
        for port in row["ports"]
        if "taken" in port and row["example"].get(port["name"]) is None
    ]
    assert list(function(row)(**row["example"]).taken) == expected


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_leaving_out_is_giving_none(row: Any) -> None:
    nothing = {port["name"]: None for port in row["ports"] if not port["required"]}
    assert function(row)(**{**nothing, **row["example"]}) == function(row)(**row["example"])


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_results_cannot_be_changed_and_survive_pickling(row: Any) -> None:
    result, other = (function(row)(**row["example"]) for _ in range(2))
    assert result == other and result != object()
    for again in (pickle.loads(pickle.dumps(result)), copy.copy(result), copy.deepcopy(result)):
        assert type(again) is type(result) and again == result
        lost = LOST.get(type(result).__name__, set()) if made(row) else set()
        assert_same_fields(again, result, lost)
        assert (again.notes, again.basis, again.taken) == (result.notes, result.basis, result.taken)
    for name in ("notes", "to_dict", "brand_new"):
        with pytest.raises(AttributeError):
            setattr(result, name, 1)
    with pytest.raises(TypeError):
        type(result)()


# What the canonical form of a record does not carry: how well the tape agreed is said of the measurements, and the
# form has the corners alone.
LOST = {"Outline": {"squareness"}}


def assert_same_fields(one: Any, other: Any, lost: set[str]) -> None:
    """All fields are the same, but those that are lost are gone; an empty cell is an empty cell."""
    one, other = (x.fields() if isinstance(x, Record) else x.to_dict() for x in (one, other))
    for name in lost:
        assert one.pop(name) is None
        other.pop(name)
    assert_same(one, other)


def assert_same(one: Any, other: Any) -> None:
    """Two values are the same to the last digit; zeros are zeros whatever their sign."""
    if isinstance(one, dict):
        assert one.keys() == other.keys()
        for name in one:
            assert_same(one[name], other[name])
    elif isinstance(one, np.ndarray):
        np.testing.assert_array_equal(one, other, strict=True)
    else:
        assert one == other and type(one) is type(other)


@pytest.mark.parametrize("row", MAKERS, ids=name_of)
def test_records_come_back_from_their_canonical_form(row: Any) -> None:
    record = function(row)(**row["example"])
    kind = type(record)
    canonical = record.to_dict()
    assert json.loads(record.to_json()) == canonical
    for again in (kind.from_dict(canonical), kind.from_json(record.to_json())):
        assert type(again) is kind and again == record and hash(again) == hash(record)
        assert again.to_json() == record.to_json()
        assert (again.notes, again.basis, again.taken) == ((), (), ())
    with pytest.raises(OverslabError) as caught:
        kind.from_dict({**canonical, "no_such_key": 1})
    assert caught.value.name == "KEY_UNKNOWN"
    with pytest.raises(OverslabError) as caught:
        kind.from_json("{")
    assert caught.value.name == "SYNTAX"
    with pytest.raises(OverslabError):
        Record.from_dict(canonical)


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_a_record_and_its_canonical_form_are_the_same_argument(row: Any) -> None:
    takes = [port for port in row["ports"] if port["kind"] == "record" and row["example"].get(port["name"])]
    for port in takes:
        kind = getattr(_overslab, port["class_name"])
        record = kind.from_dict(row["example"][port["name"]])
        expected = function(row)(**row["example"])
        for same in (record, record.to_dict()):
            assert function(row)(**{**row["example"], port["name"]: same}) == expected
        other = next(one for one in (function(m)(**m["example"]) for m in MAKERS) if type(one) is not kind)
        for wrong in (other, 3, "text", [record]):
            with pytest.raises(OverslabError) as caught:
                function(row)(**{**row["example"], port["name"]: wrong})
            assert (caught.value.name, caught.value.path) == ("KIND_MISMATCH", port["name"])


def as_columns(port: Any, table: Any) -> dict[str, list[Any]]:
    """A table of an example by columns."""
    if isinstance(table, dict):
        return dict(table)
    used = [column["name"] for column in port["columns"] if any(column["name"] in row for row in table)]
    return {name: [row.get(name) for row in table] for name in used}


class Frame:
    """The least that a data frame has."""

    def __init__(self, columns: dict[str, list[Any]]) -> None:
        self._columns = columns

    def keys(self) -> Any:
        """The names of the columns."""
        return iter(self._columns)

    def __getitem__(self, name: str) -> Any:
        return np.array(self._columns[name], dtype=object)


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_every_form_of_a_table_is_the_same_table(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] != "table" or row["example"].get(port["name"]) is None:
            continue
        columns = as_columns(port, row["example"][port["name"]])
        length = len(next(iter(columns.values())))
        records = [{name: column[at] for name, column in columns.items()} for at in range(length)]
        structured = np.zeros(length, dtype=[(name, object) for name in columns])
        for name, column in columns.items():
            structured[name] = column
        expected = function(row)(**row["example"])
        for form in (
            columns,
            dict(reversed(columns.items())),
            OrderedDict(columns),
            MappingProxyType(columns),
            {name: tuple(column) for name, column in columns.items()},
            {name: np.array(column, dtype=object) for name, column in columns.items()},
            records,
            tuple(records),
            [{name: cell for name, cell in record.items() if cell is not None} for record in records],
            structured,
            Frame(columns),
        ):
            assert function(row)(**{**row["example"], port["name"]: form}) == expected


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_columns_of_numbers_may_be_of_any_type(row: Any, system: str) -> None:
    for port in row["ports"]:
        if port["kind"] != "table" or row["example"].get(port["name"]) is None:
            continue
        columns = as_columns(port, row["example"][port["name"]])
        numbers = [c["name"] for c in port["columns"] if c["kind"] == "number" and c["name"] in columns]
        length = len(columns[numbers[0]]) if numbers else 0
        whole = {name: np.arange(1, length + 1) + 10 * place for place, name in enumerate(numbers)}
        rest = {name: column for name, column in columns.items() if name not in numbers}
        outcomes = []
        for change in (
            lambda a: a,
            lambda a: a.astype(np.float64),
            lambda a: a.astype(np.float32),
            lambda a: np.repeat(a.astype(np.float64), 2)[::2],
            lambda a: a.astype(object),
            lambda a: a.tolist(),
            lambda a: [float(one) for one in a],
            lambda a: list(a.astype(np.float64)),
            lambda a: tuple(a.tolist()),
            lambda a: np.ma.array(a, mask=False),
            lambda a: a.astype(">i4"),
        ):
            table = {**{name: change(array) for name, array in whole.items()}, **rest}
            outcomes.append(outcome(row, {**row["example"], port["name"]: table}, system))
        assert all(one == outcomes[0] for one in outcomes)


def outcome(row: Any, given: Any, system: str) -> Any:
    """The result, or what the refusal says."""
    try:
        return function(row)(**given, units=system)
    except OverslabError as error:
        return str(error)


@pytest.mark.parametrize("row", OTHERS, ids=name_of)
def test_a_table_of_another_form_is_refused(row: Any) -> None:
    for port in row["ports"]:
        if port["kind"] != "table" or row["example"].get(port["name"]) is None:
            continue
        columns = as_columns(port, row["example"][port["name"]])
        first = next(iter(columns))
        for table, name, path in (
            (3, "KIND_MISMATCH", ""),
            (np.ones(3), "KIND_MISMATCH", ""),
            (np.ones((2, 99)), "LENGTH_MISMATCH", ""),
            ([3], "KIND_MISMATCH", "[0]"),
            ({**columns, "no_such_column": columns[first]}, "KEY_UNKNOWN", ".no_such_column"),
            ({**columns, 7: columns[first]}, "KEY_UNKNOWN", ".7"),
            ({**columns, first: 3}, "KIND_MISMATCH", f".{first}"),
            ({**columns, first: "text"}, "KIND_MISMATCH", f".{first}"),
        ):
            with pytest.raises(OverslabError) as caught:
                function(row)(**{**row["example"], port["name"]: table})
            assert (caught.value.name, caught.value.path) == (name, port["name"] + path)


def test_empty_cells_are_none_or_not_a_number() -> None:
    for empty in (None, np.nan):
        table = {"at": [1.0, 2.0], "hits": [empty, 3], "depth": [0.5, empty], "colour": [empty, "red"]}
        result = _overslab.specimen_every_kind(**{**SPECIMEN["example"], "rows": table}, units="us")
        assert result.rows["hits"] == [None, 3] and result.rows["colour"] == [None, "red"]
        assert result.rows["depth_in"].tolist()[0] == 0.5 and np.isnan(result.rows["depth_in"][1])
        assert "remark" not in result.rows
    with pytest.raises(OverslabError) as caught:
        _overslab.specimen_every_kind(**{**SPECIMEN["example"], "rows": {"at": [1.0, None]}}, units="us")
    assert (caught.value.name, caught.value.path, caught.value.index) == ("EMPTY_CELL", "rows.at", 1)


def test_masked_cells_are_empty_cells() -> None:
    at, depth = [1.0, 2.0], np.ma.array([0.5, 0.75], mask=[False, True])
    hits = np.ma.array([1, 2], mask=[True, False])
    call = {**SPECIMEN["example"], "rows": {"at": at, "depth": depth, "hits": hits}}
    result = _overslab.specimen_every_kind(**call, units="us")
    assert np.isnan(result.rows["depth_in"]).tolist() == [False, True] and result.rows["hits"] == [None, 2]


@pytest.mark.parametrize(
    "column",
    [np.ones((2, 2)), np.array(["2026-05-01", "2026-05-02"], dtype="datetime64[ns]"), [True, True], np.array([True, True])],
    ids=["two dimensions", "dates", "truth in a list", "truth in an array"],
)
@pytest.mark.parametrize("name", ["at", "hits", "colour", "remark"])
def test_what_is_no_column_of_the_kind_is_refused(column: Any, name: str) -> None:
    rows = {"at": [1.0, 2.0], name: column}
    with pytest.raises(OverslabError) as caught:
        _overslab.specimen_every_kind(**{**SPECIMEN["example"], "rows": rows}, units="us")
    assert caught.value.name in {"KIND_MISMATCH", "NOT_A_COUNT", "WORD_UNKNOWN"}
    assert caught.value.path == f"rows.{name}"


def test_an_array_of_two_dimensions_holds_the_columns_in_order() -> None:
    array = np.array([[1.0, 3.0], [2.5, 4.0]])
    result = _overslab.specimen_every_kind(**{**SPECIMEN["example"], "rows": array}, units="us")
    same = {"at": [1.0, 2.5], "hits": [3, 4]}
    assert result == _overslab.specimen_every_kind(**{**SPECIMEN["example"], "rows": same}, units="us")


def test_two_runs_with_other_notes_are_not_the_same_answer() -> None:
    changed = {**SPECIMEN["example"], "waste": "5 %"}
    one, other = _overslab.specimen_every_kind(**SPECIMEN["example"]), _overslab.specimen_every_kind(**changed)
    assert one.to_dict("si")["volume_m3"] == other.to_dict("si")["volume_m3"] and one.taken != other.taken
    assert one != other
