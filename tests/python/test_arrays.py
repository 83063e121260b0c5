"""The array form: element by element the scalar call, whatever holds the elements."""

from __future__ import annotations

import pickle
import sys
import threading
from typing import Any

import numpy as np
import pytest
from table import SCALARS, SYSTEMS, function, inside, name_of, same, units_of

from overslab import FormError, OverslabError, QuantityError
from overslab.results import ArrayResult

SHARES = [0.0, 1e-6, 1e-4, 0.01, 0.3, 0.5, 0.77, 1.0]


def columns(row: Any, system: str) -> dict[str, list[Any]]:
    """A column for each port, of values inside its range; the ports run through it at different speeds."""
    found = {}
    for place, port in enumerate(row["ports"]):
        turned = SHARES[place % len(SHARES) :] + SHARES[: place % len(SHARES)]
        found[port["name"]] = [inside(port, system, share) for share in turned]
    return found


def one_by_one(row: Any, given: dict[str, list[Any]], system: str) -> list[Any]:
    """The scalar call for each element; its refusal where it is refused."""
    results = []
    for values in zip(*given.values(), strict=True):
        try:
            results.append(function(row)(**dict(zip(given, values, strict=True)), units=system))
        except OverslabError as error:
            results.append(error)
    return results


def assert_alike(row: Any, array: Any, scalars: list[Any]) -> None:
    """The array result holds the scalar results, bit by bit, and marks what they refused."""
    bad = [index for index, one in enumerate(scalars) if isinstance(one, OverslabError)]
    assert array.bad.tolist() == bad and array.bad.dtype == np.int64
    assert [(e.code, e.path, e.written) for e in array.reasons] == [
        (scalars[i].code, scalars[i].path, scalars[i].written) for i in bad
    ]
    assert [error.index for error in array.reasons] == bad
    for port in row["results"]:
        for name in units_of(port):
            for index, one in enumerate(scalars):
                value = getattr(array, name).ravel()[index]
                if index in bad:
                    assert value is None or np.isnan(value)
                elif port["kind"] == "choice":
                    assert value == getattr(one, name)
                else:
                    assert same(float(value), float(getattr(one, name)))
    codes = array.note_codes.ravel().tolist()
    assert codes == [0 if i in bad or not one.notes else one.notes[0].code for i, one in enumerate(scalars)]


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
@pytest.mark.parametrize("system", SYSTEMS)
def test_each_element_is_the_scalar_call(row: Any, system: str) -> None:
    given = columns(row, system)
    scalars = one_by_one(row, given, system)
    as_lists = function(row)(**given, units=system, errors="mark")
    assert isinstance(as_lists, ArrayResult) and as_lists.shape == (len(SHARES),) and len(as_lists) == len(SHARES)
    assert_alike(row, as_lists, scalars)
    shaped = {name: np.array(values).reshape(2, 2, 2) for name, values in given.items()}
    as_arrays = function(row)(**shaped, units=system, errors="mark")
    assert as_arrays.shape == (2, 2, 2)
    assert all(value.shape == (2, 2, 2) for value in as_arrays.to_dict().values())
    assert_alike(row, as_arrays, scalars)


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_memory_order_and_element_type_do_not_matter(row: Any) -> None:
    numbers = [port["name"] for port in row["ports"] if port["kind"] == "number"]
    whole = {name: np.arange(1, 7, dtype=np.int64).reshape(2, 3) for name in numbers}
    others = {port["name"]: row["example"][port["name"]] for port in row["ports"] if port["kind"] != "number"}
    reference = function(row)(**whole, **others, units="si", errors="mark")
    for change in (
        lambda array: array.astype(np.float64),
        lambda array: array.astype(np.float32),
        lambda array: array.astype(np.uint8),
        lambda array: array.astype(">f8"),
        lambda array: np.asfortranarray(array.astype(np.float64)),
        lambda array: np.repeat(array.astype(np.float64), 2, axis=1)[:, ::2],
        lambda array: array.astype(np.float64)[::-1, ::-1][::-1, ::-1],
        lambda array: array.astype(object),
        lambda array: array.tolist(),
        lambda array: tuple(map(tuple, array.tolist())),
        lambda array: [[f"{n} {unit}" for n in line] for line in array.tolist()],
        lambda array: np.array([[f"{n} {unit}" for n in line] for line in array.tolist()]),
    ):
        changed = {}
        for name, array in whole.items():
            unit = next(port["si"]["unit"] for port in row["ports"] if port["name"] == name)
            changed[name] = change(array)
        assert function(row)(**changed, **others, units="si", errors="mark") == reference


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_many_elements_are_what_few_are(row: Any) -> None:
    few, times = columns(row, "us"), 101
    once = function(row)(**few, units="us", errors="mark")
    many = {name: values * times for name, values in few.items()}
    first = row["ports"][0]["name"]
    for given in (many, {**many, first: [*many[first][:-3], "no quantity", *many[first][-2:]]}):
        all_of_them = function(row)(**given, units="us", errors="mark")
        spoilt = [] if given is many else [len(many[first]) - 3]
        bad = [at * len(SHARES) + index for at in range(times) for index in once.bad.tolist()]
        assert all_of_them.bad.tolist() == sorted({*bad, *spoilt})
        for port in row["results"]:
            for name in units_of(port):
                wanted, got = np.tile(getattr(once, name), times), getattr(all_of_them, name)
                kept = np.setdiff1d(np.arange(wanted.size), spoilt)
                assert all(a == b or (a != a and b != b) for a, b in zip(got[kept], wanted[kept], strict=True))
                assert all(value is None or np.isnan(value) for value in got[spoilt])
        codes = np.tile(once.note_codes, times)
        codes[spoilt] = 0
        assert all_of_them.note_codes.tolist() == codes.tolist()


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_single_values_serve_every_element(row: Any) -> None:
    first = row["ports"][0]
    values = [inside(first, "us", share) for share in SHARES]
    rest = {port["name"]: row["example"][port["name"]] for port in row["ports"][1:]}
    spread = {name: [value] * len(SHARES) for name, value in rest.items()}
    one = function(row)(values, **rest, units="us", errors="mark")
    assert one == function(row)(values, **spread, units="us", errors="mark")
    assert one == function(row)(np.array(values), **rest, units="us", errors="mark")


