"""The operations of `grade`: made from the table of operations; do not edit."""

from overslab._overslab import (
    Finish,
    fall,
    Fall,
    FallArray,
    drop,
    Drop,
    DropArray,
    triangular_prism,
    TriangularPrism,
    TriangularPrismArray,
    finish_level,
    finish_from_points,
    finish_to_edge,
    finish_at_least,
    thickness,
    Thickness,
)

__all__ = [
    "Finish",
    "fall",
    "Fall",
    "FallArray",
    "drop",
    "Drop",
    "DropArray",
    "triangular_prism",
    "TriangularPrism",
    "TriangularPrismArray",
    "finish_level",
    "finish_from_points",
    "finish_to_edge",
    "finish_at_least",
    "thickness",
    "Thickness",
]
