"""The types that the functions of the package take, for annotations."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from typing import Any, Literal, Protocol, TypeAlias, TypedDict

import numpy as np
import numpy.typing as npt

__all__ = [
    "Column",
    "Count",
    "Counts",
    "Errors",
    "File",
    "Measured",
    "MeasuredMany",
    "PortRow",
    "Quantities",
    "Quantity",
    "RecordLike",
    "Row",
    "Table",
    "TableLike",
    "Units",
    "Words",
]


class Measured(Protocol):
    """A number that knows its own unit, as those of pint do."""

    def m_as(self, units: Any) -> float:
        """The magnitude in a unit."""
        ...


class MeasuredMany(Protocol):
    """An array that knows its own unit, as those of pint do."""

    def m_as(self, units: Any) -> npt.NDArray[Any]:
        """The magnitudes in a unit."""
        ...


class TableLike(Protocol):
    """Columns by name, as those of a data frame."""

    def keys(self) -> Iterable[Any]:
        """The names of the columns."""
        ...

    def __getitem__(self, key: Any, /) -> Any:
        """One column."""
        ...


Units: TypeAlias = Literal["us", "si"]
"""The system of units of bare numbers."""

Errors: TypeAlias = Literal["raise", "mark"]
"""What becomes of a refused element of an array."""

File: TypeAlias = bytes | bytearray | memoryview | str
"""The bytes of a file; a text stands for its UTF-8, or for the bytes in base64 behind `base64:`."""

Quantity: TypeAlias = str | float | Decimal | Fraction | np.floating[Any] | np.integer[Any] | Measured
"""A text with its unit, a number beside `units`, or a number that knows its unit."""

Quantities: TypeAlias = npt.NDArray[Any] | list[Any] | tuple[Any, ...] | MeasuredMany
"""Several quantities, of any shape."""

Count: TypeAlias = int | np.integer[Any]
"""A whole number."""

Counts: TypeAlias = npt.NDArray[np.integer[Any]] | list[int] | tuple[int, ...]
"""Several whole numbers."""

Words: TypeAlias = npt.NDArray[Any] | list[str] | tuple[str, ...]
"""Several words."""

Column: TypeAlias = npt.NDArray[Any] | list[Any]
"""One column of a table."""

Table: TypeAlias = TableLike | Sequence[Mapping[str, Any]] | npt.NDArray[Any]
"""A table: columns by name, a list of rows, or an array of rows."""

RecordLike: TypeAlias = dict[str, Any]
"""A record in its canonical form, or one written by hand."""


class PortRow(TypedDict, total=False):
    """What `OPERATIONS` says of one argument or result."""

    name: str
    meaning: str
    required: bool
    kind: Literal["number", "count", "choice", "text", "bytes", "table", "record"]
    taken: dict[str, str]
    quantity: str
    symbols: list[str]
    us: dict[str, Any]
    si: dict[str, Any]
    least: int
    greatest: int
    words: list[str]
    row: str
    least_rows: int
    columns: list[PortRow]
    record: str
    class_name: str
    fields: list[PortRow]


class Row(TypedDict):
    """What `OPERATIONS` says of one operation."""

    name: str
    module: str
    since: str
    meaning: str
    equation: str
    assumes: str
    scalar: bool
    ports: list[PortRow]
    results: list[PortRow]
    basis: list[dict[str, str]]
    example: dict[str, Any]
    refusals: list[dict[str, Any]]
