"""What operations give: the classes that all results and records share, and what comes with them."""

from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt
from typing_extensions import Self, disjoint_base

from overslab.failures import OverslabError
from overslab.typing import Units

__all__ = ["AnswerResult", "ArrayResult", "Basis", "Note", "Record", "ScalarResult", "Taken"]

class Note(NamedTuple):
    """What the reader of a result must know."""

    code: int
    name: str
    text: str

class Basis(NamedTuple):
    """Where a result comes from."""

    result: str
    name: str
    says: str

class Taken(NamedTuple):
    """A value that was not given and therefore taken."""

    port: str
    value: str
    why: str

@disjoint_base
class ScalarResult:
    """What a scalar operation gives: its results in both systems of units, and notes."""

    @property
    def notes(self) -> tuple[Note, ...]:
        """What the reader must know of the result."""
    def to_dict(self, units: Units | None = None) -> dict[str, Any]:
        """The results by name and unit, in both systems or in one."""
    def __eq__(self, value: object, /) -> bool: ...
    def __hash__(self) -> int: ...

@disjoint_base
class ArrayResult:
    """What the array form of a scalar operation gives: its results as arrays in both systems of units."""

    @property
    def shape(self) -> tuple[int, ...]:
        """The shape of every result."""
    @property
    def notes(self) -> tuple[Note, ...]:
        """The kinds of notes met, each once."""
    @property
    def note_codes(self) -> npt.NDArray[np.int32]:
        """The number of the note of each element, 0 where it has none."""
    @property
    def bad(self) -> npt.NDArray[np.int64]:
        """The elements that were refused and are NaN, counted through the shape from 0, the last axis fastest."""
    @property
    def reasons(self) -> tuple[OverslabError, ...]:
        """Why each of them was refused: one exception for each element of `bad`, not raised."""
    def to_dict(self, units: Units | None = None) -> dict[str, npt.NDArray[Any]]:
        """The results by name and unit, in both systems or in one."""
    def __len__(self) -> int: ...
    def __eq__(self, value: object, /) -> bool: ...

@disjoint_base
class AnswerResult:
    """What an operation gives: its results, notes, where each comes from, and what was taken because it was not given."""

    @property
    def notes(self) -> tuple[Note, ...]:
        """What the reader must know of the result."""
    @property
    def basis(self) -> tuple[Basis, ...]:
        """Where each result comes from."""
    @property
    def taken(self) -> tuple[Taken, ...]:
        """What was not given and therefore taken."""
    def to_dict(self, units: Units | None = None) -> dict[str, Any]:
        """The results by name and unit, in both systems or in one; records in their canonical form."""
    def __eq__(self, value: object, /) -> bool: ...

@disjoint_base
class Record:
    """A record that one operation makes and another takes."""

    @property
    def notes(self) -> tuple[Note, ...]:
        """What the operation that made it says the reader must know."""
    @property
    def basis(self) -> tuple[Basis, ...]:
        """Where it comes from, where an operation made it."""
    @property
    def taken(self) -> tuple[Taken, ...]:
        """What was not given and therefore taken, where an operation made it."""
    def fields(self, units: Units | None = None) -> dict[str, Any]:
        """Its fields by name and unit, in both systems or in one; tables as columns."""
    def to_dict(self) -> dict[str, Any]:
        """Its canonical form as plain data: quantities as SI text."""
    def to_json(self) -> str:
        """Its canonical form as JSON text."""
    @classmethod
    def from_dict(cls, data: dict[str, Any]) -> Self:
        """Makes a record from its canonical form, or from one written by hand: quantities as text with their unit."""
    @classmethod
    def from_json(cls, text: str) -> Self:
        """Makes a record from JSON text."""
    def __eq__(self, value: object, /) -> bool: ...
    def __hash__(self) -> int: ...