@pytest.mark.parametrize("row", [row for row in SCALARS if len(row["ports"]) > 1], ids=name_of)
def test_shapes_are_joined_as_numpy_joins_them(row: Any) -> None:
    first, second, *rest = row["ports"]
    others = {port["name"]: row["example"][port["name"]] for port in rest}
    shapes: list[tuple[tuple[int, ...], tuple[int, ...]]] = [
        ((3,), (2, 1)), ((2, 3), (3,)), ((1,), (4,)), ((2, 1, 3), (4, 1)), ((0,), (1,)), ((), (2,)), ((), ()),
    ]  # fmt: skip
    for one, other in shapes:
        a = np.array([inside(first, "si", s) for s in np.linspace(0, 1e-3, max(1, int(np.prod(one))))])
        b = np.array([inside(second, "si", s) for s in np.linspace(0, 1e-3, max(1, int(np.prod(other))))])
        a, b = a[: int(np.prod(one))].reshape(one), b[: int(np.prod(other))].reshape(other)
        joined = function(row)(a, b, **others, units="si", errors="mark")
        wide = np.broadcast_arrays(a, b)
        assert joined.shape == np.broadcast_shapes(one, other)
        assert joined == function(row)(wide[0].copy(), wide[1].copy(), **others, units="si", errors="mark")
    with pytest.raises(OverslabError) as caught:
        function(row)(np.ones(3), np.ones((2, 2)), **others, units="si")
    assert (caught.value.name, caught.value.path) == ("LENGTH_MISMATCH", second["name"])


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_nothing_in_gives_nothing_out(row: Any) -> None:
    for empty in ([], np.empty(0), np.empty((0, 3))):
        result = function(row)(empty, **{p["name"]: row["example"][p["name"]] for p in row["ports"][1:]}, units="us")
        assert result.shape == np.shape(empty) and result.bad.size == 0 and result.notes == ()


@pytest.mark.parametrize("row", [row for row in SCALARS if row["ports"][0]["kind"] == "number"], ids=name_of)
def test_a_bad_element_raises_or_is_marked(row: Any) -> None:
    first, *rest = row["ports"]
    others = {port["name"]: row["example"][port["name"]] for port in rest}
    good = row["example"][first["name"]]
    values = [good, np.nan, "no quantity", good, None, object(), "1 parsec"]
    expected = ["NOT_FINITE", "NOT_READABLE", "KEY_MISSING", "KIND_MISMATCH", "UNIT_UNKNOWN"]
    with pytest.raises(QuantityError) as caught:
        function(row)(values, **others, units="us")
    assert (caught.value.name, caught.value.index, caught.value.path) == ("NOT_FINITE", 1, first["name"])
    marked = function(row)(values, **others, units="us", errors="mark")
    assert marked.bad.tolist() == [1, 2, 4, 5, 6]
    assert [error.name for error in marked.reasons] == expected
    scalar = function(row)(good, **others)
    for port in row["results"]:
        for name in units_of(port):
            shown = getattr(marked, name)
            assert shown[0] == shown[3] == getattr(scalar, name)
            assert all(value is None or np.isnan(value) for value in shown[marked.bad])


class UnitAsAttribute:
    """A number whose unit would be lost if it were taken as a plain one."""

    units = "furlong"

    def __float__(self) -> float:
        return 1.0


