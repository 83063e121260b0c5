"""What operations give: the classes that all results and records share, and what comes with them."""

from __future__ import annotations

from typing import NamedTuple

from overslab._overslab import AnswerResult, ArrayResult, Record, ScalarResult

__all__ = ["AnswerResult", "ArrayResult", "Basis", "Note", "Record", "ScalarResult", "Taken"]


class Note(NamedTuple):
    """What the reader of a result must know."""

    code: int
    """Its number, the same in every face."""
    name: str
    """Its name, the same in every face."""
    text: str
    """The sentence, with its numbers."""


class Basis(NamedTuple):
    """Where a result comes from."""

    result: str
    """The result it stands behind."""
    name: str
    """Its name, the same in every face."""
    says: str
    """What it says and where it is written."""


class Taken(NamedTuple):
    """A value that was not given and therefore taken."""

    port: str
    """The argument that was not given."""
    value: str
    """What was taken for it."""
    why: str
    """Why this value."""
