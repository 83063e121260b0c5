"""The operations of `grade`: made from the table of operations; do not edit."""

from overslab._overslab import (
    fall,
    Fall,
    FallArray,
    drop,
    Drop,
    DropArray,
    triangular_prism,
    TriangularPrism,
    TriangularPrismArray,
)

__all__ = [
    "fall",
    "Fall",
    "FallArray",
    "drop",
    "Drop",
    "DropArray",
    "triangular_prism",
    "TriangularPrism",
    "TriangularPrismArray",
]
