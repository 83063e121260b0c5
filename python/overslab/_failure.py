"""The exception that stands above all others of the package."""

from __future__ import annotations

from typing import Any

__all__ = ["OverslabError"]


class OverslabError(Exception):
    """Something that the engine refuses, in the caller's own number and unit.

    Its children say which family of failures it belongs to; the `code` says exactly what.
    """

    code: int
    """What went wrong, by number; the same in every face."""
    name: str
    """The name of the code."""
    path: str
    """Which value: the argument, and the column or key in it."""
    line: int | None
    """The line of a text, the first being 1."""
    index: int | None
    """The element of a list, an array or a column, the first being 0, the last axis fastest."""
    cell: tuple[int, int] | None
    """Row and column of a range, the first being 1."""
    written: str
    """The value as it was written."""
    allowed: str
    """What would be allowed."""
    remedy: str
    """What to do."""

    def __init__(
        self,
        message: str,
        *,
        code: int = 99,
        name: str = "INTERNAL",
        path: str = "",
        line: int | None = None,
        index: int | None = None,
        cell: tuple[int, int] | None = None,
        written: str = "",
        allowed: str = "",
        remedy: str = "",
    ) -> None:
        super().__init__(message)
        self.code = code
        self.name = name
        self.path = path
        self.line = line
        self.index = index
        self.cell = cell
        self.written = written
        self.allowed = allowed
        self.remedy = remedy

    def __reduce__(self) -> tuple[Any, ...]:
        return _restored, (type(self), str(self), dict(self.__dict__))


def _restored(kind: type[OverslabError], message: str, details: dict[str, Any]) -> OverslabError:
    error = kind(message)
    error.__dict__.update(details)
    return error
