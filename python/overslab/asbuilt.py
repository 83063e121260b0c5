"""The operations of `asbuilt`: made from the table of operations; do not edit."""

from overslab._overslab import (
    flatness_line,
    FlatnessLine,
    flatness,
    Flatness,
    flatness_combined,
    FlatnessCombined,
    straightedge,
    Straightedge,
    as_built,
    AsBuilt,
)

__all__ = [
    "flatness_line",
    "FlatnessLine",
    "flatness",
    "Flatness",
    "flatness_combined",
    "FlatnessCombined",
    "straightedge",
    "Straightedge",
    "as_built",
    "AsBuilt",
]
