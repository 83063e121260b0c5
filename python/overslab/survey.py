"""The operations of `survey`: made from the table of operations; do not edit."""

from overslab._overslab import (
    Outline,
    Survey,
    rod_elevation,
    RodElevation,
    RodElevationArray,
    level_book,
    LevelBook,
    outline_from_corners,
    outline_from_sides,
    survey_from_shots,
    survey_from_grid,
    survey_from_rods,
    survey_triangles,
    SurveyTriangles,
)

__all__ = [
    "Outline",
    "Survey",
    "rod_elevation",
    "RodElevation",
    "RodElevationArray",
    "level_book",
    "LevelBook",
    "outline_from_corners",
    "outline_from_sides",
    "survey_from_shots",
    "survey_from_grid",
    "survey_from_rods",
    "survey_triangles",
    "SurveyTriangles",
]