class ArrayWithUnit(np.ndarray):  # type: ignore[type-arg]
    """An array whose unit would be lost if it were taken as a plain one."""

    unit = "furlong"


NOT_NUMBERS: list[Any] = [
    UnitAsAttribute(),
    np.ones(2).view(ArrayWithUnit),
    np.array(["2026-05-01", "2026-05-02"], dtype="datetime64[ns]"),
    np.array([1, 2], dtype="timedelta64[s]"),
    np.array([True, False]),
    np.array([1 + 2j, 2]),
    np.zeros(2, dtype=[("a", float)]),
    [np.ones(2), np.ones((2, 2))],
    [True, 2],
    [1.0, [2.0]],
    [[1.0, 2.0], [3.0]],
    np.bool_(True),
    np.array(b"2 in"),
]


@pytest.mark.parametrize("value", NOT_NUMBERS, ids=lambda value: type(value).__name__ + str(getattr(value, "dtype", "")))
def test_what_only_looks_like_numbers_is_refused(value: Any) -> None:
    for row in SCALARS:
        first, *rest = row["ports"]
        # A number that the port itself refuses is refused first.
        if first["kind"] == "number" and (first["us"]["least"] is None or first["us"]["least"] <= 1.0):
            with pytest.raises(FormError) as caught:
                function(row)(value, **{port["name"]: row["example"][port["name"]] for port in rest}, units="us")
            assert (caught.value.name, caught.value.path) == ("KIND_MISMATCH", first["name"])


@pytest.mark.parametrize("row", [row for row in SCALARS if row["ports"][0]["kind"] == "number"], ids=name_of)
def test_masked_elements_are_no_numbers(row: Any) -> None:
    first, *rest = row["ports"]
    others = {port["name"]: row["example"][port["name"]] for port in rest}
    masked = np.ma.array([[1.0, 2.0], [3.0, 4.0]], mask=[[False, True], [False, False]])
    result = function(row)(masked, **others, units="si", errors="mark")
    plain = function(row)(masked.data, **others, units="si", errors="mark")
    assert result.shape == (2, 2)
    assert set(result.bad.tolist()) == set(plain.bad.tolist()) | {1}
    assert result.reasons[result.bad.tolist().index(1)].name == "KEY_MISSING"


def test_counts_are_whole_numbers_unless_elements_are_marked() -> None:
    counted = [(row, port) for row in SCALARS for port in row["results"] if port["kind"] == "count"]
    assert counted
    for row, port in counted:
        given = {one["name"]: [row["example"][one["name"]]] * 2 for one in row["ports"]}
        assert getattr(function(row)(**given), port["name"]).dtype == np.int64
        assert getattr(function(row)(**given, errors="mark"), port["name"]).dtype == np.float64


@pytest.mark.parametrize("row", SCALARS, ids=name_of)
def test_array_results_survive_pickling_and_cannot_be_changed(row: Any) -> None:
    result = function(row)(**columns(row, "us"), units="us", errors="mark")
    again = pickle.loads(pickle.dumps(result))
    assert again == result and again.notes == result.notes
    assert [str(one) for one in again.reasons] == [str(one) for one in result.reasons]
    assert result != function(row)(**{name: values[::-1] for name, values in columns(row, "us").items()},
                                   units="us", errors="mark")  # fmt: skip
    name, before = next(iter(result.to_dict("us").items()))
    changed = getattr(result, name)
    changed[:] = changed[0]
    after = result.to_dict("us")[name]
    assert all(a == b or (a != a and b != b) for a, b in zip(after, before, strict=True))
    with pytest.raises(AttributeError):
        setattr(result, name, before)


def test_inputs_are_left_as_they_were() -> None:
    for row in SCALARS:
        given = {name: np.array(values) for name, values in columns(row, "si").items()}
        before = {name: array.copy() for name, array in given.items()}
        for array in given.values():
            array.flags.writeable = False
        function(row)(**given, units="si", errors="mark")
        assert all((given[name] == before[name]).all() for name in given)


def test_other_threads_run_while_an_array_is_computed() -> None:
    # With a switch interval this long a thread gives way only where it says so.
    interval = sys.getswitchinterval()
    row = next(row for row in SCALARS if all(port["kind"] == "number" for port in row["ports"]))
    given = {port["name"]: np.full(2_000_000, inside(port, "si", 1e-4)) for port in row["ports"]}
    about_to_call, done = threading.Event(), threading.Event()

    def compute() -> None:
        about_to_call.set()
        function(row)(**given, units="si")
        done.set()

    thread = threading.Thread(target=compute)
    sys.setswitchinterval(1000.0)
    try:
        thread.start()
        about_to_call.wait()
        assert not done.is_set()
    finally:
        sys.setswitchinterval(interval)
        thread.join()
